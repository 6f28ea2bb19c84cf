/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-evidence.h"
G_BEGIN_DECLS

/* Sets of faults with their probability, likeliest first. Private to core/diagnosis. */
typedef struct { guint64 faults; double weight; } HmFaultSet;   /* bit n_causes: something not listed */

typedef struct {
  HmFaultSet *sets;       /* owned */
  guint n;
  double kept;            /* share of the probability of all sets that were listed */
} HmFaultSets;

/**
 * hm_fault_sets_init: lists the sets of up to three faults (four in models of at most 12 causes) that are left after the
 * repairs in @events, weighs them exactly, keeps the likeliest @most and scales them to 1.
 * Returns: %FALSE when the evidence rules them all out
 */
gboolean hm_fault_sets_init  (HmFaultSets *self, const HmModel *model, const HmEvidence *events, guint n, guint most);
void     hm_fault_sets_clear (HmFaultSets *self);
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (HmFaultSets, hm_fault_sets_clear)

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-evidence.h"
G_BEGIN_DECLS

/**
 * HmBelief: where the job stands. A plain value on the stack.
 * @p: probability of each cause, the last "not listed"; sums to 1
 * @open: access steps that stand open
 * @unavailable: checks that cannot be done here
 * @asked: checks already answered (a set of indices, two words)
 */
typedef struct {
  double p[HM_MODEL_MAX_CAUSES + 1];
  HmModelSet open;
  guint64 unavailable[2], asked[2], unsure[2];
  double log_evidence;               /* natural logarithm of the probability of all that was found */
  gboolean impossible;               /* the evidence rules everything out (only a faulty model does) */
} HmBelief;

/** HmWeight: what one event did to one cause: 10·log10(odds after / odds before), decibans. */
typedef struct { double probability; double decibans[HM_MODEL_MAX_CAUSES + 1]; gboolean has_effect; } HmBeliefStep;

/**
 * hm_belief_compute: exact posterior of the single-fault model after @n events, in their order. Incidents and replaced
 * parts act on the priors first; a later answer to the same check replaces the earlier one.
 * @steps: (nullable) (array length=n): what each event did; events without effect have has_effect %FALSE
 */
void hm_belief_compute (const HmModel *model, const HmEvidence *events, guint n, HmBelief *out, HmBeliefStep *steps);

double hm_belief_entropy_bits (const HmModel *model, const HmBelief *self);

static inline gboolean hm_belief_has (const guint64 *set, guint i) { return (set[i / 64] >> (i % 64)) & 1; }
static inline void hm_belief_add (guint64 *set, guint i) { set[i / 64] |= G_GUINT64_CONSTANT (1) << (i % 64); }

G_END_DECLS

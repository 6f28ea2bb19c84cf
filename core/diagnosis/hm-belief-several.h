/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-evidence.h"
G_BEGIN_DECLS

/*
 * Several faults at once: causes are present or not, independently; the complaint shows when at least one is. A check
 * reads the worst of one draw for each fault that is present. Repairing takes faults away; what was found before still
 * speaks of the machine as it was.
 */

/** Abnormal findings up to which the exact sum is taken; each doubles the work, and cancellation grows with them. */
#define HM_BELIEF_SEVERAL_MOST_TERMS 65536u

/**
 * HmMarginals: @p: probability that each cause is present, the last "not listed"; they need not sum to 1.
 * @log_evidence: natural logarithm of the probability of all that was found, given the complaint
 * @expected_faults: how many faults are present on average
 */
typedef struct {
  double p[HM_MODEL_MAX_CAUSES + 1];
  double log_evidence, expected_faults;
} HmMarginals;

/**
 * hm_belief_compute_several: exact marginals without listing sets of faults: the likelihood of every finding is a
 * signed sum of products over causes (the "quickscore" form, after Heckerman 1989), so that the sum over all sets factorises.
 * Returns: %FALSE with %HM_MODEL_ERROR_SIZE when the findings would need more than HM_BELIEF_SEVERAL_MOST_TERMS terms, or
 *   %HM_MODEL_ERROR_VALUE when they rule out everything
 */
gboolean hm_belief_compute_several (const HmModel *model, const HmEvidence *events, guint n, HmMarginals *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS

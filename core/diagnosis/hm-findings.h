/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-evidence.h"
G_BEGIN_DECLS

/*
 * What was found, in the form that several faults need: a check reads the worst of one draw for each fault present, so
 * that P(finding | faults X) = Σ_k alpha_k Π_{i in X} F(k | i), with F summed from the normal end. Private to
 * core/diagnosis.
 */

/** One finding. @repaired: causes that were gone when it was made, and so do not speak in it. */
typedef struct {
  guint check;
  guint levels[HM_MODEL_MAX_OUTCOMES];
  double alpha[HM_MODEL_MAX_OUTCOMES];
  guint n_levels;
  guint64 repaired;
} HmFindingTerms;

/**
 * HmFindings:
 * @prior: chance that each cause is present, incidents included; the last "not listed"
 * @repaired: causes gone at the end
 * @cumulative: F: [check][level][cause]
 */
typedef struct {
  const HmModel *model;
  double prior[HM_MODEL_MAX_CAUSES + 1];
  guint64 repaired;
  double *cumulative;
  GArray *terms;                       /* HmFindingTerms */
} HmFindings;

void hm_findings_init  (HmFindings *self, const HmModel *model, const HmEvidence *events, guint n);
void hm_findings_clear (HmFindings *self);
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (HmFindings, hm_findings_clear)

/** F(@level | @cause) of @check: the chance of that outcome or a more normal one. */
static inline double
hm_findings_cumulative (const HmFindings *self, guint check, guint level, guint cause)
{
  return self->cumulative[(check * HM_MODEL_MAX_OUTCOMES + level) * (HM_MODEL_MAX_CAUSES + 1) + cause];
}

G_END_DECLS

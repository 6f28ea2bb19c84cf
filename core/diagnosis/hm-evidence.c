/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-evidence.h"

#include <math.h>

static double
normal_cdf (double z)
{
  return 0.5 * erfc (-z * G_SQRT2 / 2);
}

/*
 * A reading is soft evidence: the weight of a band is the probability that the true value lies in it, given the
 * instrument's standard deviation and a flat prior near the limits. Far from a limit this equals a hard outcome; on a
 * limit it is half and half.
 */
static void
weigh_reading (const HmModelCheck *check, double reading, double *weights)
{
  for (guint o = 0; o < check->n_outcomes; o++)
    {
      double normal_side = INFINITY;
      double worse_side = -INFINITY;
      /* distance of each limit from the reading, in standard deviations, counted towards the normal side */
      double sign = check->normal_above ? 1 : -1;
      if (o > 0)
        normal_side = sign * (check->edges[o - 1] - reading) / check->meter_sd;
      if (o + 1 < check->n_outcomes)
        worse_side = sign * (check->edges[o] - reading) / check->meter_sd;
      weights[o] = normal_cdf (normal_side) - normal_cdf (worse_side);
    }
}

gboolean
hm_evidence_weights (const HmModel *model, const HmEvidence *self, double *weights)
{
  const HmModelCheck *check;

  switch (self->kind)
    {
    case HM_EVIDENCE_OUTCOME:
      check = &model->checks[self->index];
      for (guint o = 0; o < check->n_outcomes; o++)
        weights[o] = o == self->outcome ? 1 : 0;
      return TRUE;
    case HM_EVIDENCE_WEIGHTS:
      check = &model->checks[self->index];
      for (guint o = 0; o < check->n_outcomes; o++)
        weights[o] = self->weights[o];
      return TRUE;
    case HM_EVIDENCE_READING:
      weigh_reading (&model->checks[self->index], self->reading, weights);
      return TRUE;
    case HM_EVIDENCE_INCIDENT:
    case HM_EVIDENCE_REPLACED:
    case HM_EVIDENCE_UNSURE:
    case HM_EVIDENCE_CANNOT:
    case HM_EVIDENCE_REPAIR:
      return FALSE;
    }
  g_return_val_if_reached (FALSE);
}

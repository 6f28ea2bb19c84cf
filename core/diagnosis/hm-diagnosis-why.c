/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Why: what each answer would lead to, and what each answer did. */
#include "hm-diagnosis-private.h"

#include <math.h>

static guint
top_cause (const HmModel *model, const HmBelief *belief)
{
  guint top = 0;

  for (guint i = 1; i <= model->n_causes; i++)
    if (belief->p[i] > belief->p[top])
      top = i;
  return top;
}

guint
hm_diagnosis_get_branches (HmDiagnosis *self, guint check, HmBranch *out)
{
  const HmModelCheck *c;

  g_return_val_if_fail (HM_IS_DIAGNOSIS (self) && check < self->model->n_checks && out != NULL, 0);

  c = &self->model->checks[check];
  for (guint o = 0; o < c->n_outcomes; o++)
    {
      HmBelief after;
      HmPlan next;
      out[o].finding = o;
      out[o].probability = hm_planner_after_outcome (self->planner, &self->belief, check, o, &after);
      hm_planner_best (self->planner, &after, &next);
      out[o].next = next.action;
      out[o].top_cause = top_cause (self->model, &after);
      out[o].top_probability = after.p[out[o].top_cause];
    }
  return c->n_outcomes;
}

static int
compare_reasons (gconstpointer left, gconstpointer right)
{
  double a = fabs (((const HmReason *) left)->decibans), b = fabs (((const HmReason *) right)->decibans);

  return a > b ? -1 : a < b;
}

GArray *
hm_diagnosis_get_reasons (HmDiagnosis *self, guint cause)
{
  GArray *reasons;

  g_return_val_if_fail (HM_IS_DIAGNOSIS (self) && cause <= self->model->n_causes, NULL);

  reasons = g_array_new (FALSE, FALSE, sizeof (HmReason));
  for (guint i = 0; i < self->events->len; i++)
    {
      const HmBeliefStep *step = &g_array_index (self->steps, HmBeliefStep, i);
      HmReason reason = g_array_index (self->event_sources, HmReason, i);
      if (!step->has_effect)
        continue;
      reason.decibans = step->decibans[cause];
      g_array_append_val (reasons, reason);
    }
  g_array_sort (reasons, compare_reasons);
  return reasons;
}

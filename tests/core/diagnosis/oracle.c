/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "oracle.h"

#include <string.h>

/* Sum of opening and closing minutes, step by step; deliberately not hm_model_set_minutes(). */
static double
opening (const HmModel *model, HmModelSet set)
{
  double minutes = 0;

  for (guint a = 0; a < model->n_access; a++)
    if (set >> a & 1)
      minutes += model->access[a].open_minutes + model->access[a].close_minutes;
  return minutes;
}

static HmModelSet
shut_for_verifying (const HmModel *model)
{
  HmModelSet set = 0;

  for (guint a = 0; a < model->n_access; a++)
    for (guint b = 0; b < model->n_access; b++)
      if (model->access[a].blocks_verify && (a == b || model->access[b].requires >> a & 1))
        set |= G_GUINT64_CONSTANT (1) << b;
  return set;
}

static double
after_check (HmPlanner *planner, const HmModel *model, const HmBelief *belief, guint at, double reach)
{
  const HmModelCheck *check = &model->checks[at];
  HmModelSet kept = belief->open & ~check->closed;
  double value = check->minutes + opening (model, check->need & ~kept);

  for (guint o = 0; o < check->n_outcomes; o++)
    {
      HmBelief next = *belief;
      double p = 0;
      for (guint i = 0; i <= model->n_causes; i++)
        p += next.p[i] = belief->p[i] * check->likelihood[o * (model->n_causes + 1) + i];
      if (p <= 0)
        continue;
      for (guint i = 0; i <= model->n_causes; i++)
        next.p[i] /= p;
      next.open = kept | check->need;
      hm_belief_add (next.asked, at);
      value += p * oracle_policy_minutes (planner, model, &next, reach / p);
    }
  return value;
}

static double
after_repair (HmPlanner *planner, const HmModel *model, const HmBelief *belief, const HmAction *repair, double reach)
{
  HmBelief next = *belief;
  HmModelSet need = 0;
  double value = model->verify_minutes, left = 0;

  for (guint k = 0; k < repair->n_causes; k++)
    {
      need |= model->causes[repair->causes[k]].need;
      value += model->causes[repair->causes[k]].repair_minutes;
      next.p[repair->causes[k]] = 0;
    }
  value += opening (model, need & ~belief->open);
  for (guint i = 0; i <= model->n_causes; i++)
    left += next.p[i];
  if (left <= 1e-15)
    return value;
  for (guint i = 0; i <= model->n_causes; i++)
    next.p[i] /= left;
  next.open = (belief->open | need) & ~shut_for_verifying (model);
  return value + left * oracle_policy_minutes (planner, model, &next, reach / left);
}

double
oracle_policy_minutes (HmPlanner *planner, const HmModel *model, const HmBelief *belief, double reach)
{
  HmPlan plan;

  if (reach > 1)
    return model->other_minutes;
  hm_planner_best (planner, belief, &plan);
  switch (plan.action.kind)
    {
    case HM_ACTION_CHECK:
      return after_check (planner, model, belief, plan.action.check, reach);
    case HM_ACTION_REPAIR:
      return after_repair (planner, model, belief, &plan.action, reach);
    case HM_ACTION_ESCALATE:
      return model->other_minutes;
    }
  g_assert_not_reached ();
}

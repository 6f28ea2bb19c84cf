/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-belief.h"
G_BEGIN_DECLS

typedef enum { HM_ACTION_CHECK, HM_ACTION_REPAIR, HM_ACTION_ESCALATE } HmActionKind;

/** HmAction: a plain value. @check for HM_ACTION_CHECK; @causes for HM_ACTION_REPAIR. */
typedef struct { HmActionKind kind; guint check; guint causes[HM_MODEL_MAX_BATCH]; guint n_causes; } HmAction;

/**
 * HmPlan: what to do next and what it costs.
 * @expected_minutes: U: expected minutes until the complaint is verified fixed if @action is taken and the best plan
 *   known is followed; following it and planning anew never averages more
 * @lower_bound_minutes: no plan averages less
 * @work_minutes, @access_minutes: what @action itself costs now
 */
typedef struct {
  HmAction action;
  double expected_minutes, lower_bound_minutes, work_minutes, access_minutes;
} HmPlan;

/** HmPlanner: the workspace of the search; made once, no allocation afterwards. Not for two threads at once. */
typedef struct _HmPlanner HmPlanner;

/**
 * hm_planner_new:
 * @depth: look-ahead in checks, 1 to 3 (1: one-step expected cost of repair)
 */
HmPlanner *hm_planner_new  (HmModel *model, guint depth);
void       hm_planner_free (HmPlanner *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmPlanner, hm_planner_free)

/** hm_planner_best: the best next action; ties by fewer newly opened steps, then less time, then index. */
void hm_planner_best (HmPlanner *self, const HmBelief *belief, HmPlan *out);

/**
 * hm_planner_rank: every sensible action, best first.
 * @out: (array length=max)
 * Returns: how many were written
 */
guint hm_planner_rank (HmPlanner *self, const HmBelief *belief, HmPlan *out, guint max);

/** hm_planner_repair_only: the plan that only repairs and verifies: its minutes, and its first action. */
double hm_planner_repair_only (HmPlanner *self, const HmBelief *belief, HmAction *first);

/** hm_planner_after_outcome: the belief after @outcome of @check from @belief. Returns: the outcome's probability */
double hm_planner_after_outcome (HmPlanner *self, const HmBelief *belief, guint check, guint outcome, HmBelief *out);

gboolean hm_action_equal (const HmAction *a, const HmAction *b);

G_END_DECLS

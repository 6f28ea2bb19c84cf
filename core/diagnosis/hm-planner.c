/* SPDX-License-Identifier: GPL-3.0-or-later */
/*
 * The next step: for every action, its own minutes plus the expected minutes of the best plan known afterwards. One step
 * deep the plan afterwards is the repair-only list; deeper, the same question again on the best few actions. Work is
 * fixed, not clocked, so that two machines give the same advice; nothing is allocated.
 */
#include "hm-planner-private.h"

#include <string.h>

#define TIE 1e-9
/* How many of the best actions are looked at further. Four give the same advice as six two steps deep, in two thirds of the time. */
#define BEAM_TWO_STEPS 4u
#define BEAM_DEEPER 6u

static double node_value (HmPlanner *self, const HmNode *node, guint depth, guint level);

HmPlanner *
hm_planner_new (HmModel *model, guint depth)
{
  HmPlanner *self;

  g_return_val_if_fail (model != NULL && model->mode == HM_MODEL_SINGLE_FAULT, NULL);
  g_return_val_if_fail (depth >= 1 && depth <= HM_PLANNER_MAX_DEPTH, NULL);

  self = g_new0 (HmPlanner, 1);
  self->model = hm_model_ref (model);
  self->depth = depth;
  return self;
}

void
hm_planner_free (HmPlanner *self)
{
  if (self == NULL)
    return;
  hm_model_unref (self->model);
  g_free (self);
}

gboolean
hm_action_equal (const HmAction *a, const HmAction *b)
{
  if (a->kind != b->kind)
    return FALSE;
  if (a->kind == HM_ACTION_CHECK)
    return a->check == b->check;
  if (a->kind == HM_ACTION_ESCALATE)
    return TRUE;
  if (a->n_causes != b->n_causes)
    return FALSE;
  for (guint k = 0; k < a->n_causes; k++)
    {
      gboolean found = FALSE;
      for (guint j = 0; j < b->n_causes; j++)
        found |= a->causes[k] == b->causes[j];
      if (!found)
        return FALSE;
    }
  return TRUE;
}

static void
node_from_belief (const HmModel *model, const HmBelief *belief, HmNode *out)
{
  memset (out, 0, sizeof *out);
  memcpy (out->p, belief->p, sizeof (double) * (model->n_causes + 1));
  out->open = belief->open;
  for (guint w = 0; w < 2; w++)
    out->used[w] = belief->asked[w] | belief->unavailable[w] | belief->unsure[w];
}

/* Puts the node after @outcome of @check into @out, normalised; gives the outcome's probability. */
static double
node_after_outcome (const HmModel *model, const HmNode *node, guint check, guint outcome, HmNode *out)
{
  const double *row = model->checks[check].likelihood + outcome * (model->n_causes + 1);
  double total = 0;

  for (guint i = 0; i <= model->n_causes; i++)
    total += out->p[i] = node->p[i] * row[i];
  if (total > 0)
    for (guint i = 0; i <= model->n_causes; i++)
      out->p[i] /= total;
  out->open = (node->open & ~model->checks[check].closed) | model->checks[check].need;
  out->used[0] = node->used[0];
  out->used[1] = node->used[1];
  hm_belief_add (out->used, check);
  return total;
}

static double
node_after_failed_repair (const HmModel *model, const HmNode *node, const HmAction *repair, HmNode *out)
{
  double left = 0;

  *out = *node;
  for (guint k = 0; k < repair->n_causes; k++)
    out->p[repair->causes[k]] = 0;
  for (guint i = 0; i <= model->n_causes; i++)
    left += out->p[i];
  if (left > 0)
    for (guint i = 0; i <= model->n_causes; i++)
      out->p[i] /= left;
  out->open = hm_node_open_after_repair (model, node, repair);
  return left;
}

/*
 * Expected minutes of a check when the rest is planned @depth steps ahead. Gives up once what is known of it, and the bound
 * on the findings not yet looked at, is above @limit.
 */
static double
score_check (HmPlanner *self, const HmNode *node, const HmCandidate *candidate, guint depth, guint level, double limit)
{
  const HmModel *model = self->model;
  const HmModelCheck *check = &model->checks[candidate->action.check];
  HmNode *child = &self->level[level].child;
  double value = candidate->cost, rest;

  *child = *node;
  child->open = (node->open & ~check->closed) | check->need;
  rest = hm_node_bound (model, child);          /* the findings of a check average out */
  for (guint o = 0; o < check->n_outcomes && value + rest < limit; o++)
    {
      double p = node_after_outcome (model, node, candidate->action.check, o, child);
      if (p <= 0)
        continue;
      rest -= p * hm_node_bound (model, child);
      value += p * node_value (self, child, depth, level + 1);
    }
  return value + MAX (rest, 0);
}

static double
score (HmPlanner *self, const HmNode *node, const HmCandidate *candidate, guint depth, guint level, double limit)
{
  HmNode *child = &self->level[level].child;
  double left;

  if (candidate->action.kind == HM_ACTION_CHECK)
    return score_check (self, node, candidate, depth, level, limit);
  if (candidate->action.kind == HM_ACTION_ESCALATE)
    return candidate->cost;
  left = node_after_failed_repair (self->model, node, &candidate->action, child);
  return left > 0 ? candidate->cost + left * node_value (self, child, depth, level + 1) : candidate->cost;
}

/* A check tells nothing when all causes that are still possible answer it alike. */
static gboolean
is_informative (const HmModel *model, const HmNode *node, guint check)
{
  const HmModelCheck *c = &model->checks[check];
  int first = -1;

  for (guint i = 0; i <= model->n_causes; i++)
    {
      if (node->p[i] <= 0)
        continue;
      if (first < 0)
        {
          first = (int) i;
          continue;
        }
      for (guint o = 0; o < c->n_outcomes; o++)
        {
          double difference = hm_model_likelihood (model, check, o, i) - hm_model_likelihood (model, check, o, (guint) first);
          if (difference > 1e-12 || difference < -1e-12)
            return TRUE;
        }
    }
  return FALSE;
}

static guint
list_candidates (const HmModel *model, const HmNode *node, HmCandidate *out)
{
  guint n = 0;

  for (guint t = 0; t < model->n_checks; t++)
    if (!hm_belief_has (node->used, t) && is_informative (model, node, t))
      {
        HmCandidate *c = &out[n++];
        c->action = (HmAction) { .kind = HM_ACTION_CHECK, .check = t };
        c->cost = hm_node_check_cost (model, node, t, &c->access, &c->newly_open);
      }
  for (guint i = 0; i < model->n_causes; i++)
    {
      HmCandidate *c;
      if (node->p[i] <= 0)
        continue;
      c = &out[n++];
      c->action = (HmAction) { .kind = HM_ACTION_REPAIR, .causes = { i }, .n_causes = 1 };
      c->cost = hm_node_repair_cost (model, node, &c->action, &c->access, &c->newly_open);
      c = &out[n];
      hm_node_grow_batch (model, node, i, &c->action);
      c->cost = hm_node_repair_cost (model, node, &c->action, &c->access, &c->newly_open);
      n += c->action.n_causes > 1;
    }
  out[n++] = (HmCandidate) { .action = { .kind = HM_ACTION_ESCALATE }, .cost = model->other_minutes };
  return n;
}

static guint
order_key (const HmAction *action)
{
  return action->kind * 1000 + (action->kind == HM_ACTION_CHECK ? action->check : action->causes[0]);
}

/* Fewer minutes first; a tie goes to fewer newly opened steps, then the shorter one, then the earlier in the data. */
static int
compare_candidates (const HmCandidate *a, const HmCandidate *b)
{
  if (a->score < b->score - TIE || a->score > b->score + TIE)
    return a->score < b->score ? -1 : 1;
  if (a->newly_open != b->newly_open)
    return a->newly_open < b->newly_open ? -1 : 1;
  if (a->cost < b->cost - TIE || a->cost > b->cost + TIE)
    return a->cost < b->cost ? -1 : 1;
  return (int) order_key (&a->action) - (int) order_key (&b->action);
}

/* Insertion: the lists are short, and nothing may be allocated, which the C library's qsort() does not promise. */
static void
sort_candidates (HmCandidate *list, guint n)
{
  for (guint i = 1; i < n; i++)
    {
      HmCandidate moving = list[i];
      guint at = i;
      for (; at > 0 && compare_candidates (&moving, &list[at - 1]) < 0; at--)
        list[at] = list[at - 1];
      list[at] = moving;
    }
}

/* Looks @ahead steps on the best few of a ranked list. Exact for the best two; the others are given up once they are behind. */
static void
look_ahead (HmPlanner *self, const HmNode *node, guint ahead, guint level, guint beam)
{
  HmCandidate *list = self->level[level].candidates;
  double best = G_MAXDOUBLE, second = G_MAXDOUBLE;

  for (guint i = 0; i < beam; i++)
    {
      double value = list[i].score = score (self, node, &list[i], ahead, level, second);
      second = MIN (second, MAX (best, value));
      best = MIN (best, value);
    }
  sort_candidates (list, beam);
}

/* Scores every action of @node, best first; looks @depth steps ahead on the best few. */
static guint
rank_node (HmPlanner *self, const HmNode *node, guint depth, guint level)
{
  HmCandidate *list = self->level[level].candidates;
  guint n = list_candidates (self->model, node, list);
  guint beam = MIN (n, MAX (2, (self->depth <= 2 ? BEAM_TWO_STEPS : BEAM_DEEPER) - level));

  for (guint i = 0; i < n; i++)
    list[i].score = score (self, node, &list[i], 0, level, G_MAXDOUBLE);
  sort_candidates (list, n);
  self->level[level].n_candidates = n;
  for (guint ahead = 1; ahead < depth; ahead++)
    look_ahead (self, node, ahead, level, beam);
  return n;
}

/*
 * The best score one step deep. Repairs are left out: the repair-only plan (@best) already takes those in the best order by
 * probability per minute. Checks are tried in the order that was good one level up, so that @best falls early and the rest
 * is given up soon.
 */
static double
best_one_step (HmPlanner *self, const HmNode *node, guint level, double best)
{
  const HmCandidate *order = self->level[level - 1].candidates;
  guint n = self->level[level - 1].n_candidates;

  for (guint i = 0; i < n; i++)
    {
      HmCandidate check = order[i];
      if (check.action.kind != HM_ACTION_CHECK || hm_belief_has (node->used, check.action.check)
          || !is_informative (self->model, node, check.action.check))
        continue;
      check.cost = hm_node_check_cost (self->model, node, check.action.check, &check.access, &check.newly_open);
      best = MIN (best, score_check (self, node, &check, 0, level, best));
    }
  return best;
}

static double
node_value (HmPlanner *self, const HmNode *node, guint depth, guint level)
{
  double leaf = hm_node_leaf (self->model, node, NULL);

  if (depth == 0)
    return leaf;
  if (depth == 1)
    return best_one_step (self, node, level, leaf);
  rank_node (self, node, depth, level);
  return MIN (leaf, self->level[level].candidates[0].score);
}

static void
fill_plan (const HmModel *model, const HmNode *node, const HmCandidate *candidate, HmPlan *out)
{
  out->action = candidate->action;
  out->expected_minutes = candidate->score;
  out->lower_bound_minutes = hm_node_bound (model, node);
  out->access_minutes = candidate->access;
  out->work_minutes = candidate->cost - candidate->access;
}

guint
hm_planner_rank (HmPlanner *self, const HmBelief *belief, HmPlan *out, guint max)
{
  HmNode node;
  guint n;

  g_return_val_if_fail (self != NULL && belief != NULL, 0);

  node_from_belief (self->model, belief, &node);
  n = MIN (rank_node (self, &node, self->depth, 0), max);
  for (guint i = 0; i < n; i++)
    fill_plan (self->model, &node, &self->level[0].candidates[i], &out[i]);
  return n;
}

void
hm_planner_best (HmPlanner *self, const HmBelief *belief, HmPlan *out)
{
  hm_planner_rank (self, belief, out, 1);
}

double
hm_planner_repair_only (HmPlanner *self, const HmBelief *belief, HmAction *first)
{
  HmNode node;

  node_from_belief (self->model, belief, &node);
  return hm_node_leaf (self->model, &node, first);
}

double
hm_planner_after_outcome (HmPlanner *self, const HmBelief *belief, guint check, guint outcome, HmBelief *out)
{
  HmNode node, child;
  double p;

  node_from_belief (self->model, belief, &node);
  p = node_after_outcome (self->model, &node, check, outcome, &child);
  *out = *belief;
  memcpy (out->p, child.p, sizeof (double) * (self->model->n_causes + 1));
  out->open = child.open;
  hm_belief_add (out->asked, check);
  return p;
}

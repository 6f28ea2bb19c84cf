/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-planner-several.h"

#include <string.h>

#include "hm-fault-sets.h"
#include "hm-findings.h"

#define BIT(i) (G_GUINT64_CONSTANT (1) << (i))
#define TIE 1e-9

/* The machine as the planner sees it: what may be wrong, with weights that sum to the chance of getting here. */
typedef struct {
  const HmModel *model;
  guint64 faults[HM_PLANNER_SEVERAL_MOST_SETS];
  double weight[HM_PLANNER_SEVERAL_MOST_SETS];
  guint n;
  HmModelSet open;
} State;

typedef struct { HmAction action; double score, cost, access; guint newly_open; } Scored;

static double
mass_of (const State *state)
{
  double mass = 0;

  for (guint x = 0; x < state->n; x++)
    mass += state->weight[x];
  return mass;
}

static guint64
causes_of (const HmAction *repair)
{
  guint64 set = 0;

  for (guint k = 0; k < repair->n_causes; k++)
    set |= BIT (repair->causes[k]);
  return set;
}

static double
repair_cost (const State *state, const HmAction *repair, HmModelSet *need)
{
  double work = state->model->verify_minutes;

  *need = 0;
  for (guint k = 0; k < repair->n_causes; k++)
    {
      *need |= state->model->causes[repair->causes[k]].need;
      work += state->model->causes[repair->causes[k]].repair_minutes;
    }
  return work + hm_model_set_minutes (state->model, *need & ~state->open);
}

/* Chance that the repair leaves nothing wrong. */
static double
fixing_mass (const State *state, const HmAction *repair)
{
  guint64 mended = causes_of (repair);
  double mass = 0;

  for (guint x = 0; x < state->n; x++)
    if ((state->faults[x] & ~mended) == 0)
      mass += state->weight[x];
  return mass;
}

/* Chance that the repair mends anything at all. */
static double
touching_mass (const State *state, const HmAction *repair)
{
  guint64 mended = causes_of (repair);
  double mass = 0;

  for (guint x = 0; x < state->n; x++)
    if ((state->faults[x] & mended) != 0)
      mass += state->weight[x];
  return mass;
}

/* The complaint persists: what the repair mended is gone, sets with nothing left are out. */
static void
after_failed_repair (State *state, const HmAction *repair)
{
  guint64 mended = causes_of (repair);
  HmModelSet need;
  guint n = 0;

  repair_cost (state, repair, &need);
  for (guint x = 0; x < state->n; x++)
    if ((state->faults[x] & ~mended) != 0)
      {
        state->faults[n] = state->faults[x] & ~mended;
        state->weight[n++] = state->weight[x];
      }
  state->n = n;
  state->open = (state->open | need) & ~state->model->blocking;
}

typedef double (*MassFunc) (const State *state, const HmAction *repair);

/* The batch with the most of @mass per minute, grown one cause at a time. FALSE when no repair has any. */
static gboolean
best_batch (const State *state, MassFunc mass, HmAction *out)
{
  double best = 0;
  gboolean grew = TRUE;

  *out = (HmAction) { .kind = HM_ACTION_REPAIR };
  while (grew && out->n_causes < state->model->max_batch)
    {
      int pick = -1;
      for (guint i = 0; i < state->model->n_causes; i++)
        {
          HmAction grown = *out;
          HmModelSet need;
          double rate;
          if (causes_of (out) & BIT (i))
            continue;
          grown.causes[grown.n_causes++] = i;
          rate = mass (state, &grown) / MAX (repair_cost (state, &grown, &need), TIE);
          if (rate > best)
            {
              best = rate;
              pick = (int) i;
            }
        }
      if ((grew = pick >= 0))
        out->causes[out->n_causes++] = (guint) pick;
    }
  return out->n_causes > 0;
}

/* Minutes of the repair-only plan that takes batches by @mass, stopping where sending out is cheaper; weighted by mass. */
static double
greedy_leaf (const State *start, MassFunc mass, HmAction *first)
{
  double cost_times_mass[2 * HM_MODEL_MAX_CAUSES], mass_before[2 * HM_MODEL_MAX_CAUSES + 1], value;
  State state = *start;
  HmAction batch;
  guint n = 0;

  mass_before[0] = mass_of (&state);
  *first = (HmAction) { .kind = HM_ACTION_ESCALATE };
  while (n < 2 * HM_MODEL_MAX_CAUSES && mass_before[n] > 0
         && (best_batch (&state, mass, &batch) || best_batch (&state, touching_mass, &batch)))
    {
      HmModelSet need;
      if (n == 0)
        *first = batch;
      cost_times_mass[n] = repair_cost (&state, &batch, &need) * mass_before[n];
      after_failed_repair (&state, &batch);
      mass_before[++n] = mass_of (&state);
    }
  value = state.model->other_minutes * mass_before[n];
  for (guint k = n; k-- > 0;)
    value = MIN (cost_times_mass[k] + value, state.model->other_minutes * mass_before[k]);
  if (value >= state.model->other_minutes * mass_before[0])
    *first = (HmAction) { .kind = HM_ACTION_ESCALATE };
  return value;
}

static double
leaf (const State *state, HmAction *first)
{
  HmAction by_fixing, by_touching;
  double fixing = greedy_leaf (state, fixing_mass, &by_fixing), touching = greedy_leaf (state, touching_mass, &by_touching);

  if (first != NULL)
    *first = fixing <= touching ? by_fixing : by_touching;
  return MIN (fixing, touching);
}

/* Everything that is wrong told at once: no plan averages less. */
static double
bound (const State *state)
{
  const HmModel *model = state->model;
  double sum = 0;

  for (guint x = 0; x < state->n; x++)
    {
      double minutes = model->verify_minutes;
      HmModelSet need = 0;
      for (guint64 rest = state->faults[x]; rest != 0; rest &= rest - 1)
        {
          guint i = (guint) __builtin_ctzll (rest);
          minutes += i < model->n_causes ? model->causes[i].repair_minutes : model->other_minutes;
          need |= i < model->n_causes ? model->causes[i].need : 0;
        }
      minutes += hm_model_set_minutes (model, need & ~state->open);
      sum += state->weight[x] * MIN (minutes, model->other_minutes);
    }
  return sum;
}

static double
score_check (const State *state, const HmFindings *findings, guint at, Scored *out)
{
  const HmModelCheck *check = &state->model->checks[at];
  HmModelSet kept = state->open & ~check->closed, to_open = check->need & ~kept;
  double value, below[HM_PLANNER_SEVERAL_MOST_SETS] = { 0 };

  out->access = hm_model_set_minutes (state->model, to_open);
  out->newly_open = (guint) __builtin_popcountll (to_open);
  out->cost = check->minutes + out->access;
  value = out->cost;
  for (guint o = 0; o < check->n_outcomes; o++)
    {
      State after = *state;
      after.open = kept | check->need;
      for (guint x = 0; x < state->n; x++)
        {
          double upto = 1;
          for (guint64 rest = state->faults[x]; rest != 0; rest &= rest - 1)
            upto *= hm_findings_cumulative (findings, at, o, (guint) __builtin_ctzll (rest));
          after.weight[x] = state->weight[x] * MAX (upto - below[x], 0);
          below[x] = upto;
        }
      value += leaf (&after, NULL);
    }
  return value;
}

static void
score_repair (const State *state, const HmAction *repair, Scored *out)
{
  State after = *state;
  HmModelSet need;

  out->action = *repair;
  out->cost = repair_cost (state, repair, &need);
  need &= ~state->open;
  out->access = hm_model_set_minutes (state->model, need);
  out->newly_open = (guint) __builtin_popcountll (need);
  after_failed_repair (&after, repair);
  out->score = out->cost + leaf (&after, NULL);
}

static gboolean
is_better (const Scored *a, const Scored *b)
{
  if (a->score < b->score - TIE || a->score > b->score + TIE)
    return a->score < b->score;
  if (a->newly_open != b->newly_open)
    return a->newly_open < b->newly_open;
  return a->cost < b->cost - TIE;
}

static void
keep_better (Scored *best, const Scored *candidate)
{
  if (is_better (candidate, best))
    *best = *candidate;
}

static void
try_repairs (const State *state, Scored *best)
{
  HmAction batch;
  Scored candidate = { .action = { .kind = HM_ACTION_REPAIR } };
  HmAction first;

  for (guint i = 0; i < state->model->n_causes; i++)
    {
      HmAction one = { .kind = HM_ACTION_REPAIR, .causes = { i }, .n_causes = 1 };
      if (touching_mass (state, &one) <= 0)
        continue;
      score_repair (state, &one, &candidate);
      keep_better (best, &candidate);
    }
  if (best_batch (state, fixing_mass, &batch) && batch.n_causes > 1)
    {
      score_repair (state, &batch, &candidate);
      keep_better (best, &candidate);
    }
  leaf (state, &first);
  if (first.kind == HM_ACTION_REPAIR && first.n_causes > 1)
    {
      score_repair (state, &first, &candidate);
      keep_better (best, &candidate);
    }
}

static void
state_from_sets (State *state, const HmModel *model, const HmFaultSets *sets, HmModelSet open)
{
  *state = (State) { .model = model, .n = sets->n, .open = open };
  for (guint x = 0; x < sets->n; x++)
    {
      state->faults[x] = sets->sets[x].faults;
      state->weight[x] = sets->sets[x].weight;
    }
}

gboolean
hm_planner_several_best (const HmModel *model, const HmEvidence *events, guint n, HmPlan *out, double *kept, GError **error)
{
  g_auto (HmFaultSets) sets = { NULL };
  g_auto (HmFindings) findings = { NULL };
  Scored best = { .action = { .kind = HM_ACTION_ESCALATE }, .score = model->other_minutes, .cost = model->other_minutes };
  HmBelief where;
  State state;

  if (!hm_fault_sets_init (&sets, model, events, n, HM_PLANNER_SEVERAL_MOST_SETS))
    {
      g_set_error_literal (error, HM_MODEL_ERROR, HM_MODEL_ERROR_VALUE, "the evidence rules out every cause of the model");
      return FALSE;
    }
  hm_findings_init (&findings, model, events, n);
  hm_belief_compute (model, events, n, &where, NULL);      /* for what stands open and what was asked */
  state_from_sets (&state, model, &sets, where.open);
  for (guint t = 0; t < model->n_checks; t++)
    {
      Scored candidate = { .action = { .kind = HM_ACTION_CHECK, .check = t } };
      if (hm_belief_has (where.asked, t) || hm_belief_has (where.unavailable, t) || hm_belief_has (where.unsure, t))
        continue;
      candidate.score = score_check (&state, &findings, t, &candidate);
      keep_better (&best, &candidate);
    }
  try_repairs (&state, &best);
  *out = (HmPlan) { best.action, best.score, bound (&state), best.cost - best.access, best.access };
  if (kept != NULL)
    *kept = sets.kept;
  return TRUE;
}

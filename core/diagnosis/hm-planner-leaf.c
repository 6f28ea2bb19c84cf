/* SPDX-License-Identifier: GPL-3.0-or-later */
/*
 * The ends of the search: what it costs to repair and verify one cause after another (expected cost of repair, after
 * Heckerman, Breese and Rommelse 1995), and a bound that no plan can beat.
 */
#include "hm-planner-private.h"

#include <string.h>

double
hm_node_check_cost (const HmModel *model, const HmNode *node, guint check, double *access, guint *newly_open)
{
  const HmModelCheck *c = &model->checks[check];
  HmModelSet to_open = c->need & ~(node->open & ~c->closed);

  *access = hm_model_set_minutes (model, to_open);
  *newly_open = (guint) __builtin_popcountll (to_open);
  return c->minutes + *access;
}

double
hm_node_repair_cost (const HmModel *model, const HmNode *node, const HmAction *repair, double *access, guint *newly_open)
{
  HmModelSet need = 0;
  double work = model->verify_minutes;

  for (guint k = 0; k < repair->n_causes; k++)
    {
      need |= model->causes[repair->causes[k]].need;
      work += model->causes[repair->causes[k]].repair_minutes;
    }
  need &= ~node->open;
  *access = hm_model_set_minutes (model, need);
  *newly_open = (guint) __builtin_popcountll (need);
  return work + *access;
}

double
hm_node_mass (const HmNode *node, const HmAction *repair)
{
  double mass = 0;

  for (guint k = 0; k < repair->n_causes; k++)
    mass += node->p[repair->causes[k]];
  return mass;
}

HmModelSet
hm_node_open_after_repair (const HmModel *model, const HmNode *node, const HmAction *repair)
{
  HmModelSet open = node->open;

  for (guint k = 0; k < repair->n_causes; k++)
    open |= model->causes[repair->causes[k]].need;
  return open & ~model->blocking;
}

/* What adding a cause to a batch comes to, kept up while the batch grows. */
typedef struct { HmModelSet need; double work, mass; } Batch;

static double
batch_rate (const HmModel *model, HmModelSet open, const Batch *batch)
{
  return batch->mass / MAX (batch->work + hm_model_set_minutes (model, batch->need & ~open), 1e-9);
}

static void
batch_add (const HmModel *model, const double *p, guint cause, Batch *batch)
{
  batch->need |= model->causes[cause].need;
  batch->work += model->causes[cause].repair_minutes;
  batch->mass += p[cause];
}

static gboolean
batch_has (const HmAction *batch, guint cause)
{
  for (guint k = 0; k < batch->n_causes; k++)
    if (batch->causes[k] == cause)
      return TRUE;
  return FALSE;
}

/* The cause that raises the batch's probability per minute most; -1 when none raises it. */
static int
best_addition (const HmModel *model, const HmNode *node, const HmAction *action, const Batch *batch, double *rate)
{
  int pick = -1;

  for (guint i = 0; i < model->n_causes; i++)
    {
      Batch grown;
      double grown_rate;
      if (node->p[i] <= *rate * model->causes[i].repair_minutes)     /* cannot raise it, even with nothing to open */
        continue;
      grown = *batch;
      batch_add (model, node->p, i, &grown);
      grown_rate = batch_rate (model, node->open, &grown);
      if (grown_rate > *rate && !batch_has (action, i))
        {
          *rate = grown_rate;
          pick = (int) i;
        }
    }
  return pick;
}

/* Gives the minutes of the batch, opening included. */
static double
grow_batch (const HmModel *model, const HmNode *node, guint seed, HmAction *out)
{
  Batch batch = { .work = model->verify_minutes };
  double rate;

  *out = (HmAction) { .kind = HM_ACTION_REPAIR, .causes = { seed }, .n_causes = 1 };
  batch_add (model, node->p, seed, &batch);
  rate = batch_rate (model, node->open, &batch);
  while (out->n_causes < model->max_batch)
    {
      int pick = best_addition (model, node, out, &batch, &rate);
      if (pick < 0)
        break;
      out->causes[out->n_causes++] = (guint) pick;
      batch_add (model, node->p, (guint) pick, &batch);
    }
  return batch.work + hm_model_set_minutes (model, batch.need & ~node->open);
}

void
hm_node_grow_batch (const HmModel *model, const HmNode *node, guint seed, HmAction *out)
{
  grow_batch (model, node, seed, out);
}

/* Minutes of repairing each cause alone, as the machine stands. With nothing open they stand in the model. */
static void
price_causes (const HmModel *model, HmModelSet open, double *minutes)
{
  if (open == 0)
    memcpy (minutes, model->shut_minutes, sizeof (double) * model->n_causes);
  else
    for (guint i = 0; i < model->n_causes; i++)
      minutes[i] = model->shut_minutes[i] - hm_model_set_minutes (model, model->causes[i].need & open);
}

static int
likeliest_per_minute (const HmModel *model, const HmNode *node, const double *minutes)
{
  double best = 0;
  int pick = -1;

  for (guint i = 0; i < model->n_causes; i++)
    if (node->p[i] > best * minutes[i])
      {
        best = node->p[i] / minutes[i];
        pick = (int) i;
      }
  return pick;
}

double
hm_node_leaf (const HmModel *model, const HmNode *node, HmAction *first)
{
  double cost_times_mass[HM_MODEL_MAX_CAUSES], mass_before[HM_MODEL_MAX_CAUSES + 1], minutes[HM_MODEL_MAX_CAUSES];
  HmNode state = *node;
  HmAction batch;
  double mass = 0, value;
  guint n = 0;
  int seed;

  for (guint i = 0; i <= model->n_causes; i++)
    mass += node->p[i];
  mass_before[0] = mass;
  price_causes (model, state.open, minutes);
  while ((seed = likeliest_per_minute (model, &state, minutes)) >= 0)
    {
      HmModelSet open = state.open;
      cost_times_mass[n] = grow_batch (model, &state, (guint) seed, &batch) * mass_before[n];
      if (n == 0 && first != NULL)
        *first = batch;
      state.open = hm_node_open_after_repair (model, &state, &batch);
      mass = mass_before[n] - hm_node_mass (&state, &batch);
      for (guint k = 0; k < batch.n_causes; k++)
        state.p[batch.causes[k]] = 0;
      mass_before[++n] = MAX (mass, 0);
      if (state.open != open)
        price_causes (model, state.open, minutes);
    }
  /* stop where sending the job out is cheaper than the rest of the list */
  value = model->other_minutes * mass_before[n];
  for (guint k = n; k-- > 0;)
    value = MIN (cost_times_mass[k] + value, model->other_minutes * mass_before[k]);
  if (first != NULL && (n == 0 || value >= model->other_minutes * mass_before[0]))
    *first = (HmAction) { .kind = HM_ACTION_ESCALATE };
  return value;
}

double
hm_node_bound (const HmModel *model, const HmNode *node)
{
  double bound = node->p[model->n_causes] * model->other_minutes, minutes[HM_MODEL_MAX_CAUSES];

  price_causes (model, node->open, minutes);
  for (guint i = 0; i < model->n_causes; i++)
    bound += node->p[i] * MIN (model->other_minutes, minutes[i]);
  return bound;
}

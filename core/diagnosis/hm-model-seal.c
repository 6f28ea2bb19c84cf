/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Checking a model's numbers and closing its access sets over their requirements. */
#include "hm-model.h"

#include <math.h>

#define SHORTEST_MINUTES 1e-9     /* so that a free repair has a rate */

static gboolean
refuse (GError **error, HmModelError code, const char *entry, const char *what)
{
  g_set_error (error, HM_MODEL_ERROR, code, "%s: %s", entry, what);
  return FALSE;
}

static gboolean
is_minutes (double value)
{
  return isfinite (value) && value >= 0 && value < 1e5;
}

static gboolean
is_share (double value)
{
  return isfinite (value) && value >= 0 && value <= 1;
}

static gboolean
check_sizes (const HmModel *self, GError **error)
{
  const struct { const char *what; guint count, most; } sizes[] = {
    { "causes", self->n_causes, HM_MODEL_MAX_CAUSES },
    { "access", self->n_access, HM_MODEL_MAX_ACCESS },
    { "tests", self->n_checks, HM_MODEL_MAX_CHECKS },
    { "max_batch", self->max_batch, HM_MODEL_MAX_BATCH },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (sizes); i++)
    if (sizes[i].count > sizes[i].most)
      {
        g_set_error (error, HM_MODEL_ERROR, HM_MODEL_ERROR_SIZE, "%s: there are %u; at most %u are accepted",
                     sizes[i].what, sizes[i].count, sizes[i].most);
        return FALSE;
      }
  if (self->n_causes == 0 || self->max_batch == 0)
    return refuse (error, HM_MODEL_ERROR_SIZE, "causes, max_batch", "at least one is needed");
  return TRUE;
}

/* Puts all transitive requirements into every step's set; a step that comes to require itself is a cycle. */
static gboolean
close_requirements (HmModel *self, GError **error)
{
  gboolean grew = TRUE;

  while (grew)
    {
      grew = FALSE;
      for (guint a = 0; a < self->n_access; a++)
        {
          HmModelSet all = self->access[a].requires;
          for (HmModelSet rest = all; rest != 0; rest &= rest - 1)
            all |= self->access[g_bit_nth_lsf (rest, -1)].requires;
          grew |= all != self->access[a].requires;
          self->access[a].requires = all;
        }
    }
  for (guint a = 0; a < self->n_access; a++)
    if (self->access[a].requires >> a & 1)
      return refuse (error, HM_MODEL_ERROR_VALUE, self->access[a].id, "requires itself, directly or in a circle");
  return TRUE;
}

static void
find_dependents (HmModel *self)
{
  for (guint a = 0; a < self->n_access; a++)
    {
      self->access[a].dependents = G_GUINT64_CONSTANT (1) << a;
      for (guint b = 0; b < self->n_access; b++)
        if (self->access[b].requires >> a & 1)
          self->access[a].dependents |= G_GUINT64_CONSTANT (1) << b;
    }
}

static HmModelSet
with_requirements (const HmModel *self, HmModelSet set)
{
  HmModelSet all = set;

  for (; set != 0; set &= set - 1)
    all |= self->access[g_bit_nth_lsf (set, -1)].requires;
  return all;
}

static HmModelSet
with_dependents (const HmModel *self, HmModelSet set)
{
  HmModelSet all = set;

  for (; set != 0; set &= set - 1)
    all |= self->access[g_bit_nth_lsf (set, -1)].dependents;
  return all;
}

static gboolean
check_columns (const HmModel *self, const HmModelCheck *check, GError **error)
{
  for (guint i = 0; i <= self->n_causes; i++)
    {
      double sum = 0;
      for (guint o = 0; o < check->n_outcomes; o++)
        {
          double p = check->likelihood[o * (self->n_causes + 1) + i];
          if (!is_share (p))
            return refuse (error, HM_MODEL_ERROR_VALUE, check->id, "a likelihood is not between 0 and 1");
          sum += p;
        }
      if (fabs (sum - 1) > 1e-6)
        {
          g_set_error (error, HM_MODEL_ERROR, HM_MODEL_ERROR_VALUE, "%s: the likelihoods of cause %s come to %g, not 1",
                       check->id, i < self->n_causes ? self->causes[i].id : "_other", sum);
          return FALSE;
        }
    }
  return TRUE;
}

static gboolean
check_edges (const HmModelCheck *check, GError **error)
{
  if (!check->numeric)
    return TRUE;
  if (!isfinite (check->meter_sd) || check->meter_sd <= 0)
    return refuse (error, HM_MODEL_ERROR_VALUE, check->id, "meter_sd has to be above 0");
  for (guint o = 0; o + 1 < check->n_outcomes; o++)
    {
      if (!isfinite (check->edges[o]))
        return refuse (error, HM_MODEL_ERROR_VALUE, check->id, "an edge is not a number");
      if (o > 0 && (check->normal_above ? check->edges[o] >= check->edges[o - 1] : check->edges[o] <= check->edges[o - 1]))
        return refuse (error, HM_MODEL_ERROR_VALUE, check->id, "the edges have to run from the normal side to the worst");
    }
  return TRUE;
}

static gboolean
seal_check (HmModel *self, HmModelCheck *check, GError **error)
{
  if (!is_minutes (check->minutes))
    return refuse (error, HM_MODEL_ERROR_VALUE, check->id, "minutes have to be 0 or more");
  if (check->n_outcomes < 2 || check->n_outcomes > HM_MODEL_MAX_OUTCOMES)
    return refuse (error, HM_MODEL_ERROR_SIZE, check->id, "2 to 12 outcomes are accepted");
  check->need = with_requirements (self, check->need);
  check->closed = with_dependents (self, check->closed);
  if (check->need & check->closed)
    return refuse (error, HM_MODEL_ERROR_VALUE, check->id, "needs a step both open and shut");
  return check_columns (self, check, error) && check_edges (check, error);
}

static gboolean
check_causes (const HmModel *self, GError **error)
{
  double sum = self->other_prior;

  for (guint i = 0; i < self->n_causes; i++)
    {
      const HmModelCause *cause = &self->causes[i];
      if (!isfinite (cause->prior) || cause->prior <= 0
          || (self->mode == HM_MODEL_SEVERAL_FAULTS && cause->prior >= 1))
        return refuse (error, HM_MODEL_ERROR_VALUE, cause->id, "the prior has to be above 0 (and below 1 with several faults)");
      if (!is_minutes (cause->repair_minutes))
        return refuse (error, HM_MODEL_ERROR_VALUE, cause->id, "repair_minutes have to be 0 or more");
      sum += cause->prior;
    }
  if (!isfinite (self->other_prior) || self->other_prior < 0 || !isfinite (sum))
    return refuse (error, HM_MODEL_ERROR_VALUE, "other", "the prior has to be 0 or more");
  if (!is_minutes (self->other_minutes) || !is_minutes (self->verify_minutes))
    return refuse (error, HM_MODEL_ERROR_VALUE, "other, verify_minutes", "minutes have to be 0 or more");
  return TRUE;
}

static void
tabulate_set_minutes (HmModel *self)
{
  for (guint byte = 0; byte < 8; byte++)
    for (guint bits = 1; bits < 256; bits++)
      {
        guint low = (guint) g_bit_nth_lsf (bits, -1), step = 8 * byte + low;
        double minutes = step < self->n_access ? self->access[step].open_minutes + self->access[step].close_minutes : 0;
        self->set_minutes[byte * 256 + bits] = minutes + self->set_minutes[byte * 256 + (bits & (bits - 1))];
      }
}

gboolean
hm_model_seal (HmModel *self, GError **error)
{
  g_return_val_if_fail (self != NULL, FALSE);

  if (!check_sizes (self, error) || !check_causes (self, error) || !close_requirements (self, error))
    return FALSE;
  find_dependents (self);
  self->blocking = 0;
  for (guint a = 0; a < self->n_access; a++)
    {
      const HmModelAccess *step = &self->access[a];
      if (!is_minutes (step->open_minutes) || !is_minutes (step->close_minutes))
        return refuse (error, HM_MODEL_ERROR_VALUE, step->id, "minutes have to be 0 or more");
      if (step->blocks_verify)
        self->blocking |= step->dependents;
    }
  tabulate_set_minutes (self);
  for (guint i = 0; i < self->n_causes; i++)
    {
      self->causes[i].need = with_requirements (self, self->causes[i].need);
      self->shut_minutes[i] = MAX (self->verify_minutes + self->causes[i].repair_minutes
                                     + hm_model_set_minutes (self, self->causes[i].need), SHORTEST_MINUTES);
    }
  for (guint i = 0; i < self->n_incidents; i++)
    for (guint c = 0; c <= self->n_causes; c++)
      if (!is_share (self->incidents[i].adds[c]))
        return refuse (error, HM_MODEL_ERROR_VALUE, self->incidents[i].id, "a chance is not between 0 and 1");
  for (guint i = 0; i < self->n_checks; i++)
    if (!seal_check (self, &self->checks[i], error))
      return FALSE;
  return TRUE;
}

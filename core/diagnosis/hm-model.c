/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-model.h"

#include <math.h>

/* The object behind the public struct: the reference count stays private. */
typedef struct
{
  HmModel   model;
  gatomicrefcount count;
} HmModelHolder;

G_DEFINE_QUARK (hm-model-error-quark, hm_model_error)

HmModel *
hm_model_new (guint n_causes, guint n_access, guint n_checks, guint n_incidents)
{
  HmModelHolder *holder = g_new0 (HmModelHolder, 1);
  HmModel *self = &holder->model;

  g_atomic_ref_count_init (&holder->count);
  self->n_causes = n_causes;
  self->n_access = n_access;
  self->n_checks = n_checks;
  self->n_incidents = n_incidents;
  self->causes = g_new0 (HmModelCause, n_causes);
  self->access = g_new0 (HmModelAccess, n_access);
  self->checks = g_new0 (HmModelCheck, n_checks);
  self->incidents = g_new0 (HmModelIncident, n_incidents);
  self->shut_minutes = g_new0 (double, n_causes);
  self->set_minutes = g_new0 (double, 8 * 256);
  self->max_batch = 1;
  return self;
}

HmModel *
hm_model_ref (HmModel *self)
{
  g_atomic_ref_count_inc (&((HmModelHolder *) self)->count);
  return self;
}

static void
clear_check (HmModelCheck *check)
{
  g_free (check->id);
  for (guint o = 0; o < check->n_outcomes; o++)
    g_free (check->outcome_ids[o]);
  g_free (check->likelihood);
  g_free (check->unit);
  g_strfreev (check->tools);
}

void
hm_model_unref (HmModel *self)
{
  if (self == NULL || !g_atomic_ref_count_dec (&((HmModelHolder *) self)->count))
    return;
  for (guint i = 0; i < self->n_causes; i++)
    g_free (self->causes[i].id);
  for (guint i = 0; i < self->n_access; i++)
    g_free (self->access[i].id);
  for (guint i = 0; i < self->n_checks; i++)
    clear_check (&self->checks[i]);
  for (guint i = 0; i < self->n_incidents; i++)
    {
      g_free (self->incidents[i].id);
      g_free (self->incidents[i].adds);
    }
  g_free (self->causes);
  g_free (self->access);
  g_free (self->checks);
  g_free (self->incidents);
  g_free (self->shut_minutes);
  g_free (self->set_minutes);
  g_free (self->complaint);
  g_free (self);
}

#define FIND(array, count, wanted)                                                                                     \
  for (guint i = 0; i < (count); i++)                                                                                  \
    if (g_strcmp0 ((array)[i].id, (wanted)) == 0)                                                                      \
      return (int) i;                                                                                                  \
  return -1

int
hm_model_find_cause (const HmModel *self, const char *id)
{
  if (g_strcmp0 (id, "_other") == 0)
    return (int) self->n_causes;
  FIND (self->causes, self->n_causes, id);
}

int
hm_model_find_check (const HmModel *self, const char *id)
{
  FIND (self->checks, self->n_checks, id);
}

int
hm_model_find_incident (const HmModel *self, const char *id)
{
  FIND (self->incidents, self->n_incidents, id);
}

int
hm_model_find_access (const HmModel *self, const char *id)
{
  FIND (self->access, self->n_access, id);
}

int
hm_model_find_outcome (const HmModel *self, guint check, const char *id)
{
  for (guint o = 0; o < self->checks[check].n_outcomes; o++)
    if (g_strcmp0 (self->checks[check].outcome_ids[o], id) == 0)
      return (int) o;
  return -1;
}

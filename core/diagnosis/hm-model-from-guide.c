/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-model-from-guide.h"

#include <string.h>

static HmModelSet
set_of (const guint *indices, guint n)
{
  HmModelSet set = 0;

  for (guint i = 0; i < n; i++)
    set |= G_GUINT64_CONSTANT (1) << indices[i];
  return set;
}

static void
fill_causes (HmModel *model, const HmCause *causes, double other_share)
{
  double rates = 0;

  for (guint i = 0; i < model->n_causes; i++)
    rates += causes[i].rate;
  for (guint i = 0; i < model->n_causes; i++)
    {
      const HmRemedy *remedy = causes[i].remedy;
      model->causes[i].id = g_strdup (causes[i].id);
      model->causes[i].prior = (1 - other_share) * causes[i].rate / rates;
      model->causes[i].repair_minutes = remedy->time.minutes;
      model->causes[i].need = set_of (remedy->access, remedy->n_access);
    }
}

static void
fill_access (HmModel *model, const HmAccessStep *steps)
{
  for (guint i = 0; i < model->n_access; i++)
    {
      model->access[i].id = g_strdup (steps[i].id);
      model->access[i].open_minutes = steps[i].open.minutes;
      model->access[i].close_minutes = steps[i].close.minutes;
      model->access[i].requires = steps[i].requires;
      model->access[i].blocks_verify = steps[i].blocks_verify;
    }
}

static char **
tool_ids (const HmTool * const *tools)
{
  GPtrArray *ids = g_ptr_array_new ();

  for (; tools != NULL && *tools != NULL; tools++)
    g_ptr_array_add (ids, g_strdup ((*tools)->id));
  g_ptr_array_add (ids, NULL);
  return (char **) g_ptr_array_free (ids, FALSE);
}

static void
fill_check (HmModel *model, HmModelCheck *to, const HmCheck *from)
{
  gsize cells = (gsize) from->n_findings * (model->n_causes + 1);

  to->id = g_strdup (from->id);
  to->minutes = from->time.minutes;
  to->need = set_of (from->access, from->n_access);
  to->closed = set_of (from->closed, from->n_closed);
  to->tools = tool_ids (from->tools);
  for (guint o = 0; o < from->n_findings && o < HM_MODEL_MAX_OUTCOMES; o++)
    to->outcome_ids[to->n_outcomes++] = g_strdup (from->findings[o].id);
  to->likelihood = g_new (double, cells);
  memcpy (to->likelihood, from->likelihood, cells * sizeof (double));
  to->numeric = from->is_reading;
  if (!from->is_reading)
    return;
  to->normal_above = from->normal_above;
  to->meter_sd = from->meter_sd;
  to->unit = g_strdup (hm_unit_symbol (hm_quantity_kind_base_unit (from->kind)));
  for (guint o = 0; o + 1 < to->n_outcomes; o++)
    to->edges[o] = from->edges[o];
}

static void
fill_incidents (HmModel *model, const HmIncident *incidents)
{
  for (guint i = 0; i < model->n_incidents; i++)
    {
      model->incidents[i].id = g_strdup (incidents[i].id);
      model->incidents[i].adds = g_new0 (double, model->n_causes + 1);
      memcpy (model->incidents[i].adds, incidents[i].adds, model->n_causes * sizeof (double));
    }
}

HmModel *
hm_model_new_from_guide (const HmGuide *guide, GError **error)
{
  guint n_causes, n_access, n_checks, n_incidents;
  const HmComplaint *complaint = hm_guide_get_complaint (guide);
  const HmCause *causes = hm_guide_get_causes (guide, &n_causes);
  const HmAccessStep *access = hm_guide_get_access (guide, &n_access);
  const HmCheck *checks = hm_guide_get_checks (guide, &n_checks);
  const HmIncident *incidents = hm_guide_get_incidents (guide, &n_incidents);
  g_autoptr (HmModel) model = hm_model_new (n_causes, n_access, n_checks, n_incidents);

  model->complaint = g_strdup (complaint->id);
  model->mode = HM_MODEL_SINGLE_FAULT;
  model->other_prior = complaint->other_share;
  model->other_minutes = complaint->escalate_time.minutes;
  model->verify_minutes = complaint->verify_time.minutes;
  model->max_batch = complaint->max_batch;
  fill_causes (model, causes, complaint->other_share);
  fill_access (model, access);
  for (guint i = 0; i < n_checks; i++)
    fill_check (model, &model->checks[i], &checks[i]);
  fill_incidents (model, incidents);
  return hm_model_seal (model, error) ? g_steal_pointer (&model) : NULL;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-model-json.h"

#include "hm-json-writer.h"

static void
add_access_list (JsonBuilder *builder, const HmModel *model, const char *member, HmModelSet set)
{
  hm_json_begin_array (builder, member);
  for (; set != 0; set &= set - 1)
    json_builder_add_string_value (builder, model->access[g_bit_nth_lsf (set, -1)].id);
  json_builder_end_array (builder);
}

static void
add_causes (JsonBuilder *builder, const HmModel *model)
{
  hm_json_begin_array (builder, "causes");
  for (guint i = 0; i < model->n_causes; i++)
    {
      json_builder_begin_object (builder);
      hm_json_add_text (builder, "id", model->causes[i].id);
      hm_json_add_number (builder, "prior", model->causes[i].prior);
      hm_json_add_number (builder, "repair_minutes", model->causes[i].repair_minutes);
      add_access_list (builder, model, "repair_access", model->causes[i].need);
      json_builder_end_object (builder);
    }
  json_builder_end_array (builder);
  hm_json_begin_object (builder, "other");
  hm_json_add_number (builder, "prior", model->other_prior);
  hm_json_add_number (builder, "minutes", model->other_minutes);
  json_builder_end_object (builder);
}

static void
add_access (JsonBuilder *builder, const HmModel *model)
{
  hm_json_begin_array (builder, "access");
  for (guint i = 0; i < model->n_access; i++)
    {
      json_builder_begin_object (builder);
      hm_json_add_text (builder, "id", model->access[i].id);
      hm_json_add_number (builder, "minutes_open", model->access[i].open_minutes);
      hm_json_add_number (builder, "minutes_close", model->access[i].close_minutes);
      add_access_list (builder, model, "requires", model->access[i].requires);
      hm_json_add_flag (builder, "blocks_verify", model->access[i].blocks_verify);
      json_builder_end_object (builder);
    }
  json_builder_end_array (builder);
}

static void
add_likelihood (JsonBuilder *builder, const HmModel *model, guint check)
{
  const HmModelCheck *c = &model->checks[check];

  hm_json_begin_object (builder, "likelihood");
  for (guint i = 0; i <= model->n_causes; i++)
    {
      hm_json_begin_object (builder, i < model->n_causes ? model->causes[i].id : "_other");
      for (guint o = 0; o < c->n_outcomes; o++)
        hm_json_add_number (builder, c->outcome_ids[o], hm_model_likelihood (model, check, o, i));
      json_builder_end_object (builder);
    }
  json_builder_end_object (builder);
}

static void
add_numeric (JsonBuilder *builder, const HmModelCheck *check)
{
  hm_json_begin_object (builder, "numeric");
  if (check->unit != NULL)
    hm_json_add_text (builder, "unit", check->unit);
  hm_json_begin_array (builder, "edges");
  for (guint o = 0; o + 1 < check->n_outcomes; o++)
    json_builder_add_double_value (builder, check->edges[o]);
  json_builder_end_array (builder);
  hm_json_add_text (builder, "ok_side", check->normal_above ? "above" : "below");
  hm_json_add_number (builder, "meter_sd", check->meter_sd);
  json_builder_end_object (builder);
}

static void
add_check (JsonBuilder *builder, const HmModel *model, guint at)
{
  const HmModelCheck *check = &model->checks[at];

  json_builder_begin_object (builder);
  hm_json_add_text (builder, "id", check->id);
  hm_json_add_number (builder, "minutes", check->minutes);
  add_access_list (builder, model, "access", check->need);
  add_access_list (builder, model, "closed", check->closed);
  hm_json_begin_array (builder, "tools");
  for (char **tool = check->tools; tool != NULL && *tool != NULL; tool++)
    json_builder_add_string_value (builder, *tool);
  json_builder_end_array (builder);
  hm_json_begin_array (builder, "outcomes");
  for (guint o = 0; o < check->n_outcomes; o++)
    json_builder_add_string_value (builder, check->outcome_ids[o]);
  json_builder_end_array (builder);
  add_likelihood (builder, model, at);
  if (check->numeric)
    add_numeric (builder, check);
  json_builder_end_object (builder);
}

static void
add_incidents (JsonBuilder *builder, const HmModel *model)
{
  hm_json_begin_array (builder, "incidents");
  for (guint i = 0; i < model->n_incidents; i++)
    {
      json_builder_begin_object (builder);
      hm_json_add_text (builder, "id", model->incidents[i].id);
      hm_json_begin_object (builder, "adds");
      for (guint c = 0; c <= model->n_causes; c++)
        if (model->incidents[i].adds[c] > 0)
          hm_json_add_number (builder, c < model->n_causes ? model->causes[c].id : "_other", model->incidents[i].adds[c]);
      json_builder_end_object (builder);
      json_builder_end_object (builder);
    }
  json_builder_end_array (builder);
}

char *
hm_model_to_json (const HmModel *self)
{
  g_autoptr (JsonBuilder) builder = json_builder_new ();

  g_return_val_if_fail (self != NULL, NULL);

  json_builder_begin_object (builder);
  hm_json_add_text (builder, "format", "halfmoon-diagnosis/1");
  hm_json_add_text (builder, "complaint", self->complaint);
  hm_json_add_text (builder, "mode", self->mode == HM_MODEL_SINGLE_FAULT ? "single" : "multi");
  add_causes (builder, self);
  add_access (builder, self);
  hm_json_begin_array (builder, "tests");
  for (guint i = 0; i < self->n_checks; i++)
    add_check (builder, self, i);
  json_builder_end_array (builder);
  add_incidents (builder, self);
  hm_json_add_number (builder, "verify_minutes", self->verify_minutes);
  json_builder_set_member_name (builder, "max_batch");
  json_builder_add_int_value (builder, self->max_batch);
  json_builder_end_object (builder);
  return hm_json_finish (builder, TRUE);
}

static void
add_action (JsonBuilder *builder, const HmModel *model, const HmAction *action)
{
  hm_json_begin_object (builder, "action");
  if (action->kind == HM_ACTION_CHECK)
    hm_json_add_text (builder, "test", model->checks[action->check].id);
  else if (action->kind == HM_ACTION_ESCALATE)
    hm_json_add_flag (builder, "escalate", TRUE);
  else
    {
      hm_json_begin_array (builder, "repair");
      for (guint k = 0; k < action->n_causes; k++)
        json_builder_add_string_value (builder, model->causes[action->causes[k]].id);
      json_builder_end_array (builder);
    }
  json_builder_end_object (builder);
}

char *
hm_advice_to_json (const HmModel *model, const double *posterior, const HmPlan *plan)
{
  g_autoptr (JsonBuilder) builder = json_builder_new ();

  g_return_val_if_fail (model != NULL && posterior != NULL && plan != NULL, NULL);

  json_builder_begin_object (builder);
  hm_json_begin_object (builder, "posterior");
  for (guint i = 0; i <= model->n_causes; i++)
    hm_json_add_number (builder, i < model->n_causes ? model->causes[i].id : "_other", posterior[i]);
  json_builder_end_object (builder);
  add_action (builder, model, &plan->action);
  hm_json_add_number (builder, "expected_minutes", plan->expected_minutes);
  hm_json_add_number (builder, "lower_bound", plan->lower_bound_minutes);
  json_builder_end_object (builder);
  return hm_json_finish (builder, TRUE);
}

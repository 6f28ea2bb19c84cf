/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Reading a model from JSON. Writing is in hm-model-json-write.c, events in hm-evidence-json.c. */
#include "hm-model-json.h"

#include "hm-json-reader.h"

static gboolean
unknown (GError **error, const char *entry, const char *kind, const char *id)
{
  g_set_error (error, HM_MODEL_ERROR, HM_MODEL_ERROR_REFERENCE, "%s: there is no %s “%s”", entry, kind, id);
  return FALSE;
}

static gboolean
read_access_set (const HmModel *model, JsonObject *from, const char *entry, const char *member, HmModelSet *out, GError **error)
{
  JsonArray *ids;

  *out = 0;
  if (!json_object_has_member (from, member))
    return TRUE;
  if ((ids = hm_json_get_array (from, member, error)) == NULL)
    return FALSE;
  for (guint i = 0; i < json_array_get_length (ids); i++)
    {
      const char *id = hm_json_element_text (ids, i, member, error);
      int at = id != NULL ? hm_model_find_access (model, id) : -1;
      if (id == NULL)
        return FALSE;
      if (at < 0)
        return unknown (error, entry, "access step", id);
      *out |= G_GUINT64_CONSTANT (1) << at;
    }
  return TRUE;
}

static gboolean
read_access (HmModel *model, JsonArray *list, GError **error)
{
  for (guint i = 0; i < model->n_access; i++)
    {
      JsonObject *object = hm_json_element_object (list, i, "access", error);
      HmModelAccess *step = &model->access[i];
      if (object == NULL || (step->id = g_strdup (hm_json_get_text (object, "id", error))) == NULL
          || !hm_json_get_number (object, "minutes_open", &step->open_minutes, error)
          || !hm_json_get_number (object, "minutes_close", &step->close_minutes, error))
        return FALSE;
      step->blocks_verify = hm_json_get_flag (object, "blocks_verify");
    }
  for (guint i = 0; i < model->n_access; i++)
    if (!read_access_set (model, json_array_get_object_element (list, i), model->access[i].id, "requires",
                          &model->access[i].requires, error))
      return FALSE;
  return TRUE;
}

static gboolean
read_causes (HmModel *model, JsonArray *list, GError **error)
{
  for (guint i = 0; i < model->n_causes; i++)
    {
      JsonObject *object = hm_json_element_object (list, i, "causes", error);
      HmModelCause *cause = &model->causes[i];
      if (object == NULL || (cause->id = g_strdup (hm_json_get_text (object, "id", error))) == NULL
          || !hm_json_get_number (object, "prior", &cause->prior, error)
          || !hm_json_get_number (object, "repair_minutes", &cause->repair_minutes, error)
          || !read_access_set (model, object, cause->id, "repair_access", &cause->need, error))
        return FALSE;
    }
  return TRUE;
}

static gboolean
read_outcomes (HmModelCheck *check, JsonObject *object, GError **error)
{
  JsonArray *list = hm_json_get_array (object, "outcomes", error);

  if (list == NULL)
    return FALSE;
  if (json_array_get_length (list) < 2 || json_array_get_length (list) > HM_MODEL_MAX_OUTCOMES)
    {
      g_set_error (error, HM_MODEL_ERROR, HM_MODEL_ERROR_SIZE, "%s: 2 to %u outcomes are accepted", check->id, HM_MODEL_MAX_OUTCOMES);
      return FALSE;
    }
  for (guint o = 0; o < json_array_get_length (list); o++)
    {
      const char *id = hm_json_element_text (list, o, "outcomes", error);
      if (id == NULL)
        return FALSE;
      check->outcome_ids[check->n_outcomes++] = g_strdup (id);
    }
  return TRUE;
}

/* One cause's column of a check; FALSE with @error when it has none. */
static gboolean
read_column (const HmModel *model, HmModelCheck *check, JsonObject *columns, guint cause, GError **error)
{
  const char *id = cause < model->n_causes ? model->causes[cause].id : "_other";
  JsonObject *column = hm_json_get_object (columns, id, error);

  if (column == NULL)
    {
      g_prefix_error (error, "%s: likelihood of ", check->id);
      return FALSE;
    }
  for (guint o = 0; o < check->n_outcomes; o++)
    if (!hm_json_get_number (column, check->outcome_ids[o], &check->likelihood[o * (model->n_causes + 1) + cause], error))
      {
        g_prefix_error (error, "%s: likelihood of %s: ", check->id, id);
        return FALSE;
      }
  return TRUE;
}

/* Without a column of its own, "not listed" is the prior-weighted mixture of the causes: the check says nothing about it. */
static void
mix_other_column (const HmModel *model, HmModelCheck *check)
{
  double weight = 0;

  for (guint i = 0; i < model->n_causes; i++)
    weight += model->causes[i].prior;
  for (guint o = 0; o < check->n_outcomes; o++)
    {
      double *row = check->likelihood + o * (model->n_causes + 1);
      row[model->n_causes] = 0;
      for (guint i = 0; i < model->n_causes; i++)
        row[model->n_causes] += row[i] * model->causes[i].prior / weight;
    }
}

static gboolean
read_numeric (HmModelCheck *check, JsonObject *object, GError **error)
{
  JsonObject *numeric;
  JsonArray *edges;
  const char *side;

  if (!json_object_has_member (object, "numeric") || json_object_get_null_member (object, "numeric"))
    return TRUE;
  if ((numeric = hm_json_get_object (object, "numeric", error)) == NULL
      || (edges = hm_json_get_array (numeric, "edges", error)) == NULL
      || (side = hm_json_get_text (numeric, "ok_side", error)) == NULL
      || !hm_json_get_number (numeric, "meter_sd", &check->meter_sd, error))
    return FALSE;
  if (json_array_get_length (edges) != check->n_outcomes - 1 || (!g_str_equal (side, "above") && !g_str_equal (side, "below")))
    {
      g_set_error (error, HM_MODEL_ERROR, HM_MODEL_ERROR_VALUE,
                   "%s: numeric wants one edge between each two outcomes, and ok_side “above” or “below”", check->id);
      return FALSE;
    }
  for (guint o = 0; o + 1 < check->n_outcomes; o++)
    check->edges[o] = json_array_get_double_element (edges, o);
  check->numeric = TRUE;
  check->normal_above = g_str_equal (side, "above");
  if (json_object_has_member (numeric, "unit"))
    check->unit = g_strdup (hm_json_get_text (numeric, "unit", NULL));
  return TRUE;
}

static gboolean
read_check (HmModel *model, HmModelCheck *check, JsonObject *object, GError **error)
{
  JsonObject *columns;

  if ((check->id = g_strdup (hm_json_get_text (object, "id", error))) == NULL
      || !hm_json_get_number (object, "minutes", &check->minutes, error)
      || !read_access_set (model, object, check->id, "access", &check->need, error)
      || !read_access_set (model, object, check->id, "closed", &check->closed, error)
      || !read_outcomes (check, object, error)
      || (columns = hm_json_get_object (object, "likelihood", error)) == NULL)
    return FALSE;
  check->likelihood = g_new0 (double, check->n_outcomes * (model->n_causes + 1));
  for (guint i = 0; i < model->n_causes; i++)
    if (!read_column (model, check, columns, i, error))
      return FALSE;
  if (!json_object_has_member (columns, "_other"))
    mix_other_column (model, check);
  else if (!read_column (model, check, columns, model->n_causes, error))
    return FALSE;
  return read_numeric (check, object, error);
}

static gboolean
read_checks (HmModel *model, JsonArray *list, GError **error)
{
  for (guint i = 0; i < model->n_checks; i++)
    {
      JsonObject *object = hm_json_element_object (list, i, "tests", error);
      if (object == NULL || !read_check (model, &model->checks[i], object, error))
        return FALSE;
    }
  return TRUE;
}

static gboolean
read_incident (HmModel *model, HmModelIncident *incident, JsonObject *object, GError **error)
{
  g_autoptr (GList) ids = NULL;
  JsonObject *adds;

  if ((incident->id = g_strdup (hm_json_get_text (object, "id", error))) == NULL
      || (adds = hm_json_get_object (object, "adds", error)) == NULL)
    return FALSE;
  ids = json_object_get_members (adds);
  for (GList *l = ids; l != NULL; l = l->next)
    {
      int cause = hm_model_find_cause (model, l->data);
      if (cause < 0)
        return unknown (error, incident->id, "cause", l->data);
      if (!hm_json_get_number (adds, l->data, &incident->adds[cause], error))
        return FALSE;
    }
  return TRUE;
}

static gboolean
read_incidents (HmModel *model, JsonArray *list, GError **error)
{
  for (guint i = 0; i < model->n_incidents; i++)
    model->incidents[i].adds = g_new0 (double, model->n_causes + 1);
  for (guint i = 0; i < model->n_incidents; i++)
    {
      JsonObject *object = hm_json_element_object (list, i, "incidents", error);
      if (object == NULL || !read_incident (model, &model->incidents[i], object, error))
        return FALSE;
    }
  return TRUE;
}

static gboolean
read_head (HmModel *model, JsonObject *root, GError **error)
{
  JsonObject *other = hm_json_get_object (root, "other", error);
  const char *mode;
  double max_batch = 1;

  if (other == NULL || (model->complaint = g_strdup (hm_json_get_text (root, "complaint", error))) == NULL
      || (mode = hm_json_get_text (root, "mode", error)) == NULL
      || !hm_json_get_number (other, "prior", &model->other_prior, error)
      || !hm_json_get_number (other, "minutes", &model->other_minutes, error)
      || !hm_json_get_number (root, "verify_minutes", &model->verify_minutes, error)
      || (json_object_has_member (root, "max_batch") && !hm_json_get_number (root, "max_batch", &max_batch, error)))
    return FALSE;
  if (!g_str_equal (mode, "single") && !g_str_equal (mode, "multi"))
    {
      g_set_error (error, HM_MODEL_ERROR, HM_MODEL_ERROR_MODE, "mode is “%s”; “single” and “multi” are accepted", mode);
      return FALSE;
    }
  if (!(max_batch >= 1 && max_batch <= HM_MODEL_MAX_BATCH))
    {
      g_set_error (error, HM_MODEL_ERROR, HM_MODEL_ERROR_SIZE, "max_batch has to be 1 to %u", HM_MODEL_MAX_BATCH);
      return FALSE;
    }
  model->mode = g_str_equal (mode, "multi") ? HM_MODEL_SEVERAL_FAULTS : HM_MODEL_SINGLE_FAULT;
  model->max_batch = (guint) max_batch;
  return TRUE;
}

static gboolean
refuse_duplicates (const HmModel *model, GError **error)
{
  for (guint i = 0; i < model->n_causes; i++)
    if (hm_model_find_cause (model, model->causes[i].id) != (int) i)
      return unknown (error, model->causes[i].id, "second cause", model->causes[i].id);
  for (guint i = 0; i < model->n_checks; i++)
    if (hm_model_find_check (model, model->checks[i].id) != (int) i)
      return unknown (error, model->checks[i].id, "second test", model->checks[i].id);
  for (guint i = 0; i < model->n_access; i++)
    if (hm_model_find_access (model, model->access[i].id) != (int) i)
      return unknown (error, model->access[i].id, "second access step", model->access[i].id);
  return TRUE;
}

static HmModel *
read_model (JsonObject *root, GError **error)
{
  g_autoptr (HmModel) model = NULL;
  JsonArray *causes, *access, *checks, *incidents = NULL;

  if ((causes = hm_json_get_array (root, "causes", error)) == NULL || (access = hm_json_get_array (root, "access", error)) == NULL
      || (checks = hm_json_get_array (root, "tests", error)) == NULL
      || (json_object_has_member (root, "incidents") && (incidents = hm_json_get_array (root, "incidents", error)) == NULL))
    return NULL;
  if (json_array_get_length (causes) > HM_MODEL_MAX_CAUSES || json_array_get_length (access) > HM_MODEL_MAX_ACCESS
      || json_array_get_length (checks) > HM_MODEL_MAX_CHECKS)
    {
      g_set_error (error, HM_MODEL_ERROR, HM_MODEL_ERROR_SIZE, "at most %u causes, %u tests and %u access steps are accepted",
                   HM_MODEL_MAX_CAUSES, HM_MODEL_MAX_CHECKS, HM_MODEL_MAX_ACCESS);
      return NULL;
    }
  model = hm_model_new (json_array_get_length (causes), json_array_get_length (access), json_array_get_length (checks),
                        incidents != NULL ? json_array_get_length (incidents) : 0);
  if (!read_head (model, root, error) || !read_access (model, access, error) || !read_causes (model, causes, error)
      || !read_checks (model, checks, error) || (incidents != NULL && !read_incidents (model, incidents, error))
      || !refuse_duplicates (model, error) || !hm_model_seal (model, error))
    return NULL;
  return g_steal_pointer (&model);
}

HmModel *
hm_model_new_from_json (const char *text, gsize length, GError **error)
{
  g_autoptr (JsonNode) node = NULL;
  JsonObject *root;

  g_return_val_if_fail (text != NULL, NULL);

  if ((node = hm_json_parse (text, length, error)) == NULL)
    return NULL;
  if (!JSON_NODE_HOLDS_OBJECT (node))
    {
      g_set_error_literal (error, HM_MODEL_ERROR, HM_MODEL_ERROR_SYNTAX, "a model is a JSON object");
      return NULL;
    }
  root = json_node_get_object (node);
  if (json_object_has_member (root, "model") && (root = hm_json_get_object (root, "model", error)) == NULL)
    return NULL;
  return read_model (root, error);
}

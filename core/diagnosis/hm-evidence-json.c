/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Reading a list of events from JSON. */
#include "hm-json-reader.h"
#include "hm-model-json.h"

static gboolean
refuse (GError **error, guint at, const char *what, const char *id)
{
  g_set_error (error, HM_MODEL_ERROR, HM_MODEL_ERROR_REFERENCE, "event %u: %s%s%s%s", at + 1, what,
               id != NULL ? " “" : "", id != NULL ? id : "", id != NULL ? "”" : "");
  return FALSE;
}

static gboolean
read_weights (const HmModel *model, JsonObject *object, guint at, HmEvidence *out, GError **error)
{
  JsonObject *weights = hm_json_get_object (object, "weights", error);
  g_autoptr (GList) ids = NULL;
  double sum = 0;

  if (weights == NULL)
    return FALSE;
  ids = json_object_get_members (weights);
  for (GList *l = ids; l != NULL; l = l->next)
    {
      int outcome = hm_model_find_outcome (model, out->index, l->data);
      if (outcome < 0)
        return refuse (error, at, "there is no outcome", l->data);
      if (!hm_json_get_number (weights, l->data, &out->weights[outcome], error))
        return FALSE;
      if (!(out->weights[outcome] >= 0 && out->weights[outcome] <= 1e6))
        return refuse (error, at, "a weight has to be 0 or more, for", l->data);
      sum += out->weights[outcome];
    }
  out->kind = HM_EVIDENCE_WEIGHTS;
  return sum > 0 || refuse (error, at, "at least one weight has to be above 0", NULL);
}

static gboolean
read_check_event (const HmModel *model, JsonObject *object, guint at, HmEvidence *out, GError **error)
{
  const char *id = hm_json_get_text (object, "test", error);
  int check = id != NULL ? hm_model_find_check (model, id) : -1;

  if (id == NULL)
    return FALSE;
  if (check < 0)
    return refuse (error, at, "there is no test", id);
  out->index = (guint) check;
  if (json_object_has_member (object, "weights"))
    return read_weights (model, object, at, out, error);
  if (json_object_has_member (object, "reading"))
    {
      out->kind = HM_EVIDENCE_READING;
      return (model->checks[check].numeric || refuse (error, at, "no reading is taken by test", id))
             && hm_json_get_number (object, "reading", &out->reading, error);
    }
  if (json_object_has_member (object, "outcome"))
    {
      const char *outcome = hm_json_get_text (object, "outcome", error);
      int o = outcome != NULL ? hm_model_find_outcome (model, out->index, outcome) : -1;
      out->kind = HM_EVIDENCE_OUTCOME;
      out->outcome = (guint) MAX (o, 0);
      return outcome != NULL && (o >= 0 || refuse (error, at, "there is no outcome", outcome));
    }
  out->kind = hm_json_get_flag (object, "cannot") ? HM_EVIDENCE_CANNOT : HM_EVIDENCE_UNSURE;
  return hm_json_get_flag (object, "cannot") || hm_json_get_flag (object, "unsure")
         || refuse (error, at, "a test wants one of outcome, weights, reading, unsure, cannot:", id);
}

static gboolean
read_repair (const HmModel *model, JsonObject *object, guint at, HmEvidence *out, GError **error)
{
  JsonArray *ids = hm_json_get_array (object, "repair", error);

  if (ids == NULL)
    return FALSE;
  if (json_array_get_length (ids) < 1 || json_array_get_length (ids) > HM_MODEL_MAX_BATCH)
    return refuse (error, at, "a repair names 1 to 4 causes", NULL);
  for (guint i = 0; i < json_array_get_length (ids); i++)
    {
      const char *id = hm_json_element_text (ids, i, "repair", error);
      int cause = id != NULL ? hm_model_find_cause (model, id) : -1;
      if (id == NULL)
        return FALSE;
      if (cause < 0 || cause == (int) model->n_causes)
        return refuse (error, at, "there is no cause", id);
      out->causes[out->n_causes++] = (guint) cause;
    }
  out->kind = HM_EVIDENCE_REPAIR;
  out->fixed = hm_json_get_flag (object, "fixed");
  return TRUE;
}

static gboolean
read_event (const HmModel *model, JsonObject *object, guint at, HmEvidence *out, GError **error)
{
  gboolean replaced = json_object_has_member (object, "replaced");

  if (json_object_has_member (object, "test"))
    return read_check_event (model, object, at, out, error);
  if (json_object_has_member (object, "repair"))
    return read_repair (model, object, at, out, error);
  if (replaced || json_object_has_member (object, "incident"))
    {
      const char *id = hm_json_get_text (object, replaced ? "replaced" : "incident", error);
      int index = id == NULL ? -1 : replaced ? hm_model_find_cause (model, id) : hm_model_find_incident (model, id);
      out->kind = replaced ? HM_EVIDENCE_REPLACED : HM_EVIDENCE_INCIDENT;
      out->index = (guint) MAX (index, 0);
      return id != NULL && (index >= 0 || refuse (error, at, replaced ? "there is no cause" : "there is no incident", id));
    }
  return refuse (error, at, "one of incident, replaced, test, repair is wanted", NULL);
}

GArray *
hm_evidence_list_from_json (const HmModel *model, const char *text, gsize length, GError **error)
{
  g_autoptr (JsonNode) node = NULL;
  g_autoptr (GArray) events = g_array_new (FALSE, TRUE, sizeof (HmEvidence));
  JsonArray *list = NULL;

  g_return_val_if_fail (model != NULL && text != NULL, NULL);

  if ((node = hm_json_parse (text, length, error)) == NULL)
    return NULL;
  if (JSON_NODE_HOLDS_ARRAY (node))
    list = json_node_get_array (node);
  else if (JSON_NODE_HOLDS_OBJECT (node))
    list = hm_json_get_array (json_node_get_object (node), "evidence", error);
  else
    g_set_error_literal (error, HM_MODEL_ERROR, HM_MODEL_ERROR_SYNTAX, "evidence is a JSON array, or an object with a member “evidence”");
  for (guint i = 0; list != NULL && i < json_array_get_length (list); i++)
    {
      JsonObject *object = hm_json_element_object (list, i, "evidence", error);
      HmEvidence event = { 0 };
      if (object == NULL || !read_event (model, object, i, &event, error))
        return NULL;
      g_array_append_val (events, event);
    }
  return list != NULL ? g_steal_pointer (&events) : NULL;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
/*
 * A diagnosis as JSON, format "halfmoon-trail/1": complaint, layout, knowledge (version it was made with), incidents[],
 * replaced[], entries[{kind, check, finding | value + unit | causes[] + result}], ticks[], texts{}. Ids only, so that it can
 * be taken up again with other knowledge; what the knowledge no longer has is left out and reported.
 */
#include "hm-diagnosis-private.h"
#include "hm-json-reader.h"
#include "hm-json-writer.h"

#include <string.h>

#define FORMAT "halfmoon-trail/1"

static const char * const kind_names[] = { "finding", "reading", "unsure", "cannot", "repair", "sent-out" };
static const char * const result_names[] = { "pending", "fixed", "persists", "changed" };

static void
add_entry (JsonBuilder *builder, HmDiagnosis *self, const HmEntry *entry)
{
  const HmModel *model = self->model;

  json_builder_begin_object (builder);
  hm_json_add_text (builder, "kind", kind_names[entry->kind]);
  if (entry->kind <= HM_ENTRY_CANNOT)
    hm_json_add_text (builder, "check", model->checks[entry->check].id);
  if (entry->kind == HM_ENTRY_FINDING)
    hm_json_add_text (builder, "finding", model->checks[entry->check].outcome_ids[entry->finding]);
  if (entry->kind == HM_ENTRY_READING)
    {
      hm_json_add_number (builder, "value", hm_quantity_in (entry->reading, HM_UNIT_NONE));
      hm_json_add_text (builder, "unit", hm_unit_symbol (entry->reading.unit));
    }
  if (entry->kind == HM_ENTRY_REPAIR)
    {
      hm_json_begin_array (builder, "causes");
      for (guint k = 0; k < entry->n_causes; k++)
        json_builder_add_string_value (builder, model->causes[entry->causes[k]].id);
      json_builder_end_array (builder);
      hm_json_add_text (builder, "result", result_names[entry->result]);
    }
  json_builder_end_object (builder);
}

static void
add_told (JsonBuilder *builder, HmDiagnosis *self)
{
  hm_json_begin_array (builder, "incidents");
  for (guint i = 0; i < self->model->n_incidents; i++)
    if (hm_diagnosis_get_incident (self, i))
      json_builder_add_string_value (builder, self->model->incidents[i].id);
  json_builder_end_array (builder);
  hm_json_begin_array (builder, "replaced");
  for (guint i = 0; i < self->model->n_causes; i++)
    if (hm_diagnosis_get_replaced (self, i))
      json_builder_add_string_value (builder, self->model->causes[i].id);
  json_builder_end_array (builder);
}

/* The keys in order, so that the same diagnosis always gives the same text. */
static GList *
sorted_keys (GHashTable *table)
{
  return g_list_sort (g_hash_table_get_keys (table), (GCompareFunc) g_strcmp0);
}

static void
add_marks (JsonBuilder *builder, HmDiagnosis *self)
{
  g_autoptr (GList) ticks = sorted_keys (self->ticks), texts = sorted_keys (self->texts);

  hm_json_begin_array (builder, "ticks");
  for (GList *l = ticks; l != NULL; l = l->next)
    json_builder_add_string_value (builder, l->data);
  json_builder_end_array (builder);
  hm_json_begin_object (builder, "texts");
  for (GList *l = texts; l != NULL; l = l->next)
    hm_json_add_text (builder, l->data, g_hash_table_lookup (self->texts, l->data));
  json_builder_end_object (builder);
}

char *
hm_diagnosis_to_json (HmDiagnosis *self)
{
  g_autoptr (JsonBuilder) builder = json_builder_new ();

  g_return_val_if_fail (HM_IS_DIAGNOSIS (self), NULL);

  json_builder_begin_object (builder);
  hm_json_add_text (builder, "format", FORMAT);
  hm_json_add_text (builder, "complaint", hm_guide_get_complaint (self->guide)->id);
  hm_json_add_text (builder, "layout", hm_guide_get_layout (self->guide)->id);
  hm_json_add_text (builder, "knowledge", hm_knowledge_get_version (self->knowledge));
  add_told (builder, self);
  hm_json_begin_array (builder, "entries");
  for (guint i = 0; i < self->trail.entries->len; i++)
    add_entry (builder, self, &g_array_index (self->trail.entries, HmEntry, i));
  json_builder_end_array (builder);
  add_marks (builder, self);
  json_builder_end_object (builder);
  return hm_json_finish (builder, FALSE);
}

static int
find_name (const char * const *names, guint n, const char *name)
{
  for (guint i = 0; i < n; i++)
    if (g_strcmp0 (names[i], name) == 0)
      return (int) i;
  return -1;
}

static gboolean
lose (GString *lost, const char *id)
{
  g_string_append_printf (lost, "%s\n", id != NULL ? id : "?");
  return FALSE;
}

/* The unit a reading was typed in, by its symbol; the kind's base unit when it is gone. */
static HmUnit
find_unit (HmQuantityKind kind, const char *symbol)
{
  for (HmUnit unit = HM_UNIT_NONE + 1; unit < HM_UNIT_N_UNITS; unit++)
    if (hm_unit_kind (unit) == kind && g_strcmp0 (hm_unit_symbol (unit), symbol) == 0)
      return unit;
  return hm_quantity_kind_base_unit (kind);
}

static gboolean
read_answer (HmDiagnosis *self, JsonObject *object, HmEntry *entry, GString *lost)
{
  const char *check_id = hm_json_get_text (object, "check", NULL);
  const char *finding_id = entry->kind == HM_ENTRY_FINDING ? hm_json_get_text (object, "finding", NULL) : NULL;
  int check = hm_model_find_check (self->model, check_id), finding;
  double value;

  if (check < 0)
    return lose (lost, check_id);
  entry->check = (guint) check;
  if (entry->kind == HM_ENTRY_FINDING)
    {
      if ((finding = hm_model_find_outcome (self->model, entry->check, finding_id)) < 0)
        return lose (lost, finding_id);
      entry->finding = (guint) finding;
    }
  if (entry->kind == HM_ENTRY_READING)
    {
      guint n;
      const HmCheck *asked = &hm_guide_get_checks (self->guide, &n)[check];
      if (!asked->is_reading || !hm_json_get_number (object, "value", &value, NULL))
        return lose (lost, check_id);
      entry->reading = hm_quantity (asked->kind, value, HM_UNIT_NONE);
      entry->reading.unit = find_unit (asked->kind, hm_json_get_text (object, "unit", NULL));
      entry->finding = hm_diagnosis_judge_reading (self, entry->check, entry->reading, NULL);
    }
  return TRUE;
}

static gboolean
read_repair (HmDiagnosis *self, JsonObject *object, HmEntry *entry, GString *lost)
{
  JsonArray *causes = hm_json_get_array (object, "causes", NULL);
  const char *result = hm_json_get_text (object, "result", NULL);
  int at = find_name (result_names, G_N_ELEMENTS (result_names), result);

  if (at < 0)
    return lose (lost, result);
  entry->result = (HmRepairResult) at;
  for (guint i = 0; causes != NULL && i < MIN (json_array_get_length (causes), HM_MODEL_MAX_BATCH); i++)
    {
      const char *id = hm_json_element_text (causes, i, "causes", NULL);
      int cause = hm_model_find_cause (self->model, id);
      if (cause < 0 || cause == (int) self->model->n_causes)
        lose (lost, id);
      else
        entry->causes[entry->n_causes++] = (guint) cause;
    }
  return entry->n_causes > 0;
}

static void
read_entry (HmDiagnosis *self, JsonObject *object, GString *lost)
{
  const char *name = hm_json_get_text (object, "kind", NULL);
  int kind = find_name (kind_names, G_N_ELEMENTS (kind_names), name);
  HmEntry entry = { 0 };
  gboolean kept;

  if (kind < 0)
    {
      lose (lost, name);
      return;
    }
  entry.kind = (HmEntryKind) kind;
  if (entry.kind <= HM_ENTRY_CANNOT)
    kept = read_answer (self, object, &entry, lost);
  else
    kept = entry.kind == HM_ENTRY_SENT_OUT || read_repair (self, object, &entry, lost);
  if (kept)
    g_array_append_val (self->trail.entries, entry);
}

static void
read_told (HmDiagnosis *self, JsonObject *root, const char *member, gboolean incidents, GString *lost)
{
  JsonArray *ids = hm_json_get_array (root, member, NULL);

  for (guint i = 0; ids != NULL && i < json_array_get_length (ids); i++)
    {
      const char *id = hm_json_element_text (ids, i, member, NULL);
      int at = incidents ? hm_model_find_incident (self->model, id) : hm_model_find_cause (self->model, id);
      if (at < 0 || at >= 64)
        lose (lost, id);
      else if (incidents)
        self->trail.incidents |= G_GUINT64_CONSTANT (1) << at;
      else
        self->trail.replaced |= G_GUINT64_CONSTANT (1) << at;
    }
}

static void
read_marks (HmDiagnosis *self, JsonObject *root)
{
  JsonArray *ticks = hm_json_get_array (root, "ticks", NULL);
  JsonObject *texts = hm_json_get_object (root, "texts", NULL);
  g_autoptr (GList) members = texts != NULL ? json_object_get_members (texts) : NULL;

  for (guint i = 0; ticks != NULL && i < json_array_get_length (ticks); i++)
    {
      const char *id = hm_json_element_text (ticks, i, "ticks", NULL);
      if (id != NULL)
        g_hash_table_add (self->ticks, g_strdup (id));
    }
  for (GList *l = members; l != NULL; l = l->next)
    {
      const char *text = hm_json_get_text (texts, l->data, NULL);
      if (text != NULL)
        g_hash_table_insert (self->texts, g_strdup (l->data), g_strdup (text));
    }
}

static void
read_trail (HmDiagnosis *self, JsonObject *root, GString *lost)
{
  JsonArray *entries = hm_json_get_array (root, "entries", NULL);

  read_told (self, root, "incidents", TRUE, lost);
  read_told (self, root, "replaced", FALSE, lost);
  for (guint i = 0; entries != NULL && i < json_array_get_length (entries); i++)
    {
      JsonObject *object = hm_json_element_object (entries, i, "entries", NULL);
      if (object != NULL)
        read_entry (self, object, lost);
    }
  read_marks (self, root);
  hm_diagnosis_recompute (self);
}

HmDiagnosis *
hm_diagnosis_new_from_json (HmKnowledge *knowledge, const char *json, char **lost, GError **error)
{
  g_autoptr (JsonNode) node = NULL;
  g_autoptr (GString) missing = g_string_new (NULL);
  const char *format, *complaint, *layout;
  JsonObject *root;
  HmDiagnosis *self;

  g_return_val_if_fail (knowledge != NULL && json != NULL, NULL);

  if ((node = hm_json_parse (json, strlen (json), error)) == NULL)
    return NULL;
  root = JSON_NODE_HOLDS_OBJECT (node) ? json_node_get_object (node) : NULL;
  format = root != NULL ? hm_json_get_text (root, "format", NULL) : NULL;
  if (g_strcmp0 (format, FORMAT) != 0)
    {
      g_set_error (error, HM_MODEL_ERROR, HM_MODEL_ERROR_SYNTAX, "this is no diagnosis of a form that this Halfmoon reads; “%s” is accepted", FORMAT);
      return NULL;
    }
  if ((complaint = hm_json_get_text (root, "complaint", error)) == NULL || (layout = hm_json_get_text (root, "layout", error)) == NULL
      || (self = hm_diagnosis_new (knowledge, complaint, layout, error)) == NULL)
    return NULL;
  read_trail (self, root, missing);
  if (lost != NULL)
    *lost = g_string_free (g_steal_pointer (&missing), FALSE);
  return self;
}

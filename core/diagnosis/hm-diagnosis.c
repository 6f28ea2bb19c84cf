/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The object, its trail, undo. What follows from the trail is in hm-diagnosis-derive.c, reasons in hm-diagnosis-why.c. */
#include "hm-diagnosis-private.h"

#include "hm-model-from-guide.h"

#define BIT(i) (G_GUINT64_CONSTANT (1) << (i))
#define LOOK_AHEAD 2u     /* steps: one costs a tenth of the time and some 5 % more minutes on the job */
#define MOST_UNDO 200u

G_DEFINE_FINAL_TYPE (HmDiagnosis, hm_diagnosis, G_TYPE_OBJECT)

enum { CHANGED, N_SIGNALS };
static guint signals[N_SIGNALS];

static HmTrail *
trail_copy (const HmTrail *trail)
{
  HmTrail *copy = g_new0 (HmTrail, 1);

  *copy = *trail;
  copy->entries = g_array_copy (trail->entries);
  return copy;
}

static void
trail_free (gpointer data)
{
  HmTrail *trail = data;

  g_array_unref (trail->entries);
  g_free (trail);
}

static void
hm_diagnosis_finalize (GObject *object)
{
  HmDiagnosis *self = HM_DIAGNOSIS (object);

  hm_planner_free (self->planner);
  hm_model_unref (self->model);
  g_clear_pointer (&self->guide, hm_guide_unref);
  g_clear_pointer (&self->knowledge, hm_knowledge_unref);
  g_array_unref (self->trail.entries);
  g_ptr_array_unref (self->undo);
  g_ptr_array_unref (self->redo);
  g_hash_table_unref (self->ticks);
  g_hash_table_unref (self->texts);
  g_array_unref (self->events);
  g_array_unref (self->event_sources);
  g_array_unref (self->steps);
  g_array_unref (self->ranked);
  G_OBJECT_CLASS (hm_diagnosis_parent_class)->finalize (object);
}

static void
hm_diagnosis_class_init (HmDiagnosisClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hm_diagnosis_finalize;
  signals[CHANGED] = g_signal_new ("changed", HM_TYPE_DIAGNOSIS, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
hm_diagnosis_init (HmDiagnosis *self)
{
  self->trail.entries = g_array_new (FALSE, TRUE, sizeof (HmEntry));
  self->undo = g_ptr_array_new_with_free_func (trail_free);
  self->redo = g_ptr_array_new_with_free_func (trail_free);
  self->ticks = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  self->texts = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, g_free);
  self->events = g_array_new (FALSE, TRUE, sizeof (HmEvidence));
  self->event_sources = g_array_new (FALSE, TRUE, sizeof (HmReason));
  self->steps = g_array_new (FALSE, TRUE, sizeof (HmBeliefStep));
  self->ranked = g_array_new (FALSE, TRUE, sizeof (HmPlan));
}

HmDiagnosis *
hm_diagnosis_new (HmKnowledge *knowledge, const char *complaint, const char *layout, GError **error)
{
  g_autoptr (HmGuide) guide = NULL;
  g_autoptr (HmModel) model = NULL;
  HmDiagnosis *self;

  g_return_val_if_fail (knowledge != NULL && complaint != NULL && layout != NULL, NULL);

  guide = hm_knowledge_load_guide (knowledge, complaint, layout, error);
  model = guide != NULL ? hm_model_new_from_guide (guide, error) : NULL;
  if (model == NULL)
    return NULL;
  self = g_object_new (HM_TYPE_DIAGNOSIS, NULL);
  self->knowledge = hm_knowledge_ref (knowledge);
  self->guide = g_steal_pointer (&guide);
  self->model = g_steal_pointer (&model);
  self->planner = hm_planner_new (self->model, LOOK_AHEAD);
  hm_diagnosis_recompute (self);
  return self;
}

HmGuide *
hm_diagnosis_get_guide (HmDiagnosis *self)
{
  g_return_val_if_fail (HM_IS_DIAGNOSIS (self), NULL);
  return self->guide;
}

HmModel *
hm_diagnosis_get_model (HmDiagnosis *self)
{
  g_return_val_if_fail (HM_IS_DIAGNOSIS (self), NULL);
  return self->model;
}

static void
changed (HmDiagnosis *self)
{
  hm_diagnosis_recompute (self);
  g_signal_emit (self, signals[CHANGED], 0);
}

/* Keeps the trail as it is now for undo; called before every change to it. */
static void
remember (HmDiagnosis *self)
{
  if (self->undo->len == MOST_UNDO)
    g_ptr_array_remove_index (self->undo, 0);
  g_ptr_array_add (self->undo, trail_copy (&self->trail));
  g_ptr_array_set_size (self->redo, 0);
}

static void
set_told (HmDiagnosis *self, guint64 *set, guint index, gboolean value)
{
  if (((*set & BIT (index)) != 0) == !!value)
    return;
  remember (self);
  *set = value ? *set | BIT (index) : *set & ~BIT (index);
  changed (self);
}

void
hm_diagnosis_set_incident (HmDiagnosis *self, guint incident, gboolean happened)
{
  g_return_if_fail (HM_IS_DIAGNOSIS (self) && incident < self->model->n_incidents && incident < 64);
  set_told (self, &self->trail.incidents, incident, happened);
}

gboolean
hm_diagnosis_get_incident (HmDiagnosis *self, guint incident)
{
  g_return_val_if_fail (HM_IS_DIAGNOSIS (self) && incident < 64, FALSE);
  return (self->trail.incidents & BIT (incident)) != 0;
}

void
hm_diagnosis_set_replaced (HmDiagnosis *self, guint cause, gboolean replaced)
{
  g_return_if_fail (HM_IS_DIAGNOSIS (self) && cause < self->model->n_causes);
  set_told (self, &self->trail.replaced, cause, replaced);
}

gboolean
hm_diagnosis_get_replaced (HmDiagnosis *self, guint cause)
{
  g_return_val_if_fail (HM_IS_DIAGNOSIS (self) && cause < 64, FALSE);
  return (self->trail.replaced & BIT (cause)) != 0;
}

guint
hm_diagnosis_get_n_entries (HmDiagnosis *self)
{
  g_return_val_if_fail (HM_IS_DIAGNOSIS (self), 0);
  return self->trail.entries->len;
}

const HmEntry *
hm_diagnosis_get_entry (HmDiagnosis *self, guint i)
{
  g_return_val_if_fail (HM_IS_DIAGNOSIS (self) && i < self->trail.entries->len, NULL);
  return &g_array_index (self->trail.entries, HmEntry, i);
}

/* Puts @entry in place of the earlier answer to its check, or at the end. */
static void
put_answer (HmDiagnosis *self, const HmEntry *entry)
{
  remember (self);
  for (guint i = 0; i < self->trail.entries->len; i++)
    {
      HmEntry *earlier = &g_array_index (self->trail.entries, HmEntry, i);
      if (earlier->kind <= HM_ENTRY_CANNOT && earlier->check == entry->check)
        {
          *earlier = *entry;
          changed (self);
          return;
        }
    }
  g_array_append_val (self->trail.entries, *entry);
  changed (self);
}

void
hm_diagnosis_answer (HmDiagnosis *self, guint check, guint finding)
{
  HmEntry entry = { .kind = HM_ENTRY_FINDING, .check = check, .finding = finding };

  g_return_if_fail (HM_IS_DIAGNOSIS (self) && check < self->model->n_checks);
  g_return_if_fail (finding < self->model->checks[check].n_outcomes);
  put_answer (self, &entry);
}

gboolean
hm_diagnosis_answer_reading (HmDiagnosis *self, guint check, HmQuantity reading, GError **error)
{
  HmEntry entry = { .kind = HM_ENTRY_READING, .check = check, .reading = reading };
  guint n;
  const HmCheck *asked;

  g_return_val_if_fail (HM_IS_DIAGNOSIS (self) && check < self->model->n_checks, FALSE);

  asked = &hm_guide_get_checks (self->guide, &n)[check];
  if (!asked->is_reading || asked->kind != reading.kind)
    {
      g_set_error (error, HM_QUANTITY_ERROR, HM_QUANTITY_ERROR_UNIT, "“%s” does not take a reading in %s", asked->name,
                   hm_unit_symbol (hm_quantity_kind_base_unit (reading.kind)));
      return FALSE;
    }
  if (reading.unit == HM_UNIT_NONE)
    entry.reading.unit = asked->unit;
  entry.finding = hm_diagnosis_judge_reading (self, check, reading, NULL);
  put_answer (self, &entry);
  return TRUE;
}

void
hm_diagnosis_answer_unsure (HmDiagnosis *self, guint check)
{
  HmEntry entry = { .kind = HM_ENTRY_UNSURE, .check = check };

  g_return_if_fail (HM_IS_DIAGNOSIS (self) && check < self->model->n_checks);
  put_answer (self, &entry);
}

void
hm_diagnosis_answer_cannot (HmDiagnosis *self, guint check)
{
  HmEntry entry = { .kind = HM_ENTRY_CANNOT, .check = check };

  g_return_if_fail (HM_IS_DIAGNOSIS (self) && check < self->model->n_checks);
  put_answer (self, &entry);
}

static HmEntry *
last_entry (HmDiagnosis *self)
{
  guint n = self->trail.entries->len;

  return n > 0 ? &g_array_index (self->trail.entries, HmEntry, n - 1) : NULL;
}

void
hm_diagnosis_begin_repair (HmDiagnosis *self, const guint *causes, guint n_causes)
{
  HmEntry entry = { .kind = HM_ENTRY_REPAIR, .result = HM_REPAIR_PENDING, .n_causes = n_causes };

  g_return_if_fail (HM_IS_DIAGNOSIS (self) && n_causes > 0 && n_causes <= HM_MODEL_MAX_BATCH);
  g_return_if_fail (hm_diagnosis_get_phase (self) == HM_PHASE_ASKING);

  for (guint k = 0; k < n_causes; k++)
    {
      g_return_if_fail (causes[k] < self->model->n_causes);
      entry.causes[k] = causes[k];
    }
  remember (self);
  g_array_append_val (self->trail.entries, entry);
  changed (self);
}

void
hm_diagnosis_finish_repair (HmDiagnosis *self, HmRepairResult result)
{
  g_return_if_fail (HM_IS_DIAGNOSIS (self) && result != HM_REPAIR_PENDING);
  g_return_if_fail (hm_diagnosis_get_phase (self) == HM_PHASE_REPAIRING);

  remember (self);
  last_entry (self)->result = result;
  changed (self);
}

void
hm_diagnosis_send_out (HmDiagnosis *self)
{
  HmEntry entry = { .kind = HM_ENTRY_SENT_OUT };

  g_return_if_fail (HM_IS_DIAGNOSIS (self) && hm_diagnosis_get_phase (self) == HM_PHASE_ASKING);

  remember (self);
  g_array_append_val (self->trail.entries, entry);
  changed (self);
}

void
hm_diagnosis_remove_entry (HmDiagnosis *self, guint i)
{
  g_return_if_fail (HM_IS_DIAGNOSIS (self) && i < self->trail.entries->len);

  remember (self);
  g_array_remove_index (self->trail.entries, i);
  changed (self);
}

static void
step_through (HmDiagnosis *self, GPtrArray *from, GPtrArray *to)
{
  HmTrail *trail;

  if (from->len == 0)
    return;
  g_ptr_array_add (to, trail_copy (&self->trail));
  trail = g_ptr_array_steal_index (from, from->len - 1);
  g_array_unref (self->trail.entries);
  self->trail = *trail;
  g_free (trail);
  changed (self);
}

gboolean
hm_diagnosis_can_undo (HmDiagnosis *self)
{
  g_return_val_if_fail (HM_IS_DIAGNOSIS (self), FALSE);
  return self->undo->len > 0;
}

void
hm_diagnosis_undo (HmDiagnosis *self)
{
  g_return_if_fail (HM_IS_DIAGNOSIS (self));
  step_through (self, self->undo, self->redo);
}

gboolean
hm_diagnosis_can_redo (HmDiagnosis *self)
{
  g_return_val_if_fail (HM_IS_DIAGNOSIS (self), FALSE);
  return self->redo->len > 0;
}

void
hm_diagnosis_redo (HmDiagnosis *self)
{
  g_return_if_fail (HM_IS_DIAGNOSIS (self));
  step_through (self, self->redo, self->undo);
}

void
hm_diagnosis_set_tick (HmDiagnosis *self, const char *id, gboolean ticked)
{
  g_return_if_fail (HM_IS_DIAGNOSIS (self) && id != NULL);

  if (hm_diagnosis_get_tick (self, id) == !!ticked)
    return;
  if (ticked)
    g_hash_table_add (self->ticks, g_strdup (id));
  else
    g_hash_table_remove (self->ticks, id);
  g_signal_emit (self, signals[CHANGED], 0);
}

gboolean
hm_diagnosis_get_tick (HmDiagnosis *self, const char *id)
{
  g_return_val_if_fail (HM_IS_DIAGNOSIS (self) && id != NULL, FALSE);
  return g_hash_table_contains (self->ticks, id);
}

void
hm_diagnosis_set_text (HmDiagnosis *self, const char *id, const char *text)
{
  g_return_if_fail (HM_IS_DIAGNOSIS (self) && id != NULL);

  if (g_strcmp0 (hm_diagnosis_get_text (self, id), text) == 0)
    return;
  if (text != NULL)
    g_hash_table_insert (self->texts, g_strdup (id), g_strdup (text));
  else
    g_hash_table_remove (self->texts, id);
  g_signal_emit (self, signals[CHANGED], 0);
}

const char *
hm_diagnosis_get_text (HmDiagnosis *self, const char *id)
{
  g_return_val_if_fail (HM_IS_DIAGNOSIS (self) && id != NULL, NULL);
  return g_hash_table_lookup (self->texts, id);
}

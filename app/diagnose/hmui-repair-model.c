/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-repair-model.h"
#include "hmui-tr.h"
#include "hmui-words.h"
#include <glib/gi18n.h>

struct _HmuiRepairModel
{
  GObject parent_instance;
  HmuiDiagnoseModel *bench;       /* owned */
  HmuiPrepareModel *prepare;      /* owned */
  HmDiagnosis *shown_of;          /* borrowed; only compared */
  HmAction action;
  gboolean has_action, question;
  GPtrArray *remedies, *fasteners;   /* owned; borrowed from the guide */
  GListStore *put_back;           /* owned */
};

G_DEFINE_FINAL_TYPE (HmuiRepairModel, hmui_repair_model, G_TYPE_OBJECT)

static HmGuide *
guide (HmuiRepairModel *self)
{
  return hmui_diagnose_model_get_guide (self->bench);
}

static void
append_new (GPtrArray *list, gconstpointer item)
{
  if (!g_ptr_array_find (list, item, NULL))
    g_ptr_array_add (list, (gpointer) item);
}

static void
append_fasteners (HmuiRepairModel *self, const HmFastener * const *fasteners)
{
  for (; *fasteners != NULL; fasteners++)
    append_new (self->fasteners, *fasteners);
}

/* What was put back after an earlier repair does not count for this one. */
static guint
count_finished_repairs (HmuiRepairModel *self)
{
  HmDiagnosis *diagnosis = hmui_diagnose_model_get_diagnosis (self->bench);
  guint n = hm_diagnosis_get_n_entries (diagnosis), finished = 0;

  for (guint i = 0; i < n; i++)
    {
      const HmEntry *entry = hm_diagnosis_get_entry (diagnosis, i);

      finished += entry->kind == HM_ENTRY_REPAIR && entry->result != HM_REPAIR_PENDING;
    }
  return finished;
}

/* "Hood bolts: 5–7 N·m", and below it "4 of M6 × 1, 10 mm hex". */
static char *
tighten_line (HmuiRepairModel *self, const HmFastener *fastener)
{
  HmFormat format = hmui_diagnose_model_get_format (self->bench);
  HmTorqueAnswer answer;
  gboolean known = hmui_prepare_model_get_torque (self->prepare, fastener, &answer);
  g_autofree char *count = hmui_words_count_and_thread (fastener, &format);
  g_autofree char *drives = hmui_words_drives (fastener, &format);
  g_autofree char *torque = hmui_words_torque_short (known ? &answer : NULL, &format);

  return g_strdup_printf (_("%s: %s\n%s, %s"), hmui_tr (fastener->name), torque, count, drives);
}

/* What is open once the repair is done. */
static HmAccessSet
open_in_the_end (HmuiRepairModel *self)
{
  HmDiagnosis *diagnosis = hmui_diagnose_model_get_diagnosis (self->bench);

  return hm_diagnosis_get_open (diagnosis) | hm_diagnosis_get_to_open (diagnosis, &self->action);
}

/* A fastener that an access step closes with is tightened there. */
static gboolean
is_closed_with (HmuiRepairModel *self, const HmFastener *fastener)
{
  const HmAccessStep *steps = hm_guide_get_access (guide (self), NULL);
  guint order[HM_GUIDE_MAX_ACCESS], n = hm_access_order (guide (self), open_in_the_end (self), order);

  for (guint i = 0; i < n; i++)
    for (guint k = 0; steps[order[i]].fasteners[k] != NULL; k++)
      if (g_str_equal (steps[order[i]].fasteners[k]->id, fastener->id))
        return TRUE;
  return FALSE;
}

static void
list_own_fasteners (HmuiRepairModel *self)
{
  guint finished = count_finished_repairs (self);

  for (guint i = 0; i < self->fasteners->len; i++)
    {
      const HmFastener *fastener = g_ptr_array_index (self->fasteners, i);
      g_autofree char *id = g_strdup_printf ("put-back:%u:fastener:%s", finished, fastener->id);
      g_autofree char *line = tighten_line (self, fastener);

      if (!is_closed_with (self, fastener))
        hmui_line_append (self->put_back, i, id, hmui_tr (fastener->where), line, NULL);
    }
}

static char *
close_lines (HmuiRepairModel *self, const HmAccessStep *step)
{
  g_autoptr(GString) text = g_string_new (hmui_tr (step->put_back));

  for (guint i = 0; step->fasteners[i] != NULL; i++)
    {
      g_autofree char *line = tighten_line (self, step->fasteners[i]);

      g_string_append_printf (text, "%s%s", text->len > 0 ? "\n" : "", line);
    }
  if (!step->blocks_verify)
    g_string_append_printf (text, "%s%s", text->len > 0 ? "\n" : "", _("May stay open for the test."));
  return g_string_free (g_steal_pointer (&text), FALSE);
}

/* Last opened first. */
static void
list_closing (HmuiRepairModel *self)
{
  const HmAccessStep *steps = hm_guide_get_access (guide (self), NULL);
  guint order[HM_GUIDE_MAX_ACCESS], n = hm_access_order (guide (self), open_in_the_end (self), order);
  guint finished = count_finished_repairs (self);

  for (guint left = n; left > 0; left--)
    {
      const HmAccessStep *step = &steps[order[left - 1]];
      g_autofree char *id = g_strdup_printf ("put-back:%u:%s", finished, step->id);
      g_autofree char *detail = close_lines (self, step);

      hmui_line_append (self->put_back, order[left - 1], id, hmui_tr (step->name), detail, NULL);
      append_fasteners (self, step->fasteners);
    }
}

static void
read_remedies (HmuiRepairModel *self)
{
  const HmCause *causes = hm_guide_get_causes (guide (self), NULL);

  for (guint k = 0; k < self->action.n_causes; k++)
    append_new (self->remedies, causes[self->action.causes[k]].remedy);
  for (guint i = 0; i < self->remedies->len; i++)
    append_fasteners (self, ((const HmRemedy *) g_ptr_array_index (self->remedies, i))->fasteners);
}

static void
hmui_repair_model_finalize (GObject *object)
{
  HmuiRepairModel *self = HMUI_REPAIR_MODEL (object);

  g_ptr_array_unref (self->remedies);
  g_ptr_array_unref (self->fasteners);
  g_object_unref (self->put_back);
  g_clear_object (&self->prepare);
  g_clear_object (&self->bench);
  G_OBJECT_CLASS (hmui_repair_model_parent_class)->finalize (object);
}

static void
hmui_repair_model_class_init (HmuiRepairModelClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hmui_repair_model_finalize;
}

static void
hmui_repair_model_init (HmuiRepairModel *self)
{
  self->remedies = g_ptr_array_new ();
  self->fasteners = g_ptr_array_new ();
  self->put_back = g_list_store_new (HMUI_TYPE_LINE);
}

HmuiRepairModel *
hmui_repair_model_new (HmuiDiagnoseModel *bench)
{
  HmuiRepairModel *self = g_object_new (HMUI_TYPE_REPAIR_MODEL, NULL);

  self->bench = g_object_ref (bench);
  self->prepare = hmui_prepare_model_new (bench);
  return self;
}

static void
read_repair (HmuiRepairModel *self)
{
  hmui_prepare_model_set_action (self->prepare, &self->action);
  g_ptr_array_set_size (self->remedies, 0);
  g_ptr_array_set_size (self->fasteners, 0);
  g_list_store_remove_all (self->put_back);
  read_remedies (self);
  list_own_fasteners (self);
  list_closing (self);
}

gboolean
hmui_repair_model_refresh (HmuiRepairModel *self)
{
  HmDiagnosis *diagnosis = hmui_diagnose_model_get_diagnosis (self->bench);
  HmAction action = hmui_diagnose_model_get_action (self->bench);
  gboolean question = hm_diagnosis_get_phase (diagnosis) == HM_PHASE_REPAIRING;
  gboolean same = self->has_action && self->shown_of == diagnosis && self->question == question
                  && hm_action_equal (&self->action, &action);

  g_return_val_if_fail (action.kind == HM_ACTION_REPAIR, FALSE);
  self->shown_of = diagnosis;
  self->action = action;
  self->has_action = TRUE;
  self->question = question;
  if (!same)
    read_repair (self);
  return !same;
}

HmuiPrepareModel *
hmui_repair_model_get_prepare (HmuiRepairModel *self)
{
  return self->prepare;
}

gboolean
hmui_repair_model_is_question (HmuiRepairModel *self)
{
  return self->question;
}

char *
hmui_repair_model_dup_title (HmuiRepairModel *self)
{
  g_autoptr(GString) title = g_string_new (NULL);

  for (guint i = 0; i < self->remedies->len; i++)
    g_string_append_printf (title, "%s%s", i > 0 ? " · " : "",
                            hmui_tr (((const HmRemedy *) g_ptr_array_index (self->remedies, i))->name));
  return g_string_free (g_steal_pointer (&title), FALSE);
}

char *
hmui_repair_model_dup_because (HmuiRepairModel *self)
{
  HmDiagnosis *diagnosis = hmui_diagnose_model_get_diagnosis (self->bench);
  g_autoptr(GString) text = g_string_new (NULL);

  for (guint k = 0; k < self->action.n_causes; k++)
    {
      guint cause = self->action.causes[k];
      g_autofree char *percent = hmui_words_percent (hm_diagnosis_get_probability (diagnosis, cause));

      g_string_append_printf (text, _("%s%s, %s likely"), k > 0 ? " · " : "", hmui_words_cause (guide (self), cause), percent);
    }
  return g_string_free (g_steal_pointer (&text), FALSE);
}

GPtrArray *
hmui_repair_model_get_remedies (HmuiRepairModel *self)
{
  return self->remedies;
}

GPtrArray *
hmui_repair_model_get_fasteners (HmuiRepairModel *self)
{
  return self->fasteners;
}

GListModel *
hmui_repair_model_get_put_back (HmuiRepairModel *self)
{
  return G_LIST_MODEL (self->put_back);
}

const char * const *
hmui_repair_model_get_verify_steps (HmuiRepairModel *self)
{
  return hm_guide_get_complaint (guide (self))->verify_steps;
}

gboolean
hmui_repair_model_get_ticked (HmuiRepairModel *self, HmuiLine *line)
{
  return hmui_diagnose_model_get_tick (self->bench, hmui_line_get_key (line));
}

void
hmui_repair_model_set_ticked (HmuiRepairModel *self, HmuiLine *line, gboolean ticked)
{
  if (hmui_repair_model_get_ticked (self, line) != ticked)
    hmui_diagnose_model_set_tick (self->bench, hmui_line_get_key (line), ticked);
}

char *
hmui_repair_model_dup_progress (HmuiRepairModel *self)
{
  guint n = g_list_model_get_n_items (G_LIST_MODEL (self->put_back)), done = 0;

  for (guint i = 0; i < n; i++)
    {
      g_autoptr(HmuiLine) line = g_list_model_get_item (G_LIST_MODEL (self->put_back), i);

      done += hmui_repair_model_get_ticked (self, line);
    }
  return g_strdup_printf (g_dngettext (GETTEXT_PACKAGE, "%u of %u done", "%u of %u done", n), done, n);
}

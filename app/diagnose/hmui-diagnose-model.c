/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-diagnose-model-private.h"
#include "hmui-tr.h"
#include "hmui-words.h"
#include <glib/gi18n.h>

G_DEFINE_FINAL_TYPE (HmuiDiagnoseModel, hmui_diagnose_model, G_TYPE_OBJECT)

void
hmui_diagnose_model_say (HmuiDiagnoseModel *self, const char *text, gboolean can_undo)
{
  g_signal_emit_by_name (self, "message", text, can_undo);
}

void
hmui_diagnose_model_emit_changed (HmuiDiagnoseModel *self)
{
  g_signal_emit_by_name (self, "changed");
}

static void keep (HmuiDiagnoseModel *self);

void
hmui_diagnose_model_apply_waiting (HmuiDiagnoseModel *self)
{
  GHashTableIter iter;
  gpointer id, value;

  if (self->diagnosis == NULL || g_hash_table_size (self->waiting_ticks) + g_hash_table_size (self->waiting_texts) == 0)
    return;
  g_hash_table_iter_init (&iter, self->waiting_ticks);
  while (g_hash_table_iter_next (&iter, &id, &value))
    hm_diagnosis_set_tick (self->diagnosis, id, GPOINTER_TO_INT (value));
  g_hash_table_iter_init (&iter, self->waiting_texts);
  while (g_hash_table_iter_next (&iter, &id, &value))
    hm_diagnosis_set_text (self->diagnosis, id, value);
  g_hash_table_remove_all (self->waiting_ticks);
  g_hash_table_remove_all (self->waiting_texts);
  self->page_stays = TRUE;
  keep (self);
}

/* Ticks come first; then the change that was asked for while one was being written. */
static void
perform_waiting (HmuiDiagnoseModel *self)
{
  HmuiChange change = self->waiting_change;

  if (self->busy || self->diagnosis == NULL)
    return;
  self->waiting_change = (HmuiChange) { .kind = HMUI_CHANGE_NONE };
  hmui_diagnose_model_perform (self, &change);
}

static void
saved_cb (GObject *source, GAsyncResult *result, gpointer user_data)
{
  g_autoptr(HmuiDiagnoseModel) self = user_data;
  g_autoptr(GError) error = NULL;
  g_autofree char *note = g_steal_pointer (&self->note);
  gboolean kept = hmui_shop_save_finish (HMUI_SHOP (source), result, &self->id, &error);

  self->busy = FALSE;
  hmui_diagnose_model_emit_changed (self);
  if (!kept)
    {
      g_autofree char *text = g_strdup_printf (_("This could not be kept on disk: %s It stays here while the window is "
                                                 "open, and is written with your next answer."), error->message);
      hmui_diagnose_model_say (self, text, FALSE);
    }
  else if (note != NULL || !self->page_stays)
    hmui_diagnose_model_say (self, note, TRUE);   /* nothing to say: what was said before holds no longer */
  hmui_diagnose_model_apply_waiting (self);
  perform_waiting (self);
}

/* Hands the diagnosis to the store's worker; the page moves on in saved_cb(). */
static void
keep (HmuiDiagnoseModel *self)
{
  self->busy = TRUE;
  hmui_shop_save_async (self->shop, self->diagnosis, self->id, saved_cb, g_object_ref (self));
}

/* After every change by the person: the advice counts again, and the change is kept. */
void
hmui_diagnose_model_commit (HmuiDiagnoseModel *self, const char *note)
{
  self->has_chosen = FALSE;
  g_free (self->note);
  self->note = g_strdup (note);
  self->page_stays = FALSE;
  keep (self);
}

static void
hmui_diagnose_model_finalize (GObject *object)
{
  HmuiDiagnoseModel *self = HMUI_DIAGNOSE_MODEL (object);

  g_clear_object (&self->diagnosis);
  g_clear_pointer (&self->knowledge, hm_knowledge_unref);
  g_clear_object (&self->shop);
  g_clear_object (&self->settings);
  g_hash_table_unref (self->waiting_ticks);
  g_hash_table_unref (self->waiting_texts);
  g_free (self->problem);
  g_free (self->note);
  G_OBJECT_CLASS (hmui_diagnose_model_parent_class)->finalize (object);
}

static void
hmui_diagnose_model_class_init (HmuiDiagnoseModelClass *klass)
{
  GType type = G_TYPE_FROM_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = hmui_diagnose_model_finalize;
  g_signal_new ("changed", type, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
  g_signal_new ("message", type, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 2,
                G_TYPE_STRING, G_TYPE_BOOLEAN);
}

static void
hmui_diagnose_model_init (HmuiDiagnoseModel *self)
{
  self->waiting_ticks = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  self->waiting_texts = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, g_free);
}

HmuiDiagnoseModel *
hmui_diagnose_model_new (HmuiSettings *settings, HmuiShop *shop)
{
  HmuiDiagnoseModel *self = g_object_new (HMUI_TYPE_DIAGNOSE_MODEL, NULL);

  self->settings = g_object_ref (settings);
  self->shop = g_object_ref (shop);
  g_signal_connect_object (settings, "notify::units", G_CALLBACK (hmui_diagnose_model_emit_changed), self, G_CONNECT_SWAPPED);
  return self;
}

gboolean
hmui_diagnose_model_open (HmuiDiagnoseModel *self, const char *path)
{
  g_autoptr(GError) error = NULL;

  if (self->knowledge != NULL)
    return TRUE;
  g_clear_pointer (&self->problem, g_free);
  self->knowledge = hm_knowledge_open (path, &error);
  if (self->knowledge == NULL)
    self->problem = g_strdup (error->message);
  hmui_diagnose_model_emit_changed (self);
  return self->knowledge != NULL;
}

const char *
hmui_diagnose_model_get_problem (HmuiDiagnoseModel *self)
{
  return self->problem;
}

HmKnowledge *
hmui_diagnose_model_get_knowledge (HmuiDiagnoseModel *self)
{
  return self->knowledge;
}

HmuiShop *
hmui_diagnose_model_get_shop (HmuiDiagnoseModel *self)
{
  return self->shop;
}

HmuiSettings *
hmui_diagnose_model_get_settings (HmuiDiagnoseModel *self)
{
  return self->settings;
}

HmFormat
hmui_diagnose_model_get_format (HmuiDiagnoseModel *self)
{
  return hmui_settings_get_format (self->settings);
}

HmuiDiagnoseView
hmui_diagnose_model_get_view (HmuiDiagnoseModel *self)
{
  if (self->problem != NULL)
    return HMUI_DIAGNOSE_BROKEN;
  if (self->diagnosis == NULL)
    return HMUI_DIAGNOSE_CHOOSE;
  if (hm_diagnosis_get_phase (self->diagnosis) == HM_PHASE_CLOSED && !self->has_chosen)
    return HMUI_DIAGNOSE_CLOSE;
  switch (hmui_diagnose_model_get_action (self).kind)
    {
    case HM_ACTION_CHECK: return HMUI_DIAGNOSE_STEP;
    case HM_ACTION_REPAIR: return HMUI_DIAGNOSE_REPAIR;
    case HM_ACTION_ESCALATE:
    default: return HMUI_DIAGNOSE_ESCALATE;
    }
}

HmDiagnosis *
hmui_diagnose_model_get_diagnosis (HmuiDiagnoseModel *self)
{
  return self->diagnosis;
}

HmGuide *
hmui_diagnose_model_get_guide (HmuiDiagnoseModel *self)
{
  return self->diagnosis != NULL ? hm_diagnosis_get_guide (self->diagnosis) : NULL;
}

/* A repair that was begun stays what the page is about until its result is known. */
static gboolean
repair_under_way (HmuiDiagnoseModel *self, HmAction *action)
{
  guint n = hm_diagnosis_get_n_entries (self->diagnosis);
  const HmEntry *last = n > 0 ? hm_diagnosis_get_entry (self->diagnosis, n - 1) : NULL;

  if (hm_diagnosis_get_phase (self->diagnosis) != HM_PHASE_REPAIRING || last == NULL || last->kind != HM_ENTRY_REPAIR)
    return FALSE;
  *action = (HmAction) { .kind = HM_ACTION_REPAIR, .n_causes = last->n_causes };
  memcpy (action->causes, last->causes, sizeof action->causes);
  return TRUE;
}

HmAction
hmui_diagnose_model_get_action (HmuiDiagnoseModel *self)
{
  HmAction action = { .kind = HM_ACTION_ESCALATE };

  g_return_val_if_fail (self->diagnosis != NULL, action);
  if (self->has_chosen)
    return self->chosen;
  if (repair_under_way (self, &action))
    return action;
  return hm_diagnosis_get_advice (self->diagnosis)->action;
}

gboolean
hmui_diagnose_model_is_own_choice (HmuiDiagnoseModel *self)
{
  return self->has_chosen;
}

gboolean
hmui_diagnose_model_is_busy (HmuiDiagnoseModel *self)
{
  return self->busy;
}

char *
hmui_diagnose_model_dup_whereabouts (HmuiDiagnoseModel *self)
{
  HmGuide *guide = hmui_diagnose_model_get_guide (self);
  g_autofree char *spent = NULL, *to_go = NULL;
  const char *complaint, *layout;

  if (guide == NULL)
    return g_strdup (_("What is wrong?"));
  complaint = hmui_tr (hm_guide_get_complaint (guide)->name);
  layout = hmui_tr (hm_guide_get_layout (guide)->name);
  spent = hmui_words_minutes (hm_diagnosis_get_minutes_spent (self->diagnosis).minutes);
  if (hm_diagnosis_get_phase (self->diagnosis) != HM_PHASE_ASKING)
    return g_strdup_printf (_("%s · %s · %s\302\240spent"), complaint, layout, spent);
  to_go = hmui_words_minutes (hm_diagnosis_get_advice (self->diagnosis)->expected_minutes);
  return g_strdup_printf (_("%s · %s · %s\302\240spent · at\302\240most\302\240%s\302\240to\302\240go"), complaint, layout, spent, to_go);
}

void
hmui_diagnose_model_start (HmuiDiagnoseModel *self, HmDiagnosis *fresh)
{
  g_return_if_fail (HM_IS_DIAGNOSIS (fresh));
  if (self->busy)
    {
      g_object_unref (fresh);
      return;
    }
  g_set_object (&self->diagnosis, fresh);
  g_object_unref (fresh);
  self->id = 0;
  hmui_diagnose_model_commit (self, NULL);
}

static void
loaded_cb (GObject *source, GAsyncResult *result, gpointer user_data)
{
  g_autoptr(HmuiDiagnoseModel) self = user_data;
  g_autoptr(GError) error = NULL;
  g_autofree char *json = hmui_shop_load_finish (HMUI_SHOP (source), result, &error);
  g_autofree char *lost = NULL;
  HmDiagnosis *found = json != NULL ? hm_diagnosis_new_from_json (self->knowledge, json, &lost, &error) : NULL;

  self->busy = FALSE;
  if (found == NULL)
    {
      hmui_diagnose_model_say (self, error->message, FALSE);
      return;
    }
  g_clear_object (&self->diagnosis);
  self->diagnosis = found;
  self->has_chosen = FALSE;
  hmui_diagnose_model_emit_changed (self);
  if (lost != NULL && lost[0] != '\0')
    hmui_diagnose_model_say (self, _("Some earlier answers are no longer part of what Halfmoon knows. They were left out."),
                             FALSE);
}

void
hmui_diagnose_model_resume (HmuiDiagnoseModel *self, gint64 id)
{
  if (self->busy || self->knowledge == NULL)
    return;
  self->busy = TRUE;
  self->id = id;
  hmui_shop_load_async (self->shop, id, loaded_cb, g_object_ref (self));
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-step-model.h"
#include "hmui-line.h"
#include "hmui-tr.h"
#include "hmui-words.h"
#include <glib/gi18n.h>

#define NUMBER_KEYS 9

struct _HmuiStepModel
{
  GObject parent_instance;
  HmuiDiagnoseModel *bench;       /* owned */
  HmDiagnosis *shown_of;          /* borrowed; only compared */
  HmAction shown;
  guint shown_after;              /* how long the trail was */
  const HmCheck *check;           /* borrowed */
  GListStore *findings;           /* owned */
  char *earlier;                  /* owned */
};

G_DEFINE_FINAL_TYPE (HmuiStepModel, hmui_step_model, G_TYPE_OBJECT)

static void
hmui_step_model_finalize (GObject *object)
{
  HmuiStepModel *self = HMUI_STEP_MODEL (object);

  g_object_unref (self->findings);
  g_clear_object (&self->bench);
  g_free (self->earlier);
  G_OBJECT_CLASS (hmui_step_model_parent_class)->finalize (object);
}

static void
hmui_step_model_class_init (HmuiStepModelClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hmui_step_model_finalize;
}

static void
hmui_step_model_init (HmuiStepModel *self)
{
  self->findings = g_list_store_new (HMUI_TYPE_LINE);
}

HmuiStepModel *
hmui_step_model_new (HmuiDiagnoseModel *bench)
{
  HmuiStepModel *self = g_object_new (HMUI_TYPE_STEP_MODEL, NULL);

  self->bench = g_object_ref (bench);
  return self;
}

static void
list_findings (HmuiStepModel *self)
{
  g_list_store_remove_all (self->findings);
  for (guint i = 0; i < self->check->n_findings; i++)
    {
      g_autofree char *key = i < NUMBER_KEYS ? g_strdup_printf ("%u", i + 1) : NULL;

      hmui_line_append (self->findings, i, key, hmui_tr (self->check->findings[i].name), NULL, NULL);
    }
}

static void
read_earlier (HmuiStepModel *self, HmDiagnosis *diagnosis)
{
  HmFormat format = hmui_diagnose_model_get_format (self->bench);
  guint n = hm_diagnosis_get_n_entries (diagnosis);

  g_clear_pointer (&self->earlier, g_free);
  for (guint i = 0; i < n && self->earlier == NULL; i++)
    {
      const HmEntry *entry = hm_diagnosis_get_entry (diagnosis, i);

      if (entry->kind != HM_ENTRY_REPAIR && entry->kind != HM_ENTRY_SENT_OUT && entry->check == self->shown.check)
        self->earlier = hmui_words_entry_answer (hm_diagnosis_get_guide (diagnosis), entry, &format);
    }
}

gboolean
hmui_step_model_refresh (HmuiStepModel *self)
{
  HmDiagnosis *diagnosis = hmui_diagnose_model_get_diagnosis (self->bench);
  HmAction action = hmui_diagnose_model_get_action (self->bench);
  guint n_entries = hm_diagnosis_get_n_entries (diagnosis);
  gboolean same = self->shown_of == diagnosis && self->shown_after == n_entries && self->check != NULL
                  && hm_action_equal (&action, &self->shown);

  g_return_val_if_fail (action.kind == HM_ACTION_CHECK, FALSE);
  self->shown_of = diagnosis;
  self->shown_after = n_entries;
  self->shown = action;
  self->check = &hm_guide_get_checks (hm_diagnosis_get_guide (diagnosis), NULL)[action.check];
  read_earlier (self, diagnosis);
  if (!same)
    list_findings (self);
  return !same;
}

const HmCheck *
hmui_step_model_get_check (HmuiStepModel *self)
{
  return self->check;
}

GListModel *
hmui_step_model_get_findings (HmuiStepModel *self)
{
  return G_LIST_MODEL (self->findings);
}

const char *
hmui_step_model_get_earlier (HmuiStepModel *self)
{
  return self->earlier;
}

const HmPicture *
hmui_step_model_get_picture (HmuiStepModel *self)
{
  g_autoptr(GError) error = NULL;

  if (self->check->picture == NULL)
    return NULL;
  return hm_knowledge_get_picture (hmui_diagnose_model_get_knowledge (self->bench), self->check->picture, &error);
}

char *
hmui_step_model_dup_limits (HmuiStepModel *self)
{
  HmFormat format = hmui_diagnose_model_get_format (self->bench);
  g_autofree char *limits = hmui_words_limits (self->check, &format);
  const char *applies;

  if (limits == NULL)
    return NULL;
  applies = hmui_tr (self->check->limits[0]->applies);
  if (applies == NULL || applies[0] == '\0')
    return g_steal_pointer (&limits);
  return g_strdup_printf (_("%s\nHolds for: %s"), limits, applies);
}

char *
hmui_step_model_judge (HmuiStepModel *self, HmQuantity reading, gboolean *good)
{
  HmFormat format = hmui_diagnose_model_get_format (self->bench);
  double weight;
  guint finding;

  if (hmui_diagnose_model_is_busy (self->bench) || !self->check->is_reading)
    return NULL;
  finding = hm_diagnosis_judge_reading (hmui_diagnose_model_get_diagnosis (self->bench), self->shown.check, reading, &weight);
  *good = finding == 0;
  return hmui_words_verdict (self->check, finding, reading, weight, &format);
}

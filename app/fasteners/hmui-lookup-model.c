/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-lookup-model.h"
#include "hmui-answer-build.h"
#include <glib/gi18n.h>

struct _HmuiLookupModel
{
  GObject parent_instance;
  HmKnowledge *knowledge;         /* owned */
  HmuiSettings *settings;         /* owned */
  HmFastenerPlaces *places;       /* owned; NULL until first asked for, or when they cannot be read */
  gboolean asked_for_places;
  char *text;                     /* owned */
  HmLookup question;
  HmHeadCondition condition;
  guint class_index;              /* into unified_classes */
  HmuiAnswer *answer;             /* owned */
  char *problem;                  /* owned */
};

static const struct { HmThreadClass bolt, hole; } unified_classes[HMUI_LOOKUP_N_CLASSES] = {
  { HM_THREAD_CLASS_1A, HM_THREAD_CLASS_1B },
  { HM_THREAD_CLASS_2A, HM_THREAD_CLASS_2B },
  { HM_THREAD_CLASS_3A, HM_THREAD_CLASS_3B },
};

G_DEFINE_FINAL_TYPE (HmuiLookupModel, hmui_lookup_model, G_TYPE_OBJECT)

/* Read at the first question, not when the window opens. Without them the answer lacks a part, no more. */
static const HmFastenerPlaces *
ensure_places (HmuiLookupModel *self)
{
  g_autoptr(GError) error = NULL;

  if (!self->asked_for_places)
    self->places = hm_fastener_places_new (self->knowledge, &error);
  self->asked_for_places = TRUE;
  if (error != NULL)
    g_warning ("%s", error->message);
  return self->places;
}

static HmuiAnswer *
answer_question (HmuiLookupModel *self)
{
  const HmLookup *question = &self->question;
  HmuiAsker asker = { .tables = hm_knowledge_get_tables (self->knowledge), .places = ensure_places (self),
                      .format = hmui_settings_get_format (self->settings), .condition = self->condition };
  gboolean unified = question->thread.form == HM_THREAD_UNIFIED;

  asker.bolt_class = unified ? unified_classes[self->class_index].bolt : HM_THREAD_CLASS_6G;
  asker.hole_class = unified ? unified_classes[self->class_index].hole : HM_THREAD_CLASS_6H;
  switch (question->kind)
    {
    case HM_LOOKUP_THREAD: return hmui_answer_thread (&asker, &question->thread);
    case HM_LOOKUP_PIPE: return hmui_answer_pipe (&asker, question->pipe);
    case HM_LOOKUP_TORQUE: return hmui_answer_torque (&asker, &question->torque);
    case HM_LOOKUP_DRIVE:
    default:
      return question->drive.kind == HM_DRIVE_HEX ? hmui_answer_width (&asker, question) : hmui_answer_key (&asker, &question->drive);
    }
}

static void
refresh (HmuiLookupModel *self)
{
  g_autoptr(GError) error = NULL;

  g_clear_object (&self->answer);
  g_clear_pointer (&self->problem, g_free);
  if (hm_lookup_parse (self->text, hm_knowledge_get_tables (self->knowledge), &self->question, &error))
    self->answer = answer_question (self);
  else if (!g_error_matches (error, HM_LOOKUP_ERROR, HM_LOOKUP_ERROR_EMPTY))
    self->problem = g_strdup (error->message);
  g_signal_emit_by_name (self, "changed");
}

static void
hmui_lookup_model_dispose (GObject *object)
{
  HmuiLookupModel *self = HMUI_LOOKUP_MODEL (object);

  g_clear_object (&self->answer);
  g_clear_object (&self->settings);
  g_clear_pointer (&self->places, hm_fastener_places_free);
  g_clear_pointer (&self->knowledge, hm_knowledge_unref);
  g_clear_pointer (&self->problem, g_free);
  g_clear_pointer (&self->text, g_free);
  G_OBJECT_CLASS (hmui_lookup_model_parent_class)->dispose (object);
}

static void
hmui_lookup_model_class_init (HmuiLookupModelClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = hmui_lookup_model_dispose;
  g_signal_new ("changed", HMUI_TYPE_LOOKUP_MODEL, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
hmui_lookup_model_init (HmuiLookupModel *self)
{
  self->text = g_strdup ("");
  self->class_index = HMUI_LOOKUP_USUAL_CLASS;
}

HmuiLookupModel *
hmui_lookup_model_new (HmKnowledge *knowledge, HmuiSettings *settings)
{
  HmuiLookupModel *self = g_object_new (HMUI_TYPE_LOOKUP_MODEL, NULL);

  self->knowledge = hm_knowledge_ref (knowledge);
  self->settings = g_object_ref (settings);
  g_signal_connect_object (settings, "notify::units", G_CALLBACK (refresh), self, G_CONNECT_SWAPPED);
  return self;
}

void
hmui_lookup_model_set_text (HmuiLookupModel *self, const char *text)
{
  g_return_if_fail (HMUI_IS_LOOKUP_MODEL (self) && text != NULL);
  if (g_str_equal (text, self->text))
    return;
  g_free (self->text);
  self->text = g_strdup (text);
  refresh (self);
}

const char *
hmui_lookup_model_get_text (HmuiLookupModel *self)
{
  return self->text;
}

void
hmui_lookup_model_set_condition (HmuiLookupModel *self, HmHeadCondition condition)
{
  g_return_if_fail (HMUI_IS_LOOKUP_MODEL (self));
  if (condition == self->condition)
    return;
  self->condition = condition;
  refresh (self);
}

HmHeadCondition
hmui_lookup_model_get_condition (HmuiLookupModel *self)
{
  return self->condition;
}

gboolean
hmui_lookup_model_has_classes (HmuiLookupModel *self)
{
  return self->answer != NULL && self->question.kind == HM_LOOKUP_THREAD && self->question.thread.form == HM_THREAD_UNIFIED;
}

char *
hmui_lookup_model_dup_class (guint i)
{
  g_return_val_if_fail (i < HMUI_LOOKUP_N_CLASSES, NULL);
  return g_strdup_printf (_("Class: %s and %s"), hm_thread_class_name (unified_classes[i].bolt), hm_thread_class_name (unified_classes[i].hole));
}

void
hmui_lookup_model_set_class (HmuiLookupModel *self, guint i)
{
  g_return_if_fail (HMUI_IS_LOOKUP_MODEL (self) && i < G_N_ELEMENTS (unified_classes));
  if (i == self->class_index)
    return;
  self->class_index = i;
  refresh (self);
}

HmuiAnswer *
hmui_lookup_model_get_answer (HmuiLookupModel *self)
{
  return self->answer;
}

const char *
hmui_lookup_model_get_problem (HmuiLookupModel *self)
{
  return self->problem;
}

HmFormat
hmui_lookup_model_get_format (HmuiLookupModel *self)
{
  return hmui_settings_get_format (self->settings);
}

static gboolean
is_same_length (HmLength a, HmLength b)
{
  return !(a.mm < b.mm) && !(a.mm > b.mm);
}

/* Whether looking up @target would give the answer that is there. */
static gboolean
leads_here (HmuiLookupModel *self, const char *target)
{
  const HmLookup *here = &self->question;
  HmLookup there;

  if (!hm_lookup_parse (target, hm_knowledge_get_tables (self->knowledge), &there, NULL) || there.kind != here->kind)
    return FALSE;
  if (there.kind == HM_LOOKUP_THREAD)
    return is_same_length (there.thread.major, here->thread.major) && is_same_length (there.thread.pitch, here->thread.pitch);
  return there.kind == HM_LOOKUP_DRIVE && there.drive.kind == here->drive.kind && there.drive.number == here->drive.number
         && there.drive.inch == here->drive.inch && is_same_length (there.drive.size, here->drive.size);
}

const HmuiAnswerText *
hmui_lookup_model_get_first_link (HmuiLookupModel *self)
{
  g_return_val_if_fail (HMUI_IS_LOOKUP_MODEL (self), NULL);
  for (guint i = 0; self->answer != NULL && i < hmui_answer_get_n_parts (self->answer); i++)
    {
      HmuiAnswerPart *part = hmui_answer_get_part (self->answer, i);

      for (guint k = 0; k < hmui_answer_part_get_n (part); k++)
        {
          const HmuiAnswerText *text = hmui_answer_row_get_text (hmui_answer_part_get_row (part, k));

          if (text->target != NULL && (text->action != NULL || !leads_here (self, text->target)))
            return text;
        }
    }
  return NULL;
}

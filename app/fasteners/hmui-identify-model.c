/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-identify-model.h"
#include "hm-lookup.h"
#include "hm-near-miss.h"
#include "hm-pitch-text.h"
#include "hmui-answer-build.h"
#include "hmui-words-fit.h"
#include "hmui-words-thread.h"
#include "hmui-words.h"
#include <glib/gi18n.h>

#define INCHES_BELOW_MM 1.4      /* a bare ".312" is inches; the smallest thread here is M1.6 */
#define SURE 0.9                 /* above it the likeliest is said to be it */

typedef struct { char *typed, *words; gboolean is_problem; } Field;   /* owned */

struct _HmuiIdentifyModel
{
  GObject parent_instance;
  HmKnowledge *knowledge;         /* owned */
  HmuiSettings *settings;         /* owned */
  Field diameter, pitch;
  HmThreadFeature feature;
  HmuiInstrument instrument;
  gboolean worn;
  GArray *candidates;             /* owned, of HmThreadCandidate */
  char *lead, *next;              /* owned */
  HmuiAnswer *misses;             /* owned; NULL for none */
};

G_DEFINE_FINAL_TYPE (HmuiIdentifyModel, hmui_identify_model, G_TYPE_OBJECT)

static void
set_words (Field *field, char *words, gboolean is_problem)
{
  g_free (field->words);
  field->words = words;
  field->is_problem = is_problem;
}

static void
read_diameter (HmuiIdentifyModel *self, HmThreadMeasurement *measurement)
{
  HmFormat format = hmui_settings_get_format (self->settings);
  HmQuantity quantity;
  g_autoptr(GError) error = NULL;

  set_words (&self->diameter, NULL, FALSE);
  if (self->diameter.typed[0] == '\0')
    return;
  if (!hm_lookup_parse_length (self->diameter.typed, INCHES_BELOW_MM, &quantity, &error))
    {
      set_words (&self->diameter, g_strdup (error->message), TRUE);
      return;
    }
  measurement->diameter.mm = quantity.value;
  measurement->diameter_sd = self->instrument == HMUI_INSTRUMENT_RULE ? hm_rule_sd : hm_caliper_sd;
  set_words (&self->diameter, hmui_words_length (measurement->diameter, &format), FALSE);
}

static void
read_pitch (HmuiIdentifyModel *self, HmThreadMeasurement *measurement)
{
  HmFormat format = hmui_settings_get_format (self->settings);
  HmPitchReading reading;
  g_autoptr(GError) error = NULL;

  set_words (&self->pitch, NULL, FALSE);
  if (self->pitch.typed[0] == '\0')
    return;
  if (!hm_pitch_parse (self->pitch.typed, &reading, &error))
    {
      set_words (&self->pitch, g_strdup (error->message), TRUE);
      return;
    }
  if (reading.spaces > 0)
    hm_thread_measurement_count (measurement, reading.spaces, reading.over, hm_rule_sd);
  else
    {
      measurement->pitch = reading.pitch;
      measurement->pitch_sd = hm_pitch_gauge_sd (reading.pitch);
    }
  set_words (&self->pitch, hm_pitch_format (reading.pitch, reading.inch, &format), FALSE);
}

static const HmThreadCandidate *
get_candidate (HmuiIdentifyModel *self, guint i)
{
  return &g_array_index (self->candidates, HmThreadCandidate, i);
}

static void
say_lead (HmuiIdentifyModel *self, gboolean measured)
{
  g_autofree char *percent = NULL;

  g_clear_pointer (&self->lead, g_free);
  if (self->diameter.is_problem || self->pitch.is_problem)
    return;
  if (!measured)
    self->lead = g_strdup (_("Measure the diameter, the pitch, or both."));
  else if (self->candidates->len == 0)
    self->lead = g_strdup (_("No thread of the series comes near. Measure again, or tick “worn”."));
  else
    {
      percent = hmui_words_percent (get_candidate (self, 0)->probability);
      self->lead = g_strdup_printf (get_candidate (self, 0)->probability > SURE ? _("It is %s (%s).") : _("Most likely %s (%s)."),
                                    get_candidate (self, 0)->row->name, percent);
    }
}

static void
say_next (HmuiIdentifyModel *self)
{
  HmFormat format = hmui_settings_get_format (self->settings);
  HmThreadSeparation separation;

  g_clear_pointer (&self->next, g_free);
  if (self->candidates->len < 2)
    return;
  separation = hm_thread_separate (&get_candidate (self, 0)->thread, &get_candidate (self, 1)->thread, self->feature,
                                   hm_knowledge_get_tables (self->knowledge));
  self->next = hmui_words_separation (&separation, self->feature, get_candidate (self, 0)->row->name,
                                      get_candidate (self, 1)->row->name, &format);
}

static void
find_misses (HmuiIdentifyModel *self)
{
  HmuiAsker asker = { .tables = hm_knowledge_get_tables (self->knowledge), .format = hmui_settings_get_format (self->settings) };

  g_clear_object (&self->misses);
  if (self->candidates->len == 0)
    return;
  self->misses = hmui_answer_new (get_candidate (self, 0)->row->name, NULL, NULL);
  hmui_answer_add_misses (self->misses, &asker, &get_candidate (self, 0)->thread);
}

static void
refresh (HmuiIdentifyModel *self)
{
  HmThreadMeasurement measurement = { .feature = self->feature, .worn = self->worn };

  read_diameter (self, &measurement);
  read_pitch (self, &measurement);
  g_clear_pointer (&self->candidates, g_array_unref);
  self->candidates = hm_thread_identify (&measurement, hm_knowledge_get_tables (self->knowledge));
  say_lead (self, measurement.diameter.mm > 0.0 || measurement.pitch.mm > 0.0);
  say_next (self);
  find_misses (self);
  g_signal_emit_by_name (self, "changed");
}

static void
hmui_identify_model_finalize (GObject *object)
{
  HmuiIdentifyModel *self = HMUI_IDENTIFY_MODEL (object);

  g_clear_object (&self->misses);
  g_clear_object (&self->settings);
  g_clear_pointer (&self->candidates, g_array_unref);
  g_clear_pointer (&self->knowledge, hm_knowledge_unref);
  g_free (self->diameter.typed);
  g_free (self->diameter.words);
  g_free (self->pitch.typed);
  g_free (self->pitch.words);
  g_free (self->lead);
  g_free (self->next);
  G_OBJECT_CLASS (hmui_identify_model_parent_class)->finalize (object);
}

static void
hmui_identify_model_class_init (HmuiIdentifyModelClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hmui_identify_model_finalize;
  g_signal_new ("changed", HMUI_TYPE_IDENTIFY_MODEL, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
hmui_identify_model_init (HmuiIdentifyModel *self)
{
  self->diameter.typed = g_strdup ("");
  self->pitch.typed = g_strdup ("");
}

HmuiIdentifyModel *
hmui_identify_model_new (HmKnowledge *knowledge, HmuiSettings *settings)
{
  HmuiIdentifyModel *self = g_object_new (HMUI_TYPE_IDENTIFY_MODEL, NULL);

  self->knowledge = hm_knowledge_ref (knowledge);
  self->settings = g_object_ref (settings);
  g_signal_connect_object (settings, "notify::units", G_CALLBACK (refresh), self, G_CONNECT_SWAPPED);
  refresh (self);
  return self;
}

/* Blanks alone are nothing typed. */
static void
set_typed (HmuiIdentifyModel *self, Field *field, const char *text)
{
  g_free (field->typed);
  field->typed = g_strstrip (g_strdup (text));
  refresh (self);
}

void
hmui_identify_model_set_diameter (HmuiIdentifyModel *self, const char *text)
{
  g_return_if_fail (HMUI_IS_IDENTIFY_MODEL (self) && text != NULL);
  set_typed (self, &self->diameter, text);
}

void
hmui_identify_model_set_pitch (HmuiIdentifyModel *self, const char *text)
{
  g_return_if_fail (HMUI_IS_IDENTIFY_MODEL (self) && text != NULL);
  set_typed (self, &self->pitch, text);
}

void
hmui_identify_model_set_feature (HmuiIdentifyModel *self, HmThreadFeature feature)
{
  g_return_if_fail (HMUI_IS_IDENTIFY_MODEL (self));
  self->feature = feature;
  refresh (self);
}

void
hmui_identify_model_set_instrument (HmuiIdentifyModel *self, HmuiInstrument instrument)
{
  g_return_if_fail (HMUI_IS_IDENTIFY_MODEL (self));
  self->instrument = instrument;
  refresh (self);
}

void
hmui_identify_model_set_worn (HmuiIdentifyModel *self, gboolean worn)
{
  g_return_if_fail (HMUI_IS_IDENTIFY_MODEL (self));
  self->worn = worn;
  refresh (self);
}

const char *
hmui_identify_model_get_diameter_words (HmuiIdentifyModel *self, gboolean *is_problem)
{
  *is_problem = self->diameter.is_problem;
  return self->diameter.words;
}

const char *
hmui_identify_model_get_pitch_words (HmuiIdentifyModel *self, gboolean *is_problem)
{
  *is_problem = self->pitch.is_problem;
  return self->pitch.words;
}

guint
hmui_identify_model_get_n (HmuiIdentifyModel *self)
{
  return self->candidates->len;
}

const char *
hmui_identify_model_get_name (HmuiIdentifyModel *self, guint i)
{
  g_return_val_if_fail (i < self->candidates->len, NULL);
  return get_candidate (self, i)->row->name;
}

double
hmui_identify_model_get_probability (HmuiIdentifyModel *self, guint i)
{
  g_return_val_if_fail (i < self->candidates->len, 0.0);
  return get_candidate (self, i)->probability;
}

const char *
hmui_identify_model_get_lead (HmuiIdentifyModel *self)
{
  return self->lead;
}

const char *
hmui_identify_model_get_next (HmuiIdentifyModel *self)
{
  return self->next;
}

HmuiAnswerRow *
hmui_identify_model_get_miss (HmuiIdentifyModel *self)
{
  HmuiAnswerPart *part = self->misses != NULL ? hmui_answer_find_part (self->misses, HMUI_PART_MISSES) : NULL;

  return part != NULL ? hmui_answer_part_get_row (part, 0) : NULL;
}

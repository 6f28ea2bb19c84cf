/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Complaint, cause, correction, put together from the knowledge's own sentences. */
#include "hm-diagnosis-private.h"

static const char *
keep_english (const char *english)
{
  return english;
}

static void
add_sentence (GString *text, const char *sentence)
{
  gunichar last;

  if (sentence == NULL || *sentence == '\0')
    return;
  if (text->len > 0)
    g_string_append_c (text, ' ');
  g_string_append (text, sentence);
  last = g_utf8_get_char (g_utf8_prev_char (text->str + text->len));
  if (g_unichar_isalnum (last) || last == ')' || last == 0x201d)
    g_string_append_c (text, '.');
}

static void
add_lines (GPtrArray *lines, const char * const *from, HmTranslate translate)
{
  for (; *from != NULL; from++)
    if (!g_ptr_array_find_with_equal_func (lines, translate (*from), g_str_equal, NULL))
      g_ptr_array_add (lines, g_strdup (translate (*from)));
}

static char *
complaint_text (HmDiagnosis *self, HmTranslate translate)
{
  const HmComplaint *complaint = hm_guide_get_complaint (self->guide);
  GString *text = g_string_new (NULL);
  guint n;
  const HmIncident *incidents = hm_guide_get_incidents (self->guide, &n);

  g_string_append_printf (text, "%s, %s.", translate (complaint->name), translate (hm_guide_get_layout (self->guide)->name));
  add_sentence (text, translate (complaint->owner_words));
  for (guint i = 0; i < n; i++)
    if (hm_diagnosis_get_incident (self, i))
      add_sentence (text, translate (incidents[i].name));
  return g_string_free (text, FALSE);
}

/* The entry that ended it: the repair that was verified, else NULL. */
static const HmEntry *
closing_repair (HmDiagnosis *self)
{
  const HmEntry *last;

  if (self->trail.entries->len == 0)
    return NULL;
  last = &g_array_index (self->trail.entries, HmEntry, self->trail.entries->len - 1);
  return last->kind == HM_ENTRY_REPAIR ? last : NULL;
}

/* "Volts across the solenoid: 11.2 V: contacts open." for each finding that raised the cause, most telling first. */
static void
add_findings (HmDiagnosis *self, guint cause, GString *text, const HmFormat *format, HmTranslate translate)
{
  g_autoptr (GArray) reasons = hm_diagnosis_get_reasons (self, cause);
  guint n, told = 0;
  const HmCheck *checks = hm_guide_get_checks (self->guide, &n);

  for (guint i = 0; i < reasons->len && told < 3; i++)
    {
      const HmReason *reason = &g_array_index (reasons, HmReason, i);
      const HmEntry *entry;
      g_autofree char *reading = NULL, *line = NULL;
      if (reason->kind != HM_REASON_ENTRY || reason->decibans <= 0)
        continue;
      entry = &g_array_index (self->trail.entries, HmEntry, reason->index);
      if (entry->kind != HM_ENTRY_FINDING && entry->kind != HM_ENTRY_READING)
        continue;
      if (entry->kind == HM_ENTRY_READING)
        reading = hm_quantity_format (entry->reading, HM_UNIT_NONE, -1, format);
      line = g_strdup_printf ("%s: %s%s%s", translate (checks[entry->check].name), reading != NULL ? reading : "",
                              reading != NULL ? ", " : "", translate (checks[entry->check].findings[entry->finding].name));
      add_sentence (text, line);
      told++;
    }
}

static void
write_repair (HmDiagnosis *self, const HmEntry *repair, HmWriteUp *out, const HmFormat *format, HmTranslate translate)
{
  g_autoptr (GString) cause = g_string_new (NULL), correction = g_string_new (NULL);
  guint n;
  const HmCause *causes = hm_guide_get_causes (self->guide, &n);

  for (guint k = 0; k < repair->n_causes; k++)
    {
      const HmCause *c = &causes[repair->causes[k]];
      add_sentence (cause, translate (c->name));
      add_sentence (cause, translate (c->detail));
      add_findings (self, repair->causes[k], cause, format, translate);
      add_sentence (correction, translate (c->remedy->name));
      for (const char * const *line = c->remedy->after; *line != NULL; line++)
        add_sentence (correction, translate (*line));
      add_lines (out->look_also, c->look_also, translate);
      if (c->tell_owner != NULL)
        g_ptr_array_add (out->tell_owner, g_strdup (translate (c->tell_owner)));
    }
  out->cause = g_string_free (g_steal_pointer (&cause), FALSE);
  out->correction = g_string_free (g_steal_pointer (&correction), FALSE);
}

static void
add_incident_lines (HmDiagnosis *self, HmWriteUp *out, HmTranslate translate)
{
  guint n;
  const HmIncident *incidents = hm_guide_get_incidents (self->guide, &n);

  for (guint i = 0; i < n; i++)
    if (hm_diagnosis_get_incident (self, i))
      {
        add_lines (out->look_also, incidents[i].inspect, translate);
        add_lines (out->tell_owner, incidents[i].avoid, translate);
      }
}

static void
apply_text (HmDiagnosis *self, const char *id, char **text)
{
  const char *own = hm_diagnosis_get_text (self, id);

  if (own != NULL)
    {
      g_free (*text);
      *text = g_strdup (own);
    }
}

HmWriteUp *
hm_diagnosis_write_up (HmDiagnosis *self, const HmFormat *format, HmTranslate translate)
{
  HmWriteUp *out;
  const HmEntry *repair;

  g_return_val_if_fail (HM_IS_DIAGNOSIS (self) && format != NULL, NULL);

  translate = translate != NULL ? translate : keep_english;
  out = g_new0 (HmWriteUp, 1);
  out->look_also = g_ptr_array_new_with_free_func (g_free);
  out->tell_owner = g_ptr_array_new_with_free_func (g_free);
  out->complaint = complaint_text (self, translate);
  repair = closing_repair (self);
  if (repair != NULL)
    write_repair (self, repair, out, format, translate);
  else
    out->correction = g_strdup (translate (hm_guide_get_complaint (self->guide)->escalate));
  if (out->cause == NULL)
    out->cause = g_strdup ("");
  add_incident_lines (self, out, translate);
  apply_text (self, "complaint", &out->complaint);
  apply_text (self, "cause", &out->cause);
  apply_text (self, "correction", &out->correction);
  return out;
}

void
hm_write_up_free (HmWriteUp *self)
{
  if (self == NULL)
    return;
  g_free (self->complaint);
  g_free (self->cause);
  g_free (self->correction);
  g_ptr_array_unref (self->look_also);
  g_ptr_array_unref (self->tell_owner);
  g_free (self);
}

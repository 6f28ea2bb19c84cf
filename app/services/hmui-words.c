/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-words.h"
#include "hmui-tr.h"
#include <glib/gi18n.h>
#include <math.h>

char *
hmui_words_minutes (double minutes)
{
  long whole = lround (minutes);

  if (minutes <= 0.0)
    return g_strdup_printf (_("%ld\302\240min"), 0L);
  if (whole < 1)
    return g_strdup (_("under 1\302\240min"));
  if (whole < 100)
    return g_strdup_printf (_("%ld\302\240min"), whole);
  return g_strdup_printf (_("%ld\302\240h %02ld\302\240min"), whole / 60, whole % 60);
}

char *
hmui_words_percent (double probability)
{
  long percent = lround (probability * 100.0);

  if (percent < 1)
    return g_strdup (_("under 1\302\240%"));
  if (percent > 99)
    return g_strdup (_("over 99\302\240%"));
  return g_strdup_printf (_("%ld\302\240%%"), percent);
}

char *
hmui_words_decibans (double decibans)
{
  double times = pow (10.0, fabs (decibans) / 10.0);
  gboolean raises = decibans > 0.0;
  long whole = lround (times);

  if (times < 1.15)
    return g_strdup (_("hardly changes the odds"));
  if (times < 1.6)
    return g_strdup (raises ? _("raises the odds a little") : _("lowers the odds a little"));
  if (times < 2.5)
    return g_strdup (raises ? _("about doubles the odds") : _("about halves the odds"));
  if (times > 100.0)
    return g_strdup (raises ? _("makes the odds over 100 times as high") : _("cuts the odds to under a hundredth"));
  if (raises)
    return g_strdup_printf (_("makes the odds about %ld times as high"), whole);
  return g_strdup_printf (_("divides the odds by about %ld"), whole);
}

char *
hmui_words_when (gint64 then, gint64 now)
{
  g_autoptr(GDateTime) then_time = g_date_time_new_from_unix_local (then);
  g_autoptr(GDateTime) now_time = g_date_time_new_from_unix_local (now);
  g_autoptr(GDateTime) day_before = now_time != NULL ? g_date_time_add_days (now_time, -1) : NULL;
  g_autofree char *then_day = NULL, *today = NULL, *yesterday = NULL;

  if (then_time == NULL || day_before == NULL)
    return g_strdup ("");
  then_day = g_date_time_format (then_time, "%F");
  today = g_date_time_format (now_time, "%F");
  yesterday = g_date_time_format (day_before, "%F");
  if (g_str_equal (then_day, today))
    return g_date_time_format (then_time, _("today, %H:%M"));
  if (g_str_equal (then_day, yesterday))
    return g_date_time_format (then_time, _("yesterday, %H:%M"));
  return g_date_time_format (then_time, _("%e %b %Y"));
}

char *
hmui_words_cost (double work_minutes, double access_minutes)
{
  g_autofree char *work = hmui_words_minutes (work_minutes);
  g_autofree char *access = NULL;

  if (access_minutes <= 0.0)
    return g_steal_pointer (&work);
  access = hmui_words_minutes (access_minutes);
  return g_strdup_printf (_("%s, and %s to open up and close"), work, access);
}

char *
hmui_words_expected (const HmPlan *plan)
{
  g_autofree char *expected = hmui_words_minutes (plan->expected_minutes);
  g_autofree char *bound = hmui_words_minutes (plan->lower_bound_minutes);

  return g_strdup_printf (_("Expected: at most %s (no plan averages under %s)"), expected, bound);
}

/* The end of @limit that parts finding @k from the next: the High where high is bad, else the Low. */
static HmQuantity
edge_of (const HmCheck *check, const HmLimit *limit)
{
  gboolean high_is_bad = !check->normal_above;

  if (high_is_bad)
    return limit->has_high ? limit->high : limit->low;
  return limit->has_low ? limit->low : limit->high;
}

/* The band of readings that finding @k stands for: "12.4 V or more", "12.2–12.4 V", "under 10.8 V". */
static char *
band_of (const HmCheck *check, guint k, const HmFormat *format)
{
  guint last = check->n_findings - 1;
  HmQuantityRange band;
  g_autofree char *edge = NULL;

  if (k > 0 && k < last)
    {
      HmQuantity before = edge_of (check, check->limits[k - 1]), after = edge_of (check, check->limits[k]);
      band = check->normal_above ? (HmQuantityRange) { after, before } : (HmQuantityRange) { before, after };
      return hm_quantity_range_format (band, check->unit, HM_DECIMALS_SHORTEST, format);
    }
  edge = hm_quantity_format (edge_of (check, check->limits[k == 0 ? 0 : k - 1]), check->unit, HM_DECIMALS_SHORTEST, format);
  if (k == 0)
    return g_strdup_printf (check->normal_above ? _("%s or more") : _("%s or less"), edge);
  return g_strdup_printf (check->normal_above ? _("under %s") : _("over %s"), edge);
}

char *
hmui_words_finding (const HmCheck *check, guint k, const HmFormat *format)
{
  g_autofree char *band = NULL;

  if (!check->is_reading || check->n_findings < 2)
    return g_strdup (hmui_tr (check->findings[k].name));
  band = band_of (check, k, format);
  return g_strdup_printf (_("%s: %s"), hmui_tr (check->findings[k].name), band);
}

char *
hmui_words_limits (const HmCheck *check, const HmFormat *format)
{
  g_autoptr(GString) text = g_string_new (NULL);

  if (!check->is_reading || check->n_findings < 2)
    return NULL;
  for (guint k = 0; k < check->n_findings; k++)
    {
      g_autofree char *line = hmui_words_finding (check, k, format);
      g_string_append_printf (text, "%s%s", text->len > 0 ? "\n" : "", line);
    }
  return g_string_free (g_steal_pointer (&text), FALSE);
}

char *
hmui_words_verdict (const HmCheck *check, guint finding, HmQuantity reading, double weight, const HmFormat *format)
{
  g_autofree char *value = hm_quantity_format (reading, HM_UNIT_NONE, -1, format);
  const char *name = hmui_tr (check->findings[finding].name);

  if (weight < 0.9)
    return g_strdup_printf (_("%s is on the limit: most likely “%s”"), value, name);
  return g_strdup_printf (_("%s: %s"), value, name);
}

static char *
repair_result (HmRepairResult result)
{
  switch (result)
    {
    case HM_REPAIR_FIXED: return g_strdup (_("fixed"));
    case HM_REPAIR_PERSISTS: return g_strdup (_("still there"));
    case HM_REPAIR_CHANGED: return g_strdup (_("different now"));
    case HM_REPAIR_PENDING:
    default: return g_strdup (_("under way"));
    }
}

char *
hmui_words_entry_answer (HmGuide *guide, const HmEntry *entry, const HmFormat *format)
{
  const HmCheck *checks = hm_guide_get_checks (guide, NULL);
  g_autofree char *value = NULL;

  switch (entry->kind)
    {
    case HM_ENTRY_FINDING:
      return g_strdup (hmui_tr (checks[entry->check].findings[entry->finding].name));
    case HM_ENTRY_READING:
      value = hm_quantity_format (entry->reading, HM_UNIT_NONE, -1, format);
      return g_strdup_printf (_("%s: %s"), value, hmui_tr (checks[entry->check].findings[entry->finding].name));
    case HM_ENTRY_UNSURE: return g_strdup (_("not sure"));
    case HM_ENTRY_CANNOT: return g_strdup (_("cannot do this"));
    case HM_ENTRY_REPAIR: return repair_result (entry->result);
    case HM_ENTRY_SENT_OUT:
    default: return g_strdup (_("sent out"));
    }
}

static char *
join_causes (HmGuide *guide, const guint *indices, guint n)
{
  g_autoptr(GString) text = g_string_new (NULL);

  for (guint i = 0; i < n; i++)
    g_string_append_printf (text, "%s%s", i > 0 ? " · " : "", hmui_words_cause (guide, indices[i]));
  return g_string_free (g_steal_pointer (&text), FALSE);
}

char *
hmui_words_entry_step (HmGuide *guide, const HmEntry *entry)
{
  const HmCheck *checks = hm_guide_get_checks (guide, NULL);
  g_autofree char *causes = NULL;

  switch (entry->kind)
    {
    case HM_ENTRY_REPAIR:
      causes = join_causes (guide, entry->causes, entry->n_causes);
      return g_strdup_printf (_("Repair: %s"), causes);
    case HM_ENTRY_SENT_OUT: return g_strdup (_("Sent out"));
    case HM_ENTRY_FINDING:
    case HM_ENTRY_READING:
    case HM_ENTRY_UNSURE:
    case HM_ENTRY_CANNOT:
    default: return g_strdup (hmui_tr (checks[entry->check].name));
    }
}

char *
hmui_words_action (HmGuide *guide, const HmAction *action)
{
  const HmCheck *checks = hm_guide_get_checks (guide, NULL);
  g_autofree char *causes = NULL;

  switch (action->kind)
    {
    case HM_ACTION_CHECK: return g_strdup (hmui_tr (checks[action->check].name));
    case HM_ACTION_REPAIR:
      causes = join_causes (guide, action->causes, action->n_causes);
      return g_strdup_printf (_("Repair: %s"), causes);
    case HM_ACTION_ESCALATE:
    default: return g_strdup (_("Send it out"));
    }
}

const char *
hmui_words_cause (HmGuide *guide, guint cause)
{
  guint n;
  const HmCause *causes = hm_guide_get_causes (guide, &n);

  return cause < n ? hmui_tr (causes[cause].name) : _("something not listed");
}

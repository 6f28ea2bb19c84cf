/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli-designation.h"

/* What stands behind size and pitch; NULL where nothing does, or the name has it already. */
static const char *
suffix_of (HmThreadSeries series)
{
  switch (series)
    {
    case HM_SERIES_UNC:
      return " UNC";
    case HM_SERIES_UNF:
      return " UNF";
    case HM_SERIES_UNEF:
      return " UNEF";
    case HM_SERIES_METRIC_COARSE:
    case HM_SERIES_METRIC_FINE:
    case HM_SERIES_NPT:
    default:
      return NULL;
    }
}

static char *
designate (const char *name, const HmThreadRow *row, gboolean left_hand)
{
  g_autoptr (GString) text = g_string_new (name);
  const char *suffix = row != NULL ? suffix_of (row->series) : NULL;

  g_string_replace (text, " × ", "x", 0);
  if (suffix != NULL)
    g_string_append (text, suffix);
  if (left_hand)
    g_string_append (text, "-LH");
  return g_strdup (text->str);
}

char *
cli_designation_for_row (const HmThreadRow *row)
{
  return designate (row->name, row, FALSE);
}

char *
cli_designation_for_thread (const HmThread *thread, const HmThreadRow *row)
{
  HmThread right_hand = *thread;
  g_autofree char *name = NULL;

  right_hand.left_hand = FALSE;
  name = hm_thread_format (&right_hand, &hm_format_default);
  return designate (name, row, thread->left_hand);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-words-thread.h"
#include "hmui-words-fit.h"
#include "hmui-words.h"
#include <glib/gi18n.h>

#define LEAST_TURNS 0.05         /* written with one decimal, it reads as 0 below */

const char *
hmui_words_series (HmThreadSeries series)
{
  switch (series)
    {
    case HM_SERIES_METRIC_COARSE: return _("ISO metric, coarse pitch");
    case HM_SERIES_METRIC_FINE: return _("ISO metric, fine pitch");
    case HM_SERIES_UNC: return _("Unified inch, coarse (UNC)");
    case HM_SERIES_UNF: return _("Unified inch, fine (UNF)");
    case HM_SERIES_UNEF: return _("Unified inch, extra fine (UNEF)");
    case HM_SERIES_NPT:
    default: return _("tapered pipe thread (NPT)");
    }
}

const char *
hmui_words_use (HmUse use)
{
  switch (use)
    {
    case HM_USE_USUAL: return _("usual on this equipment");
    case HM_USE_OCCASIONAL: return _("occasional on this equipment");
    case HM_USE_RARE:
    default: return _("rare on this equipment");
    }
}

char *
hmui_words_tap_drill (const HmHoleRow *holes, const HmFormat *format)
{
  g_autofree char *size = NULL;

  if (holes == NULL || holes->tap_drill.mm <= 0.0)
    return NULL;
  size = hmui_words_length (holes->tap_drill, format);
  return g_strdup_printf (_("%s: %s"), holes->tap_drill_name, size);
}

char *
hmui_words_tap_share (const HmThread *thread, const HmHoleRow *holes, const HmFormat *format)
{
  HmQuantity percent = hm_quantity (HM_QUANTITY_RATIO, hm_thread_percent_of_drill (thread, holes->tap_drill), HM_UNIT_PERCENT);
  g_autofree char *share = hm_quantity_format (percent, HM_UNIT_PERCENT, 0, format);

  return g_strdup_printf (_("leaves %s of full thread"), share);
}

char *
hmui_words_drill_for (const HmThread *thread, double percent, const HmFormat *format)
{
  return hmui_words_length (hm_thread_drill_for_percent (thread, percent), format);
}

char *
hmui_words_near_miss (const HmNearMiss *miss)
{
  return g_strdup_printf (miss->thread_is_bolt ? _("this bolt in a %s hole") : _("a %s bolt in this hole"), miss->row->name);
}

static char *
numbers (double low, double high, const HmFormat *format)
{
  HmQuantityRange span = { hm_quantity (HM_QUANTITY_NUMBER, low, HM_UNIT_NONE), hm_quantity (HM_QUANTITY_NUMBER, high, HM_UNIT_NONE) };

  return hm_quantity_range_format (span, HM_UNIT_NONE, 1, format);
}

static char *
jams (const HmMating *mating, const HmFormat *format)
{
  g_autofree char *turns = numbers (mating->turns_tight, mating->turns_loose, format);
  g_autofree char *most = numbers (mating->turns_loose, mating->turns_loose, format);
  g_autofree char *needed = numbers (mating->turns_needed, mating->turns_needed, format);

  if (mating->turns_tight < LEAST_TURNS)
    return g_strdup_printf (_("Jams within %s turns, if it starts at all; %s are needed. Force strips it."), most, needed);
  return g_strdup_printf (_("Starts by hand, then jams after %s turns; %s are needed. Force strips it."), turns, needed);
}

static char *
strips (const HmMating *mating, const HmFormat *format)
{
  g_autofree char *loose = hmui_words_percent (mating->engagement_loose);
  g_autofree char *tight = hmui_words_percent (mating->engagement_tight);

  return g_strdup_printf (_("Goes in all the way, but takes hold over %s to %s of the depth only: it strips when tightened."), loose, tight);
}

char *
hmui_words_mating (const HmMating *mating, const HmFormat *format)
{
  switch (mating->mate)
    {
    case HM_MATE_JAMS: return jams (mating, format);
    case HM_MATE_STRIPS: return strips (mating, format);
    case HM_MATE_DROPS_IN: return g_strdup (_("Drops in without any hold."));
    case HM_MATE_WILL_NOT_START: return g_strdup (_("Will not start."));
    case HM_MATE_GOES:
    default: return g_strdup (_("Goes, and cannot be told from the right one."));
    }
}

static char *
reading (HmLength length, HmThreadProbe probe, const HmFormat *format)
{
  HmQuantity quantity = hm_quantity (HM_QUANTITY_LENGTH, length.mm, HM_UNIT_MM);

  if (probe == HM_PROBE_GAUGE)
    return hm_quantity_format (quantity, HM_UNIT_MM, 3, format);
  return hmui_words_length (length, format);
}

char *
hmui_words_separation (const HmThreadSeparation *separation, HmThreadFeature feature, const char *first, const char *second,
                       const HmFormat *format)
{
  g_autofree char *a = reading (separation->first, separation->probe, format);
  g_autofree char *b = reading (separation->second, separation->probe, format);

  switch (separation->probe)
    {
    case HM_PROBE_DIAMETER:
      return g_strdup_printf (feature == HM_FEATURE_BOLT ? _("Put a caliper over the crests: %s on %s, %s on %s.")
                                                         : _("Put a caliper in the hole: %s on %s, %s on %s."), a, first, b, second);
    case HM_PROBE_GAUGE:
      return g_strdup_printf (_("Try the pitch gauge: the leaf of %s for %s, of %s for %s."), a, first, b, second);
    case HM_PROBE_COUNT:
      return g_strdup_printf (ngettext ("Lay a rule along it: %u space takes %s on %s, %s on %s.",
                                        "Lay a rule along it: %u spaces take %s on %s, %s on %s.", separation->spaces),
                              separation->spaces, a, first, b, second);
    case HM_PROBE_NONE:
    default:
      return g_strdup_printf (_("No measurement at hand tells %s from %s; try a nut or bolt that you know."), first, second);
    }
}

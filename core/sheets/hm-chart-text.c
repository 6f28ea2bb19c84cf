/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-chart-private.h"

#include <glib/gi18n.h>

#define MM_PER_INCH 25.4

static const char *
keep_english (const char *english)
{
  return english;
}

void
hm_chart_work_begin (HmChartWork *self, const HmTables *tables, const HmChartRequest *request)
{
  *self = (HmChartWork) {
    .tables = tables, .format = request->format,
    .translate = request->translate != NULL ? request->translate : keep_english,
    .metric = request->format->system == HM_UNIT_SYSTEM_METRIC_FIRST,
  };
  self->sheet = hm_sheet_new (request->title, request->date,
                              self->translate (N_("The maker’s manual governs wherever it differs from this chart.")));
  self->sources = hm_sheet_sources_new (self->translate);
}

HmSheet *
hm_chart_work_finish (HmChartWork *self)
{
  hm_sheet_sources_write (self->sources, self->sheet);
  g_clear_pointer (&self->sources, hm_sheet_sources_free);
  return g_steal_pointer (&self->sheet);
}

void
hm_chart_say (HmChartWork *self, HmSheetBlockKind kind, const char *english)
{
  hm_sheet_say (self->sheet, kind, self->translate (english));
}

void
hm_chart_add_column (HmChartWork *self, HmSheetTable *table, const char *group, const char *title, HmUnit unit,
                     HmSheetAlign align)
{
  g_autofree char *whole = unit == HM_UNIT_NONE ? g_strdup (self->translate (title))
                                                : g_strdup_printf ("%s, %s", self->translate (title), hm_unit_symbol (unit));

  hm_sheet_table_add_column (table, group != NULL ? self->translate (group) : NULL, whole, align);
}

void
hm_chart_put_text (HmSheetTable *table, const char *text, HmSheetTone tone)
{
  hm_sheet_table_put (table, g_strdup (text), tone);
}

void
hm_chart_put_number (HmChartWork *self, HmSheetTable *table, double number, int decimals, HmSheetTone tone)
{
  hm_sheet_table_put (table, hm_quantity_format (hm_quantity (HM_QUANTITY_NUMBER, number, HM_UNIT_NONE), HM_UNIT_NONE, decimals,
                                                 self->format), tone);
}

void
hm_chart_put_length (HmChartWork *self, HmSheetTable *table, HmLength length)
{
  if (length.mm <= 0.0)
    hm_chart_put_text (table, "", HM_TONE_PLAIN);
  else if (self->metric)
    hm_chart_put_number (self, table, length.mm, 2, HM_TONE_PLAIN);
  else
    hm_chart_put_number (self, table, length.mm / MM_PER_INCH, 3, HM_TONE_PLAIN);
}

HmUnit
hm_chart_length_unit (const HmChartWork *self)
{
  return self->metric ? HM_UNIT_MM : HM_UNIT_INCH;
}

const char *
hm_chart_verdict_name (HmFitVerdict verdict)
{
  switch (verdict)
    {
    case HM_FIT_FITS: return N_("fits");
    case HM_FIT_USABLE: return N_("usable");
    case HM_FIT_ROUNDS: return N_("rounds the corners");
    case HM_FIT_WILL_NOT_GO_ON:
    default: return N_("will not go on");
    }
}

HmSheetTone
hm_chart_verdict_tone (HmFitVerdict verdict)
{
  switch (verdict)
    {
    case HM_FIT_FITS: return HM_TONE_GOOD;
    case HM_FIT_USABLE: return HM_TONE_FAIR;
    case HM_FIT_ROUNDS: return HM_TONE_BAD;
    case HM_FIT_WILL_NOT_GO_ON:
    default: return HM_TONE_PLAIN;
    }
}

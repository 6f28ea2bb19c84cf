/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-chart.h"
#include "hm-fit.h"
#include "hm-sheet-sources.h"
G_BEGIN_DECLS

/** HmChartWork: one chart being written. Private to core/sheets. */
typedef struct
{
  const HmTables *tables;
  const HmFormat *format;
  HmTranslate translate;
  gboolean metric;           /* whether the person reads metric units first */
  HmSheet *sheet;            /* owned until hm_chart_work_finish() */
  HmSheetSources *sources;   /* owned */
} HmChartWork;

void     hm_chart_work_begin  (HmChartWork *self, const HmTables *tables, const HmChartRequest *request);
HmSheet *hm_chart_work_finish (HmChartWork *self);   /* adds the sources; (transfer full) */

void hm_chart_say (HmChartWork *self, HmSheetBlockKind kind, const char *english);

/** hm_chart_add_column: @group (nullable), @title English; @unit: HM_UNIT_NONE where none stands behind the title. */
void hm_chart_add_column (HmChartWork *self, HmSheetTable *table, const char *group, const char *title, HmUnit unit,
                          HmSheetAlign align);

/** hm_chart_put_text: a cell that holds @text, copied. */
void hm_chart_put_text (HmSheetTable *table, const char *text, HmSheetTone tone);

/** hm_chart_put_number: a bare number; its unit stands in the column's title. */
void hm_chart_put_number (HmChartWork *self, HmSheetTable *table, double number, int decimals, HmSheetTone tone);

/** hm_chart_put_length: in the person's own unit: 0.01 mm, or 0.001 in. A length of 0 is one that is not known. */
void hm_chart_put_length (HmChartWork *self, HmSheetTable *table, HmLength length);

HmUnit hm_chart_length_unit (const HmChartWork *self);

/* A verdict in words, and its tone. */
const char *hm_chart_verdict_name (HmFitVerdict verdict);   /* English, translatable */
HmSheetTone hm_chart_verdict_tone (HmFitVerdict verdict);

/** hm_chart_add_hexalobular: the hexalobular sizes of the socket chart. */
void hm_chart_add_hexalobular (HmChartWork *self);

G_END_DECLS

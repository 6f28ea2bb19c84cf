/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-chart-private.h"
#include "hm-tap.h"

#include <glib/gi18n.h>

#define MM_PER_INCH 25.4

static const struct { HmThreadSeries series; const char *title; gboolean inch; } parts[] = {
  { HM_SERIES_METRIC_COARSE, N_("Metric threads, coarse pitch"), FALSE },
  { HM_SERIES_METRIC_FINE, N_("Metric threads, fine pitch"), FALSE },
  { HM_SERIES_UNC, N_("Unified coarse threads, UNC"), TRUE },
  { HM_SERIES_UNF, N_("Unified fine threads, UNF"), TRUE },
};

static void
add_sources (HmChartWork *work, const HmThreadRow *row, const char *part, const HmHoleRow *holes)
{
  const HmProvenance area = { HM_PROVENANCE_COMPUTED, row->inch ? "ASME B1.1" : "ISO 898-1" };
  const HmProvenance share = { HM_PROVENANCE_COMPUTED, N_("share of the full thread by ASME B1.1") };

  hm_sheet_sources_add (work->sources, work->translate (part), row->name, row->provenance);
  if (holes != NULL && holes->tap_drill.mm > 0.0)
    hm_sheet_sources_add (work->sources, work->translate (row->inch ? N_("Tap drills, Unified") : N_("Tap drills, metric")), row->name,
                          holes->tap_provenance);
  if (holes != NULL && holes->normal.mm > 0.0)
    hm_sheet_sources_add (work->sources,
                          work->translate (row->inch ? N_("Clearance holes, Unified") : N_("Clearance holes, metric")), row->name,
                          holes->provenance);
  hm_sheet_sources_add (work->sources, work->translate (N_("Full thread")), "", share);
  hm_sheet_sources_add (work->sources, work->translate (row->inch ? N_("Stress areas, Unified") : N_("Stress areas, metric")), "", area);
}

static void
put_tap_drill (HmChartWork *work, HmSheetTable *table, const HmThread *thread, const HmHoleRow *holes)
{
  g_autofree char *share = NULL;
  HmLength drill = holes != NULL ? holes->tap_drill : (HmLength) { 0.0 };

  if (drill.mm > 0.0)
    share = hm_quantity_format (hm_quantity (HM_QUANTITY_RATIO, hm_thread_percent_of_drill (thread, drill), HM_UNIT_PERCENT),
                                HM_UNIT_PERCENT, 0, work->format);
  hm_chart_put_text (table, drill.mm > 0.0 ? holes->tap_drill_name : NULL, HM_TONE_STRONG);
  hm_chart_put_length (work, table, drill);
  hm_chart_put_text (table, share, HM_TONE_PLAIN);
}

static void
put_row (HmChartWork *work, HmSheetTable *table, const HmThreadRow *row, const char *part)
{
  const HmThread thread = { row->inch ? HM_THREAD_UNIFIED : HM_THREAD_ISO_METRIC, row->major, row->pitch, FALSE };
  const HmHoleRow *holes = hm_thread_find_holes (&thread, work->tables);
  g_autofree char *name = hm_thread_format (&thread, work->format);
  double area_mm2 = hm_thread_stress_area_mm2 (&thread);

  hm_sheet_table_begin_row (table, TRUE);
  hm_chart_put_text (table, name, row->use == HM_USE_USUAL ? HM_TONE_STRONG : HM_TONE_PLAIN);
  hm_chart_put_length (work, table, row->major);
  if (row->inch)
    hm_chart_put_number (work, table, MM_PER_INCH / row->pitch.mm, -1, HM_TONE_PLAIN);
  else
    hm_chart_put_number (work, table, row->pitch.mm, 2, HM_TONE_PLAIN);
  put_tap_drill (work, table, &thread, holes);
  hm_chart_put_length (work, table, holes != NULL ? holes->close : (HmLength) { 0.0 });
  hm_chart_put_length (work, table, holes != NULL ? holes->normal : (HmLength) { 0.0 });
  hm_chart_put_length (work, table, holes != NULL ? holes->loose : (HmLength) { 0.0 });
  if (work->metric)
    hm_chart_put_number (work, table, area_mm2, area_mm2 < 100.0 ? 2 : 1, HM_TONE_PLAIN);
  else
    hm_chart_put_number (work, table, area_mm2 / (MM_PER_INCH * MM_PER_INCH), 4, HM_TONE_PLAIN);
  add_sources (work, row, part, holes);
}

static void
add_columns (HmChartWork *work, HmSheetTable *table, gboolean inch)
{
  HmUnit unit = hm_chart_length_unit (work);

  hm_chart_add_column (work, table, NULL, N_("Thread"), HM_UNIT_NONE, HM_SHEET_START);
  hm_chart_add_column (work, table, NULL, N_("Outside"), unit, HM_SHEET_END);
  if (inch)
    hm_chart_add_column (work, table, NULL, N_("Threads per inch"), HM_UNIT_NONE, HM_SHEET_END);
  else
    hm_chart_add_column (work, table, NULL, N_("Pitch"), HM_UNIT_MM, HM_SHEET_END);
  hm_chart_add_column (work, table, N_("Tap drill"), N_("Drill"), HM_UNIT_NONE, HM_SHEET_START);
  hm_chart_add_column (work, table, N_("Tap drill"), N_("Diameter"), unit, HM_SHEET_END);
  hm_chart_add_column (work, table, N_("Tap drill"), N_("Full thread"), HM_UNIT_NONE, HM_SHEET_END);
  hm_chart_add_column (work, table, N_("Clearance hole"), N_("Close"), unit, HM_SHEET_END);
  hm_chart_add_column (work, table, N_("Clearance hole"), N_("Normal"), unit, HM_SHEET_END);
  hm_chart_add_column (work, table, N_("Clearance hole"), N_("Loose"), unit, HM_SHEET_END);
  hm_chart_add_column (work, table, NULL, N_("Stress area"), work->metric ? HM_UNIT_MM2 : HM_UNIT_IN2, HM_SHEET_END);
}

HmSheet *
hm_sheet_thread_chart (const HmTables *tables, const HmChartRequest *request)
{
  HmChartWork work;
  gsize n;
  const HmThreadRow *rows;

  g_return_val_if_fail (tables != NULL && request != NULL, NULL);
  hm_chart_work_begin (&work, tables, request);
  hm_chart_say (&work, HM_SHEET_PARAGRAPH,
                N_("Bold threads are usual on small engines and outdoor power equipment (a judgement). Full thread: how much of the "
                   "thread’s depth the tap drill leaves. A dash means that no customary value is listed."));
  hm_chart_say (&work, HM_SHEET_CAUTION,
                N_("Prove a thread with a gauge or a known bolt before you drill or tap. Several threads of this chart start in each "
                   "other’s holes and then jam or strip. Wear eye protection when drilling."));
  rows = hm_tables_get_threads (tables, &n);
  for (gsize part = 0; part < G_N_ELEMENTS (parts); part++)
    {
      HmSheetTable *table;

      hm_chart_say (&work, HM_SHEET_HEADING, parts[part].title);
      table = hm_sheet_add_table (work.sheet);
      add_columns (&work, table, parts[part].inch);
      for (gsize i = 0; i < n; i++)
        if (rows[i].series == parts[part].series)
          put_row (&work, table, &rows[i], parts[part].title);
    }
  return hm_chart_work_finish (&work);
}

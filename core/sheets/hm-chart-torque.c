/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-chart-private.h"
#include "hm-tightening.h"

#include <glib/gi18n.h>

#define SMALLEST_MM 4.0          /* below it a screwdriver sets the torque (judgement, common practice, no source) */
#define POUND_INCH_BELOW_NM 10.0 /* as hm_quantity_range_format_both() */

static const char * const metric_classes[] = { "4.8", "8.8", "10.9", "12.9", NULL };
static const char * const inch_classes[] = { "SAE 2", "SAE 5", "SAE 8", NULL };

static const struct { HmThreadSeries series; const char *title; const char * const *classes; } parts[] = {
  { HM_SERIES_METRIC_COARSE, N_("Metric threads, coarse pitch"), metric_classes },
  { HM_SERIES_METRIC_FINE, N_("Metric threads, fine pitch"), metric_classes },
  { HM_SERIES_UNC, N_("Unified coarse threads, UNC"), inch_classes },
  { HM_SERIES_UNF, N_("Unified fine threads, UNF"), inch_classes },
};

static gboolean
work_out (const HmTables *tables, const HmThread *thread, const char *strength, HmFriction friction, HmTightening *out)
{
  const HmTighteningQuestion question = { .thread = *thread, .strength = strength, .friction = friction, .seat = HM_SEAT_PLAIN,
                                          .into = HM_MATERIAL_STEEL, .share_of_proof = hm_tightening_share_usual };
  const HmStrengthRow *row = hm_torque_find_strength (tables, strength, thread, NULL);

  return row != NULL && hm_tightening_suits (row, thread) && hm_tightening_work_out (tables, &question, out, NULL);
}

/* One unit for all classes of a thread, by the weakest: two would be mixed up. */
static HmUnit
unit_for (const HmChartWork *work, HmTorque weakest)
{
  if (work->metric)
    return HM_UNIT_NEWTON_METRE;
  return weakest.newton_metres < POUND_INCH_BELOW_NM ? HM_UNIT_POUND_INCH : HM_UNIT_POUND_FOOT;
}

static void
put_torque (HmChartWork *work, HmSheetTable *table, HmTorque torque, HmUnit unit, HmSheetTone tone)
{
  double value = hm_quantity_in (hm_quantity (HM_QUANTITY_TORQUE, torque.newton_metres, HM_UNIT_NEWTON_METRE), unit);

  hm_chart_put_number (work, table, value, value < 100.0 && unit != HM_UNIT_POUND_INCH ? 1 : 0, tone);
}

static void
put_state (HmChartWork *work, HmSheetTable *table, const HmTightening *tightening, HmUnit unit)
{
  put_torque (work, table, tightening->low, unit, HM_TONE_PLAIN);
  put_torque (work, table, tightening->target, unit, HM_TONE_STRONG);
  put_torque (work, table, tightening->high, unit, HM_TONE_PLAIN);
}

/* "8.8, 1.6–16 mm": a class may have another strength beyond some size. */
static char *
name_strength (HmChartWork *work, const HmThread *thread, const char *strength)
{
  const HmStrengthRow *row = hm_torque_find_strength (work->tables, strength, thread, NULL);
  const HmQuantityRange span = { hm_quantity (HM_QUANTITY_LENGTH, row->from.mm, HM_UNIT_MM),
                                 hm_quantity (HM_QUANTITY_LENGTH, row->to.mm, HM_UNIT_MM) };
  g_autofree char *sizes = hm_quantity_range_format (span, thread->form == HM_THREAD_UNIFIED ? HM_UNIT_INCH : HM_UNIT_MM,
                                                     HM_DECIMALS_SHORTEST, work->format);

  return g_strdup_printf ("%s, %s", strength, sizes);
}

static void
add_sources (HmChartWork *work, const HmThreadRow *row, const char *class_name, const HmTightening *dry, const HmTightening *oiled)
{
  hm_sheet_sources_add (work->sources, work->translate (N_("Torques")), row->name, dry->provenance);
  hm_sheet_sources_add (work->sources, work->translate (N_("Torques")), row->name, oiled->provenance);
  hm_sheet_sources_add (work->sources, work->translate (N_("Friction, dry")), "", dry->friction_provenance);
  hm_sheet_sources_add (work->sources, work->translate (N_("Friction, oiled")), "", oiled->friction_provenance);
  hm_sheet_sources_add (work->sources, work->translate (row->inch ? N_("Strength of inch grades") : N_("Strength of metric classes")),
                        class_name, dry->strength_provenance);
}

/*
 * The row of a class, if the thread is made in it. @unit: HM_UNIT_NONE before the first row of the thread, then that of its rows
 */
static void
put_row (HmChartWork *work, HmSheetTable *table, const HmThreadRow *row, const char *strength, HmUnit *unit)
{
  const HmThread thread = { row->inch ? HM_THREAD_UNIFIED : HM_THREAD_ISO_METRIC, row->major, row->pitch, FALSE };
  g_autofree char *class_name = NULL;
  HmTightening dry, oiled;
  gboolean first = *unit == HM_UNIT_NONE;

  if (!work_out (work->tables, &thread, strength, HM_FRICTION_DRY, &dry)
      || !work_out (work->tables, &thread, strength, HM_FRICTION_OILED, &oiled))
    return;
  if (first)
    *unit = unit_for (work, dry.target);
  hm_sheet_table_begin_row (table, first);
  hm_sheet_table_put (table, hm_thread_format (&thread, work->format), first ? HM_TONE_STRONG : HM_TONE_REPEATED);
  hm_chart_put_text (table, strength, HM_TONE_PLAIN);
  hm_chart_put_text (table, hm_unit_symbol (*unit), *unit == HM_UNIT_POUND_INCH ? HM_TONE_STRONG : HM_TONE_PLAIN);
  put_state (work, table, &dry, *unit);
  put_state (work, table, &oiled, *unit);
  class_name = name_strength (work, &thread, strength);
  add_sources (work, row, class_name, &dry, &oiled);
}

static void
add_columns (HmChartWork *work, HmSheetTable *table)
{
  static const char * const states[] = { N_("Dry, as found"), N_("Oiled") };

  hm_chart_add_column (work, table, NULL, N_("Thread"), HM_UNIT_NONE, HM_SHEET_START);
  hm_chart_add_column (work, table, NULL, N_("Class"), HM_UNIT_NONE, HM_SHEET_START);
  hm_chart_add_column (work, table, NULL, N_("Unit"), HM_UNIT_NONE, HM_SHEET_START);
  for (gsize i = 0; i < G_N_ELEMENTS (states); i++)
    {
      hm_chart_add_column (work, table, states[i], N_("Low"), HM_UNIT_NONE, HM_SHEET_END);
      hm_chart_add_column (work, table, states[i], N_("Target"), HM_UNIT_NONE, HM_SHEET_END);
      hm_chart_add_column (work, table, states[i], N_("High"), HM_UNIT_NONE, HM_SHEET_END);
    }
}

static void
add_part (HmChartWork *work, HmThreadSeries series, const char * const *classes)
{
  HmSheetTable *table = hm_sheet_add_table (work->sheet);
  gsize n;
  const HmThreadRow *rows = hm_tables_get_threads (work->tables, &n);

  add_columns (work, table);
  for (gsize i = 0; i < n; i++)
    {
      HmUnit unit = HM_UNIT_NONE;

      if (rows[i].series != series || rows[i].use == HM_USE_RARE || rows[i].major.mm < SMALLEST_MM)
        continue;
      for (const char * const *strength = classes; *strength != NULL; strength++)
        put_row (work, table, &rows[i], *strength, &unit);
    }
}

HmSheet *
hm_sheet_torque_chart (const HmTables *tables, const HmChartRequest *request)
{
  HmChartWork work;

  g_return_val_if_fail (tables != NULL && request != NULL, NULL);
  hm_chart_work_begin (&work, tables, request);
  hm_chart_say (&work, HM_SHEET_PARAGRAPH,
                N_("Set the wrench to the target. Low and high are the torques that give the same pull with the slickest and the roughest "
                   "surface to be expected. For a plain hexagon head in a steel nut, pulled to 75 % of the proof load."));
  hm_chart_say (&work, HM_SHEET_CAUTION,
                N_("Look up the maker’s manual first; this chart is for where it says nothing. Never from this chart: connecting rods, "
                   "cylinder heads, blades and flywheels (manual only), spark plugs, gaskets, plastic, pipe threads. In aluminium the "
                   "thread gives way first: work it out for the length that is engaged. Support the work, and pull the wrench, do not push it."));
  for (gsize part = 0; part < G_N_ELEMENTS (parts); part++)
    {
      hm_chart_say (&work, HM_SHEET_HEADING, parts[part].title);
      add_part (&work, parts[part].series, parts[part].classes);
    }
  return hm_chart_work_finish (&work);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Hexalobular sizes, for the socket chart. */
#include "hm-chart-private.h"
#include "hm-hexalobular.h"

#include <glib/gi18n.h>

static const HmProvenance hold_source = { HM_PROVENANCE_COMPUTED,
  N_("from the sizes over points and hollows, (A key − B recess) / (A recess − B recess); the limit of 90 % is common practice") };

static char *
row_name (const HmHexalobularRow *row)
{
  return g_strdup_printf ("%c%d", row->external ? 'E' : 'T', row->number);
}

/* The next smaller size of the same side; NULL for the smallest. */
static const HmHexalobularRow *
find_smaller (const HmTables *tables, const HmHexalobularRow *of)
{
  const HmHexalobularRow *found = NULL;
  gsize n;
  const HmHexalobularRow *rows = hm_tables_get_hexalobular (tables, &n);

  for (gsize i = 0; i < n; i++)
    if (rows[i].external == of->external && rows[i].number < of->number && (found == NULL || rows[i].number > found->number))
      found = &rows[i];
  return found;
}

static void
put_smaller (HmChartWork *work, HmSheetTable *table, const HmHexalobularRow *row)
{
  const HmHexalobularRow *smaller = find_smaller (work->tables, row);
  g_autofree char *name = smaller != NULL ? row_name (smaller) : NULL;
  g_autofree char *hold = NULL, *text = NULL;
  HmHexalobularFit fit;

  hm_chart_put_text (table, name, HM_TONE_PLAIN);
  if (smaller == NULL || !hm_hexalobular_fit (smaller->number, row->number, work->tables, &fit))
    {
      hm_chart_put_text (table, "", HM_TONE_PLAIN);
      hm_chart_put_text (table, "", HM_TONE_PLAIN);
      return;
    }
  hold = hm_quantity_format (hm_quantity (HM_QUANTITY_RATIO, fit.hold * 100.0, HM_UNIT_PERCENT), HM_UNIT_PERCENT, 0, work->format);
  hm_chart_put_text (table, hold, HM_TONE_PLAIN);
  hm_chart_put_text (table, work->translate (hm_chart_verdict_name (fit.verdict)), hm_chart_verdict_tone (fit.verdict));
}

static void
put_recess (HmChartWork *work, HmSheetTable *table, const HmHexalobularRow *row)
{
  g_autofree char *name = row_name (row);

  hm_chart_put_text (table, name, HM_TONE_STRONG);
  hm_chart_put_length (work, table, row->a);
  hm_chart_put_length (work, table, row->b);
  put_smaller (work, table, row);
  hm_sheet_sources_add (work->sources, work->translate (N_("Hexalobular recesses")), name, row->provenance);
}

static void
put_outside (HmChartWork *work, HmSheetTable *table, const HmHexalobularRow *row)
{
  g_autofree char *name = row_name (row);

  hm_chart_put_text (table, name, HM_TONE_STRONG);
  hm_chart_put_length (work, table, row->a);
  hm_sheet_sources_add (work->sources, work->translate (N_("Outside hexalobular drives")), name, row->provenance);
}

static void
put_dashes (HmSheetTable *table, guint n)
{
  for (guint i = 0; i < n; i++)
    hm_chart_put_text (table, "", HM_TONE_PLAIN);
}

static GPtrArray *
find_side (const HmTables *tables, gboolean external)
{
  GPtrArray *found = g_ptr_array_new ();
  gsize n;
  const HmHexalobularRow *rows = hm_tables_get_hexalobular (tables, &n);

  for (gsize i = 0; i < n; i++)
    if (rows[i].external == external)
      g_ptr_array_add (found, (gpointer) &rows[i]);
  return found;
}

/* Recesses on the left, outside drives on the right: two lists that share their lines. */
static void
add_rows (HmChartWork *work, HmSheetTable *table)
{
  g_autoptr (GPtrArray) recesses = find_side (work->tables, FALSE), outside = find_side (work->tables, TRUE);

  for (guint i = 0; i < MAX (recesses->len, outside->len); i++)
    {
      hm_sheet_table_begin_row (table, TRUE);
      if (i < recesses->len)
        put_recess (work, table, g_ptr_array_index (recesses, i));
      else
        put_dashes (table, 6);
      if (i < outside->len)
        put_outside (work, table, g_ptr_array_index (outside, i));
      else
        put_dashes (table, 2);
    }
}

void
hm_chart_add_hexalobular (HmChartWork *self)
{
  static const char recess[] = N_("Recess (T sizes)"), smaller[] = N_("Next smaller key in it"), outside[] = N_("Outside (E sizes)");
  HmUnit unit = hm_chart_length_unit (self);
  HmSheetTable *table;

  hm_chart_say (self, HM_SHEET_HEADING, N_("Hexalobular sizes"));
  table = hm_sheet_add_table (self->sheet);
  hm_chart_add_column (self, table, recess, N_("Size"), HM_UNIT_NONE, HM_SHEET_START);
  hm_chart_add_column (self, table, recess, N_("Over the points"), unit, HM_SHEET_END);
  hm_chart_add_column (self, table, recess, N_("Over the hollows"), unit, HM_SHEET_END);
  hm_chart_add_column (self, table, smaller, N_("Key"), HM_UNIT_NONE, HM_SHEET_START);
  hm_chart_add_column (self, table, smaller, N_("Hold of the lobes"), HM_UNIT_NONE, HM_SHEET_END);
  hm_chart_add_column (self, table, smaller, N_("Verdict"), HM_UNIT_NONE, HM_SHEET_START);
  hm_chart_add_column (self, table, outside, N_("Size"), HM_UNIT_NONE, HM_SHEET_START);
  hm_chart_add_column (self, table, outside, N_("Over the points"), unit, HM_SHEET_END);
  add_rows (self, table);
  hm_sheet_sources_add (self->sources, self->translate (N_("Hold of the lobes")), "", hold_source);
  hm_chart_say (self, HM_SHEET_NOTE,
                N_("Use the size that belongs in the recess, pressed in to the bottom: a smaller key holds by the tips of the lobes and "
                   "rounds them. A larger key does not go in. A dash: not published, or no further size."));
}

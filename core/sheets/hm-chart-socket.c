/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-chart-private.h"
#include "hm-width-answer.h"

#include <glib/gi18n.h>

#define MM_PER_INCH 25.4
#define NO_STANDARD_HEAD " *"

/* Pair: an inch and a metric size that lie side by side; either is NULL where the other system has none near it. */
typedef struct { const HmOpeningRow *inch, *metric; } Pair;

static double
pair_width (const Pair *self)
{
  return self->inch != NULL ? self->inch->nominal.mm : self->metric->nominal.mm;
}

static int
compare_pairs (gconstpointer a, gconstpointer b)
{
  double first = pair_width (a), second = pair_width (b);

  if (first < second || first > second)
    return first < second ? -1 : 1;
  first = ((const Pair *) a)->metric->nominal.mm;
  second = ((const Pair *) b)->metric->nominal.mm;
  return first < second ? -1 : first > second;
}

static HmWidthAnswer *
answer_for (const HmOpeningRow *size, const HmTables *tables)
{
  const HmDrive drive = { HM_DRIVE_HEX, size->nominal, 0, size->inch };

  return hm_width_answer_new (&drive, HM_HEAD_CLEAN, tables);
}

static void
add_pairs_of (GArray *pairs, const HmOpeningRow *inch, GHashTable *paired, const HmTables *tables)
{
  g_autoptr (HmWidthAnswer) answer = answer_for (inch, tables);
  g_autoptr (GArray) near = hm_size_equivalents (&answer->head, HM_HEAD_CLEAN, tables);
  Pair pair = { inch, NULL };

  for (guint i = 0; i < near->len; i++)
    {
      pair.metric = g_array_index (near, HmSizeFit, i).opening;
      g_hash_table_add (paired, (gpointer) pair.metric);
      g_array_append_val (pairs, pair);
    }
  if (near->len == 0)
    g_array_append_val (pairs, pair);
}

/* By width; every size of the table is there. */
static GArray *
find_pairs (const HmTables *tables)
{
  GArray *pairs = g_array_new (FALSE, FALSE, sizeof (Pair));
  g_autoptr (GHashTable) paired = g_hash_table_new (NULL, NULL);
  gsize n;
  const HmOpeningRow *rows = hm_tables_get_openings (tables, &n);

  for (gsize i = 0; i < n; i++)
    if (rows[i].inch)
      add_pairs_of (pairs, &rows[i], paired, tables);
  for (gsize i = 0; i < n; i++)
    {
      Pair pair = { NULL, &rows[i] };

      if (!rows[i].inch && !g_hash_table_contains (paired, &rows[i]))
        g_array_append_val (pairs, pair);
    }
  g_array_sort (pairs, compare_pairs);
  return pairs;
}

/* @answer: (nullable) */
static void
put_size (HmChartWork *work, HmSheetTable *table, const HmWidthAnswer *answer, gboolean repeated)
{
  g_autofree char *name = NULL, *text = NULL;

  if (answer != NULL)
    {
      name = hm_drive_format_size (&answer->drive, work->format);
      text = g_strconcat (name, answer->origin == HM_WIDTH_MEASURED ? NO_STANDARD_HEAD : "", NULL);
      hm_sheet_sources_add (work->sources, work->translate (answer->drive.inch ? N_("Inch openings") : N_("Metric openings")), name,
                            answer->opening->provenance);
    }
  hm_chart_put_text (table, text, repeated ? HM_TONE_REPEATED : HM_TONE_STRONG);
}

/* In the unit of the other system: what a caliper of the other kind shows. */
static void
put_width (HmChartWork *work, HmSheetTable *table, const HmOpeningRow *size, gboolean repeated)
{
  HmSheetTone tone = repeated ? HM_TONE_REPEATED : HM_TONE_PLAIN;

  if (size == NULL)
    hm_chart_put_text (table, "", HM_TONE_PLAIN);
  else if (size->inch)
    hm_chart_put_number (work, table, size->nominal.mm, 2, tone);
  else
    hm_chart_put_number (work, table, size->nominal.mm / MM_PER_INCH, 3, tone);
}

static void
put_difference (HmChartWork *work, HmSheetTable *table, const Pair *pair)
{
  double more_mm = pair->inch != NULL && pair->metric != NULL ? pair->metric->nominal.mm - pair->inch->nominal.mm : 0.0;
  g_autofree char *text = NULL;
  g_autofree char *number = hm_quantity_format (hm_quantity (HM_QUANTITY_NUMBER, work->metric ? more_mm : more_mm / MM_PER_INCH,
                                                             HM_UNIT_NONE), HM_UNIT_NONE, work->metric ? 2 : 4, work->format);

  if (pair->inch != NULL && pair->metric != NULL)
    text = g_strconcat (more_mm > 0.0 ? "+" : "", number, NULL);
  hm_chart_put_text (table, text, HM_TONE_PLAIN);
}

/* How the socket of @tool sits on the head of @head; either may be NULL. */
static void
put_verdict (HmChartWork *work, HmSheetTable *table, const HmWidthAnswer *tool, const HmWidthAnswer *head)
{
  HmFit fit;

  if (tool == NULL || head == NULL)
    {
      hm_chart_put_text (table, "", HM_TONE_PLAIN);
      return;
    }
  fit = hm_fit (tool->opening, &head->head, HM_HEAD_CLEAN, work->tables);
  hm_chart_put_text (table, work->translate (hm_chart_verdict_name (fit.verdict)), hm_chart_verdict_tone (fit.verdict));
}

static void
put_pair (HmChartWork *work, HmSheetTable *table, const Pair *pair, const Pair *above)
{
  g_autoptr (HmWidthAnswer) inch = pair->inch != NULL ? answer_for (pair->inch, work->tables) : NULL;
  g_autoptr (HmWidthAnswer) metric = pair->metric != NULL ? answer_for (pair->metric, work->tables) : NULL;
  gboolean same_inch = above != NULL && pair->inch != NULL && pair->inch == above->inch;
  gboolean same_metric = above != NULL && pair->metric != NULL && pair->metric == above->metric;

  hm_sheet_table_begin_row (table, !same_inch);
  put_size (work, table, inch, same_inch);
  put_width (work, table, pair->inch, same_inch);
  put_size (work, table, metric, same_metric);
  put_width (work, table, pair->metric, same_metric);
  put_difference (work, table, pair);
  put_verdict (work, table, metric, inch);
  put_verdict (work, table, inch, metric);
}

static void
add_sizes (HmChartWork *work)
{
  g_autoptr (GArray) pairs = find_pairs (work->tables);
  HmSheetTable *table;

  hm_chart_say (work, HM_SHEET_HEADING, N_("Inch and metric hexagons side by side"));
  table = hm_sheet_add_table (work->sheet);
  hm_chart_add_column (work, table, N_("Inch"), N_("Size"), HM_UNIT_NONE, HM_SHEET_START);
  hm_chart_add_column (work, table, N_("Inch"), N_("Width"), HM_UNIT_MM, HM_SHEET_END);
  hm_chart_add_column (work, table, N_("Metric"), N_("Size"), HM_UNIT_NONE, HM_SHEET_START);
  hm_chart_add_column (work, table, N_("Metric"), N_("Width"), HM_UNIT_INCH, HM_SHEET_END);
  hm_chart_add_column (work, table, N_("Metric"), N_("Larger by"), hm_chart_length_unit (work), HM_SHEET_END);
  hm_chart_add_column (work, table, N_("On a clean head"), N_("Metric socket on inch head"), HM_UNIT_NONE, HM_SHEET_START);
  hm_chart_add_column (work, table, N_("On a clean head"), N_("Inch socket on metric head"), HM_UNIT_NONE, HM_SHEET_START);
  for (guint i = 0; i < pairs->len; i++)
    put_pair (work, table, &g_array_index (pairs, Pair, i), i > 0 ? &g_array_index (pairs, Pair, i - 1) : NULL);
  hm_chart_say (work, HM_SHEET_NOTE,
                N_("Sizes stand side by side up to 5 % apart; a dash means that nothing is that near. * No standard has a head of this "
                   "size: it is taken as measured with a caliper, 0.05 mm to either side."));
}

HmSheet *
hm_sheet_socket_chart (const HmTables *tables, const HmChartRequest *request)
{
  static const HmProvenance verdicts = { HM_PROVENANCE_COMPUTED,
    N_("from the limits of head and opening; what still counts as usable is common practice") };
  HmChartWork work;

  g_return_val_if_fail (tables != NULL && request != NULL, NULL);
  hm_chart_work_begin (&work, tables, request);
  hm_chart_say (&work, HM_SHEET_PARAGRAPH,
                N_("Fits: no looser than the proper size. Usable: looser, but the corners still hold. Rounds the corners: never on a "
                   "tight fastener. Will not go on: some or all heads are larger than the socket."));
  hm_chart_say (&work, HM_SHEET_CAUTION,
                N_("A verdict holds for a clean, sound head. Rust, wear and paint change it: measure the head, and use a six-point socket "
                   "where it is tight. Wear eye protection."));
  add_sizes (&work);
  hm_sheet_sources_add (work.sources, work.translate (N_("Verdicts")), "", verdicts);
  hm_chart_add_hexalobular (&work);
  return hm_chart_work_finish (&work);
}

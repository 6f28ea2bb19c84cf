/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The charts: what stands on them is what core works out, and what published tables print. */
#include "hm-chart.h"
#include "hm-tightening.h"
#include "hm-test-vectors.h"
#include "hm-width-answer.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

static const HmFormat inch_first = { ".", HM_UNIT_SYSTEM_INCH_FIRST }, metric_first = { ".", HM_UNIT_SYSTEM_METRIC_FIRST };
static const HmFormat comma = { ",", HM_UNIT_SYSTEM_METRIC_FIRST };

static HmSheet *
chart_for (HmChart chart, const HmTables *tables, const HmFormat *format)
{
  const HmChartRequest request = { "On the wall", "2026-11-25", format, NULL };

  return hm_chart_new (chart, tables, &request);
}

static double
number_in (const HmSheetCell *cell)
{
  g_autofree char *plain = NULL;
  const char *text = cell->text;
  char *end;
  double value;

  if (g_str_has_prefix (text, "−"))
    plain = g_strconcat ("-", text + strlen ("−"), NULL);
  else
    plain = g_strdup (text);
  value = g_ascii_strtod (plain, &end);
  if (end == plain)
    fail_msg ("“%s” is no number", cell->text);
  return value;
}

/* The row of the @nth table whose first cells are @first and, unless NULL, @second. −1 if there is none. */
static int
find_row (const HmSheetTable *table, const char *first, const char *second)
{
  for (guint row = 0; row < table->rows->len; row++)
    if (strcmp (hm_sheet_table_get_cell (table, row, 0)->text, first) == 0
        && (second == NULL || strcmp (hm_sheet_table_get_cell (table, row, 1)->text, second) == 0))
      return (int) row;
  return -1;
}

static const HmSheetTable *
find_table (const HmSheet *sheet, const char *first, const char *second, guint *row)
{
  for (guint i = 0; i < sheet->blocks->len; i++)
    {
      const HmSheetTable *table = hm_sheet_get_block (sheet, i)->table;
      int found = table != NULL ? find_row (table, first, second) : -1;

      if (found >= 0)
        {
          *row = (guint) found;
          return table;
        }
    }
  return NULL;
}

static const HmSheetCell *
cell_of (const HmSheet *sheet, const char *first, const char *second, guint column)
{
  guint row;
  const HmSheetTable *table = find_table (sheet, first, second, &row);

  if (table == NULL)
    fail_msg ("no row “%s %s”", first, second != NULL ? second : "");
  return hm_sheet_table_get_cell (table, row, column);
}

/* Nothing is empty, and every row has all its cells, in both systems of units. */
static void
no_cell_is_empty (void **state)
{
  HmChart chart = (HmChart) GPOINTER_TO_UINT (*state);
  g_autoptr (HmTables) tables = hm_test_tables ();
  const HmFormat *formats[] = { &inch_first, &metric_first, &comma };

  for (gsize f = 0; f < G_N_ELEMENTS (formats); f++)
    {
      g_autoptr (HmSheet) sheet = chart_for (chart, tables, formats[f]);
      guint cells = 0;

      for (guint i = 0; i < sheet->blocks->len; i++)
        {
          const HmSheetBlock *block = hm_sheet_get_block (sheet, i);

          assert_true ((block->kind == HM_SHEET_TABLE) == (block->table != NULL));
          assert_true (block->table != NULL || block->text[0] != '\0');
          for (guint row = 0; block->table != NULL && row < block->table->rows->len; row++)
            for (guint column = 0; column < block->table->columns->len; column++, cells++)
              assert_true (strlen (hm_sheet_table_get_cell (block->table, row, column)->text) > 0);
        }
      assert_true (cells > 300);
    }
}

/* The caller's title and date, and that the manual governs. */
static void
says_what_the_caller_gave (void **state)
{
  HmChart chart = (HmChart) GPOINTER_TO_UINT (*state);
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (HmSheet) sheet = chart_for (chart, tables, &inch_first);
  gboolean has_sources = FALSE, has_caution = FALSE;

  assert_string_equal (sheet->title, "On the wall");
  assert_string_equal (sheet->date, "2026-11-25");
  assert_non_null (strstr (sheet->governs, "manual governs"));
  for (guint i = 0; i < sheet->blocks->len; i++)
    {
      const HmSheetBlock *block = hm_sheet_get_block (sheet, i);

      has_caution |= block->kind == HM_SHEET_CAUTION;
      has_sources |= block->kind == HM_SHEET_NOTE && strstr (block->text, "standard: ") != NULL;
    }
  assert_true (has_sources);
  assert_true (has_caution);
}

static const char *
dotted (const char *english)
{
  static GHashTable *made;         /* lives as long as the test */
  char *text;

  if (made == NULL)
    made = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  text = g_strconcat ("·", english, NULL);
  g_hash_table_add (made, text);
  return text;
}

/* No English word bypasses the translator. */
static void
everything_is_translated (void **state)
{
  HmChart chart = (HmChart) GPOINTER_TO_UINT (*state);
  g_autoptr (HmTables) tables = hm_test_tables ();
  const HmChartRequest request = { "On the wall", "2026-11-25", &inch_first, dotted };
  g_autoptr (HmSheet) sheet = hm_chart_new (chart, tables, &request);

  assert_true (g_str_has_prefix (sheet->governs, "·"));
  for (guint i = 0; i < sheet->blocks->len; i++)
    {
      const HmSheetBlock *block = hm_sheet_get_block (sheet, i);

      assert_true (block->text == NULL || g_str_has_prefix (block->text, "·"));
      for (guint column = 0; block->table != NULL && column < block->table->columns->len; column++)
        {
          const HmSheetColumn *head = hm_sheet_table_get_column (block->table, column);

          assert_true (g_str_has_prefix (head->title, "·"));
          assert_true (head->group == NULL || g_str_has_prefix (head->group, "·"));
        }
    }
}

static void
names_read_back (void **state)
{
  HmChart chart = (HmChart) GPOINTER_TO_UINT (*state), got = HM_CHART_N_CHARTS;

  assert_true (hm_chart_parse (hm_chart_name (chart), &got));
  assert_int_equal (got, chart);
  assert_true (strlen (hm_chart_title (chart)) > 0);
}

static void
unknown_names_are_refused (void **state)
{
  HmChart got = HM_CHART_TORQUE;

  assert_false (hm_chart_parse ("wiring", &got));
  assert_false (hm_chart_parse ("", &got));
  assert_false (hm_chart_parse ("Socket", &got));
  assert_int_equal (got, HM_CHART_TORQUE);
  assert_null (hm_chart_name (HM_CHART_N_CHARTS));
}

static HmHead
head_of (const HmOpeningRow *size, const HmTables *tables)
{
  const HmDrive drive = { HM_DRIVE_HEX, size->nominal, 0, size->inch };
  g_autoptr (HmWidthAnswer) answer = hm_width_answer_new (&drive, HM_HEAD_CLEAN, tables);

  return answer->head;
}

/* "11/32 in *": the size alone. */
static gboolean
names_size (const HmSheetCell *cell, const char *name, const char *unit)
{
  g_autofree char *want = g_strdup_printf ("%s %s", name, unit);
  g_auto (GStrv) parts = g_strsplit (cell->text, "\u00a0", -1);
  g_autofree char *whole = g_strjoinv (" ", parts);

  return strcmp (g_strstrip (g_strdelimit (whole, "*", ' ')), want) == 0;
}

static gboolean
is_made (const HmTables *tables, const char *name, gboolean inch)
{
  gsize n;
  const HmOpeningRow *rows = hm_tables_get_openings (tables, &n);

  for (gsize i = 0; i < n; i++)
    if (rows[i].inch == inch && strcmp (rows[i].name, name) == 0)
      return TRUE;
  return FALSE;
}

/* Each size of the table of openings is on the chart, and each verdict is that of hm_fit(). */
static void
socket_verdicts_are_computed (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (HmSheet) sheet = chart_for (HM_CHART_SOCKET, tables, &inch_first);
  static const char * const words[] = { "fits", "usable", "rounds the corners", "will not go on" };
  const HmSheetTable *table = NULL;
  gsize n;
  const HmOpeningRow *rows = hm_tables_get_openings (tables, &n);
  guint pairs = 0;

  for (guint i = 0; table == NULL; i++)
    table = hm_sheet_get_block (sheet, i)->table;
  for (gsize i = 0; i < n; i++)
    {
      gboolean found = FALSE;

      for (guint row = 0; row < table->rows->len; row++)
        {
          found |= names_size (hm_sheet_table_get_cell (table, row, rows[i].inch ? 0 : 2), rows[i].name, rows[i].inch ? "in" : "mm");
          for (gsize k = 0; k < n; k++)
            if (rows[i].inch && !rows[k].inch && names_size (hm_sheet_table_get_cell (table, row, 0), rows[i].name, "in")
                && names_size (hm_sheet_table_get_cell (table, row, 2), rows[k].name, "mm"))
              {
                HmHead inch = head_of (&rows[i], tables), metric = head_of (&rows[k], tables);

                assert_string_equal (hm_sheet_table_get_cell (table, row, 5)->text,
                                     words[hm_fit (&rows[k], &inch, HM_HEAD_CLEAN, tables).verdict]);
                assert_string_equal (hm_sheet_table_get_cell (table, row, 6)->text,
                                     words[hm_fit (&rows[i], &metric, HM_HEAD_CLEAN, tables).verdict]);
                pairs++;
              }
        }
      if (!found)
        fail_msg ("%s is not on the chart", rows[i].name);
    }
  assert_true (pairs > 30);
}

/* 1 in = 25.4 mm exactly. */
static void
size_pair_matches (void **state)
{
  const HmTestRow *row = *state;
  g_autoptr (HmSheet) sheet = chart_for (HM_CHART_SOCKET, row->tables, &metric_first);
  const HmSheetTable *table = NULL;
  double off = -hm_test_number (row, "value");
  double metric = hm_test_number (row, "metric"), inch_mm = metric - off;

  for (guint i = 0; table == NULL; i++)
    table = hm_sheet_get_block (sheet, i)->table;
  for (guint i = 0; i < table->rows->len; i++)
    if (names_size (hm_sheet_table_get_cell (table, i, 0), hm_test_text (row, "inch"), "in")
        && names_size (hm_sheet_table_get_cell (table, i, 2), hm_test_text (row, "metric"), "mm"))
      {
        hm_test_near (row, number_in (hm_sheet_table_get_cell (table, i, 4)), off, 0.00501 + hm_test_number (row, "tolerance"));
        hm_test_near (row, number_in (hm_sheet_table_get_cell (table, i, 1)), inch_mm, 0.00501);
        return;
      }
  /* Not side by side: more than 5 % apart, or a size that no socket is made in. */
  assert_true (fabs (off) > 0.05 * inch_mm || !is_made (row->tables, hm_test_text (row, "metric"), FALSE)
               || !is_made (row->tables, hm_test_text (row, "inch"), TRUE));
}

/* Rows of published tables as they stand on the charts; in millimetres. @tolerance: half of the last printed digit. */
static const struct published_row {
  const char *name; HmChart chart; const char *first; guint column; double value, tolerance; const char *source;
} published_rows[] = {
  { "M8 × 1.25 tap drill", HM_CHART_THREAD, "M8 × 1.25", 4, 6.8, 0.05, "ISO 2306" },
  { "M8 × 1.25 close", HM_CHART_THREAD, "M8 × 1.25", 6, 8.4, 0.05, "ISO 273, fine" },
  { "M8 × 1.25 normal", HM_CHART_THREAD, "M8 × 1.25", 7, 9.0, 0.5, "ISO 273, medium" },
  { "M8 × 1.25 loose", HM_CHART_THREAD, "M8 × 1.25", 8, 10.0, 0.5, "ISO 273, coarse" },
  { "M8 × 1.25 stress area", HM_CHART_THREAD, "M8 × 1.25", 9, 36.6, 0.05, "ISO 898-1, coarse" },
  { "M10 × 1.25 stress area", HM_CHART_THREAD, "M10 × 1.25", 9, 61.2, 0.05, "ISO 898-1, fine" },
  { "M6 × 1 pitch", HM_CHART_THREAD, "M6 × 1", 2, 1.0, 0.005, "ISO 261" },
  { "T40 over the points", HM_CHART_SOCKET, "T40", 1, 6.75, 0.005, "ISO 10664, A" },
  { "T40 over the hollows", HM_CHART_SOCKET, "T40", 2, 4.85, 0.005, "ISO 10664, B" },
  { "T25 over the points", HM_CHART_SOCKET, "T25", 1, 4.5, 0.005, "ISO 10664, A" },
};

static void
published_value_stands_there (void **state)
{
  const struct published_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (HmSheet) sheet = chart_for (row->chart, tables, &metric_first);
  double got = number_in (cell_of (sheet, row->first, NULL, row->column));

  if (fabs (got - row->value) > row->tolerance)
    fail_msg ("%s: got %g, want %g (%s)", row->name, got, row->value, row->source);
}

static const HmThreadRow *
find_thread (const HmTables *tables, const char *thread)
{
  gsize n;
  const HmThreadRow *rows = hm_tables_get_threads (tables, &n);

  for (gsize i = 0; i < n; i++)
    if (strcmp (rows[i].name, thread) == 0)
      return &rows[i];
  fail_msg ("%s is in no series", thread);
  return NULL;
}

/* Clearance holes of ISO 273 and ASME B18.2.8, as the chart prints them: 0.01 mm, 0.001 in. */
static void
clearance_hole_matches (void **state)
{
  const HmTestRow *row = *state;
  gboolean inch = strcmp (hm_test_text (row, "unit"), "in") == 0;
  g_autoptr (HmSheet) sheet = chart_for (HM_CHART_THREAD, row->tables, inch ? &inch_first : &metric_first);
  const char *kind = hm_test_text (row, "kind"), *thread = hm_test_text (row, "thread");
  guint column = strcmp (kind, "close") == 0 ? 6 : strcmp (kind, "normal") == 0 ? 7 : 8, at;

  if (find_thread (row->tables, thread)->series == HM_SERIES_UNEF)
    assert_null (find_table (sheet, thread, NULL, &at));
  else
    hm_test_near (row, number_in (cell_of (sheet, thread, NULL, column)), hm_test_number (row, "value"),
                  (inch ? 0.000501 : 0.00501) + hm_test_number (row, "tolerance"));
}

/* The Army's dry torques, where the thread is on the chart. */
static void
dry_torque_matches (void **state)
{
  const HmTestRow *row = *state;
  g_autoptr (HmSheet) sheet = chart_for (HM_CHART_TORQUE, row->tables, &inch_first);
  guint at;
  const HmSheetTable *table = find_table (sheet, hm_test_text (row, "thread"), hm_test_text (row, "class"), &at);
  double got;

  if (table == NULL)
    {
      assert_int_equal (find_thread (row->tables, hm_test_text (row, "thread"))->use, HM_USE_RARE);
      return;
    }
  got = number_in (hm_sheet_table_get_cell (table, at, 4));
  if (strcmp (hm_sheet_table_get_cell (table, at, 2)->text, "lbf·in") == 0)
    got /= 12.0;
  else
    assert_string_equal (hm_sheet_table_get_cell (table, at, 2)->text, "lbf·ft");
  hm_test_near (row, got, hm_test_number (row, "value"), hm_test_number (row, "tolerance") + 0.051);   /* as printed: 0.1 lbf·ft, 1 lbf·in */
}

static void
check_torque_row (const HmSheetTable *table, guint row, const HmTables *tables)
{
  static const HmFriction states[] = { HM_FRICTION_DRY, HM_FRICTION_OILED };
  HmTighteningQuestion question = { .strength = hm_sheet_table_get_cell (table, row, 1)->text, .share_of_proof = 0.75 };

  assert_true (hm_thread_parse (hm_sheet_table_get_cell (table, row, 0)->text, tables, &question.thread, NULL));
  assert_string_equal (hm_sheet_table_get_cell (table, row, 2)->text, "N·m");
  for (guint s = 0; s < G_N_ELEMENTS (states); s++)
    {
      HmTightening want;
      double figures[3];

      question.friction = states[s];
      assert_true (hm_tightening_work_out (tables, &question, &want, NULL));
      figures[0] = want.low.newton_metres;
      figures[1] = want.target.newton_metres;
      figures[2] = want.high.newton_metres;
      for (guint i = 0; i < 3; i++)
        {
          double got = number_in (hm_sheet_table_get_cell (table, row, 3 + 3 * s + i));

          assert_true (fabs (got - figures[i]) <= (figures[i] < 100.0 ? 0.0501 : 0.501));
        }
    }
}

/* Every torque is the one that is worked out for the thread and class of its row, with 75 % of the proof load, as the text says. */
static void
torques_are_computed (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (HmSheet) sheet = chart_for (HM_CHART_TORQUE, tables, &metric_first);
  guint rows = 0;

  assert_true (fabs (hm_tightening_share_usual - 0.75) < 1e-9);
  assert_non_null (strstr (hm_sheet_get_block (sheet, 0)->text, "75\u00a0%"));
  for (guint i = 0; i < sheet->blocks->len; i++)
    {
      const HmSheetTable *table = hm_sheet_get_block (sheet, i)->table;

      for (guint row = 0; table != NULL && row < table->rows->len; row++, rows++)
        check_torque_row (table, row, tables);
    }
  assert_true (rows > 80);
}

/* lbf·in and lbf·ft side by side on one thread would be mixed up. */
static void
a_thread_has_one_unit (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (HmSheet) sheet = chart_for (HM_CHART_TORQUE, tables, &inch_first);
  guint in_inches = 0;

  for (guint i = 0; i < sheet->blocks->len; i++)
    {
      const HmSheetTable *table = hm_sheet_get_block (sheet, i)->table;

      for (guint row = 0; table != NULL && row < table->rows->len; row++)
        {
          const char *unit = hm_sheet_table_get_cell (table, row, 2)->text;

          in_inches += strcmp (unit, "lbf·in") == 0;
          if (!g_array_index (table->rows, HmSheetRow, row).starts_group)
            assert_string_equal (unit, hm_sheet_table_get_cell (table, row - 1, 2)->text);
        }
    }
  assert_true (in_inches > 10);
}

static void
a_decimal_comma_is_kept (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (HmSheet) sheet = chart_for (HM_CHART_THREAD, tables, &comma);

  assert_string_equal (cell_of (sheet, "M8 × 1,25", NULL, 2)->text, "1,25");
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();
  static const struct { const char *name; HmTestFunc func; } each[] = {
    { "no cell is empty", no_cell_is_empty }, { "says what the caller gave", says_what_the_caller_gave },
    { "everything is translated", everything_is_translated }, { "names read back", names_read_back },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (each); i++)
    for (guint chart = 0; chart < HM_CHART_N_CHARTS; chart++)
      hm_test_suite_add (suite, each[i].name, each[i].func, GUINT_TO_POINTER (chart));
  hm_test_suite_add (suite, "unknown names are refused", unknown_names_are_refused, NULL);
  hm_test_suite_add (suite, "socket verdicts are computed", socket_verdicts_are_computed, NULL);
  hm_test_suite_add (suite, "torques are computed", torques_are_computed, NULL);
  hm_test_suite_add (suite, "a thread has one unit", a_thread_has_one_unit, NULL);
  hm_test_suite_add (suite, "a decimal comma is kept", a_decimal_comma_is_kept, NULL);
  HM_TEST_SUITE_ADD_ROWS (suite, published_rows, published_value_stands_there);
  hm_test_suite_add_file (suite, "size-pairs.csv", NULL, size_pair_matches);
  hm_test_suite_add_file (suite, "thread-holes.csv", "close", clearance_hole_matches);
  hm_test_suite_add_file (suite, "thread-holes.csv", "normal", clearance_hole_matches);
  hm_test_suite_add_file (suite, "thread-holes.csv", "loose", clearance_hole_matches);
  hm_test_suite_add_file (suite, "dry-torque.csv", NULL, dry_torque_matches);
  return hm_test_suite_run (suite, "chart");
}

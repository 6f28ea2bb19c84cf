/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-thread.h"
#include "hm-tap.h"
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

#define MM_PER_INCH 25.4

static const struct read_row {
  const char *name;
  HmThreadForm form;
  double major_mm, pitch_mm;
  gboolean left_hand;
} read_rows[] = {
  { "M8", HM_THREAD_ISO_METRIC, 8.0, 1.25, FALSE },
  { "m8 x 1,25", HM_THREAD_ISO_METRIC, 8.0, 1.25, FALSE },
  { "M8X1", HM_THREAD_ISO_METRIC, 8.0, 1.0, FALSE },
  { "M14×1.25", HM_THREAD_ISO_METRIC, 14.0, 1.25, FALSE },
  { "M 14 × 1.25", HM_THREAD_ISO_METRIC, 14.0, 1.25, FALSE },
  { "M8 × 1.25", HM_THREAD_ISO_METRIC, 8.0, 1.25, FALSE },
  { "M8-1.25", HM_THREAD_ISO_METRIC, 8.0, 1.25, FALSE },
  { "M8x1.25-6g", HM_THREAD_ISO_METRIC, 8.0, 1.25, FALSE },
  { "M1.6", HM_THREAD_ISO_METRIC, 1.6, 0.35, FALSE },
  { "M36", HM_THREAD_ISO_METRIC, 36.0, 4.0, FALSE },
  { "M8 LH", HM_THREAD_ISO_METRIC, 8.0, 1.25, TRUE },
  { "M8x1.25-LH", HM_THREAD_ISO_METRIC, 8.0, 1.25, TRUE },
  { "M10 x 1.25 left hand", HM_THREAD_ISO_METRIC, 10.0, 1.25, TRUE },
  { "  M6  ", HM_THREAD_ISO_METRIC, 6.0, 1.0, FALSE },
  { "1/4-20", HM_THREAD_UNIFIED, 6.35, 1.27, FALSE },
  { "1/4\"-20", HM_THREAD_UNIFIED, 6.35, 1.27, FALSE },
  { "1/4 - 20", HM_THREAD_UNIFIED, 6.35, 1.27, FALSE },
  { ".250-20", HM_THREAD_UNIFIED, 6.35, 1.27, FALSE },
  { "5/16-18 UNC", HM_THREAD_UNIFIED, 7.9375, MM_PER_INCH / 18, FALSE },
  { "5/16-18 unc-2A", HM_THREAD_UNIFIED, 7.9375, MM_PER_INCH / 18, FALSE },
  { "3/8-24 UNF LH", HM_THREAD_UNIFIED, 9.525, MM_PER_INCH / 24, TRUE },
  { "No.10-24", HM_THREAD_UNIFIED, 4.826, MM_PER_INCH / 24, FALSE },
  { "No. 10-24", HM_THREAD_UNIFIED, 4.826, MM_PER_INCH / 24, FALSE },
  { "#10-24", HM_THREAD_UNIFIED, 4.826, MM_PER_INCH / 24, FALSE },
  { "10-32", HM_THREAD_UNIFIED, 4.826, MM_PER_INCH / 32, FALSE },
  { "#0-80", HM_THREAD_UNIFIED, 1.524, MM_PER_INCH / 80, FALSE },
  { "#1-64", HM_THREAD_UNIFIED, 1.8542, MM_PER_INCH / 64, FALSE },
  { "1-64", HM_THREAD_UNIFIED, 1.8542, MM_PER_INCH / 64, FALSE },
  { "1-8", HM_THREAD_UNIFIED, 25.4, MM_PER_INCH / 8, FALSE },
  { "1-12 UNF", HM_THREAD_UNIFIED, 25.4, MM_PER_INCH / 12, FALSE },
  { "1-1/8-7", HM_THREAD_UNIFIED, 28.575, MM_PER_INCH / 7, FALSE },
  { "1 1/2-6 UNC", HM_THREAD_UNIFIED, 38.1, MM_PER_INCH / 6, FALSE },
};

static const struct refused_row {
  const char *name;
  HmThreadError code;
} refused_rows[] = {
  { "", HM_THREAD_ERROR_SYNTAX },
  { "M", HM_THREAD_ERROR_SYNTAX },
  { "bolt", HM_THREAD_ERROR_SYNTAX },
  { "1/4", HM_THREAD_ERROR_SYNTAX },
  { "1/0-20", HM_THREAD_ERROR_SYNTAX },
  { "1/4-", HM_THREAD_ERROR_SYNTAX },
  { "1/4-0", HM_THREAD_ERROR_SYNTAX },
  { "M8x", HM_THREAD_ERROR_SYNTAX },
  { "M8x1.25x40", HM_THREAD_ERROR_SYNTAX },
  { "M-8", HM_THREAD_ERROR_SYNTAX },
  { "M1e1", HM_THREAD_ERROR_SYNTAX },
  { "M8.2.5", HM_THREAD_ERROR_SYNTAX },
  { "#7-24", HM_THREAD_ERROR_SYNTAX },
  { "1/8-27 NPT", HM_THREAD_ERROR_SYNTAX },
  { "M\xff", HM_THREAD_ERROR_SYNTAX },
  { "M11", HM_THREAD_ERROR_RANGE },
  { "M0.9x0.2", HM_THREAD_ERROR_RANGE },
  { "M301x6", HM_THREAD_ERROR_RANGE },
  { "M8x3", HM_THREAD_ERROR_RANGE },
  { "M8x0", HM_THREAD_ERROR_RANGE },
  { "M999999", HM_THREAD_ERROR_RANGE },
  { "1/4-81", HM_THREAD_ERROR_RANGE },
  { "1/4-4", HM_THREAD_ERROR_RANGE },
  { "7-8", HM_THREAD_ERROR_RANGE },
};

static const struct format_row {
  const char *name;   /* read, then written */
  const char *want, *decimal_point;
} format_rows[] = {
  { "m8", "M8 × 1.25", "." },
  { "m8x1,25", "M8 × 1,25", "," },
  { "m8x1", "M8 × 1", "." },
  { "m1.6", "M1.6 × 0.35", "." },
  { "#10-24", "No.10-24", "." },
  { "#5-40", "No.5-40", "." },
  { "1/4-20", "1/4-20", "." },
  { "1-1/8-7", "1 1/8-7", "." },
  { "1-8", "1-8", "." },
  { ".3-20", "0.3-20", "." },
  { "1/2-20 LH", "1/2-20 LH", "." },
  { "M10x1.25 LH", "M10 × 1.25 LH", "." },
};

static void
text_is_read (void **state)
{
  const struct read_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (GError) error = NULL;
  HmThread thread;

  if (!hm_thread_parse (row->name, tables, &thread, &error))
    fail_msg ("%s", error->message);
  assert_int_equal (thread.form, row->form);
  assert_true (fabs (thread.major.mm - row->major_mm) < 1e-9);
  assert_true (fabs (thread.pitch.mm - row->pitch_mm) < 1e-9);
  assert_int_equal (thread.left_hand, row->left_hand);
}

static void
text_is_refused (void **state)
{
  const struct refused_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (GError) error = NULL;
  HmThread thread = { HM_THREAD_UNIFIED, { 1.0 }, { 2.0 }, TRUE };

  assert_false (hm_thread_parse (row->name, tables, &thread, &error));
  if (!g_error_matches (error, HM_THREAD_ERROR, (int) row->code))
    fail_msg ("%s", error->message);
  assert_true (thread.major.mm == 1.0 && thread.pitch.mm == 2.0 && thread.left_hand);
}

static void
bare_size_needs_a_table (void **state)
{
  g_autoptr (GError) error = NULL;
  HmThread thread;

  assert_false (hm_thread_parse ("M8", NULL, &thread, &error));
  assert_true (g_error_matches (error, HM_THREAD_ERROR, HM_THREAD_ERROR_RANGE));
  assert_true (hm_thread_parse ("M8x1.25", NULL, &thread, NULL));
}

static void
thread_is_written (void **state)
{
  const struct format_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmFormat format = { row->decimal_point, HM_UNIT_SYSTEM_INCH_FIRST };
  HmThread thread;
  g_autofree char *got = NULL;

  assert_true (hm_thread_parse (row->name, tables, &thread, NULL));
  got = hm_thread_format (&thread, &format);
  assert_string_equal (got, row->want);
}

/* Every name of the series reads back as its own row: the names and the figures of threads.csv agree. */
static void
table_names_read_back (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  gsize n;
  const HmThreadRow *rows = hm_tables_get_threads (tables, &n);

  assert_true (n > 100);
  for (gsize i = 0; i < n; i++)
    {
      HmThread thread;
      g_autofree char *name = NULL;

      if (rows[i].series == HM_SERIES_NPT)
        continue;
      assert_true (hm_thread_parse (rows[i].name, NULL, &thread, NULL));
      name = hm_thread_format (&thread, &hm_format_default);
      if (fabs (thread.major.mm - rows[i].major.mm) > 1e-6 || fabs (thread.pitch.mm - rows[i].pitch.mm) > 1e-6
          || strcmp (name, rows[i].name) != 0)
        fail_msg ("%s reads as %s", rows[i].name, name);
    }
}

/* ISO 898-1: the stress area is that of the mean of d2 and d3, so d3 is what the area is reckoned with. */
static double
root_diameter_mm (const HmThread *thread)
{
  return 2.0 * sqrt (4.0 / G_PI * hm_thread_stress_area_mm2 (thread)) - hm_thread_pitch_diameter (thread).mm;
}

/* ASME B1.1: the area at the root is that of a thread which is full to 100 percent, d − 1.299038 P. */
static void
dimension_matches_source (void **state)
{
  const HmTestRow *row = *state;
  const char *quantity = hm_test_text (row, "quantity");
  double scale = g_str_has_prefix (hm_test_text (row, "unit"), "in") ? MM_PER_INCH : 1.0;
  HmThread thread;
  double got;

  assert_true (hm_thread_parse (hm_test_text (row, "thread"), row->tables, &thread, NULL));
  if (strcmp (quantity, "pitch diameter") == 0)
    got = hm_thread_pitch_diameter (&thread).mm / scale;
  else if (strcmp (quantity, "minor diameter") == 0)
    got = hm_thread_minor_diameter (&thread).mm / scale;
  else if (strcmp (quantity, "root diameter") == 0)
    got = root_diameter_mm (&thread);
  else if (strcmp (quantity, "root area") == 0)
    got = G_PI / 4.0 * pow (hm_thread_drill_for_percent (&thread, 100.0).mm / scale, 2.0);
  else
    got = hm_thread_stress_area_mm2 (&thread) / (scale * scale);
  hm_test_near (row, got, hm_test_number (row, "value"), hm_test_number (row, "tolerance"));
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  HM_TEST_SUITE_ADD_ROWS (suite, read_rows, text_is_read);
  HM_TEST_SUITE_ADD_ROWS (suite, refused_rows, text_is_refused);
  HM_TEST_SUITE_ADD_ROWS (suite, format_rows, thread_is_written);
  hm_test_suite_add (suite, "bare M8 needs a table", bare_size_needs_a_table, NULL);
  hm_test_suite_add (suite, "names in the table read back", table_names_read_back, NULL);
  hm_test_suite_add_file (suite, "thread-basic.csv", NULL, dimension_matches_source);
  return hm_test_suite_run (suite, "thread");
}

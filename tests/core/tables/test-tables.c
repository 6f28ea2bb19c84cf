/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-tables.h"
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

#define THREAD_HEADER "thread,series,major,pitch,unit,use,provenance\n"
#define THREAD_ROW "M8 × 1.25,metric coarse,8,1.25,mm,usual,standard: ISO 261\n"
#define OPENING_HEADER "nominal,min,max,unit,provenance\n"

static const struct refused_row {
  const char *name, *table, *text;
  HmTablesError code;
  const char *says;
} refused_rows[] = {
  { "unknown table", "bolts", "a\n1\n", HM_TABLES_ERROR_NAME, "hex-heads" },
  { "column missing", "threads", "thread,series\nM8,metric coarse\n", HM_TABLES_ERROR_ROW, "major" },
  { "bad number", "threads", THREAD_HEADER "M8 × 1.25,metric coarse,8mm,1.25,mm,usual,standard: ISO 261\n", HM_TABLES_ERROR_ROW, "line 2" },
  { "bad series", "threads", THREAD_HEADER "M8 × 1.25,metric,8,1.25,mm,usual,standard: ISO 261\n", HM_TABLES_ERROR_ROW, "metric coarse" },
  { "bad unit", "threads", THREAD_HEADER "M8 × 1.25,metric coarse,8,1.25,cm,usual,standard: ISO 261\n", HM_TABLES_ERROR_ROW, "inch" },
  { "pitch zero", "threads", THREAD_HEADER "M8 × 1.25,metric coarse,8,0,mm,usual,standard: ISO 261\n", HM_TABLES_ERROR_ROW, "pitch" },
  { "negative", "threads", THREAD_HEADER "M8 × 1.25,metric coarse,-8,1.25,mm,usual,standard: ISO 261\n", HM_TABLES_ERROR_ROW, "-8" },
  { "infinite", "threads", THREAD_HEADER "M8 × 1.25,metric coarse,inf,1.25,mm,usual,standard: ISO 261\n", HM_TABLES_ERROR_ROW, "inf" },
  { "division by zero", "openings", OPENING_HEADER "1/0,1,1,inch,common practice\n", HM_TABLES_ERROR_ROW, "1/0" },
  { "standard without a name", "threads", THREAD_HEADER "M8 × 1.25,metric coarse,8,1.25,mm,usual,standard\n", HM_TABLES_ERROR_ROW, "provenance" },
  { "empty name", "threads", THREAD_HEADER ",metric coarse,8,1.25,mm,usual,standard: ISO 261\n", HM_TABLES_ERROR_ROW, "thread" },
  { "second row bad", "threads", THREAD_HEADER THREAD_ROW "M9,metric coarse,9,x,mm,usual,standard: ISO 261\n", HM_TABLES_ERROR_ROW, "line 3" },
  { "no header", "threads", "# nothing\n", HM_TABLES_ERROR_ROW, "header" },
};

/* 1 in = 25.4 mm exactly. */
static const struct size_row {
  const char *name, *text;
  double mm;
} size_rows[] = {
  { "7/16 in", OPENING_HEADER "7/16,0.440,0.446,inch,common practice\n", 11.1125 },
  { "1 1/8 in", OPENING_HEADER "1 1/8,1.132,1.142,inch,common practice\n", 28.575 },
  { "1 in", OPENING_HEADER "1,1.006,1.015,inch,common practice\n", 25.4 },
  { "5.5 mm", OPENING_HEADER "5.5,5.52,5.62,mm,common practice\n", 5.5 },
};

static void
table_is_refused (void **state)
{
  const struct refused_row *row = *state;
  g_autoptr (HmTables) tables = hm_tables_new ();
  g_autoptr (GError) error = NULL;
  gsize n;

  assert_false (hm_tables_read_csv (tables, row->table, row->text, &error));
  assert_true (g_error_matches (error, HM_TABLES_ERROR, (int) row->code));
  assert_non_null (g_strstr_len (error->message, -1, row->says));
  hm_tables_get_threads (tables, &n);
  assert_int_equal (n, 0);
}

static void
size_is_read (void **state)
{
  const struct size_row *row = *state;
  g_autoptr (HmTables) tables = hm_tables_new ();
  gsize n;

  assert_true (hm_tables_read_csv (tables, "openings", row->text, NULL));
  assert_true (fabs (hm_tables_get_openings (tables, &n)[0].nominal.mm - row->mm) < 1e-9);
  assert_int_equal (n, 1);
}

static void
threads_per_inch_become_pitch (void **state)
{
  g_autoptr (HmTables) tables = hm_tables_new ();
  gsize n;
  const HmThreadRow *row;

  assert_true (hm_tables_read_csv (tables, "threads", THREAD_HEADER "1/4-20,UNC,1/4,20,inch,usual,standard: ASME B1.1\n", NULL));
  row = hm_tables_get_threads (tables, &n);
  assert_int_equal (n, 1);
  assert_true (fabs (row->pitch.mm - 1.27) < 1e-12);
  assert_true (row->inch);
  assert_int_equal (row->series, HM_SERIES_UNC);
  assert_int_equal (row->use, HM_USE_USUAL);
  assert_string_equal (row->provenance.source, "ASME B1.1");
}

static void
rows_are_added (void **state)
{
  g_autoptr (HmTables) tables = hm_tables_new ();
  gsize n;

  assert_true (hm_tables_read_csv (tables, "threads", THREAD_HEADER THREAD_ROW, NULL));
  assert_true (hm_tables_read_csv (tables, "threads", THREAD_HEADER THREAD_ROW, NULL));
  hm_tables_get_threads (tables, &n);
  assert_int_equal (n, 2);
}

/* 1 ksi = 1000 lbf/in² = 6.894757 MPa (NIST SP 811, B.8). */
static void
ksi_becomes_megapascals (void **state)
{
  g_autoptr (HmTables) tables = hm_tables_new ();
  gsize n;

  assert_true (hm_tables_read_csv (tables, "strength", "standard,class,from,to,unit,proof,yield,tensile,stress_unit,provenance\n"
                                   "SAE J429,SAE 5,1/4,1,inch,85,,,ksi,standard: SAE J429\n", NULL));
  assert_true (fabs (hm_tables_get_strength (tables, &n)->proof.megapascals - 85.0 * 6.894757) < 1e-4);
  assert_true (hm_tables_get_strength (tables, &n)->yield.megapascals <= 0.0);
}

/* A nominal fraction is printed as a decimal of three places: the maximum may lie half a digit above it. */
static void
limits_are_in_order (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  gsize n;
  const HmHexRow *hex = hm_tables_get_hex (tables, &n);
  const HmOpeningRow *openings;

  for (gsize i = 0; i < n; i++)
    if (hex[i].max.mm > 0.0 && !(hex[i].min.mm < hex[i].max.mm && hex[i].max.mm <= hex[i].nominal.mm + 0.000501 * 25.4))
      fail_msg ("%s %s", hex[i].standard, hex[i].thread);
  openings = hm_tables_get_openings (tables, &n);
  for (gsize i = 0; i < n; i++)
    if (!(openings[i].nominal.mm < openings[i].min.mm && openings[i].min.mm < openings[i].max.mm))
      fail_msg ("opening %s", openings[i].name);
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  HM_TEST_SUITE_ADD_ROWS (suite, refused_rows, table_is_refused);
  HM_TEST_SUITE_ADD_ROWS (suite, size_rows, size_is_read);
  hm_test_suite_add (suite, "threads per inch become pitch", threads_per_inch_become_pitch, NULL);
  hm_test_suite_add (suite, "ksi becomes MPa", ksi_becomes_megapascals, NULL);
  hm_test_suite_add (suite, "reading twice adds", rows_are_added, NULL);
  hm_test_suite_add (suite, "limits are in order", limits_are_in_order, NULL);
  return hm_test_suite_run (suite, "tables");
}

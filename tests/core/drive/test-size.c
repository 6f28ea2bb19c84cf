/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-size.h"
#include "hm-hexalobular.h"
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

#define MM_PER_INCH 25.4

static const struct neighbour_row {
  const char *name;
  double width;
  const char *inch_below, *inch_above, *metric_below, *metric_above;   /* "" where the series ends */
} neighbour_rows[] = {
  { "11/32 in", 8.73125, "5/16", "3/8", "8", "9" },
  { "13 mm", 13.0, "1/2", "9/16", "12", "14" },
  { "9.2 mm", 9.2, "11/32", "3/8", "9", "10" },
  { "1 mm", 1.0, "", "5/32", "", "3.2" },
  { "100 mm", 100.0, "1 1/2", "", "32", "" },
};

/* Nominal sizes decide; ISO 4762 and ASME B18.3 keys. */
static const struct key_row { const char *name; double key, socket; HmFitVerdict verdict; } key_rows[] = {
  { "5 mm in 5 mm", 5.0, 5.0, HM_FIT_FITS },
  { "5/32 in in 4 mm", 3.96875, 4.0, HM_FIT_USABLE },
  { "4 mm in 5/32 in", 4.0, 3.96875, HM_FIT_WILL_NOT_GO_ON },
  { "3/16 in in 5 mm", 4.7625, 5.0, HM_FIT_ROUNDS },
  { "6 mm in 1/4 in", 6.0, 6.35, HM_FIT_ROUNDS },
};

/* Holds worked by hand from A and B of ISO 10664: T20 A 3.95; T25 A 4.5, B 3.25; T30 A 5.6, B 4.05. */
static const struct hexalobular_row { const char *name; int key, recess; gboolean known; HmFitVerdict verdict; double hold; } hexalobular_rows[] = {
  { "T25 in T25", 25, 25, TRUE, HM_FIT_FITS, 1.0 },
  { "T27 in T27", 27, 27, TRUE, HM_FIT_FITS, 1.0 },
  { "T20 in T25", 20, 25, TRUE, HM_FIT_ROUNDS, 0.56 },
  { "T25 in T30", 25, 30, TRUE, HM_FIT_ROUNDS, 0.2903 },
  { "T15 in T30", 15, 30, TRUE, HM_FIT_ROUNDS, 0.0 },
  { "T30 in T25", 30, 25, TRUE, HM_FIT_WILL_NOT_GO_ON, 0.0 },
  { "T25 in T27, B not published", 25, 27, FALSE, HM_FIT_FITS, 0.0 },
  { "no such size", 26, 30, FALSE, HM_FIT_FITS, 0.0 },
};

static HmHead
read_head (const char *text, const HmTables *tables)
{
  HmDrive drive;
  HmHead head;

  assert_true (hm_drive_parse (text, &drive, NULL));
  assert_true (hm_head_from_drive (&drive, tables, &head));
  return head;
}

static void
check_name (const HmOpeningRow *got, const char *want)
{
  assert_string_equal (got != NULL ? got->name : "", want);
}

static void
neighbours_are_found (void **state)
{
  const struct neighbour_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmSizeNeighbours got = hm_size_neighbours ((HmLength) { row->width }, tables);

  check_name (got.inch_below, row->inch_below);
  check_name (got.inch_above, row->inch_above);
  check_name (got.metric_below, row->metric_below);
  check_name (got.metric_above, row->metric_above);
}

static void
equivalent_of_11_32_is_9 (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmHead head = read_head ("hex 11/32 in", tables);
  g_autoptr (GArray) got = hm_size_equivalents (&head, HM_HEAD_CLEAN, tables);
  HmSizeFit *first;

  assert_true (got->len > 0);
  first = &g_array_index (got, HmSizeFit, 0);
  assert_string_equal (first->opening->name, "9");
  assert_int_equal (first->fit.verdict, HM_FIT_USABLE);
  assert_int_equal (first->fit.reason, HM_FIT_LOOSE);
  for (guint i = 0; i < got->len; i++)
    assert_false (g_array_index (got, HmSizeFit, i).opening->inch);
}

static void
drivers_begin_with_the_proper_one (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmHead head = read_head ("hex 3/4 in", tables);
  g_autoptr (GArray) got = hm_size_drivers (&head, HM_HEAD_CLEAN, tables);

  assert_true (got->len >= 2);
  assert_string_equal (g_array_index (got, HmSizeFit, 0).opening->name, "3/4");
  assert_string_equal (g_array_index (got, HmSizeFit, 1).opening->name, "19");
  for (guint i = 0; i < got->len; i++)
    assert_true (g_array_index (got, HmSizeFit, i).fit.verdict <= HM_FIT_USABLE);
}

/* A 13 mm head rounded to 12.9 mm: 1/2 in (12.80 to 12.95 mm) is tapped on, 13 mm goes on by hand. */
static void
rounded_head_gets_the_tight_size (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmRoundedChoice got = hm_size_for_rounded ((HmLength) { 12.9 }, tables);

  check_name (got.drive_on, "1/2");
  check_name (got.next_up, "13");
  assert_true (fabs (got.interference.mm - (12.9 - (0.504 + 0.510) / 2.0 * MM_PER_INCH)) < 1e-9);
  got = hm_size_for_rounded ((HmLength) { 60.0 }, tables);
  assert_null (got.drive_on);
  assert_null (got.next_up);
}

static void
key_fits_or_not (void **state)
{
  const struct key_row *row = *state;

  assert_int_equal (hm_key_fit ((HmLength) { row->key }, (HmLength) { row->socket }), row->verdict);
}

static void
hexalobular_fits_or_not (void **state)
{
  const struct hexalobular_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmHexalobularFit fit;

  assert_int_equal (hm_hexalobular_fit (row->key, row->recess, tables, &fit), row->known);
  if (!row->known)
    return;
  assert_int_equal (fit.verdict, row->verdict);
  assert_true (fabs (fit.hold - row->hold) < 0.0001);
}

/* The difference that the table of pairs states is the difference of the sizes that the parser reads. */
static void
pair_matches_source (void **state)
{
  const HmTestRow *row = *state;
  g_autofree char *inch_text = g_strdup_printf ("hex %s in", hm_test_text (row, "inch"));
  g_autofree char *metric_text = g_strdup_printf ("hex %s mm", hm_test_text (row, "metric"));
  HmDrive inch, metric;

  assert_true (hm_drive_parse (inch_text, &inch, NULL));
  assert_true (hm_drive_parse (metric_text, &metric, NULL));
  hm_test_near (row, inch.size.mm - metric.size.mm, hm_test_number (row, "value"), hm_test_number (row, "tolerance"));
  hm_test_near (row, 100.0 * (inch.size.mm / metric.size.mm - 1.0), hm_test_number (row, "percent"), 0.0051);
  assert_string_equal (inch.size.mm < metric.size.mm ? "smaller" : "larger", hm_test_text (row, "inch_is"));
}

/* Of a pair within 5 percent, each size is an equivalent of the other, where both are made. */
static void
pair_is_found (void **state)
{
  const HmTestRow *row = *state;
  g_autofree char *text = g_strdup_printf ("hex %s in", hm_test_text (row, "inch"));
  double metric = hm_test_number (row, "metric");
  g_autoptr (GArray) got = NULL;
  HmDrive drive;
  HmHead head;
  gboolean found = FALSE;

  assert_true (hm_drive_parse (text, &drive, NULL));
  head = hm_head_measured (drive.size, (HmLength) { 0.05 }, TRUE);
  got = hm_size_equivalents (&head, HM_HEAD_CLEAN, row->tables);
  for (guint i = 0; i < got->len; i++)
    found = found || fabs (g_array_index (got, HmSizeFit, i).opening->nominal.mm - metric) < 1e-9;
  assert_int_equal (found, fabs (hm_test_number (row, "percent")) <= 5.0
                           && hm_opening_find ((HmLength) { metric }, FALSE, row->tables) != NULL);
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  HM_TEST_SUITE_ADD_ROWS (suite, neighbour_rows, neighbours_are_found);
  HM_TEST_SUITE_ADD_ROWS (suite, key_rows, key_fits_or_not);
  HM_TEST_SUITE_ADD_ROWS (suite, hexalobular_rows, hexalobular_fits_or_not);
  hm_test_suite_add_file (suite, "size-pairs.csv", NULL, pair_matches_source);
  hm_test_suite_add_file (suite, "size-pairs.csv", NULL, pair_is_found);
  hm_test_suite_add (suite, "the equivalent of 11/32 is 9", equivalent_of_11_32_is_9, NULL);
  hm_test_suite_add (suite, "drivers begin with the proper one", drivers_begin_with_the_proper_one, NULL);
  hm_test_suite_add (suite, "a rounded head gets the tight size", rounded_head_gets_the_tight_size, NULL);
  return hm_test_suite_run (suite, "size");
}

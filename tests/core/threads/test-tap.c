/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-tap.h"
#include "hm-test-vectors.h"
#include "hm-thread-limits.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

#define MM_PER_INCH 25.4

/* ASME B1.20.1: outside diameter of pipe and threads per inch. */
static const struct pipe_row { const char *name; double outside_in, tpi; } pipe_rows[] = {
  { "1/8 NPT", 0.405, 27.0 }, { "1/8-27 NPT", 0.405, 27.0 }, { "1/4 npt", 0.540, 18.0 },
  { "3/8 NPT", 0.675, 18.0 }, { "1/2NPT", 0.840, 14.0 }, { "3/4 NPT", 0.0, 0.0 }, { "1/8", 0.0, 0.0 }, { "NPT", 0.0, 0.0 },
};

static HmThread
read_thread (const HmTestRow *row)
{
  HmThread thread;

  assert_true (hm_thread_parse (hm_test_text (row, "thread"), row->tables, &thread, NULL));
  return thread;
}

static void
percent_matches_source (void **state)
{
  const HmTestRow *row = *state;
  HmThread thread = read_thread (row);
  double drill = hm_test_number (row, "drill_in") * MM_PER_INCH;
  const HmHoleRow *holes = hm_thread_find_holes (&thread, row->tables);
  double percent = hm_thread_percent_of_drill (&thread, (HmLength) { drill });

  hm_test_near (row, percent, hm_test_number (row, "value"), hm_test_number (row, "tolerance"));
  assert_true (fabs (hm_thread_drill_for_percent (&thread, percent).mm - drill) < 1e-9);
  assert_non_null (holes);
  assert_true (fabs (holes->tap_drill.mm - drill) < 0.000051 * MM_PER_INCH);
}

static void
clearance_matches_source (void **state)
{
  const HmTestRow *row = *state;
  const char *kind = hm_test_text (row, "kind");
  double scale = strcmp (hm_test_text (row, "unit"), "in") == 0 ? MM_PER_INCH : 1.0;
  HmThread thread = read_thread (row);
  const HmHoleRow *holes = hm_thread_find_holes (&thread, row->tables);
  HmLength got;

  assert_non_null (holes);
  got = strcmp (kind, "close") == 0 ? holes->close : strcmp (kind, "normal") == 0 ? holes->normal : holes->loose;
  hm_test_near (row, got.mm / scale, hm_test_number (row, "value"), hm_test_number (row, "tolerance"));
}

static void
tap_drill_matches_source (void **state)
{
  const HmTestRow *row = *state;
  HmThread thread = read_thread (row);
  const HmHoleRow *holes = hm_thread_find_holes (&thread, row->tables);

  assert_non_null (holes);
  hm_test_near (row, holes->tap_drill.mm, hm_test_number (row, "value"), hm_test_number (row, "tolerance"));
}

static void
drill_has_its_name (void **state)
{
  const HmTestRow *row = *state;
  HmThread thread = read_thread (row);
  const HmHoleRow *holes = hm_thread_find_holes (&thread, row->tables);

  assert_non_null (holes);
  assert_string_equal (holes->tap_drill_name, hm_test_text (row, "drill"));
  hm_test_near (row, holes->tap_drill.mm / MM_PER_INCH, hm_test_number (row, "drill_in"), 0.000051);
}

/* A metric tap drill lies within the limits of the minor diameter (6H, ISO 965-1), or up to 0.1 mm above for fine pitches. */
static void
metric_tap_drills_suit_the_hole (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  gsize n;
  const HmHoleRow *rows = hm_tables_get_holes (tables, &n);
  guint seen = 0;

  for (gsize i = 0; i < n; i++)
    {
      HmThread thread;
      HmThreadLimits hole;

      assert_true (hm_thread_parse (rows[i].thread, NULL, &thread, NULL));
      if (thread.form != HM_THREAD_ISO_METRIC)
        continue;
      hole = hm_thread_usual_limits (&thread, TRUE, NULL);
      seen++;
      if (rows[i].tap_drill.mm < hole.minor_min.mm || rows[i].tap_drill.mm > hole.minor_max.mm)
        fail_msg ("%s: drill %.3f, minor diameter %.3f to %.3f", rows[i].thread, rows[i].tap_drill.mm,
                  hole.minor_min.mm, hole.minor_max.mm);
    }
  assert_true (seen > 30);
}

static void
pipe_is_found_by_name (void **state)
{
  const struct pipe_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  const HmThreadRow *got = hm_pipe_thread_find (row->name, tables);

  if (row->tpi <= 0.0)
    {
      assert_null (got);
      return;
    }
  assert_non_null (got);
  assert_true (fabs (got->major.mm - row->outside_in * MM_PER_INCH) < 1e-9);
  assert_true (fabs (got->pitch.mm - MM_PER_INCH / row->tpi) < 1e-9);
}

static void
unlisted_thread_has_no_holes (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmThread odd = { HM_THREAD_ISO_METRIC, { 9.5 }, { 1.25 }, FALSE };
  HmThread same_numbers = { HM_THREAD_UNIFIED, { 8.0 }, { 1.25 }, FALSE };

  assert_null (hm_thread_find_holes (&odd, tables));
  assert_null (hm_thread_find_row (&same_numbers, tables));
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  hm_test_suite_add_file (suite, "thread-holes.csv", "percent", percent_matches_source);
  hm_test_suite_add_file (suite, "thread-holes.csv", "close", clearance_matches_source);
  hm_test_suite_add_file (suite, "thread-holes.csv", "normal", clearance_matches_source);
  hm_test_suite_add_file (suite, "thread-holes.csv", "loose", clearance_matches_source);
  hm_test_suite_add_file (suite, "thread-holes.csv", "tap", tap_drill_matches_source);
  hm_test_suite_add_file (suite, "drill-names.csv", NULL, drill_has_its_name);
  HM_TEST_SUITE_ADD_ROWS (suite, pipe_rows, pipe_is_found_by_name);
  hm_test_suite_add (suite, "metric tap drills suit the hole", metric_tap_drills_suit_the_hole, NULL);
  hm_test_suite_add (suite, "an unlisted thread has no holes", unlisted_thread_has_no_holes, NULL);
  return hm_test_suite_run (suite, "tap");
}

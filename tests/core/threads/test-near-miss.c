/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-near-miss.h"
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

/*
 * Turns worked by hand from limits of size: ASME B1.1 2A/2B (1/4-28: 0.2258–0.2225 and 0.2268–0.2311 in; 5/16-18: 0.2752–0.2712
 * and 0.2764–0.2817 in; 1/4-20 hole 0.2175–0.2223 in) and ISO 965-1 6g/6H (M6: 5.324–5.212 and 5.350–5.500 mm; M8:
 * 7.160–7.042 and 7.188–7.348 mm). Example, M8 in 5/16-18, loose: play (1.4111 − 1.25)/2 + (7.1552 − 7.042) tan 30° = 0.1459 mm;
 * drift 0.1611 mm a turn; 0.91 turns. Tolerance: R40 rounding of the metric limits, 2 % of the turns.
 */
static const struct mate_row {
  const char *name, *bolt, *hole;
  HmMate mate;
  double tight, loose;   /* turns; negative: not checked */
} mate_rows[] = {
  { "M8 in 5/16-18", "M8x1.25", "5/16-18", HM_MATE_JAMS, 0.0, 0.91 },
  { "5/16-18 in M8", "5/16-18", "M8x1.25", HM_MATE_JAMS, 0.21, 1.15 },
  { "M6 in 1/4-28", "M6x1", "1/4-28", HM_MATE_JAMS, 2.21, 3.59 },
  { "M6 in 1/4-20", "M6x1", "1/4-20", HM_MATE_JAMS, 0.93, 1.43 },
  { "1/4-28 in M6", "1/4-28", "M6x1", HM_MATE_WILL_NOT_START, -1.0, -1.0 },
  { "10-32 in M5", "No.10-32", "M5x0.8", HM_MATE_STRIPS, -1.0, -1.0 },
  { "M8x1.25 in M8x1", "M8x1.25", "M8x1", HM_MATE_JAMS, 0.0, -1.0 },
  { "1/2-20 in 1/2-13", "1/2-20", "1/2-13", HM_MATE_WILL_NOT_START, -1.0, -1.0 },
  { "1/4-20 in 3/8-16", "1/4-20", "3/8-16", HM_MATE_DROPS_IN, -1.0, -1.0 },
  { "3/8-16 in 1/4-20", "3/8-16", "1/4-20", HM_MATE_WILL_NOT_START, -1.0, -1.0 },
  { "M8 in M8", "M8x1.25", "M8x1.25", HM_MATE_GOES, G_MAXDOUBLE, G_MAXDOUBLE },
  { "left hand in right hand", "M8x1.25 LH", "M8x1.25", HM_MATE_WILL_NOT_START, -1.0, -1.0 },
  { "left hand in left hand", "M8x1.25 LH", "M8x1.25 LH", HM_MATE_GOES, -1.0, -1.0 },
};

/* Pairs that the trade warns of; each has to be found from both sides. */
static const struct pair_row { const char *name, *other; } pair_rows[] = {
  { "M8x1.25", "5/16-18" }, { "5/16-18", "M8 × 1.25" }, { "M6x1", "1/4-28" }, { "1/4-28", "M6 × 1" }, { "M6x1", "1/4-20" },
  { "M10x1.5", "3/8-16" }, { "3/8-16", "M10 × 1.5" }, { "M12x1.75", "1/2-13" }, { "1/2-13", "M12 × 1.75" },
  { "M5x0.8", "No.10-32" }, { "No.10-32", "M5 × 0.8" }, { "M4x0.7", "No.8-32" },
};

static HmThread
read_thread (const char *text)
{
  HmThread thread;

  assert_true (hm_thread_parse (text, NULL, &thread, NULL));
  return thread;
}

static void
check_turns (double got, double want)
{
  if (want >= 0.0 && fabs (got - want) > MAX (0.01, 0.02 * want))
    fail_msg ("%.3f turns, want %.3f", got, want);
}

static void
mating_matches_hand_calculation (void **state)
{
  const struct mate_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmThread bolt = read_thread (row->bolt), hole = read_thread (row->hole);
  HmMating got = hm_thread_mate (&bolt, &hole, (HmLength) { 0.0 }, tables);

  assert_int_equal (got.mate, row->mate);
  check_turns (got.turns_tight, row->tight);
  check_turns (got.turns_loose, row->loose);
}

static void
pair_is_found (void **state)
{
  const struct pair_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmThread thread = read_thread (row->name);
  g_autoptr (GArray) found = hm_thread_near_misses (&thread, tables);

  for (guint i = 0; i < found->len; i++)
    if (strcmp (g_array_index (found, HmNearMiss, i).row->name, row->other) == 0)
      return;
  fail_msg ("%s does not list %s", row->name, row->other);
}

static void
every_thread_goes_in_its_own_hole (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  gsize n;
  const HmThreadRow *rows = hm_tables_get_threads (tables, &n);

  for (gsize i = 0; i < n; i++)
    {
      HmThread thread = { rows[i].inch ? HM_THREAD_UNIFIED : HM_THREAD_ISO_METRIC, rows[i].major, rows[i].pitch, FALSE };
      HmMating got = hm_thread_mate (&thread, &thread, (HmLength) { 0.0 }, tables);

      if (rows[i].series != HM_SERIES_NPT && got.mate != HM_MATE_GOES)
        fail_msg ("%s: %d, engagement %.2f to %.2f", rows[i].name, got.mate, got.engagement_loose, got.engagement_tight);
    }
}

static void
commonest_comes_first (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmThread thread = read_thread ("M8x1.25");
  g_autoptr (GArray) found = hm_thread_near_misses (&thread, tables);

  assert_true (found->len >= 3);
  for (guint i = 1; i < found->len; i++)
    assert_true (g_array_index (found, HmNearMiss, i - 1).row->use <= g_array_index (found, HmNearMiss, i).row->use);
}

/* A longer hole needs more turns: what goes into a short one may jam in a long one. */
static void
longer_hole_jams (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmThread bolt = read_thread ("M6x1"), hole = read_thread ("1/4-28");

  assert_int_equal (hm_thread_mate (&bolt, &hole, (HmLength) { 8.0 }, tables).mate, HM_MATE_JAMS);
  assert_int_equal (hm_thread_mate (&bolt, &hole, (HmLength) { 2.0 }, tables).mate, HM_MATE_STRIPS);
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  HM_TEST_SUITE_ADD_ROWS (suite, mate_rows, mating_matches_hand_calculation);
  HM_TEST_SUITE_ADD_ROWS (suite, pair_rows, pair_is_found);
  hm_test_suite_add (suite, "every thread goes in its own hole", every_thread_goes_in_its_own_hole, NULL);
  hm_test_suite_add (suite, "commonest comes first", commonest_comes_first, NULL);
  hm_test_suite_add (suite, "a longer hole jams", longer_hole_jams, NULL);
  return hm_test_suite_run (suite, "near-miss");
}

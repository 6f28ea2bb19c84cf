/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-thread-limits.h"
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

#define MM_PER_INCH 25.4

/* Worked by hand from the formulas. ASME B1.1, 1-8: T = 0.0015 + 0.0015 + 0.015 · 0.125^⅔ = 0.00675 in, allowance 0.0020 in;
 * ISO 965-1: TD1 = 230 P^0.7, below 1 mm 433 P − 190 P^1.22, to the nearest R40 number. */
static const struct hand_row { const char *name, *thread, *class_name, *quantity; double want, scale, tolerance; } hand_rows[] = {
  { "1-8 1A pitch min", "1-8", "1A", "pitch min", 0.9067, MM_PER_INCH, 0.000051 },
  { "1-8 1A major min", "1-8", "1A", "major min", 0.9755, MM_PER_INCH, 0.000051 },
  { "1-8 3A pitch min", "1-8", "3A", "pitch min", 0.9137, MM_PER_INCH, 0.000051 },
  { "1-8 1B pitch max", "1-8", "1B", "pitch max", 0.9320, MM_PER_INCH, 0.000051 },
  { "1-8 3B pitch max", "1-8", "3B", "pitch max", 0.9254, MM_PER_INCH, 0.000051 },
  { "1-8 3B minor max", "1-8", "3B", "minor max", 0.8797, MM_PER_INCH, 0.000051 },
  { "M8 6H minor max", "M8x1.25", "6H", "minor max", 6.912, 1.0, 0.00051 },
  { "M6 6H minor max", "M6x1", "6H", "minor max", 5.153, 1.0, 0.00051 },
  { "M5 6H minor max", "M5x0.8", "6H", "minor max", 4.334, 1.0, 0.00051 },
};

static HmThreadClass
class_from_name (const char *name)
{
  for (int i = HM_THREAD_CLASS_6G; i <= HM_THREAD_CLASS_3B; i++)
    if (strcmp (hm_thread_class_name ((HmThreadClass) i), name) == 0)
      return (HmThreadClass) i;
  fail_msg ("no class %s", name);
  return HM_THREAD_CLASS_6G;
}

static double
pick (const HmThreadLimits *limits, const char *quantity)
{
  const struct { const char *name; double mm; } values[] = {
    { "major max", limits->major_max.mm }, { "major min", limits->major_min.mm },
    { "pitch max", limits->pitch_max.mm }, { "pitch min", limits->pitch_min.mm },
    { "minor max", limits->minor_max.mm }, { "minor min", limits->minor_min.mm },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (values); i++)
    if (strcmp (values[i].name, quantity) == 0)
      return values[i].mm;
  fail_msg ("no quantity %s", quantity);
  return 0.0;
}

static void
limit_matches_source (void **state)
{
  const HmTestRow *row = *state;
  double scale = strcmp (hm_test_text (row, "unit"), "in") == 0 ? MM_PER_INCH : 1.0;
  HmThread thread;
  HmThreadLimits limits;

  assert_true (hm_thread_parse (hm_test_text (row, "thread"), row->tables, &thread, NULL));
  assert_true (hm_thread_get_limits (&thread, class_from_name (hm_test_text (row, "class")), row->tables, &limits, NULL));
  hm_test_near (row, pick (&limits, hm_test_text (row, "quantity")) / scale, hm_test_number (row, "value"),
                hm_test_number (row, "tolerance"));
}

static void
limit_matches_hand_calculation (void **state)
{
  const struct hand_row *row = *state;
  HmThread thread;
  HmThreadLimits limits;
  double got;

  assert_true (hm_thread_parse (row->thread, NULL, &thread, NULL));
  assert_true (hm_thread_get_limits (&thread, class_from_name (row->class_name), NULL, &limits, NULL));
  got = pick (&limits, row->quantity) / row->scale;
  if (fabs (got - row->want) > row->tolerance)
    fail_msg ("%.5f, want %.4f", got, row->want);
}

static void
class_of_the_other_form_is_refused (void **state)
{
  g_autoptr (GError) error = NULL;
  HmThread metric = { HM_THREAD_ISO_METRIC, { 8.0 }, { 1.25 }, FALSE };
  HmThread unified = { HM_THREAD_UNIFIED, { 6.35 }, { 1.27 }, FALSE };
  HmThreadLimits limits = { .pitch_max = { -1.0 } };

  assert_false (hm_thread_get_limits (&metric, HM_THREAD_CLASS_2A, NULL, &limits, &error));
  assert_true (g_error_matches (error, HM_THREAD_ERROR, HM_THREAD_ERROR_CLASS));
  assert_false (hm_thread_get_limits (&unified, HM_THREAD_CLASS_6G, NULL, &limits, NULL));
  assert_true (limits.pitch_max.mm < 0.0);
}

/* Extra-fine threads take nine pitches for the engagement, ASME B1.1: a smaller tolerance than one diameter gives. */
static void
extra_fine_takes_nine_pitches (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmThread thread = { HM_THREAD_UNIFIED, { 25.4 }, { 25.4 / 20.0 }, FALSE };
  HmThreadLimits with = hm_thread_usual_limits (&thread, TRUE, tables), without = hm_thread_usual_limits (&thread, TRUE, NULL);
  double tolerance_in = (with.pitch_max.mm - with.pitch_min.mm) / MM_PER_INCH;
  double expected_in = 1.3 * (0.0015 + 0.0015 * sqrt (9.0 / 20.0) + 0.015 * pow (0.05, 2.0 / 3.0));

  assert_true (with.pitch_max.mm < without.pitch_max.mm);
  assert_true (fabs (tolerance_in - expected_in) < 0.000051);
}

/* A gauged bolt enters a gauged hole: every pair of usual classes in the series, the root of the bolt too. */
static void
every_bolt_fits_its_hole (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  gsize n;
  const HmThreadRow *rows = hm_tables_get_threads (tables, &n);

  for (gsize i = 0; i < n; i++)
    {
      HmThread thread = { rows[i].inch ? HM_THREAD_UNIFIED : HM_THREAD_ISO_METRIC, rows[i].major, rows[i].pitch, FALSE };
      HmThreadLimits bolt = hm_thread_usual_limits (&thread, FALSE, tables);
      HmThreadLimits hole = hm_thread_usual_limits (&thread, TRUE, tables);

      if (rows[i].series == HM_SERIES_NPT)
        continue;
      if (!(bolt.major_min.mm < bolt.major_max.mm && bolt.major_max.mm <= hole.major_min.mm
            && bolt.pitch_min.mm < bolt.pitch_max.mm && bolt.pitch_max.mm <= hole.pitch_min.mm
            && hole.pitch_min.mm < hole.pitch_max.mm && bolt.minor_max.mm <= hole.minor_min.mm
            && hole.minor_min.mm < hole.minor_max.mm && bolt.minor_min.mm < bolt.minor_max.mm
            && hole.minor_max.mm < bolt.major_min.mm))
        fail_msg ("%s", rows[i].name);
    }
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  hm_test_suite_add_file (suite, "thread-limits.csv", NULL, limit_matches_source);
  HM_TEST_SUITE_ADD_ROWS (suite, hand_rows, limit_matches_hand_calculation);
  hm_test_suite_add (suite, "class of the other form is refused", class_of_the_other_form_is_refused, NULL);
  hm_test_suite_add (suite, "extra-fine takes nine pitches", extra_fine_takes_nine_pitches, NULL);
  hm_test_suite_add (suite, "every bolt fits its hole", every_bolt_fits_its_hole, NULL);
  return hm_test_suite_run (suite, "thread-limits");
}

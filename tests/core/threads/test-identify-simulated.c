/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-identify.h"
#include "hm-test-vectors.h"
#include "hm-thread-limits.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

/*
 * How often the true thread comes first. A thread is drawn as often as it is common, its diameter anywhere within the limits of size,
 * the caliper's reading anywhere within its error to either side, the pitch as a gauge tells it. The errors here are not those that
 * the identification takes for granted: it is told a standard deviation and thinks of a bell, the caliper errs evenly.
 */

/* @told_sd: what the identification is told of the caliper; 0: the standard deviation of its even error, error / √3. */
static const struct run_row {
  const char *name;
  guint measurements;
  double error_mm, told_sd_mm, at_least;
  gboolean gauge;
} run_rows[] = {
  { "caliper within 0.05 mm and pitch gauge", 20000, 0.05, 0.0, 0.98, TRUE },
  { "caliper within 0.15 mm and pitch gauge", 20000, 0.15, 0.0, 0.90, TRUE },
  { "caliper within 0.05 mm, told that it is a good one", 5000, 0.05, 0.02, 0.98, TRUE },
  { "caliper within 0.05 mm alone", 5000, 0.05, 0.0, 0.0, FALSE },   /* no share is promised; the line says what to expect */
};

static const double share_by_use[] = { 1.0, 0.25, 0.05 };   /* HmUse: usual, occasional, rare */

static const HmThreadRow *
draw_thread (GRand *rand, const HmThreadRow *rows, gsize n)
{
  for (;;)
    {
      const HmThreadRow *row = &rows[g_rand_int_range (rand, 0, (gint32) n)];

      if (row->series != HM_SERIES_NPT && g_rand_double (rand) < share_by_use[row->use])
        return row;
    }
}

/* Two evenly distributed numbers make a normally distributed one. */
static double
draw_normal (GRand *rand)
{
  return sqrt (-2.0 * log (1.0 - g_rand_double (rand))) * cos (2.0 * G_PI * g_rand_double (rand));
}

static HmThreadMeasurement
simulate (GRand *rand, const HmThreadRow *row, const struct run_row *run, const HmTables *tables)
{
  HmThread thread = { row->inch ? HM_THREAD_UNIFIED : HM_THREAD_ISO_METRIC, row->major, row->pitch, FALSE };
  gboolean hole = g_rand_boolean (rand);
  HmThreadLimits limits = hm_thread_usual_limits (&thread, hole, tables);
  double low = hole ? limits.minor_min.mm : limits.major_min.mm, high = hole ? limits.minor_max.mm : limits.major_max.mm;
  HmThreadMeasurement m = { .feature = hole ? HM_FEATURE_HOLE : HM_FEATURE_BOLT };

  m.diameter.mm = g_rand_double_range (rand, low, high) + g_rand_double_range (rand, -run->error_mm, run->error_mm);
  m.diameter_sd.mm = run->told_sd_mm > 0.0 ? run->told_sd_mm : run->error_mm / sqrt (3.0);
  if (run->gauge)
    m.pitch.mm = row->pitch.mm + hm_pitch_gauge_sd (row->pitch).mm * draw_normal (rand);
  m.pitch_sd = hm_pitch_gauge_sd (m.pitch);
  return m;
}

static void
true_thread_comes_first (void **state)
{
  const struct run_row *run = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (GRand) rand = g_rand_new_with_seed (20000);
  gsize n;
  const HmThreadRow *rows = hm_tables_get_threads (tables, &n);
  guint first = 0, among_three = 0;

  for (guint i = 0; i < run->measurements; i++)
    {
      const HmThreadRow *row = draw_thread (rand, rows, n);
      HmThreadMeasurement m = simulate (rand, row, run, tables);
      g_autoptr (GArray) got = hm_thread_identify (&m, tables);

      for (guint k = 0; k < MIN (got->len, 3u); k++)
        if (g_array_index (got, HmThreadCandidate, k).row == row)
          {
            first += k == 0;
            among_three++;
          }
    }
  print_message ("# %s: the true thread first in %.2f %%, among three in %.2f %% of %u measurements\n", run->name,
                 100.0 * first / run->measurements, 100.0 * among_three / run->measurements, run->measurements);
  if (first < run->at_least * run->measurements)
    fail_msg ("%.2f %%, want %.0f %%", 100.0 * first / run->measurements, 100.0 * run->at_least);
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  HM_TEST_SUITE_ADD_ROWS (suite, run_rows, true_thread_comes_first);
  return hm_test_suite_run (suite, "identify-simulated");
}

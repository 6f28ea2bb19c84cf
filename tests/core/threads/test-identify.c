/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-identify.h"
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

/*
 * Diameters lie within the limits of size of the wanted thread: ISO 965-1 6g (M6 5.794–5.974, M8 7.760–7.972 mm) and 6H;
 * ASME B1.1 2A (1/4 0.2408–0.2489 in, 5/16-18 0.3026–0.3113 in, No.10-32 0.1831–0.1891 in).
 */
static const struct identify_row {
  const char *name;
  HmThreadFeature feature;
  double diameter, pitch;   /* mm; 0 for not measured */
  gboolean worn;
  const char *want;
  double at_least;          /* probability of the first */
} identify_rows[] = {
  { "M8 by caliper and gauge", HM_FEATURE_BOLT, 7.86, 1.25, FALSE, "M8 × 1.25", 0.95 },
  { "5/16-18 by caliper and gauge", HM_FEATURE_BOLT, 7.80, 25.4 / 18.0, FALSE, "5/16-18", 0.95 },
  { "5/16-24", HM_FEATURE_BOLT, 7.82, 25.4 / 24.0, FALSE, "5/16-24", 0.8 },
  { "M6 by caliper and gauge", HM_FEATURE_BOLT, 5.90, 1.0, FALSE, "M6 × 1", 0.95 },
  { "M6 by caliper only", HM_FEATURE_BOLT, 5.90, 0.0, FALSE, "M6 × 1", 0.5 },
  { "1/4-20", HM_FEATURE_BOLT, 6.25, 1.27, FALSE, "1/4-20", 0.95 },
  { "1/4-28", HM_FEATURE_BOLT, 6.25, 25.4 / 28.0, FALSE, "1/4-28", 0.8 },
  { "No.10-32", HM_FEATURE_BOLT, 4.72, 25.4 / 32.0, FALSE, "No.10-32", 0.9 },
  { "M5, not No.10-32", HM_FEATURE_BOLT, 4.92, 0.8, FALSE, "M5 × 0.8", 0.9 },
  { "spark plug", HM_FEATURE_BOLT, 13.88, 1.25, FALSE, "M14 × 1.25", 0.9 },
  { "worn M6", HM_FEATURE_BOLT, 5.72, 1.0, TRUE, "M6 × 1", 0.9 },
  { "between M6 and 1/4, sound", HM_FEATURE_BOLT, 6.04, 0.0, FALSE, "M6 × 1", 0.5 },
  { "between M6 and 1/4, worn", HM_FEATURE_BOLT, 6.04, 0.0, TRUE, "1/4-20", 0.9 },
  { "M8 hole", HM_FEATURE_HOLE, 6.75, 1.25, FALSE, "M8 × 1.25", 0.9 },
  { "1/4-20 hole", HM_FEATURE_HOLE, 5.10, 1.27, FALSE, "1/4-20", 0.9 },
};

static const struct separate_row {
  const char *name, *first, *second;
  HmThreadProbe probe;
} separate_rows[] = {
  { "M8 and 5/16-18: count", "M8x1.25", "5/16-18", HM_PROBE_COUNT },
  { "M5 and No.10-32: diameter", "M5x0.8", "No.10-32", HM_PROBE_DIAMETER },
  { "M6 and M7: diameter", "M6x1", "M7x1", HM_PROBE_DIAMETER },
  { "M8x1 and M8x1.25: pitch gauge or count", "M8x1", "M8x1.25", HM_PROBE_GAUGE },
  { "a thread and itself: nothing", "M8x1.25", "M8x1.25", HM_PROBE_NONE },
};

static HmThreadMeasurement
measure (HmThreadFeature feature, double diameter, double pitch, gboolean worn)
{
  HmThreadMeasurement m = { .feature = feature, .diameter = { diameter }, .diameter_sd = hm_caliper_sd,
                            .pitch = { pitch }, .worn = worn };

  m.pitch_sd = hm_pitch_gauge_sd (m.pitch);
  return m;
}

static void
thread_is_identified (void **state)
{
  const struct identify_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmThreadMeasurement m = measure (row->feature, row->diameter, row->pitch, row->worn);
  g_autoptr (GArray) got = hm_thread_identify (&m, tables);
  HmThreadCandidate *first;

  assert_true (got->len > 0);
  first = &g_array_index (got, HmThreadCandidate, 0);
  if (strcmp (first->row->name, row->want) != 0 || first->probability < row->at_least)
    fail_msg ("%s with %.3f", first->row->name, first->probability);
}

static void
probabilities_add_up (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmThreadMeasurement m = measure (HM_FEATURE_BOLT, 7.88, 0.0, FALSE);
  g_autoptr (GArray) got = hm_thread_identify (&m, tables);
  double sum = 0.0;

  assert_true (got->len >= 3);
  for (guint i = 0; i < got->len; i++)
    {
      double p = g_array_index (got, HmThreadCandidate, i).probability;

      assert_true (i == 0 || p <= g_array_index (got, HmThreadCandidate, i - 1).probability);
      sum += p;
    }
  assert_true (sum <= 1.0 + 1e-9 && sum > 0.98);
}

static void
nothing_measured_gives_nothing (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmThreadMeasurement none = measure (HM_FEATURE_BOLT, 0.0, 0.0, FALSE);
  HmThreadMeasurement far_off = measure (HM_FEATURE_BOLT, 120.0, 9.0, FALSE);
  g_autoptr (GArray) got = hm_thread_identify (&none, tables);
  g_autoptr (GArray) far_got = hm_thread_identify (&far_off, tables);

  assert_int_equal (got->len, 0);
  assert_int_equal (far_got->len, 0);
}

/* Ten spaces of 5/16-18 are 14.11 mm; a rule read to 0.25 mm gives the pitch to 0.025 mm. */
static void
counted_threads_give_the_pitch (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmThreadMeasurement m = measure (HM_FEATURE_BOLT, 7.85, 0.0, FALSE);
  g_autoptr (GArray) got = NULL;

  hm_thread_measurement_count (&m, 10, (HmLength) { 14.0 }, hm_rule_sd);
  assert_true (fabs (m.pitch.mm - 1.4) < 1e-12 && fabs (m.pitch_sd.mm - 0.025) < 1e-12);
  got = hm_thread_identify (&m, tables);
  assert_string_equal (g_array_index (got, HmThreadCandidate, 0).row->name, "5/16-18");
}

/* A blunter instrument cannot make the answer surer. */
static void
blunt_instrument_is_less_sure (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmThreadMeasurement sharp = measure (HM_FEATURE_BOLT, 5.90, 0.0, FALSE), blunt = sharp;
  g_autoptr (GArray) first = NULL;
  g_autoptr (GArray) second = NULL;

  blunt.diameter_sd = hm_rule_sd;
  first = hm_thread_identify (&sharp, tables);
  second = hm_thread_identify (&blunt, tables);
  assert_true (g_array_index (second, HmThreadCandidate, 0).probability < g_array_index (first, HmThreadCandidate, 0).probability);
}

static void
best_probe_is_named (void **state)
{
  const struct separate_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmThread first, second;
  HmThreadSeparation got;

  assert_true (hm_thread_parse (row->first, NULL, &first, NULL));
  assert_true (hm_thread_parse (row->second, NULL, &second, NULL));
  got = hm_thread_separate (&first, &second, HM_FEATURE_BOLT, tables);
  assert_int_equal (got.probe, row->probe);
  if (got.probe != HM_PROBE_NONE)
    assert_true (got.deviations >= 2.0 && fabs (got.first.mm - got.second.mm) > 0.0);
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  HM_TEST_SUITE_ADD_ROWS (suite, identify_rows, thread_is_identified);
  HM_TEST_SUITE_ADD_ROWS (suite, separate_rows, best_probe_is_named);
  hm_test_suite_add (suite, "probabilities add up", probabilities_add_up, NULL);
  hm_test_suite_add (suite, "nothing measured gives nothing", nothing_measured_gives_nothing, NULL);
  hm_test_suite_add (suite, "counted threads give the pitch", counted_threads_give_the_pitch, NULL);
  hm_test_suite_add (suite, "a blunt instrument is less sure", blunt_instrument_is_less_sure, NULL);
  return hm_test_suite_run (suite, "identify");
}

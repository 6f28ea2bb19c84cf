/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Published facts about fasteners and torque, asked of the terminal program. Sources stand in the rows. */
#include "hm-test-vectors.h"
#include "hmt-answer.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

#define MM_PER_INCH 25.4
#define NM_PER_POUND_FOOT 1.3558179483314004
#define NM_PER_POUND_INCH (NM_PER_POUND_FOOT / 12.0)

/* One number of one answer. Tolerance: half of the last digit that the source prints. */
static const struct fact_row { const char *name, *arguments, *path; double want, tolerance; const char *source; } fact_rows[] = {
  { "11/32 in is 8.731 mm", "fit|11/32", "across_flats.value", 8.731, 0.0005, "1 in = 25.4 mm exactly" },
  { "1/2 in is 12.7 mm", "fit|hex 1/2 in", "across_flats.value", 12.7, 1e-9, "1 in = 25.4 mm exactly" },
  { "13 mm head at most 13 mm", "fit|13 mm", "head.high", 13.0, 1e-9, "ISO 4014, width across flats of M8" },
  { "11/32 in opening at least 0.347 in", "fit|11/32", "opening.low", 0.347 * MM_PER_INCH, 1e-6,
    "ASME B18.2.2 appendix, wrench openings" },
  { "T40 over the points", "fit|T40", "over_points.value", 6.75, 1e-9, "ISO 10664" },
  { "M8 stress area", "thread|M8 x 1.25", "stress_area.value", 36.6, 0.05, "ISO 898-1, coarse" },
  { "M8 bare is coarse", "thread|M8", "pitch.value", 1.25, 1e-9, "ISO 261" },
  { "1/4-20 stress area", "thread|1/4-20", "stress_area.value", 0.0318 * MM_PER_INCH * MM_PER_INCH, 0.033,
    "ASME B1.1, 0.0318 in2" },
  { "5/16-18 2A major max", "thread|5/16-18|--class|2A", "limits.0.major.high", 0.3113 * MM_PER_INCH, 0.00257,
    "ASME B1.1, tolerance formulas" },
  { "5/16-18 2B pitch max", "thread|5/16-18|--class|2B", "limits.0.pitch_diameter.high", 0.2817 * MM_PER_INCH, 0.00257,
    "ASME B1.1, tolerance formulas" },
  { "5/16-18 drill F", "thread|5/16-18", "holes.tap_drill.value", 0.2570 * MM_PER_INCH, 1e-6,
    "letter drill F, 0.2570 in; ASME B94.11M" },
  { "5/16-18 drill F, thread left", "thread|5/16-18", "holes.percent_of_thread.value", 0.769, 0.0012,
    "ASME B1.1, (d − drill) n / 1.299038" },
  { "M8 clearance hole, medium", "thread|M8", "holes.clearance_normal.value", 9.0, 1e-9, "ISO 273" },
  { "5/16-18 SAE 5 proof load", "torque|5/16-18|--class|SAE 5", "limits.proof_load.value", 4450 * 4.4482216152605,
    25.0 * 4.4482216152605,
    "SAE J429, proof load 4450 lbf (85 ksi on 0.0524 in2), in fifties" },
  { "straight adapter", "torque|3/8-16|--class|SAE 5|--given|40 lbf·ft|--adapter|4 in|--wrench-length|12 in|--angle|0",
    "adapter.setting.value",
    30.0 * NM_PER_POUND_FOOT, 0.01 * NM_PER_POUND_FOOT, "TM 9-2350-261-20-1, p. 2-29" },
  { "adapter at a right angle", "torque|3/8-16|--class|SAE 5|--given|40 lbf·ft|--adapter|4 in|--wrench-length|12 in|--angle|90°",
    "adapter.setting.value", 40.0 * NM_PER_POUND_FOOT, 0.01 * NM_PER_POUND_FOOT, "Navy training course 14008, figure 2-12: no change" },
  { "adapter pointing back",
    "torque|3/8-16|--class|SAE 5|--given|300 lbf·in|--adapter|4 in|--wrench-length|10 in|--angle|180 deg",
    "adapter.setting.value", 500.0 * NM_PER_POUND_INCH, 0.01 * NM_PER_POUND_INCH, "TM 1-1500-204-23-9, rule T L / (L - A)" },
};

static const struct word_row { const char *name, *arguments, *path, *want, *source; } word_rows[] = {
  { "5/16-18 is tapped with drill F", "thread|5/16-18", "holes.tap_drill_name", "F",
    "common tap drill charts: letter F, 77 % of thread by ASME B1.1" },
  { "the size itself fits", "fit|11/32|--on|11/32", "fit.verdict", "fits", "ASME B18.2.2, opening and nut of one size" },
  { "a smaller opening does not go on", "fit|5/16|--on|11/32", "fit.verdict", "will-not-go-on",
    "ASME B18.2.2: opening 0.322 in at most, nut 0.332 in at least" },
  { "a T45 key does not go into T40", "fit|T45|--on|T40", "fit.verdict", "will-not-go-on",
    "ISO 10664: 7.93 mm over the points, 6.75 mm" },
  { "a T40 key fits T40", "fit|T40|--on|T40", "fit.verdict", "fits", "ISO 10664" },
  { "a wrench below 20 % of its range", "torque|M6|--class|8.8|--given|10 N·m|--wrench|20-100 N·m", "wrench.verdict", "too large",
    "ISO 6789-1" },
  { "a wrench within its range", "torque|M6|--class|8.8|--given|10 N·m|--wrench|5-25 N·m|--wrench|20-100 N·m", "wrench.verdict",
    "good", "ISO 6789-1" },
};

/* Readings that lie in the middle of the limits of size of the wanted thread, ASME B1.1 2A and ISO 965-1 6g, and its basic pitch. */
static const struct identify_row { const char *name, *arguments, *want; } identify_rows[] = {
  { "5/16-18 by threads per inch", "identify|--outside|0.307 in|--tpi|18", "5/16-18" },
  { "M8 by pitch", "identify|--outside|7.866 mm|--pitch|1.25 mm", "M8 × 1.25" },
  { "M8 counted", "identify|--outside|7.866 mm|--count|10|--over|12.5 mm", "M8 × 1.25" },
  { "1/4-20", "identify|--outside|0.2449 in|--tpi|20", "1/4-20" },
  { "M6", "identify|--outside|5.884 mm|--pitch|1 mm", "M6 × 1" },
  { "5/16-18 hole, 2B 0.252 to 0.265 in", "identify|--inside|0.2585 in|--tpi|18", "5/16-18" },
};

/* Two threads of nearly the same size and unlike pitch jam: limits of size of ASME B1.1 2A/2B and ISO 965-1 6g/6H. */
static const struct pair_row { const char *name, *arguments, *other; } pair_rows[] = {
  { "M8 names 5/16-18", "thread|M8 x 1.25", "5/16-18" },
  { "5/16-18 names M8", "thread|5/16-18", "M8 × 1.25" },
  { "so does what was measured", "identify|--outside|7.866 mm|--pitch|1.25 mm", "5/16-18" },
};

static void
number_matches_source (void **state)
{
  const struct fact_row *row = *state;
  g_autoptr(JsonNode) answer = hmt_answer (row->arguments);
  double got = hmt_answer_number (answer, row->path);

  if (!(fabs (got - row->want) <= row->tolerance))
    fail_msg ("%s: got %.6f, want %.6f ± %.6f (%s)", row->name, got, row->want, row->tolerance, row->source);
}

static void
word_matches_source (void **state)
{
  const struct word_row *row = *state;
  g_autoptr(JsonNode) answer = hmt_answer (row->arguments);
  const char *got = hmt_answer_text (answer, row->path);

  if (!g_str_equal (got, row->want))
    fail_msg ("%s: got “%s”, want “%s” (%s)", row->name, got, row->want, row->source);
}

static void
thread_is_identified (void **state)
{
  const struct identify_row *row = *state;
  g_autoptr(JsonNode) answer = hmt_answer (row->arguments);

  assert_string_equal (hmt_answer_text (answer, "candidates.0.thread"), row->want);
  assert_true (hmt_answer_number (answer, "candidates.0.probability") > 0.9);
}

static void
near_miss_is_reported (void **state)
{
  const struct pair_row *row = *state;
  g_autoptr(JsonNode) answer = hmt_answer (row->arguments);

  if (hmt_answer_find (answer, "near_misses", "thread", row->other) < 0)
    fail_msg ("%s: %s is not among the near misses", row->name, row->other);
}

/* 1 in = 25.4 mm exactly: inch size less metric size, each as the program tells it. */
static void
sizes_differ_as_computed (void **state)
{
  const HmTestRow *row = *state;
  g_autofree char *inch = g_strdup_printf ("fit|%s in", hm_test_text (row, "inch"));
  g_autofree char *metric = g_strdup_printf ("fit|%s mm", hm_test_text (row, "metric"));
  g_autoptr(JsonNode) first = hmt_answer (inch);
  g_autoptr(JsonNode) second = hmt_answer (metric);

  hm_test_near (row, hmt_answer_number (first, "across_flats.value") - hmt_answer_number (second, "across_flats.value"),
                hm_test_number (row, "value"), hm_test_number (row, "tolerance"));
}

/* T = K F d with K = 0.20: the dry state. */
static void
torque_of_a_preload (void **state)
{
  const HmTestRow *row = *state;
  gboolean feet = strcmp (hm_test_text (row, "unit"), "lbf.ft") == 0;
  g_autofree char *arguments = g_strdup_printf ("torque|%s|--preload|%s lbf|--state|dry", hm_test_text (row, "thread"),
                                                hm_test_text (row, "preload_lbf"));
  g_autoptr(JsonNode) answer = hmt_answer (arguments);

  assert_true (fabs (hm_test_number (row, "nut_factor") - 0.2) < 1e-9);
  hm_test_near (row, hmt_answer_number (answer, "torque.target.value") / (feet ? NM_PER_POUND_FOOT : NM_PER_POUND_INCH),
                hm_test_number (row, "value"), hm_test_number (row, "tolerance"));
}

static void
dry_torque_matches_manual (void **state)
{
  const HmTestRow *row = *state;
  g_autofree char *arguments = g_strdup_printf ("torque|%s|--class|%s", hm_test_text (row, "thread"), hm_test_text (row,
                                                                                                                    "class"));
  g_autoptr(JsonNode) answer = hmt_answer (arguments);

  assert_string_equal (hm_test_text (row, "unit"), "lbf.ft");
  hm_test_near (row, hmt_answer_number (answer, "torque.target.value") / NM_PER_POUND_FOOT, hm_test_number (row, "value"),
                hm_test_number (row, "tolerance"));
}

/* Every bolt of a ring once, each followed by the one opposite: common practice of every crosswise order. */
static void
ring_is_tightened_crosswise (void **state)
{
  g_autoptr(JsonNode) answer = hmt_answer ("torque|5/16-18|--class|SAE 5|--bolts|8|--pattern|round");
  guint seen = 0;

  assert_int_equal (hmt_answer_length (answer, "order.sequence"), 8);
  for (guint i = 0; i < 8; i++)
    {
      g_autofree char *path = g_strdup_printf ("order.sequence.%u", i);
      seen |= 1u << (guint) hmt_answer_number (answer, path);
    }
  assert_int_equal (seen, 0x1fe);
  for (guint i = 0; i < 8; i += 2)
    {
      g_autofree char *path = g_strdup_printf ("order.sequence.%u", i);
      g_autofree char *next = g_strdup_printf ("order.sequence.%u", i + 1);
      assert_int_equal (abs ((int) hmt_answer_number (answer, path) - (int) hmt_answer_number (answer, next)), 4);
    }
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  HM_TEST_SUITE_ADD_ROWS (suite, fact_rows, number_matches_source);
  HM_TEST_SUITE_ADD_ROWS (suite, word_rows, word_matches_source);
  HM_TEST_SUITE_ADD_ROWS (suite, identify_rows, thread_is_identified);
  HM_TEST_SUITE_ADD_ROWS (suite, pair_rows, near_miss_is_reported);
  hm_test_suite_add_file (suite, "size-pairs.csv", NULL, sizes_differ_as_computed);
  hm_test_suite_add_file (suite, "nut-factor.csv", NULL, torque_of_a_preload);
  hm_test_suite_add_file (suite, "dry-torque.csv", NULL, dry_torque_matches_manual);
  hm_test_suite_add (suite, "a ring is tightened crosswise", ring_is_tightened_crosswise, NULL);
  return hm_test_suite_run (suite, "cli-reference");
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The plain numbers that fit, thread, identify and torque print for programs, against published values; that every quantity has
 * a unit and a provenance; and that the order of options, and a locale without UTF-8, change nothing. */
#include "hm-test-vectors.h"
#include "hmt-answer.h"
#include "hmt-command.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

#define MM_PER_INCH 25.4
#define NEWTON_PER_LBF 4.4482216152605
#define NM_PER_LBF_IN (NEWTON_PER_LBF * MM_PER_INCH / 1000.0)

/* Tolerance: half of the last digit that the source prints. */
static const struct fact_row { const char *name, *arguments, *path; double want, tolerance; const char *source; } fact_rows[] = {
  { "thread major_mm", "thread|M8", "major_mm", 8.0, 1e-9, "ISO 261" },
  { "thread pitch_mm", "thread|M8", "pitch_mm", 1.25, 1e-9, "ISO 261, coarse" },
  { "thread pitch_diameter_mm", "thread|M8", "pitch_diameter_mm", 7.188, 0.00051, "ISO 724" },
  { "thread minor_internal_mm", "thread|M8", "minor_internal_mm", 6.647, 0.00051, "ISO 724" },
  { "thread stress_area_mm2", "thread|M8", "stress_area_mm2", 36.6, 0.05, "ISO 898-1, coarse" },
  { "thread tap_drill_mm", "thread|5/16-18", "tap_drill_mm", 0.2570 * MM_PER_INCH, 1e-6, "letter drill F, 0.2570 in; ASME B94.11M" },
  { "thread major_mm, inch", "thread|1/2-13", "major_mm", 12.7, 1e-9, "1 in = 25.4 mm exactly" },
  { "thread pitch_mm, inch", "thread|1/2-13", "pitch_mm", MM_PER_INCH / 13.0, 1e-9, "1 in = 25.4 mm exactly" },
  { "thread stress_area_mm2, inch", "thread|1/2-13", "stress_area_mm2", 0.1419 * MM_PER_INCH * MM_PER_INCH, 0.033,
    "ASME B1.1, 0.1419 in2" },
  { "thread pitch_diameter_mm, inch", "thread|1/2-20", "pitch_diameter_mm", 0.4675 * MM_PER_INCH, 0.00127, "ASME B1.1, 0.4675 in" },
  { "thread minor_internal_mm, inch", "thread|1/2-20", "minor_internal_mm", 0.4459 * MM_PER_INCH, 0.00127, "ASME B1.1, 0.4459 in" },
  { "fit clearance_min_mm", "fit|11/32|--on|11/32", "matches.0.clearance_min_mm", (0.347 - 0.344) * MM_PER_INCH, 1e-6,
    "ASME B18.2.2: opening 0.347 to 0.353 in, nut 0.332 to 0.344 in" },
  { "fit clearance_max_mm", "fit|11/32|--on|11/32", "matches.0.clearance_max_mm", (0.353 - 0.332) * MM_PER_INCH, 1e-6,
    "ASME B18.2.2: opening 0.347 to 0.353 in, nut 0.332 to 0.344 in" },
  { "fit free_angle_deg", "fit|11/32|--on|11/32", "matches.0.free_angle_deg", 7.963, 0.0005,
    "arccos (s / e) - arccos (S / e), s 0.332 in and S 0.353 in of ASME B18.2.2, e = 1.13 s of ISO 4032" },
  { "torque_nm target, K given", "torque|3/4-16|--preload|25000 lbf|--nut-factor|0.2", "torque_nm.target", 3750.0 * NM_PER_LBF_IN,
    3.75 * NM_PER_LBF_IN, "Shigley's Mechanical Engineering Design, 9th ed., example 8-3, T = K F d" },
  { "torque_nm low, K given: no spread", "torque|3/4-16|--preload|25000 lbf|--nut-factor|0.2", "torque_nm.low",
    3750.0 * NM_PER_LBF_IN, 3.75 * NM_PER_LBF_IN, "Shigley's Mechanical Engineering Design, 9th ed., example 8-3, T = K F d" },
  { "torque_nm high, K given: no spread", "torque|3/4-16|--preload|25000 lbf|--nut-factor|0.2", "torque_nm.high",
    3750.0 * NM_PER_LBF_IN, 3.75 * NM_PER_LBF_IN, "Shigley's Mechanical Engineering Design, 9th ed., example 8-3, T = K F d" },
  { "preload_n", "torque|M8|--class|8.8|--nut-factor|0.2", "preload_n", 0.75 * 21200.0, 0.75 * 128.962,
    "ISO 898-1, proof load 21200 N; 75 %" },
  { "preload_n, share given", "torque|M8|--class|8.8|--share-of-proof|0.6", "preload_n", 0.6 * 21200.0, 0.6 * 128.962,
    "ISO 898-1, proof load 21200 N; 60 %" },
  { "preload_n, share in percent", "torque|M8|--class|8.8|--share-of-proof|60 %", "preload_n", 0.6 * 21200.0, 0.6 * 128.962,
    "ISO 898-1, proof load 21200 N; 60 %" },
  { "torque_nm target, class and K", "torque|M8|--class|8.8|--nut-factor|0.15", "torque_nm.target", 0.15 * 0.75 * 21200.0 * 0.008,
    0.15 * 0.75 * 128.962 * 0.008, "T = K F d, ISO 898-1, proof load 21200 N" },
  { "torque_nm target, a torque given", "torque|M8|--class|8.8|--given|20-24 N·m", "torque_nm.target", 22.0, 1e-9,
    "the middle of 20 to 24" },
  { "stress_share_of_proof", "torque|M8|--class|8.8|--share-of-proof|0.6", "stress_share_of_proof", 0.6, 1e-9, "as asked" },
  { "stress_share_of_proof, a torque given", "torque|M8|--class|8.8|--nut-factor|0.2|--given|16.96 N·m", "stress_share_of_proof",
    0.5, 0.5 * 128.962 / 21200.0, "T = K F d, ISO 898-1: 0.2 x 10600 N x 8 mm, half the proof load of 21200 N" },
};

static const struct word_row { const char *name, *arguments, *path, *want, *source; } word_rows[] = {
  { "metric designation", "thread|m8", "designation", "M8x1.25", "ISO 965-1, with the pitch of ISO 261" },
  { "inch designation", "thread|5/16-18", "designation", "5/16-18 UNC", "ASME B1.1" },
  { "fine inch designation", "thread|5/16-24", "designation", "5/16-24 UNF", "ASME B1.1" },
  { "left-hand designation", "thread|M8 LH", "designation", "M8x1.25-LH", "ISO 965-1" },
  { "pipe designation", "thread|1/8 NPT", "designation", "1/8-27 NPT", "ASME B1.20.1" },
  { "torque designation", "torque|1/2-13|--class|SAE 5", "designation", "1/2-13 UNC", "ASME B1.1" },
  { "candidate designation", "identify|--outside|0.307 in|--per-inch|18", "candidates.0.designation", "5/16-18 UNC", "ASME B1.1" },
  { "near miss designation", "identify|--outside|0.307 in|--per-inch|18", "near_misses.0.designation", "M8x1.25",
    "limits of size of ASME B1.1 and ISO 965-1" },
  { "the same by the older word", "identify|--outside|0.307 in|--tpi|18", "candidates.0.designation", "5/16-18 UNC", "ASME B1.1" },
  /* 6H: the minor diameter of the hole is 6.647 to 6.912 mm. A bolt of that outside is none of the series with this pitch. */
  { "a hole measured inside", "identify|--outside|6.75 mm|--hole|--pitch|1.25 mm", "candidates.0.designation", "M8x1.25",
    "ISO 965-1, 6H" },
  { "a hole, feature", "identify|--hole|--outside|6.75 mm|--pitch|1.25 mm", "measured.feature", "hole", "as asked" },
  { "driver", "fit|9 mm on 11/32", "matches.0.driver", "9 mm", "as asked" },
  { "verdict of the size itself", "fit|11/32|--on|11/32", "matches.0.verdict", "fits",
    "ASME B18.2.2, opening and nut of one size" },
  { "verdict of a key", "fit|T45|--on|T40", "matches.0.verdict", "will-not-go-on", "ISO 10664: 7.93 mm over the points, 6.75 mm" },
};

/* Not known, and said so: null. */
static const char * const null_rows[][2] = {
  { "thread|1/8 NPT", "stress_area_mm2" }, { "thread|1/8 NPT", "tap_drill_mm" }, { "thread|M8.5 x 1.1", "tap_drill_mm" },
  { "torque|M8|--class|8.8", "strip.margin" }, { "torque|M8|--preload|10 kN", "stress_share_of_proof" },
  { "fit|T40", "matches.0.clearance_min_mm" },
};

static const struct quantity_row { const char *name; } quantity_rows[] = {
  { "fit|11/32|--also" }, { "fit|9 mm on 11/32" }, { "fit|8.5 mm|--rounded" }, { "fit|T40|--also" }, { "fit|hex socket 5 mm" }, { "fit|E10" },
  { "thread|M8" }, { "thread|5/16-18" }, { "thread|1/8 NPT" }, { "thread|M8.5 x 1.1" },
  { "identify|--outside|7.9 mm|--per-inch|18" }, { "identify|--outside|90 mm|--pitch|7 mm" },
  { "torque|M8|--preload|10 kN" }, { "torque|M8|--class|8.8|--thread-friction|0.12|--head-friction|0.1" },
  { "torque|5/16-18|--class|SAE 5|--into|cast-aluminium|--engaged|12 mm|--adapter|4 in|--wrench-length|12 in|--wrench|5-25 N·m|--bolts|8|--pattern|cross" },
};

/* The same question in another order, or in a locale that knows only ASCII. */
static const struct same_row { const char *name, *one, *other; } same_rows[] = {
  { "thread: option first", "thread|M8|--class|6g|--json", "thread|--json|--class|6g|M8" },
  { "fit: option first", "fit|9 mm|--on|11/32|--json", "fit|--json|--on|11/32|9 mm" },
  { "torque: option first", "torque|M8|--class|8.8|--state|oiled|--json", "torque|--state|oiled|--class|8.8|--json|M8" },
  { "share, older word", "torque|M8|--class|8.8|--share-of-proof|0.5|--json", "torque|M8|--class|8.8|--share|50|--json" },
  { "--hole and --inside", "identify|--outside|6.7 mm|--hole|--json", "identify|--inside|6.7 mm|--json" },
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
unknown_is_null (void **state)
{
  const char * const *row = *state;
  g_autoptr(JsonNode) answer = hmt_answer (row[0]);
  g_auto(GStrv) names = g_strsplit (row[1], ".", -1);
  JsonNode *node = answer;

  for (guint i = 0; names[i] != NULL; i++)
    {
      node = JSON_NODE_HOLDS_ARRAY (node) ? json_array_get_element (json_node_get_array (node), 0)
                                          : json_object_get_member (json_node_get_object (node), names[i]);
      if (node == NULL)
        fail_msg ("%s has no %s", row[0], row[1]);
    }
  assert_true (json_node_is_null (node));
}

/* The table of heads has none for M22: there is no long form, and the refusal says what is accepted. */
static void
no_head_is_told (const char *arguments)
{
  g_autofree char *out = NULL, *err = NULL;
  int code;

  hmt_arguments_run (arguments, &code, &out, &err);
  assert_int_equal (code, 1);
  hmt_check_sentence (arguments, err);
  assert_non_null (strstr (err, "nut factor"));
}

/* Friction in the thread and under the head apart: preload and torque of the table, hexagon head. */
static void
torque_of_frictions_matches_source (void **state)
{
  const HmTestRow *row = *state;
  const char *mu = hm_test_text (row, "mu");
  g_autofree char *arguments = g_strdup_printf ("torque|%s|--preload|%s N|--thread-friction|%s|--head-friction|%s",
                                                hm_test_text (row, "thread"), hm_test_text (row, "preload"), mu, mu);
  g_autoptr(JsonNode) answer = NULL;

  if (g_str_has_prefix (hm_test_text (row, "thread"), "M22"))
    {
      no_head_is_told (arguments);
      return;
    }
  answer = hmt_answer (arguments);
  hm_test_near (row, hmt_answer_number (answer, "torque_nm.target"), hm_test_number (row, "torque"),
                hm_test_number (row, "torque_tolerance"));
}

/* ISO 898-1: M8 of class 8.8 breaks at 29200 N. Over the engaged length that is needed the hole holds just that. */
static void
strip_margin_reaches_the_breaking_load (void **state)
{
  g_autoptr(JsonNode) first = hmt_answer ("torque|M8|--class|8.8|--into|cast-aluminium|--engaged|12 mm");
  g_autofree char *needed = g_strdup_printf ("torque|M8|--class|8.8|--into|cast-aluminium|--engaged|%.6f mm",
                                             hmt_answer_number (first, "limits.needed.value"));
  g_autoptr(JsonNode) answer = hmt_answer (needed);

  assert_true (fabs (hmt_answer_number (answer, "strip.margin") * hmt_answer_number (answer, "preload_n") - 29200.0) < 139.9);
}

static void
probability_is_a_number (void **state)
{
  g_autoptr(JsonNode) answer = hmt_answer ("identify|--outside|7.866 mm|--pitch|1.25 mm|--accuracy|0.05 mm");
  double sum = 0.0;

  for (guint i = 0; i < hmt_answer_length (answer, "candidates"); i++)
    {
      g_autofree char *path = g_strdup_printf ("candidates.%u.probability", i);
      sum += hmt_answer_number (answer, path);
    }
  assert_true (hmt_answer_number (answer, "candidates.0.probability") > 0.9);
  assert_true (sum <= 1.0 + 1e-9);
}

static void check_quantities (JsonNode *node, const char *at);

static void
check_object (JsonObject *object, const char *at)
{
  g_autoptr(GList) names = json_object_get_members (object);

  if (json_object_has_member (object, "value") || json_object_has_member (object, "unit"))
    {
      if (!json_object_has_member (object, "unit") || json_object_get_string_member (object, "unit")[0] == '\0')
        fail_msg ("%s has no unit", at);
      if (!json_object_has_member (object, "provenance"))
        fail_msg ("%s has no provenance", at);
    }
  for (GList *l = names; l != NULL; l = l->next)
    {
      g_autofree char *path = g_strdup_printf ("%s.%s", at, (char *) l->data);
      check_quantities (json_object_get_member (object, l->data), path);
    }
}

static void
check_quantities (JsonNode *node, const char *at)
{
  if (JSON_NODE_HOLDS_OBJECT (node))
    check_object (json_node_get_object (node), at);
  else if (JSON_NODE_HOLDS_ARRAY (node))
    for (guint i = 0; i < json_array_get_length (json_node_get_array (node)); i++)
      check_quantities (json_array_get_element (json_node_get_array (node), i), at);
}

static void
quantities_have_unit_and_provenance (void **state)
{
  const struct quantity_row *row = *state;
  g_autoptr(JsonNode) answer = hmt_answer (row->name);

  check_quantities (answer, "answer");
  assert_true (strlen (hmt_answer_text (answer, "provenance")) > 0);
}

static void
answers_are_the_same (void **state)
{
  const struct same_row *row = *state;
  g_autofree char *one = NULL, *other = NULL, *one_err = NULL, *other_err = NULL;
  int one_code, other_code;

  hmt_arguments_run (row->one, &one_code, &one, &one_err);
  hmt_arguments_run (row->other, &other_code, &other, &other_err);
  if (one_code != 0 || other_code != 0)
    fail_msg ("%s: exit %d and %d; %s%s", row->name, one_code, other_code, one_err, other_err);
  assert_string_equal (one, other);
}

/* Units beyond ASCII come in and go out in the C locale too. */
static void
c_locale_keeps_utf8 (void **state)
{
  const char *argv[] = { "env", "LC_ALL=C", g_getenv ("HALFMOON_TEST_CLI"), "torque", "M8", "--class", "8.8", "--given", "20 N·m", "--json",
                         NULL };
  g_auto(HmtResult) result = hmt_command_run (argv, NULL, NULL);

  if (result.code != 0)
    fail_msg ("exit %d; %s", result.code, result.err);
  assert_non_null (strstr (result.out, "\"N·m\""));
  assert_non_null (strstr (result.out, "M8 × 1.25"));
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  HM_TEST_SUITE_ADD_ROWS (suite, fact_rows, number_matches_source);
  HM_TEST_SUITE_ADD_ROWS (suite, word_rows, word_matches_source);
  HM_TEST_SUITE_ADD_ROWS (suite, quantity_rows, quantities_have_unit_and_provenance);
  HM_TEST_SUITE_ADD_ROWS (suite, same_rows, answers_are_the_same);
  for (guint i = 0; i < G_N_ELEMENTS (null_rows); i++)
    hm_test_suite_add (suite, null_rows[i][1], unknown_is_null, null_rows[i]);
  hm_test_suite_add_file (suite, "joint.csv", "utilization", torque_of_frictions_matches_source);
  hm_test_suite_add (suite, "strip margin reaches the breaking load", strip_margin_reaches_the_breaking_load, NULL);
  hm_test_suite_add (suite, "probability is a number", probability_is_a_number, NULL);
  hm_test_suite_add (suite, "the C locale keeps UTF-8", c_locale_keeps_utf8, NULL);
  return hm_test_suite_run (suite, "cli-reference-plain");
}

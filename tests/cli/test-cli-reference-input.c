/* SPDX-License-Identifier: GPL-3.0-or-later */
/* fit, thread, identify and torque: help, wrong usage (exit 2), bad input (exit 1), and that text and JSON both come. */
#include "hmt-answer.h"
#include "hmt-command.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

static const struct help_row { const char *arguments, *says; } help_rows[] = {
  { "fit|--help", "--on" }, { "thread|--help", "--class" }, { "identify|-h", "--tpi" }, { "torque|--help", "--adapter" },
  { "fit|--help", "halfmoon-fit/1" }, { "thread|--help", "halfmoon-thread/1" }, { "identify|--help", "halfmoon-identify/1" },
  { "torque|--help", "halfmoon-torque/1" },
  { "identify|--help", "--per-inch" }, { "identify|--help", "--outside" }, { "identify|--help", "--hole" }, { "identify|--help", "near_misses" },
  { "torque|--help", "--nut-factor" }, { "torque|--help", "--thread-friction" }, { "torque|--help", "--head-friction" },
  { "torque|--help", "--share-of-proof" }, { "torque|--help", "stress_share_of_proof" }, { "torque|--help", "strips over the preload" },
  { "thread|--help", "tap_drill_mm" }, { "fit|--help", "free_angle_deg" },
};

static const char * const usage_rows[] = {
  "fit", "fit|11/32|9 mm", "fit|11/32|--worn|--painted", "fit|8 mm|--rounded|--on|9 mm", "fit|11/32|--colour", "fit|11/32|--on",
  "thread", "thread|M8|M9", "thread|M8|--pitch|1",
  "identify", "identify|M8", "identify|--outside|7.9 mm|--inside|6.8 mm", "identify|--count|10",
  "identify|--over|12.5 mm", "identify|--pitch|1 mm|--tpi|20", "identify|--pitch|1 mm|--per-inch|20", "identify|--outside", "identify|--hole", "identify|--tpi|20|--accuracy|rule", "identify|--tpi|20|--over-accuracy|rule",
  "torque", "torque|M8", "torque|M8|M9|--class|8.8", "torque|M8|--class|8.8|--preload|10 kN", "torque|M8|--class|8.8|--adapter|4 in",
  "torque|M8|--class|8.8|--wrench-length|12 in", "torque|M8|--class|8.8|--angle|90", "torque|M8|--class|8.8|--bolts|8",
  "torque|M8|--class|8.8|--pattern|round", "torque|M8|--class|8.8|--passes|two-pass", "torque|M8|--class|8.8|--given|20 N·m|--share|75",
  "torque|M8|--class|8.8|--given|20 N·m|--share-of-proof|0.75", "torque|M8|--class|8.8|--thread-friction|0.12",
  "torque|M8|--class|8.8|--head-friction|0.12", "torque|M8|--class|8.8|--state|dry|--nut-factor|0.2",
  "torque|M8|--class|8.8|--nut-factor|0.2|--thread-friction|0.12|--head-friction|0.12", "torque|M8|--preload|10 kN|--seat|flange",
};

/* @reads: what was read, which the sentence names; @accepts: part of what it says is accepted. */
static const struct input_row { const char *arguments, *reads, *accepts; } input_rows[] = {
  { "fit|banana", "banana", "11/32" },
  { "fit|", "Nothing", "11/32" },
  { "fit|0", "“0”", "0.7 mm" },
  { "fit|5 V", "5 V", "9 mm" },
  { "fit|\xff\xfe", "UTF-8", "11/32" },
  { "fit|T37", "T37", "T40" },
  { "fit|slot", "slot", "T40" },
  { "fit|M8", "M8", "11/32" },
  { "fit|11/32|--on|banana", "banana", "11/32" },
  { "fit|9 mm|--on|T40", "T40", "two T sizes" },
  { "fit|E10|--on|E12", "E12", "two T sizes" },
  { "fit|8.7 mm|--on|11/32", "8.7", "9" },
  { "fit|100 mm|--on|11/32", "100", "32" },
  { "fit|T40|--worn", "--worn", "11/32" },
  { "fit|T40|--rounded", "--rounded", "11/32" },
  { "fit|9 mm on 11/32|--on|3/8", "twice", "--on 11/32" },
  { "thread|banana", "banana", "M8 × 1.25" },
  { "thread|", "“”", "M8 × 1.25" },
  { "thread|\xff", "UTF-8", "M8 × 1.25" },
  { "thread|M8x9", "M8x9", "1/4-20" },
  { "thread|M8|--class|6e", "6e", "6g" },
  { "thread|M8|--class|2A", "2A", "6g" },
  { "thread|5/16-18|--class|6g", "6g", "1A to 3B" },
  { "thread|1/8 NPT|--class|2A", "pipe thread", "1/4-20" },
  { "identify|--outside|banana", "banana", "8 mm" },
  { "identify|--outside|7.9", "7.9", "mm" },
  { "identify|--outside|0 mm", "0 mm", "above zero" },
  { "identify|--inside|12 V", "12 V", "mm" },
  { "identify|--pitch|steep", "steep", "1.25" },
  { "identify|--tpi|0", "“0”", "4 to 80" },
  { "identify|--tpi|18.5", "18.5", "whole number" },
  { "identify|--count|0|--over|12 mm", "“0”", "from 1" },
  { "identify|--count|10|--over|long", "long", "8 mm" },
  { "identify|--outside|7.9 mm|--accuracy|wild", "wild", "caliper" },
  { "identify|--count|10|--over|12.5 mm|--over-accuracy|wild", "wild", "rule" },
  { "torque|banana|--class|8.8", "banana", "M8 × 1.25" },
  { "torque|M8|--class|SAE 99", "SAE 99", "8.8" },
  { "torque|M8|--class|8.8|--state|wet", "wet", "dry" },
  { "torque|M8|--class|8.8|--into|wood", "wood", "cast-aluminium" },
  { "torque|M8|--class|8.8|--into|plastic", "plastic", "cast-aluminium" },
  { "torque|M8|--class|8.8|--engaged|deep", "deep", "8 mm" },
  { "torque|M8|--class|8.8|--engaged|900 mm", "900 mm", "10 times" },
  { "torque|M8|--class|8.8|--seat|soft", "soft", "flange" },
  { "torque|M8|--class|8.8|--share|95 %", "95 %", "30–90" },
  { "torque|M8|--class|8.8|--share-of-proof|0.95", "0.95", "30–90" },
  { "torque|M8|--class|8.8|--share-of-proof|0.29", "0.29", "30–90" },
  { "torque|M8|--class|8.8|--share-of-proof|-0.5", "-0.5", "30–90" },
  { "torque|M8|--class|8.8|--share-of-proof|most", "most", "%" },
  { "torque|M8|--class|8.8|--nut-factor|0", "“0”", "0.2" },
  { "torque|M8|--class|8.8|--nut-factor|-0.2", "-0.2", "0.2" },
  { "torque|M8|--class|8.8|--nut-factor|slick", "slick", "0.2" },
  { "torque|M8|--class|8.8|--nut-factor|0.049", "0.049", "between 0.05 and 1" },
  { "torque|M8|--class|8.8|--nut-factor|1.01", "1.01", "between 0.05 and 1" },
  { "torque|M8|--class|8.8|--thread-friction|0|--head-friction|0.1", "“0”", "0.12" },
  { "torque|M8|--class|8.8|--thread-friction|0.1|--head-friction|slick", "slick", "0.12" },
  { "torque|M8|--class|8.8|--thread-friction|0.1|--head-friction|1.1", "1.1", "between 0.01 and 1" },
  { "torque|M8|--class|8.8|--thread-friction|0.009|--head-friction|0.1", "0.009", "between 0.01 and 1" },
  { "torque|M8.5 x 1.1|--preload|10 kN|--thread-friction|0.1|--head-friction|0.1", "0.1", "nut factor" },
  { "identify|--per-inch|0", "“0”", "4 to 80" },
  { "identify|--outside|wide|--hole", "wide", "8 mm" },
  { "torque|M8|--class|8.8|--given|tight", "tight", "lbf·ft" },
  { "torque|M8|--class|8.8|--given|0 N·m", "0 N·m", "above zero" },
  { "torque|M8|--preload|15", "15", "kN" },
  { "torque|M8|--preload|0 N", "0 N", "above zero" },
  { "torque|M8|--class|8.8|--adapter|4 in|--wrench-length|12 in|--angle|270", "270", "180" },
  { "torque|M8|--class|8.8|--adapter|14 in|--wrench-length|12 in|--angle|180", "14 in", "before the hand" },
  { "torque|M8|--class|8.8|--adapter|long|--wrench-length|12 in", "long", "8 mm" },
  { "torque|M8|--class|8.8|--bolts|80|--pattern|round", "80", "32" },
  { "torque|M8|--class|8.8|--bolts|8|--pattern|star", "star", "round" },
  { "torque|M8|--class|8.8|--bolts|8|--pattern|round|--passes|five", "five", "two-pass" },
  { "torque|M8|--class|8.8|--wrench|banana", "banana", "lbf·ft" },
};

static const struct answer_row { const char *arguments, *format, *says; } answer_rows[] = {
  { "fit|11/32", "halfmoon-fit/1", "8.731 mm" },
  { "fit|9 mm|--on|11/32|--also", "halfmoon-fit/1", "Clearance" },
  { "fit|hex 1/2 in|--also|--painted", "halfmoon-fit/1", "T40" },
  { "fit|8.5 mm|--rounded", "halfmoon-fit/1", "11/32 in" },
  { "fit|T40|--also", "halfmoon-fit/1", "6.750 mm" },
  { "fit|hex socket 5 mm|--also", "halfmoon-fit/1", "M6" },
  { "fit|E10", "halfmoon-fit/1", "E10" },
  { "thread|M8 x 1.25", "halfmoon-thread/1", "36.6 mm²" },
  { "thread|M8 LH", "halfmoon-thread/1", "LH" },
  { "thread|M8.5 x 1.1", "halfmoon-thread/1", "No series" },
  { "thread|1/8 NPT", "halfmoon-thread/1", "not its size" },
  { "identify|--outside|7.9 mm|--tpi|18|--worn", "halfmoon-identify/1", "5/16-18" },
  { "identify|--outside|6.04 mm", "halfmoon-identify/1", "To tell" },
  { "identify|--outside|90 mm|--pitch|7 mm", "halfmoon-identify/1", "No thread of the series" },
  { "identify|--hole|--tpi|18", "halfmoon-identify/1", "a hole" },
  { "identify|--outside|6.6 mm|--hole|--per-inch|18", "halfmoon-identify/1", "Inside, over the crests" },
  { "torque|M8|--class|8.8|--nut-factor|0.2", "halfmoon-torque/1", "Nut factor K: 0.2" },
  { "torque|M8|--class|8.8|--nut-factor|0.05", "halfmoon-torque/1", "Nut factor K" },
  { "torque|M8|--class|8.8|--nut-factor|1", "halfmoon-torque/1", "Nut factor K" },
  { "torque|M8|--class|8.8|--thread-friction|0.1|--head-friction|0.14", "halfmoon-torque/1", "Friction under the head: 0.14" },
  { "torque|M8|--class|8.8|--thread-friction|0.01|--head-friction|1", "halfmoon-torque/1", "Friction in the thread: 0.01" },
  { "torque|M8|--class|8.8|--into|cast-aluminium|--engaged|12 mm|--share-of-proof|0.9", "halfmoon-torque/1", "times the preload" },
  { "torque|5/16-18|--class|SAE 5|--into|cast-aluminium|--engaged|12 mm|--adapter|4 in|--wrench-length|12 in|--wrench|5-25 N·m|--bolts|8|--pattern|cross",
    "halfmoon-torque/1", "lbf·ft" },
  { "torque|M8|--class|8.8|--given|20-45 N·m|--into|die-cast-aluminium|--engaged|6 mm", "halfmoon-torque/1", "it may strip" },
  { "torque|3/4-16|--preload|25000 lbf", "halfmoon-torque/1", "T = K F d" },
};

static void
help_is_given (void **state)
{
  const struct help_row *row = *state;
  g_autofree char *out = NULL, *err = NULL;
  int code;

  hmt_arguments_run (row->arguments, &code, &out, &err);
  assert_int_equal (code, 0);
  assert_string_equal (err, "");
  assert_non_null (strstr (out, "Usage"));
  if (strstr (out, row->says) == NULL)
    fail_msg ("%s does not tell of %s", row->arguments, row->says);
}

static void
wrong_usage_is_refused (void **state)
{
  g_autofree char *out = NULL, *err = NULL;
  int code;

  hmt_arguments_run (*state, &code, &out, &err);
  if (code != 2)
    fail_msg ("%s: exit %d, 2 is wanted; %s", (const char *) *state, code, err);
  hmt_check_sentence (*state, err);
  assert_non_null (strstr (err, "--help"));
  assert_string_equal (out, "");
}

/* Numbers and units are joined by no-break spaces; here they count as spaces. */
static gboolean
holds (const char *text, const char *part)
{
  g_autoptr(GString) plain = g_string_new (text);

  g_string_replace (plain, "\302\240", " ", 0);
  return strstr (plain->str, part) != NULL;
}

static void
bad_input_is_named (void **state)
{
  const struct input_row *row = *state;
  g_autofree char *out = NULL, *err = NULL;
  int code;

  hmt_arguments_run (row->arguments, &code, &out, &err);
  if (code != 1)
    fail_msg ("%s: exit %d, 1 is wanted; %s", row->arguments, code, err);
  hmt_check_sentence (row->arguments, err);
  if (!holds (err, row->reads) || !holds (err, row->accepts))
    fail_msg ("%s: “%s” does not name “%s” and “%s”", row->arguments, err, row->reads, row->accepts);
  assert_string_equal (out, "");
}

static void
text_and_json_come (void **state)
{
  const struct answer_row *row = *state;
  g_autoptr(JsonNode) answer = hmt_answer (row->arguments);
  g_autofree char *out = NULL, *err = NULL;
  int code;

  assert_string_equal (hmt_answer_text (answer, "format"), row->format);
  assert_true (hmt_answer_length (answer, "cautions") >= 1);
  hmt_arguments_run (row->arguments, &code, &out, &err);
  assert_int_equal (code, 0);
  assert_string_equal (err, "");
  if (!holds (out, row->says))
    fail_msg ("%s does not say “%s”: %s", row->arguments, row->says, out);
  assert_true (holds (out, "The maker’s manual governs"));
}

int
main (void)
{
  struct CMUnitTest tests[G_N_ELEMENTS (help_rows) + G_N_ELEMENTS (usage_rows) + G_N_ELEMENTS (input_rows) + G_N_ELEMENTS (answer_rows)];
  guint n = 0;

  for (guint i = 0; i < G_N_ELEMENTS (help_rows); i++)
    tests[n++] = (struct CMUnitTest) { help_rows[i].says, help_is_given, .initial_state = (void *) &help_rows[i] };
  for (guint i = 0; i < G_N_ELEMENTS (usage_rows); i++)
    tests[n++] = (struct CMUnitTest) { usage_rows[i], wrong_usage_is_refused, .initial_state = (void *) usage_rows[i] };
  for (guint i = 0; i < G_N_ELEMENTS (input_rows); i++)
    tests[n++] = (struct CMUnitTest) { g_utf8_validate (input_rows[i].arguments, -1,
                                                        NULL) ? input_rows[i].arguments : "bytes that are no text",
                                       bad_input_is_named, .initial_state = (void *) &input_rows[i] };
  for (guint i = 0; i < G_N_ELEMENTS (answer_rows); i++)
    tests[n++] = (struct CMUnitTest) { answer_rows[i].arguments, text_and_json_come, .initial_state = (void *) &answer_rows[i] };
  return cmocka_run_group_tests_name ("cli-reference-input", tests, NULL, NULL);
}

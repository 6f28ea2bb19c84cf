/* SPDX-License-Identifier: GPL-3.0-or-later */
/* A whole diagnosis at the terminal, with answers from a pipe. */
#include "hmt-command.h"
#include "hmt-visit.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

/* What the program asks, in the order of this list. */
typedef enum { ASKS_HISTORY, ASKS_CAUTION, ASKS_ANSWER, ASKS_RESULT } Asks;
static const char * const prompts[] = {
  "Numbers, with commas between; nothing for none: ", "I have done this [y]: ", "Answer: ",
  "f  fixed   s  still there   d  different now   u  undo   q  stop: ", NULL
};

#define MAX_ANSWERS 400

/* Titles are printed whole; paragraphs may be wrapped. */
static void
expect_title (HmtTalk *talk, const char *title)
{
  g_autofree char *line = g_strconcat ("── ", title, " ", NULL);
  if (strstr (talk->said->str, line) == NULL)
    fail_msg ("“%s” is wanted here; this came: %s", title, talk->said->str);
}

static void
give_answer (HmtTalk *talk, HmtVisit *visit)
{
  HmtAnswer answer;

  if (!hmt_visit_next (visit, &answer))
    fail_msg ("the advice is to send the machine out");
  assert_int_not_equal (answer.kind, HMT_ANSWER_REPAIR);
  hmt_visit_take (visit, &answer);
  hmt_talk_answer (talk, answer.kind == HMT_ANSWER_READING ? answer.reading
                                                           : answer.check->findings[answer.finding_index].id);
}

static void
leads_to_the_fault (void **state)
{
  g_autoptr(HmtVisit) visit = hmt_visit_new ();
  g_autoptr(HmtTalk) talk = hmt_talk_start ("diagnose no-crank --layout rider");
  HmtAnswer answer;
  int asked;

  while ((asked = hmt_talk_listen (talk, prompts)) >= 0)
    switch ((Asks) asked)
      {
      case ASKS_HISTORY:
        hmt_talk_answer (talk, "");
        break;
      case ASKS_CAUTION:
        hmt_talk_answer (talk, "y");
        break;
      case ASKS_ANSWER:
        assert_true (hmt_visit_next (visit, &answer));
        if (answer.check == NULL)
          fail_msg ("a repair is due, a check was asked: %s", talk->said->str);
        give_answer (talk, visit);
        break;
      case ASKS_RESULT:
        assert_true (hmt_visit_next (visit, &answer));
        assert_int_equal (answer.kind, HMT_ANSWER_REPAIR);
        hmt_visit_take (visit, &answer);
        hmt_talk_answer (talk, answer.fixes ? "f" : "s");
        break;
      }
  assert_int_equal (hmt_talk_end (talk), 0);
  assert_true (hmt_visit_is_closed (visit));
  expect_title (talk, "Finished");
}

/* Each check asked is the one that the core suggests, by name. */
static void
asks_what_the_core_suggests (void **state)
{
  g_autoptr(HmtVisit) visit = hmt_visit_new ();
  g_autoptr(HmtTalk) talk = hmt_talk_start ("diagnose no-crank --layout rider");
  g_autoptr(GString) since = g_string_new (NULL);
  HmtAnswer answer;
  int asked;

  for (guint steps = 0; steps < 3 && (asked = hmt_talk_listen (talk, prompts)) >= 0;)
    {
      g_string_append (since, talk->said->str);
      if (asked == ASKS_RESULT)
        break;
      if (asked != ASKS_ANSWER)
        {
          hmt_talk_answer (talk, asked == ASKS_CAUTION ? "y" : "");
          continue;
        }
      assert_true (hmt_visit_next (visit, &answer));
      if (answer.check == NULL || strstr (since->str, answer.check->name) == NULL)
        fail_msg ("“%s” is due; this came: %s", answer.check != NULL ? answer.check->name : "a repair", since->str);
      g_string_truncate (since, 0);
      give_answer (talk, visit);
      steps++;
    }
}

/* "Not sure" for ever, and no repair that helps, still comes to an end. */
static void
ends_when_nothing_is_learnt (void **state)
{
  static const char * const answers[] = { "", "y", "c", "s" };
  g_autoptr(HmtTalk) talk = hmt_talk_start ("diagnose no-crank --layout rider");
  int asked;

  for (guint i = 0; i < MAX_ANSWERS && (asked = hmt_talk_listen (talk, prompts)) >= 0; i++)
    hmt_talk_answer (talk, answers[asked]);
  assert_int_equal (hmt_talk_end (talk), 0);
  expect_title (talk, "Finished");
}

static void
nonsense_is_explained_and_asked_again (void **state)
{
  const char *input = "\nbanana\n\n\n";
  g_auto(HmtResult) result = hmt_cli_run ("diagnose no-crank --layout rider", input);

  assert_int_equal (result.code, 1);             /* the answers end before the diagnosis does */
  assert_non_null (strstr (result.err, "Stopped before the complaint was fixed."));
  assert_non_null (strstr (result.err, "“banana” is none of these"));
}

static const struct broken_row { const char *name, *input; } broken_rows[] = {
  { "nothing at all", NULL },
  { "no line end", "no-crank" },
  { "not UTF-8", "\xff\xfe\xfd\n\n\n\xc3\x28\n" },
  { "control characters", "\x01\x02\x1b[31m\n\n\n\x07\n" },
};

static void
broken_input_ends_cleanly (void **state)
{
  const struct broken_row *row = *state;
  g_auto(HmtResult) result = hmt_cli_run ("diagnose", row->input);

  assert_int_equal (result.code, 1);
  assert_non_null (strstr (result.out, "What is wrong?"));
  assert_non_null (strstr (result.err, "Stopped before the complaint was fixed."));
}

static void
a_very_long_line_is_survived (void **state)
{
  g_autofree char *line = g_strnfill (3 * 1024 * 1024, 'a');
  g_auto(HmtResult) result = hmt_cli_run ("diagnose", line);

  assert_int_equal (result.code, 1);
  assert_true (strlen (result.err) < 20000);
}

int
main (void)
{
  struct CMUnitTest tests[G_N_ELEMENTS (broken_rows) + 5];
  guint n = 0;

  tests[n++] = (struct CMUnitTest) cmocka_unit_test (leads_to_the_fault);
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (asks_what_the_core_suggests);
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (ends_when_nothing_is_learnt);
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (nonsense_is_explained_and_asked_again);
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (a_very_long_line_is_survived);
  for (guint i = 0; i < G_N_ELEMENTS (broken_rows); i++)
    tests[n++] = (struct CMUnitTest) { broken_rows[i].name, broken_input_ends_cleanly,
                                       .initial_state = (void *) &broken_rows[i] };
  return cmocka_run_group_tests_name ("cli-diagnose", tests, NULL, NULL);
}

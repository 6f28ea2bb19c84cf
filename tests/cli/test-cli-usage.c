/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Help, wrong usage (exit 2), bad input (exit 1): one sentence each, nothing on standard output. */
#include "hmt-command.h"

#include <glib/gstdio.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

static const char * const help_rows[] = { "--help", "-h", "diagnose --help", "model --help", "advise --help", "advise -h" };

static const char * const usage_rows[] = {
  "",
  "explain",
  "--colour",
  "model",
  "model no-crank",
  "model no-crank cranks-no-start --layout rider",
  "model no-crank --layout",
  "model no-crank --speed 3",
  "advise",
  "advise one.json two.json",
  "advise --evidence",
  "diagnose no-crank governor-surge",
  "diagnose --layout",
};

/* FILE stands for a file with @content; what is NULL is not there. */
static const struct input_row { const char *name, *arguments, *content; gsize length; const char *says; } input_rows[] = {
  { "complaint nobody knows", "model nonsense --layout rider", NULL, 0, "nonsense" },
  { "layout nobody knows", "model no-crank --layout submarine", NULL, 0, "submarine" },
  { "diagnose a complaint nobody knows", "diagnose nonsense --layout rider", NULL, 0, "nonsense" },
  { "no such file", "advise /nowhere/at/all.json", NULL, 0, "/nowhere/at/all.json" },
  { "a folder", "advise /", NULL, 0, "/" },
  { "empty file", "advise FILE", "", 0, "FILE" },
  { "not JSON", "advise FILE", "banana", 6, "FILE" },
  { "a list", "advise FILE", "[1, 2]", 6, "FILE" },
  { "cut short", "advise FILE", "{\"model\": {\"format\": \"halfmoon-dia", 34, "FILE" },
  { "not UTF-8", "advise FILE", "{\"model\": \"\xff\xfe\"}", 15, "FILE" },
  { "zero bytes", "advise FILE", "\0\0\0\0\0\0\0\0", 8, "FILE" },
  { "another format", "advise FILE", "{\"format\": \"something/9\"}", 25, "FILE" },
  { "no causes", "advise FILE", "{\"format\": \"halfmoon-diagnosis/1\", \"mode\": \"single\"}", 52, "FILE" },
  { "text where a number belongs", "advise FILE",
    "{\"format\": \"halfmoon-diagnosis/1\", \"mode\": \"single\", \"complaint\": \"x\", \"causes\": [{\"id\": \"c1\", "
    "\"prior\": \"much\", \"repair_minutes\": 1, \"repair_access\": []}]}", 0, "FILE" },
  { "deep nesting", "advise FILE", NULL, 20000, "FILE" },
  { "17 MiB", "advise FILE", NULL, 17 * 1024 * 1024, "FILE" },
};

static const char * const evidence_rows[][2] = {
  { "a check nobody knows", "[{\"test\": \"t99\", \"outcome\": \"o1\"}]" },
  { "an outcome nobody knows", "[{\"test\": \"t1\", \"outcome\": \"purple\"}]" },
  { "an incident nobody knows", "[{\"incident\": \"meteor\"}]" },
  { "a repair of nothing known", "[{\"repair\": [\"c99\"], \"fixed\": false}]" },
  { "an event of no kind", "[{\"colour\": \"blue\"}]" },
  { "no list", "\"t1\"" },
  { "not JSON", "t1=o1" },
  { "empty", "" },
};

static void
help_is_given (void **state)
{
  g_auto(HmtResult) result = hmt_cli_run (*state, NULL);
  assert_int_equal (result.code, 0);
  assert_non_null (strstr (result.out, "Usage"));
  assert_non_null (strstr (result.out, "halfmoon-cli"));
  assert_string_equal (result.err, "");
}

static void
wrong_usage_is_refused (void **state)
{
  g_auto(HmtResult) result = hmt_cli_run (*state, NULL);
  assert_int_equal (result.code, 2);
  if (strlen (*state) == 0)
    return;                          /* nothing asked: the help itself is the answer */
  hmt_check_sentence (*state, result.err);
  assert_string_equal (result.out, "");
}

static void
write_content (const struct input_row *row, const char *path)
{
  g_autofree char *filled = NULL;
  gsize length = row->length > 0 || row->content == NULL ? row->length : strlen (row->content);

  if (row->content == NULL)
    filled = g_strnfill (length, length > 100000 ? ' ' : '[');
  assert_true (g_file_set_contents (path, row->content != NULL ? row->content : filled, length, NULL));
}

static GString *
fill_in (const char *arguments, const char *path)
{
  GString *line = g_string_new (arguments);
  g_string_replace (line, "FILE", path, 0);
  return line;
}

static void
bad_input_is_named (void **state)
{
  const struct input_row *row = *state;
  g_autofree char *folder = g_dir_make_tmp ("halfmoon-cli-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (folder, "in.json", NULL);
  g_autoptr(GString) arguments = fill_in (row->arguments, path);
  g_autoptr(GString) says = fill_in (row->says, path);
  g_auto(HmtResult) result = { 0 };

  if (strstr (row->arguments, "FILE") != NULL)
    write_content (row, path);
  result = hmt_cli_run (arguments->str, NULL);
  if (result.code != 1)
    fail_msg ("%s: exit %d, 1 is wanted; %s", row->name, result.code, result.err);
  hmt_check_sentence (row->name, result.err);
  if (strstr (result.err, says->str) == NULL)
    fail_msg ("%s: “%s” does not name “%s”", row->name, result.err, says->str);
  assert_string_equal (result.out, "");
  g_remove (path);
  g_rmdir (folder);
}

static void
bad_evidence_is_named (void **state)
{
  const char * const *row = *state;
  g_autofree char *folder = g_dir_make_tmp ("halfmoon-cli-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (folder, "evidence.json", NULL);
  g_autofree char *model = g_build_filename (g_getenv ("HALFMOON_TEST_VECTORS"), "diagnosis", "r01-small-single.json", NULL);
  const char *argv[] = { g_getenv ("HALFMOON_TEST_CLI"), "advise", model, "--evidence", path, NULL };
  g_auto(HmtResult) result = { 0 };

  assert_true (g_file_set_contents (path, row[1], -1, NULL));
  result = hmt_command_run (argv, NULL, NULL);
  if (result.code != 1)
    fail_msg ("%s: exit %d, 1 is wanted; %s%s", row[0], result.code, result.err, result.out);
  hmt_check_sentence (row[0], result.err);
  assert_non_null (strstr (result.err, path));
  assert_string_equal (result.out, "");
  g_remove (path);
  g_rmdir (folder);
}

static void
says_its_version (void **state)
{
  g_auto(HmtResult) result = hmt_cli_run ("--version", NULL);
  assert_int_equal (result.code, 0);
  assert_non_null (strstr (result.out, HALFMOON_VERSION));
}

/* Without a display app/start is the terminal program. */
static void
start_without_a_display (void **state)
{
  const char *no_display[] = { "DISPLAY", "WAYLAND_DISPLAY", NULL };
  const char *with[] = { g_getenv ("HALFMOON_TEST_START"), "--version", NULL };
  const char *without[] = { g_getenv ("HALFMOON_TEST_START"), NULL };
  g_auto(HmtResult) version = hmt_command_run (with, NULL, no_display);
  g_auto(HmtResult) asks = hmt_command_run (without, NULL, no_display);

  if (version.code != 0)
    fail_msg ("app/start --version: exit %d; %s", version.code, version.err);
  assert_non_null (strstr (version.out, "halfmoon-cli " HALFMOON_VERSION));
  assert_int_equal (asks.code, 1);             /* nobody answered */
  assert_non_null (strstr (asks.out, "What is wrong?"));
}

int
main (void)
{
  struct CMUnitTest tests[G_N_ELEMENTS (help_rows) + G_N_ELEMENTS (usage_rows) + G_N_ELEMENTS (input_rows) +
                          G_N_ELEMENTS (evidence_rows) + 2];
  guint n = 0;

  for (guint i = 0; i < G_N_ELEMENTS (help_rows); i++)
    tests[n++] = (struct CMUnitTest) { help_rows[i], help_is_given, .initial_state = (void *) help_rows[i] };
  for (guint i = 0; i < G_N_ELEMENTS (usage_rows); i++)
    tests[n++] = (struct CMUnitTest) { usage_rows[i][0] != '\0' ? usage_rows[i] : "no argument", wrong_usage_is_refused,
                                       .initial_state = (void *) usage_rows[i] };
  for (guint i = 0; i < G_N_ELEMENTS (input_rows); i++)
    tests[n++] = (struct CMUnitTest) { input_rows[i].name, bad_input_is_named, .initial_state = (void *) &input_rows[i] };
  for (guint i = 0; i < G_N_ELEMENTS (evidence_rows); i++)
    tests[n++] = (struct CMUnitTest) { evidence_rows[i][0], bad_evidence_is_named,
                                       .initial_state = (void *) evidence_rows[i] };
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (says_its_version);
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (start_without_a_display);
  return cmocka_run_group_tests_name ("cli-usage", tests, NULL, NULL);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
/* What goes wrong is said in one sentence, in the window, and nothing is lost. */
#include "hmt-bench.h"

#include <glib/gstdio.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <sqlite3.h>
#include <string.h>
#include <cmocka.h>

/* --- a knowledge file that cannot be used ------------------------------------------------------------------------ */

static void
leave_out (const char *from, const char *to)
{
}

static void
cut_short (const char *from, const char *to)
{
  g_autofree char *bytes = NULL;
  gsize n = 0;
  assert_true (g_file_get_contents (from, &bytes, &n, NULL));
  assert_true (g_file_set_contents (to, bytes, n / 2, NULL));
}

static void
write_nothing (const char *from, const char *to)
{
  assert_true (g_file_set_contents (to, "", 0, NULL));
}

static void
write_something_else (const char *from, const char *to)
{
  g_autofree char *text = g_strnfill (9000, 'x');
  assert_true (g_file_set_contents (to, text, -1, NULL));
}

static void
make_newer (const char *from, const char *to)
{
  g_autofree char *bytes = NULL;
  sqlite3 *db = NULL;
  gsize n = 0;
  assert_true (g_file_get_contents (from, &bytes, &n, NULL));
  assert_true (g_file_set_contents (to, bytes, n, NULL));
  assert_int_equal (sqlite3_open (to, &db), SQLITE_OK);
  assert_int_equal (sqlite3_exec (db, "PRAGMA user_version = 9999", NULL, NULL, NULL), SQLITE_OK);
  sqlite3_close (db);
}

static const struct file_row {
  const char *name;
  void (*spoil) (const char *from, const char *to);
  HmKnowledgeError code;
} file_rows[] = {
  { "missing", leave_out, HM_KNOWLEDGE_ERROR_MISSING },
  { "cut short", cut_short, HM_KNOWLEDGE_ERROR_DAMAGED },
  { "empty", write_nothing, HM_KNOWLEDGE_ERROR_DAMAGED },
  { "not a knowledge file", write_something_else, HM_KNOWLEDGE_ERROR_DAMAGED },
  { "made by a newer Halfmoon", make_newer, HM_KNOWLEDGE_ERROR_NEWER },
};

static void
a_bad_knowledge_file_is_named (void **state)
{
  const struct file_row *row = *state;
  g_autofree char *folder = g_dir_make_tmp ("halfmoon-data-XXXXXX", NULL);
  g_autofree char *from = g_build_filename (g_getenv ("HALFMOON_DATA_DIR"), "knowledge.db", NULL);
  g_autofree char *to = g_build_filename (folder, "knowledge.db", NULL);
  g_autofree char *variable = g_strconcat ("HALFMOON_DATA_DIR=", folder, NULL);
  g_autofree char *output = NULL;
  g_autoptr(HmKnowledge) knowledge = NULL;
  g_autoptr(GError) error = NULL;
  g_autoptr(HmtWindow) window = NULL;

  row->spoil (from, to);
  knowledge = hm_knowledge_open (to, &error);
  assert_null (knowledge);
  if (!g_error_matches (error, HM_KNOWLEDGE_ERROR, (int) row->code))
    fail_msg ("%s: got code %d: %s", row->name, error->code, error->message);
  window = hmt_bench_launch (variable);
  g_object_unref (hmt_window_wait_containing (window, error->message));
  hmt_window_quit (window);
  output = hmt_process_output (window->process);
  assert_string_equal (output, "");
  g_remove (to);
  g_rmdir (folder);
}

/* --- nonsense in the reading --------------------------------------------------------------------------------------- */

static const struct text_row { const char *name, *text; } text_rows[] = {
  { "nothing", "" },
  { "a word", "banana" },
  { "two numbers", "12 6 7" },
  { "another kind of unit", "12 lbf·ft" },
  { "an unknown unit", "12 furlongs" },
  { "not finite", "1e999" },
  { "markup", "<b>12</b> & \"V\"" },
  { "right to left and emoji", "١٢ 🔋" },
};

/* Goes on in window and mirror until the step is a reading. */
static void
go_to_a_reading (HmtVisit *visit, HmtWindow *window, HmtAnswer *answer)
{
  while (hmt_visit_next (visit, answer) && answer->kind != HMT_ANSWER_READING)
    {
      hmt_bench_answer (window, answer);
      hmt_visit_take (visit, answer);
    }
  assert_int_equal (answer->kind, HMT_ANSWER_READING);
  hmt_bench_wait_for_step (window, answer);
  hmt_bench_acknowledge (window);
}

static void
nonsense_in_the_reading_is_explained (void **state)
{
  g_autoptr(HmtVisit) visit = hmt_visit_new ();
  g_autoptr(HmtWindow) window = hmt_bench_launch (NULL);
  HmtAnswer answer;

  hmt_bench_begin (window, visit);
  go_to_a_reading (visit, window, &answer);
  for (guint i = 0; i < G_N_ELEMENTS (text_rows); i++)
    {
      g_autoptr(GError) error = NULL;
      g_autofree char *kept = NULL;
      HmQuantity quantity;

      assert_false (hm_quantity_parse (text_rows[i].text, answer.check->kind, answer.check->unit, &quantity, &error));
      hmt_window_enter (window, "Reading", text_rows[i].text);
      hmt_window_press (window, "Use this reading");
      g_object_unref (hmt_window_wait_containing (window, error->message));
      assert_true (hmt_window_shows_part (window, answer.check->name));   /* the same step */
      kept = hmt_window_read (window, "Reading");
      assert_string_equal (kept, text_rows[i].text);
    }
  hmt_window_enter (window, "Reading", answer.reading);                     /* and a good one is still taken */
  hmt_window_press (window, "Use this reading");
  hmt_visit_take (visit, &answer);
  assert_true (hmt_visit_next (visit, &answer));
  hmt_bench_wait_for_step (window, &answer);
}

/* --- folders that cannot be written ---------------------------------------------------------------------------------- */

#define NOWHERE "/proc/no-such-place"

static void
settings_that_cannot_be_kept_are_said (void **state)
{
  g_autoptr(HmtVisit) visit = hmt_visit_new ();
  g_autoptr(HmtWindow) window = hmt_bench_launch ("XDG_CONFIG_HOME=" NOWHERE);
  HmtAnswer answer;

  g_object_unref (hmt_window_wait_containing (window, NOWHERE));
  hmt_bench_begin (window, visit);                  /* and the work goes on */
  assert_true (hmt_visit_next (visit, &answer));
  hmt_bench_wait_for_step (window, &answer);
}

static void
a_shop_that_cannot_be_kept_is_said (void **state)
{
  g_autoptr(HmtVisit) visit = hmt_visit_new ();
  g_autoptr(HmtWindow) window = hmt_bench_launch ("HALFMOON_SHOP_DIR=" NOWHERE);
  HmtAnswer answer;

  g_object_unref (hmt_window_wait_containing (window, NOWHERE));
  hmt_bench_begin (window, visit);
  assert_true (hmt_visit_next (visit, &answer));
  hmt_bench_wait_for_step (window, &answer);
}

int
main (void)
{
  struct CMUnitTest tests[G_N_ELEMENTS (file_rows) + 3];
  guint n = 0;
  for (guint i = 0; i < G_N_ELEMENTS (file_rows); i++)
    tests[n++] = (struct CMUnitTest) { file_rows[i].name, a_bad_knowledge_file_is_named,
                                       .initial_state = (void *) &file_rows[i] };
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (nonsense_in_the_reading_is_explained);
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (settings_that_cannot_be_kept_are_said);
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (a_shop_that_cannot_be_kept_is_said);
  return cmocka_run_group_tests_name ("bad-input", tests, NULL, NULL);
}

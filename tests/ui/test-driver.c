/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The driver itself, on a small window: what the other tests rely on to see and to press. */
#include "hmt-window.h"

#include <glib/gstdio.h>

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <cmocka.h>

static int
open_fixture (void **state)
{
  const char *argv[] = { g_getenv ("HALFMOON_TEST_FIXTURE"), NULL };
  *state = hmt_window_launch (argv, NULL);
  return 0;
}

static int
close_fixture (void **state)
{
  hmt_window_free (*state);
  return 0;
}

static void
presses_each_kind_of_button (void **state)
{
  HmtWindow *window = *state;
  static const struct { const char *name, *said; } rows[] = {
    { "button", "pressed button" }, { "check", "on check" }, { "check", "off check" }, { "toggle", "on toggle" },
    { "one", "on one" },            { "two", "on two" },
  };
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      hmt_window_press (window, rows[i].name);
      g_object_unref (hmt_window_wait (window, ATSPI_ROLE_LABEL, rows[i].said));
    }
}

static void
takes_the_first_words_for_the_name (void **state)
{
  hmt_window_press (*state, "button below");
  g_object_unref (hmt_window_wait_containing (*state, "pressed button below: more words"));
}

static void
does_not_take_part_of_a_word_for_the_name (void **state)
{
  assert_true (hmt_window_shows (*state, "toggle"));
  assert_false (hmt_window_shows (*state, "tog"));
  assert_true (hmt_window_shows_part (*state, "tog"));
}

static void
types_and_reads (void **state)
{
  g_autofree char *text = NULL;
  hmt_window_enter (*state, "entry", "12,6 µV ½");
  g_object_unref (hmt_window_wait (*state, ATSPI_ROLE_LABEL, "typed 12,6 µV ½"));
  text = hmt_window_read (*state, "entry");
  assert_string_equal (text, "12,6 µV ½");
}

static void
works_by_keyboard_alone (void **state)
{
  HmtWindow *window = *state;
  hmt_window_tab_to (window, "toggle");
  hmt_window_key (window, "space");
  g_object_unref (hmt_window_wait (window, ATSPI_ROLE_LABEL, "on toggle"));
  hmt_window_tab_to (window, "two");
  hmt_window_key (window, "space");
  g_object_unref (hmt_window_wait (window, ATSPI_ROLE_LABEL, "on two"));
  hmt_window_tab_to (window, "entry");
  assert_true (hmt_screen_type (window->screen, "0.42 Ω°A"));
  g_object_unref (hmt_window_wait (window, ATSPI_ROLE_LABEL, "typed 0.42 Ω°A"));
}

static void
sees_only_the_page_shown (void **state)
{
  assert_false (hmt_window_shows (*state, "on the second page"));
  hmt_window_press (*state, "turn the page");
  g_object_unref (hmt_window_wait_pressable (*state, "on the second page"));
  hmt_window_wait_gone (*state, "check");
}

static void
saves_a_picture (void **state)
{
  HmtWindow *window = *state;
  g_autofree char *path = g_build_filename (g_get_tmp_dir (), "halfmoon-test-shot.png", NULL);
  g_autofree char *bytes = NULL;
  g_autoptr(GError) error = NULL;
  gsize n = 0;

  if (!hmt_screen_save (window->screen, window->window, path, &error))
    hmt_window_fail (window, "%s", error->message);
  assert_true (g_file_get_contents (path, &bytes, &n, NULL));
  assert_true (n > 500);
  assert_memory_equal (bytes, "\x89PNG", 4);   /* PNG specification, 5.2 signature */
  g_remove (path);
}

static void
quits_by_key (void **state)
{
  hmt_window_quit (*state);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test_setup_teardown (presses_each_kind_of_button, open_fixture, close_fixture),
    cmocka_unit_test_setup_teardown (takes_the_first_words_for_the_name, open_fixture, close_fixture),
    cmocka_unit_test_setup_teardown (does_not_take_part_of_a_word_for_the_name, open_fixture, close_fixture),
    cmocka_unit_test_setup_teardown (types_and_reads, open_fixture, close_fixture),
    cmocka_unit_test_setup_teardown (works_by_keyboard_alone, open_fixture, close_fixture),
    cmocka_unit_test_setup_teardown (sees_only_the_page_shown, open_fixture, close_fixture),
    cmocka_unit_test_setup_teardown (saves_a_picture, open_fixture, close_fixture),
    cmocka_unit_test_setup_teardown (quits_by_key, open_fixture, close_fixture),
  };
  return cmocka_run_group_tests_name ("driver", tests, NULL, NULL);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The window in a language that nobody speaks: English with é for e and ö for o (tests/po/gather). Whatever is shown with a
 * plain e or o has not been through the catalogue. */
#include "hmt-bench.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

/* As the catalogue has it. */
static char *
in_language (const char *english)
{
  GString *text = g_string_new (english);
  g_string_replace (text, "e", "é", 0);
  g_string_replace (text, "o", "ö", 0);
  return g_string_free (text, FALSE);
}

static void
press (HmtWindow *window, const char *english)
{
  g_autofree char *name = in_language (english);
  hmt_window_press (window, name);
}

/* What our catalogue has no say in: our name, and GTK's own parts, with the words it gives them. */
static gboolean
stays (const char *word)
{
  static const char * const gtk_words[] = { "Minimize", "Maximize", "Close", NULL };
  return g_str_has_prefix (word, "Gtk") || g_str_has_prefix (word, "Hmui") || g_str_has_prefix (word, "Halfmoon") ||
         g_str_has_prefix (word, "halfmoon") || g_strv_contains (gtk_words, word);
}

/* The words of the tree that are plain English. (transfer full) */
static GString *
plain_words (HmtWindow *window)
{
  g_autofree char *tree = hmt_tree_dump (window->application);
  g_auto(GStrv) lines = g_strsplit (tree, "\n", -1);
  GString *found = g_string_new (NULL);

  for (guint i = 0; lines[i] != NULL; i++)
    {
      const char *from = strstr (lines[i], "“"), *to = g_strrstr (lines[i], "”");
      g_autofree char *name = from != NULL && to != NULL ? g_strndup (from + 3, to - from - 3) : g_strdup ("");
      g_auto(GStrv) words = g_strsplit_set (name, " \t\n", -1);
      for (guint k = 0; words[k] != NULL; k++)
        if (strpbrk (words[k], "eo") != NULL && !stays (words[k]))
          {
            g_string_append_printf (found, "“%s” in “%s”\n", words[k], name);
            break;
          }
    }
  return found;
}

static void
expect_no_plain_words (HmtWindow *window, const char *where)
{
  g_autoptr(GString) found = plain_words (window);
  if (found->len > 0)
    fail_msg ("%s: not translated:\n%s", where, found->str);
}

/* Gathers the catalogue and makes the language, in a folder of its own. (transfer full) */
static char *
make_language (void)
{
  char *folder = g_dir_make_tmp ("halfmoon-locale-XXXXXX", NULL);
  g_autofree char *catalogue = g_build_filename (folder, "all.pot", NULL);
  const char *argv[] = { g_getenv ("HALFMOON_TEST_GATHER"), g_getenv ("HALFMOON_TEST_SOURCE"),
                         g_getenv ("HALFMOON_TEST_BUILD"), catalogue, folder, NULL };
  g_autoptr(GError) error = NULL;
  g_autoptr(HmtProcess) gather = hmt_process_start (argv, NULL, &error);

  if (gather == NULL)
    fail_msg ("%s", error->message);
  if (hmt_process_wait (gather, 120000) != 0)
    {
      g_autofree char *output = hmt_process_output (gather);
      fail_msg ("the language cannot be made: %s", output);
    }
  return folder;
}

static HmtWindow *
launch (void)
{
  const char *argv[] = { g_getenv ("HALFMOON_TEST_PROGRAM"), NULL };
  g_autofree char *folder = g_dir_make_tmp ("halfmoon-shop-XXXXXX", NULL);
  g_autofree char *shop = g_strconcat ("HALFMOON_SHOP_DIR=", folder, NULL);
  g_autofree char *language = make_language ();
  g_autofree char *locale = g_strconcat ("HALFMOON_LOCALE_DIR=", language, NULL);
  const char *environment[] = { shop, locale, "LANGUAGE=xx", NULL };
  return hmt_window_launch (argv, environment);
}

static void
every_word_is_translated (void **state)
{
  g_autoptr(HmtVisit) visit = hmt_visit_new ();
  g_autoptr(HmtWindow) window = launch ();
  g_autofree char *title = NULL;
  HmtAnswer answer;

  press (window, hmt_visit_complaint (visit));
  press (window, hmt_visit_layout (visit));
  expect_no_plain_words (window, "the complaint");
  press (window, "Start");
  assert_true (hmt_visit_next (visit, &answer));
  title = in_language (answer.title);
  g_object_unref (hmt_window_wait (window, ATSPI_ROLE_HEADING, title));
  expect_no_plain_words (window, "the first step");
}

int
main (void)
{
  const struct CMUnitTest tests[] = { cmocka_unit_test (every_word_is_translated) };
  return cmocka_run_group_tests_name ("language", tests, NULL, NULL);
}

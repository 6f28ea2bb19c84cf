/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The search from everywhere: the whole window. */
#include "hmui-style.h"
#include "hmui-window.h"

#include <glib/gstdio.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

#define NBSP "\302\240"
#define LIMIT_MS 5000
#define QUIET_MS 400             /* what is still read from disk comes within it */

typedef struct { HmuiSettings *settings; HmuiShop *shop; GtkWidget *window; char *folder; } Bench;

static int
open_bench (void **state)
{
  Bench *bench = g_new0 (Bench, 1);

  bench->folder = g_dir_make_tmp ("halfmoon-XXXXXX", NULL);
  bench->settings = hmui_settings_new ();
  bench->shop = hmui_shop_new (bench->folder);
  bench->window = hmui_window_new (NULL, bench->settings, bench->shop);
  gtk_window_present (GTK_WINDOW (bench->window));
  gtk_test_widget_wait_for_draw (bench->window);
  *state = bench;
  return 0;
}

static int
close_bench (void **state)
{
  Bench *bench = *state;
  g_autoptr(GDir) dir = NULL;
  const char *name;

  gtk_window_destroy (GTK_WINDOW (bench->window));
  hmui_shop_flush (bench->shop);
  while (g_main_context_iteration (NULL, FALSE))
    ;
  g_object_unref (bench->shop);
  g_object_unref (bench->settings);
  dir = g_dir_open (bench->folder, 0, NULL);
  while ((name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *path = g_build_filename (bench->folder, name, NULL);

      g_unlink (path);
    }
  g_rmdir (bench->folder);
  g_free (bench->folder);
  g_free (bench);
  return 0;
}

/* The first mapped widget below @root of a type, whose text or label is @text; NULL for any. */
static GtkWidget *
find (GtkWidget *root, GType type, const char *text)
{
  const char *has = GTK_IS_LABEL (root) ? gtk_label_get_text (GTK_LABEL (root)) : GTK_IS_EDITABLE (root)
                    ? gtk_editable_get_text (GTK_EDITABLE (root)) : "";

  if (!gtk_widget_get_mapped (root))
    return NULL;
  if (g_type_is_a (G_OBJECT_TYPE (root), type) && (text == NULL || strcmp (text, has) == 0))
    return root;
  for (GtkWidget *child = gtk_widget_get_first_child (root); child != NULL; child = gtk_widget_get_next_sibling (child))
    {
      GtkWidget *found = find (child, type, text);

      if (found != NULL)
        return found;
    }
  return NULL;
}

static GtkWidget *
wait_for (Bench *bench, GType type, const char *text)
{
  gint64 until = g_get_monotonic_time () + LIMIT_MS * 1000;
  GtkWidget *found;

  while ((found = find (bench->window, type, text)) == NULL && g_get_monotonic_time () < until)
    if (!g_main_context_iteration (NULL, FALSE))
      g_usleep (2000);
  if (found == NULL)
    fail_msg ("no %s “%s” is shown", g_type_name (type), text);
  return found;
}

static void
pass_time (void)
{
  gint64 until = g_get_monotonic_time () + QUIET_MS * 1000;

  while (g_get_monotonic_time () < until)
    if (!g_main_context_iteration (NULL, FALSE))
      g_usleep (2000);
}

static void
assert_focus_in (Bench *bench, GtkWidget *widget)
{
  GtkWidget *focus = gtk_root_get_focus (GTK_ROOT (bench->window));

  if (focus == NULL || (focus != widget && !gtk_widget_is_ancestor (focus, widget)))
    fail_msg ("the focus is on %s", focus != NULL ? G_OBJECT_TYPE_NAME (focus) : "nothing");
}

static void
assert_all_selected (GtkWidget *search)
{
  int from = -1, to = -1;

  assert_true (gtk_editable_get_selection_bounds (GTK_EDITABLE (search), &from, &to));
  assert_int_equal (from, 0);
  assert_int_equal (to, g_utf8_strlen (gtk_editable_get_text (GTK_EDITABLE (search)), -1));
}

static void
search_is_reached_from_another_place (void **state)
{
  Bench *bench = *state;
  GtkWidget *search;

  pass_time ();
  assert_null (find (bench->window, GTK_TYPE_SEARCH_ENTRY, NULL));
  assert_true (gtk_widget_activate_action (bench->window, "win.search", NULL));
  search = wait_for (bench, GTK_TYPE_SEARCH_ENTRY, NULL);
  assert_focus_in (bench, search);
  gtk_editable_set_text (GTK_EDITABLE (search), "11/32");
  wait_for (bench, GTK_TYPE_LABEL, "11/32" NBSP "in (8.73" NBSP "mm)");
  assert_true (gtk_widget_activate_action (bench->window, "win.torque", "s", ""));
  assert_null (find (bench->window, GTK_TYPE_SEARCH_ENTRY, NULL));
  assert_true (gtk_widget_activate_action (bench->window, "win.search", NULL));
  assert_focus_in (bench, search);
  assert_all_selected (search);
}

static void
torque_is_taken_over (void **state)
{
  Bench *bench = *state;

  pass_time ();
  assert_true (gtk_widget_activate_action (bench->window, "win.torque", "s", "45 lbf·ft"));
  assert_focus_in (bench, wait_for (bench, GTK_TYPE_ENTRY, "45 lbf·ft"));
  wait_for (bench, GTK_TYPE_LABEL, "45" NBSP "lbf·ft");
}

/* What Diagnose still reads when another place has been opened must not take the focus there. */
static void
rail_right_after_start_keeps_the_focus (void **state)
{
  Bench *bench = *state;
  GtkListBox *rail = GTK_LIST_BOX (wait_for (bench, GTK_TYPE_LIST_BOX, NULL));

  gtk_root_set_focus (GTK_ROOT (bench->window), NULL);   /* Diagnose has not been read: nothing has the focus yet */
  g_signal_emit_by_name (rail, "row-activated", gtk_list_box_get_row_at_index (rail, 1));
  assert_focus_in (bench, wait_for (bench, GTK_TYPE_SEARCH_ENTRY, NULL));
  pass_time ();
  assert_focus_in (bench, wait_for (bench, GTK_TYPE_SEARCH_ENTRY, NULL));
}

#define BENCH_TEST(function) cmocka_unit_test_setup_teardown (function, open_bench, close_bench)

int
main (void)
{
  const struct CMUnitTest tests[] = {
    BENCH_TEST (search_is_reached_from_another_place),
    BENCH_TEST (torque_is_taken_over),
    BENCH_TEST (rail_right_after_start_keeps_the_focus),
  };

  gtk_init ();
  g_object_set (gtk_settings_get_default (), "gtk-enable-animations", FALSE, "gtk-cursor-blink", FALSE, NULL);
  hmui_style_attach (gdk_display_get_default (), "/local/halfmoon/Halfmoon/gallery/style.css");
  return cmocka_run_group_tests_name ("search", tests, NULL, NULL);
}

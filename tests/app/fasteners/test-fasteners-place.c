/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The place Fasteners in a window of its own. */
#include "hmui-fasteners-place.h"
#include "hmui-answer-line.h"
#include "hmui-place.h"
#include "hmui-size-drawing.h"
#include "hmui-style.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

#define NBSP "\302\240"
#define LIMIT_MS 5000
#define LEAST_TARGET_PX 44.0f

typedef struct { HmuiSettings *settings; GtkWidget *window, *place; } Bench;

static int
open_bench (void **state)
{
  Bench *bench = g_new0 (Bench, 1);

  bench->settings = hmui_settings_new ();
  bench->window = gtk_window_new ();
  bench->place = hmui_fasteners_place_new (bench->settings);
  gtk_widget_add_css_class (bench->window, "halfmoon");
  gtk_window_set_decorated (GTK_WINDOW (bench->window), FALSE);
  gtk_window_set_default_size (GTK_WINDOW (bench->window), 1000, 700);
  gtk_window_set_child (GTK_WINDOW (bench->window), bench->place);
  gtk_window_present (GTK_WINDOW (bench->window));
  gtk_test_widget_wait_for_draw (bench->window);
  *state = bench;
  return 0;
}

static int
close_bench (void **state)
{
  Bench *bench = *state;
  g_autoptr(GtkWidget) place = g_object_ref (bench->place);

  gtk_window_destroy (GTK_WINDOW (bench->window));
  while (g_main_context_iteration (NULL, FALSE))
    ;
  g_assert_finalize_object (g_steal_pointer (&place));
  g_object_unref (bench->settings);
  g_free (bench);
  return 0;
}

/* The first widget below @root, shown, that @found accepts. */
typedef gboolean (*Accept) (GtkWidget *widget, const char *text);

static GtkWidget *
find (GtkWidget *root, Accept accept, const char *text)
{
  if (!gtk_widget_get_mapped (root))
    return NULL;
  if (accept (root, text))
    return root;
  for (GtkWidget *child = gtk_widget_get_first_child (root); child != NULL; child = gtk_widget_get_next_sibling (child))
    {
      GtkWidget *found = find (child, accept, text);

      if (found != NULL)
        return found;
    }
  return NULL;
}

static gboolean
is_label (GtkWidget *widget, const char *text)
{
  return GTK_IS_LABEL (widget) && strstr (gtk_label_get_text (GTK_LABEL (widget)), text) != NULL;
}

static gboolean
is_button (GtkWidget *widget, const char *text)
{
  return GTK_IS_BUTTON (widget) && find (widget, is_label, text) != NULL;
}

static gboolean
is_search (GtkWidget *widget, const char *text)
{
  return GTK_IS_SEARCH_ENTRY (widget);
}

static gboolean
is_table (GtkWidget *widget, const char *text)
{
  return GTK_IS_COLUMN_VIEW (widget);
}

static GtkWidget *
wait_for (Bench *bench, Accept accept, const char *text)
{
  gint64 until = g_get_monotonic_time () + LIMIT_MS * 1000;
  GtkWidget *found;

  while ((found = find (bench->place, accept, text)) == NULL && g_get_monotonic_time () < until)
    if (!g_main_context_iteration (NULL, FALSE))
      g_usleep (2000);
  if (found == NULL)
    fail_msg ("“%s” is not shown", text);
  return found;
}

static void
type (Bench *bench, const char *text)
{
  gtk_editable_set_text (GTK_EDITABLE (wait_for (bench, is_search, "the search")), text);
}

static void
search_11_32_shows_the_9_mm_verdict (void **state)
{
  Bench *bench = *state;
  GtkWidget *line;

  type (bench, "11/32");
  wait_for (bench, is_label, "Nearest metric size: 9" NBSP "mm socket, usable.");
  line = gtk_widget_get_ancestor (wait_for (bench, is_button, "9" NBSP "mm socket"), HMUI_TYPE_ANSWER_LINE);
  assert_non_null (find (line, is_label, "usable"));
  assert_non_null (find (line, is_label, "Clearance"));
  assert_non_null (find (line, is_label, "common practice"));
}

static void
nonsense_shows_the_sentence (void **state)
{
  Bench *bench = *state;

  type (bench, "banana");
  wait_for (bench, is_label, "“banana” is no size of a tool or a thread; write a size such as 11/32");
  assert_null (find (bench->place, is_button, "9" NBSP "mm socket"));
}

static void
example_is_looked_up_and_whereabouts_say_so (void **state)
{
  Bench *bench = *state;
  g_autofree char *before = hmui_place_dup_whereabouts (HMUI_PLACE (bench->place));
  g_autofree char *after = NULL;

  assert_string_equal (before, "Fasteners");
  g_signal_emit_by_name (wait_for (bench, is_button, "T40"), "clicked");
  wait_for (bench, is_label, "Right tool: T40 bit.");
  after = hmui_place_dup_whereabouts (HMUI_PLACE (bench->place));
  assert_string_equal (after, "Fasteners · T40");
  g_signal_emit_by_name (wait_for (bench, is_button, "1/2" NBSP "in hex"), "clicked");
  wait_for (bench, is_label, "Right tool: 1/2" NBSP "in socket or wrench.");
}

static void
bolt_is_identified_on_its_page (void **state)
{
  Bench *bench = *state;

  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (wait_for (bench, is_button, "What is this bolt?")), TRUE);
  wait_for (bench, is_label, "Measure the diameter, the pitch, or both.");
}

static void
tables_open_and_lead_back (void **state)
{
  Bench *bench = *state;

  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (wait_for (bench, is_button, "Tables")), TRUE);
  g_signal_emit_by_name (wait_for (bench, is_table, "a table"), "activate", 0u);
  wait_for (bench, is_label, "ISO metric, coarse pitch");
}

/* Every button and entry in sight can be hit with a gloved finger. */
static void
check_target (GtkWidget *widget)
{
  gboolean target = GTK_IS_BUTTON (widget) || GTK_IS_SEARCH_ENTRY (widget) || GTK_IS_MENU_BUTTON (widget) || GTK_IS_DROP_DOWN (widget);

  graphene_rect_t bounds;

  if (!gtk_widget_get_mapped (widget))
    return;
  if (target && gtk_widget_compute_bounds (widget, widget, &bounds) && bounds.size.height < LEAST_TARGET_PX)
    fail_msg ("%s is %.0f px high", G_OBJECT_TYPE_NAME (widget), bounds.size.height);
  if (target)
    return;
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child))
    check_target (child);
}

static gboolean
is_filter (GtkWidget *widget, const char *text)
{
  g_autofree char *placeholder = NULL;

  if (!GTK_IS_SEARCH_ENTRY (widget))
    return FALSE;
  g_object_get (widget, "placeholder-text", &placeholder, NULL);
  return strcmp (placeholder, text) == 0;
}

static void
take_text_cb (GObject *clipboard, GAsyncResult *result, gpointer text)
{
  *(char **) text = gdk_clipboard_read_text_finish (GDK_CLIPBOARD (clipboard), result, NULL);
}

static char *
read_clipboard (GtkWidget *widget)
{
  char *text = NULL;

  gdk_clipboard_read_text_async (gtk_widget_get_clipboard (widget), NULL, take_text_cb, &text);
  while (text == NULL)
    g_main_context_iteration (NULL, TRUE);
  return text;
}

/* ISO 261: M8 with the coarse pitch is 1.25 mm. */
static void
table_is_filtered_and_copied (void **state)
{
  Bench *bench = *state;
  g_autofree char *text = NULL;
  g_auto(GStrv) lines = NULL;
  GtkWidget *copy;

  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (wait_for (bench, is_button, "Tables")), TRUE);
  gtk_editable_set_text (GTK_EDITABLE (wait_for (bench, is_filter, "Show only rows with: M8, coarse, 13 mm")), "M8 coarse");
  wait_for (bench, is_label, "1 row");
  copy = wait_for (bench, is_button, "Copy as text");
  g_signal_emit_by_name (copy, "clicked");
  text = read_clipboard (copy);
  lines = g_strsplit (text, "\n", -1);
  assert_int_equal (g_strv_length (lines), 3);
  assert_true (g_str_has_prefix (lines[0], "Thread\tMajor diameter (mm, in)\tPitch (mm, tpi)\t"));
  assert_true (g_str_has_prefix (lines[1], "M8"));
  assert_non_null (strstr (lines[1], "\t8.00 mm (0.315 in)\t1.25 mm (20.3 tpi)\t"));
  gtk_editable_set_text (GTK_EDITABLE (wait_for (bench, is_filter, "Show only rows with: M8, coarse, 13 mm")), "banana");
  wait_for (bench, is_label, "No row has that");
  assert_false (gtk_widget_is_sensitive (copy));
  check_target (bench->place);
}

static gboolean
is_drawing (GtkWidget *widget, const char *text)
{
  return HMUI_IS_SIZE_DRAWING (widget);
}

static void
true_size_is_claimed_only_with_a_ruler (void **state)
{
  static const char claim[] = "True size if the\nruler measures 25" NBSP "mm";
  Bench *bench = *state;
  HmuiSizeDrawing *drawing;

  type (bench, "9 mm");
  drawing = HMUI_SIZE_DRAWING (wait_for (bench, is_drawing, "a drawing"));
  hmui_size_drawing_set_px_per_mm (drawing, 3.78);
  wait_for (bench, is_label, claim);
  hmui_size_drawing_set_px_per_mm (drawing, 0.0);      /* a monitor that does not say how large it is */
  assert_null (find (bench->place, is_label, claim));
  hmui_size_drawing_set_px_per_mm (drawing, 16.0);     /* no room for the ruler */
  assert_null (find (bench->place, is_label, claim));
  hmui_size_drawing_set_px_per_mm (drawing, 3.78);
  type (bench, "T40");
  wait_for (bench, is_label, "Right tool: T40 bit.");
  assert_null (find (bench->place, is_label, claim));
}

static void
torque_is_shown_with_a_link (void **state)
{
  Bench *bench = *state;
  GtkWidget *link;

  type (bench, "200 in-lb");
  wait_for (bench, is_label, "22.6" NBSP "N·m");
  link = wait_for (bench, is_button, "Open Torque with 200" NBSP "lbf·in");
  assert_string_equal (gtk_actionable_get_action_name (GTK_ACTIONABLE (link)), "win.torque");
}

/* Enter answers what is typed without waiting, then leads on. */
static void
enter_opens_the_first_link (void **state)
{
  Bench *bench = *state;
  GtkWidget *search = wait_for (bench, is_search, "the search");

  type (bench, "11/32");
  g_signal_emit_by_name (search, "activate");
  assert_non_null (find (bench->place, is_label, "Nearest metric size: 9" NBSP "mm socket, usable."));
  assert_string_equal (gtk_editable_get_text (GTK_EDITABLE (search)), "11/32");
  g_signal_emit_by_name (search, "activate");
  assert_string_equal (gtk_editable_get_text (GTK_EDITABLE (search)), "9" NBSP "mm");
  wait_for (bench, is_label, "No standard head has this size.");
}

static void
broken_knowledge_says_so_and_is_tried_again (void **state)
{
  g_autofree char *folder = g_strdup (g_getenv ("HALFMOON_DATA_DIR"));
  Bench *bench;

  g_setenv ("HALFMOON_DATA_DIR", "/nonexistent", TRUE);
  open_bench (state);
  g_setenv ("HALFMOON_DATA_DIR", folder, TRUE);
  bench = *state;
  wait_for (bench, is_label, "is missing");
  g_signal_emit_by_name (wait_for (bench, is_button, "Try again"), "clicked");
  wait_for (bench, is_label, "What do you have in hand?");
  close_bench (state);
}

static void
targets_are_large (void **state)
{
  Bench *bench = *state;

  type (bench, "1/2");
  wait_for (bench, is_label, "Right tool: 1/2");
  gtk_test_widget_wait_for_draw (bench->window);
  check_target (bench->place);
}

#define BENCH_TEST(function) cmocka_unit_test_setup_teardown (function, open_bench, close_bench)

int
main (void)
{
  const struct CMUnitTest tests[] = {
    BENCH_TEST (search_11_32_shows_the_9_mm_verdict),
    BENCH_TEST (nonsense_shows_the_sentence),
    BENCH_TEST (example_is_looked_up_and_whereabouts_say_so),
    BENCH_TEST (bolt_is_identified_on_its_page),
    BENCH_TEST (tables_open_and_lead_back),
    BENCH_TEST (targets_are_large),
    BENCH_TEST (table_is_filtered_and_copied),
    BENCH_TEST (true_size_is_claimed_only_with_a_ruler),
    BENCH_TEST (torque_is_shown_with_a_link),
    BENCH_TEST (enter_opens_the_first_link),
    cmocka_unit_test (broken_knowledge_says_so_and_is_tried_again),
  };

  gtk_init ();
  g_object_set (gtk_settings_get_default (), "gtk-enable-animations", FALSE, "gtk-cursor-blink", FALSE, NULL);
  hmui_style_attach (gdk_display_get_default (), "/local/halfmoon/Halfmoon/gallery/style.css");
  return cmocka_run_group_tests_name ("fasteners-place", tests, NULL, NULL);
}

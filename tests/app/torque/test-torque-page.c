/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-load-view.h"
#include "hmui-style.h"
#include "hmui-torque-chooser.h"
#include "hmui-torque-columns.h"
#include "hmui-torque-field.h"
#include "hmui-torque-page.h"
#include "hm-test-vectors.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

#define LEAST_TARGET 44   /* px */

typedef struct { HmuiSettings *settings; HmuiTorqueModel *model; GtkWindow *window; GtkWidget *page; } Bench;

static Bench
open_page (int width, int height)
{
  Bench bench = { hmui_settings_new (), NULL, NULL, NULL };
  g_autoptr(HmTables) tables = hm_test_tables ();
  g_autoptr(HmuiWrenchDrawer) drawer = NULL;
  g_autoptr(HmuiOrderModel) order = hmui_order_model_new (bench.settings);

  g_object_set (bench.settings, "units", HMUI_UNITS_METRIC_FIRST, NULL);
  drawer = hmui_wrench_drawer_new (bench.settings);
  bench.model = hmui_torque_model_new (bench.settings, drawer);
  hmui_torque_model_set_tables (bench.model, tables, NULL);
  hmui_order_model_set_tables (order, tables);
  bench.page = hmui_torque_page_new (bench.model, order, drawer);
  bench.window = GTK_WINDOW (gtk_window_new ());
  gtk_widget_add_css_class (GTK_WIDGET (bench.window), "halfmoon");
  gtk_window_set_decorated (bench.window, FALSE);
  gtk_window_set_default_size (bench.window, width, height);
  gtk_window_set_child (bench.window, bench.page);
  gtk_window_present (bench.window);
  return bench;
}

static void
wait_ms (guint ms)
{
  gint64 end = g_get_monotonic_time () + 1000 * (gint64) ms;

  while (g_get_monotonic_time () < end)
    if (!g_main_context_iteration (NULL, FALSE))
      g_usleep (2000);
}

static void
close_page (Bench *bench)
{
  GtkWidget *page = g_object_ref (bench->page);

  gtk_window_destroy (bench->window);
  g_assert_finalize_object (page);
  g_assert_finalize_object (bench->model);
  g_object_unref (bench->settings);
}

typedef gboolean (*Match) (GtkWidget *widget, gconstpointer data);

static GtkWidget *
find (GtkWidget *widget, Match match, gconstpointer data)
{
  if (match (widget, data))
    return widget;
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child))
    {
      GtkWidget *found = find (child, match, data);
      if (found != NULL)
        return found;
    }
  return NULL;
}

static gboolean
has_title (GtkWidget *widget, gconstpointer title)
{
  g_autofree char *own = NULL;

  if (!HMUI_IS_TORQUE_FIELD (widget) && !HMUI_IS_TORQUE_CHOOSER (widget))
    return FALSE;
  g_object_get (widget, "title", &own, NULL);
  return g_strcmp0 (own, title) == 0;
}

static gboolean
is_label_with (GtkWidget *widget, gconstpointer text)
{
  return GTK_IS_LABEL (widget) && gtk_widget_get_mapped (widget)
         && strstr (gtk_label_get_text (GTK_LABEL (widget)), text) != NULL;
}

static gboolean
is_a (GtkWidget *widget, gconstpointer type)
{
  return g_type_is_a (G_OBJECT_TYPE (widget), *(const GType *) type);
}

static void
assert_shows (Bench *bench, const char *text)
{
  if (find (bench->page, is_label_with, text) == NULL)
    fail_msg ("“%s” is not on the page", text);
}

static void
type_in (Bench *bench, const char *title, const char *text)
{
  GtkWidget *field = find (bench->page, has_title, title);

  assert_non_null (field);
  hmui_torque_field_set_text (HMUI_TORQUE_FIELD (field), text);
}

/* As a person does: through the list itself. */
static void
choose (Bench *bench, const char *title, guint index)
{
  GType type = GTK_TYPE_DROP_DOWN;
  GtkWidget *chooser = find (bench->page, has_title, title);

  assert_non_null (chooser);
  gtk_drop_down_set_selected (GTK_DROP_DOWN (find (chooser, is_a, &type)), index);
}

static void
answer_changes_as_you_type (void **state)
{
  Bench bench = open_page (820, 640);
  GType loads = HMUI_TYPE_LOAD_VIEW;

  assert_shows (&bench, "Type the thread");
  type_in (&bench, "Thread", "M8");
  assert_shows (&bench, "Choose the class");
  choose (&bench, "Class or grade", 6);
  wait_ms (100);
  assert_shows (&bench, "25.5\302\240N·m");
  assert_shows (&bench, "The maker’s manual governs");
  assert_shows (&bench, "limits it");
  assert_true (gtk_widget_get_mapped (find (bench.page, is_a, &loads)));
  assert_true (gtk_test_accessible_has_role (GTK_ACCESSIBLE (find (bench.page, is_a, &loads)), GTK_ACCESSIBLE_ROLE_IMG));
  assert_true (gtk_test_accessible_has_property (GTK_ACCESSIBLE (find (bench.page, is_a, &loads)),
                                                 GTK_ACCESSIBLE_PROPERTY_LABEL));
  choose (&bench, "Screwed into", 1);
  assert_shows (&bench, "17.8\302\240N·m");
  type_in (&bench, "Torque it gives", "20");
  assert_shows (&bench, "spec sheet");
  type_in (&bench, "Thread", "M8 x banana");
  assert_null (find (bench.page, is_label_with, "17.8\302\240N·m"));
  wait_ms (1200);
  assert_shows (&bench, "is not a thread");
  close_page (&bench);
}

static void
narrow_page_keeps_headline_and_details (void **state)
{
  Bench bench = open_page (600, 500);
  GType columns = HMUI_TYPE_TORQUE_COLUMNS;

  type_in (&bench, "Thread", "1/4-20");
  choose (&bench, "Class or grade", 4);
  wait_ms (300);
  assert_true (hmui_torque_columns_is_narrow (HMUI_TORQUE_COLUMNS (find (bench.page, is_a, &columns))));
  assert_shows (&bench, "N·m");
  assert_shows (&bench, "What it does to the bolt");
  gtk_window_set_default_size (bench.window, 1000, 640);
  wait_ms (500);
  assert_false (hmui_torque_columns_is_narrow (HMUI_TORQUE_COLUMNS (find (bench.page, is_a, &columns))));
  assert_shows (&bench, "What it does to the bolt");
  close_page (&bench);
}

/* With its padding and border: what a finger can hit. */
static int
target_height (GtkWidget *widget)
{
  graphene_rect_t bounds;

  return gtk_widget_compute_bounds (widget, widget, &bounds) ? (int) bounds.size.height : 0;
}

/* What is wrong with the control for a finger or a screen reader; NULL if nothing. */
static const char *
judge_control (GtkWidget *widget)
{
  gboolean is_control = GTK_IS_BUTTON (widget) || GTK_IS_ENTRY (widget) || GTK_IS_DROP_DOWN (widget)
                        || GTK_IS_SPIN_BUTTON (widget) || GTK_IS_MENU_BUTTON (widget);

  if (!is_control || !gtk_widget_get_mapped (widget))
    return NULL;
  if (target_height (widget) < LEAST_TARGET && !GTK_IS_SPIN_BUTTON (gtk_widget_get_parent (widget))
      && !GTK_IS_DROP_DOWN (gtk_widget_get_parent (widget)))
    return "is lower than 44 px";
  if ((GTK_IS_ENTRY (widget) || GTK_IS_DROP_DOWN (widget) || GTK_IS_SPIN_BUTTON (widget) || GTK_IS_MENU_BUTTON (widget))
      && !gtk_test_accessible_has_property (GTK_ACCESSIBLE (widget), GTK_ACCESSIBLE_PROPERTY_LABEL))
    return "has no name";
  return NULL;
}

static void
check_controls (GtkWidget *widget)
{
  const char *wrong = judge_control (widget);

  if (wrong != NULL)
    fail_msg ("a %s %s (%d px)", G_OBJECT_TYPE_NAME (widget), wrong, target_height (widget));
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child))
    check_controls (child);
}

static void
controls_are_large_and_named (void **state)
{
  Bench bench = open_page (820, 640);

  type_in (&bench, "Thread", "M8");
  choose (&bench, "Class or grade", 6);
  choose (&bench, "Adapter on the wrench", 2);
  wait_ms (300);
  check_controls (bench.page);
  close_page (&bench);
}

static void
nonsense_in_every_field (void **state)
{
  static const char * const texts[] = { "", " ", "-1", "1e999", "999999999999999999999", "½", "M", "%s%n", "1/0", "N·m" };
  static const char * const titles[] = { "Thread", "Thread engaged, if known", "Torque it gives", "Page",
                                         "Adapter: square drive to bolt", "Wrench: square drive to grip",
                                         "Angle of the adapter, in degrees" };
  Bench bench = open_page (820, 640);

  choose (&bench, "Adapter on the wrench", 2);
  for (guint i = 0; i < G_N_ELEMENTS (texts); i++)
    for (guint j = 0; j < G_N_ELEMENTS (titles); j++)
      type_in (&bench, titles[j], texts[i]);
  wait_ms (1000);
  close_page (&bench);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (answer_changes_as_you_type),
    cmocka_unit_test (narrow_page_keeps_headline_and_details),
    cmocka_unit_test (controls_are_large_and_named),
    cmocka_unit_test (nonsense_in_every_field),
  };

  gtk_init ();
  hmui_style_attach (gdk_display_get_default (), "/local/halfmoon/Halfmoon/style.css");
  return cmocka_run_group_tests_name ("torque-page", tests, NULL, NULL);
}

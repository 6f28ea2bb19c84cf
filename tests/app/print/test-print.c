/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Sheets through the print operation, the actions of a window, and the button that offers them. */
#include "hm-chart.h"
#include "hm-test-vectors.h"
#include "hmui-chart-actions.h"
#include "hmui-chart-button.h"
#include "hmui-print.h"
#include "hmui-sheet-pages.h"

#include <glib/gstdio.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

#define LIMIT_MS 5000

static HmSheet *
make_sheet (HmChart chart)
{
  g_autoptr(HmTables) tables = hm_test_tables ();
  const HmChartRequest request = { hm_chart_title (chart), "2026-11-25", &hm_format_default, NULL };

  return hm_chart_new (chart, tables, &request);
}

static char *
temporary_file (const char *name)
{
  g_autofree char *folder = g_dir_make_tmp ("halfmoon-print-XXXXXX", NULL);

  return g_build_filename (folder, name, NULL);
}

static void
remove_file (const char *path)
{
  g_autofree char *folder = g_path_get_dirname (path);

  g_remove (path);
  g_rmdir (folder);
}

static char *
text_of (const char *path)
{
  const char *argv[] = { "pdftotext", "-layout", path, "-", NULL };
  g_autoptr(GError) error = NULL;
  char *out = NULL;

  if (!g_spawn_sync (NULL, (char **) argv, NULL, G_SPAWN_SEARCH_PATH, NULL, NULL, &out, NULL, NULL, &error))
    fail_msg ("%s", error->message);
  return out;
}

static gboolean
stop_waiting_cb (gpointer flag)
{
  *(gboolean *) flag = TRUE;
  return G_SOURCE_CONTINUE;
}

/* Lets the window work until @holds, or too long. */
typedef gboolean (*Holds) (gconstpointer data);

static void
wait_until (Holds holds, gconstpointer data)
{
  gboolean late = FALSE;
  guint timer = g_timeout_add (LIMIT_MS, stop_waiting_cb, &late);

  while (!late && !holds (data))
    g_main_context_iteration (NULL, TRUE);
  g_source_remove (timer);
  assert_false (late);
}

/* The printer's pages are those of the PDF, on the paper that the operation has. */
static void
prints_the_same_pages (void **state)
{
  HmChart chart = (HmChart) GPOINTER_TO_UINT (*state);
  g_autoptr(HmSheet) sheet = make_sheet (chart);
  g_autoptr(HmuiSheetPages) pages = hmui_sheet_pages_new (sheet, &hmui_paper_letter);
  g_autoptr(GtkPrintOperation) operation = hmui_print_operation_new (make_sheet (chart));
  g_autoptr(GtkPageSetup) setup = gtk_page_setup_new ();
  g_autofree char *path = temporary_file ("printed.pdf"), *text = NULL, *last = NULL;
  g_autoptr(GError) error = NULL;
  GtkPaperSize *letter = gtk_paper_size_new (GTK_PAPER_NAME_LETTER);

  gtk_page_setup_set_paper_size (setup, letter);
  gtk_paper_size_free (letter);
  gtk_print_operation_set_default_page_setup (operation, setup);
  gtk_print_operation_set_export_filename (operation, path);
  assert_int_equal (gtk_print_operation_run (operation, GTK_PRINT_OPERATION_ACTION_EXPORT, NULL, &error),
                    GTK_PRINT_OPERATION_RESULT_APPLY);
  assert_null (error);
  text = text_of (path);
  last = g_strdup_printf ("Page %u of %u", hmui_sheet_pages_get_n (pages), hmui_sheet_pages_get_n (pages));
  assert_non_null (strstr (text, last));
  assert_non_null (strstr (text, hm_chart_title (chart)));
  assert_non_null (strstr (text, "The maker’s manual governs"));
  remove_file (path);
}

/* A long title is broken, not cut, and leaves the date free. */
static void
a_long_title_is_broken (void **state)
{
  g_autofree char *title = g_strdup ("A workshop with a name so long that no line of any paper in the world can hold all of it at once");
  g_autoptr(HmSheet) sheet = hm_sheet_new (title, "2026-11-25", "The manual governs.");
  g_autoptr(HmuiSheetPages) pages = NULL;
  cairo_surface_t *surface = cairo_recording_surface_create (CAIRO_CONTENT_COLOR_ALPHA, NULL);
  cairo_t *cr = cairo_create (surface);
  double x, y, width, height;

  hm_sheet_say (sheet, HM_SHEET_PARAGRAPH, "Words.");
  pages = hmui_sheet_pages_new (sheet, &hmui_paper_a4);
  assert_int_equal (hmui_sheet_pages_get_n (pages), 1);
  hmui_sheet_pages_draw (pages, cr, 0);
  cairo_recording_surface_ink_extents (surface, &x, &y, &width, &height);
  assert_true (x >= 30.0 && y >= 30.0 && x + width <= hmui_paper_a4.width_pt - 30.0 && y + height <= hmui_paper_a4.height_pt - 30.0);
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
}

static const struct paper_row { const char *name; gboolean known; double width_mm, height_mm; const char *source; } paper_rows[] = {
  { "a4", TRUE, 210.0, 297.0, "ISO 216" }, { "A4", TRUE, 210.0, 297.0, "ISO 216" },
  { "letter", TRUE, 215.9, 279.4, "ASME Y14.1, size A: 8.5 in × 11 in" }, { "a5", FALSE, 0.0, 0.0, "" }, { "", FALSE, 0.0, 0.0, "" },
};

static void
papers_are_known (void **state)
{
  const struct paper_row *row = *state;
  HmuiPaper paper = { 1.0, 2.0 };

  assert_true (hmui_paper_parse (row->name, &paper) == row->known);
  if (row->known)
    assert_true (ABS (paper.width_pt / 72.0 * 25.4 - row->width_mm) < 0.05 && ABS (paper.height_pt / 72.0 * 25.4 - row->height_mm) < 0.05);
  else
    assert_true (paper.width_pt < 1.5 && paper.height_pt > 1.5);
}

static GtkApplication *application;   /* one for all: a process registers once */

/* Bench: a window with the actions and the button. */
typedef struct { GtkWidget *window, *button; HmuiSettings *settings; GString *told; } Bench;

static void
tell_cb (const char *sentence, gpointer told)
{
  g_string_append (told, sentence);
}

static int
open_bench (void **state)
{
  Bench *bench = g_new0 (Bench, 1);

  bench->settings = hmui_settings_new ();
  bench->window = gtk_application_window_new (application);
  bench->button = hmui_chart_button_new ();
  bench->told = g_string_new (NULL);
  hmui_chart_actions_attach (GTK_APPLICATION_WINDOW (bench->window), bench->settings, tell_cb, bench->told);
  gtk_window_set_child (GTK_WINDOW (bench->window), bench->button);
  gtk_window_present (GTK_WINDOW (bench->window));
  gtk_test_widget_wait_for_draw (bench->window);
  *state = bench;
  return 0;
}

static int
close_bench (void **state)
{
  Bench *bench = *state;
  g_autoptr(GtkWidget) button = g_object_ref (bench->button);

  gtk_window_destroy (GTK_WINDOW (bench->window));
  while (g_main_context_iteration (NULL, FALSE))
    ;
  g_assert_finalize_object (g_steal_pointer (&button));
  g_object_unref (bench->settings);
  g_string_free (bench->told, TRUE);
  g_free (bench);
  return 0;
}

static void
check_item (GtkWidget *window, GMenuModel *section, int item, const char *action, HmChart chart)
{
  g_autofree char *label = NULL, *name = NULL, *target = NULL;

  assert_true (g_menu_model_get_item_attribute (section, item, G_MENU_ATTRIBUTE_LABEL, "s", &label));
  assert_true (g_menu_model_get_item_attribute (section, item, G_MENU_ATTRIBUTE_ACTION, "s", &name));
  assert_true (g_menu_model_get_item_attribute (section, item, G_MENU_ATTRIBUTE_TARGET, "s", &target));
  assert_string_equal (name, action);
  assert_string_equal (target, hm_chart_name (chart));
  assert_non_null (strstr (label, hm_chart_name (chart)));
  assert_string_equal (g_variant_type_peek_string (g_action_group_get_action_parameter_type (G_ACTION_GROUP (window),
                                                                                              action + strlen ("win."))), "s");
}

/* Every chart can be printed and saved, by actions that the window has. */
static void
the_menu_has_every_chart (void **state)
{
  Bench *bench = *state;
  GtkWidget *menu_button = gtk_widget_get_first_child (bench->button);
  GMenuModel *menu = gtk_menu_button_get_menu_model (GTK_MENU_BUTTON (menu_button));

  assert_int_equal (g_menu_model_get_n_items (menu), HM_CHART_N_CHARTS);
  for (int i = 0; i < (int) HM_CHART_N_CHARTS; i++)
    {
      g_autoptr(GMenuModel) section = g_menu_model_get_item_link (menu, i, G_MENU_LINK_SECTION);

      assert_int_equal (g_menu_model_get_n_items (section), 2);
      check_item (bench->window, section, 0, "win.print-chart", (HmChart) i);
      check_item (bench->window, section, 1, "win.save-chart", (HmChart) i);
    }
  assert_string_equal (gtk_menu_button_get_label (GTK_MENU_BUTTON (menu_button)), "Print a chart");
}

/* A window of that type besides the bench; NULL if there is none. */
static GtkWindow *
find_dialog (const char *type)
{
  GListModel *windows = gtk_window_get_toplevels ();

  for (guint i = 0; i < g_list_model_get_n_items (windows); i++)
    {
      g_autoptr(GtkWindow) window = g_list_model_get_item (windows, i);

      if (strcmp (G_OBJECT_TYPE_NAME (window), type) == 0)
        return window;
    }
  return NULL;
}

static gboolean
dialog_is_open (gconstpointer type)
{
  GtkWindow *dialog = find_dialog (type);

  return dialog != NULL && gtk_widget_get_mapped (GTK_WIDGET (dialog));
}

static gboolean
was_told (gconstpointer told)
{
  return ((const GString *) told)->len > 0;
}

typedef struct { GtkWindow *dialog; GFile *file; } Choice;

/* The dialog looks into the folder in its own time. */
static gboolean
is_chosen (gconstpointer data)
{
  const Choice *choice = data;
  g_autoptr(GFile) file = gtk_file_chooser_get_file (GTK_FILE_CHOOSER (choice->dialog));

  return file != NULL && g_file_equal (file, choice->file);
}

/* Fills in @path in the dialog for saving. */
static void
fill_in (GtkWindow *dialog, const char *path)
{
  g_autoptr(GFile) file = g_file_new_for_path (path);
  g_autoptr(GFile) folder = g_file_get_parent (file);
  g_autofree char *name = g_file_get_basename (file);

  gtk_test_widget_wait_for_draw (GTK_WIDGET (dialog));
  gtk_file_chooser_set_current_folder (GTK_FILE_CHOOSER (dialog), folder, NULL);
  gtk_file_chooser_set_current_name (GTK_FILE_CHOOSER (dialog), name);
  wait_until (is_chosen, &(Choice) { dialog, file });
}

static void
a_chart_is_saved (void **state)
{
  Bench *bench = *state;
  g_autofree char *path = temporary_file ("wall.pdf"), *text = NULL;

  assert_true (gtk_widget_activate_action (bench->button, "win.save-chart", "s", "thread"));
  wait_until (dialog_is_open, "GtkFileChooserDialog");
  fill_in (find_dialog ("GtkFileChooserDialog"), path);
  gtk_dialog_response (GTK_DIALOG (find_dialog ("GtkFileChooserDialog")), GTK_RESPONSE_ACCEPT);
  wait_until (was_told, bench->told);
  assert_non_null (strstr (bench->told->str, "wall.pdf"));
  assert_non_null (strstr (bench->told->str, "was saved"));
  text = text_of (path);
  assert_non_null (strstr (text, "Thread chart"));
  assert_non_null (strstr (text, "Page 1 of"));
  remove_file (path);
}

/* Without its tables no chart can be made; the person is told instead of asked */
static void
missing_tables_are_told (void **state)
{
  Bench *bench = *state;
  g_autofree char *folder = g_strdup (g_getenv ("HALFMOON_DATA_DIR"));

  g_setenv ("HALFMOON_DATA_DIR", "/nowhere", TRUE);
  assert_true (gtk_widget_activate_action (bench->button, "win.print-chart", "s", "socket"));
  g_setenv ("HALFMOON_DATA_DIR", folder, TRUE);
  assert_non_null (strstr (bench->told->str, "/nowhere"));
  assert_null (find_dialog ("GtkPrintUnixDialog"));
}

static void
printing_asks_first (void **state)
{
  Bench *bench = *state;

  assert_true (gtk_widget_activate_action (bench->button, "win.print-chart", "s", "torque"));
  wait_until (dialog_is_open, "GtkPrintUnixDialog");
  gtk_dialog_response (GTK_DIALOG (find_dialog ("GtkPrintUnixDialog")), GTK_RESPONSE_CANCEL);
  while (g_main_context_iteration (NULL, FALSE))
    ;
  assert_int_equal (bench->told->len, 0);
}

int
main (void)
{
  struct CMUnitTest tests[32];
  gsize n = 0;

  int failed;

  g_set_prgname ("halfmoon");   /* the list of recent files wants both names */
  g_set_application_name ("Halfmoon");
  gtk_init ();
  application = gtk_application_new (NULL, G_APPLICATION_NON_UNIQUE);
  if (!g_application_register (G_APPLICATION (application), NULL, NULL))
    return 1;
  for (guint chart = 0; chart < HM_CHART_N_CHARTS; chart++)
    tests[n++] = (struct CMUnitTest) { hm_chart_title ((HmChart) chart), prints_the_same_pages, NULL, NULL, GUINT_TO_POINTER (chart) };
  for (gsize i = 0; i < G_N_ELEMENTS (paper_rows); i++)
    tests[n++] = (struct CMUnitTest) { paper_rows[i].name[0] != '\0' ? paper_rows[i].name : "no paper", papers_are_known, NULL, NULL,
                                       (void *) &paper_rows[i] };
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (a_long_title_is_broken);
  tests[n++] = (struct CMUnitTest) cmocka_unit_test_setup_teardown (the_menu_has_every_chart, open_bench, close_bench);
  tests[n++] = (struct CMUnitTest) cmocka_unit_test_setup_teardown (a_chart_is_saved, open_bench, close_bench);
  tests[n++] = (struct CMUnitTest) cmocka_unit_test_setup_teardown (missing_tables_are_told, open_bench, close_bench);
  tests[n++] = (struct CMUnitTest) cmocka_unit_test_setup_teardown (printing_asks_first, open_bench, close_bench);
  failed = _cmocka_run_group_tests ("print", tests, n, NULL, NULL);
  g_object_unref (application);
  return failed;
}

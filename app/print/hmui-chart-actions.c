/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-chart-actions.h"
#include "hm-chart.h"
#include "hm-knowledge.h"
#include "hmui-paths.h"
#include "hmui-print.h"
#include "hmui-sheet-pdf.h"
#include "hmui-tr.h"
#include <glib/gi18n.h>

#define CHARTS "hmui-charts"

/* Charts: lives as long as its window. */
typedef struct
{
  GtkWindow *window;              /* borrowed */
  HmuiSettings *settings;         /* owned */
  HmuiChartTell tell;
  gpointer user_data;
  GtkFileChooserNative *chooser;  /* owned; NULL while none is open */
  HmChart chart;                  /* that it asks for */
} Charts;

static void
free_charts (gpointer data)
{
  Charts *self = data;

  if (self->chooser != NULL)
    gtk_native_dialog_destroy (GTK_NATIVE_DIALOG (self->chooser));
  g_clear_object (&self->chooser);
  g_clear_object (&self->settings);
  g_free (self);
}

static void
warn (Charts *self, const char *sentence)
{
  GtkWidget *dialog;

  if (self->tell != NULL)
    {
      self->tell (sentence, self->user_data);
      return;
    }
  dialog = gtk_message_dialog_new (self->window, GTK_DIALOG_MODAL | GTK_DIALOG_DESTROY_WITH_PARENT, GTK_MESSAGE_ERROR,
                                   GTK_BUTTONS_CLOSE, "%s", sentence);
  g_signal_connect (dialog, "response", G_CALLBACK (gtk_window_destroy), NULL);
  gtk_window_present (GTK_WINDOW (dialog));
}

static HmSheet *
make_sheet (Charts *self, HmChart chart, GError **error)
{
  g_autofree char *path = hmui_paths_dup_knowledge ();
  g_autoptr(HmKnowledge) knowledge = hm_knowledge_open (path, error);
  g_autoptr(GDateTime) now = hmui_sheet_pdf_dup_time ();
  g_autofree char *date = g_date_time_format (now, "%F");
  const HmFormat format = hmui_settings_get_format (self->settings);
  const HmChartRequest request = { hmui_tr (hm_chart_title (chart)), date, &format, hmui_tr };

  return knowledge != NULL ? hm_chart_new (chart, hm_knowledge_get_tables (knowledge), &request) : NULL;
}

static void
print_done_cb (GtkPrintOperation *operation, GtkPrintOperationResult result, gpointer window)
{
  Charts *self = g_object_get_data (window, CHARTS);
  g_autoptr(GError) error = NULL;
  g_autofree char *sentence = NULL;

  if (result != GTK_PRINT_OPERATION_RESULT_ERROR || self == NULL)
    return;
  gtk_print_operation_get_error (operation, &error);
  sentence = g_strdup_printf (_("The chart was not printed: %s"), error != NULL ? error->message : "");
  warn (self, sentence);
}

static void
print_chart_action (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  Charts *self = g_object_get_data (window, CHARTS);
  g_autoptr(GtkPrintOperation) operation = NULL;
  g_autoptr(GError) error = NULL;
  HmSheet *sheet;
  HmChart chart;

  if (!hm_chart_parse (g_variant_get_string (parameter, NULL), &chart))
    g_return_if_reached ();
  sheet = make_sheet (self, chart, &error);
  if (sheet == NULL)
    {
      warn (self, error->message);
      return;
    }
  operation = hmui_print_operation_new (sheet);
  gtk_print_operation_set_allow_async (operation, TRUE);
  g_signal_connect_object (operation, "done", G_CALLBACK (print_done_cb), window, 0);
  gtk_print_operation_run (operation, GTK_PRINT_OPERATION_ACTION_PRINT_DIALOG, self->window, NULL);   /* "done" tells of errors */
}

static void
saved_cb (GObject *object, GAsyncResult *result, gpointer data)
{
  g_autoptr(GtkWindow) window = data;
  Charts *self = g_object_get_data (G_OBJECT (window), CHARTS);
  g_autoptr(GError) error = NULL;
  g_autofree char *name = g_file_get_parse_name (G_FILE (object));
  g_autofree char *sentence = NULL;

  if (!g_file_replace_contents_finish (G_FILE (object), result, NULL, &error))
    sentence = g_strdup_printf (_("“%s” could not be written: %s"), name, error->message);
  else if (self != NULL && self->tell != NULL)
    sentence = g_strdup_printf (_("The chart was saved as “%s”."), name);
  if (self != NULL && sentence != NULL)
    warn (self, sentence);
}

static void
save_chart (Charts *self, GFile *file)
{
  const HmuiPaper paper = hmui_print_usual_paper ();
  g_autoptr(GDateTime) now = hmui_sheet_pdf_dup_time ();
  g_autoptr(GError) error = NULL;
  g_autoptr(HmSheet) sheet = make_sheet (self, self->chart, &error);
  g_autoptr(GBytes) bytes = sheet != NULL ? hmui_sheet_pdf_new (sheet, &paper, now, &error) : NULL;

  if (bytes == NULL)
    warn (self, error->message);
  else
    g_file_replace_contents_bytes_async (file, bytes, NULL, FALSE, G_FILE_CREATE_NONE, NULL, saved_cb, g_object_ref (self->window));
}

static void
chosen_cb (GtkNativeDialog *dialog, int response, gpointer window)
{
  Charts *self = g_object_get_data (window, CHARTS);
  g_autoptr(GFile) file = response == GTK_RESPONSE_ACCEPT ? gtk_file_chooser_get_file (GTK_FILE_CHOOSER (dialog)) : NULL;

  g_clear_object (&self->chooser);
  if (file != NULL)
    save_chart (self, file);
}

static void
save_chart_action (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  Charts *self = g_object_get_data (window, CHARTS);
  const char *chart = g_variant_get_string (parameter, NULL);
  g_autofree char *name = g_strdup_printf ("%s-chart.pdf", chart);
  g_autoptr(GtkFileFilter) filter = gtk_file_filter_new ();

  if (!hm_chart_parse (chart, &self->chart))
    g_return_if_reached ();
  if (self->chooser != NULL)
    return;
  self->chooser = gtk_file_chooser_native_new (_("Save the Chart"), self->window, GTK_FILE_CHOOSER_ACTION_SAVE, _("_Save"), _("_Cancel"));
  gtk_native_dialog_set_modal (GTK_NATIVE_DIALOG (self->chooser), TRUE);
  gtk_file_filter_set_name (filter, _("PDF files"));
  gtk_file_filter_add_mime_type (filter, "application/pdf");
  gtk_file_chooser_add_filter (GTK_FILE_CHOOSER (self->chooser), filter);
  gtk_file_chooser_set_current_name (GTK_FILE_CHOOSER (self->chooser), name);
  g_signal_connect_object (self->chooser, "response", G_CALLBACK (chosen_cb), window, 0);
  gtk_native_dialog_show (GTK_NATIVE_DIALOG (self->chooser));
}

void
hmui_chart_actions_attach (GtkApplicationWindow *window, HmuiSettings *settings, HmuiChartTell tell, gpointer user_data)
{
  static const GActionEntry entries[] = {
    { .name = "print-chart", .activate = print_chart_action, .parameter_type = "s" },
    { .name = "save-chart", .activate = save_chart_action, .parameter_type = "s" },
  };
  Charts *self;

  g_return_if_fail (GTK_IS_APPLICATION_WINDOW (window) && HMUI_IS_SETTINGS (settings));
  self = g_new0 (Charts, 1);
  self->window = GTK_WINDOW (window);
  self->settings = g_object_ref (settings);
  self->tell = tell;
  self->user_data = user_data;
  g_object_set_data_full (G_OBJECT (window), CHARTS, self, free_charts);
  g_action_map_add_action_entries (G_ACTION_MAP (window), entries, G_N_ELEMENTS (entries), window);
}

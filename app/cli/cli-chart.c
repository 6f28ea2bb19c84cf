/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Charts for the wall, as PDF. */
#include "cli.h"

#include <glib/gi18n.h>
#include <string.h>

#include "hm-chart.h"
#include "hmui-sheet-pdf.h"
#include "hmui-tr.h"

typedef struct { char *pdf, *paper, *units, *title; } Options;

static void
clear_options (Options *self)
{
  g_free (self->pdf);
  g_free (self->paper);
  g_free (self->units);
  g_free (self->title);
}
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (Options, clear_options)

/* @sentence: has one “%s” for what was read; %NULL as @error is not accepted */
static gboolean
refuse (const char *sentence, const char *text, GError **error)
{
  g_auto (GStrv) halves = g_strsplit (sentence, "%s", 2);
  g_autofree char *shown = g_utf8_make_valid (text, -1);
  g_autofree char *message = g_strjoinv (shown, halves);

  g_set_error_literal (error, G_IO_ERROR, G_IO_ERROR_INVALID_ARGUMENT, message);
  return FALSE;
}

static gboolean
read_request (const char *name, const Options *options, HmFormat *format, HmChart *chart, HmuiPaper *paper, GError **error)
{
  if (!hm_chart_parse (name, chart))
    return refuse (_("There is no chart “%s”; there are: socket, thread, torque."), name, error);
  if (!hmui_paper_parse (options->paper != NULL ? options->paper : "a4", paper))
    return refuse (_("--paper: “%s” is not known; there are: a4, letter"), options->paper, error);
  if (g_strcmp0 (options->units, "metric") == 0)
    format->system = HM_UNIT_SYSTEM_METRIC_FIRST;
  else if (options->units != NULL && strcmp (options->units, "inch") != 0)
    return refuse (_("--units: “%s” is not known; there are: inch, metric"), options->units, error);
  if (options->title != NULL && !g_utf8_validate (options->title, -1, NULL))
    return refuse (_("--title: “%s” is not UTF-8 text"), options->title, error);
  return TRUE;
}

static gboolean
save (HmChart chart, const Options *options, const HmFormat *format, const HmuiPaper *paper, const HmTables *tables, GError **error)
{
  g_autoptr (GDateTime) now = hmui_sheet_pdf_dup_time ();
  g_autofree char *date = g_date_time_format (now, "%F");
  const HmChartRequest request = { options->title != NULL ? options->title : hmui_tr (hm_chart_title (chart)), date, format, hmui_tr };
  g_autoptr (HmSheet) sheet = hm_chart_new (chart, tables, &request);
  g_autoptr (GFile) file = g_file_new_for_commandline_arg (options->pdf);

  if (hmui_sheet_pdf_save (sheet, paper, now, file, error))
    return TRUE;
  g_prefix_error (error, _("--pdf: “%s” cannot be written: "), options->pdf);
  return FALSE;
}

static CliExit
run (const char *name, const Options *options)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (CliIo) io = cli_io_new ();
  g_autoptr (HmKnowledge) knowledge = NULL;
  HmFormat format = *cli_io_get_format (io);
  HmChart chart;
  HmuiPaper paper;

  if (!read_request (name, options, &format, &chart, &paper, &error))
    return cli_fail (error);
  knowledge = cli_open_knowledge (&error);
  if (knowledge == NULL || !save (chart, options, &format, &paper, hm_knowledge_get_tables (knowledge), &error))
    return cli_fail (error);
  return CLI_DONE;
}

CliExit
cli_chart (int argc, char **argv)
{
  g_auto (Options) chosen = { 0 };
  const GOptionEntry options[] = {
    { "pdf", 0, 0, G_OPTION_ARG_FILENAME, &chosen.pdf, N_("The PDF to write; one that is there is replaced"), N_("FILE") },
    { "paper", 0, 0, G_OPTION_ARG_STRING, &chosen.paper, N_("Paper: a4 (if left out) or letter"), N_("PAPER") },
    { "units", 'u', 0, G_OPTION_ARG_STRING, &chosen.units, N_("Units: inch (if left out) or metric"), N_("UNITS") },
    { "title", 0, 0, G_OPTION_ARG_STRING, &chosen.title, N_("What stands on top, such as the name of the shop"), N_("TEXT") },
    { NULL }
  };
  CliExit code;

  if (!cli_parse_options (&argc, &argv, _("socket|thread|torque"),
                          _("Writes a chart for the wall as PDF: socket sizes, threads, or torques. The maker’s manual governs."),
                          options, &code))
    return code;
  if (argc != 2)
    return cli_usage ("chart", _("One chart is wanted: socket, thread or torque."));
  if (chosen.pdf == NULL || chosen.pdf[0] == '\0')
    return cli_usage ("chart", _("A file to write is wanted: --pdf chart.pdf"));
  return run (argv[1], &chosen);
}

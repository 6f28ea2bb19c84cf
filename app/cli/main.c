/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli.h"

#include <glib/gi18n.h>
#include <langinfo.h>
#include <locale.h>
#include <string.h>

#include "hmui-paths.h"

static const struct { const char *name; CliExit (*run) (int argc, char **argv); const char *what; } commands[] = {
  { "diagnose", cli_diagnose, N_("lead from a complaint to a proved repair, step by step") },
  { "model", cli_model, N_("print the model of a complaint as JSON") },
  { "advise", cli_advise, N_("read a model and evidence as JSON, print what to do next") },
  { "fit", cli_fit, N_("a size in both systems, and how a tool sits on a head") },
  { "thread", cli_thread, N_("a thread: sizes, limits, drills, what is taken for it") },
  { "identify", cli_identify, N_("which thread it is, from what was measured") },
  { "torque", cli_torque, N_("a torque from thread, class and friction, and its limits") },
  { "chart", cli_chart, N_("a chart for the wall as PDF: sockets, threads, torques") },
};

static void
print_help (void)
{
  g_print ("%s\n", _("Usage: halfmoon-cli COMMAND [OPTIONS]"));
  g_print ("\n%s\n", _("Finds the cause of a small engine’s complaint, and answers about fasteners and torque, at a terminal."));
  g_print ("\n%s\n", _("Commands:"));
  for (gsize i = 0; i < G_N_ELEMENTS (commands); i++)
    g_print ("  %-10s %s\n", commands[i].name, _(commands[i].what));
  g_print ("\n%s\n", _("“halfmoon-cli COMMAND --help” tells more. Exit codes: 0 done, 1 bad input, 2 wrong usage."));
  g_print ("%s\n", _("The engine maker’s manual governs wherever it differs from what is shown."));
}

CliExit
cli_usage (const char *command, const char *sentence)
{
  g_printerr ("%s\n", sentence);
  g_printerr (_("Try “halfmoon-cli%s%s --help”.\n"), command != NULL ? " " : "", command != NULL ? command : "");
  return CLI_USAGE;
}

CliExit
cli_fail (const GError *error)
{
  g_printerr ("%s\n", error->message);
  return CLI_BAD_INPUT;
}

gboolean
cli_parse_options (int *argc, char ***argv, const char *words, const char *summary, const GOptionEntry *options, CliExit *exit_code)
{
  g_autofree char *program = g_strdup_printf ("halfmoon-cli %s", (*argv)[0]);
  g_autoptr (GOptionContext) context = g_option_context_new (words);
  g_autofree char *command = g_strdup ((*argv)[0]);
  g_autoptr (GError) error = NULL;

  for (int i = 1; i < *argc; i++)
    if (strcmp ((*argv)[i], "--help") == 0 || strcmp ((*argv)[i], "-h") == 0)
      {
        g_autofree char *help = NULL;
        g_set_prgname (program);
        g_option_context_set_summary (context, summary);
        g_option_context_add_main_entries (context, options, GETTEXT_PACKAGE);
        help = g_option_context_get_help (context, TRUE, NULL);
        g_print ("%s", help);
        *exit_code = CLI_DONE;
        return FALSE;
      }
  g_option_context_set_help_enabled (context, FALSE);
  g_option_context_add_main_entries (context, options, GETTEXT_PACKAGE);
  if (g_option_context_parse (context, argc, argv, &error))
    return TRUE;
  *exit_code = cli_usage (command, error->message);
  return FALSE;
}

HmKnowledge *
cli_open_knowledge (GError **error)
{
  g_autofree char *path = hmui_paths_dup_knowledge ();

  return hm_knowledge_open (path, error);
}

/* The C locale knows only ASCII; units and signs need more, and what reads along reads UTF-8. */
static void
set_up_locale (void)
{
  g_autofree char *folder = hmui_paths_dup_locale ();

  setlocale (LC_ALL, "");
  if (strcmp (nl_langinfo (CODESET), "ANSI_X3.4-1968") == 0)
    setlocale (LC_CTYPE, "C.UTF-8");
  bindtextdomain (GETTEXT_PACKAGE, folder);
  bind_textdomain_codeset (GETTEXT_PACKAGE, "UTF-8");
  textdomain (GETTEXT_PACKAGE);
}

int
main (int argc, char **argv)
{
  g_autofree char *sentence = NULL;

  set_up_locale ();
  if (argc < 2)
    {
      print_help ();
      return CLI_USAGE;
    }
  if (strcmp (argv[1], "--help") == 0 || strcmp (argv[1], "-h") == 0)
    {
      print_help ();
      return CLI_DONE;
    }
  if (strcmp (argv[1], "--version") == 0)
    {
      g_print ("halfmoon-cli %s\n", HALFMOON_VERSION);
      return CLI_DONE;
    }
  for (gsize i = 0; i < G_N_ELEMENTS (commands); i++)
    if (strcmp (argv[1], commands[i].name) == 0)
      return commands[i].run (argc - 1, argv + 1);
  sentence = g_strdup_printf (_("There is no command “%s”. Commands are diagnose, model, advise, fit, thread, identify, torque and chart."), argv[1]);
  return cli_usage (NULL, sentence);
}

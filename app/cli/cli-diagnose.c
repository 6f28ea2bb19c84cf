/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli.h"

#include <glib/gi18n.h>

#include "hmui-tr.h"

/* FALSE when the answers ended, or the person stopped, before the end. */
static gboolean
run_to_the_end (CliIo *io, HmKnowledge *knowledge, HmDiagnosis *diagnosis)
{
  while (hm_diagnosis_get_phase (diagnosis) != HM_PHASE_CLOSED)
    if (hm_diagnosis_get_phase (diagnosis) == HM_PHASE_REPAIRING ? !cli_repair (io, knowledge, diagnosis) : !cli_step (io, diagnosis))
      return FALSE;
  cli_show_close (io, diagnosis);
  return TRUE;
}

CliExit
cli_diagnose (int argc, char **argv)
{
  g_autofree char *layout = NULL;
  g_autoptr (GError) error = NULL;
  g_autoptr (HmKnowledge) knowledge = NULL;
  g_autoptr (HmDiagnosis) diagnosis = NULL;
  g_autoptr (CliIo) io = NULL;
  const GOptionEntry options[] = {
    { "layout", 'l', 0, G_OPTION_ARG_STRING, &layout, N_("The kind of machine: rider, walk-behind, stationary, handheld"), N_("LAYOUT") },
    { NULL }
  };
  CliExit code;

  if (!cli_parse_options (&argc, &argv, _("[COMPLAINT]"),
                          _("Leads from a complaint to a proved repair. Asks for what is not given. Answers may come from a pipe, one a line."),
                          options, &code))
    return code;
  if (argc > 2)
    return cli_usage ("diagnose", _("One complaint at a time is accepted."));
  if ((knowledge = cli_open_knowledge (&error)) == NULL)
    return cli_fail (error);
  io = cli_io_new ();
  if (cli_start (io, knowledge, argc == 2 ? argv[1] : NULL, layout, &diagnosis, &error) && run_to_the_end (io, knowledge, diagnosis))
    return CLI_DONE;
  if (error != NULL)
    return cli_fail (error);
  cli_io_complain (io, "%s", _("Stopped before the complaint was fixed."));
  return CLI_BAD_INPUT;
}

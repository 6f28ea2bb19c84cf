/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The torque of one joint: reads what was asked and refuses what cannot be answered. */
#include "cli-torque.h"

#include <glib/gi18n.h>

#include "cli.h"

static void
clear_options (CliTorqueOptions *self)
{
  char **texts[] = { &self->strength, &self->state, &self->into, &self->engaged, &self->seat, &self->share, &self->given,
                     &self->nut_factor, &self->thread_friction, &self->head_friction, &self->preload, &self->adapter, &self->angle, &self->length, &self->bolts, &self->pattern, &self->passes };

  for (gsize i = 0; i < G_N_ELEMENTS (texts); i++)
    g_clear_pointer (texts[i], g_free);
  g_clear_pointer (&self->wrenches, g_strfreev);
}
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (CliTorqueOptions, clear_options)

static void
clear_request (CliTorqueRequest *self)
{
  g_clear_pointer (&self->wrenches, g_array_unref);
}
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (CliTorqueRequest, clear_request)

static const char *
find_friction_misuse (const CliTorqueOptions *options)
{
  if ((options->thread_friction == NULL) != (options->head_friction == NULL))
    return _("--thread-friction and --head-friction go together.");
  if ((options->state != NULL) + (options->nut_factor != NULL) + (options->thread_friction != NULL) > 1)
    return _("One way to give the friction is accepted: --state, --nut-factor, or --thread-friction with --head-friction.");
  return NULL;
}

/* A sentence about what goes together and does not, or NULL. */
static const char *
find_misuse (const CliTorqueOptions *options)
{
  if (options->strength == NULL && options->preload == NULL)
    return _("A strength class is wanted: --class 8.8, --class “SAE 5”; or the --preload aimed at.");
  if (options->preload != NULL && (options->strength != NULL || options->given != NULL || options->share != NULL
                                   || options->engaged != NULL || options->into != NULL
                                   || (options->seat != NULL && options->thread_friction == NULL)))
    return _("--preload goes with the friction only: the torque follows from T = K F d.");
  if (options->given != NULL && options->share != NULL)
    return _("Either --given or --share-of-proof is accepted, not both.");
  if ((options->adapter == NULL) != (options->length == NULL) || (options->angle != NULL && options->adapter == NULL))
    return _("--adapter and --wrench-length go together, and --angle with them.");
  if ((options->bolts == NULL) != (options->pattern == NULL) || (options->passes != NULL && options->bolts == NULL))
    return _("--bolts and --pattern go together, and --passes with them.");
  return find_friction_misuse (options);
}

static CliExit
run (const char *thread, const CliTorqueOptions *options)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (HmKnowledge) knowledge = cli_open_knowledge (&error);
  const HmTables *tables = knowledge != NULL ? hm_knowledge_get_tables (knowledge) : NULL;
  g_autoptr (CliIo) io = cli_io_new ();
  g_autoptr (CliReport) report = cli_report_new (io, "halfmoon-torque/1", options->json);
  g_auto (CliTorqueRequest) request = { 0 };

  if (tables == NULL || !cli_torque_read (thread, options, tables, &request, &error))
    return cli_fail (error);
  cli_report_tightening (report, &request);
  cli_report_setting (report, &request);
  cli_report_order (report, &request, tables);
  cli_report_finish (report);
  return CLI_DONE;
}

CliExit
cli_torque (int argc, char **argv)
{
  g_auto (CliTorqueOptions) chosen = { 0 };
  const GOptionEntry options[] = {
    { "class", 'c', 0, G_OPTION_ARG_STRING, &chosen.strength, N_("Property class or grade: 8.8, “SAE 5”, A2-70"), N_("CLASS") },
    { "state", 's', 0, G_OPTION_ARG_STRING, &chosen.state,
      N_("Friction by surface: dry (if left out), oiled, zinc, thread-locker, anti-seize"), N_("STATE") },
    { "nut-factor", 'k', 0, G_OPTION_ARG_STRING, &chosen.nut_factor, N_("Friction as K of T = K F d, 0.05 to 1"), N_("K") },
    { "thread-friction", 0, 0, G_OPTION_ARG_STRING, &chosen.thread_friction,
      N_("Friction as coefficients, 0.01 to 1: in the thread, and with it --head-friction; by the long form, hexagon head"),
      N_("NUMBER") },
    { "head-friction", 0, 0, G_OPTION_ARG_STRING, &chosen.head_friction, N_("Under the head or nut"), N_("NUMBER") },
    { "share-of-proof", 0, 0, G_OPTION_ARG_STRING, &chosen.share,
      N_("Share of the proof load to aim at, 0.3 to 0.9 (0.75 if left out) or in percent; into aluminium 30 % less, and never more than the thread in the hole holds"),
      N_("SHARE") },
    { "share", 0, 0, G_OPTION_ARG_STRING, &chosen.share, N_("The same as --share-of-proof"), N_("SHARE") },
    { "into", 'i', 0, G_OPTION_ARG_STRING, &chosen.into,
      N_("Screwed into: steel (if left out), cast-aluminium, die-cast-aluminium, copper"), N_("MATERIAL") },
    { "engaged", 'e', 0, G_OPTION_ARG_STRING, &chosen.engaged, N_("Length of full threads that meet"), N_("LENGTH") },
    { "seat", 0, 0, G_OPTION_ARG_STRING, &chosen.seat, N_("What turns on the part: plain (head, if left out), flange, washer"),
      N_("SEAT") },
    { "given", 'g', 0, G_OPTION_ARG_STRING, &chosen.given, N_("A torque that is given: tells what it does to the bolt"),
      N_("TORQUE") },
    { "preload", 0, 0, G_OPTION_ARG_STRING, &chosen.preload, N_("A preload to aim at, instead of a class"), N_("FORCE") },
    { "adapter", 'a', 0, G_OPTION_ARG_STRING, &chosen.adapter, N_("Adapter: from square drive to fastener"), N_("LENGTH") },
    { "angle", 0, 0, G_OPTION_ARG_STRING, &chosen.angle,
      N_("Of the adapter: 0 straight ahead (if left out), 90 sideways, 180 pointing back"), N_("DEGREES") },
    { "wrench-length", 'l', 0, G_OPTION_ARG_STRING, &chosen.length, N_("From the middle of the handle to the square drive"),
      N_("LENGTH") },
    { "wrench", 'w', 0, G_OPTION_ARG_STRING_ARRAY, &chosen.wrenches,
      N_("A wrench in the drawer, “10-50 lbf·ft”; may be given several times"), N_("RANGE") },
    { "bolts", 'b', 0, G_OPTION_ARG_STRING, &chosen.bolts, N_("Number of bolts of the joint"), N_("NUMBER") },
    { "pattern", 'p', 0, G_OPTION_ARG_STRING, &chosen.pattern, N_("How they stand: round, rectangular, cross, inline, none"),
      N_("PATTERN") },
    { "passes", 0, 0, G_OPTION_ARG_STRING, &chosen.passes, N_("“three-pass cross” (if left out) or “two-pass”"), N_("SCHEME") },
    { "json", 'j', 0, G_OPTION_ARG_NONE, &chosen.json,
      N_("Print JSON, format halfmoon-torque/1: N·m, N, MPa, mm, shares from 0 to 1; plain numbers by name: torque_nm with low, target and high, preload_n and stress_share_of_proof at the target, strip with margin: the load at which the thread in the hole or of the bolt strips over the preload at the target (null without a class, and for a steel nut or hole whose --engaged is not given)"), NULL },
    { NULL }
  };
  const char *misuse;
  CliExit code;

  if (!cli_parse_options (&argc, &argv, _("THREAD"),
                          _("Works out a torque from thread, class and friction; its limits, the setting with an adapter, the order of several bolts. The maker’s manual governs."),
                          options, &code))
    return code;
  misuse = argc != 2 ? _("One thread is wanted, for example “M8 x 1.25” (in quotes) or 5/16-18.") : find_misuse (&chosen);
  return misuse != NULL ? cli_usage ("torque", misuse) : run (argv[1], &chosen);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
/* One size, or one tool on one head: reads what was asked and refuses what cannot be answered. */
#include "cli-fit.h"

#include <glib/gi18n.h>

#include "cli.h"
#include "cli-read.h"
#include "hm-key-answer.h"
#include "hm-fastener-places.h"
#include "hmui-tr.h"

typedef struct { char *on; gboolean also, worn, painted, rounded, json; } Options;

static gboolean
refuse (const char *sentence, GError **error)
{
  g_set_error_literal (error, HM_DRIVE_ERROR, HM_DRIVE_ERROR_UNKNOWN, sentence);
  return FALSE;
}

static gboolean
check_opening (const HmDrive *size, const HmTables *tables, const HmOpeningRow **out, GError **error)
{
  HmSizeNeighbours next;
  const HmOpeningRow *below, *above;
  g_autofree char *name = NULL, *first = NULL, *second = NULL, *sentence = NULL;

  *out = hm_opening_find (size->size, size->inch, tables);
  if (*out != NULL)
    return TRUE;
  next = hm_size_neighbours (size->size, tables);
  below = size->inch ? next.inch_below : next.metric_below;
  above = size->inch ? next.inch_above : next.metric_above;
  name = hm_drive_format_size (size, &hm_format_default);
  first = below != NULL ? cli_words_opening (below, &hm_format_default) : NULL;
  second = above != NULL ? cli_words_opening (above, &hm_format_default) : NULL;
  if (first != NULL && second != NULL)
    sentence = g_strdup_printf (_("There is no opening of %s in the table; next to it are %s and %s."), name, first, second);
  else
    sentence = g_strdup_printf (_("There is no opening of %s in the table; next to it is %s."), name,
                                first != NULL ? first : second);
  return refuse (sentence, error);
}

static gboolean
check_pair (const CliFitRequest *request, GError **error)
{
  g_autofree char *size = hm_drive_format (&request->size, &hm_format_default);
  g_autofree char *on = hm_drive_format (&request->on, &hm_format_default);
  g_autofree char *sentence = NULL;

  if (request->size.kind == request->on.kind && request->size.kind != HM_DRIVE_HEXALOBULAR_EXTERNAL)
    return TRUE;
  sentence = g_strdup_printf (_("%s and %s are not compared; give two hexagons, two hexagon keys or two T sizes."), size, on);
  return refuse (sentence, error);
}

static gboolean
check_request (CliFitRequest *request, const HmTables *tables, GError **error)
{
  HmDriveKind kind = request->size.kind;

  if (request->has_on && !check_pair (request, error))
    return FALSE;
  if (kind != HM_DRIVE_HEX && (request->condition != HM_HEAD_CLEAN || request->rounded))
    return refuse (_("--worn, --painted and --rounded are for outside hexagons, such as 11/32 or 9 mm."), error);
  if (kind != HM_DRIVE_HEX)
    return TRUE;
  if (request->has_on)
    return check_opening (&request->size, tables, &request->opening, error);
  request->opening = hm_opening_find (request->size.size, request->size.inch, tables);
  return TRUE;
}

static gboolean
read_request (const char *text, const Options *options, const HmTables *tables, CliFitRequest *out, GError **error)
{
  HmLookup size, on;

  out->also = options->also;
  out->rounded = options->rounded;
  out->condition = options->worn ? HM_HEAD_WORN : options->painted ? HM_HEAD_PAINTED : HM_HEAD_CLEAN;
  if (!cli_read_size (NULL, text, tables, &size, error)
      || (options->on != NULL && !cli_read_size ("--on", options->on, tables, &on, error)))
    return FALSE;
  if (options->on != NULL && (size.has_head || on.has_head))
    return refuse (_("The head was given twice; either “9 mm on 11/32” or “9 mm” with --on 11/32 is accepted."), error);
  if (options->rounded && size.has_head)
    return refuse (_("--rounded goes with the width that is left across flats alone, such as 8.5 mm."), error);
  out->size = size.drive;
  out->has_on = options->on != NULL || size.has_head;
  if (out->has_on)
    out->on = size.has_head ? size.head : on.drive;
  return check_request (out, tables, error);
}

/* Combination heads: what turns the fasteners of the knowledge that have this drive. */
static void
report_other_drives (CliReport *report, const HmDrive *drive, const HmFastenerPlaces *places)
{
  const HmProvenance source = { HM_PROVENANCE_COMMON_PRACTICE, NULL };
  g_autoptr (GArray) found = hm_other_drives (hm_fastener_places_get_fasteners (places), drive);

  cli_report_begin_list (report, "other_drives", _("Combination heads: what also turns fasteners with this drive"), &source);
  for (guint i = 0; i < found->len; i++)
    {
      const HmOtherDrive *one = &g_array_index (found, HmOtherDrive, i);
      g_autofree char *name = hm_drive_format (&one->drive, cli_report_get_format (report));

      cli_report_begin_item (report, name);
      cli_report_word (report, "drive", NULL, name, NULL);
      cli_report_word (report, "example", _("for example"), one->example->name, hmui_tr (one->example->name));
      cli_report_end (report);
    }
  if (found->len == 0)
    cli_report_say (report, _("No fastener of the knowledge has another drive beside this one."));
  cli_report_end (report);
}

static void
report_request (CliReport *report, const CliFitRequest *request, const HmTables *tables)
{
  if (request->size.kind == HM_DRIVE_HEX)
    cli_report_hex (report, request, tables);
  else
    cli_report_recess (report, request, tables);
}

static CliExit
run (const char *text, const Options *options)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (HmKnowledge) knowledge = cli_open_knowledge (&error);
  g_autoptr (CliIo) io = cli_io_new ();
  g_autoptr (CliReport) report = cli_report_new (io, "halfmoon-fit/1", options->json);
  g_autoptr (HmFastenerPlaces) places = NULL;
  CliFitRequest request = { 0 };

  if (knowledge == NULL || !read_request (text, options, hm_knowledge_get_tables (knowledge), &request, &error))
    return cli_fail (error);
  if (request.also && (places = hm_fastener_places_new (knowledge, &error)) == NULL)
    return cli_fail (error);
  report_request (report, &request, hm_knowledge_get_tables (knowledge));
  if (places != NULL)
    report_other_drives (report, request.has_on ? &request.on : &request.size, places);
  cli_report_finish (report);
  return CLI_DONE;
}

CliExit
cli_fit (int argc, char **argv)
{
  Options chosen = { 0 };
  g_autofree char *on = NULL;
  const GOptionEntry options[] = {
    { "on", 'o', 0, G_OPTION_ARG_STRING, &on, N_("The head or recess that the size is to go on"), N_("SIZE") },
    { "also", 'a', 0, G_OPTION_ARG_NONE, &chosen.also, N_("List everything else that drives it"), NULL },
    { "worn", 'w', 0, G_OPTION_ARG_NONE, &chosen.worn, N_("The head is rusted or chewed"), NULL },
    { "painted", 'p', 0, G_OPTION_ARG_NONE, &chosen.painted, N_("The head is painted or galvanized"), NULL },
    { "rounded", 'r', 0, G_OPTION_ARG_NONE, &chosen.rounded, N_("The corners have gone: SIZE is what is left across flats"),
      NULL },
    { "json", 'j', 0, G_OPTION_ARG_NONE, &chosen.json,
      N_("Print JSON, format halfmoon-fit/1: lengths in mm, angles in degrees, shares from 0 to 1; plain numbers in matches, the best first: driver, clearance_min_mm, clearance_max_mm, free_angle_deg (to either side, loosest case), verdict (fits, usable, rounds, will-not-go-on); null where not known"), NULL },
    { NULL }
  };
  CliExit code;

  if (!cli_parse_options (&argc, &argv, _("SIZE"),
                          _("Tells a size in both systems, its neighbours, and how tools sit on it. Reads 11/32, “9 mm”, “hex 1/2 in”, “hex socket 5 mm”, T40, E10, and “9 mm on 11/32”; a bare number is millimetres."),
                          options, &code))
    return code;
  chosen.on = on;
  if (argc != 2)
    return cli_usage ("fit", _("One size is wanted, for example 11/32, “9 mm” (in quotes) or T40."));
  if (chosen.worn && chosen.painted)
    return cli_usage ("fit", _("Either --worn or --painted is accepted, not both."));
  if (chosen.rounded && (on != NULL || chosen.also || chosen.worn || chosen.painted))
    return cli_usage ("fit", _("--rounded goes alone with the size that is left across flats."));
  return run (argv[1], &chosen);
}

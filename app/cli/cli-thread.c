/* SPDX-License-Identifier: GPL-3.0-or-later */
/* One thread: its sizes, limits, holes, and what is taken for it. */
#include "cli.h"

#include <glib/gi18n.h>
#include <math.h>

#include "cli-designation.h"
#include "cli-near-miss.h"
#include "cli-read.h"
#include "cli-report.h"
#include "hm-tap.h"

/* What was asked. A pipe thread has a row of its own and nothing else. */
typedef struct
{
  HmThread thread;
  const HmThreadRow *row;      /* borrowed; NULL if no series has it */
  gboolean is_pipe, has_class;
  HmThreadClass tolerance_class;
} Request;

static gboolean
read_request (const char *text, const char *class_text, const HmTables *tables, Request *out, GError **error)
{
  HmThreadLimits limits;

  out->row = g_utf8_validate (text, -1, NULL) ? hm_pipe_thread_find (text, tables) : NULL;
  out->is_pipe = out->row != NULL;
  if (!out->is_pipe)
    {
      if (!hm_thread_parse (text, tables, &out->thread, error))
        return FALSE;
      out->row = hm_thread_find_row (&out->thread, tables);
    }
  out->has_class = class_text != NULL;
  if (!out->has_class)
    return TRUE;
  if (!cli_read_class ("--class", class_text, &out->tolerance_class, error))
    return FALSE;
  if (!out->is_pipe && !hm_thread_get_limits (&out->thread, out->tolerance_class, tables, &limits, error))
    return cli_refuse ("--class", error);
  if (!out->is_pipe)
    return TRUE;
  g_set_error_literal (error, HM_THREAD_ERROR, HM_THREAD_ERROR_CLASS,
                       _("--class: a tapered pipe thread has no class; leave it out, or give a thread such as M8 × 1.25 or 1/4-20"));
  return FALSE;
}

static const char *
series_name (HmThreadSeries series)
{
  static const char * const names[] = { N_("metric coarse"), N_("metric fine"), "UNC", "UNF", "UNEF", "NPT" };

  return names[series];
}

static void
report_row (CliReport *report, const HmThreadRow *row)
{
  const char *word, *shown = cli_words_use (row->use, &word);

  cli_report_begin (report, "series", NULL);
  cli_report_word (report, "name", _("Series"), series_name (row->series), _(series_name (row->series)));
  cli_report_provenance (report, row->provenance);
  cli_report_end (report);
  cli_report_word (report, "use", _("On small engines and outdoor equipment (a judgement)"), word, shown);
}

/* For programs: the main figures once more, in the unit of their name. */
static void
report_plain (CliReport *report, const Request *request, const HmTables *tables)
{
  const HmThread *thread = &request->thread;
  const HmHoleRow *holes = request->is_pipe ? NULL : hm_thread_find_holes (thread, tables);
  gboolean has_drill = holes != NULL && holes->tap_drill.mm > 0.0;
  g_autofree char *designation = request->is_pipe ? cli_designation_for_row (request->row)
                                                  : cli_designation_for_thread (thread, request->row);

  cli_report_word (report, "designation", NULL, designation, NULL);
  cli_report_plain_number (report, "major_mm", request->is_pipe ? request->row->major.mm : thread->major.mm);
  cli_report_plain_number (report, "pitch_mm", request->is_pipe ? request->row->pitch.mm : thread->pitch.mm);
  cli_report_plain_number (report, "pitch_diameter_mm", request->is_pipe ? NAN : hm_thread_pitch_diameter (thread).mm);
  cli_report_plain_number (report, "minor_internal_mm", request->is_pipe ? NAN : hm_thread_minor_diameter (thread).mm);
  cli_report_plain_number (report, "stress_area_mm2", request->is_pipe ? NAN : hm_thread_stress_area_mm2 (thread));
  cli_report_plain_number (report, "tap_drill_mm", has_drill ? holes->tap_drill.mm : NAN);
}

static void
report_pipe (CliReport *report, const HmThreadRow *row)
{
  cli_report_word (report, "thread", "", row->name, NULL);
  cli_report_value (report, "major", _("Outside of the pipe"), cli_quantity_length (row->major), CLI_FINE, NULL);
  cli_report_value (report, "pitch", _("Pitch"), cli_quantity_length (row->pitch), CLI_FINE, NULL);
  report_row (report, row);
  cli_report_provenance_of_rest (report, row->provenance);
  cli_report_say (report,
                  _("The name of a pipe thread is not its size. It is tapered and seals in the thread; a straight screw does not fit it."));
}

static void
report_profile (CliReport *report, const Request *request)
{
  const HmThread *thread = &request->thread;
  gboolean metric = thread->form == HM_THREAD_ISO_METRIC;
  const HmProvenance profile = { HM_PROVENANCE_COMPUTED, metric ? "ISO 68-1" : "ASME B1.1" };
  const HmProvenance area = { HM_PROVENANCE_COMPUTED, metric ? "ISO 898-1" : "ASME B1.1" };
  const HmProvenance all = { HM_PROVENANCE_COMPUTED, metric ? N_("basic profile of ISO 68-1, stress area of ISO 898-1")
                                                            : N_("basic profile and stress area of ASME B1.1") };
  g_autofree char *name = hm_thread_format (thread, cli_report_get_format (report));

  cli_report_word (report, "thread", "", name, NULL);
  cli_report_word (report, "form", _("Profile"), metric ? "ISO metric" : "Unified",
                   metric ? _("ISO metric, 60°, ISO 68-1") : _("Unified inch, 60°, ASME B1.1"));
  cli_report_flag (report, "left_hand", thread->left_hand);
  if (request->row != NULL)
    report_row (report, request->row);
  else
    cli_report_say (report, _("No series has this thread; it is worked out from diameter and pitch."));
  cli_report_value (report, "major", _("Major diameter"), cli_quantity_length (thread->major), CLI_FINE, &profile);
  cli_report_value (report, "pitch", _("Pitch"), cli_quantity_length (thread->pitch), CLI_FINE, &profile);
  cli_report_value (report, "pitch_diameter", _("Pitch diameter"), cli_quantity_length (hm_thread_pitch_diameter (thread)),
                    CLI_FINE, &profile);
  cli_report_value (report, "minor_diameter", _("Minor diameter of the hole"),
                    cli_quantity_length (hm_thread_minor_diameter (thread)),
                    CLI_FINE, &profile);
  cli_report_value (report, "stress_area", _("Stress area"),
                    hm_quantity (HM_QUANTITY_AREA, hm_thread_stress_area_mm2 (thread), HM_UNIT_MM2), CLI_BENCH, &area);
  cli_report_provenance_of_rest (report, all);
}

static void
report_limits (CliReport *report, const HmThread *thread, HmThreadClass tolerance_class, const HmTables *tables)
{
  gboolean internal = hm_thread_class_is_internal (tolerance_class);
  const HmProvenance source = { HM_PROVENANCE_COMPUTED,
                                thread->form == HM_THREAD_ISO_METRIC ? N_("formulas of ISO 965-1, normal engagement")
                                                                                             : N_("formulas of ASME B1.1, section 5") };
  g_autofree char *heading = g_strdup_printf (internal ? _("Hole, class %s") : _("Bolt, class %s"),
                                              hm_thread_class_name (tolerance_class));
  HmThreadLimits limits;

  if (!hm_thread_get_limits (thread, tolerance_class, tables, &limits, NULL))
    return;                         /* refused when the class was read */
  cli_report_begin_item (report, heading);
  cli_report_word (report, "class", NULL, hm_thread_class_name (tolerance_class), NULL);
  cli_report_flag (report, "internal", internal);
  if (internal)
    cli_report_value (report, "major_min", _("major at least"), cli_quantity_length (limits.major_min), CLI_FINE, NULL);
  else
    cli_report_range (report, "major", _("major"), cli_quantity_length (limits.major_min), cli_quantity_length (limits.major_max),
                      CLI_FINE, NULL);
  cli_report_range (report, "pitch_diameter", _("pitch diameter"), cli_quantity_length (limits.pitch_min),
                    cli_quantity_length (limits.pitch_max), CLI_FINE, NULL);
  cli_report_range (report, "minor", _("minor"), cli_quantity_length (limits.minor_min), cli_quantity_length (limits.minor_max),
                    CLI_FINE, NULL);
  cli_report_provenance (report, source);
  cli_report_end (report);
}

static void
report_all_limits (CliReport *report, const Request *request, const HmTables *tables)
{
  const HmThread *thread = &request->thread;

  cli_report_begin_list (report, "limits", _("Limits of size"), NULL);
  if (request->has_class)
    report_limits (report, thread, request->tolerance_class, tables);
  else
    {
      report_limits (report, thread, hm_thread_usual_class (thread->form, FALSE), tables);
      report_limits (report, thread, hm_thread_usual_class (thread->form, TRUE), tables);
    }
  cli_report_end (report);
}

static void
report_holes (CliReport *report, const HmThread *thread, const HmTables *tables)
{
  const HmHoleRow *holes = hm_thread_find_holes (thread, tables);
  const HmProvenance formula = { HM_PROVENANCE_COMPUTED, N_("share of the full thread by ASME B1.1") };

  cli_report_begin (report, "holes", _("Holes"));
  if (holes != NULL && holes->tap_drill.mm > 0.0)
    {
      cli_report_word (report, "tap_drill_name", _("Tap drill"), holes->tap_drill_name, NULL);
      cli_report_value (report, "tap_drill", _("Tap drill diameter"), cli_quantity_length (holes->tap_drill), CLI_FINE,
                        &holes->tap_provenance);
      cli_report_value (report, "percent_of_thread", _("Leaves of the full thread"),
                        hm_quantity (HM_QUANTITY_RATIO, hm_thread_percent_of_drill (thread, holes->tap_drill), HM_UNIT_PERCENT),
                        CLI_BENCH, &formula);
    }
  if (holes != NULL && holes->normal.mm > 0.0)
    {
      cli_report_value (report, "clearance_close", _("Clearance hole, close"), cli_quantity_length (holes->close), CLI_FINE,
                        &holes->provenance);
      cli_report_value (report, "clearance_normal", _("Clearance hole, normal"), cli_quantity_length (holes->normal), CLI_FINE,
                        &holes->provenance);
      cli_report_value (report, "clearance_loose", _("Clearance hole, loose"), cli_quantity_length (holes->loose), CLI_FINE,
                        &holes->provenance);
    }
  if (holes == NULL)
    cli_report_say (report, _("No drill and no clearance hole is listed for this thread."));
  cli_report_end (report);
}

static void
report_thread (CliReport *report, const Request *request, const HmTables *tables)
{
  report_plain (report, request, tables);
  if (request->is_pipe)
    {
      report_pipe (report, request->row);
      return;
    }
  report_profile (report, request);
  report_all_limits (report, request, tables);
  report_holes (report, &request->thread, tables);
  cli_report_near_misses (report, &request->thread, tables);
}

static CliExit
run (const char *text, const char *class_text, gboolean json)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (HmKnowledge) knowledge = cli_open_knowledge (&error);
  g_autoptr (CliIo) io = cli_io_new ();
  g_autoptr (CliReport) report = cli_report_new (io, "halfmoon-thread/1", json);
  Request request = { 0 };

  if (knowledge == NULL || !read_request (text, class_text, hm_knowledge_get_tables (knowledge), &request, &error))
    return cli_fail (error);
  report_thread (report, &request, hm_knowledge_get_tables (knowledge));
  cli_report_finish (report);
  return CLI_DONE;
}

CliExit
cli_thread (int argc, char **argv)
{
  g_autofree char *class_text = NULL;
  gboolean json = FALSE;
  const GOptionEntry options[] = {
    { "class", 'c', 0, G_OPTION_ARG_STRING, &class_text, N_("Tolerance class: 6g, 6H, 1A to 3B; both usual ones if left out"),
      N_("CLASS") },
    { "json", 'j', 0, G_OPTION_ARG_NONE, &json,
      N_("Print JSON, format halfmoon-thread/1: lengths in mm, areas in mm², shares from 0 to 1; plain numbers by name: designation (M8x1.25, 5/16-18 UNC), major_mm, pitch_mm, pitch_diameter_mm, minor_internal_mm, stress_area_mm2, tap_drill_mm (null if not listed)"), NULL },
    { NULL }
  };
  CliExit code;

  if (!cli_parse_options (&argc, &argv, _("THREAD"),
                          _("Tells the sizes of a thread: profile, limits, stress area, tap drill, clearance holes, near misses. Reads M8, “M8 x 1.25”, 1/4-20, No.10-24, “1/8 NPT”."),
                          options, &code))
    return code;
  if (argc != 2)
    return cli_usage ("thread", _("One thread is wanted, for example “M8 x 1.25” (in quotes) or 5/16-18."));
  return run (argv[1], class_text, json);
}

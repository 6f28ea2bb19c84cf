/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Which thread is it? From what was measured. */
#include "cli.h"

#include <glib/gi18n.h>
#include <string.h>

#include "cli-designation.h"
#include "cli-near-miss.h"
#include "cli-read.h"
#include "cli-report.h"
#include "hm-identify.h"
#include "hm-pitch-text.h"
#include "hmui-words.h"

#define MOST_PITCHES 200
#define MOST_CANDIDATES 8 /* what is left below has next to no probability */
#define LEAST_TPI 4       /* ASME B1.1: 4 to 80 threads per inch */
#define MOST_TPI 80

typedef struct
{
  char *outside, *inside, *pitch, *per_inch, *count, *over, *accuracy, *over_accuracy;
  gboolean hole, worn, json;
} Options;

static void
clear_options (Options *self)
{
  char **texts[] = { &self->outside, &self->inside, &self->pitch, &self->per_inch, &self->count, &self->over, &self->accuracy,
                     &self->over_accuracy };

  for (gsize i = 0; i < G_N_ELEMENTS (texts); i++)
    g_clear_pointer (texts[i], g_free);
}
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (Options, clear_options)

/* "caliper", "rule" or a length. */
static gboolean
read_accuracy (const char *option, const char *text, HmLength usual, HmLength *out, GError **error)
{
  HmQuantity length;

  *out = usual;
  if (text == NULL)
    return TRUE;
  if (strcmp (text, "caliper") == 0 || strcmp (text, "rule") == 0)
    {
      *out = text[0] == 'c' ? hm_caliper_sd : hm_rule_sd;
      return TRUE;
    }
  if (cli_read_length (NULL, text, &length, NULL))
    {
      out->mm = length.value;
      return TRUE;
    }
  g_set_error (error, HM_QUANTITY_ERROR, HM_QUANTITY_ERROR_SYNTAX,
               _("%s: “%s” is no accuracy; caliper, rule or a length such as 0.05 mm is accepted"), option, text);
  return FALSE;
}

static gboolean
read_diameter (const Options *options, HmThreadMeasurement *out, GError **error)
{
  const char *option = options->inside != NULL ? "--inside" : "--outside";
  const char *text = options->inside != NULL ? options->inside : options->outside;
  HmQuantity diameter;

  if (!read_accuracy ("--accuracy", options->accuracy, hm_caliper_sd, &out->diameter_sd, error))
    return FALSE;
  if (text == NULL)
    return TRUE;
  if (!cli_read_length (option, text, &diameter, error))
    return FALSE;
  out->diameter.mm = diameter.value;
  return TRUE;
}

static gboolean
read_count (const Options *options, HmThreadMeasurement *out, GError **error)
{
  HmLength sd;
  HmQuantity over;
  guint spaces;

  if (!read_accuracy ("--over-accuracy", options->over_accuracy, hm_rule_sd, &sd, error)
      || !cli_read_whole ("--count", options->count, 1, MOST_PITCHES, &spaces, error)
      || !cli_read_length ("--over", options->over, &over, error))
    return FALSE;
  hm_thread_measurement_count (out, spaces, (HmLength) { over.value }, sd);
  return TRUE;
}

static gboolean
read_pitch (const Options *options, HmThreadMeasurement *out, GError **error)
{
  const HmQuantity inch = hm_quantity (HM_QUANTITY_LENGTH, 1.0, HM_UNIT_INCH);
  HmPitchReading reading;
  guint tpi;

  if (options->count != NULL)
    return read_count (options, out, error);
  if (options->pitch != NULL)
    {
      if (!hm_pitch_parse (options->pitch, &reading, error))
        return cli_refuse ("--pitch", error);
      out->pitch = reading.pitch;
      if (reading.spaces > 0)
        {
          hm_thread_measurement_count (out, reading.spaces, reading.over, hm_rule_sd);
          return TRUE;
        }
    }
  else if (options->per_inch != NULL)
    {
      if (!cli_read_whole ("--per-inch", options->per_inch, LEAST_TPI, MOST_TPI, &tpi, error))
        return FALSE;
      hm_thread_measurement_count (out, tpi, (HmLength) { inch.value }, hm_rule_sd);
    }
  out->pitch_sd = hm_pitch_gauge_sd (out->pitch);
  return TRUE;
}

static gboolean
read_measurement (const Options *options, HmThreadMeasurement *out, GError **error)
{
  out->feature = options->hole || options->inside != NULL ? HM_FEATURE_HOLE : HM_FEATURE_BOLT;
  out->worn = options->worn;
  return read_diameter (options, out, error) && read_pitch (options, out, error);
}

static void
report_measurement (CliReport *report, const HmThreadMeasurement *measurement)
{
  const HmProvenance reading = { HM_PROVENANCE_COMPUTED, N_("the readings that were given; accuracy of instruments is common practice") };
  gboolean hole = measurement->feature == HM_FEATURE_HOLE;

  cli_report_begin (report, "measured", NULL);
  cli_report_word (report, "feature", _("Measured on"), hole ? "hole" : "bolt", hole ? _("a hole") : _("a bolt"));
  cli_report_flag (report, "worn", measurement->worn);
  if (measurement->diameter.mm > 0.0)
    {
      cli_report_value (report, "diameter", hole ? _("Inside, over the crests") : _("Outside, over the crests"),
                        cli_quantity_length (measurement->diameter), CLI_BENCH, NULL);
      cli_report_value (report, "diameter_accuracy", _("Standard deviation of that reading"),
                        cli_quantity_length (measurement->diameter_sd), CLI_BENCH, NULL);
    }
  if (measurement->pitch.mm > 0.0)
    {
      cli_report_value (report, "pitch", _("Pitch"), cli_quantity_length (measurement->pitch), CLI_FINE, NULL);
      cli_report_value (report, "pitch_accuracy", _("Standard deviation of that reading"),
                        cli_quantity_length (measurement->pitch_sd), CLI_FINE, NULL);
    }
  cli_report_provenance_of_rest (report, reading);
  cli_report_end (report);
}

static void
report_candidate (CliReport *report, const HmThreadCandidate *candidate)
{
  g_autofree char *percent = hmui_words_percent (candidate->probability);
  g_autofree char *heading = g_strdup_printf (_("%s, %s"), candidate->row->name, percent);
  g_autofree char *designation = cli_designation_for_row (candidate->row);
  const char *word, *shown = cli_words_use (candidate->row->use, &word);

  cli_report_begin_item (report, heading);
  cli_report_word (report, "designation", NULL, designation, NULL);
  cli_report_word (report, "thread", NULL, candidate->row->name, NULL);
  cli_report_plain_number (report, "probability", candidate->probability);
  cli_report_word (report, "use", "", word, shown);
  cli_report_value (report, "major", _("major"), cli_quantity_length (candidate->row->major), CLI_FINE, NULL);
  cli_report_value (report, "pitch", _("pitch"), cli_quantity_length (candidate->row->pitch), CLI_FINE, NULL);
  cli_report_provenance (report, candidate->row->provenance);
  cli_report_end (report);
}

static void
report_probe (CliReport *report, const HmThreadSeparation *probe, gboolean hole)
{
  static const char * const words[] = { "none", "diameter", "pitch gauge", "count pitches" };
  const char *shown = hole ? _("the diameter in the hole, by caliper") : _("the diameter over the crests, by caliper");

  if (probe->probe == HM_PROBE_GAUGE)
    shown = _("the pitch, by pitch gauge");
  else if (probe->probe == HM_PROBE_COUNT)
    shown = _("a rule over several pitches");
  cli_report_word (report, "measure", _("Measure"), words[probe->probe], shown);
  if (probe->probe == HM_PROBE_COUNT)
    cli_report_count (report, "pitches", _("Pitches to count"), probe->spaces);
}

/* What tells the two most probable apart. */
static void
report_next (CliReport *report, const HmThreadMeasurement *measurement, GArray *candidates, const HmTables *tables)
{
  const HmThreadCandidate *first = &g_array_index (candidates, HmThreadCandidate, 0);
  const HmThreadCandidate *second = &g_array_index (candidates, HmThreadCandidate, 1);
  const HmProvenance source = { HM_PROVENANCE_COMPUTED,
                                N_("from the limits of both threads; accuracy of instruments is common practice") };
  HmThreadSeparation probe = hm_thread_separate (&first->thread, &second->thread, measurement->feature, tables);
  g_autofree char *title = g_strdup_printf (_("To tell %s from %s"), first->row->name, second->row->name);

  cli_report_begin (report, "next", title);
  if (probe.probe == HM_PROBE_NONE)
    {
      cli_report_word (report, "measure", "", "none",
                       _("Nothing at hand tells them apart for certain: try a nut or bolt known to be right, by hand."));
      cli_report_end (report);
      return;
    }
  report_probe (report, &probe, measurement->feature == HM_FEATURE_HOLE);
  cli_report_value (report, "first", first->row->name, cli_quantity_length (probe.first), CLI_FINE, NULL);
  cli_report_value (report, "second", second->row->name, cli_quantity_length (probe.second), CLI_FINE, NULL);
  cli_report_value (report, "deviations", _("Apart, in deviations of the reading"), cli_quantity_number (probe.deviations),
                    CLI_BENCH, NULL);
  cli_report_provenance (report, source);
  cli_report_end (report);
}

static void
report_identity (CliReport *report, const HmThreadMeasurement *measurement, const HmTables *tables)
{
  g_autoptr (GArray) candidates = hm_thread_identify (measurement, tables);
  const HmProvenance source = { HM_PROVENANCE_COMPUTED,
                                N_("from the readings, their accuracy, and how common each thread is (a judgement)") };

  report_measurement (report, measurement);
  cli_report_begin_list (report, "candidates", _("What it can be, most probable first"), NULL);
  for (guint i = 0; i < MIN (candidates->len, MOST_CANDIDATES); i++)
    report_candidate (report, &g_array_index (candidates, HmThreadCandidate, i));
  if (candidates->len == 0)
    cli_report_say (report,
                    _("No thread of the series comes near these readings. Clean the thread and measure again, or say --worn."));
  cli_report_end (report);
  cli_report_provenance (report, source);
  if (candidates->len > 1)
    report_next (report, measurement, candidates, tables);
  if (candidates->len > 0)
    cli_report_near_misses (report, &g_array_index (candidates, HmThreadCandidate, 0).thread, tables);
  else
    {
      cli_report_begin_list (report, "near_misses", NULL, NULL);
      cli_report_end (report);
    }
}

/* A sentence about what goes together and does not, or NULL. */
static const char *
find_misuse (const Options *options)
{
  gboolean counted = options->count != NULL || options->over != NULL;

  if (options->outside != NULL && options->inside != NULL)
    return _("One diameter is accepted: --outside on a bolt, --outside with --hole (or --inside) in a hole.");
  if ((options->count == NULL) != (options->over == NULL))
    return _("--count and --over go together: the pitches counted, and the length that they take.");
  if ((options->pitch != NULL) + (options->per_inch != NULL) + counted > 1)
    return _("One way to give the pitch is accepted: --pitch, --per-inch, or --count with --over.");
  if (options->accuracy != NULL && options->outside == NULL && options->inside == NULL)
    return _("--accuracy is that of --outside or --inside, which is missing.");
  if (options->over_accuracy != NULL && options->over == NULL)
    return _("--over-accuracy is that of --over, which is missing.");
  if (options->outside == NULL && options->inside == NULL && options->pitch == NULL && options->per_inch == NULL && !counted)
    return _("Something measured is wanted: --outside (in a hole with --hole), and --pitch, --per-inch, or --count with --over.");
  return NULL;
}

static CliExit
run (const Options *options)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (HmKnowledge) knowledge = cli_open_knowledge (&error);
  g_autoptr (CliIo) io = cli_io_new ();
  g_autoptr (CliReport) report = cli_report_new (io, "halfmoon-identify/1", options->json);
  HmThreadMeasurement measurement = { 0 };

  if (knowledge == NULL || !read_measurement (options, &measurement, &error))
    return cli_fail (error);
  report_identity (report, &measurement, hm_knowledge_get_tables (knowledge));
  cli_report_finish (report);
  return CLI_DONE;
}

CliExit
cli_identify (int argc, char **argv)
{
  g_auto (Options) chosen = { 0 };
  const GOptionEntry options[] = {
    { "outside", 'd', 0, G_OPTION_ARG_STRING, &chosen.outside,
      N_("Diameter over the crests of a bolt; with --hole what a caliper reads inside, over the crests of the hole"), N_("LENGTH") },
    { "hole", 0, 0, G_OPTION_ARG_NONE, &chosen.hole, N_("It is a hole, not a bolt"), NULL },
    { "inside", 'D', 0, G_OPTION_ARG_STRING, &chosen.inside, N_("The same as --outside with --hole"), N_("LENGTH") },
    { "accuracy", 0, 0, G_OPTION_ARG_STRING, &chosen.accuracy, N_("Standard deviation of that diameter: caliper (0.02 mm, if left out), rule (0.25 mm), or a length"),
      N_("ACCURACY") },
    { "pitch", 'p', 0, G_OPTION_ARG_STRING, &chosen.pitch,
      N_("Pitch by gauge: “1.25 mm”, “18 tpi”, or counted: “10 over 12.5 mm”"), N_("PITCH") },
    { "per-inch", 't', 0, G_OPTION_ARG_STRING, &chosen.per_inch, N_("Threads per inch by gauge, 4 to 80"), N_("NUMBER") },
    { "tpi", 0, 0, G_OPTION_ARG_STRING, &chosen.per_inch, N_("The same as --per-inch"), N_("NUMBER") },
    { "count", 'n', 0, G_OPTION_ARG_STRING, &chosen.count, N_("Pitches counted: crests less one"), N_("NUMBER") },
    { "over", 0, 0, G_OPTION_ARG_STRING, &chosen.over, N_("The length that they take"), N_("LENGTH") },
    { "over-accuracy", 0, 0, G_OPTION_ARG_STRING, &chosen.over_accuracy,
      N_("Of that length: rule (if left out), caliper, or a length"), N_("ACCURACY") },
    { "worn", 'w', 0, G_OPTION_ARG_NONE, &chosen.worn, N_("It looks worn, rusted or battered"), NULL },
    { "json", 'j', 0, G_OPTION_ARG_NONE, &chosen.json,
      N_("Print JSON, format halfmoon-identify/1: lengths in mm, shares from 0 to 1; candidates with designation (M8x1.25, 5/16-18 UNC) and probability (a plain number), near_misses of the most probable"), NULL },
    { NULL }
  };
  const char *misuse;
  CliExit code;

  if (!cli_parse_options (&argc, &argv, NULL,
                          _("Ranks the threads that a caliper and a pitch gauge can have measured. Lengths carry their unit: “7.9 mm”, “0.3125 in”, 5/16."),
                          options, &code))
    return code;
  misuse = argc != 1 ? _("Only options are accepted, for example --outside “7.9 mm” --per-inch 18.") : find_misuse (&chosen);
  return misuse != NULL ? cli_usage ("identify", misuse) : run (&chosen);
}

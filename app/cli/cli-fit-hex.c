/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Outside hexagons: openings on heads and nuts. */
#include "cli-fit.h"

#include <glib/gi18n.h>

#include "hm-width-answer.h"

static const HmProvenance fit_source = { HM_PROVENANCE_COMPUTED,
  N_("from the limits of head and opening; what still counts as usable is common practice") };

/* Of what no part tells otherwise: the size itself. */
static const HmProvenance size_source = { HM_PROVENANCE_COMPUTED, N_("the size as named, 1 in = 25.4 mm exactly") };

static void
report_head (CliReport *report, const HmWidthAnswer *answer, HmHeadCondition condition)
{
  const HmHead *head = &answer->head;
  const HmProvenance source = { head->standard != NULL ? HM_PROVENANCE_STANDARD : HM_PROVENANCE_COMPUTED,
                                head->standard != NULL ? head->standard : N_("the widest limits of all standards that have this size") };
  const HmProvenance measured = { HM_PROVENANCE_COMPUTED,
                                  N_("no standard has a head of this size; taken as measured with a caliper, 0.05 mm to either side") };
  const char *word, *shown = cli_words_head_condition (condition, &word);

  cli_report_range (report, "head", _("Head across flats"), cli_quantity_length (head->min), cli_quantity_length (head->max),
                    CLI_FINE,
                    answer->origin == HM_WIDTH_STANDARD ? &source : &measured);
  cli_report_word (report, "condition", condition != HM_HEAD_CLEAN ? _("Head") : NULL, word, shown);
}

static void
report_opening (CliReport *report, const HmOpeningRow *opening)
{
  cli_report_range (report, "opening", _("Opening across flats"), cli_quantity_length (opening->min),
                    cli_quantity_length (opening->max), CLI_FINE,
                    &opening->provenance);
}

static void
report_verdict (CliReport *report, const HmFit *fit)
{
  const char *verdict, *reason;
  const char *verdict_shown = cli_words_fit_verdict (fit->verdict, &verdict);
  const char *reason_shown = cli_words_fit_reason (fit->reason, &reason);

  cli_report_word (report, "verdict", _("Verdict"), verdict, verdict_shown);
  cli_report_word (report, "reason", _("Why"), reason, reason_shown);
}

static void
report_fit (CliReport *report, const HmFit *fit)
{
  report_verdict (report, fit);
  cli_report_range (report, "clearance", _("Clearance"), cli_quantity_length (fit->clearance_min),
                    cli_quantity_length (fit->clearance_max), CLI_BENCH, NULL);
  cli_report_degrees (report, "free_angle", _("Turns freely to either side by"), fit->free_angle_min, fit->free_angle_max);
  cli_report_value (report, "goes_on", _("Pairs that go together"), cli_quantity_ratio (fit->goes_on), CLI_BENCH, NULL);
  if (fit->verdict != HM_FIT_WILL_NOT_GO_ON)
    {
      cli_report_value (report, "looseness", _("Loosest case, clearance as a multiple of the proper size’s"),
                        cli_quantity_number (fit->looseness), CLI_BENCH, NULL);
      cli_report_value (report, "contact", _("Loosest case, middle of the contact (0.5: half of each flat; 1: the corner)"),
                        cli_quantity_number (fit->contact),
                        CLI_BENCH, NULL);
    }
  cli_report_provenance (report, fit_source);
}

/* A pair as one line of a list. @name: the size that is not the one asked for */
static void
report_item (CliReport *report, const char *name, const HmFit *fit)
{
  const char *verdict, *reason;
  const char *verdict_shown = cli_words_fit_verdict (fit->verdict, &verdict);
  const char *reason_shown = cli_words_fit_reason (fit->reason, &reason);
  gboolean goes_on = fit->verdict != HM_FIT_WILL_NOT_GO_ON;

  cli_report_begin_item (report, name);
  cli_report_word (report, "size", NULL, name, NULL);
  cli_report_word (report, "verdict", "", verdict, verdict_shown);
  cli_report_word (report, "reason", "", reason, reason_shown);
  cli_report_range (report, "clearance", _("clearance"), cli_quantity_length (fit->clearance_min),
                    cli_quantity_length (fit->clearance_max),
                    CLI_BENCH, NULL);
  cli_report_degrees (report, "free_angle", goes_on ? _("turns freely by") : NULL, fit->free_angle_min, fit->free_angle_max);
  cli_report_end (report);
}

/* For programs: a pair in plain numbers. The free angle is that of the loosest case, as the verdict is. */
static void
report_match (CliReport *report, const HmOpeningRow *opening, const HmFit *fit)
{
  g_autofree char *name = cli_words_opening (opening, cli_report_get_format (report));
  g_autofree char *driver = cli_words_plain (name);
  const char *verdict;

  cli_words_fit_verdict (fit->verdict, &verdict);
  cli_report_begin_item (report, driver);
  cli_report_word (report, "driver", NULL, driver, NULL);
  cli_report_plain_number (report, "clearance_min_mm", fit->clearance_min.mm);
  cli_report_plain_number (report, "clearance_max_mm", fit->clearance_max.mm);
  cli_report_plain_number (report, "free_angle_deg", fit->free_angle_max);
  cli_report_word (report, "verdict", NULL, verdict, NULL);
  cli_report_end (report);
}

/* @fit: of the opening asked for, or NULL: all that may be put on the head */
static void
report_matches (CliReport *report, const CliFitRequest *request, const HmWidthAnswer *answer, const HmFit *fit)
{
  if (!cli_report_is_json (report))
    return;
  cli_report_begin_list (report, "matches", NULL, &fit_source);
  if (fit != NULL)
    report_match (report, request->opening, fit);
  for (guint i = 0; fit == NULL && i < answer->fits->len; i++)
    {
      const HmSizeFit *one = &g_array_index (answer->fits, HmSizeFit, i);

      report_match (report, one->opening, &one->fit);
    }
  cli_report_end (report);
}

static void
report_size_fits (CliReport *report, const char *member, const char *title, GArray *fits, const char *none)
{
  cli_report_begin_list (report, member, title, &fit_source);
  for (guint i = 0; i < fits->len; i++)
    {
      const HmSizeFit *one = &g_array_index (fits, HmSizeFit, i);
      g_autofree char *name = cli_words_opening (one->opening, cli_report_get_format (report));

      report_item (report, name, &one->fit);
    }
  if (fits->len == 0)
    cli_report_say (report, none);
  cli_report_end (report);
}

void
cli_report_carriers (CliReport *report, const HmDrive *size, const HmTables *tables)
{
  g_autoptr (GPtrArray) heads = hm_heads_of_size (size, tables);

  if (heads->len == 0)
    return;
  cli_report_begin_list (report, "carried_by", _("Carried by"), NULL);
  for (guint i = 0; i < heads->len; i++)
    {
      const HmHexRow *row = g_ptr_array_index (heads, i);
      const char *word, *shown = cli_words_head_kind (row->kind, &word);
      g_autofree char *heading = g_strdup_printf ("%s %s", row->thread, shown);
      HmHead head;

      cli_report_begin_item (report, heading);
      cli_report_word (report, "thread", NULL, row->thread, NULL);
      cli_report_word (report, "kind", NULL, word, NULL);
      cli_report_word (report, "standard", "", row->standard, NULL);
      if (hm_head_from_row (row, &head))
        cli_report_range (report, "across_flats", "", cli_quantity_length (head.min), cli_quantity_length (head.max), CLI_FINE,
                          NULL);
      cli_report_provenance (report, row->provenance);
      cli_report_end (report);
    }
  cli_report_end (report);
}

static void
report_neighbour (CliReport *report, const char *member, const char *label, const HmOpeningRow *row)
{
  g_autofree char *name = row != NULL ? cli_words_opening (row, cli_report_get_format (report)) : NULL;

  if (name != NULL)
    cli_report_word (report, member, label, name, NULL);
}

static void
report_neighbours (CliReport *report, const HmSizeNeighbours *next)
{
  cli_report_begin (report, "neighbours", _("Sizes next to it"));
  report_neighbour (report, "inch_below", _("Inch, below"), next->inch_below);
  report_neighbour (report, "inch_above", _("Inch, above"), next->inch_above);
  report_neighbour (report, "metric_below", _("Metric, below"), next->metric_below);
  report_neighbour (report, "metric_above", _("Metric, above"), next->metric_above);
  cli_report_end (report);
}

/* Other heads that the socket of this size goes on. */
static void
report_turns (CliReport *report, const HmWidthAnswer *answer)
{
  cli_report_begin_list (report, "turns", _("Other heads that this opening goes on"), &fit_source);
  for (guint i = 0; i < answer->turns->len; i++)
    {
      const HmHeadFit *one = &g_array_index (answer->turns, HmHeadFit, i);
      g_autofree char *name = hm_drive_format_size (&one->drive, cli_report_get_format (report));

      report_item (report, name, &one->fit);
    }
  if (answer->turns->len == 0)
    cli_report_say (report, _("No head of another size."));
  cli_report_end (report);
}

static void
report_size (CliReport *report, const CliFitRequest *request, const HmWidthAnswer *answer, const HmTables *tables)
{
  g_autoptr (GArray) equivalents = hm_size_equivalents (&answer->head, request->condition, tables);

  report_head (report, answer, request->condition);
  if (answer->opening != NULL)
    report_opening (report, answer->opening);
  cli_report_carriers (report, &request->size, tables);
  report_neighbours (report, &answer->neighbours);
  report_size_fits (report, "equivalents",
                    request->size.inch ? _("Nearest metric openings on this head") : _("Nearest inch openings on this head"),
                    equivalents, _("No size of the other system is within 5 %."));
  report_matches (report, request, answer, NULL);
  if (request->also && answer->opening != NULL)
    report_turns (report, answer);
}

static void
report_pair (CliReport *report, const CliFitRequest *request, const HmWidthAnswer *answer, const HmTables *tables)
{
  HmFit fit = hm_fit (request->opening, &answer->head, request->condition, tables);
  g_autofree char *on = hm_drive_format_size (&request->on, cli_report_get_format (report));

  cli_report_word (report, "on", _("On a head of"), on, NULL);
  report_opening (report, request->opening);
  report_head (report, answer, request->condition);
  cli_report_begin (report, "fit", _("How it sits"));
  report_fit (report, &fit);
  cli_report_end (report);
  report_matches (report, request, answer, &fit);
}

static void
report_rounded (CliReport *report, HmLength width, const HmTables *tables)
{
  HmRoundedChoice choice = hm_size_for_rounded (width, tables);
  const HmProvenance source = { HM_PROVENANCE_COMPUTED,
                                N_("from the limits of the openings; driving on down to 3 % below is common practice") };
  const HmFormat *format = cli_report_get_format (report);
  g_autofree char *drive_on = choice.drive_on != NULL ? cli_words_opening (choice.drive_on, format) : NULL;
  g_autofree char *next_up = choice.next_up != NULL ? cli_words_opening (choice.next_up, format) : NULL;

  cli_report_begin (report, "rounded", _("Corners gone: what to try"));
  if (drive_on != NULL)
    {
      cli_report_word (report, "drive_on", _("Tap on a six-point socket of"), drive_on, NULL);
      cli_report_value (report, "interference", _("The head is larger by"), cli_quantity_length (choice.interference), CLI_BENCH,
                        NULL);
      cli_report_caution (report, _("Wear eye protection: a socket that is tapped on can chip."));
    }
  else
    cli_report_say (report, _("No opening is close enough below this width to be tapped on."));
  if (next_up != NULL)
    cli_report_word (report, "next_up", _("Goes on by hand (loose)"), next_up, NULL);
  cli_report_provenance (report, source);
  cli_report_end (report);
}

void
cli_report_hex (CliReport *report, const CliFitRequest *request, const HmTables *tables)
{
  g_autofree char *name = hm_drive_format_size (&request->size, cli_report_get_format (report));
  const HmDrive *head = request->has_on ? &request->on : &request->size;
  g_autoptr (HmWidthAnswer) answer = hm_width_answer_new (head, request->condition, tables);

  cli_report_word (report, "size", request->has_on ? _("Opening") : _("Size"), name, NULL);
  cli_report_value (report, "across_flats", _("Across flats"), cli_quantity_length (request->size.size), CLI_FINE, NULL);
  cli_report_provenance_of_rest (report, size_source);
  if (request->has_on)
    report_pair (report, request, answer, tables);
  else if (request->rounded)
    {
      report_rounded (report, request->size.size, tables);
      cli_report_begin_list (report, "matches", NULL, NULL);   /* no verdict holds without corners */
      cli_report_end (report);
    }
  else
    report_size (report, request, answer, tables);
  if (request->also)
    {
      g_autoptr (GArray) drivers = hm_size_drivers (&answer->head, request->condition, tables);
      report_size_fits (report, "drivers", _("What drives it, best first"), drivers,
                        _("No opening of the table drives it safely."));
    }
}

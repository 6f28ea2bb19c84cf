/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli-near-miss.h"

#include <glib/gi18n.h>

#include "cli-designation.h"
#include "hm-near-miss.h"

static const HmProvenance worked_out = { HM_PROVENANCE_COMPUTED, N_("from the tolerances of both threads, usual classes") };

const char *
cli_words_use (HmUse use, const char **word)
{
  static const char * const words[] = { N_("usual"), N_("occasional"), N_("rare") };

  *word = words[use];
  return _(words[use]);
}

static void
report_mate (CliReport *report, const HmMating *mating)
{
  if (mating->mate == HM_MATE_JAMS)
    cli_report_word (report, "mate", "", "jams", _("starts by hand, then jams; force strips it"));
  else
    cli_report_word (report, "mate", "", "strips", _("goes in all the way, strips when tightened"));
  if (mating->turns_loose < G_MAXDOUBLE)
    cli_report_range (report, "turns", mating->mate == HM_MATE_JAMS ? _("turns until it jams") : NULL,
                      cli_quantity_number (mating->turns_tight), cli_quantity_number (mating->turns_loose), CLI_BENCH, NULL);
  cli_report_value (report, "turns_needed", mating->mate == HM_MATE_JAMS ? _("turns to go in one diameter") : NULL,
                    cli_quantity_number (mating->turns_needed), CLI_BENCH, NULL);
  cli_report_range (report, "engagement", _("depth of thread that holds"), cli_quantity_ratio (mating->engagement_loose),
                    cli_quantity_ratio (mating->engagement_tight), CLI_BENCH, NULL);
}

static void
report_near_miss (CliReport *report, const HmThread *thread, const HmNearMiss *near_miss)
{
  g_autofree char *own = hm_thread_format (thread, cli_report_get_format (report));
  g_autofree char *heading = near_miss->thread_is_bolt ? g_strdup_printf (_("Bolt %s in hole %s"), own, near_miss->row->name)
                                                       : g_strdup_printf (_("Bolt %s in hole %s"), near_miss->row->name, own);
  g_autofree char *designation = cli_designation_for_row (near_miss->row);
  const char *word;

  cli_report_begin_item (report, heading);
  cli_report_word (report, "designation", NULL, designation, NULL);
  cli_report_word (report, "thread", NULL, near_miss->row->name, NULL);
  cli_report_word (report, "bolt", NULL, near_miss->thread_is_bolt ? own : near_miss->row->name, NULL);
  cli_report_word (report, "hole", NULL, near_miss->thread_is_bolt ? near_miss->row->name : own, NULL);
  cli_words_use (near_miss->row->use, &word);
  cli_report_word (report, "use", NULL, word, NULL);
  report_mate (report, &near_miss->mating);
  cli_report_end (report);
}

void
cli_report_near_misses (CliReport *report, const HmThread *thread, const HmTables *tables)
{
  g_autoptr (GArray) found = hm_thread_near_misses (thread, tables);

  cli_report_begin_list (report, "near_misses", _("Near misses: what starts in it and ruins it"), &worked_out);
  for (guint i = 0; i < found->len; i++)
    report_near_miss (report, thread, &g_array_index (found, HmNearMiss, i));
  if (found->len == 0)
    cli_report_say (report, _("No other thread of the series starts in it and then fails."));
  cli_report_end (report);
  if (found->len > 0)
    cli_report_caution (report,
                        _("Turn a bolt in by hand first: if it binds before it is in, back it out and measure both threads."));
}

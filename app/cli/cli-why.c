/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The reasons: what each answer would lead to, what else could be done, how the causes stand. */
#include "cli.h"

#include <glib/gi18n.h>

#include "hmui-tr.h"
#include "hmui-words.h"

#define SHOWN_CAUSES 5u
#define SHOWN_REASONS 3u

void
cli_show_causes (CliIo *io, HmDiagnosis *diagnosis)
{
  HmGuide *guide = hm_diagnosis_get_guide (diagnosis);
  guint order[HM_MODEL_MAX_CAUSES + 1];
  guint n = hm_diagnosis_get_causes_by_probability (diagnosis, order);

  cli_io_print (io, 0, "%s", _("What it may be:"));
  for (guint i = 0; i < MIN (n, SHOWN_CAUSES); i++)
    {
      g_autofree char *percent = hmui_words_percent (hm_diagnosis_get_probability (diagnosis, order[i]));
      cli_io_print (io, 14, "  %10s  %s", percent, hmui_words_cause (guide, order[i]));
    }
  if (hm_diagnosis_other_is_likely (diagnosis))
    cli_io_print (io, 2, "  %s", _("It may well be something that is not listed here. Look with open eyes, or send it out."));
}

static void
show_branches (CliIo *io, HmDiagnosis *diagnosis, guint check)
{
  HmGuide *guide = hm_diagnosis_get_guide (diagnosis);
  guint n_checks;
  const HmCheck *c = &hm_guide_get_checks (guide, &n_checks)[check];
  HmBranch branches[HM_MODEL_MAX_OUTCOMES];
  guint n = hm_diagnosis_get_branches (diagnosis, check, branches);

  cli_io_print (io, 0, "%s", _("What each answer leads to:"));
  for (guint i = 0; i < n; i++)
    {
      g_autofree char *percent = hmui_words_percent (branches[i].probability);
      g_autofree char *next = hmui_words_action (guide, &branches[i].next);
      g_autofree char *finding = hmui_words_finding (c, branches[i].finding, cli_io_get_format (io));
      cli_io_print (io, 14, "  %10s  %s → %s", percent, finding, next);
    }
}

static char *
reason_source (HmDiagnosis *diagnosis, const HmReason *reason)
{
  HmGuide *guide = hm_diagnosis_get_guide (diagnosis);
  guint n;

  if (reason->kind == HM_REASON_INCIDENT)
    return g_strdup (hmui_tr (hm_guide_get_incidents (guide, &n)[reason->index].name));
  if (reason->kind == HM_REASON_REPLACED)
    return g_strdup_printf (_("Already replaced: %s"), hmui_words_cause (guide, reason->index));
  return hmui_words_entry_step (guide, hm_diagnosis_get_entry (diagnosis, reason->index));
}

static void
show_reasons (CliIo *io, HmDiagnosis *diagnosis, guint cause)
{
  g_autoptr (GArray) reasons = hm_diagnosis_get_reasons (diagnosis, cause);

  for (guint i = 0; i < MIN (reasons->len, SHOWN_REASONS); i++)
    {
      const HmReason *reason = &g_array_index (reasons, HmReason, i);
      g_autofree char *source = reason_source (diagnosis, reason);
      g_autofree char *effect = hmui_words_decibans (reason->decibans);
      cli_io_print (io, 4, "    %s: %s", source, effect);
    }
}

void
cli_show_why (CliIo *io, HmDiagnosis *diagnosis, guint check)
{
  HmGuide *guide = hm_diagnosis_get_guide (diagnosis);
  const HmPlan *runner_up = hm_diagnosis_get_runner_up (diagnosis);
  guint order[HM_MODEL_MAX_CAUSES + 1];
  guint n = hm_diagnosis_get_causes_by_probability (diagnosis, order);

  cli_io_gap (io);
  if (runner_up != NULL)
    {
      g_autofree char *action = hmui_words_action (guide, &runner_up->action);
      g_autofree char *minutes = hmui_words_minutes (runner_up->expected_minutes);
      cli_io_print (io, 2, _("The next best step is “%s”, with %s expected."), action, minutes);
    }
  show_branches (io, diagnosis, check);
  cli_io_print (io, 0, "%s", _("Why the causes stand where they stand:"));
  for (guint i = 0; i < MIN (n, 2); i++)
    {
      cli_io_print (io, 2, "  %s", hmui_words_cause (guide, order[i]));
      show_reasons (io, diagnosis, order[i]);
    }
}

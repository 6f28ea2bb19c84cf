/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The repair: what to do, fasteners with torque, putting back, the proof. */
#include "cli.h"

#include <glib/gi18n.h>
#include <string.h>

#include "hmui-tr.h"
#include "hmui-words.h"

static void
show_fastener (CliIo *io, const HmTables *tables, const HmFastener *fastener)
{
  const HmFormat *format = cli_io_get_format (io);
  HmTorqueAnswer answer;
  gboolean known = hm_torque_for_fastener (tables, fastener, &answer, NULL);
  g_autofree char *size = hmui_words_count_and_thread (fastener, format);
  g_autofree char *drives = hmui_words_drives (fastener, format);
  g_autofree char *torque = hmui_words_torque (known ? &answer : NULL, format);
  g_autofree char *provenance = hm_provenance_format (known ? answer.provenance : fastener->provenance);

  g_strdelimit (torque, "\n", ';');
  cli_io_print (io, 7, "     %s (%s): %s, %s", hmui_tr (fastener->name), hmui_tr (fastener->where), size, drives);
  cli_io_print (io, 9, "         %s %s [%s]", _("torque"), torque, provenance);
}

static void
show_remedy (CliIo *io, HmKnowledge *knowledge, const HmRemedy *remedy)
{
  for (guint i = 0; remedy->steps[i] != NULL; i++)
    cli_io_print (io, 5, "%3u  %s", i + 1, hmui_tr (remedy->steps[i]));
  for (guint i = 0; remedy->parts[i] != NULL; i++)
    cli_io_print (io, 10, "%-9s %s", i == 0 ? _("Parts") : "", hmui_tr (remedy->parts[i]));
  if (*remedy->fasteners != NULL)
    cli_io_print (io, 0, "%s", _("Fasteners of the repair:"));
  for (const HmFastener * const *f = remedy->fasteners; *f != NULL; f++)
    show_fastener (io, hm_knowledge_get_tables (knowledge), *f);
}

static void
show_put_back (CliIo *io, HmKnowledge *knowledge, HmDiagnosis *diagnosis)
{
  HmGuide *guide = hm_diagnosis_get_guide (diagnosis);
  guint order[HM_GUIDE_MAX_ACCESS], n_steps;
  const HmAccessStep *steps = hm_guide_get_access (guide, &n_steps);
  guint n = hm_access_order (guide, hm_diagnosis_get_open (diagnosis), order);

  if (n > 0)
    cli_io_print (io, 0, "%s", _("Put back, in this order:"));
  while (n-- > 0)
    {
      const HmAccessStep *step = &steps[order[n]];
      cli_io_print (io, 4, "  □ %s", hmui_tr (step->name));
      if (step->put_back != NULL)
        cli_io_print (io, 6, "      %s", hmui_tr (step->put_back));
      for (const HmFastener * const *f = step->fasteners; *f != NULL; f++)
        show_fastener (io, hm_knowledge_get_tables (knowledge), *f);
    }
}

static gboolean
acknowledge_repair (CliIo *io, HmDiagnosis *diagnosis, const HmAction *action, const HmCause *causes)
{
  if (!cli_acknowledge_opening (io, diagnosis, action))
    return FALSE;
  for (guint k = 0; k < action->n_causes; k++)
    if (!cli_acknowledge (io, diagnosis, causes[action->causes[k]].remedy->cautions))
      return FALSE;
  return TRUE;
}

/* Asks how the proof came out. FALSE when the answers ended. */
static gboolean
ask_result (CliIo *io, HmDiagnosis *diagnosis)
{
  const HmComplaint *complaint = hm_guide_get_complaint (hm_diagnosis_get_guide (diagnosis));

  cli_io_print (io, 0, "%s", _("Then prove it:"));
  for (guint i = 0; complaint->verify_steps[i] != NULL; i++)
    cli_io_print (io, 5, "%3u  %s", i + 1, hmui_tr (complaint->verify_steps[i]));
  for (;;)
    {
      g_autofree char *answer = cli_io_ask (io, _("f  fixed   s  still there   d  different now   u  undo   q  stop:"));
      if (answer == NULL || strcmp (answer, "q") == 0)
        return FALSE;
      if (strcmp (answer, "u") == 0)
        hm_diagnosis_undo (diagnosis);
      else if (strcmp (answer, "f") == 0)
        hm_diagnosis_finish_repair (diagnosis, HM_REPAIR_FIXED);
      else if (strcmp (answer, "s") == 0)
        hm_diagnosis_finish_repair (diagnosis, HM_REPAIR_PERSISTS);
      else if (strcmp (answer, "d") == 0)
        hm_diagnosis_finish_repair (diagnosis, HM_REPAIR_CHANGED);
      else
        {
          cli_io_complain (io, _("“%s” is no answer to this; f, s, d, u or q is accepted."), answer);
          continue;
        }
      return TRUE;
    }
}

gboolean
cli_repair (CliIo *io, HmKnowledge *knowledge, HmDiagnosis *diagnosis)
{
  HmGuide *guide = hm_diagnosis_get_guide (diagnosis);
  guint n_causes;
  const HmCause *causes = hm_guide_get_causes (guide, &n_causes);
  const HmEntry *entry = hm_diagnosis_get_entry (diagnosis, hm_diagnosis_get_n_entries (diagnosis) - 1);
  HmAction action = { .kind = HM_ACTION_REPAIR, .n_causes = entry->n_causes };
  g_autofree char *title = NULL;

  memcpy (action.causes, entry->causes, sizeof action.causes);
  title = hmui_words_action (guide, &action);
  cli_io_title (io, title);
  if (!acknowledge_repair (io, diagnosis, &action, causes))
    return FALSE;
  for (guint k = 0; k < action.n_causes; k++)
    {
      const HmCause *cause = &causes[action.causes[k]];
      g_autofree char *percent = hmui_words_percent (hm_diagnosis_get_probability (diagnosis, action.causes[k]));
      cli_io_print (io, 2, "%s (%s). %s", hmui_tr (cause->name), percent, hmui_tr (cause->detail));
      cli_show_opening (io, diagnosis, &action, cause->remedy->fasteners, cause->remedy->tools);
      show_remedy (io, knowledge, cause->remedy);
    }
  show_put_back (io, knowledge, diagnosis);
  for (guint k = 0; k < action.n_causes; k++)
    for (const char * const *line = causes[action.causes[k]].remedy->after; *line != NULL; line++)
      cli_io_print (io, 10, "%-9s %s", _("Set"), hmui_tr (*line));
  cli_io_print (io, 0, "%s", _("Torques that are not from the maker’s manual are class values: the maker’s manual governs."));
  return ask_result (io, diagnosis);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
/* One check: cautions, what to do, the answer. */
#include "cli.h"

#include <glib/gi18n.h>
#include <string.h>

#include "hmui-tr.h"
#include "hmui-words.h"

#define SHOWN_OTHERS 9u

static void
show_caution (CliIo *io, const HmCaution *caution)
{
  cli_io_print (io, 2, "! %s: %s. %s", caution->serious ? _("DANGER") : _("Caution"), hmui_tr (caution->name), hmui_tr (caution->text));
  if (caution->defer != NULL && *caution->defer != '\0')
    cli_io_print (io, 2, _("  Governs: %s"), hmui_tr (caution->defer));
}

gboolean
cli_acknowledge (CliIo *io, HmDiagnosis *diagnosis, const HmCaution * const *cautions)
{
  for (; *cautions != NULL; cautions++)
    {
      g_autofree char *tick = g_strdup_printf ("caution:%s", (*cautions)->id);
      show_caution (io, *cautions);
      while ((*cautions)->serious && !hm_diagnosis_get_tick (diagnosis, tick))
        {
          g_autofree char *answer = cli_io_ask (io, _("I have done this [y]:"));
          if (answer == NULL)
            return FALSE;
          if (g_ascii_strcasecmp (answer, "y") == 0)
            hm_diagnosis_set_tick (diagnosis, tick, TRUE);
          else
            cli_io_complain (io, "%s", _("Type y when it is done; the instructions come after it."));
        }
    }
  return TRUE;
}

void
cli_show_opening (CliIo *io, HmDiagnosis *diagnosis, const HmAction *action, const HmFastener * const *fasteners, const HmTool * const *tools)
{
  HmGuide *guide = hm_diagnosis_get_guide (diagnosis);
  HmAccessSet set = hm_diagnosis_get_to_open (diagnosis, action);
  g_autoptr (GPtrArray) lay_out = hm_access_tools (guide, set, fasteners, tools, cli_io_get_format (io));
  guint order[HM_GUIDE_MAX_ACCESS], n, n_steps;
  const HmAccessStep *steps = hm_guide_get_access (guide, &n_steps);

  if (lay_out->len > 0)
    {
      g_autoptr (GString) line = g_string_new (NULL);
      for (guint i = 0; i < lay_out->len; i++)
        g_string_append_printf (line, "%s%s", i > 0 ? " · " : "", hmui_tr (g_ptr_array_index (lay_out, i)));
      cli_io_print (io, 10, "%-9s %s", _("Lay out"), line->str);
    }
  n = hm_access_order (guide, set, order);
  for (guint i = 0; i < n; i++)
    {
      g_autofree char *time = hmui_words_minutes (steps[order[i]].open.minutes);
      cli_io_print (io, 10, "%-9s %s, %s", i == 0 ? _("Open") : "", hmui_tr (steps[order[i]].name), time);
      for (guint line = 0; steps[order[i]].steps[line] != NULL; line++)
        cli_io_print (io, 12, "%-10s – %s", "", hmui_tr (steps[order[i]].steps[line]));
      if (steps[order[i]].photo != NULL)
        cli_io_print (io, 12, "%-10s – %s %s", "", _("Photo:"), hmui_tr (steps[order[i]].photo));
    }
}

static void
show_standing (CliIo *io, HmDiagnosis *diagnosis)
{
  g_autofree char *spent = hmui_words_minutes (hm_diagnosis_get_minutes_spent (diagnosis).minutes);
  g_autofree char *expected = hmui_words_expected (hm_diagnosis_get_advice (diagnosis));

  cli_io_print (io, 0, _("%s spent. %s"), spent, expected);
}

/* A reading is typed as a number, so its findings are picked with a "=" before theirs. */
static void
show_findings (CliIo *io, const HmCheck *check)
{
  const char *mark = check->is_reading ? "=" : "";

  cli_io_print (io, 0, "%s", check->is_reading ? _("What did you read?") : _("What did you find?"));
  if (check->is_reading)
    cli_io_print (io, 5, _("     Type the reading, in %s; or pick a finding:"), hm_unit_symbol (check->unit));
  for (guint i = 0; i < check->n_findings; i++)
    {
      g_autofree char *finding = hmui_words_finding (check, i, cli_io_get_format (io));
      cli_io_print (io, 6, " %2s%u  %s. %s", mark, i + 1, finding, hmui_tr (check->findings[i].means));
    }
  cli_io_print (io, 5, "%s", _("  n  not sure   c  cannot do this   o  something else   w  why   u  undo   q  stop"));
}

gboolean
cli_acknowledge_opening (CliIo *io, HmDiagnosis *diagnosis, const HmAction *action)
{
  HmGuide *guide = hm_diagnosis_get_guide (diagnosis);
  guint order[HM_GUIDE_MAX_ACCESS], n_steps;
  const HmAccessStep *steps = hm_guide_get_access (guide, &n_steps);
  guint n = hm_access_order (guide, hm_diagnosis_get_to_open (diagnosis, action), order);

  for (guint i = 0; i < n; i++)
    if (!cli_acknowledge (io, diagnosis, steps[order[i]].cautions))
      return FALSE;
  return TRUE;
}

static gboolean
show_check (CliIo *io, HmDiagnosis *diagnosis, guint at)
{
  guint n;
  const HmCheck *check = &hm_guide_get_checks (hm_diagnosis_get_guide (diagnosis), &n)[at];
  const HmAction action = { .kind = HM_ACTION_CHECK, .check = at };
  g_autofree char *time = hmui_words_minutes (check->time.minutes);

  cli_io_title (io, hmui_tr (check->name));
  if (!cli_acknowledge_opening (io, diagnosis, &action) || !cli_acknowledge (io, diagnosis, check->cautions))
    return FALSE;
  cli_show_opening (io, diagnosis, &action, NULL, check->tools);
  cli_io_print (io, 10, "%-9s %s", _("Time"), time);
  for (guint i = 0; check->steps[i] != NULL; i++)
    cli_io_print (io, 5, "%3u  %s", i + 1, hmui_tr (check->steps[i]));
  cli_io_gap (io);
  show_standing (io, diagnosis);
  cli_show_causes (io, diagnosis);
  show_findings (io, check);
  return TRUE;
}

/* The finding that @answer names: its number ("=2" where a reading is taken), or its id; -1 for none. */
static int
find_finding (const HmCheck *check, const char *answer)
{
  guint64 number;

  if (check->is_reading && *answer == '=')
    answer++;
  else if (check->is_reading || hm_check_find_finding (check, answer) >= 0)
    return hm_check_find_finding (check, answer);
  return g_ascii_string_to_unsigned (answer, 10, 1, check->n_findings, &number, NULL) ? (int) number - 1 : -1;
}

static gboolean
take_reading (CliIo *io, HmDiagnosis *diagnosis, guint at, const HmCheck *check, const char *answer)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *verdict = NULL;
  HmQuantity reading;
  double weight;
  guint band;

  if (!hm_quantity_parse (answer, check->kind, check->unit, &reading, &error)
      || !hm_diagnosis_answer_reading (diagnosis, at, reading, &error))
    {
      cli_io_complain (io, "%s", error->message);
      return FALSE;
    }
  band = hm_diagnosis_judge_reading (diagnosis, at, reading, &weight);
  verdict = hmui_words_verdict (check, band, reading, weight, cli_io_get_format (io));
  cli_io_print (io, 2, "%s", verdict);
  return TRUE;
}

/* TRUE when @answer was taken as a finding or a reading. */
static gboolean
take_answer (CliIo *io, HmDiagnosis *diagnosis, guint at, const char *answer)
{
  guint n;
  const HmCheck *check = &hm_guide_get_checks (hm_diagnosis_get_guide (diagnosis), &n)[at];
  int finding = find_finding (check, answer);

  if (finding >= 0)
    {
      hm_diagnosis_answer (diagnosis, at, (guint) finding);
      return TRUE;
    }
  if (check->is_reading)
    return take_reading (io, diagnosis, at, check, answer);
  cli_io_complain (io, _("“%s” is no answer to this; a number from 1 to %u, n, c, o, w, u or q is accepted."), answer, check->n_findings);
  return FALSE;
}

/* The list of other steps; gives the one chosen, or nothing. */
static gboolean
choose_other (CliIo *io, HmDiagnosis *diagnosis, HmAction *out, gboolean *chosen)
{
  HmGuide *guide = hm_diagnosis_get_guide (diagnosis);
  const HmPlan *plans;
  guint n = MIN (hm_diagnosis_get_ranked (diagnosis, &plans), SHOWN_OTHERS);
  g_autofree char *answer = NULL;
  guint64 number;

  cli_io_gap (io);
  for (guint i = 0; i < n; i++)
    {
      g_autofree char *name = hmui_words_action (guide, &plans[i].action);
      g_autofree char *minutes = hmui_words_minutes (plans[i].expected_minutes);
      cli_io_print (io, 5, _("%3u  %s (expected: %s)"), i + 1, name, minutes);
    }
  answer = cli_io_ask (io, _("Which one? Nothing to go back:"));
  if (answer == NULL)
    return FALSE;
  *chosen = g_ascii_string_to_unsigned (answer, 10, 1, n, &number, NULL);
  if (*chosen)
    *out = plans[number - 1].action;
  else if (*answer != '\0')
    cli_io_complain (io, _("“%s” is none of these; a number from 1 to %u is accepted."), answer, n);
  return TRUE;
}

static gboolean
begin_repair (CliIo *io, HmDiagnosis *diagnosis, const HmAction *action)
{
  if (action->kind == HM_ACTION_ESCALATE)
    hm_diagnosis_send_out (diagnosis);
  else
    hm_diagnosis_begin_repair (diagnosis, action->causes, action->n_causes);
  return TRUE;
}

/* Letters that stand for something else than a finding. Gives TRUE in @done when the step is over. */
static gboolean
take_letter (CliIo *io, HmDiagnosis *diagnosis, HmAction *action, const char *answer, gboolean *done)
{
  gboolean chosen = FALSE;

  *done = TRUE;
  switch (*answer)
    {
    case 'n':
      hm_diagnosis_answer_unsure (diagnosis, action->check);
      return TRUE;
    case 'c':
      hm_diagnosis_answer_cannot (diagnosis, action->check);
      return TRUE;
    case 'u':
      hm_diagnosis_undo (diagnosis);
      return TRUE;
    case 'q':
      return FALSE;
    case 'w':
      cli_show_why (io, diagnosis, action->check);
      *done = FALSE;
      return TRUE;
    default:
      if (!choose_other (io, diagnosis, action, &chosen))
        return FALSE;
      if (chosen && action->kind != HM_ACTION_CHECK)
        return begin_repair (io, diagnosis, action);
      *done = FALSE;
      return !chosen || show_check (io, diagnosis, action->check);
    }
}

static gboolean
run_check (CliIo *io, HmDiagnosis *diagnosis, HmAction action)
{
  if (!show_check (io, diagnosis, action.check))
    return FALSE;
  for (;;)
    {
      g_autofree char *answer = cli_io_ask (io, _("Answer:"));
      gboolean done;
      if (answer == NULL)
        return FALSE;
      if (strlen (answer) == 1 && strchr ("nuqwco", *answer) != NULL)
        {
          if (!take_letter (io, diagnosis, &action, answer, &done))
            return FALSE;
          if (done)
            return TRUE;
        }
      else if (take_answer (io, diagnosis, action.check, answer))
        return TRUE;
    }
}

gboolean
cli_step (CliIo *io, HmDiagnosis *diagnosis)
{
  HmAction action = hm_diagnosis_get_advice (diagnosis)->action;

  if (action.kind == HM_ACTION_CHECK)
    return run_check (io, diagnosis, action);
  return begin_repair (io, diagnosis, &action);
}

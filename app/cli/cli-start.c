/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Before the first check: complaint, machine, what happened before, what was replaced. */
#include "cli.h"

#include <glib/gi18n.h>
#include <stdlib.h>
#include <string.h>

#include "hmui-tr.h"
#include "hmui-words.h"

/* The index that @answer names: a number from 1, or an id; -1 for neither. */
static int
choice_of (const char *answer, const char * const *ids, guint n)
{
  guint64 number;

  for (guint i = 0; i < n; i++)
    if (strcmp (answer, ids[i]) == 0)
      return (int) i;
  if (g_ascii_string_to_unsigned (answer, 10, 1, n, &number, NULL))
    return (int) number - 1;
  return -1;
}

static int
ask_one (CliIo *io, const char *title, const char * const *ids, const char * const *names, guint n)
{
  cli_io_title (io, title);
  for (guint i = 0; i < n; i++)
    cli_io_print (io, 5, "%3u  %s", i + 1, hmui_tr (names[i]));
  for (;;)
    {
      g_autofree char *prompt = g_strdup_printf (_("Number [1–%u]:"), n);
      g_autofree char *answer = cli_io_ask (io, prompt);
      int at = answer != NULL ? choice_of (answer, ids, n) : -1;
      if (answer == NULL || at >= 0)
        return at;
      cli_io_complain (io, _("“%s” is none of these; a number from 1 to %u is accepted."), answer, n);
    }
}

typedef void (*TellFunc) (HmDiagnosis *diagnosis, guint index, gboolean value);

/* Several numbers or ids, or nothing. */
static gboolean
ask_several (CliIo *io, HmDiagnosis *diagnosis, const char *title, const char * const *ids, const char * const *names, guint n, TellFunc tell)
{
  cli_io_title (io, title);
  for (guint i = 0; i < n; i++)
    cli_io_print (io, 5, "%3u  %s", i + 1, hmui_tr (names[i]));
  for (;;)
    {
      g_autofree char *answer = cli_io_ask (io, _("Numbers, with commas between; nothing for none:"));
      g_auto (GStrv) parts = NULL;
      gboolean good = TRUE;
      if (answer == NULL)
        return FALSE;
      parts = g_strsplit_set (answer, ",; ", -1);
      for (char **part = parts; *part != NULL && good; part++)
        if (**part != '\0' && choice_of (*part, ids, n) < 0)
          {
            cli_io_complain (io, _("“%s” is none of these; numbers from 1 to %u are accepted."), *part, n);
            good = FALSE;
          }
      for (char **part = parts; *part != NULL && good; part++)
        if (**part != '\0')
          tell (diagnosis, (guint) choice_of (*part, ids, n), TRUE);
      if (good)
        return TRUE;
    }
}

static gboolean
ask_history (CliIo *io, HmDiagnosis *diagnosis)
{
  HmGuide *guide = hm_diagnosis_get_guide (diagnosis);
  guint n_incidents, n_causes;
  const HmIncident *incidents = hm_guide_get_incidents (guide, &n_incidents);
  const HmCause *causes = hm_guide_get_causes (guide, &n_causes);
  g_autofree const char **ids = g_new (const char *, MAX (n_incidents, n_causes) + 1);
  g_autofree const char **names = g_new (const char *, MAX (n_incidents, n_causes) + 1);

  for (guint i = 0; i < n_incidents; i++)
    {
      ids[i] = incidents[i].id;
      names[i] = incidents[i].name;
    }
  if (!ask_several (io, diagnosis, _("What happened before?"), ids, names, n_incidents, hm_diagnosis_set_incident))
    return FALSE;
  for (guint i = 0; i < n_causes; i++)
    {
      ids[i] = causes[i].id;
      names[i] = causes[i].name;
    }
  return ask_several (io, diagnosis, _("Which of these has already been repaired or replaced?"), ids, names, n_causes, hm_diagnosis_set_replaced);
}

static const char *
ask_complaint (CliIo *io, HmKnowledge *knowledge)
{
  guint n;
  const HmComplaint *list = hm_knowledge_get_complaints (knowledge, &n);
  g_autofree const char **ids = g_new (const char *, n);
  g_autofree const char **names = g_new (const char *, n);
  int at;

  for (guint i = 0; i < n; i++)
    {
      ids[i] = list[i].id;
      names[i] = list[i].name;
    }
  at = ask_one (io, _("What is wrong?"), ids, names, n);
  return at >= 0 ? list[at].id : NULL;
}

static const char *
ask_layout (CliIo *io, HmKnowledge *knowledge, const char *complaint)
{
  guint n, covered = 0;
  const HmLayout *list = hm_knowledge_get_layouts (knowledge, &n);
  g_autofree const char **ids = g_new (const char *, n);
  g_autofree const char **names = g_new (const char *, n);
  int at;

  for (guint i = 0; i < n; i++)
    if (hm_knowledge_covers (knowledge, complaint, list[i].id))
      {
        ids[covered] = list[i].id;
        names[covered++] = list[i].name;
      }
  at = covered > 0 ? ask_one (io, _("What kind of machine?"), ids, names, covered) : -1;
  return at >= 0 ? ids[at] : NULL;
}

gboolean
cli_start (CliIo *io, HmKnowledge *knowledge, const char *complaint, const char *layout, HmDiagnosis **out, GError **error)
{
  g_autoptr (HmDiagnosis) diagnosis = NULL;
  HmGuide *guide;

  if (complaint == NULL && (complaint = ask_complaint (io, knowledge)) == NULL)
    return FALSE;
  if (layout == NULL && (layout = ask_layout (io, knowledge, complaint)) == NULL)
    return FALSE;
  diagnosis = hm_diagnosis_new (knowledge, complaint, layout, error);
  if (diagnosis == NULL)
    return FALSE;
  guide = hm_diagnosis_get_guide (diagnosis);
  cli_io_gap (io);
  cli_io_print (io, 0, "%s · %s", hmui_tr (hm_guide_get_complaint (guide)->name), hmui_tr (hm_guide_get_layout (guide)->name));
  cli_io_print (io, 0, "%s", _("The maker’s manual governs wherever it differs from what is shown."));
  if (!ask_history (io, diagnosis))
    return FALSE;
  *out = g_steal_pointer (&diagnosis);
  return TRUE;
}

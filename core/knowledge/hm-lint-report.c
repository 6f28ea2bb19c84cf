/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-lint.h"
#include <math.h>

/* What a finished guide looks like to someone who has to tell its causes apart. */

#define SAME_SHARE 1e-12

/* Prior of each cause; the last is "something not listed". */
static void
fill_priors (const HmGuide *guide, double *priors)
{
  guint n = 0;
  const HmCause *causes = hm_guide_get_causes (guide, &n);
  double other = hm_guide_get_complaint (guide)->other_share;
  double sum = 0;

  for (guint i = 0; i < n; i++)
    sum += causes[i].rate;
  for (guint i = 0; i < n; i++)
    priors[i] = (1 - other) * causes[i].rate / sum;
  priors[n] = other;
}

/* log10 P(finding | cause) / P(finding | not cause), times ten. */
static double
decibans (const double *row, const double *priors, guint n_columns, guint cause)
{
  double elsewhere = 0;

  for (guint i = 0; i < n_columns; i++)
    if (i != cause)
      elsewhere += priors[i] * row[i];
  return 10 * log10 (row[cause] * (1 - priors[cause]) / elsewhere);
}

void
hm_lint_best_decibans (const HmGuide *guide, guint cause, double *most_for, double *most_against)
{
  guint n_causes = 0, n_checks = 0;
  const HmCheck *checks = hm_guide_get_checks (guide, &n_checks);
  g_autofree double *priors = NULL;

  hm_guide_get_causes (guide, &n_causes);
  priors = g_new (double, n_causes + 1);
  fill_priors (guide, priors);
  *most_for = *most_against = 0;
  for (guint c = 0; c < n_checks; c++)
    for (guint k = 0; k < checks[c].n_findings; k++)
      {
        double moved = decibans (checks[c].likelihood + k * (n_causes + 1), priors, n_causes + 1, cause);
        *most_for = MAX (*most_for, moved);
        *most_against = MIN (*most_against, moved);
      }
}

static gboolean
never_told_apart (const HmGuide *guide, guint a, guint b)
{
  guint n_causes = 0, n_checks = 0;
  const HmCheck *checks = hm_guide_get_checks (guide, &n_checks);

  hm_guide_get_causes (guide, &n_causes);
  for (guint c = 0; c < n_checks; c++)
    for (guint k = 0; k < checks[c].n_findings; k++)
      {
        const double *row = checks[c].likelihood + k * (n_causes + 1);
        if (fabs (row[a] - row[b]) > SAME_SHARE)
          return FALSE;
      }
  return TRUE;
}

static void
report_group (const HmGuide *guide, guint first, gboolean *grouped, const char *where, GString *report)
{
  guint n = 0;
  const HmCause *causes = hm_guide_get_causes (guide, &n);
  g_autoptr (GString) members = g_string_new (NULL);

  for (guint i = first + 1; i < n; i++)
    if (!grouped[i] && never_told_apart (guide, first, i))
      {
        grouped[i] = TRUE;
        g_string_append_printf (members, ", %s", causes[i].id);
      }
  if (members->len > 0)
    g_string_append_printf (report, "%s: no check tells these causes apart: %s%s\n", where, causes[first].id, members->str);
}

void
hm_lint_report (const HmGuide *guide, GString *report)
{
  guint n = 0;
  const HmCause *causes = hm_guide_get_causes (guide, &n);
  g_autofree char *where = g_strdup_printf ("%s on %s", hm_guide_get_complaint (guide)->id, hm_guide_get_layout (guide)->id);
  g_autofree gboolean *grouped = g_new0 (gboolean, n);

  for (guint i = 0; i < n; i++)
    {
      double most_for = 0, most_against = 0;
      hm_lint_best_decibans (guide, i, &most_for, &most_against);
      if (most_for < HM_LINT_DECIBANS)
        g_string_append_printf (report, "%s: no check speaks for %s by %g dB (the best by %.1f dB)\n",
                                where, causes[i].id, HM_LINT_DECIBANS, most_for);
      if (most_against > -HM_LINT_DECIBANS)
        g_string_append_printf (report, "%s: no check speaks against %s by %g dB (the best by %.1f dB)\n",
                                where, causes[i].id, HM_LINT_DECIBANS, -most_against);
      if (!grouped[i])
        report_group (guide, i, grouped, where, report);
    }
}

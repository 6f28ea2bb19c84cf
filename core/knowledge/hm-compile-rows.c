/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-compile-rows.h"
#include "hm-knowledge.h"
#include "hm-knowledge-words.h"
#include <math.h>
#include <string.h>

#define SUM_TOLERANCE 1e-9     /* of named shares: the sum of a few decimal percentages */

static const HmShareWord row_words[] = {
  { "almost-always", 0.97 }, { "usually", 0.85 }, { "often", 0.60 },
  { "sometimes", 0.30 }, { "rarely", 0.08 }, { "almost-never", 0.02 },
};

/* "low often" into @row; a finding that has no share yet stands at -1. */
static gboolean
parse_member (const char *member, const char * const *findings, double *row, GError **error)
{
  g_auto (GStrv) words = g_strsplit (member, " ", 2);
  double share = 0;
  int place;

  if (words[0] == NULL || words[1] == NULL)
    return hm_words_refuse (error, "“%s” is not a finding with how often it comes up", member);
  place = hm_words_find_or_fail (findings, "finding", words[0], error);
  if (place < 0)
    return FALSE;
  if (row[place] >= 0)
    return hm_words_refuse (error, "finding “%s” is named twice", words[0]);
  if (!hm_share_from_text (words[1], row_words, G_N_ELEMENTS (row_words), &share, error))
    return FALSE;
  row[place] = share;
  return TRUE;
}

static gboolean
check_sum (double named, guint n_left, GError **error)
{
  if (named > 1 + SUM_TOLERANCE)
    return hm_words_refuse (error, "the shares come to %g %%, more than 100", named * 100);
  if (n_left == 0 && named < 1 - SUM_TOLERANCE)
    return hm_words_refuse (error, "all findings are named, but their shares come to %g %% and not to 100", named * 100);
  return TRUE;
}

/* What is left goes to the findings at -1. */
static void
share_out (double *row, guint n, double left, guint n_left, const double *fallback)
{
  double weight = 0;

  for (guint i = 0; i < n; i++)
    if (row[i] < 0 && fallback != NULL)
      weight += fallback[i];
  for (guint i = 0; i < n; i++)
    if (row[i] < 0)
      row[i] = weight > 0 ? left * fallback[i] / weight : left / n_left;
}

gboolean
hm_rows_parse (const char *text, const char * const *findings, guint n, const double *fallback, double *out, GError **error)
{
  g_auto (GStrv) members = g_strsplit (text, ";", -1);
  double row[HM_ROWS_MAX_FINDINGS];
  double named = 0;
  guint n_left = 0;

  g_return_val_if_fail (n > 0 && n <= HM_ROWS_MAX_FINDINGS, FALSE);
  for (guint i = 0; i < n; i++)
    row[i] = -1;
  for (guint i = 0; members[i] != NULL; i++)
    if (*g_strstrip (members[i]) != '\0' && !parse_member (members[i], findings, row, error))
      return FALSE;
  for (guint i = 0; i < n; i++)
    {
      named += MAX (row[i], 0);
      n_left += row[i] < 0;
    }
  if (!check_sum (named, n_left, error))
    return FALSE;
  share_out (row, n, MAX (1 - named, 0), n_left, fallback);
  hm_rows_scale_to_one (row, n);
  memcpy (out, row, n * sizeof *out);
  return TRUE;
}

void
hm_rows_floor (double *row, guint n)
{
  gboolean is_low[HM_ROWS_MAX_FINDINGS] = { FALSE };
  gboolean changed = TRUE;

  while (changed)
    {
      double fixed = 0, rest = 0;
      changed = FALSE;
      for (guint i = 0; i < n; i++)
        if (is_low[i] || row[i] < HM_ROWS_FLOOR)
          {
            is_low[i] = TRUE;
            row[i] = HM_ROWS_FLOOR;
            fixed += HM_ROWS_FLOOR;
          }
        else
          rest += row[i];
      for (guint i = 0; i < n; i++)
        if (!is_low[i])
          {
            row[i] *= (1 - fixed) / rest;
            changed = changed || row[i] < HM_ROWS_FLOOR;
          }
    }
}

void
hm_rows_add (double *total, const double *row, double weight, guint n)
{
  for (guint i = 0; i < n; i++)
    total[i] += weight * row[i];
}

void
hm_rows_scale_to_one (double *row, guint n)
{
  double sum = 0;

  for (guint i = 0; i < n; i++)
    sum += row[i];
  for (guint i = 0; i < n; i++)
    row[i] /= sum;
}

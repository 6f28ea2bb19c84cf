/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-belief-several.h"

#include <math.h>

#include "hm-findings.h"

typedef struct {
  const HmFindings *findings;
  double total, present[HM_MODEL_MAX_CAUSES + 1];
} Sum;

static gboolean
is_repaired (const Sum *sum, guint cause)
{
  return cause < sum->findings->model->n_causes && (sum->findings->repaired >> cause & 1);
}

/* One term: @g is the product of F over the findings made while each cause was still there. */
static void
add_term (Sum *sum, double alpha, const double *g)
{
  guint n = sum->findings->model->n_causes + 1;
  double gone = alpha, left = 1, healthy = 1;

  for (guint i = 0; i < n; i++)
    {
      double f = 1 - sum->findings->prior[i] + sum->findings->prior[i] * g[i];
      if (is_repaired (sum, i))
        gone *= f;
      else
        {
          left *= f;
          healthy *= 1 - sum->findings->prior[i];
        }
    }
  sum->total += gone * (left - healthy);
  for (guint i = 0; i < n; i++)
    if (!is_repaired (sum, i))
      {
        double f = 1 - sum->findings->prior[i] + sum->findings->prior[i] * g[i];
        sum->present[i] += gone * (f > 0 ? left / f : 0) * sum->findings->prior[i] * g[i];
      }
}

static void
add_terms (Sum *sum, guint at, double alpha, const double *g)
{
  const HmFindingTerms *finding;

  if (at == sum->findings->terms->len)
    {
      add_term (sum, alpha, g);
      return;
    }
  finding = &g_array_index (sum->findings->terms, HmFindingTerms, at);
  for (guint k = 0; k < finding->n_levels; k++)
    {
      double next[HM_MODEL_MAX_CAUSES + 1];
      for (guint i = 0; i <= sum->findings->model->n_causes; i++)
        {
          gboolean gone = i < sum->findings->model->n_causes && (finding->repaired >> i & 1);
          next[i] = gone ? g[i] : g[i] * hm_findings_cumulative (sum->findings, finding->check, finding->levels[k], i);
        }
      add_terms (sum, at + 1, alpha * finding->alpha[k], next);
    }
}

/* Probability of the complaint before anything was found. */
static double
complaint_probability (const Sum *sum)
{
  double healthy = 1;

  for (guint i = 0; i <= sum->findings->model->n_causes; i++)
    healthy *= 1 - sum->findings->prior[i];
  return 1 - healthy;
}

static gboolean
finish (const Sum *sum, HmMarginals *out, GError **error)
{
  if (!(sum->total > 0))
    {
      g_set_error_literal (error, HM_MODEL_ERROR, HM_MODEL_ERROR_VALUE, "the evidence rules out every cause of the model");
      return FALSE;
    }
  *out = (HmMarginals) { .log_evidence = log (sum->total / complaint_probability (sum)) };
  for (guint i = 0; i <= sum->findings->model->n_causes; i++)
    {
      out->p[i] = CLAMP (sum->present[i] / sum->total, 0, 1);
      out->expected_faults += out->p[i];
    }
  return TRUE;
}

static gboolean
can_be_summed (const HmFindings *findings)
{
  double terms = 1;

  for (guint i = 0; i < findings->terms->len; i++)
    terms *= g_array_index (findings->terms, HmFindingTerms, i).n_levels;
  return terms <= HM_BELIEF_SEVERAL_MOST_TERMS;
}

gboolean
hm_belief_compute_several (const HmModel *model, const HmEvidence *events, guint n, HmMarginals *out, GError **error)
{
  g_auto (HmFindings) findings = { NULL };
  Sum sum = { .findings = &findings };
  double ones[HM_MODEL_MAX_CAUSES + 1];

  g_return_val_if_fail (model != NULL && out != NULL && (events != NULL || n == 0), FALSE);

  hm_findings_init (&findings, model, events, n);
  if (!can_be_summed (&findings))
    {
      g_set_error (error, HM_MODEL_ERROR, HM_MODEL_ERROR_SIZE, "too many abnormal findings at once; up to %u combinations are summed",
                   HM_BELIEF_SEVERAL_MOST_TERMS);
      return FALSE;
    }
  for (guint i = 0; i <= model->n_causes; i++)
    ones[i] = 1;
  add_terms (&sum, 0, 1, ones);
  return finish (&sum, out, error);
}

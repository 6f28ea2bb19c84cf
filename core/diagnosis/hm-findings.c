/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-findings.h"

static void
fill_cumulative (HmFindings *self)
{
  const HmModel *model = self->model;

  self->cumulative = g_new0 (double, (gsize) model->n_checks * HM_MODEL_MAX_OUTCOMES * (HM_MODEL_MAX_CAUSES + 1));
  for (guint t = 0; t < model->n_checks; t++)
    for (guint i = 0; i <= model->n_causes; i++)
      {
        double so_far = 0;
        for (guint o = 0; o < model->checks[t].n_outcomes; o++)
          {
            so_far += hm_model_likelihood (model, t, o, i);
            self->cumulative[(t * HM_MODEL_MAX_OUTCOMES + o) * (HM_MODEL_MAX_CAUSES + 1) + i] = so_far;
          }
      }
}

static void
fill_priors (HmFindings *self, const HmEvidence *events, guint n)
{
  const HmModel *model = self->model;

  for (guint i = 0; i < model->n_causes; i++)
    self->prior[i] = model->causes[i].prior;
  self->prior[model->n_causes] = model->other_prior;
  for (guint e = 0; e < n; e++)
    if (events[e].kind == HM_EVIDENCE_INCIDENT)
      for (guint i = 0; i <= model->n_causes; i++)
        self->prior[i] = 1 - (1 - self->prior[i]) * (1 - model->incidents[events[e].index].adds[i]);
}

/* α_k = w_k − w_{k+1}; a normal finding has one level, an abnormal one two. */
static HmFindingTerms
to_terms (const HmModel *model, const HmEvidence *event, const double *weights, guint64 repaired)
{
  HmFindingTerms out = { .check = event->index, .repaired = repaired };
  guint n = model->checks[event->index].n_outcomes;

  for (guint k = 0; k < n; k++)
    {
      double alpha = weights[k] - (k + 1 < n ? weights[k + 1] : 0);
      if (alpha == 0)
        continue;
      out.levels[out.n_levels] = k;
      out.alpha[out.n_levels++] = alpha;
    }
  return out;
}

/* A repeat of the same check replaces the earlier answer, unless a repair lies between: then both speak. */
static void
put_terms (HmFindings *self, const HmFindingTerms *terms)
{
  for (guint i = 0; i < self->terms->len; i++)
    {
      HmFindingTerms *earlier = &g_array_index (self->terms, HmFindingTerms, i);
      if (earlier->check == terms->check && earlier->repaired == terms->repaired)
        {
          *earlier = *terms;
          return;
        }
    }
  g_array_append_val (self->terms, *terms);
}

void
hm_findings_init (HmFindings *self, const HmModel *model, const HmEvidence *events, guint n)
{
  double weights[HM_MODEL_MAX_OUTCOMES] = { 0 };

  *self = (HmFindings) { .model = model, .terms = g_array_new (FALSE, FALSE, sizeof (HmFindingTerms)) };
  fill_priors (self, events, n);
  fill_cumulative (self);
  for (guint e = 0; e < n; e++)
    {
      if (events[e].kind == HM_EVIDENCE_REPAIR && !events[e].fixed)
        for (guint k = 0; k < events[e].n_causes; k++)
          self->repaired |= G_GUINT64_CONSTANT (1) << events[e].causes[k];
      if (hm_evidence_weights (model, &events[e], weights))
        {
          HmFindingTerms terms = to_terms (model, &events[e], weights, self->repaired);
          put_terms (self, &terms);
        }
    }
}

void
hm_findings_clear (HmFindings *self)
{
  g_clear_pointer (&self->cumulative, g_free);
  g_clear_pointer (&self->terms, g_array_unref);
}

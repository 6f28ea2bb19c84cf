/* SPDX-License-Identifier: GPL-3.0-or-later */
/*
 * Exact posterior of the single-fault model: b_i ∝ p_i · Π P(finding | i). Renormalised after every event, so that no
 * length of trail underflows. Weight of evidence in decibans as in I. J. Good's usage (10·log10 of the odds ratio).
 */
#include "hm-belief.h"

#include <math.h>

/* A part fitted lately keeps this share of its odds: wrong part, fitted wrongly, or a poor joint to it. Common practice, no source. */
#define REPLACED_SHARE 0.2

static double
decibans (double before, double after)
{
  if (before <= 0 || before >= 1 || after <= 0 || after >= 1)
    return 0;
  return 10 * (log10 (after / (1 - after)) - log10 (before / (1 - before)));
}

static gboolean
normalise (const HmModel *model, double *p)
{
  double sum = 0;

  for (guint i = 0; i <= model->n_causes; i++)
    sum += p[i];
  if (!(sum > 0))
    return FALSE;
  for (guint i = 0; i <= model->n_causes; i++)
    p[i] /= sum;
  return TRUE;
}

static void
start_from_priors (const HmModel *model, HmBelief *out)
{
  for (guint i = 0; i < model->n_causes; i++)
    out->p[i] = model->causes[i].prior;
  out->p[model->n_causes] = model->other_prior;
  normalise (model, out->p);
}

/* Multiplies the belief by one factor a cause and renormalises; gives the probability of what happened. */
static double
apply_factors (const HmModel *model, HmBelief *belief, const double *factors)
{
  double total = 0;

  for (guint i = 0; i <= model->n_causes; i++)
    {
      belief->p[i] *= factors[i];
      total += belief->p[i];
    }
  if (!normalise (model, belief->p))
    belief->impossible = TRUE;
  return total;
}

static void
apply_incident (const HmModel *model, HmBelief *belief, guint incident)
{
  const double *adds = model->incidents[incident].adds;

  for (guint i = 0; i <= model->n_causes; i++)
    belief->p[i] = 1 - (1 - belief->p[i]) * (1 - adds[i]);
}

static void
find_factors (const HmModel *model, const HmEvidence *event, double *factors)
{
  double weights[HM_MODEL_MAX_OUTCOMES];

  for (guint i = 0; i <= model->n_causes; i++)
    factors[i] = 1;
  if (event->kind == HM_EVIDENCE_REPAIR)
    for (guint k = 0; k < event->n_causes; k++)
      factors[event->causes[k]] = 0;
  if (!hm_evidence_weights (model, event, weights))
    return;
  for (guint i = 0; i <= model->n_causes; i++)
    {
      factors[i] = 0;
      for (guint o = 0; o < model->checks[event->index].n_outcomes; o++)
        factors[i] += weights[o] * hm_model_likelihood (model, event->index, o, i);
    }
}

static void
note_step (const HmModel *model, const double *before, const HmBelief *after, double probability, HmBeliefStep *step)
{
  if (step == NULL)
    return;
  step->has_effect = TRUE;
  step->probability = probability;
  for (guint i = 0; i <= model->n_causes; i++)
    step->decibans[i] = decibans (before[i], after->p[i]);
}

/* Opening and closing that an event brings with it. */
static void
move_access (const HmModel *model, const HmEvidence *event, HmBelief *belief)
{
  if (event->kind == HM_EVIDENCE_REPAIR)
    {
      for (guint k = 0; k < event->n_causes; k++)
        belief->open |= event->causes[k] < model->n_causes ? model->causes[event->causes[k]].need : 0;
      belief->open &= ~model->blocking;
    }
  else
    {
      const HmModelCheck *check = &model->checks[event->index];
      belief->open = (belief->open & ~check->closed) | check->need;
    }
}

static gboolean
is_about_check (const HmEvidence *event)
{
  return event->kind == HM_EVIDENCE_OUTCOME || event->kind == HM_EVIDENCE_WEIGHTS
         || event->kind == HM_EVIDENCE_READING || event->kind == HM_EVIDENCE_UNSURE;
}

/* A later answer to the same check stands in place of this one. */
static gboolean
is_superseded (const HmEvidence *events, guint n, guint at)
{
  for (guint i = at + 1; i < n; i++)
    if (is_about_check (&events[i]) && events[i].index == events[at].index)
      return TRUE;
  return FALSE;
}

static void
apply_prior_event (const HmModel *model, const HmEvidence *event, HmBelief *out, HmBeliefStep *step)
{
  double before[HM_MODEL_MAX_CAUSES + 1];
  HmBelief scaled = *out;

  for (guint i = 0; i <= model->n_causes; i++)
    before[i] = out->p[i];
  if (event->kind == HM_EVIDENCE_INCIDENT)
    apply_incident (model, out, event->index);
  else
    out->p[event->index] *= REPLACED_SHARE;
  scaled = *out;
  normalise (model, scaled.p);
  normalise (model, before);
  note_step (model, before, &scaled, 1, step);
}

static void
apply_event (const HmModel *model, const HmEvidence *events, guint n, guint at, HmBelief *out, HmBeliefStep *step)
{
  const HmEvidence *event = &events[at];
  double before[HM_MODEL_MAX_CAUSES + 1], factors[HM_MODEL_MAX_CAUSES + 1], probability;

  if (event->kind == HM_EVIDENCE_CANNOT)
    {
      hm_belief_add (out->unavailable, event->index);
      return;
    }
  move_access (model, event, out);
  if (event->kind == HM_EVIDENCE_REPAIR ? event->fixed : is_superseded (events, n, at))
    return;
  if (event->kind != HM_EVIDENCE_REPAIR)
    hm_belief_add (event->kind == HM_EVIDENCE_UNSURE ? out->unsure : out->asked, event->index);
  if (event->kind == HM_EVIDENCE_UNSURE)
    return;
  for (guint i = 0; i <= model->n_causes; i++)
    before[i] = out->p[i];
  find_factors (model, event, factors);
  probability = apply_factors (model, out, factors);
  out->log_evidence += log (probability);
  note_step (model, before, out, probability, step);
}

void
hm_belief_compute (const HmModel *model, const HmEvidence *events, guint n, HmBelief *out, HmBeliefStep *steps)
{
  g_return_if_fail (model != NULL && out != NULL && (events != NULL || n == 0));

  *out = (HmBelief) { 0 };
  start_from_priors (model, out);
  for (guint i = 0; i < n; i++)
    {
      if (steps != NULL)
        steps[i] = (HmBeliefStep) { 0 };
      if (events[i].kind == HM_EVIDENCE_INCIDENT || events[i].kind == HM_EVIDENCE_REPLACED)
        apply_prior_event (model, &events[i], out, steps != NULL ? &steps[i] : NULL);
    }
  normalise (model, out->p);
  for (guint i = 0; i < n && !out->impossible; i++)
    if (events[i].kind != HM_EVIDENCE_INCIDENT && events[i].kind != HM_EVIDENCE_REPLACED)
      apply_event (model, events, n, i, out, steps != NULL ? &steps[i] : NULL);
}

double
hm_belief_entropy_bits (const HmModel *model, const HmBelief *self)
{
  double bits = 0;

  for (guint i = 0; i <= model->n_causes; i++)
    if (self->p[i] > 0)
      bits -= self->p[i] * log2 (self->p[i]);
  return bits;
}

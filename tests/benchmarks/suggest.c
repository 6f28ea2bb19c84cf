/* SPDX-License-Identifier: GPL-3.0-or-later */
/*
 * suggest KNOWLEDGE: how long one suggestion takes on every model of the knowledge, over the beliefs that a diagnosis comes
 * through: from nothing known along the likeliest finding of each cause in turn. Prints milliseconds of processor time, so that
 * other work on the machine does not count; judges nothing.
 */
#include "hm-diagnosis.h"

#include <stdio.h>
#include <stdlib.h>
#include <time.h>

#define MOST_DEPTH 3u     /* looks ahead that many checks; each depth is measured on the first complaint */
#define SHIPPED_DEPTH 2u  /* what the window uses; measured on every complaint */
#define MAX_STEPS 12u

static double
cpu_ms (void)
{
  struct timespec now;
  clock_gettime (CLOCK_THREAD_CPUTIME_ID, &now);
  return now.tv_sec * 1e3 + now.tv_nsec / 1e6;
}

static int
compare (const void *a, const void *b)
{
  double x = *(const double *) a, y = *(const double *) b;
  return (x > y) - (x < y);
}

static guint
likeliest_outcome (HmModel *model, guint check, guint cause)
{
  guint best = 0;
  for (guint k = 1; k < model->checks[check].n_outcomes; k++)
    if (hm_model_likelihood (model, check, k, cause) > hm_model_likelihood (model, check, best, cause))
      best = k;
  return best;
}

/* Times each suggestion on the way to one cause, until the suggestion is no check. */
static void
follow (HmModel *model, HmPlanner *planner, guint cause, GArray *times_ms)
{
  HmEvidence events[MAX_STEPS] = { 0 };
  HmBelief belief;
  HmPlan plan;

  for (guint n = 0; n < MAX_STEPS; n++)
    {
      double begin, ms;
      hm_belief_compute (model, events, n, &belief, NULL);
      begin = cpu_ms ();
      hm_planner_best (planner, &belief, &plan);
      ms = cpu_ms () - begin;
      g_array_append_val (times_ms, ms);
      if (plan.action.kind != HM_ACTION_CHECK)
        return;
      events[n] = (HmEvidence) { .kind = HM_EVIDENCE_OUTCOME, .index = plan.action.check,
                                 .outcome = likeliest_outcome (model, plan.action.check, cause) };
    }
}

static void
measure (HmKnowledge *knowledge, const char *complaint, const char *layout, guint depth)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(HmDiagnosis) diagnosis = hm_diagnosis_new (knowledge, complaint, layout, &error);
  g_autoptr(GArray) times_ms = g_array_new (FALSE, FALSE, sizeof (double));
  g_autoptr(HmPlanner) planner = NULL;
  HmModel *model;
  double *t;

  if (diagnosis == NULL)
    {
      fprintf (stderr, "%s\n", error->message);
      exit (1);
    }
  model = hm_diagnosis_get_model (diagnosis);
  planner = hm_planner_new (model, depth);
  for (guint cause = 0; cause < model->n_causes; cause++)
    follow (model, planner, cause, times_ms);
  t = (double *) (void *) times_ms->data;
  qsort (t, times_ms->len, sizeof *t, compare);
  printf ("%-12s %-12s depth %u: %3u causes %3u checks %3u steps: %4u suggestions, median %6.2f ms, most %6.2f ms CPU\n", complaint,
          layout, depth, model->n_causes, model->n_checks, model->n_access, times_ms->len, t[times_ms->len / 2],
          t[times_ms->len - 1]);
}

int
main (int argc, char **argv)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(HmKnowledge) knowledge = argc > 1 ? hm_knowledge_open (argv[1], &error) : NULL;
  const HmComplaint *complaints;
  const HmLayout *layouts;
  guint n_complaints, n_layouts;

  if (knowledge == NULL)
    {
      fprintf (stderr, "%s\n", error != NULL ? error->message : "usage: suggest KNOWLEDGE");
      return 2;
    }
  complaints = hm_knowledge_get_complaints (knowledge, &n_complaints);
  layouts = hm_knowledge_get_layouts (knowledge, &n_layouts);
  for (guint i = 0; i < n_complaints; i++)
    for (guint k = 0; k < n_layouts; k++)
      if (hm_knowledge_covers (knowledge, complaints[i].id, layouts[k].id))
        for (guint depth = 1; depth <= MOST_DEPTH; depth++)
          if (i == 0 || depth == SHIPPED_DEPTH)
            measure (knowledge, complaints[i].id, layouts[k].id, depth);
  return 0;
}

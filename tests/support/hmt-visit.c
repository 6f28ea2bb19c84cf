/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmt-visit.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

#define MAX_STEPS 60

typedef struct { guint findings, readings, cautions, repairs; gboolean ends; } Course;

/* The finding that this fault brings about most often. */
static guint
likeliest_finding (HmtVisit *self, guint check)
{
  HmModel *model = hm_diagnosis_get_model (self->mirror);
  guint best = 0;
  for (guint k = 1; k < model->checks[check].n_outcomes; k++)
    if (hm_model_likelihood (model, check, k, self->cause) > hm_model_likelihood (model, check, best, self->cause))
      best = k;
  return best;
}

/* A value well inside the band of a finding, in the base unit: the middle, or as far beyond an outer limit. */
static double
value_in_band (const HmCheck *check, guint finding)
{
  guint last = check->n_findings - 2;
  double outer = fmax (fabs (check->edges[0]), fabs (check->edges[last]));
  gboolean high;

  if (finding > 0 && finding <= last)
    return (check->edges[finding - 1] + check->edges[finding]) / 2;
  high = (finding == 0) == check->normal_above;
  if (high)
    return fmax (check->edges[0], check->edges[last]) + fmax (0.3 * outer, 6 * check->meter_sd);
  return fmin (check->edges[0], check->edges[last]) * 0.5;
}

static void
write_reading (const HmCheck *check, guint finding, char *out, gsize size)
{
  HmQuantity quantity = { check->kind, value_in_band (check, finding), check->unit };
  char number[G_ASCII_DTOSTR_BUF_SIZE];
  g_ascii_formatd (number, sizeof number, "%.4g", hm_quantity_in (quantity, check->unit));
  g_snprintf (out, size, "%s %s", number, hm_unit_symbol (check->unit));
}

static gboolean
repairs_it (const HmAction *action, guint cause)
{
  for (guint i = 0; i < action->n_causes; i++)
    if (action->causes[i] == cause)
      return TRUE;
  return FALSE;
}

gboolean
hmt_visit_next (HmtVisit *self, HmtAnswer *out)
{
  const HmAction *action = &hm_diagnosis_get_advice (self->mirror)->action;
  HmGuide *guide = hm_diagnosis_get_guide (self->mirror);
  guint n;

  memset (out, 0, sizeof *out);
  if (action->kind == HM_ACTION_ESCALATE)
    return FALSE;
  if (action->kind == HM_ACTION_REPAIR)
    {
      out->kind = HMT_ANSWER_REPAIR;
      out->fixes = repairs_it (action, self->cause);
      out->title = hm_guide_get_causes (guide, &n)[action->causes[0]].remedy->name;
      return TRUE;
    }
  out->check_index = action->check;
  out->check = &hm_guide_get_checks (guide, &n)[action->check];
  out->title = out->check->name;
  out->finding_index = likeliest_finding (self, action->check);
  out->kind = out->check->is_reading ? HMT_ANSWER_READING : HMT_ANSWER_FINDING;
  if (out->check->is_reading)
    write_reading (out->check, out->finding_index, out->reading, sizeof out->reading);
  return TRUE;
}

static void
take_reading (HmtVisit *self, const HmtAnswer *answer)
{
  g_autoptr(GError) error = NULL;
  HmQuantity quantity;

  if (!hm_quantity_parse (answer->reading, answer->check->kind, answer->check->unit, &quantity, &error) ||
      !hm_diagnosis_answer_reading (self->mirror, answer->check_index, quantity, &error))
    fail_msg ("%s: %s", answer->check->id, error->message);
}

void
hmt_visit_take (HmtVisit *self, const HmtAnswer *answer)
{
  const HmAction action = hm_diagnosis_get_advice (self->mirror)->action;

  switch (answer->kind)
    {
    case HMT_ANSWER_FINDING:
      hm_diagnosis_answer (self->mirror, answer->check_index, answer->finding_index);
      break;
    case HMT_ANSWER_READING:
      take_reading (self, answer);
      break;
    case HMT_ANSWER_REPAIR:
      hm_diagnosis_begin_repair (self->mirror, action.causes, action.n_causes);
      hm_diagnosis_finish_repair (self->mirror, answer->fixes ? HM_REPAIR_FIXED : HM_REPAIR_PERSISTS);
      break;
    }
}

void
hmt_visit_undo (HmtVisit *self)
{
  hm_diagnosis_undo (self->mirror);
}

gboolean
hmt_visit_is_closed (HmtVisit *self)
{
  return hm_diagnosis_get_phase (self->mirror) == HM_PHASE_CLOSED;
}

static gboolean
has_serious_caution (const HmCheck *check)
{
  for (guint i = 0; check->cautions[i] != NULL; i++)
    if (check->cautions[i]->serious)
      return TRUE;
  return FALSE;
}

static Course
play_through (HmtVisit *self)
{
  Course course = { 0 };
  HmtAnswer answer;

  for (guint i = 0; i < MAX_STEPS && !hmt_visit_is_closed (self) && hmt_visit_next (self, &answer); i++)
    {
      course.findings += answer.kind == HMT_ANSWER_FINDING;
      course.readings += answer.kind == HMT_ANSWER_READING;
      course.repairs += answer.kind == HMT_ANSWER_REPAIR;
      course.cautions += answer.check != NULL && has_serious_caution (answer.check);
      hmt_visit_take (self, &answer);
    }
  course.ends = hmt_visit_is_closed (self);
  return course;
}

static void
start_afresh (HmtVisit *self)
{
  g_autoptr(GError) error = NULL;
  g_clear_object (&self->mirror);
  self->mirror = hm_diagnosis_new (self->knowledge, "no-crank", "rider", &error);
  if (self->mirror == NULL)
    fail_msg ("%s", error->message);
}

static int
rate (const Course *course)
{
  if (!course->ends)
    return -1;
  return (course->findings > 0) + (course->readings > 0) + (course->cautions > 0) + (course->repairs > 0);
}

HmtVisit *
hmt_visit_new (void)
{
  HmtVisit *self = g_new0 (HmtVisit, 1);
  g_autofree char *path = g_build_filename (g_getenv ("HALFMOON_DATA_DIR"), "knowledge.db", NULL);
  g_autoptr(GError) error = NULL;
  guint n_causes, best_cause = 0;
  int best = -1;

  self->knowledge = hm_knowledge_open (path, &error);
  if (self->knowledge == NULL)
    fail_msg ("%s", error->message);
  start_afresh (self);
  hm_guide_get_causes (hm_diagnosis_get_guide (self->mirror), &n_causes);
  for (self->cause = 0; self->cause < n_causes && best < 4; self->cause++)
    {
      Course course = play_through (self);
      if (rate (&course) > best)
        {
          best = rate (&course);
          best_cause = self->cause;
        }
      start_afresh (self);
    }
  if (best < 3)
    fail_msg ("no fault of no-crank on a rider leads over a finding and a reading to a repair (best: %d)", best);
  self->cause = best_cause;
  return self;
}

void
hmt_visit_free (HmtVisit *self)
{
  g_clear_object (&self->mirror);
  g_clear_pointer (&self->knowledge, hm_knowledge_unref);
  g_free (self);
}

const char *
hmt_visit_complaint (HmtVisit *self)
{
  return hm_guide_get_complaint (hm_diagnosis_get_guide (self->mirror))->name;
}

const char *
hmt_visit_layout (HmtVisit *self)
{
  return hm_guide_get_layout (hm_diagnosis_get_guide (self->mirror))->name;
}

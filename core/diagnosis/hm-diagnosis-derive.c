/* SPDX-License-Identifier: GPL-3.0-or-later */
/* What follows from the trail: belief, minutes, what stands open, the ranked next steps. */
#include "hm-diagnosis-private.h"

#define BIT(i) (G_GUINT64_CONSTANT (1) << (i))
#define OTHER_IS_LIKELY 0.25     /* above this the window says that something unlisted may be wrong */

static void
add_event (HmDiagnosis *self, const HmEvidence *event, HmReasonKind kind, guint index)
{
  HmReason source = { .kind = kind, .index = index };

  g_array_append_val (self->events, *event);
  g_array_append_val (self->event_sources, source);
}

static void
add_told (HmDiagnosis *self)
{
  for (guint i = 0; i < MIN (self->model->n_incidents, 64); i++)
    if (self->trail.incidents & BIT (i))
      add_event (self, &(HmEvidence) { .kind = HM_EVIDENCE_INCIDENT, .index = i }, HM_REASON_INCIDENT, i);
  for (guint i = 0; i < self->model->n_causes; i++)
    if (self->trail.replaced & BIT (i))
      add_event (self, &(HmEvidence) { .kind = HM_EVIDENCE_REPLACED, .index = i }, HM_REASON_REPLACED, i);
}

/* FALSE for an entry that says nothing about the causes. */
static gboolean
entry_to_event (const HmEntry *entry, HmEvidence *out)
{
  *out = (HmEvidence) { .index = entry->check };
  switch (entry->kind)
    {
    case HM_ENTRY_FINDING:
      out->kind = HM_EVIDENCE_OUTCOME;
      out->outcome = entry->finding;
      return TRUE;
    case HM_ENTRY_READING:
      out->kind = HM_EVIDENCE_READING;
      out->reading = entry->reading.value;
      return TRUE;
    case HM_ENTRY_UNSURE:
      out->kind = HM_EVIDENCE_UNSURE;
      return TRUE;
    case HM_ENTRY_CANNOT:
      out->kind = HM_EVIDENCE_CANNOT;
      return TRUE;
    case HM_ENTRY_REPAIR:
      out->kind = HM_EVIDENCE_REPAIR;
      out->fixed = entry->result != HM_REPAIR_PERSISTS;
      out->n_causes = entry->n_causes;
      for (guint k = 0; k < entry->n_causes; k++)
        out->causes[k] = entry->causes[k];
      return entry->result != HM_REPAIR_PENDING;
    case HM_ENTRY_SENT_OUT:
      return FALSE;
    }
  g_return_val_if_reached (FALSE);
}

void
hm_diagnosis_list_events (HmDiagnosis *self)
{
  g_array_set_size (self->events, 0);
  g_array_set_size (self->event_sources, 0);
  add_told (self);
  for (guint i = 0; i < self->trail.entries->len; i++)
    {
      HmEvidence event;
      if (entry_to_event (&g_array_index (self->trail.entries, HmEntry, i), &event))
        add_event (self, &event, HM_REASON_ENTRY, i);
    }
}

static HmAccessSet
need_of_causes (const HmModel *model, const guint *causes, guint n)
{
  HmAccessSet need = 0;

  for (guint k = 0; k < n; k++)
    need |= model->causes[causes[k]].need;
  return need;
}

/* Charges the opening and closing of @need beyond what stands open, and opens it. */
static void
charge_access (HmDiagnosis *self, HmEntry *entry, HmAccessSet need)
{
  entry->opened = need & ~self->open;
  entry->open = hm_access_open_time (self->guide, entry->opened);
  entry->close = hm_access_close_time (self->guide, entry->opened);
  self->open |= need;
}

static void
charge_repair (HmDiagnosis *self, HmEntry *entry)
{
  for (guint k = 0; k < entry->n_causes; k++)
    entry->work.minutes += self->model->causes[entry->causes[k]].repair_minutes;
  charge_access (self, entry, need_of_causes (self->model, entry->causes, entry->n_causes));
  if (entry->result == HM_REPAIR_PENDING)
    return;
  entry->work.minutes += self->model->verify_minutes;
  self->open &= ~self->model->blocking;
}

void
hm_diagnosis_charge (HmDiagnosis *self)
{
  self->open = 0;
  self->spent.minutes = 0;
  for (guint i = 0; i < self->trail.entries->len; i++)
    {
      HmEntry *entry = &g_array_index (self->trail.entries, HmEntry, i);
      const HmModelCheck *check = &self->model->checks[entry->check];
      entry->work = entry->open = entry->close = (HmDuration) { 0 };
      entry->opened = 0;
      if (entry->kind == HM_ENTRY_REPAIR)
        charge_repair (self, entry);
      else if (entry->kind == HM_ENTRY_SENT_OUT)
        entry->work.minutes = 0;
      else if (entry->kind != HM_ENTRY_CANNOT)
        {
          entry->work.minutes = check->minutes;
          self->open &= ~check->closed;
          charge_access (self, entry, check->need);
        }
      self->spent.minutes += entry->work.minutes + entry->open.minutes + entry->close.minutes;
    }
}

/* Checks that were tried without an answer stay available, behind everything else. */
static void
append_unsure (HmDiagnosis *self)
{
  HmPlan plans[2 * HM_MODEL_MAX_CHECKS];
  HmBelief belief = self->belief;
  guint n;

  if ((belief.unsure[0] | belief.unsure[1]) == 0)
    return;
  belief.unsure[0] = belief.unsure[1] = 0;
  n = hm_planner_rank (self->planner, &belief, plans, G_N_ELEMENTS (plans));
  for (guint i = 0; i < n; i++)
    if (plans[i].action.kind == HM_ACTION_CHECK && hm_belief_has (self->belief.unsure, plans[i].action.check))
      g_array_append_val (self->ranked, plans[i]);
}

/* The next steps, worked out when first asked for: much of what changes a trail needs none. */
static GArray *
ranked (HmDiagnosis *self)
{
  guint n;

  if (self->ranked->len > 0)
    return self->ranked;
  g_array_set_size (self->ranked, HM_MODEL_MAX_CHECKS + 2 * HM_MODEL_MAX_CAUSES + 1);
  n = hm_planner_rank (self->planner, &self->belief, (HmPlan *) (gpointer) self->ranked->data, self->ranked->len);
  g_array_set_size (self->ranked, n);
  append_unsure (self);
  return self->ranked;
}

void
hm_diagnosis_recompute (HmDiagnosis *self)
{
  hm_diagnosis_list_events (self);
  g_array_set_size (self->steps, self->events->len);
  hm_belief_compute (self->model, (const HmEvidence *) (gpointer) self->events->data, self->events->len, &self->belief,
                     (HmBeliefStep *) (gpointer) self->steps->data);
  hm_diagnosis_charge (self);
  self->belief.open = self->open;
  g_array_set_size (self->ranked, 0);
}

HmPhase
hm_diagnosis_get_phase (HmDiagnosis *self)
{
  const HmEntry *last;

  g_return_val_if_fail (HM_IS_DIAGNOSIS (self), HM_PHASE_ASKING);

  if (self->trail.entries->len == 0)
    return HM_PHASE_ASKING;
  last = &g_array_index (self->trail.entries, HmEntry, self->trail.entries->len - 1);
  if (last->kind == HM_ENTRY_SENT_OUT)
    return HM_PHASE_CLOSED;
  if (last->kind != HM_ENTRY_REPAIR || last->result == HM_REPAIR_PERSISTS)
    return HM_PHASE_ASKING;
  return last->result == HM_REPAIR_PENDING ? HM_PHASE_REPAIRING : HM_PHASE_CLOSED;
}

const HmPlan *
hm_diagnosis_get_advice (HmDiagnosis *self)
{
  g_return_val_if_fail (HM_IS_DIAGNOSIS (self), NULL);
  return &g_array_index (ranked (self), HmPlan, 0);
}

guint
hm_diagnosis_get_ranked (HmDiagnosis *self, const HmPlan **out)
{
  g_return_val_if_fail (HM_IS_DIAGNOSIS (self) && out != NULL, 0);
  *out = (const HmPlan *) (gpointer) ranked (self)->data;
  return self->ranked->len;
}

const HmPlan *
hm_diagnosis_get_runner_up (HmDiagnosis *self)
{
  g_return_val_if_fail (HM_IS_DIAGNOSIS (self), NULL);
  return ranked (self)->len > 1 ? &g_array_index (self->ranked, HmPlan, 1) : NULL;
}

double
hm_diagnosis_get_probability (HmDiagnosis *self, guint cause)
{
  g_return_val_if_fail (HM_IS_DIAGNOSIS (self) && cause <= self->model->n_causes, 0);
  return self->belief.p[cause];
}

guint
hm_diagnosis_get_causes_by_probability (HmDiagnosis *self, guint *out)
{
  guint n;

  g_return_val_if_fail (HM_IS_DIAGNOSIS (self) && out != NULL, 0);

  n = self->model->n_causes + 1;
  for (guint i = 0; i < n; i++)
    {
      guint at = i;
      for (; at > 0 && self->belief.p[i] > self->belief.p[out[at - 1]]; at--)
        out[at] = out[at - 1];
      out[at] = i;
    }
  return n;
}

HmDuration
hm_diagnosis_get_minutes_spent (HmDiagnosis *self)
{
  g_return_val_if_fail (HM_IS_DIAGNOSIS (self), ((HmDuration) { 0 }));
  return self->spent;
}

HmAccessSet
hm_diagnosis_get_open (HmDiagnosis *self)
{
  g_return_val_if_fail (HM_IS_DIAGNOSIS (self), 0);
  return self->open;
}

/* The repair under way, if that is what @action is. */
static const HmEntry *
repair_under_way (HmDiagnosis *self, const HmAction *action)
{
  const HmEntry *last;
  HmAction under_way = { .kind = HM_ACTION_REPAIR };

  if (hm_diagnosis_get_phase (self) != HM_PHASE_REPAIRING)
    return NULL;
  last = &g_array_index (self->trail.entries, HmEntry, self->trail.entries->len - 1);
  under_way.n_causes = last->n_causes;
  for (guint k = 0; k < last->n_causes; k++)
    under_way.causes[k] = last->causes[k];
  return hm_action_equal (action, &under_way) ? last : NULL;
}

HmAccessSet
hm_diagnosis_get_to_open (HmDiagnosis *self, const HmAction *action)
{
  const HmEntry *repair;

  g_return_val_if_fail (HM_IS_DIAGNOSIS (self) && action != NULL, 0);

  repair = repair_under_way (self, action);
  if (repair != NULL)
    return repair->opened;
  if (action->kind == HM_ACTION_REPAIR)
    return need_of_causes (self->model, action->causes, action->n_causes) & ~self->open;
  if (action->kind == HM_ACTION_CHECK)
    return self->model->checks[action->check].need & ~(self->open & ~self->model->checks[action->check].closed);
  return 0;
}

gboolean
hm_diagnosis_other_is_likely (HmDiagnosis *self)
{
  g_return_val_if_fail (HM_IS_DIAGNOSIS (self), FALSE);
  return self->belief.p[self->model->n_causes] > OTHER_IS_LIKELY;
}

guint
hm_diagnosis_judge_reading (HmDiagnosis *self, guint check, HmQuantity reading, double *weight)
{
  HmEvidence event = { .kind = HM_EVIDENCE_READING, .index = check, .reading = reading.value };
  double weights[HM_MODEL_MAX_OUTCOMES] = { 0 };
  guint best = 0;

  g_return_val_if_fail (HM_IS_DIAGNOSIS (self) && check < self->model->n_checks && self->model->checks[check].numeric, 0);

  hm_evidence_weights (self->model, &event, weights);
  for (guint o = 1; o < self->model->checks[check].n_outcomes; o++)
    if (weights[o] > weights[best])
      best = o;
  if (weight != NULL)
    *weight = weights[best];
  return best;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
/* What is done with the diagnosis. Each change is one HmuiChange, so that one asked for while a tick is being written waits. */
#include "hmui-diagnose-model-private.h"
#include "hmui-tr.h"
#include "hmui-words.h"
#include <glib/gi18n.h>

/* "Battery at rest: charged". */
static void
commit_answer (HmuiDiagnoseModel *self, guint check, const char *answer)
{
  const HmCheck *checks = hm_guide_get_checks (hmui_diagnose_model_get_guide (self), NULL);
  g_autofree char *note = g_strdup_printf (_("%s: %s"), hmui_tr (checks[check].name), answer);

  hmui_diagnose_model_commit (self, note);
}

static void
answer_finding (HmuiDiagnoseModel *self, guint check, guint finding)
{
  const HmCheck *checks = hm_guide_get_checks (hmui_diagnose_model_get_guide (self), NULL);

  g_return_if_fail (finding < checks[check].n_findings);
  hm_diagnosis_answer (self->diagnosis, check, finding);
  commit_answer (self, check, hmui_tr (checks[check].findings[finding].name));
}

static void
answer_reading (HmuiDiagnoseModel *self, guint check, HmQuantity reading)
{
  HmFormat format = hmui_diagnose_model_get_format (self);
  g_autofree char *text = hm_quantity_format (reading, HM_UNIT_NONE, -1, &format);
  g_autoptr(GError) error = NULL;

  if (hm_diagnosis_answer_reading (self->diagnosis, check, reading, &error))
    commit_answer (self, check, text);
  else
    hmui_diagnose_model_say (self, error->message, FALSE);
}

static void
answer (HmuiDiagnoseModel *self, const HmuiChange *change)
{
  HmAction action = hmui_diagnose_model_get_action (self);

  if (action.kind != HM_ACTION_CHECK || hm_diagnosis_get_phase (self->diagnosis) == HM_PHASE_REPAIRING)
    return;
  switch (change->kind)
    {
    case HMUI_CHANGE_ANSWER:
      answer_finding (self, action.check, change->index);
      break;
    case HMUI_CHANGE_READING:
      answer_reading (self, action.check, change->reading);
      break;
    case HMUI_CHANGE_UNSURE:
      hm_diagnosis_answer_unsure (self->diagnosis, action.check);
      commit_answer (self, action.check, _("not sure"));
      break;
    case HMUI_CHANGE_CANNOT:
    default:
      hm_diagnosis_answer_cannot (self->diagnosis, action.check);
      commit_answer (self, action.check, _("cannot do this"));
      break;
    }
}

static void
begin_repair (HmuiDiagnoseModel *self)
{
  HmAction action = hmui_diagnose_model_get_action (self);

  if (hm_diagnosis_get_phase (self->diagnosis) != HM_PHASE_ASKING || action.kind != HM_ACTION_REPAIR)
    return;
  hm_diagnosis_begin_repair (self->diagnosis, action.causes, action.n_causes);
  hmui_diagnose_model_commit (self, NULL);
}

static void
finish_repair (HmuiDiagnoseModel *self, HmRepairResult result)
{
  if (hm_diagnosis_get_phase (self->diagnosis) != HM_PHASE_REPAIRING)
    return;
  hm_diagnosis_finish_repair (self->diagnosis, result);
  hmui_diagnose_model_commit (self, result == HM_REPAIR_PERSISTS
                                      ? _("Still there: what was repaired is ruled out now.") : NULL);
}

static void
choose (HmuiDiagnoseModel *self, const HmAction *action)
{
  self->chosen = *action;
  self->has_chosen = !hm_action_equal (action, &hm_diagnosis_get_advice (self->diagnosis)->action);
  hmui_diagnose_model_emit_changed (self);
}

/* A repair whose test was left goes on where it was, though something else may be advised. */
static void
choose_repair_again (HmuiDiagnoseModel *self, const HmEntry *entry)
{
  HmAction action = { .kind = HM_ACTION_REPAIR, .n_causes = entry->n_causes };

  if (entry->kind != HM_ENTRY_REPAIR || entry->result != HM_REPAIR_PENDING)
    return;
  memcpy (action.causes, entry->causes, sizeof action.causes);
  self->chosen = action;
  self->has_chosen = !hm_action_equal (&action, &hm_diagnosis_get_advice (self->diagnosis)->action);
}

static void
revisit (HmuiDiagnoseModel *self, guint i)
{
  HmAction action = { .kind = HM_ACTION_CHECK };
  HmEntry entry;

  g_return_if_fail (i < hm_diagnosis_get_n_entries (self->diagnosis));
  entry = *hm_diagnosis_get_entry (self->diagnosis, i);
  if (entry.kind == HM_ENTRY_REPAIR || entry.kind == HM_ENTRY_SENT_OUT)
    {
      hm_diagnosis_remove_entry (self->diagnosis, i);
      hmui_diagnose_model_commit (self, _("Taken back."));
      choose_repair_again (self, &entry);
      return;
    }
  action.check = entry.check;
  choose (self, &action);
}

static void
undo (HmuiDiagnoseModel *self)
{
  if (!hm_diagnosis_can_undo (self->diagnosis))
    return;
  hm_diagnosis_undo (self->diagnosis);
  hmui_diagnose_model_commit (self, NULL);
}

static void
redo (HmuiDiagnoseModel *self)
{
  if (!hm_diagnosis_can_redo (self->diagnosis))
    return;
  hm_diagnosis_redo (self->diagnosis);
  hmui_diagnose_model_commit (self, NULL);
}

static void
leave (HmuiDiagnoseModel *self)
{
  g_clear_object (&self->diagnosis);
  self->id = 0;
  self->has_chosen = FALSE;
  hmui_diagnose_model_emit_changed (self);
}

void
hmui_diagnose_model_perform (HmuiDiagnoseModel *self, const HmuiChange *change)
{
  switch (change->kind)
    {
    case HMUI_CHANGE_ANSWER:
    case HMUI_CHANGE_READING:
    case HMUI_CHANGE_UNSURE:
    case HMUI_CHANGE_CANNOT: answer (self, change); break;
    case HMUI_CHANGE_BEGIN: begin_repair (self); break;
    case HMUI_CHANGE_FINISH: finish_repair (self, change->index); break;
    case HMUI_CHANGE_SEND_OUT:
      hm_diagnosis_send_out (self->diagnosis);
      hmui_diagnose_model_commit (self, NULL);
      break;
    case HMUI_CHANGE_CHOOSE: choose (self, &change->action); break;
    case HMUI_CHANGE_REVISIT: revisit (self, change->index); break;
    case HMUI_CHANGE_UNDO: undo (self); break;
    case HMUI_CHANGE_REDO: redo (self); break;
    case HMUI_CHANGE_LEAVE: leave (self); break;
    case HMUI_CHANGE_NONE:
    default: break;
    }
}

/* While an answer is being written, a second one was meant for the page that is going away: it is dropped. While a
 * tick is, the page stays: the change waits for it. */
static void
request (HmuiDiagnoseModel *self, HmuiChange change)
{
  if (self->diagnosis == NULL)
    return;
  if (!self->busy)
    hmui_diagnose_model_perform (self, &change);
  else if (self->page_stays && self->waiting_change.kind == HMUI_CHANGE_NONE)
    self->waiting_change = change;
}

void
hmui_diagnose_model_answer (HmuiDiagnoseModel *self, guint finding)
{
  request (self, (HmuiChange) { .kind = HMUI_CHANGE_ANSWER, .index = finding });
}

void
hmui_diagnose_model_answer_reading (HmuiDiagnoseModel *self, HmQuantity reading)
{
  request (self, (HmuiChange) { .kind = HMUI_CHANGE_READING, .reading = reading });
}

void
hmui_diagnose_model_answer_unsure (HmuiDiagnoseModel *self)
{
  request (self, (HmuiChange) { .kind = HMUI_CHANGE_UNSURE });
}

void
hmui_diagnose_model_answer_cannot (HmuiDiagnoseModel *self)
{
  request (self, (HmuiChange) { .kind = HMUI_CHANGE_CANNOT });
}

void
hmui_diagnose_model_begin_repair (HmuiDiagnoseModel *self)
{
  request (self, (HmuiChange) { .kind = HMUI_CHANGE_BEGIN });
}

void
hmui_diagnose_model_finish_repair (HmuiDiagnoseModel *self, HmRepairResult result)
{
  request (self, (HmuiChange) { .kind = HMUI_CHANGE_FINISH, .index = result });
}

void
hmui_diagnose_model_send_out (HmuiDiagnoseModel *self)
{
  request (self, (HmuiChange) { .kind = HMUI_CHANGE_SEND_OUT });
}

void
hmui_diagnose_model_choose (HmuiDiagnoseModel *self, const HmAction *action)
{
  request (self, (HmuiChange) { .kind = HMUI_CHANGE_CHOOSE, .action = *action });
}

gboolean
hmui_diagnose_model_unchoose (HmuiDiagnoseModel *self)
{
  if (!self->has_chosen || self->busy)
    return FALSE;
  self->has_chosen = FALSE;
  hmui_diagnose_model_emit_changed (self);
  return TRUE;
}

void
hmui_diagnose_model_revisit (HmuiDiagnoseModel *self, guint i)
{
  request (self, (HmuiChange) { .kind = HMUI_CHANGE_REVISIT, .index = i });
}

void
hmui_diagnose_model_undo (HmuiDiagnoseModel *self)
{
  request (self, (HmuiChange) { .kind = HMUI_CHANGE_UNDO });
}

void
hmui_diagnose_model_redo (HmuiDiagnoseModel *self)
{
  request (self, (HmuiChange) { .kind = HMUI_CHANGE_REDO });
}

void
hmui_diagnose_model_leave (HmuiDiagnoseModel *self)
{
  request (self, (HmuiChange) { .kind = HMUI_CHANGE_LEAVE });
}

gboolean
hmui_diagnose_model_can_undo (HmuiDiagnoseModel *self)
{
  return self->diagnosis != NULL && hm_diagnosis_can_undo (self->diagnosis);
}

gboolean
hmui_diagnose_model_can_redo (HmuiDiagnoseModel *self)
{
  return self->diagnosis != NULL && hm_diagnosis_can_redo (self->diagnosis);
}

void
hmui_diagnose_model_set_tick (HmuiDiagnoseModel *self, const char *id, gboolean ticked)
{
  if (self->diagnosis == NULL)
    return;
  g_hash_table_insert (self->waiting_ticks, g_strdup (id), GINT_TO_POINTER (ticked));
  if (!self->busy)
    hmui_diagnose_model_apply_waiting (self);
}

gboolean
hmui_diagnose_model_get_tick (HmuiDiagnoseModel *self, const char *id)
{
  gpointer ticked;

  if (g_hash_table_lookup_extended (self->waiting_ticks, id, NULL, &ticked))
    return GPOINTER_TO_INT (ticked);
  return self->diagnosis != NULL && hm_diagnosis_get_tick (self->diagnosis, id);
}

void
hmui_diagnose_model_set_text (HmuiDiagnoseModel *self, const char *id, const char *text)
{
  if (self->diagnosis == NULL)
    return;
  g_hash_table_insert (self->waiting_texts, g_strdup (id), g_strdup (text));
  if (!self->busy)
    hmui_diagnose_model_apply_waiting (self);
}

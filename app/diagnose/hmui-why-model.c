/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-why-model.h"
#include "hmui-line.h"
#include "hmui-tr.h"
#include "hmui-words.h"
#include <glib/gi18n.h>

struct _HmuiWhyModel
{
  GObject parent_instance;
  HmuiDiagnoseModel *bench;       /* owned */
  GArray *causes;                 /* owned; of guint */
  GListStore *trail;              /* owned */
};

G_DEFINE_FINAL_TYPE (HmuiWhyModel, hmui_why_model, G_TYPE_OBJECT)

static HmDiagnosis *
diagnosis (HmuiWhyModel *self)
{
  return hmui_diagnose_model_get_diagnosis (self->bench);
}

static HmGuide *
guide (HmuiWhyModel *self)
{
  return hmui_diagnose_model_get_guide (self->bench);
}

static void
list_trail (HmuiWhyModel *self)
{
  HmFormat format = hmui_diagnose_model_get_format (self->bench);

  g_list_store_remove_all (self->trail);
  for (guint left = hm_diagnosis_get_n_entries (diagnosis (self)); left > 0; left--)
    {
      const HmEntry *entry = hm_diagnosis_get_entry (diagnosis (self), left - 1);
      g_autofree char *key = g_strdup_printf ("%u", left);
      g_autofree char *step = hmui_words_entry_step (guide (self), entry);
      g_autofree char *answer = hmui_words_entry_answer (guide (self), entry, &format);

      hmui_line_append (self->trail, left - 1, key, step, answer, NULL);
    }
}

static void
hmui_why_model_finalize (GObject *object)
{
  HmuiWhyModel *self = HMUI_WHY_MODEL (object);

  g_array_unref (self->causes);
  g_object_unref (self->trail);
  g_clear_object (&self->bench);
  G_OBJECT_CLASS (hmui_why_model_parent_class)->finalize (object);
}

static void
hmui_why_model_class_init (HmuiWhyModelClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hmui_why_model_finalize;
}

static void
hmui_why_model_init (HmuiWhyModel *self)
{
  self->causes = g_array_new (FALSE, FALSE, sizeof (guint));
  self->trail = g_list_store_new (HMUI_TYPE_LINE);
}

HmuiWhyModel *
hmui_why_model_new (HmuiDiagnoseModel *bench)
{
  HmuiWhyModel *self = g_object_new (HMUI_TYPE_WHY_MODEL, NULL);

  self->bench = g_object_ref (bench);
  return self;
}

void
hmui_why_model_refresh (HmuiWhyModel *self)
{
  guint n;

  g_return_if_fail (diagnosis (self) != NULL);
  hm_guide_get_causes (guide (self), &n);
  g_array_set_size (self->causes, n + 1);
  n = hm_diagnosis_get_causes_by_probability (diagnosis (self), (guint *) (gpointer) self->causes->data);
  g_array_set_size (self->causes, n);
  list_trail (self);
}

const guint *
hmui_why_model_get_causes (HmuiWhyModel *self, guint *n)
{
  *n = self->causes->len;
  return (const guint *) (gpointer) self->causes->data;
}

const char *
hmui_why_model_get_cause_name (HmuiWhyModel *self, guint cause)
{
  return hmui_words_cause (guide (self), cause);
}

double
hmui_why_model_get_probability (HmuiWhyModel *self, guint cause)
{
  return hm_diagnosis_get_probability (diagnosis (self), cause);
}

gboolean
hmui_why_model_is_settled (HmuiWhyModel *self)
{
  guint n = hm_diagnosis_get_n_entries (diagnosis (self));

  return hm_diagnosis_get_phase (diagnosis (self)) == HM_PHASE_CLOSED && n > 0
         && hm_diagnosis_get_entry (diagnosis (self), n - 1)->kind == HM_ENTRY_REPAIR;
}

char *
hmui_why_model_dup_rest (HmuiWhyModel *self, guint from)
{
  double together = 0.0;
  g_autofree char *percent = NULL;
  guint more;

  if (self->causes->len <= from)
    return NULL;
  more = self->causes->len - from;
  for (guint i = from; i < self->causes->len; i++)
    together += hmui_why_model_get_probability (self, g_array_index (self->causes, guint, i));
  percent = hmui_words_percent (together);
  return g_strdup_printf (g_dngettext (GETTEXT_PACKAGE, "%u more, %s", "%u more, %s", more), more, percent);
}

char *
hmui_why_model_dup_expected (HmuiWhyModel *self)
{
  if (hm_diagnosis_get_phase (diagnosis (self)) != HM_PHASE_ASKING)
    return NULL;
  return hmui_words_expected (hm_diagnosis_get_advice (diagnosis (self)));
}

char *
hmui_why_model_dup_not_listed (HmuiWhyModel *self)
{
  if (!hm_diagnosis_other_is_likely (diagnosis (self)))
    return NULL;
  return g_strdup (_("It is becoming likely that something is wrong that is not on this list. Look wider before you go on."));
}

static const HmPlan *
find_plan (HmuiWhyModel *self, const HmAction *action)
{
  const HmPlan *plans;
  guint n = hm_diagnosis_get_ranked (diagnosis (self), &plans);

  for (guint i = 0; i < n; i++)
    if (hm_action_equal (&plans[i].action, action))
      return &plans[i];
  return NULL;
}

/* "You chose this: 31 min expected. Advised is: Volts at the battery, 22 min expected." */
static char *
why_chosen (HmuiWhyModel *self, const HmAction *action)
{
  const HmPlan *plan = find_plan (self, action), *advice = hm_diagnosis_get_advice (diagnosis (self));
  g_autofree char *advised = hmui_words_action (guide (self), &advice->action);
  g_autofree char *advised_minutes = hmui_words_minutes (advice->expected_minutes);
  g_autofree char *minutes = NULL;

  if (plan == NULL)
    return g_strdup_printf (_("You came back to this step. A new answer takes the place of the earlier one. Advised is: "
                              "%s, %s expected until it is fixed."), advised, advised_minutes);
  minutes = hmui_words_minutes (plan->expected_minutes);
  return g_strdup_printf (_("You chose this step: %s expected until it is fixed. Advised is: %s, %s expected."),
                          minutes, advised, advised_minutes);
}

static char *
why_advised (HmuiWhyModel *self)
{
  const HmPlan *advice = hm_diagnosis_get_advice (diagnosis (self));
  const HmPlan *second = hm_diagnosis_get_runner_up (diagnosis (self));
  g_autofree char *cost = hmui_words_cost (advice->work_minutes, advice->access_minutes);
  g_autofree char *expected = hmui_words_minutes (advice->expected_minutes);
  g_autofree char *other = NULL, *other_minutes = NULL;

  if (second == NULL)
    return g_strdup_printf (_("It costs %s. Nothing else is left to do: %s expected until it is fixed."), cost, expected);
  other = hmui_words_action (guide (self), &second->action);
  other_minutes = hmui_words_minutes (second->expected_minutes);
  return g_strdup_printf (_("It costs %s. Going this way, %s are expected until the complaint is fixed and tested. "
                            "The next best would be: %s, with %s expected."), cost, expected, other, other_minutes);
}

char *
hmui_why_model_dup_why (HmuiWhyModel *self)
{
  HmAction action = hmui_diagnose_model_get_action (self->bench);

  if (hm_diagnosis_get_phase (diagnosis (self)) != HM_PHASE_ASKING && !hmui_diagnose_model_is_own_choice (self->bench))
    return NULL;
  if (hmui_diagnose_model_is_own_choice (self->bench))
    return why_chosen (self, &action);
  return why_advised (self);
}

static void
append_told (GString *text, const char *what)
{
  g_string_append_printf (text, "%s%s", text->len > 0 ? " · " : "", what);
}

char *
hmui_why_model_dup_told (HmuiWhyModel *self)
{
  g_autoptr(GString) text = g_string_new (NULL);
  guint n;
  const HmIncident *incidents = hm_guide_get_incidents (guide (self), &n);
  const HmCause *causes;

  for (guint i = 0; i < n; i++)
    if (hm_diagnosis_get_incident (diagnosis (self), i))
      append_told (text, hmui_tr (incidents[i].name));
  causes = hm_guide_get_causes (guide (self), &n);
  for (guint i = 0; i < n; i++)
    if (hm_diagnosis_get_replaced (diagnosis (self), i))
      {
        g_autofree char *replaced = g_strdup_printf (_("replaced: %s"), hmui_tr (causes[i].name));

        append_told (text, replaced);
      }
  return text->len > 0 ? g_strdup_printf (_("Told at the start: %s"), text->str) : NULL;
}

GListModel *
hmui_why_model_get_trail (HmuiWhyModel *self)
{
  return G_LIST_MODEL (self->trail);
}

GListModel *
hmui_why_model_make_branches (HmuiWhyModel *self)
{
  GListStore *list = g_list_store_new (HMUI_TYPE_LINE);
  HmAction action = hmui_diagnose_model_get_action (self->bench);
  const HmCheck *check;
  HmBranch branches[HM_MODEL_MAX_OUTCOMES];
  guint n;

  if (action.kind != HM_ACTION_CHECK)
    return G_LIST_MODEL (list);
  check = &hm_guide_get_checks (guide (self), NULL)[action.check];
  n = hm_diagnosis_get_branches (diagnosis (self), action.check, branches);
  for (guint i = 0; i < n; i++)
    {
      g_autofree char *percent = hmui_words_percent (branches[i].probability);
      g_autofree char *next = hmui_words_action (guide (self), &branches[i].next);
      g_autofree char *top = hmui_words_percent (branches[i].top_probability);
      g_autofree char *detail = g_strdup_printf (_("Then most likely: %s, %s. Next: %s"),
                                                 hmui_words_cause (guide (self), branches[i].top_cause), top, next);

      hmui_line_append (list, i, NULL, hmui_tr (check->findings[branches[i].finding].name), detail, percent);
    }
  return G_LIST_MODEL (list);
}

static char *
reason_title (HmuiWhyModel *self, const HmReason *reason)
{
  HmFormat format = hmui_diagnose_model_get_format (self->bench);
  g_autofree char *step = NULL, *answer = NULL;
  const HmEntry *entry;

  switch (reason->kind)
    {
    case HM_REASON_INCIDENT:
      return g_strdup (hmui_tr (hm_guide_get_incidents (guide (self), NULL)[reason->index].name));
    case HM_REASON_REPLACED:
      return g_strdup_printf (_("Replaced: %s"), hmui_words_cause (guide (self), reason->index));
    case HM_REASON_ENTRY:
    default:
      entry = hm_diagnosis_get_entry (diagnosis (self), reason->index);
      step = hmui_words_entry_step (guide (self), entry);
      answer = hmui_words_entry_answer (guide (self), entry, &format);
      return g_strdup_printf (_("%s: %s"), step, answer);
    }
}

GListModel *
hmui_why_model_make_reasons (HmuiWhyModel *self, guint cause)
{
  GListStore *list = g_list_store_new (HMUI_TYPE_LINE);
  g_autoptr(GArray) reasons = hm_diagnosis_get_reasons (diagnosis (self), cause);

  if (reasons->len == 0)
    hmui_line_append (list, 0, NULL, _("How often it happens on this kind of machine. Nothing found so far speaks for or "
                                       "against it."), NULL, NULL);
  for (guint i = 0; i < reasons->len; i++)
    {
      const HmReason *reason = &g_array_index (reasons, HmReason, i);
      g_autofree char *title = reason_title (self, reason);
      g_autofree char *effect = hmui_words_decibans (reason->decibans);

      hmui_line_append (list, i, NULL, title, effect, NULL);
    }
  return G_LIST_MODEL (list);
}

GListModel *
hmui_why_model_make_others (HmuiWhyModel *self)
{
  GListStore *list = g_list_store_new (HMUI_TYPE_LINE);
  HmAction now = hmui_diagnose_model_get_action (self->bench);
  const HmPlan *plans;
  guint n = hm_diagnosis_get_ranked (diagnosis (self), &plans);

  for (guint i = 0; i < n; i++)
    {
      g_autofree char *title = hmui_words_action (guide (self), &plans[i].action);
      g_autofree char *cost = hmui_words_cost (plans[i].work_minutes, plans[i].access_minutes);
      g_autofree char *expected = hmui_words_minutes (plans[i].expected_minutes);
      g_autofree char *detail = g_strdup_printf (_("costs %s; %s expected until it is fixed"), cost, expected);

      if (!hm_action_equal (&plans[i].action, &now))
        hmui_line_append (list, i, NULL, title, detail, NULL);
    }
  return G_LIST_MODEL (list);
}

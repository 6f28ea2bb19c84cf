/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-torque-model-private.h"
#include "hmui-tr.h"
#include "hmui-words-torque.h"
#include <glib/gi18n.h>

HmuiTorqueState
hmui_torque_model_get_state (HmuiTorqueModel *self)
{
  return self->state;
}

gboolean
hmui_torque_model_is_special (HmuiTorqueModel *self)
{
  return self->choices[HMUI_TORQUE_CHOICE_JOINT] > 0;
}

gboolean
hmui_torque_model_get_torque (HmuiTorqueModel *self, HmTorque *out)
{
  if (self->state == HMUI_TORQUE_VALUE)
    *out = self->answer.target;
  return self->state == HMUI_TORQUE_VALUE;
}

const HmTightening *
hmui_torque_model_get_tightening (HmuiTorqueModel *self)
{
  return self->has_tightening ? &self->tightening : NULL;
}

char *
hmui_torque_model_dup_headline (HmuiTorqueModel *self)
{
  HmFormat format = hmui_settings_get_format (self->settings);

  switch (self->state)
    {
    case HMUI_TORQUE_VALUE:
      return hmui_words_torque_in (self->answer.target, hmui_words_torque_unit (self->answer.target, &format), &format);
    case HMUI_TORQUE_WORDS:
      return g_strdup (self->answer.basis == HM_TORQUE_BY_HAND ? _("Snug by hand") : _("The maker’s manual only"));
    case HMUI_TORQUE_NOTHING:
    case HMUI_TORQUE_PROBLEM:
    default:
      return g_strdup (self->problem);
    }
}

char *
hmui_torque_model_dup_span (HmuiTorqueModel *self)
{
  HmFormat format = hmui_settings_get_format (self->settings);
  g_autofree char *span = NULL;

  if (self->state != HMUI_TORQUE_VALUE)
    return NULL;
  span = hmui_words_torque_span (self->answer.low, self->answer.target, self->answer.high, &format);
  if (span == NULL)
    return NULL;
  if (self->answer.basis == HM_TORQUE_COMPUTED)
    return g_strdup_printf (_("%s for the same pull, from the slickest to the roughest surface. Aim for the large number."), span);
  return g_strdup_printf (_("Range %s; the middle is shown."), span);
}

char *
hmui_torque_model_dup_others (HmuiTorqueModel *self)
{
  HmFormat format = hmui_settings_get_format (self->settings);

  if (self->state != HMUI_TORQUE_VALUE)
    return NULL;
  return hmui_words_torque_others (self->answer.target, hmui_torque_choices_get_extra_unit (self), &format);
}

static char *
limit_of_special (HmuiTorqueModel *self)
{
  const HmSpecialRow *row = hmui_torque_choices_find_special (self);

  if (row == NULL || self->is_given)
    return NULL;
  switch (self->answer.basis)
    {
    case HM_TORQUE_RANGE:
      return g_strdup_printf (_("%s: a range of its class. No formula gives it: gasket, seat or plating decide."),
                              hmui_tr (row->name));
    case HM_TORQUE_BY_HAND:
      return g_strdup_printf (_("%s: turn it until it seats, without a torque wrench."), hmui_tr (row->name));
    case HM_TORQUE_COMPUTED:
    case HM_TORQUE_MANUAL_ONLY:
    default:
      return g_strdup_printf (_("%s: no honest range exists, and no formula gives one. Look it up, and type it into the form."),
                              hmui_tr (row->name));
    }
}

char *
hmui_torque_model_dup_limit (HmuiTorqueModel *self)
{
  HmFormat format = hmui_settings_get_format (self->settings);

  if (self->has_tightening)
    return hmui_words_tightening_limit (&self->tightening, &format);
  return hmui_torque_model_is_special (self) && self->state >= HMUI_TORQUE_WORDS ? limit_of_special (self) : NULL;
}

char *
hmui_torque_model_dup_warning (HmuiTorqueModel *self)
{
  HmFormat format = hmui_settings_get_format (self->settings);

  return self->has_tightening ? hmui_words_tightening_warning (&self->tightening, &format) : NULL;
}

const char *
hmui_torque_model_get_error (HmuiTorqueModel *self, HmuiTorqueInput input)
{
  return self->errors[input];
}

char *
hmui_torque_model_dup_summary (HmuiTorqueModel *self)
{
  HmFormat format = hmui_settings_get_format (self->settings);
  g_autofree char *thread = NULL;

  if (hmui_torque_model_is_special (self))
    return g_strdup (hmui_words_special ((HmSpecialJoint) (self->choices[HMUI_TORQUE_CHOICE_JOINT] - 1)));
  if (!self->has_thread)
    return NULL;
  thread = hm_thread_format (&self->question.thread, &format);
  if (self->strength == NULL)
    return g_steal_pointer (&thread);
  return g_strdup_printf ("%s · %s · %s", thread, self->strength,
                          hmui_words_friction ((HmFriction) self->choices[HMUI_TORQUE_CHOICE_FRICTION]));
}

gboolean
hmui_torque_model_get_provenance (HmuiTorqueModel *self, HmProvenance *out)
{
  if (self->state < HMUI_TORQUE_WORDS)
    return FALSE;
  *out = self->answer.provenance;
  return TRUE;
}

char *
hmui_torque_model_dup_fact_label (HmuiTorqueModel *self, HmuiTorqueFact fact)
{
  switch (fact)
    {
    case HMUI_TORQUE_FACT_COMPUTED: return g_strdup (_("Worked out instead"));
    case HMUI_TORQUE_FACT_SETTING: return g_strdup (_("Set the wrench to"));
    case HMUI_TORQUE_FACT_WRENCH: return g_strdup (_("Take the wrench"));
    case HMUI_TORQUE_FACT_PRELOAD: return g_strdup (_("Preload"));
    case HMUI_TORQUE_FACT_STRESS: return g_strdup (_("Stress while turning"));
    case HMUI_TORQUE_FACT_NEEDED: return g_strdup (_("Engagement needed"));
    case HMUI_TORQUE_FACT_WEAKEST: return g_strdup (_("If overtightened"));
    case HMUI_TORQUE_FACT_METHODS: return g_strdup (_("Two methods"));
    case HMUI_TORQUE_FACT_PARTS: return g_strdup (_("Where it goes"));
    case HMUI_TORQUE_FACT_LOOSENING: return g_strdup (_("To break it loose"));
    case HMUI_TORQUE_FACT_STRENGTH: return g_strdup (_("Strength of the class"));
    case HMUI_TORQUE_FACT_FRICTION: return g_strdup (_("Friction of the surface"));
    case HMUI_TORQUE_N_FACTS:
    default: return NULL;
    }
}

static char *
dup_setting (HmuiTorqueModel *self, const HmFormat *format)
{
  g_autofree char *setting = NULL;

  if (self->setting_problem != NULL)
    return g_strdup (self->setting_problem);
  if (!self->has_setting || self->choices[HMUI_TORQUE_CHOICE_ADAPTER] == HMUI_TORQUE_ADAPTER_NONE)
    return NULL;
  setting = hmui_words_torque_both (self->setting, format);
  return g_strdup_printf (_("%s, with the adapter on it"), setting);
}

static char *
dup_wrench (HmuiTorqueModel *self, const HmFormat *format)
{
  guint n;
  const HmShopWrench *wrenches = hmui_wrench_drawer_get_wrenches (self->drawer, &n);

  if (!self->has_setting)
    return NULL;
  return hmui_words_wrench (self->fit.index >= 0 ? &wrenches[self->fit.index] : NULL, &self->fit, self->setting, format);
}

char *
hmui_torque_model_dup_fact (HmuiTorqueModel *self, HmuiTorqueFact fact)
{
  HmFormat format = hmui_settings_get_format (self->settings);

  if (fact == HMUI_TORQUE_FACT_SETTING)
    return dup_setting (self, &format);
  if (fact == HMUI_TORQUE_FACT_WRENCH)
    return dup_wrench (self, &format);
  if (!self->has_tightening)
    return NULL;
  switch (fact)
    {
    case HMUI_TORQUE_FACT_COMPUTED:
      return self->is_given ? hmui_words_torque_both (self->computed.target, &format) : NULL;
    case HMUI_TORQUE_FACT_PRELOAD: return hmui_words_tightening_preload (&self->tightening, &format);
    case HMUI_TORQUE_FACT_STRESS: return hmui_words_tightening_stress (&self->tightening, &format);
    case HMUI_TORQUE_FACT_NEEDED: return hmui_words_tightening_needed (&self->tightening, &self->question, &format);
    case HMUI_TORQUE_FACT_WEAKEST: return hmui_words_tightening_weakest (&self->tightening);
    case HMUI_TORQUE_FACT_METHODS: return hmui_words_tightening_methods (&self->computed, self->question.seat, &format);
    case HMUI_TORQUE_FACT_PARTS: return hmui_words_tightening_parts (&self->tightening, &format);
    case HMUI_TORQUE_FACT_LOOSENING: return hmui_words_tightening_loosening (&self->tightening, &format);
    case HMUI_TORQUE_FACT_STRENGTH: return hmui_words_tightening_strength (&self->tightening, &format);
    case HMUI_TORQUE_FACT_FRICTION: return hmui_words_tightening_friction (&self->tightening, &format);
    case HMUI_TORQUE_FACT_SETTING:
    case HMUI_TORQUE_FACT_WRENCH:
    case HMUI_TORQUE_N_FACTS:
    default: return NULL;
    }
}

gboolean
hmui_torque_model_get_fact_provenance (HmuiTorqueModel *self, HmuiTorqueFact fact, HmProvenance *out)
{
  static const HmTighteningPart parts[HMUI_TORQUE_N_FACTS] = {
    [HMUI_TORQUE_FACT_SETTING] = HM_TIGHTENING_SETTING,
    [HMUI_TORQUE_FACT_WRENCH] = HM_TIGHTENING_WRENCH,
    [HMUI_TORQUE_FACT_PRELOAD] = HM_TIGHTENING_PRELOAD,
    [HMUI_TORQUE_FACT_STRESS] = HM_TIGHTENING_STRESS,
    [HMUI_TORQUE_FACT_NEEDED] = HM_TIGHTENING_ENGAGEMENT,
    [HMUI_TORQUE_FACT_WEAKEST] = HM_TIGHTENING_ENGAGEMENT,
    [HMUI_TORQUE_FACT_METHODS] = HM_TIGHTENING_METHODS,
    [HMUI_TORQUE_FACT_PARTS] = HM_TIGHTENING_PARTS,
    [HMUI_TORQUE_FACT_LOOSENING] = HM_TIGHTENING_LOOSENING,
  };

  if (fact >= HMUI_TORQUE_N_FACTS)
    return FALSE;
  if (fact == HMUI_TORQUE_FACT_COMPUTED)
    *out = self->computed.provenance;
  else if (fact == HMUI_TORQUE_FACT_STRENGTH)
    *out = self->tightening.strength_provenance;
  else if (fact == HMUI_TORQUE_FACT_FRICTION)
    *out = self->tightening.friction_provenance;
  else
    *out = hm_tightening_get_provenance (parts[fact]);
  return TRUE;
}

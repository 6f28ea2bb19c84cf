/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-torque-model-private.h"
#include "hm-adapter.h"
#include <glib/gi18n.h>

static gboolean
is_empty (HmuiTorqueModel *self, HmuiTorqueInput input)
{
  g_autofree char *text = g_strdup (self->texts[input]);

  return g_utf8_validate (text, -1, NULL) && g_strstrip (text)[0] == '\0';
}

static void
clear_answer (HmuiTorqueModel *self)
{
  self->state = HMUI_TORQUE_NOTHING;
  self->has_thread = self->has_tightening = self->has_computed = self->has_setting = self->is_given = FALSE;
  self->question = (HmTighteningQuestion) { 0 };
  self->answer = (HmTorqueAnswer) { 0 };
  self->computed = self->tightening = (HmTightening) { 0 };   /* they lend from the tables */
  self->fit = (HmWrenchFit) { .index = -1 };
  g_clear_pointer (&self->problem, g_free);
  for (guint i = 0; i < HMUI_TORQUE_N_INPUTS; i++)
    g_clear_pointer (&self->errors[i], g_free);
  g_clear_pointer (&self->page_source, g_free);
  g_clear_pointer (&self->setting_problem, g_free);
}

/* The core's sentences start with a small letter, to stand behind another. */
static char *
as_sentence (const char *message)
{
  g_autofree char *first = g_utf8_substring (message, 0, 1);
  g_autofree char *capital = g_utf8_strup (first, -1);

  return g_strconcat (capital, g_utf8_next_char (message), ".", NULL);
}

static void
say (HmuiTorqueModel *self, HmuiTorqueState state, const char *text)
{
  self->state = state;
  g_free (self->problem);
  self->problem = g_strdup (text);
}

static void
say_error (HmuiTorqueModel *self, const GError *error)
{
  g_autofree char *sentence = as_sentence (error->message);

  say (self, HMUI_TORQUE_PROBLEM, sentence);
}

/* Reads a field; what is wrong with it is kept for the field, and @error says it too. */
static gboolean
read_field (HmuiTorqueModel *self, HmuiTorqueInput input, HmQuantityKind kind, HmUnit unit, HmQuantity *out, GError **error)
{
  g_autoptr(GError) reason = NULL;

  if (hm_quantity_parse (self->texts[input], kind, unit, out, &reason))
    return TRUE;
  self->errors[input] = as_sentence (reason->message);
  g_propagate_error (error, g_steal_pointer (&reason));
  return FALSE;
}

static void
read_thread (HmuiTorqueModel *self)
{
  g_autoptr(GError) error = NULL;

  if (self->tables == NULL || is_empty (self, HMUI_TORQUE_INPUT_THREAD))
    return;
  self->has_thread = hm_thread_parse (self->texts[HMUI_TORQUE_INPUT_THREAD], self->tables, &self->question.thread, &error);
  if (!self->has_thread)
    self->errors[HMUI_TORQUE_INPUT_THREAD] = as_sentence (error->message);
  else if (hmui_torque_choices_index_of_strength (self, self->strength) == 0)
    self->strength = NULL;   /* no bolt of this thread is made in that class */
}

/* %TRUE when the question is whole. */
static gboolean
read_question (HmuiTorqueModel *self, GError **error)
{
  HmQuantity engaged = { HM_QUANTITY_LENGTH, 0.0, HM_UNIT_MM };

  self->question.strength = self->strength != NULL ? self->strength : "";
  self->question.friction = (HmFriction) self->choices[HMUI_TORQUE_CHOICE_FRICTION];
  self->question.seat = (HmSeat) self->choices[HMUI_TORQUE_CHOICE_SEAT];
  self->question.into = (HmMaterial) self->choices[HMUI_TORQUE_CHOICE_INTO];
  self->question.share_of_proof = self->share;
  if (!is_empty (self, HMUI_TORQUE_INPUT_ENGAGED)
      && !read_field (self, HMUI_TORQUE_INPUT_ENGAGED, HM_QUANTITY_LENGTH, self->length_unit, &engaged, error))
    return FALSE;
  self->question.engaged.mm = hm_quantity_in (engaged, HM_UNIT_MM);
  if (is_empty (self, HMUI_TORQUE_INPUT_ENGAGED) || self->question.engaged.mm > 0.0)
    return TRUE;
  self->question.engaged.mm = -1.0;   /* a length that was typed as zero is no length left out */
  return TRUE;
}

static void
work_out_special (HmuiTorqueModel *self)
{
  const HmSpecialRow *row = hmui_torque_choices_find_special (self);
  g_autoptr(GError) error = NULL;

  if (row == NULL)
    say (self, HMUI_TORQUE_NOTHING, _("Choose which one."));
  else if (!hm_torque_for_special (row, &self->answer, &error))
    say_error (self, error);
  else
    self->state = self->answer.basis == HM_TORQUE_RANGE ? HMUI_TORQUE_VALUE : HMUI_TORQUE_WORDS;
}

static void
take_tightening (HmuiTorqueModel *self)
{
  self->tightening = self->computed;
  self->has_tightening = TRUE;
  self->answer = (HmTorqueAnswer) { HM_TORQUE_COMPUTED, self->computed.low, self->computed.target, self->computed.high,
                                    self->computed.provenance };
  self->state = HMUI_TORQUE_VALUE;
}

static void
work_out_thread (HmuiTorqueModel *self)
{
  g_autoptr(GError) error = NULL;

  if (self->errors[HMUI_TORQUE_INPUT_THREAD] != NULL)
    say (self, HMUI_TORQUE_PROBLEM, self->errors[HMUI_TORQUE_INPUT_THREAD]);
  else if (!self->has_thread)
    say (self, HMUI_TORQUE_NOTHING, _("Type the thread, and the torque stands here."));
  else if (self->strength == NULL)
    say (self, HMUI_TORQUE_NOTHING, _("Choose the class: it is stamped on the head of a metric bolt, and marked with "
                                      "radial lines on an inch bolt."));
  else if (!read_question (self, &error) || !hm_tightening_work_out (self->tables, &self->question, &self->computed, &error))
    say_error (self, error);
  else
    {
      self->has_computed = TRUE;
      take_tightening (self);
    }
}

/* What is typed from the maker's manual takes the place of what was worked out. */
static void
work_out_manual (HmuiTorqueModel *self)
{
  HmQuantityRange range;
  HmProvenance provenance = { HM_PROVENANCE_SPEC_SHEET, NULL };
  g_autoptr(GError) error = NULL;
  const char *page = self->texts[HMUI_TORQUE_INPUT_PAGE];
  gboolean has_page = !is_empty (self, HMUI_TORQUE_INPUT_PAGE) && g_utf8_validate (page, -1, NULL);

  if (is_empty (self, HMUI_TORQUE_INPUT_MANUAL))
    return;
  self->page_source = has_page ? g_strdup_printf (_("The maker’s manual, page %s"), page)
                               : g_strdup (_("The maker’s manual; the page is not noted"));
  provenance.source = self->page_source;
  if (!hm_quantity_parse_range (self->texts[HMUI_TORQUE_INPUT_MANUAL], HM_QUANTITY_TORQUE, self->torque_unit, &range, &error)
      || !hm_torque_from_range (&range, provenance, &self->answer, &error))
    {
      self->has_tightening = FALSE;
      say_error (self, error);
      self->errors[HMUI_TORQUE_INPUT_MANUAL] = g_strdup (self->problem);
      return;
    }
  self->is_given = TRUE;
  self->state = HMUI_TORQUE_VALUE;
  self->has_tightening = self->has_computed
                         && hm_tightening_from_torque (self->tables, &self->question, self->answer.low, self->answer.high,
                                                       &self->tightening, NULL);   /* checked already */
}

static gboolean
read_length (HmuiTorqueModel *self, HmuiTorqueInput input, HmLength *out, GError **error)
{
  HmQuantity length;

  if (!read_field (self, input, HM_QUANTITY_LENGTH, self->length_unit, &length, error))
    return FALSE;
  out->mm = hm_quantity_in (length, HM_UNIT_MM);
  return TRUE;
}

static gboolean
read_setting (HmuiTorqueModel *self, GError **error)
{
  HmuiTorqueAdapter adapter = (HmuiTorqueAdapter) self->choices[HMUI_TORQUE_CHOICE_ADAPTER];
  HmQuantity angle = { 0 };
  HmLength length, lever;

  self->setting = self->answer.target;
  if (adapter == HMUI_TORQUE_ADAPTER_NONE)
    return TRUE;
  if (adapter == HMUI_TORQUE_ADAPTER_ANGLE
      && !read_field (self, HMUI_TORQUE_INPUT_ANGLE, HM_QUANTITY_NUMBER, HM_UNIT_NONE, &angle, error))
    return FALSE;
  return read_length (self, HMUI_TORQUE_INPUT_ADAPTER, &length, error)
         && read_length (self, HMUI_TORQUE_INPUT_LEVER, &lever, error)
         && hm_adapter_setting (self->answer.target, lever, length, angle.value, &self->setting, error);
}

static gboolean
adapter_is_whole (HmuiTorqueModel *self)
{
  HmuiTorqueAdapter adapter = (HmuiTorqueAdapter) self->choices[HMUI_TORQUE_CHOICE_ADAPTER];

  if (adapter == HMUI_TORQUE_ADAPTER_NONE)
    return TRUE;
  return !is_empty (self, HMUI_TORQUE_INPUT_ADAPTER) && !is_empty (self, HMUI_TORQUE_INPUT_LEVER)
         && (adapter != HMUI_TORQUE_ADAPTER_ANGLE || !is_empty (self, HMUI_TORQUE_INPUT_ANGLE));
}

static void
work_out_wrench (HmuiTorqueModel *self)
{
  g_autoptr(GError) error = NULL;
  guint n;
  const HmShopWrench *wrenches = hmui_wrench_drawer_get_wrenches (self->drawer, &n);

  if (self->state != HMUI_TORQUE_VALUE)
    return;
  if (!adapter_is_whole (self))
    self->setting_problem = g_strdup (_("Type how long adapter and wrench are."));
  else if (!read_setting (self, &error))
    self->setting_problem = as_sentence (error->message);
  if (self->setting_problem != NULL)
    return;
  self->has_setting = TRUE;
  self->fit = hm_shop_wrench_choose (wrenches, n, self->setting);
}

void
hmui_torque_work_out (HmuiTorqueModel *self)
{
  clear_answer (self);
  if (self->tables == NULL)
    {
      say (self, self->tables_problem != NULL ? HMUI_TORQUE_PROBLEM : HMUI_TORQUE_NOTHING,
           self->tables_problem != NULL ? self->tables_problem : "");
      return;
    }
  read_thread (self);
  if (hmui_torque_model_is_special (self))
    work_out_special (self);
  else
    work_out_thread (self);
  work_out_manual (self);
  work_out_wrench (self);
}

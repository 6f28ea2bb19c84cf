/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-torque-model-private.h"

G_DEFINE_FINAL_TYPE (HmuiTorqueModel, hmui_torque_model, G_TYPE_OBJECT)

static void
refresh (HmuiTorqueModel *self)
{
  hmui_torque_work_out (self);
  g_signal_emit_by_name (self, "changed");
}

static void
hmui_torque_model_finalize (GObject *object)
{
  HmuiTorqueModel *self = HMUI_TORQUE_MODEL (object);

  for (guint i = 0; i < HMUI_TORQUE_N_INPUTS; i++)
    {
      g_free (self->texts[i]);
      g_free (self->errors[i]);
    }
  g_clear_object (&self->settings);
  g_clear_object (&self->drawer);
  g_clear_pointer (&self->tables, hm_tables_unref);
  g_free (self->tables_problem);
  g_free (self->problem);
  g_free (self->page_source);
  g_free (self->setting_problem);
  G_OBJECT_CLASS (hmui_torque_model_parent_class)->finalize (object);
}

static void
hmui_torque_model_class_init (HmuiTorqueModelClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hmui_torque_model_finalize;
  g_signal_new ("changed", HMUI_TYPE_TORQUE_MODEL, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
hmui_torque_model_init (HmuiTorqueModel *self)
{
  for (guint i = 0; i < HMUI_TORQUE_N_INPUTS; i++)
    self->texts[i] = g_strdup ("");
  self->share = hm_tightening_share_usual;
}

HmuiTorqueModel *
hmui_torque_model_new (HmuiSettings *settings, HmuiWrenchDrawer *drawer)
{
  HmuiTorqueModel *self = g_object_new (HMUI_TYPE_TORQUE_MODEL, NULL);
  gboolean metric = hmui_settings_get_format (settings).system == HM_UNIT_SYSTEM_METRIC_FIRST;

  self->settings = g_object_ref (settings);
  self->drawer = g_object_ref (drawer);
  self->length_unit = metric ? HM_UNIT_MM : HM_UNIT_INCH;
  self->torque_unit = metric ? HM_UNIT_NEWTON_METRE : HM_UNIT_POUND_FOOT;
  g_signal_connect_object (settings, "notify::units", G_CALLBACK (refresh), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (drawer, "changed", G_CALLBACK (refresh), self, G_CONNECT_SWAPPED);
  hmui_torque_work_out (self);
  return self;
}

void
hmui_torque_model_set_tables (HmuiTorqueModel *self, const HmTables *tables, const char *problem)
{
  g_clear_pointer (&self->tables, hm_tables_unref);
  self->strength = NULL;
  if (tables != NULL)
    self->tables = hm_tables_ref ((HmTables *) tables);
  g_free (self->tables_problem);
  self->tables_problem = g_strdup (problem);
  refresh (self);
}

const HmTables *
hmui_torque_model_get_tables (HmuiTorqueModel *self)
{
  return self->tables;
}

HmuiSettings *
hmui_torque_model_get_settings (HmuiTorqueModel *self)
{
  return self->settings;
}

void
hmui_torque_model_set_text (HmuiTorqueModel *self, HmuiTorqueInput input, const char *text)
{
  g_return_if_fail (HMUI_IS_TORQUE_MODEL (self) && input < HMUI_TORQUE_N_INPUTS && text != NULL);
  if (g_strcmp0 (self->texts[input], text) == 0)
    return;
  g_free (self->texts[input]);
  self->texts[input] = g_strdup (text);
  refresh (self);
}

const char *
hmui_torque_model_get_text (HmuiTorqueModel *self, HmuiTorqueInput input)
{
  return self->texts[input];
}

void
hmui_torque_model_set_choice (HmuiTorqueModel *self, HmuiTorqueChoice choice, guint index)
{
  g_return_if_fail (HMUI_IS_TORQUE_MODEL (self) && choice < HMUI_TORQUE_N_CHOICES);
  if (hmui_torque_model_get_choice (self, choice) == index)
    return;
  if (choice == HMUI_TORQUE_CHOICE_STRENGTH)
    self->strength = hmui_torque_choices_find_strength (self, index);
  else
    self->choices[choice] = index;
  if (choice == HMUI_TORQUE_CHOICE_JOINT)
    self->choices[HMUI_TORQUE_CHOICE_SPECIAL] = 0;
  refresh (self);
}

/* The class is kept by name: its place in the list changes with the thread. */
guint
hmui_torque_model_get_choice (HmuiTorqueModel *self, HmuiTorqueChoice choice)
{
  if (choice == HMUI_TORQUE_CHOICE_STRENGTH)
    return hmui_torque_choices_index_of_strength (self, self->strength);
  return self->choices[choice];
}

void
hmui_torque_model_set_share_percent (HmuiTorqueModel *self, double percent)
{
  self->share = hm_quantity (HM_QUANTITY_RATIO, percent, HM_UNIT_PERCENT).value;
  refresh (self);
}

HmUnit
hmui_torque_model_get_length_unit (HmuiTorqueModel *self)
{
  return self->length_unit;
}

HmUnit
hmui_torque_model_get_torque_unit (HmuiTorqueModel *self)
{
  return self->torque_unit;
}

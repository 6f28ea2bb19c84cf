/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hmui-torque-model.h"
G_BEGIN_DECLS

/*
 * Between hmui-torque-model.c (what goes in), hmui-torque-work.c (the answer), hmui-torque-choices.c (the lists) and
 * hmui-torque-facts.c (the words).
 */
struct _HmuiTorqueModel
{
  GObject parent_instance;
  HmuiSettings *settings;         /* owned */
  HmuiWrenchDrawer *drawer;       /* owned */
  HmTables *tables;               /* owned, may be NULL */
  char *tables_problem;           /* owned, may be NULL */

  char *texts[HMUI_TORQUE_N_INPUTS];      /* owned */
  guint choices[HMUI_TORQUE_N_CHOICES];
  const char *strength;           /* borrowed from the tables; NULL: not known */
  double share;                   /* of the proof load */
  HmUnit length_unit, torque_unit;

  /* the answer */
  HmuiTorqueState state;
  char *problem;                  /* owned: what to do first, or why there is none */
  char *errors[HMUI_TORQUE_N_INPUTS];     /* owned; what is wrong with a text, NULL: nothing */
  gboolean has_thread, has_tightening, has_computed, has_setting, is_given;
  HmTighteningQuestion question;
  HmTightening tightening;        /* for the value shown */
  HmTightening computed;          /* by thread, class and friction, when a given value takes its place */
  HmTorqueAnswer answer;
  char *page_source;              /* owned: provenance of a given value */
  HmTorque setting;               /* of the wrench */
  char *setting_problem;          /* owned, may be NULL */
  HmWrenchFit fit;
};

void hmui_torque_work_out (HmuiTorqueModel *self);

/** The rows of the special joint that is chosen; NULL for a joint that is worked out. */
const HmSpecialRow *hmui_torque_choices_find_special (HmuiTorqueModel *self);

/** The class at @index of the list of classes; NULL for the first, "not known". */
const char *hmui_torque_choices_find_strength (HmuiTorqueModel *self, guint index);
guint       hmui_torque_choices_index_of_strength (HmuiTorqueModel *self, const char *strength);
HmUnit      hmui_torque_choices_get_extra_unit (HmuiTorqueModel *self);

G_END_DECLS

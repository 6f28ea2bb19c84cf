/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hmui-diagnose-model.h"
G_BEGIN_DECLS

/*
 * HmuiChooseModel: what is told before the first check. Machine and complaint are enough to start; the machine of the
 * last diagnosis is chosen already.
 * Signal "changed" (no arguments): what may be chosen, or what is chosen, is other than before.
 */
#define HMUI_TYPE_CHOOSE_MODEL (hmui_choose_model_get_type ())
G_DECLARE_FINAL_TYPE (HmuiChooseModel, hmui_choose_model, HMUI, CHOOSE_MODEL, GObject)

HmuiChooseModel *hmui_choose_model_new (HmuiDiagnoseModel *bench);

/** hmui_choose_model_refresh: reads the complaints once the knowledge is open, and asks the store for open diagnoses. */
void hmui_choose_model_refresh (HmuiChooseModel *self);

/* Lists of HmuiLine; the key of a complaint or a machine is the name of its drawing, the value what to say when
 * it is pointed at. Borrowed. */
GListModel *hmui_choose_model_get_complaints (HmuiChooseModel *self);   /* all */
GListModel *hmui_choose_model_get_layouts    (HmuiChooseModel *self);   /* those that any complaint is known on */
GListModel *hmui_choose_model_get_incidents  (HmuiChooseModel *self);   /* empty until both are chosen */
GListModel *hmui_choose_model_get_causes     (HmuiChooseModel *self);
GListModel *hmui_choose_model_get_open       (HmuiChooseModel *self);   /* diagnoses to go on with */

/* Indices are those of the lines; -1: none. */
int      hmui_choose_model_get_complaint (HmuiChooseModel *self);
int      hmui_choose_model_get_layout    (HmuiChooseModel *self);
gboolean hmui_choose_model_has_complaint (HmuiChooseModel *self, guint complaint);   /* the machine chosen can have it */
gboolean hmui_choose_model_get_incident  (HmuiChooseModel *self, guint incident);
gboolean hmui_choose_model_get_replaced  (HmuiChooseModel *self, guint cause);
void     hmui_choose_model_set_complaint (HmuiChooseModel *self, guint complaint);
void     hmui_choose_model_set_layout    (HmuiChooseModel *self, guint layout);
void     hmui_choose_model_set_incident  (HmuiChooseModel *self, guint incident, gboolean happened);
void     hmui_choose_model_set_replaced  (HmuiChooseModel *self, guint cause, gboolean replaced);

gboolean hmui_choose_model_can_start (HmuiChooseModel *self);
void     hmui_choose_model_start     (HmuiChooseModel *self);
void     hmui_choose_model_go_on     (HmuiChooseModel *self, guint open);

G_END_DECLS

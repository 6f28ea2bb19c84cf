/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-torque-model.h"
G_BEGIN_DECLS

/** HmuiTorqueForm: what is typed and chosen. Each change goes to the model at once. */
#define HMUI_TYPE_TORQUE_FORM (hmui_torque_form_get_type ())
G_DECLARE_FINAL_TYPE (HmuiTorqueForm, hmui_torque_form, HMUI, TORQUE_FORM, GtkWidget)

void hmui_torque_form_set_model (HmuiTorqueForm *self, HmuiTorqueModel *model);
void hmui_torque_form_refresh   (HmuiTorqueForm *self);

/** hmui_torque_form_set_given: types it where the torque of the maker's manual goes, and puts the cursor there. */
void hmui_torque_form_set_given (HmuiTorqueForm *self, const char *text);

G_END_DECLS

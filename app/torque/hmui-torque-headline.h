/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-torque-model.h"
G_BEGIN_DECLS

/** HmuiTorqueHeadline: the one large number, the same in the other units, where it is from; or what is missing. */
#define HMUI_TYPE_TORQUE_HEADLINE (hmui_torque_headline_get_type ())
G_DECLARE_FINAL_TYPE (HmuiTorqueHeadline, hmui_torque_headline, HMUI, TORQUE_HEADLINE, GtkWidget)

void hmui_torque_headline_refresh (HmuiTorqueHeadline *self, HmuiTorqueModel *model);

G_END_DECLS

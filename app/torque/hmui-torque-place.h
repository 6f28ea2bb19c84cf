/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-place.h"
#include "hmui-settings.h"
G_BEGIN_DECLS

/** HmuiTorquePlace: the place Torque. It reads its tables when it first comes into sight. */
#define HMUI_TYPE_TORQUE_PLACE (hmui_torque_place_get_type ())
G_DECLARE_FINAL_TYPE (HmuiTorquePlace, hmui_torque_place, HMUI, TORQUE_PLACE, GtkWidget)

GtkWidget *hmui_torque_place_new (HmuiSettings *settings);

/** hmui_torque_place_set_given: types a torque with its unit ("45 lbf·ft") where that of the maker's manual goes. */
void       hmui_torque_place_set_given (HmuiTorquePlace *self, const char *text);

G_END_DECLS

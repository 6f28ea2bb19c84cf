/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/** HmuiTorqueGrid: the fields of a form, one below the other, or in pairs where there is room. Those hidden leave no gap. */
#define HMUI_TYPE_TORQUE_GRID (hmui_torque_grid_get_type ())
G_DECLARE_FINAL_TYPE (HmuiTorqueGrid, hmui_torque_grid, HMUI, TORQUE_GRID, GtkWidget)

G_END_DECLS

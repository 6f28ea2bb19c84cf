/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/*
 * HmuiTorqueColumns: the form on the left, the answer on the right with its headline always in sight. Where there is no
 * room for two columns, the headline stays on top, and form and details scroll below it.
 * In a .ui file: <child type="form">, <child type="headline">, <child type="details">.
 */
#define HMUI_TYPE_TORQUE_COLUMNS (hmui_torque_columns_get_type ())
G_DECLARE_FINAL_TYPE (HmuiTorqueColumns, hmui_torque_columns, HMUI, TORQUE_COLUMNS, GtkWidget)

gboolean hmui_torque_columns_is_narrow (HmuiTorqueColumns *self);

G_END_DECLS

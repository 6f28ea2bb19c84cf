/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hm-provenance.h"
G_BEGIN_DECLS

/** HmuiTorqueFactRow: a name with a sentence below it, and where it is from. Hides itself when there is no sentence. */
#define HMUI_TYPE_TORQUE_FACT_ROW (hmui_torque_fact_row_get_type ())
G_DECLARE_FINAL_TYPE (HmuiTorqueFactRow, hmui_torque_fact_row, HMUI, TORQUE_FACT_ROW, GtkWidget)

GtkWidget *hmui_torque_fact_row_new (const char *name);

/** hmui_torque_fact_row_set: @value: (nullable) */
void hmui_torque_fact_row_set (HmuiTorqueFactRow *self, const char *value, HmProvenance provenance);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/*
 * HmuiTorqueField: a line of text with its name above, a unit behind, and below it what is wrong, after a pause.
 * In a .ui file: properties "title", "placeholder", "unit" (strings); a child element stands behind the entry.
 * Signal "changed" (no arguments): other text than before.
 * Signal "submitted" (no arguments): Enter was pressed.
 */
#define HMUI_TYPE_TORQUE_FIELD (hmui_torque_field_get_type ())
G_DECLARE_FINAL_TYPE (HmuiTorqueField, hmui_torque_field, HMUI, TORQUE_FIELD, GtkWidget)

const char *hmui_torque_field_get_text  (HmuiTorqueField *self);   /* borrowed */
void        hmui_torque_field_set_text  (HmuiTorqueField *self, const char *text);
void        hmui_torque_field_set_unit  (HmuiTorqueField *self, const char *unit);

/** hmui_torque_field_set_error: (nullable): gone at once, shown after a pause in typing. @now: without the pause */
void        hmui_torque_field_set_error (HmuiTorqueField *self, const char *error, gboolean now);

G_END_DECLS

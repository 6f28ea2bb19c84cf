/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/*
 * HmuiTorqueChooser: one of a list, with its name above. In a .ui file: property "title" (string).
 * Signal "chosen" (guint index): the person chose; not when it is set from the program.
 */
#define HMUI_TYPE_TORQUE_CHOOSER (hmui_torque_chooser_get_type ())
G_DECLARE_FINAL_TYPE (HmuiTorqueChooser, hmui_torque_chooser, HMUI, TORQUE_CHOOSER, GtkWidget)

/** hmui_torque_chooser_set: @texts: (array zero-terminated=1): left alone when they are those there already */
void  hmui_torque_chooser_set (HmuiTorqueChooser *self, const char * const *texts, guint index);

G_END_DECLS

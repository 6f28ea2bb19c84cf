/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/* HmuiStepRow: one numbered line of a step list. Private to this folder. */
#define HMUI_TYPE_STEP_ROW (hmui_step_row_get_type ())
G_DECLARE_FINAL_TYPE (HmuiStepRow, hmui_step_row, HMUI, STEP_ROW, GtkWidget)

GtkWidget *hmui_step_row_new (guint number, const char *text);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/*
 * "Print a chart": a button with a menu of the charts, each to be printed or saved as PDF. Works in a window that has the
 * actions of hmui_chart_actions_attach(); without them its items are greyed out.
 */
#define HMUI_TYPE_CHART_BUTTON (hmui_chart_button_get_type ())
G_DECLARE_FINAL_TYPE (HmuiChartButton, hmui_chart_button, HMUI, CHART_BUTTON, GtkWidget)

GtkWidget *hmui_chart_button_new (void);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-settings.h"
G_BEGIN_DECLS

/** HmuiChartTell: takes one sentence for the person. */
typedef void (*HmuiChartTell) (const char *sentence, gpointer user_data);

/**
 * hmui_chart_actions_attach: gives @window the actions "win.print-chart" and "win.save-chart"; their parameter is a string, the
 * hm_chart_name(): "socket", "thread", "torque". Printing shows the print dialog first, saving asks for the PDF's name. Charts come
 * in the person's units and language.
 * @tell: (nullable): told when a PDF was written, and what went wrong; NULL: a dialog shows only what went wrong. Has to work as
 *   long as @window lives
 */
void hmui_chart_actions_attach (GtkApplicationWindow *window, HmuiSettings *settings, HmuiChartTell tell, gpointer user_data);

G_END_DECLS

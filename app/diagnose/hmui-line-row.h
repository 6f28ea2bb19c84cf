/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-line.h"
G_BEGIN_DECLS

/** HmuiLineRow: shows one #HmuiLine. */
#define HMUI_TYPE_LINE_ROW (hmui_line_row_get_type ())
G_DECLARE_FINAL_TYPE (HmuiLineRow, hmui_line_row, HMUI, LINE_ROW, GtkWidget)

GtkWidget *hmui_line_row_new (HmuiLine *line);

G_END_DECLS

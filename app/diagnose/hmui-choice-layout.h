/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/*
 * HmuiChoiceLayout: children in columns of one width, as many as their least width lets stand side by side, up to a limit;
 * those of one row have one height. Fewer columns are taken where that fills the rows more evenly.
 */
#define HMUI_TYPE_CHOICE_LAYOUT (hmui_choice_layout_get_type ())
G_DECLARE_FINAL_TYPE (HmuiChoiceLayout, hmui_choice_layout, HMUI, CHOICE_LAYOUT, GtkLayoutManager)

/** hmui_choice_layout_new: @column_gap and @row_gap in px. (transfer full) */
GtkLayoutManager *hmui_choice_layout_new (guint most_columns, int column_gap, int row_gap);

G_END_DECLS

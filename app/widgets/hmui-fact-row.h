/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/*
 * HmuiFactRow: one fact in a line: a small label ("Lay out"), its value, and a child at the end such as a provenance
 * chip. Labels of rows below each other line up. A row without a value hides itself.
 * In a .ui file: properties "label" and "value"; a child element becomes the child at the end.
 */
#define HMUI_TYPE_FACT_ROW (hmui_fact_row_get_type ())
G_DECLARE_FINAL_TYPE (HmuiFactRow, hmui_fact_row, HMUI, FACT_ROW, GtkWidget)

/** hmui_fact_row_new: both texts are translated already and copied; @value may be NULL. */
GtkWidget *hmui_fact_row_new (const char *label, const char *value);

void hmui_fact_row_set_label (HmuiFactRow *self, const char *label);
void hmui_fact_row_set_value (HmuiFactRow *self, const char *value);   /* (nullable) */

/** hmui_fact_row_set_end: (nullable) a widget at the end of the line; the row takes it. */
void hmui_fact_row_set_end (HmuiFactRow *self, GtkWidget *child);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hmui-sheet-type.h"
G_BEGIN_DECLS

/*
 * A table of a sheet, set in type for a width. Columns are as wide as what they hold; where that is too much, text is broken
 * between words, so that nothing is cut off. Private to app/print.
 */
typedef struct _HmuiSheetGrid HmuiSheetGrid;

/** hmui_sheet_grid_new: @table has to outlive it. (transfer full) */
HmuiSheetGrid *hmui_sheet_grid_new  (PangoContext *context, const HmSheetTable *table, double width);
void           hmui_sheet_grid_free (HmuiSheetGrid *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmuiSheetGrid, hmui_sheet_grid_free)

double hmui_sheet_grid_head_height (const HmuiSheetGrid *self);
double hmui_sheet_grid_row_height  (const HmuiSheetGrid *self, guint row);

/** hmui_sheet_grid_draw_head, hmui_sheet_grid_draw_row: the top left corner comes to @x, @y. @band: on a grey band */
void hmui_sheet_grid_draw_head (const HmuiSheetGrid *self, cairo_t *cr, double x, double y);
void hmui_sheet_grid_draw_row  (const HmuiSheetGrid *self, cairo_t *cr, guint row, gboolean band, double x, double y);

G_END_DECLS

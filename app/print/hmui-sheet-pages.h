/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <cairo.h>
#include "hm-sheet.h"
#include "hmui-paper.h"
G_BEGIN_DECLS

/*
 * A sheet laid out on paper. The one place that draws sheets: for a PDF, a printer and a preview alike. Knows no GTK.
 * Every page has the title, the date, whose word governs, and "page x of y"; tables repeat their head on each page, and rows
 * that belong together stay together.
 */
typedef struct _HmuiSheetPages HmuiSheetPages;

/** hmui_sheet_pages_new: @sheet is borrowed and has to outlive it. (transfer full) */
HmuiSheetPages *hmui_sheet_pages_new  (const HmSheet *sheet, const HmuiPaper *paper);
void            hmui_sheet_pages_free (HmuiSheetPages *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmuiSheetPages, hmui_sheet_pages_free)

guint hmui_sheet_pages_get_n (const HmuiSheetPages *self);   /* at least 1 */

/** hmui_sheet_pages_draw: one page, from 0. A unit of @cr is a point, its origin the top left corner of the paper. */
void hmui_sheet_pages_draw (const HmuiSheetPages *self, cairo_t *cr, guint page);

G_END_DECLS

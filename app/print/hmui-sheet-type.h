/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <pango/pangocairo.h>
#include "hm-sheet.h"
G_BEGIN_DECLS

/*
 * Type and ink of printed sheets: the same on paper, in a PDF and in a preview, whatever the device's resolution. All measures
 * in points of 1/72 in. Private to app/print.
 */
#define HMUI_SHEET_MARGIN 36.0
#define HMUI_SHEET_TITLE_PT 20.0
#define HMUI_SHEET_HEADING_PT 12.0
#define HMUI_SHEET_TEXT_PT 9.0
#define HMUI_SHEET_NOTE_PT 8.0     /* the smallest */
#define HMUI_SHEET_CELL_PAD_X 4.0
#define HMUI_SHEET_CELL_PAD_Y 1.1

/** hmui_sheet_type_new_context: (transfer full) */
PangoContext *hmui_sheet_type_new_context (void);

/** hmui_sheet_type_set: one text. @width: at which it is broken; 0 for one line. (transfer full) */
PangoLayout *hmui_sheet_type_set (PangoContext *context, const char *text, double size_pt, gboolean bold, double width);

double hmui_sheet_type_width  (PangoLayout *layout);
double hmui_sheet_type_height (PangoLayout *layout);

/** hmui_sheet_type_word_width: of the widest word of @text, as hmui_sheet_type_set() sets it. */
double hmui_sheet_type_word_width (PangoContext *context, const char *text, double size_pt, gboolean bold);

/** HmuiInk: what is drawn in which colour; dark enough for a black-and-white printer. */
typedef enum { HMUI_INK_TEXT, HMUI_INK_QUIET, HMUI_INK_GOOD, HMUI_INK_FAIR, HMUI_INK_BAD, HMUI_INK_RULE, HMUI_INK_BAND,
               HMUI_INK_HEAD } HmuiInk;

void     hmui_sheet_type_dip     (cairo_t *cr, HmuiInk ink);
HmuiInk  hmui_sheet_type_ink     (HmSheetTone tone);
gboolean hmui_sheet_type_is_bold (HmSheetTone tone);

/** hmui_sheet_type_show: @layout with its top left corner at @x, @y. */
void hmui_sheet_type_show (cairo_t *cr, PangoLayout *layout, double x, double y, HmuiInk ink);

G_END_DECLS

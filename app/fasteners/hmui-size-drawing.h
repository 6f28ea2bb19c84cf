/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-answer.h"
G_BEGIN_DECLS

/*
 * HmuiSizeDrawing: the head of an answer. An outside hexagon is drawn at true size, over a ruler to check that by, where the
 * monitor says how large it is and there is room; everything else to scale, filling the view.
 */
#define HMUI_TYPE_SIZE_DRAWING (hmui_size_drawing_get_type ())
G_DECLARE_FINAL_TYPE (HmuiSizeDrawing, hmui_size_drawing, HMUI, SIZE_DRAWING, GtkWidget)

/** hmui_size_drawing_set: hidden where @answer has no drives. @format: how the person reads numbers. */
void     hmui_size_drawing_set          (HmuiSizeDrawing *self, HmuiAnswer *answer, const HmFormat *format);

/** hmui_size_drawing_set_px_per_mm: in place of what the monitor says; 0: it says nothing; below 0: ask it, as before. */
void     hmui_size_drawing_set_px_per_mm (HmuiSizeDrawing *self, double px_per_mm);

G_END_DECLS

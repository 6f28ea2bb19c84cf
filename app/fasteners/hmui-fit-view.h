/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-answer.h"
G_BEGIN_DECLS

/*
 * HmuiFitView: a head in an opening, seen from above and to scale, turned until it touches. 84 px square. Only a picture of
 * what the words beside it say: hidden from screen readers.
 */
#define HMUI_TYPE_FIT_VIEW (hmui_fit_view_get_type ())
G_DECLARE_FINAL_TYPE (HmuiFitView, hmui_fit_view, HMUI, FIT_VIEW, GtkWidget)

/** hmui_fit_view_set: widths across flats; @tone colours the head. */
void hmui_fit_view_set (HmuiFitView *self, HmLength head, HmLength opening, double degrees, HmuiTone tone);

/** hmui_tone_color: the name of its colour in the style sheet; NULL for none. */
const char *hmui_tone_color (HmuiTone tone);

G_END_DECLS

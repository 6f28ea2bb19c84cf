/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/*
 * HmuiHeading: a heading that takes the keyboard focus, so that a new page is read from its top and Tab goes on from there.
 * Property "text" (string, read/write).
 */
#define HMUI_TYPE_HEADING (hmui_heading_get_type ())
G_DECLARE_FINAL_TYPE (HmuiHeading, hmui_heading, HMUI, HEADING, GtkWidget)

void hmui_heading_set_text (HmuiHeading *self, const char *text);

G_END_DECLS

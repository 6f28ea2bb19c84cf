/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/** HmuiPlaceRow: one place in the rail: icon and word. */
#define HMUI_TYPE_PLACE_ROW (hmui_place_row_get_type ())
G_DECLARE_FINAL_TYPE (HmuiPlaceRow, hmui_place_row, HMUI, PLACE_ROW, GtkListBoxRow)

GtkWidget *hmui_place_row_new (const char *title, const char *icon);

/** hmui_place_row_set_narrow: the icon alone, its word when pointed at. */
void       hmui_place_row_set_narrow (HmuiPlaceRow *self, gboolean narrow);

/** hmui_place_row_set_current: marks the place in sight, for the eye and for a screen reader. */
void       hmui_place_row_set_current (HmuiPlaceRow *self, gboolean current);

G_END_DECLS

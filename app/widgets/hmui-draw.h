/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/* What our drawn widgets share, here and in the places. */

#define HMUI_WIDGETS_RESOURCE "/local/halfmoon/Halfmoon/widgets/"

/** hmui_translate: (nullable) a sentence of the knowledge in the person's language; "" for NULL. Borrowed. */
const char *hmui_translate (const char *english);

/**
 * hmui_draw_color: a colour that the style sheet defines, or the text colour.
 * @name: (nullable): "hm_accent" and the like; NULL, or a name that is not defined, gives the text colour
 * @alpha: 0–1, multiplies the colour's own
 */
void hmui_draw_color (GtkWidget *widget, const char *name, double alpha, GdkRGBA *out);

/**
 * hmui_draw_text: a layout in the widget's font.
 * @factor: of the widget's font size
 * Returns: (transfer full)
 */
PangoLayout *hmui_draw_text (GtkWidget *widget, const char *text, double factor, PangoWeight weight);

/** hmui_draw_text_size: the size of @layout in px, rounded up. */
void hmui_draw_text_size (PangoLayout *layout, double *width, double *height);

/** hmui_draw_text_at: paints @layout with its top left corner at @x, @y. */
void hmui_draw_text_at (cairo_t *cr, PangoLayout *layout, double x, double y, const GdkRGBA *color);

/** hmui_draw_text_centered: paints one line centred on @x, @y. */
void hmui_draw_text_centered (cairo_t *cr, PangoLayout *layout, double x, double y, const GdkRGBA *color);

/** hmui_draw_rounded: adds a rectangle with round corners to the path. */
void hmui_draw_rounded (cairo_t *cr, const graphene_rect_t *rect, double radius);

/** hmui_draw_unparent_children: for dispose: GTK 4.8 leaves template children that were never bound. */
void hmui_draw_unparent_children (GtkWidget *widget);

G_END_DECLS

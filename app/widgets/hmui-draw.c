/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-draw.h"
#include <glib/gi18n-lib.h>
#include <math.h>

const char *
hmui_translate (const char *english)
{
  if (english == NULL || english[0] == '\0')
    return "";      /* the empty message is the catalogue's header */
  return g_dgettext (GETTEXT_PACKAGE, english);
}

void
hmui_draw_color (GtkWidget *widget, const char *name, double alpha, GdkRGBA *out)
{
  GtkStyleContext *context = gtk_widget_get_style_context (widget);

  if (name == NULL || !gtk_style_context_lookup_color (context, name, out))
    gtk_style_context_get_color (context, out);
  out->alpha *= alpha;
}

PangoLayout *
hmui_draw_text (GtkWidget *widget, const char *text, double factor, PangoWeight weight)
{
  PangoLayout *layout = gtk_widget_create_pango_layout (widget, text);
  PangoAttrList *attributes = pango_attr_list_new ();

  pango_attr_list_insert (attributes, pango_attr_scale_new (factor));
  pango_attr_list_insert (attributes, pango_attr_weight_new (weight));
  pango_attr_list_insert (attributes, pango_attr_font_features_new ("tnum"));
  pango_layout_set_attributes (layout, attributes);
  pango_attr_list_unref (attributes);
  return layout;
}

void
hmui_draw_text_size (PangoLayout *layout, double *width, double *height)
{
  PangoRectangle logical;

  pango_layout_get_extents (layout, NULL, &logical);
  *width = ceil (pango_units_to_double (logical.width));
  *height = ceil (pango_units_to_double (logical.height));
}

void
hmui_draw_text_at (cairo_t *cr, PangoLayout *layout, double x, double y, const GdkRGBA *color)
{
  PangoRectangle logical;

  /* A layout with a width aligns its lines inside it: start at the lines, not at that width. */
  pango_layout_get_extents (layout, NULL, &logical);
  gdk_cairo_set_source_rgba (cr, color);
  cairo_move_to (cr, x - pango_units_to_double (logical.x), y - pango_units_to_double (logical.y));
  pango_cairo_show_layout (cr, layout);
  cairo_new_path (cr);     /* the text's end must not start the next line */
}

void
hmui_draw_text_centered (cairo_t *cr, PangoLayout *layout, double x, double y, const GdkRGBA *color)
{
  double width, height;

  hmui_draw_text_size (layout, &width, &height);
  hmui_draw_text_at (cr, layout, x - width / 2, y - height / 2, color);
}

void
hmui_draw_rounded (cairo_t *cr, const graphene_rect_t *rect, double radius)
{
  double x0 = rect->origin.x, y0 = rect->origin.y;
  double x1 = x0 + rect->size.width, y1 = y0 + rect->size.height;

  cairo_new_sub_path (cr);
  cairo_arc (cr, x1 - radius, y0 + radius, radius, -G_PI_2, 0);
  cairo_arc (cr, x1 - radius, y1 - radius, radius, 0, G_PI_2);
  cairo_arc (cr, x0 + radius, y1 - radius, radius, G_PI_2, G_PI);
  cairo_arc (cr, x0 + radius, y0 + radius, radius, G_PI, 1.5 * G_PI);
  cairo_close_path (cr);
}

void
hmui_draw_unparent_children (GtkWidget *widget)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (widget)) != NULL)
    gtk_widget_unparent (child);
}

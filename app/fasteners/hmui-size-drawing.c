/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-size-drawing.h"
#include "hm-drive-outline.h"
#include "hmui-draw.h"
#include "hmui-true-scale.h"
#include "hmui-widgets.h"
#include <glib/gi18n.h>

#define TO_SCALE_PX 186
#define MOST_PX 260              /* of a drawing at true size, beside the text */
#define EDGE 4.0
#define RULER_MM 25
#define RULER_PX 12.0            /* its longest marks */
#define GAP_PX 14.0

struct _HmuiSizeDrawing
{
  GtkWidget parent_instance;
  HmuiDriveView *to_scale;        /* children */
  GtkDrawingArea *true_size;
  GtkLabel *claim;
  GArray *outline;                /* owned, of HmOutlinePoint; NULL where nothing is drawn at true size */
  char *name;                     /* owned */
  double px_per_mm;               /* of the drawing at true size */
  double given_px_per_mm;         /* below 0: ask the monitor */
  GdkSurface *surface;            /* owned while mapped */
};

G_DEFINE_FINAL_TYPE (HmuiSizeDrawing, hmui_size_drawing, GTK_TYPE_WIDGET)

static double
ask_monitor (HmuiSizeDrawing *self)
{
  GdkMonitor *monitor;
  GdkRectangle geometry;

  if (self->given_px_per_mm >= 0.0)
    return self->given_px_per_mm;
  monitor = self->surface != NULL ? gdk_display_get_monitor_at_surface (gdk_surface_get_display (self->surface), self->surface) : NULL;
  if (monitor == NULL)
    return 0.0;
  gdk_monitor_get_geometry (monitor, &geometry);
  return hmui_true_scale (geometry.width, geometry.height, gdk_monitor_get_width_mm (monitor), gdk_monitor_get_height_mm (monitor));
}

static void
draw_head (HmuiSizeDrawing *self, cairo_t *cr)
{
  GtkWidget *widget = GTK_WIDGET (self->true_size);
  GdkRGBA fill, ink;

  for (guint i = 0; i < self->outline->len; i++)
    {
      const HmOutlinePoint *point = &g_array_index (self->outline, HmOutlinePoint, i);

      cairo_line_to (cr, point->x_mm * self->px_per_mm, point->y_mm * self->px_per_mm);
    }
  cairo_close_path (cr);
  hmui_draw_color (widget, NULL, 0.10, &fill);
  hmui_draw_color (widget, NULL, 1.0, &ink);
  gdk_cairo_set_source_rgba (cr, &fill);
  cairo_fill_preserve (cr);
  gdk_cairo_set_source_rgba (cr, &ink);
  cairo_set_line_width (cr, 1.0);
  cairo_stroke (cr);
}

/* Its left end at the origin; marks down, the longest every 5 mm. */
static void
draw_ruler (HmuiSizeDrawing *self, cairo_t *cr)
{
  g_autoptr(PangoLayout) text = hmui_draw_text (GTK_WIDGET (self->true_size), _("25\302\240mm"), 0.85, PANGO_WEIGHT_NORMAL);
  double length = RULER_MM * self->px_per_mm, text_width, text_height;
  GdkRGBA ink;

  hmui_draw_color (GTK_WIDGET (self->true_size), NULL, 1.0, &ink);
  gdk_cairo_set_source_rgba (cr, &ink);
  cairo_set_line_width (cr, 1.0);
  cairo_move_to (cr, 0, 0);
  cairo_line_to (cr, length, 0);
  for (int i = 0; i <= RULER_MM; i++)
    {
      cairo_move_to (cr, i * self->px_per_mm, 0);
      cairo_line_to (cr, i * self->px_per_mm, i % RULER_MM == 0 ? RULER_PX : i % 5 == 0 ? RULER_PX * 0.7 : RULER_PX * 0.35);
    }
  cairo_stroke (cr);
  hmui_draw_text_size (text, &text_width, &text_height);
  hmui_draw_text_at (cr, text, (length - text_width) / 2, RULER_PX, &ink);
}

static void
draw_cb (GtkDrawingArea *area, cairo_t *cr, int width, int height, gpointer data)
{
  HmuiSizeDrawing *self = data;
  double radius;

  if (self->outline == NULL || self->px_per_mm <= 0.0)
    return;
  radius = hm_drive_outline_radius_mm (self->outline) * self->px_per_mm;
  cairo_save (cr);
  cairo_translate (cr, width / 2.0, EDGE + radius);
  draw_head (self, cr);
  cairo_restore (cr);
  cairo_translate (cr, (width - RULER_MM * self->px_per_mm) / 2, EDGE + 2 * radius + GAP_PX);
  draw_ruler (self, cr);
}

/* Whether the drawing is at true size, and how much room it takes then. */
static void
update (HmuiSizeDrawing *self)
{
  double px_per_mm = self->outline != NULL ? ask_monitor (self) : 0.0;
  double head = px_per_mm > 0.0 ? 2 * (hm_drive_outline_radius_mm (self->outline) * px_per_mm + EDGE) : 0.0;
  double ruler = RULER_MM * px_per_mm + 2 * EDGE;
  gboolean fits = px_per_mm > 0.0 && MAX (head, ruler) <= MOST_PX;

  self->px_per_mm = fits ? px_per_mm : 0.0;
  gtk_widget_set_visible (GTK_WIDGET (self->to_scale), !fits);
  gtk_widget_set_visible (GTK_WIDGET (self->true_size), fits);
  gtk_widget_set_visible (GTK_WIDGET (self->claim), fits);
  if (fits)
    {
      g_autoptr(PangoLayout) text = hmui_draw_text (GTK_WIDGET (self->true_size), "25", 0.85, PANGO_WEIGHT_NORMAL);
      double text_width, text_height;

      hmui_draw_text_size (text, &text_width, &text_height);
      gtk_drawing_area_set_content_width (self->true_size, (int) MAX (head, ruler));
      gtk_drawing_area_set_content_height (self->true_size, (int) (head + GAP_PX + RULER_PX + text_height));
    }
  gtk_widget_queue_draw (GTK_WIDGET (self->true_size));
}

static void
hmui_size_drawing_map (GtkWidget *widget)
{
  HmuiSizeDrawing *self = HMUI_SIZE_DRAWING (widget);

  self->surface = g_object_ref (gtk_native_get_surface (gtk_widget_get_native (widget)));
  g_signal_connect_swapped (self->surface, "enter-monitor", G_CALLBACK (update), self);
  g_signal_connect_swapped (self->surface, "leave-monitor", G_CALLBACK (update), self);
  update (self);
  GTK_WIDGET_CLASS (hmui_size_drawing_parent_class)->map (widget);
}

static void
hmui_size_drawing_unmap (GtkWidget *widget)
{
  HmuiSizeDrawing *self = HMUI_SIZE_DRAWING (widget);

  g_signal_handlers_disconnect_by_func (self->surface, update, self);
  g_clear_object (&self->surface);
  GTK_WIDGET_CLASS (hmui_size_drawing_parent_class)->unmap (widget);
}

static void
hmui_size_drawing_dispose (GObject *object)
{
  HmuiSizeDrawing *self = HMUI_SIZE_DRAWING (object);
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (object))) != NULL)
    gtk_widget_unparent (child);
  g_clear_pointer (&self->outline, g_array_unref);
  g_clear_pointer (&self->name, g_free);
  G_OBJECT_CLASS (hmui_size_drawing_parent_class)->dispose (object);
}

static void
hmui_size_drawing_class_init (HmuiSizeDrawingClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_size_drawing_dispose;
  widget_class->map = hmui_size_drawing_map;
  widget_class->unmap = hmui_size_drawing_unmap;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BOX_LAYOUT);
}

static void
hmui_size_drawing_init (HmuiSizeDrawing *self)
{
  GtkWidget *widget = GTK_WIDGET (self);

  gtk_orientable_set_orientation (GTK_ORIENTABLE (gtk_widget_get_layout_manager (widget)), GTK_ORIENTATION_VERTICAL);
  self->given_px_per_mm = -1.0;
  self->to_scale = HMUI_DRIVE_VIEW (hmui_drive_view_new ());
  hmui_drive_view_set_pixel_size (self->to_scale, TO_SCALE_PX);
  self->true_size = g_object_new (GTK_TYPE_DRAWING_AREA, "accessible-role", GTK_ACCESSIBLE_ROLE_IMG, NULL);
  gtk_drawing_area_set_draw_func (self->true_size, draw_cb, self, NULL);
  /* Translators: two lines of about the same length */
  self->claim = GTK_LABEL (gtk_label_new (_("True size if the\nruler measures 25\302\240mm")));
  gtk_label_set_wrap (self->claim, TRUE);
  gtk_label_set_justify (self->claim, GTK_JUSTIFY_CENTER);
  gtk_widget_add_css_class (GTK_WIDGET (self->claim), "quiet");
  gtk_widget_set_parent (GTK_WIDGET (self->to_scale), widget);
  gtk_widget_set_parent (GTK_WIDGET (self->true_size), widget);
  gtk_widget_set_parent (GTK_WIDGET (self->claim), widget);
}

static void
say_words (HmuiSizeDrawing *self)
{
  g_autofree char *words = g_strdup_printf (_("%s, drawn at true size above a ruler of 25\302\240mm."), self->name);

  gtk_accessible_update_property (GTK_ACCESSIBLE (self->true_size), GTK_ACCESSIBLE_PROPERTY_LABEL, words,
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, gtk_label_get_text (self->claim), -1);
}

void
hmui_size_drawing_set (HmuiSizeDrawing *self, HmuiAnswer *answer, const HmFormat *format)
{
  HmLength point_to_point, across_lobes;
  guint n;
  const HmDrive *drives = hmui_answer_get_drives (answer, &n);

  g_return_if_fail (HMUI_IS_SIZE_DRAWING (self));
  hmui_answer_get_lobes (answer, &point_to_point, &across_lobes);
  hmui_drive_view_set_drives (self->to_scale, drives, n, format);
  hmui_drive_view_set_hexalobular (self->to_scale, point_to_point, across_lobes);
  g_clear_pointer (&self->outline, g_array_unref);
  g_free (self->name);
  self->name = g_strdup (hmui_answer_get_title (answer));
  if (n == 1 && drives[0].kind == HM_DRIVE_HEX && drives[0].size.mm > 0.0)
    self->outline = hm_drive_outline (&drives[0], point_to_point, across_lobes);
  say_words (self);
  gtk_widget_set_visible (GTK_WIDGET (self), n > 0);
  update (self);
}

void
hmui_size_drawing_set_px_per_mm (HmuiSizeDrawing *self, double px_per_mm)
{
  g_return_if_fail (HMUI_IS_SIZE_DRAWING (self));
  self->given_px_per_mm = px_per_mm;
  update (self);
}

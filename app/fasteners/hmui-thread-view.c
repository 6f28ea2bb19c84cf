/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-thread-view.h"
#include "hm-thread-profile.h"
#include "hmui-draw.h"
#include <glib/gi18n.h>

#define HEIGHT 96
#define LEAST_WIDTH 220
#define SHOWN_PITCHES 8          /* of the coarser thread */
#define TEXT_ROOM 20.0           /* px below the drawing */

struct _HmuiThreadView
{
  GtkWidget parent_instance;
  GArray *bolt, *hole;            /* owned, of HmProfilePoint; NULL until set */
  HmLength shown, jam, top, bottom;   /* along the axis; radii of the crest and of the root */
};

G_DEFINE_FINAL_TYPE (HmuiThreadView, hmui_thread_view, GTK_TYPE_WIDGET)

/* Along the profile. */
static void
trace (HmuiThreadView *self, cairo_t *cr, const GArray *line, double scale)
{
  const HmProfilePoint *point = &g_array_index (line, HmProfilePoint, 0);

  cairo_move_to (cr, -2, (self->top.mm - point->radius_mm) * scale);
  for (guint i = 0; i < line->len; i++)
    {
      point = &g_array_index (line, HmProfilePoint, i);
      cairo_line_to (cr, point->along_mm * scale, (self->top.mm - point->radius_mm) * scale);
    }
}

/* From the axis, or from outside, up to the profile; only the profile is outlined. */
static void
paint (HmuiThreadView *self, cairo_t *cr, const GArray *line, double scale, double from_y, const char *color, double alpha)
{
  GdkRGBA fill, ink;

  hmui_draw_color (GTK_WIDGET (self), color, alpha, &fill);
  hmui_draw_color (GTK_WIDGET (self), color, 0.9, &ink);
  trace (self, cr, line, scale);
  cairo_line_to (cr, g_array_index (line, HmProfilePoint, line->len - 1).along_mm * scale, from_y);
  cairo_line_to (cr, -2, from_y);
  cairo_close_path (cr);
  gdk_cairo_set_source_rgba (cr, &fill);
  cairo_fill (cr);
  trace (self, cr, line, scale);
  gdk_cairo_set_source_rgba (cr, &ink);
  cairo_set_line_width (cr, 1.5);
  cairo_stroke (cr);
}

static void
draw_jam (HmuiThreadView *self, cairo_t *cr, double scale, double height)
{
  GdkRGBA ink;
  double x = self->jam.mm * scale, dashes[] = { 5, 4 };

  if (self->jam.mm <= 0.0 || self->jam.mm > self->shown.mm)
    return;
  hmui_draw_color (GTK_WIDGET (self), "hm_caution", 1.0, &ink);
  gdk_cairo_set_source_rgba (cr, &ink);
  cairo_set_line_width (cr, 2.0);
  cairo_set_dash (cr, dashes, 2, 0);
  cairo_move_to (cr, x, 0);
  cairo_line_to (cr, x, height);
  cairo_stroke (cr);
  cairo_set_dash (cr, NULL, 0, 0);
}

static void
draw_legend (HmuiThreadView *self, cairo_t *cr, double y)
{
  g_autoptr(PangoLayout) bolt = hmui_draw_text (GTK_WIDGET (self), _("bolt"), 1.0, PANGO_WEIGHT_NORMAL);
  g_autoptr(PangoLayout) hole = hmui_draw_text (GTK_WIDGET (self), _("hole"), 1.0, PANGO_WEIGHT_NORMAL);
  g_autoptr(PangoLayout) jam = hmui_draw_text (GTK_WIDGET (self), _("jams here"), 1.0, PANGO_WEIGHT_NORMAL);
  double width, height, x = 0;
  GdkRGBA ink;

  hmui_draw_text_size (bolt, &width, &height);
  hmui_draw_color (GTK_WIDGET (self), "hm_accent", 1.0, &ink);
  hmui_draw_text_at (cr, bolt, x, y, &ink);
  x += width + 12;
  hmui_draw_color (GTK_WIDGET (self), NULL, 0.8, &ink);
  hmui_draw_text_at (cr, hole, x, y, &ink);
  hmui_draw_text_size (hole, &width, &height);
  x += width + 12;
  if (self->jam.mm <= 0.0 || self->jam.mm > self->shown.mm)
    return;
  hmui_draw_color (GTK_WIDGET (self), "hm_caution", 1.0, &ink);
  hmui_draw_text_at (cr, jam, x, y, &ink);
}

static void
hmui_thread_view_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  HmuiThreadView *self = HMUI_THREAD_VIEW (widget);
  double width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget) - TEXT_ROOM, scale, shift;
  cairo_t *cr;

  if (self->bolt == NULL)
    return;
  scale = width / self->shown.mm;
  shift = (height - (self->top.mm - self->bottom.mm) * scale) / 2;
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height + TEXT_ROOM));
  draw_legend (self, cr, height + 2);
  cairo_rectangle (cr, 0, 0, width, height);
  cairo_clip (cr);
  cairo_translate (cr, 0, shift);
  paint (self, cr, self->hole, scale, -shift - 2, NULL, 0.16);
  paint (self, cr, self->bolt, scale, height - shift + 2, "hm_accent", 0.30);
  cairo_translate (cr, 0, -shift);
  draw_jam (self, cr, scale, height);
  cairo_destroy (cr);
}

static void
hmui_thread_view_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum, int *natural,
                          int *minimum_baseline, int *natural_baseline)
{
  *minimum = *natural = orientation == GTK_ORIENTATION_HORIZONTAL ? LEAST_WIDTH : HEIGHT;
}

static void
hmui_thread_view_finalize (GObject *object)
{
  g_clear_pointer (&HMUI_THREAD_VIEW (object)->bolt, g_array_unref);
  g_clear_pointer (&HMUI_THREAD_VIEW (object)->hole, g_array_unref);
  G_OBJECT_CLASS (hmui_thread_view_parent_class)->finalize (object);
}

static void
hmui_thread_view_class_init (HmuiThreadViewClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = hmui_thread_view_finalize;
  widget_class->snapshot = hmui_thread_view_snapshot;
  widget_class->measure = hmui_thread_view_measure;
  gtk_widget_class_set_css_name (widget_class, "threadview");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_IMG);
}

static void
hmui_thread_view_init (HmuiThreadView *self)
{
}

void
hmui_thread_view_set (HmuiThreadView *self, const HmThread *bolt, const HmThread *hole, double turns, const char *words)
{
  HmLength bolt_root, hole_root;

  g_return_if_fail (HMUI_IS_THREAD_VIEW (self) && bolt != NULL && hole != NULL && words != NULL);
  g_clear_pointer (&self->bolt, g_array_unref);
  g_clear_pointer (&self->hole, g_array_unref);
  self->shown.mm = SHOWN_PITCHES * MAX (bolt->pitch.mm, hole->pitch.mm);
  self->jam.mm = turns * hole->pitch.mm;
  bolt_root = hm_thread_minor_diameter (bolt);
  hole_root = hm_thread_minor_diameter (hole);
  self->top.mm = MAX (bolt->major.mm, hole->major.mm) / 2;
  self->bottom.mm = MIN (bolt_root.mm, hole_root.mm) / 2;
  self->bolt = hm_thread_profile (bolt, (HmLength) { self->shown.mm + bolt->pitch.mm });   /* no end in sight */
  self->hole = hm_thread_profile (hole, (HmLength) { self->shown.mm + hole->pitch.mm });
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, words, -1);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-fit-view.h"
#include "hm-drive-outline.h"
#include "hm-fit.h"
#include "hmui-draw.h"

#define SIDE 84
#define EDGE 3.0
#define WALL 5.0                 /* px: of the socket round its opening */

struct _HmuiFitView
{
  GtkWidget parent_instance;
  GArray *head, *opening;         /* owned, of HmOutlinePoint; NULL until set */
  double degrees, radius_mm;
  HmuiTone tone;
};

G_DEFINE_FINAL_TYPE (HmuiFitView, hmui_fit_view, GTK_TYPE_WIDGET)

const char *
hmui_tone_color (HmuiTone tone)
{
  switch (tone)
    {
    case HMUI_TONE_GOOD: return "hm_good";
    case HMUI_TONE_CAUTION: return "hm_caution";
    case HMUI_TONE_BAD: return "hm_danger";
    case HMUI_TONE_NONE:
    default: return NULL;
    }
}

static void
trace (cairo_t *cr, const GArray *outline, double scale)
{
  for (guint i = 0; i < outline->len; i++)
    {
      const HmOutlinePoint *point = &g_array_index (outline, HmOutlinePoint, i);

      cairo_line_to (cr, point->x_mm * scale, point->y_mm * scale);
    }
  cairo_close_path (cr);
}

/* The socket is a disc with the opening cut out of it. */
static void
draw_socket (HmuiFitView *self, cairo_t *cr, double scale, double radius)
{
  GdkRGBA ink;

  hmui_draw_color (GTK_WIDGET (self), NULL, 0.28, &ink);
  gdk_cairo_set_source_rgba (cr, &ink);
  cairo_set_fill_rule (cr, CAIRO_FILL_RULE_EVEN_ODD);
  cairo_arc (cr, 0, 0, radius, 0, 2 * G_PI);
  cairo_new_sub_path (cr);
  trace (cr, self->opening, scale);
  cairo_fill (cr);
}

static void
draw_head (HmuiFitView *self, cairo_t *cr, double scale)
{
  GdkRGBA fill, line;

  hmui_draw_color (GTK_WIDGET (self), hmui_tone_color (self->tone), 0.35, &fill);
  hmui_draw_color (GTK_WIDGET (self), hmui_tone_color (self->tone), 1.0, &line);
  cairo_rotate (cr, self->degrees * G_PI / 180);
  trace (cr, self->head, scale);
  gdk_cairo_set_source_rgba (cr, &fill);
  cairo_fill_preserve (cr);
  gdk_cairo_set_source_rgba (cr, &line);
  cairo_set_line_width (cr, 1.5);
  cairo_stroke (cr);
}

static void
hmui_fit_view_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  HmuiFitView *self = HMUI_FIT_VIEW (widget);
  double radius = SIDE / 2.0 - EDGE, scale;
  cairo_t *cr;

  if (self->head == NULL)
    return;
  scale = (radius - WALL) / self->radius_mm;
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, gtk_widget_get_width (widget), gtk_widget_get_height (widget)));
  cairo_translate (cr, gtk_widget_get_width (widget) / 2.0, gtk_widget_get_height (widget) / 2.0);
  draw_socket (self, cr, scale, radius);
  draw_head (self, cr, scale);
  cairo_destroy (cr);
}

static void
hmui_fit_view_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum, int *natural,
                       int *minimum_baseline, int *natural_baseline)
{
  *minimum = *natural = SIDE;
}

static void
hmui_fit_view_finalize (GObject *object)
{
  g_clear_pointer (&HMUI_FIT_VIEW (object)->head, g_array_unref);
  g_clear_pointer (&HMUI_FIT_VIEW (object)->opening, g_array_unref);
  G_OBJECT_CLASS (hmui_fit_view_parent_class)->finalize (object);
}

static void
hmui_fit_view_class_init (HmuiFitViewClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = hmui_fit_view_finalize;
  widget_class->snapshot = hmui_fit_view_snapshot;
  widget_class->measure = hmui_fit_view_measure;
  gtk_widget_class_set_css_name (widget_class, "fitview");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_PRESENTATION);
}

static void
hmui_fit_view_init (HmuiFitView *self)
{
}

void
hmui_fit_view_set (HmuiFitView *self, HmLength head, HmLength opening, double degrees, HmuiTone tone)
{
  HmDrive hex = { HM_DRIVE_HEX, opening, 0, FALSE };

  g_return_if_fail (HMUI_IS_FIT_VIEW (self) && head.mm > 0 && opening.mm > 0);
  g_clear_pointer (&self->head, g_array_unref);
  g_clear_pointer (&self->opening, g_array_unref);
  self->head = hm_head_outline (head, hm_head_across_corners (head));
  self->opening = hm_drive_outline (&hex, (HmLength) { 0.0 }, (HmLength) { 0.0 });
  self->radius_mm = MAX (hm_drive_outline_radius_mm (self->head), hm_drive_outline_radius_mm (self->opening));
  self->degrees = degrees;
  self->tone = tone;
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

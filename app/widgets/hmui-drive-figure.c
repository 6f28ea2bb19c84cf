/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-drive-figure.h"
#include "hm-drive-outline.h"
#include "hmui-draw.h"
#include <math.h>

#define ROUND_HEAD 1.6       /* radius of a round head for one of a recess that stands alone */
#define SYMBOL_RECESS 0.52   /* radius of a recess without a known size, as a share of its head's */
#define LOBE_SHARE 0.72      /* B for A, where a hexalobular drive is only a symbol */

struct _HmuiDriveFigure
{
  GPtrArray *outlines;       /* owned, of GArray of HmOutlinePoint; [i] belongs to kinds[i] */
  GArray    *kinds;          /* owned, of HmDriveKind */
  double     head_radius;    /* of the whole head, mm */
  double     flat_radius;    /* of the circle inside the outermost outline, mm */
  gboolean   round_head;     /* only recesses: they sit in a round head */
  gboolean   to_scale;
};

static gboolean
is_outside (HmDriveKind kind)
{
  return kind == HM_DRIVE_HEX || kind == HM_DRIVE_SQUARE || kind == HM_DRIVE_HEXALOBULAR_EXTERNAL
         || kind == HM_DRIVE_HAND;
}

static gboolean
is_hexalobular (HmDriveKind kind)
{
  return kind == HM_DRIVE_HEXALOBULAR || kind == HM_DRIVE_HEXALOBULAR_EXTERNAL;
}

/* The outline of a drive that has no known size, with the given radius. */
static GArray *
make_symbol (const HmDrive *drive, double radius)
{
  HmDrive sized = *drive;
  HmLength a = { 2 * radius }, b = { 2 * radius * LOBE_SHARE };

  sized.size.mm = is_hexalobular (drive->kind) ? 0 : radius * 2 * cos (G_PI / (drive->kind == HM_DRIVE_SQUARE ? 4 : 6));
  return hm_drive_outline (&sized, a, b);
}

static void
measure_head (HmuiDriveFigure *self, const HmDrive *drives, guint n)
{
  gboolean any_outside = FALSE;
  double largest = 0;

  for (guint i = 0; i < n; i++)
    {
      any_outside |= is_outside (drives[i].kind);
      largest = MAX (largest, hm_drive_outline_radius_mm (g_ptr_array_index (self->outlines, i)));
    }
  self->to_scale = largest > 0;
  self->round_head = !any_outside;
  self->head_radius = largest <= 0 ? 1.0 : self->round_head ? largest * ROUND_HEAD : largest;
  self->flat_radius = self->head_radius * (self->round_head ? 1.0 : cos (G_PI / 6));
}

/* Drives whose size is not known become symbols in proportion to the head. */
static void
fill_symbols (HmuiDriveFigure *self, const HmDrive *drives, guint n)
{
  for (guint i = 0; i < n; i++)
    {
      GArray *outline = g_ptr_array_index (self->outlines, i);

      if (outline->len > 0)
        continue;
      self->to_scale &= !is_hexalobular (drives[i].kind);
      g_array_unref (outline);
      self->outlines->pdata[i] = make_symbol (&drives[i], is_outside (drives[i].kind) ? self->head_radius
                                                          : SYMBOL_RECESS * self->head_radius);
    }
}

HmuiDriveFigure *
hmui_drive_figure_new (const HmDrive *drives, guint n, HmLength point_to_point, HmLength across_lobes)
{
  HmuiDriveFigure *self = g_new0 (HmuiDriveFigure, 1);

  self->outlines = g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);
  self->kinds = g_array_new (FALSE, FALSE, sizeof (HmDriveKind));
  for (guint i = 0; i < n; i++)
    {
      g_ptr_array_add (self->outlines, hm_drive_outline (&drives[i], point_to_point, across_lobes));
      g_array_append_val (self->kinds, drives[i].kind);
    }
  measure_head (self, drives, n);
  fill_symbols (self, drives, n);
  return self;
}

void
hmui_drive_figure_free (HmuiDriveFigure *self)
{
  if (self == NULL)
    return;
  g_ptr_array_unref (self->outlines);
  g_array_unref (self->kinds);
  g_free (self);
}

double
hmui_drive_figure_get_radius_mm (const HmuiDriveFigure *self)
{
  return self->head_radius;
}

gboolean
hmui_drive_figure_is_to_scale (const HmuiDriveFigure *self)
{
  return self->to_scale;
}

static void
trace_outline (cairo_t *cr, const GArray *outline, double scale)
{
  for (guint i = 0; i < outline->len; i++)
    {
      const HmOutlinePoint *point = &g_array_index (outline, HmOutlinePoint, i);

      cairo_line_to (cr, point->x_mm * scale, point->y_mm * scale);
    }
  if (outline->len > 0)
    cairo_close_path (cr);
}

/* A cross recess: two tapered bars; type Z has four fine marks between its wings. */
static void
trace_cross (cairo_t *cr, double r)
{
  for (int i = 0; i < 4; i++)
    {
      double angle = i * G_PI_2, next = angle + G_PI_4;

      cairo_line_to (cr, r * cos (angle) + 0.15 * r * sin (angle), r * sin (angle) - 0.15 * r * cos (angle));
      cairo_line_to (cr, r * cos (angle) - 0.15 * r * sin (angle), r * sin (angle) + 0.15 * r * cos (angle));
      cairo_line_to (cr, 0.34 * r * cos (next), 0.34 * r * sin (next));
    }
  cairo_close_path (cr);
}

static void
draw_marks (cairo_t *cr, double r)
{
  for (int i = 0; i < 4; i++)
    {
      double angle = G_PI_4 + i * G_PI_2;

      cairo_move_to (cr, 0.42 * r * cos (angle), 0.42 * r * sin (angle));
      cairo_line_to (cr, 0.85 * r * cos (angle), 0.85 * r * sin (angle));
    }
  cairo_stroke (cr);
}

/* A knob with two wings: turned by hand. */
static void
trace_wings (cairo_t *cr, double r)
{
  cairo_arc (cr, 0, 0, 0.42 * r, 0, 2 * G_PI);
  for (int side = -1; side <= 1; side += 2)
    {
      cairo_new_sub_path (cr);
      cairo_arc (cr, side * 0.70 * r, 0, 0.30 * r, 0, 2 * G_PI);
    }
}

static void
paint (GtkWidget *widget, cairo_t *cr, const char *fill_name, double fill_alpha)
{
  GdkRGBA fill, ink;

  hmui_draw_color (widget, fill_name, fill_alpha, &fill);
  hmui_draw_color (widget, NULL, 1.0, &ink);
  gdk_cairo_set_source_rgba (cr, &fill);
  cairo_fill_preserve (cr);
  gdk_cairo_set_source_rgba (cr, &ink);
  cairo_stroke (cr);
}

static void
draw_recess (const HmuiDriveFigure *self, guint index, GtkWidget *widget, cairo_t *cr, double scale)
{
  double r = self->flat_radius * scale;

  switch (g_array_index (self->kinds, HmDriveKind, index))
    {
    case HM_DRIVE_CROSS_H:
      trace_cross (cr, 0.62 * r);
      break;
    case HM_DRIVE_CROSS_Z:
      trace_cross (cr, 0.62 * r);
      paint (widget, cr, "hm_accent", 0.45);
      draw_marks (cr, 0.62 * r);
      return;
    case HM_DRIVE_SLOT:
      cairo_rectangle (cr, -0.86 * r, -0.11 * r, 1.72 * r, 0.22 * r);
      break;
    default:
      trace_outline (cr, g_ptr_array_index (self->outlines, index), scale);
      break;
    }
  paint (widget, cr, "hm_accent", 0.45);
}

static void
draw_head (const HmuiDriveFigure *self, GtkWidget *widget, cairo_t *cr, double scale)
{
  if (self->round_head)
    {
      cairo_arc (cr, 0, 0, self->head_radius * scale, 0, 2 * G_PI);
      paint (widget, cr, NULL, 0.10);
    }
  for (guint i = 0; i < self->kinds->len; i++)
    {
      HmDriveKind kind = g_array_index (self->kinds, HmDriveKind, i);

      if (!is_outside (kind))
        continue;
      if (kind == HM_DRIVE_HAND)
        trace_wings (cr, self->head_radius * scale);
      else
        trace_outline (cr, g_ptr_array_index (self->outlines, i), scale);
      paint (widget, cr, NULL, 0.10);
    }
}

void
hmui_drive_figure_draw (const HmuiDriveFigure *self, GtkWidget *widget, cairo_t *cr, double px_per_mm)
{
  cairo_set_line_width (cr, self->head_radius * px_per_mm > 40 ? 2.0 : 1.5);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_ROUND);
  draw_head (self, widget, cr, px_per_mm);
  for (guint i = 0; i < self->kinds->len; i++)
    if (!is_outside (g_array_index (self->kinds, HmDriveKind, i)))
      draw_recess (self, i, widget, cr, px_per_mm);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-drive-outline.h"
#include <math.h>

#define ARC_STEPS 8
#define SIXTH (G_PI / 3)

static void
add_point (GArray *outline, double x_mm, double y_mm)
{
  HmOutlinePoint point = { x_mm, y_mm };

  g_array_append_val (outline, point);
}

/* @sides flats at @across from each other; a regular polygon's corners are at across / (2 cos (π / sides)). */
static void
add_polygon (GArray *outline, guint sides, double across, double first_angle)
{
  double radius = across / (2 * cos (G_PI / sides));

  for (guint i = 0; i < sides; i++)
    add_point (outline, radius * cos (first_angle + i * 2 * G_PI / sides), radius * sin (first_angle + i * 2 * G_PI / sides));
}

/* An arc about a centre at @distance from the middle in direction @angle, from @from to @to about that direction. */
static void
add_arc (GArray *outline, double angle, double distance, double radius, double from, double to)
{
  for (guint i = 0; i < ARC_STEPS; i++)
    {
      double turn = angle + from + (to - from) * i / ARC_STEPS;

      add_point (outline, distance * cos (angle) + radius * cos (turn), distance * sin (angle) + radius * sin (turn));
    }
}

static void
add_hexalobular (GArray *outline, double a, double b)
{
  double lobe = a / 12, lobe_centre = a / 2 - lobe;
  /* Touching: |lobe centre − hollow centre| = lobe + hollow, with 30° between; solved for the hollow's radius. */
  double hollow = (lobe_centre * lobe_centre + b * b / 4 - sqrt (3) * lobe_centre * b / 2 - lobe * lobe)
                  / (2 * lobe + sqrt (3) * lobe_centre - b);
  double hollow_centre = b / 2 + hollow;
  double across_x = hollow_centre * cos (SIXTH / 2) - lobe_centre, across_y = hollow_centre * sin (SIXTH / 2);
  double lobe_half = atan2 (across_y, across_x);                 /* half the lobe's arc */
  double hollow_half = lobe_half - SIXTH / 2;                    /* half the hollow's, turned by 30° */

  for (guint i = 0; i < 6; i++)
    {
      add_arc (outline, i * SIXTH, lobe_centre, lobe, -lobe_half, lobe_half);
      add_arc (outline, (i + 0.5) * SIXTH, hollow_centre, hollow, G_PI + hollow_half, G_PI - hollow_half);
    }
}

GArray *
hm_drive_outline (const HmDrive *self, HmLength point_to_point, HmLength across_lobes)
{
  GArray *outline = g_array_new (FALSE, FALSE, sizeof (HmOutlinePoint));

  g_return_val_if_fail (self != NULL, outline);
  switch (self->kind)
    {
    case HM_DRIVE_HEX:
    case HM_DRIVE_HEX_SOCKET:
      if (self->size.mm > 0)
        add_polygon (outline, 6, self->size.mm, G_PI / 6);
      break;
    case HM_DRIVE_SQUARE:
      if (self->size.mm > 0)
        add_polygon (outline, 4, self->size.mm, G_PI / 4);
      break;
    case HM_DRIVE_HEXALOBULAR:
    case HM_DRIVE_HEXALOBULAR_EXTERNAL:
      if (across_lobes.mm > 0 && point_to_point.mm > across_lobes.mm)
        add_hexalobular (outline, point_to_point.mm, across_lobes.mm);
      break;
    case HM_DRIVE_CROSS_H:
    case HM_DRIVE_CROSS_Z:
    case HM_DRIVE_SLOT:
    case HM_DRIVE_HAND:
      break;
    default:
      g_return_val_if_reached (outline);
    }
  return outline;
}

GArray *
hm_head_outline (HmLength across_flats, HmLength across_corners)
{
  GArray *outline = g_array_new (FALSE, FALSE, sizeof (HmOutlinePoint));
  double radius = across_corners.mm / 2, half;

  g_return_val_if_fail (across_flats.mm > 0 && across_corners.mm >= across_flats.mm, outline);
  half = acos (across_flats.mm / across_corners.mm);   /* from the middle of a flat to its end */
  for (guint i = 0; i < 6; i++)
    for (int side = -1; side <= 1; side += 2)
      add_point (outline, radius * cos (i * SIXTH + side * half), radius * sin (i * SIXTH + side * half));
  return outline;
}

double
hm_drive_outline_radius_mm (const GArray *outline)
{
  double radius = 0;

  for (guint i = 0; i < outline->len; i++)
    {
      const HmOutlinePoint *point = &g_array_index (outline, HmOutlinePoint, i);

      radius = MAX (radius, hypot (point->x_mm, point->y_mm));
    }
  return radius;
}

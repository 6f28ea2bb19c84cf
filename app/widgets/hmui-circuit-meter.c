/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-circuit-meter.h"
#include "hmui-draw.h"
#include <glib/gi18n-lib.h>
#include <math.h>

#define STEP 6.0              /* px between the places tried for the meter */
#define AIR 8.0               /* px kept free around it */
#define FAR_PRICE 0.3         /* for each px of lead */
#define ON_PROBE_PRICE 5000.0
#define BLOCKED_PRICE 20.0    /* to labels, for each px² of the meter and each px of lead */
#define LEAD_PIECES 10

static double
distance (const graphene_point_t *a, const graphene_point_t *b)
{
  return hypot (a->x - b->x, a->y - b->y);
}

/* The side of the case that looks at a probe, as a direction. */
static graphene_point_t
find_side (const HmuiCircuitMeter *meter, const graphene_point_t *probe)
{
  double w = meter->box.size.width, h = meter->box.size.height;
  double dx = probe->x - meter->box.origin.x - w / 2, dy = probe->y - meter->box.origin.y - h / 2;

  if (fabs (dx) * h > fabs (dy) * w)
    return GRAPHENE_POINT_INIT (dx > 0 ? 1 : -1, 0);
  return GRAPHENE_POINT_INIT (0, dy > 0 ? 1 : -1);
}

/* Each jack looks at its probe. Two on one side stand in the order that keeps the leads from crossing. */
static void
set_jacks (HmuiCircuitMeter *meter)
{
  const graphene_point_t *red = &meter->probe[0], *black = &meter->probe[1];
  double w = meter->box.size.width, h = meter->box.size.height;
  double x = meter->box.origin.x + w / 2, y = meter->box.origin.y + h / 2;
  gboolean shared;

  meter->out[0] = find_side (meter, red);
  meter->out[1] = find_side (meter, black);
  shared = graphene_point_equal (&meter->out[0], &meter->out[1]);
  for (int i = 0; i < 2; i++)
    {
      const graphene_point_t *out = &meter->out[i], *other = i == 0 ? black : red;
      gboolean sideways = fabs (out->x) > 0.5;
      gboolean first = sideways ? meter->probe[i].y < other->y : meter->probe[i].x < other->x;
      double shift = !shared ? 0 : first ? -0.25 : 0.25;

      meter->jack[i] = GRAPHENE_POINT_INIT (x + out->x * w / 2 + (sideways ? 0 : shift * w),
                                            y + out->y * h / 2 + (sideways ? shift * h : 0));
    }
}

/* The curve of a lead: leaves the case straight and swings over to the probe. */
static void
shape_lead (const HmuiCircuitMeter *meter, int side, graphene_point_t curve[4])
{
  const graphene_point_t *jack = &meter->jack[side], *probe = &meter->probe[side];
  double swing = MIN (40.0, 0.4 * distance (jack, probe));

  curve[0] = *jack;
  curve[1] = GRAPHENE_POINT_INIT (jack->x + meter->out[side].x * swing, jack->y + meter->out[side].y * swing);
  curve[2] = GRAPHENE_POINT_INIT (probe->x + 0.25 * (jack->x - probe->x), probe->y + 0.25 * (jack->y - probe->y));
  curve[3] = *probe;
}

static graphene_point_t
point_on_curve (const graphene_point_t curve[4], double t)
{
  double a = (1 - t) * (1 - t) * (1 - t), b = 3 * t * (1 - t) * (1 - t), c = 3 * t * t * (1 - t), d = t * t * t;

  return GRAPHENE_POINT_INIT (a * curve[0].x + b * curve[1].x + c * curve[2].x + d * curve[3].x,
                              a * curve[0].y + b * curve[1].y + c * curve[2].y + d * curve[3].y);
}

static double
price_meter (const HmuiCircuitLayout *layout, const HmuiCircuitMeter *meter)
{
  graphene_rect_t air = meter->box;
  double r = layout->marker_radius + AIR, price;

  graphene_rect_inset (&air, -AIR, -AIR);
  price = hmui_obstacles_price_rect (layout->obstacles, &air);
  for (int i = 0; i < 2; i++)
    {
      const graphene_point_t *probe = &meter->probe[i];

      if (graphene_rect_intersection (&air, &GRAPHENE_RECT_INIT (probe->x - r, probe->y - r, 2 * r, 2 * r), NULL))
        price += ON_PROBE_PRICE;
      price += hmui_obstacles_price_line (layout->obstacles, &meter->jack[i], probe);
      price += FAR_PRICE * distance (&meter->jack[i], probe);
    }
  return price;
}

static void
find_place (const HmuiCircuitLayout *layout, HmuiCircuitMeter *meter)
{
  double width = meter->box.size.width, height = meter->box.size.height, best_price = G_MAXDOUBLE;
  HmuiCircuitMeter best = *meter;

  for (double y = AIR; y <= layout->height - height - AIR; y += STEP)
    for (double x = AIR; x <= layout->width - width - AIR; x += STEP)
      {
        double price;

        meter->box.origin = GRAPHENE_POINT_INIT (x, y);
        set_jacks (meter);
        price = price_meter (layout, meter);
        if (price >= best_price)
          continue;
        best_price = price;
        best = *meter;
      }
  *meter = best;
  set_jacks (meter);
}

static void
block_labels (HmuiCircuitLayout *layout, const HmuiCircuitMeter *meter)
{
  hmui_obstacles_add_rect (layout->obstacles, &meter->box, BLOCKED_PRICE);
  for (int side = 0; side < 2; side++)
    {
      graphene_point_t curve[4], last = meter->jack[side];

      shape_lead (meter, side, curve);
      for (int i = 1; i <= LEAD_PIECES; i++)
        {
          graphene_point_t next = point_on_curve (curve, (double) i / LEAD_PIECES);

          hmui_obstacles_add_line (layout->obstacles, &last, &next, BLOCKED_PRICE);
          last = next;
        }
    }
}

static PangoLayout *
make_reading (GtkWidget *widget, const HmuiCircuitLayout *layout, const char *text)
{
  /* Translators: what stands on the drawn meter before a value is read */
  return hmui_draw_text (widget, text != NULL ? text : _("meter"), (text != NULL ? 1.3 : 1.0) * layout->text_factor,
                         PANGO_WEIGHT_BOLD);
}

HmuiCircuitMeter
hmui_circuit_meter_place (GtkWidget *widget, HmuiCircuitLayout *layout, const graphene_point_t *red,
                          const graphene_point_t *black, const char *text)
{
  g_autoptr(PangoLayout) reading = make_reading (widget, layout, text);
  HmuiCircuitMeter meter = { .probe = { *red, *black } };
  double width, height;

  hmui_draw_text_size (reading, &width, &height);
  meter.box = GRAPHENE_RECT_INIT (AIR, AIR, MAX (width + 24, 72), MAX (height + 12, 34));
  find_place (layout, &meter);
  block_labels (layout, &meter);
  return meter;
}

static void
draw_lead (cairo_t *cr, const HmuiCircuitMeter *meter, int side, double width, const GdkRGBA *color, const GdkRGBA *edge)
{
  graphene_point_t curve[4];

  shape_lead (meter, side, curve);
  cairo_move_to (cr, curve[0].x, curve[0].y);
  cairo_curve_to (cr, curve[1].x, curve[1].y, curve[2].x, curve[2].y, curve[3].x, curve[3].y);
  cairo_set_line_width (cr, width + 2.0);
  gdk_cairo_set_source_rgba (cr, edge);
  cairo_stroke_preserve (cr);
  cairo_set_line_width (cr, width);
  gdk_cairo_set_source_rgba (cr, color);
  cairo_stroke (cr);
}

void
hmui_circuit_meter_draw (GtkWidget *widget, cairo_t *cr, const HmuiCircuitLayout *layout, const HmuiCircuitMeter *meter,
                         const char *text)
{
  g_autoptr(PangoLayout) reading = make_reading (widget, layout, text);
  GdkRGBA red, black, paper, ink;

  hmui_draw_color (widget, "hm_probe_red", 1.0, &red);
  hmui_draw_color (widget, "hm_probe_black", 1.0, &black);
  hmui_draw_color (widget, "hm_card", 1.0, &paper);
  hmui_draw_color (widget, NULL, 1.0, &ink);
  draw_lead (cr, meter, 0, 1.5 * layout->line_width, &red, &paper);
  draw_lead (cr, meter, 1, 1.5 * layout->line_width, &black, &ink);
  hmui_draw_rounded (cr, &meter->box, 8.0);
  gdk_cairo_set_source_rgba (cr, &paper);
  cairo_fill_preserve (cr);
  gdk_cairo_set_source_rgba (cr, &ink);
  cairo_set_line_width (cr, 2.0);
  cairo_stroke (cr);
  hmui_draw_text_centered (cr, reading, meter->box.origin.x + meter->box.size.width / 2,
                           meter->box.origin.y + meter->box.size.height / 2, &ink);
}

void
hmui_circuit_meter_draw_probe (GtkWidget *widget, cairo_t *cr, const HmuiCircuitLayout *layout,
                               const graphene_point_t *at, gboolean red)
{
  const GdkRGBA white = { 1, 1, 1, 1 };
  double radius = layout->marker_radius, half = 0.9 * radius;
  graphene_rect_t square = GRAPHENE_RECT_INIT (at->x - half, at->y - half, 2 * half, 2 * half);
  g_autoptr(PangoLayout) letter = NULL;
  GdkRGBA fill, halo;

  /* Translators: the letters on the heads of the red and the black test probe */
  letter = hmui_draw_text (widget, red ? C_("probe", "R") : C_("probe", "B"), layout->text_factor, PANGO_WEIGHT_BOLD);
  hmui_draw_color (widget, red ? "hm_probe_red" : "hm_probe_black", 1.0, &fill);
  hmui_draw_color (widget, "hm_accent", 0.28, &halo);
  gdk_cairo_set_source_rgba (cr, &halo);
  cairo_arc (cr, at->x, at->y, radius * 1.55, 0, 2 * G_PI);
  cairo_fill (cr);
  if (red)
    cairo_arc (cr, at->x, at->y, radius, 0, 2 * G_PI);
  else
    hmui_draw_rounded (cr, &square, 3.0);
  gdk_cairo_set_source_rgba (cr, &fill);
  cairo_fill_preserve (cr);
  gdk_cairo_set_source_rgba (cr, &white);
  cairo_set_line_width (cr, 2.0);
  cairo_stroke (cr);
  hmui_draw_text_centered (cr, letter, at->x, at->y, &white);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-obstacles.h"
#include "hmui-draw.h"
#include <math.h>

#define OUTSIDE_PRICE 1000.0   /* for each px that leaves the drawing */
#define GAP 5.0                /* between a symbol and its label */
#define AIR 5.0                /* kept free around a label */

typedef struct { graphene_rect_t rect; double price; } RectObstacle;
typedef struct { graphene_point_t from, to; double price; } LineObstacle;

struct _HmuiObstacles
{
  graphene_rect_t bounds;
  GArray *rects;   /* owned, of RectObstacle */
  GArray *lines;   /* owned, of LineObstacle */
};

/* Narrows [*t0, *t1] to the part of start + t * step that lies within [low, high]. */
static gboolean
clip_axis (double start, double step, double low, double high, double *t0, double *t1)
{
  double a, b;

  if (fabs (step) < 1e-9)
    return start >= low && start <= high;
  a = (low - start) / step;
  b = (high - start) / step;
  *t0 = MAX (*t0, MIN (a, b));
  *t1 = MIN (*t1, MAX (a, b));
  return *t0 <= *t1;
}

static double
length_inside (const graphene_point_t *from, const graphene_point_t *to, const graphene_rect_t *rect)
{
  double dx = to->x - from->x, dy = to->y - from->y, t0 = 0, t1 = 1;

  if (!clip_axis (from->x, dx, rect->origin.x, rect->origin.x + rect->size.width, &t0, &t1)
      || !clip_axis (from->y, dy, rect->origin.y, rect->origin.y + rect->size.height, &t0, &t1))
    return 0;
  return (t1 - t0) * hypot (dx, dy);
}

static double
price_outside (const graphene_rect_t *bounds, const graphene_rect_t *rect)
{
  double left = bounds->origin.x - rect->origin.x;
  double top = bounds->origin.y - rect->origin.y;
  double right = rect->origin.x + rect->size.width - bounds->origin.x - bounds->size.width;
  double bottom = rect->origin.y + rect->size.height - bounds->origin.y - bounds->size.height;

  return OUTSIDE_PRICE * (MAX (left, 0) + MAX (top, 0) + MAX (right, 0) + MAX (bottom, 0));
}

HmuiObstacles *
hmui_obstacles_new (const graphene_rect_t *bounds)
{
  HmuiObstacles *self = g_new0 (HmuiObstacles, 1);

  self->bounds = *bounds;
  self->rects = g_array_new (FALSE, FALSE, sizeof (RectObstacle));
  self->lines = g_array_new (FALSE, FALSE, sizeof (LineObstacle));
  return self;
}

void
hmui_obstacles_free (HmuiObstacles *self)
{
  if (self == NULL)
    return;
  g_array_unref (self->rects);
  g_array_unref (self->lines);
  g_free (self);
}

void
hmui_obstacles_add_rect (HmuiObstacles *self, const graphene_rect_t *rect, double price_per_px2)
{
  RectObstacle obstacle = { *rect, price_per_px2 };

  g_array_append_val (self->rects, obstacle);
}

void
hmui_obstacles_add_line (HmuiObstacles *self, const graphene_point_t *from, const graphene_point_t *to,
                         double price_per_px)
{
  LineObstacle obstacle = { *from, *to, price_per_px };

  g_array_append_val (self->lines, obstacle);
}

double
hmui_obstacles_price_rect (const HmuiObstacles *self, const graphene_rect_t *rect)
{
  double price = price_outside (&self->bounds, rect);

  for (guint i = 0; i < self->rects->len; i++)
    {
      const RectObstacle *obstacle = &g_array_index (self->rects, RectObstacle, i);
      graphene_rect_t common;

      if (graphene_rect_intersection (&obstacle->rect, rect, &common))
        price += obstacle->price * common.size.width * common.size.height;
    }
  for (guint i = 0; i < self->lines->len; i++)
    {
      const LineObstacle *obstacle = &g_array_index (self->lines, LineObstacle, i);

      price += obstacle->price * length_inside (&obstacle->from, &obstacle->to, rect);
    }
  return price;
}

double
hmui_obstacles_price_line (const HmuiObstacles *self, const graphene_point_t *from, const graphene_point_t *to)
{
  double price = 0;

  for (guint i = 0; i < self->rects->len; i++)
    {
      const RectObstacle *obstacle = &g_array_index (self->rects, RectObstacle, i);

      price += obstacle->price * length_inside (from, to, &obstacle->rect);
    }
  return price;
}

/*
 * Beside @body on one of its four sides (below, above, right, left), shifted along that side by @shift, -1 to 1. Above
 * and below it shifts by less than half its width: farther off it would seem to name another part.
 */
static graphene_rect_t
place_beside (const graphene_rect_t *body, guint side, double shift, double gap, double width, double height)
{
  static const struct { int x, y; } sides[4] = { { 0, 1 }, { 0, -1 }, { 1, 0 }, { -1, 0 } };
  double reach_x = (body->size.width + width) / 2, reach_y = (body->size.height + height) / 2;
  double x = body->origin.x + body->size.width / 2, y = body->origin.y + body->size.height / 2;

  x += sides[side].x != 0 ? sides[side].x * (reach_x + gap) : shift * width / 3;
  y += sides[side].y != 0 ? sides[side].y * (reach_y + gap) : shift * reach_y;
  return GRAPHENE_RECT_INIT (x - width / 2, y - height / 2, width, height);
}

static double
place_wrapped (const HmuiObstacles *self, const graphene_rect_t *body, double width, double height,
               graphene_rect_t *out)
{
  static const double shifts[] = { 0, -0.25, 0.25, -0.5, 0.5, -0.7, 0.7 };
  double best = G_MAXDOUBLE;

  for (guint ring = 0; ring < 3; ring++)
    for (guint side = 0; side < 4; side++)
      for (guint i = 0; i < G_N_ELEMENTS (shifts); i++)
        {
          graphene_rect_t rect = place_beside (body, side, shifts[i], GAP + 7.0 * ring, width, height), air = rect;
          double price;

          graphene_rect_inset (&air, -AIR, -AIR / 2);
          price = hmui_obstacles_price_rect (self, &air) + 4.0 * ring + 0.5 * side + 8.0 * fabs (shifts[i]);
          if (price < best)
            {
              best = price;
              *out = rect;
            }
        }
  return best;
}

double
hmui_obstacles_place_label (const HmuiObstacles *self, const graphene_rect_t *body, PangoLayout *layout,
                            graphene_rect_t *out)
{
  static const double shares[] = { 1.0, 0.62, 0.45, 0.34 };   /* of the width on one line */
  double best = G_MAXDOUBLE, natural, height;
  int chosen = -1;

  pango_layout_set_width (layout, -1);
  hmui_draw_text_size (layout, &natural, &height);
  for (guint i = 0; i < G_N_ELEMENTS (shares); i++)
    {
      int width = i == 0 ? -1 : (int) ceil (natural * shares[i]) * PANGO_SCALE;
      double text_width, text_height, price;
      graphene_rect_t rect;

      pango_layout_set_width (layout, width);
      hmui_draw_text_size (layout, &text_width, &text_height);
      price = place_wrapped (self, body, text_width, text_height, &rect) + 3.0 * i;
      if (price >= best)
        continue;
      best = price;
      chosen = width;
      *out = rect;
    }
  pango_layout_set_width (layout, chosen);
  return best;
}

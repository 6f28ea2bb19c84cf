/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-circuit-layout.h"
#include "hmui-draw.h"
#include <math.h>

#define MARGIN 0.05           /* of width and height, on each side: room for labels beside the outermost parts */
#define LEAD_REACH 3.0        /* grid units: how far from a part its wires may end */
#define ON_AXIS 0.1           /* grid units */
#define BODY_PRICE 20.0
#define WIRE_PRICE 40.0
#define DROP_PRICE 120.0      /* a label that costs more than this is left out; the words for a screen reader have it */

/* How a kind of symbol fills its room: shares of the common half length. */
static const struct { double length, width; gboolean two_ended, first, labelled; } shapes[] = {
  [HM_SYMBOL_BATTERY]       = { 0.60, 0.90, TRUE,  TRUE,  TRUE },
  [HM_SYMBOL_SWITCH]        = { 1.00, 0.62, TRUE,  TRUE,  TRUE },
  [HM_SYMBOL_FUSE]          = { 0.90, 0.34, TRUE,  TRUE,  TRUE },
  [HM_SYMBOL_RELAY_COIL]    = { 0.45, 0.80, TRUE,  TRUE,  TRUE },
  [HM_SYMBOL_RELAY_CONTACT] = { 1.00, 0.62, TRUE,  TRUE,  TRUE },
  [HM_SYMBOL_MOTOR]         = { 0.76, 0.76, TRUE,  TRUE,  TRUE },
  [HM_SYMBOL_FRAME_GROUND]  = { 0.60, 0.60, FALSE, FALSE, TRUE },
  [HM_SYMBOL_LAMP]          = { 0.70, 0.70, TRUE,  TRUE,  TRUE },
  [HM_SYMBOL_JUNCTION]      = { 0.16, 0.16, FALSE, FALSE, FALSE },
  [HM_SYMBOL_TERMINAL]      = { 0.20, 0.20, FALSE, FALSE, TRUE },
};

/* The nearest end of a wire that lies from @at in the direction @dx, @dy; its distance in grid units, or 0. */
static double
find_wire_end (const HmPicture *picture, HmPoint at, double dx, double dy, gboolean *heavy)
{
  double nearest = 0;

  for (guint i = 0; i < picture->n_wires; i++)
    for (guint end = 0; end < 2; end++)
      {
        const HmPictureWire *wire = &picture->wires[i];
        HmPoint point = wire->points[end == 0 ? 0 : wire->n_points - 1];
        double along = (point.x - at.x) * dx + (point.y - at.y) * dy;
        double across = (point.x - at.x) * dy - (point.y - at.y) * dx;

        if (fabs (across) > ON_AXIS || along < ON_AXIS || along > LEAD_REACH)
          continue;
        if (nearest > 0 && along >= nearest)
          continue;
        nearest = along;
        *heavy = wire->heavy;
      }
  return nearest;
}

/* Finds where the wires end on both sides of a part. A part drawn across its wires is turned to lie along them. */
static void
find_leads (const HmPicture *picture, const HmPicturePart *part, HmuiCircuitSymbol *symbol)
{
  for (guint quarter = 0; quarter < 2; quarter++)
    {
      double angle = (part->turn / 90 + quarter) * G_PI_2;
      double dx = round (cos (angle)), dy = round (sin (angle));
      double before = find_wire_end (picture, part->at, -dx, -dy, &symbol->heavy[0]);
      double after = find_wire_end (picture, part->at, dx, dy, &symbol->heavy[1]);

      if (quarter == 1 && before == 0 && after == 0)
        break;
      symbol->angle = angle;
      symbol->lead[0] = before;
      symbol->lead[1] = after;
      if (before > 0 || after > 0)
        break;
    }
}

/* A frame ground hangs on the wire that ends above it, or right at it. */
static void
find_hanger (const HmPicture *picture, const HmPicturePart *part, HmuiCircuitSymbol *symbol)
{
  double up = symbol->angle - G_PI_2;

  symbol->lead[0] = find_wire_end (picture, part->at, round (cos (up)), round (sin (up)), &symbol->heavy[0]);
}

/* Half the length of a two-ended symbol in px: short enough for the closest wire ends. */
static double
choose_half_length (const HmuiCircuitLayout *self)
{
  double reach = 0;

  for (guint i = 0; i < self->symbols->len; i++)
    {
      const HmuiCircuitSymbol *symbol = &g_array_index (self->symbols, HmuiCircuitSymbol, i);

      for (guint end = 0; end < 2 && shapes[symbol->symbol].two_ended; end++)
        if (symbol->lead[end] > 0 && (reach == 0 || symbol->lead[end] < reach))
          reach = symbol->lead[end];
    }
  return CLAMP ((reach > 0 ? reach : 1.0) * self->unit, 12.0, 32.0);
}

static void
size_symbol (HmuiCircuitSymbol *symbol, double unit, double half_length)
{
  gboolean upright = fabs (sin (symbol->angle)) > 0.5;
  double half_x, half_y;

  symbol->half_length = half_length * shapes[symbol->symbol].length;
  symbol->half_width = half_length * shapes[symbol->symbol].width;
  for (guint end = 0; end < 2; end++)
    symbol->lead[end] = MAX (symbol->lead[end] * unit, shapes[symbol->symbol].two_ended ? half_length : 0);
  half_x = upright ? symbol->half_width : symbol->half_length;
  half_y = upright ? symbol->half_length : symbol->half_width;
  symbol->body = GRAPHENE_RECT_INIT (symbol->at.x - half_x, symbol->at.y - half_y, 2 * half_x, 2 * half_y);
  if (symbol->symbol == HM_SYMBOL_FRAME_GROUND)
    graphene_rect_offset (&symbol->body, round (cos (symbol->angle + G_PI_2)) * half_y,
                          round (sin (symbol->angle + G_PI_2)) * half_y);
}

static void
add_symbols (HmuiCircuitLayout *self, const HmPicture *picture)
{
  double half_length;

  for (guint i = 0; i < picture->n_parts; i++)
    {
      const HmPicturePart *part = &picture->parts[i];
      HmuiCircuitSymbol symbol = { .symbol = part->symbol, .at = hmui_circuit_layout_map (self, part->at),
                                   .angle = part->turn / 90 * G_PI_2 };

      if (shapes[part->symbol].two_ended)
        find_leads (picture, part, &symbol);
      else if (part->symbol == HM_SYMBOL_FRAME_GROUND)
        find_hanger (picture, part, &symbol);
      g_array_append_val (self->symbols, symbol);
    }
  half_length = choose_half_length (self);
  for (guint i = 0; i < self->symbols->len; i++)
    size_symbol (&g_array_index (self->symbols, HmuiCircuitSymbol, i), self->unit, half_length);
}

/* Labels keep off the bodies, off the wires and leads, and off every point where a probe may be set. */
static void
add_obstacles (HmuiCircuitLayout *self, const HmPicture *picture)
{
  for (guint i = 0; i < self->symbols->len; i++)
    {
      const HmuiCircuitSymbol *symbol = &g_array_index (self->symbols, HmuiCircuitSymbol, i);
      double dx = cos (symbol->angle), dy = sin (symbol->angle);
      graphene_point_t from, to;

      hmui_obstacles_add_rect (self->obstacles, &symbol->body, BODY_PRICE);
      if (!shapes[symbol->symbol].two_ended)
        continue;
      from = GRAPHENE_POINT_INIT (symbol->at.x - dx * symbol->lead[0], symbol->at.y - dy * symbol->lead[0]);
      to = GRAPHENE_POINT_INIT (symbol->at.x + dx * symbol->lead[1], symbol->at.y + dy * symbol->lead[1]);
      hmui_obstacles_add_line (self->obstacles, &from, &to, WIRE_PRICE);
    }
  for (guint i = 0; i < picture->n_wires; i++)
    for (guint j = 1; j < picture->wires[i].n_points; j++)
      {
        graphene_point_t from = hmui_circuit_layout_map (self, picture->wires[i].points[j - 1]);
        graphene_point_t to = hmui_circuit_layout_map (self, picture->wires[i].points[j]);

        hmui_obstacles_add_line (self->obstacles, &from, &to, WIRE_PRICE);
      }
  for (guint i = 0; i < picture->n_points; i++)
    {
      graphene_point_t at = hmui_circuit_layout_map (self, picture->points[i].at);
      double r = self->marker_radius;

      hmui_obstacles_add_rect (self->obstacles, &GRAPHENE_RECT_INIT (at.x - r, at.y - r, 2 * r, 2 * r), BODY_PRICE / 4);
    }
}

/* Wrapped lines lean to the symbol that they name. */
static void
align_label (PangoLayout *text, const graphene_rect_t *rect, const graphene_rect_t *body)
{
  if (rect->origin.x >= body->origin.x + body->size.width)
    pango_layout_set_alignment (text, PANGO_ALIGN_LEFT);
  else if (rect->origin.x + rect->size.width <= body->origin.x)
    pango_layout_set_alignment (text, PANGO_ALIGN_RIGHT);
  else
    pango_layout_set_alignment (text, PANGO_ALIGN_CENTER);
}

static void
add_label (HmuiCircuitLayout *self, GtkWidget *widget, const HmPicturePart *part, const HmuiCircuitSymbol *symbol)
{
  HmuiCircuitLabel label = { NULL };
  double price;

  if (part->name == NULL || part->name[0] == '\0' || !shapes[part->symbol].labelled)
    return;
  label.text = hmui_draw_text (widget, hmui_translate (part->name), self->text_factor, PANGO_WEIGHT_NORMAL);
  price = hmui_obstacles_place_label (self->obstacles, &symbol->body, label.text, &label.rect);
  if (price > DROP_PRICE)
    {
      g_object_unref (label.text);
      return;
    }
  align_label (label.text, &label.rect, &symbol->body);
  hmui_obstacles_add_rect (self->obstacles, &label.rect, BODY_PRICE);
  g_array_append_val (self->labels, label);
}

static void
stretch (HmPoint *low, HmPoint *high, HmPoint point)
{
  low->x = MIN (low->x, point.x);
  low->y = MIN (low->y, point.y);
  high->x = MAX (high->x, point.x);
  high->y = MAX (high->y, point.y);
}

/* The origin that puts the middle of what is drawn, not of the sheet, in the middle. */
static graphene_point_t
center_picture (const HmPicture *picture, double unit, double width, double height)
{
  HmPoint low = { picture->width, picture->height }, high = { 0, 0 };

  for (guint i = 0; i < picture->n_parts; i++)
    stretch (&low, &high, picture->parts[i].at);
  for (guint i = 0; i < picture->n_wires; i++)
    for (guint j = 0; j < picture->wires[i].n_points; j++)
      stretch (&low, &high, picture->wires[i].points[j]);
  if (low.x > high.x)
    return GRAPHENE_POINT_INIT (0, 0);
  return GRAPHENE_POINT_INIT ((width - unit * (low.x + high.x)) / 2, (height - unit * (low.y + high.y)) / 2);
}

static void
clear_label (gpointer data)
{
  g_clear_object (&((HmuiCircuitLabel *) data)->text);
}

HmuiCircuitLayout *
hmui_circuit_layout_new (const HmPicture *picture, double width, double height)
{
  HmuiCircuitLayout *self = g_new0 (HmuiCircuitLayout, 1);
  graphene_rect_t bounds = GRAPHENE_RECT_INIT (4, 4, width - 8, height - 8);

  self->width = width;
  self->height = height;
  self->unit = MAX (1.0, (1 - 2 * MARGIN) * MIN (width / picture->width, height / picture->height));
  self->origin = center_picture (picture, self->unit, width, height);
  self->text_factor = CLAMP (self->unit / 26.0, 0.93, 1.3);
  self->line_width = CLAMP (self->unit * 0.08, 1.8, 2.6);
  self->heavy_width = 2.6 * self->line_width;
  self->marker_radius = CLAMP (self->unit * 0.5, 11.0, 15.0);
  self->symbols = g_array_new (FALSE, FALSE, sizeof (HmuiCircuitSymbol));
  self->labels = g_array_new (FALSE, FALSE, sizeof (HmuiCircuitLabel));
  g_array_set_clear_func (self->labels, clear_label);
  self->obstacles = hmui_obstacles_new (&bounds);
  add_symbols (self, picture);
  add_obstacles (self, picture);
  return self;
}

void
hmui_circuit_layout_free (HmuiCircuitLayout *self)
{
  if (self == NULL)
    return;
  g_array_unref (self->symbols);
  g_array_unref (self->labels);
  hmui_obstacles_free (self->obstacles);
  g_free (self);
}

void
hmui_circuit_layout_add_labels (HmuiCircuitLayout *self, GtkWidget *widget, const HmPicture *picture)
{
  /* First the labels that matter most, while there is room. */
  for (guint pass = 0; pass < 2; pass++)
    for (guint i = 0; i < picture->n_parts; i++)
      if (shapes[picture->parts[i].symbol].first == (pass == 0))
        add_label (self, widget, &picture->parts[i], &g_array_index (self->symbols, HmuiCircuitSymbol, i));
}

graphene_point_t
hmui_circuit_layout_map (const HmuiCircuitLayout *self, HmPoint point)
{
  return GRAPHENE_POINT_INIT (self->origin.x + point.x * self->unit, self->origin.y + point.y * self->unit);
}

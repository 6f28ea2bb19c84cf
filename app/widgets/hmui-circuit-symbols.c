/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-circuit-symbols.h"
#include "hmui-draw.h"
#include <math.h>

/*
 * Every symbol is drawn along its own x axis with the origin in its middle: cairo is turned before. @l and @w are half
 * its length and half its width in px.
 */

static void
line (cairo_t *cr, double x0, double y0, double x1, double y1)
{
  cairo_move_to (cr, x0, y0);
  cairo_line_to (cr, x1, y1);
  cairo_stroke (cr);
}

static void
dot (cairo_t *cr, double x, double y, double radius)
{
  cairo_arc (cr, x, y, radius, 0, 2 * G_PI);
  cairo_fill (cr);
}

/* Two cells; the long thin plate is plus, and plus is at the start of the axis. */
static void
draw_battery (cairo_t *cr, double l, double w, double line_width)
{
  static const struct { double at, height, thickness; } plates[] = {
    { -1.0, 1.0, 1.0 }, { -0.33, 0.5, 2.4 }, { 0.33, 1.0, 1.0 }, { 1.0, 0.5, 2.4 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (plates); i++)
    {
      cairo_set_line_width (cr, line_width * plates[i].thickness);
      line (cr, l * plates[i].at, -w * plates[i].height, l * plates[i].at, w * plates[i].height);
    }
  cairo_set_line_width (cr, line_width);
  line (cr, -l - 0.62 * w, -0.66 * w, -l - 0.18 * w, -0.66 * w);
  line (cr, -l - 0.40 * w, -0.88 * w, -l - 0.40 * w, -0.44 * w);
}

/* A make contact; a hand switch also has a pivot and a fixed contact to be told from it. */
static void
draw_contact (cairo_t *cr, double l, double w, gboolean by_hand, double line_width)
{
  double from = -0.5 * l, to = 0.5 * l;

  line (cr, -l, 0, from, 0);
  line (cr, to, 0, l, 0);
  line (cr, from, 0, to * 0.86, -0.72 * w);
  if (!by_hand)
    return;
  dot (cr, from, 0, 1.7 * line_width);
  dot (cr, to, 0, 1.7 * line_width);
  line (cr, 0, -0.36 * w, 0, -w);
  line (cr, -0.26 * l, -w, 0.26 * l, -w);
}

static void
draw_fuse (cairo_t *cr, double l, double w)
{
  cairo_rectangle (cr, -l * 0.8, -w, 1.6 * l, 2 * w);
  cairo_stroke (cr);
  line (cr, -l, 0, l, 0);
}

static void
draw_coil (cairo_t *cr, double l, double w)
{
  cairo_rectangle (cr, -l, -w, 2 * l, 2 * w);
  cairo_stroke (cr);
}

static void
draw_lamp (cairo_t *cr, double l)
{
  double d = l * G_SQRT2 / 2;

  cairo_arc (cr, 0, 0, l, 0, 2 * G_PI);
  cairo_stroke (cr);
  line (cr, -d, -d, d, d);
  line (cr, -d, d, d, -d);
}

static void
draw_motor (GtkWidget *widget, cairo_t *cr, const HmuiCircuitSymbol *symbol, const GdkRGBA *ink)
{
  g_autoptr(PangoLayout) letter = hmui_draw_text (widget, "M", 1.0, PANGO_WEIGHT_BOLD);
  double width, height, scale = symbol->half_length * 1.3;

  hmui_draw_text_size (letter, &width, &height);
  cairo_arc (cr, 0, 0, symbol->half_length, 0, 2 * G_PI);
  cairo_stroke (cr);
  cairo_rotate (cr, -symbol->angle);       /* the letter stands upright */
  cairo_scale (cr, scale / height, scale / height);
  hmui_draw_text_centered (cr, letter, 0, 0, ink);
}

/* The frame of the machine: a bar with slanted strokes, hanging on its connection. */
static void
draw_frame_ground (cairo_t *cr, double l, double w, double lead)
{
  double bar = 1.1 * w;

  line (cr, 0, -lead, 0, bar);
  line (cr, -l, bar, l, bar);
  for (int i = -1; i <= 1; i++)
    line (cr, i * 0.85 * l, bar, i * 0.85 * l - 0.4 * l, 2 * w);
}

static void
draw_terminal (GtkWidget *widget, cairo_t *cr, double radius)
{
  GdkRGBA paper, ink;

  hmui_draw_color (widget, "hm_card", 1.0, &paper);
  hmui_draw_color (widget, NULL, 1.0, &ink);
  cairo_arc (cr, 0, 0, radius, 0, 2 * G_PI);
  gdk_cairo_set_source_rgba (cr, &paper);
  cairo_fill_preserve (cr);
  gdk_cairo_set_source_rgba (cr, &ink);
  cairo_stroke (cr);
}

/* From the body's edge to where the wires end, as thick as the wire that comes in. */
static void
draw_leads (cairo_t *cr, const HmuiCircuitLayout *layout, const HmuiCircuitSymbol *symbol)
{
  for (int end = 0; end < 2; end++)
    {
      double sign = end == 0 ? -1 : 1;

      if (symbol->lead[end] <= symbol->half_length || symbol->symbol >= HM_SYMBOL_JUNCTION
          || symbol->symbol == HM_SYMBOL_FRAME_GROUND)
        continue;
      cairo_set_line_width (cr, symbol->heavy[end] ? layout->heavy_width : layout->line_width);
      line (cr, sign * symbol->half_length, 0, sign * symbol->lead[end], 0);
    }
}

static void
draw_symbol (GtkWidget *widget, cairo_t *cr, const HmuiCircuitLayout *layout, const HmuiCircuitSymbol *symbol,
             const GdkRGBA *ink)
{
  double l = symbol->half_length, w = symbol->half_width;

  cairo_set_line_width (cr, layout->line_width);
  switch (symbol->symbol)
    {
    case HM_SYMBOL_BATTERY:       draw_battery (cr, l, w, layout->line_width); break;
    case HM_SYMBOL_SWITCH:        draw_contact (cr, l, w, TRUE, layout->line_width); break;
    case HM_SYMBOL_RELAY_CONTACT: draw_contact (cr, l, w, FALSE, layout->line_width); break;
    case HM_SYMBOL_FUSE:          draw_fuse (cr, l, w); break;
    case HM_SYMBOL_RELAY_COIL:    draw_coil (cr, l, w); break;
    case HM_SYMBOL_MOTOR:         draw_motor (widget, cr, symbol, ink); break;
    case HM_SYMBOL_LAMP:          draw_lamp (cr, l); break;
    case HM_SYMBOL_FRAME_GROUND:  draw_frame_ground (cr, l, w, symbol->lead[0]); break;
    case HM_SYMBOL_JUNCTION:      dot (cr, 0, 0, l); break;
    case HM_SYMBOL_TERMINAL:      draw_terminal (widget, cr, l); break;
    default: break;
    }
}

/* Keeps wires out of the symbols that they run into. */
static void
clip_bodies (cairo_t *cr, const HmuiCircuitLayout *layout)
{
  for (guint i = 0; i < layout->symbols->len; i++)
    {
      const HmuiCircuitSymbol *symbol = &g_array_index (layout->symbols, HmuiCircuitSymbol, i);

      if (symbol->symbol >= HM_SYMBOL_JUNCTION || symbol->symbol == HM_SYMBOL_FRAME_GROUND)
        continue;
      cairo_rectangle (cr, 0, 0, layout->width, layout->height);
      if (symbol->symbol == HM_SYMBOL_MOTOR || symbol->symbol == HM_SYMBOL_LAMP)
        {
          cairo_new_sub_path (cr);
          cairo_arc (cr, symbol->at.x, symbol->at.y, symbol->half_length, 0, 2 * G_PI);
        }
      else
        {
          graphene_rect_t inner;

          /* The middle half: a wire may leave at a pin, square to the symbol. */
          graphene_rect_inset_r (&symbol->body, symbol->body.size.width / 4, symbol->body.size.height / 4, &inner);
          cairo_rectangle (cr, inner.origin.x, inner.origin.y, inner.size.width, inner.size.height);
        }
      cairo_set_fill_rule (cr, CAIRO_FILL_RULE_EVEN_ODD);
      cairo_clip (cr);
    }
}

void
hmui_circuit_symbols_draw_wires (cairo_t *cr, const HmuiCircuitLayout *layout, const HmPicture *picture,
                                 const GdkRGBA *ink)
{
  cairo_save (cr);
  clip_bodies (cr, layout);
  gdk_cairo_set_source_rgba (cr, ink);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_ROUND);
  cairo_set_line_cap (cr, CAIRO_LINE_CAP_ROUND);
  for (guint i = 0; i < picture->n_wires; i++)
    {
      for (guint j = 0; j < picture->wires[i].n_points; j++)
        {
          graphene_point_t at = hmui_circuit_layout_map (layout, picture->wires[i].points[j]);

          cairo_line_to (cr, at.x, at.y);
        }
      cairo_set_line_width (cr, picture->wires[i].heavy ? layout->heavy_width : layout->line_width);
      cairo_stroke (cr);
    }
  cairo_restore (cr);
}

void
hmui_circuit_symbols_draw_parts (GtkWidget *widget, cairo_t *cr, const HmuiCircuitLayout *layout, const GdkRGBA *ink)
{
  for (guint i = 0; i < layout->symbols->len; i++)
    {
      const HmuiCircuitSymbol *symbol = &g_array_index (layout->symbols, HmuiCircuitSymbol, i);

      cairo_save (cr);
      cairo_translate (cr, symbol->at.x, symbol->at.y);
      cairo_rotate (cr, symbol->angle);
      cairo_set_line_cap (cr, CAIRO_LINE_CAP_BUTT);
      gdk_cairo_set_source_rgba (cr, ink);
      draw_leads (cr, layout, symbol);
      draw_symbol (widget, cr, layout, symbol, ink);
      cairo_restore (cr);
    }
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hm-picture.h"
#include "hmui-obstacles.h"
G_BEGIN_DECLS

/* Where everything of a circuit drawing lies, in px. Private to this folder. */

/**
 * HmuiCircuitSymbol: one part on paper.
 * @angle: of the symbol's own x axis, in radians clockwise: its first connection lies against it, its second along it
 * @lead: px from the centre to where the wires end, [0] against the axis, [1] along it; of a two-ended symbol at least
 *   its half length; of a frame ground [0] is upwards
 * @heavy: whether the wire there is a battery cable
 * @half_length, @half_width: of the body, along and across the axis
 * @body: the same as an upright rectangle
 */
typedef struct {
  HmSymbol symbol;
  graphene_point_t at;
  double angle, lead[2], half_length, half_width;
  gboolean heavy[2];
  graphene_rect_t body;
} HmuiCircuitSymbol;

typedef struct { PangoLayout *text; graphene_rect_t rect; } HmuiCircuitLabel;

/**
 * HmuiCircuitLayout:
 * @width, @height: of the whole drawing
 * @unit: px per grid unit
 * @text_factor: of the widget's font size
 * @origin: of the grid
 * @symbols: of HmuiCircuitSymbol, in the order of the picture's parts
 * @labels: of HmuiCircuitLabel, those that found room; empty until hmui_circuit_layout_add_labels()
 * @obstacles: all that is drawn, labels too
 * @marker_radius: of a probe's head
 */
typedef struct {
  double width, height, unit, text_factor, line_width, heavy_width, marker_radius;
  graphene_point_t origin;
  GArray *symbols, *labels;
  HmuiObstacles *obstacles;
} HmuiCircuitLayout;

/** hmui_circuit_layout_new: lays wires and symbols of @picture out in @width × @height px. */
HmuiCircuitLayout *hmui_circuit_layout_new  (const HmPicture *picture, double width, double height);
void               hmui_circuit_layout_free (HmuiCircuitLayout *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmuiCircuitLayout, hmui_circuit_layout_free)

/** hmui_circuit_layout_add_labels: names the parts, in the font of @widget, off all the obstacles. Call it last. */
void hmui_circuit_layout_add_labels (HmuiCircuitLayout *self, GtkWidget *widget, const HmPicture *picture);

/** hmui_circuit_layout_map: a grid point in px. */
graphene_point_t hmui_circuit_layout_map (const HmuiCircuitLayout *self, HmPoint point);

G_END_DECLS

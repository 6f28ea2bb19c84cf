/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hmui-circuit-layout.h"
G_BEGIN_DECLS

/* The probes of a circuit drawing and the meter between them. Private to this folder. */

/**
 * HmuiCircuitMeter: the meter on paper.
 * @box: its case
 * @jack: where the leads leave it; [0] is the red one, [1] the black one
 * @probe: where the probes are set
 * @out: the direction away from the case at each jack
 */
typedef struct {
  graphene_rect_t box;
  graphene_point_t jack[2], probe[2], out[2];
} HmuiCircuitMeter;

/** hmui_circuit_meter_place: in the best free place; labels added to @layout later keep off it and off its leads. */
HmuiCircuitMeter hmui_circuit_meter_place (GtkWidget *widget, HmuiCircuitLayout *layout, const graphene_point_t *red,
                                           const graphene_point_t *black, const char *text);

/** hmui_circuit_meter_draw: the case with @text (nullable: no reading yet) and both leads. */
void hmui_circuit_meter_draw (GtkWidget *widget, cairo_t *cr, const HmuiCircuitLayout *layout,
                              const HmuiCircuitMeter *meter, const char *text);

/** hmui_circuit_meter_draw_probe: the head of a probe: red is round, black is square, and each carries its letter. */
void hmui_circuit_meter_draw_probe (GtkWidget *widget, cairo_t *cr, const HmuiCircuitLayout *layout,
                                    const graphene_point_t *at, gboolean red);

G_END_DECLS

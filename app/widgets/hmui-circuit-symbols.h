/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hmui-circuit-layout.h"
G_BEGIN_DECLS

/* Wires and symbols of a circuit drawing, after IEC 60617. Private to this folder. */

void hmui_circuit_symbols_draw_wires (cairo_t *cr, const HmuiCircuitLayout *layout, const HmPicture *picture,
                                      const GdkRGBA *ink);
void hmui_circuit_symbols_draw_parts (GtkWidget *widget, cairo_t *cr, const HmuiCircuitLayout *layout,
                                      const GdkRGBA *ink);

G_END_DECLS

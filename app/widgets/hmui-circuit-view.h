/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hm-picture.h"
G_BEGIN_DECLS

/*
 * HmuiCircuitView: a schematic with the red and the black probe and the meter between them. It keeps the picture's
 * proportions in whatever room it gets (at least 320 × 190 px). Colours come from the style sheet.
 * The accessible label says in words what is drawn.
 */
#define HMUI_TYPE_CIRCUIT_VIEW (hmui_circuit_view_get_type ())
G_DECLARE_FINAL_TYPE (HmuiCircuitView, hmui_circuit_view, HMUI, CIRCUIT_VIEW, GtkWidget)

GtkWidget *hmui_circuit_view_new (void);

/**
 * hmui_circuit_view_set_picture:
 * @picture: (nullable): borrowed: it must live until another is set or the view is gone (pictures of an #HmKnowledge
 *   live as long as it does). NULL empties the view. Setting a picture takes the probes off.
 */
void hmui_circuit_view_set_picture (HmuiCircuitView *self, const HmPicture *picture);

/**
 * hmui_circuit_view_set_probes:
 * @red_id: (nullable): id of the point for the red probe; NULL or an unknown id for none
 * @black_id: (nullable): the same for the black probe
 * Set the picture first: ids are looked up in it.
 */
void hmui_circuit_view_set_probes (HmuiCircuitView *self, const char *red_id, const char *black_id);

/**
 * hmui_circuit_view_set_reading:
 * @text: (nullable): what the meter shows, formatted by core with its unit ("0.42 V"); NULL for a meter without a
 *   reading. The meter is drawn only while both probes are set. Copied.
 */
void hmui_circuit_view_set_reading (HmuiCircuitView *self, const char *text);

G_END_DECLS

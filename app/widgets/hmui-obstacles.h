/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/*
 * HmuiObstacles: what a label in a drawing had better not cover, with a price for each. All lengths in px. Private to
 * this folder.
 */
typedef struct _HmuiObstacles HmuiObstacles;

HmuiObstacles *hmui_obstacles_new  (const graphene_rect_t *bounds);   /* nothing may leave @bounds */
void           hmui_obstacles_free (HmuiObstacles *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmuiObstacles, hmui_obstacles_free)

void hmui_obstacles_add_rect (HmuiObstacles *self, const graphene_rect_t *rect, double price_per_px2);
void hmui_obstacles_add_line (HmuiObstacles *self, const graphene_point_t *from, const graphene_point_t *to,
                              double price_per_px);

/** hmui_obstacles_price_rect: what covering @rect costs; 0 when it is free. */
double hmui_obstacles_price_rect (const HmuiObstacles *self, const graphene_rect_t *rect);

/** hmui_obstacles_price_line: what drawing a line over the rectangles (not the lines) costs. */
double hmui_obstacles_price_line (const HmuiObstacles *self, const graphene_point_t *from, const graphene_point_t *to);

/**
 * hmui_obstacles_place_label: finds the cheapest place for a text beside @body: around it, near or a little off, on
 * one line or wrapped.
 * @layout: its width is set as chosen
 * @out: (out caller-allocates): the text's rectangle
 * Returns: the price of that place
 */
double hmui_obstacles_place_label (const HmuiObstacles *self, const graphene_rect_t *body, PangoLayout *layout,
                                   graphene_rect_t *out);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hm-fastener.h"
G_BEGIN_DECLS

/*
 * HmuiPatternView: in which order the fasteners of one joint are tightened. Each fastener carries its number; the
 * passes are played one after the other when the desktop allows animations, else the whole order stands still.
 * The accessible label tells the order in words.
 */
#define HMUI_TYPE_PATTERN_VIEW (hmui_pattern_view_get_type ())
G_DECLARE_FINAL_TYPE (HmuiPatternView, hmui_pattern_view, HMUI, PATTERN_VIEW, GtkWidget)

/**
 * HmuiPatternPoint: one fastener.
 * @x, @y: where it sits, in any unit, y downwards; the view scales to fit
 * @order: its place in the order, from 1; two that are tightened together may share a number
 */
typedef struct { double x, y; guint order; } HmuiPatternPoint;

GtkWidget *hmui_pattern_view_new (void);

/**
 * hmui_pattern_view_set_points:
 * @pattern: shapes the outline of the joint that is drawn behind the fasteners
 * @points: (array length=n) (nullable): copied
 * @passes: (array length=n_passes) (nullable): what each pass goes to, in words, in order ("snug", "60 %", "full
 *   torque"); copied; NULL for a single pass
 */
void hmui_pattern_view_set_points (HmuiPatternView *self, HmPattern pattern, const HmuiPatternPoint *points, guint n,
                                   const char * const *passes, guint n_passes);

G_END_DECLS

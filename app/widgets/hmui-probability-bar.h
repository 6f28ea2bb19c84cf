/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/* HmuiProbabilityBar: the drawn bar of a row; says nothing to a screen reader. Private to this folder. */
#define HMUI_TYPE_PROBABILITY_BAR (hmui_probability_bar_get_type ())
G_DECLARE_FINAL_TYPE (HmuiProbabilityBar, hmui_probability_bar, HMUI, PROBABILITY_BAR, GtkWidget)

void hmui_probability_bar_set_share (HmuiProbabilityBar *self, double share);   /* 0–1 */

G_END_DECLS

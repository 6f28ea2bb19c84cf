/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/*
 * HmuiProbabilityRow: one cause with a bar and its percentage. Accessible label: "solenoid contacts, 41 percent".
 */
#define HMUI_TYPE_PROBABILITY_ROW (hmui_probability_row_get_type ())
G_DECLARE_FINAL_TYPE (HmuiProbabilityRow, hmui_probability_row, HMUI, PROBABILITY_ROW, GtkWidget)

GtkWidget *hmui_probability_row_new (void);

/**
 * hmui_probability_row_set:
 * @name: the cause, already translated; copied
 * @probability: 0–1
 * @leading: draw the bar in the accent colour (the causes most likely now)
 */
void hmui_probability_row_set (HmuiProbabilityRow *self, const char *name, double probability, gboolean leading);

G_END_DECLS

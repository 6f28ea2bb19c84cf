/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-settings.h"
G_BEGIN_DECLS

/*
 * HmuiFastenersPlace: the place Fasteners: one search that answers as you type, "What is this bolt?", and the tables.
 * Action "fasteners.look-up" (string): types it into the search. Focus goes to the search; Ctrl+F too.
 */
#define HMUI_TYPE_FASTENERS_PLACE (hmui_fasteners_place_get_type ())
G_DECLARE_FINAL_TYPE (HmuiFastenersPlace, hmui_fasteners_place, HMUI, FASTENERS_PLACE, GtkWidget)

GtkWidget *hmui_fasteners_place_new (HmuiSettings *settings);

G_END_DECLS

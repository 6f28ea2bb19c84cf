/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-line.h"
G_BEGIN_DECLS

/** HmuiChoiceCard: a toggle with a drawing (the line's key), a name and a sentence. */
#define HMUI_TYPE_CHOICE_CARD (hmui_choice_card_get_type ())
G_DECLARE_FINAL_TYPE (HmuiChoiceCard, hmui_choice_card, HMUI, CHOICE_CARD, GtkToggleButton)

GtkWidget *hmui_choice_card_new (HmuiLine *line);

G_END_DECLS

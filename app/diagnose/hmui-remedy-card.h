/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hm-guide.h"
G_BEGIN_DECLS

/** HmuiRemedyCard: what one repair takes: parts, what to do. */
#define HMUI_TYPE_REMEDY_CARD (hmui_remedy_card_get_type ())
G_DECLARE_FINAL_TYPE (HmuiRemedyCard, hmui_remedy_card, HMUI, REMEDY_CARD, GtkWidget)

/** hmui_remedy_card_new: @titled: name the remedy (when there are several) */
GtkWidget *hmui_remedy_card_new (const HmRemedy *remedy, gboolean titled);

G_END_DECLS

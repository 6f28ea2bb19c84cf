/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hm-guide.h"
G_BEGIN_DECLS

/*
 * HmuiCautionCard: a hazard in plain words, what to do about it, and whose word governs. A serious one says "Danger"
 * and has a box to tick: "I have done this".
 *
 * Property "acknowledged" (gboolean, read/write, notifies): always TRUE for a caution that is not serious.
 * Signal "acknowledged" (no arguments): the person has just ticked the box.
 */
#define HMUI_TYPE_CAUTION_CARD (hmui_caution_card_get_type ())
G_DECLARE_FINAL_TYPE (HmuiCautionCard, hmui_caution_card, HMUI, CAUTION_CARD, GtkWidget)

GtkWidget *hmui_caution_card_new (void);

/**
 * hmui_caution_card_set_caution:
 * @caution: texts are copied and looked up for translation; clears the acknowledgement
 */
void hmui_caution_card_set_caution (HmuiCautionCard *self, const HmCaution *caution);

gboolean hmui_caution_card_get_acknowledged (HmuiCautionCard *self);
void     hmui_caution_card_set_acknowledged (HmuiCautionCard *self, gboolean acknowledged);   /* no signal "acknowledged" */

G_END_DECLS

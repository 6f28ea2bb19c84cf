/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/*
 * HmuiTextCard: a paragraph under its heading, to be read and edited in place.
 * Property "heading" (string, write, construct only). Signal "edited" (no arguments): when typing pauses or the focus leaves.
 */
#define HMUI_TYPE_TEXT_CARD (hmui_text_card_get_type ())
G_DECLARE_FINAL_TYPE (HmuiTextCard, hmui_text_card, HMUI, TEXT_CARD, GtkWidget)

void  hmui_text_card_set_text (HmuiTextCard *self, const char *text);   /* emits no "edited" */
char *hmui_text_card_dup_text (HmuiTextCard *self);

G_END_DECLS

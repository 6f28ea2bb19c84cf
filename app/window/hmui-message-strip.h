/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/** HmuiMessageStrip: a short sentence at the bottom, with Undo where that can be done; it goes away by itself. */
#define HMUI_TYPE_MESSAGE_STRIP (hmui_message_strip_get_type ())
G_DECLARE_FINAL_TYPE (HmuiMessageStrip, hmui_message_strip, HMUI, MESSAGE_STRIP, GtkWidget)

/** hmui_message_strip_say: a sentence that cannot be undone is a warning, and stays until it is closed. */
void hmui_message_strip_say  (HmuiMessageStrip *self, const char *text, gboolean can_undo);
void hmui_message_strip_hide (HmuiMessageStrip *self);

G_END_DECLS

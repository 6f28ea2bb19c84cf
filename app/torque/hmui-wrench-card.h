/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-wrench-drawer.h"
G_BEGIN_DECLS

/**
 * HmuiWrenchCard: the torque wrenches in the drawer; add one, take one out.
 * Signal "removed" (const char *line): it can be undone.
 */
#define HMUI_TYPE_WRENCH_CARD (hmui_wrench_card_get_type ())
G_DECLARE_FINAL_TYPE (HmuiWrenchCard, hmui_wrench_card, HMUI, WRENCH_CARD, GtkWidget)

void hmui_wrench_card_set_drawer (HmuiWrenchCard *self, HmuiWrenchDrawer *drawer);

G_END_DECLS

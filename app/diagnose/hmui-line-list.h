/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-line.h"
G_BEGIN_DECLS

/*
 * HmuiLineList: lines below each other. With "pressable" set each is a button of at least 44 px, named by its title.
 * Properties "pressable" (gboolean) and "row-class" (style class of the buttons), construct only.
 * Signal "pressed" (guint index): the line's index.
 */
#define HMUI_TYPE_LINE_LIST (hmui_line_list_get_type ())
G_DECLARE_FINAL_TYPE (HmuiLineList, hmui_line_list, HMUI, LINE_LIST, GtkWidget)

/** hmui_line_list_set_model: (nullable): @model (of #HmuiLine) is followed. */
void hmui_line_list_set_model (HmuiLineList *self, GListModel *model);

/** hmui_line_list_press: as if the line at @position were pressed. Returns: whether there is one */
gboolean hmui_line_list_press (HmuiLineList *self, guint position);

G_END_DECLS

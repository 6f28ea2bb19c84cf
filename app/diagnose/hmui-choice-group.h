/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-line.h"
G_BEGIN_DECLS

/*
 * HmuiChoiceGroup: a few things to choose from, side by side where there is room. One of them as cards with a drawing,
 * or several as boxes to tick. Each is named by its line's title; the line's key names the card's icon.
 * Properties, construct only: "several" (gboolean), "most-columns" (guint).
 * Signal "chosen" (guint index, gboolean on): by the person, not by hmui_choice_group_set_on().
 * Signal "activated" (guint index): a card was pressed twice at once, or Enter was struck on it; it is chosen by then.
 */
#define HMUI_TYPE_CHOICE_GROUP (hmui_choice_group_get_type ())
G_DECLARE_FINAL_TYPE (HmuiChoiceGroup, hmui_choice_group, HMUI, CHOICE_GROUP, GtkWidget)

/** hmui_choice_group_set_lines: @lines of #HmuiLine; read once. Nothing is chosen then. */
void hmui_choice_group_set_lines (HmuiChoiceGroup *self, GListModel *lines);
void hmui_choice_group_set_on    (HmuiChoiceGroup *self, guint index, gboolean on);

/** hmui_choice_group_set_shown: whether the one of @index is to be seen; all are, until told otherwise. */
void hmui_choice_group_set_shown (HmuiChoiceGroup *self, guint index, gboolean shown);

G_END_DECLS

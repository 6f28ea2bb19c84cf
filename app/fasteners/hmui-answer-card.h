/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-answer.h"
G_BEGIN_DECLS

/*
 * HmuiAnswerCard: one part of an answer: heading, note, rows.
 */
#define HMUI_TYPE_ANSWER_CARD (hmui_answer_card_get_type ())
G_DECLARE_FINAL_TYPE (HmuiAnswerCard, hmui_answer_card, HMUI, ANSWER_CARD, GtkWidget)

/** hmui_answer_card_new: @narrow: it stands in the side column. */
GtkWidget *hmui_answer_card_new (HmuiAnswerPart *part, gboolean narrow);

G_END_DECLS

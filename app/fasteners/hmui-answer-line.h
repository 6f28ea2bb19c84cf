/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-answer.h"
G_BEGIN_DECLS

/*
 * HmuiAnswerLine: shows one #HmuiAnswerRow: verdict or name of the fact, what it is about, the numbers, where they are
 * from, and a drawing where there is one. What can be looked up is a button: action "fasteners.look-up" with the text. It takes the
 * focus only where there is one.
 */
#define HMUI_TYPE_ANSWER_LINE (hmui_answer_line_get_type ())
G_DECLARE_FINAL_TYPE (HmuiAnswerLine, hmui_answer_line, HMUI, ANSWER_LINE, GtkWidget)

/** hmui_answer_line_new: @stacked: for a narrow column: the name of a fact stands above it. */
GtkWidget *hmui_answer_line_new (HmuiAnswerRow *row, gboolean stacked);

G_END_DECLS

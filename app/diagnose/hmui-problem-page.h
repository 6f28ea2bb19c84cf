/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/** HmuiProblemPage: the knowledge cannot be read: why, and what to do. Signal "again" (no arguments). */
#define HMUI_TYPE_PROBLEM_PAGE (hmui_problem_page_get_type ())
G_DECLARE_FINAL_TYPE (HmuiProblemPage, hmui_problem_page, HMUI, PROBLEM_PAGE, GtkWidget)

GtkWidget *hmui_problem_page_new (void);
void       hmui_problem_page_set_text (HmuiProblemPage *self, const char *text);

G_END_DECLS

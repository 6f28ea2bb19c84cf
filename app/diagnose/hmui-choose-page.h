/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-diagnose-model.h"
G_BEGIN_DECLS

/** HmuiChoosePage: machine, complaint, what happened before, what was replaced; Start. */
#define HMUI_TYPE_CHOOSE_PAGE (hmui_choose_page_get_type ())
G_DECLARE_FINAL_TYPE (HmuiChoosePage, hmui_choose_page, HMUI, CHOOSE_PAGE, GtkWidget)

GtkWidget *hmui_choose_page_new (HmuiDiagnoseModel *bench);

/** hmui_choose_page_refresh: shows what there is to choose; forgets what was chosen. */
void hmui_choose_page_refresh (HmuiChoosePage *self);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-diagnose-model.h"
G_BEGIN_DECLS

/** HmuiClosePage: "Finished": the write-up, what else to look at, what to tell the owner. */
#define HMUI_TYPE_CLOSE_PAGE (hmui_close_page_get_type ())
G_DECLARE_FINAL_TYPE (HmuiClosePage, hmui_close_page, HMUI, CLOSE_PAGE, GtkWidget)

GtkWidget *hmui_close_page_new (HmuiDiagnoseModel *bench);
void       hmui_close_page_refresh (HmuiClosePage *self);

G_END_DECLS

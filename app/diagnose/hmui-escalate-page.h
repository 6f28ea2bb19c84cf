/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-diagnose-model.h"
G_BEGIN_DECLS

/** HmuiEscalatePage: nothing listed is worth doing any more: what then. */
#define HMUI_TYPE_ESCALATE_PAGE (hmui_escalate_page_get_type ())
G_DECLARE_FINAL_TYPE (HmuiEscalatePage, hmui_escalate_page, HMUI, ESCALATE_PAGE, GtkWidget)

GtkWidget *hmui_escalate_page_new (HmuiDiagnoseModel *bench);
void       hmui_escalate_page_refresh (HmuiEscalatePage *self);

G_END_DECLS

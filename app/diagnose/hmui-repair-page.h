/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-diagnose-model.h"
G_BEGIN_DECLS

/** HmuiRepairPage: what to do, fasteners and torque, putting back; then whether it is fixed. */
#define HMUI_TYPE_REPAIR_PAGE (hmui_repair_page_get_type ())
G_DECLARE_FINAL_TYPE (HmuiRepairPage, hmui_repair_page, HMUI, REPAIR_PAGE, GtkWidget)

GtkWidget *hmui_repair_page_new (HmuiDiagnoseModel *bench);
/** hmui_repair_page_refresh: @arrived: another page was in sight before: begin at the top. */
void       hmui_repair_page_refresh (HmuiRepairPage *self, gboolean arrived);

G_END_DECLS

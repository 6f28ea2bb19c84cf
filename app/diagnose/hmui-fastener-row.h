/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-prepare-model.h"
G_BEGIN_DECLS

/** HmuiFastenerRow: one fastener: where, how many, what drives it (drawn), its torque and where that is from. */
#define HMUI_TYPE_FASTENER_ROW (hmui_fastener_row_get_type ())
G_DECLARE_FINAL_TYPE (HmuiFastenerRow, hmui_fastener_row, HMUI, FASTENER_ROW, GtkWidget)

GtkWidget *hmui_fastener_row_new (HmuiPrepareModel *model, const HmFastener *fastener);

/** hmui_fastener_row_join: rows of one table have torque columns of one width. */
void       hmui_fastener_row_join (HmuiFastenerRow *self, GtkSizeGroup *torques);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-repair-model.h"
G_BEGIN_DECLS

/** HmuiPutBackRow: one line of the put-back list, to be ticked. Signal "ticked" (no arguments): by the person. */
#define HMUI_TYPE_PUT_BACK_ROW (hmui_put_back_row_get_type ())
G_DECLARE_FINAL_TYPE (HmuiPutBackRow, hmui_put_back_row, HMUI, PUT_BACK_ROW, GtkWidget)

GtkWidget *hmui_put_back_row_new (HmuiRepairModel *model, HmuiLine *line);

G_END_DECLS

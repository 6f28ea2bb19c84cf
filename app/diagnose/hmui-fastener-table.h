/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-prepare-model.h"
G_BEGIN_DECLS

/** HmuiFastenerTable: fasteners below each other, and whose word governs their torque. Hides itself when empty. */
#define HMUI_TYPE_FASTENER_TABLE (hmui_fastener_table_get_type ())
G_DECLARE_FINAL_TYPE (HmuiFastenerTable, hmui_fastener_table, HMUI, FASTENER_TABLE, GtkWidget)

/** hmui_fastener_table_show: @fasteners of HmFastener, borrowed from the guide. */
void hmui_fastener_table_show (HmuiFastenerTable *self, HmuiPrepareModel *model, GPtrArray *fasteners);

G_END_DECLS

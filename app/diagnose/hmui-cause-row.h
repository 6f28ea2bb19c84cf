/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-why-model.h"
G_BEGIN_DECLS

/** HmuiCauseRow: a cause with its probability; a press opens below it why it stands where it stands. */
#define HMUI_TYPE_CAUSE_ROW (hmui_cause_row_get_type ())
G_DECLARE_FINAL_TYPE (HmuiCauseRow, hmui_cause_row, HMUI, CAUSE_ROW, GtkWidget)

GtkWidget *hmui_cause_row_new (HmuiWhyModel *model, guint cause, gboolean leading);

G_END_DECLS

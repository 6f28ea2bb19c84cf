/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-diagnose-model.h"
G_BEGIN_DECLS

/** HmuiSidePanel: beside a step or a repair: what it may be, why this step, what each answer leads to, the trail. */
#define HMUI_TYPE_SIDE_PANEL (hmui_side_panel_get_type ())
G_DECLARE_FINAL_TYPE (HmuiSidePanel, hmui_side_panel, HMUI, SIDE_PANEL, GtkWidget)

void hmui_side_panel_set_bench (HmuiSidePanel *self, HmuiDiagnoseModel *bench);
void hmui_side_panel_refresh   (HmuiSidePanel *self);

G_END_DECLS

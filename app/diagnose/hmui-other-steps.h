/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-diagnose-model.h"
G_BEGIN_DECLS

/*
 * HmuiOtherSteps: "Something else": every other check and repair, best first; one is chosen and shown in its turn.
 * Signal "left" (no arguments): the person went back without choosing.
 */
#define HMUI_TYPE_OTHER_STEPS (hmui_other_steps_get_type ())
G_DECLARE_FINAL_TYPE (HmuiOtherSteps, hmui_other_steps, HMUI, OTHER_STEPS, GtkWidget)

void hmui_other_steps_show (HmuiOtherSteps *self, HmuiDiagnoseModel *bench);

G_END_DECLS

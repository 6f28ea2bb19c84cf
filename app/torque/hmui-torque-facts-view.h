/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-torque-model.h"
G_BEGIN_DECLS

/** HmuiTorqueFactsView: the lines of the answer, each with its source. Hides when it has none. */
#define HMUI_TYPE_TORQUE_FACTS_VIEW (hmui_torque_facts_view_get_type ())
G_DECLARE_FINAL_TYPE (HmuiTorqueFactsView, hmui_torque_facts_view, HMUI, TORQUE_FACTS_VIEW, GtkWidget)

void hmui_torque_facts_view_refresh (HmuiTorqueFactsView *self, HmuiTorqueModel *model, HmuiTorqueFact first, HmuiTorqueFact last);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-order-model.h"
#include "hmui-torque-model.h"
G_BEGIN_DECLS

/**
 * HmuiTorquePage: form and answer.
 * Signal "message" (const char *text, gboolean can_undo), as of a place.
 */
#define HMUI_TYPE_TORQUE_PAGE (hmui_torque_page_get_type ())
G_DECLARE_FINAL_TYPE (HmuiTorquePage, hmui_torque_page, HMUI, TORQUE_PAGE, GtkWidget)

GtkWidget *hmui_torque_page_new (HmuiTorqueModel *model, HmuiOrderModel *order, HmuiWrenchDrawer *drawer);

/** hmui_torque_page_set_given: types it where the torque of the maker's manual goes, and puts the cursor there. */
void       hmui_torque_page_set_given (HmuiTorquePage *self, const char *text);

G_END_DECLS

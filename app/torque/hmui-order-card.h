/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-order-model.h"
G_BEGIN_DECLS

/** HmuiOrderCard: the bolts of one joint drawn with their order, and the passes. */
#define HMUI_TYPE_ORDER_CARD (hmui_order_card_get_type ())
G_DECLARE_FINAL_TYPE (HmuiOrderCard, hmui_order_card, HMUI, ORDER_CARD, GtkWidget)

void hmui_order_card_set_model (HmuiOrderCard *self, HmuiOrderModel *model);

G_END_DECLS

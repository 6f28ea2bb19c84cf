/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-prepare-model.h"
G_BEGIN_DECLS

/** HmuiAccessCard: how one access step is opened: what to photograph first, what to do, its fasteners. */
#define HMUI_TYPE_ACCESS_CARD (hmui_access_card_get_type ())
G_DECLARE_FINAL_TYPE (HmuiAccessCard, hmui_access_card, HMUI, ACCESS_CARD, GtkWidget)

GtkWidget *hmui_access_card_new (HmuiPrepareModel *model, const HmAccessStep *step);

G_END_DECLS

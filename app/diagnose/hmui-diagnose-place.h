/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-place.h"
#include "hmui-settings.h"
#include "hmui-shop.h"
G_BEGIN_DECLS

/** HmuiDiagnosePlace: the place Diagnose: one page after the other, each built at its first use. */
#define HMUI_TYPE_DIAGNOSE_PLACE (hmui_diagnose_place_get_type ())
G_DECLARE_FINAL_TYPE (HmuiDiagnosePlace, hmui_diagnose_place, HMUI, DIAGNOSE_PLACE, GtkWidget)

GtkWidget *hmui_diagnose_place_new (HmuiSettings *settings, HmuiShop *shop);

G_END_DECLS

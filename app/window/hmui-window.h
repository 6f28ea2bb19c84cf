/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-settings.h"
#include "hmui-shop.h"
G_BEGIN_DECLS

/** HmuiWindow: the frame round the places. */
#define HMUI_TYPE_WINDOW (hmui_window_get_type ())
G_DECLARE_FINAL_TYPE (HmuiWindow, hmui_window, HMUI, WINDOW, GtkApplicationWindow)

GtkWidget *hmui_window_new (GtkApplication *application, HmuiSettings *settings, HmuiShop *shop);

G_END_DECLS

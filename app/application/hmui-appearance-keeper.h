/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-settings.h"
G_BEGIN_DECLS

/**
 * HmuiAppearanceKeeper: light or dark, and the size of text, as the settings want them; "follow" does what the desktop
 * prefers, where it says so (the org.freedesktop.appearance setting), and follows its changes.
 */
#define HMUI_TYPE_APPEARANCE_KEEPER (hmui_appearance_keeper_get_type ())
G_DECLARE_FINAL_TYPE (HmuiAppearanceKeeper, hmui_appearance_keeper, HMUI, APPEARANCE_KEEPER, GObject)

HmuiAppearanceKeeper *hmui_appearance_keeper_new (GdkDisplay *display, HmuiSettings *settings);

G_END_DECLS

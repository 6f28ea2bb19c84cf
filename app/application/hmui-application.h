/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/**
 * HmuiApplication: the program: one window, and what holds for all of it: settings, appearance, text size, about.
 * HALFMOON_EXIT_AFTER_FIRST_FRAME=1 ends it with 0 once the first frame is painted.
 */
#define HMUI_TYPE_APPLICATION (hmui_application_get_type ())
G_DECLARE_FINAL_TYPE (HmuiApplication, hmui_application, HMUI, APPLICATION, GtkApplication)

HmuiApplication *hmui_application_new (void);

G_END_DECLS

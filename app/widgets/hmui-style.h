/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/**
 * hmui_style_attach: gives @display the style sheet and the icons of the application. GTK 4 alone does not load a style
 * sheet by its place in the resources (icons it does: "/local/halfmoon/Halfmoon/icons" is there for the whole program).
 * @style_resource: "/local/halfmoon/Halfmoon/style.css"
 * Colours in the sheet are mixed from those of the theme: it serves light and dark, with nothing to switch.
 */
void hmui_style_attach (GdkDisplay *display, const char *style_resource);

G_END_DECLS

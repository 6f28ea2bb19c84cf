/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-style.h"

void
hmui_style_attach (GdkDisplay *display, const char *style_resource)
{
  g_autoptr(GtkCssProvider) provider = gtk_css_provider_new ();

  g_return_if_fail (GDK_IS_DISPLAY (display) && style_resource != NULL);
  gtk_css_provider_load_from_resource (provider, style_resource);
  gtk_style_context_add_provider_for_display (display, GTK_STYLE_PROVIDER (provider),
                                              GTK_STYLE_PROVIDER_PRIORITY_APPLICATION);
  gtk_icon_theme_add_resource_path (gtk_icon_theme_get_for_display (display), "/local/halfmoon/Halfmoon/icons");
}

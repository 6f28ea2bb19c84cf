/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

#define HMUI_RESOURCE "/local/halfmoon/Halfmoon/"

/**
 * hmui_dispose_template: for dispose(): lets go of every template child. GTK 4.8 leaves behind those that were never bound.
 */
static inline void
hmui_dispose_template (GtkWidget *widget, GType type)
{
  GtkWidget *child;

  gtk_widget_dispose_template (widget, type);
  while ((child = gtk_widget_get_first_child (widget)) != NULL)
    gtk_widget_unparent (child);
}

G_END_DECLS

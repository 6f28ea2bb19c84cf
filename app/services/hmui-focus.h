/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/**
 * hmui_focus_leave: takes the keyboard focus off everything inside @page. Do so before rows are removed: GTK 4.8 else
 * remembers the way to a focused row that is gone, and Tab skips what lies beside it.
 */
static inline void
hmui_focus_leave (GtkWidget *page)
{
  GtkRoot *root = gtk_widget_get_root (page);
  GtkWidget *focus = root != NULL ? gtk_root_get_focus (root) : NULL;

  if (focus != NULL && gtk_widget_is_ancestor (focus, page))
    gtk_root_set_focus (root, NULL);
}

G_END_DECLS

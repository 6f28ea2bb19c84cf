/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-window-private.h"

static void
undo_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HmuiWindow *self = HMUI_WINDOW (widget);

  hmui_message_strip_hide (self->strip);
  hmui_place_undo (hmui_window_get_place (self));
}

static void
redo_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HmuiWindow *self = HMUI_WINDOW (widget);

  hmui_message_strip_hide (self->strip);
  hmui_place_redo (hmui_window_get_place (self));
}

static void
menu_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  gtk_menu_button_popup (HMUI_WINDOW (widget)->menu);
}

void
hmui_window_install_actions (GtkWidgetClass *widget_class)
{
  gtk_widget_class_install_action (widget_class, "win.undo", NULL, undo_action);
  gtk_widget_class_install_action (widget_class, "win.redo", NULL, redo_action);
  gtk_widget_class_install_action (widget_class, "win.menu", NULL, menu_action);
}

void
hmui_window_update_actions (HmuiWindow *self)
{
  HmuiPlace *place = hmui_window_get_place (self);

  gtk_widget_action_set_enabled (GTK_WIDGET (self), "win.undo", hmui_place_can_undo (place));
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "win.redo", hmui_place_can_redo (place));
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-window-private.h"
#include "hmui-torque-place.h"

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

/* From everywhere: the place Fasteners, with the cursor in its search. */
static void
search_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  hmui_window_visit (HMUI_WINDOW (widget), "fasteners");
}

/* A place by its name. */
static void
visit_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  hmui_window_visit (HMUI_WINDOW (widget), g_variant_get_string (parameter, NULL));
}

static void
new_diagnosis_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  hmui_place_go_home (HMUI_PLACE (hmui_window_visit (HMUI_WINDOW (widget), "diagnose")));
}

/* The place Torque with a torque taken over; "" for none. */
static void
torque_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  GtkWidget *place = hmui_window_visit (HMUI_WINDOW (widget), "torque");
  const char *given = g_variant_get_string (parameter, NULL);

  if (given[0] != '\0')
    hmui_torque_place_set_given (HMUI_TORQUE_PLACE (place), given);
}

/* "/" is a character like any other where text is typed. */
static gboolean
slash_cb (GtkWidget *widget, GVariant *args, gpointer user_data)
{
  GtkWidget *focus = gtk_root_get_focus (GTK_ROOT (widget));

  if (focus != NULL && (GTK_IS_EDITABLE (focus) || GTK_IS_TEXT_VIEW (focus)))
    return FALSE;
  return gtk_widget_activate_action (widget, "win.search", NULL);
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
  gtk_widget_class_install_action (widget_class, "win.visit", "s", visit_action);
  gtk_widget_class_install_action (widget_class, "win.new-diagnosis", NULL, new_diagnosis_action);
  gtk_widget_class_install_action (widget_class, "win.search", NULL, search_action);
  gtk_widget_class_install_action (widget_class, "win.torque", "s", torque_action);
  gtk_widget_class_add_binding (widget_class, GDK_KEY_slash, 0, slash_cb, NULL);
  gtk_widget_class_add_binding (widget_class, GDK_KEY_KP_Divide, 0, slash_cb, NULL);
}

void
hmui_window_update_actions (HmuiWindow *self)
{
  HmuiPlace *place = hmui_window_get_place (self);

  gtk_widget_action_set_enabled (GTK_WIDGET (self), "win.undo", hmui_place_can_undo (place));
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "win.redo", hmui_place_can_redo (place));
}

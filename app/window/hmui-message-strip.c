/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-message-strip.h"
#include "hmui-resource.h"

#define SHOWN_SECONDS 6

struct _HmuiMessageStrip
{
  GtkWidget parent_instance;
  GtkLabel *text;                 /* template children */
  GtkWidget *undo;
  guint timer;                    /* source id; 0: stays */
};

G_DEFINE_FINAL_TYPE (HmuiMessageStrip, hmui_message_strip, GTK_TYPE_WIDGET)

static gboolean
timer_cb (gpointer data)
{
  HmuiMessageStrip *self = data;

  self->timer = 0;
  gtk_widget_set_visible (GTK_WIDGET (self), FALSE);
  return G_SOURCE_REMOVE;
}

static void
hmui_message_strip_dispose (GObject *object)
{
  g_clear_handle_id (&HMUI_MESSAGE_STRIP (object)->timer, g_source_remove);
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_MESSAGE_STRIP);
  G_OBJECT_CLASS (hmui_message_strip_parent_class)->dispose (object);
}

static void
hmui_message_strip_class_init (HmuiMessageStripClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_message_strip_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_STATUS);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "window/hmui-message-strip.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiMessageStrip, text);
  gtk_widget_class_bind_template_child (widget_class, HmuiMessageStrip, undo);
  gtk_widget_class_bind_template_callback (widget_class, hmui_message_strip_hide);
}

static void
hmui_message_strip_init (HmuiMessageStrip *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  gtk_widget_set_visible (GTK_WIDGET (self), FALSE);
}

void
hmui_message_strip_say (HmuiMessageStrip *self, const char *text, gboolean can_undo)
{
  g_return_if_fail (HMUI_IS_MESSAGE_STRIP (self));
  g_clear_handle_id (&self->timer, g_source_remove);
  gtk_label_set_text (self->text, text);
  gtk_widget_set_visible (self->undo, can_undo);
  gtk_widget_set_visible (GTK_WIDGET (self), TRUE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, text, -1);
  if (can_undo)
    self->timer = g_timeout_add_seconds (SHOWN_SECONDS, timer_cb, self);
}

void
hmui_message_strip_hide (HmuiMessageStrip *self)
{
  g_return_if_fail (HMUI_IS_MESSAGE_STRIP (self));
  g_clear_handle_id (&self->timer, g_source_remove);
  gtk_widget_set_visible (GTK_WIDGET (self), FALSE);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-text-card.h"
#include "hmui-resource.h"

#define PAUSE_MS 800    /* without a key: then it is kept */

struct _HmuiTextCard
{
  GtkWidget parent_instance;
  GtkLabel *heading;              /* template children */
  GtkLabel *mirror;               /* the same text, unseen: a label knows its height, a text view learns it too late */
  GtkTextView *view;
  gboolean setting;               /* the program sets it, not the person */
  guint pause;                    /* source id; 0: nothing new */
};

enum { PROP_0, PROP_HEADING };

G_DEFINE_FINAL_TYPE (HmuiTextCard, hmui_text_card, GTK_TYPE_WIDGET)

static void
tell (HmuiTextCard *self)
{
  if (self->pause == 0)
    return;
  g_clear_handle_id (&self->pause, g_source_remove);
  g_signal_emit_by_name (self, "edited");
}

static gboolean
pause_cb (gpointer data)
{
  HmuiTextCard *self = data;

  self->pause = 0;
  g_signal_emit_by_name (self, "edited");
  return G_SOURCE_REMOVE;
}

static void
buffer_changed_cb (HmuiTextCard *self)
{
  g_autofree char *text = hmui_text_card_dup_text (self);

  gtk_label_set_text (self->mirror, text);
  if (self->setting)
    return;
  g_clear_handle_id (&self->pause, g_source_remove);
  self->pause = g_timeout_add (PAUSE_MS, pause_cb, self);
}

static void
hmui_text_card_set_property (GObject *object, guint id, const GValue *value, GParamSpec *pspec)
{
  HmuiTextCard *self = HMUI_TEXT_CARD (object);

  if (id == PROP_HEADING)
    {
      gtk_label_set_text (self->heading, g_value_get_string (value));
      gtk_accessible_update_property (GTK_ACCESSIBLE (self->view), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                      gtk_label_get_text (self->heading), -1);
    }
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
hmui_text_card_unmap (GtkWidget *widget)
{
  tell (HMUI_TEXT_CARD (widget));
  GTK_WIDGET_CLASS (hmui_text_card_parent_class)->unmap (widget);
}

static void
hmui_text_card_dispose (GObject *object)
{
  g_clear_handle_id (&HMUI_TEXT_CARD (object)->pause, g_source_remove);
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_TEXT_CARD);
  G_OBJECT_CLASS (hmui_text_card_parent_class)->dispose (object);
}

static void
hmui_text_card_class_init (HmuiTextCardClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  object_class->set_property = hmui_text_card_set_property;
  object_class->dispose = hmui_text_card_dispose;
  widget_class->unmap = hmui_text_card_unmap;
  g_object_class_install_property (object_class, PROP_HEADING,
    g_param_spec_string ("heading", NULL, NULL, "", G_PARAM_WRITABLE | G_PARAM_CONSTRUCT_ONLY | G_PARAM_STATIC_STRINGS));
  g_signal_new ("edited", HMUI_TYPE_TEXT_CARD, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "diagnose/hmui-text-card.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiTextCard, heading);
  gtk_widget_class_bind_template_child (widget_class, HmuiTextCard, mirror);
  gtk_widget_class_bind_template_child (widget_class, HmuiTextCard, view);
  gtk_widget_class_bind_template_callback (widget_class, tell);
}

static void
hmui_text_card_init (HmuiTextCard *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  g_signal_connect_object (gtk_text_view_get_buffer (self->view), "changed", G_CALLBACK (buffer_changed_cb), self,
                           G_CONNECT_SWAPPED);
}

void
hmui_text_card_set_text (HmuiTextCard *self, const char *text)
{
  g_return_if_fail (HMUI_IS_TEXT_CARD (self));
  self->setting = TRUE;
  gtk_text_buffer_set_text (gtk_text_view_get_buffer (self->view), text != NULL ? text : "", -1);
  self->setting = FALSE;
}

char *
hmui_text_card_dup_text (HmuiTextCard *self)
{
  GtkTextBuffer *buffer = gtk_text_view_get_buffer (self->view);
  GtkTextIter start, end;

  gtk_text_buffer_get_bounds (buffer, &start, &end);
  return gtk_text_buffer_get_text (buffer, &start, &end, FALSE);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-heading.h"

struct _HmuiHeading
{
  GtkWidget parent_instance;
  GtkWidget *label;               /* child */
};

enum { PROP_0, PROP_TEXT };

G_DEFINE_FINAL_TYPE (HmuiHeading, hmui_heading, GTK_TYPE_WIDGET)

static void
hmui_heading_get_property (GObject *object, guint id, GValue *value, GParamSpec *pspec)
{
  HmuiHeading *self = HMUI_HEADING (object);

  if (id == PROP_TEXT)
    g_value_set_string (value, gtk_label_get_text (GTK_LABEL (self->label)));
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
hmui_heading_set_property (GObject *object, guint id, const GValue *value, GParamSpec *pspec)
{
  if (id == PROP_TEXT)
    hmui_heading_set_text (HMUI_HEADING (object), g_value_get_string (value));
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
hmui_heading_dispose (GObject *object)
{
  g_clear_pointer (&HMUI_HEADING (object)->label, gtk_widget_unparent);
  G_OBJECT_CLASS (hmui_heading_parent_class)->dispose (object);
}

static void
hmui_heading_class_init (HmuiHeadingClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  object_class->get_property = hmui_heading_get_property;
  object_class->set_property = hmui_heading_set_property;
  object_class->dispose = hmui_heading_dispose;
  g_object_class_install_property (object_class, PROP_TEXT,
    g_param_spec_string ("text", NULL, NULL, "", G_PARAM_READWRITE | G_PARAM_STATIC_STRINGS));
  gtk_widget_class_set_css_name (widget_class, "heading");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_HEADING);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
}

static void
hmui_heading_init (HmuiHeading *self)
{
  self->label = gtk_label_new ("");
  gtk_label_set_xalign (GTK_LABEL (self->label), 0.0);
  gtk_label_set_wrap (GTK_LABEL (self->label), TRUE);
  gtk_label_set_wrap_mode (GTK_LABEL (self->label), PANGO_WRAP_WORD_CHAR);
  gtk_widget_set_parent (self->label, GTK_WIDGET (self));
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
}

void
hmui_heading_set_text (HmuiHeading *self, const char *text)
{
  g_return_if_fail (HMUI_IS_HEADING (self));
  gtk_label_set_text (GTK_LABEL (self->label), text != NULL ? text : "");
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, text != NULL ? text : "", -1);
  g_object_notify (G_OBJECT (self), "text");
}

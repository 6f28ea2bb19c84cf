/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-choice-card.h"
#include "hmui-resource.h"

struct _HmuiChoiceCard
{
  GtkToggleButton parent_instance;
  GtkImage *drawing;              /* template child */
  GtkLabel *name, *detail;        /* template children */
};

G_DEFINE_FINAL_TYPE (HmuiChoiceCard, hmui_choice_card, GTK_TYPE_TOGGLE_BUTTON)

static void
hmui_choice_card_dispose (GObject *object)
{
  gtk_widget_dispose_template (GTK_WIDGET (object), HMUI_TYPE_CHOICE_CARD);
  G_OBJECT_CLASS (hmui_choice_card_parent_class)->dispose (object);
}

static void
hmui_choice_card_class_init (HmuiChoiceCardClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_choice_card_dispose;
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "diagnose/hmui-choice-card.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiChoiceCard, drawing);
  gtk_widget_class_bind_template_child (widget_class, HmuiChoiceCard, name);
  gtk_widget_class_bind_template_child (widget_class, HmuiChoiceCard, detail);
}

static void
hmui_choice_card_init (HmuiChoiceCard *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hmui_choice_card_new (HmuiLine *line)
{
  HmuiChoiceCard *self = g_object_new (HMUI_TYPE_CHOICE_CARD, NULL);
  const char *detail = hmui_line_get_detail (line), *icon = hmui_line_get_key (line);

  gtk_label_set_text (self->name, hmui_line_get_title (line));
  gtk_label_set_text (self->detail, detail != NULL ? detail : "");
  gtk_widget_set_visible (GTK_WIDGET (self->detail), detail != NULL && detail[0] != '\0');
  gtk_widget_set_tooltip_text (GTK_WIDGET (self), hmui_line_get_value (line));
  gtk_image_set_from_icon_name (self->drawing, icon);
  gtk_widget_set_visible (GTK_WIDGET (self->drawing), icon != NULL);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, hmui_line_get_title (line),
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, detail != NULL ? detail : "", -1);
  return GTK_WIDGET (self);
}

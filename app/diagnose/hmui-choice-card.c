/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-choice-card.h"
#include "hmui-resource.h"

#define PLAIN_ICON "hm-diagnose-symbolic"   /* for what has no drawing of its own */
#define SMALL_ICON_SIZE 32                  /* px, beside a name alone */
#define LONE_NAME_CHARS 16                  /* least room of such a name */

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

static void
show_drawing (HmuiChoiceCard *self, const char *icon)
{
  GtkIconTheme *theme = gtk_icon_theme_get_for_display (gtk_widget_get_display (GTK_WIDGET (self)));

  gtk_widget_set_visible (GTK_WIDGET (self->drawing), icon != NULL);
  if (icon != NULL)
    gtk_image_set_from_icon_name (self->drawing, gtk_icon_theme_has_icon (theme, icon) ? icon : PLAIN_ICON);
}

GtkWidget *
hmui_choice_card_new (HmuiLine *line)
{
  HmuiChoiceCard *self = g_object_new (HMUI_TYPE_CHOICE_CARD, NULL);
  const char *detail = hmui_line_get_detail (line);
  gboolean has_detail = detail != NULL && detail[0] != '\0';

  gtk_label_set_text (self->name, hmui_line_get_title (line));
  gtk_label_set_text (self->detail, detail != NULL ? detail : "");
  gtk_widget_set_visible (GTK_WIDGET (self->detail), has_detail);
  if (!has_detail)
    {
      gtk_image_set_pixel_size (self->drawing, SMALL_ICON_SIZE);
      gtk_label_set_width_chars (self->name, LONE_NAME_CHARS);
    }
  gtk_widget_set_tooltip_text (GTK_WIDGET (self), hmui_line_get_value (line));
  show_drawing (self, hmui_line_get_key (line));
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, hmui_line_get_title (line),
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, detail != NULL ? detail : "", -1);
  return GTK_WIDGET (self);
}

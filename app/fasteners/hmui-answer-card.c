/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-answer-card.h"
#include "hmui-answer-line.h"
#include "hmui-heading.h"
#include "hmui-resource.h"
#include "hmui-widgets.h"

struct _HmuiAnswerCard
{
  GtkWidget parent_instance;
  /* template children */
  HmuiHeading *title;
  GtkLabel *note;
  GtkBox *rows;
};

G_DEFINE_FINAL_TYPE (HmuiAnswerCard, hmui_answer_card, GTK_TYPE_WIDGET)

static void
hmui_answer_card_dispose (GObject *object)
{
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_ANSWER_CARD);
  G_OBJECT_CLASS (hmui_answer_card_parent_class)->dispose (object);
}

/* To the first row that can be pressed, if there is one. */
static gboolean
hmui_answer_card_grab_focus (GtkWidget *widget)
{
  HmuiAnswerCard *self = HMUI_ANSWER_CARD (widget);

  for (GtkWidget *row = gtk_widget_get_first_child (GTK_WIDGET (self->rows)); row != NULL; row = gtk_widget_get_next_sibling (row))
    if (gtk_widget_grab_focus (row))
      return TRUE;
  return FALSE;
}

static void
hmui_answer_card_class_init (HmuiAnswerCardClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_answer_card_dispose;
  widget_class->grab_focus = hmui_answer_card_grab_focus;
  g_type_ensure (HMUI_TYPE_HEADING);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "fasteners/hmui-answer-card.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiAnswerCard, title);
  gtk_widget_class_bind_template_child (widget_class, HmuiAnswerCard, note);
  gtk_widget_class_bind_template_child (widget_class, HmuiAnswerCard, rows);
}

static void
hmui_answer_card_init (HmuiAnswerCard *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hmui_answer_card_new (HmuiAnswerPart *part, gboolean narrow)
{
  HmuiAnswerCard *self = g_object_new (HMUI_TYPE_ANSWER_CARD, NULL);
  const char *note = hmui_answer_part_get_note (part);

  hmui_heading_set_text (self->title, hmui_answer_part_get_title (part));
  gtk_label_set_text (self->note, note != NULL ? note : "");
  gtk_widget_set_visible (GTK_WIDGET (self->note), note != NULL);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, hmui_answer_part_get_title (part), -1);
  for (guint i = 0; i < hmui_answer_part_get_n (part); i++)
    gtk_box_append (self->rows, hmui_answer_line_new (hmui_answer_part_get_row (part, i), narrow));
  return GTK_WIDGET (self);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-step-row.h"
#include "hmui-draw.h"
#include <glib/gi18n-lib.h>

struct _HmuiStepRow
{
  GtkWidget parent_instance;
  GtkLabel *number_label;  /* template child */
  GtkLabel *text_label;    /* template child */
};
G_DEFINE_FINAL_TYPE (HmuiStepRow, hmui_step_row, GTK_TYPE_WIDGET)

static void
hmui_step_row_dispose (GObject *object)
{
  gtk_widget_dispose_template (GTK_WIDGET (object), HMUI_TYPE_STEP_ROW);
  hmui_draw_unparent_children (GTK_WIDGET (object));
  G_OBJECT_CLASS (hmui_step_row_parent_class)->dispose (object);
}

static void
hmui_step_row_class_init (HmuiStepRowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_step_row_dispose;
  gtk_widget_class_set_css_name (widget_class, "steprow");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_LIST_ITEM);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_WIDGETS_RESOURCE "hmui-step-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiStepRow, number_label);
  gtk_widget_class_bind_template_child (widget_class, HmuiStepRow, text_label);
}

static void
hmui_step_row_init (HmuiStepRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hmui_step_row_new (guint number, const char *text)
{
  HmuiStepRow *self = g_object_new (HMUI_TYPE_STEP_ROW, NULL);
  g_autofree char *figure = g_strdup_printf ("%u", number);
  /* Translators: a numbered instruction as a screen reader says it */
  g_autofree char *words = g_strdup_printf (_("%u: %s"), number, text);

  gtk_label_set_text (self->number_label, figure);
  gtk_label_set_text (self->text_label, text);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, words, -1);
  return GTK_WIDGET (self);
}

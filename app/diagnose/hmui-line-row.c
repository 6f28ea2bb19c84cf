/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-line-row.h"
#include "hmui-resource.h"

struct _HmuiLineRow
{
  GtkWidget parent_instance;
  GtkLabel *key, *title, *detail, *value;   /* template children */
};

G_DEFINE_FINAL_TYPE (HmuiLineRow, hmui_line_row, GTK_TYPE_WIDGET)

static void
hmui_line_row_dispose (GObject *object)
{
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_LINE_ROW);
  G_OBJECT_CLASS (hmui_line_row_parent_class)->dispose (object);
}

static void
hmui_line_row_class_init (HmuiLineRowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_line_row_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BOX_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "diagnose/hmui-line-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiLineRow, key);
  gtk_widget_class_bind_template_child (widget_class, HmuiLineRow, title);
  gtk_widget_class_bind_template_child (widget_class, HmuiLineRow, detail);
  gtk_widget_class_bind_template_child (widget_class, HmuiLineRow, value);
}

static void
hmui_line_row_init (HmuiLineRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

static void
set_or_hide (GtkLabel *label, const char *text)
{
  gtk_label_set_text (label, text != NULL ? text : "");
  gtk_widget_set_visible (GTK_WIDGET (label), text != NULL && text[0] != '\0');
}

GtkWidget *
hmui_line_row_new (HmuiLine *line)
{
  HmuiLineRow *self = g_object_new (HMUI_TYPE_LINE_ROW, NULL);

  set_or_hide (self->key, hmui_line_get_key (line));
  set_or_hide (self->title, hmui_line_get_title (line));
  set_or_hide (self->detail, hmui_line_get_detail (line));
  set_or_hide (self->value, hmui_line_get_value (line));
  return GTK_WIDGET (self);
}

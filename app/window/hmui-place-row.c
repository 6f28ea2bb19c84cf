/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-place-row.h"
#include "hmui-resource.h"

struct _HmuiPlaceRow
{
  GtkListBoxRow parent_instance;
  GtkImage *icon;                 /* template children */
  GtkLabel *title;
};

G_DEFINE_FINAL_TYPE (HmuiPlaceRow, hmui_place_row, GTK_TYPE_LIST_BOX_ROW)

static void
hmui_place_row_dispose (GObject *object)
{
  gtk_widget_dispose_template (GTK_WIDGET (object), HMUI_TYPE_PLACE_ROW);
  G_OBJECT_CLASS (hmui_place_row_parent_class)->dispose (object);
}

static void
hmui_place_row_class_init (HmuiPlaceRowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_place_row_dispose;
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "window/hmui-place-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiPlaceRow, icon);
  gtk_widget_class_bind_template_child (widget_class, HmuiPlaceRow, title);
}

static void
hmui_place_row_init (HmuiPlaceRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hmui_place_row_new (const char *title, const char *icon)
{
  HmuiPlaceRow *self = g_object_new (HMUI_TYPE_PLACE_ROW, NULL);

  gtk_label_set_text (self->title, title);
  gtk_image_set_from_icon_name (self->icon, icon);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, title, -1);
  return GTK_WIDGET (self);
}

void
hmui_place_row_set_narrow (HmuiPlaceRow *self, gboolean narrow)
{
  g_return_if_fail (HMUI_IS_PLACE_ROW (self));
  gtk_widget_set_visible (GTK_WIDGET (self->title), !narrow);
  gtk_widget_set_tooltip_text (GTK_WIDGET (self), narrow ? gtk_label_get_text (self->title) : NULL);
}

void
hmui_place_row_set_current (HmuiPlaceRow *self, gboolean current)
{
  g_return_if_fail (HMUI_IS_PLACE_ROW (self));
  if (current)
    gtk_widget_add_css_class (GTK_WIDGET (self), "current");
  else
    gtk_widget_remove_css_class (GTK_WIDGET (self), "current");
  gtk_accessible_update_state (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_STATE_SELECTED, current, -1);
}

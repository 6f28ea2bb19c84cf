/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-chart-button.h"
#include "hmui-resource.h"

struct _HmuiChartButton { GtkWidget parent_instance; };

G_DEFINE_FINAL_TYPE (HmuiChartButton, hmui_chart_button, GTK_TYPE_WIDGET)

static void
hmui_chart_button_dispose (GObject *object)
{
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_CHART_BUTTON);
  G_OBJECT_CLASS (hmui_chart_button_parent_class)->dispose (object);
}

static void
hmui_chart_button_class_init (HmuiChartButtonClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_chart_button_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "print/hmui-chart-button.ui");
}

static void
hmui_chart_button_init (HmuiChartButton *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hmui_chart_button_new (void)
{
  return g_object_new (HMUI_TYPE_CHART_BUTTON, NULL);
}

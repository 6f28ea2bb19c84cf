/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-cause-row.h"
#include "hmui-line-list.h"
#include "hmui-probability-row.h"
#include "hmui-resource.h"
#include "hmui-words.h"
#include <glib/gi18n.h>

struct _HmuiCauseRow
{
  GtkWidget parent_instance;
  HmuiWhyModel *model;            /* owned */
  guint cause;
  GtkToggleButton *button;        /* template children */
  HmuiProbabilityRow *row;
  HmuiLineList *reasons;
};

G_DEFINE_FINAL_TYPE (HmuiCauseRow, hmui_cause_row, GTK_TYPE_WIDGET)

static void
toggled_cb (HmuiCauseRow *self, GtkToggleButton *button)
{
  gboolean open = gtk_toggle_button_get_active (button);
  g_autoptr(GListModel) reasons = open ? hmui_why_model_make_reasons (self->model, self->cause) : NULL;

  hmui_line_list_set_model (self->reasons, reasons);
  gtk_widget_set_visible (GTK_WIDGET (self->reasons), open);
}

static void
hmui_cause_row_dispose (GObject *object)
{
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_CAUSE_ROW);
  g_clear_object (&HMUI_CAUSE_ROW (object)->model);
  G_OBJECT_CLASS (hmui_cause_row_parent_class)->dispose (object);
}

static void
hmui_cause_row_class_init (HmuiCauseRowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_cause_row_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "diagnose/hmui-cause-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiCauseRow, button);
  gtk_widget_class_bind_template_child (widget_class, HmuiCauseRow, row);
  gtk_widget_class_bind_template_child (widget_class, HmuiCauseRow, reasons);
  gtk_widget_class_bind_template_callback (widget_class, toggled_cb);
}

static void
hmui_cause_row_init (HmuiCauseRow *self)
{
  g_type_ensure (HMUI_TYPE_LINE_LIST);
  g_type_ensure (HMUI_TYPE_PROBABILITY_ROW);
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hmui_cause_row_new (HmuiWhyModel *model, guint cause, gboolean leading)
{
  HmuiCauseRow *self = g_object_new (HMUI_TYPE_CAUSE_ROW, NULL);
  const char *name = hmui_why_model_get_cause_name (model, cause);
  double probability = hmui_why_model_get_probability (model, cause);
  g_autofree char *percent = hmui_words_percent (probability);
  g_autofree char *label = g_strdup_printf (_("%s, %s"), name, percent);

  self->model = g_object_ref (model);
  self->cause = cause;
  hmui_probability_row_set (self->row, name, probability, leading);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->button), GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
  return GTK_WIDGET (self);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-torque-fact-row.h"
#include "hmui-provenance-chip.h"
#include "hmui-resource.h"

struct _HmuiTorqueFactRow
{
  GtkWidget parent_instance;
  GtkLabel *name_label, *value_label;   /* template children */
  HmuiProvenanceChip *chip;
};

G_DEFINE_FINAL_TYPE (HmuiTorqueFactRow, hmui_torque_fact_row, GTK_TYPE_WIDGET)

static void
hmui_torque_fact_row_dispose (GObject *object)
{
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_TORQUE_FACT_ROW);
  G_OBJECT_CLASS (hmui_torque_fact_row_parent_class)->dispose (object);
}

static void
hmui_torque_fact_row_class_init (HmuiTorqueFactRowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_torque_fact_row_dispose;
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "torque/hmui-torque-fact-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueFactRow, name_label);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueFactRow, value_label);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueFactRow, chip);
}

static void
hmui_torque_fact_row_init (HmuiTorqueFactRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  gtk_widget_set_visible (GTK_WIDGET (self), FALSE);
}

GtkWidget *
hmui_torque_fact_row_new (const char *name)
{
  HmuiTorqueFactRow *self = g_object_new (HMUI_TYPE_TORQUE_FACT_ROW, NULL);

  gtk_label_set_text (self->name_label, name);
  return GTK_WIDGET (self);
}

void
hmui_torque_fact_row_set (HmuiTorqueFactRow *self, const char *value, HmProvenance provenance)
{
  const char *name = gtk_label_get_text (self->name_label);
  g_autofree char *words = g_strdup_printf ("%s: %s", name, value != NULL ? value : "");

  gtk_widget_set_visible (GTK_WIDGET (self), value != NULL);
  gtk_label_set_text (self->value_label, value != NULL ? value : "");
  hmui_provenance_chip_set_provenance (self->chip, provenance);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, words, -1);
}

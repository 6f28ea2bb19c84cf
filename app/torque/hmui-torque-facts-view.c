/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-torque-facts-view.h"
#include "hmui-torque-fact-row.h"

struct _HmuiTorqueFactsView
{
  GtkWidget parent_instance;
  HmuiTorqueFactRow *rows[HMUI_TORQUE_N_FACTS];   /* children; NULL until the first use */
};

G_DEFINE_FINAL_TYPE (HmuiTorqueFactsView, hmui_torque_facts_view, GTK_TYPE_WIDGET)

static void
hmui_torque_facts_view_dispose (GObject *object)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (object))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (hmui_torque_facts_view_parent_class)->dispose (object);
}

static void
hmui_torque_facts_view_class_init (HmuiTorqueFactsViewClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = hmui_torque_facts_view_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BOX_LAYOUT);
}

static void
hmui_torque_facts_view_init (HmuiTorqueFactsView *self)
{
  GtkLayoutManager *layout = gtk_widget_get_layout_manager (GTK_WIDGET (self));

  gtk_orientable_set_orientation (GTK_ORIENTABLE (layout), GTK_ORIENTATION_VERTICAL);
  gtk_box_layout_set_spacing (GTK_BOX_LAYOUT (layout), 12);
}

static HmuiTorqueFactRow *
ensure_row (HmuiTorqueFactsView *self, HmuiTorqueModel *model, HmuiTorqueFact fact)
{
  g_autofree char *name = NULL;

  if (self->rows[fact] != NULL)
    return self->rows[fact];
  name = hmui_torque_model_dup_fact_label (model, fact);
  self->rows[fact] = HMUI_TORQUE_FACT_ROW (hmui_torque_fact_row_new (name));
  gtk_widget_set_parent (GTK_WIDGET (self->rows[fact]), GTK_WIDGET (self));
  return self->rows[fact];
}

void
hmui_torque_facts_view_refresh (HmuiTorqueFactsView *self, HmuiTorqueModel *model, HmuiTorqueFact first, HmuiTorqueFact last)
{
  gboolean any = FALSE;

  g_return_if_fail (HMUI_IS_TORQUE_FACTS_VIEW (self) && last < HMUI_TORQUE_N_FACTS);
  for (HmuiTorqueFact fact = first; fact <= last; fact++)
    {
      g_autofree char *value = hmui_torque_model_dup_fact (model, fact);
      HmProvenance provenance;

      if (hmui_torque_model_get_fact_provenance (model, fact, &provenance))
        hmui_torque_fact_row_set (ensure_row (self, model, fact), value, provenance);
      any = any || value != NULL;
    }
  gtk_widget_set_visible (GTK_WIDGET (self), any);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-fastener-table.h"
#include "hmui-fastener-row.h"
#include <glib/gi18n.h>

struct _HmuiFastenerTable
{
  GtkWidget parent_instance;
};

G_DEFINE_FINAL_TYPE (HmuiFastenerTable, hmui_fastener_table, GTK_TYPE_WIDGET)

static void
remove_rows (HmuiFastenerTable *self)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
}

static void
add_governs (HmuiFastenerTable *self)
{
  GtkWidget *label = gtk_label_new (_("The engine maker’s manual governs. Use these values only where you do not have it."));

  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_xalign (GTK_LABEL (label), 0.0);
  gtk_widget_add_css_class (label, "caution-text");
  gtk_widget_set_parent (label, GTK_WIDGET (self));
}

static void
hmui_fastener_table_dispose (GObject *object)
{
  remove_rows (HMUI_FASTENER_TABLE (object));
  G_OBJECT_CLASS (hmui_fastener_table_parent_class)->dispose (object);
}

static void
hmui_fastener_table_class_init (HmuiFastenerTableClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_fastener_table_dispose;
  gtk_widget_class_set_css_name (widget_class, "fasteners");
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BOX_LAYOUT);
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
}

static void
hmui_fastener_table_init (HmuiFastenerTable *self)
{
  GtkLayoutManager *layout = gtk_widget_get_layout_manager (GTK_WIDGET (self));

  gtk_orientable_set_orientation (GTK_ORIENTABLE (layout), GTK_ORIENTATION_VERTICAL);
  gtk_box_layout_set_spacing (GTK_BOX_LAYOUT (layout), 12);
}

void
hmui_fastener_table_show (HmuiFastenerTable *self, HmuiPrepareModel *model, GPtrArray *fasteners)
{
  g_autoptr(GtkSizeGroup) torques = gtk_size_group_new (GTK_SIZE_GROUP_HORIZONTAL);
  gboolean governs = FALSE;

  g_return_if_fail (HMUI_IS_FASTENER_TABLE (self));
  remove_rows (self);
  for (guint i = 0; i < fasteners->len; i++)
    {
      const HmFastener *fastener = g_ptr_array_index (fasteners, i);
      GtkWidget *row = hmui_fastener_row_new (model, fastener);
      HmTorqueAnswer answer;

      hmui_fastener_row_join (HMUI_FASTENER_ROW (row), torques);
      gtk_widget_set_parent (row, GTK_WIDGET (self));
      governs |= !hmui_prepare_model_get_torque (model, fastener, &answer)
                 || hm_provenance_manual_governs (answer.provenance);
    }
  if (governs)
    add_governs (self);
  gtk_widget_set_visible (GTK_WIDGET (self), fasteners->len > 0);
}

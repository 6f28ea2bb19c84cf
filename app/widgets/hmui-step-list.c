/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-step-list.h"
#include "hmui-draw.h"
#include "hmui-step-row.h"

struct _HmuiStepList
{
  GtkWidget parent_instance;
};
G_DEFINE_FINAL_TYPE (HmuiStepList, hmui_step_list, GTK_TYPE_WIDGET)

static void
hmui_step_list_dispose (GObject *object)
{
  hmui_draw_unparent_children (GTK_WIDGET (object));
  G_OBJECT_CLASS (hmui_step_list_parent_class)->dispose (object);
}

static void
hmui_step_list_class_init (HmuiStepListClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_step_list_dispose;
  gtk_widget_class_set_css_name (widget_class, "steplist");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_LIST);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BOX_LAYOUT);
}

static void
hmui_step_list_init (HmuiStepList *self)
{
  GtkLayoutManager *layout = gtk_widget_get_layout_manager (GTK_WIDGET (self));

  gtk_orientable_set_orientation (GTK_ORIENTABLE (layout), GTK_ORIENTATION_VERTICAL);
  gtk_box_layout_set_spacing (GTK_BOX_LAYOUT (layout), 12);
}

GtkWidget *
hmui_step_list_new (void)
{
  return g_object_new (HMUI_TYPE_STEP_LIST, NULL);
}

void
hmui_step_list_set_steps (HmuiStepList *self, const char * const *steps)
{
  g_return_if_fail (HMUI_IS_STEP_LIST (self));
  hmui_draw_unparent_children (GTK_WIDGET (self));
  for (guint i = 0; steps != NULL && steps[i] != NULL; i++)
    gtk_widget_set_parent (hmui_step_row_new (i + 1, hmui_translate (steps[i])), GTK_WIDGET (self));
}

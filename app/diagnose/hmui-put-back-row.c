/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-put-back-row.h"
#include "hmui-resource.h"

struct _HmuiPutBackRow
{
  GtkWidget parent_instance;
  HmuiRepairModel *model;         /* owned */
  HmuiLine *line;                 /* owned */
  GtkCheckButton *check;          /* template children */
  GtkLabel *title, *detail;
};

G_DEFINE_FINAL_TYPE (HmuiPutBackRow, hmui_put_back_row, GTK_TYPE_WIDGET)

static void
toggled_cb (HmuiPutBackRow *self)
{
  if (self->model == NULL)
    return;
  hmui_repair_model_set_ticked (self->model, self->line, gtk_check_button_get_active (self->check));
  g_signal_emit_by_name (self, "ticked");
}

static void
hmui_put_back_row_dispose (GObject *object)
{
  HmuiPutBackRow *self = HMUI_PUT_BACK_ROW (object);

  g_clear_object (&self->model);
  g_clear_object (&self->line);
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_PUT_BACK_ROW);
  G_OBJECT_CLASS (hmui_put_back_row_parent_class)->dispose (object);
}

static void
hmui_put_back_row_class_init (HmuiPutBackRowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_put_back_row_dispose;
  g_signal_new ("ticked", HMUI_TYPE_PUT_BACK_ROW, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "diagnose/hmui-put-back-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiPutBackRow, check);
  gtk_widget_class_bind_template_child (widget_class, HmuiPutBackRow, title);
  gtk_widget_class_bind_template_child (widget_class, HmuiPutBackRow, detail);
  gtk_widget_class_bind_template_callback (widget_class, toggled_cb);
}

static void
hmui_put_back_row_init (HmuiPutBackRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hmui_put_back_row_new (HmuiRepairModel *model, HmuiLine *line)
{
  HmuiPutBackRow *self = g_object_new (HMUI_TYPE_PUT_BACK_ROW, NULL);
  const char *detail = hmui_line_get_detail (line);

  gtk_label_set_text (self->title, hmui_line_get_title (line));
  gtk_label_set_text (self->detail, detail != NULL ? detail : "");
  gtk_widget_set_visible (GTK_WIDGET (self->detail), detail != NULL && detail[0] != '\0');
  gtk_check_button_set_active (self->check, hmui_repair_model_get_ticked (model, line));
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->check), GTK_ACCESSIBLE_PROPERTY_LABEL, hmui_line_get_title (line),
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, detail != NULL ? detail : "", -1);
  self->model = g_object_ref (model);
  self->line = g_object_ref (line);
  return GTK_WIDGET (self);
}

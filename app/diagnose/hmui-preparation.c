/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-preparation.h"
#include "hmui-access-card.h"
#include "hmui-fact-row.h"
#include "hmui-resource.h"

struct _HmuiPreparation
{
  GtkWidget parent_instance;
  HmuiPrepareModel *model;        /* owned */
  /* template children */
  HmuiFactRow *tools, *shut, *open;
  GtkExpander *how;
  GtkBox *cards;
  gboolean filled;                /* the cards are those of the model */
};

G_DEFINE_FINAL_TYPE (HmuiPreparation, hmui_preparation, GTK_TYPE_WIDGET)

static void
remove_cards (HmuiPreparation *self)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self->cards))) != NULL)
    gtk_box_remove (self->cards, child);
  self->filled = FALSE;
}

/* Drawings and tables are made only for those who open it. */
static void
how_expanded_cb (HmuiPreparation *self)
{
  GPtrArray *opening;

  if (self->filled || !gtk_expander_get_expanded (self->how))
    return;
  opening = hmui_prepare_model_get_opening (self->model);
  for (guint i = 0; i < opening->len; i++)
    gtk_box_append (self->cards, hmui_access_card_new (self->model, g_ptr_array_index (opening, i)));
  self->filled = TRUE;
}

static void
hmui_preparation_dispose (GObject *object)
{
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_PREPARATION);
  g_clear_object (&HMUI_PREPARATION (object)->model);
  G_OBJECT_CLASS (hmui_preparation_parent_class)->dispose (object);
}

static void
hmui_preparation_class_init (HmuiPreparationClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_preparation_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "diagnose/hmui-preparation.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiPreparation, tools);
  gtk_widget_class_bind_template_child (widget_class, HmuiPreparation, shut);
  gtk_widget_class_bind_template_child (widget_class, HmuiPreparation, open);
  gtk_widget_class_bind_template_child (widget_class, HmuiPreparation, how);
  gtk_widget_class_bind_template_child (widget_class, HmuiPreparation, cards);
  gtk_widget_class_bind_template_callback (widget_class, how_expanded_cb);
}

static void
hmui_preparation_init (HmuiPreparation *self)
{
  g_type_ensure (HMUI_TYPE_FACT_ROW);
  gtk_widget_init_template (GTK_WIDGET (self));
}

void
hmui_preparation_show (HmuiPreparation *self, HmuiPrepareModel *model)
{
  g_autofree char *tools = hmui_prepare_model_dup_tools (model);
  g_autofree char *shut = hmui_prepare_model_dup_shut (model);
  g_autofree char *open = hmui_prepare_model_dup_open (model);

  g_return_if_fail (HMUI_IS_PREPARATION (self));
  g_set_object (&self->model, model);
  hmui_fact_row_set_value (self->tools, tools);
  hmui_fact_row_set_value (self->shut, shut);
  hmui_fact_row_set_value (self->open, open);
  remove_cards (self);
  gtk_widget_set_visible (GTK_WIDGET (self->how), open != NULL);
  how_expanded_cb (self);
  gtk_widget_set_visible (GTK_WIDGET (self), tools != NULL || shut != NULL || open != NULL);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-torque-page.h"
#include "hmui-load-view.h"
#include "hmui-order-card.h"
#include "hmui-resource.h"
#include "hmui-torque-columns.h"
#include "hmui-torque-facts-view.h"
#include "hmui-torque-form.h"
#include "hmui-torque-headline.h"
#include "hmui-widgets.h"
#include "hmui-wrench-card.h"
#include <glib/gi18n.h>

struct _HmuiTorquePage
{
  GtkWidget parent_instance;
  HmuiTorqueModel *model;         /* owned */
  HmuiOrderModel *order_model;    /* owned */
  /* template children */
  HmuiTorqueForm *form;
  HmuiTorqueHeadline *headline;
  HmuiLoadView *loads;
  GtkLabel *limit, *span;
  GtkWidget *limit_card, *why_card;
  HmuiTorqueFactsView *wrench_facts, *why_facts;
  HmuiWrenchCard *wrenches;
  HmuiOrderCard *order;
};

G_DEFINE_FINAL_TYPE (HmuiTorquePage, hmui_torque_page, GTK_TYPE_WIDGET)

static void
show_optional (GtkLabel *label, const char *text)
{
  gtk_label_set_text (label, text != NULL ? text : "");
  gtk_widget_set_visible (GTK_WIDGET (label), text != NULL);
}

static void
show_limit (HmuiTorquePage *self)
{
  HmFormat format = hmui_settings_get_format (hmui_torque_model_get_settings (self->model));
  const HmTightening *tightening = hmui_torque_model_get_tightening (self->model);
  g_autofree char *limit = hmui_torque_model_dup_limit (self->model);
  g_autofree char *span = hmui_torque_model_dup_span (self->model);

  show_optional (self->limit, limit);
  show_optional (self->span, span);
  hmui_load_view_set (self->loads, tightening, &format);
  gtk_widget_set_visible (self->limit_card, limit != NULL || span != NULL || tightening != NULL);
}

static void
model_changed_cb (HmuiTorquePage *self)
{
  HmTorque full = { 0.0 };

  hmui_torque_form_refresh (self->form);
  hmui_torque_headline_refresh (self->headline, self->model);
  show_limit (self);
  hmui_torque_facts_view_refresh (self->wrench_facts, self->model, HMUI_TORQUE_FACT_SETTING, HMUI_TORQUE_FACT_WRENCH);
  hmui_torque_facts_view_refresh (self->why_facts, self->model, HMUI_TORQUE_FACT_COMPUTED, HMUI_TORQUE_FACT_FRICTION);
  gtk_widget_set_visible (self->why_card, gtk_widget_get_visible (GTK_WIDGET (self->why_facts)));
  if (!hmui_torque_model_get_torque (self->model, &full))
    full = (HmTorque) { 0.0 };
  hmui_order_model_set_torque (self->order_model, full);
}

static void
removed_cb (HmuiTorquePage *self, const char *line)
{
  g_autofree char *text = g_strdup_printf (_("Taken out: %s"), line);

  g_signal_emit_by_name (self, "message", text, TRUE);
}

static gboolean
hmui_torque_page_grab_focus (GtkWidget *widget)
{
  return gtk_widget_grab_focus (GTK_WIDGET (HMUI_TORQUE_PAGE (widget)->form));
}

static void
hmui_torque_page_dispose (GObject *object)
{
  HmuiTorquePage *self = HMUI_TORQUE_PAGE (object);

  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_TORQUE_PAGE);
  g_clear_object (&self->model);
  g_clear_object (&self->order_model);
  G_OBJECT_CLASS (hmui_torque_page_parent_class)->dispose (object);
}

static void
hmui_torque_page_class_init (HmuiTorquePageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_torque_page_dispose;
  widget_class->grab_focus = hmui_torque_page_grab_focus;
  g_signal_new ("message", HMUI_TYPE_TORQUE_PAGE, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 2,
                G_TYPE_STRING, G_TYPE_BOOLEAN);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "torque/hmui-torque-page.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiTorquePage, form);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorquePage, headline);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorquePage, loads);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorquePage, limit);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorquePage, span);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorquePage, limit_card);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorquePage, why_card);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorquePage, wrench_facts);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorquePage, why_facts);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorquePage, wrenches);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorquePage, order);
}

static void
hmui_torque_page_init (HmuiTorquePage *self)
{
  hmui_widgets_ensure_types ();
  g_type_ensure (HMUI_TYPE_LOAD_VIEW);
  g_type_ensure (HMUI_TYPE_ORDER_CARD);
  g_type_ensure (HMUI_TYPE_TORQUE_COLUMNS);
  g_type_ensure (HMUI_TYPE_TORQUE_FACTS_VIEW);
  g_type_ensure (HMUI_TYPE_TORQUE_FORM);
  g_type_ensure (HMUI_TYPE_TORQUE_HEADLINE);
  g_type_ensure (HMUI_TYPE_WRENCH_CARD);
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hmui_torque_page_new (HmuiTorqueModel *model, HmuiOrderModel *order, HmuiWrenchDrawer *drawer)
{
  HmuiTorquePage *self = g_object_new (HMUI_TYPE_TORQUE_PAGE, NULL);

  self->model = g_object_ref (model);
  self->order_model = g_object_ref (order);
  hmui_torque_form_set_model (self->form, model);
  hmui_order_card_set_model (self->order, order);
  hmui_wrench_card_set_drawer (self->wrenches, drawer);
  g_signal_connect_object (self->wrenches, "removed", G_CALLBACK (removed_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (model, "changed", G_CALLBACK (model_changed_cb), self, G_CONNECT_SWAPPED);
  model_changed_cb (self);
  return GTK_WIDGET (self);
}

void
hmui_torque_page_set_given (HmuiTorquePage *self, const char *text)
{
  hmui_torque_form_set_given (self->form, text);
}

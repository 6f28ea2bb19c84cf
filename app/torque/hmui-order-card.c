/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-order-card.h"
#include "hmui-pattern-view.h"
#include "hmui-provenance-chip.h"
#include "hmui-resource.h"
#include "hmui-torque-chooser.h"
#include <glib/gi18n.h>

#define HIGH 280   /* px of the drawing */
#define LOW 150    /* bolts in line */

struct _HmuiOrderCard
{
  GtkWidget parent_instance;
  HmuiOrderModel *model;          /* owned */
  /* template children */
  HmuiTorqueChooser *layout, *scheme;
  GtkSpinButton *bolts;
  HmuiPatternView *view;
  GtkBox *passes;
  GtkLabel *note;
  HmuiProvenanceChip *chip;
};

G_DEFINE_FINAL_TYPE (HmuiOrderCard, hmui_order_card, GTK_TYPE_WIDGET)

static void
layout_cb (HmuiOrderCard *self, guint index)
{
  hmui_order_model_set_layout (self->model, index);
}

static void
scheme_cb (HmuiOrderCard *self, guint index)
{
  hmui_order_model_set_scheme (self->model, index);
}

static void
bolts_cb (HmuiOrderCard *self)
{
  if (self->model != NULL)
    hmui_order_model_set_bolts (self->model, (guint) gtk_spin_button_get_value_as_int (self->bolts));
}

static void
draw_order (HmuiOrderCard *self, const char * const *shares)
{
  const HmSequence *sequence = hmui_order_model_get_sequence (self->model);
  HmuiPatternPoint points[HM_SEQUENCE_MAX_BOLTS];

  for (guint i = 0; i < sequence->n_bolts; i++)
    points[i] = (HmuiPatternPoint) { sequence->bolts[i].x, sequence->bolts[i].y, sequence->bolts[i].order };
  hmui_pattern_view_set_points (self->view, hmui_order_model_get_pattern (self->model), points, sequence->n_bolts, shares,
                                g_strv_length ((GStrv) shares));
  gtk_widget_set_size_request (GTK_WIDGET (self->view), -1, sequence->layout == HM_LAYOUT_INLINE ? LOW : HIGH);
}

static void
list_passes (HmuiOrderCard *self, const char * const *passes)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self->passes))) != NULL)
    gtk_box_remove (self->passes, child);
  for (guint i = 0; passes[i] != NULL; i++)
    {
      g_autofree char *text = g_strdup_printf (_("Pass %u: %s"), i + 1, passes[i]);
      GtkWidget *label = gtk_label_new (text);

      gtk_label_set_xalign (GTK_LABEL (label), 0.0);
      gtk_label_set_wrap (GTK_LABEL (label), TRUE);
      gtk_widget_add_css_class (label, "numeric");
      gtk_box_append (self->passes, label);
    }
}

static void
refresh (HmuiOrderCard *self)
{
  g_auto(GStrv) layouts = hmui_order_model_dup_layouts (self->model);
  g_auto(GStrv) schemes = hmui_order_model_dup_schemes (self->model);
  g_auto(GStrv) shares = hmui_order_model_dup_passes (self->model, FALSE);
  g_auto(GStrv) passes = hmui_order_model_dup_passes (self->model, TRUE);
  g_autofree char *note = hmui_order_model_dup_note (self->model);
  HmProvenance provenance;
  gboolean has_source = hmui_order_model_get_provenance (self->model, &provenance);

  hmui_torque_chooser_set (self->layout, (const char * const *) layouts, hmui_order_model_get_layout (self->model));
  if (schemes[0] != NULL)
    hmui_torque_chooser_set (self->scheme, (const char * const *) schemes, hmui_order_model_get_scheme (self->model));
  gtk_widget_set_visible (GTK_WIDGET (self->chip), has_source);
  if (has_source)
    hmui_provenance_chip_set_provenance (self->chip, provenance);
  draw_order (self, (const char * const *) shares);
  list_passes (self, (const char * const *) passes);
  gtk_label_set_text (self->note, note);
}

static void
hmui_order_card_dispose (GObject *object)
{
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_ORDER_CARD);
  g_clear_object (&HMUI_ORDER_CARD (object)->model);
  G_OBJECT_CLASS (hmui_order_card_parent_class)->dispose (object);
}

static void
hmui_order_card_class_init (HmuiOrderCardClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_order_card_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "torque/hmui-order-card.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiOrderCard, layout);
  gtk_widget_class_bind_template_child (widget_class, HmuiOrderCard, scheme);
  gtk_widget_class_bind_template_child (widget_class, HmuiOrderCard, bolts);
  gtk_widget_class_bind_template_child (widget_class, HmuiOrderCard, view);
  gtk_widget_class_bind_template_child (widget_class, HmuiOrderCard, passes);
  gtk_widget_class_bind_template_child (widget_class, HmuiOrderCard, note);
  gtk_widget_class_bind_template_child (widget_class, HmuiOrderCard, chip);
  gtk_widget_class_bind_template_callback (widget_class, layout_cb);
  gtk_widget_class_bind_template_callback (widget_class, scheme_cb);
  gtk_widget_class_bind_template_callback (widget_class, bolts_cb);
}

static void
hmui_order_card_init (HmuiOrderCard *self)
{
  g_type_ensure (HMUI_TYPE_PATTERN_VIEW);
  g_type_ensure (HMUI_TYPE_PROVENANCE_CHIP);
  g_type_ensure (HMUI_TYPE_TORQUE_CHOOSER);
  gtk_widget_init_template (GTK_WIDGET (self));
}

void
hmui_order_card_set_model (HmuiOrderCard *self, HmuiOrderModel *model)
{
  g_return_if_fail (HMUI_IS_ORDER_CARD (self) && self->model == NULL);
  self->model = g_object_ref (model);
  g_signal_connect_object (model, "changed", G_CALLBACK (refresh), self, G_CONNECT_SWAPPED);
  refresh (self);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-remedy-card.h"
#include "hmui-fact-row.h"
#include "hmui-provenance-chip.h"
#include "hmui-resource.h"
#include "hmui-step-list.h"
#include "hmui-tr.h"
#include "hmui-words.h"

struct _HmuiRemedyCard
{
  GtkWidget parent_instance;
  GtkLabel *name;                 /* template children */
  HmuiFactRow *parts, *time;
  HmuiProvenanceChip *source;
  HmuiStepList *steps;
};

G_DEFINE_FINAL_TYPE (HmuiRemedyCard, hmui_remedy_card, GTK_TYPE_WIDGET)

static void
hmui_remedy_card_dispose (GObject *object)
{
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_REMEDY_CARD);
  G_OBJECT_CLASS (hmui_remedy_card_parent_class)->dispose (object);
}

static void
hmui_remedy_card_class_init (HmuiRemedyCardClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_remedy_card_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "diagnose/hmui-remedy-card.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiRemedyCard, name);
  gtk_widget_class_bind_template_child (widget_class, HmuiRemedyCard, parts);
  gtk_widget_class_bind_template_child (widget_class, HmuiRemedyCard, time);
  gtk_widget_class_bind_template_child (widget_class, HmuiRemedyCard, source);
  gtk_widget_class_bind_template_child (widget_class, HmuiRemedyCard, steps);
}

static void
hmui_remedy_card_init (HmuiRemedyCard *self)
{
  g_type_ensure (HMUI_TYPE_FACT_ROW);
  g_type_ensure (HMUI_TYPE_PROVENANCE_CHIP);
  g_type_ensure (HMUI_TYPE_STEP_LIST);
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hmui_remedy_card_new (const HmRemedy *remedy, gboolean titled)
{
  HmuiRemedyCard *self = g_object_new (HMUI_TYPE_REMEDY_CARD, NULL);
  g_autoptr(GString) parts = g_string_new (NULL);
  g_autofree char *time = hmui_words_minutes (remedy->time.minutes);

  for (guint i = 0; remedy->parts[i] != NULL; i++)
    g_string_append_printf (parts, "%s%s", i > 0 ? " · " : "", hmui_tr (remedy->parts[i]));
  gtk_label_set_text (self->name, hmui_tr (remedy->name));
  gtk_widget_set_visible (GTK_WIDGET (self->name), titled);
  hmui_fact_row_set_value (self->parts, parts->len > 0 ? parts->str : NULL);
  hmui_fact_row_set_value (self->time, time);
  hmui_provenance_chip_set_provenance (self->source, remedy->provenance);
  hmui_step_list_set_steps (self->steps, remedy->steps);
  return GTK_WIDGET (self);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-access-card.h"
#include "hmui-fastener-table.h"
#include "hmui-resource.h"
#include "hmui-step-list.h"
#include "hmui-tr.h"
#include "hmui-words.h"
#include <glib/gi18n.h>

struct _HmuiAccessCard
{
  GtkWidget parent_instance;
  GtkLabel *name, *photo;         /* template children */
  HmuiStepList *steps;
  HmuiFastenerTable *fasteners;
};

G_DEFINE_FINAL_TYPE (HmuiAccessCard, hmui_access_card, GTK_TYPE_WIDGET)

static void
hmui_access_card_dispose (GObject *object)
{
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_ACCESS_CARD);
  G_OBJECT_CLASS (hmui_access_card_parent_class)->dispose (object);
}

static void
hmui_access_card_class_init (HmuiAccessCardClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_access_card_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "diagnose/hmui-access-card.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiAccessCard, name);
  gtk_widget_class_bind_template_child (widget_class, HmuiAccessCard, photo);
  gtk_widget_class_bind_template_child (widget_class, HmuiAccessCard, steps);
  gtk_widget_class_bind_template_child (widget_class, HmuiAccessCard, fasteners);
}

static void
hmui_access_card_init (HmuiAccessCard *self)
{
  g_type_ensure (HMUI_TYPE_FASTENER_TABLE);
  g_type_ensure (HMUI_TYPE_STEP_LIST);
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hmui_access_card_new (HmuiPrepareModel *model, const HmAccessStep *step)
{
  HmuiAccessCard *self = g_object_new (HMUI_TYPE_ACCESS_CARD, NULL);
  g_autofree char *minutes = hmui_words_minutes (step->open.minutes);
  g_autofree char *name = g_strdup_printf (_("%s · %s"), hmui_tr (step->name), minutes);
  g_autofree char *photo = step->photo != NULL ? g_strdup_printf (_("Take a picture first: %s"), hmui_tr (step->photo)) : NULL;
  g_autoptr(GPtrArray) fasteners = g_ptr_array_new ();

  for (guint i = 0; step->fasteners[i] != NULL; i++)
    g_ptr_array_add (fasteners, (gpointer) step->fasteners[i]);
  gtk_label_set_text (self->name, name);
  gtk_label_set_text (self->photo, photo != NULL ? photo : "");
  gtk_widget_set_visible (GTK_WIDGET (self->photo), photo != NULL);
  hmui_step_list_set_steps (self->steps, step->steps);
  hmui_fastener_table_show (self->fasteners, model, fasteners);
  return GTK_WIDGET (self);
}

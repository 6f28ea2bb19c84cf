/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-caution-list.h"
#include "hmui-caution-card.h"
#include "hmui-resource.h"
#include "hmui-tr.h"
#include <glib/gi18n.h>

/* What ties a card to its caution. */
typedef struct { const HmCaution *caution; HmuiCautionCard *card; } Shown;   /* both borrowed */

struct _HmuiCautionList
{
  GtkWidget parent_instance;
  HmuiPrepareModel *model;        /* owned */
  GArray *shown;                  /* owned; of Shown */
  GtkBox *cards, *held_cards;     /* template children */
  GtkExpander *held;
};

G_DEFINE_FINAL_TYPE (HmuiCautionList, hmui_caution_list, GTK_TYPE_WIDGET)

static void
acknowledged_cb (HmuiCautionList *self, GParamSpec *pspec, HmuiCautionCard *card)
{
  for (guint i = 0; i < self->shown->len; i++)
    {
      Shown *shown = &g_array_index (self->shown, Shown, i);

      if (shown->card == card)
        hmui_prepare_model_set_acknowledged (self->model, shown->caution, hmui_caution_card_get_acknowledged (card));
    }
  g_signal_emit_by_name (self, "released");
}

/* A danger that was acknowledged at an earlier step still holds: it is named, and its card opens in place. */
static void
add_card (HmuiCautionList *self, const HmCaution *caution)
{
  GtkWidget *card = hmui_caution_card_new ();
  Shown shown = { caution, HMUI_CAUTION_CARD (card) };
  gboolean done = hmui_prepare_model_get_acknowledged (self->model, caution);

  hmui_caution_card_set_caution (shown.card, caution);
  hmui_caution_card_set_acknowledged (shown.card, done);
  gtk_box_append (caution->serious && done ? self->held_cards : self->cards, card);
  g_array_append_val (self->shown, shown);
  if (caution->serious)
    g_signal_connect_object (card, "notify::acknowledged", G_CALLBACK (acknowledged_cb), self, G_CONNECT_SWAPPED);
}

static void
remove_all (GtkBox *box)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (box))) != NULL)
    gtk_box_remove (box, child);
}

static void
show_held (HmuiCautionList *self)
{
  g_autoptr(GString) names = g_string_new (NULL);
  g_autofree char *label = NULL;

  for (guint i = 0; i < self->shown->len; i++)
    {
      Shown *shown = &g_array_index (self->shown, Shown, i);

      if (gtk_widget_is_ancestor (GTK_WIDGET (shown->card), GTK_WIDGET (self->held_cards)))
        g_string_append_printf (names, "%s%s", names->len > 0 ? " · " : "", hmui_tr (shown->caution->name));
    }
  label = g_strdup_printf (_("Still holds: %s"), names->str);
  gtk_label_set_text (GTK_LABEL (gtk_expander_get_label_widget (self->held)), label);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->held), GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
  gtk_widget_set_visible (GTK_WIDGET (self->held), names->len > 0);
  gtk_expander_set_expanded (self->held, FALSE);
}

static void
make_cards (HmuiCautionList *self, GPtrArray *cautions)
{
  remove_all (self->cards);
  remove_all (self->held_cards);
  g_array_set_size (self->shown, 0);
  for (guint i = 0; i < cautions->len; i++)
    add_card (self, g_ptr_array_index (cautions, i));
  show_held (self);
}

static gboolean
are_shown (HmuiCautionList *self, GPtrArray *cautions)
{
  if (self->shown->len != cautions->len)
    return FALSE;
  for (guint i = 0; i < cautions->len; i++)
    if (g_array_index (self->shown, Shown, i).caution != g_ptr_array_index (cautions, i))
      return FALSE;
  return TRUE;
}

static void
hmui_caution_list_dispose (GObject *object)
{
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_CAUTION_LIST);
  g_clear_object (&HMUI_CAUTION_LIST (object)->model);
  G_OBJECT_CLASS (hmui_caution_list_parent_class)->dispose (object);
}

static void
hmui_caution_list_finalize (GObject *object)
{
  g_array_unref (HMUI_CAUTION_LIST (object)->shown);
  G_OBJECT_CLASS (hmui_caution_list_parent_class)->finalize (object);
}

static void
hmui_caution_list_class_init (HmuiCautionListClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_caution_list_dispose;
  G_OBJECT_CLASS (klass)->finalize = hmui_caution_list_finalize;
  g_signal_new ("released", HMUI_TYPE_CAUTION_LIST, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "diagnose/hmui-caution-list.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiCautionList, cards);
  gtk_widget_class_bind_template_child (widget_class, HmuiCautionList, held_cards);
  gtk_widget_class_bind_template_child (widget_class, HmuiCautionList, held);
}

static void
hmui_caution_list_init (HmuiCautionList *self)
{
  self->shown = g_array_new (FALSE, FALSE, sizeof (Shown));
  gtk_widget_init_template (GTK_WIDGET (self));
}

void
hmui_caution_list_show (HmuiCautionList *self, HmuiPrepareModel *model, gboolean is_new)
{
  GPtrArray *cautions = hmui_prepare_model_get_cautions (model);

  g_return_if_fail (HMUI_IS_CAUTION_LIST (self));
  g_set_object (&self->model, model);
  if (is_new || !are_shown (self, cautions))
    make_cards (self, cautions);
  for (guint i = 0; i < self->shown->len; i++)
    {
      Shown *shown = &g_array_index (self->shown, Shown, i);

      hmui_caution_card_set_acknowledged (shown->card, hmui_prepare_model_get_acknowledged (model, shown->caution));
    }
  gtk_widget_set_visible (GTK_WIDGET (self), cautions->len > 0);
}

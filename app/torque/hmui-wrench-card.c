/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-wrench-card.h"
#include "hmui-resource.h"
#include "hmui-torque-field.h"
#include <glib/gi18n.h>

struct _HmuiWrenchCard
{
  GtkWidget parent_instance;
  HmuiWrenchDrawer *drawer;       /* owned */
  GtkBox *rows;                   /* template children */
  HmuiTorqueField *entry;
};

G_DEFINE_FINAL_TYPE (HmuiWrenchCard, hmui_wrench_card, GTK_TYPE_WIDGET)

static void
typed_cb (HmuiWrenchCard *self)
{
  hmui_torque_field_set_error (self->entry, NULL, TRUE);
}

static void
add_cb (HmuiWrenchCard *self)
{
  g_autoptr(GError) error = NULL;

  if (hmui_wrench_drawer_add (self->drawer, hmui_torque_field_get_text (self->entry), &error))
    hmui_torque_field_set_text (self->entry, "");
  else
    hmui_torque_field_set_error (self->entry, error->message, TRUE);
  gtk_widget_grab_focus (GTK_WIDGET (self->entry));
}

/* Which row a button stands in. */
static void
take_out_cb (HmuiWrenchCard *self, GtkWidget *button)
{
  GtkWidget *row = gtk_widget_get_first_child (GTK_WIDGET (self->rows));
  guint index = 0;
  g_autofree char *line = NULL;

  while (row != NULL && row != gtk_widget_get_parent (button))
    {
      row = gtk_widget_get_next_sibling (row);
      index++;
    }
  g_return_if_fail (row != NULL);
  line = hmui_wrench_drawer_dup_line (self->drawer, index);
  gtk_widget_grab_focus (GTK_WIDGET (self->entry));
  hmui_wrench_drawer_remove (self->drawer, index);
  g_signal_emit_by_name (self, "removed", line);
}

static GtkWidget *
make_row (HmuiWrenchCard *self, guint index)
{
  g_autofree char *line = hmui_wrench_drawer_dup_line (self->drawer, index);
  /* Translators: takes a wrench out of the list of those owned */
  g_autofree char *name = g_strdup_printf (_("Take out %s"), line);
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6), *label = gtk_label_new (line);
  GtkWidget *button = gtk_button_new_with_label (_("Take out"));

  gtk_label_set_xalign (GTK_LABEL (label), 0.0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_widget_set_hexpand (label, TRUE);
  gtk_widget_add_css_class (label, "numeric");
  gtk_widget_add_css_class (button, "quiet-button");
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  g_signal_connect_object (button, "clicked", G_CALLBACK (take_out_cb), self, G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (row), label);
  gtk_box_append (GTK_BOX (row), button);
  return row;
}

static void
refresh (HmuiWrenchCard *self)
{
  GtkWidget *child;
  guint n;

  hmui_wrench_drawer_get_wrenches (self->drawer, &n);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self->rows))) != NULL)
    gtk_box_remove (self->rows, child);
  for (guint i = 0; i < n; i++)
    gtk_box_append (self->rows, make_row (self, i));
}

static void
hmui_wrench_card_dispose (GObject *object)
{
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_WRENCH_CARD);
  g_clear_object (&HMUI_WRENCH_CARD (object)->drawer);
  G_OBJECT_CLASS (hmui_wrench_card_parent_class)->dispose (object);
}

static void
hmui_wrench_card_class_init (HmuiWrenchCardClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_wrench_card_dispose;
  g_signal_new ("removed", HMUI_TYPE_WRENCH_CARD, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 1, G_TYPE_STRING);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "torque/hmui-wrench-card.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiWrenchCard, rows);
  gtk_widget_class_bind_template_child (widget_class, HmuiWrenchCard, entry);
  gtk_widget_class_bind_template_callback (widget_class, typed_cb);
  gtk_widget_class_bind_template_callback (widget_class, add_cb);
}

static void
hmui_wrench_card_init (HmuiWrenchCard *self)
{
  g_type_ensure (HMUI_TYPE_TORQUE_FIELD);
  gtk_widget_init_template (GTK_WIDGET (self));
}

void
hmui_wrench_card_set_drawer (HmuiWrenchCard *self, HmuiWrenchDrawer *drawer)
{
  g_return_if_fail (HMUI_IS_WRENCH_CARD (self) && self->drawer == NULL);
  self->drawer = g_object_ref (drawer);
  g_signal_connect_object (drawer, "changed", G_CALLBACK (refresh), self, G_CONNECT_SWAPPED);
  refresh (self);
}

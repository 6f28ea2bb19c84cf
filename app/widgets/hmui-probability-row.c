/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-probability-row.h"
#include "hmui-draw.h"
#include "hmui-probability-bar.h"
#include <glib/gi18n-lib.h>
#include <math.h>

struct _HmuiProbabilityRow
{
  GtkWidget           parent_instance;
  GtkLabel           *name_label;     /* template child */
  GtkLabel           *percent_label;  /* template child */
  HmuiProbabilityBar *bar;            /* template child */
};
G_DEFINE_FINAL_TYPE (HmuiProbabilityRow, hmui_probability_row, GTK_TYPE_WIDGET)

static void
hmui_probability_row_dispose (GObject *object)
{
  gtk_widget_dispose_template (GTK_WIDGET (object), HMUI_TYPE_PROBABILITY_ROW);
  hmui_draw_unparent_children (GTK_WIDGET (object));
  G_OBJECT_CLASS (hmui_probability_row_parent_class)->dispose (object);
}

static void
hmui_probability_row_class_init (HmuiProbabilityRowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_probability_row_dispose;
  g_type_ensure (HMUI_TYPE_PROBABILITY_BAR);
  gtk_widget_class_set_css_name (widget_class, "probabilityrow");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_METER);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_WIDGETS_RESOURCE "hmui-probability-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiProbabilityRow, name_label);
  gtk_widget_class_bind_template_child (widget_class, HmuiProbabilityRow, percent_label);
  gtk_widget_class_bind_template_child (widget_class, HmuiProbabilityRow, bar);
}

static void
hmui_probability_row_init (HmuiProbabilityRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hmui_probability_row_new (void)
{
  return g_object_new (HMUI_TYPE_PROBABILITY_ROW, NULL);
}

void
hmui_probability_row_set (HmuiProbabilityRow *self, const char *name, double probability, gboolean leading)
{
  g_autofree char *percent = NULL, *words = NULL;
  int whole;

  g_return_if_fail (HMUI_IS_PROBABILITY_ROW (self) && name != NULL);
  whole = (int) round (CLAMP (probability, 0.0, 1.0) * 100);
  /* Translators: a share too small to show as a whole number of percent */
  percent = whole < 1 ? g_strdup (_("< 1 %")) : g_strdup_printf (_("%d %%"), whole);
  words = whole < 1 ? g_strdup_printf (_("%s, less than 1 percent"), name)
                    : g_strdup_printf (ngettext ("%s, %d percent", "%s, %d percent", whole), name, whole);
  gtk_label_set_text (self->name_label, name);
  gtk_label_set_text (self->percent_label, percent);
  hmui_probability_bar_set_share (self->bar, probability);
  if (leading)
    gtk_widget_add_css_class (GTK_WIDGET (self->bar), "leading");
  else
    gtk_widget_remove_css_class (GTK_WIDGET (self->bar), "leading");
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, words,
                                  GTK_ACCESSIBLE_PROPERTY_VALUE_MIN, 0.0, GTK_ACCESSIBLE_PROPERTY_VALUE_MAX, 100.0,
                                  GTK_ACCESSIBLE_PROPERTY_VALUE_NOW, (double) whole, -1);
}

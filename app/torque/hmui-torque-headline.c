/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-torque-headline.h"
#include "hmui-provenance-chip.h"
#include "hmui-resource.h"
#include <glib/gi18n.h>

struct _HmuiTorqueHeadline
{
  GtkWidget parent_instance;
  GtkLabel *number, *others, *warning, *governs;   /* template children */
  GtkWidget *warning_line;
  HmuiProvenanceChip *chip;
};

G_DEFINE_FINAL_TYPE (HmuiTorqueHeadline, hmui_torque_headline, GTK_TYPE_WIDGET)

static void
hmui_torque_headline_dispose (GObject *object)
{
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_TORQUE_HEADLINE);
  G_OBJECT_CLASS (hmui_torque_headline_parent_class)->dispose (object);
}

static void
hmui_torque_headline_class_init (HmuiTorqueHeadlineClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_torque_headline_dispose;
  gtk_widget_class_set_css_name (widget_class, "torqueheadline");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_STATUS);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "torque/hmui-torque-headline.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueHeadline, number);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueHeadline, others);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueHeadline, warning);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueHeadline, warning_line);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueHeadline, governs);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueHeadline, chip);
}

static void
hmui_torque_headline_init (HmuiTorqueHeadline *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

static void
set_class (GtkWidget *widget, const char *name, gboolean on)
{
  if (on)
    gtk_widget_add_css_class (widget, name);
  else
    gtk_widget_remove_css_class (widget, name);
}

static void
show_optional (GtkLabel *label, GtkWidget *line, const char *text)
{
  gtk_label_set_text (label, text != NULL ? text : "");
  gtk_widget_set_visible (line, text != NULL);
}

static void
say_aloud (HmuiTorqueHeadline *self)
{
  g_autofree char *words = g_strdup_printf ("%s. %s %s", gtk_label_get_text (self->number), gtk_label_get_text (self->others),
                                            gtk_label_get_text (self->governs));

  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, words, -1);
}

void
hmui_torque_headline_refresh (HmuiTorqueHeadline *self, HmuiTorqueModel *model)
{
  HmuiTorqueState state = hmui_torque_model_get_state (model);
  g_autofree char *number = hmui_torque_model_dup_headline (model);
  g_autofree char *others = hmui_torque_model_dup_others (model);
  g_autofree char *warning = hmui_torque_model_dup_warning (model);
  HmProvenance provenance = { HM_PROVENANCE_COMMON_PRACTICE, NULL };
  gboolean has_source = hmui_torque_model_get_provenance (model, &provenance);

  gtk_label_set_text (self->number, number);
  set_class (GTK_WIDGET (self->number), "big-number", state == HMUI_TORQUE_VALUE);
  set_class (GTK_WIDGET (self->number), "page-title", state == HMUI_TORQUE_WORDS);
  set_class (GTK_WIDGET (self->number), "large", state < HMUI_TORQUE_WORDS);
  set_class (GTK_WIDGET (self->number), "quiet", state < HMUI_TORQUE_WORDS);
  show_optional (self->others, GTK_WIDGET (self->others), others);
  show_optional (self->warning, self->warning_line, warning);
  gtk_widget_set_visible (GTK_WIDGET (self->chip), has_source);
  if (has_source)
    hmui_provenance_chip_set_provenance (self->chip, provenance);
  if (has_source && !hm_provenance_manual_governs (provenance))
    gtk_label_set_text (self->governs, provenance.source);
  else
    gtk_label_set_text (self->governs, _("The maker’s manual governs. If it gives a torque, type that into the form."));
  say_aloud (self);
}

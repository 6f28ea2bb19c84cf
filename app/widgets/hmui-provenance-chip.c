/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-provenance-chip.h"
#include "hmui-draw.h"
#include <glib/gi18n-lib.h>

struct _HmuiProvenanceChip
{
  GtkWidget      parent_instance;
  GtkMenuButton *button;        /* template child */
  GtkLabel      *kind_label;    /* template child */
  GtkLabel      *source_label;  /* template child */
};
G_DEFINE_FINAL_TYPE (HmuiProvenanceChip, hmui_provenance_chip, GTK_TYPE_WIDGET)

static char *
describe (HmProvenance provenance)
{
  g_autoptr(GString) words = g_string_new (NULL);

  if (provenance.source != NULL && provenance.source[0] != '\0')
    g_string_append (words, hmui_translate (provenance.source));
  else
    g_string_append (words, _("Common practice in the trade; no written source"));
  if (hm_provenance_manual_governs (provenance))
    g_string_append_printf (words, ".\n%s", _("The maker’s manual governs."));
  return g_string_free (g_steal_pointer (&words), FALSE);
}

static void
hmui_provenance_chip_dispose (GObject *object)
{
  gtk_widget_dispose_template (GTK_WIDGET (object), HMUI_TYPE_PROVENANCE_CHIP);
  hmui_draw_unparent_children (GTK_WIDGET (object));
  G_OBJECT_CLASS (hmui_provenance_chip_parent_class)->dispose (object);
}

static void
hmui_provenance_chip_class_init (HmuiProvenanceChipClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_provenance_chip_dispose;
  gtk_widget_class_set_css_name (widget_class, "provenancechip");
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_WIDGETS_RESOURCE "hmui-provenance-chip.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiProvenanceChip, button);
  gtk_widget_class_bind_template_child (widget_class, HmuiProvenanceChip, kind_label);
  gtk_widget_class_bind_template_child (widget_class, HmuiProvenanceChip, source_label);
}

static void
hmui_provenance_chip_init (HmuiProvenanceChip *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  gtk_widget_set_halign (GTK_WIDGET (self), GTK_ALIGN_START);
}

GtkWidget *
hmui_provenance_chip_new (HmProvenance provenance)
{
  HmuiProvenanceChip *self = g_object_new (HMUI_TYPE_PROVENANCE_CHIP, NULL);

  hmui_provenance_chip_set_provenance (self, provenance);
  return GTK_WIDGET (self);
}

void
hmui_provenance_chip_set_provenance (HmuiProvenanceChip *self, HmProvenance provenance)
{
  g_autofree char *words = NULL, *name = NULL;
  const char *kind;

  g_return_if_fail (HMUI_IS_PROVENANCE_CHIP (self));
  words = describe (provenance);
  kind = hmui_translate (hm_provenance_kind_name (provenance.kind));
  name = g_strdup_printf (_("Where from: %s"), kind);
  gtk_label_set_text (self->kind_label, kind);
  gtk_label_set_text (self->source_label, words);
  gtk_widget_set_tooltip_text (GTK_WIDGET (self->button), words);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->button), GTK_ACCESSIBLE_PROPERTY_LABEL, name,
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, words, -1);
  if (hm_provenance_manual_governs (provenance))
    gtk_widget_remove_css_class (GTK_WIDGET (self->kind_label), "strong");
  else
    gtk_widget_add_css_class (GTK_WIDGET (self->kind_label), "strong");
}

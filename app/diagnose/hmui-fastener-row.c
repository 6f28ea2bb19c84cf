/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-fastener-row.h"
#include "hmui-drive-view.h"
#include "hmui-provenance-chip.h"
#include "hmui-resource.h"
#include "hmui-tr.h"
#include "hmui-words.h"
#include <glib/gi18n.h>

struct _HmuiFastenerRow
{
  GtkWidget parent_instance;
  HmuiDriveView *drive;           /* template children */
  GtkLabel *name, *where, *size, *torque, *pattern;
  HmuiProvenanceChip *source;
  GtkWidget *torque_box;
};

G_DEFINE_FINAL_TYPE (HmuiFastenerRow, hmui_fastener_row, GTK_TYPE_WIDGET)

static void
hmui_fastener_row_dispose (GObject *object)
{
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_FASTENER_ROW);
  G_OBJECT_CLASS (hmui_fastener_row_parent_class)->dispose (object);
}

static void
hmui_fastener_row_class_init (HmuiFastenerRowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_fastener_row_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "diagnose/hmui-fastener-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiFastenerRow, drive);
  gtk_widget_class_bind_template_child (widget_class, HmuiFastenerRow, name);
  gtk_widget_class_bind_template_child (widget_class, HmuiFastenerRow, where);
  gtk_widget_class_bind_template_child (widget_class, HmuiFastenerRow, size);
  gtk_widget_class_bind_template_child (widget_class, HmuiFastenerRow, torque);
  gtk_widget_class_bind_template_child (widget_class, HmuiFastenerRow, pattern);
  gtk_widget_class_bind_template_child (widget_class, HmuiFastenerRow, source);
  gtk_widget_class_bind_template_child (widget_class, HmuiFastenerRow, torque_box);
}

static void
hmui_fastener_row_init (HmuiFastenerRow *self)
{
  g_type_ensure (HMUI_TYPE_DRIVE_VIEW);
  g_type_ensure (HMUI_TYPE_PROVENANCE_CHIP);
  gtk_widget_init_template (GTK_WIDGET (self));
}

static void
set_or_hide (GtkLabel *label, const char *text)
{
  gtk_label_set_text (label, text != NULL ? text : "");
  gtk_widget_set_visible (GTK_WIDGET (label), text != NULL && text[0] != '\0');
}

static gboolean
is_row_of (const HmHexalobularRow *row, const HmDrive *drive)
{
  HmDriveKind kind = row->external ? HM_DRIVE_HEXALOBULAR_EXTERNAL : HM_DRIVE_HEXALOBULAR;

  return drive->kind == kind && drive->number == row->number;
}

static void
show_hexalobular (HmuiFastenerRow *self, HmuiPrepareModel *model, const HmFastener *fastener)
{
  HmKnowledge *knowledge = hmui_diagnose_model_get_knowledge (hmui_prepare_model_get_bench (model));
  gsize n;
  const HmHexalobularRow *rows = hm_tables_get_hexalobular (hm_knowledge_get_tables (knowledge), &n);

  for (guint d = 0; d < fastener->n_drives; d++)
    for (gsize i = 0; i < n; i++)
      if (is_row_of (&rows[i], &fastener->drives[d]))
        hmui_drive_view_set_hexalobular (self->drive, rows[i].a, rows[i].b);
}

static void
show_torque (HmuiFastenerRow *self, HmuiPrepareModel *model, const HmFastener *fastener, const HmFormat *format)
{
  HmTorqueAnswer answer;
  gboolean known = hmui_prepare_model_get_torque (model, fastener, &answer);
  g_autofree char *text = hmui_words_torque (known ? &answer : NULL, format);
  g_autofree char *pattern = hmui_words_pattern (fastener->pattern);

  set_or_hide (self->torque, text);
  set_or_hide (self->pattern, pattern);
  gtk_widget_set_visible (GTK_WIDGET (self->source), known);
  if (known)
    hmui_provenance_chip_set_provenance (self->source, answer.provenance);
}

GtkWidget *
hmui_fastener_row_new (HmuiPrepareModel *model, const HmFastener *fastener)
{
  HmuiFastenerRow *self = g_object_new (HMUI_TYPE_FASTENER_ROW, NULL);
  HmFormat format = hmui_diagnose_model_get_format (hmui_prepare_model_get_bench (model));
  g_autofree char *drives = hmui_words_drives (fastener, &format);
  g_autofree char *count = hmui_words_count_and_thread (fastener, &format);
  g_autofree char *size = g_strdup_printf (_("%s · %s"), count, drives);

  set_or_hide (self->name, hmui_tr (fastener->name));
  set_or_hide (self->where, hmui_tr (fastener->where));
  set_or_hide (self->size, size);
  hmui_drive_view_set_drives (self->drive, fastener->drives, fastener->n_drives, &format);
  show_hexalobular (self, model, fastener);
  show_torque (self, model, fastener, &format);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, hmui_tr (fastener->name), -1);
  return GTK_WIDGET (self);
}

void
hmui_fastener_row_join (HmuiFastenerRow *self, GtkSizeGroup *torques)
{
  gtk_size_group_add_widget (torques, self->torque_box);
}

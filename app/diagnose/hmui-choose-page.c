/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-choose-page.h"
#include "hmui-choice-group.h"
#include "hmui-choose-model.h"
#include "hmui-heading.h"
#include "hmui-line-list.h"
#include "hmui-resource.h"
#include "hmui-two-column.h"
#include <glib/gi18n.h>

#define OPEN_SHOWN 1    /* diagnoses to go on with, before "Show all" */

struct _HmuiChoosePage
{
  GtkWidget parent_instance;
  HmuiChooseModel *model;         /* owned */
  /* template children */
  HmuiHeading *machine_title, *complaint_title;
  HmuiChoiceGroup *complaints, *layouts, *incidents, *causes;
  HmuiLineList *open_list;
  GtkWidget *content, *open_section, *told_hint, *told, *start;
  GtkButton *open_all;
  GtkLabel *start_hint;
  GtkSliceListModel *open_few;    /* owned; what of the open diagnoses is in sight */
};

G_DEFINE_FINAL_TYPE (HmuiChoosePage, hmui_choose_page, GTK_TYPE_WIDGET)

static void
show_ticks (HmuiChoosePage *self)
{
  guint n = g_list_model_get_n_items (hmui_choose_model_get_incidents (self->model));

  for (guint i = 0; i < n; i++)
    hmui_choice_group_set_on (self->incidents, i, hmui_choose_model_get_incident (self->model, i));
  n = g_list_model_get_n_items (hmui_choose_model_get_causes (self->model));
  for (guint i = 0; i < n; i++)
    hmui_choice_group_set_on (self->causes, i, hmui_choose_model_get_replaced (self->model, i));
}

static void
show_start (HmuiChoosePage *self)
{
  gboolean can_start = hmui_choose_model_can_start (self->model);
  const char *hint;

  if (can_start)
    hint = _("Ready. What happened before and what was replaced may be added; both are optional.");
  else if (hmui_choose_model_get_layout (self->model) < 0)
    hint = _("Choose the kind of machine.");
  else
    hint = _("Choose what is wrong.");
  gtk_label_set_text (self->start_hint, hint);
  gtk_widget_set_sensitive (self->start, can_start);
}

static void
show_open (HmuiChoosePage *self)
{
  guint n = g_list_model_get_n_items (hmui_choose_model_get_open (self->model));
  g_autofree char *all = g_strdup_printf (g_dngettext (GETTEXT_PACKAGE, "Show all %u", "Show all %u", n), n);

  gtk_button_set_label (self->open_all, all);
  gtk_widget_set_visible (GTK_WIDGET (self->open_all), n > gtk_slice_list_model_get_size (self->open_few));
  gtk_widget_set_visible (self->open_section, n > 0);
}

static void
model_changed_cb (HmuiChoosePage *self)
{
  guint n = g_list_model_get_n_items (hmui_choose_model_get_complaints (self->model));
  int complaint = hmui_choose_model_get_complaint (self->model), layout = hmui_choose_model_get_layout (self->model);

  if (layout >= 0)
    hmui_choice_group_set_on (self->layouts, layout, TRUE);
  for (guint i = 0; i < n; i++)
    {
      hmui_choice_group_set_on (self->complaints, i, (int) i == complaint);
      hmui_choice_group_set_shown (self->complaints, i, hmui_choose_model_has_complaint (self->model, i));
    }
  gtk_widget_set_visible (self->told, hmui_choose_model_can_start (self->model));
  gtk_widget_set_visible (self->told_hint, !hmui_choose_model_can_start (self->model));
  show_open (self);
  show_start (self);
}

static void
show_told (HmuiChoosePage *self)
{
  hmui_choice_group_set_lines (self->incidents, hmui_choose_model_get_incidents (self->model));
  hmui_choice_group_set_lines (self->causes, hmui_choose_model_get_causes (self->model));
  show_ticks (self);
}

static void
complaint_chosen_cb (HmuiChoosePage *self, guint index, gboolean on)
{
  if (!on)
    return;
  hmui_choose_model_set_complaint (self->model, index);
  show_told (self);
}

static void
complaint_activated_cb (HmuiChoosePage *self, guint index)
{
  if (hmui_choose_model_can_start (self->model))
    hmui_choose_model_start (self->model);
}

static void
layout_chosen_cb (HmuiChoosePage *self, guint index, gboolean on)
{
  if (!on)
    return;
  hmui_choose_model_set_layout (self->model, index);
  show_told (self);
}

static void
incident_chosen_cb (HmuiChoosePage *self, guint index, gboolean on)
{
  hmui_choose_model_set_incident (self->model, index, on);
}

static void
cause_chosen_cb (HmuiChoosePage *self, guint index, gboolean on)
{
  hmui_choose_model_set_replaced (self->model, index, on);
}

static void
open_pressed_cb (HmuiChoosePage *self, guint index)
{
  hmui_choose_model_go_on (self->model, index);
}

static void
open_all_clicked_cb (HmuiChoosePage *self)
{
  gtk_slice_list_model_set_size (self->open_few, G_MAXUINT);
  show_open (self);
  gtk_widget_child_focus (GTK_WIDGET (self->open_list), GTK_DIR_TAB_FORWARD);
}

static void
start_clicked_cb (HmuiChoosePage *self)
{
  hmui_choose_model_start (self->model);
}

static gboolean
hmui_choose_page_grab_focus (GtkWidget *widget)
{
  HmuiChoosePage *self = HMUI_CHOOSE_PAGE (widget);
  gboolean has_machine = hmui_choose_model_get_layout (self->model) >= 0;

  return gtk_widget_grab_focus (GTK_WIDGET (has_machine ? self->complaint_title : self->machine_title));
}

static void
hmui_choose_page_dispose (GObject *object)
{
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_CHOOSE_PAGE);
  g_clear_object (&HMUI_CHOOSE_PAGE (object)->open_few);
  g_clear_object (&HMUI_CHOOSE_PAGE (object)->model);
  G_OBJECT_CLASS (hmui_choose_page_parent_class)->dispose (object);
}

static void
bind_callbacks (GtkWidgetClass *widget_class)
{
  gtk_widget_class_bind_template_callback (widget_class, complaint_chosen_cb);
  gtk_widget_class_bind_template_callback (widget_class, complaint_activated_cb);
  gtk_widget_class_bind_template_callback (widget_class, layout_chosen_cb);
  gtk_widget_class_bind_template_callback (widget_class, incident_chosen_cb);
  gtk_widget_class_bind_template_callback (widget_class, cause_chosen_cb);
  gtk_widget_class_bind_template_callback (widget_class, open_pressed_cb);
  gtk_widget_class_bind_template_callback (widget_class, open_all_clicked_cb);
  gtk_widget_class_bind_template_callback (widget_class, start_clicked_cb);
}

static void
bind_children (GtkWidgetClass *widget_class)
{
  gtk_widget_class_bind_template_child (widget_class, HmuiChoosePage, machine_title);
  gtk_widget_class_bind_template_child (widget_class, HmuiChoosePage, complaint_title);
  gtk_widget_class_bind_template_child (widget_class, HmuiChoosePage, content);
  gtk_widget_class_bind_template_child (widget_class, HmuiChoosePage, complaints);
  gtk_widget_class_bind_template_child (widget_class, HmuiChoosePage, layouts);
  gtk_widget_class_bind_template_child (widget_class, HmuiChoosePage, incidents);
  gtk_widget_class_bind_template_child (widget_class, HmuiChoosePage, causes);
  gtk_widget_class_bind_template_child (widget_class, HmuiChoosePage, open_list);
  gtk_widget_class_bind_template_child (widget_class, HmuiChoosePage, open_section);
  gtk_widget_class_bind_template_child (widget_class, HmuiChoosePage, open_all);
  gtk_widget_class_bind_template_child (widget_class, HmuiChoosePage, told_hint);
  gtk_widget_class_bind_template_child (widget_class, HmuiChoosePage, told);
  gtk_widget_class_bind_template_child (widget_class, HmuiChoosePage, start);
  gtk_widget_class_bind_template_child (widget_class, HmuiChoosePage, start_hint);
}

static void
hmui_choose_page_class_init (HmuiChoosePageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_choose_page_dispose;
  widget_class->grab_focus = hmui_choose_page_grab_focus;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "diagnose/hmui-choose-page.ui");
  bind_children (widget_class);
  bind_callbacks (widget_class);
}

static void
hmui_choose_page_init (HmuiChoosePage *self)
{
  g_type_ensure (HMUI_TYPE_CHOICE_GROUP);
  g_type_ensure (HMUI_TYPE_HEADING);
  g_type_ensure (HMUI_TYPE_LINE_LIST);
  g_type_ensure (HMUI_TYPE_TWO_COLUMN);
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hmui_choose_page_new (HmuiDiagnoseModel *bench)
{
  HmuiChoosePage *self = g_object_new (HMUI_TYPE_CHOOSE_PAGE, NULL);

  self->model = hmui_choose_model_new (bench);
  g_signal_connect_object (self->model, "changed", G_CALLBACK (model_changed_cb), self, G_CONNECT_SWAPPED);
  self->open_few = gtk_slice_list_model_new (g_object_ref (hmui_choose_model_get_open (self->model)), 0, OPEN_SHOWN);
  hmui_line_list_set_model (self->open_list, G_LIST_MODEL (self->open_few));
  return GTK_WIDGET (self);
}

void
hmui_choose_page_refresh (HmuiChoosePage *self)
{
  gtk_slice_list_model_set_size (self->open_few, OPEN_SHOWN);
  hmui_choose_model_refresh (self->model);
  hmui_choice_group_set_lines (self->complaints, hmui_choose_model_get_complaints (self->model));
  hmui_choice_group_set_lines (self->layouts, hmui_choose_model_get_layouts (self->model));
  show_told (self);
  model_changed_cb (self);
  gtk_widget_set_visible (self->content, TRUE);   /* the first frame does without */
}

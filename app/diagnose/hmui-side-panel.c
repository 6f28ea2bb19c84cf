/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-side-panel.h"
#include "hmui-cause-row.h"
#include "hmui-focus.h"
#include "hmui-line-list.h"
#include "hmui-resource.h"
#include "hmui-why-model.h"

#define SHOWN_CAUSES 5    /* the rest waits behind "more" */
#define LEADING_CAUSES 1

struct _HmuiSidePanel
{
  GtkWidget parent_instance;
  HmuiDiagnoseModel *bench;       /* owned */
  HmuiWhyModel *model;            /* owned */
  gboolean show_all;
  /* template children */
  GtkLabel *expected, *not_listed, *why, *told;
  GtkBox *causes;
  GtkButton *rest;
  GtkExpander *why_expander, *branches_expander;
  HmuiLineList *branches, *trail;
  GtkWidget *outlook, *trail_hint;
};

G_DEFINE_FINAL_TYPE (HmuiSidePanel, hmui_side_panel, GTK_TYPE_WIDGET)

static void
set_or_hide (GtkLabel *label, char *text)
{
  gtk_label_set_text (label, text != NULL ? text : "");
  gtk_widget_set_visible (GTK_WIDGET (label), text != NULL);
  g_free (text);
}

static void
show_causes (HmuiSidePanel *self)
{
  GtkWidget *child;
  guint n, shown;
  const guint *causes = hmui_why_model_get_causes (self->model, &n);
  g_autofree char *rest = NULL;

  hmui_focus_leave (GTK_WIDGET (self->causes));
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self->causes))) != NULL)
    gtk_box_remove (self->causes, child);
  shown = self->show_all ? n : MIN (n, SHOWN_CAUSES);
  for (guint i = 0; i < shown; i++)
    gtk_box_append (self->causes, hmui_cause_row_new (self->model, causes[i], i < LEADING_CAUSES));
  rest = hmui_why_model_dup_rest (self->model, shown);
  gtk_widget_set_visible (GTK_WIDGET (self->rest), rest != NULL);
  gtk_button_set_label (self->rest, rest != NULL ? rest : "");
}

static void
rest_clicked_cb (HmuiSidePanel *self)
{
  self->show_all = TRUE;
  show_causes (self);
  gtk_widget_child_focus (GTK_WIDGET (self->causes), GTK_DIR_TAB_FORWARD);
}

/* Looking one answer ahead takes a while: only for those who open it. */
static void
branches_expanded_cb (HmuiSidePanel *self)
{
  g_autoptr(GListModel) branches = NULL;

  if (!gtk_expander_get_expanded (self->branches_expander) || hmui_diagnose_model_is_busy (self->bench))
    return;
  branches = hmui_why_model_make_branches (self->model);
  hmui_line_list_set_model (self->branches, branches);
}

static void
trail_pressed_cb (HmuiSidePanel *self, guint index)
{
  hmui_diagnose_model_revisit (self->bench, index);
}

static void
hmui_side_panel_dispose (GObject *object)
{
  HmuiSidePanel *self = HMUI_SIDE_PANEL (object);

  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_SIDE_PANEL);
  g_clear_object (&self->model);
  g_clear_object (&self->bench);
  G_OBJECT_CLASS (hmui_side_panel_parent_class)->dispose (object);
}

static void
bind_children (GtkWidgetClass *widget_class)
{
  gtk_widget_class_bind_template_child (widget_class, HmuiSidePanel, outlook);
  gtk_widget_class_bind_template_child (widget_class, HmuiSidePanel, expected);
  gtk_widget_class_bind_template_child (widget_class, HmuiSidePanel, not_listed);
  gtk_widget_class_bind_template_child (widget_class, HmuiSidePanel, why);
  gtk_widget_class_bind_template_child (widget_class, HmuiSidePanel, told);
  gtk_widget_class_bind_template_child (widget_class, HmuiSidePanel, causes);
  gtk_widget_class_bind_template_child (widget_class, HmuiSidePanel, rest);
  gtk_widget_class_bind_template_child (widget_class, HmuiSidePanel, why_expander);
  gtk_widget_class_bind_template_child (widget_class, HmuiSidePanel, branches_expander);
  gtk_widget_class_bind_template_child (widget_class, HmuiSidePanel, branches);
  gtk_widget_class_bind_template_child (widget_class, HmuiSidePanel, trail);
  gtk_widget_class_bind_template_child (widget_class, HmuiSidePanel, trail_hint);
}

static void
hmui_side_panel_class_init (HmuiSidePanelClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_side_panel_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "diagnose/hmui-side-panel.ui");
  bind_children (widget_class);
  gtk_widget_class_bind_template_callback (widget_class, rest_clicked_cb);
  gtk_widget_class_bind_template_callback (widget_class, branches_expanded_cb);
  gtk_widget_class_bind_template_callback (widget_class, trail_pressed_cb);
}

static void
hmui_side_panel_init (HmuiSidePanel *self)
{
  g_type_ensure (HMUI_TYPE_LINE_LIST);
  gtk_widget_init_template (GTK_WIDGET (self));
}

void
hmui_side_panel_set_bench (HmuiSidePanel *self, HmuiDiagnoseModel *bench)
{
  g_return_if_fail (HMUI_IS_SIDE_PANEL (self) && self->bench == NULL);
  self->bench = g_object_ref (bench);
  self->model = hmui_why_model_new (bench);
  hmui_line_list_set_model (self->trail, hmui_why_model_get_trail (self->model));
}

void
hmui_side_panel_refresh (HmuiSidePanel *self)
{
  g_autofree char *why = NULL;
  guint n_trail;

  g_return_if_fail (HMUI_IS_SIDE_PANEL (self) && self->bench != NULL);
  hmui_why_model_refresh (self->model);
  gtk_widget_set_visible (self->outlook, !hmui_why_model_is_settled (self->model));
  self->show_all = FALSE;
  show_causes (self);
  set_or_hide (self->expected, hmui_why_model_dup_expected (self->model));
  set_or_hide (self->not_listed, hmui_why_model_dup_not_listed (self->model));
  why = hmui_why_model_dup_why (self->model);
  gtk_widget_set_visible (GTK_WIDGET (self->why_expander), why != NULL);
  gtk_label_set_text (self->why, why != NULL ? why : "");
  gtk_widget_set_visible (GTK_WIDGET (self->branches_expander),
                          hmui_diagnose_model_get_view (self->bench) == HMUI_DIAGNOSE_STEP);
  gtk_expander_set_expanded (self->branches_expander, FALSE);
  set_or_hide (self->told, hmui_why_model_dup_told (self->model));
  n_trail = g_list_model_get_n_items (hmui_why_model_get_trail (self->model));
  gtk_widget_set_visible (self->trail_hint, n_trail == 0);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-repair-page.h"
#include "hmui-caution-list.h"
#include "hmui-fastener-table.h"
#include "hmui-focus.h"
#include "hmui-heading.h"
#include "hmui-other-steps.h"
#include "hmui-preparation.h"
#include "hmui-put-back-row.h"
#include "hmui-remedy-card.h"
#include "hmui-repair-model.h"
#include "hmui-resource.h"
#include "hmui-side-panel.h"
#include "hmui-step-list.h"
#include "hmui-two-column.h"
#include <glib/gi18n.h>

struct _HmuiRepairPage
{
  GtkWidget parent_instance;
  HmuiDiagnoseModel *bench;       /* owned */
  HmuiRepairModel *model;         /* owned */
  /* template children */
  GtkScrolledWindow *scroller;
  GtkWidget *repair, *question, *locked, *work, *fasteners_section, *put_back_section, *after_section, *own_choice;
  HmuiHeading *title, *question_title;
  GtkLabel *because, *progress;
  HmuiCautionList *cautions;
  HmuiPreparation *preparation;
  GtkBox *remedies, *put_back;
  HmuiFastenerTable *fasteners;
  HmuiStepList *after, *verify;
  HmuiOtherSteps *others;
  HmuiSidePanel *side;
};

G_DEFINE_FINAL_TYPE (HmuiRepairPage, hmui_repair_page, GTK_TYPE_WIDGET)

static void
remove_all (GtkBox *box)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (box))) != NULL)
    gtk_box_remove (box, child);
}

/* Of the repair, its question and the list of other steps one is in sight. */
static void
show_part (HmuiRepairPage *self, gboolean others)
{
  gboolean question = hmui_repair_model_is_question (self->model);
  GtkWidget *first = question ? GTK_WIDGET (self->question_title) : GTK_WIDGET (self->title);

  gtk_widget_set_visible (GTK_WIDGET (self->others), others);
  gtk_widget_set_visible (self->repair, !others && !question);
  gtk_widget_set_visible (self->question, !others && question);
  gtk_adjustment_set_value (gtk_scrolled_window_get_vadjustment (self->scroller), 0.0);
  gtk_widget_grab_focus (others ? GTK_WIDGET (self->others) : first);
}

static void
show_released (HmuiRepairPage *self)
{
  gboolean released = hmui_prepare_model_is_released (hmui_repair_model_get_prepare (self->model));

  gtk_widget_set_visible (self->work, released);
  gtk_widget_set_visible (self->locked, !released);
}

static void
show_progress (HmuiRepairPage *self)
{
  g_autofree char *progress = hmui_repair_model_dup_progress (self->model);

  gtk_label_set_text (self->progress, progress);
}

static void
show_remedies (HmuiRepairPage *self)
{
  GPtrArray *remedies = hmui_repair_model_get_remedies (self->model);
  g_autoptr(GPtrArray) after = g_ptr_array_new ();

  remove_all (self->remedies);
  for (guint i = 0; i < remedies->len; i++)
    {
      const HmRemedy *remedy = g_ptr_array_index (remedies, i);

      gtk_box_append (self->remedies, hmui_remedy_card_new (remedy, remedies->len > 1));
      for (guint k = 0; remedy->after[k] != NULL; k++)
        g_ptr_array_add (after, (gpointer) remedy->after[k]);
    }
  gtk_widget_set_visible (self->after_section, after->len > 0);
  g_ptr_array_add (after, NULL);
  hmui_step_list_set_steps (self->after, (const char * const *) (gpointer) after->pdata);
}

static void
show_put_back (HmuiRepairPage *self)
{
  GListModel *lines = hmui_repair_model_get_put_back (self->model);
  guint n = g_list_model_get_n_items (lines);

  remove_all (self->put_back);
  for (guint i = 0; i < n; i++)
    {
      g_autoptr(HmuiLine) line = g_list_model_get_item (lines, i);
      GtkWidget *row = hmui_put_back_row_new (self->model, line);

      g_signal_connect_object (row, "ticked", G_CALLBACK (show_progress), self, G_CONNECT_SWAPPED);
      gtk_box_append (self->put_back, row);
    }
  gtk_widget_set_visible (self->put_back_section, n > 0);
}

static void
show_repair (HmuiRepairPage *self)
{
  HmuiPrepareModel *prepare = hmui_repair_model_get_prepare (self->model);
  GPtrArray *fasteners = hmui_repair_model_get_fasteners (self->model);
  g_autofree char *title = hmui_repair_model_dup_title (self->model);

  hmui_heading_set_text (self->title, title);
  hmui_preparation_show (self->preparation, prepare);
  show_remedies (self);
  hmui_fastener_table_show (self->fasteners, prepare, fasteners);
  gtk_widget_set_visible (self->fasteners_section, fasteners->len > 0);
  show_put_back (self);
  hmui_step_list_set_steps (self->verify, hmui_repair_model_get_verify_steps (self->model));
}

static void
done_cb (HmuiRepairPage *self)
{
  hmui_diagnose_model_begin_repair (self->bench);
}

static void
fixed_cb (HmuiRepairPage *self)
{
  hmui_diagnose_model_finish_repair (self->bench, HM_REPAIR_FIXED);
}

static void
persists_cb (HmuiRepairPage *self)
{
  hmui_diagnose_model_finish_repair (self->bench, HM_REPAIR_PERSISTS);
}

static void
different_cb (HmuiRepairPage *self)
{
  hmui_diagnose_model_finish_repair (self->bench, HM_REPAIR_CHANGED);
}

static void
back_to_repair_cb (HmuiRepairPage *self)
{
  guint n = hm_diagnosis_get_n_entries (hmui_diagnose_model_get_diagnosis (self->bench));

  if (n > 0 && hmui_repair_model_is_question (self->model))
    hmui_diagnose_model_revisit (self->bench, n - 1);
}

static void
back_to_advice_cb (HmuiRepairPage *self)
{
  hmui_diagnose_model_unchoose (self->bench);
}

static void
something_else_cb (HmuiRepairPage *self)
{
  hmui_other_steps_show (self->others, self->bench);
  show_part (self, TRUE);
}

static void
others_left_cb (HmuiRepairPage *self)
{
  show_part (self, FALSE);
}

static void
leave_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HmuiRepairPage *self = HMUI_REPAIR_PAGE (widget);

  if (gtk_widget_get_visible (GTK_WIDGET (self->others)))
    show_part (self, FALSE);
  else
    hmui_diagnose_model_unchoose (self->bench);
}

static void
hmui_repair_page_dispose (GObject *object)
{
  HmuiRepairPage *self = HMUI_REPAIR_PAGE (object);

  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_REPAIR_PAGE);
  g_clear_object (&self->model);
  g_clear_object (&self->bench);
  G_OBJECT_CLASS (hmui_repair_page_parent_class)->dispose (object);
}

static void
bind_children (GtkWidgetClass *widget_class)
{
  gtk_widget_class_bind_template_child (widget_class, HmuiRepairPage, scroller);
  gtk_widget_class_bind_template_child (widget_class, HmuiRepairPage, repair);
  gtk_widget_class_bind_template_child (widget_class, HmuiRepairPage, question);
  gtk_widget_class_bind_template_child (widget_class, HmuiRepairPage, locked);
  gtk_widget_class_bind_template_child (widget_class, HmuiRepairPage, work);
  gtk_widget_class_bind_template_child (widget_class, HmuiRepairPage, fasteners_section);
  gtk_widget_class_bind_template_child (widget_class, HmuiRepairPage, put_back_section);
  gtk_widget_class_bind_template_child (widget_class, HmuiRepairPage, after_section);
  gtk_widget_class_bind_template_child (widget_class, HmuiRepairPage, own_choice);
  gtk_widget_class_bind_template_child (widget_class, HmuiRepairPage, title);
  gtk_widget_class_bind_template_child (widget_class, HmuiRepairPage, question_title);
  gtk_widget_class_bind_template_child (widget_class, HmuiRepairPage, because);
  gtk_widget_class_bind_template_child (widget_class, HmuiRepairPage, progress);
  gtk_widget_class_bind_template_child (widget_class, HmuiRepairPage, cautions);
  gtk_widget_class_bind_template_child (widget_class, HmuiRepairPage, preparation);
  gtk_widget_class_bind_template_child (widget_class, HmuiRepairPage, remedies);
  gtk_widget_class_bind_template_child (widget_class, HmuiRepairPage, put_back);
  gtk_widget_class_bind_template_child (widget_class, HmuiRepairPage, fasteners);
  gtk_widget_class_bind_template_child (widget_class, HmuiRepairPage, after);
  gtk_widget_class_bind_template_child (widget_class, HmuiRepairPage, verify);
  gtk_widget_class_bind_template_child (widget_class, HmuiRepairPage, others);
  gtk_widget_class_bind_template_child (widget_class, HmuiRepairPage, side);
}

static void
bind_callbacks (GtkWidgetClass *widget_class)
{
  gtk_widget_class_bind_template_callback (widget_class, show_released);
  gtk_widget_class_bind_template_callback (widget_class, done_cb);
  gtk_widget_class_bind_template_callback (widget_class, fixed_cb);
  gtk_widget_class_bind_template_callback (widget_class, persists_cb);
  gtk_widget_class_bind_template_callback (widget_class, different_cb);
  gtk_widget_class_bind_template_callback (widget_class, back_to_repair_cb);
  gtk_widget_class_bind_template_callback (widget_class, back_to_advice_cb);
  gtk_widget_class_bind_template_callback (widget_class, something_else_cb);
  gtk_widget_class_bind_template_callback (widget_class, others_left_cb);
}

static void
hmui_repair_page_class_init (HmuiRepairPageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_repair_page_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "diagnose/hmui-repair-page.ui");
  bind_children (widget_class);
  bind_callbacks (widget_class);
  gtk_widget_class_install_action (widget_class, "repair.leave", NULL, leave_action);
  gtk_widget_class_add_binding_action (widget_class, GDK_KEY_Escape, 0, "repair.leave", NULL);
}

static void
hmui_repair_page_init (HmuiRepairPage *self)
{
  g_type_ensure (HMUI_TYPE_CAUTION_LIST);
  g_type_ensure (HMUI_TYPE_FASTENER_TABLE);
  g_type_ensure (HMUI_TYPE_HEADING);
  g_type_ensure (HMUI_TYPE_OTHER_STEPS);
  g_type_ensure (HMUI_TYPE_PREPARATION);
  g_type_ensure (HMUI_TYPE_SIDE_PANEL);
  g_type_ensure (HMUI_TYPE_STEP_LIST);
  g_type_ensure (HMUI_TYPE_TWO_COLUMN);
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hmui_repair_page_new (HmuiDiagnoseModel *bench)
{
  HmuiRepairPage *self = g_object_new (HMUI_TYPE_REPAIR_PAGE, NULL);

  self->bench = g_object_ref (bench);
  self->model = hmui_repair_model_new (bench);
  hmui_side_panel_set_bench (self->side, bench);
  return GTK_WIDGET (self);
}

void
hmui_repair_page_refresh (HmuiRepairPage *self, gboolean arrived)
{
  gboolean is_new;
  g_autofree char *because = NULL;

  g_return_if_fail (HMUI_IS_REPAIR_PAGE (self));
  is_new = hmui_repair_model_refresh (self->model) || arrived;
  if (is_new)
    hmui_focus_leave (GTK_WIDGET (self));
  if (is_new)
    show_repair (self);
  because = hmui_repair_model_dup_because (self->model);
  gtk_label_set_text (self->because, because);
  hmui_caution_list_show (self->cautions, hmui_repair_model_get_prepare (self->model), is_new);
  show_released (self);
  show_progress (self);
  gtk_widget_set_visible (self->own_choice, hmui_diagnose_model_is_own_choice (self->bench));
  hmui_side_panel_refresh (self->side);
  if (is_new)
    show_part (self, FALSE);
}

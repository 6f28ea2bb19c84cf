/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-step-page.h"
#include "hmui-caution-list.h"
#include "hmui-circuit-view.h"
#include "hmui-fact-row.h"
#include "hmui-focus.h"
#include "hmui-heading.h"
#include "hmui-line-list.h"
#include "hmui-other-steps.h"
#include "hmui-preparation.h"
#include "hmui-provenance-chip.h"
#include "hmui-reading-entry.h"
#include "hmui-resource.h"
#include "hmui-side-panel.h"
#include "hmui-step-list.h"
#include "hmui-step-model.h"
#include "hmui-tr.h"
#include "hmui-two-column.h"
#include <glib/gi18n.h>

struct _HmuiStepPage
{
  GtkWidget parent_instance;
  HmuiDiagnoseModel *bench;       /* owned */
  HmuiStepModel *model;           /* owned */
  HmuiPrepareModel *prepare;      /* owned */
  /* template children */
  GtkScrolledWindow *scroller;
  GtkWidget *step, *own_choice, *locked, *work, *answer_label, *reading_box, *without_number;
  HmuiHeading *title;
  HmuiCautionList *cautions;
  HmuiPreparation *preparation;
  HmuiStepList *instructions;
  HmuiCircuitView *circuit;
  HmuiFactRow *limits, *earlier;
  HmuiProvenanceChip *limits_source;
  HmuiReadingEntry *reading;
  HmuiLineList *answers, *answers_without_number;
  HmuiOtherSteps *others;
  HmuiSidePanel *side;
};

G_DEFINE_FINAL_TYPE (HmuiStepPage, hmui_step_page, GTK_TYPE_WIDGET)

static void
show_others (HmuiStepPage *self, gboolean show)
{
  gtk_widget_set_visible (GTK_WIDGET (self->others), show);
  gtk_widget_set_visible (self->step, !show);
  gtk_adjustment_set_value (gtk_scrolled_window_get_vadjustment (self->scroller), 0.0);
  gtk_widget_grab_focus (show ? GTK_WIDGET (self->others) : GTK_WIDGET (self->title));
}

static void
show_released (HmuiStepPage *self)
{
  gboolean released = hmui_prepare_model_is_released (self->prepare);

  gtk_widget_set_visible (self->work, released);
  gtk_widget_set_visible (self->locked, !released);
}

static void
show_circuit (HmuiStepPage *self)
{
  const HmCheck *check = hmui_step_model_get_check (self->model);
  const HmPicture *picture = hmui_step_model_get_picture (self->model);

  hmui_circuit_view_set_picture (self->circuit, picture);
  if (picture != NULL)
    hmui_circuit_view_set_probes (self->circuit, check->red_point, check->black_point);
  gtk_widget_set_visible (GTK_WIDGET (self->circuit), picture != NULL);
}

static void
show_limits (HmuiStepPage *self)
{
  const HmCheck *check = hmui_step_model_get_check (self->model);
  g_autofree char *limits = hmui_step_model_dup_limits (self->model);

  hmui_fact_row_set_value (self->limits, limits);
  if (limits != NULL)
    hmui_provenance_chip_set_provenance (self->limits_source, check->limits[0]->provenance);
}

static void
show_answers (HmuiStepPage *self)
{
  const HmCheck *check = hmui_step_model_get_check (self->model);
  GListModel *findings = hmui_step_model_get_findings (self->model);

  gtk_widget_set_visible (self->reading_box, check->is_reading);
  gtk_widget_set_visible (self->answer_label, !check->is_reading);
  gtk_widget_set_visible (GTK_WIDGET (self->answers), !check->is_reading);
  hmui_line_list_set_model (self->answers, check->is_reading ? NULL : findings);
  hmui_line_list_set_model (self->answers_without_number, check->is_reading ? findings : NULL);
  if (check->is_reading)
    hmui_reading_entry_set_kind (self->reading, check->kind, check->unit, _("Reading"));
  gtk_expander_set_expanded (GTK_EXPANDER (self->without_number), FALSE);
}

static void
reading_changed_cb (HmuiStepPage *self)
{
  HmFormat format = hmui_diagnose_model_get_format (self->bench);
  HmQuantity reading;
  gboolean good = FALSE;
  g_autofree char *verdict = NULL, *shown = NULL;

  if (hmui_reading_entry_get_quantity (self->reading, &reading))
    {
      verdict = hmui_step_model_judge (self->model, reading, &good);
      shown = hm_quantity_format (reading, HM_UNIT_NONE, -1, &format);
    }
  hmui_reading_entry_set_verdict (self->reading, verdict, good ? HMUI_VERDICT_GOOD : HMUI_VERDICT_BAD);
  hmui_circuit_view_set_reading (self->circuit, shown);
}

static void
reading_submitted_cb (HmuiStepPage *self)
{
  HmQuantity reading;

  if (hmui_reading_entry_get_quantity (self->reading, &reading))
    hmui_diagnose_model_answer_reading (self->bench, reading);
}

static void
use_reading_cb (HmuiStepPage *self)
{
  hmui_reading_entry_submit (self->reading);
}

static void
answer_pressed_cb (HmuiStepPage *self, guint finding)
{
  hmui_diagnose_model_answer (self->bench, finding);
}

static void
unsure_cb (HmuiStepPage *self)
{
  hmui_diagnose_model_answer_unsure (self->bench);
}

static void
cannot_cb (HmuiStepPage *self)
{
  hmui_diagnose_model_answer_cannot (self->bench);
}

static void
something_else_cb (HmuiStepPage *self)
{
  hmui_other_steps_show (self->others, self->bench);
  show_others (self, TRUE);
}

static void
others_left_cb (HmuiStepPage *self)
{
  show_others (self, FALSE);
}

static void
back_to_advice_cb (HmuiStepPage *self)
{
  hmui_diagnose_model_unchoose (self->bench);
}

/* 1 to 9: the answers, while they are in sight. */
static gboolean
key_pressed_cb (HmuiStepPage *self, guint keyval, guint keycode, GdkModifierType state)
{
  guint32 digit = gdk_keyval_to_unicode (keyval);

  if (digit < '1' || digit > '9' || (state & (GDK_CONTROL_MASK | GDK_ALT_MASK)) != 0)
    return GDK_EVENT_PROPAGATE;
  if (!gtk_widget_is_visible (GTK_WIDGET (self->answers)) || !gtk_widget_is_visible (self->work))
    return GDK_EVENT_PROPAGATE;
  return hmui_line_list_press (self->answers, digit - '1');
}

static void
leave_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HmuiStepPage *self = HMUI_STEP_PAGE (widget);

  if (gtk_widget_get_visible (GTK_WIDGET (self->others)))
    show_others (self, FALSE);
  else
    hmui_diagnose_model_unchoose (self->bench);
}

static void
hmui_step_page_dispose (GObject *object)
{
  HmuiStepPage *self = HMUI_STEP_PAGE (object);

  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_STEP_PAGE);
  g_clear_object (&self->prepare);
  g_clear_object (&self->model);
  g_clear_object (&self->bench);
  G_OBJECT_CLASS (hmui_step_page_parent_class)->dispose (object);
}

static void
bind_children (GtkWidgetClass *widget_class)
{
  gtk_widget_class_bind_template_child (widget_class, HmuiStepPage, scroller);
  gtk_widget_class_bind_template_child (widget_class, HmuiStepPage, step);
  gtk_widget_class_bind_template_child (widget_class, HmuiStepPage, own_choice);
  gtk_widget_class_bind_template_child (widget_class, HmuiStepPage, locked);
  gtk_widget_class_bind_template_child (widget_class, HmuiStepPage, work);
  gtk_widget_class_bind_template_child (widget_class, HmuiStepPage, answer_label);
  gtk_widget_class_bind_template_child (widget_class, HmuiStepPage, reading_box);
  gtk_widget_class_bind_template_child (widget_class, HmuiStepPage, without_number);
  gtk_widget_class_bind_template_child (widget_class, HmuiStepPage, title);
  gtk_widget_class_bind_template_child (widget_class, HmuiStepPage, cautions);
  gtk_widget_class_bind_template_child (widget_class, HmuiStepPage, preparation);
  gtk_widget_class_bind_template_child (widget_class, HmuiStepPage, instructions);
  gtk_widget_class_bind_template_child (widget_class, HmuiStepPage, circuit);
  gtk_widget_class_bind_template_child (widget_class, HmuiStepPage, limits);
  gtk_widget_class_bind_template_child (widget_class, HmuiStepPage, earlier);
  gtk_widget_class_bind_template_child (widget_class, HmuiStepPage, limits_source);
  gtk_widget_class_bind_template_child (widget_class, HmuiStepPage, reading);
  gtk_widget_class_bind_template_child (widget_class, HmuiStepPage, answers);
  gtk_widget_class_bind_template_child (widget_class, HmuiStepPage, answers_without_number);
  gtk_widget_class_bind_template_child (widget_class, HmuiStepPage, others);
  gtk_widget_class_bind_template_child (widget_class, HmuiStepPage, side);
}

static void
bind_callbacks (GtkWidgetClass *widget_class)
{
  gtk_widget_class_bind_template_callback (widget_class, show_released);
  gtk_widget_class_bind_template_callback (widget_class, reading_changed_cb);
  gtk_widget_class_bind_template_callback (widget_class, reading_submitted_cb);
  gtk_widget_class_bind_template_callback (widget_class, use_reading_cb);
  gtk_widget_class_bind_template_callback (widget_class, answer_pressed_cb);
  gtk_widget_class_bind_template_callback (widget_class, unsure_cb);
  gtk_widget_class_bind_template_callback (widget_class, cannot_cb);
  gtk_widget_class_bind_template_callback (widget_class, something_else_cb);
  gtk_widget_class_bind_template_callback (widget_class, others_left_cb);
  gtk_widget_class_bind_template_callback (widget_class, back_to_advice_cb);
  gtk_widget_class_bind_template_callback (widget_class, key_pressed_cb);
}

static void
hmui_step_page_class_init (HmuiStepPageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_step_page_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "diagnose/hmui-step-page.ui");
  bind_children (widget_class);
  bind_callbacks (widget_class);
  gtk_widget_class_install_action (widget_class, "step.leave", NULL, leave_action);
  gtk_widget_class_add_binding_action (widget_class, GDK_KEY_Escape, 0, "step.leave", NULL);
}

static void
ensure_types (void)
{
  g_type_ensure (HMUI_TYPE_CAUTION_LIST);
  g_type_ensure (HMUI_TYPE_CIRCUIT_VIEW);
  g_type_ensure (HMUI_TYPE_FACT_ROW);
  g_type_ensure (HMUI_TYPE_HEADING);
  g_type_ensure (HMUI_TYPE_LINE_LIST);
  g_type_ensure (HMUI_TYPE_OTHER_STEPS);
  g_type_ensure (HMUI_TYPE_PREPARATION);
  g_type_ensure (HMUI_TYPE_PROVENANCE_CHIP);
  g_type_ensure (HMUI_TYPE_READING_ENTRY);
  g_type_ensure (HMUI_TYPE_SIDE_PANEL);
  g_type_ensure (HMUI_TYPE_STEP_LIST);
  g_type_ensure (HMUI_TYPE_TWO_COLUMN);
}

static void
hmui_step_page_init (HmuiStepPage *self)
{
  ensure_types ();
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hmui_step_page_new (HmuiDiagnoseModel *bench)
{
  HmuiStepPage *self = g_object_new (HMUI_TYPE_STEP_PAGE, NULL);

  self->bench = g_object_ref (bench);
  self->model = hmui_step_model_new (bench);
  self->prepare = hmui_prepare_model_new (bench);
  hmui_side_panel_set_bench (self->side, bench);
  return GTK_WIDGET (self);
}

static void
show_step (HmuiStepPage *self)
{
  HmAction action = hmui_diagnose_model_get_action (self->bench);
  const HmCheck *check = hmui_step_model_get_check (self->model);

  hmui_heading_set_text (self->title, hmui_tr (check->name));
  hmui_prepare_model_set_action (self->prepare, &action);
  hmui_preparation_show (self->preparation, self->prepare);
  hmui_step_list_set_steps (self->instructions, check->steps);
  show_circuit (self);
  show_answers (self);
}

void
hmui_step_page_refresh (HmuiStepPage *self, gboolean arrived)
{
  gboolean is_new;

  g_return_if_fail (HMUI_IS_STEP_PAGE (self));
  is_new = hmui_step_model_refresh (self->model) || arrived;
  if (is_new)
    hmui_focus_leave (GTK_WIDGET (self));
  if (is_new)
    show_step (self);
  hmui_caution_list_show (self->cautions, self->prepare, is_new);
  show_released (self);
  show_limits (self);
  hmui_fact_row_set_value (self->earlier, hmui_step_model_get_earlier (self->model));
  gtk_widget_set_visible (self->own_choice, hmui_diagnose_model_is_own_choice (self->bench));
  hmui_side_panel_refresh (self->side);
  if (is_new)
    show_others (self, FALSE);
}

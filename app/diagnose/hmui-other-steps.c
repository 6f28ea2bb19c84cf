/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-other-steps.h"
#include "hmui-heading.h"
#include "hmui-line-list.h"
#include "hmui-resource.h"
#include "hmui-why-model.h"

struct _HmuiOtherSteps
{
  GtkWidget parent_instance;
  HmuiDiagnoseModel *bench;       /* owned; NULL before it was shown */
  HmuiHeading *title;             /* template children */
  HmuiLineList *list;
};

G_DEFINE_FINAL_TYPE (HmuiOtherSteps, hmui_other_steps, GTK_TYPE_WIDGET)

static void
pressed_cb (HmuiOtherSteps *self, guint index)
{
  const HmPlan *plans;
  HmAction action;

  if (index >= hm_diagnosis_get_ranked (hmui_diagnose_model_get_diagnosis (self->bench), &plans))
    return;
  action = plans[index].action;
  hmui_diagnose_model_choose (self->bench, &action);
}

static void
back_cb (HmuiOtherSteps *self)
{
  g_signal_emit_by_name (self, "left");
}

static gboolean
hmui_other_steps_grab_focus (GtkWidget *widget)
{
  return gtk_widget_grab_focus (GTK_WIDGET (HMUI_OTHER_STEPS (widget)->title));
}

static void
hmui_other_steps_dispose (GObject *object)
{
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_OTHER_STEPS);
  g_clear_object (&HMUI_OTHER_STEPS (object)->bench);
  G_OBJECT_CLASS (hmui_other_steps_parent_class)->dispose (object);
}

static void
hmui_other_steps_class_init (HmuiOtherStepsClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_other_steps_dispose;
  widget_class->grab_focus = hmui_other_steps_grab_focus;
  g_signal_new ("left", HMUI_TYPE_OTHER_STEPS, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "diagnose/hmui-other-steps.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiOtherSteps, title);
  gtk_widget_class_bind_template_child (widget_class, HmuiOtherSteps, list);
  gtk_widget_class_bind_template_callback (widget_class, pressed_cb);
  gtk_widget_class_bind_template_callback (widget_class, back_cb);
}

static void
hmui_other_steps_init (HmuiOtherSteps *self)
{
  g_type_ensure (HMUI_TYPE_HEADING);
  g_type_ensure (HMUI_TYPE_LINE_LIST);
  gtk_widget_init_template (GTK_WIDGET (self));
}

void
hmui_other_steps_show (HmuiOtherSteps *self, HmuiDiagnoseModel *bench)
{
  g_autoptr(HmuiWhyModel) why = hmui_why_model_new (bench);
  g_autoptr(GListModel) others = hmui_why_model_make_others (why);

  g_return_if_fail (HMUI_IS_OTHER_STEPS (self));
  g_set_object (&self->bench, bench);
  hmui_line_list_set_model (self->list, others);
}

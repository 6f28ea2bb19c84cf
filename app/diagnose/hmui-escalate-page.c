/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-escalate-page.h"
#include "hmui-heading.h"
#include "hmui-other-steps.h"
#include "hmui-resource.h"
#include "hmui-side-panel.h"
#include "hmui-tr.h"
#include "hmui-two-column.h"

struct _HmuiEscalatePage
{
  GtkWidget parent_instance;
  HmuiDiagnoseModel *bench;       /* owned */
  HmuiHeading *title;             /* template children */
  GtkLabel *what;
  GtkWidget *advice;
  HmuiOtherSteps *others;
  HmuiSidePanel *side;
};

G_DEFINE_FINAL_TYPE (HmuiEscalatePage, hmui_escalate_page, GTK_TYPE_WIDGET)

static void
show_others (HmuiEscalatePage *self, gboolean show)
{
  gtk_widget_set_visible (GTK_WIDGET (self->others), show);
  gtk_widget_set_visible (self->advice, !show);
  gtk_widget_grab_focus (show ? GTK_WIDGET (self->others) : GTK_WIDGET (self->title));
}

static void
send_out_cb (HmuiEscalatePage *self)
{
  hmui_diagnose_model_send_out (self->bench);
}

static void
something_else_cb (HmuiEscalatePage *self)
{
  hmui_other_steps_show (self->others, self->bench);
  show_others (self, TRUE);
}

static void
others_left_cb (HmuiEscalatePage *self)
{
  show_others (self, FALSE);
}

static void
leave_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HmuiEscalatePage *self = HMUI_ESCALATE_PAGE (widget);

  if (gtk_widget_get_visible (GTK_WIDGET (self->others)))
    show_others (self, FALSE);
  else
    hmui_diagnose_model_unchoose (self->bench);
}

static void
hmui_escalate_page_dispose (GObject *object)
{
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_ESCALATE_PAGE);
  g_clear_object (&HMUI_ESCALATE_PAGE (object)->bench);
  G_OBJECT_CLASS (hmui_escalate_page_parent_class)->dispose (object);
}

static void
hmui_escalate_page_class_init (HmuiEscalatePageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_escalate_page_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "diagnose/hmui-escalate-page.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiEscalatePage, title);
  gtk_widget_class_bind_template_child (widget_class, HmuiEscalatePage, what);
  gtk_widget_class_bind_template_child (widget_class, HmuiEscalatePage, advice);
  gtk_widget_class_bind_template_child (widget_class, HmuiEscalatePage, others);
  gtk_widget_class_bind_template_child (widget_class, HmuiEscalatePage, side);
  gtk_widget_class_bind_template_callback (widget_class, send_out_cb);
  gtk_widget_class_bind_template_callback (widget_class, something_else_cb);
  gtk_widget_class_bind_template_callback (widget_class, others_left_cb);
  gtk_widget_class_install_action (widget_class, "escalate.leave", NULL, leave_action);
  gtk_widget_class_add_binding_action (widget_class, GDK_KEY_Escape, 0, "escalate.leave", NULL);
}

static void
hmui_escalate_page_init (HmuiEscalatePage *self)
{
  g_type_ensure (HMUI_TYPE_HEADING);
  g_type_ensure (HMUI_TYPE_OTHER_STEPS);
  g_type_ensure (HMUI_TYPE_SIDE_PANEL);
  g_type_ensure (HMUI_TYPE_TWO_COLUMN);
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hmui_escalate_page_new (HmuiDiagnoseModel *bench)
{
  HmuiEscalatePage *self = g_object_new (HMUI_TYPE_ESCALATE_PAGE, NULL);

  self->bench = g_object_ref (bench);
  hmui_side_panel_set_bench (self->side, bench);
  return GTK_WIDGET (self);
}

void
hmui_escalate_page_refresh (HmuiEscalatePage *self)
{
  HmGuide *guide = hmui_diagnose_model_get_guide (self->bench);

  g_return_if_fail (HMUI_IS_ESCALATE_PAGE (self));
  gtk_label_set_text (self->what, hmui_tr (hm_guide_get_complaint (guide)->escalate));
  hmui_side_panel_refresh (self->side);
  show_others (self, FALSE);
}

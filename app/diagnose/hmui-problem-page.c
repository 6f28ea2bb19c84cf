/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-problem-page.h"
#include "hmui-heading.h"
#include "hmui-resource.h"

struct _HmuiProblemPage
{
  GtkWidget parent_instance;
  GtkLabel *text;                 /* template child */
};

G_DEFINE_FINAL_TYPE (HmuiProblemPage, hmui_problem_page, GTK_TYPE_WIDGET)

static void
again_cb (HmuiProblemPage *self)
{
  g_signal_emit_by_name (self, "again");
}

static void
hmui_problem_page_dispose (GObject *object)
{
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_PROBLEM_PAGE);
  G_OBJECT_CLASS (hmui_problem_page_parent_class)->dispose (object);
}

static void
hmui_problem_page_class_init (HmuiProblemPageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_problem_page_dispose;
  g_signal_new ("again", HMUI_TYPE_PROBLEM_PAGE, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "diagnose/hmui-problem-page.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiProblemPage, text);
  gtk_widget_class_bind_template_callback (widget_class, again_cb);
}

static void
hmui_problem_page_init (HmuiProblemPage *self)
{
  g_type_ensure (HMUI_TYPE_HEADING);
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hmui_problem_page_new (void)
{
  return g_object_new (HMUI_TYPE_PROBLEM_PAGE, NULL);
}

void
hmui_problem_page_set_text (HmuiProblemPage *self, const char *text)
{
  g_return_if_fail (HMUI_IS_PROBLEM_PAGE (self));
  gtk_label_set_text (self->text, text != NULL ? text : "");
}

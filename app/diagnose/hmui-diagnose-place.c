/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-diagnose-place.h"
#include "hmui-choose-page.h"
#include "hmui-close-page.h"
#include "hmui-escalate-page.h"
#include "hmui-paths.h"
#include "hmui-problem-page.h"
#include "hmui-repair-page.h"
#include "hmui-step-page.h"

struct _HmuiDiagnosePlace
{
  GtkWidget parent_instance;
  HmuiDiagnoseModel *bench;       /* owned */
  GtkStack *stack;                /* child */
  GtkWidget *pages[HMUI_DIAGNOSE_BROKEN + 1];   /* borrowed from stack; NULL until first used */
  HmuiDiagnoseView view;          /* in sight */
};

static void place_init (HmuiPlaceInterface *iface);

G_DEFINE_FINAL_TYPE_WITH_CODE (HmuiDiagnosePlace, hmui_diagnose_place, GTK_TYPE_WIDGET,
                               G_IMPLEMENT_INTERFACE (HMUI_TYPE_PLACE, place_init))

static void
open_knowledge (HmuiDiagnosePlace *self)
{
  g_autofree char *path = hmui_paths_dup_knowledge ();

  hmui_diagnose_model_open (self->bench, path);
}

static GtkWidget *
make_page (HmuiDiagnosePlace *self, HmuiDiagnoseView view)
{
  GtkWidget *page;

  switch (view)
    {
    case HMUI_DIAGNOSE_STEP: return hmui_step_page_new (self->bench);
    case HMUI_DIAGNOSE_REPAIR: return hmui_repair_page_new (self->bench);
    case HMUI_DIAGNOSE_ESCALATE: return hmui_escalate_page_new (self->bench);
    case HMUI_DIAGNOSE_CLOSE: return hmui_close_page_new (self->bench);
    case HMUI_DIAGNOSE_BROKEN:
      page = hmui_problem_page_new ();
      g_signal_connect_object (page, "again", G_CALLBACK (open_knowledge), self, G_CONNECT_SWAPPED);
      return page;
    case HMUI_DIAGNOSE_CHOOSE:
    default: return hmui_choose_page_new (self->bench);
    }
}

static GtkWidget *
ensure_page (HmuiDiagnosePlace *self, HmuiDiagnoseView view)
{
  if (self->pages[view] == NULL)
    {
      self->pages[view] = make_page (self, view);
      gtk_stack_add_child (self->stack, self->pages[view]);
    }
  return self->pages[view];
}

static void
refresh_page (HmuiDiagnosePlace *self, HmuiDiagnoseView view, gboolean arrived)
{
  GtkWidget *page = self->pages[view];

  switch (view)
    {
    case HMUI_DIAGNOSE_STEP: hmui_step_page_refresh (HMUI_STEP_PAGE (page), arrived); break;
    case HMUI_DIAGNOSE_REPAIR: hmui_repair_page_refresh (HMUI_REPAIR_PAGE (page), arrived); break;
    case HMUI_DIAGNOSE_ESCALATE: hmui_escalate_page_refresh (HMUI_ESCALATE_PAGE (page)); break;
    case HMUI_DIAGNOSE_CLOSE: hmui_close_page_refresh (HMUI_CLOSE_PAGE (page)); break;
    case HMUI_DIAGNOSE_BROKEN:
      hmui_problem_page_set_text (HMUI_PROBLEM_PAGE (page), hmui_diagnose_model_get_problem (self->bench));
      break;
    case HMUI_DIAGNOSE_CHOOSE:
    default:
      if (arrived)
        hmui_choose_page_refresh (HMUI_CHOOSE_PAGE (page));
      break;
    }
}

/* Pages out of sight are hidden for screen readers too, which would else read them all. */
static void
show_page (HmuiDiagnosePlace *self, GtkWidget *page)
{
  gtk_widget_set_visible (page, TRUE);
  gtk_stack_set_visible_child (self->stack, page);
  for (gsize i = 0; i < G_N_ELEMENTS (self->pages); i++)
    if (self->pages[i] != NULL && self->pages[i] != page)
      gtk_widget_set_visible (self->pages[i], FALSE);
}

static void
bench_changed_cb (HmuiDiagnosePlace *self)
{
  HmuiDiagnoseView view;
  GtkWidget *page;
  gboolean arrived;

  if (hmui_diagnose_model_is_busy (self->bench))
    return;   /* another "changed" comes when the store has answered */
  view = hmui_diagnose_model_get_view (self->bench);
  page = ensure_page (self, view);
  arrived = gtk_stack_get_visible_child (self->stack) != page || view != self->view;
  self->view = view;
  show_page (self, page);
  refresh_page (self, view, arrived);
  if (arrived && view == HMUI_DIAGNOSE_CHOOSE && gtk_widget_get_mapped (GTK_WIDGET (self)))
    gtk_widget_grab_focus (page);   /* not from another place that was opened while the store was read */
  hmui_place_emit_changed (HMUI_PLACE (self));
}

static void
bench_message_cb (HmuiDiagnosePlace *self, const char *text, gboolean can_undo)
{
  hmui_place_emit_message (HMUI_PLACE (self), text, can_undo);
}

static char *
dup_whereabouts (HmuiPlace *place)
{
  return hmui_diagnose_model_dup_whereabouts (HMUI_DIAGNOSE_PLACE (place)->bench);
}

static gboolean
can_undo (HmuiPlace *place)
{
  return hmui_diagnose_model_can_undo (HMUI_DIAGNOSE_PLACE (place)->bench);
}

static gboolean
can_redo (HmuiPlace *place)
{
  return hmui_diagnose_model_can_redo (HMUI_DIAGNOSE_PLACE (place)->bench);
}

static void
undo (HmuiPlace *place)
{
  hmui_diagnose_model_undo (HMUI_DIAGNOSE_PLACE (place)->bench);
}

static void
redo (HmuiPlace *place)
{
  hmui_diagnose_model_redo (HMUI_DIAGNOSE_PLACE (place)->bench);
}

static void
go_home (HmuiPlace *place)
{
  hmui_diagnose_model_leave (HMUI_DIAGNOSE_PLACE (place)->bench);
}

static void
fill (HmuiPlace *place)
{
  HmuiDiagnosePlace *self = HMUI_DIAGNOSE_PLACE (place);

  self->view = HMUI_DIAGNOSE_BROKEN;   /* so that the page in sight counts as new once there is something to show */
  open_knowledge (self);
}

static void
place_init (HmuiPlaceInterface *iface)
{
  iface->dup_whereabouts = dup_whereabouts;
  iface->can_undo = can_undo;
  iface->can_redo = can_redo;
  iface->undo = undo;
  iface->redo = redo;
  iface->fill = fill;
  iface->go_home = go_home;
}

static void
hmui_diagnose_place_dispose (GObject *object)
{
  HmuiDiagnosePlace *self = HMUI_DIAGNOSE_PLACE (object);

  if (self->stack != NULL)
    gtk_widget_unparent (GTK_WIDGET (self->stack));
  self->stack = NULL;
  g_clear_object (&self->bench);
  G_OBJECT_CLASS (hmui_diagnose_place_parent_class)->dispose (object);
}

static void
hmui_diagnose_place_class_init (HmuiDiagnosePlaceClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_diagnose_place_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
}

static void
hmui_diagnose_place_init (HmuiDiagnosePlace *self)
{
  self->stack = GTK_STACK (gtk_stack_new ());
  gtk_stack_set_hhomogeneous (self->stack, FALSE);
  gtk_stack_set_vhomogeneous (self->stack, FALSE);
  gtk_widget_set_parent (GTK_WIDGET (self->stack), GTK_WIDGET (self));
}

GtkWidget *
hmui_diagnose_place_new (HmuiSettings *settings, HmuiShop *shop)
{
  HmuiDiagnosePlace *self = g_object_new (HMUI_TYPE_DIAGNOSE_PLACE, NULL);

  self->bench = hmui_diagnose_model_new (settings, shop);
  g_signal_connect_object (self->bench, "changed", G_CALLBACK (bench_changed_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->bench, "message", G_CALLBACK (bench_message_cb), self, G_CONNECT_SWAPPED);
  ensure_page (self, HMUI_DIAGNOSE_CHOOSE);
  return GTK_WIDGET (self);
}

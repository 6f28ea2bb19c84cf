/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-torque-place.h"
#include "hm-knowledge.h"
#include "hmui-paths.h"
#include "hmui-torque-page.h"
#include <glib/gi18n.h>

struct _HmuiTorquePlace
{
  GtkWidget parent_instance;
  HmuiTorqueModel *model;         /* owned */
  HmuiOrderModel *order;          /* owned */
  HmuiWrenchDrawer *drawer;       /* owned */
  GtkWidget *page;                /* child; NULL until it comes into sight */
  HmuiSettings *settings;         /* owned */
};

static void place_init (HmuiPlaceInterface *iface);

G_DEFINE_FINAL_TYPE_WITH_CODE (HmuiTorquePlace, hmui_torque_place, GTK_TYPE_WIDGET,
                               G_IMPLEMENT_INTERFACE (HMUI_TYPE_PLACE, place_init))

static void
read_tables (HmuiTorquePlace *self)
{
  g_autofree char *path = hmui_paths_dup_knowledge ();
  g_autoptr(GError) error = NULL;
  g_autoptr(HmKnowledge) knowledge = hm_knowledge_open (path, &error);
  const HmTables *tables = knowledge != NULL ? hm_knowledge_get_tables (knowledge) : NULL;

  hmui_torque_model_set_tables (self->model, tables, error != NULL ? error->message : NULL);
  hmui_order_model_set_tables (self->order, tables);
}

static void
message_cb (HmuiTorquePlace *self, const char *text, gboolean can_undo)
{
  hmui_place_emit_message (HMUI_PLACE (self), text, can_undo);
}

static void
ensure_page (HmuiTorquePlace *self)
{
  if (self->page != NULL)
    return;
  self->page = hmui_torque_page_new (self->model, self->order, self->drawer);
  gtk_widget_set_parent (self->page, GTK_WIDGET (self));
  g_signal_connect_object (self->page, "message", G_CALLBACK (message_cb), self, G_CONNECT_SWAPPED);
}

static void
hmui_torque_place_map (GtkWidget *widget)
{
  HmuiTorquePlace *self = HMUI_TORQUE_PLACE (widget);

  ensure_page (self);
  if (hmui_torque_model_get_tables (self->model) == NULL)
    read_tables (self);
  GTK_WIDGET_CLASS (hmui_torque_place_parent_class)->map (widget);
}

static gboolean
hmui_torque_place_grab_focus (GtkWidget *widget)
{
  HmuiTorquePlace *self = HMUI_TORQUE_PLACE (widget);

  return self->page != NULL && gtk_widget_grab_focus (self->page);
}

static char *
dup_whereabouts (HmuiPlace *place)
{
  g_autofree char *summary = hmui_torque_model_dup_summary (HMUI_TORQUE_PLACE (place)->model);

  return summary != NULL ? g_strdup_printf (_("Torque · %s"), summary) : g_strdup (_("Torque"));
}

static gboolean
can_undo (HmuiPlace *place)
{
  return hmui_wrench_drawer_can_undo (HMUI_TORQUE_PLACE (place)->drawer);
}

static gboolean
can_redo (HmuiPlace *place)
{
  return hmui_wrench_drawer_can_redo (HMUI_TORQUE_PLACE (place)->drawer);
}

static void
undo (HmuiPlace *place)
{
  hmui_wrench_drawer_undo (HMUI_TORQUE_PLACE (place)->drawer);
}

static void
redo (HmuiPlace *place)
{
  hmui_wrench_drawer_redo (HMUI_TORQUE_PLACE (place)->drawer);
}

/* Nothing from disk but the tables, which wait until the place comes into sight. */
static void
fill (HmuiPlace *place)
{
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
}

static void
hmui_torque_place_dispose (GObject *object)
{
  HmuiTorquePlace *self = HMUI_TORQUE_PLACE (object);

  g_clear_pointer (&self->page, gtk_widget_unparent);
  g_clear_object (&self->model);
  g_clear_object (&self->order);
  g_clear_object (&self->drawer);
  g_clear_object (&self->settings);
  G_OBJECT_CLASS (hmui_torque_place_parent_class)->dispose (object);
}

static void
hmui_torque_place_class_init (HmuiTorquePlaceClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_torque_place_dispose;
  widget_class->map = hmui_torque_place_map;
  widget_class->grab_focus = hmui_torque_place_grab_focus;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
}

static void
hmui_torque_place_init (HmuiTorquePlace *self)
{
}

GtkWidget *
hmui_torque_place_new (HmuiSettings *settings)
{
  HmuiTorquePlace *self = g_object_new (HMUI_TYPE_TORQUE_PLACE, NULL);

  self->settings = g_object_ref (settings);
  self->drawer = hmui_wrench_drawer_new (settings);
  self->model = hmui_torque_model_new (settings, self->drawer);
  self->order = hmui_order_model_new (settings);
  g_signal_connect_object (self->model, "changed", G_CALLBACK (hmui_place_emit_changed), self, G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}

void
hmui_torque_place_set_given (HmuiTorquePlace *self, const char *text)
{
  g_return_if_fail (HMUI_IS_TORQUE_PLACE (self) && text != NULL);
  ensure_page (self);
  hmui_torque_page_set_given (HMUI_TORQUE_PAGE (self->page), text);
}

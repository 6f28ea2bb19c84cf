/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-window-private.h"
#include "hmui-chart-actions.h"
#include "hmui-diagnose-place.h"
#include "hmui-fasteners-place.h"
#include "hmui-place-row.h"
#include "hmui-resource.h"
#include "hmui-torque-place.h"
#include "hmui-widgets.h"
#include <glib/gi18n.h>

#define WORDS_FROM 820    /* px of window: below it the rail shows icons alone */

G_DEFINE_FINAL_TYPE (HmuiWindow, hmui_window, GTK_TYPE_APPLICATION_WINDOW)

HmuiPlace *
hmui_window_get_place (HmuiWindow *self)
{
  return HMUI_PLACE (gtk_stack_get_visible_child (self->places));
}

/* Words wait for the first frame: the first of them makes the system look through its fonts. */
static void
show_whereabouts (HmuiWindow *self)
{
  g_autofree char *where = NULL;

  if (!self->has_frame)
    return;
  where = hmui_place_dup_whereabouts (hmui_window_get_place (self));
  gtk_label_set_text (self->where, where);
  gtk_widget_set_tooltip_text (GTK_WIDGET (self->where), where);
  hmui_window_update_actions (self);
}

static void
place_changed_cb (HmuiWindow *self, HmuiPlace *place)
{
  if (place == hmui_window_get_place (self))
    show_whereabouts (self);
}

static void
place_message_cb (HmuiWindow *self, const char *text, gboolean can_undo)
{
  if (text != NULL)
    hmui_message_strip_say (self->strip, text, can_undo);
  else
    hmui_message_strip_hide (self->strip);
}

static GtkWidget *
make_fasteners (HmuiSettings *settings, HmuiShop *shop)
{
  return hmui_fasteners_place_new (settings);
}

static GtkWidget *
make_torque (HmuiSettings *settings, HmuiShop *shop)
{
  return hmui_torque_place_new (settings);
}

typedef struct {
  const char *name, *title, *icon;   /* @title: to be translated */
  GtkWidget *(*make) (HmuiSettings *settings, HmuiShop *shop);
} PlaceKind;

/* Every place there is, in the order of the rail. One is made at its first visit. */
static const PlaceKind place_kinds[] = {
  { "diagnose", N_("Diagnose"), "hm-diagnose-symbolic", hmui_diagnose_place_new },
  { "fasteners", N_("Fasteners"), "hm-fasteners-symbolic", make_fasteners },
  { "torque", N_("Torque"), "hm-torque-symbolic", make_torque },
};

static GtkWidget *
make_place (HmuiWindow *self, const PlaceKind *kind)
{
  GtkWidget *place = kind->make (self->settings, self->shop);

  gtk_stack_add_titled (self->places, place, kind->name, _(kind->title));
  g_signal_connect_object (place, "changed", G_CALLBACK (place_changed_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (place, "message", G_CALLBACK (place_message_cb), self, G_CONNECT_SWAPPED);
  return place;
}

/* Places out of sight are hidden for screen readers too. */
static void
show_place (HmuiWindow *self, GtkWidget *place)
{
  GtkWidget *other;

  gtk_widget_set_visible (place, TRUE);
  gtk_stack_set_visible_child (self->places, place);
  for (other = gtk_widget_get_first_child (GTK_WIDGET (self->places)); other != NULL;
       other = gtk_widget_get_next_sibling (other))
    gtk_widget_set_visible (other, other == place);
  show_whereabouts (self);
}

static void
mark_row (HmuiWindow *self, int current)
{
  for (int i = 0; i < (int) G_N_ELEMENTS (place_kinds); i++)
    hmui_place_row_set_current (HMUI_PLACE_ROW (gtk_list_box_get_row_at_index (self->rail, i)), i == current);
}

static void
visit_place (HmuiWindow *self, int index)
{
  GtkWidget *place = gtk_stack_get_child_by_name (self->places, place_kinds[index].name);
  gboolean is_new = place == NULL;

  if (is_new)
    place = make_place (self, &place_kinds[index]);
  show_place (self, place);
  mark_row (self, index);
  if (is_new && self->has_frame)
    hmui_place_fill (HMUI_PLACE (place));
}

/* On a press or Enter, not as the focus passes: Tab through the rail leaves the place as it is. The row of the place in sight
   leads to its first page. */
static void
row_activated_cb (HmuiWindow *self, GtkListBoxRow *row)
{
  HmuiPlace *before = hmui_window_get_place (self);

  visit_place (self, gtk_list_box_row_get_index (row));
  if (hmui_window_get_place (self) == before)
    hmui_place_go_home (before);
  gtk_widget_grab_focus (GTK_WIDGET (hmui_window_get_place (self)));
}

GtkWidget *
hmui_window_visit (HmuiWindow *self, const char *name)
{
  for (gsize i = 0; i < G_N_ELEMENTS (place_kinds); i++)
    if (g_str_equal (place_kinds[i].name, name))
      visit_place (self, (int) i);
  gtk_widget_grab_focus (GTK_WIDGET (hmui_window_get_place (self)));
  return GTK_WIDGET (hmui_window_get_place (self));
}

static void
list_places (HmuiWindow *self)
{
  for (gsize i = 0; i < G_N_ELEMENTS (place_kinds); i++)
    gtk_list_box_append (self->rail, hmui_place_row_new (_(place_kinds[i].title), place_kinds[i].icon));
  visit_place (self, 0);
}

static void
apply_narrow (HmuiWindow *self)
{
  for (gsize i = 0; i < G_N_ELEMENTS (place_kinds); i++)
    hmui_place_row_set_narrow (HMUI_PLACE_ROW (gtk_list_box_get_row_at_index (self->rail, i)), self->narrow);
}

static gboolean
narrow_cb (gpointer data)
{
  HmuiWindow *self = data;

  self->narrow_idle = 0;
  apply_narrow (self);
  return G_SOURCE_REMOVE;
}

/* What is shown may not change while it is being laid out: the rail follows a moment later. */
static void
hmui_window_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  HmuiWindow *self = HMUI_WINDOW (widget);
  gboolean narrow = width < WORDS_FROM;

  GTK_WIDGET_CLASS (hmui_window_parent_class)->size_allocate (widget, width, height, baseline);
  if (narrow == self->narrow)
    return;
  self->narrow = narrow;
  if (self->narrow_idle == 0)
    self->narrow_idle = g_idle_add (narrow_cb, self);
}

static void
tell_cb (const char *sentence, gpointer user_data)
{
  hmui_message_strip_say (HMUI_WINDOW (user_data)->strip, sentence, FALSE);
}

/* After the first frame: what the place in sight needs from disk. */
static gboolean
fill_cb (gpointer data)
{
  HmuiWindow *self = data;
  g_autofree char *warning = NULL;

  self->has_frame = TRUE;
  show_whereabouts (self);
  gtk_widget_set_visible (GTK_WIDGET (self->places), TRUE);
  gtk_widget_set_visible (GTK_WIDGET (self->rail), G_N_ELEMENTS (place_kinds) > 1);   /* its drawings cost time too */
  gtk_window_set_icon_name (GTK_WINDOW (self), HALFMOON_APP_ID);   /* looks through the icon theme: not before the frame */
  warning = hmui_settings_dup_warning (self->settings);
  if (warning != NULL)
    hmui_message_strip_say (self->strip, warning, FALSE);
  hmui_chart_actions_attach (GTK_APPLICATION_WINDOW (self), self->settings, tell_cb, self);
  hmui_place_fill (hmui_window_get_place (self));
  return G_SOURCE_REMOVE;
}

static void
first_frame_cb (GdkFrameClock *clock, HmuiWindow *self)
{
  g_signal_handlers_disconnect_by_func (clock, first_frame_cb, self);
  g_idle_add_full (G_PRIORITY_DEFAULT_IDLE, fill_cb, g_object_ref (self), g_object_unref);
}

static void
hmui_window_realize (GtkWidget *widget)
{
  GTK_WIDGET_CLASS (hmui_window_parent_class)->realize (widget);
  g_signal_connect_object (gtk_widget_get_frame_clock (widget), "after-paint", G_CALLBACK (first_frame_cb), widget, 0);
}

static void
hmui_window_dispose (GObject *object)
{
  g_clear_handle_id (&HMUI_WINDOW (object)->narrow_idle, g_source_remove);
  gtk_widget_dispose_template (GTK_WIDGET (object), HMUI_TYPE_WINDOW);
  g_clear_object (&HMUI_WINDOW (object)->settings);
  g_clear_object (&HMUI_WINDOW (object)->shop);
  G_OBJECT_CLASS (hmui_window_parent_class)->dispose (object);
}

static void
hmui_window_class_init (HmuiWindowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_window_dispose;
  widget_class->realize = hmui_window_realize;
  widget_class->size_allocate = hmui_window_size_allocate;
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "window/hmui-window.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiWindow, places);
  gtk_widget_class_bind_template_child (widget_class, HmuiWindow, rail);
  gtk_widget_class_bind_template_child (widget_class, HmuiWindow, where);
  gtk_widget_class_bind_template_child (widget_class, HmuiWindow, menu);
  gtk_widget_class_bind_template_child (widget_class, HmuiWindow, strip);
  gtk_widget_class_bind_template_callback (widget_class, row_activated_cb);
  hmui_window_install_actions (widget_class);
}

static void
hmui_window_init (HmuiWindow *self)
{
  g_type_ensure (HMUI_TYPE_MESSAGE_STRIP);
  gtk_widget_init_template (GTK_WIDGET (self));
  gtk_widget_set_visible (GTK_WIDGET (self->places), FALSE);   /* until the first frame: see fill_cb() */
}

static void
bind_size (HmuiWindow *self)
{
  g_object_bind_property (self->settings, "window-width", self, "default-width",
                          G_BINDING_BIDIRECTIONAL | G_BINDING_SYNC_CREATE);
  g_object_bind_property (self->settings, "window-height", self, "default-height",
                          G_BINDING_BIDIRECTIONAL | G_BINDING_SYNC_CREATE);
  g_object_bind_property (self->settings, "window-maximized", self, "maximized",
                          G_BINDING_BIDIRECTIONAL | G_BINDING_SYNC_CREATE);
}

GtkWidget *
hmui_window_new (GtkApplication *application, HmuiSettings *settings, HmuiShop *shop)
{
  HmuiWindow *self = g_object_new (HMUI_TYPE_WINDOW, "application", application, NULL);

  self->settings = g_object_ref (settings);
  self->shop = g_object_ref (shop);
  bind_size (self);
  list_places (self);
  return GTK_WIDGET (self);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-fasteners-place.h"
#include "hmui-identify-page.h"
#include "hmui-lookup-page.h"
#include "hmui-paths.h"
#include "hmui-place.h"
#include "hmui-resource.h"
#include "hmui-tables-page.h"
#include "hmui-widgets.h"
#include <glib/gi18n.h>

struct _HmuiFastenersPlace
{
  GtkWidget parent_instance;
  HmuiSettings *settings;         /* owned */
  HmKnowledge *knowledge;         /* owned; NULL until it is first needed, or while it cannot be read */
  HmuiLookupModel *lookup;        /* owned; NULL as the knowledge */
  /* template children; NULL until the place is first seen */
  GtkStack *views, *pages;
  GtkEditable *search;
  GtkToggleButton *identify, *tables;
  GtkLabel *problem;
};

static void place_init (HmuiPlaceInterface *iface);

G_DEFINE_FINAL_TYPE_WITH_CODE (HmuiFastenersPlace, hmui_fasteners_place, GTK_TYPE_WIDGET,
                               G_IMPLEMENT_INTERFACE (HMUI_TYPE_PLACE, place_init))

/* A page is made when it is first wanted. */
static void
ensure_page (HmuiFastenersPlace *self, const char *name)
{
  GtkWidget *page;

  if (gtk_stack_get_child_by_name (self->pages, name) != NULL)
    return;
  if (g_str_equal (name, "identify"))
    {
      g_autoptr(HmuiIdentifyModel) model = hmui_identify_model_new (self->knowledge, self->settings);

      page = hmui_identify_page_new (model);
    }
  else if (g_str_equal (name, "tables"))
    page = hmui_tables_page_new (self->knowledge, self->settings);
  else
    page = hmui_lookup_page_new (self->lookup);
  gtk_stack_add_named (self->pages, page, name);
}

static void
show_page (HmuiFastenersPlace *self)
{
  const char *name = "lookup";

  if (self->knowledge == NULL)
    return;
  if (gtk_toggle_button_get_active (self->identify))
    name = "identify";
  else if (gtk_toggle_button_get_active (self->tables))
    name = "tables";
  ensure_page (self, name);
  gtk_stack_set_visible_child_name (self->pages, name);
  hmui_place_emit_changed (HMUI_PLACE (self));
}

/* At most one of the two is on; neither means the answer to the search. */
static void
view_toggled_cb (HmuiFastenersPlace *self, GtkToggleButton *button)
{
  GtkToggleButton *other = button == self->identify ? self->tables : self->identify;

  if (gtk_toggle_button_get_active (button))
    gtk_toggle_button_set_active (other, FALSE);
  show_page (self);
}

static void
show_lookup (HmuiFastenersPlace *self)
{
  gtk_toggle_button_set_active (self->identify, FALSE);
  gtk_toggle_button_set_active (self->tables, FALSE);
  show_page (self);
}

static void
search_changed_cb (HmuiFastenersPlace *self)
{
  const char *text = gtk_editable_get_text (self->search);

  if (self->lookup == NULL || g_str_equal (text, hmui_lookup_model_get_text (self->lookup)))
    return;
  hmui_lookup_model_set_text (self->lookup, text);
  show_lookup (self);
}

/* Enter: what is typed is answered at once; once it is, to the first that the answer leads to. */
static void
activate_cb (HmuiFastenersPlace *self)
{
  const HmuiAnswerText *link;
  g_autofree char *target = NULL;

  if (self->lookup == NULL)
    return;
  if (!g_str_equal (gtk_editable_get_text (self->search), hmui_lookup_model_get_text (self->lookup)))
    {
      search_changed_cb (self);
      return;
    }
  link = hmui_lookup_model_get_first_link (self->lookup);
  if (link == NULL)
    return;
  target = g_strdup (link->target);   /* the row goes with the answer */
  gtk_widget_activate_action (GTK_WIDGET (self), link->action != NULL ? link->action : "fasteners.look-up", "s", target);
}

/* Arrow down leads from the search into the page below it. */
static gboolean
search_key_pressed_cb (HmuiFastenersPlace *self, guint key, guint code, GdkModifierType modifiers)
{
  GtkWidget *page = gtk_stack_get_visible_child (self->pages);

  if ((key != GDK_KEY_Down && key != GDK_KEY_KP_Down) || page == NULL || (modifiers & gtk_accelerator_get_default_mod_mask ()) != 0)
    return FALSE;
  if (!g_str_equal (gtk_editable_get_text (self->search), hmui_lookup_model_get_text (self->lookup)))
    search_changed_cb (self);
  return gtk_widget_grab_focus (page) || gtk_widget_child_focus (page, GTK_DIR_TAB_FORWARD);
}

static void
stop_search_cb (HmuiFastenersPlace *self)
{
  gtk_editable_set_text (self->search, "");
  search_changed_cb (self);
}

static void
open_knowledge (HmuiFastenersPlace *self)
{
  g_autofree char *path = hmui_paths_dup_knowledge ();
  g_autoptr(GError) error = NULL;

  if (self->knowledge != NULL)
    return;
  self->knowledge = hm_knowledge_open (path, &error);
  gtk_stack_set_visible_child_name (self->views, self->knowledge != NULL ? "work" : "problem");
  if (self->knowledge == NULL)
    {
      gtk_label_set_text (self->problem, error->message);
      return;
    }
  self->lookup = hmui_lookup_model_new (self->knowledge, self->settings);
  show_page (self);
}

/* The template and the knowledge wait until the place is first seen, so that the window opens without them. */
static void
ensure_filled (HmuiFastenersPlace *self)
{
  if (self->views != NULL)
    return;
  gtk_widget_init_template (GTK_WIDGET (self));
  open_knowledge (self);
}

static void
look_up_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HmuiFastenersPlace *self = HMUI_FASTENERS_PLACE (widget);

  ensure_filled (self);
  gtk_editable_set_text (self->search, g_variant_get_string (parameter, NULL));
  search_changed_cb (self);
  show_lookup (self);
  gtk_widget_grab_focus (widget);
}

/* Wherever the keyboard is, but only while this place is in sight. */
static gboolean
search_key_cb (GtkWidget *widget, GVariant *args, gpointer user_data)
{
  return gtk_widget_get_mapped (widget) && gtk_widget_grab_focus (widget);
}

static gboolean
hmui_fasteners_place_grab_focus (GtkWidget *widget)
{
  HmuiFastenersPlace *self = HMUI_FASTENERS_PLACE (widget);

  ensure_filled (self);
  if (self->knowledge == NULL)
    return GTK_WIDGET_CLASS (hmui_fasteners_place_parent_class)->grab_focus (widget);
  if (!gtk_widget_grab_focus (GTK_WIDGET (self->search)))
    return FALSE;
  gtk_editable_select_region (self->search, 0, -1);   /* so that typing asks anew */
  return TRUE;
}

static void
hmui_fasteners_place_map (GtkWidget *widget)
{
  HmuiFastenersPlace *self = HMUI_FASTENERS_PLACE (widget);

  ensure_filled (self);
  GTK_WIDGET_CLASS (hmui_fasteners_place_parent_class)->map (widget);
}

static void
hmui_fasteners_place_dispose (GObject *object)
{
  HmuiFastenersPlace *self = HMUI_FASTENERS_PLACE (object);

  g_clear_object (&self->lookup);
  if (self->views != NULL)
    hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_FASTENERS_PLACE);
  g_clear_object (&self->settings);
  g_clear_pointer (&self->knowledge, hm_knowledge_unref);
  G_OBJECT_CLASS (hmui_fasteners_place_parent_class)->dispose (object);
}

static void
hmui_fasteners_place_class_init (HmuiFastenersPlaceClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_fasteners_place_dispose;
  widget_class->map = hmui_fasteners_place_map;
  widget_class->grab_focus = hmui_fasteners_place_grab_focus;
  hmui_widgets_ensure_types ();
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "fasteners/hmui-fasteners-place.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiFastenersPlace, views);
  gtk_widget_class_bind_template_child (widget_class, HmuiFastenersPlace, pages);
  gtk_widget_class_bind_template_child (widget_class, HmuiFastenersPlace, search);
  gtk_widget_class_bind_template_child (widget_class, HmuiFastenersPlace, identify);
  gtk_widget_class_bind_template_child (widget_class, HmuiFastenersPlace, tables);
  gtk_widget_class_bind_template_child (widget_class, HmuiFastenersPlace, problem);
  gtk_widget_class_bind_template_callback (widget_class, search_changed_cb);
  gtk_widget_class_bind_template_callback (widget_class, activate_cb);
  gtk_widget_class_bind_template_callback (widget_class, search_key_pressed_cb);
  gtk_widget_class_bind_template_callback (widget_class, stop_search_cb);
  gtk_widget_class_bind_template_callback (widget_class, view_toggled_cb);
  gtk_widget_class_bind_template_callback (widget_class, open_knowledge);
  gtk_widget_class_install_action (widget_class, "fasteners.look-up", "s", look_up_action);
}

static void
hmui_fasteners_place_init (HmuiFastenersPlace *self)
{
  GtkEventController *keys = gtk_shortcut_controller_new ();

  gtk_shortcut_controller_set_scope (GTK_SHORTCUT_CONTROLLER (keys), GTK_SHORTCUT_SCOPE_GLOBAL);
  gtk_shortcut_controller_add_shortcut (GTK_SHORTCUT_CONTROLLER (keys),
                                        gtk_shortcut_new (gtk_keyval_trigger_new (GDK_KEY_f, GDK_CONTROL_MASK),
                                                          gtk_callback_action_new (search_key_cb, NULL, NULL)));
  gtk_widget_add_controller (GTK_WIDGET (self), keys);
}

static char *
dup_whereabouts (HmuiPlace *place)
{
  HmuiFastenersPlace *self = HMUI_FASTENERS_PLACE (place);
  HmuiAnswer *answer = self->lookup != NULL ? hmui_lookup_model_get_answer (self->lookup) : NULL;

  if (self->views != NULL && gtk_toggle_button_get_active (self->identify))
    return g_strdup (_("Fasteners · What is this bolt?"));
  if (self->views != NULL && gtk_toggle_button_get_active (self->tables))
    return g_strdup (_("Fasteners · Tables"));
  if (answer != NULL)
    return g_strdup_printf (_("Fasteners · %s"), hmui_answer_get_title (answer));
  return g_strdup (_("Fasteners"));
}

/* What is typed is changed by typing: the entry has its own undo. */
static gboolean
can_undo (HmuiPlace *place)
{
  return FALSE;
}

static void
undo (HmuiPlace *place)
{
}

static void
fill (HmuiPlace *place)
{
  ensure_filled (HMUI_FASTENERS_PLACE (place));
}

static void
place_init (HmuiPlaceInterface *iface)
{
  iface->dup_whereabouts = dup_whereabouts;
  iface->can_undo = can_undo;
  iface->can_redo = can_undo;
  iface->undo = undo;
  iface->redo = undo;
  iface->fill = fill;
}

GtkWidget *
hmui_fasteners_place_new (HmuiSettings *settings)
{
  HmuiFastenersPlace *self = g_object_new (HMUI_TYPE_FASTENERS_PLACE, NULL);

  self->settings = g_object_ref (settings);
  return GTK_WIDGET (self);
}

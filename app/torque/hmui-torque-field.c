/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-torque-field.h"
#include "hmui-resource.h"
#include <glib/gi18n.h>

#define PAUSE_MS 900   /* without a key, before it is said what is wrong */

struct _HmuiTorqueField
{
  GtkWidget parent_instance;
  GtkLabel *title_label, *unit_label, *error_label;   /* template children */
  GtkEntry *entry;
  GtkWidget *error_line;
  GtkBox *line;
  char *error;                    /* owned; waits for the pause */
  guint pause;                    /* source id; 0: none */
};

enum { PROP_0, PROP_TITLE, PROP_PLACEHOLDER, PROP_UNIT };

static void buildable_init (GtkBuildableIface *iface);
G_DEFINE_FINAL_TYPE_WITH_CODE (HmuiTorqueField, hmui_torque_field, GTK_TYPE_WIDGET,
                               G_IMPLEMENT_INTERFACE (GTK_TYPE_BUILDABLE, buildable_init))

static void
update_name (HmuiTorqueField *self)
{
  const char *title = gtk_label_get_text (self->title_label), *unit = gtk_label_get_text (self->unit_label);
  /* Translators: the name of a field and the unit that it is in */
  g_autofree char *name = unit[0] != '\0' ? g_strdup_printf (_("%s in %s"), title, unit) : g_strdup (title);

  gtk_accessible_update_property (GTK_ACCESSIBLE (self->entry), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
}

static void
show_error (HmuiTorqueField *self)
{
  gboolean wrong = self->error != NULL;

  gtk_label_set_text (self->error_label, wrong ? self->error : "");
  gtk_widget_set_visible (self->error_line, wrong);
  if (wrong)
    gtk_widget_add_css_class (GTK_WIDGET (self), "invalid");
  else
    gtk_widget_remove_css_class (GTK_WIDGET (self), "invalid");
  gtk_accessible_update_state (GTK_ACCESSIBLE (self->entry), GTK_ACCESSIBLE_STATE_INVALID,
                               wrong ? GTK_ACCESSIBLE_INVALID_TRUE : GTK_ACCESSIBLE_INVALID_FALSE, -1);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->entry), GTK_ACCESSIBLE_PROPERTY_DESCRIPTION,
                                  wrong ? self->error : "", -1);
}

static gboolean
pause_over_cb (gpointer data)
{
  HmuiTorqueField *self = data;

  self->pause = 0;
  show_error (self);
  return G_SOURCE_REMOVE;
}

static void
changed_cb (HmuiTorqueField *self)
{
  g_signal_emit_by_name (self, "changed");
}

static void
activate_cb (HmuiTorqueField *self)
{
  g_clear_handle_id (&self->pause, g_source_remove);
  show_error (self);
  g_signal_emit_by_name (self, "submitted");
}

static void
add_child (GtkBuildable *buildable, GtkBuilder *builder, GObject *child, const char *type)
{
  HmuiTorqueField *self = HMUI_TORQUE_FIELD (buildable);

  if (self->line != NULL && GTK_IS_WIDGET (child))
    gtk_box_append (self->line, GTK_WIDGET (child));
  else if (GTK_IS_WIDGET (child))   /* the template's own children come this way too */
    gtk_widget_set_parent (GTK_WIDGET (child), GTK_WIDGET (self));
}

static void
buildable_init (GtkBuildableIface *iface)
{
  GtkBuildableIface *parent = g_type_interface_peek_parent (iface);

  *iface = *parent;
  iface->add_child = add_child;
}

static gboolean
hmui_torque_field_grab_focus (GtkWidget *widget)
{
  return gtk_widget_grab_focus (GTK_WIDGET (HMUI_TORQUE_FIELD (widget)->entry));
}

static void
hmui_torque_field_get_property (GObject *object, guint id, GValue *value, GParamSpec *pspec)
{
  HmuiTorqueField *self = HMUI_TORQUE_FIELD (object);

  switch (id)
    {
    case PROP_TITLE: g_value_set_string (value, gtk_label_get_text (self->title_label)); break;
    case PROP_PLACEHOLDER: g_value_set_string (value, gtk_entry_get_placeholder_text (self->entry)); break;
    case PROP_UNIT: g_value_set_string (value, gtk_label_get_text (self->unit_label)); break;
    default: G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
    }
}

static void
hmui_torque_field_set_property (GObject *object, guint id, const GValue *value, GParamSpec *pspec)
{
  HmuiTorqueField *self = HMUI_TORQUE_FIELD (object);

  switch (id)
    {
    case PROP_TITLE:
      gtk_label_set_text (self->title_label, g_value_get_string (value));
      update_name (self);
      break;
    case PROP_PLACEHOLDER: gtk_entry_set_placeholder_text (self->entry, g_value_get_string (value)); break;
    case PROP_UNIT: hmui_torque_field_set_unit (self, g_value_get_string (value)); break;
    default: G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
    }
}

static void
hmui_torque_field_dispose (GObject *object)
{
  HmuiTorqueField *self = HMUI_TORQUE_FIELD (object);

  g_clear_handle_id (&self->pause, g_source_remove);
  g_clear_pointer (&self->error, g_free);
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_TORQUE_FIELD);
  G_OBJECT_CLASS (hmui_torque_field_parent_class)->dispose (object);
}

static void
hmui_torque_field_class_init (HmuiTorqueFieldClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);
  GParamFlags flags = G_PARAM_READWRITE | G_PARAM_STATIC_STRINGS;

  object_class->dispose = hmui_torque_field_dispose;
  object_class->get_property = hmui_torque_field_get_property;
  object_class->set_property = hmui_torque_field_set_property;
  widget_class->grab_focus = hmui_torque_field_grab_focus;
  g_object_class_install_property (object_class, PROP_TITLE, g_param_spec_string ("title", NULL, NULL, "", flags));
  g_object_class_install_property (object_class, PROP_PLACEHOLDER, g_param_spec_string ("placeholder", NULL, NULL, "", flags));
  g_object_class_install_property (object_class, PROP_UNIT, g_param_spec_string ("unit", NULL, NULL, "", flags));
  g_signal_new ("changed", HMUI_TYPE_TORQUE_FIELD, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
  g_signal_new ("submitted", HMUI_TYPE_TORQUE_FIELD, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
  gtk_widget_class_set_css_name (widget_class, "torquefield");
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BOX_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "torque/hmui-torque-field.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueField, title_label);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueField, entry);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueField, unit_label);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueField, error_line);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueField, error_label);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueField, line);
  gtk_widget_class_bind_template_callback (widget_class, changed_cb);
  gtk_widget_class_bind_template_callback (widget_class, activate_cb);
}

static void
hmui_torque_field_init (HmuiTorqueField *self)
{
  GtkLayoutManager *layout;

  gtk_widget_init_template (GTK_WIDGET (self));
  layout = gtk_widget_get_layout_manager (GTK_WIDGET (self));
  gtk_orientable_set_orientation (GTK_ORIENTABLE (layout), GTK_ORIENTATION_VERTICAL);
  gtk_box_layout_set_spacing (GTK_BOX_LAYOUT (layout), 3);
}

const char *
hmui_torque_field_get_text (HmuiTorqueField *self)
{
  return gtk_editable_get_text (GTK_EDITABLE (self->entry));
}

void
hmui_torque_field_set_text (HmuiTorqueField *self, const char *text)
{
  gtk_editable_set_text (GTK_EDITABLE (self->entry), text);
}

void
hmui_torque_field_set_unit (HmuiTorqueField *self, const char *unit)
{
  gtk_label_set_text (self->unit_label, unit);
  gtk_widget_set_visible (GTK_WIDGET (self->unit_label), unit[0] != '\0');
  update_name (self);
}

void
hmui_torque_field_set_error (HmuiTorqueField *self, const char *error, gboolean now)
{
  gboolean same = g_strcmp0 (self->error, error) == 0;

  if (same && !now)
    return;
  g_free (self->error);
  self->error = g_strdup (error);
  g_clear_handle_id (&self->pause, g_source_remove);
  if (error == NULL || now)
    show_error (self);
  else
    self->pause = g_timeout_add (PAUSE_MS, pause_over_cb, self);
}

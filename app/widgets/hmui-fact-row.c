/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-fact-row.h"
#include "hmui-draw.h"

struct _HmuiFactRow
{
  GtkWidget parent_instance;
  GtkLabel *label_label;  /* template child */
  GtkLabel *value_label;  /* template child */
  GtkBox   *end_box;      /* template child */
};

static void hmui_fact_row_buildable_init (GtkBuildableIface *iface);
G_DEFINE_FINAL_TYPE_WITH_CODE (HmuiFactRow, hmui_fact_row, GTK_TYPE_WIDGET,
                               G_IMPLEMENT_INTERFACE (GTK_TYPE_BUILDABLE, hmui_fact_row_buildable_init))

enum { PROP_0, PROP_LABEL, PROP_VALUE, N_PROPS };
static GParamSpec *properties[N_PROPS];

static void
update_words (HmuiFactRow *self)
{
  g_autofree char *words = g_strdup_printf ("%s: %s", gtk_label_get_text (self->label_label),
                                            gtk_label_get_text (self->value_label));

  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, words, -1);
  gtk_widget_set_visible (GTK_WIDGET (self), gtk_label_get_text (self->value_label)[0] != '\0');
}

static void
hmui_fact_row_add_child (GtkBuildable *buildable, GtkBuilder *builder, GObject *child, const char *type)
{
  HmuiFactRow *self = HMUI_FACT_ROW (buildable);

  /* The template's own children come this way too, before the box is bound. */
  if (self->end_box != NULL && GTK_IS_WIDGET (child))
    hmui_fact_row_set_end (self, GTK_WIDGET (child));
  else if (GTK_IS_WIDGET (child))
    gtk_widget_set_parent (GTK_WIDGET (child), GTK_WIDGET (self));
}

static void
hmui_fact_row_buildable_init (GtkBuildableIface *iface)
{
  GtkBuildableIface *parent = g_type_interface_peek_parent (iface);

  *iface = *parent;
  iface->add_child = hmui_fact_row_add_child;
}

static void
hmui_fact_row_get_property (GObject *object, guint id, GValue *value, GParamSpec *pspec)
{
  HmuiFactRow *self = HMUI_FACT_ROW (object);

  switch (id)
    {
    case PROP_LABEL: g_value_set_string (value, gtk_label_get_text (self->label_label)); break;
    case PROP_VALUE: g_value_set_string (value, gtk_label_get_text (self->value_label)); break;
    default: G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
    }
}

static void
hmui_fact_row_set_property (GObject *object, guint id, const GValue *value, GParamSpec *pspec)
{
  HmuiFactRow *self = HMUI_FACT_ROW (object);

  switch (id)
    {
    case PROP_LABEL: hmui_fact_row_set_label (self, g_value_get_string (value)); break;
    case PROP_VALUE: hmui_fact_row_set_value (self, g_value_get_string (value)); break;
    default: G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
    }
}

static void
hmui_fact_row_dispose (GObject *object)
{
  gtk_widget_dispose_template (GTK_WIDGET (object), HMUI_TYPE_FACT_ROW);
  hmui_draw_unparent_children (GTK_WIDGET (object));
  G_OBJECT_CLASS (hmui_fact_row_parent_class)->dispose (object);
}

static void
hmui_fact_row_class_init (HmuiFactRowClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);
  GParamFlags flags = G_PARAM_READWRITE | G_PARAM_EXPLICIT_NOTIFY | G_PARAM_STATIC_STRINGS;

  object_class->dispose = hmui_fact_row_dispose;
  object_class->get_property = hmui_fact_row_get_property;
  object_class->set_property = hmui_fact_row_set_property;
  properties[PROP_LABEL] = g_param_spec_string ("label", NULL, NULL, "", flags);
  properties[PROP_VALUE] = g_param_spec_string ("value", NULL, NULL, "", flags);
  g_object_class_install_properties (object_class, N_PROPS, properties);
  gtk_widget_class_set_css_name (widget_class, "factrow");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BOX_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_WIDGETS_RESOURCE "hmui-fact-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiFactRow, label_label);
  gtk_widget_class_bind_template_child (widget_class, HmuiFactRow, value_label);
  gtk_widget_class_bind_template_child (widget_class, HmuiFactRow, end_box);
}

static void
hmui_fact_row_init (HmuiFactRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  gtk_box_layout_set_spacing (GTK_BOX_LAYOUT (gtk_widget_get_layout_manager (GTK_WIDGET (self))), 12);
  gtk_widget_set_visible (GTK_WIDGET (self), FALSE);
}

GtkWidget *
hmui_fact_row_new (const char *label, const char *value)
{
  return g_object_new (HMUI_TYPE_FACT_ROW, "label", label, "value", value, NULL);
}

void
hmui_fact_row_set_label (HmuiFactRow *self, const char *label)
{
  g_return_if_fail (HMUI_IS_FACT_ROW (self));
  gtk_label_set_text (self->label_label, label != NULL ? label : "");
  update_words (self);
  g_object_notify_by_pspec (G_OBJECT (self), properties[PROP_LABEL]);
}

void
hmui_fact_row_set_value (HmuiFactRow *self, const char *value)
{
  g_return_if_fail (HMUI_IS_FACT_ROW (self));
  gtk_label_set_text (self->value_label, value != NULL ? value : "");
  update_words (self);
  g_object_notify_by_pspec (G_OBJECT (self), properties[PROP_VALUE]);
}

void
hmui_fact_row_set_end (HmuiFactRow *self, GtkWidget *child)
{
  g_return_if_fail (HMUI_IS_FACT_ROW (self));
  hmui_draw_unparent_children (GTK_WIDGET (self->end_box));
  gtk_widget_set_visible (GTK_WIDGET (self->end_box), child != NULL);
  if (child == NULL)
    {
      gtk_widget_remove_css_class (GTK_WIDGET (self), "with-end");
      return;
    }
  gtk_widget_add_css_class (GTK_WIDGET (self), "with-end");
  gtk_box_append (self->end_box, child);
}

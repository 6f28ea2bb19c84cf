/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-torque-chooser.h"
#include "hmui-resource.h"

struct _HmuiTorqueChooser
{
  GtkWidget parent_instance;
  GtkLabel *title_label;          /* template children */
  GtkDropDown *drop_down;
  GStrv texts;                    /* owned, may be NULL */
  gboolean setting;               /* the program is choosing */
};

enum { PROP_0, PROP_TITLE };

G_DEFINE_FINAL_TYPE (HmuiTorqueChooser, hmui_torque_chooser, GTK_TYPE_WIDGET)

static void
selected_cb (HmuiTorqueChooser *self)
{
  guint index = gtk_drop_down_get_selected (self->drop_down);

  if (!self->setting && index != GTK_INVALID_LIST_POSITION)
    g_signal_emit_by_name (self, "chosen", index);
}

static void
setup_button_cb (GtkSignalListItemFactory *factory, GtkListItem *item)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), 0.0);
  gtk_label_set_ellipsize (GTK_LABEL (label), PANGO_ELLIPSIZE_END);
  gtk_list_item_set_child (item, label);
}

static void
setup_row_cb (GtkSignalListItemFactory *factory, GtkListItem *item)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), 0.0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (label), 44);
  gtk_widget_add_css_class (label, "choice-row");
  gtk_list_item_set_child (item, label);
}

static void
bind_cb (GtkSignalListItemFactory *factory, GtkListItem *item)
{
  GtkStringObject *text = gtk_list_item_get_item (item);

  gtk_label_set_text (GTK_LABEL (gtk_list_item_get_child (item)), gtk_string_object_get_string (text));
}

static void
add_factories (HmuiTorqueChooser *self)
{
  g_autoptr(GtkListItemFactory) button = gtk_signal_list_item_factory_new ();
  g_autoptr(GtkListItemFactory) rows = gtk_signal_list_item_factory_new ();

  g_signal_connect (button, "setup", G_CALLBACK (setup_button_cb), NULL);
  g_signal_connect (button, "bind", G_CALLBACK (bind_cb), NULL);
  g_signal_connect (rows, "setup", G_CALLBACK (setup_row_cb), NULL);
  g_signal_connect (rows, "bind", G_CALLBACK (bind_cb), NULL);
  gtk_drop_down_set_factory (self->drop_down, button);
  gtk_drop_down_set_list_factory (self->drop_down, rows);
}

static gboolean
hmui_torque_chooser_grab_focus (GtkWidget *widget)
{
  return gtk_widget_grab_focus (GTK_WIDGET (HMUI_TORQUE_CHOOSER (widget)->drop_down));
}

static void
hmui_torque_chooser_get_property (GObject *object, guint id, GValue *value, GParamSpec *pspec)
{
  if (id == PROP_TITLE)
    g_value_set_string (value, gtk_label_get_text (HMUI_TORQUE_CHOOSER (object)->title_label));
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
hmui_torque_chooser_set_property (GObject *object, guint id, const GValue *value, GParamSpec *pspec)
{
  HmuiTorqueChooser *self = HMUI_TORQUE_CHOOSER (object);

  if (id != PROP_TITLE)
    {
      G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
      return;
    }
  gtk_label_set_text (self->title_label, g_value_get_string (value));
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->drop_down), GTK_ACCESSIBLE_PROPERTY_LABEL, g_value_get_string (value), -1);
}

static void
hmui_torque_chooser_dispose (GObject *object)
{
  g_clear_pointer (&HMUI_TORQUE_CHOOSER (object)->texts, g_strfreev);
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_TORQUE_CHOOSER);
  G_OBJECT_CLASS (hmui_torque_chooser_parent_class)->dispose (object);
}

static void
hmui_torque_chooser_class_init (HmuiTorqueChooserClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  object_class->dispose = hmui_torque_chooser_dispose;
  object_class->get_property = hmui_torque_chooser_get_property;
  object_class->set_property = hmui_torque_chooser_set_property;
  widget_class->grab_focus = hmui_torque_chooser_grab_focus;
  g_object_class_install_property (object_class, PROP_TITLE,
    g_param_spec_string ("title", NULL, NULL, "", G_PARAM_READWRITE | G_PARAM_STATIC_STRINGS));
  g_signal_new ("chosen", HMUI_TYPE_TORQUE_CHOOSER, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 1, G_TYPE_UINT);
  gtk_widget_class_set_css_name (widget_class, "torquechooser");
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BOX_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "torque/hmui-torque-chooser.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueChooser, title_label);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueChooser, drop_down);
  gtk_widget_class_bind_template_callback (widget_class, selected_cb);
}

static void
hmui_torque_chooser_init (HmuiTorqueChooser *self)
{
  GtkLayoutManager *layout;

  gtk_widget_init_template (GTK_WIDGET (self));
  layout = gtk_widget_get_layout_manager (GTK_WIDGET (self));
  gtk_orientable_set_orientation (GTK_ORIENTABLE (layout), GTK_ORIENTATION_VERTICAL);
  gtk_box_layout_set_spacing (GTK_BOX_LAYOUT (layout), 3);
  add_factories (self);
}

void
hmui_torque_chooser_set (HmuiTorqueChooser *self, const char * const *texts, guint index)
{
  g_return_if_fail (HMUI_IS_TORQUE_CHOOSER (self) && texts != NULL);
  self->setting = TRUE;
  if (self->texts == NULL || !g_strv_equal ((const char * const *) self->texts, texts))
    {
      g_autoptr(GtkStringList) list = gtk_string_list_new (texts);

      g_strfreev (self->texts);
      self->texts = g_strdupv ((GStrv) texts);
      gtk_drop_down_set_model (self->drop_down, G_LIST_MODEL (list));
    }
  gtk_drop_down_set_selected (self->drop_down, index);
  self->setting = FALSE;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-line-list.h"
#include "hmui-focus.h"
#include "hmui-line-row.h"

struct _HmuiLineList
{
  GtkWidget parent_instance;
  GListModel *model;              /* owned; NULL for none */
  gboolean pressable;
  char *row_class;                /* owned; style class of each button */
};

enum { PROP_0, PROP_PRESSABLE, PROP_ROW_CLASS };

G_DEFINE_FINAL_TYPE (HmuiLineList, hmui_line_list, GTK_TYPE_WIDGET)

static void
button_clicked_cb (HmuiLineList *self, GtkButton *button)
{
  HmuiLine *line = g_object_get_data (G_OBJECT (button), "line");

  g_signal_emit_by_name (self, "pressed", hmui_line_get_index (line));
}

static GtkWidget *
make_row (HmuiLineList *self, HmuiLine *line)
{
  GtkWidget *button;

  if (!self->pressable)
    return hmui_line_row_new (line);
  button = gtk_button_new ();
  gtk_button_set_child (GTK_BUTTON (button), hmui_line_row_new (line));
  gtk_widget_add_css_class (button, self->row_class);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, hmui_line_get_title (line), -1);
  if (hmui_line_get_value (line) != NULL)
    gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_DESCRIPTION,
                                    hmui_line_get_value (line), -1);
  g_object_set_data_full (G_OBJECT (button), "line", g_object_ref (line), g_object_unref);
  g_signal_connect_object (button, "clicked", G_CALLBACK (button_clicked_cb), self, G_CONNECT_SWAPPED);
  return button;
}

static void
remove_rows (HmuiLineList *self)
{
  GtkWidget *child;

  hmui_focus_leave (GTK_WIDGET (self));
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
}

static void
fill (HmuiLineList *self)
{
  guint n = self->model != NULL ? g_list_model_get_n_items (self->model) : 0;

  remove_rows (self);
  for (guint i = 0; i < n; i++)
    {
      g_autoptr(HmuiLine) line = g_list_model_get_item (self->model, i);

      gtk_widget_set_parent (make_row (self, line), GTK_WIDGET (self));
    }
}

static void
hmui_line_list_get_property (GObject *object, guint id, GValue *value, GParamSpec *pspec)
{
  if (id == PROP_PRESSABLE)
    g_value_set_boolean (value, HMUI_LINE_LIST (object)->pressable);
  else if (id == PROP_ROW_CLASS)
    g_value_set_string (value, HMUI_LINE_LIST (object)->row_class);
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
hmui_line_list_set_property (GObject *object, guint id, const GValue *value, GParamSpec *pspec)
{
  if (id == PROP_PRESSABLE)
    HMUI_LINE_LIST (object)->pressable = g_value_get_boolean (value);
  else if (id == PROP_ROW_CLASS)
    HMUI_LINE_LIST (object)->row_class = g_value_dup_string (value);
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
hmui_line_list_dispose (GObject *object)
{
  HmuiLineList *self = HMUI_LINE_LIST (object);

  if (self->model != NULL)
    g_signal_handlers_disconnect_by_func (self->model, fill, self);
  g_clear_object (&self->model);
  remove_rows (self);
  G_OBJECT_CLASS (hmui_line_list_parent_class)->dispose (object);
}

static void
hmui_line_list_finalize (GObject *object)
{
  g_free (HMUI_LINE_LIST (object)->row_class);
  G_OBJECT_CLASS (hmui_line_list_parent_class)->finalize (object);
}

static void
hmui_line_list_class_init (HmuiLineListClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  object_class->get_property = hmui_line_list_get_property;
  object_class->set_property = hmui_line_list_set_property;
  object_class->dispose = hmui_line_list_dispose;
  object_class->finalize = hmui_line_list_finalize;
  g_object_class_install_property (object_class, PROP_PRESSABLE,
    g_param_spec_boolean ("pressable", NULL, NULL, FALSE,
                          G_PARAM_READWRITE | G_PARAM_CONSTRUCT_ONLY | G_PARAM_STATIC_STRINGS));
  g_object_class_install_property (object_class, PROP_ROW_CLASS,
    g_param_spec_string ("row-class", NULL, NULL, "quiet-button",
                         G_PARAM_READWRITE | G_PARAM_CONSTRUCT_ONLY | G_PARAM_STATIC_STRINGS));
  g_signal_new ("pressed", HMUI_TYPE_LINE_LIST, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 1, G_TYPE_UINT);
  gtk_widget_class_set_css_name (widget_class, "lines");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BOX_LAYOUT);
}

static void
hmui_line_list_init (HmuiLineList *self)
{
  GtkLayoutManager *layout = gtk_widget_get_layout_manager (GTK_WIDGET (self));

  gtk_orientable_set_orientation (GTK_ORIENTABLE (layout), GTK_ORIENTATION_VERTICAL);
  gtk_box_layout_set_spacing (GTK_BOX_LAYOUT (layout), 6);
}

void
hmui_line_list_set_model (HmuiLineList *self, GListModel *model)
{
  g_return_if_fail (HMUI_IS_LINE_LIST (self));
  if (self->model != NULL)
    g_signal_handlers_disconnect_by_func (self->model, fill, self);
  g_set_object (&self->model, model);
  if (model != NULL)
    g_signal_connect_swapped (model, "items-changed", G_CALLBACK (fill), self);
  fill (self);
}

gboolean
hmui_line_list_press (HmuiLineList *self, guint position)
{
  g_autoptr(HmuiLine) line = NULL;

  if (!self->pressable || self->model == NULL)
    return FALSE;
  line = g_list_model_get_item (self->model, position);
  if (line == NULL)
    return FALSE;
  g_signal_emit_by_name (self, "pressed", hmui_line_get_index (line));
  return TRUE;
}

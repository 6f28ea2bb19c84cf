/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-choice-group.h"
#include "hmui-choice-card.h"

struct _HmuiChoiceGroup
{
  GtkWidget parent_instance;
  GtkFlowBox *flow;               /* child */
  GPtrArray *buttons;             /* owned; borrowed widgets, in the lines' order */
  GArray *indices;                /* owned; of guint */
  gboolean several;
  guint most_columns;
  gboolean setting;               /* the program sets it, not the person */
};

enum { PROP_0, PROP_SEVERAL, PROP_MOST_COLUMNS };

G_DEFINE_FINAL_TYPE (HmuiChoiceGroup, hmui_choice_group, GTK_TYPE_WIDGET)

static gboolean
is_on (GtkWidget *button)
{
  if (GTK_IS_CHECK_BUTTON (button))
    return gtk_check_button_get_active (GTK_CHECK_BUTTON (button));
  return gtk_toggle_button_get_active (GTK_TOGGLE_BUTTON (button));
}

static gboolean
any_is_on (HmuiChoiceGroup *self)
{
  for (guint i = 0; i < self->buttons->len; i++)
    if (is_on (g_ptr_array_index (self->buttons, i)))
      return TRUE;
  return FALSE;
}

static void
toggled_cb (HmuiChoiceGroup *self, GtkWidget *button)
{
  guint position;

  if (self->setting || !g_ptr_array_find (self->buttons, button, &position))
    return;
  if (!self->several && !any_is_on (self))   /* one of them is always chosen, once one was */
    {
      hmui_choice_group_set_on (self, g_array_index (self->indices, guint, position), TRUE);
      return;
    }
  g_signal_emit_by_name (self, "chosen", g_array_index (self->indices, guint, position), is_on (button));
}

static GtkWidget *
make_check (HmuiLine *line)
{
  GtkWidget *check = gtk_check_button_new ();
  GtkWidget *label = gtk_label_new (hmui_line_get_title (line));

  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_xalign (GTK_LABEL (label), 0.0);
  gtk_label_set_width_chars (GTK_LABEL (label), 16);
  gtk_label_set_max_width_chars (GTK_LABEL (label), 26);
  gtk_widget_set_hexpand (label, TRUE);
  gtk_check_button_set_child (GTK_CHECK_BUTTON (check), label);
  gtk_widget_set_tooltip_text (check, hmui_line_get_detail (line));
  gtk_accessible_update_property (GTK_ACCESSIBLE (check), GTK_ACCESSIBLE_PROPERTY_LABEL, hmui_line_get_title (line), -1);
  return check;
}

/* The cell itself is no stop for Tab, and no row of a table. */
static GtkWidget *
make_cell (GtkWidget *button)
{
  return g_object_new (GTK_TYPE_FLOW_BOX_CHILD, "accessible-role", GTK_ACCESSIBLE_ROLE_GROUP, "focusable", FALSE,
                       "child", button, NULL);
}

static void
add_line (HmuiChoiceGroup *self, HmuiLine *line)
{
  GtkWidget *button = self->several ? make_check (line) : hmui_choice_card_new (line);
  guint index = hmui_line_get_index (line);

  if (!self->several && self->buttons->len > 0)
    gtk_toggle_button_set_group (GTK_TOGGLE_BUTTON (button), g_ptr_array_index (self->buttons, 0));
  g_ptr_array_add (self->buttons, button);
  g_array_append_val (self->indices, index);
  gtk_flow_box_append (self->flow, make_cell (button));
  g_signal_connect_object (button, "toggled", G_CALLBACK (toggled_cb), self, G_CONNECT_SWAPPED);
}

static void
hmui_choice_group_get_property (GObject *object, guint id, GValue *value, GParamSpec *pspec)
{
  HmuiChoiceGroup *self = HMUI_CHOICE_GROUP (object);

  switch (id)
    {
    case PROP_SEVERAL: g_value_set_boolean (value, self->several); break;
    case PROP_MOST_COLUMNS: g_value_set_uint (value, self->most_columns); break;
    default: G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
    }
}

static void
hmui_choice_group_set_property (GObject *object, guint id, const GValue *value, GParamSpec *pspec)
{
  HmuiChoiceGroup *self = HMUI_CHOICE_GROUP (object);

  switch (id)
    {
    case PROP_SEVERAL: self->several = g_value_get_boolean (value); break;
    case PROP_MOST_COLUMNS:
      self->most_columns = g_value_get_uint (value);
      gtk_flow_box_set_max_children_per_line (self->flow, self->most_columns);
      break;
    default: G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
    }
}

static void
hmui_choice_group_dispose (GObject *object)
{
  HmuiChoiceGroup *self = HMUI_CHOICE_GROUP (object);

  g_ptr_array_set_size (self->buttons, 0);
  if (self->flow != NULL)
    gtk_widget_unparent (GTK_WIDGET (self->flow));
  self->flow = NULL;
  G_OBJECT_CLASS (hmui_choice_group_parent_class)->dispose (object);
}

static void
hmui_choice_group_finalize (GObject *object)
{
  HmuiChoiceGroup *self = HMUI_CHOICE_GROUP (object);

  g_ptr_array_unref (self->buttons);
  g_array_unref (self->indices);
  G_OBJECT_CLASS (hmui_choice_group_parent_class)->finalize (object);
}

static void
hmui_choice_group_class_init (HmuiChoiceGroupClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);
  GParamFlags flags = G_PARAM_READWRITE | G_PARAM_CONSTRUCT_ONLY | G_PARAM_STATIC_STRINGS;

  object_class->get_property = hmui_choice_group_get_property;
  object_class->set_property = hmui_choice_group_set_property;
  object_class->dispose = hmui_choice_group_dispose;
  object_class->finalize = hmui_choice_group_finalize;
  g_object_class_install_property (object_class, PROP_SEVERAL,
    g_param_spec_boolean ("several", NULL, NULL, FALSE, flags));
  g_object_class_install_property (object_class, PROP_MOST_COLUMNS,
    g_param_spec_uint ("most-columns", NULL, NULL, 1, 8, 2, flags));
  g_signal_new ("chosen", HMUI_TYPE_CHOICE_GROUP, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 2,
                G_TYPE_UINT, G_TYPE_BOOLEAN);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
}

static void
hmui_choice_group_init (HmuiChoiceGroup *self)
{
  self->buttons = g_ptr_array_new ();
  self->indices = g_array_new (FALSE, FALSE, sizeof (guint));
  self->flow = g_object_new (GTK_TYPE_FLOW_BOX, "accessible-role", GTK_ACCESSIBLE_ROLE_GROUP, NULL);
  gtk_flow_box_set_selection_mode (self->flow, GTK_SELECTION_NONE);
  gtk_flow_box_set_column_spacing (self->flow, 12);
  gtk_flow_box_set_row_spacing (self->flow, 12);
  gtk_widget_set_parent (GTK_WIDGET (self->flow), GTK_WIDGET (self));
}

void
hmui_choice_group_set_lines (HmuiChoiceGroup *self, GListModel *lines)
{
  GtkWidget *child;

  g_return_if_fail (HMUI_IS_CHOICE_GROUP (self));
  gtk_flow_box_set_row_spacing (self->flow, self->several ? 0 : 12);
  gtk_flow_box_set_homogeneous (self->flow, !self->several);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self->flow))) != NULL)
    gtk_flow_box_remove (self->flow, child);
  g_ptr_array_set_size (self->buttons, 0);
  g_array_set_size (self->indices, 0);
  for (guint i = 0; i < g_list_model_get_n_items (lines); i++)
    {
      g_autoptr(HmuiLine) line = g_list_model_get_item (lines, i);

      add_line (self, line);
    }
}

void
hmui_choice_group_set_on (HmuiChoiceGroup *self, guint index, gboolean on)
{
  g_return_if_fail (HMUI_IS_CHOICE_GROUP (self));
  self->setting = TRUE;
  for (guint i = 0; i < self->buttons->len; i++)
    if (g_array_index (self->indices, guint, i) == index)
      g_object_set (g_ptr_array_index (self->buttons, i), "active", on, NULL);
  self->setting = FALSE;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-choice-group.h"
#include "hmui-choice-card.h"
#include "hmui-choice-layout.h"

#define COLUMN_GAP 10      /* px */
#define CARD_ROW_GAP 8     /* px */

struct _HmuiChoiceGroup
{
  GtkWidget parent_instance;
  GPtrArray *buttons;             /* owned; borrowed widgets, in the lines' order */
  GArray *indices;                /* owned; of guint */
  gboolean several;
  guint most_columns;
  gboolean setting;               /* the program sets it, not the person */
  GtkWidget *pressed;             /* borrowed from buttons: the last one pressed; NULL: none */
  gint64 pressed_at_us;
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

static void
turn_off_others (HmuiChoiceGroup *self, GtkWidget *button)
{
  self->setting = TRUE;
  for (guint i = 0; i < self->buttons->len; i++)
    if (g_ptr_array_index (self->buttons, i) != button)
      g_object_set (g_ptr_array_index (self->buttons, i), "active", FALSE, NULL);
  self->setting = FALSE;
}

static void
toggled_cb (HmuiChoiceGroup *self, GtkWidget *button)
{
  guint position;

  if (self->setting || !g_ptr_array_find (self->buttons, button, &position))
    return;
  if (!self->several && !is_on (button))   /* one of them is always chosen, once one was */
    {
      hmui_choice_group_set_on (self, g_array_index (self->indices, guint, position), TRUE);
      return;
    }
  if (!self->several)
    turn_off_others (self, button);
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

static void
emit_activated (HmuiChoiceGroup *self, GtkWidget *button)
{
  guint position;

  if (g_ptr_array_find (self->buttons, button, &position))
    g_signal_emit_by_name (self, "activated", g_array_index (self->indices, guint, position));
}

/* A button keeps presses of the pointer to itself, so a second one is told by its time. */
static void
clicked_cb (HmuiChoiceGroup *self, GtkWidget *button)
{
  gint64 now_us = g_get_monotonic_time ();
  gboolean again = self->pressed == button;
  int limit_ms;

  g_object_get (gtk_widget_get_settings (button), "gtk-double-click-time", &limit_ms, NULL);
  again = again && now_us - self->pressed_at_us <= limit_ms * G_GINT64_CONSTANT (1000);
  self->pressed = again ? NULL : button;
  self->pressed_at_us = now_us;
  if (again)
    emit_activated (self, button);
}

static gboolean
key_pressed_cb (GtkWidget *button, guint keyval, guint keycode, GdkModifierType state, GtkEventController *keys)
{
  HmuiChoiceGroup *self = HMUI_CHOICE_GROUP (gtk_widget_get_parent (button));

  if ((keyval != GDK_KEY_Return && keyval != GDK_KEY_KP_Enter && keyval != GDK_KEY_ISO_Enter) ||
      (state & gtk_accelerator_get_default_mod_mask ()) != 0)
    return GDK_EVENT_PROPAGATE;
  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (button), TRUE);
  emit_activated (self, button);
  return GDK_EVENT_STOP;
}

static GtkWidget *
make_card (HmuiChoiceGroup *self, HmuiLine *line)
{
  GtkWidget *card = hmui_choice_card_new (line);
  GtkEventController *keys = gtk_event_controller_key_new ();

  g_signal_connect_object (keys, "key-pressed", G_CALLBACK (key_pressed_cb), card, G_CONNECT_SWAPPED);
  gtk_widget_add_controller (card, keys);
  g_signal_connect_object (card, "clicked", G_CALLBACK (clicked_cb), self, G_CONNECT_SWAPPED);
  return card;
}

static void
add_line (HmuiChoiceGroup *self, HmuiLine *line)
{
  GtkWidget *button = self->several ? make_check (line) : make_card (self, line);
  guint index = hmui_line_get_index (line);

  g_ptr_array_add (self->buttons, button);
  g_array_append_val (self->indices, index);
  gtk_widget_set_parent (button, GTK_WIDGET (self));
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
    case PROP_MOST_COLUMNS: self->most_columns = g_value_get_uint (value); break;
    default: G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
    }
}

static void
hmui_choice_group_constructed (GObject *object)
{
  HmuiChoiceGroup *self = HMUI_CHOICE_GROUP (object);

  G_OBJECT_CLASS (hmui_choice_group_parent_class)->constructed (object);
  gtk_widget_set_layout_manager (GTK_WIDGET (self), hmui_choice_layout_new (self->most_columns, COLUMN_GAP,
                                                                            self->several ? 0 : CARD_ROW_GAP));
}

static void
remove_buttons (HmuiChoiceGroup *self)
{
  GtkWidget *child;

  self->pressed = NULL;
  g_ptr_array_set_size (self->buttons, 0);
  g_array_set_size (self->indices, 0);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
}

static void
hmui_choice_group_dispose (GObject *object)
{
  remove_buttons (HMUI_CHOICE_GROUP (object));
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
  object_class->constructed = hmui_choice_group_constructed;
  object_class->dispose = hmui_choice_group_dispose;
  object_class->finalize = hmui_choice_group_finalize;
  g_object_class_install_property (object_class, PROP_SEVERAL,
    g_param_spec_boolean ("several", NULL, NULL, FALSE, flags));
  g_object_class_install_property (object_class, PROP_MOST_COLUMNS,
    g_param_spec_uint ("most-columns", NULL, NULL, 1, 8, 2, flags));
  g_signal_new ("chosen", HMUI_TYPE_CHOICE_GROUP, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 2,
                G_TYPE_UINT, G_TYPE_BOOLEAN);
  g_signal_new ("activated", HMUI_TYPE_CHOICE_GROUP, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 1, G_TYPE_UINT);
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
}

static void
hmui_choice_group_init (HmuiChoiceGroup *self)
{
  self->buttons = g_ptr_array_new ();
  self->indices = g_array_new (FALSE, FALSE, sizeof (guint));
}

void
hmui_choice_group_set_lines (HmuiChoiceGroup *self, GListModel *lines)
{
  g_return_if_fail (HMUI_IS_CHOICE_GROUP (self));
  remove_buttons (self);
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

void
hmui_choice_group_set_shown (HmuiChoiceGroup *self, guint index, gboolean shown)
{
  g_return_if_fail (HMUI_IS_CHOICE_GROUP (self));
  for (guint i = 0; i < self->buttons->len; i++)
    if (g_array_index (self->indices, guint, i) == index)
      gtk_widget_set_visible (g_ptr_array_index (self->buttons, i), shown);
}

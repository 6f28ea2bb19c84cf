/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-torque-form.h"
#include "hmui-heading.h"
#include "hmui-resource.h"
#include "hmui-torque-chooser.h"
#include "hmui-torque-field.h"
#include "hmui-torque-grid.h"

struct _HmuiTorqueForm
{
  GtkWidget parent_instance;
  HmuiTorqueModel *model;         /* owned */
  /* template children */
  HmuiTorqueField *thread, *engaged, *manual, *page, *adapter_length, *lever, *angle;
  HmuiTorqueChooser *joint, *special, *strength, *friction, *seat, *into, *adapter, *extra_unit;
  GtkSpinButton *share;
  GtkWidget *share_box;
  GtkFlowBox *usual_threads;
  GtkPopover *usual_popover;
};

G_DEFINE_FINAL_TYPE (HmuiTorqueForm, hmui_torque_form, GTK_TYPE_WIDGET)

static HmuiTorqueField *
get_field (HmuiTorqueForm *self, HmuiTorqueInput input)
{
  switch (input)
    {
    case HMUI_TORQUE_INPUT_THREAD: return self->thread;
    case HMUI_TORQUE_INPUT_ENGAGED: return self->engaged;
    case HMUI_TORQUE_INPUT_ADAPTER: return self->adapter_length;
    case HMUI_TORQUE_INPUT_LEVER: return self->lever;
    case HMUI_TORQUE_INPUT_ANGLE: return self->angle;
    case HMUI_TORQUE_INPUT_MANUAL: return self->manual;
    case HMUI_TORQUE_INPUT_PAGE:
    case HMUI_TORQUE_N_INPUTS:
    default: return self->page;
    }
}

static HmuiTorqueChooser *
get_chooser (HmuiTorqueForm *self, HmuiTorqueChoice choice)
{
  switch (choice)
    {
    case HMUI_TORQUE_CHOICE_JOINT: return self->joint;
    case HMUI_TORQUE_CHOICE_SPECIAL: return self->special;
    case HMUI_TORQUE_CHOICE_STRENGTH: return self->strength;
    case HMUI_TORQUE_CHOICE_FRICTION: return self->friction;
    case HMUI_TORQUE_CHOICE_SEAT: return self->seat;
    case HMUI_TORQUE_CHOICE_INTO: return self->into;
    case HMUI_TORQUE_CHOICE_ADAPTER: return self->adapter;
    case HMUI_TORQUE_CHOICE_EXTRA_UNIT:
    case HMUI_TORQUE_N_CHOICES:
    default: return self->extra_unit;
    }
}

static void
typed_cb (HmuiTorqueForm *self, HmuiTorqueField *field)
{
  for (HmuiTorqueInput input = 0; self->model != NULL && input < HMUI_TORQUE_N_INPUTS; input++)
    if (get_field (self, input) == field)
      hmui_torque_model_set_text (self->model, input, hmui_torque_field_get_text (field));
}

static void
chosen_cb (HmuiTorqueForm *self, guint index, HmuiTorqueChooser *chooser)
{
  for (HmuiTorqueChoice choice = 0; self->model != NULL && choice < HMUI_TORQUE_N_CHOICES; choice++)
    if (get_chooser (self, choice) == chooser)
      hmui_torque_model_set_choice (self->model, choice, index);
}

static void
share_cb (HmuiTorqueForm *self)
{
  if (self->model != NULL)
    hmui_torque_model_set_share_percent (self->model, gtk_spin_button_get_value (self->share));
}

static void
usual_cb (HmuiTorqueForm *self, GtkFlowBoxChild *child)
{
  hmui_torque_field_set_text (self->thread, gtk_label_get_text (GTK_LABEL (gtk_flow_box_child_get_child (child))));
  gtk_popover_popdown (self->usual_popover);
}

static gboolean
hmui_torque_form_grab_focus (GtkWidget *widget)
{
  HmuiTorqueForm *self = HMUI_TORQUE_FORM (widget);

  if (gtk_widget_get_visible (GTK_WIDGET (self->thread)))
    return gtk_widget_grab_focus (GTK_WIDGET (self->thread));
  return gtk_widget_grab_focus (GTK_WIDGET (self->joint));
}

static void
hmui_torque_form_dispose (GObject *object)
{
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_TORQUE_FORM);
  g_clear_object (&HMUI_TORQUE_FORM (object)->model);
  G_OBJECT_CLASS (hmui_torque_form_parent_class)->dispose (object);
}

static void
bind_children (GtkWidgetClass *widget_class)
{
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueForm, thread);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueForm, engaged);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueForm, manual);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueForm, page);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueForm, adapter_length);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueForm, lever);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueForm, angle);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueForm, joint);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueForm, special);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueForm, strength);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueForm, friction);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueForm, seat);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueForm, into);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueForm, adapter);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueForm, extra_unit);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueForm, share);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueForm, share_box);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueForm, usual_threads);
  gtk_widget_class_bind_template_child (widget_class, HmuiTorqueForm, usual_popover);
}

static void
hmui_torque_form_class_init (HmuiTorqueFormClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_torque_form_dispose;
  widget_class->grab_focus = hmui_torque_form_grab_focus;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "torque/hmui-torque-form.ui");
  bind_children (widget_class);
  gtk_widget_class_bind_template_callback (widget_class, typed_cb);
  gtk_widget_class_bind_template_callback (widget_class, chosen_cb);
  gtk_widget_class_bind_template_callback (widget_class, share_cb);
  gtk_widget_class_bind_template_callback (widget_class, usual_cb);
}

static void
hmui_torque_form_init (HmuiTorqueForm *self)
{
  g_type_ensure (HMUI_TYPE_HEADING);
  g_type_ensure (HMUI_TYPE_TORQUE_CHOOSER);
  g_type_ensure (HMUI_TYPE_TORQUE_FIELD);
  g_type_ensure (HMUI_TYPE_TORQUE_GRID);
  gtk_widget_init_template (GTK_WIDGET (self));
}

static void
fill_usual (HmuiTorqueForm *self)
{
  g_auto(GStrv) threads = hmui_torque_model_dup_usual_threads (self->model);

  if (gtk_flow_box_get_child_at_index (self->usual_threads, 0) != NULL)
    return;
  for (guint i = 0; threads[i] != NULL; i++)
    {
      GtkWidget *label = gtk_label_new (threads[i]);

      gtk_widget_add_css_class (label, "choice-row");
      gtk_flow_box_append (self->usual_threads, label);
    }
}

/* Only what the answer depends on is asked. */
static void
show_what_is_asked (HmuiTorqueForm *self)
{
  gboolean special = hmui_torque_model_is_special (self->model);
  guint adapter = hmui_torque_model_get_choice (self->model, HMUI_TORQUE_CHOICE_ADAPTER);
  GtkWidget * const for_theory[] = { GTK_WIDGET (self->thread), GTK_WIDGET (self->strength), GTK_WIDGET (self->friction),
                                     GTK_WIDGET (self->seat), GTK_WIDGET (self->into), GTK_WIDGET (self->engaged),
                                     self->share_box };

  for (guint i = 0; i < G_N_ELEMENTS (for_theory); i++)
    gtk_widget_set_visible (for_theory[i], !special);
  gtk_widget_set_visible (GTK_WIDGET (self->special), special);
  gtk_widget_set_visible (GTK_WIDGET (self->adapter_length), adapter != HMUI_TORQUE_ADAPTER_NONE);
  gtk_widget_set_visible (GTK_WIDGET (self->lever), adapter != HMUI_TORQUE_ADAPTER_NONE);
  gtk_widget_set_visible (GTK_WIDGET (self->angle), adapter == HMUI_TORQUE_ADAPTER_ANGLE);
}

void
hmui_torque_form_refresh (HmuiTorqueForm *self)
{
  g_return_if_fail (HMUI_IS_TORQUE_FORM (self) && self->model != NULL);
  for (HmuiTorqueChoice choice = 0; choice < HMUI_TORQUE_N_CHOICES; choice++)
    {
      g_auto(GStrv) texts = hmui_torque_model_dup_choices (self->model, choice);

      hmui_torque_chooser_set (get_chooser (self, choice), (const char * const *) texts,
                               hmui_torque_model_get_choice (self->model, choice));
    }
  for (HmuiTorqueInput input = 0; input < HMUI_TORQUE_N_INPUTS; input++)
    hmui_torque_field_set_error (get_field (self, input), hmui_torque_model_get_error (self->model, input), FALSE);
  show_what_is_asked (self);
  fill_usual (self);
}

void
hmui_torque_form_set_model (HmuiTorqueForm *self, HmuiTorqueModel *model)
{
  const char *length = hm_unit_symbol (hmui_torque_model_get_length_unit (model));

  g_return_if_fail (HMUI_IS_TORQUE_FORM (self));
  g_set_object (&self->model, model);
  hmui_torque_field_set_unit (self->engaged, length);
  hmui_torque_field_set_unit (self->adapter_length, length);
  hmui_torque_field_set_unit (self->lever, length);
  hmui_torque_field_set_unit (self->angle, "°");
  hmui_torque_field_set_unit (self->manual, hm_unit_symbol (hmui_torque_model_get_torque_unit (model)));
  hmui_torque_form_refresh (self);
}

void
hmui_torque_form_set_given (HmuiTorqueForm *self, const char *text)
{
  g_return_if_fail (HMUI_IS_TORQUE_FORM (self) && text != NULL);
  hmui_torque_field_set_text (self->manual, text);
  gtk_widget_grab_focus (GTK_WIDGET (self->manual));
}

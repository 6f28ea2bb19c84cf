/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-identify-page.h"
#include "hmui-answer-line.h"
#include "hmui-heading.h"
#include "hmui-resource.h"
#include "hmui-two-column.h"
#include "hmui-widgets.h"
#include <glib/gi18n.h>

#define MOST_SHOWN 6

struct _HmuiIdentifyPage
{
  GtkWidget parent_instance;
  HmuiIdentifyModel *model;       /* owned; NULL while the template is made */
  GtkWidget *miss;                /* in miss_box; NULL for none */
  /* template children */
  GtkDropDown *feature, *instrument;
  GtkCheckButton *worn;
  GtkEntry *diameter, *pitch;
  GtkLabel *diameter_words, *pitch_words, *lead, *next;
  GtkBox *candidates, *miss_box;
  GtkWidget *next_box;
};

G_DEFINE_FINAL_TYPE (HmuiIdentifyPage, hmui_identify_page, GTK_TYPE_WIDGET)

static void
feature_chosen_cb (HmuiIdentifyPage *self)
{
  if (self->model != NULL)
    hmui_identify_model_set_feature (self->model, (HmThreadFeature) gtk_drop_down_get_selected (self->feature));
}

static void
instrument_chosen_cb (HmuiIdentifyPage *self)
{
  if (self->model != NULL)
    hmui_identify_model_set_instrument (self->model, (HmuiInstrument) gtk_drop_down_get_selected (self->instrument));
}

static void
worn_toggled_cb (HmuiIdentifyPage *self)
{
  if (self->model != NULL)
    hmui_identify_model_set_worn (self->model, gtk_check_button_get_active (self->worn));
}

static void
diameter_changed_cb (HmuiIdentifyPage *self)
{
  if (self->model != NULL)
    hmui_identify_model_set_diameter (self->model, gtk_editable_get_text (GTK_EDITABLE (self->diameter)));
}

static void
pitch_changed_cb (HmuiIdentifyPage *self)
{
  if (self->model != NULL)
    hmui_identify_model_set_pitch (self->model, gtk_editable_get_text (GTK_EDITABLE (self->pitch)));
}

static void
show_words (GtkLabel *label, GtkEntry *entry, const char *words, gboolean is_problem)
{
  gtk_label_set_text (label, words != NULL ? words : "");
  gtk_widget_set_visible (GTK_WIDGET (label), words != NULL);
  if (is_problem)
    {
      gtk_widget_add_css_class (GTK_WIDGET (label), "danger-text");
      gtk_widget_remove_css_class (GTK_WIDGET (label), "quiet");
    }
  else
    {
      gtk_widget_remove_css_class (GTK_WIDGET (label), "danger-text");
      gtk_widget_add_css_class (GTK_WIDGET (label), "quiet");
    }
  gtk_accessible_update_state (GTK_ACCESSIBLE (entry), GTK_ACCESSIBLE_STATE_INVALID,
                               is_problem ? GTK_ACCESSIBLE_INVALID_TRUE : GTK_ACCESSIBLE_INVALID_FALSE, -1);
}

static void
show_fields (HmuiIdentifyPage *self)
{
  gboolean is_problem;
  const char *words = hmui_identify_model_get_diameter_words (self->model, &is_problem);

  show_words (self->diameter_words, self->diameter, words, is_problem);
  words = hmui_identify_model_get_pitch_words (self->model, &is_problem);
  show_words (self->pitch_words, self->pitch, words, is_problem);
}

static GtkWidget *
make_candidate (HmuiIdentifyPage *self, guint i)
{
  const char *name = hmui_identify_model_get_name (self->model, i);
  GtkWidget *button = gtk_button_new (), *row = hmui_probability_row_new ();

  hmui_probability_row_set (HMUI_PROBABILITY_ROW (row), name, hmui_identify_model_get_probability (self->model, i), i == 0);
  gtk_button_set_child (GTK_BUTTON (button), row);
  gtk_widget_add_css_class (button, "quiet-button");
  gtk_actionable_set_action_target (GTK_ACTIONABLE (button), "s", name);
  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), "fasteners.look-up");
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  return button;
}

static void
show_candidates (HmuiIdentifyPage *self)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self->candidates))) != NULL)
    gtk_box_remove (self->candidates, child);
  for (guint i = 0; i < hmui_identify_model_get_n (self->model) && i < MOST_SHOWN; i++)
    gtk_box_append (self->candidates, make_candidate (self, i));
}

static void
show_miss (HmuiIdentifyPage *self)
{
  HmuiAnswerRow *row = hmui_identify_model_get_miss (self->model);

  if (self->miss != NULL)
    gtk_box_remove (self->miss_box, self->miss);
  self->miss = row != NULL ? hmui_answer_line_new (row, TRUE) : NULL;
  if (self->miss != NULL)
    gtk_box_append (self->miss_box, self->miss);
  gtk_widget_set_visible (GTK_WIDGET (self->miss_box), row != NULL);
}

static void
model_changed_cb (HmuiIdentifyPage *self)
{
  const char *lead = hmui_identify_model_get_lead (self->model), *next = hmui_identify_model_get_next (self->model);

  show_fields (self);
  show_candidates (self);
  show_miss (self);
  gtk_label_set_text (self->lead, lead != NULL ? lead : _("Correct what cannot be read."));
  gtk_label_set_text (self->next, next != NULL ? next : "");
  gtk_widget_set_visible (self->next_box, next != NULL);
}

static void
hmui_identify_page_dispose (GObject *object)
{
  HmuiIdentifyPage *self = HMUI_IDENTIFY_PAGE (object);

  g_clear_object (&self->model);
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_IDENTIFY_PAGE);
  G_OBJECT_CLASS (hmui_identify_page_parent_class)->dispose (object);
}

static void
bind_children (GtkWidgetClass *widget_class)
{
  gtk_widget_class_bind_template_child (widget_class, HmuiIdentifyPage, feature);
  gtk_widget_class_bind_template_child (widget_class, HmuiIdentifyPage, instrument);
  gtk_widget_class_bind_template_child (widget_class, HmuiIdentifyPage, worn);
  gtk_widget_class_bind_template_child (widget_class, HmuiIdentifyPage, diameter);
  gtk_widget_class_bind_template_child (widget_class, HmuiIdentifyPage, pitch);
  gtk_widget_class_bind_template_child (widget_class, HmuiIdentifyPage, diameter_words);
  gtk_widget_class_bind_template_child (widget_class, HmuiIdentifyPage, pitch_words);
  gtk_widget_class_bind_template_child (widget_class, HmuiIdentifyPage, lead);
  gtk_widget_class_bind_template_child (widget_class, HmuiIdentifyPage, next);
  gtk_widget_class_bind_template_child (widget_class, HmuiIdentifyPage, candidates);
  gtk_widget_class_bind_template_child (widget_class, HmuiIdentifyPage, miss_box);
  gtk_widget_class_bind_template_child (widget_class, HmuiIdentifyPage, next_box);
}

static void
hmui_identify_page_class_init (HmuiIdentifyPageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_identify_page_dispose;
  g_type_ensure (HMUI_TYPE_HEADING);
  g_type_ensure (HMUI_TYPE_TWO_COLUMN);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "fasteners/hmui-identify-page.ui");
  bind_children (widget_class);
  gtk_widget_class_bind_template_callback (widget_class, feature_chosen_cb);
  gtk_widget_class_bind_template_callback (widget_class, instrument_chosen_cb);
  gtk_widget_class_bind_template_callback (widget_class, worn_toggled_cb);
  gtk_widget_class_bind_template_callback (widget_class, diameter_changed_cb);
  gtk_widget_class_bind_template_callback (widget_class, pitch_changed_cb);
}

static void
hmui_identify_page_init (HmuiIdentifyPage *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hmui_identify_page_new (HmuiIdentifyModel *model)
{
  HmuiIdentifyPage *self = g_object_new (HMUI_TYPE_IDENTIFY_PAGE, NULL);

  self->model = g_object_ref (model);
  g_signal_connect_object (model, "changed", G_CALLBACK (model_changed_cb), self, G_CONNECT_SWAPPED);
  model_changed_cb (self);
  return GTK_WIDGET (self);
}

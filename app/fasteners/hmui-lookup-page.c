/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-lookup-page.h"
#include "hmui-answer-card.h"
#include "hmui-focus.h"
#include "hmui-heading.h"
#include "hmui-resource.h"
#include "hmui-size-drawing.h"
#include "hmui-two-column.h"
#include "hmui-widgets.h"
#include "hmui-words-fit.h"
#include <glib/gi18n.h>

#define EXAMPLE_CHARS 28         /* so that two stand beside each other */

struct _HmuiLookupPage
{
  GtkWidget parent_instance;
  HmuiLookupModel *model;         /* owned; NULL until the choices are filled */
  /* template children */
  GtkWidget *start, *problem, *answer;
  GtkFlowBox *examples;
  GtkLabel *problem_text, *sizes, *lead;
  HmuiHeading *title;
  GtkBox *main_parts, *side_parts;
  HmuiSizeDrawing *drawing;
  GtkDropDown *condition, *tolerance;
};

/* What may be typed, and the question it answers. */
static const struct { const char *text, *question; } examples[] = {
  { "11/32", N_("Which metric size is that? Is a 9 mm safe on it?") },
  { "9 mm on 11/32", N_("How does this socket sit on that head?") },
  { "T40", N_("I have no T40: what else drives this bolt?") },
  { "M8 x 1.25", N_("Tap drill, clearance hole, near misses") },
  { "5/16-18", N_("Limits of size, heads that go with it") },
  { "1/8 NPT", N_("A pipe thread") },
  { "23 N·m", N_("What is that on my wrench?") },
};

G_DEFINE_FINAL_TYPE (HmuiLookupPage, hmui_lookup_page, GTK_TYPE_WIDGET)

static GtkWidget *
make_example (const char *text, const char *question)
{
  GtkWidget *button = gtk_button_new (), *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  GtkWidget *title = gtk_label_new (text), *detail = gtk_label_new (question);

  gtk_widget_add_css_class (button, "complaint-card");
  gtk_widget_add_css_class (title, "section-title");
  gtk_widget_add_css_class (detail, "quiet");
  gtk_label_set_xalign (GTK_LABEL (title), 0.0);
  gtk_label_set_xalign (GTK_LABEL (detail), 0.0);
  gtk_label_set_wrap (GTK_LABEL (detail), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (detail), EXAMPLE_CHARS);
  gtk_box_append (GTK_BOX (box), title);
  gtk_box_append (GTK_BOX (box), detail);
  gtk_button_set_child (GTK_BUTTON (button), box);
  gtk_actionable_set_action_target (GTK_ACTIONABLE (button), "s", text);
  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), "fasteners.look-up");
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, text,
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, question, -1);
  return button;
}

static void
add_examples (HmuiLookupPage *self)
{
  for (gsize i = 0; i < G_N_ELEMENTS (examples); i++)
    {
      GtkWidget *button = make_example (examples[i].text, _(examples[i].question));

      gtk_flow_box_append (self->examples, button);
      gtk_widget_set_focusable (gtk_widget_get_parent (button), FALSE);
    }
}

static void
empty_box (GtkBox *box)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (box))) != NULL)
    gtk_box_remove (box, child);
}

static gboolean
is_aside (HmuiPartRole role)
{
  return role == HMUI_PART_NEIGHBOURS || role == HMUI_PART_OTHER_DRIVES || role == HMUI_PART_HEADS || role == HMUI_PART_PLACES
         || role == HMUI_PART_BASICS;
}

static void
show_drawing (HmuiLookupPage *self, HmuiAnswer *answer)
{
  HmFormat format = hmui_lookup_model_get_format (self->model);

  hmui_size_drawing_set (self->drawing, answer, &format);
}

static void
set_or_hide (GtkLabel *label, const char *text)
{
  gtk_label_set_text (label, text != NULL ? text : "");
  gtk_widget_set_visible (GTK_WIDGET (label), text != NULL);
}

static void
condition_chosen_cb (HmuiLookupPage *self)
{
  if (self->model != NULL)
    hmui_lookup_model_set_condition (self->model, (HmHeadCondition) gtk_drop_down_get_selected (self->condition));
}

static void
tolerance_chosen_cb (HmuiLookupPage *self)
{
  if (self->model != NULL)
    hmui_lookup_model_set_class (self->model, gtk_drop_down_get_selected (self->tolerance));
}

/* Before there is a model to tell. */
static void
fill_choices (HmuiLookupPage *self)
{
  static const HmHeadCondition conditions[] = { HM_HEAD_CLEAN, HM_HEAD_WORN, HM_HEAD_PAINTED };
  g_autoptr(GtkStringList) names = gtk_string_list_new (NULL);
  g_autoptr(GtkStringList) classes = gtk_string_list_new (NULL);

  for (gsize i = 0; i < G_N_ELEMENTS (conditions); i++)
    {
      g_autofree char *name = g_strdup_printf (_("Head: %s"), hmui_words_condition (conditions[i]));

      gtk_string_list_append (names, name);
    }
  for (guint i = 0; i < HMUI_LOOKUP_N_CLASSES; i++)
    {
      g_autofree char *name = hmui_lookup_model_dup_class (i);

      gtk_string_list_append (classes, name);
    }
  gtk_drop_down_set_model (self->condition, G_LIST_MODEL (names));
  gtk_drop_down_set_model (self->tolerance, G_LIST_MODEL (classes));
  gtk_drop_down_set_selected (self->tolerance, HMUI_LOOKUP_USUAL_CLASS);
}

static void
show_answer (HmuiLookupPage *self, HmuiAnswer *answer)
{
  hmui_heading_set_text (self->title, hmui_answer_get_title (answer));
  set_or_hide (self->sizes, hmui_answer_get_sizes (answer));
  set_or_hide (self->lead, hmui_answer_get_lead (answer));
  show_drawing (self, answer);
  gtk_widget_set_visible (GTK_WIDGET (self->condition), hmui_answer_find_part (answer, HMUI_PART_FITS) != NULL);
  gtk_widget_set_visible (GTK_WIDGET (self->tolerance), hmui_lookup_model_has_classes (self->model));
  for (guint i = 0; i < hmui_answer_get_n_parts (answer); i++)
    {
      HmuiAnswerPart *part = hmui_answer_get_part (answer, i);
      gboolean aside = is_aside (hmui_answer_part_get_role (part));

      gtk_box_append (aside ? self->side_parts : self->main_parts, hmui_answer_card_new (part, aside));
    }
}

static void
model_changed_cb (HmuiLookupPage *self)
{
  HmuiAnswer *answer = hmui_lookup_model_get_answer (self->model);
  const char *problem = hmui_lookup_model_get_problem (self->model);

  hmui_focus_leave (GTK_WIDGET (self));
  empty_box (self->main_parts);
  empty_box (self->side_parts);
  gtk_widget_set_visible (self->start, answer == NULL);
  gtk_widget_set_visible (self->problem, problem != NULL);
  gtk_widget_set_visible (self->answer, answer != NULL);
  gtk_label_set_text (self->problem_text, problem != NULL ? problem : "");
  if (answer != NULL)
    show_answer (self, answer);
}

static gboolean
focus_in (GtkBox *parts)
{
  for (GtkWidget *card = gtk_widget_get_first_child (GTK_WIDGET (parts)); card != NULL; card = gtk_widget_get_next_sibling (card))
    if (gtk_widget_grab_focus (card))
      return TRUE;
  return FALSE;
}

/* To what the answer leads to; else to its title; without an answer to the first example. */
static gboolean
hmui_lookup_page_grab_focus (GtkWidget *widget)
{
  HmuiLookupPage *self = HMUI_LOOKUP_PAGE (widget);

  if (!gtk_widget_get_visible (self->answer))
    return gtk_widget_grab_focus (gtk_widget_get_first_child (GTK_WIDGET (gtk_flow_box_get_child_at_index (self->examples, 0))));
  return focus_in (self->main_parts) || focus_in (self->side_parts) || gtk_widget_grab_focus (GTK_WIDGET (self->title));
}

static void
hmui_lookup_page_dispose (GObject *object)
{
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_LOOKUP_PAGE);
  g_clear_object (&HMUI_LOOKUP_PAGE (object)->model);
  G_OBJECT_CLASS (hmui_lookup_page_parent_class)->dispose (object);
}

static void
hmui_lookup_page_class_init (HmuiLookupPageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_lookup_page_dispose;
  widget_class->grab_focus = hmui_lookup_page_grab_focus;
  g_type_ensure (HMUI_TYPE_HEADING);
  g_type_ensure (HMUI_TYPE_SIZE_DRAWING);
  g_type_ensure (HMUI_TYPE_TWO_COLUMN);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "fasteners/hmui-lookup-page.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiLookupPage, start);
  gtk_widget_class_bind_template_child (widget_class, HmuiLookupPage, problem);
  gtk_widget_class_bind_template_child (widget_class, HmuiLookupPage, answer);
  gtk_widget_class_bind_template_child (widget_class, HmuiLookupPage, examples);
  gtk_widget_class_bind_template_child (widget_class, HmuiLookupPage, problem_text);
  gtk_widget_class_bind_template_child (widget_class, HmuiLookupPage, title);
  gtk_widget_class_bind_template_child (widget_class, HmuiLookupPage, sizes);
  gtk_widget_class_bind_template_child (widget_class, HmuiLookupPage, lead);
  gtk_widget_class_bind_template_child (widget_class, HmuiLookupPage, main_parts);
  gtk_widget_class_bind_template_child (widget_class, HmuiLookupPage, side_parts);
  gtk_widget_class_bind_template_child (widget_class, HmuiLookupPage, drawing);
  gtk_widget_class_bind_template_child (widget_class, HmuiLookupPage, condition);
  gtk_widget_class_bind_template_child (widget_class, HmuiLookupPage, tolerance);
  gtk_widget_class_bind_template_callback (widget_class, condition_chosen_cb);
  gtk_widget_class_bind_template_callback (widget_class, tolerance_chosen_cb);
}

static void
hmui_lookup_page_init (HmuiLookupPage *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  add_examples (self);
  fill_choices (self);
}

GtkWidget *
hmui_lookup_page_new (HmuiLookupModel *model)
{
  HmuiLookupPage *self = g_object_new (HMUI_TYPE_LOOKUP_PAGE, NULL);

  self->model = g_object_ref (model);
  g_signal_connect_object (model, "changed", G_CALLBACK (model_changed_cb), self, G_CONNECT_SWAPPED);
  model_changed_cb (self);
  return GTK_WIDGET (self);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-answer-line.h"
#include "hmui-fit-view.h"
#include "hmui-resource.h"
#include "hmui-thread-view.h"
#include "hmui-widgets.h"
#include <glib/gi18n.h>

#define WORD_CHARS 15            /* so that the facts below each other line up */
#define NARROW_CHARS 7           /* the least that a text in the side column may be wide */
#define SHORT_TITLE 16           /* characters that leave room for a chip in a narrow column */

struct _HmuiAnswerLine
{
  GtkWidget parent_instance;
  /* template children */
  HmuiFitView *fit;
  GtkImage *icon;
  GtkLabel *word, *title, *link_text, *detail;
  GtkWidget *link;
  GtkBox *head;
  HmuiThreadView *threads;
  HmuiProvenanceChip *top_chip, *low_chip;   /* beside the title, or beside the numbers */
};

G_DEFINE_FINAL_TYPE (HmuiAnswerLine, hmui_answer_line, GTK_TYPE_WIDGET)

static void
hmui_answer_line_dispose (GObject *object)
{
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_ANSWER_LINE);
  G_OBJECT_CLASS (hmui_answer_line_parent_class)->dispose (object);
}

/* To what can be pressed, if anything can. */
static gboolean
hmui_answer_line_grab_focus (GtkWidget *widget)
{
  GtkWidget *link = HMUI_ANSWER_LINE (widget)->link;

  return gtk_widget_get_visible (link) && gtk_widget_grab_focus (link);
}

static void
hmui_answer_line_class_init (HmuiAnswerLineClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_answer_line_dispose;
  widget_class->grab_focus = hmui_answer_line_grab_focus;
  g_type_ensure (HMUI_TYPE_FIT_VIEW);
  g_type_ensure (HMUI_TYPE_THREAD_VIEW);
  gtk_widget_class_set_css_name (widget_class, "answerline");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BOX_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "fasteners/hmui-answer-line.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiAnswerLine, fit);
  gtk_widget_class_bind_template_child (widget_class, HmuiAnswerLine, head);
  gtk_widget_class_bind_template_child (widget_class, HmuiAnswerLine, icon);
  gtk_widget_class_bind_template_child (widget_class, HmuiAnswerLine, word);
  gtk_widget_class_bind_template_child (widget_class, HmuiAnswerLine, title);
  gtk_widget_class_bind_template_child (widget_class, HmuiAnswerLine, link);
  gtk_widget_class_bind_template_child (widget_class, HmuiAnswerLine, link_text);
  gtk_widget_class_bind_template_child (widget_class, HmuiAnswerLine, detail);
  gtk_widget_class_bind_template_child (widget_class, HmuiAnswerLine, threads);
  gtk_widget_class_bind_template_child (widget_class, HmuiAnswerLine, top_chip);
  gtk_widget_class_bind_template_child (widget_class, HmuiAnswerLine, low_chip);
}

static void
hmui_answer_line_init (HmuiAnswerLine *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  gtk_box_layout_set_spacing (GTK_BOX_LAYOUT (gtk_widget_get_layout_manager (GTK_WIDGET (self))), 12);
}

static void
show_word (HmuiAnswerLine *self, const HmuiAnswerText *text, gboolean stacked)
{
  static const struct { const char *icon, *css_class; } looks[] = {
    [HMUI_TONE_NONE] = { NULL, "quiet" },
    [HMUI_TONE_GOOD] = { "hm-good-symbolic", "good-text" },
    [HMUI_TONE_CAUTION] = { "hm-caution-symbolic", "caution-text" },
    [HMUI_TONE_BAD] = { "hm-bad-symbolic", "danger-text" },
  };

  gtk_widget_set_visible (GTK_WIDGET (self->word), text->word != NULL);
  gtk_label_set_text (self->word, text->word != NULL ? text->word : "");
  gtk_widget_add_css_class (GTK_WIDGET (self->word), looks[text->tone].css_class);
  gtk_widget_set_visible (GTK_WIDGET (self->icon), text->tone != HMUI_TONE_NONE);
  if (text->tone == HMUI_TONE_NONE)
    {
      gtk_label_set_width_chars (self->word, stacked ? -1 : WORD_CHARS);
      gtk_orientable_set_orientation (GTK_ORIENTABLE (self->head), stacked ? GTK_ORIENTATION_VERTICAL : GTK_ORIENTATION_HORIZONTAL);
      gtk_box_set_spacing (self->head, stacked ? 0 : 6);
      return;
    }
  gtk_image_set_from_icon_name (self->icon, looks[text->tone].icon);
  gtk_widget_add_css_class (GTK_WIDGET (self->icon), looks[text->tone].css_class);
  gtk_widget_add_css_class (GTK_WIDGET (self->word), "section-title");
}

static void
show_title (HmuiAnswerLine *self, const HmuiAnswerText *text)
{
  g_autofree char *words = NULL;

  gtk_widget_set_visible (GTK_WIDGET (self->title), text->target == NULL);
  gtk_widget_set_visible (self->link, text->target != NULL);
  gtk_label_set_text (self->title, text->title);
  gtk_label_set_text (self->link_text, text->title);
  if (text->word == NULL && text->detail == NULL && text->provenance == NULL)
    gtk_widget_add_css_class (GTK_WIDGET (self->title), "section-title");
  if (text->target == NULL)
    return;
  words = text->action != NULL ? g_strdup (text->detail) : g_strdup_printf (_("Look up %s"), text->target);
  gtk_actionable_set_action_target (GTK_ACTIONABLE (self->link), "s", text->target);
  gtk_actionable_set_action_name (GTK_ACTIONABLE (self->link), text->action != NULL ? text->action : "fasteners.look-up");
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->link), GTK_ACCESSIBLE_PROPERTY_LABEL, text->title,
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, words, -1);
}

static void
show_drawings (HmuiAnswerLine *self, const HmuiAnswerText *text)
{
  gboolean fits = text->opening.mm > 0.0, threads = text->bolt != NULL;

  gtk_widget_set_visible (GTK_WIDGET (self->fit), fits);
  gtk_widget_set_visible (GTK_WIDGET (self->threads), threads);
  if (fits)
    hmui_fit_view_set (self->fit, text->head, text->opening, text->degrees, text->tone);
  if (threads)
    hmui_thread_view_set (self->threads, text->bolt, text->hole, text->turns, text->detail);
}

/* Beside the title, or beside the numbers where the title needs the width. */
static void
show_provenance (HmuiAnswerLine *self, const HmuiAnswerText *text, gboolean stacked)
{
  gboolean title_is_short = stacked && text->tone == HMUI_TONE_NONE && g_utf8_strlen (text->title, -1) <= SHORT_TITLE;
  gboolean low = text->detail != NULL && !title_is_short;
  HmuiProvenanceChip *chip = low ? self->low_chip : self->top_chip;

  if (text->provenance == NULL)
    return;
  hmui_provenance_chip_set_provenance (chip, *text->provenance);
  gtk_widget_set_visible (GTK_WIDGET (chip), TRUE);
}

/* "usable: 9 mm socket. Looser than …" */
static void
say_words (HmuiAnswerLine *self, const HmuiAnswerText *text)
{
  g_autoptr(GString) words = g_string_new (NULL);

  if (text->word != NULL)
    g_string_append_printf (words, "%s: ", text->word);
  g_string_append (words, text->title);
  if (text->detail != NULL)
    g_string_append_printf (words, ". %s", text->detail);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, words->str, -1);
}

GtkWidget *
hmui_answer_line_new (HmuiAnswerRow *row, gboolean stacked)
{
  HmuiAnswerLine *self = g_object_new (HMUI_TYPE_ANSWER_LINE, NULL);
  const HmuiAnswerText *text = hmui_answer_row_get_text (row);

  if (stacked)
    {
      gtk_label_set_width_chars (self->detail, NARROW_CHARS);
      gtk_label_set_width_chars (self->title, NARROW_CHARS);
      gtk_label_set_width_chars (self->link_text, NARROW_CHARS);
    }
  show_word (self, text, stacked);
  show_title (self, text);
  show_drawings (self, text);
  gtk_label_set_text (self->detail, text->detail != NULL ? text->detail : "");
  gtk_widget_set_visible (GTK_WIDGET (self->detail), text->detail != NULL);
  show_provenance (self, text, stacked);
  say_words (self, text);
  return GTK_WIDGET (self);
}

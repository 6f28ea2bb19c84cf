/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-close-page.h"
#include "hmui-close-model.h"
#include "hmui-heading.h"
#include "hmui-line-list.h"
#include "hmui-resource.h"
#include "hmui-side-panel.h"
#include "hmui-text-card.h"
#include "hmui-two-column.h"
#include <glib/gi18n.h>

struct _HmuiClosePage
{
  GtkWidget parent_instance;
  HmuiDiagnoseModel *bench;       /* owned */
  HmuiCloseModel *model;          /* owned */
  /* template children */
  GtkScrolledWindow *scroller;
  HmuiHeading *title;
  GtkLabel *result, *minutes;
  HmuiTextCard *complaint, *cause, *correction;
  GtkWidget *look_also_section, *tell_owner_section;
  HmuiLineList *look_also, *tell_owner;
  HmuiSidePanel *side;
};

G_DEFINE_FINAL_TYPE (HmuiClosePage, hmui_close_page, GTK_TYPE_WIDGET)

static void
edited_cb (HmuiClosePage *self)
{
  HmuiTextCard *cards[] = { self->complaint, self->cause, self->correction };

  for (gsize i = 0; i < G_N_ELEMENTS (cards); i++)
    {
      g_autofree char *text = hmui_text_card_dup_text (cards[i]);

      hmui_close_model_set_text (self->model, i, text);
    }
}

static void
copy_cb (HmuiClosePage *self)
{
  g_autofree char *all = hmui_close_model_dup_all (self->model);

  gdk_clipboard_set_text (gtk_widget_get_clipboard (GTK_WIDGET (self)), all);
  g_signal_emit_by_name (self->bench, "message", _("Copied. Paste it into the job sheet."), FALSE);
}

static void
another_cb (HmuiClosePage *self)
{
  edited_cb (self);
  hmui_diagnose_model_leave (self->bench);
}

static void
hmui_close_page_dispose (GObject *object)
{
  HmuiClosePage *self = HMUI_CLOSE_PAGE (object);

  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_CLOSE_PAGE);
  g_clear_object (&self->model);
  g_clear_object (&self->bench);
  G_OBJECT_CLASS (hmui_close_page_parent_class)->dispose (object);
}

static void
bind_children (GtkWidgetClass *widget_class)
{
  gtk_widget_class_bind_template_child (widget_class, HmuiClosePage, scroller);
  gtk_widget_class_bind_template_child (widget_class, HmuiClosePage, title);
  gtk_widget_class_bind_template_child (widget_class, HmuiClosePage, result);
  gtk_widget_class_bind_template_child (widget_class, HmuiClosePage, minutes);
  gtk_widget_class_bind_template_child (widget_class, HmuiClosePage, complaint);
  gtk_widget_class_bind_template_child (widget_class, HmuiClosePage, cause);
  gtk_widget_class_bind_template_child (widget_class, HmuiClosePage, correction);
  gtk_widget_class_bind_template_child (widget_class, HmuiClosePage, look_also_section);
  gtk_widget_class_bind_template_child (widget_class, HmuiClosePage, tell_owner_section);
  gtk_widget_class_bind_template_child (widget_class, HmuiClosePage, look_also);
  gtk_widget_class_bind_template_child (widget_class, HmuiClosePage, tell_owner);
  gtk_widget_class_bind_template_child (widget_class, HmuiClosePage, side);
}

static void
hmui_close_page_class_init (HmuiClosePageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_close_page_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "diagnose/hmui-close-page.ui");
  bind_children (widget_class);
  gtk_widget_class_bind_template_callback (widget_class, edited_cb);
  gtk_widget_class_bind_template_callback (widget_class, copy_cb);
  gtk_widget_class_bind_template_callback (widget_class, another_cb);
}

static void
hmui_close_page_init (HmuiClosePage *self)
{
  g_type_ensure (HMUI_TYPE_HEADING);
  g_type_ensure (HMUI_TYPE_LINE_LIST);
  g_type_ensure (HMUI_TYPE_SIDE_PANEL);
  g_type_ensure (HMUI_TYPE_TEXT_CARD);
  g_type_ensure (HMUI_TYPE_TWO_COLUMN);
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hmui_close_page_new (HmuiDiagnoseModel *bench)
{
  HmuiClosePage *self = g_object_new (HMUI_TYPE_CLOSE_PAGE, NULL);

  self->bench = g_object_ref (bench);
  self->model = hmui_close_model_new (bench);
  hmui_side_panel_set_bench (self->side, bench);
  hmui_line_list_set_model (self->look_also, hmui_close_model_get_look_also (self->model));
  hmui_line_list_set_model (self->tell_owner, hmui_close_model_get_tell_owner (self->model));
  return GTK_WIDGET (self);
}

void
hmui_close_page_refresh (HmuiClosePage *self)
{
  gboolean is_new;
  g_autofree char *result = NULL, *minutes = NULL;

  g_return_if_fail (HMUI_IS_CLOSE_PAGE (self));
  is_new = hmui_close_model_refresh (self->model);
  result = hmui_close_model_dup_result (self->model);
  minutes = hmui_close_model_dup_minutes (self->model);
  gtk_label_set_text (self->result, result);
  gtk_label_set_text (self->minutes, minutes);
  gtk_widget_set_visible (self->look_also_section,
                          g_list_model_get_n_items (hmui_close_model_get_look_also (self->model)) > 0);
  gtk_widget_set_visible (self->tell_owner_section,
                          g_list_model_get_n_items (hmui_close_model_get_tell_owner (self->model)) > 0);
  hmui_side_panel_refresh (self->side);
  if (!is_new)
    return;   /* what is being edited is left alone */
  hmui_text_card_set_text (self->complaint, hmui_close_model_get_text (self->model, HMUI_CLOSE_COMPLAINT));
  hmui_text_card_set_text (self->cause, hmui_close_model_get_text (self->model, HMUI_CLOSE_CAUSE));
  hmui_text_card_set_text (self->correction, hmui_close_model_get_text (self->model, HMUI_CLOSE_CORRECTION));
  gtk_adjustment_set_value (gtk_scrolled_window_get_vadjustment (self->scroller), 0.0);
  gtk_widget_grab_focus (GTK_WIDGET (self->title));
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-probability-bar.h"
#include "hmui-draw.h"

struct _HmuiProbabilityBar
{
  GtkWidget parent_instance;
  double    share;
};
G_DEFINE_FINAL_TYPE (HmuiProbabilityBar, hmui_probability_bar, GTK_TYPE_WIDGET)

static void
append_bar (GtkSnapshot *snapshot, const graphene_rect_t *rect, const GdkRGBA *color)
{
  GskRoundedRect round;

  gsk_rounded_rect_init_from_rect (&round, rect, rect->size.height / 2);
  gtk_snapshot_push_rounded_clip (snapshot, &round);
  gtk_snapshot_append_color (snapshot, color, rect);
  gtk_snapshot_pop (snapshot);
}

static void
hmui_probability_bar_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  HmuiProbabilityBar *self = HMUI_PROBABILITY_BAR (widget);
  float width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  float filled = MAX (width * self->share, height);
  gboolean from_right = gtk_widget_get_direction (widget) == GTK_TEXT_DIR_RTL;
  GdkRGBA color;

  hmui_draw_color (widget, "hm_line", 1.0, &color);
  append_bar (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height), &color);
  hmui_draw_color (widget, NULL, 1.0, &color);
  append_bar (snapshot, &GRAPHENE_RECT_INIT (from_right ? width - filled : 0, 0, filled, height), &color);
}

static void
hmui_probability_bar_class_init (HmuiProbabilityBarClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  widget_class->snapshot = hmui_probability_bar_snapshot;
  gtk_widget_class_set_css_name (widget_class, "probabilitybar");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_PRESENTATION);
}

static void
hmui_probability_bar_init (HmuiProbabilityBar *self)
{
}

void
hmui_probability_bar_set_share (HmuiProbabilityBar *self, double share)
{
  self->share = CLAMP (share, 0.0, 1.0);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

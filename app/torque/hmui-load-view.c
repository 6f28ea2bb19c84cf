/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-load-view.h"
#include "hmui-draw.h"
#include "hmui-words-torque.h"
#include <glib/gi18n.h>

#define EDGE 6.0
#define BAR 18.0            /* height of the line of loads */
#define GAP 6.0
#define N_LIMITS 3
#define LEAST_WIDTH 260

/* What can be taken: a mark over the line. */
typedef struct { double at; const char *color; char *label; } Limit;

struct _HmuiLoadView
{
  GtkWidget parent_instance;
  HmTighteningScale scale;
  Limit limits[N_LIMITS];         /* labels owned; from left to right */
  guint n_limits;
  char *low, *target, *high;      /* owned */
};

G_DEFINE_FINAL_TYPE (HmuiLoadView, hmui_load_view, GTK_TYPE_WIDGET)

static double
line_height (HmuiLoadView *self)
{
  g_autoptr(PangoLayout) text = hmui_draw_text (GTK_WIDGET (self), "0", 1.0, PANGO_WEIGHT_NORMAL);
  double width, height;

  hmui_draw_text_size (text, &width, &height);
  return height;
}

static double
bar_top (HmuiLoadView *self)
{
  return self->n_limits * line_height (self) + GAP;
}

static double
x_of (HmuiLoadView *self, double share)
{
  return EDGE + share * (gtk_widget_get_width (GTK_WIDGET (self)) - 2 * EDGE);
}

static void
fill_bar (HmuiLoadView *self, cairo_t *cr, double from, double to, const char *color, double alpha)
{
  GdkRGBA paint;
  graphene_rect_t bar = GRAPHENE_RECT_INIT (x_of (self, from), bar_top (self), x_of (self, to) - x_of (self, from), BAR);

  hmui_draw_color (GTK_WIDGET (self), color, alpha, &paint);
  gdk_cairo_set_source_rgba (cr, &paint);
  hmui_draw_rounded (cr, &bar, MIN (BAR / 2, bar.size.width / 2));
  cairo_fill (cr);
}

/* Labels stand left of their marks, and the leftmost lowest, so that no line crosses a label; the other way round where the
 * marks crowd at the left. */
static gboolean
marks_crowd_left (HmuiLoadView *self)
{
  return self->limits[0].at < 0.4;
}

/* A label beside its mark, with a line down to the bar. */
static void
draw_limit (HmuiLoadView *self, cairo_t *cr, guint index)
{
  const Limit *limit = &self->limits[index];
  g_autoptr(PangoLayout) text = hmui_draw_text (GTK_WIDGET (self), limit->label, 1.0, PANGO_WEIGHT_NORMAL);
  gboolean right_of_it = marks_crowd_left (self);
  double x = x_of (self, limit->at), width, height;
  double y = (right_of_it ? index : self->n_limits - 1 - index) * line_height (self);
  double right = gtk_widget_get_width (GTK_WIDGET (self)) - EDGE;
  GdkRGBA paint, ink;

  hmui_draw_text_size (text, &width, &height);
  hmui_draw_color (GTK_WIDGET (self), limit->color, 1.0, &paint);
  hmui_draw_color (GTK_WIDGET (self), NULL, 1.0, &ink);
  hmui_draw_text_at (cr, text, CLAMP (right_of_it ? x + GAP : x - width - GAP, EDGE, right - width), y, &ink);
  gdk_cairo_set_source_rgba (cr, &paint);
  cairo_set_line_width (cr, 2.5);
  cairo_move_to (cr, x, y + height * 0.2);
  cairo_line_to (cr, x, bar_top (self) + BAR + 3);
  cairo_stroke (cr);
}

static void
draw_number (HmuiLoadView *self, cairo_t *cr, const char *words, double share, double align, PangoWeight weight)
{
  g_autoptr(PangoLayout) text = hmui_draw_text (GTK_WIDGET (self), words, 1.0, weight);
  double width, height, right = gtk_widget_get_width (GTK_WIDGET (self)) - EDGE;
  GdkRGBA ink;

  hmui_draw_text_size (text, &width, &height);
  hmui_draw_color (GTK_WIDGET (self), NULL, 1.0, &ink);
  hmui_draw_text_at (cr, text, CLAMP (x_of (self, share) - width * align, EDGE, right - width), bar_top (self) + BAR + GAP, &ink);
}

static void
draw_target (HmuiLoadView *self, cairo_t *cr)
{
  double x = x_of (self, self->scale.target), top = bar_top (self);
  GdkRGBA accent, paper;

  hmui_draw_color (GTK_WIDGET (self), "hm_accent", 1.0, &accent);
  hmui_draw_color (GTK_WIDGET (self), "hm_card", 1.0, &paper);
  cairo_arc (cr, x, top + BAR / 2, BAR / 2 + 2, 0, 2 * G_PI);
  gdk_cairo_set_source_rgba (cr, &accent);
  cairo_fill_preserve (cr);
  gdk_cairo_set_source_rgba (cr, &paper);
  cairo_set_line_width (cr, 2);
  cairo_stroke (cr);
}

static void
hmui_load_view_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  HmuiLoadView *self = HMUI_LOAD_VIEW (widget);
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  cairo_t *cr;

  if (self->low == NULL || width <= 0)
    return;
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height));
  fill_bar (self, cr, 0.0, 1.0, NULL, 0.12);
  if (self->n_limits > 0)
    fill_bar (self, cr, self->limits[0].at, 1.0, "hm_danger", 0.30);
  fill_bar (self, cr, self->scale.low, MIN (self->scale.high, 1.0), "hm_accent", 0.45);
  for (guint i = 0; i < self->n_limits; i++)
    draw_limit (self, cr, i);
  draw_target (self, cr);
  draw_number (self, cr, self->low, self->scale.low, 1.0, PANGO_WEIGHT_NORMAL);
  draw_number (self, cr, self->high, self->scale.high, 0.0, PANGO_WEIGHT_NORMAL);
  draw_number (self, cr, self->target, self->scale.target, 0.5, PANGO_WEIGHT_BOLD);
  cairo_destroy (cr);
}

static void
hmui_load_view_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum, int *natural,
                        int *minimum_baseline, int *natural_baseline)
{
  HmuiLoadView *self = HMUI_LOAD_VIEW (widget);

  if (orientation == GTK_ORIENTATION_HORIZONTAL)
    {
      *minimum = LEAST_WIDTH;
      *natural = 2 * LEAST_WIDTH;
    }
  else
    *minimum = *natural = (int) (bar_top (self) + BAR + GAP + line_height (self)) + 1;
}

static void
forget (HmuiLoadView *self)
{
  for (guint i = 0; i < self->n_limits; i++)
    g_free (self->limits[i].label);
  self->n_limits = 0;
  g_clear_pointer (&self->low, g_free);
  g_clear_pointer (&self->target, g_free);
  g_clear_pointer (&self->high, g_free);
}

static void
hmui_load_view_finalize (GObject *object)
{
  forget (HMUI_LOAD_VIEW (object));
  G_OBJECT_CLASS (hmui_load_view_parent_class)->finalize (object);
}

static void
hmui_load_view_class_init (HmuiLoadViewClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = hmui_load_view_finalize;
  widget_class->snapshot = hmui_load_view_snapshot;
  widget_class->measure = hmui_load_view_measure;
  gtk_widget_class_set_css_name (widget_class, "loadview");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_IMG);
}

static void
hmui_load_view_init (HmuiLoadView *self)
{
  gtk_widget_set_visible (GTK_WIDGET (self), FALSE);
}

static int
compare_limits (gconstpointer a, gconstpointer b)
{
  double first = ((const Limit *) a)->at, second = ((const Limit *) b)->at;

  return first < second ? -1 : first > second;
}

static void
add_limit (HmuiLoadView *self, double at, const char *color, const char *name, HmForce load, const HmFormat *format)
{
  g_autofree char *force = hmui_words_force_short (load, format);

  if (at < 0.0)
    return;
  self->limits[self->n_limits++] = (Limit) { at, color, g_strdup_printf ("%s %s", name, force) };
}

void
hmui_load_view_set (HmuiLoadView *self, const HmTightening *tightening, const HmFormat *format)
{
  g_autofree char *words = NULL;

  g_return_if_fail (HMUI_IS_LOAD_VIEW (self));
  forget (self);
  gtk_widget_set_visible (GTK_WIDGET (self), tightening != NULL);
  if (tightening == NULL)
    return;
  self->scale = hm_tightening_scale (tightening);
  self->low = hmui_words_force_short (tightening->preload_low, format);
  self->target = hmui_words_force_short (tightening->preload, format);
  self->high = hmui_words_force_short (tightening->preload_high, format);
  add_limit (self, self->scale.yield, "hm_caution", _("yields while turned"), tightening->yield_load, format);
  add_limit (self, self->scale.proof, "hm_danger", _("proof load"), tightening->proof_load, format);
  add_limit (self, self->scale.strip, "hm_danger", _("thread strips"), tightening->strip_load, format);
  qsort (self->limits, self->n_limits, sizeof (Limit), compare_limits);
  words = hmui_words_tightening_scale (tightening, format);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, words, -1);
  gtk_widget_queue_resize (GTK_WIDGET (self));
}

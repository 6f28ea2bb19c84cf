/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-pattern-view.h"
#include "hmui-draw.h"
#include "hmui-pattern-words.h"
#include <glib/gi18n-lib.h>
#include <math.h>

#define STEP_US 700000        /* one fastener */
#define REST_STEPS 3          /* between two passes */
#define EDGE 18.0
#define HEAD_RADIUS 17.0
#define CAPTION_GAP 9.0

struct _HmuiPatternView
{
  GtkWidget  parent_instance;
  HmPattern  pattern;
  GArray    *points;     /* owned, of HmuiPatternPoint */
  GStrv      passes;     /* owned, at least one entry unless empty */
  guint      tick;       /* id of the tick callback, 0: still */
  gint64     started;    /* frame time of its first tick, µs */
  guint      step;       /* how far it is played: steps since the start */
};
G_DEFINE_FINAL_TYPE (HmuiPatternView, hmui_pattern_view, GTK_TYPE_WIDGET)

/* Grid of the drawing: where a point lies in px. */
typedef struct { double scale, x0, y0, left, top, width, height; } Frame;

static guint
count_steps (HmuiPatternView *self)
{
  guint last = 0;

  for (guint i = 0; i < self->points->len; i++)
    last = MAX (last, g_array_index (self->points, HmuiPatternPoint, i).order);
  return last;
}

static gboolean
tick_cb (GtkWidget *widget, GdkFrameClock *clock, gpointer data)
{
  HmuiPatternView *self = HMUI_PATTERN_VIEW (widget);
  gint64 now = gdk_frame_clock_get_frame_time (clock);
  guint round = (count_steps (self) + REST_STEPS) * g_strv_length (self->passes);
  guint step;

  if (self->started == 0)
    self->started = now;
  step = (guint) ((now - self->started) / STEP_US) % MAX (round, 1);
  if (step != self->step)
    {
      self->step = step;
      gtk_widget_queue_draw (widget);
    }
  return G_SOURCE_CONTINUE;
}

/* Plays only where it can be seen and the desktop allows it. */
static void
update_playing (HmuiPatternView *self)
{
  GtkWidget *widget = GTK_WIDGET (self);
  gboolean allowed = FALSE;

  g_object_get (gtk_widget_get_settings (widget), "gtk-enable-animations", &allowed, NULL);
  if (self->tick != 0)
    gtk_widget_remove_tick_callback (widget, self->tick);
  self->tick = 0;
  self->started = 0;
  self->step = 0;
  if (allowed && gtk_widget_get_mapped (widget) && self->points->len > 1)
    self->tick = gtk_widget_add_tick_callback (widget, tick_cb, NULL, NULL);
  gtk_widget_queue_draw (widget);
}

static Frame
make_frame (HmuiPatternView *self, double width, double height)
{
  const HmuiPatternPoint *first = &g_array_index (self->points, HmuiPatternPoint, 0);
  double x0 = first->x, x1 = first->x, y0 = first->y, y1 = first->y;
  double room_x = width - 2 * (EDGE + HEAD_RADIUS), room_y = height - 2 * (EDGE + HEAD_RADIUS);
  Frame frame;

  for (guint i = 1; i < self->points->len; i++)
    {
      const HmuiPatternPoint *point = &g_array_index (self->points, HmuiPatternPoint, i);

      x0 = MIN (x0, point->x);
      x1 = MAX (x1, point->x);
      y0 = MIN (y0, point->y);
      y1 = MAX (y1, point->y);
    }
  frame.scale = MIN (x1 > x0 ? room_x / (x1 - x0) : G_MAXDOUBLE, y1 > y0 ? room_y / (y1 - y0) : G_MAXDOUBLE);
  if (frame.scale == G_MAXDOUBLE)
    frame.scale = 1;
  frame.width = (x1 - x0) * frame.scale;
  frame.height = (y1 - y0) * frame.scale;
  frame.left = (width - frame.width) / 2;
  frame.top = (height - frame.height) / 2;
  frame.x0 = x0;
  frame.y0 = y0;
  return frame;
}

static graphene_point_t
map_point (const Frame *frame, const HmuiPatternPoint *point)
{
  return GRAPHENE_POINT_INIT (frame->left + (point->x - frame->x0) * frame->scale,
                              frame->top + (point->y - frame->y0) * frame->scale);
}

/* The joint behind the fasteners: a plate, or a ring for a round one. */
static void
draw_joint (HmuiPatternView *self, cairo_t *cr, const Frame *frame)
{
  double out = HEAD_RADIUS + 9;
  GdkRGBA fill, ink;

  hmui_draw_color (GTK_WIDGET (self), NULL, 0.06, &fill);
  hmui_draw_color (GTK_WIDGET (self), NULL, 0.35, &ink);
  if (self->pattern == HM_PATTERN_ROUND)
    {
      double r = MAX (frame->width, frame->height) / 2;

      cairo_arc (cr, frame->left + frame->width / 2, frame->top + frame->height / 2, r + out, 0, 2 * G_PI);
      if (r > 2 * out)
        {
          cairo_new_sub_path (cr);
          cairo_arc_negative (cr, frame->left + frame->width / 2, frame->top + frame->height / 2, r - out, 2 * G_PI, 0);
        }
    }
  else
    hmui_draw_rounded (cr, &GRAPHENE_RECT_INIT (frame->left - out, frame->top - out, frame->width + 2 * out,
                                                frame->height + 2 * out), out);
  gdk_cairo_set_source_rgba (cr, &fill);
  cairo_fill_preserve (cr);
  gdk_cairo_set_source_rgba (cr, &ink);
  cairo_set_line_width (cr, 1.5);
  cairo_stroke (cr);
}

/* The way of the wrench: a thin line from each fastener to the next. */
static void
draw_path (HmuiPatternView *self, cairo_t *cr, const Frame *frame)
{
  static const double dashes[] = { 5, 5 };
  guint steps = count_steps (self);
  GdkRGBA color;

  hmui_draw_color (GTK_WIDGET (self), "hm_accent", 0.7, &color);
  gdk_cairo_set_source_rgba (cr, &color);
  cairo_set_line_width (cr, 1.5);
  cairo_set_dash (cr, dashes, 2, 0);
  for (guint order = 1; order <= steps; order++)
    for (guint i = 0; i < self->points->len; i++)
      {
        const HmuiPatternPoint *point = &g_array_index (self->points, HmuiPatternPoint, i);
        graphene_point_t at = map_point (frame, point);

        if (point->order == order)
          cairo_line_to (cr, at.x, at.y);
      }
  cairo_stroke (cr);
  cairo_set_dash (cr, NULL, 0, 0);
}

static void
draw_fastener (HmuiPatternView *self, cairo_t *cr, const graphene_point_t *at, guint order, gboolean now, gboolean done)
{
  GtkWidget *widget = GTK_WIDGET (self);
  g_autofree char *figure = g_strdup_printf ("%u", order);
  g_autoptr(PangoLayout) text = hmui_draw_text (widget, figure, 1.15, PANGO_WEIGHT_BOLD);
  GdkRGBA paper, ink, accent;

  hmui_draw_color (widget, "hm_card", 1.0, &paper);
  hmui_draw_color (widget, NULL, 1.0, &ink);
  hmui_draw_color (widget, "hm_accent", 1.0, &accent);
  if (now)
    {
      GdkRGBA halo = accent;

      halo.alpha = 0.28;
      gdk_cairo_set_source_rgba (cr, &halo);
      cairo_arc (cr, at->x, at->y, HEAD_RADIUS + 7, 0, 2 * G_PI);
      cairo_fill (cr);
    }
  for (int i = 0; i < 6; i++)       /* a hexagon head */
    cairo_line_to (cr, at->x + HEAD_RADIUS * cos (i * G_PI / 3), at->y + HEAD_RADIUS * sin (i * G_PI / 3));
  cairo_close_path (cr);
  gdk_cairo_set_source_rgba (cr, now ? &accent : &paper);
  cairo_fill_preserve (cr);
  gdk_cairo_set_source_rgba (cr, now || done ? &accent : &ink);
  cairo_set_line_width (cr, done ? 3.0 : 1.8);
  cairo_stroke (cr);
  hmui_draw_text_centered (cr, text, at->x, at->y, now ? &paper : &ink);
}

/* What stands below: the pass that is played, or all of them. */
static PangoLayout *
make_caption (HmuiPatternView *self, int pass, double width)
{
  g_autofree char *words = NULL;
  PangoLayout *caption;
  guint n = g_strv_length (self->passes);

  if (n == 1)
    words = g_strdup (self->passes[0]);
  else if (pass >= 0)
    words = g_strdup_printf (_("Pass %u of %u: %s"), pass + 1u, n, self->passes[pass]);
  else
    words = g_strjoinv (" → ", self->passes);
  caption = hmui_draw_text (GTK_WIDGET (self), words, 1.0, PANGO_WEIGHT_BOLD);
  pango_layout_set_width (caption, (int) (width - 2 * EDGE) * PANGO_SCALE);
  pango_layout_set_alignment (caption, PANGO_ALIGN_CENTER);
  return caption;
}

static void
draw_fasteners (HmuiPatternView *self, cairo_t *cr, const Frame *frame, guint order)
{
  gboolean playing = self->tick != 0;

  for (guint i = 0; i < self->points->len; i++)
    {
      const HmuiPatternPoint *point = &g_array_index (self->points, HmuiPatternPoint, i);
      graphene_point_t at = map_point (frame, point);

      draw_fastener (self, cr, &at, point->order, playing && point->order == order, playing && point->order < order);
    }
}

static void
hmui_pattern_view_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  HmuiPatternView *self = HMUI_PATTERN_VIEW (widget);
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  guint round = count_steps (self) + REST_STEPS;
  g_autoptr(PangoLayout) all = NULL, caption = NULL;
  double text_width, text_height;
  Frame frame;
  GdkRGBA ink;
  cairo_t *cr;

  if (self->points->len == 0 || width <= 0 || height <= 0)
    return;
  all = make_caption (self, -1, width);       /* the longest text keeps the drawing still */
  caption = make_caption (self, self->tick != 0 ? (int) (self->step / round) : -1, width);
  hmui_draw_text_size (all, &text_width, &text_height);
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height));
  frame = make_frame (self, width, height - text_height - CAPTION_GAP);
  draw_joint (self, cr, &frame);
  draw_path (self, cr, &frame);
  draw_fasteners (self, cr, &frame, self->step % round + 1);
  hmui_draw_text_size (caption, &text_width, &text_height);
  hmui_draw_color (widget, NULL, 1.0, &ink);
  hmui_draw_text_at (cr, caption, (width - text_width) / 2, height - text_height - CAPTION_GAP, &ink);
  cairo_destroy (cr);
}

static void
hmui_pattern_view_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum, int *natural,
                           int *minimum_baseline, int *natural_baseline)
{
  *minimum = orientation == GTK_ORIENTATION_HORIZONTAL ? 240 : 180;
  *natural = orientation == GTK_ORIENTATION_HORIZONTAL ? 360 : 240;
}

static void
hmui_pattern_view_map (GtkWidget *widget)
{
  GTK_WIDGET_CLASS (hmui_pattern_view_parent_class)->map (widget);
  update_playing (HMUI_PATTERN_VIEW (widget));
}

static void
hmui_pattern_view_unmap (GtkWidget *widget)
{
  GTK_WIDGET_CLASS (hmui_pattern_view_parent_class)->unmap (widget);
  update_playing (HMUI_PATTERN_VIEW (widget));
}

static void
hmui_pattern_view_finalize (GObject *object)
{
  HmuiPatternView *self = HMUI_PATTERN_VIEW (object);

  g_array_unref (self->points);
  g_strfreev (self->passes);
  G_OBJECT_CLASS (hmui_pattern_view_parent_class)->finalize (object);
}

static void
hmui_pattern_view_class_init (HmuiPatternViewClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = hmui_pattern_view_finalize;
  widget_class->snapshot = hmui_pattern_view_snapshot;
  widget_class->measure = hmui_pattern_view_measure;
  widget_class->map = hmui_pattern_view_map;
  widget_class->unmap = hmui_pattern_view_unmap;
  gtk_widget_class_set_css_name (widget_class, "patternview");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_IMG);
}

static void
hmui_pattern_view_init (HmuiPatternView *self)
{
  self->points = g_array_new (FALSE, FALSE, sizeof (HmuiPatternPoint));
  self->passes = g_new0 (char *, 1);
  g_signal_connect_object (gtk_widget_get_settings (GTK_WIDGET (self)), "notify::gtk-enable-animations",
                           G_CALLBACK (update_playing), self, G_CONNECT_SWAPPED);
}

GtkWidget *
hmui_pattern_view_new (void)
{
  return g_object_new (HMUI_TYPE_PATTERN_VIEW, NULL);
}

void
hmui_pattern_view_set_points (HmuiPatternView *self, HmPattern pattern, const HmuiPatternPoint *points, guint n,
                              const char * const *passes, guint n_passes)
{
  g_autoptr(GPtrArray) texts = g_ptr_array_new ();
  g_autofree char *words = NULL;

  g_return_if_fail (HMUI_IS_PATTERN_VIEW (self) && (n == 0 || points != NULL));
  self->pattern = pattern;
  g_array_set_size (self->points, 0);
  if (n > 0)
    g_array_append_vals (self->points, points, n);
  for (guint i = 0; passes != NULL && i < n_passes; i++)
    g_ptr_array_add (texts, g_strdup (passes[i]));
  if (texts->len == 0)
    g_ptr_array_add (texts, g_strdup (_("in this order")));
  g_ptr_array_add (texts, NULL);
  g_strfreev (self->passes);
  self->passes = (GStrv) g_ptr_array_free (g_steal_pointer (&texts), FALSE);
  words = hmui_pattern_words (pattern, points, n, (const char * const *) self->passes);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, words, -1);
  update_playing (self);
}

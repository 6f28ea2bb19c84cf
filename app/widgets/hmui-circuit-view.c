/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-circuit-view.h"
#include "hmui-circuit-meter.h"
#include "hmui-circuit-symbols.h"
#include "hmui-draw.h"
#include <glib/gi18n-lib.h>
#include <math.h>

#define MIN_WIDTH 320
#define MIN_HEIGHT 190
#define NATURAL_WIDTH 560

struct _HmuiCircuitView
{
  GtkWidget            parent_instance;
  const HmPicture     *picture;      /* borrowed, see hmui_circuit_view_set_picture() */
  const HmPicturePoint *red, *black; /* borrowed from picture; NULL: not set */
  char                *reading;      /* owned, may be NULL */
  HmuiCircuitLayout   *layout;       /* owned; NULL until drawn at the present size */
  HmuiCircuitMeter     meter;        /* laid out with layout, when both probes are set */
};
G_DEFINE_FINAL_TYPE (HmuiCircuitView, hmui_circuit_view, GTK_TYPE_WIDGET)

static void
append_sentence (GString *words, const char *sentence)
{
  if (sentence == NULL || sentence[0] == '\0')
    return;
  if (words->len > 0)
    g_string_append (words, words->str[words->len - 1] == '.' ? " " : ". ");
  g_string_append (words, sentence);
}

static void
update_words (HmuiCircuitView *self)
{
  g_autoptr(GString) words = g_string_new (NULL);
  g_autofree char *red = self->red == NULL ? NULL
                         : g_strdup_printf (_("Red probe on: %s"), hmui_translate (self->red->name));
  g_autofree char *black = self->black == NULL ? NULL
                           : g_strdup_printf (_("Black probe on: %s"), hmui_translate (self->black->name));
  g_autofree char *reading = self->reading == NULL || red == NULL || black == NULL ? NULL
                             : g_strdup_printf (_("The meter reads %s"), self->reading);

  append_sentence (words, self->picture != NULL ? hmui_translate (self->picture->name) : NULL);
  append_sentence (words, self->picture != NULL ? hmui_translate (self->picture->detail) : NULL);
  append_sentence (words, red);
  append_sentence (words, black);
  append_sentence (words, reading);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, words->str, -1);
}

static void
forget_layout (HmuiCircuitView *self)
{
  g_clear_pointer (&self->layout, hmui_circuit_layout_free);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

/* Wires and symbols first, then the meter near its probes, then the labels around all of it. */
static void
ensure_layout (HmuiCircuitView *self, int width, int height)
{
  GtkWidget *widget = GTK_WIDGET (self);

  if (self->layout != NULL && self->layout->width == width && self->layout->height == height)
    return;
  g_clear_pointer (&self->layout, hmui_circuit_layout_free);
  self->layout = hmui_circuit_layout_new (self->picture, width, height);
  if (self->red != NULL && self->black != NULL)
    {
      graphene_point_t red = hmui_circuit_layout_map (self->layout, self->red->at);
      graphene_point_t black = hmui_circuit_layout_map (self->layout, self->black->at);

      self->meter = hmui_circuit_meter_place (widget, self->layout, &red, &black, self->reading);
    }
  hmui_circuit_layout_add_labels (self->layout, widget, self->picture);
}

static void
draw_probe (HmuiCircuitView *self, cairo_t *cr, const HmPicturePoint *point)
{
  graphene_point_t at;

  if (point == NULL)
    return;
  at = hmui_circuit_layout_map (self->layout, point->at);
  hmui_circuit_meter_draw_probe (GTK_WIDGET (self), cr, self->layout, &at, point == self->red);
}

static void
draw_labels (GtkWidget *widget, cairo_t *cr, const HmuiCircuitLayout *layout, const GdkRGBA *ink)
{
  for (guint i = 0; i < layout->labels->len; i++)
    {
      const HmuiCircuitLabel *label = &g_array_index (layout->labels, HmuiCircuitLabel, i);

      hmui_draw_text_at (cr, label->text, label->rect.origin.x, label->rect.origin.y, ink);
    }
}

static void
hmui_circuit_view_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  HmuiCircuitView *self = HMUI_CIRCUIT_VIEW (widget);
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  GdkRGBA ink;
  cairo_t *cr;

  if (self->picture == NULL || width <= 0 || height <= 0)
    return;
  ensure_layout (self, width, height);
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height));
  hmui_draw_color (widget, NULL, 1.0, &ink);
  hmui_circuit_symbols_draw_wires (cr, self->layout, self->picture, &ink);
  hmui_circuit_symbols_draw_parts (widget, cr, self->layout, &ink);
  draw_labels (widget, cr, self->layout, &ink);
  if (self->red != NULL && self->black != NULL)
    hmui_circuit_meter_draw (widget, cr, self->layout, &self->meter, self->reading);
  draw_probe (self, cr, self->black);
  draw_probe (self, cr, self->red);
  cairo_destroy (cr);
}

static GtkSizeRequestMode
hmui_circuit_view_get_request_mode (GtkWidget *widget)
{
  return GTK_SIZE_REQUEST_HEIGHT_FOR_WIDTH;
}

static void
hmui_circuit_view_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum, int *natural,
                           int *minimum_baseline, int *natural_baseline)
{
  HmuiCircuitView *self = HMUI_CIRCUIT_VIEW (widget);
  int width = for_size > 0 ? for_size : NATURAL_WIDTH;
  double aspect = self->picture != NULL ? self->picture->height / self->picture->width
                                        : (double) MIN_HEIGHT / MIN_WIDTH;

  *minimum = orientation == GTK_ORIENTATION_HORIZONTAL ? MIN_WIDTH : MIN_HEIGHT;
  *natural = orientation == GTK_ORIENTATION_HORIZONTAL ? NATURAL_WIDTH : MAX (MIN_HEIGHT, (int) ceil (width * aspect));
}

static void
hmui_circuit_view_css_changed (GtkWidget *widget, GtkCssStyleChange *change)
{
  GTK_WIDGET_CLASS (hmui_circuit_view_parent_class)->css_changed (widget, change);
  forget_layout (HMUI_CIRCUIT_VIEW (widget));     /* the font may be another */
}

static void
hmui_circuit_view_system_setting_changed (GtkWidget *widget, GtkSystemSetting setting)
{
  GTK_WIDGET_CLASS (hmui_circuit_view_parent_class)->system_setting_changed (widget, setting);
  forget_layout (HMUI_CIRCUIT_VIEW (widget));
}

static void
hmui_circuit_view_finalize (GObject *object)
{
  HmuiCircuitView *self = HMUI_CIRCUIT_VIEW (object);

  g_clear_pointer (&self->layout, hmui_circuit_layout_free);
  g_clear_pointer (&self->reading, g_free);
  G_OBJECT_CLASS (hmui_circuit_view_parent_class)->finalize (object);
}

static void
hmui_circuit_view_class_init (HmuiCircuitViewClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = hmui_circuit_view_finalize;
  widget_class->snapshot = hmui_circuit_view_snapshot;
  widget_class->measure = hmui_circuit_view_measure;
  widget_class->get_request_mode = hmui_circuit_view_get_request_mode;
  widget_class->css_changed = hmui_circuit_view_css_changed;
  widget_class->system_setting_changed = hmui_circuit_view_system_setting_changed;
  gtk_widget_class_set_css_name (widget_class, "circuitview");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_IMG);
}

static void
hmui_circuit_view_init (HmuiCircuitView *self)
{
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
}

GtkWidget *
hmui_circuit_view_new (void)
{
  return g_object_new (HMUI_TYPE_CIRCUIT_VIEW, NULL);
}

void
hmui_circuit_view_set_picture (HmuiCircuitView *self, const HmPicture *picture)
{
  g_return_if_fail (HMUI_IS_CIRCUIT_VIEW (self));
  self->picture = picture;
  self->red = self->black = NULL;
  forget_layout (self);
  update_words (self);
  gtk_widget_queue_resize (GTK_WIDGET (self));
}

void
hmui_circuit_view_set_probes (HmuiCircuitView *self, const char *red_id, const char *black_id)
{
  g_return_if_fail (HMUI_IS_CIRCUIT_VIEW (self));
  self->red = self->picture != NULL && red_id != NULL ? hm_picture_find_point (self->picture, red_id) : NULL;
  self->black = self->picture != NULL && black_id != NULL ? hm_picture_find_point (self->picture, black_id) : NULL;
  forget_layout (self);
  update_words (self);
}

void
hmui_circuit_view_set_reading (HmuiCircuitView *self, const char *text)
{
  g_return_if_fail (HMUI_IS_CIRCUIT_VIEW (self));
  if (g_strcmp0 (self->reading, text) == 0)
    return;
  g_free (self->reading);
  self->reading = g_strdup (text);
  forget_layout (self);
  update_words (self);
}

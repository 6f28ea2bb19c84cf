/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-drive-view.h"
#include "hmui-draw.h"
#include "hmui-drive-figure.h"
#include <glib/gi18n-lib.h>
#include <math.h>

#define MAX_DRIVES 4
#define DIMENSION_FROM_PX 120   /* smaller views carry no text */
#define EDGE 4.0
#define DIMENSION_ROOM 20.0     /* px below the figure for the dimension line */

struct _HmuiDriveView
{
  GtkWidget        parent_instance;
  HmDrive          drives[MAX_DRIVES];
  guint            n_drives;
  HmLength         point_to_point, across_lobes;
  HmFormat         format;
  char            *decimal_point;   /* owned; what format points to */
  int              pixel_size;
  double           pixels_per_mm;   /* 0: fill the view */
  HmuiDriveFigure *figure;          /* owned; NULL when there are no drives */
};
G_DEFINE_FINAL_TYPE (HmuiDriveView, hmui_drive_view, GTK_TYPE_WIDGET)

static void
update_words (HmuiDriveView *self)
{
  g_autoptr(GString) words = g_string_new (NULL);

  for (guint i = 0; i < self->n_drives; i++)
    {
      g_autofree char *drive = hm_drive_format (&self->drives[i], &self->format);

      g_string_append_printf (words, "%s%s", i > 0 ? ", " : "", drive);
    }
  if (self->n_drives > 0)
    g_string_append_printf (words, ". %s", hmui_drive_figure_is_to_scale (self->figure) ? _("Drawn to scale.")
                                                                                       : _("Not to scale."));
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, words->str, -1);
}

static void
update_figure (HmuiDriveView *self)
{
  g_clear_pointer (&self->figure, hmui_drive_figure_free);
  if (self->n_drives > 0)
    self->figure = hmui_drive_figure_new (self->drives, self->n_drives, self->point_to_point, self->across_lobes);
  update_words (self);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

/* The drive whose size across flats is dimensioned: the first that has one. */
static const HmDrive *
find_dimensioned (HmuiDriveView *self)
{
  for (guint i = 0; i < self->n_drives; i++)
    if (self->drives[i].size.mm > 0)
      return &self->drives[i];
  return NULL;
}

/* The drive as it is asked for, and its size in the other system: "10 mm hex", below it "0.394 in". */
static char *
caption_drive (HmuiDriveView *self, const HmDrive *drive)
{
  HmQuantity size = hm_quantity (HM_QUANTITY_LENGTH, drive->size.mm, HM_UNIT_MM);
  g_autofree char *name = hm_drive_format (drive, &self->format);
  g_autofree char *other = hm_quantity_format (size, drive->inch ? HM_UNIT_MM : HM_UNIT_INCH, -1, &self->format);

  return drive->size.mm > 0 ? g_strdup_printf ("%s\n%s", name, other) : g_steal_pointer (&name);
}

static PangoLayout *
make_caption (HmuiDriveView *self, double width)
{
  g_autoptr(GString) text = g_string_new (NULL);
  PangoLayout *layout;

  for (guint i = 0; i < self->n_drives; i++)
    {
      g_autofree char *line = caption_drive (self, &self->drives[i]);

      g_string_append_printf (text, "%s%s", i > 0 ? "\n" : "", line);
    }
  if (!hmui_drive_figure_is_to_scale (self->figure))
    g_string_append_printf (text, "\n%s", _("not to scale"));
  layout = hmui_draw_text (GTK_WIDGET (self), text->str, 1.0, PANGO_WEIGHT_NORMAL);
  pango_layout_set_alignment (layout, PANGO_ALIGN_CENTER);
  pango_layout_set_width (layout, (int) width * PANGO_SCALE);
  return layout;
}

static void
draw_arrow (cairo_t *cr, double x, double y, double direction)
{
  cairo_move_to (cr, x, y);
  cairo_line_to (cr, x - direction * 7, y - 3.5);
  cairo_line_to (cr, x - direction * 7, y + 3.5);
  cairo_close_path (cr);
  cairo_fill (cr);
}

/* Across flats: two thin lines down from the flats and an arrow between them, at @y below the middle. */
static void
draw_dimension (GtkWidget *widget, cairo_t *cr, double half, double from_y, double y)
{
  GdkRGBA ink;

  hmui_draw_color (widget, NULL, 0.8, &ink);
  gdk_cairo_set_source_rgba (cr, &ink);
  cairo_set_line_width (cr, 1.0);
  for (int side = -1; side <= 1; side += 2)
    {
      cairo_move_to (cr, side * half, from_y);
      cairo_line_to (cr, side * half, y + 5);
    }
  cairo_move_to (cr, -half, y);
  cairo_line_to (cr, half, y);
  cairo_stroke (cr);
  draw_arrow (cr, -half, y, -1);
  draw_arrow (cr, half, y, 1);
}

static double
choose_scale (HmuiDriveView *self, double width, double height)
{
  double radius = hmui_drive_figure_get_radius_mm (self->figure);
  double fit = (MIN (width, height) / 2 - EDGE) / radius;

  if (self->pixels_per_mm <= 0 || !hmui_drive_figure_is_to_scale (self->figure))
    return fit;
  return MIN (fit, self->pixels_per_mm);
}

static void
draw_captioned (HmuiDriveView *self, cairo_t *cr, double width, double height)
{
  GtkWidget *widget = GTK_WIDGET (self);
  g_autoptr(PangoLayout) caption = make_caption (self, width);
  const HmDrive *dimensioned = find_dimensioned (self);
  double text_width, text_height, room, scale, radius;
  GdkRGBA ink;

  hmui_draw_text_size (caption, &text_width, &text_height);
  room = height - text_height - EDGE - (dimensioned != NULL ? DIMENSION_ROOM : 6);
  scale = choose_scale (self, width, room);
  radius = hmui_drive_figure_get_radius_mm (self->figure) * scale;
  cairo_translate (cr, width / 2, room / 2);
  hmui_drive_figure_draw (self->figure, widget, cr, scale);
  if (dimensioned != NULL)
    draw_dimension (widget, cr, dimensioned->size.mm / 2 * scale,
                    dimensioned->kind == HM_DRIVE_HEX_SOCKET ? 0 : radius * 0.55, radius + 9);
  hmui_draw_color (widget, NULL, 1.0, &ink);
  hmui_draw_text_at (cr, caption, -text_width / 2, radius + (dimensioned != NULL ? DIMENSION_ROOM : 6), &ink);
}

static void
hmui_drive_view_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  HmuiDriveView *self = HMUI_DRIVE_VIEW (widget);
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  cairo_t *cr;

  if (self->figure == NULL || width <= 0 || height <= 0)
    return;
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height));
  if (MIN (width, height) >= DIMENSION_FROM_PX)
    draw_captioned (self, cr, width, height);
  else
    {
      cairo_translate (cr, width / 2.0, height / 2.0);
      hmui_drive_figure_draw (self->figure, widget, cr, choose_scale (self, width, height));
    }
  cairo_destroy (cr);
}

static void
hmui_drive_view_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum, int *natural,
                         int *minimum_baseline, int *natural_baseline)
{
  *minimum = *natural = HMUI_DRIVE_VIEW (widget)->pixel_size;
}

static void
hmui_drive_view_finalize (GObject *object)
{
  HmuiDriveView *self = HMUI_DRIVE_VIEW (object);

  g_clear_pointer (&self->figure, hmui_drive_figure_free);
  g_free (self->decimal_point);
  G_OBJECT_CLASS (hmui_drive_view_parent_class)->finalize (object);
}

static void
hmui_drive_view_class_init (HmuiDriveViewClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = hmui_drive_view_finalize;
  widget_class->snapshot = hmui_drive_view_snapshot;
  widget_class->measure = hmui_drive_view_measure;
  gtk_widget_class_set_css_name (widget_class, "driveview");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_IMG);
}

static void
hmui_drive_view_init (HmuiDriveView *self)
{
  self->pixel_size = HMUI_DRIVE_VIEW_SMALL;
  self->format = hm_format_default;
}

GtkWidget *
hmui_drive_view_new (void)
{
  return g_object_new (HMUI_TYPE_DRIVE_VIEW, NULL);
}

void
hmui_drive_view_set_drives (HmuiDriveView *self, const HmDrive *drives, guint n, const HmFormat *format)
{
  char *decimal_point;

  g_return_if_fail (HMUI_IS_DRIVE_VIEW (self) && (n == 0 || drives != NULL));
  self->n_drives = MIN (n, MAX_DRIVES);
  for (guint i = 0; i < self->n_drives; i++)
    self->drives[i] = drives[i];
  self->format = format != NULL ? *format : hm_format_default;
  decimal_point = g_strdup (self->format.decimal_point);
  g_free (self->decimal_point);
  self->decimal_point = decimal_point;
  self->format.decimal_point = decimal_point;
  update_figure (self);
}

void
hmui_drive_view_set_hexalobular (HmuiDriveView *self, HmLength point_to_point, HmLength across_lobes)
{
  g_return_if_fail (HMUI_IS_DRIVE_VIEW (self));
  self->point_to_point = point_to_point;
  self->across_lobes = across_lobes;
  update_figure (self);
}

void
hmui_drive_view_set_pixel_size (HmuiDriveView *self, int pixels)
{
  g_return_if_fail (HMUI_IS_DRIVE_VIEW (self) && pixels > 0);
  self->pixel_size = pixels;
  gtk_widget_queue_resize (GTK_WIDGET (self));
}

void
hmui_drive_view_set_scale (HmuiDriveView *self, double pixels_per_mm)
{
  g_return_if_fail (HMUI_IS_DRIVE_VIEW (self) && pixels_per_mm >= 0);
  self->pixels_per_mm = pixels_per_mm;
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

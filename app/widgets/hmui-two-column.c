/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-two-column.h"

#define TWO_COLUMNS_FROM 780    /* px: a window of 1000 less the rail and the margins of the page */
#define WIDEST 1360             /* px */
#define GAP 30                  /* px between the columns, and between one and the next below it */

struct _HmuiTwoColumn
{
  GtkWidget parent_instance;
  GtkWidget *main, *side;         /* children */
};

static void buildable_init (GtkBuildableIface *iface);

G_DEFINE_FINAL_TYPE_WITH_CODE (HmuiTwoColumn, hmui_two_column, GTK_TYPE_WIDGET,
                               G_IMPLEMENT_INTERFACE (GTK_TYPE_BUILDABLE, buildable_init))

static gboolean
is_shown (GtkWidget *child)
{
  return child != NULL && gtk_widget_should_layout (child);
}

static int
least_width (GtkWidget *child)
{
  int least = 0;

  if (is_shown (child))
    gtk_widget_measure (child, GTK_ORIENTATION_HORIZONTAL, -1, &least, NULL, NULL, NULL);
  return least;
}

/* How wide each column is when they stand side by side; FALSE when they do not. */
static gboolean
split (HmuiTwoColumn *self, int width, int *main_width, int *side_width)
{
  int room = MIN (width, WIDEST) - GAP;
  int side = MAX (room / 3, least_width (self->side));

  if (width < TWO_COLUMNS_FROM || !is_shown (self->side) || !is_shown (self->main))
    return FALSE;
  *side_width = side;
  *main_width = room - side;
  return *main_width >= least_width (self->main);
}

static int
natural_height (GtkWidget *child, int width)
{
  int natural = 0;

  if (is_shown (child))
    gtk_widget_measure (child, GTK_ORIENTATION_VERTICAL, MAX (width, least_width (child)), NULL, &natural, NULL, NULL);
  return natural;
}

static int
height_for (HmuiTwoColumn *self, int width)
{
  int main_width, side_width, gap;

  if (split (self, width, &main_width, &side_width))
    return MAX (natural_height (self->main, main_width), natural_height (self->side, side_width));
  gap = is_shown (self->main) && is_shown (self->side) ? GAP : 0;
  return natural_height (self->main, MIN (width, WIDEST)) + gap + natural_height (self->side, MIN (width, WIDEST));
}

static GtkSizeRequestMode
hmui_two_column_get_request_mode (GtkWidget *widget)
{
  return GTK_SIZE_REQUEST_HEIGHT_FOR_WIDTH;
}

static void
hmui_two_column_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum, int *natural,
                         int *minimum_baseline, int *natural_baseline)
{
  HmuiTwoColumn *self = HMUI_TWO_COLUMN (widget);
  int least = MAX (least_width (self->main), least_width (self->side));

  if (orientation == GTK_ORIENTATION_HORIZONTAL)
    {
      *minimum = least;
      *natural = MAX (least, TWO_COLUMNS_FROM);
    }
  else
    *minimum = *natural = height_for (self, for_size < 0 ? MAX (least, TWO_COLUMNS_FROM) : for_size);
}

static void
place (GtkWidget *child, int x, int y, int width, int height)
{
  if (is_shown (child))
    gtk_widget_size_allocate (child, &(GtkAllocation) { x, y, width, height }, -1);
}

static void
hmui_two_column_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  HmuiTwoColumn *self = HMUI_TWO_COLUMN (widget);
  gboolean mirrored = gtk_widget_get_direction (widget) == GTK_TEXT_DIR_RTL;
  int used = MIN (width, WIDEST), left = (width - used) / 2;
  int main_width, side_width, main_height;

  if (split (self, width, &main_width, &side_width))
    {
      place (self->main, mirrored ? left + side_width + GAP : left, 0, main_width, height);
      place (self->side, mirrored ? left : left + main_width + GAP, 0, side_width, height);
      return;
    }
  main_height = natural_height (self->main, used);
  place (self->main, left, 0, used, main_height);
  main_height += main_height > 0 ? GAP : 0;
  place (self->side, left, main_height, used, MAX (height - main_height, natural_height (self->side, used)));
}

static void
hmui_two_column_add_child (GtkBuildable *buildable, GtkBuilder *builder, GObject *child, const char *type)
{
  HmuiTwoColumn *self = HMUI_TWO_COLUMN (buildable);
  GtkWidget **slot = g_strcmp0 (type, "side") == 0 ? &self->side : &self->main;

  g_return_if_fail (GTK_IS_WIDGET (child) && *slot == NULL);
  *slot = GTK_WIDGET (child);
  gtk_widget_insert_before (*slot, GTK_WIDGET (self), slot == &self->main ? self->side : NULL);
}

static void
buildable_init (GtkBuildableIface *iface)
{
  iface->add_child = hmui_two_column_add_child;
}

static void
hmui_two_column_dispose (GObject *object)
{
  HmuiTwoColumn *self = HMUI_TWO_COLUMN (object);

  g_clear_pointer (&self->main, gtk_widget_unparent);
  g_clear_pointer (&self->side, gtk_widget_unparent);
  G_OBJECT_CLASS (hmui_two_column_parent_class)->dispose (object);
}

static void
hmui_two_column_class_init (HmuiTwoColumnClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_two_column_dispose;
  widget_class->get_request_mode = hmui_two_column_get_request_mode;
  widget_class->measure = hmui_two_column_measure;
  widget_class->size_allocate = hmui_two_column_size_allocate;
}

static void
hmui_two_column_init (HmuiTwoColumn *self)
{
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-torque-grid.h"

#define PAIRS_FROM 520   /* px */
#define GAP 12

struct _HmuiTorqueGrid
{
  GtkWidget parent_instance;
};

G_DEFINE_FINAL_TYPE (HmuiTorqueGrid, hmui_torque_grid, GTK_TYPE_WIDGET)

/* The next child in sight, @child itself if it is; NULL at the end. */
static GtkWidget *
find_shown (GtkWidget *child)
{
  while (child != NULL && !gtk_widget_should_layout (child))
    child = gtk_widget_get_next_sibling (child);
  return child;
}

static GtkWidget *
next_shown (GtkWidget *child)
{
  return find_shown (gtk_widget_get_next_sibling (child));
}

static int
least_width (GtkWidget *widget)
{
  int most = 0;

  for (GtkWidget *child = find_shown (gtk_widget_get_first_child (widget)); child != NULL; child = next_shown (child))
    {
      int least;

      gtk_widget_measure (child, GTK_ORIENTATION_HORIZONTAL, -1, &least, NULL, NULL, NULL);
      most = MAX (most, least);
    }
  return most;
}

static gboolean
stands_in_pairs (GtkWidget *widget, int width)
{
  return width >= PAIRS_FROM && width >= 2 * least_width (widget) + GAP;
}

static int
height_of (GtkWidget *child, int width)
{
  int natural;

  gtk_widget_measure (child, GTK_ORIENTATION_VERTICAL, width, NULL, &natural, NULL, NULL);
  return natural;
}

/* Puts the children where they belong in @width when @allocate; returns the height in either case. */
static int
arrange (GtkWidget *widget, int width, gboolean allocate)
{
  gboolean pairs = stands_in_pairs (widget, width);
  gboolean mirrored = gtk_widget_get_direction (widget) == GTK_TEXT_DIR_RTL;
  int column = pairs ? (width - GAP) / 2 : width, y = 0;
  GtkWidget *first = find_shown (gtk_widget_get_first_child (widget));

  while (first != NULL)
    {
      GtkWidget *second = pairs ? next_shown (first) : NULL;
      int height = height_of (first, column), right = width - column;

      height = second != NULL ? MAX (height, height_of (second, column)) : height;
      if (allocate)
        gtk_widget_size_allocate (first, &(GtkAllocation) { mirrored ? right : 0, y, column, height }, -1);
      if (allocate && second != NULL)
        gtk_widget_size_allocate (second, &(GtkAllocation) { mirrored ? 0 : right, y, column, height }, -1);
      y += height + GAP;
      first = next_shown (second != NULL ? second : first);
    }
  return MAX (y - GAP, 0);
}

static GtkSizeRequestMode
hmui_torque_grid_get_request_mode (GtkWidget *widget)
{
  return GTK_SIZE_REQUEST_HEIGHT_FOR_WIDTH;
}

static void
hmui_torque_grid_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum, int *natural,
                          int *minimum_baseline, int *natural_baseline)
{
  int least = least_width (widget);

  if (orientation == GTK_ORIENTATION_HORIZONTAL)
    *minimum = *natural = least;
  else
    *minimum = *natural = arrange (widget, MAX (for_size, least), FALSE);
}

static void
hmui_torque_grid_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  arrange (widget, width, TRUE);
}

static void
hmui_torque_grid_dispose (GObject *object)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (object))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (hmui_torque_grid_parent_class)->dispose (object);
}

static void
hmui_torque_grid_class_init (HmuiTorqueGridClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_torque_grid_dispose;
  widget_class->get_request_mode = hmui_torque_grid_get_request_mode;
  widget_class->measure = hmui_torque_grid_measure;
  widget_class->size_allocate = hmui_torque_grid_size_allocate;
}

static void
hmui_torque_grid_init (HmuiTorqueGrid *self)
{
}

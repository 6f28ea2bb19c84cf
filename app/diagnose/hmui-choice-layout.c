/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-choice-layout.h"

struct _HmuiChoiceLayout
{
  GtkLayoutManager parent_instance;
  int most_columns;
  int column_gap, row_gap;        /* px */
};

G_DEFINE_FINAL_TYPE (HmuiChoiceLayout, hmui_choice_layout, GTK_TYPE_LAYOUT_MANAGER)

static GtkWidget *
shown_from (GtkWidget *child)
{
  while (child != NULL && !gtk_widget_should_layout (child))
    child = gtk_widget_get_next_sibling (child);
  return child;
}

static GtkWidget *
first_shown (GtkWidget *parent)
{
  return shown_from (gtk_widget_get_first_child (parent));
}

static GtkWidget *
next_shown (GtkWidget *child)
{
  return shown_from (gtk_widget_get_next_sibling (child));
}

static int
count (GtkWidget *parent)
{
  int n = 0;

  for (GtkWidget *child = first_shown (parent); child != NULL; child = next_shown (child))
    n++;
  return n;
}

static int
least_column (GtkWidget *parent)
{
  int least = 0, own;

  for (GtkWidget *child = first_shown (parent); child != NULL; child = next_shown (child))
    {
      gtk_widget_measure (child, GTK_ORIENTATION_HORIZONTAL, -1, &own, NULL, NULL, NULL);
      least = MAX (least, own);
    }
  return least;
}

/* As many as fit; then as few as need no more rows: four things stand in two rows of two, not of three and one. */
static int
columns_for (HmuiChoiceLayout *self, GtkWidget *parent, int width)
{
  int n = count (parent);
  int step = least_column (parent) + self->column_gap;
  int fit = step > 0 ? CLAMP ((width + self->column_gap) / step, 1, self->most_columns) : 1;
  int rows = MAX ((n + fit - 1) / fit, 1);

  return MAX ((n + rows - 1) / rows, 1);
}

static int
column_width (HmuiChoiceLayout *self, GtkWidget *parent, int width, int columns)
{
  return MAX ((width - (columns - 1) * self->column_gap) / columns, least_column (parent));
}

/* The height of the row that begins at @child. */
static int
row_height (GtkWidget *child, int columns, int width)
{
  int height = 0, own;

  for (int i = 0; i < columns && child != NULL; i++, child = next_shown (child))
    {
      gtk_widget_measure (child, GTK_ORIENTATION_VERTICAL, width, NULL, &own, NULL, NULL);
      height = MAX (height, own);
    }
  return height;
}

static int
height_for (HmuiChoiceLayout *self, GtkWidget *parent, int width)
{
  int columns = columns_for (self, parent, width), column = column_width (self, parent, width, columns);
  int height = 0, i = 0;

  for (GtkWidget *child = first_shown (parent); child != NULL; child = next_shown (child))
    if (i++ % columns == 0)
      height += (height > 0 ? self->row_gap : 0) + row_height (child, columns, column);
  return height;
}

static GtkSizeRequestMode
hmui_choice_layout_get_request_mode (GtkLayoutManager *manager, GtkWidget *widget)
{
  return GTK_SIZE_REQUEST_HEIGHT_FOR_WIDTH;
}

static void
hmui_choice_layout_measure (GtkLayoutManager *manager, GtkWidget *widget, GtkOrientation orientation, int for_size,
                            int *minimum, int *natural, int *minimum_baseline, int *natural_baseline)
{
  HmuiChoiceLayout *self = HMUI_CHOICE_LAYOUT (manager);
  int least = least_column (widget);
  int columns = CLAMP (count (widget), 1, self->most_columns);
  int wide = columns * least + (columns - 1) * self->column_gap;

  if (orientation == GTK_ORIENTATION_HORIZONTAL)
    {
      *minimum = least;
      *natural = wide;
    }
  else
    *minimum = *natural = height_for (self, widget, for_size < 0 ? wide : for_size);
}

static void
hmui_choice_layout_allocate (GtkLayoutManager *manager, GtkWidget *widget, int width, int height, int baseline)
{
  HmuiChoiceLayout *self = HMUI_CHOICE_LAYOUT (manager);
  gboolean mirrored = gtk_widget_get_direction (widget) == GTK_TEXT_DIR_RTL;
  int columns = columns_for (self, widget, width), column = column_width (self, widget, width, columns);
  int y = 0, row = 0, i = 0;

  for (GtkWidget *child = first_shown (widget); child != NULL; child = next_shown (child), i++)
    {
      int at = i % columns, x = at * (column + self->column_gap);

      if (at == 0)
        {
          y += i > 0 ? row + self->row_gap : 0;
          row = row_height (child, columns, column);
        }
      gtk_widget_size_allocate (child, &(GtkAllocation) { mirrored ? width - x - column : x, y, column, row }, -1);
    }
}

static void
hmui_choice_layout_class_init (HmuiChoiceLayoutClass *klass)
{
  GtkLayoutManagerClass *manager_class = GTK_LAYOUT_MANAGER_CLASS (klass);

  manager_class->get_request_mode = hmui_choice_layout_get_request_mode;
  manager_class->measure = hmui_choice_layout_measure;
  manager_class->allocate = hmui_choice_layout_allocate;
}

static void
hmui_choice_layout_init (HmuiChoiceLayout *self)
{
}

GtkLayoutManager *
hmui_choice_layout_new (guint most_columns, int column_gap, int row_gap)
{
  HmuiChoiceLayout *self = g_object_new (HMUI_TYPE_CHOICE_LAYOUT, NULL);

  self->most_columns = MAX (most_columns, 1);
  self->column_gap = column_gap;
  self->row_gap = row_gap;
  return GTK_LAYOUT_MANAGER (self);
}

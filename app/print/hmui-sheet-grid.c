/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-sheet-grid.h"

#include <string.h>

#define MOST_SPARE 30.0          /* pt that a column is widened by at most to fill the page */
#define RULE 0.6

/* @groups: one for each column that is the first of its group, NULL elsewhere; @spans: how many columns it stands over */
struct _HmuiSheetGrid
{
  const HmSheetTable *table;
  guint n_columns, n_rows;
  double *x, *widths, width;
  PangoLayout **titles, **groups, **cells;
  guint *spans;
  double group_height, title_height, *row_heights;
};

static const char *
group_of (const HmuiSheetGrid *self, guint column)
{
  return hm_sheet_table_get_column (self->table, column)->group;
}

static void
find_spans (HmuiSheetGrid *self)
{
  guint first = 0;

  for (guint column = 0; column < self->n_columns; column++)
    {
      if (column == 0 || g_strcmp0 (group_of (self, column), group_of (self, first)) != 0)
        first = column;
      self->spans[first]++;
    }
}

/* @least: the widest word; @wanted: the widest cell in one line, and the widest word of the title. */
static void
measure_column (const HmuiSheetGrid *self, PangoContext *context, guint column, double *least, double *wanted)
{
  double word = hmui_sheet_type_word_width (context, hm_sheet_table_get_column (self->table, column)->title,
                                            HMUI_SHEET_NOTE_PT, TRUE);

  *least = *wanted = word;
  for (guint row = 0; row < self->n_rows; row++)
    {
      const HmSheetCell *cell = hm_sheet_table_get_cell (self->table, row, column);
      gboolean bold = hmui_sheet_type_is_bold (cell->tone);
      g_autoptr (PangoLayout) layout = hmui_sheet_type_set (context, cell->text, HMUI_SHEET_TEXT_PT, bold, 0.0);

      *wanted = MAX (*wanted, hmui_sheet_type_width (layout));
      if (strchr (cell->text, ' ') != NULL)
        *least = MAX (*least, hmui_sheet_type_word_width (context, cell->text, HMUI_SHEET_TEXT_PT, bold));
      else
        *least = MAX (*least, hmui_sheet_type_width (layout));
    }
  *least += 2.0 * HMUI_SHEET_CELL_PAD_X;
  *wanted += 2.0 * HMUI_SHEET_CELL_PAD_X + 0.5;
}

/* A group needs room for its own widest word, in the columns that it stands over. */
static void
widen_groups (const HmuiSheetGrid *self, PangoContext *context, double *least, double *wanted)
{
  for (guint column = 0; column < self->n_columns; column++)
    {
      double needed, have = 0.0;

      if (self->spans[column] == 0 || group_of (self, column) == NULL)
        continue;
      needed = hmui_sheet_type_word_width (context, group_of (self, column), HMUI_SHEET_NOTE_PT, TRUE) + 2.0 * HMUI_SHEET_CELL_PAD_X;
      for (guint i = 0; i < self->spans[column]; i++)
        have += least[column + i];
      for (guint i = 0; needed > have && i < self->spans[column]; i++)
        {
          least[column + i] += (needed - have) / self->spans[column];
          wanted[column + i] = MAX (wanted[column + i], least[column + i]);
        }
    }
}

static void
share_width (HmuiSheetGrid *self, const double *least, const double *wanted, double width)
{
  double all_least = 0.0, all_wanted = 0.0, spare, at = 0.0;

  for (guint i = 0; i < self->n_columns; i++)
    {
      all_least += least[i];
      all_wanted += wanted[i];
    }
  spare = MIN (MAX (width - all_wanted, 0.0) / self->n_columns, MOST_SPARE);
  for (guint i = 0; i < self->n_columns; i++)
    {
      if (all_wanted <= width)
        self->widths[i] = wanted[i] + spare;
      else if (all_least < width)
        self->widths[i] = least[i] + (wanted[i] - least[i]) * (width - all_least) / (all_wanted - all_least);
      else
        self->widths[i] = least[i] * width / all_least;
      self->x[i] = at;
      at += self->widths[i];
    }
  self->width = at;
}

static void
find_widths (HmuiSheetGrid *self, PangoContext *context, double width)
{
  g_autofree double *least = g_new0 (double, self->n_columns);
  g_autofree double *wanted = g_new0 (double, self->n_columns);

  for (guint column = 0; column < self->n_columns; column++)
    measure_column (self, context, column, &least[column], &wanted[column]);
  widen_groups (self, context, least, wanted);
  share_width (self, least, wanted, width);
}

static PangoLayout *
set_in (PangoContext *context, const char *text, double size_pt, gboolean bold, double width, HmSheetAlign align)
{
  PangoLayout *layout = hmui_sheet_type_set (context, text, size_pt, bold, width - 2.0 * HMUI_SHEET_CELL_PAD_X);

  pango_layout_set_alignment (layout, align == HM_SHEET_END ? PANGO_ALIGN_RIGHT
                                      : align == HM_SHEET_CENTER ? PANGO_ALIGN_CENTER : PANGO_ALIGN_LEFT);
  return layout;
}

static void
set_head (HmuiSheetGrid *self, PangoContext *context)
{
  for (guint column = 0; column < self->n_columns; column++)
    {
      const HmSheetColumn *head = hm_sheet_table_get_column (self->table, column);
      double width = 0.0;

      self->titles[column] = set_in (context, head->title, HMUI_SHEET_NOTE_PT, TRUE, self->widths[column], head->align);
      self->title_height = MAX (self->title_height, hmui_sheet_type_height (self->titles[column]));
      for (guint i = 0; i < self->spans[column]; i++)
        width += self->widths[column + i];
      if (head->group == NULL || self->spans[column] == 0)
        continue;
      self->groups[column] = set_in (context, head->group, HMUI_SHEET_NOTE_PT, TRUE, width, HM_SHEET_CENTER);
      self->group_height = MAX (self->group_height, hmui_sheet_type_height (self->groups[column]));
    }
  self->title_height += 2.0 * HMUI_SHEET_CELL_PAD_Y;
  if (self->group_height > 0.0)
    self->group_height += 2.0 * HMUI_SHEET_CELL_PAD_Y;
}

static void
set_rows (HmuiSheetGrid *self, PangoContext *context)
{
  for (guint row = 0; row < self->n_rows; row++)
    {
      for (guint column = 0; column < self->n_columns; column++)
        {
          const HmSheetCell *cell = hm_sheet_table_get_cell (self->table, row, column);
          PangoLayout *layout = set_in (context, cell->text, HMUI_SHEET_TEXT_PT, hmui_sheet_type_is_bold (cell->tone),
                                        self->widths[column], hm_sheet_table_get_column (self->table, column)->align);

          self->cells[row * self->n_columns + column] = layout;
          self->row_heights[row] = MAX (self->row_heights[row], hmui_sheet_type_height (layout));
        }
      self->row_heights[row] += 2.0 * HMUI_SHEET_CELL_PAD_Y;
    }
}

HmuiSheetGrid *
hmui_sheet_grid_new (PangoContext *context, const HmSheetTable *table, double width)
{
  HmuiSheetGrid *self;

  g_return_val_if_fail (context != NULL && table != NULL && table->columns->len > 0, NULL);
  self = g_new0 (HmuiSheetGrid, 1);
  self->table = table;
  self->n_columns = table->columns->len;
  self->n_rows = table->rows->len;
  self->x = g_new0 (double, self->n_columns);
  self->widths = g_new0 (double, self->n_columns);
  self->spans = g_new0 (guint, self->n_columns);
  self->titles = g_new0 (PangoLayout *, self->n_columns);
  self->groups = g_new0 (PangoLayout *, self->n_columns);
  self->cells = g_new0 (PangoLayout *, (gsize) self->n_columns * self->n_rows);
  self->row_heights = g_new0 (double, self->n_rows);
  find_spans (self);
  find_widths (self, context, width);
  set_head (self, context);
  set_rows (self, context);
  return self;
}

void
hmui_sheet_grid_free (HmuiSheetGrid *self)
{
  for (guint i = 0; i < self->n_columns; i++)
    {
      g_clear_object (&self->titles[i]);
      g_clear_object (&self->groups[i]);
    }
  for (guint i = 0; i < self->n_columns * self->n_rows; i++)
    g_clear_object (&self->cells[i]);
  g_free (self->x);
  g_free (self->widths);
  g_free (self->spans);
  g_free (self->titles);
  g_free (self->groups);
  g_free (self->cells);
  g_free (self->row_heights);
  g_free (self);
}

double
hmui_sheet_grid_head_height (const HmuiSheetGrid *self)
{
  return self->group_height + self->title_height;
}

double
hmui_sheet_grid_row_height (const HmuiSheetGrid *self, guint row)
{
  g_return_val_if_fail (row < self->n_rows, 0.0);
  return self->row_heights[row];
}

static void
draw_level (cairo_t *cr, double x, double y, double width)
{
  cairo_set_line_width (cr, RULE);
  hmui_sheet_type_dip (cr, HMUI_INK_RULE);
  cairo_move_to (cr, x, y);
  cairo_line_to (cr, x + width, y);
  cairo_stroke (cr);
}

/* Upright lines between columns of different groups. */
static void
draw_uprights (const HmuiSheetGrid *self, cairo_t *cr, double x, double y, double height)
{
  cairo_set_line_width (cr, RULE / 2.0);
  hmui_sheet_type_dip (cr, HMUI_INK_RULE);
  for (guint column = 1; self->group_height > 0.0 && column < self->n_columns; column++)
    if (self->spans[column] > 0)
      {
        cairo_move_to (cr, x + self->x[column], y);
        cairo_rel_line_to (cr, 0.0, height);
        cairo_stroke (cr);
      }
}

void
hmui_sheet_grid_draw_head (const HmuiSheetGrid *self, cairo_t *cr, double x, double y)
{
  double height = hmui_sheet_grid_head_height (self);

  hmui_sheet_type_dip (cr, HMUI_INK_HEAD);
  cairo_rectangle (cr, x, y, self->width, height);
  cairo_fill (cr);
  draw_uprights (self, cr, x, y, height);
  for (guint column = 0; column < self->n_columns; column++)
    {
      double left = x + self->x[column] + HMUI_SHEET_CELL_PAD_X;
      double bottom = y + height - HMUI_SHEET_CELL_PAD_Y - hmui_sheet_type_height (self->titles[column]);

      hmui_sheet_type_show (cr, self->titles[column], left, bottom, HMUI_INK_TEXT);
      if (self->groups[column] != NULL)
        hmui_sheet_type_show (cr, self->groups[column], left, y + HMUI_SHEET_CELL_PAD_Y, HMUI_INK_TEXT);
    }
  draw_level (cr, x, y + height, self->width);
}

void
hmui_sheet_grid_draw_row (const HmuiSheetGrid *self, cairo_t *cr, guint row, gboolean band, double x, double y)
{
  double height;

  g_return_if_fail (row < self->n_rows);
  height = self->row_heights[row];
  if (band)
    {
      hmui_sheet_type_dip (cr, HMUI_INK_BAND);
      cairo_rectangle (cr, x, y, self->width, height);
      cairo_fill (cr);
    }
  draw_uprights (self, cr, x, y, height);
  for (guint column = 0; column < self->n_columns; column++)
    hmui_sheet_type_show (cr, self->cells[row * self->n_columns + column], x + self->x[column] + HMUI_SHEET_CELL_PAD_X,
                          y + HMUI_SHEET_CELL_PAD_Y, hmui_sheet_type_ink (hm_sheet_table_get_cell (self->table, row, column)->tone));
}

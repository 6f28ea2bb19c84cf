/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-sheet-pages.h"
#include "hmui-sheet-grid.h"

#include <glib/gi18n.h>

#define GAP 6.0                  /* pt between blocks */
#define GAP_BEFORE_HEADING 10.0
#define GAP_OF_NOTES 2.5
#define HEAD_GAP 8.0             /* under the rule of the page's head */
#define FOOT_HEIGHT 22.0
#define CAUTION_PAD 6.0
#define CAUTION_BAR 3.0

/* Set: a block of the sheet in type; one of the two. */
typedef struct { PangoLayout *text; HmuiSheetGrid *grid; } Set;

typedef enum { PLACED_TEXT, PLACED_HEAD, PLACED_ROW } PlacedKind;

/* Placed: one thing on a page. @row, @band: for a row of a table */
typedef struct { PlacedKind kind; guint page, block, row; gboolean band; double y; } Placed;

struct _HmuiSheetPages
{
  const HmSheet *sheet;
  HmuiPaper paper;
  PangoContext *context;         /* owned */
  Set *sets;                     /* one for each block */
  GArray *placed;
  PangoLayout *title, *running_title, *date;
  guint page;                    /* while placing: where, at last how many less one */
  double y;
};

static double
text_width (const HmuiSheetPages *self)
{
  return self->paper.width_pt - 2.0 * HMUI_SHEET_MARGIN;
}

static double
page_top (const HmuiSheetPages *self, guint page)
{
  return HMUI_SHEET_MARGIN + hmui_sheet_type_height (page == 0 ? self->title : self->running_title) + HEAD_GAP;
}

static double
page_bottom (const HmuiSheetPages *self)
{
  return self->paper.height_pt - HMUI_SHEET_MARGIN - FOOT_HEIGHT;
}

static Set
set_block (HmuiSheetPages *self, const HmSheetBlock *block)
{
  double width = text_width (self);

  switch (block->kind)
    {
    case HM_SHEET_TABLE:
      return (Set) { NULL, hmui_sheet_grid_new (self->context, block->table, width) };
    case HM_SHEET_HEADING:
      return (Set) { hmui_sheet_type_set (self->context, block->text, HMUI_SHEET_HEADING_PT, TRUE, width), NULL };
    case HM_SHEET_CAUTION:
      return (Set) { hmui_sheet_type_set (self->context, block->text, HMUI_SHEET_TEXT_PT, TRUE,
                                          width - 2.0 * CAUTION_PAD - CAUTION_BAR), NULL };
    case HM_SHEET_NOTE:
      return (Set) { hmui_sheet_type_set (self->context, block->text, HMUI_SHEET_NOTE_PT, FALSE, width), NULL };
    case HM_SHEET_PARAGRAPH:
    default:
      return (Set) { hmui_sheet_type_set (self->context, block->text, HMUI_SHEET_TEXT_PT, FALSE, width), NULL };
    }
}

static double
text_height (const HmuiSheetPages *self, guint block)
{
  double height = hmui_sheet_type_height (self->sets[block].text);

  return hm_sheet_get_block (self->sheet, block)->kind == HM_SHEET_CAUTION ? height + 2.0 * CAUTION_PAD : height;
}

static void
turn_page (HmuiSheetPages *self)
{
  self->page++;
  self->y = page_top (self, self->page);
}

static gboolean
has_room (const HmuiSheetPages *self, double height)
{
  return self->y + height <= page_bottom (self);
}

static void
place (HmuiSheetPages *self, PlacedKind kind, guint block, guint row, gboolean band, double height)
{
  Placed one = { kind, self->page, block, row, band, self->y };

  g_array_append_val (self->placed, one);
  self->y += height;
}

/* The row after the last one that belongs together with @row. */
static guint
group_end (const HmSheetTable *table, guint row)
{
  for (row++; row < table->rows->len; row++)
    if (g_array_index (table->rows, HmSheetRow, row).starts_group)
      break;
  return row;
}

static double
rows_height (const HmuiSheetGrid *grid, guint from, guint to)
{
  double height = 0.0;

  for (guint row = from; row < to; row++)
    height += hmui_sheet_grid_row_height (grid, row);
  return height;
}

static void
place_table (HmuiSheetPages *self, guint block)
{
  const HmSheetTable *table = hm_sheet_get_block (self->sheet, block)->table;
  const HmuiSheetGrid *grid = self->sets[block].grid;
  double head = hmui_sheet_grid_head_height (grid);
  gboolean has_head = FALSE, band = FALSE;

  for (guint first = 0, end; first < table->rows->len; first = end, band = !band)
    {
      end = group_end (table, first);
      for (guint row = first; row < end; row++)
        {
          /* At the start of a group all of it has to fit, if a page can hold it at all. */
          double needed = row == first && rows_height (grid, first, end) < page_bottom (self) / 2.0
                          ? rows_height (grid, first, end) : hmui_sheet_grid_row_height (grid, row);

          if (!has_room (self, needed + (has_head ? 0.0 : head)))
            {
              turn_page (self);
              has_head = FALSE;
            }
          if (!has_head)
            place (self, PLACED_HEAD, block, 0, FALSE, head);
          has_head = TRUE;
          place (self, PLACED_ROW, block, row, band, hmui_sheet_grid_row_height (grid, row));
        }
    }
}

/* Notes that follow each other, from @block on: a list that stays together if a page can hold it. */
static double
notes_height (const HmuiSheetPages *self, guint block)
{
  double height = text_height (self, block), all = 0.0;

  for (; block < self->sheet->blocks->len && hm_sheet_get_block (self->sheet, block)->kind == HM_SHEET_NOTE; block++)
    all += text_height (self, block) + GAP_OF_NOTES;
  return all > height && all < page_bottom (self) / 2.0 ? all : height;
}

/* How much of a block has to stand below its heading. */
static double
first_height (const HmuiSheetPages *self, guint block)
{
  const HmSheetTable *table;

  if (block >= self->sheet->blocks->len)
    return 0.0;
  table = hm_sheet_get_block (self->sheet, block)->table;
  if (table == NULL)
    return notes_height (self, block);
  return hmui_sheet_grid_head_height (self->sets[block].grid) + rows_height (self->sets[block].grid, 0, MIN (4, table->rows->len));
}

static void
place_text (HmuiSheetPages *self, guint block)
{
  gboolean heading = hm_sheet_get_block (self->sheet, block)->kind == HM_SHEET_HEADING;
  double height = text_height (self, block);
  double needed = height + (heading ? GAP + first_height (self, block + 1) : 0.0);

  if (!has_room (self, needed))
    turn_page (self);
  place (self, PLACED_TEXT, block, 0, FALSE, height);
}

static double
gap_before (const HmuiSheetPages *self, guint block)
{
  HmSheetBlockKind kind = hm_sheet_get_block (self->sheet, block)->kind, above;

  if (block == 0)
    return 0.0;
  above = hm_sheet_get_block (self->sheet, block - 1)->kind;
  if (kind == HM_SHEET_HEADING)
    return GAP_BEFORE_HEADING;
  return above == HM_SHEET_HEADING || (kind == HM_SHEET_NOTE && above == HM_SHEET_NOTE) ? GAP_OF_NOTES : GAP;
}

static void
place_all (HmuiSheetPages *self)
{
  self->y = page_top (self, 0);
  for (guint block = 0; block < self->sheet->blocks->len; block++)
    {
      if (self->y > page_top (self, self->page))
        self->y += gap_before (self, block);
      if (self->sets[block].grid != NULL)
        place_table (self, block);
      else
        place_text (self, block);
    }
}

HmuiSheetPages *
hmui_sheet_pages_new (const HmSheet *sheet, const HmuiPaper *paper)
{
  HmuiSheetPages *self;
  double title_width;

  g_return_val_if_fail (sheet != NULL && paper != NULL, NULL);
  self = g_new0 (HmuiSheetPages, 1);
  self->sheet = sheet;
  self->paper = *paper;
  self->context = hmui_sheet_type_new_context ();
  self->placed = g_array_new (FALSE, FALSE, sizeof (Placed));
  self->date = hmui_sheet_type_set (self->context, sheet->date, HMUI_SHEET_TEXT_PT, FALSE, 0.0);
  title_width = text_width (self) - hmui_sheet_type_width (self->date) - 2.0 * GAP;
  self->title = hmui_sheet_type_set (self->context, sheet->title, HMUI_SHEET_TITLE_PT, TRUE, title_width);
  self->running_title = hmui_sheet_type_set (self->context, sheet->title, HMUI_SHEET_TEXT_PT, TRUE, title_width);
  self->sets = g_new0 (Set, sheet->blocks->len);
  for (guint block = 0; block < sheet->blocks->len; block++)
    self->sets[block] = set_block (self, hm_sheet_get_block (sheet, block));
  place_all (self);
  return self;
}

void
hmui_sheet_pages_free (HmuiSheetPages *self)
{
  for (guint block = 0; block < self->sheet->blocks->len; block++)
    {
      g_clear_object (&self->sets[block].text);
      g_clear_pointer (&self->sets[block].grid, hmui_sheet_grid_free);
    }
  g_free (self->sets);
  g_array_unref (self->placed);
  g_object_unref (self->title);
  g_object_unref (self->running_title);
  g_object_unref (self->date);
  g_object_unref (self->context);
  g_free (self);
}

guint
hmui_sheet_pages_get_n (const HmuiSheetPages *self)
{
  return self->page + 1;
}

static void
draw_rule (const HmuiSheetPages *self, cairo_t *cr, double y)
{
  cairo_set_line_width (cr, 0.8);
  hmui_sheet_type_dip (cr, HMUI_INK_TEXT);
  cairo_move_to (cr, HMUI_SHEET_MARGIN, y);
  cairo_rel_line_to (cr, text_width (self), 0.0);
  cairo_stroke (cr);
}

static void
draw_head_and_foot (const HmuiSheetPages *self, cairo_t *cr, guint page)
{
  PangoLayout *title = page == 0 ? self->title : self->running_title;
  double right = self->paper.width_pt - HMUI_SHEET_MARGIN, bottom = self->paper.height_pt - HMUI_SHEET_MARGIN;
  double under = HMUI_SHEET_MARGIN + hmui_sheet_type_height (title);
  /* Translators: first the number of the page, then how many there are. */
  g_autofree char *number = g_strdup_printf (_("Page %u of %u"), page + 1, hmui_sheet_pages_get_n (self));
  g_autoptr (PangoLayout) count = hmui_sheet_type_set (self->context, number, HMUI_SHEET_NOTE_PT, FALSE, 0.0);
  g_autoptr (PangoLayout) governs = hmui_sheet_type_set (self->context, self->sheet->governs, HMUI_SHEET_NOTE_PT, TRUE,
                                                         text_width (self) - hmui_sheet_type_width (count) - 2.0 * GAP);

  hmui_sheet_type_show (cr, title, HMUI_SHEET_MARGIN, HMUI_SHEET_MARGIN, HMUI_INK_TEXT);
  hmui_sheet_type_show (cr, self->date, right - hmui_sheet_type_width (self->date),
                        under - hmui_sheet_type_height (self->date) - (page == 0 ? 3.0 : 0.0), HMUI_INK_TEXT);
  draw_rule (self, cr, under + 2.0);
  draw_rule (self, cr, bottom - FOOT_HEIGHT + 6.0);
  hmui_sheet_type_show (cr, governs, HMUI_SHEET_MARGIN, bottom - FOOT_HEIGHT + 9.0, HMUI_INK_TEXT);
  hmui_sheet_type_show (cr, count, right - hmui_sheet_type_width (count), bottom - FOOT_HEIGHT + 9.0, HMUI_INK_TEXT);
}

static void
draw_text (const HmuiSheetPages *self, cairo_t *cr, const Placed *one)
{
  double height = text_height (self, one->block), x = HMUI_SHEET_MARGIN;

  if (hm_sheet_get_block (self->sheet, one->block)->kind != HM_SHEET_CAUTION)
    {
      hmui_sheet_type_show (cr, self->sets[one->block].text, x, one->y, HMUI_INK_TEXT);
      return;
    }
  cairo_set_line_width (cr, 0.8);
  hmui_sheet_type_dip (cr, HMUI_INK_BAD);
  cairo_rectangle (cr, x, one->y, text_width (self), height);
  cairo_stroke (cr);
  cairo_rectangle (cr, x, one->y, CAUTION_BAR, height);
  cairo_fill (cr);
  hmui_sheet_type_show (cr, self->sets[one->block].text, x + CAUTION_BAR + CAUTION_PAD, one->y + CAUTION_PAD, HMUI_INK_TEXT);
}

void
hmui_sheet_pages_draw (const HmuiSheetPages *self, cairo_t *cr, guint page)
{
  g_return_if_fail (self != NULL && cr != NULL && page < hmui_sheet_pages_get_n (self));
  draw_head_and_foot (self, cr, page);
  for (guint i = 0; i < self->placed->len; i++)
    {
      const Placed *one = &g_array_index (self->placed, Placed, i);

      if (one->page != page)
        continue;
      if (one->kind == PLACED_TEXT)
        draw_text (self, cr, one);
      else if (one->kind == PLACED_HEAD)
        hmui_sheet_grid_draw_head (self->sets[one->block].grid, cr, HMUI_SHEET_MARGIN, one->y);
      else
        hmui_sheet_grid_draw_row (self->sets[one->block].grid, cr, one->row, one->band, HMUI_SHEET_MARGIN, one->y);
    }
}

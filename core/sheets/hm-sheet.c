/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-sheet.h"

#define NOTHING "–"

static void
free_table (HmSheetTable *self)
{
  for (guint row = 0; row < self->rows->len; row++)
    {
      HmSheetCell *cells = g_array_index (self->rows, HmSheetRow, row).cells;

      for (guint column = 0; column < self->columns->len; column++)
        g_free (cells[column].text);
      g_free (cells);
    }
  for (guint column = 0; column < self->columns->len; column++)
    {
      g_free (g_array_index (self->columns, HmSheetColumn, column).group);
      g_free (g_array_index (self->columns, HmSheetColumn, column).title);
    }
  g_array_unref (self->rows);
  g_array_unref (self->columns);
  g_free (self);
}

static void
clear_block (gpointer data)
{
  HmSheetBlock *self = data;

  g_clear_pointer (&self->text, g_free);
  g_clear_pointer (&self->table, free_table);
}

HmSheet *
hm_sheet_new (const char *title, const char *date, const char *governs)
{
  HmSheet *self;

  g_return_val_if_fail (title != NULL && date != NULL && governs != NULL, NULL);
  self = g_new0 (HmSheet, 1);
  self->title = g_strdup (title);
  self->date = g_strdup (date);
  self->governs = g_strdup (governs);
  self->blocks = g_array_new (FALSE, TRUE, sizeof (HmSheetBlock));
  g_array_set_clear_func (self->blocks, clear_block);
  return self;
}

void
hm_sheet_free (HmSheet *self)
{
  g_free (self->title);
  g_free (self->date);
  g_free (self->governs);
  g_array_unref (self->blocks);
  g_free (self);
}

void
hm_sheet_say (HmSheet *self, HmSheetBlockKind kind, const char *text)
{
  HmSheetBlock block = { kind, g_strdup (text), NULL };

  g_return_if_fail (self != NULL && kind != HM_SHEET_TABLE && text != NULL);
  g_array_append_val (self->blocks, block);
}

HmSheetTable *
hm_sheet_add_table (HmSheet *self)
{
  HmSheetBlock block = { HM_SHEET_TABLE, NULL, NULL };

  g_return_val_if_fail (self != NULL, NULL);
  block.table = g_new0 (HmSheetTable, 1);
  block.table->columns = g_array_new (FALSE, TRUE, sizeof (HmSheetColumn));
  block.table->rows = g_array_new (FALSE, TRUE, sizeof (HmSheetRow));
  g_array_append_val (self->blocks, block);
  return block.table;
}

void
hm_sheet_table_add_column (HmSheetTable *self, const char *group, const char *title, HmSheetAlign align)
{
  HmSheetColumn column = { g_strdup (group), g_strdup (title), align };

  g_return_if_fail (self != NULL && self->rows->len == 0 && title != NULL);
  g_array_append_val (self->columns, column);
}

void
hm_sheet_table_begin_row (HmSheetTable *self, gboolean starts_group)
{
  HmSheetRow row = { NULL, starts_group };

  g_return_if_fail (self != NULL && self->columns->len > 0);
  row.cells = g_new0 (HmSheetCell, self->columns->len);
  g_array_append_val (self->rows, row);
}

void
hm_sheet_table_put (HmSheetTable *self, char *text, HmSheetTone tone)
{
  HmSheetCell *cells;
  guint next = 0;

  g_return_if_fail (self != NULL && self->rows->len > 0);
  cells = g_array_index (self->rows, HmSheetRow, self->rows->len - 1).cells;
  while (next < self->columns->len && cells[next].text != NULL)
    next++;
  g_return_if_fail (next < self->columns->len);
  if (text == NULL || text[0] == '\0')
    {
      g_free (text);
      cells[next] = (HmSheetCell) { g_strdup (NOTHING), HM_TONE_PLAIN };
    }
  else
    cells[next] = (HmSheetCell) { text, tone };
}

const HmSheetBlock *
hm_sheet_get_block (const HmSheet *self, guint i)
{
  g_return_val_if_fail (self != NULL && i < self->blocks->len, NULL);
  return &g_array_index (self->blocks, HmSheetBlock, i);
}

const HmSheetColumn *
hm_sheet_table_get_column (const HmSheetTable *self, guint column)
{
  g_return_val_if_fail (self != NULL && column < self->columns->len, NULL);
  return &g_array_index (self->columns, HmSheetColumn, column);
}

const HmSheetCell *
hm_sheet_table_get_cell (const HmSheetTable *self, guint row, guint column)
{
  g_return_val_if_fail (self != NULL && row < self->rows->len && column < self->columns->len, NULL);
  return &g_array_index (self->rows, HmSheetRow, row).cells[column];
}

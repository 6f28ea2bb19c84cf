/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>
G_BEGIN_DECLS

/*
 * A printed sheet: what it says, block by block, in the person's language and units. How it looks is the printer's concern
 * (app/print). All structs are plain; what a sheet holds, it owns.
 */

typedef enum { HM_SHEET_START, HM_SHEET_END, HM_SHEET_CENTER } HmSheetAlign;

/** HmSheetTone: what a cell is, for the eye; the words say it too. */
typedef enum {
  HM_TONE_PLAIN,
  HM_TONE_STRONG,          /* the figure to look for */
  HM_TONE_REPEATED,        /* says what the cell above it says */
  HM_TONE_GOOD, HM_TONE_FAIR, HM_TONE_BAD
} HmSheetTone;

typedef struct { char *text; HmSheetTone tone; } HmSheetCell;

/** HmSheetColumn: @group stands over neighbours that have the same one; NULL if none does. */
typedef struct { char *group, *title; HmSheetAlign align; } HmSheetColumn;

/** HmSheetRow: @cells has one for each column. Rows from one @starts_group to the next belong together. */
typedef struct { HmSheetCell *cells; gboolean starts_group; } HmSheetRow;

/** HmSheetTable: @columns of HmSheetColumn, @rows of HmSheetRow. */
typedef struct { GArray *columns, *rows; } HmSheetTable;

typedef enum {
  HM_SHEET_HEADING,
  HM_SHEET_PARAGRAPH,
  HM_SHEET_CAUTION,        /* what can hurt or break */
  HM_SHEET_NOTE,           /* small print: how it was worked out, where it is from */
  HM_SHEET_TABLE
} HmSheetBlockKind;

/** HmSheetBlock: @text for all kinds but tables, @table for those. */
typedef struct { HmSheetBlockKind kind; char *text; HmSheetTable *table; } HmSheetBlock;

/**
 * HmSheet:
 * @title, @date: what the caller gave; the date is written as it comes
 * @governs: whose word goes before the sheet's; to stand on every page
 * @blocks: of HmSheetBlock, in reading order
 */
typedef struct { char *title, *date, *governs; GArray *blocks; } HmSheet;

HmSheet *hm_sheet_new  (const char *title, const char *date, const char *governs);
void     hm_sheet_free (HmSheet *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmSheet, hm_sheet_free)

/** hm_sheet_say: adds a block of text. */
void hm_sheet_say (HmSheet *self, HmSheetBlockKind kind, const char *text);

/** hm_sheet_add_table: an empty table as the next block; borrowed. */
HmSheetTable *hm_sheet_add_table (HmSheet *self);

/** hm_sheet_table_add_column: before the first row. @group: (nullable) */
void hm_sheet_table_add_column (HmSheetTable *self, const char *group, const char *title, HmSheetAlign align);

/** hm_sheet_table_begin_row: its cells are then put one after the other. */
void hm_sheet_table_begin_row (HmSheetTable *self, gboolean starts_group);

/** hm_sheet_table_put: the next cell of the row begun last. @text: (transfer full): an empty one is written as a dash */
void hm_sheet_table_put (HmSheetTable *self, char *text, HmSheetTone tone);

/* Borrowed. */
const HmSheetBlock  *hm_sheet_get_block        (const HmSheet *self, guint i);
const HmSheetColumn *hm_sheet_table_get_column (const HmSheetTable *self, guint column);
const HmSheetCell   *hm_sheet_table_get_cell   (const HmSheetTable *self, guint row, guint column);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gio/gio.h>
#include "hm-tables.h"
G_BEGIN_DECLS

/* The tables of sizes in words, for reading and sorting. No widgets. */

typedef enum {
  HMUI_SIZE_TABLE_THREADS, HMUI_SIZE_TABLE_HEADS, HMUI_SIZE_TABLE_HEXALOBULAR, HMUI_SIZE_TABLE_SOCKETS, HMUI_SIZE_TABLE_N
} HmuiSizeTableKind;

#define HMUI_SIZE_TABLE_MAX_COLUMNS 7

/** HmuiSizeRow: one line: a text for each column, what it sorts by, and what to look up when it is activated. */
#define HMUI_TYPE_SIZE_ROW (hmui_size_row_get_type ())
G_DECLARE_FINAL_TYPE (HmuiSizeRow, hmui_size_row, HMUI, SIZE_ROW, GObject)

const char *hmui_size_row_get_text   (HmuiSizeRow *self, guint column);   /* borrowed, never NULL */
const char *hmui_size_row_get_target (HmuiSizeRow *self);                 /* borrowed; NULL for none */
/** hmui_size_row_compare: by a column: its numbers where it has them, else its texts. */
int         hmui_size_row_compare    (HmuiSizeRow *a, HmuiSizeRow *b, guint column);

/** What a table is called, and its columns; translated, borrowed; NULL past the last column. */
const char *hmui_size_table_title  (HmuiSizeTableKind kind);
const char *hmui_size_table_column (HmuiSizeTableKind kind, guint column);

/** hmui_size_table_rows: (transfer full): a #GListStore of #HmuiSizeRow, in the order of the standards. */
GListModel *hmui_size_table_rows   (HmuiSizeTableKind kind, const HmTables *tables, const HmFormat *format);

/**
 * hmui_size_row_matches: whether each word of @words begins a word of the row, in any column. A number and its unit are one word:
 * "9 mm" is not "19 mm". Upper and lower case are alike; nothing typed matches all.
 */
gboolean hmui_size_row_matches (HmuiSizeRow *self, const char *words);

/**
 * hmui_size_table_to_text: (transfer full): a line of headings with their units, then one for each of @rows, with tabs between the
 * columns.
 */
char *hmui_size_table_to_text (HmuiSizeTableKind kind, GListModel *rows);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-csv.h"
#include "hm-table-rows.h"
G_BEGIN_DECLS

/*
 * How a table's columns become a row. Private to core/tables.
 */
typedef enum {
  HM_COLUMN_TEXT,
  HM_COLUMN_WORD,          /* one of @words, kept as its index in a guint-sized enum */
  HM_COLUMN_FLAG,          /* "yes" or "no" */
  HM_COLUMN_INCH,          /* the unit column of lengths: "mm" or "inch", kept as gboolean */
  HM_COLUMN_NUMBER,
  HM_COLUMN_INTEGER,
  HM_COLUMN_LENGTH,        /* in the row's `unit` (mm or inch); fractions allowed */
  HM_COLUMN_PITCH,         /* mm, or threads per inch where the row's `unit` is inch */
  HM_COLUMN_STRESS,        /* in the row's `stress_unit`, MPa or ksi */
  HM_COLUMN_PROVENANCE
} HmColumnKind;

/** HmColumn: @optional columns may be empty (0, or "" for text). */
typedef struct {
  const char *name;
  HmColumnKind kind;
  gsize offset;
  gboolean optional;
  const char * const *words;
} HmColumn;

/** HmTableSchema: @columns ends with a NULL name. */
typedef struct { const char *name; gsize row_size; const HmColumn *columns; } HmTableSchema;

/** hm_table_schemas: in the order of hm_tables_names. */
extern const HmTableSchema hm_table_schemas[];

/**
 * hm_table_schema_read_row: fills one row.
 * @row: @self->row_size bytes, zeroed
 * @strings: owns the row's texts
 * Returns: %FALSE with a %HM_TABLES_ERROR_ROW that names table, line, column and what is accepted
 */
gboolean hm_table_schema_read_row (const HmTableSchema *self, const HmCsv *csv, guint index, gpointer row,
                                   GStringChunk *strings, GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>
G_BEGIN_DECLS

/*
 * Comma-separated text: UTF-8, one header line, then one record a line. A line that starts with `#` is a comment; empty
 * lines are skipped. A field in double quotes may hold commas and doubled quotes, but no line break.
 */
typedef struct _HmCsv HmCsv;

typedef enum { HM_CSV_ERROR_ENCODING, HM_CSV_ERROR_QUOTE, HM_CSV_ERROR_FIELDS, HM_CSV_ERROR_HEADER } HmCsvError;
#define HM_CSV_ERROR (hm_csv_error_quark ())
GQuark hm_csv_error_quark (void);

/**
 * hm_csv_parse:
 * @text: the file's contents, never NULL
 * Returns: (transfer full): the records, or NULL with the line number and the reason
 */
HmCsv *hm_csv_parse (const char *text, GError **error) G_GNUC_WARN_UNUSED_RESULT;
void   hm_csv_free  (HmCsv *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmCsv, hm_csv_free)

guint hm_csv_get_n_rows (const HmCsv *self);

/** hm_csv_get_line: the line of the file, from 1, on which record @row stands. */
guint hm_csv_get_line (const HmCsv *self, guint row);

/** hm_csv_get: the field, without outer blanks; "" if empty, NULL if the table has no such column. Borrowed. */
const char *hm_csv_get (const HmCsv *self, guint row, const char *column);

G_END_DECLS

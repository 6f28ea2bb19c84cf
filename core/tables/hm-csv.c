/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-csv.h"

#include <string.h>

typedef struct
{
  guint line;
  GPtrArray *fields;   /* owned strings */
} Record;

struct _HmCsv
{
  GHashTable *columns;   /* owned name -> index */
  GArray *records;       /* of Record */
};

G_DEFINE_QUARK (hm-csv-error-quark, hm_csv_error)

static void
clear_record (gpointer data)
{
  Record *record = data;

  g_clear_pointer (&record->fields, g_ptr_array_unref);
}

/* Reads a quoted field; @cursor stands behind the opening quote and is left behind the closing one. */
static gboolean
read_quoted (const char **cursor, GString *field)
{
  const char *at;

  for (at = *cursor; *at != '\0'; at++)
    {
      if (*at != '"')
        g_string_append_c (field, *at);
      else if (at[1] == '"')
        g_string_append_c (field, *at++);
      else
        {
          *cursor = at + 1;
          return TRUE;
        }
    }
  return FALSE;
}

static const char *
skip_blanks (const char *at)
{
  while (*at == ' ' || *at == '\t')
    at++;
  return at;
}

/* One field; @cursor is left on the comma behind it or at the end of the line. */
static gboolean
read_field (const char **cursor, GString *field)
{
  const char *at = skip_blanks (*cursor);

  g_string_truncate (field, 0);
  if (*at == '"')
    {
      *cursor = at + 1;
      if (!read_quoted (cursor, field))
        return FALSE;
      *cursor = skip_blanks (*cursor);
      return **cursor == ',' || **cursor == '\0';
    }
  *cursor = at + strcspn (at, ",");
  g_string_append_len (field, at, *cursor - at);
  g_strchomp (field->str);
  return TRUE;
}

static GPtrArray *
split_line (const char *line, guint number, GError **error)
{
  g_autoptr (GPtrArray) fields = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (GString) field = g_string_new (NULL);
  const char *cursor = line;

  for (;;)
    {
      if (!read_field (&cursor, field))
        {
          g_set_error (error, HM_CSV_ERROR, HM_CSV_ERROR_QUOTE,
                       "line %u: a quoted field is not closed before the next comma or line end", number);
          return NULL;
        }
      g_ptr_array_add (fields, g_strdup (field->str));
      if (*cursor == '\0')
        return g_steal_pointer (&fields);
      cursor++;
    }
}

static gboolean
take_header (HmCsv *self, GPtrArray *fields, guint line, GError **error)
{
  self->columns = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  for (guint i = 0; i < fields->len; i++)
    if (!g_hash_table_insert (self->columns, g_strdup (fields->pdata[i]), GUINT_TO_POINTER (i)))
      {
        g_set_error (error, HM_CSV_ERROR, HM_CSV_ERROR_HEADER,
                     "line %u: column “%s” stands twice in the header", line, (char *) fields->pdata[i]);
        return FALSE;
      }
  return TRUE;
}

static gboolean
take_line (HmCsv *self, const char *text, guint line, GError **error)
{
  g_autoptr (GPtrArray) fields = split_line (text, line, error);
  Record record;

  if (fields == NULL)
    return FALSE;
  if (self->columns == NULL)
    return take_header (self, fields, line, error);
  if (fields->len != g_hash_table_size (self->columns))
    {
      g_set_error (error, HM_CSV_ERROR, HM_CSV_ERROR_FIELDS, "line %u: %u fields, but the header names %u",
                   line, fields->len, g_hash_table_size (self->columns));
      return FALSE;
    }
  record.line = line;
  record.fields = g_steal_pointer (&fields);
  g_array_append_val (self->records, record);
  return TRUE;
}

HmCsv *
hm_csv_parse (const char *text, GError **error)
{
  g_autoptr (HmCsv) self = NULL;
  g_auto (GStrv) lines = NULL;

  g_return_val_if_fail (text != NULL, NULL);
  if (!g_utf8_validate (text, -1, NULL))
    {
      g_set_error_literal (error, HM_CSV_ERROR, HM_CSV_ERROR_ENCODING, "the text is not UTF-8");
      return NULL;
    }
  self = g_new0 (HmCsv, 1);
  self->records = g_array_new (FALSE, FALSE, sizeof (Record));
  g_array_set_clear_func (self->records, clear_record);
  lines = g_strsplit (text, "\n", -1);
  for (guint i = 0; lines[i] != NULL; i++)
    {
      g_strchomp (lines[i]);
      if (lines[i][0] != '\0' && lines[i][0] != '#' && !take_line (self, lines[i], i + 1, error))
        return NULL;
    }
  if (self->columns != NULL)
    return g_steal_pointer (&self);
  g_set_error_literal (error, HM_CSV_ERROR, HM_CSV_ERROR_HEADER, "there is no header line");
  return NULL;
}

void
hm_csv_free (HmCsv *self)
{
  if (self == NULL)
    return;
  g_clear_pointer (&self->columns, g_hash_table_unref);
  g_clear_pointer (&self->records, g_array_unref);
  g_free (self);
}

guint
hm_csv_get_n_rows (const HmCsv *self)
{
  g_return_val_if_fail (self != NULL, 0);
  return self->records->len;
}

guint
hm_csv_get_line (const HmCsv *self, guint row)
{
  g_return_val_if_fail (self != NULL && row < self->records->len, 0);
  return g_array_index (self->records, Record, row).line;
}

const char *
hm_csv_get (const HmCsv *self, guint row, const char *column)
{
  gpointer index;

  g_return_val_if_fail (self != NULL && column != NULL && row < self->records->len, NULL);
  if (!g_hash_table_lookup_extended (self->columns, column, NULL, &index))
    return NULL;
  return g_array_index (self->records, Record, row).fields->pdata[GPOINTER_TO_UINT (index)];
}

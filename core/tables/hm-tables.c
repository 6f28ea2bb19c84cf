/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-tables.h"

#include "hm-csv.h"
#include "hm-table-schema.h"

#include <string.h>

enum { TABLE_THREADS, TABLE_HEX, TABLE_OPENINGS, TABLE_HEXALOBULAR, TABLE_STRENGTH, TABLE_FRICTION, TABLE_HOLES,
       TABLE_SHEAR, TABLE_PASSES, TABLE_SPECIALS, N_TABLES };

struct _HmTables
{
  gatomicrefcount ref_count;
  GStringChunk *strings;       /* owns every text of every row */
  GArray *rows[N_TABLES];
};

const char * const hm_tables_names[] = { "threads", "hex-heads", "openings", "hexalobular", "strength", "friction",
                                         "holes", "shear", "passes", "special-joints", NULL };

G_DEFINE_QUARK (hm-tables-error-quark, hm_tables_error)

HmTables *
hm_tables_new (void)
{
  HmTables *self = g_new0 (HmTables, 1);

  g_atomic_ref_count_init (&self->ref_count);
  self->strings = g_string_chunk_new (4096);
  for (guint i = 0; i < N_TABLES; i++)
    self->rows[i] = g_array_new (FALSE, TRUE, hm_table_schemas[i].row_size);
  return self;
}

HmTables *
hm_tables_ref (HmTables *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  g_atomic_ref_count_inc (&self->ref_count);
  return self;
}

void
hm_tables_unref (HmTables *self)
{
  g_return_if_fail (self != NULL);
  if (!g_atomic_ref_count_dec (&self->ref_count))
    return;
  for (guint i = 0; i < N_TABLES; i++)
    g_array_unref (self->rows[i]);
  g_string_chunk_free (self->strings);
  g_free (self);
}

static gboolean
find_table (const char *name, guint *out, GError **error)
{
  g_autofree char *accepted = NULL;

  for (guint i = 0; i < N_TABLES; i++)
    if (strcmp (name, hm_table_schemas[i].name) == 0)
      {
        *out = i;
        return TRUE;
      }
  accepted = g_strjoinv (", ", (char **) hm_tables_names);
  g_set_error (error, HM_TABLES_ERROR, HM_TABLES_ERROR_NAME, "“%s” is not a table; there are: %s", name, accepted);
  return FALSE;
}

/* All rows of @csv, or NULL. */
static GArray *
read_rows (const HmTableSchema *schema, const HmCsv *csv, GStringChunk *strings, GError **error)
{
  g_autoptr (GArray) rows = g_array_new (FALSE, TRUE, schema->row_size);
  guint n = hm_csv_get_n_rows (csv);

  g_array_set_size (rows, n);
  for (guint i = 0; i < n; i++)
    if (!hm_table_schema_read_row (schema, csv, i, rows->data + i * schema->row_size, strings, error))
      return NULL;
  return g_steal_pointer (&rows);
}

gboolean
hm_tables_read_csv (HmTables *self, const char *name, const char *text, GError **error)
{
  g_autoptr (HmCsv) csv = NULL;
  g_autoptr (GArray) rows = NULL;
  g_autoptr (GError) reason = NULL;
  guint table;

  g_return_val_if_fail (self != NULL && name != NULL && text != NULL, FALSE);
  if (!find_table (name, &table, error))
    return FALSE;
  csv = hm_csv_parse (text, &reason);
  if (csv == NULL)
    {
      g_set_error (error, HM_TABLES_ERROR, HM_TABLES_ERROR_ROW, "table %s, %s", name, reason->message);
      return FALSE;
    }
  rows = read_rows (&hm_table_schemas[table], csv, self->strings, error);
  if (rows == NULL)
    return FALSE;
  g_array_append_vals (self->rows[table], rows->data, rows->len);
  return TRUE;
}

static gconstpointer
get_rows (const HmTables *self, guint table, gsize *n_rows)
{
  g_return_val_if_fail (self != NULL && n_rows != NULL, NULL);
  *n_rows = self->rows[table]->len;
  return self->rows[table]->data;
}

const HmThreadRow *
hm_tables_get_threads (const HmTables *self, gsize *n_rows)
{
  return get_rows (self, TABLE_THREADS, n_rows);
}

const HmHexRow *
hm_tables_get_hex (const HmTables *self, gsize *n_rows)
{
  return get_rows (self, TABLE_HEX, n_rows);
}

const HmOpeningRow *
hm_tables_get_openings (const HmTables *self, gsize *n_rows)
{
  return get_rows (self, TABLE_OPENINGS, n_rows);
}

const HmHexalobularRow *
hm_tables_get_hexalobular (const HmTables *self, gsize *n_rows)
{
  return get_rows (self, TABLE_HEXALOBULAR, n_rows);
}

const HmStrengthRow *
hm_tables_get_strength (const HmTables *self, gsize *n_rows)
{
  return get_rows (self, TABLE_STRENGTH, n_rows);
}

const HmFrictionRow *
hm_tables_get_friction (const HmTables *self, gsize *n_rows)
{
  return get_rows (self, TABLE_FRICTION, n_rows);
}

const HmHoleRow *
hm_tables_get_holes (const HmTables *self, gsize *n_rows)
{
  return get_rows (self, TABLE_HOLES, n_rows);
}

const HmShearRow *
hm_tables_get_shear (const HmTables *self, gsize *n_rows)
{
  return get_rows (self, TABLE_SHEAR, n_rows);
}

const HmPassRow *
hm_tables_get_passes (const HmTables *self, gsize *n_rows)
{
  return get_rows (self, TABLE_PASSES, n_rows);
}

const HmSpecialRow *
hm_tables_get_specials (const HmTables *self, gsize *n_rows)
{
  return get_rows (self, TABLE_SPECIALS, n_rows);
}

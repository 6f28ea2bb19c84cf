/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-compile-write.h"
#include <string.h>

static const struct { const char *kind; HmKindWriter write; } kind_writers[] = {
  /* Rows that others refer to come first; causes before checks, whose mixture needs the rates. */
  { "limit", hm_write_limit }, { "caution", hm_write_caution }, { "layout", hm_write_layout },
  { "fastener", hm_write_fastener }, { "access", hm_write_access }, { "complaint", hm_write_complaint },
  { "remedy", hm_write_remedy }, { "cause", hm_write_cause }, { "picture", hm_write_picture },
  { "part", hm_write_part }, { "point", hm_write_point }, { "wire", hm_write_wire },
  { "check", hm_write_check }, { "finding", hm_write_finding }, { "incident", hm_write_incident },
};

gboolean
hm_writer_put (HmWriter *self, GError **error, const char *sql, const char *types, ...)
{
  g_auto (HmStmt) stmt = { NULL };
  va_list arguments;

  if (!hm_store_prepare (self->store, sql, &stmt, error))
    return FALSE;
  va_start (arguments, types);
  for (int i = 0; types[i] != '\0'; i++)
    switch (types[i])
      {
      case 'i':
        hm_stmt_bind_int64 (&stmt, i + 1, va_arg (arguments, gint64));
        break;
      case 'd':
        hm_stmt_bind_double (&stmt, i + 1, va_arg (arguments, double));
        break;
      case 't':
        hm_stmt_bind_text (&stmt, i + 1, va_arg (arguments, const char *));
        break;
      default:
        g_assert_not_reached ();
      }
  va_end (arguments);
  return hm_stmt_step (&stmt, error) == HM_STEP_DONE;
}

static gboolean
write_entry_row (HmWriter *self, HmSourceEntry *entry, GError **error)
{
  const HmSourceKind *kind = hm_source_kind_find (entry->kind);
  const char *name = "", *provenance = NULL;

  if (kind->has_name && !hm_entry_get_text (entry, "Name", TRUE, &name, error))
    return FALSE;
  if (kind->has_provenance && !hm_entry_get_provenance (entry, &provenance, error))
    return FALSE;
  return hm_writer_put (self, error, "INSERT INTO entry (entry, kind, scope, id, name, provenance) VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
                        "ittttt", entry->row, entry->kind, entry->scope, entry->id, name, provenance);
}

static gboolean
write_entry_rows (HmWriter *self, GError **error)
{
  for (guint i = 0; i < self->source->entries->len; i++)
    if (!write_entry_row (self, g_ptr_array_index (self->source->entries, i), error))
      return FALSE;
  return TRUE;
}

static gboolean
write_kinds (HmWriter *self, GError **error)
{
  for (gsize k = 0; k < G_N_ELEMENTS (kind_writers); k++)
    {
      g_autoptr (GPtrArray) entries = hm_source_list (self->source, kind_writers[k].kind, NULL);
      for (guint i = 0; i < entries->len; i++)
        if (!kind_writers[k].write (self, g_ptr_array_index (entries, i), error))
          return FALSE;
    }
  return TRUE;
}

static gboolean
write_tables (HmWriter *self, GError **error)
{
  for (guint i = 0; i < self->source->table_texts->len; i++)
    {
      const HmSourceTable *table = g_ptr_array_index (self->source->table_texts, i);
      if (!hm_writer_put (self, error, "INSERT INTO reference_table (name, text) VALUES (?1, ?2)",
                          "tt", table->name, table->text))
        return FALSE;
    }
  return hm_writer_put (self, error, "INSERT INTO about (key, value) VALUES ('version', ?1)", "t", self->source->version);
}

gboolean
hm_compile_write (HmSource *source, HmStore *store, GError **error)
{
  g_autoptr (GHashTable) rates = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, g_free);
  HmWriter self = { store, source, rates };

  if (!hm_store_begin (store, error))
    return FALSE;
  if (write_tables (&self, error) && write_entry_rows (&self, error)
      && hm_compile_read_rates (&self, error) && write_kinds (&self, error))
    return hm_store_commit (store, error);
  hm_store_rollback (store);
  return FALSE;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-store-private.h"

static sqlite3_stmt *
raw_of (HmStmt *self)
{
  g_assert (self != NULL && self->raw != NULL);
  return self->raw;
}

gboolean
hm_store_prepare (HmStore *self, const char *sql, HmStmt *out, GError **error)
{
  sqlite3_stmt *raw;

  g_return_val_if_fail (self != NULL && sql != NULL && out != NULL, FALSE);
  raw = g_hash_table_lookup (self->statements, sql);
  if (raw == NULL)
    {
      if (sqlite3_prepare_v3 (self->db, sql, -1, SQLITE_PREPARE_PERSISTENT, &raw, NULL) != SQLITE_OK)
        return hm_store_set_db_error (self->db, error);
      g_hash_table_insert (self->statements, g_strdup (sql), raw);   /* the table finalizes it */
    }
  g_assert (!sqlite3_stmt_busy (raw));   /* the same query nested in itself is a bug */
  out->raw = raw;
  return TRUE;
}

HmStep
hm_stmt_step (HmStmt *self, GError **error)
{
  sqlite3_stmt *raw = raw_of (self);

  switch (sqlite3_step (raw))
    {
    case SQLITE_ROW:
      return HM_STEP_ROW;
    case SQLITE_DONE:
      return HM_STEP_DONE;
    default:
      hm_store_set_db_error (sqlite3_db_handle (raw), error);
      return HM_STEP_ERROR;
    }
}

/* Runs at scope end, so that no reader lock outlives its function. */
void
hm_stmt_clear (HmStmt *self)
{
  if (self->raw == NULL)
    return;
  sqlite3_reset (self->raw);
  sqlite3_clear_bindings (self->raw);
  self->raw = NULL;
}

/* Binding fails only for an index that the SQL does not have, or without memory: our bug, not the user's. */
static void
check_bound (int code)
{
  if (code != SQLITE_OK)
    g_critical ("binding a parameter: %s", sqlite3_errstr (code));
}

void
hm_stmt_bind_int64 (HmStmt *self, int index, gint64 value)
{
  check_bound (sqlite3_bind_int64 (raw_of (self), index, value));
}

void
hm_stmt_bind_double (HmStmt *self, int index, double value)
{
  check_bound (sqlite3_bind_double (raw_of (self), index, value));
}

void
hm_stmt_bind_text (HmStmt *self, int index, const char *value)
{
  check_bound (sqlite3_bind_text (raw_of (self), index, value, -1, SQLITE_TRANSIENT));
}

gint64
hm_stmt_get_int64 (HmStmt *self, int column)
{
  return sqlite3_column_int64 (raw_of (self), column);
}

double
hm_stmt_get_double (HmStmt *self, int column)
{
  return sqlite3_column_double (raw_of (self), column);
}

const char *
hm_stmt_get_text (HmStmt *self, int column)
{
  return (const char *) sqlite3_column_text (raw_of (self), column);
}

char *
hm_stmt_dup_text (HmStmt *self, int column)
{
  return g_strdup (hm_stmt_get_text (self, column));
}

gboolean
hm_stmt_is_null (HmStmt *self, int column)
{
  return sqlite3_column_type (raw_of (self), column) == SQLITE_NULL;
}

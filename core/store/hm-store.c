/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-store-private.h"
#include <errno.h>
#include <fcntl.h>
#include <glib/gstdio.h>
#include <string.h>

#define BUSY_WAIT_MS 3000

static void
finalize_statement (gpointer raw)
{
  sqlite3_finalize (raw);
}

static HmStore *
open_handle (const char *path, const char *target, int flags, GError **error)
{
  g_autoptr (HmStore) self = g_new0 (HmStore, 1);
  int code;

  self->path = g_strdup (path);
  self->statements = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, finalize_statement);
  code = sqlite3_open_v2 (target, &self->db, flags | SQLITE_OPEN_EXRESCODE, NULL);
  if (code != SQLITE_OK)
    {
      hm_store_set_error (path, code, NULL, error);
      return NULL;
    }
  sqlite3_busy_timeout (self->db, BUSY_WAIT_MS);
  return g_steal_pointer (&self);
}

gboolean
hm_store_run (HmStore *self, const char *sql, GError **error)
{
  if (sqlite3_exec (self->db, sql, NULL, NULL, NULL) != SQLITE_OK)
    return hm_store_set_db_error (self->db, error);
  return TRUE;
}

static gboolean
read_number (HmStore *self, const char *sql, gint64 *out, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };

  if (!hm_store_prepare (self, sql, &stmt, error))
    return FALSE;
  switch (hm_stmt_step (&stmt, error))
    {
    case HM_STEP_ROW:
      *out = hm_stmt_get_int64 (&stmt, 0);
      return TRUE;
    case HM_STEP_DONE:
      *out = 0;
      return TRUE;
    default:
      return FALSE;
    }
}

/* Makes an empty file that nobody else may read; SQLite gives its log the same mode. */
static gboolean
make_file (const char *path, int mode, GError **error)
{
  int descriptor = g_open (path, O_CREAT | O_EXCL | O_RDWR | O_CLOEXEC, mode);
  int saved_errno = errno;

  if (descriptor >= 0)
    return g_close (descriptor, error);
  if (saved_errno == ENOENT || saved_errno == ENOTDIR)
    g_set_error (error, HM_STORE_ERROR, HM_STORE_ERROR_MISSING,
                 "The file “%s” cannot be made: its folder does not exist.", path);
  else if (saved_errno == ENOSPC || saved_errno == EDQUOT)
    g_set_error (error, HM_STORE_ERROR, HM_STORE_ERROR_FULL,
                 "The file “%s” cannot be made: the disk is full. Free some room, then try again.", path);
  else if (saved_errno == EEXIST)
    g_set_error (error, HM_STORE_ERROR, HM_STORE_ERROR_FAILED, "There is already a file “%s”.", path);
  else
    g_set_error (error, HM_STORE_ERROR, HM_STORE_ERROR_DENIED,
                 "The file “%s” cannot be made: %s. Check the permissions of its folder.", path, g_strerror (saved_errno));
  return FALSE;
}

/* Refuses from the file's own bytes, before SQLite could touch it, wherever those bytes are the whole truth. */
static gboolean
check_before_opening (const char *path, guint32 application_id, int known, gboolean *is_new, GError **error)
{
  HmStoreHeader header;

  if (!hm_store_header_read (path, &header, error))
    return FALSE;
  *is_new = header.size == 0 && !header.has_log;
  if (header.size == 0 || header.has_log)
    return TRUE;
  return hm_store_check_application (path, header.application_id, application_id, error)
         && hm_store_check_not_newer (path, header.version, known, error);
}

static gboolean
check_after_opening (HmStore *self, guint32 application_id, int known, GError **error)
{
  gint64 found_id = 0, found_version = 0;

  return read_number (self, "PRAGMA application_id", &found_id, error)
         && hm_store_check_application (self->path, (guint32) found_id, application_id, error)
         && read_number (self, "PRAGMA user_version", &found_version, error)
         && hm_store_check_not_newer (self->path, (int) found_version, known, error);
}

static gboolean
mark_file (HmStore *self, guint32 application_id, GError **error)
{
  g_autofree char *sql = g_strdup_printf ("PRAGMA application_id = %d", (gint32) application_id);

  return hm_store_run (self, sql, error);
}

/* Another process may have done this step meanwhile: the version is read again under the lock. */
static gboolean
apply_migration (HmStore *self, guint index, const char *migration, GError **error)
{
  g_autofree char *sql = g_strdup_printf ("%s\n;PRAGMA user_version = %u;", migration, index + 1);
  gint64 version = 0;

  if (!hm_store_begin (self, error))
    return FALSE;
  if (read_number (self, "PRAGMA user_version", &version, error)
      && (version > index || hm_store_run (self, sql, error))
      && hm_store_commit (self, error))
    return TRUE;
  hm_store_rollback (self);
  return FALSE;
}

static gboolean
migrate (HmStore *self, const char * const *migrations, GError **error)
{
  gint64 version = 0;

  if (!read_number (self, "PRAGMA user_version", &version, error))
    return FALSE;
  for (guint i = (guint) version; migrations[i] != NULL; i++)
    if (!apply_migration (self, i, migrations[i], error))
      return FALSE;
  return TRUE;
}

/* On refusal the log of a foreign or newer file is left unmerged: closing must not write to it either. */
static HmStore *
refuse (HmStore *self)
{
  sqlite3_db_config (self->db, SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, NULL);
  hm_store_close (self);
  return NULL;
}

HmStore *
hm_store_open (const char *path, guint32 application_id, const char * const *migrations, GError **error)
{
  HmStore *self;
  int known;
  gboolean is_new = FALSE;

  g_return_val_if_fail (path != NULL && migrations != NULL, NULL);
  known = (int) g_strv_length ((char **) migrations);
  if (!g_file_test (path, G_FILE_TEST_EXISTS) && !make_file (path, 0600, error))
    return NULL;
  if (!check_before_opening (path, application_id, known, &is_new, error))
    return NULL;
  self = open_handle (path, path, SQLITE_OPEN_READWRITE, error);
  if (self == NULL)
    return NULL;
  if ((is_new && !mark_file (self, application_id, error))
      || !check_after_opening (self, application_id, known, error)
      || !hm_store_run (self, "PRAGMA foreign_keys = ON; PRAGMA synchronous = FULL; PRAGMA journal_mode = WAL;", error)
      || !migrate (self, migrations, error))
    return refuse (self);
  return self;
}

static gboolean
check_version_exactly (const char *path, int found, int wanted, GError **error)
{
  if (!hm_store_check_not_newer (path, found, wanted, error))
    return FALSE;
  if (found == wanted)
    return TRUE;
  g_set_error (error, HM_STORE_ERROR, HM_STORE_ERROR_OLDER,
               "The file “%s” was made by an older Halfmoon (its version is %d; this one needs %d).", path, found, wanted);
  return FALSE;
}

/* Walks every page once, so that a hole in the middle is found on opening and not in the midst of a job. */
static gboolean
check_whole (HmStore *self, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };

  if (!hm_store_prepare (self, "PRAGMA quick_check(1)", &stmt, error))
    return FALSE;
  switch (hm_stmt_step (&stmt, error))
    {
    case HM_STEP_ROW:
      return g_strcmp0 (hm_stmt_get_text (&stmt, 0), "ok") == 0
             || hm_store_set_error (self->path, SQLITE_CORRUPT, NULL, error);
    case HM_STEP_DONE:
      return TRUE;
    default:
      return FALSE;
    }
}

static HmStore *
open_immutable (const char *path, GError **error)
{
  g_autofree char *absolute = g_canonicalize_filename (path, NULL);
  g_autofree char *uri = g_filename_to_uri (absolute, NULL, error);
  g_autofree char *target = uri != NULL ? g_strconcat (uri, "?mode=ro&immutable=1", NULL) : NULL;

  return target != NULL ? open_handle (path, target, SQLITE_OPEN_READONLY | SQLITE_OPEN_URI, error) : NULL;
}

HmStore *
hm_store_open_read_only (const char *path, guint32 application_id, int version, GError **error)
{
  g_autoptr (HmStore) self = NULL;
  HmStoreHeader header;

  g_return_val_if_fail (path != NULL, NULL);
  if (!hm_store_header_read (path, &header, error))
    return NULL;
  if (header.size == 0)
    {
      g_set_error (error, HM_STORE_ERROR, HM_STORE_ERROR_DAMAGED,
                   "The file “%s” is empty. Put back a copy that is whole.", path);
      return NULL;
    }
  if (!hm_store_check_application (path, header.application_id, application_id, error)
      || !check_version_exactly (path, header.version, version, error))
    return NULL;
  self = open_immutable (path, error);
  if (self == NULL || !check_whole (self, error))
    return NULL;
  return g_steal_pointer (&self);
}

HmStore *
hm_store_create (const char *path, guint32 application_id, int version, const char *schema, GError **error)
{
  g_autoptr (HmStore) self = NULL;
  g_autofree char *sql = g_strdup_printf ("BEGIN; PRAGMA application_id = %d; PRAGMA user_version = %d; %s\n; COMMIT;",
                                          (gint32) application_id, version, schema);

  g_return_val_if_fail (path != NULL && schema != NULL, NULL);
  if (!make_file (path, 0644, error))
    return NULL;
  self = open_handle (path, path, SQLITE_OPEN_READWRITE, error);
  if (self == NULL || !hm_store_run (self, "PRAGMA foreign_keys = ON; PRAGMA journal_mode = DELETE;", error)
      || !hm_store_run (self, sql, error))
    return NULL;
  return g_steal_pointer (&self);
}

gboolean
hm_store_close_packed (HmStore *self, GError **error)
{
  gboolean done;

  g_return_val_if_fail (self != NULL, FALSE);
  g_hash_table_remove_all (self->statements);
  done = hm_store_run (self, "PRAGMA journal_mode = DELETE; VACUUM;", error);
  hm_store_close (self);
  return done;
}

void
hm_store_close (HmStore *self)
{
  if (self == NULL)
    return;
  g_hash_table_unref (self->statements);
  if (sqlite3_close (self->db) != SQLITE_OK)
    g_critical ("closing “%s”: a statement is still in use", self->path);
  g_free (self->path);
  g_free (self);
}

gboolean
hm_store_begin (HmStore *self, GError **error)
{
  return hm_store_run (self, "BEGIN IMMEDIATE", error);
}

gboolean
hm_store_commit (HmStore *self, GError **error)
{
  return hm_store_run (self, "COMMIT", error);
}

void
hm_store_rollback (HmStore *self)
{
  if (!sqlite3_get_autocommit (self->db))      /* a full disk may have rolled back already */
    sqlite3_exec (self->db, "ROLLBACK", NULL, NULL, NULL);
}

gint64
hm_store_last_insert_id (HmStore *self)
{
  return sqlite3_last_insert_rowid (self->db);
}

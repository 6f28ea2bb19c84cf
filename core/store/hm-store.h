/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>
G_BEGIN_DECLS

/*
 * SQLite for the rest of the core: the only user of sqlite3.h. Knows no trade word. One store, one thread at a time.
 */
typedef struct _HmStore HmStore;

/**
 * HmStoreError:
 * @HM_STORE_ERROR_MISSING: no such file  @HM_STORE_ERROR_DAMAGED: not a database, or cut short
 * @HM_STORE_ERROR_FOREIGN: a database, but of another program or purpose
 * @HM_STORE_ERROR_NEWER: its version is above what this program knows; left untouched
 * @HM_STORE_ERROR_OLDER: read-only and below the wanted version
 * @HM_STORE_ERROR_DENIED: may not be opened or written  @HM_STORE_ERROR_FULL: no room on the disk
 * @HM_STORE_ERROR_BUSY: another process holds it  @HM_STORE_ERROR_FAILED: anything else SQLite said
 */
typedef enum {
  HM_STORE_ERROR_MISSING, HM_STORE_ERROR_DAMAGED, HM_STORE_ERROR_FOREIGN, HM_STORE_ERROR_NEWER, HM_STORE_ERROR_OLDER,
  HM_STORE_ERROR_DENIED, HM_STORE_ERROR_FULL, HM_STORE_ERROR_BUSY, HM_STORE_ERROR_FAILED
} HmStoreError;
#define HM_STORE_ERROR (hm_store_error_quark ())
GQuark hm_store_error_quark (void);

/**
 * hm_store_open: for reading and writing: WAL, synchronous=FULL, foreign keys on; made (mode 0600) when missing.
 * @application_id: SQLite application_id that marks the file's purpose
 * @migrations: NULL-terminated, numbered from 1; those above the file's user_version run, each in a transaction
 */
HmStore *hm_store_open (const char *path, guint32 application_id, const char * const *migrations, GError **error);

/** hm_store_open_read_only: immutable; @version must be the file's user_version. */
HmStore *hm_store_open_read_only (const char *path, guint32 application_id, int version, GError **error);

/** hm_store_create: a new file at @path (must not exist) for a compiler: no WAL, one schema, for hm_store_close_packed(). */
HmStore *hm_store_create (const char *path, guint32 application_id, int version, const char *schema, GError **error);

/** hm_store_close_packed: VACUUM with a rollback journal, so that the file can be opened immutable; frees @self. */
gboolean hm_store_close_packed (HmStore *self, GError **error) G_GNUC_WARN_UNUSED_RESULT;

void hm_store_close (HmStore *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmStore, hm_store_close)

gboolean hm_store_begin    (HmStore *self, GError **error) G_GNUC_WARN_UNUSED_RESULT;   /* BEGIN IMMEDIATE */
gboolean hm_store_commit   (HmStore *self, GError **error) G_GNUC_WARN_UNUSED_RESULT;
void     hm_store_rollback (HmStore *self);

typedef struct { void *raw; } HmStmt;   /* a cached statement on loan: reset when cleared */
typedef enum { HM_STEP_ROW, HM_STEP_DONE, HM_STEP_ERROR } HmStep;

gboolean    hm_store_prepare (HmStore *self, const char *sql, HmStmt *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;
HmStep      hm_stmt_step     (HmStmt *self, GError **error);
void        hm_stmt_clear    (HmStmt *self);
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (HmStmt, hm_stmt_clear)

void        hm_stmt_bind_int64  (HmStmt *self, int index, gint64 value);        /* indices from 1 */
void        hm_stmt_bind_double (HmStmt *self, int index, double value);
void        hm_stmt_bind_text   (HmStmt *self, int index, const char *value);   /* NULL binds NULL; copied */
gint64      hm_stmt_get_int64   (HmStmt *self, int column);                      /* columns from 0 */
double      hm_stmt_get_double  (HmStmt *self, int column);
const char *hm_stmt_get_text    (HmStmt *self, int column);                      /* until the next step; NULL for NULL */
char       *hm_stmt_dup_text    (HmStmt *self, int column);
gboolean    hm_stmt_is_null     (HmStmt *self, int column);

gint64      hm_store_last_insert_id (HmStore *self);

G_END_DECLS

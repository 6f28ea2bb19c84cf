/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-store.h"
#include <sqlite3.h>
G_BEGIN_DECLS

/* Shared by the files of this folder only. */

struct _HmStore
{
  sqlite3    *db;           /* owned */
  char       *path;         /* owned; as the caller named it */
  GHashTable *statements;   /* owned; SQL text -> sqlite3_stmt */
};

/**
 * HmStoreHeader: what the first 100 bytes of a database file say (SQLite, "Database File Format", section 1.3).
 * @size: of the file, bytes
 * @page_count: 0 when the header does not vouch for its own count
 * @has_log: whether a write-ahead log with something in it lies beside the file: the header may then be behind
 */
typedef struct {
  guint64 size;
  guint32 page_size, page_count, application_id;
  int version;
  gboolean has_log;
} HmStoreHeader;

/** hm_store_header_read: MISSING, DENIED, or DAMAGED when it is no database or is cut short. An empty file gives size 0. */
gboolean hm_store_header_read (const char *path, HmStoreHeader *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** Refusals that every way of opening shares; @path as the person knows it. Each returns %FALSE with @error when it refuses. */
gboolean hm_store_check_application (const char *path, guint32 found, guint32 wanted, GError **error) G_GNUC_WARN_UNUSED_RESULT;
gboolean hm_store_check_not_newer   (const char *path, int found, int known, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_store_set_error: puts SQLite's result @code for @path into a sentence. @detail: (nullable): SQLite's own words. Returns: %FALSE */
gboolean hm_store_set_error    (const char *path, int code, const char *detail, GError **error);
gboolean hm_store_set_db_error (sqlite3 *db, GError **error);    /* the latest error of @db. Returns: %FALSE */

/** hm_store_run: one or more statements without parameters or rows. */
gboolean hm_store_run (HmStore *self, const char *sql, GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS

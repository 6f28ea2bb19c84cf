/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-store-private.h"

G_DEFINE_QUARK (hm-store-error-quark, hm_store_error)

static HmStoreError
error_for_code (int code)
{
  if (code == SQLITE_IOERR_SHORT_READ)
    return HM_STORE_ERROR_DAMAGED;
  switch (code & 0xff)
    {
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
    case SQLITE_FORMAT:
      return HM_STORE_ERROR_DAMAGED;
    case SQLITE_FULL:
      return HM_STORE_ERROR_FULL;
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
    case SQLITE_PROTOCOL:
      return HM_STORE_ERROR_BUSY;
    case SQLITE_PERM:
    case SQLITE_AUTH:
    case SQLITE_READONLY:
    case SQLITE_CANTOPEN:
      return HM_STORE_ERROR_DENIED;
    default:
      return HM_STORE_ERROR_FAILED;
    }
}

gboolean
hm_store_set_error (const char *path, int code, const char *detail, GError **error)
{
  HmStoreError kind = error_for_code (code);

  if (kind == HM_STORE_ERROR_DAMAGED)
    g_set_error (error, HM_STORE_ERROR, kind, "The file “%s” is damaged. Put back a copy that is whole.", path);
  else if (kind == HM_STORE_ERROR_FULL)
    g_set_error (error, HM_STORE_ERROR, kind, "The disk that holds “%s” is full. Free some room, then try again.", path);
  else if (kind == HM_STORE_ERROR_BUSY)
    g_set_error (error, HM_STORE_ERROR, kind, "The file “%s” is in use by another program. Close that, then try again.", path);
  else if (kind == HM_STORE_ERROR_DENIED)
    g_set_error (error, HM_STORE_ERROR, kind,
                 "The file “%s” cannot be opened or written. Check the permissions of the file and of its folder.", path);
  else if ((code & 0xff) == SQLITE_IOERR)
    g_set_error (error, HM_STORE_ERROR, kind, "The file “%s” cannot be read or written. Check the disk.", path);
  else
    g_set_error (error, HM_STORE_ERROR, kind, "The file “%s” cannot be used: %s.", path,
                 detail != NULL ? detail : sqlite3_errstr (code));
  return FALSE;
}

gboolean
hm_store_set_db_error (sqlite3 *db, GError **error)
{
  const char *path = sqlite3_db_filename (db, "main");

  return hm_store_set_error (path != NULL ? path : "", sqlite3_extended_errcode (db), sqlite3_errmsg (db), error);
}

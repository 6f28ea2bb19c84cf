/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-store-private.h"
#include <errno.h>
#include <fcntl.h>
#include <glib/gstdio.h>
#include <string.h>
#include <unistd.h>

#define HEADER_BYTES 100
static const char magic[16] = "SQLite format 3";

static guint32
read_be32 (const guint8 *bytes)
{
  return (guint32) bytes[0] << 24 | (guint32) bytes[1] << 16 | (guint32) bytes[2] << 8 | bytes[3];
}

static gboolean
set_error_from_errno (const char *path, int saved_errno, GError **error)
{
  if (saved_errno == ENOENT || saved_errno == ENOTDIR)
    g_set_error (error, HM_STORE_ERROR, HM_STORE_ERROR_MISSING, "There is no file “%s”.", path);
  else
    g_set_error (error, HM_STORE_ERROR, HM_STORE_ERROR_DENIED,
                 "The file “%s” cannot be read: %s. Check the permissions of the file and of its folder.",
                 path, g_strerror (saved_errno));
  return FALSE;
}

static gboolean
log_has_content (const char *path)
{
  g_autofree char *log_path = g_strconcat (path, "-wal", NULL);
  GStatBuf stat_buf;

  return g_stat (log_path, &stat_buf) == 0 && stat_buf.st_size > 0;
}

static gboolean
read_start (const char *path, guint8 *bytes, gssize *length, guint64 *size, GError **error)
{
  int descriptor = g_open (path, O_RDONLY | O_CLOEXEC, 0);
  GStatBuf stat_buf;
  int saved_errno;

  if (descriptor < 0)
    return set_error_from_errno (path, errno, error);
  *length = fstat (descriptor, &stat_buf) == 0 ? read (descriptor, bytes, HEADER_BYTES) : -1;
  saved_errno = errno;
  close (descriptor);
  if (*length < 0)
    return set_error_from_errno (path, saved_errno, error);
  *size = (guint64) stat_buf.st_size;
  return TRUE;
}

static gboolean
set_not_a_database (const char *path, GError **error)
{
  g_set_error (error, HM_STORE_ERROR, HM_STORE_ERROR_DAMAGED,
               "The file “%s” is damaged or is not a database. Put back a copy that is whole.", path);
  return FALSE;
}

static void
parse_header (const guint8 *bytes, HmStoreHeader *header)
{
  guint32 page_size = (guint32) bytes[16] << 8 | bytes[17];

  header->page_size = page_size == 1 ? 65536 : page_size;
  /* The count holds only if its version stamp equals the change counter. */
  header->page_count = read_be32 (bytes + 24) == read_be32 (bytes + 92) ? read_be32 (bytes + 28) : 0;
  header->version = (int) read_be32 (bytes + 60);
  header->application_id = read_be32 (bytes + 68);
}

gboolean
hm_store_header_read (const char *path, HmStoreHeader *out, GError **error)
{
  guint8 bytes[HEADER_BYTES] = { 0 };
  HmStoreHeader header = { 0 };
  gssize length = 0;

  if (!read_start (path, bytes, &length, &header.size, error))
    return FALSE;
  header.has_log = log_has_content (path);
  if (header.size > 0)
    {
      if (length < HEADER_BYTES || memcmp (bytes, magic, sizeof magic) != 0)
        return set_not_a_database (path, error);
      parse_header (bytes, &header);
      if (!header.has_log && header.size < (guint64) header.page_count * header.page_size)
        {
          g_set_error (error, HM_STORE_ERROR, HM_STORE_ERROR_DAMAGED,
                       "The file “%s” is cut short. Put back a copy that is whole.", path);
          return FALSE;
        }
    }
  *out = header;
  return TRUE;
}

gboolean
hm_store_check_application (const char *path, guint32 found, guint32 wanted, GError **error)
{
  if (found == wanted)
    return TRUE;
  g_set_error (error, HM_STORE_ERROR, HM_STORE_ERROR_FOREIGN,
               "The file “%s” is a database of another program or for another purpose. Choose another file.", path);
  return FALSE;
}

gboolean
hm_store_check_not_newer (const char *path, int found, int known, GError **error)
{
  if (found <= known)
    return TRUE;
  g_set_error (error, HM_STORE_ERROR, HM_STORE_ERROR_NEWER,
               "The file “%s” was made by a newer Halfmoon (its version is %d; this one knows up to %d). "
               "It was left as it is. Update Halfmoon to open it.", path, found, known);
  return FALSE;
}

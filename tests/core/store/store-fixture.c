/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "store-fixture.h"
#include <glib/gstdio.h>
#include <string.h>

const char * const one_migration[] = {
  "CREATE TABLE part (id INTEGER PRIMARY KEY, name TEXT NOT NULL) STRICT;",
  NULL
};
const char * const two_migrations[] = {
  "CREATE TABLE part (id INTEGER PRIMARY KEY, name TEXT NOT NULL) STRICT;",
  "ALTER TABLE part ADD COLUMN count INTEGER;   -- how many lie in the drawer",
  NULL
};

int
store_fixture_set_up (void **state)
{
  StoreFixture *self = g_new0 (StoreFixture, 1);

  self->folder = g_dir_make_tmp ("store-XXXXXX", NULL);
  assert_non_null (self->folder);
  self->path = g_build_filename (self->folder, "shop ä?%.db", NULL);   /* must survive being put into a URI */
  *state = self;
  return 0;
}

int
store_fixture_tear_down (void **state)
{
  StoreFixture *self = *state;
  g_autoptr (GDir) dir = NULL;
  const char *name;

  g_chmod (self->folder, 0700);
  dir = g_dir_open (self->folder, 0, NULL);
  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *path = g_build_filename (self->folder, name, NULL);
      g_remove (path);
    }
  g_rmdir (self->folder);
  g_free (self->folder);
  g_free (self->path);
  g_free (self);
  return 0;
}

static void
insert_part (HmStore *store, const char *name)
{
  g_auto (HmStmt) stmt = { NULL };
  g_autoptr (GError) error = NULL;

  if (!hm_store_prepare (store, "INSERT INTO part (name) VALUES (?1)", &stmt, &error))
    fail_msg ("%s", error->message);
  hm_stmt_bind_text (&stmt, 1, name);
  assert_int_equal (hm_stmt_step (&stmt, &error), HM_STEP_DONE);
}

void
make_store (const char *path, const char * const *migrations)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (HmStore) store = hm_store_open (path, TEST_APPLICATION, migrations, &error);

  if (store == NULL)
    fail_msg ("%s", error->message);
  insert_part (store, "belt");
  insert_part (store, "key");
}

GBytes *
read_bytes (const char *path)
{
  char *data = NULL;
  gsize size = 0;

  assert_true (g_file_get_contents (path, &data, &size, NULL));
  return g_bytes_new_take (data, size);
}

void
write_bytes (const char *path, gconstpointer data, gsize size)
{
  assert_true (g_file_set_contents (path, data, (gssize) size, NULL));
}

void
patch_be32 (const char *path, gsize offset, guint32 value)
{
  g_autofree char *data = NULL;
  gsize size = 0;
  guint32 stored = GUINT32_TO_BE (value);

  assert_true (g_file_get_contents (path, &data, &size, NULL));
  assert_true (offset + sizeof stored <= size);
  memcpy (data + offset, &stored, sizeof stored);
  write_bytes (path, data, size);
}

gint64
query_number (HmStore *store, const char *sql)
{
  g_auto (HmStmt) stmt = { NULL };
  g_autoptr (GError) error = NULL;

  if (!hm_store_prepare (store, sql, &stmt, &error))
    fail_msg ("%s", error->message);
  assert_int_equal (hm_stmt_step (&stmt, &error), HM_STEP_ROW);
  return hm_stmt_get_int64 (&stmt, 0);
}

void
assert_store_error (GError *error, HmStoreError code, const char *path)
{
  if (error == NULL)
    fail_msg ("no error, want code %d", code);
  if (error->domain != HM_STORE_ERROR || error->code != (int) code)
    fail_msg ("code %d, want %d: %s", error->code, code, error->message);
  if (strstr (error->message, path) == NULL)
    fail_msg ("the message does not name the file: %s", error->message);
  if (!g_str_has_suffix (error->message, "."))
    fail_msg ("the message is no sentence: %s", error->message);
}

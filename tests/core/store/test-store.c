/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "store-fixture.h"
#include <glib/gstdio.h>
#include <string.h>
#include <unistd.h>

/* Offsets in the header: SQLite, "Database File Format", section 1.3. */
#define OFFSET_VERSION 60
#define OFFSET_APPLICATION 68

static void
opening_makes_the_file_and_migrates (void **state)
{
  StoreFixture *self = *state;
  g_autoptr (GError) error = NULL;
  g_autoptr (HmStore) store = hm_store_open (self->path, TEST_APPLICATION, two_migrations, &error);

  assert_non_null (store);
  assert_int_equal (query_number (store, "PRAGMA user_version"), 2);
  assert_int_equal (query_number (store, "PRAGMA application_id"), TEST_APPLICATION);
  assert_int_equal (query_number (store, "SELECT count(*) FROM pragma_table_info('part')"), 3);
}

static void
the_file_is_its_owners_alone (void **state)
{
  StoreFixture *self = *state;
  GStatBuf stat_buf;

  make_store (self->path, one_migration);
  assert_int_equal (g_stat (self->path, &stat_buf), 0);
  assert_int_equal (stat_buf.st_mode & 0777, 0600);
}

static void
the_store_is_safe_against_power_loss (void **state)
{
  StoreFixture *self = *state;
  g_autoptr (HmStore) store = hm_store_open (self->path, TEST_APPLICATION, one_migration, NULL);

  assert_int_equal (query_number (store, "PRAGMA synchronous"), 2);     /* FULL */
  assert_int_equal (query_number (store, "PRAGMA foreign_keys"), 1);
  assert_int_equal (query_number (store, "SELECT journal_mode = 'wal' FROM pragma_journal_mode"), 1);
}

static void
an_older_store_is_brought_up_and_keeps_its_rows (void **state)
{
  StoreFixture *self = *state;
  g_autoptr (HmStore) store = NULL;

  make_store (self->path, one_migration);
  store = hm_store_open (self->path, TEST_APPLICATION, two_migrations, NULL);
  assert_non_null (store);
  assert_int_equal (query_number (store, "PRAGMA user_version"), 2);
  assert_int_equal (query_number (store, "SELECT count(*) FROM part WHERE count IS NULL"), 2);
}

static void
a_failing_migration_leaves_the_version_before_it (void **state)
{
  static const char * const broken[] = {
    "CREATE TABLE part (id INTEGER PRIMARY KEY, name TEXT NOT NULL) STRICT;",
    "ALTER TABLE part ADD COLUMN count INTEGER; ALTER TABLE nowhere ADD COLUMN count INTEGER;",
    NULL
  };
  StoreFixture *self = *state;
  g_autoptr (GError) error = NULL;
  g_autoptr (HmStore) store = NULL;

  assert_null (hm_store_open (self->path, TEST_APPLICATION, broken, &error));
  assert_store_error (error, HM_STORE_ERROR_FAILED, self->path);
  store = hm_store_open (self->path, TEST_APPLICATION, one_migration, NULL);
  assert_int_equal (query_number (store, "PRAGMA user_version"), 1);
  assert_int_equal (query_number (store, "SELECT count(*) FROM pragma_table_info('part')"), 2);
}

static void
a_newer_store_is_refused_untouched (void **state)
{
  StoreFixture *self = *state;
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) before = NULL, after = NULL;
  g_autofree char *log_path = g_strconcat (self->path, "-wal", NULL);

  make_store (self->path, two_migrations);
  before = read_bytes (self->path);
  assert_null (hm_store_open (self->path, TEST_APPLICATION, one_migration, &error));
  assert_store_error (error, HM_STORE_ERROR_NEWER, self->path);
  after = read_bytes (self->path);
  assert_true (g_bytes_equal (before, after));
  assert_false (g_file_test (log_path, G_FILE_TEST_EXISTS));
}

static void
a_newer_store_with_a_log_is_refused_with_its_log_kept (void **state)
{
  StoreFixture *self = *state;
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) file = NULL, log = NULL, file_after = NULL, log_after = NULL;
  g_autofree char *log_path = g_strconcat (self->path, "-wal", NULL);

  {
    g_autoptr (HmStore) store = hm_store_open (self->path, TEST_APPLICATION, two_migrations, NULL);
    assert_non_null (store);
    file = read_bytes (self->path);      /* as a power cut would leave both */
    log = read_bytes (log_path);
  }
  write_bytes (self->path, g_bytes_get_data (file, NULL), g_bytes_get_size (file));
  write_bytes (log_path, g_bytes_get_data (log, NULL), g_bytes_get_size (log));
  assert_true (g_bytes_get_size (log) > 0);

  assert_null (hm_store_open (self->path, TEST_APPLICATION, one_migration, &error));
  assert_store_error (error, HM_STORE_ERROR_NEWER, self->path);
  file_after = read_bytes (self->path);
  log_after = read_bytes (log_path);
  assert_true (g_bytes_equal (file, file_after));
  assert_true (g_bytes_equal (log, log_after));
}

static void
a_foreign_database_is_refused_untouched (void **state)
{
  StoreFixture *self = *state;
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) before = NULL, after = NULL;

  make_store (self->path, one_migration);
  patch_be32 (self->path, OFFSET_APPLICATION, 0x12345678);
  before = read_bytes (self->path);
  assert_null (hm_store_open (self->path, TEST_APPLICATION, one_migration, &error));
  assert_store_error (error, HM_STORE_ERROR_FOREIGN, self->path);
  after = read_bytes (self->path);
  assert_true (g_bytes_equal (before, after));
}

static void
text_is_no_database (void **state)
{
  static const char text[] = "Jobs of this week: none.\n";
  StoreFixture *self = *state;
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) after = NULL;

  write_bytes (self->path, text, strlen (text));
  assert_null (hm_store_open (self->path, TEST_APPLICATION, one_migration, &error));
  assert_store_error (error, HM_STORE_ERROR_DAMAGED, self->path);
  after = read_bytes (self->path);
  assert_memory_equal (g_bytes_get_data (after, NULL), text, strlen (text));
}

static void
a_missing_folder_is_named_and_not_made (void **state)
{
  StoreFixture *self = *state;
  g_autoptr (GError) error = NULL;
  g_autofree char *path = g_build_filename (self->folder, "nowhere", "shop.db", NULL);

  assert_null (hm_store_open (path, TEST_APPLICATION, one_migration, &error));
  assert_store_error (error, HM_STORE_ERROR_MISSING, path);
  assert_false (g_file_test (path, G_FILE_TEST_EXISTS));
}

static void
a_folder_instead_of_a_file_is_refused (void **state)
{
  StoreFixture *self = *state;
  g_autoptr (GError) error = NULL;

  assert_null (hm_store_open (self->folder, TEST_APPLICATION, one_migration, &error));
  assert_store_error (error, HM_STORE_ERROR_DENIED, self->folder);
}

static void
a_folder_without_permission_is_denied (void **state)
{
  StoreFixture *self = *state;
  g_autoptr (GError) error = NULL;

  gboolean is_administrator = geteuid () == 0;

  assert_int_equal (g_chmod (self->folder, 0555), 0);
  if (is_administrator)
    assert_int_equal (seteuid (65534), 0);     /* nobody: the administrator may write everywhere */
  assert_null (hm_store_open (self->path, TEST_APPLICATION, one_migration, &error));
  if (is_administrator)
    assert_int_equal (seteuid (0), 0);
  assert_store_error (error, HM_STORE_ERROR_DENIED, self->path);
}

static void
a_writer_elsewhere_makes_it_busy (void **state)
{
  StoreFixture *self = *state;
  g_autoptr (GError) error = NULL;
  g_autoptr (HmStore) first = hm_store_open (self->path, TEST_APPLICATION, one_migration, NULL);
  g_autoptr (HmStore) second = hm_store_open (self->path, TEST_APPLICATION, one_migration, NULL);

  assert_true (hm_store_begin (first, NULL));
  assert_false (hm_store_begin (second, &error));
  assert_store_error (error, HM_STORE_ERROR_BUSY, self->path);
}

static void
reading_never_makes_a_missing_file (void **state)
{
  StoreFixture *self = *state;
  g_autoptr (GError) error = NULL;

  assert_null (hm_store_open_read_only (self->path, TEST_APPLICATION, 1, &error));
  assert_store_error (error, HM_STORE_ERROR_MISSING, self->path);
  assert_false (g_file_test (self->path, G_FILE_TEST_EXISTS));
}

static void
make_packed (const char *path, int version)
{
  g_autoptr (GError) error = NULL;
  HmStore *store = hm_store_create (path, TEST_APPLICATION, version, one_migration[0], &error);

  if (store == NULL)
    fail_msg ("%s", error->message);
  assert_true (hm_store_begin (store, NULL));
  for (int i = 0; i < 400; i++)
    {
      g_auto (HmStmt) stmt = { NULL };
      g_autofree char *name = g_strnfill (100, (char) ('a' + i % 26));
      assert_true (hm_store_prepare (store, "INSERT INTO part (name) VALUES (?1)", &stmt, NULL));
      hm_stmt_bind_text (&stmt, 1, name);
      assert_int_equal (hm_stmt_step (&stmt, NULL), HM_STEP_DONE);
    }
  assert_true (hm_store_commit (store, NULL));
  assert_true (hm_store_close_packed (store, NULL));
}

static void
a_packed_file_reads_in_a_read_only_folder (void **state)
{
  StoreFixture *self = *state;
  g_autoptr (GError) error = NULL;
  g_autoptr (HmStore) store = NULL;
  g_autoptr (GDir) dir = NULL;

  make_packed (self->path, 7);
  assert_int_equal (g_chmod (self->path, 0444), 0);
  assert_int_equal (g_chmod (self->folder, 0555), 0);
  store = hm_store_open_read_only (self->path, TEST_APPLICATION, 7, &error);
  if (store == NULL)
    fail_msg ("%s", error->message);
  assert_int_equal (query_number (store, "SELECT count(*) FROM part"), 400);
  dir = g_dir_open (self->folder, 0, NULL);
  assert_non_null (g_dir_read_name (dir));
  assert_null (g_dir_read_name (dir));     /* no log or lock file beside it */
}

static void
a_read_only_store_cannot_be_written (void **state)
{
  StoreFixture *self = *state;
  g_autoptr (GError) error = NULL;
  g_autoptr (HmStore) store = NULL;
  g_auto (HmStmt) stmt = { NULL };

  make_packed (self->path, 7);
  store = hm_store_open_read_only (self->path, TEST_APPLICATION, 7, NULL);
  assert_true (hm_store_prepare (store, "DELETE FROM part", &stmt, NULL));
  assert_int_equal (hm_stmt_step (&stmt, &error), HM_STEP_ERROR);
  assert_store_error (error, HM_STORE_ERROR_DENIED, self->path);
}

static void
creating_does_not_overwrite (void **state)
{
  StoreFixture *self = *state;
  g_autoptr (GError) error = NULL;

  write_bytes (self->path, "mine", 4);
  assert_null (hm_store_create (self->path, TEST_APPLICATION, 1, one_migration[0], &error));
  assert_store_error (error, HM_STORE_ERROR_FAILED, self->path);
}

/* One row, one file that must not open for reading. */
struct refused_row { const char *name; int version; guint32 application; double kept; HmStoreError code; };
static const struct refused_row refused_rows[] = {
  { "read-only: newer",                 8, TEST_APPLICATION, 1.0, HM_STORE_ERROR_NEWER },
  { "read-only: older",                 6, TEST_APPLICATION, 1.0, HM_STORE_ERROR_OLDER },
  { "read-only: other purpose",         7, 0x12345678,       1.0, HM_STORE_ERROR_FOREIGN },
  { "read-only: no purpose",            7, 0,                1.0, HM_STORE_ERROR_FOREIGN },
  { "read-only: empty",                 7, TEST_APPLICATION, 0.0, HM_STORE_ERROR_DAMAGED },
  { "read-only: less than a header",    7, TEST_APPLICATION, 0.001, HM_STORE_ERROR_DAMAGED },
  { "read-only: a tenth of it",         7, TEST_APPLICATION, 0.1, HM_STORE_ERROR_DAMAGED },
  { "read-only: half of it",            7, TEST_APPLICATION, 0.5, HM_STORE_ERROR_DAMAGED },
  { "read-only: all but the last byte", 7, TEST_APPLICATION, 0.99999, HM_STORE_ERROR_DAMAGED },
};

static void
read_only_refuses (const struct refused_row *row, const char *path)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes = NULL;

  make_packed (path, row->version);
  patch_be32 (path, OFFSET_APPLICATION, row->application);
  bytes = read_bytes (path);
  write_bytes (path, g_bytes_get_data (bytes, NULL), (gsize) (row->kept * (double) g_bytes_get_size (bytes)));
  assert_null (hm_store_open_read_only (path, TEST_APPLICATION, 7, &error));
  assert_store_error (error, row->code, path);
}

static void
read_only_refuses_row (void **state)
{
  void *fixture = NULL;

  store_fixture_set_up (&fixture);
  read_only_refuses (*state, ((StoreFixture *) fixture)->path);
  store_fixture_tear_down (&fixture);
}

static void
a_hole_in_the_middle_is_found_on_opening (void **state)
{
  StoreFixture *self = *state;
  g_autoptr (GError) error = NULL;
  g_autofree char *data = NULL;
  gsize size = 0;

  make_packed (self->path, 7);
  assert_true (g_file_get_contents (self->path, &data, &size, NULL));
  memset (data + size / 2, 0, size / 4);
  write_bytes (self->path, data, size);
  assert_null (hm_store_open_read_only (self->path, TEST_APPLICATION, 7, &error));
  assert_store_error (error, HM_STORE_ERROR_DAMAGED, self->path);
}

#define CASE(function) cmocka_unit_test_setup_teardown (function, store_fixture_set_up, store_fixture_tear_down)

static const struct CMUnitTest cases[] = {
  CASE (opening_makes_the_file_and_migrates),
  CASE (the_file_is_its_owners_alone),
  CASE (the_store_is_safe_against_power_loss),
  CASE (an_older_store_is_brought_up_and_keeps_its_rows),
  CASE (a_failing_migration_leaves_the_version_before_it),
  CASE (a_newer_store_is_refused_untouched),
  CASE (a_newer_store_with_a_log_is_refused_with_its_log_kept),
  CASE (a_foreign_database_is_refused_untouched),
  CASE (text_is_no_database),
  CASE (a_missing_folder_is_named_and_not_made),
  CASE (a_folder_instead_of_a_file_is_refused),
  CASE (a_folder_without_permission_is_denied),
  CASE (a_writer_elsewhere_makes_it_busy),
  CASE (reading_never_makes_a_missing_file),
  CASE (a_packed_file_reads_in_a_read_only_folder),
  CASE (a_read_only_store_cannot_be_written),
  CASE (creating_does_not_overwrite),
  CASE (a_hole_in_the_middle_is_found_on_opening),
};

int
main (void)
{
  struct CMUnitTest tests[G_N_ELEMENTS (cases) + G_N_ELEMENTS (refused_rows)];

  memcpy (tests, cases, sizeof cases);
  for (gsize i = 0; i < G_N_ELEMENTS (refused_rows); i++)
    tests[G_N_ELEMENTS (cases) + i] = (struct CMUnitTest) {
      refused_rows[i].name, read_only_refuses_row, .initial_state = (void *) &refused_rows[i] };
  return cmocka_run_group_tests_name ("store", tests, NULL, NULL);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
/* What the shop enters is on disk when the call returns, and comes back the same. */
#include <fcntl.h>
#include <setjmp.h>
#include <signal.h>
#include <stdarg.h>
#include <stddef.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>
#include <cmocka.h>
#include <glib/gstdio.h>

#include "hm-shop-store.h"
#include "hm-store.h"

typedef struct { char *folder; HmKnowledge *knowledge; } Fixture;

static int
set_up (void **state)
{
  Fixture *fixture = g_new0 (Fixture, 1);
  g_autoptr (GError) error = NULL;
  g_autofree char *tmp = g_dir_make_tmp ("halfmoon-shop-XXXXXX", NULL);

  fixture->folder = g_build_filename (tmp, "shop folder", NULL);
  fixture->knowledge = hm_knowledge_open (g_getenv ("HALFMOON_TEST_KNOWLEDGE"), &error);
  if (fixture->knowledge == NULL)
    g_error ("%s", error->message);
  *state = fixture;
  return 0;
}

static int
tear_down (void **state)
{
  Fixture *fixture = *state;
  g_autofree char *tmp = g_path_get_dirname (fixture->folder);
  g_autoptr (GDir) dir = g_dir_open (fixture->folder, 0, NULL);
  const char *name;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *path = g_build_filename (fixture->folder, name, NULL);
      g_unlink (path);
    }
  g_rmdir (fixture->folder);
  g_rmdir (tmp);
  hm_knowledge_unref (fixture->knowledge);
  g_free (fixture->folder);
  g_free (fixture);
  return 0;
}

static HmDiagnosis *
sample (const Fixture *fixture, guint answers)
{
  HmDiagnosis *diagnosis = hm_diagnosis_new (fixture->knowledge, "no-crank", "rider", NULL);

  for (guint i = 0; i < answers; i++)
    hm_diagnosis_answer (diagnosis, i, 0);
  return diagnosis;
}

static void
saved_diagnosis_comes_back (void **state)
{
  const Fixture *fixture = *state;
  g_autoptr (HmDiagnosis) diagnosis = sample (fixture, 3);
  g_autofree char *record = hm_diagnosis_to_json (diagnosis), *loaded = NULL;
  g_autoptr (HmShopStore) store = hm_shop_store_open (fixture->folder, NULL);
  gint64 id = 0;

  assert_true (hm_shop_store_save_diagnosis (store, &id, diagnosis, 1000, NULL));
  assert_true (id > 0);
  g_clear_pointer (&store, hm_shop_store_close);
  store = hm_shop_store_open (fixture->folder, NULL);
  loaded = hm_shop_store_load_diagnosis (store, id, NULL);
  assert_string_equal (record, loaded);
}

static void
list_is_newest_first_and_leaves_out_the_closed (void **state)
{
  const Fixture *fixture = *state;
  g_autoptr (HmShopStore) store = hm_shop_store_open (fixture->folder, NULL);
  g_autoptr (HmDiagnosis) one = sample (fixture, 1), two = sample (fixture, 2), closed = sample (fixture, 0);
  g_autoptr (GPtrArray) open = NULL, all = NULL;
  gint64 first = 0, second = 0, third = 0;
  guint cause = 0;

  hm_diagnosis_begin_repair (closed, &cause, 1);
  hm_diagnosis_finish_repair (closed, HM_REPAIR_FIXED);
  assert_true (hm_shop_store_save_diagnosis (store, &first, one, 100, NULL));
  assert_true (hm_shop_store_save_diagnosis (store, &second, two, 200, NULL));
  assert_true (hm_shop_store_save_diagnosis (store, &third, closed, 300, NULL));
  assert_true (hm_shop_store_save_diagnosis (store, &first, one, 400, NULL));
  open = hm_shop_store_list_diagnoses (store, TRUE, NULL);
  all = hm_shop_store_list_diagnoses (store, FALSE, NULL);
  assert_int_equal (open->len, 2);
  assert_int_equal (all->len, 3);
  assert_true (((HmDiagnosisRow *) g_ptr_array_index (open, 0))->id == first);
  assert_int_equal (((HmDiagnosisRow *) g_ptr_array_index (open, 1))->n_entries, 2);
}

static void
deleted_diagnosis_is_gone (void **state)
{
  const Fixture *fixture = *state;
  g_autoptr (HmShopStore) store = hm_shop_store_open (fixture->folder, NULL);
  g_autoptr (HmDiagnosis) diagnosis = sample (fixture, 1);
  g_autoptr (GError) error = NULL;
  gint64 id = 0;

  assert_true (hm_shop_store_save_diagnosis (store, &id, diagnosis, 1, NULL));
  assert_true (hm_shop_store_delete_diagnosis (store, id, NULL));
  assert_null (hm_shop_store_load_diagnosis (store, id, &error));
  assert_true (g_error_matches (error, HM_STORE_ERROR, HM_STORE_ERROR_MISSING));
}

static void
files_are_private (void **state)
{
  const Fixture *fixture = *state;
  g_autoptr (HmShopStore) store = hm_shop_store_open (fixture->folder, NULL);
  g_autofree char *path = g_build_filename (fixture->folder, "shop.db", NULL);
  struct stat info;

  assert_non_null (store);
  assert_int_equal (stat (fixture->folder, &info), 0);
  assert_int_equal (info.st_mode & 0777, 0700);
  assert_int_equal (stat (path, &info), 0);
  assert_int_equal (info.st_mode & 0777, 0600);
}

static void
folder_that_cannot_be_made_is_said (void **state)
{
  g_autoptr (GError) error = NULL;

  assert_null (hm_shop_store_open ("/proc/no-such-place/halfmoon", &error));
  assert_true (g_error_matches (error, HM_STORE_ERROR, HM_STORE_ERROR_DENIED));
  assert_non_null (strstr (error->message, "/proc/no-such-place/halfmoon"));
}

/* Saves without end, telling each acknowledged count through the pipe, until it is killed. */
static void
save_until_killed (const Fixture *fixture, int pipe_end)
{
  HmShopStore *store = hm_shop_store_open (fixture->folder, NULL);
  HmDiagnosis *diagnosis = sample (fixture, 0);
  gint64 id = 0;

  for (guint i = 0;; i++)
    {
      hm_diagnosis_answer (diagnosis, i % 8, 0);
      if (!hm_shop_store_save_diagnosis (store, &id, diagnosis, (gint64) i + 1, NULL))
        _exit (3);
      guint64 told[2] = { (guint64) id, i + 1 };
      if (write (pipe_end, told, sizeof told) != sizeof told)
        _exit (4);
    }
}

/* What was acknowledged before a kill is there afterwards: the store's changed_at is at least the last told. */
static void
kill_loses_nothing (void **state)
{
  const Fixture *fixture = *state;
  g_autoptr (HmShopStore) store = NULL;
  g_autoptr (GPtrArray) rows = NULL;
  guint64 told[2] = { 0 }, last[2] = { 0 };
  int ends[2], status;
  pid_t child;

  assert_int_equal (pipe (ends), 0);
  child = fork ();
  if (child == 0)
    save_until_killed (fixture, ends[1]);
  close (ends[1]);
  for (guint i = 0; i < 40 && read (ends[0], told, sizeof told) == sizeof told; i++)
    memcpy (last, told, sizeof told);
  kill (child, SIGKILL);
  waitpid (child, &status, 0);
  while (read (ends[0], told, sizeof told) == sizeof told)
    memcpy (last, told, sizeof told);
  close (ends[0]);
  assert_true (last[1] >= 40);
  store = hm_shop_store_open (fixture->folder, NULL);
  rows = hm_shop_store_list_diagnoses (store, FALSE, NULL);
  assert_int_equal (rows->len, 1);
  assert_true (((HmDiagnosisRow *) g_ptr_array_index (rows, 0))->changed_at >= (gint64) last[1]);
}

int
main (void)
{
#define WITH_FOLDER(test) cmocka_unit_test_setup_teardown (test, set_up, tear_down)
  const struct CMUnitTest tests[] = {
    WITH_FOLDER (saved_diagnosis_comes_back),
    WITH_FOLDER (list_is_newest_first_and_leaves_out_the_closed),
    WITH_FOLDER (deleted_diagnosis_is_gone),
    WITH_FOLDER (files_are_private),
    WITH_FOLDER (folder_that_cannot_be_made_is_said),
    WITH_FOLDER (kill_loses_nothing),
  };

  return cmocka_run_group_tests_name ("shop store", tests, NULL, NULL);
}

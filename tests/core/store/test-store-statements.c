/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "store-fixture.h"

static HmStore *
open_parts (StoreFixture *self)
{
  HmStore *store = hm_store_open (self->path, TEST_APPLICATION, two_migrations, NULL);

  assert_non_null (store);
  return store;
}

static void
a_statement_is_lent_again_clean (void **state)
{
  g_autoptr (HmStore) store = open_parts (*state);
  static const char sql[] = "INSERT INTO part (name, count) VALUES (?1, ?2)";
  gpointer first = NULL;

  for (int i = 0; i < 3; i++)
    {
      g_auto (HmStmt) stmt = { NULL };
      assert_true (hm_store_prepare (store, sql, &stmt, NULL));
      if (i == 0)
        first = stmt.raw;
      assert_ptr_equal (stmt.raw, first);
      hm_stmt_bind_text (&stmt, 1, "bolt");
      if (i == 0)
        hm_stmt_bind_int64 (&stmt, 2, 12);     /* must not come back in the second turn */
      assert_int_equal (hm_stmt_step (&stmt, NULL), HM_STEP_DONE);
      assert_int_equal (hm_store_last_insert_id (store), i + 1);
    }
  assert_int_equal (query_number (store, "SELECT count(*) FROM part WHERE count = 12"), 1);
  assert_int_equal (query_number (store, "SELECT count(*) FROM part WHERE count IS NULL"), 2);
}

static void
clearing_twice_does_no_harm (void **state)
{
  g_autoptr (HmStore) store = open_parts (*state);
  HmStmt stmt = { NULL };

  hm_stmt_clear (&stmt);
  assert_true (hm_store_prepare (store, "SELECT 1", &stmt, NULL));
  hm_stmt_clear (&stmt);
  hm_stmt_clear (&stmt);
  assert_null (stmt.raw);
}

static void
values_come_back_as_they_went_in (void **state)
{
  g_autoptr (HmStore) store = open_parts (*state);
  g_auto (HmStmt) stmt = { NULL };
  g_autofree char *copy = NULL;

  assert_true (hm_store_prepare (store, "SELECT ?1, ?2, ?3, ?4", &stmt, NULL));
  hm_stmt_bind_int64 (&stmt, 1, G_MININT64);
  hm_stmt_bind_double (&stmt, 2, 0.1);
  hm_stmt_bind_text (&stmt, 3, "5/16-18 · Ω");
  hm_stmt_bind_text (&stmt, 4, NULL);
  assert_int_equal (hm_stmt_step (&stmt, NULL), HM_STEP_ROW);
  assert_true (hm_stmt_get_int64 (&stmt, 0) == G_MININT64);
  assert_true (hm_stmt_get_double (&stmt, 1) == 0.1);
  assert_string_equal (hm_stmt_get_text (&stmt, 2), "5/16-18 · Ω");
  copy = hm_stmt_dup_text (&stmt, 2);
  assert_string_equal (copy, "5/16-18 · Ω");
  assert_true (hm_stmt_is_null (&stmt, 3));
  assert_false (hm_stmt_is_null (&stmt, 2));
  assert_null (hm_stmt_get_text (&stmt, 3));
  assert_int_equal (hm_stmt_step (&stmt, NULL), HM_STEP_DONE);
}

static void
count_after (HmStore *store, gboolean keep, int want)
{
  {
    g_auto (HmStmt) stmt = { NULL };
    assert_true (hm_store_begin (store, NULL));
    assert_true (hm_store_prepare (store, "INSERT INTO part (name) VALUES ('pin')", &stmt, NULL));
    assert_int_equal (hm_stmt_step (&stmt, NULL), HM_STEP_DONE);
  }
  if (keep)
    assert_true (hm_store_commit (store, NULL));
  else
    hm_store_rollback (store);
  assert_int_equal (query_number (store, "SELECT count(*) FROM part"), want);
}

static void
commit_keeps_and_rollback_drops (void **state)
{
  g_autoptr (HmStore) store = open_parts (*state);

  count_after (store, FALSE, 0);
  count_after (store, TRUE, 1);
  hm_store_rollback (store);     /* without a transaction: nothing to do */
  count_after (store, TRUE, 2);
}

static void
bad_sql_is_reported (void **state)
{
  StoreFixture *self = *state;
  g_autoptr (HmStore) store = open_parts (self);
  g_autoptr (GError) error = NULL;
  HmStmt stmt = { NULL };

  assert_false (hm_store_prepare (store, "SELECT nothing FROM nowhere", &stmt, &error));
  assert_store_error (error, HM_STORE_ERROR_FAILED, self->path);
  assert_null (stmt.raw);
}

static void
a_broken_rule_of_the_schema_is_reported (void **state)
{
  StoreFixture *self = *state;
  g_autoptr (HmStore) store = open_parts (self);
  g_autoptr (GError) error = NULL;
  g_auto (HmStmt) stmt = { NULL };

  assert_true (hm_store_prepare (store, "INSERT INTO part (name) VALUES (?1)", &stmt, NULL));
  assert_int_equal (hm_stmt_step (&stmt, &error), HM_STEP_ERROR);     /* name is NOT NULL */
  assert_store_error (error, HM_STORE_ERROR_FAILED, self->path);
}

#define CASE(function) cmocka_unit_test_setup_teardown (function, store_fixture_set_up, store_fixture_tear_down)

int
main (void)
{
  const struct CMUnitTest tests[] = {
    CASE (a_statement_is_lent_again_clean),
    CASE (clearing_twice_does_no_harm),
    CASE (values_come_back_as_they_went_in),
    CASE (commit_keeps_and_rollback_drops),
    CASE (bad_sql_is_reported),
    CASE (a_broken_rule_of_the_schema_is_reported),
  };
  return cmocka_run_group_tests_name ("store-statements", tests, NULL, NULL);
}

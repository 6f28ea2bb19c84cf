/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-fastener.h"
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

/* The words of data/knowledge/README.md. */
static const struct word_row { const char *name; guint value; } friction_rows[] = {
  { "dry", HM_FRICTION_DRY }, { "oiled", HM_FRICTION_OILED }, { "zinc", HM_FRICTION_ZINC },
  { "thread-locker", HM_FRICTION_THREAD_LOCKER }, { "anti-seize", HM_FRICTION_ANTI_SEIZE },
}, material_rows[] = {
  { "steel", HM_MATERIAL_STEEL }, { "cast-aluminium", HM_MATERIAL_ALUMINIUM_CAST },
  { "die-cast-aluminium", HM_MATERIAL_ALUMINIUM_DIE_CAST }, { "plastic", HM_MATERIAL_PLASTIC },
  { "copper", HM_MATERIAL_COPPER },
}, pattern_rows[] = {
  { "none", HM_PATTERN_NONE }, { "cross", HM_PATTERN_CROSS }, { "inline", HM_PATTERN_INLINE },
  { "round", HM_PATTERN_ROUND }, { "rectangular", HM_PATTERN_RECTANGULAR },
};

/* 1 lbf·ft = 1.355818 N·m (NIST SP 811, B.8). */
static const struct torque_row {
  const char *name;
  HmTorqueBasis basis;
  double low, high;   /* N·m */
} torque_rows[] = {
  { "5-7 N·m", HM_TORQUE_RANGE, 5.0, 7.0 },
  { "4-6 lbf·ft", HM_TORQUE_RANGE, 4.0 * 1.355818, 6.0 * 1.355818 },
  { "10 N·m", HM_TORQUE_RANGE, 10.0, 10.0 },
  { "computed", HM_TORQUE_COMPUTED, 0.0, 0.0 },
  { "hand", HM_TORQUE_BY_HAND, 0.0, 0.0 },
  { "manual", HM_TORQUE_MANUAL_ONLY, 0.0, 0.0 },
}, refused_torque_rows[] = {
  { "", 0, 0.0, 0.0 },
  { "5-7", 0, 0.0, 0.0 },
  { "5 V", 0, 0.0, 0.0 },
  { "tight", 0, 0.0, 0.0 },
  { "0 N·m", 0, 0.0, 0.0 },
  { "Hand", 0, 0.0, 0.0 },
};

static void
friction_round_trips (void **state)
{
  const struct word_row *row = *state;
  HmFriction got;

  assert_true (hm_friction_parse (row->name, &got, NULL));
  assert_int_equal (got, row->value);
  assert_string_equal (hm_friction_name (got), row->name);
}

static void
material_round_trips (void **state)
{
  const struct word_row *row = *state;
  HmMaterial got;

  assert_true (hm_material_parse (row->name, &got, NULL));
  assert_int_equal (got, row->value);
  assert_string_equal (hm_material_name (got), row->name);
}

static void
pattern_round_trips (void **state)
{
  const struct word_row *row = *state;
  HmPattern got;

  assert_true (hm_pattern_parse (row->name, &got, NULL));
  assert_int_equal (got, row->value);
  assert_string_equal (hm_pattern_name (got), row->name);
}

static void
unknown_words_are_refused (void **state)
{
  HmFriction friction = HM_FRICTION_ZINC;
  HmMaterial material = HM_MATERIAL_COPPER;
  HmPattern pattern = HM_PATTERN_ROUND;
  g_autoptr (GError) first = NULL;
  g_autoptr (GError) second = NULL;
  g_autoptr (GError) third = NULL;

  assert_false (hm_friction_parse ("greasy", &friction, &first));
  assert_false (hm_material_parse ("Steel", &material, &second));
  assert_false (hm_pattern_parse ("\xff", &pattern, &third));
  assert_true (g_error_matches (first, HM_FASTENER_ERROR, HM_FASTENER_ERROR_WORD));
  assert_non_null (g_strstr_len (first->message, -1, "anti-seize"));
  assert_non_null (g_strstr_len (second->message, -1, "die-cast-aluminium"));
  assert_true (g_utf8_validate (third->message, -1, NULL));
  assert_true (friction == HM_FRICTION_ZINC && material == HM_MATERIAL_COPPER && pattern == HM_PATTERN_ROUND);
}

static void
torque_is_read (void **state)
{
  const struct torque_row *row = *state;
  HmQuantityRange range = { { 0 }, { 0 } };
  HmTorqueBasis basis;

  assert_true (hm_torque_basis_parse (row->name, &basis, &range, NULL));
  assert_int_equal (basis, row->basis);
  assert_true (fabs (range.low.value - row->low) < 1e-5);
  assert_true (fabs (range.high.value - row->high) < 1e-5);
}

static void
torque_is_refused (void **state)
{
  const struct torque_row *row = *state;
  HmQuantityRange range = { { 0 }, { 0 } };
  HmTorqueBasis basis = HM_TORQUE_MANUAL_ONLY;
  g_autoptr (GError) error = NULL;

  assert_false (hm_torque_basis_parse (row->name, &basis, &range, &error));
  assert_true (g_error_matches (error, HM_FASTENER_ERROR, HM_FASTENER_ERROR_TORQUE));
  assert_int_equal (basis, HM_TORQUE_MANUAL_ONLY);
}

/* Every word of friction and material has its row in the tables. */
static void
tables_know_the_words (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  gsize n;
  const HmFrictionRow *friction = hm_tables_get_friction (tables, &n);
  const HmShearRow *shear;

  assert_int_equal (n, HM_FRICTION_N_STATES);
  for (gsize i = 0; i < n; i++)
    {
      HmFriction got;

      assert_true (hm_friction_parse (friction[i].state, &got, NULL));
    }
  shear = hm_tables_get_shear (tables, &n);
  assert_int_equal (n, HM_MATERIAL_N_MATERIALS);
  for (gsize i = 0; i < n; i++)
    {
      HmMaterial got;

      assert_true (hm_material_parse (shear[i].material, &got, NULL));
    }
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  HM_TEST_SUITE_ADD_ROWS (suite, friction_rows, friction_round_trips);
  HM_TEST_SUITE_ADD_ROWS (suite, material_rows, material_round_trips);
  HM_TEST_SUITE_ADD_ROWS (suite, pattern_rows, pattern_round_trips);
  HM_TEST_SUITE_ADD_ROWS (suite, torque_rows, torque_is_read);
  HM_TEST_SUITE_ADD_ROWS (suite, refused_torque_rows, torque_is_refused);
  hm_test_suite_add (suite, "unknown words are refused", unknown_words_are_refused, NULL);
  hm_test_suite_add (suite, "tables know the words", tables_know_the_words, NULL);
  return hm_test_suite_run (suite, "fastener");
}

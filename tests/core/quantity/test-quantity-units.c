/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-quantity.h"
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <cmocka.h>

enum { ID, TYPED, EXPECTED, UNIT, TOLERANCE, SOURCE, N_COLUMNS };

static HmUnit
find_unit (const char *symbol)
{
  for (HmUnit unit = HM_UNIT_NONE + 1; unit < HM_UNIT_N_UNITS; unit++)
    if (g_str_equal (hm_unit_symbol (unit), symbol))
      return unit;
  fail_msg ("no unit “%s”", symbol);
  return HM_UNIT_NONE;
}

static void
unit_matches_source (void **state)
{
  char **row = *state;
  g_autoptr(GError) error = NULL;
  double want = g_ascii_strtod (row[EXPECTED], NULL), tolerance = g_ascii_strtod (row[TOLERANCE], NULL), got;
  HmUnit unit = find_unit (row[UNIT]);
  HmQuantity typed;
  if (!hm_quantity_parse (row[TYPED], hm_unit_kind (unit), HM_UNIT_NONE, &typed, &error))
    fail_msg ("%s: %s", row[ID], error->message);
  assert_true (tolerance > 0);
  got = hm_quantity_in (typed, unit);
  if (fabs (got - want) > tolerance)
    fail_msg ("%s: %s is %.14g %s, want %.14g (%s)", row[ID], row[TYPED], got, row[UNIT], want, row[SOURCE]);
}

/* There and back, and the base unit is worth 1 */
static void
unit_is_sound (void **state)
{
  HmUnit unit = GPOINTER_TO_UINT (*state);
  HmQuantityKind kind = hm_unit_kind (unit);
  HmUnit base = hm_quantity_kind_base_unit (kind);
  HmQuantity seven = hm_quantity (kind, 7, unit);
  assert_int_equal (seven.kind, kind);
  assert_int_equal (seven.unit, unit);
  assert_true (fabs (hm_quantity_in (seven, unit) - 7) < 1e-13);
  assert_true (hm_quantity_in (seven, HM_UNIT_NONE) == seven.value);
  assert_true (hm_quantity (kind, 7, base).value == 7);
  assert_true (hm_unit_kind (base) == kind || base == HM_UNIT_NONE);
  assert_true (*hm_unit_symbol (unit) != '\0');
}

/* Returns: (transfer full) (element-type GStrv) */
static GPtrArray *
load_rows (void)
{
  g_autofree char *path = g_build_filename (g_getenv ("HALFMOON_TEST_VECTORS"), "quantity-units.csv", NULL);
  g_autofree char *text = NULL;
  g_auto(GStrv) lines = NULL;
  GPtrArray *rows = g_ptr_array_new_with_free_func ((GDestroyNotify) g_strfreev);
  if (!g_file_get_contents (path, &text, NULL, NULL))
    g_error ("cannot read %s", path);
  lines = g_strsplit (text, "\n", -1);
  for (gsize i = 0; lines[i] != NULL; i++)
    if (lines[i][0] == 'U')
      {
        char **row = g_strsplit (lines[i], ",", N_COLUMNS);
        g_assert (g_strv_length (row) == N_COLUMNS);
        g_ptr_array_add (rows, row);
      }
  g_assert (rows->len > 40);
  return rows;
}

int
main (void)
{
  g_autoptr(GPtrArray) rows = load_rows ();
  guint n = 0;
  g_autofree struct CMUnitTest *tests = g_new0 (struct CMUnitTest, rows->len + HM_UNIT_N_UNITS);
  for (; n < rows->len; n++)
    {
      char **row = g_ptr_array_index (rows, n);
      tests[n] = (struct CMUnitTest) { row[TYPED], unit_matches_source, .initial_state = row };
    }
  for (HmUnit unit = HM_UNIT_NONE + 1; unit < HM_UNIT_N_UNITS; unit++)
    tests[n++] = (struct CMUnitTest) { hm_unit_symbol (unit), unit_is_sound, .initial_state = GUINT_TO_POINTER (unit) };
  return _cmocka_run_group_tests ("quantity units", tests, n, NULL, NULL);
}

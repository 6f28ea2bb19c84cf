/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-quantity.h"
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <string.h>
#include <cmocka.h>

/* What is written reads back as the same value, to half of the last digit written. One test for each unit. */

#define DECIMALS 6
#define HALF_DIGIT 0.5e-6

static const double samples[] = { 0, 0.001, 0.3, 1, 1.125, 4.4, 8.73125, 12.4, 45, 61.01, 99.999999, 540, 875.25, 999.5 };
static const HmFormat formats[] = { { ".", HM_UNIT_SYSTEM_INCH_FIRST }, { ",", HM_UNIT_SYSTEM_METRIC_FIRST } };

static double
random_sample (GRand *rand)
{
  return pow (10, g_rand_double_range (rand, -4, 2.9));
}

static void
check_value (HmQuantityKind kind, double value, HmUnit unit, const HmFormat *format)
{
  g_autoptr(GError) error = NULL;
  g_autofree char *text = hm_quantity_format (hm_quantity (kind, value, unit), unit, DECIMALS, format);
  HmQuantity back;
  if (!hm_quantity_parse (text, kind, HM_UNIT_NONE, &back, &error))
    fail_msg ("%s: %s", text, error->message);
  assert_int_equal (back.unit, unit);
  if (fabs (hm_quantity_in (back, unit) - value) > HALF_DIGIT * 1.000001)
    fail_msg ("%.17g became “%s” became %.17g", value, text, hm_quantity_in (back, unit));
}

static void
check_range (HmQuantityKind kind, double low, double high, HmUnit unit, const HmFormat *format)
{
  g_autoptr(GError) error = NULL;
  HmQuantityRange range = { hm_quantity (kind, fmin (low, high), unit), hm_quantity (kind, fmax (low, high), unit) };
  g_autofree char *text = hm_quantity_range_format (range, unit, DECIMALS, format);
  HmQuantityRange back;
  if (!hm_quantity_parse_any (text, &back, &error))
    fail_msg ("%s: %s", text, error->message);
  assert_int_equal (back.low.kind, kind);
  assert_int_equal (back.high.unit, unit);
  assert_true (fabs (hm_quantity_in (back.low, unit) - fmin (low, high)) <= HALF_DIGIT * 1.000001);
  assert_true (fabs (hm_quantity_in (back.high, unit) - fmax (low, high)) <= HALF_DIGIT * 1.000001);
}

static void
unit_comes_back (void **state)
{
  HmUnit unit = GPOINTER_TO_UINT (*state);
  HmQuantityKind kind = hm_unit_kind (unit);
  g_autoptr(GRand) rand = g_rand_new_with_seed (unit);
  for (gsize f = 0; f < G_N_ELEMENTS (formats); f++)
    {
      for (gsize i = 0; i < G_N_ELEMENTS (samples); i++)
        check_value (kind, samples[i], unit, &formats[f]);
      for (guint i = 0; i < 200; i++)
        check_value (kind, random_sample (rand), unit, &formats[f]);
      for (guint i = 0; i < 100; i++)
        check_range (kind, random_sample (rand), random_sample (rand), unit, &formats[f]);
    }
}

/* Below 0 where a kind may be: the two signs and the dash have to be told apart */
static void
negative_comes_back (void **state)
{
  for (int i = -100; i < 0; i++)
    {
      check_value (HM_QUANTITY_VOLTAGE, i / 8.0, HM_UNIT_VOLT, &formats[0]);
      check_range (HM_QUANTITY_TEMPERATURE, i, i / 2.0, HM_UNIT_CELSIUS, &formats[0]);
      check_range (HM_QUANTITY_TEMPERATURE, i, -i, HM_UNIT_FAHRENHEIT, &formats[1]);
    }
}

/* Every 64th of an inch up to 3 in is written as a fraction and comes back exactly */
static void
fraction_comes_back (void **state)
{
  for (int i = 0; i <= 3 * 64; i++)
    {
      HmQuantity inches = hm_quantity (HM_QUANTITY_LENGTH, i / 64.0, HM_UNIT_INCH), back;
      g_autofree char *text = hm_quantity_format (inches, HM_UNIT_NONE, -1, &hm_format_default);
      assert_null (strchr (text, '.'));
      assert_true (hm_quantity_parse (text, HM_QUANTITY_LENGTH, HM_UNIT_NONE, &back, NULL));
      assert_true (back.value == inches.value);
    }
}

int
main (void)
{
  struct CMUnitTest tests[HM_UNIT_N_UNITS + 1];
  gsize n = 0;
  for (HmUnit unit = HM_UNIT_NONE + 1; unit < HM_UNIT_N_UNITS; unit++)
    tests[n++] = (struct CMUnitTest) { hm_unit_symbol (unit), unit_comes_back, .initial_state = GUINT_TO_POINTER (unit) };
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (negative_comes_back);
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (fraction_comes_back);
  return _cmocka_run_group_tests ("quantity round trip", tests, n, NULL, NULL);
}

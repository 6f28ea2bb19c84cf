/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-wrench-text.h"
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

/* Factors from their definitions: 1 lbf = 4.4482216152605 N, 1 ft = 0.3048 m. Accuracy where none is typed: ISO 6789-1. */
static const struct read_row { const char *name, *text; double low, high, accuracy; } read_rows[] = {
  { "N.m", "20-110 N·m", 20.0, 110.0, 0.04 },
  { "small: 6 %", "2-10 N·m", 2.0, 10.0, 0.06 },
  { "own accuracy", "20-110 N·m ±3 %", 20.0, 110.0, 0.03 },
  { "typed sign", "20..110 N·m +/-3", 20.0, 110.0, 0.03 },
  { "lbf.ft", "10-50 lbf·ft ±4 %", 13.5581795, 67.7908975, 0.04 },
  { "ft-lb as spoken", "10-50 ft-lb", 13.5581795, 67.7908975, 0.04 },
};

static const struct refused_row { const char *name, *text; } refused_rows[] = {
  { "nothing", "" }, { "no number", "the red one" }, { "one end only", "50 N·m" }, { "no unit", "10-50" },
  { "length", "10-50 mm" }, { "reversed", "50-10 N·m" }, { "from zero", "0-50 N·m" }, { "accuracy 0", "10-50 N·m ±0 %" },
  { "accuracy 25 %", "10-50 N·m ±25 %" }, { "accuracy missing", "10-50 N·m ±" }, { "not UTF-8", "10-50 \xff\xfe" },
  { "huge", "1e300-1e308 N·m" },
};

static void
wrench_is_read (void **state)
{
  const struct read_row *row = *state;
  HmShopWrench wrench, again;
  g_autofree char *text = NULL;

  assert_true (hm_shop_wrench_parse (row->text, &wrench, NULL));
  assert_true (fabs (wrench.range.low.newton_metres - row->low) < 1e-6);
  assert_true (fabs (wrench.range.high.newton_metres - row->high) < 1e-6);
  assert_true (fabs (wrench.accuracy - row->accuracy) < 1e-9);
  text = hm_shop_wrench_format (&wrench, &hm_format_default);
  assert_true (hm_shop_wrench_parse (text, &again, NULL));
  assert_true (fabs (again.range.high.newton_metres - row->high) < 1e-6);
  assert_true (fabs (again.accuracy - row->accuracy) < 1e-9);
}

static void
wrench_is_refused (void **state)
{
  const struct refused_row *row = *state;
  HmShopWrench wrench = { .accuracy = -1.0 };
  g_autoptr (GError) error = NULL;

  assert_false (hm_shop_wrench_parse (row->text, &wrench, &error));
  assert_non_null (error);
  assert_true (g_utf8_validate (error->message, -1, NULL) && strlen (error->message) > 10);
  assert_true (wrench.accuracy < 0.0);
}

static void
spread_is_the_accuracy (void **state)
{
  HmShopWrench wrench;
  HmTorque low, high;

  assert_true (hm_shop_wrench_parse ("20-110 N·m ±4 %", &wrench, NULL));
  hm_shop_wrench_spread (&wrench, (HmTorque) { 50.0 }, &low, &high);
  assert_true (fabs (low.newton_metres - 48.0) < 1e-9 && fabs (high.newton_metres - 52.0) < 1e-9);
  assert_int_equal (hm_shop_wrench_choose (&wrench, 1, (HmTorque) { 21.0 }).verdict, HM_WRENCH_TOO_LARGE);
  assert_int_equal (hm_shop_wrench_choose (NULL, 0, (HmTorque) { 21.0 }).index, -1);
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  HM_TEST_SUITE_ADD_ROWS (suite, read_rows, wrench_is_read);
  HM_TEST_SUITE_ADD_ROWS (suite, refused_rows, wrench_is_refused);
  hm_test_suite_add (suite, "spread is the accuracy", spread_is_the_accuracy, NULL);
  return hm_test_suite_run (suite, "wrench-text");
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-adapter.h"
#include "hm-wrench.h"
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

/* Any consistent units: the setting depends on the ratio of the lengths only. Tolerances are the roundings of the sources. */
static const struct adapter_row {
  const char *name;
  double torque, lever, adapter, angle, setting, tolerance;
  const char *source;
} adapter_rows[] = {
  { "straight, 40 lbf.ft", 40.0, 12.0, 4.0, 0.0, 30.0, 0.01, "TM 9-2350-261-20-1, p. 2-29" },
  { "straight, 300 lbf.in", 300.0, 10.0, 4.0, 0.0, 214.0, 1.0, "TM 1-1500-204-23-9, figures 8-16 and 8-17" },
  { "straight, 19 lbf.ft", 19.0, 22.0, 3.0, 0.0, 17.0, 0.5, "TM 5-3805-274-13&P, WP 0051" },
  { "pointing back", 300.0, 10.0, 4.0, 180.0, 500.0, 0.01, "TM 1-1500-204-23-9, rule T L / (L - A)" },
  { "at a right angle", 40.0, 12.0, 4.0, 90.0, 40.0, 0.01, "Navy training course 14008, figure 2-12: no change" },
  { "at 45 degrees", 40.0, 12.0, 4.0, 45.0, 32.370, 0.01, "TM 9-254, paragraph 4-1, formula" },
  { "straight, 100 N.m", 100.0, 400.0, 50.0, 0.0, 88.889, 0.01, "TM 9-254, paragraph 4-1, formula" },
  { "no adapter", 25.0, 300.0, 0.0, 0.0, 25.0, 1e-9, "TM 9-254, paragraph 4-1, formula" },
};

static const struct lever_row { const char *name; double lever, adapter, angle; } lever_rows[] = {
  { "no lever", 0.0, 50.0, 0.0 }, { "negative lever", -1.0, 50.0, 0.0 }, { "negative adapter", 300.0, -1.0, 0.0 },
  { "back to the hand", 300.0, 300.0, 180.0 }, { "beyond the hand", 300.0, 400.0, 180.0 }, { "no number", 300.0, NAN, 0.0 },
};

/* 20 to 100 % of the highest torque, ISO 6789-1; drawer: 1–6, 5–25, 20–110 and 42–210 N·m. */
static const struct wrench_row { const char *name; double torque; int index; HmWrenchVerdict verdict; } wrench_rows[] = {
  { "0.9 N.m", 0.9, 0, HM_WRENCH_TOO_LARGE },
  { "1.1 N.m, below 20 %", 1.1, 0, HM_WRENCH_TOO_LARGE },
  { "1.2 N.m, at 20 %", 1.2, 0, HM_WRENCH_GOOD },
  { "6 N.m: the smaller of two", 6.0, 0, HM_WRENCH_GOOD },
  { "8 N.m", 8.0, 1, HM_WRENCH_GOOD },
  { "25 N.m, full scale", 25.0, 1, HM_WRENCH_GOOD },
  { "25.1 N.m", 25.1, 2, HM_WRENCH_GOOD },
  { "100 N.m", 100.0, 2, HM_WRENCH_GOOD },
  { "200 N.m", 200.0, 3, HM_WRENCH_GOOD },
  { "211 N.m", 211.0, 3, HM_WRENCH_TOO_SMALL },
};

static void
setting_matches_source (void **state)
{
  const struct adapter_row *row = *state;
  HmTorque setting, back;

  assert_true (hm_adapter_setting ((HmTorque) { row->torque }, (HmLength) { row->lever }, (HmLength) { row->adapter },
                                   row->angle, &setting, NULL));
  if (fabs (setting.newton_metres - row->setting) > row->tolerance)
    fail_msg ("%.3f, want %.3f (%s)", setting.newton_metres, row->setting, row->source);
  assert_true (hm_adapter_torque (setting, (HmLength) { row->lever }, (HmLength) { row->adapter }, row->angle, &back, NULL));
  assert_true (fabs (back.newton_metres - row->torque) < 1e-9);
}

static void
lever_is_refused (void **state)
{
  const struct lever_row *row = *state;
  g_autoptr (GError) error = NULL;
  HmTorque out = { -1.0 };

  assert_false (hm_adapter_setting ((HmTorque) { 10.0 }, (HmLength) { row->lever }, (HmLength) { row->adapter }, row->angle,
                                    &out, &error));
  assert_true (g_error_matches (error, HM_ADAPTER_ERROR, HM_ADAPTER_ERROR_LEVER));
  assert_true (out.newton_metres < 0.0);
}

static void
wrench_is_chosen (void **state)
{
  const struct wrench_row *row = *state;
  const HmWrench drawer[] = { { { 1.0 }, { 6.0 } }, { { 5.0 }, { 25.0 } }, { { 20.0 }, { 110.0 } }, { { 42.0 }, { 210.0 } } };
  HmWrenchFit fit = hm_wrench_choose (drawer, G_N_ELEMENTS (drawer), (HmTorque) { row->torque });

  assert_int_equal (fit.index, row->index);
  assert_int_equal (fit.verdict, row->verdict);
  assert_true (fabs (fit.share - row->torque / drawer[fit.index].high.newton_metres) < 1e-12);
}

static void
angle_beyond_a_half_turn_is_refused (void **state)
{
  static const double angles[] = { -1.0, 180.5, 400.0, NAN };
  HmTorque out = { -1.0 };

  for (guint i = 0; i < G_N_ELEMENTS (angles); i++)
    {
      g_autoptr (GError) error = NULL;

      assert_false (hm_adapter_setting ((HmTorque) { 10.0 }, (HmLength) { 300.0 }, (HmLength) { 50.0 }, angles[i], &out, &error));
      assert_true (g_error_matches (error, HM_ADAPTER_ERROR, HM_ADAPTER_ERROR_ANGLE));
      assert_true (out.newton_metres < 0.0);
    }
}

static void
empty_drawer_has_no_wrench (void **state)
{
  assert_int_equal (hm_wrench_choose (NULL, 0, (HmTorque) { 10.0 }).index, -1);
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  HM_TEST_SUITE_ADD_ROWS (suite, adapter_rows, setting_matches_source);
  HM_TEST_SUITE_ADD_ROWS (suite, lever_rows, lever_is_refused);
  HM_TEST_SUITE_ADD_ROWS (suite, wrench_rows, wrench_is_chosen);
  hm_test_suite_add (suite, "an angle beyond a half turn is refused", angle_beyond_a_half_turn_is_refused, NULL);
  hm_test_suite_add (suite, "an empty drawer has no wrench", empty_drawer_has_no_wrench, NULL);
  return hm_test_suite_run (suite, "wrench");
}

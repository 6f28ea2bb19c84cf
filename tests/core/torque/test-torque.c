/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-torque.h"
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

#define NEWTONS_PER_POUND 4.4482216152605
#define NM_PER_POUND_FOOT 1.3558179483314
#define NM_PER_POUND_INCH (NM_PER_POUND_FOOT / 12.0)

/* ISO 898-1; SAE J429 (1 ksi = 6.894757 MPa). */
static const struct proof_row {
  const char *name, *strength, *thread;
  double megapascals;
} proof_rows[] = {
  { "8.8 up to M16", "8.8", "M16x2", 580.0 },
  { "8.8 above M16", "8.8", "M18x2.5", 600.0 },
  { "8.8 smallest", "8.8", "M1.6x0.35", 580.0 },
  { "9.8 up to M16", "9.8", "M16x2", 650.0 },
  { "10.9", "10.9", "M8x1.25", 830.0 },
  { "12.9", "12.9", "M8x1.25", 970.0 },
  { "4.6", "4.6", "M8x1.25", 225.0 },
  { "grade 2 up to 3/4", "SAE 2", "3/4-10", 55.0 * 6.894757 },
  { "grade 2 above 3/4", "SAE 2", "7/8-9", 33.0 * 6.894757 },
  { "grade 5 at 1/4", "SAE 5", "1/4-20", 85.0 * 6.894757 },
  { "grade 5 at 1", "SAE 5", "1-8", 85.0 * 6.894757 },
  { "grade 5 above 1", "SAE 5", "1 1/8-7", 74.0 * 6.894757 },
  { "grade 8", "SAE 8", "3/8-16", 120.0 * 6.894757 },
  { "written out", "SAE Grade 5", "1/4-20", 85.0 * 6.894757 },
  { "without SAE", "grade 8", "3/8-16", 120.0 * 6.894757 },
  { "with the word class", "Class 8.8", "M8x1.25", 580.0 },
  { "decimal comma", "10,9", "M8x1.25", 830.0 },
};

static const struct refused_row {
  const char *name, *strength, *thread;
  HmTorqueError code;
} refused_rows[] = {
  { "class unknown", "7.7", "M8x1.25", HM_TORQUE_ERROR_CLASS },
  { "class left out", "", "M8x1.25", HM_TORQUE_ERROR_CLASS },
  { "9.8 above M16", "9.8", "M18x2.5", HM_TORQUE_ERROR_THREAD },
  { "grade 5 below 1/4", "SAE 5", "No.10-24", HM_TORQUE_ERROR_THREAD },
  { "grade 2 between 3/4 and 7/8", "SAE 2", "13/16-20", HM_TORQUE_ERROR_THREAD },
  { "8.8 above M39", "8.8", "M42x4.5", HM_TORQUE_ERROR_THREAD },
};

static HmFastener
fastener (HmTorqueBasis basis, const char *thread, const char *strength)
{
  HmFastener self = { .id = "bolt", .name = "Bolt", .where = "", .count = 1, .has_thread = TRUE, .strength = strength,
                      .torque_basis = basis, .torque_provenance = { HM_PROVENANCE_COMMON_PRACTICE, NULL } };

  assert_true (hm_thread_parse (thread, NULL, &self.thread, NULL));
  return self;
}

static void
proof_matches_standard (void **state)
{
  const struct proof_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (GError) error = NULL;
  HmThread thread;
  HmStress got;

  assert_true (hm_thread_parse (row->thread, NULL, &thread, NULL));
  if (!hm_torque_proof_stress (tables, row->strength, &thread, &got, &error))
    fail_msg ("%s", error->message);
  assert_true (fabs (got.megapascals - row->megapascals) < 1e-3);
}

static void
proof_is_refused (void **state)
{
  const struct refused_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (GError) error = NULL;
  HmThread thread;
  HmStress got = { -1.0 };

  assert_true (hm_thread_parse (row->thread, NULL, &thread, NULL));
  assert_false (hm_torque_proof_stress (tables, row->strength, &thread, &got, &error));
  if (!g_error_matches (error, HM_TORQUE_ERROR, (int) row->code))
    fail_msg ("%s", error->message);
  assert_true (got.megapascals < 0.0);
}

static void
load_matches_source (void **state)
{
  const HmTestRow *row = *state;
  double unit = strcmp (hm_test_text (row, "unit"), "lbf") == 0 ? NEWTONS_PER_POUND : 1.0;
  const HmStrengthRow *strength;
  HmThread thread;
  HmStress stress;

  assert_true (hm_thread_parse (hm_test_text (row, "thread"), row->tables, &thread, NULL));
  strength = hm_torque_find_strength (row->tables, hm_test_text (row, "class"), &thread, NULL);
  assert_non_null (strength);
  stress = strcmp (hm_test_text (row, "kind"), "proof") == 0 ? strength->proof : strength->tensile;
  hm_test_near (row, hm_torque_preload (&thread, stress, 1.0).newtons / unit,
                hm_test_number (row, "value"), hm_test_number (row, "tolerance"));
}

static void
torque_matches_source (void **state)
{
  const HmTestRow *row = *state;
  gboolean feet = strcmp (hm_test_text (row, "unit"), "lbf.ft") == 0;
  HmForce preload = { hm_test_number (row, "preload_lbf") * NEWTONS_PER_POUND };
  HmThread thread;
  HmTorque got;

  assert_true (hm_thread_parse (hm_test_text (row, "thread"), row->tables, &thread, NULL));
  got = hm_torque_from_nut_factor (&thread, preload, hm_test_number (row, "nut_factor"));
  hm_test_near (row, got.newton_metres / (feet ? NM_PER_POUND_FOOT : NM_PER_POUND_INCH),
                hm_test_number (row, "value"), hm_test_number (row, "tolerance"));
}

/* The grade 2, dry, K = 0.20 table has its preloads at 75 % of proof: the whole way from words to torque. */
static void
fastener_matches_source (void **state)
{
  const HmTestRow *row = *state;
  HmFastener bolt = fastener (HM_TORQUE_COMPUTED, hm_test_text (row, "thread"), "SAE 2");
  HmTorqueAnswer answer;
  double preload = hm_test_number (row, "preload_lbf") * NEWTONS_PER_POUND;
  HmStress proof;

  assert_true (hm_torque_proof_stress (row->tables, "SAE 2", &bolt.thread, &proof, NULL));
  hm_test_near (row, hm_torque_preload (&bolt.thread, proof, 0.75).newtons, preload, preload * 0.003);
  assert_true (hm_torque_for_fastener (row->tables, &bolt, &answer, NULL));
  hm_test_near (row, answer.target.newton_metres / NM_PER_POUND_FOOT, hm_test_number (row, "value"),
                hm_test_number (row, "tolerance"));
  assert_true (answer.low.newton_metres < answer.target.newton_metres);
  assert_true (answer.target.newton_metres < answer.high.newton_metres);
  assert_int_equal (answer.provenance.kind, HM_PROVENANCE_COMPUTED);
}

static void
dry_torque_matches_manual (void **state)
{
  const HmTestRow *row = *state;
  HmFastener bolt = fastener (HM_TORQUE_COMPUTED, hm_test_text (row, "thread"), hm_test_text (row, "class"));
  HmTorqueAnswer answer;

  assert_true (hm_torque_for_fastener (row->tables, &bolt, &answer, NULL));
  hm_test_near (row, answer.target.newton_metres / NM_PER_POUND_FOOT, hm_test_number (row, "value"),
                hm_test_number (row, "tolerance"));
}

/* TM 9-6115-604-34, p. 1-11: 30 percent or more below steel for capscrews into aluminium. */
static void
aluminium_takes_less (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmFastener bolt = fastener (HM_TORQUE_COMPUTED, "M6x1", "8.8");
  HmTorqueAnswer steel, aluminium, strong, plastic;

  assert_true (hm_torque_for_fastener (tables, &bolt, &steel, NULL));
  bolt.into = HM_MATERIAL_ALUMINIUM_CAST;
  assert_true (hm_torque_for_fastener (tables, &bolt, &aluminium, NULL));
  assert_true (fabs (aluminium.target.newton_metres / steel.target.newton_metres - 0.7) < 1e-9);
  assert_non_null (strstr (aluminium.provenance.source, "aluminium"));
  bolt.into = HM_MATERIAL_PLASTIC;
  assert_true (hm_torque_for_fastener (tables, &bolt, &plastic, NULL));
  assert_true (plastic.target.newton_metres < 0.3 * steel.target.newton_metres);
  assert_non_null (strstr (plastic.provenance.source, "holds"));
  bolt.strength = "12.9";   /* a stronger bolt does not make the hole stronger */
  assert_true (hm_torque_for_fastener (tables, &bolt, &strong, NULL));
  assert_true (fabs (strong.target.newton_metres - plastic.target.newton_metres) < 1e-9);
}

static void
range_is_handed_on (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmFastener bolt = fastener (HM_TORQUE_RANGE, "M6x1", "");
  HmTorqueAnswer answer;

  assert_true (hm_quantity_parse_range ("4-6 lbf·ft", HM_QUANTITY_TORQUE, HM_UNIT_NONE, &bolt.torque, NULL));
  assert_true (hm_torque_for_fastener (tables, &bolt, &answer, NULL));
  assert_true (fabs (answer.low.newton_metres - 4.0 * NM_PER_POUND_FOOT) < 1e-9);
  assert_true (fabs (answer.target.newton_metres - 5.0 * NM_PER_POUND_FOOT) < 1e-9);
  assert_true (fabs (answer.high.newton_metres - 6.0 * NM_PER_POUND_FOOT) < 1e-9);
  assert_int_equal (answer.provenance.kind, HM_PROVENANCE_COMMON_PRACTICE);
}

static void
no_wrench_gives_zeros (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmFastener bolt = fastener (HM_TORQUE_BY_HAND, "M6x1", "");
  HmTorqueAnswer answer = { .target = { 9.0 } };

  assert_true (hm_torque_for_fastener (tables, &bolt, &answer, NULL));
  assert_int_equal (answer.basis, HM_TORQUE_BY_HAND);
  assert_true (answer.low.newton_metres == 0.0 && answer.target.newton_metres == 0.0 && answer.high.newton_metres == 0.0);
  bolt.torque_basis = HM_TORQUE_MANUAL_ONLY;
  assert_true (hm_torque_for_fastener (tables, &bolt, &answer, NULL));
  assert_int_equal (answer.basis, HM_TORQUE_MANUAL_ONLY);
}

static void
pin_has_no_computed_torque (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (GError) error = NULL;
  HmFastener pin = fastener (HM_TORQUE_COMPUTED, "M6x1", "8.8");
  HmTorqueAnswer answer = { .target = { 9.0 } };

  pin.has_thread = FALSE;
  assert_false (hm_torque_for_fastener (tables, &pin, &answer, &error));
  assert_true (g_error_matches (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_THREAD));
  assert_true (fabs (answer.target.newton_metres - 9.0) < 1e-12);
}

/* Less friction, less torque for the same preload: oil 10 % below dry (TM 10-4320-316-14, appendix G). */
static void
oil_lowers_torque_by_a_tenth (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmFastener bolt = fastener (HM_TORQUE_COMPUTED, "3/8-16", "SAE 5");
  HmTorqueAnswer dry, oiled;

  assert_true (hm_torque_for_fastener (tables, &bolt, &dry, NULL));
  bolt.friction = HM_FRICTION_OILED;
  assert_true (hm_torque_for_fastener (tables, &bolt, &oiled, NULL));
  assert_true (fabs (oiled.target.newton_metres / dry.target.newton_metres - 0.9) < 0.005);
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  HM_TEST_SUITE_ADD_ROWS (suite, proof_rows, proof_matches_standard);
  HM_TEST_SUITE_ADD_ROWS (suite, refused_rows, proof_is_refused);
  hm_test_suite_add_file (suite, "bolt-loads.csv", NULL, load_matches_source);
  hm_test_suite_add_file (suite, "nut-factor.csv", NULL, torque_matches_source);
  hm_test_suite_add_file (suite, "nut-factor.csv", "grade 2 table", fastener_matches_source);
  hm_test_suite_add_file (suite, "dry-torque.csv", NULL, dry_torque_matches_manual);
  hm_test_suite_add (suite, "aluminium takes less", aluminium_takes_less, NULL);
  hm_test_suite_add (suite, "a range is handed on", range_is_handed_on, NULL);
  hm_test_suite_add (suite, "hand and manual give zeros", no_wrench_gives_zeros, NULL);
  hm_test_suite_add (suite, "a pin has no computed torque", pin_has_no_computed_torque, NULL);
  hm_test_suite_add (suite, "oil lowers the torque by a tenth", oil_lowers_torque_by_a_tenth, NULL);
  return hm_test_suite_run (suite, "torque");
}

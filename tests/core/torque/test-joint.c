/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-joint.h"
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

/* Washer faces that the VDI 2230 tables use, with the least width across flats of ISO 4014 grade A. */
static const struct bearing_row { const char *name; double flats, bearing; } bearing_rows[] = {
  { "M5", 7.78, 6.88 }, { "M6", 9.78, 8.88 }, { "M8", 12.73, 11.63 }, { "M10", 15.73, 14.63 }, { "M12", 17.73, 16.63 },
  { "M16", 23.67, 22.49 }, { "M20", 29.67, 28.19 }, { "M24", 35.38, 33.61 },
};

static HmJoint
read_joint (const HmTestRow *row)
{
  HmJoint joint = { 0 };
  g_auto (GStrv) mu = g_strsplit (hm_test_text (row, "mu"), " ", 2);

  assert_true (hm_thread_parse (hm_test_text (row, "thread"), row->tables, &joint.thread, NULL));
  joint.bearing_outer.mm = hm_test_number (row, "bearing_outer");
  joint.bearing_inner.mm = hm_test_number (row, "bearing_inner");
  joint.mu_thread = g_ascii_strtod (mu[0], NULL);
  joint.mu_bearing = mu[1] != NULL ? g_ascii_strtod (mu[1], NULL) : joint.mu_thread;
  return joint;
}

static HmJoint
m8_joint (double mu)
{
  return (HmJoint) { { HM_THREAD_ISO_METRIC, { 8.0 }, { 1.25 }, FALSE }, { 11.63 }, { 9.0 }, mu, mu };
}

static void
preload_matches_source (void **state)
{
  const HmTestRow *row = *state;
  HmJoint joint = read_joint (row);
  HmStress yield = { hm_test_number (row, "yield") };
  HmForce preload = hm_joint_preload_at (&joint, yield, 0.9);

  hm_test_near (row, preload.newtons, hm_test_number (row, "preload"), hm_test_number (row, "preload_tolerance"));
  assert_true (fabs (hm_joint_equivalent_stress (&joint, preload).megapascals - 0.9 * yield.megapascals) < 1e-6);
  if (strcmp (hm_test_text (row, "kind"), "utilization") == 0)
    hm_test_near (row, hm_joint_tightening_torque (&joint, preload).newton_metres, hm_test_number (row, "torque"),
                  hm_test_number (row, "torque_tolerance"));
}

static void
long_form_matches_source (void **state)
{
  const HmTestRow *row = *state;
  HmJoint joint = read_joint (row);
  HmForce preload = { hm_test_number (row, "preload") };
  HmTorque torque = hm_joint_tightening_torque (&joint, preload);
  HmTorqueParts parts = hm_joint_tightening_parts (&joint, preload);

  hm_test_near (row, torque.newton_metres, hm_test_number (row, "torque"), hm_test_number (row, "torque_tolerance"));
  assert_true (fabs (parts.pitch.newton_metres + parts.thread_friction.newton_metres + parts.bearing_friction.newton_metres
                     - torque.newton_metres) < 1e-9);
  assert_true (fabs (hm_joint_preload (&joint, torque).newtons - preload.newtons) < 1e-6);
  assert_true (fabs (hm_joint_nut_factor (&joint) * preload.newtons * joint.thread.major.mm / 1000.0 - torque.newton_metres) < 1e-9);
}

static void
bearing_matches_tables (void **state)
{
  const struct bearing_row *row = *state;
  double got = hm_joint_hex_bearing ((HmLength) { row->flats }).mm;

  if (fabs (got - row->bearing) > 0.0051)
    fail_msg ("%.3f, want %.2f", got, row->bearing);
}

/* By hand from the long form: M8, μ 0.12, 16 kN: 3.183 N·m stretch the bolt, T 21.06 N·m, undoing 21.06 − 2 · 3.183. */
static void
loosening_is_twice_the_pitch_part_less (void **state)
{
  HmJoint joint = m8_joint (0.12);

  assert_true (fabs (hm_joint_loosening_torque (&joint, (HmForce) { 16000.0 }).newton_metres - (21.06 - 2.0 * 3.183)) < 0.03);
  joint.mu_thread = joint.mu_bearing = 0.001;
  assert_true (hm_joint_loosening_torque (&joint, (HmForce) { 16000.0 }).newton_metres <= 0.0);
}

/* VDI 2230: minimum preload = maximum / tightening factor; 41.9 kN and 1.8 give 23.3 kN. */
static void
spread_obeys_the_tightening_factor (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmJoint joint = m8_joint (0.15);
  HmPreloadSpread wrench = hm_joint_preload_spread (&joint, (HmTorque) { 20.0 }, hm_torque_find_friction (tables, HM_FRICTION_DRY),
                                                    HM_TIGHTEN_TORQUE_WRENCH, (HmStress) { 640.0 });
  HmPreloadSpread feel = hm_joint_preload_spread (&joint, (HmTorque) { 20.0 }, hm_torque_find_friction (tables, HM_FRICTION_DRY),
                                                  HM_TIGHTEN_BY_FEEL, (HmStress) { 640.0 });

  assert_true (fabs (41.9 / 1.8 - 23.3) < 0.05);
  assert_true (fabs (wrench.high.newtons / wrench.tightening_factor - wrench.low.newtons) < 1e-6);
  assert_true (wrench.low.newtons < wrench.target.newtons && wrench.target.newtons < wrench.high.newtons);
  assert_true (feel.tightening_factor > wrench.tightening_factor && feel.yield_share > wrench.yield_share);
}

/* ISO 6789-1: 4 % above 10 N·m, 6 % up to it. */
static void
wrench_deviates_more_when_small (void **state)
{
  assert_true (fabs (hm_tightening_scatter (HM_TIGHTEN_TORQUE_WRENCH, (HmTorque) { 10.0 }) - 0.06) < 1e-12);
  assert_true (fabs (hm_tightening_scatter (HM_TIGHTEN_TORQUE_WRENCH, (HmTorque) { 10.1 }) - 0.04) < 1e-12);
}

/* A larger ring takes more torque for the same preload: flange head against hexagon. */
static void
flange_takes_more_torque (void **state)
{
  HmJoint hex = m8_joint (0.12), flange = hex;

  flange.bearing_outer.mm = 15.8;
  assert_true (hm_joint_tightening_torque (&flange, (HmForce) { 16000.0 }).newton_metres
               > hm_joint_tightening_torque (&hex, (HmForce) { 16000.0 }).newton_metres + 1.9);
  assert_true (fabs (hm_joint_bearing_diameter (&flange).mm - 12.4) < 1e-9);
}

static void
hex_joint_takes_hole_and_head (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmHead head = { { 13.0 }, { 12.73 }, { 13.0 }, FALSE, "ISO 4014" };
  HmThread thread = { HM_THREAD_ISO_METRIC, { 8.0 }, { 1.25 }, FALSE }, odd = { HM_THREAD_ISO_METRIC, { 9.5 }, { 1.25 }, FALSE };
  HmJoint joint = hm_joint_for_hex (&thread, &head, 0.12, tables);

  assert_true (fabs (joint.bearing_outer.mm - 11.63) < 1e-9 && fabs (joint.bearing_inner.mm - 9.0) < 1e-9);
  assert_true (fabs (hm_joint_for_hex (&odd, &head, 0.12, tables).bearing_inner.mm - 10.45) < 1e-9);
}

/* friction.csv: the nut factor and the friction of a state say nearly the same on a hexagon bolt (within 10 %). */
static void
nut_factor_agrees_with_friction (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();

  for (int i = 0; i < HM_FRICTION_N_STATES; i++)
    {
      const HmFrictionRow *row = hm_torque_find_friction (tables, (HmFriction) i);
      HmJoint joint = m8_joint (row->mu);

      if (fabs (hm_joint_nut_factor (&joint) / row->nut_factor - 1.0) > 0.1)
        fail_msg ("%s: K %.3f, from friction %.3f", row->state, row->nut_factor, hm_joint_nut_factor (&joint));
    }
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  hm_test_suite_add_file (suite, "joint.csv", "utilization", preload_matches_source);
  hm_test_suite_add_file (suite, "joint.csv", "preload", preload_matches_source);
  hm_test_suite_add_file (suite, "joint.csv", "long", long_form_matches_source);
  HM_TEST_SUITE_ADD_ROWS (suite, bearing_rows, bearing_matches_tables);
  hm_test_suite_add (suite, "loosening takes twice the pitch part less", loosening_is_twice_the_pitch_part_less, NULL);
  hm_test_suite_add (suite, "spread obeys the tightening factor", spread_obeys_the_tightening_factor, NULL);
  hm_test_suite_add (suite, "a wrench deviates more when small", wrench_deviates_more_when_small, NULL);
  hm_test_suite_add (suite, "a flange takes more torque", flange_takes_more_torque, NULL);
  hm_test_suite_add (suite, "a hex joint takes hole and head", hex_joint_takes_hole_and_head, NULL);
  hm_test_suite_add (suite, "nut factor agrees with friction", nut_factor_agrees_with_friction, NULL);
  return hm_test_suite_run (suite, "joint");
}

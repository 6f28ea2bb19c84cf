/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-adapter.h"
#include "hm-joint.h"
#include "hm-tightening.h"
#include "hm-torque.h"
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <cmocka.h>

/* Torque and preload are each other's inverse, and both rise with what should raise them, on joints drawn at random. */

#define JOINTS 20000
#define ADAPTERS 20000
#define RELATIVE 1e-12

static void
assert_same (double got, double want)
{
  if (!(fabs (got - want) <= RELATIVE * fabs (want)))
    fail_msg ("%.17g, want %.17g", got, want);
}

static HmThread
draw_thread (GRand *rand, const HmTables *tables)
{
  gsize n;
  const HmThreadRow *rows = hm_tables_get_threads (tables, &n), *row;

  do
    row = &rows[g_rand_int_range (rand, 0, (gint32) n)];
  while (row->series == HM_SERIES_NPT);
  return (HmThread) { row->inch ? HM_THREAD_UNIFIED : HM_THREAD_ISO_METRIC, row->major, row->pitch, FALSE };
}

static HmJoint
draw_joint (GRand *rand, const HmTables *tables)
{
  HmJoint joint = { .thread = draw_thread (rand, tables) };

  joint.bearing_inner.mm = joint.thread.major.mm * g_rand_double_range (rand, 1.02, 1.2);
  joint.bearing_outer.mm = joint.thread.major.mm * g_rand_double_range (rand, 1.3, 2.5);
  joint.mu_thread = g_rand_double_range (rand, 0.05, 0.4);
  joint.mu_bearing = g_rand_double_range (rand, 0.05, 0.4);
  return joint;
}

static void
preload_inverts_torque (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (GRand) rand = g_rand_new_with_seed (1);

  for (guint i = 0; i < JOINTS; i++)
    {
      HmJoint joint = draw_joint (rand, tables);
      HmForce preload = { pow (10.0, g_rand_double_range (rand, 1.0, 6.0)) };
      HmTorque torque = hm_joint_tightening_torque (&joint, preload);
      HmTorqueParts parts = hm_joint_tightening_parts (&joint, preload);

      assert_same (hm_joint_preload (&joint, torque).newtons, preload.newtons);
      assert_same (hm_torque_from_nut_factor (&joint.thread, preload, hm_joint_nut_factor (&joint)).newton_metres,
                   torque.newton_metres);
      assert_same (parts.pitch.newton_metres + parts.thread_friction.newton_metres + parts.bearing_friction.newton_metres,
                   torque.newton_metres);
      assert_true (hm_joint_loosening_torque (&joint, preload).newton_metres < torque.newton_metres);
    }
}

static void
stress_inverts_preload (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (GRand) rand = g_rand_new_with_seed (2);

  for (guint i = 0; i < JOINTS; i++)
    {
      HmJoint joint = draw_joint (rand, tables);
      HmStress yield = { g_rand_double_range (rand, 200.0, 1200.0) };
      double share = g_rand_double_range (rand, 0.1, 1.0);
      HmForce preload = hm_joint_preload_at (&joint, yield, share);

      assert_same (hm_joint_equivalent_stress (&joint, preload).megapascals, share * yield.megapascals);
    }
}

static void
more_friction_takes_more_torque (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (GRand) rand = g_rand_new_with_seed (3);
  HmForce preload = { 10000.0 };

  for (guint i = 0; i < JOINTS; i++)
    {
      HmJoint joint = draw_joint (rand, tables), rough = joint, wide = joint;

      rough.mu_thread *= 1.1;
      wide.bearing_outer.mm *= 1.1;
      assert_true (hm_joint_tightening_torque (&rough, preload).newton_metres > hm_joint_tightening_torque (&joint, preload).newton_metres);
      assert_true (hm_joint_tightening_torque (&wide, preload).newton_metres > hm_joint_tightening_torque (&joint, preload).newton_metres);
      assert_true (hm_joint_preload_at (&rough, (HmStress) { 640.0 }, 0.9).newtons
                   < hm_joint_preload_at (&joint, (HmStress) { 640.0 }, 0.9).newtons);
    }
}

/* Every thread with every class that is made for it: the torque that is worked out gives back the preload it is for. */
static void
worked_out_torque_gives_its_preload (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  gsize n_threads, n_classes;
  const HmThreadRow *threads = hm_tables_get_threads (tables, &n_threads);
  const HmStrengthRow *classes = hm_tables_get_strength (tables, &n_classes);
  guint seen = 0;

  for (gsize i = 0; i < n_threads; i++)
    for (gsize j = 0; j < n_classes; j++)
      {
        HmTighteningQuestion question = { .strength = classes[j].name, .share_of_proof = 0.75 };
        HmTightening there, back;

        question.thread = (HmThread) { threads[i].inch ? HM_THREAD_UNIFIED : HM_THREAD_ISO_METRIC, threads[i].major,
                                       threads[i].pitch, FALSE };
        if (threads[i].series == HM_SERIES_NPT || !hm_tightening_suits (&classes[j], &question.thread)
            || hm_torque_find_strength (tables, classes[j].name, &question.thread, NULL) != &classes[j])
          continue;
        assert_true (hm_tightening_work_out (tables, &question, &there, NULL));
        assert_true (hm_tightening_from_torque (tables, &question, there.target, there.target, &back, NULL));
        assert_same (back.preload.newtons, there.preload.newtons);
        assert_same (there.preload.newtons, 0.75 * classes[j].proof.megapascals * hm_thread_stress_area_mm2 (&question.thread));
        seen++;
      }
  assert_true (seen > 300);
}

static void
adapter_torque_inverts_setting (void **state)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (4);

  for (guint i = 0; i < ADAPTERS; i++)
    {
      HmLength lever = { g_rand_double_range (rand, 150.0, 600.0) }, adapter = { g_rand_double_range (rand, 0.0, 140.0) };
      double angle = g_rand_double_range (rand, 0.0, 180.0);
      HmTorque wanted = { g_rand_double_range (rand, 1.0, 300.0) }, setting, got;

      assert_true (hm_adapter_setting (wanted, lever, adapter, angle, &setting, NULL));
      assert_true (hm_adapter_torque (setting, lever, adapter, angle, &got, NULL));
      assert_same (got.newton_metres, wanted.newton_metres);
      assert_true (angle < 90.0 ? setting.newton_metres <= wanted.newton_metres : setting.newton_metres >= wanted.newton_metres);
    }
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  hm_test_suite_add (suite, "preload inverts torque", preload_inverts_torque, NULL);
  hm_test_suite_add (suite, "stress inverts preload", stress_inverts_preload, NULL);
  hm_test_suite_add (suite, "more friction takes more torque", more_friction_takes_more_torque, NULL);
  hm_test_suite_add (suite, "a torque worked out gives its preload back", worked_out_torque_gives_its_preload, NULL);
  hm_test_suite_add (suite, "adapter torque inverts the setting", adapter_torque_inverts_setting, NULL);
  return hm_test_suite_run (suite, "torque-property");
}

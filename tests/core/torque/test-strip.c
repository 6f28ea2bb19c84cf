/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-strip.h"
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

#define MM_PER_INCH 25.4
#define NEWTONS_PER_POUND 4.4482216152605

static HmThreadClass
class_from_name (const char *name)
{
  for (int i = HM_THREAD_CLASS_6G; i <= HM_THREAD_CLASS_3B; i++)
    if (strcmp (hm_thread_class_name ((HmThreadClass) i), name) == 0)
      return (HmThreadClass) i;
  fail_msg ("no class %s", name);
  return HM_THREAD_CLASS_6G;
}

static HmThread
read_thread (const HmTestRow *row)
{
  HmThread thread;

  assert_true (hm_thread_parse (hm_test_text (row, "thread"), row->tables, &thread, NULL));
  return thread;
}

static void
area_matches_source (void **state)
{
  const HmTestRow *row = *state;
  HmThread thread = read_thread (row);
  HmStripAreas areas = hm_strip_areas (&thread, class_from_name (hm_test_text (row, "bolt_class")),
                                       class_from_name (hm_test_text (row, "hole_class")), thread.major, row->tables);
  double mm2 = strcmp (hm_test_text (row, "kind"), "nut_strip_area") == 0 ? areas.hole_mm2 : areas.bolt_mm2;

  hm_test_near (row, mm2 / (MM_PER_INCH * MM_PER_INCH), hm_test_number (row, "value"), hm_test_number (row, "tolerance"));
}

static void
engagement_matches_source (void **state)
{
  const HmTestRow *row = *state;
  gboolean inch = strcmp (hm_test_text (row, "unit"), "in") == 0;
  double length = inch ? MM_PER_INCH : 1.0, force = inch ? NEWTONS_PER_POUND : 1.0;
  HmThread thread = read_thread (row);
  HmForce load = { hm_test_number (row, "load") * force };
  HmStress shear = { hm_test_number (row, "shear") * force / (length * length) };
  HmLength got = hm_strip_engagement_from_limits (thread.pitch, (HmLength) { hm_test_number (row, "bolt_major_min") * length },
                                                  (HmLength) { hm_test_number (row, "hole_pitch_max") * length }, load, shear);

  hm_test_near (row, got.mm / length, hm_test_number (row, "value"), hm_test_number (row, "tolerance"));
}

/* From our own limits of size: they leave the published ones by one R40 step of the tolerance at most, 1 % of the length. */
static void
engagement_of_usual_classes_agrees (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmThread m6 = { HM_THREAD_ISO_METRIC, { 6.0 }, { 1.0 }, FALSE }, m8 = { HM_THREAD_ISO_METRIC, { 8.0 }, { 1.25 }, FALSE };

  assert_true (fabs (hm_strip_engagement (&m6, (HmForce) { 20.1 * 800.0 }, (HmStress) { 130.0 }, tables).mm / 10.15 - 1.0) < 0.01);
  assert_true (fabs (hm_strip_engagement (&m8, (HmForce) { 36.6 * 800.0 }, (HmStress) { 200.0 }, tables).mm / 8.70 - 1.0) < 0.01);
}

/* M6 8.8 in aluminium of 130 MPa breaks from 10.15 mm of engagement on, and strips the hole below (FED-STD-H28/2). */
static void
weakest_changes_with_engagement (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmThread thread = { HM_THREAD_ISO_METRIC, { 6.0 }, { 1.0 }, FALSE };
  const HmStrengthRow *strength = hm_torque_find_strength (tables, "8.8", &thread, NULL);
  HmStress shear = { 130.0 };

  assert_int_equal (hm_strip_check (&thread, (HmLength) { 9.9 }, strength, shear, tables).weakest, HM_STRIP_HOLE_STRIPS);
  assert_int_equal (hm_strip_check (&thread, (HmLength) { 10.4 }, strength, shear, tables).weakest, HM_STRIP_BOLT_BREAKS);
  assert_int_equal (hm_strip_check (&thread, (HmLength) { 3.0 }, strength, (HmStress) { 600.0 }, tables).weakest,
                    HM_STRIP_BOLT_STRIPS);
}

static void
every_material_has_a_row (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();

  for (int i = 0; i < HM_MATERIAL_N_MATERIALS; i++)
    assert_true (hm_strip_find_shear (tables, (HmMaterial) i)->low.megapascals > 0.0);
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  hm_test_suite_add_file (suite, "strip.csv", "nut_strip_area", area_matches_source);
  hm_test_suite_add_file (suite, "strip.csv", "bolt_strip_area", area_matches_source);
  hm_test_suite_add_file (suite, "strip.csv", "engagement", engagement_matches_source);
  hm_test_suite_add (suite, "engagement of usual classes agrees", engagement_of_usual_classes_agrees, NULL);
  hm_test_suite_add (suite, "the weakest changes with engagement", weakest_changes_with_engagement, NULL);
  hm_test_suite_add (suite, "every material has a row", every_material_has_a_row, NULL);
  return hm_test_suite_run (suite, "strip");
}

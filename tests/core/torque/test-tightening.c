/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-sequence.h"
#include "hm-tightening.h"
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

#define LBF_FT_PER_NM 0.7375621492772654

static HmTighteningQuestion
question_for (const HmTables *tables, const char *thread, const char *strength)
{
  HmTighteningQuestion question = { .strength = strength, .share_of_proof = 0.75 };

  if (!hm_thread_parse (thread, tables, &question.thread, NULL))
    fail_msg ("%s is not a thread", thread);
  return question;
}

/* The Army's dry torques: K = 0.20 at 75 % of proof load. */
static void
dry_torque_matches_manual (void **state)
{
  const HmTestRow *row = *state;
  HmTighteningQuestion question = question_for (row->tables, hm_test_text (row, "thread"), hm_test_text (row, "class"));
  HmTightening got;

  assert_true (hm_tightening_work_out (row->tables, &question, &got, NULL));
  hm_test_near (row, got.target.newton_metres * LBF_FT_PER_NM, hm_test_number (row, "value"), hm_test_number (row, "tolerance"));
  assert_int_equal (got.governs, HM_GOVERNS_PROOF);
  assert_true (got.low.newton_metres < got.target.newton_metres && got.target.newton_metres < got.high.newton_metres);
}

static void
agrees_with_the_value_for_a_fastener (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmTighteningQuestion question = question_for (tables, "M8", "8.8");
  HmTightening got;

  for (HmMaterial into = 0; into < HM_MATERIAL_N_MATERIALS; into++)
    for (HmFriction friction = 0; friction < HM_FRICTION_N_STATES; friction++)
      {
        HmFastener fastener = { .name = "bolt", .has_thread = TRUE, .thread = question.thread, .strength = "8.8",
                                .torque_basis = HM_TORQUE_COMPUTED, .friction = friction, .into = into };
        HmTorqueAnswer want;

        if (into == HM_MATERIAL_PLASTIC)
          continue;
        question.into = into;
        question.friction = friction;
        assert_true (hm_torque_for_fastener (tables, &fastener, &want, NULL));
        assert_true (hm_tightening_work_out (tables, &question, &got, NULL));
        assert_true (fabs (got.target.newton_metres - want.target.newton_metres) < 1e-9);
        assert_true (fabs (got.low.newton_metres - want.low.newton_metres) < 1e-9);
        assert_true (fabs (got.high.newton_metres - want.high.newton_metres) < 1e-9);
        assert_string_equal (got.provenance.source, want.provenance.source);
      }
}

/* TM 9-6115-604-34: capscrews into aluminium, 30 percent or more below the torque for steel. */
static void
aluminium_takes_thirty_percent_off (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmTighteningQuestion question = question_for (tables, "5/16-18", "SAE 5");
  HmTightening steel, aluminium;

  assert_true (hm_tightening_work_out (tables, &question, &steel, NULL));
  question.into = HM_MATERIAL_ALUMINIUM_CAST;
  assert_true (hm_tightening_work_out (tables, &question, &aluminium, NULL));
  assert_true (fabs (aluminium.target.newton_metres / steel.target.newton_metres - 0.7) < 1e-9);
  assert_int_equal (aluminium.governs, HM_GOVERNS_ALUMINIUM);
  assert_true (aluminium.strip_load.newtons > 0.0);
  assert_true (steel.strip_load.newtons <= 0.0);
}

static void
short_engagement_governs (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmTighteningQuestion question = question_for (tables, "M8", "8.8");
  HmTightening full, cut;

  question.into = HM_MATERIAL_ALUMINIUM_CAST;
  assert_true (hm_tightening_work_out (tables, &question, &full, NULL));
  question.engaged.mm = 4.0;
  assert_true (hm_tightening_work_out (tables, &question, &cut, NULL));
  assert_int_equal (cut.governs, HM_GOVERNS_STRIPPING);
  assert_true (cut.target.newton_metres < full.target.newton_metres);
  assert_true (cut.preload.newtons < cut.strip_load.newtons);
  /* ISO 898-1: an M8 of class 8.8 breaks at 29.2 kN; the hole holds that over the engaged length needed. */
  assert_true (fabs (cut.strip_load.newtons - 29200.0 * 4.0 / cut.needed.mm) < 0.01 * cut.strip_load.newtons);
  assert_true (cut.needed.mm > cut.engaged.mm);
  assert_int_equal (cut.weakest, HM_STRIP_HOLE_STRIPS);
}

/* At the engaged length that is needed, the hole holds just what the bolt breaks at. */
static void
needed_engagement_breaks_the_bolt (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmTighteningQuestion question = question_for (tables, "M6", "8.8");
  HmTightening got;

  question.into = HM_MATERIAL_ALUMINIUM_CAST;
  assert_true (hm_tightening_work_out (tables, &question, &got, NULL));
  question.engaged.mm = got.needed.mm * 1.01;
  assert_true (hm_tightening_work_out (tables, &question, &got, NULL));
  assert_int_not_equal (got.weakest, HM_STRIP_HOLE_STRIPS);
  question.engaged.mm = got.needed.mm * 0.99;
  assert_true (hm_tightening_work_out (tables, &question, &got, NULL));
  assert_int_equal (got.weakest, HM_STRIP_HOLE_STRIPS);
}

static void
long_form_is_near_the_nut_factor (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  static const char * const threads[] = { "M6", "M8", "M10", "1/4-20", "5/16-18", "3/8-16", "No.10-24" };

  for (guint i = 0; i < G_N_ELEMENTS (threads); i++)
    {
      HmTighteningQuestion question = question_for (tables, threads[i], "A2-70");
      HmTightening got;

      assert_true (hm_tightening_work_out (tables, &question, &got, NULL));
      assert_true (got.has_long_form);
      assert_true (fabs (got.long_form_more) < 0.12);   /* friction.csv: mu gives about the same torque on a hexagon bolt */
      assert_true (fabs (got.pitch_share + got.thread_share + got.bearing_share - 1.0) < 1e-9);
      assert_true (got.loosening.newton_metres > 0.0 && got.loosening.newton_metres < got.long_form.newton_metres);
    }
}

static void
flange_asks_for_more (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmTighteningQuestion question = question_for (tables, "M8", "8.8");
  HmTightening plain, flange, washer;

  assert_true (hm_tightening_work_out (tables, &question, &plain, NULL));
  question.seat = HM_SEAT_FLANGE;
  assert_true (hm_tightening_work_out (tables, &question, &flange, NULL));
  question.seat = HM_SEAT_WASHER;
  assert_true (hm_tightening_work_out (tables, &question, &washer, NULL));
  assert_true (flange.long_form.newton_metres > plain.long_form.newton_metres);
  assert_true (washer.long_form.newton_metres < plain.long_form.newton_metres);
  assert_true (fabs (flange.target.newton_metres - plain.target.newton_metres) < 1e-9);
}

static void
a_given_torque_gives_its_preload_back (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmTighteningQuestion question = question_for (tables, "3/8-16", "SAE 5");
  HmTightening computed, given;

  assert_true (hm_tightening_work_out (tables, &question, &computed, NULL));
  assert_true (hm_tightening_from_torque (tables, &question, computed.target, computed.target, &given, NULL));
  assert_true (fabs (given.preload.newtons - computed.preload.newtons) < 1e-6 * computed.preload.newtons);
  assert_int_equal (given.governs, HM_GOVERNS_TORQUE_GIVEN);
}

static void
scale_keeps_its_order (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmTighteningQuestion question = question_for (tables, "M8", "8.8");
  HmTighteningScale scale;
  HmTightening got;

  assert_true (hm_tightening_work_out (tables, &question, &got, NULL));
  scale = hm_tightening_scale (&got);
  assert_true (0.0 < scale.low && scale.low < scale.target && scale.target < scale.high && scale.high < 1.0);
  assert_true (scale.target < scale.proof && scale.proof < 1.0);
  assert_true (scale.strip < 0.0);
  question.into = HM_MATERIAL_ALUMINIUM_CAST;
  question.engaged.mm = 6.0;
  assert_true (hm_tightening_work_out (tables, &question, &got, NULL));
  scale = hm_tightening_scale (&got);
  assert_true (scale.strip > scale.target && scale.strip < 1.0);
}

static const struct refused_row {
  const char *name, *strength;
  double engaged, share;
  HmMaterial into;
  HmTorqueError code;
  const char *says;
} refused_rows[] = {
  { "unknown class", "99.9", 0.0, 0.75, HM_MATERIAL_STEEL, HM_TORQUE_ERROR_CLASS, "99.9" },
  { "class not known", "", 0.0, 0.75, HM_MATERIAL_STEEL, HM_TORQUE_ERROR_CLASS, "head" },
  { "not at this size", "SAE 5", 0.0, 0.75, HM_MATERIAL_STEEL, HM_TORQUE_ERROR_THREAD, "SAE 5" },
  { "share too high", "8.8", 0.0, 0.91, HM_MATERIAL_STEEL, HM_TORQUE_ERROR_NOT_COMPUTABLE, "90 %" },
  { "share too low", "8.8", 0.0, 0.29, HM_MATERIAL_STEEL, HM_TORQUE_ERROR_NOT_COMPUTABLE, "30" },
  { "share no number", "8.8", 0.0, NAN, HM_MATERIAL_STEEL, HM_TORQUE_ERROR_NOT_COMPUTABLE, "share" },
  { "engaged negative", "8.8", -1.0, 0.75, HM_MATERIAL_STEEL, HM_TORQUE_ERROR_NOT_COMPUTABLE, "engaged" },
  { "engaged too long", "8.8", 50.1, 0.75, HM_MATERIAL_STEEL, HM_TORQUE_ERROR_NOT_COMPUTABLE, "engaged" },
  { "plastic", "8.8", 0.0, 0.75, HM_MATERIAL_PLASTIC, HM_TORQUE_ERROR_NOT_COMPUTABLE, "creeps" },
};

static void
question_is_refused (void **state)
{
  const struct refused_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmTighteningQuestion question = question_for (tables, "M5", row->strength);
  g_autoptr (GError) error = NULL;
  HmTightening got = { .preload = { -1.0 } };

  question.engaged.mm = row->engaged;
  question.share_of_proof = row->share;
  question.into = row->into;
  assert_false (hm_tightening_work_out (tables, &question, &got, &error));
  assert_true (g_error_matches (error, HM_TORQUE_ERROR, (int) row->code));
  assert_non_null (strstr (error->message, row->says));
  assert_true (got.preload.newtons < 0.0);
}

static void
special_joints_can_be_read (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  gsize n;
  const HmSpecialRow *rows = hm_tables_get_specials (tables, &n);

  assert_true (n > 4);
  for (gsize i = 0; i < n; i++)
    {
      HmTorqueBasis basis;
      HmQuantityRange range;

      assert_true (hm_torque_basis_parse (rows[i].torque, &basis, &range, NULL));
      assert_int_not_equal (basis, HM_TORQUE_COMPUTED);
    }
}

static void
classes_suit_their_threads (void **state)
{
  static const struct { const char *thread, *strength; gboolean suits; } cases[] = {
    { "M8", "8.8", TRUE }, { "M8", "SAE 5", FALSE }, { "1/4-20", "SAE 5", TRUE }, { "1/4-20", "8.8", FALSE },
    { "No.10-24", "SAE 5", FALSE }, { "No.10-24", "A2-70", TRUE }, { "M8", "A2-70", TRUE },
  };
  g_autoptr (HmTables) tables = hm_test_tables ();
  gsize n;
  const HmStrengthRow *rows = hm_tables_get_strength (tables, &n);

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      HmTighteningQuestion question = question_for (tables, cases[i].thread, cases[i].strength);
      gboolean suits = FALSE;

      for (gsize j = 0; j < n; j++)
        suits = suits || (strcmp (rows[j].name, cases[i].strength) == 0 && hm_tightening_suits (&rows[j], &question.thread));
      assert_int_equal (suits, cases[i].suits);
    }
}

static void
passes_end_at_the_full_torque (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  gsize n;
  const HmPassRow *passes = hm_sequence_passes (tables, "three-pass cross", &n);

  assert_true (fabs (hm_sequence_pass_torque (&passes[0], (HmTorque) { 50.0 }).newton_metres - 15.0) < 1e-9);
  assert_true (fabs (hm_sequence_pass_torque (&passes[n - 1], (HmTorque) { 50.0 }).newton_metres - 50.0) < 1e-9);
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  hm_test_suite_add_file (suite, "dry-torque.csv", NULL, dry_torque_matches_manual);
  HM_TEST_SUITE_ADD_ROWS (suite, refused_rows, question_is_refused);
  hm_test_suite_add (suite, "agrees with the value for a fastener", agrees_with_the_value_for_a_fastener, NULL);
  hm_test_suite_add (suite, "aluminium takes 30 % off", aluminium_takes_thirty_percent_off, NULL);
  hm_test_suite_add (suite, "a short engagement governs", short_engagement_governs, NULL);
  hm_test_suite_add (suite, "the needed engagement breaks the bolt", needed_engagement_breaks_the_bolt, NULL);
  hm_test_suite_add (suite, "the long form is near the nut factor", long_form_is_near_the_nut_factor, NULL);
  hm_test_suite_add (suite, "a flange asks for more", flange_asks_for_more, NULL);
  hm_test_suite_add (suite, "a given torque gives its preload back", a_given_torque_gives_its_preload_back, NULL);
  hm_test_suite_add (suite, "the scale keeps its order", scale_keeps_its_order, NULL);
  hm_test_suite_add (suite, "special joints can be read", special_joints_can_be_read, NULL);
  hm_test_suite_add (suite, "classes suit their threads", classes_suit_their_threads, NULL);
  hm_test_suite_add (suite, "passes end at the full torque", passes_end_at_the_full_torque, NULL);
  return hm_test_suite_run (suite, "tightening");
}

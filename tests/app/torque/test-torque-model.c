/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-order-model.h"
#include "hmui-torque-model.h"
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

#define NBSP "\302\240"

typedef struct { HmuiSettings *settings; HmuiWrenchDrawer *drawer; HmuiTorqueModel *model; HmTables *tables; } Bench;

static void
bench_clear (Bench *self)
{
  g_clear_object (&self->model);
  g_clear_object (&self->drawer);
  g_clear_object (&self->settings);
  g_clear_pointer (&self->tables, hm_tables_unref);
}
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (Bench, bench_clear)

static Bench
make_bench (HmuiUnits units)
{
  Bench bench = { hmui_settings_new (), NULL, NULL, hm_test_tables () };

  g_object_set (bench.settings, "units", units, "torque-wrenches", NULL, NULL);
  bench.drawer = hmui_wrench_drawer_new (bench.settings);
  bench.model = hmui_torque_model_new (bench.settings, bench.drawer);
  hmui_torque_model_set_tables (bench.model, bench.tables, NULL);
  return bench;
}

static void
choose (HmuiTorqueModel *model, HmuiTorqueChoice choice, const char *prefix)
{
  g_auto(GStrv) texts = hmui_torque_model_dup_choices (model, choice);

  for (guint i = 0; texts[i] != NULL; i++)
    if (g_str_has_prefix (texts[i], prefix))
      {
        hmui_torque_model_set_choice (model, choice, i);
        return;
      }
  fail_msg ("there is no “%s” to choose", prefix);
}

static void
ask (HmuiTorqueModel *model, const char *thread, const char *strength)
{
  hmui_torque_model_set_text (model, HMUI_TORQUE_INPUT_THREAD, thread);
  choose (model, HMUI_TORQUE_CHOICE_STRENGTH, strength);
}

static double
headline_in (HmuiTorqueModel *model, HmUnit unit)
{
  g_autofree char *headline = hmui_torque_model_dup_headline (model);
  HmQuantity read;

  if (!hm_quantity_parse (headline, HM_QUANTITY_TORQUE, HM_UNIT_NONE, &read, NULL))
    fail_msg ("the headline “%s” is no torque", headline);
  return hm_quantity_in (read, unit);
}

static void
assert_says (char *text, const char *words)
{
  g_autofree char *owned = text;

  if (owned == NULL || strstr (owned, words) == NULL)
    fail_msg ("“%s” does not say “%s”", owned != NULL ? owned : "(nothing)", words);
}

/* The printed figure of the Army's dry torques, read back from the large number. Half a digit more for its rounding. */
static void
headline_matches_manual (void **state)
{
  const HmTestRow *row = *state;
  g_auto(Bench) bench = make_bench (HMUI_UNITS_INCH_FIRST);
  g_autofree char *strength = g_strdup_printf ("%s ·", hm_test_text (row, "class"));

  ask (bench.model, hm_test_text (row, "thread"), strength);
  assert_int_equal (hmui_torque_model_get_state (bench.model), HMUI_TORQUE_VALUE);
  hm_test_near (row, headline_in (bench.model, HM_UNIT_POUND_FOOT), hm_test_number (row, "value"),
                hm_test_number (row, "tolerance") + 0.5);
}

/* Proof loads of ISO 898-1: M8 class 8.8, 580 MPa on 36.6 mm2; at 75 % with K = 0.20 that is 25.5 N·m. */
static void
worked_example_shows_in_the_words (void **state)
{
  g_auto(Bench) bench = make_bench (HMUI_UNITS_METRIC_FIRST);
  HmProvenance provenance;

  ask (bench.model, "m8", "8.8 ");
  assert_says (hmui_torque_model_dup_headline (bench.model), "25.5" NBSP "N·m");
  assert_says (hmui_torque_model_dup_others (bench.model), "18.8" NBSP "lbf·ft");
  assert_says (hmui_torque_model_dup_others (bench.model), "lbf·in");
  assert_says (hmui_torque_model_dup_limit (bench.model), "75" NBSP "% of its proof load");
  assert_says (hmui_torque_model_dup_fact (bench.model, HMUI_TORQUE_FACT_PRELOAD), "15.9" NBSP "kN");
  assert_says (hmui_torque_model_dup_fact (bench.model, HMUI_TORQUE_FACT_STRENGTH), "580" NBSP "MPa");
  assert_says (hmui_torque_model_dup_fact (bench.model, HMUI_TORQUE_FACT_FRICTION), "0.20");
  assert_says (hmui_torque_model_dup_fact (bench.model, HMUI_TORQUE_FACT_METHODS), "long form");
  assert_says (hmui_torque_model_dup_summary (bench.model), "M8 × 1.25 · 8.8 · Dry");
  assert_true (hmui_torque_model_get_provenance (bench.model, &provenance));
  assert_int_equal (provenance.kind, HM_PROVENANCE_COMPUTED);
  assert_true (hm_provenance_manual_governs (provenance));
  assert_non_null (hmui_torque_model_get_tightening (bench.model));
}

static void
units_follow_the_settings (void **state)
{
  g_auto(Bench) bench = make_bench (HMUI_UNITS_METRIC_FIRST);

  ask (bench.model, "M8", "8.8 ");
  g_object_set (bench.settings, "units", HMUI_UNITS_INCH_FIRST, NULL);
  assert_says (hmui_torque_model_dup_headline (bench.model), "lbf·ft");
  choose (bench.model, HMUI_TORQUE_CHOICE_EXTRA_UNIT, "kgf·m");
  assert_says (hmui_torque_model_dup_others (bench.model), "2.60" NBSP "kgf·m");
  choose (bench.model, HMUI_TORQUE_CHOICE_EXTRA_UNIT, "ozf·in");
  assert_says (hmui_torque_model_dup_others (bench.model), "ozf·in");
}

static void
class_has_to_be_chosen (void **state)
{
  g_auto(Bench) bench = make_bench (HMUI_UNITS_METRIC_FIRST);

  assert_int_equal (hmui_torque_model_get_state (bench.model), HMUI_TORQUE_NOTHING);
  hmui_torque_model_set_text (bench.model, HMUI_TORQUE_INPUT_THREAD, "M8");
  assert_int_equal (hmui_torque_model_get_state (bench.model), HMUI_TORQUE_NOTHING);
  assert_says (hmui_torque_model_dup_headline (bench.model), "class");
  choose (bench.model, HMUI_TORQUE_CHOICE_STRENGTH, "10.9");
  assert_int_equal (hmui_torque_model_get_state (bench.model), HMUI_TORQUE_VALUE);
  hmui_torque_model_set_text (bench.model, HMUI_TORQUE_INPUT_THREAD, "M6");
  assert_int_equal (hmui_torque_model_get_state (bench.model), HMUI_TORQUE_VALUE);   /* the class is kept */
  hmui_torque_model_set_text (bench.model, HMUI_TORQUE_INPUT_THREAD, "1/4-20");
  assert_int_equal (hmui_torque_model_get_state (bench.model), HMUI_TORQUE_NOTHING); /* no inch bolt has it */
  assert_int_equal (hmui_torque_model_get_choice (bench.model, HMUI_TORQUE_CHOICE_STRENGTH), 0);
}

static const struct bad_row { const char *name; HmuiTorqueInput input; const char *text; } bad_rows[] = {
  { "thread: words", HMUI_TORQUE_INPUT_THREAD, "the blue one" },
  { "thread: half", HMUI_TORQUE_INPUT_THREAD, "M8 x" },
  { "thread: huge", HMUI_TORQUE_INPUT_THREAD, "M99999999999" },
  { "thread: negative", HMUI_TORQUE_INPUT_THREAD, "-M8" },
  { "thread: not UTF-8", HMUI_TORQUE_INPUT_THREAD, "M8\xff\xfe" },
  { "thread: infinite", HMUI_TORQUE_INPUT_THREAD, "Minf x nan" },
  { "engaged: words", HMUI_TORQUE_INPUT_ENGAGED, "deep" },
  { "engaged: negative", HMUI_TORQUE_INPUT_ENGAGED, "-5 mm" },
  { "engaged: zero", HMUI_TORQUE_INPUT_ENGAGED, "0" },
  { "engaged: huge", HMUI_TORQUE_INPUT_ENGAGED, "1e308 mm" },
  { "engaged: ten times too long", HMUI_TORQUE_INPUT_ENGAGED, "900 mm" },
  { "engaged: a torque", HMUI_TORQUE_INPUT_ENGAGED, "12 N·m" },
  { "engaged: not UTF-8", HMUI_TORQUE_INPUT_ENGAGED, "\xc3\x28" },
  { "manual: words", HMUI_TORQUE_INPUT_MANUAL, "tight" },
  { "manual: zero", HMUI_TORQUE_INPUT_MANUAL, "0 N·m" },
  { "manual: negative", HMUI_TORQUE_INPUT_MANUAL, "-20 N·m" },
  { "manual: reversed", HMUI_TORQUE_INPUT_MANUAL, "24-20 N·m" },
  { "manual: a length", HMUI_TORQUE_INPUT_MANUAL, "20 mm" },
  { "manual: not UTF-8", HMUI_TORQUE_INPUT_MANUAL, "\xf0\x28\x8c\x28" },
};

/* One clear sentence; nothing of the last answer stays as if it were valid; mended, the answer is back. */
static void
bad_input_clears_the_answer (void **state)
{
  const struct bad_row *row = *state;
  g_auto(Bench) bench = make_bench (HMUI_UNITS_METRIC_FIRST);
  g_autofree char *good = NULL, *headline = NULL, *before = NULL;
  HmTorque torque;

  ask (bench.model, "M8", "8.8 ");
  good = hmui_torque_model_dup_headline (bench.model);
  before = g_strdup (hmui_torque_model_get_text (bench.model, row->input));
  hmui_torque_model_set_text (bench.model, row->input, row->text);
  assert_int_equal (hmui_torque_model_get_state (bench.model), HMUI_TORQUE_PROBLEM);
  assert_false (hmui_torque_model_get_torque (bench.model, &torque));
  assert_null (hmui_torque_model_get_tightening (bench.model));
  for (HmuiTorqueFact fact = 0; fact < HMUI_TORQUE_N_FACTS; fact++)
    assert_null (hmui_torque_model_dup_fact (bench.model, fact));
  headline = hmui_torque_model_dup_headline (bench.model);
  assert_true (g_utf8_validate (headline, -1, NULL) && strlen (headline) > 15 && g_str_has_suffix (headline, "."));
  hmui_torque_model_set_text (bench.model, row->input, before);
  headline = (g_free (headline), hmui_torque_model_dup_headline (bench.model));
  assert_string_equal (headline, good);
}

static void
endless_text_does_no_harm (void **state)
{
  g_auto(Bench) bench = make_bench (HMUI_UNITS_INCH_FIRST);
  g_autofree char *text = g_strnfill (100000, '9');

  ask (bench.model, "M8", "8.8 ");
  for (HmuiTorqueInput input = 0; input < HMUI_TORQUE_N_INPUTS; input++)
    hmui_torque_model_set_text (bench.model, input, text);
  assert_int_equal (hmui_torque_model_get_state (bench.model), HMUI_TORQUE_PROBLEM);
}

static void
manual_takes_its_place (void **state)
{
  g_auto(Bench) bench = make_bench (HMUI_UNITS_METRIC_FIRST);
  HmProvenance provenance;

  ask (bench.model, "M8", "8.8 ");
  hmui_torque_model_set_text (bench.model, HMUI_TORQUE_INPUT_MANUAL, "18-22");
  hmui_torque_model_set_text (bench.model, HMUI_TORQUE_INPUT_PAGE, "41");
  assert_says (hmui_torque_model_dup_headline (bench.model), "20.0" NBSP "N·m");
  assert_says (hmui_torque_model_dup_span (bench.model), "18.0–22.0" NBSP "N·m");
  assert_true (hmui_torque_model_get_provenance (bench.model, &provenance));
  assert_int_equal (provenance.kind, HM_PROVENANCE_SPEC_SHEET);
  assert_non_null (strstr (provenance.source, "41"));
  assert_says (hmui_torque_model_dup_fact (bench.model, HMUI_TORQUE_FACT_COMPUTED), "25.5" NBSP "N·m");
  assert_null (hmui_torque_model_dup_warning (bench.model));
  hmui_torque_model_set_text (bench.model, HMUI_TORQUE_INPUT_MANUAL, "60 N·m");
  assert_says (hmui_torque_model_dup_warning (bench.model), "proof load");
  hmui_torque_model_set_text (bench.model, HMUI_TORQUE_INPUT_MANUAL, "");
  assert_says (hmui_torque_model_dup_headline (bench.model), "25.5" NBSP "N·m");
}

/* Without a thread, too: a value from the manual needs none. */
static void
manual_needs_no_thread (void **state)
{
  g_auto(Bench) bench = make_bench (HMUI_UNITS_INCH_FIRST);

  hmui_torque_model_set_text (bench.model, HMUI_TORQUE_INPUT_MANUAL, "40 lbf·ft");
  assert_int_equal (hmui_torque_model_get_state (bench.model), HMUI_TORQUE_VALUE);
  assert_null (hmui_torque_model_get_tightening (bench.model));
  assert_says (hmui_torque_model_dup_headline (bench.model), "lbf·ft");
}

/* TM 9-2350-261-20-1, p. 2-29: 40 lbf·ft with a 4 in adapter on a 12 in wrench is set to 30 lbf·ft. */
static void
adapter_changes_the_setting (void **state)
{
  g_auto(Bench) bench = make_bench (HMUI_UNITS_INCH_FIRST);

  hmui_torque_model_set_text (bench.model, HMUI_TORQUE_INPUT_MANUAL, "40 lbf·ft");
  assert_null (hmui_torque_model_dup_fact (bench.model, HMUI_TORQUE_FACT_SETTING));
  hmui_torque_model_set_choice (bench.model, HMUI_TORQUE_CHOICE_ADAPTER, HMUI_TORQUE_ADAPTER_STRAIGHT);
  assert_says (hmui_torque_model_dup_fact (bench.model, HMUI_TORQUE_FACT_SETTING), "how long");
  hmui_torque_model_set_text (bench.model, HMUI_TORQUE_INPUT_ADAPTER, "4");
  hmui_torque_model_set_text (bench.model, HMUI_TORQUE_INPUT_LEVER, "12");
  assert_says (hmui_torque_model_dup_fact (bench.model, HMUI_TORQUE_FACT_SETTING), "30" NBSP "lbf·ft");
  hmui_torque_model_set_choice (bench.model, HMUI_TORQUE_CHOICE_ADAPTER, HMUI_TORQUE_ADAPTER_ANGLE);
  hmui_torque_model_set_text (bench.model, HMUI_TORQUE_INPUT_ANGLE, "90");
  assert_says (hmui_torque_model_dup_fact (bench.model, HMUI_TORQUE_FACT_SETTING), "40" NBSP "lbf·ft");
  hmui_torque_model_set_text (bench.model, HMUI_TORQUE_INPUT_ANGLE, "400");
  assert_says (hmui_torque_model_dup_fact (bench.model, HMUI_TORQUE_FACT_SETTING), "180");
  hmui_torque_model_set_text (bench.model, HMUI_TORQUE_INPUT_LEVER, "long");
  assert_non_null (hmui_torque_model_get_error (bench.model, HMUI_TORQUE_INPUT_LEVER));
  assert_null (hmui_torque_model_dup_fact (bench.model, HMUI_TORQUE_FACT_WRENCH));
}

/* ISO 6789-1: tested from 20 % up. */
static void
wrench_is_named_with_its_place (void **state)
{
  g_auto(Bench) bench = make_bench (HMUI_UNITS_INCH_FIRST);

  hmui_torque_model_set_text (bench.model, HMUI_TORQUE_INPUT_MANUAL, "20 lbf·ft");
  assert_says (hmui_torque_model_dup_fact (bench.model, HMUI_TORQUE_FACT_WRENCH), "drawer");
  assert_true (hmui_wrench_drawer_add (bench.drawer, "20-150 lbf·ft", NULL));
  assert_says (hmui_torque_model_dup_fact (bench.model, HMUI_TORQUE_FACT_WRENCH), "only 13" NBSP "%");
  assert_says (hmui_torque_model_dup_fact (bench.model, HMUI_TORQUE_FACT_WRENCH), "nobody vouches");
  assert_true (hmui_wrench_drawer_add (bench.drawer, "10-50 lbf·ft ±4 %", NULL));
  assert_says (hmui_torque_model_dup_fact (bench.model, HMUI_TORQUE_FACT_WRENCH), "at 40" NBSP "%");
  assert_says (hmui_torque_model_dup_fact (bench.model, HMUI_TORQUE_FACT_WRENCH), "10–50");
  hmui_torque_model_set_text (bench.model, HMUI_TORQUE_INPUT_MANUAL, "200 lbf·ft");
  assert_says (hmui_torque_model_dup_fact (bench.model, HMUI_TORQUE_FACT_WRENCH), "does not reach");
}

static void
drawer_is_kept_and_undone (void **state)
{
  static const char * const lines[] = { "10-50 lbf·ft", "not a wrench", "\xff", "5-25 N·m ±3 %", NULL };
  g_auto(Bench) bench = make_bench (HMUI_UNITS_METRIC_FIRST);
  g_autoptr(GError) error = NULL;
  g_auto(GStrv) kept = NULL;
  guint n;

  g_object_set (bench.settings, "torque-wrenches", lines, NULL);
  hmui_wrench_drawer_get_wrenches (bench.drawer, &n);
  assert_int_equal (n, 2);
  assert_false (hmui_wrench_drawer_add (bench.drawer, "50", &error));
  assert_non_null (error);
  hmui_wrench_drawer_remove (bench.drawer, 0);
  hmui_wrench_drawer_get_wrenches (bench.drawer, &n);
  assert_int_equal (n, 1);
  g_object_get (bench.settings, "torque-wrenches", &kept, NULL);
  assert_int_equal (g_strv_length (kept), 1);
  hmui_wrench_drawer_undo (bench.drawer);
  hmui_wrench_drawer_get_wrenches (bench.drawer, &n);
  assert_int_equal (n, 2);
  hmui_wrench_drawer_redo (bench.drawer);
  hmui_wrench_drawer_get_wrenches (bench.drawer, &n);
  assert_int_equal (n, 1);
  assert_false (hmui_wrench_drawer_can_redo (bench.drawer));
  assert_says (hmui_wrench_drawer_dup_line (bench.drawer, 0), "5.0–25.0" NBSP "N·m");
  hmui_wrench_drawer_undo (bench.drawer);
  assert_true (hmui_wrench_drawer_add (bench.drawer, "40-200 lbf·in", NULL));
  assert_false (hmui_wrench_drawer_can_redo (bench.drawer));   /* what came after is another drawer */
}

static void
what_theory_does_not_cover (void **state)
{
  g_auto(Bench) bench = make_bench (HMUI_UNITS_INCH_FIRST);
  HmProvenance provenance;

  ask (bench.model, "M8", "8.8 ");
  choose (bench.model, HMUI_TORQUE_CHOICE_JOINT, "Spark plug");
  assert_int_equal (hmui_torque_model_get_state (bench.model), HMUI_TORQUE_NOTHING);
  hmui_torque_model_set_choice (bench.model, HMUI_TORQUE_CHOICE_SPECIAL, 1);
  assert_int_equal (hmui_torque_model_get_state (bench.model), HMUI_TORQUE_VALUE);
  assert_null (hmui_torque_model_get_tightening (bench.model));
  assert_true (hmui_torque_model_get_provenance (bench.model, &provenance));
  assert_int_equal (provenance.kind, HM_PROVENANCE_COMMON_PRACTICE);
  choose (bench.model, HMUI_TORQUE_CHOICE_JOINT, "Taper fit");
  hmui_torque_model_set_choice (bench.model, HMUI_TORQUE_CHOICE_SPECIAL, 1);
  assert_int_equal (hmui_torque_model_get_state (bench.model), HMUI_TORQUE_WORDS);
  assert_says (hmui_torque_model_dup_headline (bench.model), "manual only");
  hmui_torque_model_set_choice (bench.model, HMUI_TORQUE_CHOICE_SPECIAL, 999);
  assert_int_equal (hmui_torque_model_get_state (bench.model), HMUI_TORQUE_NOTHING);
  choose (bench.model, HMUI_TORQUE_CHOICE_JOINT, "Bolt");
  choose (bench.model, HMUI_TORQUE_CHOICE_INTO, "Plastic");
  assert_int_equal (hmui_torque_model_get_state (bench.model), HMUI_TORQUE_PROBLEM);
  assert_says (hmui_torque_model_dup_headline (bench.model), "creeps");
}

static void
share_and_engagement_limit_it (void **state)
{
  g_auto(Bench) bench = make_bench (HMUI_UNITS_METRIC_FIRST);

  ask (bench.model, "M8", "8.8 ");
  choose (bench.model, HMUI_TORQUE_CHOICE_INTO, "Cast");
  assert_says (hmui_torque_model_dup_limit (bench.model), "aluminium limits");
  hmui_torque_model_set_text (bench.model, HMUI_TORQUE_INPUT_ENGAGED, "4 mm");
  assert_says (hmui_torque_model_dup_limit (bench.model), "strip first");
  assert_says (hmui_torque_model_dup_fact (bench.model, HMUI_TORQUE_FACT_WEAKEST), "hole strips");
  assert_says (hmui_torque_model_dup_fact (bench.model, HMUI_TORQUE_FACT_NEEDED), "4.0" NBSP "mm");
  hmui_torque_model_set_share_percent (bench.model, 95.0);
  assert_int_equal (hmui_torque_model_get_state (bench.model), HMUI_TORQUE_PROBLEM);
}

static void
missing_tables_are_said (void **state)
{
  g_auto(Bench) bench = make_bench (HMUI_UNITS_METRIC_FIRST);

  hmui_torque_model_set_tables (bench.model, NULL, "the knowledge file is missing");
  ask (bench.model, "M8", "Not known");
  assert_int_equal (hmui_torque_model_get_state (bench.model), HMUI_TORQUE_PROBLEM);
  assert_says (hmui_torque_model_dup_headline (bench.model), "missing");
}

/* 30, 60 and 100 %, then once round: the scheme of the table. */
static void
order_tells_passes (void **state)
{
  g_auto(Bench) bench = make_bench (HMUI_UNITS_METRIC_FIRST);
  g_autoptr(HmuiOrderModel) order = hmui_order_model_new (bench.settings);
  g_auto(GStrv) bare = NULL, passes = NULL;

  bare = hmui_order_model_dup_passes (order, TRUE);
  assert_int_equal (g_strv_length (bare), 0);
  hmui_order_model_set_tables (order, bench.tables);
  hmui_order_model_set_bolts (order, 4);
  hmui_order_model_set_torque (order, (HmTorque) { 50.0 });
  passes = hmui_order_model_dup_passes (order, TRUE);
  assert_int_equal (g_strv_length (passes), 4);
  assert_non_null (strstr (passes[0], "15.0" NBSP "N·m"));
  assert_non_null (strstr (passes[3], "round in order"));
  hmui_order_model_set_layout (order, HM_LAYOUT_TWO_ROWS);
  hmui_order_model_set_bolts (order, 7);
  assert_int_equal (hmui_order_model_get_pattern (order), HM_PATTERN_ROUND);
  assert_says (hmui_order_model_dup_note (order), "odd number");
  hmui_order_model_set_bolts (order, 4000000);
  assert_int_equal (hmui_order_model_get_sequence (order)->n_bolts, 7);
  hmui_order_model_set_layout (order, HM_LAYOUT_INLINE);
  assert_int_equal (hmui_order_model_get_pattern (order), HM_PATTERN_INLINE);
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  hm_test_suite_add_file (suite, "dry-torque.csv", NULL, headline_matches_manual);
  HM_TEST_SUITE_ADD_ROWS (suite, bad_rows, bad_input_clears_the_answer);
  hm_test_suite_add (suite, "a worked example shows in the words", worked_example_shows_in_the_words, NULL);
  hm_test_suite_add (suite, "units follow the settings", units_follow_the_settings, NULL);
  hm_test_suite_add (suite, "the class has to be chosen", class_has_to_be_chosen, NULL);
  hm_test_suite_add (suite, "endless text does no harm", endless_text_does_no_harm, NULL);
  hm_test_suite_add (suite, "the manual takes its place", manual_takes_its_place, NULL);
  hm_test_suite_add (suite, "the manual needs no thread", manual_needs_no_thread, NULL);
  hm_test_suite_add (suite, "an adapter changes the setting", adapter_changes_the_setting, NULL);
  hm_test_suite_add (suite, "a wrench is named with its place", wrench_is_named_with_its_place, NULL);
  hm_test_suite_add (suite, "the drawer is kept and undone", drawer_is_kept_and_undone, NULL);
  hm_test_suite_add (suite, "what theory does not cover", what_theory_does_not_cover, NULL);
  hm_test_suite_add (suite, "share and engagement limit it", share_and_engagement_limit_it, NULL);
  hm_test_suite_add (suite, "missing tables are said", missing_tables_are_said, NULL);
  hm_test_suite_add (suite, "the order tells its passes", order_tells_passes, NULL);
  return hm_test_suite_run (suite, "torque-model");
}

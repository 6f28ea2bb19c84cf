/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "knowledge-fixture.h"
#include <math.h>
#include <string.h>

/* A guide holds what the sample's texts say; the likelihoods were worked out by hand from data/knowledge/README.md. */

static HmGuide *
load (KnowledgeFixture *self, const char *layout)
{
  g_autoptr (HmKnowledge) knowledge = open_or_fail (self);

  return load_or_fail (knowledge, "no-spark", layout);     /* outlives the knowledge */
}

static void
assert_near (double got, double want)
{
  if (fabs (got - want) > 1e-12)
    fail_msg ("%.15g, want %.15g", got, want);
}

static const HmCheck *
check_of (const HmGuide *guide, const char *id)
{
  guint n = 0;
  int index = hm_guide_find_check (guide, id);

  assert_true (index >= 0);
  return hm_guide_get_checks (guide, &n) + index;
}

static const HmCause *
cause_of (const HmGuide *guide, const char *id)
{
  guint n = 0;
  int index = hm_guide_find_cause (guide, id);

  assert_true (index >= 0);
  return hm_guide_get_causes (guide, &n) + index;
}

static const HmAccessStep *
step_of (const HmGuide *guide, const char *id)
{
  guint n = 0;
  int index = hm_guide_find_access (guide, id);

  assert_true (index >= 0);
  return hm_guide_get_access (guide, &n) + index;
}

static void
the_complaint_is_as_written (void **state)
{
  g_autoptr (HmGuide) guide = load (*state, "rider");
  const HmComplaint *complaint = hm_guide_get_complaint (guide);

  assert_string_equal (complaint->name, "No spark");
  assert_string_equal (complaint->verify_steps[0], "Look for a spark.");
  assert_null (complaint->verify_steps[2]);
  assert_near (complaint->verify_time.minutes, 2);
  assert_near (complaint->other_share, 0.05);
  assert_near (complaint->escalate_time.minutes, 120);
  assert_string_equal (complaint->escalate, "Send the ignition out.");
  assert_int_equal (complaint->max_batch, 2);
  assert_int_equal (complaint->provenance.kind, HM_PROVENANCE_COMMON_PRACTICE);
  assert_string_equal (hm_guide_get_layout (guide)->name, "Riding mower");
}

static void
causes_are_those_of_the_layout (void **state)
{
  g_autoptr (HmGuide) rider = load (*state, "rider");
  g_autoptr (HmGuide) handheld = load (*state, "handheld");
  guint n = 0;

  hm_guide_get_causes (rider, &n);
  assert_int_equal (n, 3);
  assert_near (cause_of (rider, "kill-wire-grounded")->rate, 6);
  assert_near (cause_of (rider, "coil-failed")->rate, 2);
  assert_near (cause_of (rider, "key-sheared")->rate, 0.7);
  hm_guide_get_causes (handheld, &n);
  assert_int_equal (n, 2);
  assert_near (cause_of (handheld, "kill-wire-grounded")->rate, 2);
  assert_int_equal (hm_guide_find_cause (handheld, "key-sheared"), -1);
}

static void
a_cause_is_as_written (void **state)
{
  g_autoptr (HmGuide) guide = load (*state, "rider");
  const HmCause *cause = cause_of (guide, "kill-wire-grounded");

  assert_string_equal (cause->detail, "The coil is shorted all the time.");
  assert_string_equal (cause->look_also[0], "Other chafed wires");
  assert_null (cause->look_also[1]);
  assert_string_equal (cause->tell_owner, "A wire had rubbed through.");
  assert_null (cause_of (guide, "coil-failed")->tell_owner);
  assert_null (cause_of (guide, "coil-failed")->look_also[0]);
}

static void
a_remedy_takes_what_its_layout_says (void **state)
{
  g_autoptr (HmGuide) rider = load (*state, "rider");
  g_autoptr (HmGuide) handheld = load (*state, "handheld");
  const HmRemedy *on_rider = cause_of (rider, "kill-wire-grounded")->remedy;
  const HmRemedy *on_handheld = cause_of (handheld, "kill-wire-grounded")->remedy;

  assert_near (on_rider->time.minutes, 5);
  assert_near (on_handheld->time.minutes, 8);
  assert_string_equal (on_rider->steps[0], "Route the wire clear.");
  assert_string_equal (on_handheld->steps[0], "Route the wire clear of the lever.");
  assert_int_equal (on_rider->n_access, 1);
  assert_int_equal (on_rider->access[0], hm_guide_find_access (rider, "shroud-off"));
  assert_int_equal (on_handheld->access[0], hm_guide_find_access (handheld, "cover-off"));
  assert_string_equal (on_rider->cautions[0]->id, "edges");
  assert_null (on_rider->cautions[1]);
}

static void
a_remedy_is_as_written (void **state)
{
  g_autoptr (HmGuide) rider = load (*state, "rider");
  g_autoptr (HmGuide) handheld = load (*state, "handheld");
  const HmRemedy *remedy = cause_of (rider, "coil-failed")->remedy;

  assert_string_equal (remedy->parts[0], "Ignition coil");
  assert_string_equal (remedy->after[0], "Set the gap");
  assert_string_equal (remedy->tools[0]->name, "Multimeter");
  assert_string_equal (remedy->fasteners[0]->id, "shroud-bolt");
  assert_null (cause_of (handheld, "coil-failed")->remedy->fasteners[0]);
}

static void
access_steps_are_as_written (void **state)
{
  g_autoptr (HmGuide) guide = load (*state, "rider");
  const HmAccessStep *shroud = step_of (guide, "shroud-off"), *hood = step_of (guide, "hood-open");
  guint n = 0;

  hm_guide_get_access (guide, &n);
  assert_int_equal (n, 3);
  assert_string_equal (shroud->steps[1], "Lift the housing.");
  assert_near (shroud->open.minutes, 4);
  assert_near (shroud->close.minutes, 5);     /* 300 s */
  assert_true (shroud->requires == (HmAccessSet) 1 << hm_guide_find_access (guide, "hood-open"));
  assert_true (hood->requires == 0);
  assert_true (shroud->blocks_verify);
  assert_false (hood->blocks_verify);
  assert_string_equal (shroud->photo, "How the wires run");
  assert_string_equal (shroud->put_back, "Clear the fins.");
  assert_null (hood->photo);
  assert_string_equal (shroud->cautions[0]->id, "edges");
  assert_string_equal (shroud->cautions[1]->id, "spark");
  assert_true (shroud->cautions[1]->serious);
  assert_false (shroud->cautions[0]->serious);
  assert_string_equal (shroud->cautions[1]->defer, "The machine's manual");
}

static void
a_fastener_is_as_written (void **state)
{
  g_autoptr (HmGuide) guide = load (*state, "rider");
  const HmFastener *bolt = step_of (guide, "shroud-off")->fasteners[0];

  assert_string_equal (bolt->where, "Around the blower housing");
  assert_int_equal (bolt->count, 4);
  assert_true (bolt->has_thread);
  assert_int_equal (bolt->thread.form, HM_THREAD_UNIFIED);
  assert_near (bolt->thread.major.mm, 6.35);
  assert_near (bolt->thread.pitch.mm, 1.27);
  assert_string_equal (bolt->strength, "SAE 5");
  assert_int_equal (bolt->n_drives, 2);
  assert_int_equal (bolt->drives[0].kind, HM_DRIVE_HEX);
  assert_near (bolt->drives[0].size.mm, 9.525);
  assert_int_equal (bolt->drives[1].number, 30);
  assert_int_equal (bolt->torque_basis, HM_TORQUE_RANGE);
  assert_int_equal (bolt->torque.low.unit, HM_UNIT_POUND_INCH);
  assert_near (hm_quantity_in (bolt->torque.high, HM_UNIT_POUND_INCH), 70);
  assert_int_equal (bolt->friction, HM_FRICTION_OILED);
  assert_int_equal (bolt->into, HM_MATERIAL_ALUMINIUM_CAST);
  assert_int_equal (bolt->pattern, HM_PATTERN_CROSS);
}

static void
pins_and_computed_torques_are_as_written (void **state)
{
  g_autoptr (HmGuide) rider = load (*state, "rider");
  g_autoptr (HmGuide) handheld = load (*state, "handheld");
  const HmFastener *pin = step_of (rider, "hood-open")->fasteners[0];
  const HmFastener *screw = step_of (handheld, "cover-off")->fasteners[0];

  assert_false (pin->has_thread);
  assert_int_equal (pin->drives[0].kind, HM_DRIVE_HAND);
  assert_int_equal (pin->torque_basis, HM_TORQUE_BY_HAND);
  assert_string_equal (pin->strength, "");
  assert_int_equal (screw->torque_basis, HM_TORQUE_COMPUTED);
  assert_int_equal (screw->torque_provenance.kind, HM_PROVENANCE_COMPUTED);
  assert_near (screw->thread.pitch.mm, 0.8);     /* M5 coarse, ISO 261 */
  assert_int_equal (screw->friction, HM_FRICTION_DRY);
  assert_int_equal (screw->into, HM_MATERIAL_STEEL);
  assert_int_equal (screw->pattern, HM_PATTERN_NONE);
}

static void
checks_are_those_of_the_layout (void **state)
{
  g_autoptr (HmGuide) rider = load (*state, "rider");
  g_autoptr (HmGuide) handheld = load (*state, "handheld");
  guint n = 0;

  hm_guide_get_checks (rider, &n);
  assert_int_equal (n, 3);
  hm_guide_get_checks (handheld, &n);
  assert_int_equal (n, 2);
  assert_int_equal (hm_guide_find_check (handheld, "key-step"), -1);
}

static void
a_check_is_as_written (void **state)
{
  g_autoptr (HmGuide) rider = load (*state, "rider");
  g_autoptr (HmGuide) handheld = load (*state, "handheld");
  const HmCheck *check = check_of (rider, "spark");

  assert_string_equal (check->steps[1], "Pull it over.");
  assert_near (check->time.minutes, 2);
  assert_string_equal (check->tools[0]->id, "spark-tester");
  assert_string_equal (check->cautions[0]->id, "spark");
  assert_int_equal (check->n_access, 1);
  assert_int_equal (check->access[0], hm_guide_find_access (rider, "plug-lead-off"));
  assert_int_equal (check->n_closed, 1);
  assert_int_equal (check->closed[0], hm_guide_find_access (rider, "shroud-off"));
  assert_false (check->is_reading);
  assert_null (check->picture);
  assert_int_equal (check->n_findings, 3);
  assert_string_equal (check->findings[2].name, "None");
  assert_string_equal (check->findings[2].means, "No voltage reaches the plug.");
  assert_int_equal (hm_check_find_finding (check, "weak"), 1);
  assert_int_equal (hm_check_find_finding (check, "blue"), -1);
  assert_int_equal (check_of (handheld, "spark")->n_access, 0);
  assert_int_equal (check_of (handheld, "spark")->n_closed, 0);
}

static void
a_reading_where_high_is_normal (void **state)
{
  g_autoptr (HmGuide) rider = load (*state, "rider");
  g_autoptr (HmGuide) handheld = load (*state, "handheld");
  const HmCheck *check = check_of (rider, "coil-ohms");

  assert_true (check->is_reading && check->normal_above);
  assert_int_equal (check->kind, HM_QUANTITY_RESISTANCE);
  assert_int_equal (check->unit, HM_UNIT_KILOOHM);
  assert_near (check->edges[0], 2500);     /* the Low of each, in ohms */
  assert_near (check->edges[1], 1000);
  assert_string_equal (check->limits[0]->id, "coil-low");
  assert_true (check->limits[0]->has_high && !check->limits[1]->has_high);
  assert_string_equal (check->limits[1]->applies, "Sample coil, cold");
  assert_string_equal (check->limits[1]->provenance.source, "Sample handbook, page 7 (excerpt read)");
  assert_null (check->limits[2]);
  assert_near (check->meter_sd, 20);
  assert_string_equal (check->picture, "ignition");
  assert_string_equal (check->red_point, "kill-terminal");
  assert_string_equal (check->black_point, "frame");
  assert_near (check->time.minutes, 6);
  assert_near (check_of (handheld, "coil-ohms")->time.minutes, 3);
}

static void
a_reading_where_low_is_normal (void **state)
{
  g_autoptr (HmGuide) guide = load (*state, "rider");
  const HmCheck *check = check_of (guide, "key-step");

  assert_true (check->is_reading && !check->normal_above);
  assert_near (check->edges[0], 0.1);     /* the High of each, in millimetres */
  assert_near (check->edges[1], 0.5);
  assert_near (check->meter_sd, 0.02);
}

/* One row, one column of a likelihood table. NULL for cause: something not listed. */
struct column_row { const char *name, *layout, *check, *cause; double want[3]; };
static const struct column_row column_rows[] = {
  { "likelihood: default", "rider", "spark", "kill-wire-grounded", { 0.10, 0.30, 0.60 } },
  { "likelihood: rest by the default", "rider", "spark", "key-sheared", { 0.97, 0.01, 0.02 } },
  { "likelihood: own row", "rider", "coil-ohms", "coil-failed", { 0.10, 0.30, 0.60 } },
  { "likelihood: other has a row", "rider", "coil-ohms", NULL, { 0.85, 0.12, 0.03 } },
  { "likelihood: other is a mixture, rider", "rider", "spark", NULL,
    { (8 * 0.10 + 0.7 * 0.97) / 8.7, (8 * 0.30 + 0.7 * 0.01) / 8.7, (8 * 0.60 + 0.7 * 0.02) / 8.7 } },
  { "likelihood: other is a mixture, handheld", "handheld", "spark", NULL, { 0.10, 0.30, 0.60 } },
  { "likelihood: default without the named", "rider", "key-step", "coil-failed", { 0.97, 0.015, 0.015 } },
  { "likelihood: rest by a default of two", "rider", "key-step", "key-sheared",
    { 0.15 * 97 / 98.5, 0.15 * 1.5 / 98.5, 0.85 } },
};

/* Where the hand-made shares lie below the floor: raised to 0.005, the others shrunk in proportion. */
static void
floored (const double *shares, double *out)
{
  double low = 0, rest = 0;

  for (int k = 0; k < 3; k++)
    if (shares[k] < 0.005)
      low += 0.005;
    else
      rest += shares[k];
  for (int k = 0; k < 3; k++)
    out[k] = shares[k] < 0.005 ? 0.005 : shares[k] * (1 - low) / rest;
}

static void
column_is_as_worked_out (void **state)
{
  const struct column_row *row = *state;
  g_autoptr (KnowledgeFixture) fixture = knowledge_fixture_new ();
  g_autoptr (HmGuide) guide = load (fixture, row->layout);
  const HmCheck *check = check_of (guide, row->check);
  double want[3];
  guint n = 0, column;

  hm_guide_get_causes (guide, &n);
  column = row->cause != NULL ? (guint) hm_guide_find_cause (guide, row->cause) : n;
  floored (row->want, want);
  for (guint k = 0; k < 3; k++)
    assert_near (check->likelihood[k * (n + 1) + column], want[k]);
}

static void
every_column_is_a_distribution_above_the_floor (void **state)
{
  g_autoptr (HmGuide) guide = load (*state, "rider");
  guint n_causes = 0, n_checks = 0;
  const HmCheck *checks = hm_guide_get_checks (guide, &n_checks);

  hm_guide_get_causes (guide, &n_causes);
  for (guint c = 0; c < n_checks; c++)
    for (guint i = 0; i <= n_causes; i++)
      {
        double sum = 0;
        for (guint k = 0; k < checks[c].n_findings; k++)
          {
            double share = checks[c].likelihood[k * (n_causes + 1) + i];
            assert_true (share >= 0.005 - 1e-15 && share < 1);
            sum += share;
          }
        assert_near (sum, 1);
      }
}

static void
incidents_are_as_written (void **state)
{
  g_autoptr (HmGuide) guide = load (*state, "rider");
  guint n = 0;
  const HmIncident *incidents = hm_guide_get_incidents (guide, &n);
  const HmIncident *struck = &incidents[hm_guide_find_incident (guide, "struck-object")];
  const HmIncident *washed = &incidents[hm_guide_find_incident (guide, "washed")];

  assert_int_equal (n, 2);
  assert_near (struck->adds[hm_guide_find_cause (guide, "key-sheared")], 0.37);
  assert_near (struck->adds[hm_guide_find_cause (guide, "coil-failed")], 0.04);
  assert_near (struck->adds[hm_guide_find_cause (guide, "kill-wire-grounded")], 0);
  assert_near (washed->adds[hm_guide_find_cause (guide, "kill-wire-grounded")], 0.16);
  assert_string_equal (struck->inspect[1], "Crankshaft");
  assert_string_equal (struck->avoid[0], "Walk the lawn first.");
  assert_string_equal (struck->proof, "The shaft runs true.");
  assert_string_equal (struck->cautions[0]->id, "edges");
  assert_null (washed->proof);
}

static void
an_incident_leaves_out_causes_of_other_layouts (void **state)
{
  g_autoptr (HmGuide) guide = load (*state, "handheld");
  guint n = 0;
  const HmIncident *incidents = hm_guide_get_incidents (guide, &n);

  assert_int_equal (n, 2);     /* both still raise a cause that a handheld has */
  assert_near (incidents[hm_guide_find_incident (guide, "struck-object")].adds[hm_guide_find_cause (guide, "coil-failed")], 0.04);
}

static void
an_empty_value_for_a_layout_means_nothing (void **state)
{
  KnowledgeFixture *self = *state;
  g_autoptr (HmGuide) rider = NULL, handheld = NULL;

  edit_file (self, "knowledge/complaints/no-spark/checks.txt", "Tools=spark-tester", "Tools=spark-tester\nTools-handheld=");
  rider = load (self, "rider");
  handheld = load (self, "handheld");
  assert_string_equal (check_of (rider, "spark")->tools[0]->id, "spark-tester");
  assert_null (check_of (handheld, "spark")->tools[0]);
}

#define CASE(function) cmocka_unit_test_setup_teardown (function, knowledge_fixture_set_up, knowledge_fixture_tear_down)

static const struct CMUnitTest cases[] = {
  CASE (the_complaint_is_as_written),
  CASE (causes_are_those_of_the_layout),
  CASE (a_cause_is_as_written),
  CASE (a_remedy_takes_what_its_layout_says),
  CASE (a_remedy_is_as_written),
  CASE (access_steps_are_as_written),
  CASE (a_fastener_is_as_written),
  CASE (pins_and_computed_torques_are_as_written),
  CASE (checks_are_those_of_the_layout),
  CASE (a_check_is_as_written),
  CASE (a_reading_where_high_is_normal),
  CASE (a_reading_where_low_is_normal),
  CASE (every_column_is_a_distribution_above_the_floor),
  CASE (incidents_are_as_written),
  CASE (an_incident_leaves_out_causes_of_other_layouts),
  CASE (an_empty_value_for_a_layout_means_nothing),
};

int
main (int argc, char **argv)
{
  struct CMUnitTest tests[G_N_ELEMENTS (cases) + G_N_ELEMENTS (column_rows)];

  knowledge_fixture_set_arguments (argc, argv);
  memcpy (tests, cases, sizeof cases);
  for (gsize i = 0; i < G_N_ELEMENTS (column_rows); i++)
    tests[G_N_ELEMENTS (cases) + i] = (struct CMUnitTest) {
      column_rows[i].name, column_is_as_worked_out, .initial_state = (void *) &column_rows[i] };
  return cmocka_run_group_tests_name ("guide", tests, NULL, NULL);
}

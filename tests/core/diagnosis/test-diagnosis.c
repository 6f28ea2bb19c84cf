/* SPDX-License-Identifier: GPL-3.0-or-later */
/*
 * Whole diagnoses on the shipped knowledge, one reported test for each complaint and layout: what holds for any true
 * cause and any answers. No outside source: these are properties of the method (design: always ends, never asks twice,
 * promise kept on average).
 */
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <string.h>
#include <cmocka.h>

#include "hm-diagnosis.h"

#define MOST_STEPS 150u
#define SIMULATED_JOBS 50u
#define RANDOM_WALKS 10u
#define LIGHT 10u          /* under valgrind or a sanitizer (HALFMOON_TEST_LIGHT) a tenth of the work finds the same faults */

typedef struct { HmKnowledge *knowledge; const char *complaint, *layout; } Place;

static guint
amount (guint full)
{
  return g_getenv ("HALFMOON_TEST_LIGHT") != NULL ? MAX (full / LIGHT, 1) : full;
}

static HmDiagnosis *
start (const Place *place)
{
  g_autoptr (GError) error = NULL;
  HmDiagnosis *diagnosis = hm_diagnosis_new (place->knowledge, place->complaint, place->layout, &error);

  if (diagnosis == NULL)
    fail_msg ("%s on %s: %s", place->complaint, place->layout, error->message);
  return diagnosis;
}

static guint
draw (GRand *rand, const HmModel *model, guint check, guint cause)
{
  double x = g_rand_double (rand);

  for (guint o = 0; o + 1 < model->checks[check].n_outcomes; o++)
    if ((x -= hm_model_likelihood (model, check, o, cause)) < 0)
      return o;
  return model->checks[check].n_outcomes - 1;
}

static guint
likeliest (const HmModel *model, guint check, guint cause)
{
  guint best = 0;

  for (guint o = 1; o < model->checks[check].n_outcomes; o++)
    if (hm_model_likelihood (model, check, o, cause) > hm_model_likelihood (model, check, best, cause))
      best = o;
  return best;
}

/* A number inside the band of a finding. */
static HmQuantity
reading_in_band (const HmCheck *check, guint finding)
{
  double step = check->normal_above ? -1 : 1, value;

  if (finding == 0)
    value = check->edges[0] - step * 6 * check->meter_sd;
  else if (finding == check->n_findings - 1)
    value = check->edges[finding - 1] + step * 6 * check->meter_sd;
  else
    value = (check->edges[finding - 1] + check->edges[finding]) / 2;
  return hm_quantity (check->kind, value, HM_UNIT_NONE);
}

static gboolean
repairs (const HmAction *action, guint cause)
{
  for (guint k = 0; k < action->n_causes; k++)
    if (action->causes[k] == cause)
      return TRUE;
  return FALSE;
}

/* Takes the advised step as a machine with @cause would answer it; findings are drawn, or the likeliest without @rand. */
static void
take_step (HmDiagnosis *diagnosis, guint cause, GRand *rand)
{
  HmAction action = hm_diagnosis_get_advice (diagnosis)->action;
  const HmModel *model = hm_diagnosis_get_model (diagnosis);

  if (action.kind == HM_ACTION_ESCALATE)
    {
      hm_diagnosis_send_out (diagnosis);
      return;
    }
  if (action.kind == HM_ACTION_REPAIR)
    {
      hm_diagnosis_begin_repair (diagnosis, action.causes, action.n_causes);
      hm_diagnosis_finish_repair (diagnosis, repairs (&action, cause) ? HM_REPAIR_FIXED : HM_REPAIR_PERSISTS);
      return;
    }
  hm_diagnosis_answer (diagnosis, action.check, rand != NULL ? draw (rand, model, action.check, cause) : likeliest (model, action.check, cause));
}

static double
minutes_of (HmDiagnosis *diagnosis)
{
  const HmEntry *last = hm_diagnosis_get_entry (diagnosis, hm_diagnosis_get_n_entries (diagnosis) - 1);

  return hm_diagnosis_get_minutes_spent (diagnosis).minutes
         + (last->kind == HM_ENTRY_SENT_OUT ? hm_diagnosis_get_model (diagnosis)->other_minutes : 0);
}

static void
every_cause_is_found (void **state)
{
  g_autoptr (HmDiagnosis) first = start (*state);
  guint n = amount (hm_diagnosis_get_model (first)->n_causes);

  for (guint cause = 0; cause < n; cause++)
    {
      g_autoptr (HmDiagnosis) diagnosis = start (*state);
      guint steps = 0;
      while (hm_diagnosis_get_phase (diagnosis) != HM_PHASE_CLOSED && steps++ < MOST_STEPS)
        take_step (diagnosis, cause, NULL);
      const HmEntry *last = hm_diagnosis_get_entry (diagnosis, hm_diagnosis_get_n_entries (diagnosis) - 1);
      if (last->kind != HM_ENTRY_REPAIR || last->result != HM_REPAIR_FIXED)
        fail_msg ("%s was not found in %u steps", hm_diagnosis_get_model (diagnosis)->causes[cause].id, steps);
    }
}

/* The mean of simulated jobs stays under the minutes promised at the start (design §5.5). */
static void
promise_holds_on_average (void **state)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (20260115);
  double sum = 0, squares = 0, promised = 0;
  guint jobs = amount (SIMULATED_JOBS);

  for (guint job = 0; job < jobs; job++)
    {
      g_autoptr (HmDiagnosis) diagnosis = start (*state);
      const HmModel *model = hm_diagnosis_get_model (diagnosis);
      double x = g_rand_double (rand);
      guint cause = 0, steps = 0;
      while (cause < model->n_causes && (x -= model->causes[cause].prior) >= 0)
        cause++;
      promised = hm_diagnosis_get_advice (diagnosis)->expected_minutes;
      while (hm_diagnosis_get_phase (diagnosis) != HM_PHASE_CLOSED && steps++ < MOST_STEPS)
        take_step (diagnosis, cause, rand);
      assert_int_equal (hm_diagnosis_get_phase (diagnosis), HM_PHASE_CLOSED);
      sum += minutes_of (diagnosis);
      squares += minutes_of (diagnosis) * minutes_of (diagnosis);
    }
  sum /= jobs;
  squares = sqrt (MAX (squares / jobs - sum * sum, 0) / jobs);
  print_message ("# promised %.1f min, %u jobs took %.1f ± %.1f min\n", promised, jobs, sum, squares);
  assert_true (jobs < SIMULATED_JOBS || sum <= promised + 3 * squares);
}

static void
end_with (void **state, void (*answer) (HmDiagnosis *diagnosis, guint check))
{
  g_autoptr (HmDiagnosis) diagnosis = start (*state);
  guint steps = 0;

  while (hm_diagnosis_get_phase (diagnosis) != HM_PHASE_CLOSED)
    {
      HmAction action = hm_diagnosis_get_advice (diagnosis)->action;
      assert_true (steps++ < MOST_STEPS);
      if (action.kind == HM_ACTION_CHECK)
        answer (diagnosis, action.check);
      else
        take_step (diagnosis, G_MAXUINT, NULL);
    }
}

static void
all_not_sure_ends (void **state)
{
  end_with (state, hm_diagnosis_answer_unsure);
}

static void
all_cannot_ends (void **state)
{
  end_with (state, hm_diagnosis_answer_cannot);
}

static void
random_step (HmDiagnosis *diagnosis, GRand *rand)
{
  HmAction action = hm_diagnosis_get_advice (diagnosis)->action;
  const HmModel *model = hm_diagnosis_get_model (diagnosis);
  guint n, dice = (guint) g_rand_int_range (rand, 0, 10);

  if (hm_diagnosis_get_phase (diagnosis) == HM_PHASE_REPAIRING)     /* an undo can take back just the proof */
    hm_diagnosis_finish_repair (diagnosis, HM_REPAIR_PERSISTS);
  else if (dice == 0 && hm_diagnosis_can_undo (diagnosis))
    hm_diagnosis_undo (diagnosis);
  else if (action.kind != HM_ACTION_CHECK)
    take_step (diagnosis, G_MAXUINT, rand);
  else if (dice == 1)
    hm_diagnosis_answer_unsure (diagnosis, action.check);
  else if (dice == 2)
    hm_diagnosis_answer_cannot (diagnosis, action.check);
  else
    {
      const HmCheck *check = &hm_guide_get_checks (hm_diagnosis_get_guide (diagnosis), &n)[action.check];
      guint finding = (guint) g_rand_int_range (rand, 0, (gint32) model->checks[action.check].n_outcomes);
      if (check->is_reading && dice > 5)
        assert_true (hm_diagnosis_answer_reading (diagnosis, action.check, reading_in_band (check, finding), NULL));
      else
        hm_diagnosis_answer (diagnosis, action.check, finding);
    }
}

static void
assert_sound (HmDiagnosis *diagnosis)
{
  const HmModel *model = hm_diagnosis_get_model (diagnosis);
  HmAction action = hm_diagnosis_get_advice (diagnosis)->action;
  double sum = 0;

  for (guint i = 0; i <= model->n_causes; i++)
    sum += hm_diagnosis_get_probability (diagnosis, i);
  assert_true (fabs (sum - 1) < 1e-9);
  for (guint i = 0; i < hm_diagnosis_get_n_entries (diagnosis); i++)
    {
      const HmEntry *entry = hm_diagnosis_get_entry (diagnosis, i);
      if (entry->kind <= HM_ENTRY_CANNOT && action.kind == HM_ACTION_CHECK)
        assert_true (entry->check != action.check);
    }
}

static void
random_walks_end_and_never_ask_twice (void **state)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (7);

  for (guint walk = 0; walk < amount (RANDOM_WALKS); walk++)
    {
      g_autoptr (HmDiagnosis) diagnosis = start (*state);
      guint steps = 0;
      while (hm_diagnosis_get_phase (diagnosis) != HM_PHASE_CLOSED)
        {
          assert_true (steps++ < 3 * MOST_STEPS);
          random_step (diagnosis, rand);
          assert_sound (diagnosis);
        }
    }
}

static void
undo_brings_everything_back (void **state)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (11);
  g_autoptr (HmDiagnosis) diagnosis = start (*state);
  g_autofree char *before = hm_diagnosis_to_json (diagnosis), *after = NULL, *redone = NULL, *end = NULL;

  hm_diagnosis_set_replaced (diagnosis, 0, TRUE);
  for (guint i = 0; i < 6 && hm_diagnosis_get_phase (diagnosis) != HM_PHASE_CLOSED; i++)
    take_step (diagnosis, 0, rand);
  end = hm_diagnosis_to_json (diagnosis);
  while (hm_diagnosis_can_undo (diagnosis))
    hm_diagnosis_undo (diagnosis);
  after = hm_diagnosis_to_json (diagnosis);
  assert_string_equal (before, after);
  while (hm_diagnosis_can_redo (diagnosis))
    hm_diagnosis_redo (diagnosis);
  redone = hm_diagnosis_to_json (diagnosis);
  assert_string_equal (end, redone);
}

static void
record_round_trips (void **state)
{
  const Place *place = *state;
  g_autoptr (GRand) rand = g_rand_new_with_seed (13);
  g_autoptr (HmDiagnosis) diagnosis = start (place), again = NULL;
  g_autofree char *record = NULL, *copy = NULL, *lost = NULL;
  g_autoptr (GError) error = NULL;

  hm_diagnosis_set_replaced (diagnosis, 0, TRUE);
  for (guint i = 0; i < 12 && hm_diagnosis_get_phase (diagnosis) != HM_PHASE_CLOSED; i++)
    random_step (diagnosis, rand);
  hm_diagnosis_set_tick (diagnosis, "caution:sample", TRUE);
  hm_diagnosis_set_text (diagnosis, "cause", "own words: “ä”");
  record = hm_diagnosis_to_json (diagnosis);
  again = hm_diagnosis_new_from_json (place->knowledge, record, &lost, &error);
  assert_non_null (again);
  assert_string_equal (lost, "");
  copy = hm_diagnosis_to_json (again);
  assert_string_equal (record, copy);
  assert_true (hm_diagnosis_get_tick (again, "caution:sample"));
  assert_true (hm_diagnosis_get_minutes_spent (again).minutes == hm_diagnosis_get_minutes_spent (diagnosis).minutes);
}

static void
what_the_knowledge_lost_is_reported (void **state)
{
  const Place *place = *state;
  g_autofree char *lost = NULL, *text = g_strdup_printf (
    "{\"format\":\"halfmoon-trail/1\",\"complaint\":\"%s\",\"layout\":\"%s\",\"incidents\":[\"gone-incident\"],"
    "\"entries\":[{\"kind\":\"finding\",\"check\":\"gone-check\",\"finding\":\"x\"}]}", place->complaint, place->layout);
  g_autoptr (HmDiagnosis) diagnosis = hm_diagnosis_new_from_json (place->knowledge, text, &lost, NULL);

  assert_non_null (diagnosis);
  assert_string_equal (lost, "gone-incident\ngone-check\n");
  assert_int_equal (hm_diagnosis_get_n_entries (diagnosis), 0);
}

static void
every_number_has_a_next_step (void **state)
{
  g_autoptr (HmDiagnosis) diagnosis = start (*state);
  const HmModel *model = hm_diagnosis_get_model (diagnosis);
  HmBranch branches[HM_MODEL_MAX_OUTCOMES];

  for (guint check = 0; check < model->n_checks; check++)
    {
      double sum = 0;
      guint n = hm_diagnosis_get_branches (diagnosis, check, branches);
      for (guint i = 0; i < n; i++)
        sum += branches[i].probability;
      assert_true (fabs (sum - 1) < 1e-9);
    }
}

static void
write_up_names_the_repair (void **state)
{
  g_autoptr (HmDiagnosis) diagnosis = start (*state);
  guint n, cause = 0;
  const HmCause *causes = hm_guide_get_causes (hm_diagnosis_get_guide (diagnosis), &n);
  g_autoptr (HmWriteUp) text = NULL;

  hm_diagnosis_begin_repair (diagnosis, &cause, 1);
  hm_diagnosis_finish_repair (diagnosis, HM_REPAIR_FIXED);
  text = hm_diagnosis_write_up (diagnosis, &hm_format_default, NULL);
  assert_non_null (strstr (text->cause, causes[0].name));
  assert_non_null (strstr (text->correction, causes[0].remedy->name));
}

static void
wrong_kind_of_reading_is_refused (void **state)
{
  g_autoptr (HmDiagnosis) diagnosis = start (*state);
  guint n;
  const HmCheck *checks = hm_guide_get_checks (hm_diagnosis_get_guide (diagnosis), &n);
  g_autoptr (GError) error = NULL;

  assert_false (hm_diagnosis_answer_reading (diagnosis, 0, hm_quantity (HM_QUANTITY_SPEED, 3600, HM_UNIT_RPM), &error));
  assert_true (g_error_matches (error, HM_QUANTITY_ERROR, HM_QUANTITY_ERROR_UNIT));
  assert_non_null (strstr (error->message, checks[0].name));
  assert_int_equal (hm_diagnosis_get_n_entries (diagnosis), 0);
}

static const struct { const char *what; CMUnitTestFunction run; } each[] = {
  { "every cause is found", every_cause_is_found },
  { "promise holds on average", promise_holds_on_average },
  { "all not sure ends", all_not_sure_ends },
  { "all cannot ends", all_cannot_ends },
  { "random walks end and never ask twice", random_walks_end_and_never_ask_twice },
  { "undo brings everything back", undo_brings_everything_back },
  { "record round trips", record_round_trips },
  { "what the knowledge lost is reported", what_the_knowledge_lost_is_reported },
  { "branches sum to one", every_number_has_a_next_step },
  { "write-up names the repair", write_up_names_the_repair },
  { "wrong kind of reading is refused", wrong_kind_of_reading_is_refused },
};

static void
add_place (GArray *tests, GPtrArray *places, HmKnowledge *knowledge, const char *complaint, const char *layout)
{
  Place *place = g_new (Place, 1);

  *place = (Place) { knowledge, complaint, layout };
  g_ptr_array_add (places, place);
  for (gsize i = 0; i < G_N_ELEMENTS (each); i++)
    {
      struct CMUnitTest test = { g_strdup_printf ("%s on %s: %s", complaint, layout, each[i].what), each[i].run, NULL, NULL, place };
      g_array_append_val (tests, test);
    }
}

int
main (int argc, char **argv)
{
  g_autoptr (GError) error = NULL;
  HmKnowledge *knowledge = hm_knowledge_open (g_getenv ("HALFMOON_TEST_KNOWLEDGE"), &error);
  GArray *tests = g_array_new (FALSE, TRUE, sizeof (struct CMUnitTest));
  GPtrArray *places = g_ptr_array_new_with_free_func (g_free);
  guint n_complaints, n_layouts;
  const HmComplaint *complaints;
  const HmLayout *layouts;
  int failed;

  if (argc != 2)
    g_error ("usage: test-diagnosis COMPLAINT");
  if (knowledge == NULL)
    g_error ("%s", error->message);
  complaints = hm_knowledge_get_complaints (knowledge, &n_complaints);
  layouts = hm_knowledge_get_layouts (knowledge, &n_layouts);
  for (guint c = 0; c < n_complaints; c++)
    for (guint l = 0; l < n_layouts; l++)
      if (strcmp (complaints[c].id, argv[1]) == 0 && hm_knowledge_covers (knowledge, complaints[c].id, layouts[l].id))
        add_place (tests, places, knowledge, complaints[c].id, layouts[l].id);
  g_assert (places->len > 0);
  failed = _cmocka_run_group_tests ("diagnosis", (const struct CMUnitTest *) (gpointer) tests->data, tests->len, NULL, NULL);
  for (guint i = 0; i < tests->len; i++)
    g_free ((char *) g_array_index (tests, struct CMUnitTest, i).name);
  g_array_unref (tests);
  g_ptr_array_unref (places);
  hm_knowledge_unref (knowledge);
  return failed;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
/*
 * The posterior against reference models whose posteriors were computed by two independent exact solvers (see
 * vectors/diagnosis/README.md). Invented numbers; what is checked is the arithmetic.
 */
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <cmocka.h>

#include "reference.h"

#define POSTERIOR_TOLERANCE 1e-9
#define DECIBAN_TOLERANCE 1e-6

static const char *
cause_id (const HmModel *model, guint i)
{
  return i < model->n_causes ? model->causes[i].id : "_other";
}

static void
posterior_matches (void **state)
{
  const ReferenceCase *c = *state;
  const HmModel *model = c->reference->model;
  JsonObject *wanted = json_object_get_object_member (c->expected, "posterior");
  HmBelief belief;
  double sum = 0;

  hm_belief_compute (model, (const HmEvidence *) (gpointer) c->events->data, c->events->len, &belief, NULL);
  for (guint i = 0; i <= model->n_causes; i++)
    {
      double want = json_object_get_double_member (wanted, cause_id (model, i));
      sum += belief.p[i];
      if (fabs (want - belief.p[i]) > POSTERIOR_TOLERANCE)
        fail_msg ("%s: %s is %.12f, want %.12f", c->name, cause_id (model, i), belief.p[i], want);
    }
  assert_true (fabs (sum - 1) < 1e-12);
  assert_true (fabs (belief.log_evidence - json_object_get_double_member (c->expected, "log_evidence")) < 1e-9);
  assert_true (fabs (hm_belief_entropy_bits (model, &belief) - json_object_get_double_member (c->expected, "entropy_bits")) < 1e-9);
}

static void
open_steps_match (void **state)
{
  const ReferenceCase *c = *state;
  const HmModel *model = c->reference->model;
  JsonArray *wanted = json_object_get_array_member (c->expected, "open");
  HmBelief belief;
  HmModelSet set = 0;

  hm_belief_compute (model, (const HmEvidence *) (gpointer) c->events->data, c->events->len, &belief, NULL);
  for (guint i = 0; i < json_array_get_length (wanted); i++)
    set |= G_GUINT64_CONSTANT (1) << hm_model_find_access (model, json_array_get_string_element (wanted, i));
  assert_true (belief.open == set);
}

/* The reference lists steps for every event but incidents and "cannot". */
static gboolean
is_listed (const HmEvidence *event)
{
  return event->kind != HM_EVIDENCE_INCIDENT && event->kind != HM_EVIDENCE_CANNOT;
}

static void
weights_of_evidence_match (void **state)
{
  const ReferenceCase *c = *state;
  const HmModel *model = c->reference->model;
  JsonArray *wanted = json_object_get_array_member (c->expected, "steps");
  HmBeliefStep *steps = g_new0 (HmBeliefStep, c->events->len + 1);
  HmBelief belief;
  guint at = 0;

  hm_belief_compute (model, (const HmEvidence *) (gpointer) c->events->data, c->events->len, &belief, steps);
  for (guint e = 0; e < c->events->len; e++)
    {
      JsonObject *step, *decibans;
      if (!is_listed (&g_array_index (c->events, HmEvidence, e)))
        continue;
      step = json_array_get_object_element (wanted, at++);
      decibans = json_object_get_object_member (step, "decibans");
      if (steps[e].has_effect)
        assert_true (fabs (steps[e].probability - json_object_get_double_member (step, "probability")) < 1e-9);
      for (guint i = 0; i < model->n_causes; i++)
        if (json_object_has_member (decibans, model->causes[i].id)
            && fabs (steps[e].decibans[i] - json_object_get_double_member (decibans, model->causes[i].id)) > DECIBAN_TOLERANCE)
          fail_msg ("%s event %u: %s moved by %.9f dB", c->name, e + 1, model->causes[i].id, steps[e].decibans[i]);
    }
  assert_int_equal (at, json_array_get_length (wanted));
  g_free (steps);
}

/* The order of answers between two repairs never changes the belief (single fault: of all events). */
static void
order_does_not_matter (void **state)
{
  const ReferenceCase *c = *state;
  g_autoptr (GArray) reversed = g_array_new (FALSE, TRUE, sizeof (HmEvidence));
  HmBelief forwards, backwards;

  for (guint i = c->events->len; i-- > 0;)
    g_array_append_val (reversed, g_array_index (c->events, HmEvidence, i));
  hm_belief_compute (c->reference->model, (const HmEvidence *) (gpointer) c->events->data, c->events->len, &forwards, NULL);
  hm_belief_compute (c->reference->model, (const HmEvidence *) (gpointer) reversed->data, reversed->len, &backwards, NULL);
  for (guint i = 0; i <= c->reference->model->n_causes; i++)
    assert_true (fabs (forwards.p[i] - backwards.p[i]) < 1e-12);
}

static void
repeated_answer_replaces (void **state)
{
  Reference *r = *state;
  HmEvidence events[] = {
    { .kind = HM_EVIDENCE_OUTCOME, .index = 0, .outcome = 1 },
    { .kind = HM_EVIDENCE_OUTCOME, .index = 0, .outcome = 0 },
  };
  HmBelief both, last;

  hm_belief_compute (r->model, events, 2, &both, NULL);
  hm_belief_compute (r->model, &events[1], 1, &last, NULL);
  for (guint i = 0; i <= r->model->n_causes; i++)
    assert_true (fabs (both.p[i] - last.p[i]) < 1e-15);
}

/* A part fitted lately: a fifth of its odds against the rest, never nothing. Common practice, no source. */
static void
replaced_part_is_a_fifth (void **state)
{
  Reference *r = *state;
  HmEvidence event = { .kind = HM_EVIDENCE_REPLACED, .index = 0 };
  HmBelief before, after;

  hm_belief_compute (r->model, NULL, 0, &before, NULL);
  hm_belief_compute (r->model, &event, 1, &after, NULL);
  assert_true (fabs (after.p[0] / after.p[1] - 0.2 * before.p[0] / before.p[1]) < 1e-12);
}

int
main (void)
{
  GPtrArray *references = references_load (HM_MODEL_SINGLE_FAULT), *cases = reference_cases (references);
  GArray *tests = g_array_new (FALSE, TRUE, sizeof (struct CMUnitTest));
  const struct { const char *what; CMUnitTestFunction run; } each[] = {
    { "posterior", posterior_matches }, { "open steps", open_steps_match },
    { "decibans", weights_of_evidence_match }, { "any order", order_does_not_matter },
  };
  struct CMUnitTest one[] = {
    { "a repeated answer replaces the earlier", repeated_answer_replaces, NULL, NULL, g_ptr_array_index (references, 0) },
    { "a replaced part keeps a fifth of its odds", replaced_part_is_a_fifth, NULL, NULL, g_ptr_array_index (references, 0) },
  };
  int failed;

  for (guint i = 0; i < cases->len; i++)
    for (gsize k = 0; k < G_N_ELEMENTS (each); k++)
      {
        ReferenceCase *c = g_ptr_array_index (cases, i);
        struct CMUnitTest test = { g_strdup_printf ("%s: %s", c->name, each[k].what), each[k].run, NULL, NULL, c };
        g_array_append_val (tests, test);
      }
  g_array_append_vals (tests, one, G_N_ELEMENTS (one));
  failed = _cmocka_run_group_tests ("belief", (const struct CMUnitTest *) (gpointer) tests->data, tests->len, NULL, NULL);
  for (guint i = 0; i + G_N_ELEMENTS (one) < tests->len; i++)
    g_free ((char *) g_array_index (tests, struct CMUnitTest, i).name);
  g_array_unref (tests);
  references_free (references, cases);
  return failed;
}

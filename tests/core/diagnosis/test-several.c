/* SPDX-License-Identifier: GPL-3.0-or-later */
/*
 * Several faults at once against reference models solved by listing every set of faults (vectors/diagnosis/README.md).
 */
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <string.h>
#include <cmocka.h>

#include "hm-belief-several.h"
#include "hm-planner-several.h"
#include "reference.h"

#define MARGINAL_TOLERANCE 1e-8
/* The reference listed all sets; ours stop at four faults at once and keep the likeliest 256. */
#define EXPECTED_TOLERANCE 0.001

static const HmEvidence *
events_of (const ReferenceCase *c)
{
  return (const HmEvidence *) (gpointer) c->events->data;
}

static void
marginals_match (void **state)
{
  const ReferenceCase *c = *state;
  const HmModel *model = c->reference->model;
  JsonObject *wanted = json_object_get_object_member (c->expected, "posterior");
  HmMarginals marginals;

  assert_true (hm_belief_compute_several (model, events_of (c), c->events->len, &marginals, NULL));
  for (guint i = 0; i <= model->n_causes; i++)
    {
      double want = json_object_get_double_member (wanted, i < model->n_causes ? model->causes[i].id : "_other");
      if (fabs (want - marginals.p[i]) > MARGINAL_TOLERANCE)
        fail_msg ("%s cause %u: %.12f, want %.12f", c->name, i, marginals.p[i], want);
    }
  assert_true (fabs (marginals.log_evidence - json_object_get_double_member (c->expected, "log_evidence")) < 1e-8);
}

static gboolean
is_wanted (const HmModel *model, const HmAction *action, JsonObject *wanted)
{
  JsonArray *repair;

  if (action->kind == HM_ACTION_CHECK)
    return json_object_has_member (wanted, "test")
           && strcmp (json_object_get_string_member (wanted, "test"), model->checks[action->check].id) == 0;
  if (action->kind == HM_ACTION_ESCALATE)
    return json_object_has_member (wanted, "escalate");
  repair = json_object_has_member (wanted, "repair") ? json_object_get_array_member (wanted, "repair") : NULL;
  return repair != NULL && json_array_get_length (repair) == action->n_causes
         && strcmp (json_array_get_string_element (repair, 0), model->causes[action->causes[0]].id) == 0;
}

static void
advice_matches (void **state)
{
  const ReferenceCase *c = *state;
  double at_most = json_object_get_double_member (c->best, "expected_minutes_at_most"), kept;
  HmPlan plan;

  assert_true (hm_planner_several_best (c->reference->model, events_of (c), c->events->len, &plan, &kept, NULL));
  assert_true (kept > 0.99);
  assert_true (is_wanted (c->reference->model, &plan.action, json_object_get_object_member (c->best, "action")));
  assert_true (plan.expected_minutes <= at_most * (1 + EXPECTED_TOLERANCE));
  assert_true (plan.lower_bound_minutes <= plan.expected_minutes);
}

int
main (void)
{
  GPtrArray *references = references_load (HM_MODEL_SEVERAL_FAULTS), *cases = reference_cases (references);
  GArray *tests = g_array_new (FALSE, TRUE, sizeof (struct CMUnitTest));
  int failed;

  for (guint i = 0; i < cases->len; i++)
    {
      ReferenceCase *c = g_ptr_array_index (cases, i);
      struct CMUnitTest marginals = { g_strdup_printf ("%s: marginals", c->name), marginals_match, NULL, NULL, c };
      struct CMUnitTest advice = { g_strdup_printf ("%s: advice", c->name), advice_matches, NULL, NULL, c };
      g_array_append_val (tests, marginals);
      g_array_append_val (tests, advice);
    }
  failed = _cmocka_run_group_tests ("several faults", (const struct CMUnitTest *) (gpointer) tests->data, tests->len, NULL, NULL);
  for (guint i = 0; i < tests->len; i++)
    g_free ((char *) g_array_index (tests, struct CMUnitTest, i).name);
  g_array_unref (tests);
  references_free (references, cases);
  return failed;
}

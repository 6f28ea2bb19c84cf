/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Models and evidence from JSON: what is wrong is refused with a sentence that names it. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <string.h>
#include <cmocka.h>

#include "hm-model-json.h"

/* Two causes, one access step, one reading, one incident: small enough to spoil one thing at a time. */
static const char good[] =
  "{'complaint':'sample','mode':'single','causes':["
  "{'id':'a','prior':0.6,'repair_minutes':5,'repair_access':['lid']},{'id':'b','prior':0.3,'repair_minutes':9,'repair_access':[]}],"
  "'other':{'prior':0.1,'minutes':90},"
  "'access':[{'id':'lid','minutes_open':1,'minutes_close':2,'requires':[],'blocks_verify':true}],"
  "'tests':[{'id':'t','minutes':2,'access':['lid'],'closed':[],'tools':[],'outcomes':['ok','bad'],"
  "'likelihood':{'a':{'ok':0.1,'bad':0.9},'b':{'ok':0.8,'bad':0.2},'_other':{'ok':0.5,'bad':0.5}},"
  "'numeric':{'unit':'V','edges':[12.0],'ok_side':'above','meter_sd':0.1}}],"
  "'incidents':[{'id':'spill','adds':{'a':0.4}}],'verify_minutes':1,'max_batch':2}";

static char *
quoted (const char *text)
{
  return g_strdelimit (g_strdup (text), "'", '"');
}

static const struct spoil_row { const char *name, *from, *to; HmModelError code; const char *says; } spoil_rows[] = {
  { "not JSON", "{'complaint'", "{complaint", HM_MODEL_ERROR_SYNTAX, "not JSON" },
  { "negative prior", "'prior':0.6", "'prior':-1", HM_MODEL_ERROR_VALUE, "a: the prior" },
  { "prior as text", "'prior':0.6", "'prior':'x'", HM_MODEL_ERROR_VALUE, "“prior” has to be a number" },
  { "negative minutes", "'repair_minutes':5", "'repair_minutes':-5", HM_MODEL_ERROR_VALUE, "repair_minutes" },
  { "unknown access", "'repair_access':['lid']", "'repair_access':['roof']", HM_MODEL_ERROR_REFERENCE, "roof" },
  { "requires itself", "'requires':[]", "'requires':['lid']", HM_MODEL_ERROR_VALUE, "requires itself" },
  { "column does not sum to 1", "'a':{'ok':0.1,'bad':0.9}", "'a':{'ok':0.1,'bad':0.8}", HM_MODEL_ERROR_VALUE, "not 1" },
  { "likelihood above 1", "'ok':0.1,'bad':0.9", "'ok':1.1,'bad':-0.1", HM_MODEL_ERROR_VALUE, "between 0 and 1" },
  { "missing column", "'b':{'ok':0.8,'bad':0.2},", "", HM_MODEL_ERROR_VALUE, "“b” has to be an object" },
  { "one outcome", "'outcomes':['ok','bad']", "'outcomes':['ok']", HM_MODEL_ERROR_SIZE, "2 to" },
  { "too many edges", "'edges':[12.0]", "'edges':[12.0,11.0]", HM_MODEL_ERROR_VALUE, "edge" },
  { "no meter accuracy", "'meter_sd':0.1", "'meter_sd':0", HM_MODEL_ERROR_VALUE, "meter_sd" },
  { "unknown mode", "'mode':'single'", "'mode':'several'", HM_MODEL_ERROR_MODE, "several" },
  { "open and shut", "'closed':[]", "'closed':['lid']", HM_MODEL_ERROR_VALUE, "both open and shut" },
  { "incident on unknown cause", "'adds':{'a':0.4}", "'adds':{'z':0.4}", HM_MODEL_ERROR_REFERENCE, "z" },
  { "chance above 1", "'adds':{'a':0.4}", "'adds':{'a':1.4}", HM_MODEL_ERROR_VALUE, "spill" },
  { "batch of nine", "'max_batch':2", "'max_batch':9", HM_MODEL_ERROR_SIZE, "max_batch" },
  { "same cause twice", "'id':'b'", "'id':'a'", HM_MODEL_ERROR_REFERENCE, "second cause" },
  { "causes missing", "'causes'", "'causez'", HM_MODEL_ERROR_VALUE, "causes" },
};

static void
spoilt_model_is_refused (void **state)
{
  const struct spoil_row *row = *state;
  g_auto (GStrv) parts = g_strsplit (good, row->from, 2);
  g_autofree char *spoilt = g_strjoinv (row->to, parts), *text = quoted (spoilt);
  g_autoptr (GError) error = NULL;

  assert_non_null (parts[1]);
  assert_null (hm_model_new_from_json (text, strlen (text), &error));
  assert_true (g_error_matches (error, HM_MODEL_ERROR, (int) row->code));
  if (strstr (error->message, row->says) == NULL)
    fail_msg ("“%s” does not say “%s”", error->message, row->says);
}

static void
good_model_survives_the_round_trip (void **state)
{
  g_autofree char *text = quoted (good);
  g_autoptr (GError) error = NULL;
  g_autoptr (HmModel) model = hm_model_new_from_json (text, strlen (text), &error);
  g_autofree char *once = NULL, *twice = NULL;
  g_autoptr (HmModel) again = NULL;

  assert_non_null (model);
  once = hm_model_to_json (model);
  again = hm_model_new_from_json (once, strlen (once), &error);
  assert_non_null (again);
  twice = hm_model_to_json (again);
  assert_string_equal (once, twice);
}

static void
bytes_that_are_no_text_are_refused (void **state)
{
  const char bytes[] = "{\"complaint\":\"\xff\xfe\"}";
  g_autoptr (GError) error = NULL;

  assert_null (hm_model_new_from_json (bytes, sizeof bytes - 1, &error));
  assert_true (g_error_matches (error, HM_MODEL_ERROR, HM_MODEL_ERROR_SYNTAX));
  g_clear_error (&error);
  assert_null (hm_model_new_from_json ("", 0, &error));
  assert_non_null (error);
}

static const struct event_row { const char *name, *text, *says; } event_rows[] = {
  { "unknown test", "[{'test':'x','outcome':'ok'}]", "x" },
  { "unknown outcome", "[{'test':'t','outcome':'soso'}]", "soso" },
  { "test without a result", "[{'test':'t'}]", "wants one of" },
  { "negative weight", "[{'test':'t','weights':{'ok':-1}}]", "0 or more" },
  { "all weights 0", "[{'test':'t','weights':{'ok':0,'bad':0}}]", "above 0" },
  { "reading as text", "[{'test':'t','reading':'12 V'}]", "number" },
  { "unknown incident", "[{'incident':'fire'}]", "fire" },
  { "unknown cause", "[{'repair':['q'],'fixed':false}]", "q" },
  { "nothing to repair", "[{'repair':[],'fixed':false}]", "1 to 4" },
  { "unknown event", "[{'weather':'rain'}]", "one of incident" },
  { "not a list", "12", "array" },
};

static void
spoilt_evidence_is_refused (void **state)
{
  const struct event_row *row = *state;
  g_autofree char *model_text = quoted (good), *text = quoted (row->text);
  g_autoptr (HmModel) model = hm_model_new_from_json (model_text, strlen (model_text), NULL);
  g_autoptr (GError) error = NULL;

  assert_null (hm_evidence_list_from_json (model, text, strlen (text), &error));
  assert_non_null (error);
  if (strstr (error->message, row->says) == NULL)
    fail_msg ("“%s” does not say “%s”", error->message, row->says);
}

/* On the limit the meter cannot tell; ten deviations away it can. */
static void
reading_on_the_limit_is_half_and_half (void **state)
{
  g_autofree char *text = quoted (good);
  g_autoptr (HmModel) model = hm_model_new_from_json (text, strlen (text), NULL);
  HmEvidence on = { .kind = HM_EVIDENCE_READING, .index = 0, .reading = 12.0 };
  HmEvidence clear = { .kind = HM_EVIDENCE_READING, .index = 0, .reading = 11.0 };
  double weights[HM_MODEL_MAX_OUTCOMES];

  assert_true (hm_evidence_weights (model, &on, weights));
  assert_true (ABS (weights[0] - 0.5) < 1e-12 && ABS (weights[1] - 0.5) < 1e-12);
  assert_true (hm_evidence_weights (model, &clear, weights));
  assert_true (weights[1] > 1 - 1e-12);
}

int
main (void)
{
  struct CMUnitTest tests[G_N_ELEMENTS (spoil_rows) + G_N_ELEMENTS (event_rows) + 3];
  guint n = 0;

  for (gsize i = 0; i < G_N_ELEMENTS (spoil_rows); i++)
    tests[n++] = (struct CMUnitTest) { spoil_rows[i].name, spoilt_model_is_refused, NULL, NULL, (void *) &spoil_rows[i] };
  for (gsize i = 0; i < G_N_ELEMENTS (event_rows); i++)
    tests[n++] = (struct CMUnitTest) { event_rows[i].name, spoilt_evidence_is_refused, NULL, NULL, (void *) &event_rows[i] };
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (good_model_survives_the_round_trip);
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (bytes_that_are_no_text_are_refused);
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (reading_on_the_limit_is_half_and_half);
  return cmocka_run_group_tests_name ("model from JSON", tests, NULL, NULL);
}

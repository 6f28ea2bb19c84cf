/* SPDX-License-Identifier: GPL-3.0-or-later */
/* `advise` and `model` against the reference models (tests/vectors/diagnosis/README.md): two exact solvers that share no
 * code with this project computed what is compared here. */
#include "hmt-command.h"

#include <glib/gstdio.h>
#include <json-glib/json-glib.h>
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

#define TOLERANCE_SINGLE 1e-9      /* doubles on both sides; probabilities are at most 1 */
#define TOLERANCE_SEVERAL 1e-8     /* signed terms cancel; 7e-12 was the most seen between the two solvers */
#define MINUTES_TOLERANCE 1e-6     /* the references' own solvers agree to 9 digits */
#define MAX_TESTS 120

static const char * const files[] = {
  "r01-small-single", "r02-small-single", "r03-small-single", "r04-small-single", "r05-small-numeric-incident",
  "r06-small-unsure-closed", "r07-multi", "r08-multi-numeric", "r09-multi", "r10-large-single",
  "r11-large-single-numeric", "r12-large-single",
};

typedef struct { const char *file; guint at; char name[64]; JsonObject *expected; /* borrowed */ } Case;

static char *
path_of (const char *file)
{
  g_autofree char *name = g_strconcat (file, ".json", NULL);
  return g_build_filename (g_getenv ("HALFMOON_TEST_VECTORS"), "diagnosis", name, NULL);
}

static JsonObject *
parse (JsonParser *parser, const char *what, const char *text)
{
  g_autoptr(GError) error = NULL;
  if (!json_parser_load_from_data (parser, text, -1, &error))
    fail_msg ("%s: %s", what, error->message);
  return json_node_get_object (json_parser_get_root (parser));
}

/* `advise` on a file with evidence; what it printed. */
static char *
advise (const char *model, JsonNode *evidence)
{
  g_autofree char *folder = g_dir_make_tmp ("halfmoon-cli-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (folder, "evidence.json", NULL);
  g_autofree char *text = json_to_string (evidence, FALSE);
  const char *argv[] = { g_getenv ("HALFMOON_TEST_CLI"), "advise", model, "--evidence", path, NULL };
  g_auto(HmtResult) result = { 0 };

  assert_true (g_file_set_contents (path, text, -1, NULL));
  result = hmt_command_run (argv, NULL, NULL);
  g_remove (path);
  g_rmdir (folder);
  if (result.code != 0)
    fail_msg ("exit %d: %s", result.code, result.err);
  assert_string_equal (result.err, "");
  return g_steal_pointer (&result.out);
}

static void
compare_posterior (const char *name, JsonObject *got, JsonObject *want, double tolerance)
{
  g_autoptr(GList) ids = json_object_get_members (want);
  assert_int_equal (json_object_get_size (got), json_object_get_size (want));
  for (GList *l = ids; l != NULL; l = l->next)
    {
      double a, b = json_object_get_double_member (want, l->data);
      if (!json_object_has_member (got, l->data))
        fail_msg ("%s: no probability of %s", name, (char *) l->data);
      a = json_object_get_double_member (got, l->data);
      if (!(fabs (a - b) <= tolerance))
        fail_msg ("%s: %s is %.12f, reference %.12f", name, (char *) l->data, a, b);
    }
}

static double
number (JsonObject *object, const char *member, double otherwise)
{
  return json_object_get_double_member_with_default (object, member, otherwise);
}

/* No plan beats the optimum, no bound lies above it, and a plan with checks costs no more than repairs alone. */
static void
compare_minutes (const char *name, JsonObject *got, JsonObject *best)
{
  gboolean exact = json_object_get_boolean_member_with_default (best, "exact", FALSE);
  double optimum = exact ? json_object_get_double_member (best, "expected_minutes") : NAN;
  double expected = json_object_get_double_member (got, "expected_minutes");
  double bound = json_object_get_double_member (got, "lower_bound");

  if (!(bound <= expected + MINUTES_TOLERANCE))
    fail_msg ("%s: lower bound %.6f above the plan's %.6f", name, bound, expected);
  if (!(expected <= number (best, "repair_only_minutes", INFINITY) + MINUTES_TOLERANCE))
    fail_msg ("%s: %.6f min, repairs alone cost %.6f", name, expected, number (best, "repair_only_minutes", NAN));
  if (!(bound >= number (best, "perfect_information_bound", 0) - MINUTES_TOLERANCE))
    fail_msg ("%s: lower bound %.6f, perfect information gives %.6f", name, bound,
              number (best, "perfect_information_bound", NAN));
  if (exact && (!(expected >= optimum - MINUTES_TOLERANCE) || !(bound <= optimum + MINUTES_TOLERANCE)))
    fail_msg ("%s: optimum %.6f does not lie between %.6f and %.6f", name, optimum, bound, expected);
}

static void
agrees_with_the_reference (void **state)
{
  const Case *row = *state;
  g_autofree char *model = path_of (row->file);
  g_autofree char *text = advise (model, json_object_get_member (row->expected, "evidence"));
  g_autoptr(JsonParser) parser = json_parser_new ();
  JsonObject *got = parse (parser, row->name, text);
  JsonObject *posterior = json_object_get_object_member (row->expected, "posterior");

  compare_posterior (row->name, json_object_get_object_member (got, "posterior"),
                     json_object_get_object_member (posterior, "posterior"),
                     strstr (row->file, "multi") != NULL ? TOLERANCE_SEVERAL : TOLERANCE_SINGLE);
  if (json_object_has_member (row->expected, "best"))
    compare_minutes (row->name, got, json_object_get_object_member (row->expected, "best"));
  assert_true (json_object_has_member (got, "action"));
}

static void
check_row (JsonObject *rows, const char *cause, JsonNode *node, gpointer check)
{
  g_autoptr(GList) shares = json_object_get_values (json_node_get_object (node));
  double sum = 0;
  for (GList *l = shares; l != NULL; l = l->next)
    sum += json_node_get_double (l->data);
  if (!(fabs (sum - 1) <= 1e-9))
    fail_msg ("%s, %s: shares come to %.12f", (const char *) check, cause, sum);
}

/* What `model` prints has the members of the format, and `advise` takes it. */
static void
model_is_in_the_format (void **state)
{
  static const char * const members[] = { "format", "complaint", "mode", "causes", "other", "access", "tests", "incidents",
                                          "verify_minutes", "max_batch" };
  g_auto(HmtResult) result = hmt_cli_run ("model no-crank --layout rider", NULL);
  g_autoptr(JsonParser) parser = json_parser_new ();
  JsonArray *tests;
  JsonObject *model;

  if (result.code != 0)
    fail_msg ("exit %d: %s", result.code, result.err);
  model = parse (parser, "model", result.out);
  for (guint i = 0; i < G_N_ELEMENTS (members); i++)
    if (!json_object_has_member (model, members[i]))
      fail_msg ("the model has no “%s”", members[i]);
  assert_string_equal (json_object_get_string_member (model, "format"), "halfmoon-diagnosis/1");
  assert_string_equal (json_object_get_string_member (model, "complaint"), "no-crank");
  tests = json_object_get_array_member (model, "tests");
  assert_true (json_array_get_length (tests) > 0);
  for (guint i = 0; i < json_array_get_length (tests); i++)
    {
      JsonObject *test = json_array_get_object_element (tests, i);
      json_object_foreach_member (json_object_get_object_member (test, "likelihood"), check_row,
                                  (gpointer) json_object_get_string_member (test, "id"));
    }
}

static void
advise_takes_what_model_prints (void **state)
{
  g_auto(HmtResult) printed = hmt_cli_run ("model no-crank --layout rider", NULL);
  g_autofree char *folder = g_dir_make_tmp ("halfmoon-cli-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (folder, "model.json", NULL);
  g_autofree char *arguments = g_strconcat ("advise ", path, NULL);
  g_autoptr(JsonParser) parser = json_parser_new ();
  g_autoptr(GList) shares = NULL;
  g_auto(HmtResult) advice = { 0 };
  double sum = 0;

  assert_true (g_file_set_contents (path, printed.out, -1, NULL));
  advice = hmt_cli_run (arguments, NULL);
  if (advice.code != 0)
    fail_msg ("exit %d: %s", advice.code, advice.err);
  shares = json_object_get_values (json_object_get_object_member (parse (parser, "advice", advice.out), "posterior"));
  for (GList *l = shares; l != NULL; l = l->next)
    sum += json_node_get_double (l->data);
  assert_true (fabs (sum - 1) <= 1e-9);
  g_remove (path);
  g_rmdir (folder);
}

/* One test a case; the parsers own what the cases borrow. */
static guint
add_cases (const char *file, JsonParser *parser, Case *cases, struct CMUnitTest *tests, guint n)
{
  g_autofree char *path = path_of (file);
  g_autoptr(GError) error = NULL;
  JsonArray *list;

  if (!json_parser_load_from_file (parser, path, &error))
    g_error ("%s: %s", path, error->message);
  list = json_object_get_array_member (json_node_get_object (json_parser_get_root (parser)), "cases");
  for (guint i = 0; i < json_array_get_length (list) && n < MAX_TESTS; i++, n++)
    {
      cases[n] = (Case) { file, i, "", json_array_get_object_element (list, i) };
      g_snprintf (cases[n].name, sizeof cases[n].name, "%s, case %u", file, i + 1);
      tests[n] = (struct CMUnitTest) { cases[n].name, agrees_with_the_reference, .initial_state = &cases[n] };
    }
  return n;
}

int
main (void)
{
  g_autoptr(GPtrArray) parsers = g_ptr_array_new_with_free_func (g_object_unref);
  g_autofree Case *cases = g_new0 (Case, MAX_TESTS);
  struct CMUnitTest tests[MAX_TESTS + 2] = { { 0 } };
  guint n = 0;

  for (guint i = 0; i < G_N_ELEMENTS (files); i++)
    {
      g_ptr_array_add (parsers, json_parser_new ());
      n = add_cases (files[i], g_ptr_array_index (parsers, i), cases, tests, n);
    }
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (model_is_in_the_format);
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (advise_takes_what_model_prints);
  return _cmocka_run_group_tests ("cli-advise", tests, n, NULL, NULL);
}

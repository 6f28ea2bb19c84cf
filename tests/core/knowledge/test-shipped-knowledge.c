/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "knowledge-fixture.h"
#include <glib/gstdio.h>
#include <math.h>
#include <string.h>

/* The texts that are shipped: they compile, and every complaint loads on every layout that it covers. */

typedef struct { HmKnowledge *knowledge; const char *complaint, *layout; } Pair;

static void
check_columns (const HmGuide *guide, const HmCheck *check, guint n_causes)
{
  for (guint i = 0; i <= n_causes; i++)
    {
      double sum = 0;
      for (guint k = 0; k < check->n_findings; k++)
        {
          double share = check->likelihood[k * (n_causes + 1) + i];
          if (share < 0.005 - 1e-15)
            fail_msg ("%s, %s: a share of %g is below the floor", check->id, check->findings[k].id, share);
          sum += share;
        }
      if (fabs (sum - 1) > 1e-12)
        fail_msg ("%s: column %u sums to %.15g", check->id, i, sum);
    }
}

/* A serious caution is met before the work that needs it: each has text and says whose word governs. */
static void
check_cautions (const HmCaution * const *cautions)
{
  for (guint i = 0; cautions[i] != NULL; i++)
    if (*cautions[i]->text == '\0' || *cautions[i]->defer == '\0')
      fail_msg ("caution %s is empty", cautions[i]->id);
}

static void
guide_is_whole (void **state)
{
  const Pair *pair = *state;
  g_autoptr (HmGuide) guide = load_or_fail (pair->knowledge, pair->complaint, pair->layout);
  guint n_causes = 0, n_checks = 0, n_access = 0;
  const HmCause *causes = hm_guide_get_causes (guide, &n_causes);
  const HmCheck *checks = hm_guide_get_checks (guide, &n_checks);
  const HmAccessStep *access = hm_guide_get_access (guide, &n_access);

  assert_true (n_causes > 0 && n_checks > 0 && n_access > 0);
  for (guint i = 0; i < n_causes; i++)
    {
      assert_true (causes[i].rate > 0);
      assert_non_null (causes[i].remedy);
      check_cautions (causes[i].remedy->cautions);
    }
  for (guint i = 0; i < n_checks; i++)
    {
      check_columns (guide, &checks[i], n_causes);
      check_cautions (checks[i].cautions);
      assert_true (checks[i].time.minutes > 0);
    }
  for (guint i = 0; i < n_access; i++)
    check_cautions (access[i].cautions);
}

static void
every_picture_of_a_check_is_there (void **state)
{
  const Pair *pair = *state;
  g_autoptr (HmGuide) guide = load_or_fail (pair->knowledge, pair->complaint, pair->layout);
  guint n_checks = 0;
  const HmCheck *checks = hm_guide_get_checks (guide, &n_checks);

  for (guint i = 0; i < n_checks; i++)
    if (checks[i].picture != NULL)
      {
        const HmPicture *picture = hm_knowledge_get_picture (pair->knowledge, checks[i].picture, NULL);
        assert_non_null (picture);
        if (checks[i].red_point != NULL)
          assert_non_null (hm_picture_find_point (picture, checks[i].red_point));
        if (checks[i].black_point != NULL)
          assert_non_null (hm_picture_find_point (picture, checks[i].black_point));
      }
}

static void
the_texts_compile (void **state)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *folder = g_dir_make_tmp ("shipped-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (folder, "knowledge.db", NULL);
  gboolean done = hm_knowledge_compile (g_getenv ("HALFMOON_SOURCE_DATA"), path, NULL, &error);

  (void) state;
  g_remove (path);
  g_rmdir (folder);
  if (!done)
    fail_msg ("%s", error->message);
}

static HmKnowledge *
open_shipped (void)
{
  g_autofree char *folder = g_dir_make_tmp ("shipped-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (folder, "knowledge.db", NULL);
  HmKnowledge *knowledge = NULL;

  if (hm_knowledge_compile (g_getenv ("HALFMOON_SOURCE_DATA"), path, NULL, NULL))
    knowledge = hm_knowledge_open (path, NULL);
  g_remove (path);     /* open files live on */
  g_rmdir (folder);
  return knowledge;
}

static void
add_tests_of (GArray *tests, GPtrArray *kept, HmKnowledge *knowledge, const char *complaint, const char *layout)
{
  Pair *pair = g_new (Pair, 1);
  struct CMUnitTest whole = { g_strdup_printf ("%s on %s is whole", complaint, layout), guide_is_whole, .initial_state = pair };
  struct CMUnitTest pictures = { g_strdup_printf ("%s on %s has its pictures", complaint, layout), every_picture_of_a_check_is_there, .initial_state = pair };

  *pair = (Pair) { knowledge, complaint, layout };
  g_ptr_array_add (kept, pair);
  g_ptr_array_add (kept, (gpointer) whole.name);
  g_ptr_array_add (kept, (gpointer) pictures.name);
  g_array_append_val (tests, whole);
  g_array_append_val (tests, pictures);
}

static void
add_tests (GArray *tests, GPtrArray *kept, HmKnowledge *knowledge)
{
  guint n_complaints = 0, n_layouts = 0;
  const HmComplaint *complaints = hm_knowledge_get_complaints (knowledge, &n_complaints);
  const HmLayout *layouts = hm_knowledge_get_layouts (knowledge, &n_layouts);

  for (guint c = 0; c < n_complaints; c++)
    for (guint l = 0; l < n_layouts; l++)
      if (hm_knowledge_covers (knowledge, complaints[c].id, layouts[l].id))
        add_tests_of (tests, kept, knowledge, complaints[c].id, layouts[l].id);
}

int
main (int argc, char **argv)
{
  g_autoptr (GArray) tests = g_array_new (FALSE, TRUE, sizeof (struct CMUnitTest));
  g_autoptr (GPtrArray) kept = g_ptr_array_new_with_free_func (g_free);
  const struct CMUnitTest compile = cmocka_unit_test (the_texts_compile);
  g_autoptr (HmKnowledge) knowledge = NULL;

  knowledge_fixture_set_arguments (argc, argv);
  g_array_append_val (tests, compile);
  knowledge = open_shipped ();
  if (knowledge != NULL)
    add_tests (tests, kept, knowledge);
  return _cmocka_run_group_tests ("shipped-knowledge", (struct CMUnitTest *) (gpointer) tests->data, tests->len, NULL, NULL);
}

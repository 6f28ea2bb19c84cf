/* SPDX-License-Identifier: GPL-3.0-or-later */
/*
 * Opening and putting back, on the shipped layouts: properties of any order a mechanic could follow (what holds a part
 * comes off before it and goes back after it). No outside source: logic of the graph.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <string.h>
#include <cmocka.h>

#include "hm-access.h"
#include "hm-knowledge.h"

typedef struct { HmGuide *guide; guint n; const HmAccessStep *steps; } Fixture;

static int
set_up (void **state)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (HmKnowledge) knowledge = hm_knowledge_open (g_getenv ("HALFMOON_TEST_KNOWLEDGE"), &error);
  Fixture *fixture = g_new0 (Fixture, 1);

  if (knowledge == NULL || (fixture->guide = hm_knowledge_load_guide (knowledge, "no-crank", "rider", &error)) == NULL)
    g_error ("%s", error->message);
  fixture->steps = hm_guide_get_access (fixture->guide, &fixture->n);
  *state = fixture;
  return 0;
}

static int
tear_down (void **state)
{
  hm_guide_unref (((Fixture *) *state)->guide);
  g_free (*state);
  return 0;
}

static void
needing_a_step_brings_its_requirements (void **state)
{
  const Fixture *f = *state;

  for (guint i = 0; i < f->n; i++)
    {
      HmAccessSet need = hm_access_need (f->guide, &i, 1);
      assert_true (need >> i & 1);
      for (guint j = 0; j < f->n; j++)
        if (need >> j & 1)
          assert_true ((f->steps[j].requires & ~need) == 0);
    }
}

static void
order_opens_what_is_required_first (void **state)
{
  const Fixture *f = *state;
  HmAccessSet all = f->n < 64 ? (G_GUINT64_CONSTANT (1) << f->n) - 1 : G_MAXUINT64, opened = 0;
  guint order[HM_GUIDE_MAX_ACCESS];
  guint n = hm_access_order (f->guide, all, order);

  assert_int_equal (n, f->n);
  for (guint i = 0; i < n; i++)
    {
      assert_true ((f->steps[order[i]].requires & ~opened) == 0);
      opened |= G_GUINT64_CONSTANT (1) << order[i];
    }
  assert_true (opened == all);
}

static void
closing_a_step_closes_what_stands_on_it (void **state)
{
  const Fixture *f = *state;

  for (guint i = 0; i < f->n; i++)
    {
      HmAccessSet shut = hm_access_dependents (f->guide, G_GUINT64_CONSTANT (1) << i);
      for (guint j = 0; j < f->n; j++)
        assert_int_equal (shut >> j & 1, hm_access_need (f->guide, &j, 1) >> i & 1);
    }
}

static void
times_add_up (void **state)
{
  const Fixture *f = *state;
  double open = 0, close = 0;
  HmAccessSet set = 0;

  for (guint i = 0; i < f->n; i += 2)
    {
      open += f->steps[i].open.minutes;
      close += f->steps[i].close.minutes;
      set |= G_GUINT64_CONSTANT (1) << i;
    }
  assert_true (ABS (hm_access_open_time (f->guide, set).minutes - open) < 1e-9);
  assert_true (ABS (hm_access_close_time (f->guide, set).minutes - close) < 1e-9);
}

/* A bolt with a hex and a hexalobular recess: both tools stand on one line, each line once. */
static void
combination_drive_names_both_tools (void **state)
{
  const Fixture *f = *state;
  HmAccessSet all = (G_GUINT64_CONSTANT (1) << f->n) - 1;
  g_autoptr (GPtrArray) tools = hm_access_tools (f->guide, all, NULL, NULL, &hm_format_default);
  gboolean both = FALSE;

  for (guint i = 0; i < tools->len; i++)
    {
      both |= strstr (g_ptr_array_index (tools, i), " or ") != NULL;
      for (guint j = 0; j < i; j++)
        assert_string_not_equal (g_ptr_array_index (tools, i), g_ptr_array_index (tools, j));
    }
  assert_true (both);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (needing_a_step_brings_its_requirements), cmocka_unit_test (order_opens_what_is_required_first),
    cmocka_unit_test (closing_a_step_closes_what_stands_on_it), cmocka_unit_test (times_add_up),
    cmocka_unit_test (combination_drive_names_both_tools),
  };

  return cmocka_run_group_tests_name ("access", tests, set_up, tear_down);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-sequence.h"
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

/*
 * The halving rule of the trade (12, 6, 3, 9 o'clock, then 1:30 and 7:30, and so on) and centre-out, worked by hand.
 * Common practice, no source.
 */
static const struct order_row {
  const char *name;
  HmBoltLayout layout;
  guint n;
  const char *want;
} order_rows[] = {
  { "one", HM_LAYOUT_ROUND, 1, "1" },
  { "two", HM_LAYOUT_ROUND, 2, "1 2" },
  { "three round", HM_LAYOUT_ROUND, 3, "1 2 3" },
  { "four round", HM_LAYOUT_ROUND, 4, "1 3 2 4" },
  { "five round: a star", HM_LAYOUT_ROUND, 5, "1 3 5 2 4" },
  { "six round", HM_LAYOUT_ROUND, 6, "1 4 2 5 3 6" },
  { "eight round", HM_LAYOUT_ROUND, 8, "1 5 3 7 2 6 4 8" },
  { "twelve round", HM_LAYOUT_ROUND, 12, "1 7 4 10 2 8 5 11 3 9 6 12" },
  { "sixteen round", HM_LAYOUT_ROUND, 16, "1 9 5 13 3 11 7 15 2 10 6 14 4 12 8 16" },
  { "four in a rectangle", HM_LAYOUT_RECTANGULAR, 4, "1 3 2 4" },
  { "three in a line", HM_LAYOUT_INLINE, 3, "2 1 3" },
  { "five in a line", HM_LAYOUT_INLINE, 5, "3 2 4 1 5" },
  { "four in a line", HM_LAYOUT_INLINE, 4, "2 3 1 4" },
  { "six in two rows", HM_LAYOUT_TWO_ROWS, 6, "2 5 1 6 3 4" },
  { "ten in two rows", HM_LAYOUT_TWO_ROWS, 10, "3 8 2 9 4 7 1 10 5 6" },
};

static const struct rule_row { const char *name; HmBoltLayout layout; } rule_rows[] = {
  { "round", HM_LAYOUT_ROUND }, { "rectangular", HM_LAYOUT_RECTANGULAR }, { "two rows", HM_LAYOUT_TWO_ROWS },
  { "in a line", HM_LAYOUT_INLINE },
};

static void
order_is_right (void **state)
{
  const struct order_row *row = *state;
  HmSequence sequence;
  guint order[HM_SEQUENCE_MAX_BOLTS];
  g_autoptr (GString) got = g_string_new (NULL);

  assert_true (hm_sequence_init (&sequence, row->layout, row->n));
  hm_sequence_order (&sequence, order);
  for (guint i = 0; i < row->n; i++)
    g_string_append_printf (got, i > 0 ? " %u" : "%u", order[i]);
  assert_string_equal (got->str, row->want);
}

/* Every number of bolts: each bolt once, inside the picture, no two in one place, and the second opposite the first. */
static void
rules_hold (void **state)
{
  const struct rule_row *row = *state;

  for (guint n = 1; n <= HM_SEQUENCE_MAX_BOLTS; n++)
    {
      HmSequence s;
      guint order[HM_SEQUENCE_MAX_BOLTS] = { 0 };

      assert_true (hm_sequence_init (&s, row->layout, n));
      hm_sequence_order (&s, order);
      for (guint i = 0; i < n; i++)
        {
          assert_true (order[i] >= 1 && order[i] <= n && s.bolts[order[i] - 1].order == i + 1);
          assert_true (fabs (s.bolts[i].x) <= 1.0 + 1e-9 && fabs (s.bolts[i].y) <= 1.0 + 1e-9);
          for (guint j = 0; j < i; j++)
            if (hypot (s.bolts[i].x - s.bolts[j].x, s.bolts[i].y - s.bolts[j].y) < 0.01)
              fail_msg ("%u bolts: %u and %u in one place", n, i + 1, j + 1);
        }
      if (n % 2 == 0)
        assert_true (hypot (s.bolts[order[0] - 1].x + s.bolts[order[1] - 1].x, s.bolts[order[0] - 1].y + s.bolts[order[1] - 1].y) < 1e-6);
    }
}

static void
count_is_checked (void **state)
{
  HmSequence sequence = { .n_bolts = 77 };

  assert_false (hm_sequence_init (&sequence, HM_LAYOUT_ROUND, 0));
  assert_false (hm_sequence_init (&sequence, HM_LAYOUT_ROUND, HM_SEQUENCE_MAX_BOLTS + 1));
  assert_int_equal (sequence.n_bolts, 77);
}

static void
patterns_have_layouts (void **state)
{
  assert_int_equal (hm_sequence_layout (HM_PATTERN_CROSS, 8), HM_LAYOUT_TWO_ROWS);
  assert_int_equal (hm_sequence_layout (HM_PATTERN_CROSS, 4), HM_LAYOUT_ROUND);
  assert_int_equal (hm_sequence_layout (HM_PATTERN_CROSS, 7), HM_LAYOUT_ROUND);
  assert_int_equal (hm_sequence_layout (HM_PATTERN_INLINE, 3), HM_LAYOUT_INLINE);
  assert_int_equal (hm_sequence_layout (HM_PATTERN_RECTANGULAR, 6), HM_LAYOUT_RECTANGULAR);
  assert_int_equal (hm_sequence_layout (HM_PATTERN_ROUND, 6), HM_LAYOUT_ROUND);
}

/* TM 5-3805-248-23-1 and TM 5-3800-205-23-1, torque limits: 70 percent, then 100 percent. */
static void
two_passes_match_source (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  gsize n;
  const HmPassRow *passes = hm_sequence_passes (tables, "two-pass", &n);

  assert_int_equal (n, 2);
  assert_true (fabs (passes[0].share - 0.7) < 1e-12 && fabs (passes[1].share - 1.0) < 1e-12);
  assert_int_equal (passes[0].provenance.kind, HM_PROVENANCE_PUBLISHED);
  assert_null (hm_sequence_passes (tables, "five-pass", &n));
  assert_int_equal (n, 0);
}

static void
passes_rise_to_the_full_torque (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  gsize n;
  const HmPassRow *passes = hm_sequence_passes (tables, "three-pass cross", &n);

  assert_int_equal (n, 4);
  for (gsize i = 0; i < n; i++)
    assert_true (passes[i].pass == (int) i + 1 && (i == 0 || passes[i].share >= passes[i - 1].share));
  assert_true (passes[n - 1].round && fabs (passes[n - 1].share - 1.0) < 1e-12);
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  HM_TEST_SUITE_ADD_ROWS (suite, order_rows, order_is_right);
  HM_TEST_SUITE_ADD_ROWS (suite, rule_rows, rules_hold);
  hm_test_suite_add (suite, "the count is checked", count_is_checked, NULL);
  hm_test_suite_add (suite, "patterns have layouts", patterns_have_layouts, NULL);
  hm_test_suite_add (suite, "two passes match the source", two_passes_match_source, NULL);
  hm_test_suite_add (suite, "passes rise to the full torque", passes_rise_to_the_full_torque, NULL);
  return hm_test_suite_run (suite, "sequence");
}

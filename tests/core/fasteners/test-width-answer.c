/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-key-answer.h"
#include "hm-test-vectors.h"
#include "hm-width-answer.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

/*
 * Sizes that turn up on this equipment. Neighbours follow from the named sizes alone (1 in = 25.4 mm); the verdicts asked for
 * are those that leave no doubt.
 */
static const struct size_row {
  const char *name, *head;
  const char *inch_below, *inch_above, *metric_below, *metric_above;
  const char *other;            /* the nearest size of the other system, and what comes of it */
  HmFitVerdict verdict;
} size_rows[] = {
  { "11/32 in", "hex 11/32 in", "5/16", "3/8", "8", "9", "9", HM_FIT_USABLE },
  { "8 mm", "hex 8 mm", "5/16", "11/32", "7", "9", "5/16", HM_FIT_FITS },
  { "3/8 in", "hex 3/8 in", "11/32", "7/16", "9", "10", "10", HM_FIT_ROUNDS },
  { "1/2 in", "hex 1/2 in", "15/32", "9/16", "12", "13", "13", HM_FIT_ROUNDS },
  { "15/16 in", "hex 15/16 in", "29/32", "1", "23", "24", "24", HM_FIT_USABLE },
};

static HmWidthAnswer *
answer (const char *text, HmHeadCondition condition, const HmTables *tables)
{
  HmDrive drive;

  assert_true (hm_drive_parse (text, &drive, NULL));
  return hm_width_answer_new (&drive, condition, tables);
}

static const HmSizeFit *
find_fit (const HmWidthAnswer *self, const char *name, gboolean inch)
{
  for (guint i = 0; i < self->fits->len; i++)
    {
      const HmSizeFit *one = &g_array_index (self->fits, HmSizeFit, i);

      if (one->opening->inch == inch && strcmp (one->opening->name, name) == 0)
        return one;
    }
  fail_msg ("%s is not among the fits", name);
  return NULL;
}

static void
size_is_answered (void **state)
{
  const struct size_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (HmWidthAnswer) got = answer (row->head, HM_HEAD_CLEAN, tables);
  const HmSizeFit *first = &g_array_index (got->fits, HmSizeFit, 0);
  const HmSizeFit *other = find_fit (got, row->other, !got->drive.inch);

  assert_int_equal (got->origin, HM_WIDTH_STANDARD);
  assert_int_equal (first->fit.reason, HM_FIT_PROPER);
  assert_true (got->heads->len > 0);
  assert_string_equal (got->neighbours.inch_below->name, row->inch_below);
  assert_string_equal (got->neighbours.inch_above->name, row->inch_above);
  assert_string_equal (got->neighbours.metric_below->name, row->metric_below);
  assert_string_equal (got->neighbours.metric_above->name, row->metric_above);
  if (other->fit.verdict != row->verdict)
    fail_msg ("%s: verdict %d, looseness %.2f, goes on %.2f", row->other, other->fit.verdict, other->fit.looseness,
              other->fit.goes_on);
}

static void
best_stands_first (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (HmWidthAnswer) got = answer ("hex 1/2 in", HM_HEAD_CLEAN, tables);

  for (guint i = 1; i < got->fits->len; i++)
    assert_true (g_array_index (got->fits, HmSizeFit, i - 1).fit.verdict <= g_array_index (got->fits, HmSizeFit, i).fit.verdict);
}

/* ISO 4014 has no 9 mm head: a 9 mm socket is answered by what it goes on. */
static void
size_without_a_head_is_answered_as_a_socket (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (HmWidthAnswer) got = answer ("hex 9 mm", HM_HEAD_CLEAN, tables);
  gboolean found = FALSE;

  assert_int_equal (got->origin, HM_WIDTH_MEASURED);
  assert_string_equal (got->opening->name, "9");
  assert_int_equal (got->heads->len, 0);
  for (guint i = 0; i < got->turns->len; i++)
    {
      const HmHeadFit *one = &g_array_index (got->turns, HmHeadFit, i);

      if (one->drive.inch && fabs (one->drive.size.mm - 8.73125) < 1e-6)
        found = one->fit.verdict == HM_FIT_USABLE;
    }
  assert_true (found);
}

static void
width_without_a_name_has_no_socket (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (HmWidthAnswer) got = answer ("hex 12.3 mm", HM_HEAD_CLEAN, tables);

  assert_int_equal (got->origin, HM_WIDTH_MEASURED);
  assert_null (got->opening);
  assert_int_equal (got->turns->len, 0);
  assert_string_equal (got->rounded.drive_on->name, "12");
  assert_string_equal (got->next_up.opening->name, "1/2");
}

static void
wear_makes_it_looser_and_paint_tighter (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (HmWidthAnswer) clean = answer ("hex 11/32 in", HM_HEAD_CLEAN, tables);
  g_autoptr (HmWidthAnswer) worn = answer ("hex 11/32 in", HM_HEAD_WORN, tables);
  g_autoptr (HmWidthAnswer) painted = answer ("hex 11/32 in", HM_HEAD_PAINTED, tables);
  double loosest = find_fit (clean, "9", FALSE)->fit.clearance_max.mm;

  assert_true (find_fit (worn, "9", FALSE)->fit.clearance_max.mm > loosest);
  assert_int_equal (find_fit (worn, "9", FALSE)->fit.verdict, HM_FIT_ROUNDS);
  assert_true (find_fit (painted, "9", FALSE)->fit.clearance_min.mm < find_fit (clean, "9", FALSE)->fit.clearance_min.mm);
}

/* ISO 272: 13 mm goes with M8; ASME B18.2.1: 1/2 in goes with 5/16. */
static const struct head_row { const char *name, *thread; double mm; } head_rows[] = {
  { "M8", "M8", 13.0 }, { "M10 × 1.25 LH", "M10 x 1.25 LH", 16.0 }, { "5/16-18", "5/16-18", 12.7 }, { "5/16-24", "5/16-24", 12.7 },
};

static void
thread_has_its_head (void **state)
{
  const struct head_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (GPtrArray) heads = NULL;
  HmThread thread;
  gboolean found = FALSE;

  assert_true (hm_thread_parse (row->thread, tables, &thread, NULL));
  heads = hm_heads_of_thread (&thread, tables);
  for (guint i = 0; i < heads->len; i++)
    {
      const HmHexRow *head = g_ptr_array_index (heads, i);

      found |= head->kind == HM_HEAD_HEX_BOLT && fabs (head->nominal.mm - row->mm) < 1e-9;
    }
  assert_true (found);
}

static void
key_of_the_recess_stands_first (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmDrive drive;
  g_autoptr (GArray) keys = NULL;

  assert_true (hm_drive_parse ("T40", &drive, NULL));
  keys = hm_key_fits (&drive, tables);
  assert_int_equal (keys->len, 3);   /* ISO 10664: T30, T40, T45 */
  assert_int_equal (g_array_index (keys, HmKeyFit, 0).key.number, 40);
  assert_int_equal (g_array_index (keys, HmKeyFit, 1).key.number, 30);
  assert_int_equal (g_array_index (keys, HmKeyFit, 1).verdict, HM_FIT_ROUNDS);
  assert_int_equal (g_array_index (keys, HmKeyFit, 2).key.number, 45);
  assert_int_equal (g_array_index (keys, HmKeyFit, 2).verdict, HM_FIT_WILL_NOT_GO_ON);
}

static void
combination_head_has_another_drive (void **state)
{
  HmFastener both = { .id = "flange-bolt", .n_drives = 2 }, plain = { .id = "bolt", .n_drives = 1 };
  g_autoptr (GPtrArray) all = g_ptr_array_new ();
  g_autoptr (GArray) others = NULL;
  HmDrive recess;

  assert_true (hm_drive_parse ("hex 1/2 in", &both.drives[0], NULL));
  assert_true (hm_drive_parse ("T40", &both.drives[1], NULL));
  assert_true (hm_drive_parse ("T40", &plain.drives[0], NULL));
  assert_true (hm_drive_parse ("T40", &recess, NULL));
  g_ptr_array_add (all, &plain);
  g_ptr_array_add (all, &both);
  others = hm_other_drives (all, &recess);
  assert_int_equal (others->len, 1);
  assert_true (hm_drive_equal (&g_array_index (others, HmOtherDrive, 0).drive, &both.drives[0]));
  assert_ptr_equal (g_array_index (others, HmOtherDrive, 0).example, &both);
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  HM_TEST_SUITE_ADD_ROWS (suite, size_rows, size_is_answered);
  HM_TEST_SUITE_ADD_ROWS (suite, head_rows, thread_has_its_head);
  hm_test_suite_add (suite, "the best stands first", best_stands_first, NULL);
  hm_test_suite_add (suite, "9 mm is a socket without a head", size_without_a_head_is_answered_as_a_socket, NULL);
  hm_test_suite_add (suite, "12.3 mm is a width without a socket", width_without_a_name_has_no_socket, NULL);
  hm_test_suite_add (suite, "worn and painted heads", wear_makes_it_looser_and_paint_tighter, NULL);
  hm_test_suite_add (suite, "the right key stands first", key_of_the_recess_stands_first, NULL);
  hm_test_suite_add (suite, "a combination head has another drive", combination_head_has_another_drive, NULL);
  return hm_test_suite_run (suite, "width-answer");
}

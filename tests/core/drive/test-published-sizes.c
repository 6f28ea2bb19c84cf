/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-fit.h"
#include "hm-hexalobular.h"
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

/* Every published size of heads, keys and hexalobular recesses, row by row against the tables. A field that is empty was not
 * printed by the source and is not compared. */

#define EXACT_MM 1e-9

static const char * const kind_names[] = { "hex bolt", "hex nut", "flange bolt", "flange nut", "machine screw", "machine nut",
                                           "washer screw", "socket cap", "button", "set screw" };

static const HmHexRow *
find_row (const HmTables *tables, const HmTestRow *row)
{
  gsize n;
  const HmHexRow *rows = hm_tables_get_hex (tables, &n), *found = NULL;

  for (gsize i = 0; i < n; i++)
    if (strcmp (rows[i].standard, hm_test_text (row, "standard")) == 0 && strcmp (rows[i].thread, hm_test_text (row, "thread")) == 0
        && strcmp (kind_names[rows[i].kind], hm_test_text (row, "head")) == 0)
      {
        assert_null (found);   /* a size stands once */
        found = &rows[i];
      }
  return found;
}

static double
read_size_mm (const char *text, const char *unit)
{
  g_autofree char *typed = g_strdup_printf ("%s %s", text, strcmp (unit, "inch") == 0 ? "in" : "mm");
  HmQuantity size;

  assert_true (hm_quantity_parse (typed, HM_QUANTITY_LENGTH, HM_UNIT_NONE, &size, NULL));
  return size.value;
}

static void
check_size (const HmTestRow *row, const char *column, HmLength got)
{
  const char *text = hm_test_text (row, column);

  if (*text != '\0')
    hm_test_near (row, got.mm, read_size_mm (text, hm_test_text (row, "unit")), EXACT_MM);
}

static void
head_matches_source (void **state)
{
  const HmTestRow *row = *state;
  const HmHexRow *got = find_row (row->tables, row);

  if (got == NULL)
    fail_msg ("%s is not in the table (%s)", row->name, hm_test_text (row, "source"));
  assert_int_equal (got->inch, strcmp (hm_test_text (row, "unit"), "inch") == 0);
  check_size (row, "nominal", got->nominal);
  check_size (row, "min", got->min);
  check_size (row, "max", got->max);
}

static void
check_mm (const HmTestRow *row, const char *column, HmLength got)
{
  if (*hm_test_text (row, column) != '\0')
    hm_test_near (row, got.mm, hm_test_number (row, column), EXACT_MM);
}

static void
recess_matches_source (void **state)
{
  const HmTestRow *row = *state;
  const HmHexalobularRow *got = hm_hexalobular_find ((int) hm_test_number (row, "number"), FALSE, row->tables);

  assert_non_null (got);
  check_mm (row, "a", got->a);
  check_mm (row, "b", got->b);
  check_mm (row, "gauge_a_max", got->gauge_a_max);
  check_mm (row, "gauge_a_min", got->gauge_a_min);
  check_mm (row, "gauge_b_max", got->gauge_b_max);
  check_mm (row, "gauge_b_min", got->gauge_b_min);
  assert_true (got->gauge_a_max.mm < got->a.mm && got->gauge_b_max.mm < got->b.mm);   /* a go gauge goes into the recess */
}

/* Sizes that an encyclopedia article on widths across flats calls the same ("Width across flats"): the larger of the two turns the
 * head of the other. Of 1/2 in and 13 mm it is said that the larger rounds the smaller. */
static const struct claim_row { const char *name, *inch; double metric; HmFitVerdict at_worst; } claim_rows[] = {
  { "5/32 in and 4 mm are called the same", "5/32", 4.0, HM_FIT_USABLE },
  { "5/16 in and 8 mm are called the same", "5/16", 8.0, HM_FIT_USABLE },
  { "3/4 in and 19 mm are called the same", "3/4", 19.0, HM_FIT_USABLE },
  { "13 mm rounds 1/2 in", "1/2", 13.0, HM_FIT_ROUNDS },
};

static void
larger_size_turns_the_smaller_head (void **state)
{
  const struct claim_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  double inch_mm = read_size_mm (row->inch, "inch");
  gboolean inch_is_larger = inch_mm > row->metric;
  HmDrive drive = { .kind = HM_DRIVE_HEX, .size = { inch_is_larger ? row->metric : inch_mm }, .inch = !inch_is_larger };
  const HmOpeningRow *opening = hm_opening_find ((HmLength) { MAX (inch_mm, row->metric) }, inch_is_larger, tables);
  HmHead head;
  HmFit fit;

  if (!hm_head_from_drive (&drive, tables, &head))
    head = hm_head_measured (drive.size, (HmLength) { 0.05 }, drive.inch);
  assert_non_null (opening);
  fit = hm_fit (opening, &head, HM_HEAD_CLEAN, tables);
  if (row->at_worst == HM_FIT_ROUNDS)
    assert_int_equal (fit.verdict, HM_FIT_ROUNDS);
  else if (fit.verdict > row->at_worst)
    fail_msg ("verdict %d, looseness %.2f", fit.verdict, fit.looseness);
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  hm_test_suite_add_file (suite, "hex-heads.csv", NULL, head_matches_source);
  hm_test_suite_add_file (suite, "hexalobular.csv", NULL, recess_matches_source);
  HM_TEST_SUITE_ADD_ROWS (suite, claim_rows, larger_size_turns_the_smaller_head);
  return hm_test_suite_run (suite, "published-sizes");
}

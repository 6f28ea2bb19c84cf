/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-fit.h"
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

#define MM_PER_INCH 25.4
#define RADIANS (G_PI / 180.0)

/* A size on its own head fits. Of the others only pairs are asked whose sizes leave no doubt. */
static const struct fit_row {
  const char *name;
  double opening_mm;      /* nominal */
  gboolean inch;
  const char *head;
  HmHeadCondition condition;
  HmFitVerdict verdict;
} fit_rows[] = {
  { "13 on 13", 13.0, FALSE, "hex 13 mm", HM_HEAD_CLEAN, HM_FIT_FITS },
  { "1/2 on 1/2", 12.7, TRUE, "hex 1/2 in", HM_HEAD_CLEAN, HM_FIT_FITS },
  { "7/16 on 7/16", 11.1125, TRUE, "hex 7/16 in", HM_HEAD_CLEAN, HM_FIT_FITS },
  { "19 on 3/4", 19.0, FALSE, "hex 3/4 in", HM_HEAD_CLEAN, HM_FIT_FITS },
  { "3/4 on 19", 19.05, TRUE, "hex 19 mm", HM_HEAD_CLEAN, HM_FIT_FITS },
  { "8 on 5/16", 8.0, FALSE, "hex 5/16 in", HM_HEAD_CLEAN, HM_FIT_FITS },
  { "5/16 on 8", 7.9375, TRUE, "hex 8 mm", HM_HEAD_CLEAN, HM_FIT_FITS },
  { "9 on 11/32", 9.0, FALSE, "hex 11/32 in", HM_HEAD_CLEAN, HM_FIT_USABLE },
  { "16 on 5/8", 16.0, FALSE, "hex 5/8 in", HM_HEAD_CLEAN, HM_FIT_USABLE },
  { "13 on 1/2", 13.0, FALSE, "hex 1/2 in", HM_HEAD_CLEAN, HM_FIT_ROUNDS },
  { "10 on 3/8", 10.0, FALSE, "hex 3/8 in", HM_HEAD_CLEAN, HM_FIT_ROUNDS },
  { "11/16 on 17", 17.4625, TRUE, "hex 17 mm", HM_HEAD_CLEAN, HM_FIT_ROUNDS },
  { "19 on 17", 19.0, FALSE, "hex 17 mm", HM_HEAD_CLEAN, HM_FIT_ROUNDS },
  { "22 on 17", 22.0, FALSE, "hex 17 mm", HM_HEAD_CLEAN, HM_FIT_ROUNDS },
  { "3/8 on 10", 9.525, TRUE, "hex 10 mm", HM_HEAD_CLEAN, HM_FIT_WILL_NOT_GO_ON },
  { "12 on 13", 12.0, FALSE, "hex 13 mm", HM_HEAD_CLEAN, HM_FIT_WILL_NOT_GO_ON },
  { "1/2 on 9/16", 12.7, TRUE, "hex 9/16 in", HM_HEAD_CLEAN, HM_FIT_WILL_NOT_GO_ON },
  { "13 on a worn 13", 13.0, FALSE, "hex 13 mm", HM_HEAD_WORN, HM_FIT_USABLE },
  { "13 on a painted 13", 13.0, FALSE, "hex 13 mm", HM_HEAD_PAINTED, HM_FIT_USABLE },
};

/* Head and opening in mm: the closed form against turning the head's twelve corner points until one leaves the opening. */
static const struct angle_row { const char *name; double head, opening; } angle_rows[] = {
  { "hair of play", 13.0, 13.01 }, { "usual", 12.73, 13.24 }, { "small", 5.32, 5.62 }, { "loose", 9.32, 10.19 },
  { "nearly spins", 16.73, 18.80 },
};

static const struct standard_row { const char *name; double across_mm; } iso_272_rows[] = {   /* ISO 272 */
  { "M5", 8.0 }, { "M6", 10.0 }, { "M8", 13.0 }, { "M10", 16.0 }, { "M12", 18.0 }, { "M14", 21.0 }, { "M16", 24.0 },
};

static HmHead
read_head (const char *text, const HmTables *tables)
{
  HmDrive drive;
  HmHead head;

  assert_true (hm_drive_parse (text, &drive, NULL));
  assert_true (hm_head_from_drive (&drive, tables, &head));
  return head;
}

static void
verdict_is_right (void **state)
{
  const struct fit_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmHead head = read_head (row->head, tables);
  const HmOpeningRow *opening = hm_opening_find ((HmLength) { row->opening_mm }, row->inch, tables);
  HmFit fit;

  assert_non_null (opening);
  fit = hm_fit (opening, &head, row->condition, tables);
  if (fit.verdict != row->verdict)
    fail_msg ("verdict %d, reason %d, looseness %.2f, goes on %.2f", fit.verdict, fit.reason, fit.looseness, fit.goes_on);
  assert_true (fit.contact >= 0.5 && fit.contact < 1.0);
  assert_true (fit.clearance_min.mm < fit.clearance_max.mm);
}

/* Twelve ends of flats of a head whose corners are cut at e = 1.13 s; inside while no point passes a flat of the opening. */
static gboolean
is_inside (double head, double opening, double turn)
{
  double corner = 1.13 * head / 2.0, half = acos (1.0 / 1.13);

  for (int flat = 0; flat < 6; flat++)
    for (int side = -1; side <= 1; side += 2)
      {
        double at = flat * 60.0 * RADIANS + side * half + turn;

        for (int wall = 0; wall < 6; wall++)
          if (corner * cos (at - wall * 60.0 * RADIANS) > opening / 2.0)
            return FALSE;
      }
  return TRUE;
}

static void
angle_matches_turning (void **state)
{
  const struct angle_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmOpeningRow opening = { "x", { row->opening }, { row->opening }, { row->opening }, FALSE, { HM_PROVENANCE_COMPUTED, "x" } };
  HmHead head = hm_head_measured ((HmLength) { row->head }, (HmLength) { 0.0 }, FALSE);
  HmFit fit = hm_fit (&opening, &head, HM_HEAD_CLEAN, tables);
  double turn = 0.0;

  while (turn < 30.0 && is_inside (row->head, row->opening, turn * RADIANS))
    turn += 0.001;
  if (fabs (fit.free_angle_max - turn) > 0.002)
    fail_msg ("%.4f degrees, turning gives %.4f", fit.free_angle_max, turn);
}

static void
opening_matches_source (void **state)
{
  const HmTestRow *row = *state;
  const HmOpeningRow *opening = NULL;
  HmQuantity nominal;
  g_autofree char *text = g_strconcat (hm_test_text (row, "nominal"), " in", NULL);

  assert_true (hm_quantity_parse (text, HM_QUANTITY_LENGTH, HM_UNIT_NONE, &nominal, NULL));
  opening = hm_opening_find ((HmLength) { nominal.value }, TRUE, row->tables);
  assert_non_null (opening);
  hm_test_near (row, (strcmp (hm_test_text (row, "quantity"), "min") == 0 ? opening->min.mm : opening->max.mm) / MM_PER_INCH,
                hm_test_number (row, "value"), hm_test_number (row, "tolerance"));
}

static void
head_matches_iso_272 (void **state)
{
  const struct standard_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  gsize n;
  const HmHexRow *rows = hm_tables_get_hex (tables, &n);
  guint seen = 0;

  for (gsize i = 0; i < n; i++)
    if (strcmp (rows[i].thread, row->name) == 0
        && (strcmp (rows[i].standard, "ISO 4017") == 0 || strcmp (rows[i].standard, "ISO 4032") == 0))
      {
        assert_true (fabs (rows[i].nominal.mm - row->across_mm) < 1e-9);
        seen++;
      }
  assert_int_equal (seen, 2);
}

/* The share of pairs that go together, against a grid of both bands: the opening inside the head's band, and reaching out of it. */
static const struct share_row { const char *name, *head; double opening_mm; gboolean inch; } share_rows[] = {
  { "share of 1/2 in on 13 mm", "hex 13 mm", 12.7, TRUE },
  { "share of 11 mm on 7/16 in", "hex 7/16 in", 11.0, FALSE },
  { "share of 3/8 in on 10 mm", "hex 10 mm", 9.525, TRUE },
};

static void
share_matches_a_grid (void **state)
{
  const struct share_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmHead head = read_head (row->head, tables);
  const HmOpeningRow *opening = hm_opening_find ((HmLength) { row->opening_mm }, row->inch, tables);
  double got = hm_fit (opening, &head, HM_HEAD_CLEAN, tables).goes_on;
  int goes = 0, steps = 1000;

  for (int i = 0; i < steps; i++)
    for (int j = 0; j < steps; j++)
      goes += opening->min.mm + (opening->max.mm - opening->min.mm) * (i + 0.5) / steps
              >= head.min.mm + (head.max.mm - head.min.mm) * (j + 0.5) / steps;
  if (fabs (got - (double) goes / steps / steps) > 0.002)
    fail_msg ("%.4f, the grid gives %.4f", got, (double) goes / steps / steps);
}

static void
looser_moves_contact_to_the_corner (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmHead head = read_head ("hex 17 mm", tables);
  HmFit snug = hm_fit (hm_opening_find ((HmLength) { 17.0 }, FALSE, tables), &head, HM_HEAD_CLEAN, tables);
  HmFit loose = hm_fit (hm_opening_find ((HmLength) { 18.0 }, FALSE, tables), &head, HM_HEAD_CLEAN, tables);
  HmFit spins = hm_fit (hm_opening_find ((HmLength) { 22.0 }, FALSE, tables), &head, HM_HEAD_CLEAN, tables);

  assert_true (snug.contact < loose.contact && loose.contact < spins.contact);
  assert_int_equal (spins.reason, HM_FIT_SPINS);
  assert_int_equal (snug.reason, HM_FIT_PROPER);
}

static void
other_drives_have_no_head (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmDrive key, odd;
  HmHead head = { .max = { -1.0 } };

  assert_true (hm_drive_parse ("hex socket 5 mm", &key, NULL));
  assert_true (hm_drive_parse ("hex 10.3 mm", &odd, NULL));
  assert_false (hm_head_from_drive (&key, tables, &head));
  assert_false (hm_head_from_drive (&odd, tables, &head));
  assert_true (head.max.mm < 0.0);
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  HM_TEST_SUITE_ADD_ROWS (suite, fit_rows, verdict_is_right);
  HM_TEST_SUITE_ADD_ROWS (suite, angle_rows, angle_matches_turning);
  HM_TEST_SUITE_ADD_ROWS (suite, iso_272_rows, head_matches_iso_272);
  hm_test_suite_add_file (suite, "openings.csv", NULL, opening_matches_source);
  HM_TEST_SUITE_ADD_ROWS (suite, share_rows, share_matches_a_grid);
  hm_test_suite_add (suite, "looser moves the contact to the corner", looser_moves_contact_to_the_corner, NULL);
  hm_test_suite_add (suite, "other drives have no head", other_drives_have_no_head, NULL);
  return hm_test_suite_run (suite, "fit");
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-drive-outline.h"
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <cmocka.h>

#define EXACT 1e-9   /* mm: the outline is computed, so only rounding of doubles is allowed */

/* Nominal A and B, mm: ISO 10664. */
static const struct lobe_row { const char *name; double a, b; } lobe_rows[] = {
  { "T10", 2.80, 2.05 }, { "T20", 3.95, 2.85 }, { "T25", 4.50, 3.25 },
  { "T30", 5.60, 4.05 }, { "T40", 6.75, 4.85 }, { "T50", 8.95, 6.45 },
};

static const struct flat_row { const char *name; HmDriveKind kind; double mm; guint corners; } flat_rows[] = {
  { "hex 1/2 in", HM_DRIVE_HEX, 12.7, 6 },
  { "hex socket 5 mm", HM_DRIVE_HEX_SOCKET, 5.0, 6 },
  { "square 3/8 in", HM_DRIVE_SQUARE, 9.525, 4 },
};

static const struct empty_row { const char *name; HmDrive drive; double a, b; } empty_rows[] = {
  { "slot", { HM_DRIVE_SLOT, { 0 }, 0, FALSE }, 0, 0 },
  { "H2", { HM_DRIVE_CROSS_H, { 0 }, 2, FALSE }, 0, 0 },
  { "hand", { HM_DRIVE_HAND, { 0 }, 0, FALSE }, 0, 0 },
  { "hex without a size", { HM_DRIVE_HEX, { 0 }, 0, FALSE }, 0, 0 },
  { "T30 without A and B", { HM_DRIVE_HEXALOBULAR, { 0 }, 30, FALSE }, 0, 0 },
  { "T30 with B above A", { HM_DRIVE_HEXALOBULAR, { 0 }, 30, FALSE }, 4.05, 5.60 },
};

static double
radius_of (const GArray *outline, guint index)
{
  const HmOutlinePoint *point = &g_array_index (outline, HmOutlinePoint, index % outline->len);

  return hypot (point->x_mm, point->y_mm);
}

/* The nearest that the outline comes to the middle. */
static double
inner_radius (const GArray *outline)
{
  double nearest = G_MAXDOUBLE;

  for (guint i = 0; i < outline->len; i++)
    nearest = MIN (nearest, radius_of (outline, i));
  return nearest;
}

static void
lobes_reach_a_and_b (void **state)
{
  const struct lobe_row *row = *state;
  HmDrive drive = { HM_DRIVE_HEXALOBULAR, { 0 }, 30, FALSE };
  g_autoptr(GArray) outline = hm_drive_outline (&drive, (HmLength) { row->a }, (HmLength) { row->b });

  assert_true (fabs (2 * hm_drive_outline_radius_mm (outline) - row->a) < EXACT);
  assert_true (fabs (2 * inner_radius (outline) - row->b) < EXACT);
}

/* Going round, every point is farther round than the last: the outline never crosses itself. */
static void
lobes_go_round_once (void **state)
{
  const struct lobe_row *row = *state;
  HmDrive drive = { HM_DRIVE_HEXALOBULAR, { 0 }, 30, FALSE };
  g_autoptr(GArray) outline = hm_drive_outline (&drive, (HmLength) { row->a }, (HmLength) { row->b });
  double turned = 0;

  for (guint i = 0; i < outline->len; i++)
    {
      const HmOutlinePoint *from = &g_array_index (outline, HmOutlinePoint, i);
      const HmOutlinePoint *to = &g_array_index (outline, HmOutlinePoint, (i + 1) % outline->len);
      double step = atan2 (from->x_mm * to->y_mm - from->y_mm * to->x_mm, from->x_mm * to->x_mm + from->y_mm * to->y_mm);

      assert_true (step > 0);
      turned += step;
    }
  assert_true (fabs (turned - 2 * G_PI) < EXACT);
}

static void
flats_are_as_far_apart_as_the_size (void **state)
{
  const struct flat_row *row = *state;
  HmDrive drive = { row->kind, { row->mm }, 0, FALSE };
  g_autoptr(GArray) outline = hm_drive_outline (&drive, (HmLength) { 0 }, (HmLength) { 0 });
  double left = 0, right = 0;

  for (guint i = 0; i < outline->len; i++)
    {
      left = MIN (left, g_array_index (outline, HmOutlinePoint, i).x_mm);
      right = MAX (right, g_array_index (outline, HmOutlinePoint, i).x_mm);
    }
  assert_int_equal (outline->len, row->corners);
  assert_true (fabs (right - left - row->mm) < EXACT);
}

static void
nothing_is_made_up (void **state)
{
  const struct empty_row *row = *state;
  g_autoptr(GArray) outline = hm_drive_outline (&row->drive, (HmLength) { row->a }, (HmLength) { row->b });

  assert_int_equal (outline->len, 0);
  assert_true (hm_drive_outline_radius_mm (outline) < EXACT);
}

/* ISO 4014, M8: s 13, e at least 14.38. */
static void
head_has_flats_and_cut_corners (void **state)
{
  g_autoptr(GArray) outline = hm_head_outline ((HmLength) { 13.0 }, (HmLength) { 14.38 });
  double right = 0, far = 0;

  for (guint i = 0; i < outline->len; i++)
    {
      const HmOutlinePoint *point = &g_array_index (outline, HmOutlinePoint, i);

      right = MAX (right, point->x_mm);
      far = MAX (far, hypot (point->x_mm, point->y_mm));
    }
  assert_int_equal (outline->len, 12);
  assert_true (fabs (2 * right - 13.0) < EXACT);
  assert_true (fabs (2 * far - 14.38) < EXACT);
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  HM_TEST_SUITE_ADD_ROWS (suite, lobe_rows, lobes_reach_a_and_b);
  HM_TEST_SUITE_ADD_ROWS (suite, lobe_rows, lobes_go_round_once);
  HM_TEST_SUITE_ADD_ROWS (suite, flat_rows, flats_are_as_far_apart_as_the_size);
  HM_TEST_SUITE_ADD_ROWS (suite, empty_rows, nothing_is_made_up);
  hm_test_suite_add (suite, "a real head", head_has_flats_and_cut_corners, NULL);
  return hm_test_suite_run (suite, "drive-outline");
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-fit.h"

#include <math.h>

#define MM_PER_INCH 25.4
#define DEGREES_PER_RADIAN (180.0 / G_PI)
#define SAME_MM 0.001

/* Judgements, common practice, no source; see the header. */
#define CORNERS_PER_FLATS 1.13
#define CRUSH_PER_FLATS 0.005
#define WORN_SHARE 0.02
#define PAINT_MM 0.2
#define FITS_LOOSENESS 1.1
#define USABLE_LOOSENESS 1.5
#define NEVER_GOES_ON 0.3
#define ALWAYS_GOES_ON 0.9
#define SPIN_DEGREES 30.0

gboolean
hm_head_from_row (const HmHexRow *row, HmHead *out)
{
  g_return_val_if_fail (row != NULL && out != NULL, FALSE);
  if (row->min.mm <= 0.0)
    return FALSE;
  *out = (HmHead) { row->nominal, row->min, row->max, row->inch, row->standard };
  return TRUE;
}

gboolean
hm_head_from_drive (const HmDrive *drive, const HmTables *tables, HmHead *out)
{
  HmHead found = { 0 }, one;
  gsize n;
  const HmHexRow *rows;

  g_return_val_if_fail (drive != NULL && tables != NULL && out != NULL, FALSE);
  rows = hm_tables_get_hex (tables, &n);
  for (gsize i = 0; drive->kind == HM_DRIVE_HEX && i < n; i++)
    {
      if (rows[i].inch != drive->inch || fabs (rows[i].nominal.mm - drive->size.mm) > SAME_MM
          || !hm_head_from_row (&rows[i], &one))
        continue;
      if (found.max.mm <= 0.0)
        found = one;
      found.standard = g_strcmp0 (found.standard, one.standard) == 0 ? found.standard : NULL;
      found.min.mm = MIN (found.min.mm, one.min.mm);
      found.max.mm = MAX (found.max.mm, one.max.mm);
    }
  if (found.max.mm <= 0.0)
    return FALSE;
  *out = found;
  return TRUE;
}

HmHead
hm_head_measured (HmLength across_flats, HmLength error, gboolean inch)
{
  HmHead head = { across_flats, { across_flats.mm - error.mm }, { across_flats.mm + error.mm }, inch, NULL };

  return head;
}

HmLength
hm_head_across_corners (HmLength across_flats)
{
  return (HmLength) { CORNERS_PER_FLATS * across_flats.mm };
}

const HmOpeningRow *
hm_opening_find (HmLength nominal, gboolean inch, const HmTables *tables)
{
  gsize n;
  const HmOpeningRow *rows;

  g_return_val_if_fail (tables != NULL, NULL);
  rows = hm_tables_get_openings (tables, &n);
  for (gsize i = 0; i < n; i++)
    if (rows[i].inch == inch && fabs (rows[i].nominal.mm - nominal.mm) < SAME_MM)
      return &rows[i];
  return NULL;
}

/* Largest opening of a nominal size: from the table, else by the formula of ASME B18.2.2, appendix. */
static double
largest_proper_opening_mm (HmLength nominal, gboolean inch, const HmTables *tables)
{
  const HmOpeningRow *row = hm_opening_find (nominal, inch, tables);
  double w = nominal.mm / MM_PER_INCH;

  return row != NULL ? row->max.mm : (1.005 * w + 0.001 + 0.005 * w + 0.004) * MM_PER_INCH;
}

static double
free_angle_degrees (double opening, double head)
{
  double corners = CORNERS_PER_FLATS * head;

  if (opening <= head)
    return 0.0;
  if (opening >= corners)
    return SPIN_DEGREES;
  return (acos (head / corners) - acos (opening / corners)) * DEGREES_PER_RADIAN;
}

/* Middle of the contact along the half flat, from 0.5 to 1. */
static double
contact_towards_corner (double angle_degrees, double head)
{
  double half_flat = head / 2.0 * tan (acos (1.0 / CORNERS_PER_FLATS));
  double width = half_flat;

  if (angle_degrees > 0.0)
    width = MIN (half_flat, CRUSH_PER_FLATS * head / tan (angle_degrees / DEGREES_PER_RADIAN));
  return 1.0 - width / half_flat / 2.0;
}

/* ∫ over the head's band of the part of the opening's band above it; both even. */
static double
share_that_goes_on (double low, double high, double head_min, double head_max)
{
  double inside_low, inside_high, area;

  if (head_max - head_min < SAME_MM)
    return high - low < SAME_MM ? low >= head_min : CLAMP ((high - head_min) / (high - low), 0.0, 1.0);
  inside_low = CLAMP (low, head_min, head_max);
  inside_high = CLAMP (high, head_min, head_max);
  area = inside_low - head_min;   /* heads below every opening */
  if (high > low)                 /* heads inside the opening's band: a falling share */
    area += ((high - inside_low) + (high - inside_high)) / 2.0 / (high - low) * (inside_high - inside_low);
  return area / (head_max - head_min);
}

HmHead
hm_head_in_condition (const HmHead *self, HmHeadCondition condition)
{
  HmHead changed = { 0 };

  g_return_val_if_fail (self != NULL, changed);
  changed = *self;
  if (condition == HM_HEAD_WORN)
    changed.min.mm *= 1.0 - WORN_SHARE;
  else if (condition == HM_HEAD_PAINTED)
    changed.max.mm += PAINT_MM;
  return changed;
}

static void
judge (HmFit *fit, gboolean proper)
{
  if (fit->goes_on < NEVER_GOES_ON)
    fit->verdict = HM_FIT_WILL_NOT_GO_ON, fit->reason = HM_FIT_TOO_SMALL;
  else if (fit->free_angle_max >= SPIN_DEGREES)
    fit->verdict = HM_FIT_ROUNDS, fit->reason = HM_FIT_SPINS;
  else if (fit->looseness > USABLE_LOOSENESS)
    fit->verdict = HM_FIT_ROUNDS, fit->reason = HM_FIT_TOO_LOOSE;
  else if (fit->goes_on < ALWAYS_GOES_ON)
    fit->verdict = HM_FIT_USABLE, fit->reason = HM_FIT_MAY_NOT_GO_ON;
  else if (fit->looseness > FITS_LOOSENESS)
    fit->verdict = HM_FIT_USABLE, fit->reason = HM_FIT_LOOSE;
  else
    fit->verdict = HM_FIT_FITS, fit->reason = proper ? HM_FIT_PROPER : HM_FIT_AS_SNUG;
}

HmFit
hm_fit (const HmOpeningRow *opening, const HmHead *head, HmHeadCondition condition, const HmTables *tables)
{
  HmFit fit = { 0 };
  HmHead worst;
  double proper_clearance;
  gboolean proper;

  g_return_val_if_fail (opening != NULL && head != NULL && tables != NULL, fit);
  worst = hm_head_in_condition (head, condition);
  proper = opening->inch == head->inch && fabs (opening->nominal.mm - head->nominal.mm) < SAME_MM;
  fit.clearance_min.mm = opening->min.mm - worst.max.mm;
  fit.clearance_max.mm = opening->max.mm - worst.min.mm;
  fit.free_angle_min = free_angle_degrees (opening->min.mm, worst.max.mm);
  fit.free_angle_max = free_angle_degrees (opening->max.mm, worst.min.mm);
  fit.contact = contact_towards_corner (fit.free_angle_max, worst.min.mm);
  fit.goes_on = share_that_goes_on (opening->min.mm, opening->max.mm, worst.min.mm, worst.max.mm);
  /* The sound head sets the measure: wear makes every opening looser than it should be. */
  proper_clearance = largest_proper_opening_mm (head->nominal, head->inch, tables) - head->min.mm;
  fit.looseness = MAX (0.0, fit.clearance_max.mm) / proper_clearance;
  judge (&fit, proper);
  return fit;
}

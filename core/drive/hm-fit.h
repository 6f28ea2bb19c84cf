/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-drive.h"
#include "hm-tables.h"
G_BEGIN_DECLS

/*
 * How an opening (wrench or socket) sits on a hexagon head or nut.
 *
 * Model. Both are regular hexagons with their own limits across flats, s for the head and S for the opening. The
 * corners of a real head are rounded: across corners it measures e = 1.13 s (the least of ISO 4014 and ISO 4032; ASME
 * B18.2.1 has 1.14). The tool turns freely until the end of a flat touches:
 *   φ = arccos (s / e) − arccos (S / e), in degrees to either side; past S = e the tool spins.
 * From there on the flats meet at the angle φ. The contact is as wide as the steel gives way, 0.5 % of s deep, so it is
 * depth / tan φ wide, at most half a flat. Its middle lies between 0.5 (half the flat shares the force) and 1 (all of
 * it on the corner): that is how far the contact has moved towards the corner.
 * The verdict compares the loosest case with the loosest that the proper opening of the same nominal size gives on the
 * same head: up to 1.1 of that clearance it fits, up to 1.5 it is usable, beyond it rounds the corners. Where the two
 * tolerance bands overlap, the share of pairs that go together counts: below 30 % the tool will not go on, below 90 %
 * it is at best usable. The depth, the limits and the shares are judgements: common practice, no source.
 */

typedef enum { HM_FIT_FITS, HM_FIT_USABLE, HM_FIT_ROUNDS, HM_FIT_WILL_NOT_GO_ON } HmFitVerdict;

/** HmFitReason: what decided. */
typedef enum {
  HM_FIT_PROPER,           /* the size that belongs on this head */
  HM_FIT_AS_SNUG,          /* another size, no looser than the proper one */
  HM_FIT_LOOSE,            /* looser than the proper one, the corners still hold */
  HM_FIT_TOO_LOOSE,
  HM_FIT_SPINS,            /* turns round the head */
  HM_FIT_MAY_NOT_GO_ON,    /* some heads of this size are larger than some of these openings */
  HM_FIT_TOO_SMALL
} HmFitReason;

/** HmHeadCondition: what years outside did to it. */
typedef enum {
  HM_HEAD_CLEAN,
  HM_HEAD_WORN,            /* rusted or chewed: across flats up to 2 % below its limit */
  HM_HEAD_PAINTED          /* painted or galvanized: up to 0.2 mm above */
} HmHeadCondition;

/** HmHead: a head or nut with its limits across flats. A plain value; @standard is borrowed, NULL if several. */
typedef struct { HmLength nominal, min, max; gboolean inch; const char *standard; } HmHead;

/**
 * HmFit: a plain value. The loosest case is the smallest head in the largest opening.
 * @clearance_min, @clearance_max: opening less head across flats; negative: does not go on
 * @free_angle_min, @free_angle_max: degrees to either side; 30 when the tool spins
 * @contact: middle of the contact in the loosest case, from 0.5 (half of each flat) to 1 (the corner)
 * @goes_on: share of pairs that go together, 0 to 1, both sizes spread evenly over their limits
 * @looseness: loosest clearance as a multiple of that of the proper opening
 */
typedef struct {
  HmFitVerdict verdict;
  HmFitReason reason;
  HmLength clearance_min, clearance_max;
  double free_angle_min, free_angle_max;
  double contact;
  double goes_on;
  double looseness;
} HmFit;

/**
 * hm_head_from_drive: the head or nut that @drive names, with the widest limits that any standard gives this size.
 * Returns: %FALSE if @drive is no outside hexagon, or no standard has that size; @out is then unchanged
 */
gboolean hm_head_from_drive (const HmDrive *drive, const HmTables *tables, HmHead *out) G_GNUC_WARN_UNUSED_RESULT;

/** hm_head_from_row: one row of the table of heads. %FALSE for keys, which have no limits. */
gboolean hm_head_from_row (const HmHexRow *row, HmHead *out) G_GNUC_WARN_UNUSED_RESULT;

/** hm_head_measured: a head measured with a caliper, @error to either side. */
HmHead hm_head_measured (HmLength across_flats, HmLength error, gboolean inch);

/** hm_head_in_condition: the limits that a sound head has after years outside. */
HmHead hm_head_in_condition (const HmHead *self, HmHeadCondition condition);

/** hm_head_across_corners: what the rounded corners of a head of that width across flats measure, by the model above. */
HmLength hm_head_across_corners (HmLength across_flats);

/** hm_opening_find: the opening of a nominal size; borrowed, NULL if the table lacks it. */
const HmOpeningRow *hm_opening_find (HmLength nominal, gboolean inch, const HmTables *tables);

HmFit hm_fit (const HmOpeningRow *opening, const HmHead *head, HmHeadCondition condition, const HmTables *tables);

G_END_DECLS

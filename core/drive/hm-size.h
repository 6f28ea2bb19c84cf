/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-fit.h"
G_BEGIN_DECLS

/*
 * Questions about sizes of openings, answered by searching the series and computing each fit.
 */

/** HmSizeFit: an opening (borrowed from the tables) and how it sits. */
typedef struct { const HmOpeningRow *opening; HmFit fit; } HmSizeFit;

/**
 * HmSizeNeighbours: the sizes next to a width, each NULL where the series ends; borrowed. A size equal to the width is
 * neither below nor above.
 */
typedef struct {
  const HmOpeningRow *inch_below, *inch_above;
  const HmOpeningRow *metric_below, *metric_above;
} HmSizeNeighbours;

HmSizeNeighbours hm_size_neighbours (HmLength width, const HmTables *tables);

/**
 * hm_size_equivalents: the sizes of the other system nearest to a nominal size, nearest first, within 5 %.
 * @head: the head in question, for the fits: "is 9 mm safe on this 11/32?"
 * Returns: (transfer full) (element-type HmSizeFit)
 */
GArray *hm_size_equivalents (const HmHead *head, HmHeadCondition condition, const HmTables *tables);

/**
 * hm_size_drivers: every opening that drives the head, best verdict first, then the tightest.
 * Returns: (transfer full) (element-type HmSizeFit): fits and usable ones only
 */
GArray *hm_size_drivers (const HmHead *head, HmHeadCondition condition, const HmTables *tables);

/**
 * HmRoundedChoice: what to try on a head whose corners have gone.
 * @drive_on: the largest opening that is no larger than what is left across flats, to be tapped on; NULL if none
 * @interference: how much larger the head is than the middle of that opening
 * @next_up: the smallest opening that goes on by hand; NULL if none
 */
typedef struct { const HmOpeningRow *drive_on; HmLength interference; const HmOpeningRow *next_up; } HmRoundedChoice;

/**
 * hm_size_for_rounded:
 * @across_flats: what is left, by caliper across the least rounded pair of flats
 * Only openings down to 3 % below the width are driven on; a smaller one splits before it goes (common practice, no source).
 */
HmRoundedChoice hm_size_for_rounded (HmLength across_flats, const HmTables *tables);

/**
 * hm_key_fit: how a hexagon key sits in a socket screw. No limits of keys and sockets are known here, so nominal sizes
 * decide: the same size fits; up to 1 % smaller is usable, up to 0.5 % larger may not go in (judgement, no source).
 */
HmFitVerdict hm_key_fit (HmLength key, HmLength socket);

G_END_DECLS

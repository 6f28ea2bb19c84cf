/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-size.h"
#include "hm-thread.h"
G_BEGIN_DECLS

/*
 * All that can be said about one width across flats, as a head and as the socket of that size. Worked out from the tables
 * by hm-fit and hm-size; nothing is listed by hand.
 */

/** HmWidthOrigin: what the limits of the head are from. */
typedef enum {
  HM_WIDTH_STANDARD,       /* a standard has heads of this size */
  HM_WIDTH_MEASURED        /* none has: taken as a head measured with a caliper, 0.05 mm to either side */
} HmWidthOrigin;

/** HmHeadFit: another head that the socket of this size is put on. A plain value. */
typedef struct { HmDrive drive; HmHead head; HmFit fit; } HmHeadFit;

/**
 * HmWidthAnswer:
 * @opening: the wrench and socket of this size; borrowed, NULL if none is made
 * @neighbours: the sizes next to it; borrowed
 * @fits: (element-type HmSizeFit): what may be put on this head: everything that drives it, everything within 5 %, and the sizes
 *   next to it; the best first
 * @heads: (element-type HmHexRow *): heads, nuts and keys that have this size; borrowed
 * @turns: (element-type HmHeadFit): other heads on which the socket of this size goes without spinning; the best first
 * @next_up: the next larger socket of either system and how it sits; its opening is NULL if there is none
 * @rounded_width: what is left across flats when the corners have gone: the smallest worn head
 * @rounded: what to try then
 */
typedef struct {
  HmDrive drive;
  HmWidthOrigin origin;
  HmHead head;
  const HmOpeningRow *opening;
  HmSizeNeighbours neighbours;
  GArray *fits;
  GPtrArray *heads;
  GArray *turns;
  HmSizeFit next_up;
  HmLength rounded_width;
  HmRoundedChoice rounded;
} HmWidthAnswer;

/** hm_width_answer_new: @drive is an outside hexagon. @tables has to outlive the answer. */
HmWidthAnswer *hm_width_answer_new  (const HmDrive *drive, HmHeadCondition condition, const HmTables *tables);
void           hm_width_answer_free (HmWidthAnswer *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmWidthAnswer, hm_width_answer_free)

/** hm_heads_of_size: (transfer container) (element-type HmHexRow *): heads and nuts, or keys, that have this size; borrowed rows. */
GPtrArray *hm_heads_of_size (const HmDrive *drive, const HmTables *tables);

/** hm_heads_of_thread: (transfer container) (element-type HmHexRow *): heads, nuts and keys that go with a thread. */
GPtrArray *hm_heads_of_thread (const HmThread *thread, const HmTables *tables);

G_END_DECLS

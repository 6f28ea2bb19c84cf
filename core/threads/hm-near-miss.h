/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-thread.h"
G_BEGIN_DECLS

/*
 * What happens when a bolt of one thread is turned into a hole of another. Worked out from the two tolerance bands;
 * nothing is listed by hand.
 *
 * Model. Both have 60° threads, so bolt flank and hole flank are parallel, and the play along the axis between a ridge
 * of the bolt and the groove of the hole is the same at every depth:
 *   play = (P_hole − P_bolt) / 2 + (D2_hole − d2_bolt) · tan 30°
 * Negative play: the bolt does not start. The pitches differ by δ = |P_hole − P_bolt|, so the ridges drift out of the
 * grooves by δ a turn, and the flanks meet after play / δ turns. The bolt takes hold over (d_bolt − D1_hole) / 2 in depth; as a
 * share of the basic depth of the hole's thread, that is its engagement.
 * The tight case is the largest bolt in the smallest hole, the loose case the smallest bolt in the largest hole, both
 * of the usual class (6g in 6H, 2A in 2B).
 */

/** HmMate: what comes of it. */
typedef enum {
  HM_MATE_GOES,           /* the right thread, or one that cannot be told from it */
  HM_MATE_JAMS,           /* starts by hand, then the flanks meet before it is in; force strips it */
  HM_MATE_STRIPS,         /* goes in all the way, but holds only by the crests: strips when tightened */
  HM_MATE_DROPS_IN,       /* no hold at all */
  HM_MATE_WILL_NOT_START
} HmMate;

/**
 * HmMating: a plain value.
 * @turns_tight, @turns_loose: turns until the flanks meet; G_MAXDOUBLE where the pitches are equal; 0 if it does not start
 * @turns_needed: turns to the full engaged length
 * @engagement_tight, @engagement_loose: share of the full depth of thread, 0 to 1; tight means the largest bolt
 */
typedef struct {
  HmMate mate;
  double turns_tight, turns_loose, turns_needed;
  double engagement_tight, engagement_loose;
} HmMating;

/**
 * hm_thread_mate:
 * @engaged: length of thread in the hole; 0 for one diameter of the bolt
 * A left-hand thread never starts in a right-hand one.
 */
HmMating hm_thread_mate (const HmThread *bolt, const HmThread *hole, HmLength engaged, const HmTables *tables);

/** HmNearMiss: @row is the other thread (borrowed from the tables); @thread_is_bolt tells which of the two is the bolt. */
typedef struct { const HmThreadRow *row; gboolean thread_is_bolt; HmMating mating; } HmNearMiss;

/**
 * hm_thread_near_misses: threads of the series that start in (or on) this one and then jam or strip, the commonest
 * first, then those that go further.
 * Returns: (transfer full) (element-type HmNearMiss): may be empty
 */
GArray *hm_thread_near_misses (const HmThread *self, const HmTables *tables);

G_END_DECLS

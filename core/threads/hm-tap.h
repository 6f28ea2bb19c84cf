/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-thread.h"
G_BEGIN_DECLS

/*
 * Holes for threads: what to drill before tapping, and the hole a bolt passes through.
 */

/**
 * hm_thread_percent_of_drill: how much of the full thread a drilled hole leaves, in percent.
 * (d − drill) / (1.299038 P), the height of both flanks of ASME B1.1 and Machinery's Handbook. May pass 100 for a hole
 * that is too small, and is 0 or less where the drill is as large as the bolt.
 */
double hm_thread_percent_of_drill (const HmThread *self, HmLength drill);

/** hm_thread_drill_for_percent: the drill that leaves @percent of the thread; above 0, at most 100. */
HmLength hm_thread_drill_for_percent (const HmThread *self, double percent);

/** hm_thread_find_holes: the customary tap drill and clearance holes; borrowed from @tables, NULL if not listed. */
const HmHoleRow *hm_thread_find_holes (const HmThread *self, const HmTables *tables);

/** hm_thread_find_row: the thread in its series; borrowed from @tables, NULL if no series has it. */
const HmThreadRow *hm_thread_find_row (const HmThread *self, const HmTables *tables);

/**
 * hm_pipe_thread_find: a tapered pipe thread by its name: "1/8 NPT", "1/8-27 NPT", "1/2 npt".
 * Its size is a name: the row's major diameter is the outside of the pipe. Returns: (nullable): borrowed from @tables
 */
const HmThreadRow *hm_pipe_thread_find (const char *text, const HmTables *tables);

G_END_DECLS

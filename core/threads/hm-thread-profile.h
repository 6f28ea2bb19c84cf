/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-thread.h"
G_BEGIN_DECLS

/** HmProfilePoint: on a section through the axis; @along it from the middle of a crest, @radius off it. */
typedef struct { double along_mm, radius_mm; } HmProfilePoint;

/**
 * hm_thread_profile: the basic profile over a length of the axis, as a line of points in order.
 * ISO 68-1, the same in ASME B1.1: flanks at 60°, crests P / 8 wide at the major diameter, roots P / 4 wide at the minor diameter.
 * It is the line that bolt and hole have in common: the bolt lies below it, the hole above.
 * @length: above 0; at most 200 pitches are drawn
 * Returns: (transfer full) (element-type HmProfilePoint)
 */
GArray *hm_thread_profile (const HmThread *self, HmLength length);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-identify.h"
#include "hm-near-miss.h"
#include "hm-tap.h"
#include "hm-thread-limits.h"
G_BEGIN_DECLS

/* Words for threads. As hmui-words.h: translated, (transfer full) unless said otherwise. */

/** "ISO metric, coarse pitch", "Unified coarse, UNC". Borrowed. */
const char *hmui_words_series (HmThreadSeries series);
/** "usual on this equipment". Borrowed. */
const char *hmui_words_use (HmUse use);
/** The customary drill, by name and size: "F: 0.257 in (6.53 mm)"; NULL if none is. @holes may be NULL. */
char *hmui_words_tap_drill (const HmHoleRow *holes, const HmFormat *format);
/** What it leaves: "leaves 77 % of full thread". */
char *hmui_words_tap_share (const HmThread *thread, const HmHoleRow *holes, const HmFormat *format);
/** "for 60 % of thread" with the drill: "6.98 mm (0.275 in)". */
char *hmui_words_drill_for (const HmThread *thread, double percent, const HmFormat *format);
/** Which of the two is in the other: "5/16-18 bolt in this hole", "this bolt in a 5/16-18 hole". */
char *hmui_words_near_miss (const HmNearMiss *miss);
/** What comes of it: "Starts, then jams after 1.2–2.8 turns of 6.4. Force strips it." */
char *hmui_words_mating (const HmMating *mating, const HmFormat *format);
/** The measurement that tells two threads apart; @first and @second are their names. */
char *hmui_words_separation (const HmThreadSeparation *separation, HmThreadFeature feature, const char *first, const char *second,
                             const HmFormat *format);

G_END_DECLS

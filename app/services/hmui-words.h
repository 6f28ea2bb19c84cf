/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-diagnosis.h"
#include "hm-torque.h"
G_BEGIN_DECLS

/*
 * Words for numbers: the only place of the window where a number becomes text. All answers are translated,
 * (transfer full), and joined by no-break spaces where they must not part. @format says how the person reads numbers.
 */

/** "22 min"; "under 1 min"; "0 min" for nothing; from 100 on "1 h 45 min". */
char *hmui_words_minutes (double minutes);
/** "41 %"; "under 1 %" and "over 99 %" at the ends, so that nothing reads as certain. */
char *hmui_words_percent (double probability);
/** What decibans do to the odds: "about doubles the odds", "cuts the odds to about a tenth", "hardly changes the odds". */
char *hmui_words_decibans (double decibans);
/** "today, 14:20", "yesterday", "25 Nov 2026". @now, @then: unix seconds */
char *hmui_words_when (gint64 then, gint64 now);
/** A check's time and what has to be opened first: "3 min, and 1 min to open up". */
char *hmui_words_cost (double work_minutes, double access_minutes);
/** "Expected: at most 22 min (no plan averages under 17 min)": averages over jobs like this one. */
char *hmui_words_expected (const HmPlan *plan);
/** A finding's name; for a reading with its band: "Charged: 12.4 V or more". */
char *hmui_words_finding (const HmCheck *check, guint finding, const HmFormat *format);
/** All bands of a reading, normal first, a line each. NULL where no reading is taken. */
char *hmui_words_limits (const HmCheck *check, const HmFormat *format);
/** "12.6 V: Charged" or, near a limit, "12.4 V: on the limit, most likely Charged". */
char *hmui_words_verdict (const HmCheck *check, guint finding, HmQuantity reading, double weight, const HmFormat *format);
/** A trail line's answer: the finding, the reading with its finding, "not sure", "fixed" … */
char *hmui_words_entry_answer (HmGuide *guide, const HmEntry *entry, const HmFormat *format);
/** A trail line's step: the check's name, or the causes repaired. */
char *hmui_words_entry_step (HmGuide *guide, const HmEntry *entry);
/** What an action does, as a heading: the check's name, "Repair: …", "Send it out". */
char *hmui_words_action (HmGuide *guide, const HmAction *action);
/** A cause's name; @cause may be the number of causes: "something not listed". Borrowed. */
const char *hmui_words_cause (HmGuide *guide, guint cause);

/* Fasteners (hmui-words-fasteners.c). */
/** "1/2 in hex or T40". */
char *hmui_words_drives (const HmFastener *fastener, const HmFormat *format);
/** "4 × M6 × 1", "2 × 5/16-18", "1" for a pin. */
char *hmui_words_count_and_thread (const HmFastener *fastener, const HmFormat *format);
/**
 * hmui_words_torque: "5.0–7.0 N·m (44–62 lbf·in)", the target between when there is one; "by hand", "the maker's manual only".
 * @answer: (nullable): NULL when no value can be had
 */
char *hmui_words_torque (const HmTorqueAnswer *answer, const HmFormat *format);
/** The same on one line, without the aim: "5.0–7.0 N·m (44–62 lbf·in)". */
char *hmui_words_torque_short (const HmTorqueAnswer *answer, const HmFormat *format);
/** How a joint of several is tightened: "crosswise, in steps"; NULL when any order will do. */
char *hmui_words_pattern (HmPattern pattern);

G_END_DECLS

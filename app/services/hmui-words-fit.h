/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-key-answer.h"
#include "hm-width-answer.h"
G_BEGIN_DECLS

/*
 * Words for fits and sizes: how a socket sits on a head, and what sizes are called. As hmui-words.h: translated,
 * (transfer full) unless said otherwise, for the window and the terminal alike.
 */

/** The verdict in a word or two: "fits", "usable", "rounds the corners", "will not go on". Borrowed. */
const char *hmui_words_fit_verdict (HmFitVerdict verdict);
/** The same for a key in a recess: "fits", "usable", "rounds the lobes", "will not go in". Borrowed. */
const char *hmui_words_key_verdict (HmFitVerdict verdict);
/** Why, in one sentence: "It is looser than the proper size, but the corners still hold." Borrowed. */
const char *hmui_words_fit_reason (HmFitReason reason);
/** "0.06–0.58 mm (0.002–0.023 in)"; the tightest case may be below zero. */
char *hmui_words_clearance (const HmFit *fit, const HmFormat *format);
/** "turns free 1.2–5.6° to either side"; "spins". */
char *hmui_words_free_angle (const HmFit *fit, const HmFormat *format);
/** "contact 82 % out to the corner". */
char *hmui_words_contact (const HmFit *fit);
/** What the contact is: for a note beside many of them. Borrowed. */
const char *hmui_words_contact_note (void);
/** "goes on 64 % of them"; NULL where it goes on all, or none. */
char *hmui_words_goes_on (const HmFit *fit);
/** Everything about a fit but its verdict: why, and the numbers on a line of their own. */
char *hmui_words_fit_detail (const HmFit *fit, const HmFormat *format);
/** "82 % of the lobes’ hold"; NULL where it is all or not known. */
char *hmui_words_key_detail (const HmKeyFit *fit);

/** A length or a span in both systems, the person's own first: "11/32 in (8.73 mm)", "12.73–13.00 mm (0.501–0.512 in)". */
char *hmui_words_length (HmLength length, const HmFormat *format);
char *hmui_words_span (HmLength low, HmLength high, const HmFormat *format);
/** The same to a gauge's digits, 0.0001 in and 0.001 mm: "0.3026–0.3113 in (7.686–7.907 mm)". */
char *hmui_words_fine_span (HmLength low, HmLength high, const HmFormat *format);
/** @format, but with the system of a size itself first: a metric size reads in millimeters whatever the person reads first. */
HmFormat hmui_words_own (const HmFormat *format, gboolean inch);
/** A named size in both systems, its own first: "11/32 in (8.73 mm)", "9 mm (0.354 in)". */
char *hmui_words_size (HmLength nominal, gboolean inch, const HmFormat *format);
/** The name of a size alone: "11/32 in", "9 mm". */
char *hmui_words_size_name (HmLength nominal, gboolean inch, const HmFormat *format);
/** "11/32 in socket". */
char *hmui_words_socket (const HmOpeningRow *opening, const HmFormat *format);
/** "hex bolt", "flange nut". Borrowed. */
const char *hmui_words_head_kind (HmHeadKind kind);
/** "M8 hex bolt". */
char *hmui_words_head (const HmHexRow *row);
/** "13 mm hex bolt". */
char *hmui_words_head_by_size (const HmHexRow *row, const HmFormat *format);
/** "clean", "worn or rusted", "painted or galvanized". Borrowed. */
const char *hmui_words_condition (HmHeadCondition condition);
/** What to try on a head whose corners are gone, and why: a sentence or two. */
char *hmui_words_rounded (const HmWidthAnswer *answer, const HmFormat *format);

G_END_DECLS

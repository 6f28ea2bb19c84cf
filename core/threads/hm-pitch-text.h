/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-thread.h"
G_BEGIN_DECLS

/**
 * HmPitchReading: a pitch as it was found. A plain value.
 * @pitch: crest to crest
 * @inch: given in threads per inch, or counted over inches
 * @spaces: pitches counted; 0 for a pitch gauge
 * @over: the length that they take; 0 for a pitch gauge
 */
typedef struct { HmLength pitch; gboolean inch; guint spaces; HmLength over; } HmPitchReading;

/**
 * hm_pitch_parse:
 * @text: bytes as typed, never NULL: "1.25", "1.25 mm", "20 tpi", "20", "10 over 12.5 mm", "11 crests over 1/2 in"
 * A bare number of 7 and more is threads per inch, a smaller one millimetres. A count is of spaces; crests are one more.
 * @out: (out caller-allocates): written on success only
 * Errors: %HM_THREAD_ERROR_SYNTAX, and %HM_THREAD_ERROR_RANGE for a pitch outside 0.2 mm to 8 mm
 */
gboolean hm_pitch_parse (const char *text, HmPitchReading *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_pitch_format: "1.25 mm (20.3 tpi)", "18 tpi (1.411 mm)", the unit it is named in first. (transfer full) */
char *hm_pitch_format (HmLength pitch, gboolean inch, const HmFormat *format);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-thread.h"
G_BEGIN_DECLS

/*
 * Which thread is this? From a caliper over the crests (or in the hole) and a pitch, each with the accuracy of the
 * instrument.
 *
 * Model. The true diameter lies evenly within the limits of size of the usual class; a worn or battered thread lies up
 * to a tenth of the pitch beyond the limit on the side that wears. The reading scatters about it normally with the
 * standard deviation of the instrument. The true pitch is the basic one, and its reading scatters likewise. Before measuring, a
 * thread is as likely as it is common on this equipment (HmUse). One reading in ten thousand is a blunder, which
 * keeps every candidate possible. Threads below 0.1 % are not listed.
 */

typedef enum { HM_FEATURE_BOLT, HM_FEATURE_HOLE } HmThreadFeature;

/**
 * HmThreadMeasurement: what was measured. A plain value.
 * @diameter: over the crests of a bolt, or the minor diameter of a hole; 0 if not measured
 * @diameter_sd: standard deviation of that reading, above 0; see hm_caliper_sd
 * @pitch: 0 if not measured
 * @pitch_sd: standard deviation of that reading, above 0
 * @worn: whether it looks worn, rusted or battered
 */
typedef struct {
  HmThreadFeature feature;
  HmLength diameter, diameter_sd;
  HmLength pitch, pitch_sd;
  gboolean worn;
} HmThreadMeasurement;

/* Accuracy of instruments as standard deviations; common practice, no source. */
extern const HmLength hm_caliper_sd;      /* 0.02 mm: caliper on clean crests */
extern const HmLength hm_rule_sd;         /* 0.25 mm: steel rule by eye */

/** hm_pitch_gauge_sd: the leaf that looks right is within about 2 % of the pitch; common practice, no source. */
HmLength hm_pitch_gauge_sd (HmLength leaf);

/**
 * hm_thread_measurement_count: sets the pitch from crests counted along a length.
 * @spaces: number of pitches, that is crests less one; above 0
 * @over: the length from the first crest to the last
 * @over_sd: standard deviation of the length
 */
void hm_thread_measurement_count (HmThreadMeasurement *self, guint spaces, HmLength over, HmLength over_sd);

/** HmThreadCandidate: @row is borrowed from the tables; @probability of all candidates adds up to 1 at most. */
typedef struct { HmThread thread; const HmThreadRow *row; double probability; } HmThreadCandidate;

/**
 * hm_thread_identify:
 * Returns: (transfer full) (element-type HmThreadCandidate): most probable first; empty if nothing was measured or no
 *   thread comes near
 */
GArray *hm_thread_identify (const HmThreadMeasurement *measurement, const HmTables *tables);

/** HmThreadProbe: the measurement to make next. */
typedef enum {
  HM_PROBE_NONE,        /* nothing at hand tells them apart better than this */
  HM_PROBE_DIAMETER,    /* caliper over the crests, or in the hole */
  HM_PROBE_GAUGE,       /* pitch gauge */
  HM_PROBE_COUNT        /* rule over @spaces pitches */
} HmThreadProbe;

/**
 * HmThreadSeparation: how to tell two candidates apart. A plain value.
 * @spaces: for %HM_PROBE_COUNT, pitches to count
 * @first, @second: what the measurement reads on each
 * @deviations: how far apart these are, in standard deviations of the reading; below 2 it decides nothing
 */
typedef struct { HmThreadProbe probe; guint spaces; HmLength first, second; double deviations; } HmThreadSeparation;

/** hm_thread_separate: the measurement that best tells two threads apart; %HM_PROBE_NONE if none reaches 2 deviations. */
HmThreadSeparation hm_thread_separate (const HmThread *first, const HmThread *second, HmThreadFeature feature,
                                       const HmTables *tables);

G_END_DECLS

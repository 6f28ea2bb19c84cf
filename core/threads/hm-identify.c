/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-identify.h"

#include "hm-thread-limits.h"

#include <math.h>

/* Judgements, common practice, no source. */
#define WEAR_PER_PITCH 0.1
#define BLUNDER_SHARE 1e-4
#define BLUNDER_DENSITY 0.05     /* per mm: anywhere within 20 mm */
#define LEAST_PROBABILITY 0.001
#define FEWEST_DEVIATIONS 2.0
#define GAUGE_SD_PER_PITCH 0.02
#define COUNTED_SPACES 10

const HmLength hm_caliper_sd = { 0.02 };
const HmLength hm_rule_sd = { 0.25 };

HmLength
hm_pitch_gauge_sd (HmLength leaf)
{
  return (HmLength) { GAUGE_SD_PER_PITCH * leaf.mm };
}

void
hm_thread_measurement_count (HmThreadMeasurement *self, guint spaces, HmLength over, HmLength over_sd)
{
  g_return_if_fail (self != NULL && spaces > 0 && over.mm > 0.0);
  self->pitch.mm = over.mm / spaces;
  self->pitch_sd.mm = over_sd.mm / spaces;
}

static double
normal_density (double x, double mean, double sd)
{
  double z = (x - mean) / sd;

  return exp (-0.5 * z * z) / (sd * sqrt (2.0 * G_PI));
}

static double
normal_below (double z)
{
  return 0.5 * erfc (-z / G_SQRT2);
}

/* Density of a reading of something that lies evenly between @low and @high. */
static double
band_density (double x, double low, double high, double sd)
{
  return (normal_below ((x - low) / sd) - normal_below ((x - high) / sd)) / (high - low);
}

/* The limits that the measured diameter lies within. */
static void
get_band (const HmThread *thread, HmThreadFeature feature, gboolean worn, const HmTables *tables, double *low, double *high)
{
  HmThreadLimits limits = hm_thread_usual_limits (thread, feature == HM_FEATURE_HOLE, tables);
  double wear = worn ? WEAR_PER_PITCH * thread->pitch.mm : 0.0;

  if (feature == HM_FEATURE_BOLT)
    {
      *low = limits.major_min.mm - wear;
      *high = limits.major_max.mm;
    }
  else
    {
      *low = limits.minor_min.mm;
      *high = limits.minor_max.mm + wear;
    }
}

static double
with_blunders (double density)
{
  return (1.0 - BLUNDER_SHARE) * density + BLUNDER_SHARE * BLUNDER_DENSITY;
}

static double
likelihood (const HmThread *thread, const HmThreadMeasurement *measurement, const HmTables *tables)
{
  double result = 1.0, low, high;

  if (measurement->diameter.mm > 0.0)
    {
      get_band (thread, measurement->feature, measurement->worn, tables, &low, &high);
      result *= with_blunders (band_density (measurement->diameter.mm, low, high, measurement->diameter_sd.mm));
    }
  if (measurement->pitch.mm > 0.0)
    result *= with_blunders (normal_density (measurement->pitch.mm, thread->pitch.mm, measurement->pitch_sd.mm));
  return result;
}

/* How common a thread is on this equipment; common practice, no source. */
static double
prior (HmUse use)
{
  static const double weights[] = { 1.0, 0.25, 0.05 };

  return weights[use];
}

static int
compare_candidates (gconstpointer a, gconstpointer b)
{
  const HmThreadCandidate *first = a, *second = b;

  return first->probability > second->probability ? -1 : first->probability < second->probability;
}

/* The likelihood of a reading that is a blunder on every candidate: nothing comes near. */
static double
blunder_likelihood (const HmThreadMeasurement *measurement)
{
  double one = BLUNDER_SHARE * BLUNDER_DENSITY;

  return (measurement->diameter.mm > 0.0 ? one : 1.0) * (measurement->pitch.mm > 0.0 ? one : 1.0);
}

/* Turns weights into probabilities and drops the improbable. */
static void
normalize (GArray *candidates, double total)
{
  g_array_sort (candidates, compare_candidates);
  for (guint i = 0; i < candidates->len; i++)
    {
      HmThreadCandidate *candidate = &g_array_index (candidates, HmThreadCandidate, i);

      candidate->probability /= total;
      if (candidate->probability < LEAST_PROBABILITY)
        {
          g_array_set_size (candidates, i);
          return;
        }
    }
}

GArray *
hm_thread_identify (const HmThreadMeasurement *measurement, const HmTables *tables)
{
  GArray *candidates = g_array_new (FALSE, FALSE, sizeof (HmThreadCandidate));
  double total = 0.0, best = 0.0;
  gsize n;
  const HmThreadRow *rows;

  g_return_val_if_fail (measurement != NULL && tables != NULL, candidates);
  if (measurement->diameter.mm <= 0.0 && measurement->pitch.mm <= 0.0)
    return candidates;
  rows = hm_tables_get_threads (tables, &n);
  for (gsize i = 0; i < n; i++)
    {
      HmThreadCandidate candidate = { .row = &rows[i] };
      double fit;

      if (rows[i].series == HM_SERIES_NPT)
        continue;
      candidate.thread = (HmThread) { rows[i].inch ? HM_THREAD_UNIFIED : HM_THREAD_ISO_METRIC,
                                      rows[i].major, rows[i].pitch, FALSE };
      fit = likelihood (&candidate.thread, measurement, tables);
      best = MAX (best, fit);
      candidate.probability = prior (rows[i].use) * fit;
      total += candidate.probability;
      g_array_append_val (candidates, candidate);
    }
  if (best <= 2.0 * blunder_likelihood (measurement))
    g_array_set_size (candidates, 0);
  normalize (candidates, total);
  return candidates;
}

static void
consider (HmThreadSeparation *best, HmThreadSeparation trial, double sd)
{
  trial.deviations = fabs (trial.first.mm - trial.second.mm) / sd;
  if (trial.deviations > best->deviations)
    *best = trial;
}

HmThreadSeparation
hm_thread_separate (const HmThread *first, const HmThread *second, HmThreadFeature feature, const HmTables *tables)
{
  HmThreadSeparation best = { HM_PROBE_NONE, 0, { 0.0 }, { 0.0 }, FEWEST_DEVIATIONS };
  double low[2], high[2], spread;
  HmLength p[2];

  g_return_val_if_fail (first != NULL && second != NULL, best);
  p[0] = first->pitch;
  p[1] = second->pitch;
  get_band (first, feature, FALSE, tables, &low[0], &high[0]);
  get_band (second, feature, FALSE, tables, &low[1], &high[1]);
  /* an even band of width w has the standard deviation w / √12; the wider one counts */
  spread = MAX (high[0] - low[0], high[1] - low[1]) / sqrt (12.0);
  consider (&best, (HmThreadSeparation) { HM_PROBE_DIAMETER, 0, { (low[0] + high[0]) / 2.0 }, { (low[1] + high[1]) / 2.0 }, 0.0 },
            hypot (hm_caliper_sd.mm, spread));
  consider (&best, (HmThreadSeparation) { HM_PROBE_GAUGE, 0, p[0], p[1], 0.0 },
            hm_pitch_gauge_sd ((HmLength) { MAX (p[0].mm, p[1].mm) }).mm);
  consider (&best, (HmThreadSeparation) { HM_PROBE_COUNT, COUNTED_SPACES, { COUNTED_SPACES * p[0].mm },
                                          { COUNTED_SPACES * p[1].mm }, 0.0 }, hm_rule_sd.mm);
  if (best.probe == HM_PROBE_NONE)
    best.deviations = 0.0;
  return best;
}

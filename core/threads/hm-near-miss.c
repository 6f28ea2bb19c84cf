/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-near-miss.h"

#include "hm-thread-limits.h"

#include <math.h>

#define TAN_30 0.5773502691896257
#define FULL_DEPTH_PER_PITCH 0.5412658773652741   /* 5/8 H: depth of engagement of the basic profile, one side */
#define SAME_PITCH_MM 1e-6

/* Judgements, common practice, no source: a tapped root lies up to H/24 a side deeper than the basic major diameter; a
 * bolt that turns less than half a turn is felt not to start; one that takes hold over less than a tenth of the depth
 * drops in; one that has less than 0.7 of the hold of the hole's own loosest bolt strips before it is tight. */
#define ROOT_DEPTH_PER_PITCH 0.0722
#define STARTS_TURNS 0.5
#define HOLDS_SHARE 0.1
#define STRONG_SHARE 0.7

static double
turns_until_contact (double play, double drift)
{
  if (play <= 0.0)
    return 0.0;
  return drift < SAME_PITCH_MM ? G_MAXDOUBLE : play / drift;
}

static double
share_of_depth (double bolt_major, double hole_minor, double hole_pitch)
{
  return CLAMP ((bolt_major - hole_minor) / 2.0 / (FULL_DEPTH_PER_PITCH * hole_pitch), 0.0, 1.0);
}

static HmMate
judge (const HmMating *self, gboolean crests_clear, double own_engagement)
{
  if (self->engagement_tight < HOLDS_SHARE)
    return HM_MATE_DROPS_IN;
  if (!crests_clear || self->turns_loose < STARTS_TURNS)
    return HM_MATE_WILL_NOT_START;
  if (self->turns_loose < self->turns_needed)
    return HM_MATE_JAMS;
  return self->engagement_loose < STRONG_SHARE * own_engagement ? HM_MATE_STRIPS : HM_MATE_GOES;
}

HmMating
hm_thread_mate (const HmThread *bolt, const HmThread *hole, HmLength engaged, const HmTables *tables)
{
  HmMating result = { 0 };
  HmThreadLimits outer, inner, own;
  double pitch_play, drift;
  gboolean crests_clear;

  g_return_val_if_fail (bolt != NULL && hole != NULL, result);
  outer = hm_thread_usual_limits (bolt, FALSE, tables);
  inner = hm_thread_usual_limits (hole, TRUE, tables);
  own = hm_thread_usual_limits (hole, FALSE, tables);
  pitch_play = (hole->pitch.mm - bolt->pitch.mm) / 2.0;
  drift = fabs (hole->pitch.mm - bolt->pitch.mm);
  result.turns_tight = turns_until_contact (pitch_play + (inner.pitch_min.mm - outer.pitch_max.mm) * TAN_30, drift);
  result.turns_loose = turns_until_contact (pitch_play + (inner.pitch_max.mm - outer.pitch_min.mm) * TAN_30, drift);
  result.turns_needed = (engaged.mm > 0.0 ? engaged.mm : bolt->major.mm) / hole->pitch.mm;
  result.engagement_tight = share_of_depth (outer.major_max.mm, inner.minor_min.mm, hole->pitch.mm);
  result.engagement_loose = share_of_depth (outer.major_min.mm, inner.minor_max.mm, hole->pitch.mm);
  crests_clear = bolt->left_hand == hole->left_hand && outer.major_min.mm < inner.major_min.mm + ROOT_DEPTH_PER_PITCH * hole->pitch.mm
                 && outer.minor_min.mm < inner.minor_max.mm;
  result.mate = judge (&result, crests_clear,
                       share_of_depth (own.major_min.mm, inner.minor_max.mm, hole->pitch.mm));
  return result;
}

static gboolean
is_near_miss (HmMate mate)
{
  return mate == HM_MATE_JAMS || mate == HM_MATE_STRIPS;
}

static gboolean
is_same (const HmThread *a, const HmThread *b)
{
  return fabs (a->major.mm - b->major.mm) < 1e-4 && fabs (a->pitch.mm - b->pitch.mm) < 1e-4;
}

static int
compare_near_misses (gconstpointer a, gconstpointer b)
{
  const HmNearMiss *first = a, *second = b;
  double turns_first = MIN (first->mating.turns_loose, first->mating.turns_needed);
  double turns_second = MIN (second->mating.turns_loose, second->mating.turns_needed);

  if (first->row->use != second->row->use)
    return (int) first->row->use - (int) second->row->use;
  return turns_first > turns_second ? -1 : turns_first < turns_second;
}

static void
append_if_near_miss (GArray *found, const HmThread *self, const HmThreadRow *row, gboolean self_is_bolt, const HmTables *tables)
{
  HmThread other = { row->inch ? HM_THREAD_UNIFIED : HM_THREAD_ISO_METRIC, row->major, row->pitch, self->left_hand };
  HmNearMiss near_miss = { .row = row, .thread_is_bolt = self_is_bolt };

  if (is_same (self, &other))
    return;
  near_miss.mating = self_is_bolt ? hm_thread_mate (self, &other, (HmLength) { 0.0 }, tables)
                                  : hm_thread_mate (&other, self, (HmLength) { 0.0 }, tables);
  if (is_near_miss (near_miss.mating.mate))
    g_array_append_val (found, near_miss);
}

GArray *
hm_thread_near_misses (const HmThread *self, const HmTables *tables)
{
  GArray *found = g_array_new (FALSE, FALSE, sizeof (HmNearMiss));
  gsize n;
  const HmThreadRow *rows;

  g_return_val_if_fail (self != NULL && tables != NULL, found);
  rows = hm_tables_get_threads (tables, &n);
  for (gsize i = 0; i < n; i++)
    if (rows[i].series != HM_SERIES_NPT)
      {
        append_if_near_miss (found, self, &rows[i], TRUE, tables);
        append_if_near_miss (found, self, &rows[i], FALSE, tables);
      }
  g_array_sort (found, compare_near_misses);
  return found;
}

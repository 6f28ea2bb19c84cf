/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-sequence.h"

#include <math.h>
#include <string.h>

#define SAME 1e-6
#define RECTANGLE_HEIGHT 0.6   /* half height of the drawn rectangle; half width 1 */
#define ROW_HEIGHT 0.5

HmBoltLayout
hm_sequence_layout (HmPattern pattern, guint n_bolts)
{
  switch (pattern)
    {
    case HM_PATTERN_INLINE:
      return HM_LAYOUT_INLINE;
    case HM_PATTERN_RECTANGULAR:
      return HM_LAYOUT_RECTANGULAR;
    case HM_PATTERN_CROSS:
      return n_bolts >= 6 && n_bolts % 2 == 0 ? HM_LAYOUT_TWO_ROWS : HM_LAYOUT_ROUND;
    case HM_PATTERN_NONE:
    case HM_PATTERN_ROUND:
    case HM_PATTERN_N_PATTERNS:
    default:
      return HM_LAYOUT_ROUND;
    }
}

static void
place_round (HmSequence *self)
{
  for (guint i = 0; i < self->n_bolts; i++)
    {
      double turn = 2.0 * G_PI * i / self->n_bolts;

      self->bolts[i].x = self->n_bolts > 1 ? sin (turn) : 0.0;
      self->bolts[i].y = self->n_bolts > 1 ? -cos (turn) : 0.0;
    }
}

/* Evenly along the outline from the top left corner, clockwise; with four, six, eight ... bolts the corners are bolts. */
static void
place_rectangular (HmSequence *self)
{
  guint n = self->n_bolts, half = n / 2, along;

  if (n < 4 || n % 2 == 1)
    {
      place_round (self);
      return;
    }
  along = n % 4 == 0 && n > 4 ? half - 1 : half;   /* bolts on each long side; the rest halfway down the short sides */
  for (guint i = 0; i < half; i++)
    {
      double x = i < along ? -1.0 + 2.0 * i / (along - 1) : 1.0;
      double y = i < along ? -RECTANGLE_HEIGHT : 0.0;

      self->bolts[i] = (HmSequenceBolt) { x, y, 0 };
      self->bolts[i + half] = (HmSequenceBolt) { -x, -y, 0 };   /* the other half mirrors it through the centre */
    }
}

static void
place_rows (HmSequence *self, guint rows)
{
  guint columns = self->n_bolts / rows;

  for (guint i = 0; i < self->n_bolts; i++)
    {
      guint column = i % columns;

      self->bolts[i].x = columns > 1 ? -1.0 + 2.0 * column / (columns - 1) : 0.0;
      self->bolts[i].y = rows == 1 ? 0.0 : i < columns ? -ROW_HEIGHT : ROW_HEIGHT;
    }
}

static double
distance (const HmSequenceBolt *a, double x, double y)
{
  return hypot (a->x - x, a->y - y);
}

/* How far the nearest tightened bolt is. */
static double
gap_to_tightened (const HmSequence *self, guint index)
{
  double least = G_MAXDOUBLE;

  for (guint i = 0; i < self->n_bolts; i++)
    if (self->bolts[i].order > 0)
      least = MIN (least, distance (&self->bolts[i], self->bolts[index].x, self->bolts[index].y));
  return least;
}

/* The bolt not yet tightened nearest to the mirror image of @index, or -1. */
static int
find_opposite (const HmSequence *self, guint index)
{
  int best = -1;

  for (guint i = 0; i < self->n_bolts; i++)
    if (self->bolts[i].order == 0
        && (best < 0 || distance (&self->bolts[i], -self->bolts[index].x, -self->bolts[index].y)
                          < distance (&self->bolts[best], -self->bolts[index].x, -self->bolts[index].y) - SAME))
      best = (int) i;
  return best;
}

/* How far bolt @index is from the last pair (of an odd ring: from the last bolt). */
static double
way_from_last (const HmSequence *self, guint last, guint index)
{
  const HmSequenceBolt *bolt = &self->bolts[index];
  double way = distance (&self->bolts[last], bolt->x, bolt->y);

  return self->n_bolts % 2 == 0 ? MIN (way, distance (&self->bolts[last], -bolt->x, -bolt->y)) : way;
}

/* Where the largest gap is; of equal gaps the one farthest from the last pair, so that the work keeps crossing. */
static int
find_largest_gap (const HmSequence *self, int last)
{
  int best = -1;
  double best_gap = 0.0, best_way = 0.0;

  for (guint i = 0; i < self->n_bolts; i++)
    {
      double gap, way;

      if (self->bolts[i].order > 0)
        continue;
      if (last < 0)
        return (int) i;
      gap = gap_to_tightened (self, i);
      way = way_from_last (self, (guint) last, i);
      if (best >= 0 && (gap < best_gap - SAME || (gap < best_gap + SAME && way < best_way + SAME)))
        continue;
      best = (int) i;
      best_gap = gap;
      best_way = way;
    }
  return best;
}

/* The bolt not yet tightened that is nearest the centre. */
static int
find_innermost (const HmSequence *self)
{
  int best = -1;

  for (guint i = 0; i < self->n_bolts; i++)
    if (self->bolts[i].order == 0
        && (best < 0 || distance (&self->bolts[i], 0.0, 0.0) < distance (&self->bolts[best], 0.0, 0.0) - SAME))
      best = (int) i;
  return best;
}

static gboolean
lies_opposite (const HmSequence *self, int first, int second)
{
  return distance (&self->bolts[second], -self->bolts[first].x, -self->bolts[first].y) < SAME;
}

static void
order_bolts (HmSequence *self)
{
  gboolean centre_out = self->layout == HM_LAYOUT_TWO_ROWS || self->layout == HM_LAYOUT_INLINE;
  guint order = 0;
  int last = -1;

  while (order < self->n_bolts)
    {
      int first = centre_out ? find_innermost (self) : find_largest_gap (self, last), second;

      self->bolts[first].order = ++order;
      last = first;
      second = find_opposite (self, (guint) first);
      /* without a true opposite (odd rings) the next largest gap decides */
      if (second >= 0 && (centre_out || self->n_bolts % 2 == 0) && lies_opposite (self, first, second))
        self->bolts[second].order = ++order;
    }
}

gboolean
hm_sequence_init (HmSequence *self, HmBoltLayout layout, guint n_bolts)
{
  HmSequence fresh = { .layout = layout, .n_bolts = n_bolts };

  g_return_val_if_fail (self != NULL, FALSE);
  if (n_bolts < 1 || n_bolts > HM_SEQUENCE_MAX_BOLTS)
    return FALSE;
  if (layout == HM_LAYOUT_TWO_ROWS && n_bolts % 2 == 1)
    fresh.layout = HM_LAYOUT_ROUND;
  if (fresh.layout == HM_LAYOUT_ROUND)
    place_round (&fresh);
  else if (fresh.layout == HM_LAYOUT_RECTANGULAR)
    place_rectangular (&fresh);
  else
    place_rows (&fresh, fresh.layout == HM_LAYOUT_INLINE ? 1 : 2);
  order_bolts (&fresh);
  *self = fresh;
  return TRUE;
}

void
hm_sequence_order (const HmSequence *self, guint *order)
{
  g_return_if_fail (self != NULL && order != NULL);
  for (guint i = 0; i < self->n_bolts; i++)
    order[self->bolts[i].order - 1] = i + 1;
}

const HmPassRow *
hm_sequence_passes (const HmTables *tables, const char *scheme, gsize *n_passes)
{
  gsize n, first, count = 0;
  const HmPassRow *rows;

  g_return_val_if_fail (tables != NULL && scheme != NULL && n_passes != NULL, NULL);
  rows = hm_tables_get_passes (tables, &n);
  for (first = 0; first < n && strcmp (rows[first].scheme, scheme) != 0; first++)
    ;
  while (first + count < n && strcmp (rows[first + count].scheme, scheme) == 0)
    count++;
  *n_passes = count;
  return count > 0 ? &rows[first] : NULL;
}

HmTorque
hm_sequence_pass_torque (const HmPassRow *pass, HmTorque full)
{
  g_return_val_if_fail (pass != NULL, full);
  return (HmTorque) { pass->share * full.newton_metres };
}

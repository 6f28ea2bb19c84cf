/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-size.h"

#include <math.h>

#define SAME_MM 0.001

/* Judgements, common practice, no source. */
#define EQUIVALENT_SHARE 0.05
#define DRIVEN_ON_SHARE 0.03
#define KEY_USABLE_SHARE 0.01
#define KEY_OVERSIZE_SHARE 0.005

static void
take_below (const HmOpeningRow **best, const HmOpeningRow *row, double width)
{
  if (row->nominal.mm < width - SAME_MM && (*best == NULL || row->nominal.mm > (*best)->nominal.mm))
    *best = row;
}

static void
take_above (const HmOpeningRow **best, const HmOpeningRow *row, double width)
{
  if (row->nominal.mm > width + SAME_MM && (*best == NULL || row->nominal.mm < (*best)->nominal.mm))
    *best = row;
}

HmSizeNeighbours
hm_size_neighbours (HmLength width, const HmTables *tables)
{
  HmSizeNeighbours found = { NULL, NULL, NULL, NULL };
  gsize n;
  const HmOpeningRow *rows;

  g_return_val_if_fail (tables != NULL, found);
  rows = hm_tables_get_openings (tables, &n);
  for (gsize i = 0; i < n; i++)
    {
      take_below (rows[i].inch ? &found.inch_below : &found.metric_below, &rows[i], width.mm);
      take_above (rows[i].inch ? &found.inch_above : &found.metric_above, &rows[i], width.mm);
    }
  return found;
}

static double
distance (const HmSizeFit *self, const HmHead *head)
{
  return fabs (self->opening->nominal.mm - head->nominal.mm);
}

static int
compare_distance (gconstpointer a, gconstpointer b, gpointer head)
{
  double first = distance (a, head), second = distance (b, head);

  return first < second ? -1 : first > second;
}

GArray *
hm_size_equivalents (const HmHead *head, HmHeadCondition condition, const HmTables *tables)
{
  GArray *found = g_array_new (FALSE, FALSE, sizeof (HmSizeFit));
  gsize n;
  const HmOpeningRow *rows;

  g_return_val_if_fail (head != NULL && tables != NULL, found);
  rows = hm_tables_get_openings (tables, &n);
  for (gsize i = 0; i < n; i++)
    {
      HmSizeFit one = { &rows[i], { 0 } };

      if (rows[i].inch == head->inch || distance (&one, head) > EQUIVALENT_SHARE * head->nominal.mm)
        continue;
      one.fit = hm_fit (&rows[i], head, condition, tables);
      g_array_append_val (found, one);
    }
  g_array_sort_with_data (found, compare_distance, (gpointer) head);
  return found;
}

static int
compare_fit (gconstpointer a, gconstpointer b)
{
  const HmSizeFit *first = a, *second = b;

  if (first->fit.verdict != second->fit.verdict)
    return (int) first->fit.verdict - (int) second->fit.verdict;
  if ((first->fit.reason == HM_FIT_PROPER) != (second->fit.reason == HM_FIT_PROPER))
    return first->fit.reason == HM_FIT_PROPER ? -1 : 1;
  return first->fit.looseness < second->fit.looseness ? -1 : first->fit.looseness > second->fit.looseness;
}

GArray *
hm_size_drivers (const HmHead *head, HmHeadCondition condition, const HmTables *tables)
{
  GArray *found = g_array_new (FALSE, FALSE, sizeof (HmSizeFit));
  gsize n;
  const HmOpeningRow *rows;

  g_return_val_if_fail (head != NULL && tables != NULL, found);
  rows = hm_tables_get_openings (tables, &n);
  for (gsize i = 0; i < n; i++)
    {
      HmSizeFit one = { &rows[i], hm_fit (&rows[i], head, condition, tables) };

      if (one.fit.verdict <= HM_FIT_USABLE)
        g_array_append_val (found, one);
    }
  g_array_sort (found, compare_fit);
  return found;
}

HmRoundedChoice
hm_size_for_rounded (HmLength across_flats, const HmTables *tables)
{
  HmRoundedChoice choice = { NULL, { 0.0 }, NULL };
  gsize n;
  const HmOpeningRow *rows;

  g_return_val_if_fail (tables != NULL, choice);
  rows = hm_tables_get_openings (tables, &n);
  for (gsize i = 0; i < n; i++)
    {
      double middle = (rows[i].min.mm + rows[i].max.mm) / 2.0;

      if (middle <= across_flats.mm && middle >= across_flats.mm * (1.0 - DRIVEN_ON_SHARE)
          && (choice.drive_on == NULL || across_flats.mm - middle < choice.interference.mm))
        {
          choice.drive_on = &rows[i];
          choice.interference.mm = across_flats.mm - middle;
        }
      if (rows[i].min.mm >= across_flats.mm && (choice.next_up == NULL || rows[i].min.mm < choice.next_up->min.mm))
        choice.next_up = &rows[i];
    }
  return choice;
}

HmFitVerdict
hm_key_fit (HmLength key, HmLength socket)
{
  double oversize = (key.mm - socket.mm) / socket.mm;

  g_return_val_if_fail (key.mm > 0.0 && socket.mm > 0.0, HM_FIT_WILL_NOT_GO_ON);
  if (fabs (key.mm - socket.mm) < SAME_MM)
    return HM_FIT_FITS;
  if (oversize > KEY_OVERSIZE_SHARE)
    return HM_FIT_WILL_NOT_GO_ON;
  return oversize >= -KEY_USABLE_SHARE ? HM_FIT_USABLE : HM_FIT_ROUNDS;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-width-answer.h"

#include <math.h>
#include <string.h>

#define SAME_MM 0.001
#define NEAR_SHARE 0.05          /* judgement: what is compared with a size, common practice, no source */
#define CALIPER_MM 0.05          /* judgement: a reading by caliper on a head in place, common practice, no source */

static gboolean
is_key (const HmHexRow *row)
{
  return row->kind == HM_HEAD_SOCKET_CAP || row->kind == HM_HEAD_BUTTON || row->kind == HM_HEAD_SET_SCREW;
}

GPtrArray *
hm_heads_of_size (const HmDrive *drive, const HmTables *tables)
{
  GPtrArray *found = g_ptr_array_new ();
  gsize n;
  const HmHexRow *rows;

  g_return_val_if_fail (drive != NULL && tables != NULL, found);
  rows = hm_tables_get_hex (tables, &n);
  for (gsize i = 0; i < n; i++)
    if (rows[i].inch == drive->inch && fabs (rows[i].nominal.mm - drive->size.mm) < SAME_MM
        && is_key (&rows[i]) == (drive->kind == HM_DRIVE_HEX_SOCKET))
      g_ptr_array_add (found, (gpointer) &rows[i]);
  return found;
}

/* "M8" of "M8 × 1.25", "1/4" of "1/4-20": as the table of heads names its threads. */
static char *
size_of_thread (const HmThread *thread)
{
  HmThread right = *thread;
  g_autofree char *name = NULL;
  char *end;

  right.left_hand = FALSE;
  name = hm_thread_format (&right, &hm_format_default);
  end = strstr (name, " ×");
  if (end == NULL)
    end = strrchr (name, '-');
  return g_strndup (name, end != NULL ? (gsize) (end - name) : strlen (name));
}

GPtrArray *
hm_heads_of_thread (const HmThread *thread, const HmTables *tables)
{
  GPtrArray *found = g_ptr_array_new ();
  g_autofree char *size = NULL;
  gsize n;
  const HmHexRow *rows;

  g_return_val_if_fail (thread != NULL && tables != NULL, found);
  size = size_of_thread (thread);
  rows = hm_tables_get_hex (tables, &n);
  for (gsize i = 0; i < n; i++)
    if (strcmp (rows[i].thread, size) == 0)
      g_ptr_array_add (found, (gpointer) &rows[i]);
  return found;
}

static gboolean
is_neighbour (const HmSizeNeighbours *next, const HmOpeningRow *row)
{
  return row == next->inch_below || row == next->inch_above || row == next->metric_below || row == next->metric_above;
}

/* The verdict, then the proper one; a loose one the looser the later, one that does not go on the smaller the later. */
static int
compare_fits (const HmFit *first, const HmFit *second)
{
  double by;

  if (first->verdict != second->verdict)
    return (int) first->verdict - (int) second->verdict;
  if ((first->reason == HM_FIT_PROPER) != (second->reason == HM_FIT_PROPER))
    return first->reason == HM_FIT_PROPER ? -1 : 1;
  by = first->clearance_max.mm - second->clearance_max.mm;
  if (first->verdict == HM_FIT_WILL_NOT_GO_ON)
    by = -by;
  return by < 0.0 ? -1 : by > 0.0;
}

static int
compare_size_fits (gconstpointer a, gconstpointer b)
{
  return compare_fits (&((const HmSizeFit *) a)->fit, &((const HmSizeFit *) b)->fit);
}

static int
compare_head_fits (gconstpointer a, gconstpointer b)
{
  return compare_fits (&((const HmHeadFit *) a)->fit, &((const HmHeadFit *) b)->fit);
}

static GArray *
find_fits (const HmWidthAnswer *self, HmHeadCondition condition, const HmTables *tables)
{
  GArray *found = g_array_new (FALSE, FALSE, sizeof (HmSizeFit));
  gsize n;
  const HmOpeningRow *rows = hm_tables_get_openings (tables, &n);

  for (gsize i = 0; i < n; i++)
    {
      HmSizeFit one = { &rows[i], hm_fit (&rows[i], &self->head, condition, tables) };
      double off_mm = fabs (rows[i].nominal.mm - self->head.nominal.mm);

      if (one.fit.verdict <= HM_FIT_USABLE || off_mm <= NEAR_SHARE * self->head.nominal.mm
          || is_neighbour (&self->neighbours, &rows[i]))
        g_array_append_val (found, one);
    }
  g_array_sort (found, compare_size_fits);
  return found;
}

static gboolean
is_listed (const GArray *found, const HmHead *head)
{
  for (guint i = 0; i < found->len; i++)
    {
      const HmHead *other = &g_array_index (found, HmHeadFit, i).head;

      if (other->inch == head->inch && fabs (other->nominal.mm - head->nominal.mm) < SAME_MM)
        return TRUE;
    }
  return FALSE;
}

static GArray *
find_turns (const HmWidthAnswer *self, HmHeadCondition condition, const HmTables *tables)
{
  GArray *found = g_array_new (FALSE, FALSE, sizeof (HmHeadFit));
  gsize n;
  const HmHexRow *rows = hm_tables_get_hex (tables, &n);

  for (gsize i = 0; self->opening != NULL && i < n; i++)
    {
      HmHeadFit one = { .drive = { HM_DRIVE_HEX, rows[i].nominal, 0, rows[i].inch } };

      if (is_key (&rows[i]) || hm_drive_equal (&one.drive, &self->drive)
          || fabs (rows[i].nominal.mm - self->opening->nominal.mm) > NEAR_SHARE * self->opening->nominal.mm
          || !hm_head_from_drive (&one.drive, tables, &one.head) || is_listed (found, &one.head))
        continue;
      one.fit = hm_fit (self->opening, &one.head, condition, tables);
      if (one.fit.verdict != HM_FIT_WILL_NOT_GO_ON && one.fit.reason != HM_FIT_SPINS)
        g_array_append_val (found, one);
    }
  g_array_sort (found, compare_head_fits);
  return found;
}

static HmSizeFit
find_next_up (const HmWidthAnswer *self, HmHeadCondition condition, const HmTables *tables)
{
  const HmOpeningRow *inch = self->neighbours.inch_above, *metric = self->neighbours.metric_above;
  HmSizeFit next = { inch, { 0 } };

  if (inch == NULL || (metric != NULL && metric->nominal.mm < inch->nominal.mm))
    next.opening = metric;
  if (next.opening != NULL)
    next.fit = hm_fit (next.opening, &self->head, condition, tables);
  return next;
}

HmWidthAnswer *
hm_width_answer_new (const HmDrive *drive, HmHeadCondition condition, const HmTables *tables)
{
  HmWidthAnswer *self;

  g_return_val_if_fail (drive != NULL && drive->kind == HM_DRIVE_HEX && drive->size.mm > 0.0 && tables != NULL, NULL);
  self = g_new0 (HmWidthAnswer, 1);
  self->drive = *drive;
  self->origin = hm_head_from_drive (drive, tables, &self->head) ? HM_WIDTH_STANDARD : HM_WIDTH_MEASURED;
  if (self->origin == HM_WIDTH_MEASURED)
    self->head = hm_head_measured (drive->size, (HmLength) { CALIPER_MM }, drive->inch);
  self->opening = hm_opening_find (drive->size, drive->inch, tables);
  self->neighbours = hm_size_neighbours (drive->size, tables);
  self->fits = find_fits (self, condition, tables);
  self->heads = hm_heads_of_size (drive, tables);
  self->turns = find_turns (self, condition, tables);
  self->next_up = find_next_up (self, condition, tables);
  self->rounded_width = self->origin == HM_WIDTH_STANDARD ? hm_head_in_condition (&self->head, HM_HEAD_WORN).min : drive->size;
  self->rounded = hm_size_for_rounded (self->rounded_width, tables);
  return self;
}

void
hm_width_answer_free (HmWidthAnswer *self)
{
  if (self == NULL)
    return;
  g_array_unref (self->fits);
  g_ptr_array_unref (self->heads);
  g_array_unref (self->turns);
  g_free (self);
}

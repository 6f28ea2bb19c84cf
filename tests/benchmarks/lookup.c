/* SPDX-License-Identifier: GPL-3.0-or-later */
/*
 * lookup: from a keystroke in the search entry to the answer in the core. Each query is typed letter by letter, and after each
 * letter everything is worked out that the answer shows: reading what was typed, then fits and neighbours of a width, keys of a
 * recess, or limits, holes, near misses and heads of a thread. Prints medians and the most, and both as a ratio of 1 ms, below
 * which nobody notices; then how long reading all the tables takes, in answers. Judges nothing. Times are processor time, the
 * least of several repeats, so that other work on the machine does not count.
 */
#include "hm-key-answer.h"
#include "hm-lookup.h"
#include "hm-near-miss.h"
#include "hm-tap.h"
#include "hm-test-vectors.h"
#include "hm-thread-limits.h"
#include "hm-width-answer.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#define REPEATS 5
#define BUDGET_MS 1.0

static const char * const widths[] = {
  "11/32", "7/16", "1/2 in socket", "9/16 wrench", "3/4", "10 mm", "13", "17mm", "8.73", ".344", "9 mm on 11/32", "1/2 on 13 mm",
  "what size is 5/8 hex head?", "1 1/8", NULL
};
static const char * const recesses[] = { "T25", "T27", "T30 bit", "E10", "5 mm key", "3/16 hex key", "H2", "slot", "3/8 square", NULL };
static const char * const threads[] = {
  "M8", "M6x1", "M8 x 1,25", "M10x1.25 LH", "M14x1.25", "1/4-20", "1/4-28 UNF", "5/16-18", "#10-24", "No.10-32", "10-32", "3/8-16 UNC-2A",
  "7/16-20", "1-8", "1/8 NPT", NULL
};
static const char * const nonsense[] = {
  "carburetor", "M", "M9x7", "99999999999999", "-3", "1/0", "T26", "E999", "½½½", "on on on", "9 mm on M8", "                    ",
  "5/16-18-24-32", "M8x1.25x40x50x60", "\xff\xfe", "🔧🔧🔧🔧🔧🔧🔧🔧", "0x1p3", "1e308 in",
  "how do I find the size of the bolt that holds the blade on my mower when it is rusted round, please?", NULL
};

static double
cpu_ms (void)
{
  struct timespec now;

  clock_gettime (CLOCK_THREAD_CPUTIME_ID, &now);
  return now.tv_sec * 1e3 + now.tv_nsec / 1e6;
}

static void
answer_thread (const HmThread *thread, const HmTables *tables)
{
  g_autoptr (GArray) misses = hm_thread_near_misses (thread, tables);
  g_autoptr (GPtrArray) heads = hm_heads_of_thread (thread, tables);
  HmThreadLimits bolt = hm_thread_usual_limits (thread, FALSE, tables), hole = hm_thread_usual_limits (thread, TRUE, tables);

  if (misses == NULL || heads == NULL || bolt.major_max.mm <= 0.0 || hole.minor_min.mm <= 0.0)
    exit (1);
  (void) hm_thread_find_holes (thread, tables);
  (void) hm_thread_find_row (thread, tables);
}

static void
answer_drive (const HmDrive *drive, const HmTables *tables)
{
  if (drive->kind == HM_DRIVE_HEX)
    hm_width_answer_free (hm_width_answer_new (drive, HM_HEAD_CLEAN, tables));
  else
    {
      g_autoptr (GArray) keys = hm_key_fits (drive, tables);
      g_autoptr (GPtrArray) heads = hm_heads_of_size (drive, tables);
    }
}

static void
answer (const char *text, const HmTables *tables)
{
  g_autoptr (GError) error = NULL;
  HmLookup question;

  if (!hm_lookup_parse (text, tables, &question, &error))
    return;
  if (question.kind == HM_LOOKUP_THREAD)
    answer_thread (&question.thread, tables);
  else if (question.kind == HM_LOOKUP_DRIVE)
    answer_drive (&question.drive, tables);
}

static double
time_answer (const char *text, const HmTables *tables)
{
  double least = G_MAXDOUBLE;

  for (guint i = 0; i < REPEATS; i++)
    {
      double begin = cpu_ms ();

      answer (text, tables);
      least = MIN (least, cpu_ms () - begin);
    }
  return least;
}

static int
compare (const void *a, const void *b)
{
  double x = *(const double *) a, y = *(const double *) b;

  return (x > y) - (x < y);
}

static void
report (const char *what, GArray *times_ms)
{
  double *t = (double *) (void *) times_ms->data;
  double median, most;

  qsort (t, times_ms->len, sizeof *t, compare);
  median = t[times_ms->len / 2];
  most = t[times_ms->len - 1];
  printf ("%-12s %4u keystrokes: median %7.4f ms ratio %.4f, most %7.4f ms ratio %.4f\n", what, times_ms->len, median, median / BUDGET_MS,
          most, most / BUDGET_MS);
}

static void
measure (const char *what, const char * const *queries, const HmTables *tables, GArray *all_ms)
{
  g_autoptr (GArray) times_ms = g_array_new (FALSE, FALSE, sizeof (double));

  for (guint i = 0; queries[i] != NULL; i++)
    for (gsize length = 1; length <= strlen (queries[i]); length++)
      {
        g_autofree char *typed = g_strndup (queries[i], length);
        double ms = time_answer (typed, tables);

        g_array_append_val (times_ms, ms);
      }
  g_array_append_vals (all_ms, times_ms->data, times_ms->len);
  report (what, times_ms);
}

int
main (void)
{
  double begin = cpu_ms (), read_ms;
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (GArray) all_ms = g_array_new (FALSE, FALSE, sizeof (double));

  read_ms = cpu_ms () - begin;
  printf ("keystroke to answer in the core, processor time, against %.0f ms\n", BUDGET_MS);
  measure ("widths", widths, tables, all_ms);
  measure ("recesses", recesses, tables, all_ms);
  measure ("threads", threads, tables, all_ms);
  measure ("nonsense", nonsense, tables, all_ms);
  report ("all", all_ms);
  printf ("reading every table: %.2f ms ratio %.2f\n", read_ms, read_ms / BUDGET_MS);
  return 0;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-tap.h"

#include <math.h>
#include <string.h>

#define FULL_HEIGHT_PER_PITCH 1.299038   /* 2 · 3/4 H: height of a 100 % thread, both sides */
#define SAME_MM 1e-4

double
hm_thread_percent_of_drill (const HmThread *self, HmLength drill)
{
  g_return_val_if_fail (self != NULL, 0.0);
  return 100.0 * (self->major.mm - drill.mm) / (FULL_HEIGHT_PER_PITCH * self->pitch.mm);
}

HmLength
hm_thread_drill_for_percent (const HmThread *self, double percent)
{
  g_return_val_if_fail (self != NULL && percent > 0.0 && percent <= 100.0, (HmLength) { 0.0 });
  return (HmLength) { self->major.mm - percent / 100.0 * FULL_HEIGHT_PER_PITCH * self->pitch.mm };
}

const HmHoleRow *
hm_thread_find_holes (const HmThread *self, const HmTables *tables)
{
  gsize n;
  const HmHoleRow *rows;
  const HmThreadRow *thread;

  g_return_val_if_fail (self != NULL && tables != NULL, NULL);
  thread = hm_thread_find_row (self, tables);
  if (thread == NULL)
    return NULL;
  rows = hm_tables_get_holes (tables, &n);
  for (gsize i = 0; i < n; i++)
    if (strcmp (rows[i].thread, thread->name) == 0)
      return &rows[i];
  return NULL;
}

const HmThreadRow *
hm_thread_find_row (const HmThread *self, const HmTables *tables)
{
  gsize n;
  const HmThreadRow *rows;

  g_return_val_if_fail (self != NULL && tables != NULL, NULL);
  rows = hm_tables_get_threads (tables, &n);
  for (gsize i = 0; i < n; i++)
    if (rows[i].series != HM_SERIES_NPT && rows[i].inch == (self->form == HM_THREAD_UNIFIED)
        && fabs (rows[i].major.mm - self->major.mm) < SAME_MM && fabs (rows[i].pitch.mm - self->pitch.mm) < SAME_MM)
      return &rows[i];
  return NULL;
}

/* "1/8-27 NPT" -> "1/8"; NULL if it is not called NPT. */
static char *
pipe_size (const char *text)
{
  g_autofree char *upper = g_ascii_strup (text, -1);
  char *size = g_strstrip (upper), *end;

  if (!g_str_has_suffix (size, "NPT"))
    return NULL;
  end = strpbrk (size, "- N");
  return g_strndup (size, end - size);
}

const HmThreadRow *
hm_pipe_thread_find (const char *text, const HmTables *tables)
{
  gsize n;
  const HmThreadRow *rows;
  g_autofree char *wanted = NULL;

  g_return_val_if_fail (text != NULL && tables != NULL, NULL);
  wanted = pipe_size (text);
  rows = hm_tables_get_threads (tables, &n);
  for (gsize i = 0; wanted != NULL && i < n; i++)
    {
      g_autofree char *size = rows[i].series == HM_SERIES_NPT ? pipe_size (rows[i].name) : NULL;

      if (g_strcmp0 (size, wanted) == 0)
        return &rows[i];
    }
  return NULL;
}

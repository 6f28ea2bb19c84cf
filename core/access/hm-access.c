/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-access.h"

#define STEP(i) (G_GUINT64_CONSTANT (1) << (i))

static HmAccessSet
with_requirements (const HmAccessStep *steps, HmAccessSet set)
{
  HmAccessSet all = 0;

  while (set != 0)
    {
      guint i = (guint) g_bit_nth_lsf (set, -1);
      set &= set - 1;
      all |= STEP (i);
      set |= steps[i].requires & ~all;
    }
  return all;
}

HmAccessSet
hm_access_need (const HmGuide *guide, const guint *steps, guint n_steps)
{
  HmAccessSet set = 0;
  guint n;

  for (guint i = 0; i < n_steps; i++)
    set |= STEP (steps[i]);
  return with_requirements (hm_guide_get_access (guide, &n), set);
}

HmAccessSet
hm_access_dependents (const HmGuide *guide, HmAccessSet set)
{
  guint n;
  const HmAccessStep *steps = hm_guide_get_access (guide, &n);
  HmAccessSet all = set;

  for (guint i = 0; i < n; i++)
    if (with_requirements (steps, STEP (i)) & set)
      all |= STEP (i);
  return all;
}

HmAccessSet
hm_access_blocking (const HmGuide *guide)
{
  guint n;
  const HmAccessStep *steps = hm_guide_get_access (guide, &n);
  HmAccessSet set = 0;

  for (guint i = 0; i < n; i++)
    if (steps[i].blocks_verify)
      set |= STEP (i);
  return hm_access_dependents (guide, set);
}

/* Writes one step after everything it requires. */
static void
place (const HmAccessStep *steps, guint i, HmAccessSet set, HmAccessSet *placed, guint *out, guint *n_out)
{
  if (*placed & STEP (i))
    return;
  *placed |= STEP (i);
  for (HmAccessSet rest = steps[i].requires; rest != 0; rest &= rest - 1)
    place (steps, (guint) g_bit_nth_lsf (rest, -1), set, placed, out, n_out);
  if (set & STEP (i))
    out[(*n_out)++] = i;
}

guint
hm_access_order (const HmGuide *guide, HmAccessSet set, guint *out)
{
  guint n, n_out = 0;
  const HmAccessStep *steps = hm_guide_get_access (guide, &n);
  HmAccessSet placed = 0;

  g_return_val_if_fail (out != NULL, 0);

  for (guint i = 0; i < n; i++)
    if (set & STEP (i))
      place (steps, i, set, &placed, out, &n_out);
  return n_out;
}

HmDuration
hm_access_open_time (const HmGuide *guide, HmAccessSet set)
{
  guint n;
  const HmAccessStep *steps = hm_guide_get_access (guide, &n);
  HmDuration total = { 0 };

  for (; set != 0; set &= set - 1)
    total.minutes += steps[g_bit_nth_lsf (set, -1)].open.minutes;
  return total;
}

HmDuration
hm_access_close_time (const HmGuide *guide, HmAccessSet set)
{
  guint n;
  const HmAccessStep *steps = hm_guide_get_access (guide, &n);
  HmDuration total = { 0 };

  for (; set != 0; set &= set - 1)
    total.minutes += steps[g_bit_nth_lsf (set, -1)].close.minutes;
  return total;
}

static void
add_once (GPtrArray *lines, char *line)
{
  if (line == NULL || *line == '\0' || g_ptr_array_find_with_equal_func (lines, line, g_str_equal, NULL))
    g_free (line);
  else
    g_ptr_array_add (lines, line);
}

/* "1/2 in socket or T40 bit"; NULL for a fastener that needs no tool. */
static char *
fastener_tools (const HmFastener *fastener, const HmFormat *format)
{
  GString *line = g_string_new (NULL);

  for (guint d = 0; d < fastener->n_drives; d++)
    {
      g_autofree char *tool = NULL;
      if (fastener->drives[d].kind == HM_DRIVE_HAND)
        continue;
      tool = hm_drive_tool (&fastener->drives[d], format);
      g_string_append_printf (line, "%s%s", line->len > 0 ? " or " : "", tool);
    }
  return g_string_free (line, line->len == 0);
}

static void
add_fasteners (GPtrArray *lines, const HmFastener * const *fasteners, const HmFormat *format)
{
  for (; fasteners != NULL && *fasteners != NULL; fasteners++)
    add_once (lines, fastener_tools (*fasteners, format));
}

GPtrArray *
hm_access_tools (const HmGuide *guide, HmAccessSet set, const HmFastener * const *fasteners,
                 const HmTool * const *tools, const HmFormat *format)
{
  GPtrArray *lines = g_ptr_array_new_with_free_func (g_free);
  guint n, order[HM_GUIDE_MAX_ACCESS];
  const HmAccessStep *steps = hm_guide_get_access (guide, &n);

  for (; tools != NULL && *tools != NULL; tools++)
    add_once (lines, g_strdup ((*tools)->name));
  n = hm_access_order (guide, set, order);
  for (guint i = 0; i < n; i++)
    add_fasteners (lines, steps[order[i]].fasteners, format);
  add_fasteners (lines, fasteners, format);
  return lines;
}

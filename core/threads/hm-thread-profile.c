/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-thread-profile.h"

#include <math.h>

#define CREST_PER_PITCH 0.125
#define ROOT_PER_PITCH 0.25
#define MOST_PITCHES 200.0

static void
add_point (GArray *line, double along_mm, double radius_mm)
{
  HmProfilePoint point = { along_mm, radius_mm };

  g_array_append_val (line, point);
}

GArray *
hm_thread_profile (const HmThread *self, HmLength length)
{
  GArray *line = g_array_new (FALSE, FALSE, sizeof (HmProfilePoint));
  double pitch, crest, root;
  guint n;

  g_return_val_if_fail (self != NULL && self->pitch.mm > 0.0 && length.mm > 0.0, line);
  pitch = self->pitch.mm;
  crest = self->major.mm / 2.0;
  root = hm_thread_minor_diameter (self).mm / 2.0;
  n = (guint) ceil (MIN (length.mm / pitch, MOST_PITCHES));
  for (guint i = 0; i <= n; i++)
    {
      double middle = i * pitch;

      if (i > 0)
        {
          add_point (line, middle - pitch / 2.0 + ROOT_PER_PITCH / 2.0 * pitch, root);
          add_point (line, middle - CREST_PER_PITCH / 2.0 * pitch, crest);
        }
      if (i < n)
        {
          add_point (line, middle + CREST_PER_PITCH / 2.0 * pitch, crest);
          add_point (line, middle + pitch / 2.0 - ROOT_PER_PITCH / 2.0 * pitch, root);
        }
    }
  return line;
}

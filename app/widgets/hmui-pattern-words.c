/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-pattern-words.h"
#include <glib/gi18n-lib.h>
#include <math.h>

typedef struct { double x0, x1, y0, y1; } Extent;

static Extent
measure (const HmuiPatternPoint *points, guint n)
{
  Extent extent = { points[0].x, points[0].x, points[0].y, points[0].y };

  for (guint i = 1; i < n; i++)
    {
      extent.x0 = MIN (extent.x0, points[i].x);
      extent.x1 = MAX (extent.x1, points[i].x);
      extent.y0 = MIN (extent.y0, points[i].y);
      extent.y1 = MAX (extent.y1, points[i].y);
    }
  return extent;
}

static char *
say_clock (const Extent *extent, const HmuiPatternPoint *point)
{
  double x = point->x - (extent->x0 + extent->x1) / 2, y = point->y - (extent->y0 + extent->y1) / 2;
  int half_hours = (int) round (atan2 (x, -y) / G_PI * 12);       /* from 12 o'clock, clockwise */
  int hour = ((half_hours + 24) % 24) / 2;

  hour = hour == 0 ? 12 : hour;
  return g_strdup_printf (half_hours % 2 == 0 ? _("%d o’clock") : _("half past %d o’clock"), hour);
}

static char *
say_row (const HmuiPatternPoint *points, guint n, guint index, gboolean upright)
{
  guint place = 1;

  for (guint i = 0; i < n; i++)
    if (upright ? points[i].y < points[index].y : points[i].x < points[index].x)
      place++;
  return g_strdup_printf (upright ? _("number %u from the top") : _("number %u from the left"), place);
}

static guint
third (double low, double high, double value)
{
  if (high - low <= 0)
    return 1;
  return value < low + (high - low) / 3 ? 0 : value > high - (high - low) / 3 ? 2 : 1;
}

static char *
say_corner (const Extent *extent, const HmuiPatternPoint *point)
{
  const char *places[3][3] = {
    { _("top left"), _("top"), _("top right") },
    { _("left"), _("middle"), _("right") },
    { _("bottom left"), _("bottom"), _("bottom right") },
  };

  return g_strdup (places[third (extent->y0, extent->y1, point->y)][third (extent->x0, extent->x1, point->x)]);
}

static char *
say_place (HmPattern pattern, const Extent *extent, const HmuiPatternPoint *points, guint n, guint index)
{
  gboolean upright = extent->y1 - extent->y0 > extent->x1 - extent->x0;

  if (pattern == HM_PATTERN_ROUND)
    return say_clock (extent, &points[index]);
  if (pattern == HM_PATTERN_INLINE)
    return say_row (points, n, index, upright);
  return say_corner (extent, &points[index]);
}

static guint
find_last (const HmuiPatternPoint *points, guint n)
{
  guint last = 0;

  for (guint i = 0; i < n; i++)
    last = MAX (last, points[i].order);
  return last;
}

char *
hmui_pattern_words (HmPattern pattern, const HmuiPatternPoint *points, guint n, const char * const *passes)
{
  g_autoptr(GString) words = g_string_new (NULL);
  g_autofree char *all_passes = g_strjoinv (", ", (char **) passes);
  guint last = find_last (points, n), said = 0;
  Extent extent;

  if (n == 0)
    return g_strdup ("");
  extent = measure (points, n);
  g_string_append_printf (words, ngettext ("Tightening order of %u fastener: ", "Tightening order of %u fasteners: ", n),
                          n);
  for (guint order = 1; order <= last; order++)
    for (guint i = 0; i < n; i++)
      {
        g_autofree char *place = NULL;

        if (points[i].order != order)
          continue;
        place = say_place (pattern, &extent, points, n, i);
        g_string_append_printf (words, "%s%u %s", said++ > 0 ? ", " : "", order, place);
      }
  g_string_append_printf (words, ". %s: %s.", _("Passes"), all_passes);
  return g_string_free (g_steal_pointer (&words), FALSE);
}

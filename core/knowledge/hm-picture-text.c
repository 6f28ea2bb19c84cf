/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-picture-text.h"
#include "hm-knowledge.h"
#include <math.h>

static gboolean
fail (const char *text, const char *wanted, GError **error)
{
  g_set_error (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_TEXT, "“%s” is not %s", text, wanted);
  return FALSE;
}

static gboolean
scan_pair (const char *text, char separator, HmPoint *out)
{
  char *end = NULL;
  HmPoint read;

  read.x = g_ascii_strtod (text, &end);
  if (end == text)
    return FALSE;
  while (*end == ' ')
    end++;
  if (*end != separator)
    return FALSE;
  text = end + 1;
  read.y = g_ascii_strtod (text, &end);
  if (end == text || *end != '\0' || !isfinite (read.x) || !isfinite (read.y))
    return FALSE;
  *out = read;
  return TRUE;
}

gboolean
hm_picture_point_from_text (const char *text, HmPoint *out, GError **error)
{
  return scan_pair (text, ',', out) || fail (text, "a place such as “3,4.5”", error);
}

gboolean
hm_picture_size_from_text (const char *text, HmPoint *out, GError **error)
{
  HmPoint read;

  if (!scan_pair (text, 'x', &read) || read.x <= 0 || read.y <= 0)
    return fail (text, "a size such as “40 x 24”", error);
  *out = read;
  return TRUE;
}

gboolean
hm_picture_path_from_text (const char *text, GArray **out, GError **error)
{
  g_auto (GStrv) words = g_strsplit (text, " ", -1);
  g_autoptr (GArray) path = g_array_new (FALSE, FALSE, sizeof (HmPoint));

  for (guint i = 0; words[i] != NULL; i++)
    {
      HmPoint point;
      if (*words[i] == '\0')
        continue;
      if (!hm_picture_point_from_text (words[i], &point, error))
        return FALSE;
      g_array_append_val (path, point);
    }
  if (path->len < 2)
    return fail (text, "a path of two places or more, such as “1,2 3,2”", error);
  *out = g_steal_pointer (&path);
  return TRUE;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-pitch-text.h"

#include <math.h>
#include <string.h>

#define MM_PER_INCH 25.4
#define SMALLEST_MM 0.2          /* ISO 261 */
#define LARGEST_MM 8.0           /* ISO 261; 4 threads per inch is 6.35 mm */
#define TPI_FROM 7.0             /* nobody's thread has 7 mm pitch, many have 8 per inch */
#define MOST_COUNTED 200.0

#define ACCEPTED "write a pitch as 1.25 mm or 20 tpi, or count: 10 over 12.5 mm"

static gboolean
refuse (const char *text, HmThreadError code, const char *reason, GError **error)
{
  g_autofree char *valid = g_utf8_make_valid (text, -1);

  g_set_error (error, HM_THREAD_ERROR, code, "“%s” %s; " ACCEPTED, valid, reason);
  return FALSE;
}

static char *
fold (const char *text)
{
  g_autofree char *lower = g_utf8_strdown (text, -1);
  g_autoptr (GString) folded = g_string_new (lower);

  g_string_replace (folded, "\302\240", " ", 0);
  g_strstrip (folded->str);
  return g_string_free (g_steal_pointer (&folded), FALSE);
}

/* Cuts one of @endings off. */
static gboolean
take_ending (char *text, const char * const *endings)
{
  for (guint i = 0; endings[i] != NULL; i++)
    if (g_str_has_suffix (text, endings[i]))
      {
        text[strlen (text) - strlen (endings[i])] = '\0';
        g_strchomp (text);
        return TRUE;
      }
  return FALSE;
}

static gboolean
read_number (const char *text, double *out)
{
  HmQuantity number;

  if (!hm_quantity_parse (text, HM_QUANTITY_NUMBER, HM_UNIT_NONE, &number, NULL))
    return FALSE;
  *out = number.value;
  return TRUE;
}

/* "10 over 12.5 mm", "11 crests over 1/2 in"; @over points to what stands behind "over". */
static gboolean
read_count (const char *text, char *count, const char *over, HmPitchReading *out, GError **error)
{
  static const char * const crests[] = { "crests", "crest", NULL };
  static const char * const spaces[] = { "spaces", "space", "pitches", "threads", "turns", NULL };
  gboolean of_crests = take_ending (count, crests);
  double number;
  HmQuantity length;

  if (!of_crests)
    take_ending (count, spaces);
  if (!read_number (count, &number) || number != (double) (guint) CLAMP (number, 0.0, MOST_COUNTED))
    return refuse (text, HM_THREAD_ERROR_SYNTAX, "has no whole number of spaces, at most 200, before “over”", error);
  out->spaces = (guint) number - (of_crests && number > 0.0 ? 1 : 0);
  if (out->spaces == 0)
    return refuse (text, HM_THREAD_ERROR_RANGE, "counts no space between two crests", error);
  if (!hm_quantity_parse (over, HM_QUANTITY_LENGTH, strchr (over, '/') != NULL ? HM_UNIT_INCH : HM_UNIT_MM, &length, NULL))
    return refuse (text, HM_THREAD_ERROR_SYNTAX, "has no length behind “over”", error);
  out->over.mm = length.value;
  out->inch = length.unit == HM_UNIT_INCH;
  out->pitch.mm = length.value / out->spaces;
  return TRUE;
}

static gboolean
read_pitch (const char *text, char *folded, HmPitchReading *out, GError **error)
{
  static const char * const per_inch[] = { "threads per inch", "per inch", "t.p.i.", "tpi", NULL };
  double number = 0.0;
  HmQuantity length;

  out->inch = take_ending (folded, per_inch);
  if (read_number (folded, &number) && (out->inch || number >= TPI_FROM))
    {
      out->inch = TRUE;
      out->pitch.mm = number > 0.0 ? MM_PER_INCH / number : 0.0;
      return TRUE;
    }
  if (out->inch || !hm_quantity_parse (folded, HM_QUANTITY_LENGTH, HM_UNIT_MM, &length, NULL))
    return refuse (text, HM_THREAD_ERROR_SYNTAX, "cannot be read as a pitch", error);
  out->pitch.mm = length.value;
  out->inch = length.unit == HM_UNIT_INCH;
  return TRUE;
}

gboolean
hm_pitch_parse (const char *text, HmPitchReading *out, GError **error)
{
  HmPitchReading parsed = { 0 };
  g_autofree char *folded = NULL;
  char *over;

  g_return_val_if_fail (text != NULL && out != NULL, FALSE);
  if (!g_utf8_validate (text, -1, NULL))
    return refuse (text, HM_THREAD_ERROR_SYNTAX, "is not readable text (UTF-8)", error);
  folded = fold (text);
  over = strstr (folded, " over ");
  if (over != NULL)
    {
      *over = '\0';
      if (!read_count (text, folded, over + strlen (" over "), &parsed, error))
        return FALSE;
    }
  else if (!read_pitch (text, folded, &parsed, error))
    return FALSE;
  if (parsed.pitch.mm < SMALLEST_MM || parsed.pitch.mm > LARGEST_MM)
    return refuse (text, HM_THREAD_ERROR_RANGE, "is no pitch that is cut: they run from 0.2 mm to 8 mm", error);
  *out = parsed;
  return TRUE;
}

char *
hm_pitch_format (HmLength pitch, gboolean inch, const HmFormat *format)
{
  double tpi;
  g_autofree char *metric = NULL, *per_inch = NULL;

  g_return_val_if_fail (pitch.mm > 0.0 && format != NULL, NULL);
  tpi = MM_PER_INCH / pitch.mm;
  metric = hm_quantity_format (hm_quantity (HM_QUANTITY_LENGTH, pitch.mm, HM_UNIT_MM), HM_UNIT_MM, inch ? 3 : -1, format);
  per_inch = hm_quantity_format (hm_quantity (HM_QUANTITY_NUMBER, tpi, HM_UNIT_NONE), HM_UNIT_NONE,
                                 fabs (tpi - round (tpi)) < 1e-6 ? 0 : 1, format);
  return inch ? g_strdup_printf ("%s\302\240tpi (%s)", per_inch, metric) : g_strdup_printf ("%s (%s\302\240tpi)", metric, per_inch);
}

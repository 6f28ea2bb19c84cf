/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-thread.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#define MM_PER_INCH 25.4
#define SIXTY_FOURTHS 64

/* What a tap can be had for, with room to spare: ISO 261 runs from M1 to M300, ASME B1.1 from No.0 to 6 inches. */
#define METRIC_MIN_MM 1.0
#define METRIC_MAX_MM 300.0
#define METRIC_PITCH_MIN_MM 0.2
#define METRIC_PITCH_MAX_MM 8.0
#define UNIFIED_MIN_MM 1.524
#define UNIFIED_MAX_MM (6.0 * MM_PER_INCH)
#define TPI_MIN 4
#define TPI_MAX 80
#define INCH_ONE_TPI_MAX 40       /* "1-8" is one inch, "1-64" is the number one */
#define COARSEST_SHARE 0.3        /* no series has a pitch above 0.25 d (No.1-64: 0.21; M1.6: 0.22) */

/* Folds what people type into one form: lower case, point for comma, plain x and quotes, no blanks round an x. */
static char *
normalize (const char *text)
{
  g_autoptr (GString) folded = g_string_new (NULL);
  g_autofree char *lower = g_utf8_strdown (text, -1);

  g_string_append (folded, lower);
  g_string_replace (folded, "×", "x", 0);
  g_string_replace (folded, "\302\240", " ", 0);
  g_string_replace (folded, "–", "-", 0);
  g_string_replace (folded, "″", "", 0);
  g_string_replace (folded, "\"", "", 0);
  g_string_replace (folded, ",", ".", 0);
  g_string_replace (folded, "#", "no.", 0);
  g_string_replace (folded, "no. ", "no.", 0);
  while (g_string_replace (folded, "  ", " ", 0) > 0)
    ;
  g_string_replace (folded, " x", "x", 0);
  g_string_replace (folded, "x ", "x", 0);
  g_string_replace (folded, " -", "-", 0);
  g_string_replace (folded, "- ", "-", 0);
  g_strstrip (folded->str);
  return g_string_free (g_steal_pointer (&folded), FALSE);
}

/* Cuts off the words behind a size. A class (6g, 2A) says nothing about the basic size. */
static gboolean
take_suffixes (char *text, gboolean *left_hand, gboolean *is_pipe)
{
  static const char * const words[] = { "lh", "l.h.", "left hand", "left-hand", "left", "rh", "unc", "unf", "unef", "un",
                                        "npt", "nptf", "coarse", "fine", "6g", "6h", "1a", "2a", "3a", "1b", "2b", "3b",
                                        NULL };

  for (guint i = 0; words[i] != NULL; i++)
    {
      gsize length = strlen (text), tail = strlen (words[i]);

      if (length <= tail + 1 || strcmp (text + length - tail, words[i]) != 0
          || strchr (" -", text[length - tail - 1]) == NULL)
        continue;
      text[length - tail - 1] = '\0';
      g_strchomp (text);
      *left_hand |= words[i][0] == 'l';
      *is_pipe |= g_str_has_prefix (words[i], "npt");
      return TRUE;
    }
  return FALSE;
}

/* Digits and at most one point: no sign, exponent or hexadecimal. */
static gboolean
scan_decimal (const char *text, const char **end, double *out)
{
  gsize length = strspn (text, "0123456789.");
  g_autofree char *digits = g_strndup (text, length);
  char *stop;

  *out = g_ascii_strtod (digits, &stop);
  *end = text + length;
  return stop != digits && *stop == '\0';
}

/* "8", "8x1.25", "8-1.25": behind the M. */
static gboolean
scan_metric (const char *text, HmThread *out, gboolean *is_bare)
{
  const char *at = text;

  if (*at++ != 'm')
    return FALSE;
  if (*at == ' ')
    at++;
  if (!scan_decimal (at, &at, &out->major.mm))
    return FALSE;
  out->form = HM_THREAD_ISO_METRIC;
  *is_bare = *at == '\0';
  if (*is_bare)
    return TRUE;
  if (*at != 'x' && *at != '-')
    return FALSE;
  return scan_decimal (at + 1, &at, &out->pitch.mm) && *at == '\0';
}

/* A whole number and its end. */
static gboolean
scan_whole (const char **cursor, guint *out)
{
  char *stop;
  guint64 value = g_ascii_strtoull (*cursor, &stop, 10);

  if (stop == *cursor || !g_ascii_isdigit (**cursor) || value > 1000000)
    return FALSE;
  *out = (guint) value;
  *cursor = stop;
  return TRUE;
}

/* "1/4", "1 1/8", "1-1/8", "1", ".250": inches; @cursor is left behind it. */
static gboolean
scan_inches (const char **cursor, double *out)
{
  guint whole, top, bottom;
  const char *at = *cursor, *behind;

  if (!scan_whole (&at, &whole) || *at == '.')
    return scan_decimal (*cursor, cursor, out);
  behind = at;
  *out = whole;
  if (*at == '/')
    {
      top = whole;
      whole = 0;
    }
  else if ((*at != ' ' && *at != '-') || (at++, !scan_whole (&at, &top)) || *at != '/')
    {
      *cursor = behind;
      return TRUE;
    }
  at++;
  if (!scan_whole (&at, &bottom) || bottom == 0)
    return FALSE;
  *out = whole + (double) top / bottom;
  *cursor = at;
  return TRUE;
}

static gboolean
is_screw_number (guint number)
{
  return number <= 6 || number == 8 || number == 10 || number == 12;
}

/* ASME B1.1: 0.060 in + 0.013 in for each number. */
static double
screw_number_mm (guint number)
{
  return (0.060 + 0.013 * number) * MM_PER_INCH;
}

/* "no.10-24", "10-24", "2-56": the number and its dash; @cursor is left on the dash. */
static gboolean
scan_screw_number (const char **cursor, gboolean has_prefix, double *mm)
{
  const char *at = *cursor;
  guint number;

  if (!scan_whole (&at, &number) || *at != '-' || strchr (at, '/') != NULL || !is_screw_number (number))
    return FALSE;
  if (!has_prefix && number == 1 && atoi (at + 1) <= INCH_ONE_TPI_MAX)
    return FALSE;
  *mm = screw_number_mm (number);
  *cursor = at;
  return TRUE;
}

/* "no.10-24", "10-24", "1/4-20", "1-1/8-7", ".250-20". */
static gboolean
scan_unified (const char *text, HmThread *out)
{
  gboolean has_prefix = g_str_has_prefix (text, "no.") || g_str_has_prefix (text, "no ");
  const char *at = has_prefix ? text + 3 : text;
  guint tpi;
  double inches;

  if (!scan_screw_number (&at, has_prefix, &out->major.mm))
    {
      if (has_prefix || !scan_inches (&at, &inches))
        return FALSE;
      out->major.mm = inches * MM_PER_INCH;
    }
  if (*at++ != '-' || !scan_whole (&at, &tpi) || *at != '\0' || tpi == 0)
    return FALSE;
  out->form = HM_THREAD_UNIFIED;
  out->pitch.mm = MM_PER_INCH / tpi;
  return TRUE;
}

static gboolean
find_coarse (const HmTables *tables, HmThread *thread)
{
  gsize n = 0;
  const HmThreadRow *rows = tables != NULL ? hm_tables_get_threads (tables, &n) : NULL;

  for (gsize i = 0; i < n; i++)
    if (rows[i].series == HM_SERIES_METRIC_COARSE && fabs (rows[i].major.mm - thread->major.mm) < 1e-6)
      {
        thread->pitch = rows[i].pitch;
        return TRUE;
      }
  return FALSE;
}

static gboolean
is_in_range (const HmThread *thread)
{
  double d = thread->major.mm, p = thread->pitch.mm;

  if (p > d * COARSEST_SHARE)
    return FALSE;
  if (thread->form == HM_THREAD_ISO_METRIC)
    return d >= METRIC_MIN_MM && d <= METRIC_MAX_MM && p >= METRIC_PITCH_MIN_MM && p <= METRIC_PITCH_MAX_MM;
  return d >= UNIFIED_MIN_MM - 1e-9 && d <= UNIFIED_MAX_MM
         && p >= MM_PER_INCH / TPI_MAX - 1e-9 && p <= MM_PER_INCH / TPI_MIN + 1e-9;
}

static gboolean
refuse (const char *text, HmThreadError code, const char *reason, GError **error)
{
  g_autofree char *valid = g_utf8_make_valid (text, -1);

  g_set_error (error, HM_THREAD_ERROR, code, "“%s” %s", valid, reason);
  return FALSE;
}

gboolean
hm_thread_parse (const char *text, const HmTables *tables, HmThread *out, GError **error)
{
  HmThread parsed = { 0 };
  gboolean is_bare = FALSE, is_pipe = FALSE;
  g_autofree char *folded = NULL;

  g_return_val_if_fail (text != NULL && out != NULL, FALSE);
  if (!g_utf8_validate (text, -1, NULL))
    return refuse (text, HM_THREAD_ERROR_SYNTAX, "is not readable text (UTF-8); write M8, M8 × 1.25, 1/4-20 or No.10-24", error);
  folded = normalize (text);
  while (take_suffixes (folded, &parsed.left_hand, &is_pipe))
    ;
  if (is_pipe)
    return refuse (text, HM_THREAD_ERROR_SYNTAX, "is a tapered pipe thread; screws are read as M8 × 1.25 or 1/4-20", error);
  if (!scan_metric (folded, &parsed, &is_bare) && !scan_unified (folded, &parsed))
    return refuse (text, HM_THREAD_ERROR_SYNTAX, "is not a thread; write M8, M8 × 1.25, 1/4-20 or No.10-24", error);
  if (is_bare && !find_coarse (tables, &parsed))
    return refuse (text, HM_THREAD_ERROR_RANGE, "has no coarse pitch in the table; write the pitch too, as M8 × 1.25", error);
  if (!is_in_range (&parsed))
    return refuse (text, HM_THREAD_ERROR_RANGE, "reads as a thread, but no tap cuts that size; write M8, M8 × 1.25, 1/4-20 or No.10-24", error);
  *out = parsed;
  return TRUE;
}

/* At most three decimals, without trailing zeros. */
static char *
format_number (double value, const HmFormat *format)
{
  char buffer[G_ASCII_DTOSTR_BUF_SIZE];
  g_autoptr (GString) text = g_string_new (g_ascii_formatd (buffer, sizeof buffer, "%.3f", value));

  while (text->str[text->len - 1] == '0')
    g_string_truncate (text, text->len - 1);
  if (text->str[text->len - 1] == '.')
    g_string_truncate (text, text->len - 1);
  g_string_replace (text, ".", format->decimal_point, 0);
  return g_string_free (g_steal_pointer (&text), FALSE);
}

/* "No.10", "1/4", "1 1/8", or decimal inches for what is neither. */
static char *
format_inches (double mm, const HmFormat *format)
{
  double inches = mm / MM_PER_INCH;
  long parts = lround (inches * SIXTY_FOURTHS);
  int top, bottom = SIXTY_FOURTHS, whole;

  for (guint number = 0; number <= 12; number++)
    if (is_screw_number (number) && fabs (mm - screw_number_mm (number)) < 1e-4)
      return g_strdup_printf ("No.%u", number);
  if (fabs (inches * SIXTY_FOURTHS - parts) > 1e-4)
    return format_number (inches, format);
  whole = (int) (parts / SIXTY_FOURTHS);
  top = (int) (parts % SIXTY_FOURTHS);
  while (top > 0 && top % 2 == 0)
    {
      top /= 2;
      bottom /= 2;
    }
  if (top == 0)
    return g_strdup_printf ("%d", whole);
  return whole > 0 ? g_strdup_printf ("%d %d/%d", whole, top, bottom) : g_strdup_printf ("%d/%d", top, bottom);
}

char *
hm_thread_format (const HmThread *self, const HmFormat *format)
{
  const char *hand;
  g_autofree char *size = NULL;
  g_autofree char *pitch = NULL;

  g_return_val_if_fail (self != NULL && format != NULL, NULL);
  hand = self->left_hand ? " LH" : "";
  if (self->form == HM_THREAD_ISO_METRIC)
    {
      size = format_number (self->major.mm, format);
      pitch = format_number (self->pitch.mm, format);
      return g_strdup_printf ("M%s × %s%s", size, pitch, hand);
    }
  size = format_inches (self->major.mm, format);
  pitch = format_number (MM_PER_INCH / self->pitch.mm, format);
  return g_strdup_printf ("%s-%s%s", size, pitch, hand);
}

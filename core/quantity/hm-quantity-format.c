/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-quantity.h"
#include "hm-quantity-private.h"
#include <float.h>
#include <math.h>
#include <string.h>

#define NO_BREAK_SPACE "\302\240"
#define MINUS          "−"        /* U+2212 */
#define DASH           "–"        /* U+2013 */
#define MAX_DECIMALS   15
#define MAX_FINE_DECIMALS 2
#define NUMBER_DIGITS  6          /* of a bare number */
#define SIXTY_FOURTHS  64
#define NEAR_64TH      1e-6       /* of 1/64 in; far below what any tool shows, above what conversion loses */
#define SMALL_TORQUE_NM 10        /* below it wrenches are marked in lbf·in, not in lbf·ft */

const HmFormat hm_format_default = { ".", HM_UNIT_SYSTEM_INCH_FIRST };

/* The unit to write in; a ratio is kept as 1 but written in % */
static HmUnit
choose_unit (HmQuantity self, HmUnit unit)
{
  if (unit == HM_UNIT_NONE)
    unit = self.unit;
  if (unit == HM_UNIT_NONE)
    unit = hm_quantity_kind_base_unit (self.kind);
  return unit == HM_UNIT_NONE && self.kind == HM_QUANTITY_RATIO ? HM_UNIT_PERCENT : unit;
}

static gboolean
is_64th_inch (double inches)
{
  double parts = inches * SIXTY_FOURTHS;
  return fabs (parts - round (parts)) < NEAR_64TH && fabs (parts) < 1e9;
}

/* Digits that @value is read to at a bench: the unit's, and up to two more for a small value that has something to show there */
static int
count_bench_decimals (double value, HmUnit unit)
{
  const HmUnitInfo *info = hm_unit_info (unit);
  double fine_below = info->fine_below;
  int decimals = info->decimals;
  for (; decimals < info->decimals + MAX_FINE_DECIMALS && fabs (value) < fine_below; decimals++, fine_below /= 10)
    {
      double steps = value * pow (10, decimals);
      if (fabs (steps - round (steps)) < 0.05)
        break;
    }
  return decimals;
}

/* ASCII digits of |value| to the person's own decimal sign, with a true minus; a rounded 0 has no sign */
static char *
write_digits (double value, const char *ascii_format, const HmFormat *format)
{
  char buffer[DBL_MAX_10_EXP + MAX_DECIMALS + 4];
  g_auto(GStrv) parts = NULL;
  g_autofree char *digits = NULL;
  /* a half is rounded up as people do, though its nearest binary number may lie below it (9.525 mm) */
  g_ascii_formatd (buffer, sizeof buffer, ascii_format, fabs (value) * (1 + 4 * DBL_EPSILON));
  parts = g_strsplit (buffer, ".", 2);
  digits = g_strjoinv (format->decimal_point, parts);
  return g_strconcat (value < 0 && strpbrk (buffer, "123456789") != NULL ? MINUS : "", digits, NULL);
}

static char *
write_decimal (double value, int decimals, const HmFormat *format)
{
  char ascii_format[8];
  g_snprintf (ascii_format, sizeof ascii_format, "%%.%df", decimals);
  return write_digits (value, ascii_format, format);
}

/* A bare number: six digits at most, no zeros after them */
static char *
write_number (double value, const HmFormat *format)
{
  char ascii_format[8];
  int decimals = NUMBER_DIGITS - 1 - (value == 0 ? 0 : (int) floor (log10 (fabs (value))));
  double scale = pow (10, CLAMP (decimals, 0, MAX_DECIMALS));
  double rounded = round (value * scale) / scale;
  for (decimals = 0; decimals < MAX_DECIMALS; decimals++)
    if (fabs (rounded - round (rounded * pow (10, decimals)) / pow (10, decimals)) < 0.5 / scale)
      break;
  g_snprintf (ascii_format, sizeof ascii_format, "%%.%df", decimals);
  return write_digits (rounded, ascii_format, format);
}

/* "11/32", "1 1/8", "2": reduced; the whole and the fraction are joined by a no-break space */
static char *
write_inch_fraction (double inches)
{
  gint64 parts = llround (fabs (inches) * SIXTY_FOURTHS);
  gint64 whole = parts / SIXTY_FOURTHS;
  const char *sign = inches < 0 && parts != 0 ? MINUS : "";
  int below = SIXTY_FOURTHS;
  for (parts %= SIXTY_FOURTHS; parts != 0 && parts % 2 == 0; parts /= 2)
    below /= 2;
  if (parts == 0)
    return g_strdup_printf ("%s%" G_GINT64_FORMAT, sign, whole);
  if (whole == 0)
    return g_strdup_printf ("%s%" G_GINT64_FORMAT "/%d", sign, parts, below);
  return g_strdup_printf ("%s%" G_GINT64_FORMAT NO_BREAK_SPACE "%" G_GINT64_FORMAT "/%d", sign, whole, parts, below);
}

/* How the numbers of one range are written, alike for both ends */
typedef struct { HmUnit unit; int decimals; gboolean is_fraction, is_shortest; } Style;

static Style
choose_style (HmQuantityRange range, HmUnit unit, int decimals)
{
  Style style = { choose_unit (range.low, unit), decimals, FALSE, FALSE };
  double low = hm_quantity_in (range.low, style.unit), high = hm_quantity_in (range.high, style.unit);
  if (decimals >= 0)
    return style;
  style.is_shortest = style.unit == HM_UNIT_NONE || decimals == HM_DECIMALS_SHORTEST;
  style.decimals = MAX (count_bench_decimals (low, style.unit), count_bench_decimals (high, style.unit));
  style.is_fraction = style.unit == HM_UNIT_INCH && is_64th_inch (low) && is_64th_inch (high);
  return style;
}

static char *
write_end (HmQuantity self, Style style, const HmFormat *format)
{
  double value = hm_quantity_in (self, style.unit);
  if (style.is_fraction)
    return write_inch_fraction (value);
  return style.is_shortest ? write_number (value, format) : write_decimal (value, style.decimals, format);
}

static char *
join_unit (const char *number, HmUnit unit)
{
  const char *symbol = hm_unit_symbol (unit);
  return g_strconcat (number, *symbol != '\0' ? NO_BREAK_SPACE : "", symbol, NULL);
}

/* The unit that stands beside @unit for readers of the other system */
static HmUnit
choose_other_unit (HmQuantityRange range, HmUnit unit)
{
  HmUnit other = hm_unit_info (unit)->other;
  if (other == HM_UNIT_POUND_FOOT && hm_quantity_in (range.high, HM_UNIT_NEWTON_METRE) < SMALL_TORQUE_NM)
    return HM_UNIT_POUND_INCH;
  if (other == HM_UNIT_KILOPASCAL && range.low.kind == HM_QUANTITY_STRESS)
    return HM_UNIT_MEGAPASCAL;                   /* psi written for a stress */
  if (other == HM_UNIT_KSI && range.low.kind == HM_QUANTITY_PRESSURE)
    return HM_UNIT_PSI;                          /* MPa written for a pressure */
  return other;
}

char *
hm_quantity_format (HmQuantity self, HmUnit unit, int decimals, const HmFormat *format)
{
  return hm_quantity_range_format ((HmQuantityRange) { self, self }, unit, decimals, format);
}

char *
hm_quantity_range_format (HmQuantityRange self, HmUnit unit, int decimals, const HmFormat *format)
{
  g_autofree char *low = NULL, *high = NULL, *both = NULL;
  const char *dash = self.low.value < 0 ? " " DASH " " : DASH;   /* so that "−10 – −5" shows two signs, not three */
  Style style;
  g_return_val_if_fail (format != NULL && format->decimal_point != NULL, g_strdup (""));
  g_return_val_if_fail (self.low.kind == self.high.kind && (guint) self.low.kind < HM_QUANTITY_N_KINDS, g_strdup (""));
  g_return_val_if_fail (isfinite (self.low.value) && isfinite (self.high.value), g_strdup (""));
  g_return_val_if_fail (hm_unit_fits_kind (unit, self.low.kind), g_strdup (""));
  g_return_val_if_fail (decimals >= HM_DECIMALS_SHORTEST && decimals <= MAX_DECIMALS, g_strdup (""));
  style = choose_style (self, unit, decimals);
  low = write_end (self.low, style, format);
  high = write_end (self.high, style, format);
  if (g_str_equal (low, high))
    return join_unit (low, style.unit);
  both = g_strconcat (low, dash, high, NULL);
  return join_unit (both, style.unit);
}

char *
hm_quantity_range_format_both (HmQuantityRange self, const HmFormat *format)
{
  HmUnit first = choose_unit (self.low, HM_UNIT_NONE);
  HmUnit second = choose_other_unit (self, first);
  g_autofree char *own = NULL, *other = NULL;
  g_return_val_if_fail (format != NULL, g_strdup (""));
  if (second != HM_UNIT_NONE
      && (hm_unit_info (first)->side == HM_UNIT_SIDE_INCH) != (format->system == HM_UNIT_SYSTEM_INCH_FIRST))
    {
      HmUnit typed = first;
      first = second;
      second = typed;
    }
  own = hm_quantity_range_format (self, first, -1, format);
  if (second == HM_UNIT_NONE)
    return g_steal_pointer (&own);
  other = hm_quantity_range_format (self, second, -1, format);
  return g_strdup_printf ("%s (%s)", own, other);
}

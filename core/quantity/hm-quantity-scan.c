/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-quantity-private.h"
#include <string.h>

static const struct { const char *sign; guint above, below; } fractions[] = {
  { "½", 1, 2 }, { "⅓", 1, 3 }, { "⅔", 2, 3 }, { "¼", 1, 4 }, { "¾", 3, 4 }, { "⅕", 1, 5 }, { "⅖", 2, 5 }, { "⅗", 3, 5 },
  { "⅘", 4, 5 }, { "⅙", 1, 6 }, { "⅚", 5, 6 }, { "⅐", 1, 7 }, { "⅛", 1, 8 }, { "⅜", 3, 8 }, { "⅝", 5, 8 }, { "⅞", 7, 8 },
  { "⅑", 1, 9 }, { "⅒", 1, 10 },
};

typedef struct { double above, below; } Fraction;

static gboolean
is_decimal_sign (const char *at)
{
  return (*at == '.' || *at == ',') && g_ascii_isdigit (at[1]);
}

void
hm_scan_spaces (const char **at)
{
  while (**at == ' ')
    ++*at;
}

static gboolean
scan_whole (const char **at, double *value)
{
  const char *start = *at;
  for (*value = 0; g_ascii_isdigit (**at); ++*at)
    *value = *value * 10 + (**at - '0');
  return *at > start;
}

static gboolean
scan_fraction_sign (const char **at, Fraction *fraction)
{
  for (gsize i = 0; i < G_N_ELEMENTS (fractions); i++)
    if (g_str_has_prefix (*at, fractions[i].sign))
      {
        *at += strlen (fractions[i].sign);
        *fraction = (Fraction) { fractions[i].above, fractions[i].below };
        return TRUE;
      }
  return FALSE;
}

/* `11/32`, `11 / 32`, `⅜` */
static gboolean
scan_fraction (const char **at, Fraction *fraction)
{
  const char *ahead = *at;
  if (scan_fraction_sign (at, fraction))
    return TRUE;
  if (!scan_whole (&ahead, &fraction->above))
    return FALSE;
  hm_scan_spaces (&ahead);
  if (*ahead != '/')
    return FALSE;
  ahead++;
  hm_scan_spaces (&ahead);
  if (!scan_whole (&ahead, &fraction->below))
    return FALSE;
  *at = ahead;
  return TRUE;
}

/* `1 1/8`, `1-1/8`, `1½`, `1-½`: a hyphen with a space beside it, or after 0, separates the ends of a range */
static gboolean
scan_mixed (const char **at, double *whole, Fraction *fraction)
{
  const char *ahead = *at;
  if (!scan_whole (&ahead, whole))
    return FALSE;
  if (*ahead == '-')
    {
      if (*whole == 0)
        return FALSE;
      ahead++;
      if (*ahead == ' ')
        return FALSE;
    }
  else
    hm_scan_spaces (&ahead);
  if (!scan_fraction (&ahead, fraction))
    return FALSE;
  *at = ahead;
  return TRUE;
}

/* Comma and point are both the decimal sign, so neither can be a thousands sign: two of them are refused */
static HmFault
scan_decimal (const char **at, double *value)
{
  const char *end = *at;
  guint n_signs = 0;
  g_autofree char *digits = NULL;
  for (; g_ascii_isdigit (*end) || is_decimal_sign (end); end++)
    n_signs += !g_ascii_isdigit (*end);
  if (end == *at)
    return HM_FAULT_NOT_A_NUMBER;
  if (n_signs > 1)
    return HM_FAULT_TWO_DECIMAL_SIGNS;
  digits = g_strndup (*at, end - *at);
  *value = g_ascii_strtod (g_strdelimit (digits, ",", '.'), NULL);
  *at = end;
  return HM_FAULT_NONE;
}

static HmFault
scan_unsigned (const char **at, double *value, gboolean *is_fraction)
{
  const char *ahead = *at;
  double whole = 0;
  Fraction fraction;
  gboolean is_mixed = scan_mixed (&ahead, &whole, &fraction);
  *is_fraction = is_mixed || scan_fraction (&ahead, &fraction);
  if (!*is_fraction)
    return scan_decimal (at, value);
  if (fraction.below == 0)
    return HM_FAULT_ZERO_DENOMINATOR;
  if (is_mixed && fraction.above >= fraction.below)
    return HM_FAULT_MIXED_NUMBER;
  if (is_decimal_sign (ahead) || *ahead == '/')
    return HM_FAULT_NOT_A_NUMBER;
  *value = (is_mixed ? whole : 0) + fraction.above / fraction.below;
  *at = ahead;
  return HM_FAULT_NONE;
}

HmFault
hm_scan_number (const char **at, double *value, gboolean *is_fraction)
{
  const char *ahead = *at;
  gboolean is_negative = *ahead == '-' || g_str_has_prefix (ahead, "–");
  HmFault fault;
  if (is_negative || *ahead == '+')
    {
      ahead = g_utf8_next_char (ahead);
      hm_scan_spaces (&ahead);
    }
  fault = scan_unsigned (&ahead, value, is_fraction);
  if (fault != HM_FAULT_NONE)
    return fault;
  if (is_negative && *value != 0)
    *value = -*value;
  *at = ahead;
  return HM_FAULT_NONE;
}

gboolean
hm_scan_range_sign (const char **at)
{
  static const char * const range_signs[] = { "...", "..", "–", "-", "~" };
  for (gsize i = 0; i < G_N_ELEMENTS (range_signs); i++)
    if (g_str_has_prefix (*at, range_signs[i]))
      {
        *at += strlen (range_signs[i]);
        return TRUE;
      }
  if (g_ascii_strncasecmp (*at, "to", 2) != 0 || g_ascii_isalpha ((*at)[2]))
    return FALSE;
  *at += 2;
  return TRUE;
}

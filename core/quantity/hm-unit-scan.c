/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-quantity-private.h"
#include <string.h>

/*
 * How people write units. In a spelling '·' stands for any joint: dot, point, hyphen, space or nothing ("ft·lb" reads
 * ft-lb, ft lb, ft. lb, ftlb). Upper and lower case are the same, but for the first letter of the exact spellings:
 * there m is milli or metre, M is mega or nothing.
 */
typedef struct { const char *text; HmUnit unit; } Spelling;

static const Spelling exact_spellings[] = {
  { "m", HM_UNIT_M },
  { "mV", HM_UNIT_MILLIVOLT },
  { "mA", HM_UNIT_MILLIAMPERE },
  { "mΩ", HM_UNIT_MILLIOHM },
  { "m·ohm", HM_UNIT_MILLIOHM },
  { "m·ohms", HM_UNIT_MILLIOHM },
  { "MΩ", HM_UNIT_MEGAOHM },
  { "M·ohm", HM_UNIT_MEGAOHM },
  { "M·ohms", HM_UNIT_MEGAOHM },
};

static const Spelling spellings[] = {
  { "mm", HM_UNIT_MM }, { "millimetre", HM_UNIT_MM }, { "millimetres", HM_UNIT_MM }, { "millimeter", HM_UNIT_MM },
  { "millimeters", HM_UNIT_MM }, { "cm", HM_UNIT_CM }, { "metre", HM_UNIT_M }, { "metres", HM_UNIT_M },
  { "meter", HM_UNIT_M }, { "meters", HM_UNIT_M },
  { "in", HM_UNIT_INCH }, { "inch", HM_UNIT_INCH }, { "inches", HM_UNIT_INCH }, { "\"", HM_UNIT_INCH }, { "''", HM_UNIT_INCH },
  { "ft", HM_UNIT_FOOT }, { "foot", HM_UNIT_FOOT }, { "feet", HM_UNIT_FOOT }, { "'", HM_UNIT_FOOT },
  { "thou", HM_UNIT_THOU }, { "thousandths", HM_UNIT_THOU }, { "mil", HM_UNIT_THOU }, { "mils", HM_UNIT_THOU },
  { "µm", HM_UNIT_MICROMETRE }, { "um", HM_UNIT_MICROMETRE }, { "micron", HM_UNIT_MICROMETRE },
  { "microns", HM_UNIT_MICROMETRE }, { "micrometre", HM_UNIT_MICROMETRE }, { "micrometres", HM_UNIT_MICROMETRE },
  { "micrometer", HM_UNIT_MICROMETRE }, { "micrometers", HM_UNIT_MICROMETRE },

  { "N·m", HM_UNIT_NEWTON_METRE }, { "newton·metre", HM_UNIT_NEWTON_METRE }, { "newton·metres", HM_UNIT_NEWTON_METRE },
  { "newton·meter", HM_UNIT_NEWTON_METRE }, { "newton·meters", HM_UNIT_NEWTON_METRE },
  { "lbf·ft", HM_UNIT_POUND_FOOT }, { "lb·ft", HM_UNIT_POUND_FOOT }, { "lbs·ft", HM_UNIT_POUND_FOOT },
  { "ft·lbf", HM_UNIT_POUND_FOOT }, { "ft·lb", HM_UNIT_POUND_FOOT }, { "ft·lbs", HM_UNIT_POUND_FOOT },
  { "foot·pound", HM_UNIT_POUND_FOOT }, { "foot·pounds", HM_UNIT_POUND_FOOT }, { "pound·foot", HM_UNIT_POUND_FOOT },
  { "pound·feet", HM_UNIT_POUND_FOOT },
  { "lbf·in", HM_UNIT_POUND_INCH }, { "lb·in", HM_UNIT_POUND_INCH }, { "lbs·in", HM_UNIT_POUND_INCH },
  { "in·lbf", HM_UNIT_POUND_INCH }, { "in·lb", HM_UNIT_POUND_INCH }, { "in·lbs", HM_UNIT_POUND_INCH },
  { "inch·pound", HM_UNIT_POUND_INCH }, { "inch·pounds", HM_UNIT_POUND_INCH }, { "pound·inch", HM_UNIT_POUND_INCH },
  { "pound·inches", HM_UNIT_POUND_INCH }, { "inch·lb", HM_UNIT_POUND_INCH }, { "inch·lbs", HM_UNIT_POUND_INCH },
  { "kgf·m", HM_UNIT_KILOGRAM_METRE }, { "kg·m", HM_UNIT_KILOGRAM_METRE }, { "m·kgf", HM_UNIT_KILOGRAM_METRE },
  { "m·kg", HM_UNIT_KILOGRAM_METRE }, { "ozf·in", HM_UNIT_OUNCE_INCH }, { "oz·in", HM_UNIT_OUNCE_INCH },
  { "in·ozf", HM_UNIT_OUNCE_INCH }, { "in·oz", HM_UNIT_OUNCE_INCH },

  { "N", HM_UNIT_NEWTON }, { "newton", HM_UNIT_NEWTON }, { "newtons", HM_UNIT_NEWTON }, { "kN", HM_UNIT_KILONEWTON },
  { "lbf", HM_UNIT_POUND_FORCE }, { "lb", HM_UNIT_POUND_FORCE }, { "lbs", HM_UNIT_POUND_FORCE },
  { "pound", HM_UNIT_POUND_FORCE }, { "pounds", HM_UNIT_POUND_FORCE },
  { "MPa", HM_UNIT_MEGAPASCAL }, { "N/mm²", HM_UNIT_MEGAPASCAL }, { "N/mm2", HM_UNIT_MEGAPASCAL },
  { "N/mm^2", HM_UNIT_MEGAPASCAL }, { "ksi", HM_UNIT_KSI },
  { "kPa", HM_UNIT_KILOPASCAL }, { "psi", HM_UNIT_PSI }, { "lb/in²", HM_UNIT_PSI }, { "lb/in2", HM_UNIT_PSI },
  { "lbf/in²", HM_UNIT_PSI }, { "lbf/in2", HM_UNIT_PSI }, { "bar", HM_UNIT_BAR }, { "bars", HM_UNIT_BAR },
  { "in·H₂O", HM_UNIT_INCH_WATER }, { "in·H2O", HM_UNIT_INCH_WATER }, { "in·WC", HM_UNIT_INCH_WATER },
  { "\"·H₂O", HM_UNIT_INCH_WATER }, { "\"·H2O", HM_UNIT_INCH_WATER }, { "\"·WC", HM_UNIT_INCH_WATER },
  { "in·Hg", HM_UNIT_INCH_MERCURY }, { "\"·Hg", HM_UNIT_INCH_MERCURY },

  { "V", HM_UNIT_VOLT }, { "volt", HM_UNIT_VOLT }, { "volts", HM_UNIT_VOLT }, { "V·DC", HM_UNIT_VOLT }, { "V·AC", HM_UNIT_VOLT },
  { "millivolt", HM_UNIT_MILLIVOLT }, { "millivolts", HM_UNIT_MILLIVOLT },
  { "A", HM_UNIT_AMPERE }, { "amp", HM_UNIT_AMPERE }, { "amps", HM_UNIT_AMPERE }, { "ampere", HM_UNIT_AMPERE },
  { "amperes", HM_UNIT_AMPERE }, { "milliamp", HM_UNIT_MILLIAMPERE },
  { "milliamps", HM_UNIT_MILLIAMPERE },
  { "Ω", HM_UNIT_OHM }, { "ohm", HM_UNIT_OHM }, { "ohms", HM_UNIT_OHM },
  { "milliohm", HM_UNIT_MILLIOHM }, { "milliohms", HM_UNIT_MILLIOHM },
  { "kΩ", HM_UNIT_KILOOHM }, { "k·ohm", HM_UNIT_KILOOHM }, { "k·ohms", HM_UNIT_KILOOHM }, { "kilohm", HM_UNIT_KILOOHM },
  { "kilohms", HM_UNIT_KILOOHM },
  { "megohm", HM_UNIT_MEGAOHM }, { "megohms", HM_UNIT_MEGAOHM },

  { "rpm", HM_UNIT_RPM }, { "r/min", HM_UNIT_RPM }, { "rev/min", HM_UNIT_RPM },
  { "°·C", HM_UNIT_CELSIUS }, { "C", HM_UNIT_CELSIUS }, { "deg·C", HM_UNIT_CELSIUS }, { "degrees·C", HM_UNIT_CELSIUS },
  { "celsius", HM_UNIT_CELSIUS }, { "°·F", HM_UNIT_FAHRENHEIT }, { "F", HM_UNIT_FAHRENHEIT }, { "deg·F", HM_UNIT_FAHRENHEIT },
  { "degrees·F", HM_UNIT_FAHRENHEIT }, { "fahrenheit", HM_UNIT_FAHRENHEIT },
  { "s", HM_UNIT_SECOND }, { "sec", HM_UNIT_SECOND }, { "secs", HM_UNIT_SECOND }, { "second", HM_UNIT_SECOND },
  { "seconds", HM_UNIT_SECOND }, { "min", HM_UNIT_MINUTE }, { "mins", HM_UNIT_MINUTE }, { "minute", HM_UNIT_MINUTE },
  { "minutes", HM_UNIT_MINUTE }, { "h", HM_UNIT_HOUR }, { "hr", HM_UNIT_HOUR }, { "hrs", HM_UNIT_HOUR }, { "hour", HM_UNIT_HOUR },
  { "hours", HM_UNIT_HOUR }, { "Hz", HM_UNIT_HERTZ }, { "hertz", HM_UNIT_HERTZ },
  { "%", HM_UNIT_PERCENT }, { "percent", HM_UNIT_PERCENT }, { "pct", HM_UNIT_PERCENT },
  { "mm²", HM_UNIT_MM2 }, { "mm2", HM_UNIT_MM2 }, { "mm^2", HM_UNIT_MM2 }, { "sq·mm", HM_UNIT_MM2 },
  { "in²", HM_UNIT_IN2 }, { "in2", HM_UNIT_IN2 }, { "in^2", HM_UNIT_IN2 }, { "sq·in", HM_UNIT_IN2 },
};

static const char *
skip_joint (const char *at)
{
  hm_scan_spaces (&at);
  if (g_str_has_prefix (at, "·"))
    at += strlen ("·");
  else if (*at == '.' || *at == '-')
    at++;
  hm_scan_spaces (&at);
  return at;
}

/* Returns: where @spelling ends in @at, or NULL if it does not stand there */
static const char *
match_spelling (const char *at, const char *spelling, gboolean exact)
{
  if (exact && *at != *spelling)
    return NULL;
  for (; *spelling != '\0'; spelling = g_utf8_next_char (spelling))
    {
      if (g_str_has_prefix (spelling, "·"))
        {
          at = skip_joint (at);
          continue;
        }
      if (g_unichar_tolower (g_utf8_get_char (at)) != g_unichar_tolower (g_utf8_get_char (spelling)))
        return NULL;
      at = g_utf8_next_char (at);
    }
  return at;
}

static gboolean
is_unit_end (const char *at)
{
  return *at == '\0' || (!g_unichar_isalnum (g_utf8_get_char (at)) && strchr ("/^%'\"", *at) == NULL);
}

/* "in." is "in", but "in..7" goes on with a range sign */
static const char *
skip_full_stop (const char *at)
{
  return *at == '.' && at[1] != '.' && !g_ascii_isdigit (at[1]) ? at + 1 : at;
}

/* Moves @longest past the longest of the spellings that stands in @at, and @unit with it */
static void
match_longest (const char *at, const Spelling *rows, gsize n_rows, gboolean exact, const char **longest, HmUnit *unit)
{
  for (gsize i = 0; i < n_rows; i++)
    {
      const char *end = match_spelling (at, rows[i].text, exact);
      if (end == NULL || !is_unit_end (end) || (*longest != NULL && end <= *longest))
        continue;
      *longest = end;
      *unit = rows[i].unit;
    }
}

gboolean
hm_scan_unit (const char **at, HmUnit *unit)
{
  const char *longest = NULL;
  match_longest (*at, spellings, G_N_ELEMENTS (spellings), FALSE, &longest, unit);
  match_longest (*at, exact_spellings, G_N_ELEMENTS (exact_spellings), TRUE, &longest, unit);
  if (longest == NULL)
    return FALSE;
  *at = skip_full_stop (longest);
  return TRUE;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-quantity.h"
#include <math.h>
#include <string.h>

/*
 * Feeds the quantity parsers any bytes. The first byte picks kind and default unit, the rest is the text. What has to hold:
 * a refusal leaves the output alone and explains itself in UTF-8; a value that was read can be written, and reads back the same.
 */

#define DECIMALS 9
#define MAX_TEXT 4096

int LLVMFuzzerTestOneInput (const guint8 *data, gsize size);

static void
check_refusal (const GError *error, const void *out, const void *before, gsize size)
{
  g_assert (error != NULL && error->domain == HM_QUANTITY_ERROR);
  g_assert (*error->message != '\0' && g_utf8_validate (error->message, -1, NULL));
  g_assert (strlen (error->message) < 512);
  g_assert (memcmp (out, before, size) == 0);
}

/* Half of the last digit written, and what doubles lose on the way there and back */
static double
rounding_of (double value)
{
  return 0.5 * pow (10, -DECIMALS) + 1e-12 * (fabs (value) + 500);
}

/* Rounding can carry a value at a limit over it: then one a little nearer to 0 has to pass */
static gboolean
read_back (HmQuantity value, HmQuantity *back, const HmFormat *format)
{
  g_autoptr(GError) error = NULL;
  g_autofree char *text = hm_quantity_format (value, HM_UNIT_NONE, DECIMALS, format);
  g_assert (g_utf8_validate (text, -1, NULL));
  if (hm_quantity_parse (text, value.kind, HM_UNIT_NONE, back, &error))
    return TRUE;
  g_assert (g_error_matches (error, HM_QUANTITY_ERROR, HM_QUANTITY_ERROR_RANGE));
  return FALSE;
}

static void
check_value (HmQuantity value, const HmFormat *format)
{
  HmQuantity back, nearer = value;
  double typed;
  g_assert (isfinite (value.value));
  if (!read_back (value, &back, format))
    {
      nearer.value *= 0.999999;
      g_assert (read_back (nearer, &back, format));
      return;
    }
  typed = hm_quantity_in (value, value.unit);
  g_assert (back.kind == value.kind && back.unit == value.unit);
  g_assert (fabs (hm_quantity_in (back, value.unit) - typed) <= rounding_of (typed));
}

static void
check_range (HmQuantityRange range, const HmFormat *format)
{
  g_autofree char *plain = hm_quantity_range_format (range, HM_UNIT_NONE, -1, format);
  g_autofree char *both = hm_quantity_range_format_both (range, format);
  HmQuantityRange back;
  g_assert (range.low.kind == range.high.kind && range.low.value <= range.high.value);
  g_assert (*plain != '\0' && g_utf8_validate (plain, -1, NULL));
  g_assert (*both != '\0' && g_utf8_validate (both, -1, NULL));
  if (!hm_quantity_parse_range (plain, range.low.kind, HM_UNIT_NONE, &back, NULL))
    g_assert (fabs (range.low.value) + fabs (range.high.value) > 100);      /* rounded over a limit */
  check_value (range.low, format);
  check_value (range.high, format);
}

static void
try_field (const char *text, HmQuantityKind kind, HmUnit default_unit, const HmFormat *format)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(GError) range_error = NULL;
  HmQuantity value, value_before;
  HmQuantityRange range, range_before;
  gboolean is_value, is_range;
  memset (&value, 0xa5, sizeof value);
  memset (&value_before, 0xa5, sizeof value_before);
  memset (&range, 0xa5, sizeof range);
  memset (&range_before, 0xa5, sizeof range_before);
  is_value = hm_quantity_parse (text, kind, default_unit, &value, &error);
  is_range = hm_quantity_parse_range (text, kind, default_unit, &range, &range_error);
  if (is_value)
    g_assert (is_range && memcmp (&range.low.value, &value.value, sizeof value.value) == 0 && range.low.unit == value.unit);
  else
    check_refusal (error, &value, &value_before, sizeof value);
  if (is_range)
    check_range (range, format);
  else
    check_refusal (range_error, &range, &range_before, sizeof range);
}

static void
try_any (const char *text, const HmFormat *format)
{
  g_autoptr(GError) error = NULL;
  HmQuantityRange range, before;
  memset (&range, 0xa5, sizeof range);
  memset (&before, 0xa5, sizeof before);
  if (hm_quantity_parse_any (text, &range, &error))
    check_range (range, format);
  else
    check_refusal (error, &range, &before, sizeof range);
}

int
LLVMFuzzerTestOneInput (const guint8 *data, gsize size)
{
  static const HmFormat formats[] = { { ".", HM_UNIT_SYSTEM_INCH_FIRST }, { ",", HM_UNIT_SYSTEM_METRIC_FIRST } };
  g_autofree char *text = NULL;
  const HmFormat *format;
  HmUnit unit;
  if (size == 0 || size > MAX_TEXT)
    return 0;
  text = g_strndup ((const char *) data + 1, size - 1);
  format = &formats[data[0] % 2];
  unit = data[0] / 2 % HM_UNIT_N_UNITS;
  for (HmQuantityKind kind = 0; kind < HM_QUANTITY_N_KINDS; kind++)
    try_field (text, kind, hm_unit_kind (unit) == kind ? unit : HM_UNIT_NONE, format);
  try_any (text, format);
  return 0;
}

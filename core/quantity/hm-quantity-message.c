/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-quantity-private.h"
#include <string.h>

#define EXCERPT_CHARS 32
#define EXCERPT_BYTES (EXCERPT_CHARS * 4 + 4)   /* no character is longer than 4 bytes */

/* The start of what was typed, fit to stand in a sentence: valid UTF-8, one line, no control or direction marks */
static char *
make_excerpt (const char *text)
{
  g_autofree char *valid = g_utf8_make_valid (text, strnlen (text, EXCERPT_BYTES));
  GString *excerpt = g_string_new (NULL);
  const char *at = g_strstrip (valid);
  for (guint i = 0; i < EXCERPT_CHARS && *at != '\0'; i++, at = g_utf8_next_char (at))
    {
      gunichar c = g_utf8_get_char (at);
      if (g_unichar_isprint (c))
        g_string_append_unichar (excerpt, c);
      else
        g_string_append_c (excerpt, ' ');
    }
  if (*at != '\0')
    g_string_append (excerpt, "…");
  return g_string_free (excerpt, FALSE);
}

/* "in N·m, lbf·ft, lbf·in"; kinds without a list of their own: "as 12.4 V …", "without a unit" */
static char *
describe_units (HmQuantityKind kind)
{
  GString *list = g_string_new (NULL);
  if (kind == HM_QUANTITY_NUMBER)
    g_string_append (list, "without a unit");
  else if (kind == HM_QUANTITY_N_KINDS)
    g_string_append_printf (list, "as %s", hm_quantity_kind_info (kind)->examples);
  else
    for (HmUnit unit = HM_UNIT_NONE + 1; unit < HM_UNIT_N_UNITS; unit++)
      if (hm_unit_kind (unit) == kind)
        g_string_append_printf (list, "%s%s", list->len == 0 ? "in " : ", ", hm_unit_symbol (unit));
  return g_string_free (list, FALSE);
}

static char *
describe_number_fault (HmFault fault, const char *read, const HmKindInfo *want)
{
  switch (fault)
    {
    case HM_FAULT_EMPTY:
      return g_strdup_printf ("Nothing was typed; %s is accepted as %s", want->name, want->examples);
    case HM_FAULT_TOO_LONG:
      return g_strdup_printf ("“%s” is longer than any value; %s is accepted as %s", read, want->name, want->examples);
    case HM_FAULT_ENCODING:
      return g_strdup_printf ("“%s” holds bytes that are not UTF-8 text; %s is accepted as %s", read, want->name, want->examples);
    case HM_FAULT_TWO_DECIMAL_SIGNS:
      return g_strdup_printf ("“%s” has more than one comma or point; either is the decimal sign, and thousands are accepted "
                              "without a sign, as in 1200.5", read);
    case HM_FAULT_ZERO_DENOMINATOR:
      return g_strdup_printf ("“%s” divides by 0; a fraction is accepted as 11/32 or 1 1/8", read);
    case HM_FAULT_MIXED_NUMBER:
      return g_strdup_printf ("“%s” has a whole number before a fraction that is not less than 1; a mixed number is "
                              "accepted as 1 1/8 or 1-1/8", read);
    case HM_FAULT_IS_RANGE:
      return g_strdup_printf ("“%s” is a range; here one value is accepted, such as %s", read, want->examples);
    default:
      return g_strdup_printf ("“%s” does not read as %s; accepted is %s", read, want->name, want->examples);
    }
}

static char *
describe_unit_fault (HmFault fault, const char *read, HmQuantityKind kind, HmQuantityKind found)
{
  const char *want = hm_quantity_kind_info (kind)->name;
  g_autofree char *units = describe_units (kind);
  switch (fault)
    {
    case HM_FAULT_UNIT_OTHER_KIND:
      return g_strdup_printf ("“%s” gives %s; %s is accepted %s", read, hm_quantity_kind_info (found)->name, want, units);
    case HM_FAULT_UNIT_MISSING:
      return g_strdup_printf ("“%s” has no unit; %s is accepted %s", read, want, units);
    case HM_FAULT_UNIT_MISSING_ABOVE:
      return g_strdup_printf ("“%s” has no unit after the upper value; a range is accepted as 4-6 lbf·ft or 12.4 V to 12.6 V", read);
    case HM_FAULT_UNIT_OF_FRACTION:
      return g_strdup_printf ("“%s” is a fraction without a unit; inches are accepted as 11/32 in, millimetres as 8.5 mm", read);
    default:
      return g_strdup_printf ("“%s” has a unit that is not known; %s is accepted %s", read, want, units);
    }
}

static char *
describe_limit (double limit)
{
  char buffer[G_ASCII_DTOSTR_BUF_SIZE];
  g_ascii_formatd (buffer, sizeof buffer, "%.10g", limit < 0 ? -limit : limit);
  return g_strconcat (limit < 0 ? "−" : "", buffer, NULL);
}

static char *
describe_range_fault (HmFault fault, const char *read, HmQuantityKind kind)
{
  const HmKindInfo *want = hm_quantity_kind_info (kind);
  double scale = kind == HM_QUANTITY_RATIO ? 100 : 1;
  g_autofree char *low = describe_limit (want->low * scale);
  g_autofree char *high = describe_limit (want->high * scale);
  const char *unit = kind == HM_QUANTITY_RATIO ? "%" : hm_unit_symbol (want->base);
  if (fault == HM_FAULT_REVERSED)
    return g_strdup_printf ("“%s” has the higher value first; a range is accepted from the lower to the higher", read);
  return g_strdup_printf ("“%s” is out of range; %s is accepted from %s to %s%s%s", read, want->name, low, high,
                          *unit != '\0' ? " " : "", unit);
}

static HmQuantityError
code_of_fault (HmFault fault)
{
  if (fault == HM_FAULT_EMPTY)
    return HM_QUANTITY_ERROR_EMPTY;
  if (fault == HM_FAULT_ENCODING)
    return HM_QUANTITY_ERROR_ENCODING;
  if (fault >= HM_FAULT_REVERSED)
    return HM_QUANTITY_ERROR_RANGE;
  return fault >= HM_FAULT_UNIT_UNKNOWN ? HM_QUANTITY_ERROR_UNIT : HM_QUANTITY_ERROR_SYNTAX;
}

void
hm_quantity_set_fault (GError **error, HmFault fault, const char *text, HmQuantityKind kind, HmQuantityKind found)
{
  g_autofree char *read = NULL;
  g_autofree char *sentence = NULL;
  HmQuantityError code = code_of_fault (fault);
  if (error == NULL)
    return;
  read = make_excerpt (text);
  if (code == HM_QUANTITY_ERROR_RANGE)
    sentence = describe_range_fault (fault, read, kind);
  else if (code == HM_QUANTITY_ERROR_UNIT)
    sentence = describe_unit_fault (fault, read, kind, found);
  else
    sentence = describe_number_fault (fault, read, hm_quantity_kind_info (kind));
  g_set_error_literal (error, HM_QUANTITY_ERROR, code, sentence);
}

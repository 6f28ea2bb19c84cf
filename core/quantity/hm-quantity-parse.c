/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-quantity.h"
#include "hm-quantity-private.h"
#include <math.h>
#include <string.h>

/* A limit typed in another unit may miss it by the last bit: −459.67 °F is −273.15 °C */
#define LIMIT_SLACK 1e-12

G_DEFINE_QUARK (hm-quantity-error-quark, hm_quantity_error)

/* One end of a range, or the single value, as it stands in the text */
typedef struct {
  double value;
  HmUnit unit;
  gboolean has_unit, is_fraction;
} TypedEnd;

typedef struct {
  TypedEnd low, high;
  gboolean is_range;
} TypedRange;

/* What the field wants; HM_QUANTITY_N_KINDS takes the kind of the unit */
typedef struct {
  HmQuantityKind kind;
  HmUnit default_unit;
  gboolean takes_range;
} FieldWish;

static HmFault
scan_end (const char **at, TypedEnd *end)
{
  HmFault fault = hm_scan_number (at, &end->value, &end->is_fraction);
  if (fault != HM_FAULT_NONE)
    return fault;
  hm_scan_spaces (at);
  end->unit = HM_UNIT_NONE;
  end->has_unit = hm_scan_unit (at, &end->unit);
  hm_scan_spaces (at);
  return HM_FAULT_NONE;
}

static HmFault
judge_rest (const char *rest)
{
  gunichar c = g_utf8_get_char (rest);
  if (c == 0)
    return HM_FAULT_NONE;
  return g_unichar_isalpha (c) || c == 0xb0 || strchr ("%'\"", *rest) != NULL
         ? HM_FAULT_UNIT_UNKNOWN : HM_FAULT_NOT_A_NUMBER;
}

static HmFault
scan_range (const char *folded, TypedRange *typed)
{
  const char *at = folded;
  HmFault fault = scan_end (&at, &typed->low);
  if (fault != HM_FAULT_NONE)
    return fault;
  typed->high = typed->low;
  typed->is_range = hm_scan_range_sign (&at);
  if (typed->is_range)
    {
      hm_scan_spaces (&at);
      fault = scan_end (&at, &typed->high);
    }
  return fault != HM_FAULT_NONE ? fault : judge_rest (at);
}

static HmFault
scan_text (const char *text, TypedRange *typed)
{
  g_autofree char *folded = NULL;
  if (strnlen (text, HM_QUANTITY_MAX_BYTES + 1) > HM_QUANTITY_MAX_BYTES)
    return HM_FAULT_TOO_LONG;
  if (!g_utf8_validate (text, -1, NULL))
    return HM_FAULT_ENCODING;
  folded = hm_quantity_fold (text);
  if (*folded == '\0')
    return HM_FAULT_EMPTY;
  return scan_range (folded, typed);
}

/* Neither end has a unit: the field's own stands for it, but nobody writes millimetres as a fraction */
static HmFault
take_default_unit (TypedRange *typed, FieldWish *wish)
{
  const HmUnitInfo *info = hm_unit_info (wish->default_unit);
  if (wish->kind == HM_QUANTITY_N_KINDS)
    wish->kind = HM_QUANTITY_NUMBER;
  if (wish->kind != HM_QUANTITY_NUMBER && wish->default_unit == HM_UNIT_NONE)
    return HM_FAULT_UNIT_MISSING;
  if (info->kind == HM_QUANTITY_LENGTH && info->side == HM_UNIT_SIDE_METRIC
      && (typed->low.is_fraction || typed->high.is_fraction))
    return HM_FAULT_UNIT_OF_FRACTION;
  typed->low.unit = typed->high.unit = wish->default_unit;
  return HM_FAULT_NONE;
}

/* Settles both units and the kind. @found: the kind of a unit that does not fit */
static HmFault
settle_units (TypedRange *typed, FieldWish *wish, HmQuantityKind *found)
{
  if (typed->is_range && !wish->takes_range)
    return HM_FAULT_IS_RANGE;
  if (!typed->high.has_unit)
    return typed->low.has_unit ? HM_FAULT_UNIT_MISSING_ABOVE : take_default_unit (typed, wish);
  if (!typed->low.has_unit)
    typed->low.unit = typed->high.unit;
  if (wish->kind == HM_QUANTITY_N_KINDS)
    wish->kind = hm_unit_kind (typed->high.unit);
  *found = hm_unit_kind (hm_unit_fits_kind (typed->high.unit, wish->kind) ? typed->low.unit : typed->high.unit);
  return hm_unit_fits_kind (typed->low.unit, wish->kind) && hm_unit_fits_kind (typed->high.unit, wish->kind)
         ? HM_FAULT_NONE : HM_FAULT_UNIT_OTHER_KIND;
}

static HmFault
convert_end (const TypedEnd *end, HmQuantityKind kind, HmQuantity *out)
{
  const HmKindInfo *info = hm_quantity_kind_info (kind);
  *out = hm_quantity (kind, end->value, end->unit);
  if (!isfinite (out->value) || out->value < info->low - LIMIT_SLACK * fabs (info->low)
      || out->value > info->high + LIMIT_SLACK * fabs (info->high))
    return HM_FAULT_LIMITS;
  out->value = CLAMP (out->value, info->low, info->high);
  return HM_FAULT_NONE;
}

static HmFault
convert_range (const TypedRange *typed, HmQuantityKind kind, HmQuantityRange *out)
{
  HmFault fault = convert_end (&typed->low, kind, &out->low);
  if (fault == HM_FAULT_NONE)
    fault = convert_end (&typed->high, kind, &out->high);
  if (fault == HM_FAULT_NONE && out->low.value > out->high.value)
    fault = HM_FAULT_REVERSED;
  return fault;
}

static gboolean
parse_field (const char *text, FieldWish wish, HmQuantityRange *out, GError **error)
{
  TypedRange typed = { 0 };
  HmQuantityRange range = { 0 };
  HmQuantityKind found = HM_QUANTITY_NUMBER;
  HmFault fault = scan_text (text, &typed);
  if (fault == HM_FAULT_NONE)
    fault = settle_units (&typed, &wish, &found);
  if (fault == HM_FAULT_NONE)
    fault = convert_range (&typed, wish.kind, &range);
  if (fault != HM_FAULT_NONE)
    {
      hm_quantity_set_fault (error, fault, text, wish.kind, found);
      return FALSE;
    }
  *out = range;
  return TRUE;
}

gboolean
hm_quantity_parse (const char *text, HmQuantityKind kind, HmUnit default_unit, HmQuantity *out, GError **error)
{
  HmQuantityRange range;
  g_return_val_if_fail (text != NULL && out != NULL, FALSE);
  g_return_val_if_fail ((guint) kind < HM_QUANTITY_N_KINDS && (guint) default_unit < HM_UNIT_N_UNITS, FALSE);
  g_return_val_if_fail (hm_unit_fits_kind (default_unit, kind), FALSE);
  if (!parse_field (text, (FieldWish) { kind, default_unit, FALSE }, &range, error))
    return FALSE;
  *out = range.low;
  return TRUE;
}

gboolean
hm_quantity_parse_range (const char *text, HmQuantityKind kind, HmUnit default_unit, HmQuantityRange *out, GError **error)
{
  g_return_val_if_fail (text != NULL && out != NULL, FALSE);
  g_return_val_if_fail ((guint) kind < HM_QUANTITY_N_KINDS && (guint) default_unit < HM_UNIT_N_UNITS, FALSE);
  g_return_val_if_fail (hm_unit_fits_kind (default_unit, kind), FALSE);
  return parse_field (text, (FieldWish) { kind, default_unit, TRUE }, out, error);
}

gboolean
hm_quantity_parse_any (const char *text, HmQuantityRange *out, GError **error)
{
  g_return_val_if_fail (text != NULL && out != NULL, FALSE);
  return parse_field (text, (FieldWish) { HM_QUANTITY_N_KINDS, HM_UNIT_NONE, TRUE }, out, error);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-wrench-text.h"

#include "hm-joint.h"

#include <string.h>

#define PLUS_MINUS "\302\261"
#define WORST_ACCURACY 0.2   /* worse than that is no torque wrench */

G_DEFINE_QUARK (hm-wrench-error-quark, hm_wrench_error)

/* Where the accuracy begins, and how long its sign is. */
static const char *
find_sign (const char *text, gsize *length)
{
  static const char * const signs[] = { PLUS_MINUS, "+/-", "+-" };

  for (gsize i = 0; i < G_N_ELEMENTS (signs); i++)
    {
      const char *at = strstr (text, signs[i]);
      if (at != NULL)
        {
          *length = strlen (signs[i]);
          return at;
        }
    }
  return NULL;
}

static gboolean
read_accuracy (const char *text, double *out, GError **error)
{
  HmQuantity accuracy;

  if (hm_quantity_parse (text, HM_QUANTITY_RATIO, HM_UNIT_PERCENT, &accuracy, NULL)
      && accuracy.value > 0.0 && accuracy.value <= WORST_ACCURACY)
    {
      *out = accuracy.value;
      return TRUE;
    }
  g_set_error_literal (error, HM_WRENCH_ERROR, HM_WRENCH_ERROR_ACCURACY,
                       "the accuracy of a wrench is above 0 and at most 20 %, as in “10-50 lbf·ft ±4 %”");
  return FALSE;
}

gboolean
hm_shop_wrench_parse (const char *text, HmShopWrench *out, GError **error)
{
  HmShopWrench wrench = { 0 };
  HmQuantityRange range;
  gsize length = 0;
  const char *sign;
  g_autofree char *scale = NULL;

  g_return_val_if_fail (text != NULL && out != NULL, FALSE);
  sign = find_sign (text, &length);
  scale = sign != NULL ? g_strndup (text, (gsize) (sign - text)) : g_strdup (text);
  if (!hm_quantity_parse_range (scale, HM_QUANTITY_TORQUE, HM_UNIT_NONE, &range, error))
    return FALSE;
  if (!(range.low.value > 0.0 && range.low.value < range.high.value))
    {
      g_set_error_literal (error, HM_WRENCH_ERROR, HM_WRENCH_ERROR_RANGE,
                           "a wrench needs the lowest and the highest torque of its scale, as in “10-50 lbf·ft”");
      return FALSE;
    }
  wrench.range = (HmWrench) { { range.low.value }, { range.high.value } };
  wrench.unit = range.high.unit;
  wrench.accuracy = hm_tightening_scatter (HM_TIGHTEN_TORQUE_WRENCH, wrench.range.high);
  if (sign != NULL && !read_accuracy (sign + length, &wrench.accuracy, error))
    return FALSE;
  *out = wrench;
  return TRUE;
}

char *
hm_shop_wrench_format (const HmShopWrench *self, const HmFormat *format)
{
  HmQuantityRange range;
  HmQuantity accuracy;
  g_autofree char *scale = NULL, *percent = NULL;

  g_return_val_if_fail (self != NULL && format != NULL, NULL);
  range.low = (HmQuantity) { HM_QUANTITY_TORQUE, self->range.low.newton_metres, self->unit };
  range.high = (HmQuantity) { HM_QUANTITY_TORQUE, self->range.high.newton_metres, self->unit };
  accuracy = (HmQuantity) { HM_QUANTITY_RATIO, self->accuracy, HM_UNIT_PERCENT };
  scale = hm_quantity_range_format (range, self->unit, -1, format);
  percent = hm_quantity_format (accuracy, HM_UNIT_PERCENT, -1, format);
  return g_strconcat (scale, " " PLUS_MINUS, percent, NULL);
}

void
hm_shop_wrench_spread (const HmShopWrench *self, HmTorque torque, HmTorque *low, HmTorque *high)
{
  g_return_if_fail (self != NULL && low != NULL && high != NULL);
  low->newton_metres = torque.newton_metres * (1.0 - self->accuracy);
  high->newton_metres = torque.newton_metres * (1.0 + self->accuracy);
}

HmWrenchFit
hm_shop_wrench_choose (const HmShopWrench *wrenches, gsize n_wrenches, HmTorque torque)
{
  g_autofree HmWrench *ranges = g_new0 (HmWrench, MAX (n_wrenches, 1));

  for (gsize i = 0; i < n_wrenches; i++)
    ranges[i] = wrenches[i].range;
  return hm_wrench_choose (ranges, n_wrenches, torque);
}

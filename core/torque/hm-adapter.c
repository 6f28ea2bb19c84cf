/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-adapter.h"

#include <math.h>

#define SHORTEST_SHARE 0.1   /* of the lever must be left; closer to the hand no setting is trustworthy */

G_DEFINE_QUARK (hm-adapter-error-quark, hm_adapter_error)

/* L / (L + A cos α), or an error. */
static gboolean
lever_ratio (HmLength lever, HmLength adapter, double angle_degrees, double *ratio, GError **error)
{
  double reach = lever.mm + adapter.mm * cos (angle_degrees * G_PI / 180.0);

  if (!(angle_degrees >= 0.0 && angle_degrees <= 180.0))
    {
      g_set_error_literal (error, HM_ADAPTER_ERROR, HM_ADAPTER_ERROR_ANGLE,
                           "the angle of an adapter is from 0 (straight ahead) to 180 degrees (pointing back)");
      return FALSE;
    }
  if (!(lever.mm > 0.0) || !(adapter.mm >= 0.0) || !(reach > SHORTEST_SHARE * lever.mm))
    {
      g_set_error_literal (error, HM_ADAPTER_ERROR, HM_ADAPTER_ERROR_LEVER,
                           "lever and adapter lengths do not go together; the lever is longer than zero, and an adapter "
                           "that points back ends well before the hand");
      return FALSE;
    }
  *ratio = lever.mm / reach;
  return TRUE;
}

gboolean
hm_adapter_setting (HmTorque torque, HmLength lever, HmLength adapter, double angle_degrees, HmTorque *out, GError **error)
{
  double ratio;

  g_return_val_if_fail (out != NULL, FALSE);
  if (!lever_ratio (lever, adapter, angle_degrees, &ratio, error))
    return FALSE;
  out->newton_metres = torque.newton_metres * ratio;
  return TRUE;
}

gboolean
hm_adapter_torque (HmTorque setting, HmLength lever, HmLength adapter, double angle_degrees, HmTorque *out, GError **error)
{
  double ratio;

  g_return_val_if_fail (out != NULL, FALSE);
  if (!lever_ratio (lever, adapter, angle_degrees, &ratio, error))
    return FALSE;
  out->newton_metres = setting.newton_metres / ratio;
  return TRUE;
}

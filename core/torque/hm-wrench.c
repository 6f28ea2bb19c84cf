/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-wrench.h"

#include <math.h>

#define LEAST_SHARE 0.2   /* ISO 6789-1: lowest test point */
#define SLACK 1e-9        /* a torque typed in lbf·ft is not exact in N·m */

static double
least_torque (const HmWrench *self)
{
  return MAX (self->low.newton_metres, LEAST_SHARE * self->high.newton_metres);
}

HmWrenchVerdict
hm_wrench_judge (const HmWrench *self, HmTorque torque)
{
  g_return_val_if_fail (self != NULL, HM_WRENCH_TOO_SMALL);
  if (torque.newton_metres > self->high.newton_metres * (1.0 + SLACK))
    return HM_WRENCH_TOO_SMALL;
  return torque.newton_metres < least_torque (self) * (1.0 - SLACK) ? HM_WRENCH_TOO_LARGE : HM_WRENCH_GOOD;
}

/* How far a torque lies outside, as a ratio from 1 up. */
static double
miss (const HmWrench *self, HmTorque torque)
{
  if (torque.newton_metres > self->high.newton_metres)
    return torque.newton_metres / self->high.newton_metres;
  return torque.newton_metres > 0.0 ? MAX (1.0, least_torque (self) / torque.newton_metres) : G_MAXDOUBLE;
}

static gboolean
is_better (const HmWrench *a, const HmWrench *b, HmTorque torque)
{
  gboolean good_a = hm_wrench_judge (a, torque) == HM_WRENCH_GOOD;
  gboolean good_b = hm_wrench_judge (b, torque) == HM_WRENCH_GOOD;

  if (good_a != good_b)
    return good_a;
  return good_a ? a->high.newton_metres < b->high.newton_metres : miss (a, torque) < miss (b, torque);
}

HmWrenchFit
hm_wrench_choose (const HmWrench *wrenches, gsize n_wrenches, HmTorque torque)
{
  HmWrenchFit fit = { -1, HM_WRENCH_TOO_SMALL, 0.0 };

  g_return_val_if_fail (wrenches != NULL || n_wrenches == 0, fit);
  for (gsize i = 0; i < n_wrenches; i++)
    if (fit.index < 0 || is_better (&wrenches[i], &wrenches[fit.index], torque))
      fit.index = (int) i;
  if (fit.index < 0)
    return fit;
  fit.verdict = hm_wrench_judge (&wrenches[fit.index], torque);
  fit.share = torque.newton_metres / wrenches[fit.index].high.newton_metres;
  return fit;
}

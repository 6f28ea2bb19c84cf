/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-quantity.h"
G_BEGIN_DECLS

/*
 * Which torque wrench of those in the drawer. A wrench is checked at 20, 60 and 100 % of its highest torque (ISO 6789-1);
 * below 20 % nobody vouches for it.
 */

/** HmWrench: @low and @high as on its scale. A plain value. */
typedef struct { HmTorque low, high; } HmWrench;

typedef enum {
  HM_WRENCH_GOOD,          /* from 20 to 100 % of its highest torque, and on its scale */
  HM_WRENCH_TOO_LARGE,     /* below 20 %, or below the scale */
  HM_WRENCH_TOO_SMALL      /* above the scale */
} HmWrenchVerdict;

/** HmWrenchFit: @index is -1 when the list is empty; @share is the torque as a share of its highest. */
typedef struct { int index; HmWrenchVerdict verdict; double share; } HmWrenchFit;

HmWrenchVerdict hm_wrench_judge (const HmWrench *self, HmTorque torque);

/**
 * hm_wrench_choose: the smallest wrench that is good for @torque; if none is, the one that misses by least.
 * @wrenches: (array length=n_wrenches)
 */
HmWrenchFit hm_wrench_choose (const HmWrench *wrenches, gsize n_wrenches, HmTorque torque);

G_END_DECLS

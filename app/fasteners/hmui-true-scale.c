/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-true-scale.h"
#include <math.h>

#define DISAGREE 0.05            /* judgements: of width and height; whole millimeters of a small screen make 1 % */
#define COARSEST_PX_PER_MM 1.0   /* a very large television */
#define FINEST_PX_PER_MM 16.0    /* a telephone whose pixels are not scaled */

double
hmui_true_scale (int width_px, int height_px, int width_mm, int height_mm)
{
  double across, down;

  if (width_px <= 0 || height_px <= 0 || width_mm <= 0 || height_mm <= 0)
    return 0.0;
  across = (double) width_px / width_mm;
  down = (double) height_px / height_mm;
  if (fabs (across / down - 1.0) > DISAGREE || across < COARSEST_PX_PER_MM || across > FINEST_PX_PER_MM)
    return 0.0;
  return across;
}

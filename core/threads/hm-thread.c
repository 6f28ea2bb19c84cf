/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-thread.h"

#include <math.h>

/* Multiples of the pitch on the 60° profile: H = √3/2 P. */
#define PITCH_DIAMETER_PER_PITCH 0.6495190528383290    /* 3/4 H: d − d2 */
#define MINOR_DIAMETER_PER_PITCH 1.0825317547305483    /* 5/4 H: d − D1 */
#define METRIC_STRESS_PER_PITCH 0.938194               /* ISO 898-1: (d2 + d3) / 2 = d − 0.938194 P */
#define UNIFIED_STRESS_PER_PITCH 0.9743                /* ASME B1.1: As = π/4 (d − 0.9743 / n)² */

G_DEFINE_QUARK (hm-thread-error-quark, hm_thread_error)

HmLength
hm_thread_pitch_diameter (const HmThread *self)
{
  g_return_val_if_fail (self != NULL, (HmLength) { 0.0 });
  return (HmLength) { self->major.mm - PITCH_DIAMETER_PER_PITCH * self->pitch.mm };
}

HmLength
hm_thread_minor_diameter (const HmThread *self)
{
  g_return_val_if_fail (self != NULL, (HmLength) { 0.0 });
  return (HmLength) { self->major.mm - MINOR_DIAMETER_PER_PITCH * self->pitch.mm };
}

double
hm_thread_stress_area_mm2 (const HmThread *self)
{
  double mean;

  g_return_val_if_fail (self != NULL, 0.0);
  mean = self->major.mm - self->pitch.mm * (self->form == HM_THREAD_UNIFIED ? UNIFIED_STRESS_PER_PITCH
                                                                            : METRIC_STRESS_PER_PITCH);
  return G_PI / 4.0 * mean * mean;
}

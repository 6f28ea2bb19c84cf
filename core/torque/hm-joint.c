/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-joint.h"

#include "hm-tap.h"

#include <math.h>

#define COS_30 0.8660254037844386
#define ROOT_PER_PITCH 1.226869            /* d3 = d − 1.226869 P, ISO 68-1 root */
#define PLASTIC_TORSION 1.5                /* VDI 2230: τ on a fully plastic section */
#define MM_PER_M 1000.0
#define HOLE_PER_DIAMETER 1.1

/* ISO 286-1, IT16 in mm, for the spans of widths that heads below 21 mm fall in. */
static double
it16_mm (double width)
{
  if (width <= 3.0)
    return 0.6;
  if (width <= 6.0)
    return 0.75;
  if (width <= 10.0)
    return 0.9;
  return width <= 18.0 ? 1.1 : 1.3;
}

HmLength
hm_joint_hex_bearing (HmLength min_across_flats)
{
  double s = min_across_flats.mm;

  return (HmLength) { s < 20.5 ? s - it16_mm (s) : 0.95 * s };
}

HmJoint
hm_joint_for_hex (const HmThread *thread, const HmHead *head, double mu, const HmTables *tables)
{
  HmJoint joint = { 0 };
  const HmHoleRow *holes;

  g_return_val_if_fail (thread != NULL && head != NULL && tables != NULL && mu > 0.0, joint);
  holes = hm_thread_find_holes (thread, tables);
  joint.thread = *thread;
  joint.bearing_outer = hm_joint_hex_bearing (head->min);
  joint.bearing_inner.mm = holes != NULL && holes->normal.mm > 0.0 ? holes->normal.mm
                                                                   : HOLE_PER_DIAMETER * thread->major.mm;
  joint.mu_thread = joint.mu_bearing = mu;
  return joint;
}

HmLength
hm_joint_bearing_diameter (const HmJoint *self)
{
  g_return_val_if_fail (self != NULL, (HmLength) { 0.0 });
  return (HmLength) { (self->bearing_outer.mm + self->bearing_inner.mm) / 2.0 };
}

/* Lever arms in mm, by which the preload turns into torque. */
static double
pitch_arm (const HmJoint *self)
{
  return self->thread.pitch.mm / (2.0 * G_PI);
}

static double
thread_arm (const HmJoint *self)
{
  return self->mu_thread * hm_thread_pitch_diameter (&self->thread).mm / (2.0 * COS_30);
}

static double
bearing_arm (const HmJoint *self)
{
  return self->mu_bearing * hm_joint_bearing_diameter (self).mm / 2.0;
}

static HmTorque
torque_of (HmForce force, double arm_mm)
{
  return (HmTorque) { force.newtons * arm_mm / MM_PER_M };
}

HmTorqueParts
hm_joint_tightening_parts (const HmJoint *self, HmForce preload)
{
  HmTorqueParts parts = { { 0.0 }, { 0.0 }, { 0.0 } };

  g_return_val_if_fail (self != NULL, parts);
  parts.pitch = torque_of (preload, pitch_arm (self));
  parts.thread_friction = torque_of (preload, thread_arm (self));
  parts.bearing_friction = torque_of (preload, bearing_arm (self));
  return parts;
}

HmTorque
hm_joint_tightening_torque (const HmJoint *self, HmForce preload)
{
  g_return_val_if_fail (self != NULL, (HmTorque) { 0.0 });
  return torque_of (preload, pitch_arm (self) + thread_arm (self) + bearing_arm (self));
}

HmForce
hm_joint_preload (const HmJoint *self, HmTorque torque)
{
  g_return_val_if_fail (self != NULL, (HmForce) { 0.0 });
  return (HmForce) { torque.newton_metres * MM_PER_M / (pitch_arm (self) + thread_arm (self) + bearing_arm (self)) };
}

HmTorque
hm_joint_loosening_torque (const HmJoint *self, HmForce preload)
{
  g_return_val_if_fail (self != NULL, (HmTorque) { 0.0 });
  return torque_of (preload, MAX (0.0, thread_arm (self) + bearing_arm (self) - pitch_arm (self)));
}

double
hm_joint_nut_factor (const HmJoint *self)
{
  g_return_val_if_fail (self != NULL, 0.0);
  return (pitch_arm (self) + thread_arm (self) + bearing_arm (self)) / self->thread.major.mm;
}

static double
stress_diameter_mm (const HmJoint *self)
{
  double root = self->thread.major.mm - ROOT_PER_PITCH * self->thread.pitch.mm;

  return (hm_thread_pitch_diameter (&self->thread).mm + root) / 2.0;
}

/* Von Mises stress per newton of preload, MPa/N. */
static double
stress_per_newton (const HmJoint *self)
{
  double d0 = stress_diameter_mm (self), d2 = hm_thread_pitch_diameter (&self->thread).mm;
  double sigma = 4.0 / (G_PI * d0 * d0);
  double twist = PLASTIC_TORSION * d2 / d0 * (self->thread.pitch.mm / (G_PI * d2) + self->mu_thread / COS_30);

  return sigma * sqrt (1.0 + 3.0 * twist * twist);
}

HmStress
hm_joint_equivalent_stress (const HmJoint *self, HmForce preload)
{
  g_return_val_if_fail (self != NULL, (HmStress) { 0.0 });
  return (HmStress) { preload.newtons * stress_per_newton (self) };
}

HmForce
hm_joint_preload_at (const HmJoint *self, HmStress yield, double utilization)
{
  g_return_val_if_fail (self != NULL && utilization > 0.0 && utilization <= 1.0, (HmForce) { 0.0 });
  return (HmForce) { utilization * yield.megapascals / stress_per_newton (self) };
}

double
hm_tightening_scatter (HmTighteningTool tool, HmTorque torque)
{
  switch (tool)
    {
    case HM_TIGHTEN_BY_FEEL:
      return 0.35;
    case HM_TIGHTEN_IMPACT:
      return 0.5;
    case HM_TIGHTEN_TORQUE_WRENCH:
    default:
      return torque.newton_metres <= 10.0 ? 0.06 : 0.04;
    }
}

static HmForce
preload_with_mu (const HmJoint *self, HmTorque torque, double mu)
{
  HmJoint changed = *self;

  changed.mu_thread = changed.mu_bearing = mu;
  return hm_joint_preload (&changed, torque);
}

HmPreloadSpread
hm_joint_preload_spread (const HmJoint *self, HmTorque torque, const HmFrictionRow *friction, HmTighteningTool tool,
                         HmStress yield)
{
  HmPreloadSpread spread = { 0 };
  HmJoint slippery;
  double scatter;

  g_return_val_if_fail (self != NULL && friction != NULL, spread);
  scatter = hm_tightening_scatter (tool, torque);
  slippery = *self;
  slippery.mu_thread = slippery.mu_bearing = friction->mu_low;
  spread.target = preload_with_mu (self, torque, friction->mu);
  spread.low = preload_with_mu (self, (HmTorque) { torque.newton_metres * (1.0 - scatter) }, friction->mu_high);
  spread.high = preload_with_mu (self, (HmTorque) { torque.newton_metres * (1.0 + scatter) }, friction->mu_low);
  spread.tightening_factor = spread.low.newtons > 0.0 ? spread.high.newtons / spread.low.newtons : 0.0;
  if (yield.megapascals > 0.0)
    spread.yield_share = hm_joint_equivalent_stress (&slippery, spread.high).megapascals / yield.megapascals;
  return spread;
}

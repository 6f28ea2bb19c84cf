/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-fit.h"
#include "hm-torque.h"
G_BEGIN_DECLS

/*
 * The long form of the torque equation, with friction in the thread and under the head apart (ISO 16047, VDI 2230):
 *   T = F [ P / 2π  +  μ_thread d2 / (2 cos 30°)  +  μ_bearing D_b / 2 ]
 * and the stress that tightening puts in the bolt.
 */

/**
 * HmJoint: a plain value.
 * @bearing_outer, @bearing_inner: the ring that slides when the head or nut turns; the flange of a flange head, the head
 *   itself on a washer; inner is the hole
 * @mu_thread, @mu_bearing: coefficients of friction, above 0
 */
typedef struct {
  HmThread thread;
  HmLength bearing_outer, bearing_inner;
  double mu_thread, mu_bearing;
} HmJoint;

/**
 * hm_joint_hex_bearing: diameter of the washer face of a hexagon head, from its least width across flats; ISO 4759-1:
 * s − IT16 below 21 mm, 0.95 s from there on.
 */
HmLength hm_joint_hex_bearing (HmLength min_across_flats);

/**
 * hm_joint_for_hex: a joint with a plain hexagon head on the normal clearance hole (ISO 273, ASME B18.2.8; 1.1 d where no
 * hole is listed), both frictions equal.
 */
HmJoint hm_joint_for_hex (const HmThread *thread, const HmHead *head, double mu, const HmTables *tables);

/** hm_joint_bearing_diameter: the mean diameter at which the bearing friction acts, (outer + inner) / 2, VDI 2230. */
HmLength hm_joint_bearing_diameter (const HmJoint *self);

/** HmTorqueParts: where the torque goes; only @pitch stretches the bolt. */
typedef struct { HmTorque pitch, thread_friction, bearing_friction; } HmTorqueParts;
HmTorqueParts hm_joint_tightening_parts (const HmJoint *self, HmForce preload);

HmTorque hm_joint_tightening_torque (const HmJoint *self, HmForce preload);

/** hm_joint_preload: the preload that a torque gives. */
HmForce hm_joint_preload (const HmJoint *self, HmTorque torque);

/**
 * hm_joint_loosening_torque: to start undoing, at the same friction: the pitch helps instead of hindering. Rust, paint
 * and thread-locker come on top; no figure is given for them. Never below 0.
 */
HmTorque hm_joint_loosening_torque (const HmJoint *self, HmForce preload);

/** hm_joint_nut_factor: K of T = K F d that says the same. */
double hm_joint_nut_factor (const HmJoint *self);

/**
 * hm_joint_equivalent_stress: von Mises stress in the bolt while the wrench turns, VDI 2230:
 * √(σ² + 3 τ²), σ on the stress cross-section, τ for a fully plastic section.
 */
HmStress hm_joint_equivalent_stress (const HmJoint *self, HmForce preload);

/**
 * hm_joint_preload_at: the preload at which that stress is @utilization of @yield (VDI 2230 tables: 0.9).
 * @utilization: above 0, at most 1
 */
HmForce hm_joint_preload_at (const HmJoint *self, HmStress yield, double utilization);

/** HmTighteningTool: how well a tool keeps its torque; common practice, no source, but for the wrench (ISO 6789-1). */
typedef enum { HM_TIGHTEN_BY_FEEL, HM_TIGHTEN_TORQUE_WRENCH, HM_TIGHTEN_IMPACT } HmTighteningTool;

/** hm_tightening_scatter: deviation to either side as a share of @torque: feel 0.35, impact 0.5, wrench 0.04 (0.06 up to
 * 10 N·m). */
double hm_tightening_scatter (HmTighteningTool tool, HmTorque torque);

/**
 * HmPreloadSpread: what preload to expect from one torque.
 * @tightening_factor: high / low, α_A of VDI 2230; low preload = high / factor
 * @yield_share: von Mises stress at @high as a share of yield; above 1 the bolt stretches for good
 */
typedef struct { HmForce low, target, high; double tightening_factor, yield_share; } HmPreloadSpread;

/** hm_joint_preload_spread: @friction gives the range of μ for both faces; @self's own μ are not used. */
HmPreloadSpread hm_joint_preload_spread (const HmJoint *self, HmTorque torque, const HmFrictionRow *friction,
                                         HmTighteningTool tool, HmStress yield);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-fastener.h"
#include "hm-tables.h"
G_BEGIN_DECLS

typedef enum { HM_TORQUE_ERROR_CLASS, HM_TORQUE_ERROR_THREAD, HM_TORQUE_ERROR_NOT_COMPUTABLE } HmTorqueError;
#define HM_TORQUE_ERROR (hm_torque_error_quark ())
GQuark hm_torque_error_quark (void);

/**
 * HmTorqueAnswer: what the wrench should be set to, with its spread. A plain value; source strings are static or
 * borrowed from the fastener.
 * @low, @target, @high: the spread expected from friction and tool; equal where only one value is known
 * @provenance: computed, or what the knowledge says
 */
typedef struct {
  HmTorqueBasis basis;
  HmTorque low, target, high;
  HmProvenance provenance;
} HmTorqueAnswer;

/**
 * hm_torque_for_fastener: the value for one fastener as the knowledge describes it.
 * HM_TORQUE_BY_HAND and HM_TORQUE_MANUAL_ONLY give zeros and their basis.
 * Returns: %FALSE with %HM_TORQUE_ERROR when thread and class do not allow a computed value
 */
gboolean hm_torque_for_fastener (const HmTables *tables, const HmFastener *fastener, HmTorqueAnswer *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_torque_from_range: an answer from torques that are given. %FALSE with %HM_TORQUE_ERROR when one is not above zero. */
gboolean hm_torque_from_range (const HmQuantityRange *range, HmProvenance provenance, HmTorqueAnswer *out,
                               GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_torque_for_special: the class range of a joint that theory does not cover, or by hand, or the manual only. */
gboolean hm_torque_for_special (const HmSpecialRow *row, HmTorqueAnswer *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_torque_proof_stress: proof strength of a property class or SAE grade at this size; ISO 898-1, SAE J429. */
gboolean hm_torque_proof_stress (const HmTables *tables, const char *strength, const HmThread *thread, HmStress *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_torque_find_strength: the row of the class at this size; borrowed from @tables. NULL with %HM_TORQUE_ERROR if none. */
const HmStrengthRow *hm_torque_find_strength (const HmTables *tables, const char *strength, const HmThread *thread,
                                              GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_torque_find_friction: the row of a surface state; borrowed, NULL if the table lacks it. */
const HmFrictionRow *hm_torque_find_friction (const HmTables *tables, HmFriction friction);

HmForce  hm_torque_preload (const HmThread *thread, HmStress proof, double share_of_proof);   /* share · Sp · As */
HmTorque hm_torque_from_nut_factor (const HmThread *thread, HmForce preload, double nut_factor);   /* T = K F d */

G_END_DECLS

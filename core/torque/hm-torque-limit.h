/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-tightening.h"
G_BEGIN_DECLS

/*
 * What the material that a bolt is screwed into allows. Private to core/torque.
 */

/** HmTorqueLimit: @provenance says from what the value was worked out; static text. */
typedef struct { HmTorqueGoverns governs; HmProvenance provenance; } HmTorqueLimit;

/** hm_torque_limit_engaged: the engaged length to reckon with: @engaged, or one and a half diameters if that is 0. */
HmLength hm_torque_limit_engaged (const HmThread *thread, HmLength engaged);

/**
 * hm_torque_limit_preload: lowers @preload to what the internal thread holds.
 * @engaged: length of full threads that meet, 0 if not known
 * Returns: %FALSE with %HM_TORQUE_ERROR_NOT_COMPUTABLE where no honest value exists
 */
gboolean hm_torque_limit_preload (const HmTables *tables, const HmThread *thread, HmMaterial into, HmLength engaged,
                                  HmForce *preload, HmTorqueLimit *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS

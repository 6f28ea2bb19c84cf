/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-torque.h"
G_BEGIN_DECLS

/*
 * What the material that a bolt is screwed into allows. Private to core/torque.
 */

/**
 * hm_torque_limit_preload: lowers @preload to what the internal thread holds.
 * @provenance: (out caller-allocates): says from what the value was worked out; static text
 * Returns: %FALSE with %HM_TORQUE_ERROR_NOT_COMPUTABLE where no honest value exists
 */
gboolean hm_torque_limit_preload (const HmTables *tables, const HmFastener *fastener, HmForce *preload,
                                  HmProvenance *provenance, GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS

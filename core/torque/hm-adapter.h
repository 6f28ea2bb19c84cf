/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-quantity.h"
G_BEGIN_DECLS

/*
 * An adapter (crowfoot, dog-bone) on a torque wrench lengthens or shortens the lever.
 *   setting = torque · L / (L + A cos α)
 * L: handle centre to square drive; A: square drive to fastener; α: 0 straight ahead, 90° sideways (no change), 180° pointing
 * back. Source: TM 9-254, paragraph 4-1; TM 1-1500-204-23-9, chapter 8.
 */

typedef enum { HM_ADAPTER_ERROR_LEVER, HM_ADAPTER_ERROR_ANGLE } HmAdapterError;
#define HM_ADAPTER_ERROR (hm_adapter_error_quark ())
GQuark hm_adapter_error_quark (void);

/**
 * hm_adapter_setting: what to set the wrench to so that the fastener gets @torque.
 * Returns: %FALSE with %HM_ADAPTER_ERROR_LEVER when a length is not above zero (adapter: below zero), or the adapter reaches back to
 *   the hand or beyond; with %HM_ADAPTER_ERROR_ANGLE when the angle is not from 0 to 180
 */
gboolean hm_adapter_setting (HmTorque torque, HmLength lever, HmLength adapter, double angle_degrees, HmTorque *out,
                             GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_adapter_torque: what the fastener gets when the wrench is set to @setting; errors as hm_adapter_setting(). */
gboolean hm_adapter_torque (HmTorque setting, HmLength lever, HmLength adapter, double angle_degrees, HmTorque *out,
                            GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS

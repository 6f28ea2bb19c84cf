/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-wrench.h"
G_BEGIN_DECLS

/*
 * The wrenches in the shop's drawer, as a line of text each: "10–50 lbf·ft ±4 %".
 */

/** HmShopWrench: a plain value. @unit: of its scale; @accuracy: deviation to either side as a share of the torque */
typedef struct { HmWrench range; HmUnit unit; double accuracy; } HmShopWrench;

typedef enum { HM_WRENCH_ERROR_RANGE, HM_WRENCH_ERROR_ACCURACY } HmWrenchError;
#define HM_WRENCH_ERROR (hm_wrench_error_quark ())
GQuark hm_wrench_error_quark (void);

/**
 * hm_shop_wrench_parse:
 * @text: "10-50 lbf·ft", "25..125 N·m ±3 %", "5-25 N·m +/- 6 %"; any bytes. Without an accuracy that of ISO 6789-1 is
 *   taken: 4 %, up to 10 N·m 6 %
 * @out: (out caller-allocates): written on success only
 * Returns: %FALSE with %HM_WRENCH_ERROR or %HM_QUANTITY_ERROR
 */
gboolean hm_shop_wrench_parse (const char *text, HmShopWrench *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_shop_wrench_format: "10–50 lbf·ft ±4 %", in the unit of its scale; with %hm_format_default the text that the parser
 * reads back the same. (transfer full) */
char *hm_shop_wrench_format (const HmShopWrench *self, const HmFormat *format);

/** hm_shop_wrench_spread: what the fastener may get when the wrench is set to @torque, by the wrench's accuracy alone. */
void hm_shop_wrench_spread (const HmShopWrench *self, HmTorque torque, HmTorque *low, HmTorque *high);

/** hm_shop_wrench_choose: as hm_wrench_choose(). */
HmWrenchFit hm_shop_wrench_choose (const HmShopWrench *wrenches, gsize n_wrenches, HmTorque torque);

G_END_DECLS

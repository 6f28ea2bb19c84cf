/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-guide.h"
G_BEGIN_DECLS

/** hm_limit_from_text: the ends of a limit as data/knowledge/ writes them. @low, @high: (nullable): one at least is there */
gboolean hm_limit_from_text (const char *low, const char *high, HmLimit *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/**
 * hm_limit_edge: the end of a limit that parts two findings of a reading, in the base unit of @kind: its Low where
 * high readings are normal, its High where low ones are.
 * Returns: %FALSE when the limit measures something else or does not have that end
 */
gboolean hm_limit_edge (const HmLimit *self, HmQuantityKind kind, gboolean normal_above, double *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS

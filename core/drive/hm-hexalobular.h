/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-fit.h"
G_BEGIN_DECLS

/*
 * Hexalobular drives by their published geometry: A over the points, B over the hollows between them (ISO 10664).
 *
 * Model. A key of another number stays in reach of the recess's lobes only over the ring between the recess's B and the
 * key's A. Its hold is (A_key − B_recess) / (A_recess − B_recess): 1 for the right key, 0 for one that turns round. A key
 * with a larger A does not go in. Below 0.9 the lobes round (judgement: common practice, no source).
 */

/** HmHexalobularFit: @hold from 0 to 1; a plain value. */
typedef struct { HmFitVerdict verdict; double hold; } HmHexalobularFit;

/** hm_hexalobular_find: the row of a T size (@external %FALSE) or E size; borrowed, NULL if the table lacks it. */
const HmHexalobularRow *hm_hexalobular_find (int number, gboolean external, const HmTables *tables);

/**
 * hm_hexalobular_fit: a T key in a T recess.
 * Returns: %FALSE when a size that the answer needs is not published (B of T27); @out is then unchanged
 */
gboolean hm_hexalobular_fit (int key, int recess, const HmTables *tables, HmHexalobularFit *out) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS

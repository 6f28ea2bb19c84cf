/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-fastener.h"
#include "hm-hexalobular.h"
#include "hm-size.h"
G_BEGIN_DECLS

/* What drives a recess: keys of the same and of the next sizes, and what else takes hold of the same fastener. */

/**
 * HmKeyFit: a key in the recess in question. A plain value.
 * @known: whether the sizes that the answer needs are published; else @verdict and @hold say nothing
 * @hold: hexalobular: share of the lobes' hold, 0 to 1; 0 for hexagon keys
 */
typedef struct { HmDrive key; gboolean known; HmFitVerdict verdict; double hold; } HmKeyFit;

/**
 * hm_key_fits: the key that belongs in @recess and those of the next sizes, of both systems for hexagon keys.
 * @recess: a hexalobular recess, an outside hexalobular drive or a hexagon socket
 * Returns: (transfer full) (element-type HmKeyFit): the best first; empty for other drives
 */
GArray *hm_key_fits (const HmDrive *recess, const HmTables *tables);

/** HmOtherDrive: what turns a fastener besides the drive in question. @example: one that has both; borrowed. */
typedef struct { HmDrive drive; guint count; const HmFastener *example; } HmOtherDrive;

/**
 * hm_other_drives: what else takes hold of fasteners that have @drive: combination heads.
 * @fasteners: (element-type HmFastener *): all that are known
 * Returns: (transfer full) (element-type HmOtherDrive): that of the most fasteners first
 */
GArray *hm_other_drives (const GPtrArray *fasteners, const HmDrive *drive);

G_END_DECLS

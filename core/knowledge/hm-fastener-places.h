/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-knowledge.h"
G_BEGIN_DECLS

/*
 * The fasteners of all machine layouts, and where each sits. Keeps what it needs of the knowledge alive.
 */
typedef struct _HmFastenerPlaces HmFastenerPlaces;

/** HmFastenerPlace: @fastener and @layout are borrowed from the #HmFastenerPlaces. */
typedef struct { const HmFastener *fastener; const HmLayout *layout; } HmFastenerPlace;

/** hm_fastener_places_new: Returns: (transfer full), or NULL with @error when a layout cannot be read */
HmFastenerPlaces *hm_fastener_places_new  (HmKnowledge *knowledge, GError **error);
void              hm_fastener_places_free (HmFastenerPlaces *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmFastenerPlaces, hm_fastener_places_free)

/** hm_fastener_places_get_fasteners: (element-type HmFastener *): each once; borrowed. */
const GPtrArray *hm_fastener_places_get_fasteners (const HmFastenerPlaces *self);

/** hm_fastener_places_find: (transfer full) (element-type HmFastenerPlace): where fasteners that @drive turns sit. */
GArray *hm_fastener_places_find (const HmFastenerPlaces *self, const HmDrive *drive);

G_END_DECLS

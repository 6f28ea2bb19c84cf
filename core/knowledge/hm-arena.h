/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>
G_BEGIN_DECLS

/* Memory that is given back all at once: what one guide, picture or list of entries is made of. */
typedef struct { GStringChunk *strings; GPtrArray *blocks; } HmArena;

void hm_arena_init  (HmArena *self);
void hm_arena_clear (HmArena *self);

/** hm_arena_alloc0: @count items of @size bytes, zeroed; never NULL, also when @count is 0. */
gpointer hm_arena_alloc0 (HmArena *self, gsize count, gsize size);
#define hm_arena_new0(arena, type, count) ((type *) hm_arena_alloc0 ((arena), (count), sizeof (type)))

/** hm_arena_text: a copy; NULL for NULL. */
const char *hm_arena_text (HmArena *self, const char *text);

/** hm_arena_pointers: the pointers of @array, NULL-terminated. */
gconstpointer *hm_arena_pointers (HmArena *self, const GPtrArray *array);

G_END_DECLS

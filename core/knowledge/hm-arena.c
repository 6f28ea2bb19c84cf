/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-arena.h"
#include <string.h>

void
hm_arena_init (HmArena *self)
{
  self->strings = g_string_chunk_new (4096);
  self->blocks = g_ptr_array_new_with_free_func (g_free);
}

void
hm_arena_clear (HmArena *self)
{
  g_clear_pointer (&self->strings, g_string_chunk_free);
  g_clear_pointer (&self->blocks, g_ptr_array_unref);
}

gpointer
hm_arena_alloc0 (HmArena *self, gsize count, gsize size)
{
  gpointer block = g_malloc0_n (MAX (count, 1), size);

  g_ptr_array_add (self->blocks, block);
  return block;
}

const char *
hm_arena_text (HmArena *self, const char *text)
{
  return text != NULL ? g_string_chunk_insert_const (self->strings, text) : NULL;
}

gconstpointer *
hm_arena_pointers (HmArena *self, const GPtrArray *array)
{
  gconstpointer *pointers = hm_arena_new0 (self, gconstpointer, array->len + 1);

  if (array->len > 0)
    memcpy (pointers, array->pdata, array->len * sizeof (gpointer));
  return pointers;
}

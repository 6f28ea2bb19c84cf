/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-picture.h"
#include "hm-knowledge-private.h"
#include "hm-knowledge-words.h"
#include "hm-picture-text.h"
#include <string.h>

const HmPicturePoint *
hm_picture_find_point (const HmPicture *self, const char *id)
{
  g_return_val_if_fail (self != NULL && id != NULL, NULL);
  for (guint i = 0; i < self->n_points; i++)
    if (strcmp (self->points[i].id, id) == 0)
      return &self->points[i];
  return NULL;
}

/* A copy of @array's items in the arena. */
static gpointer
keep_items (HmArena *arena, const GArray *array, guint *n)
{
  gsize size = g_array_get_element_size ((GArray *) array);
  gpointer items = hm_arena_alloc0 (arena, array->len, size);

  if (array->len > 0)
    memcpy (items, array->data, array->len * size);
  *n = array->len;
  return items;
}

static gboolean
read_parts (HmStore *store, HmArena *arena, HmPicture *picture, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  g_autoptr (GArray) parts = g_array_new (FALSE, TRUE, sizeof (HmPicturePart));
  HmStep step;

  if (!hm_store_prepare (store, "SELECT id, name, symbol, x, y, turn FROM picture_part JOIN entry USING (entry)"
                         " WHERE scope = ?1 ORDER BY entry", &stmt, error))
    return FALSE;
  hm_stmt_bind_text (&stmt, 1, picture->id);
  while ((step = hm_stmt_step (&stmt, error)) == HM_STEP_ROW)
    {
      int symbol = hm_words_find (hm_words_symbol, hm_stmt_get_text (&stmt, 2));
      HmPicturePart part = { hm_arena_text (arena, hm_stmt_get_text (&stmt, 0)), hm_arena_text (arena, hm_stmt_get_text (&stmt, 1)),
                             (HmSymbol) symbol, { hm_stmt_get_double (&stmt, 3), hm_stmt_get_double (&stmt, 4) },
                             (int) hm_stmt_get_int64 (&stmt, 5) };
      if (symbol < 0)
        return hm_read_fail_inconsistent ("symbols", error);
      g_array_append_val (parts, part);
    }
  picture->parts = keep_items (arena, parts, &picture->n_parts);
  return step == HM_STEP_DONE;
}

static gboolean
read_points (HmStore *store, HmArena *arena, HmPicture *picture, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  g_autoptr (GArray) points = g_array_new (FALSE, TRUE, sizeof (HmPicturePoint));
  HmStep step;

  if (!hm_store_prepare (store, "SELECT id, name, x, y FROM picture_point JOIN entry USING (entry) WHERE scope = ?1 ORDER BY entry",
                         &stmt, error))
    return FALSE;
  hm_stmt_bind_text (&stmt, 1, picture->id);
  while ((step = hm_stmt_step (&stmt, error)) == HM_STEP_ROW)
    {
      HmPicturePoint point = { hm_arena_text (arena, hm_stmt_get_text (&stmt, 0)), hm_arena_text (arena, hm_stmt_get_text (&stmt, 1)),
                               { hm_stmt_get_double (&stmt, 2), hm_stmt_get_double (&stmt, 3) } };
      g_array_append_val (points, point);
    }
  picture->points = keep_items (arena, points, &picture->n_points);
  return step == HM_STEP_DONE;
}

static gboolean
read_wires (HmStore *store, HmArena *arena, HmPicture *picture, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  g_autoptr (GArray) wires = g_array_new (FALSE, TRUE, sizeof (HmPictureWire));
  HmStep step;

  if (!hm_store_prepare (store, "SELECT path, heavy FROM picture_wire JOIN entry USING (entry) WHERE scope = ?1 ORDER BY entry",
                         &stmt, error))
    return FALSE;
  hm_stmt_bind_text (&stmt, 1, picture->id);
  while ((step = hm_stmt_step (&stmt, error)) == HM_STEP_ROW)
    {
      g_autoptr (GArray) path = NULL;
      HmPictureWire wire = { .heavy = hm_stmt_get_int64 (&stmt, 1) != 0 };
      if (!hm_picture_path_from_text (hm_stmt_get_text (&stmt, 0), &path, error))
        return FALSE;
      wire.points = keep_items (arena, path, &wire.n_points);
      g_array_append_val (wires, wire);
    }
  picture->wires = keep_items (arena, wires, &picture->n_wires);
  return step == HM_STEP_DONE;
}

gboolean
hm_read_picture (HmStore *store, HmArena *arena, const char *id, const HmPicture **out, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  HmPicture *picture;
  HmStep step;

  if (!hm_store_prepare (store, "SELECT id, name, detail, width, height FROM picture JOIN entry USING (entry) WHERE id = ?1",
                         &stmt, error))
    return FALSE;
  hm_stmt_bind_text (&stmt, 1, id);
  step = hm_stmt_step (&stmt, error);
  *out = NULL;
  if (step != HM_STEP_ROW)
    return step == HM_STEP_DONE;
  picture = hm_arena_new0 (arena, HmPicture, 1);
  picture->id = hm_arena_text (arena, hm_stmt_get_text (&stmt, 0));
  picture->name = hm_arena_text (arena, hm_stmt_get_text (&stmt, 1));
  picture->detail = hm_arena_text (arena, hm_stmt_get_text (&stmt, 2));
  picture->width = hm_stmt_get_double (&stmt, 3);
  picture->height = hm_stmt_get_double (&stmt, 4);
  *out = picture;
  return read_parts (store, arena, picture, error) && read_points (store, arena, picture, error)
         && read_wires (store, arena, picture, error);
}

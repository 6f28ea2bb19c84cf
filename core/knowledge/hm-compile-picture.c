/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-compile-write.h"
#include "hm-knowledge-words.h"
#include "hm-picture-text.h"
#include <string.h>

/* Pictures and what is drawn in them. Every place must lie within the picture's size. */

static gboolean
read_size (HmSourceEntry *picture, HmPoint *out, GError **error)
{
  const char *text;

  return hm_entry_get_text (picture, "Size", TRUE, &text, error)
         && (hm_picture_size_from_text (text, out, error) || hm_entry_fail_at (picture, "Size", error));
}

static gboolean
check_inside (HmWriter *self, HmSourceEntry *entry, const char *key, HmPoint at, GError **error)
{
  HmSourceEntry *picture = hm_source_find (self->source, "picture", "", entry->scope);
  HmPoint size;

  if (!read_size (picture, &size, error))
    return FALSE;
  if (at.x >= 0 && at.y >= 0 && at.x <= size.x && at.y <= size.y)
    return TRUE;
  return hm_entry_fail_key (entry, key, error, "%g,%g lies outside of the picture (%g x %g)", at.x, at.y, size.x, size.y);
}

static gboolean
read_at (HmWriter *self, HmSourceEntry *entry, HmPoint *out, GError **error)
{
  const char *text;

  if (!hm_entry_get_text (entry, "At", TRUE, &text, error))
    return FALSE;
  if (!hm_picture_point_from_text (text, out, error))
    return hm_entry_fail_at (entry, "At", error);
  return check_inside (self, entry, "At", *out, error);
}

gboolean
hm_write_picture (HmWriter *self, HmSourceEntry *entry, GError **error)
{
  const char *detail;
  HmPoint size;

  return hm_entry_get_text (entry, "Detail", TRUE, &detail, error) && read_size (entry, &size, error)
         && hm_writer_put (self, error, "INSERT INTO picture (entry, detail, width, height) VALUES (?1, ?2, ?3, ?4)",
                           "itdd", entry->row, detail, size.x, size.y);
}

gboolean
hm_write_part (HmWriter *self, HmSourceEntry *entry, GError **error)
{
  static const char * const turns[] = { "0", "90", "180", "270", NULL };
  const char *symbol, *turn;
  HmPoint at;
  int quarter;

  if (!hm_entry_get_text (entry, "Symbol", TRUE, &symbol, error) || !hm_entry_get_text (entry, "Turn", FALSE, &turn, error)
      || !read_at (self, entry, &at, error))
    return FALSE;
  if (hm_words_find_or_fail (hm_words_symbol, "Symbol", symbol, error) < 0)
    return hm_entry_fail_at (entry, NULL, error);
  quarter = hm_words_find_or_fail (turns, "Turn", turn != NULL ? turn : "0", error);
  if (quarter < 0)
    return hm_entry_fail_at (entry, NULL, error);
  return hm_writer_put (self, error, "INSERT INTO picture_part (entry, symbol, x, y, turn) VALUES (?1, ?2, ?3, ?4, ?5)",
                        "itddi", entry->row, symbol, at.x, at.y, (gint64) quarter * 90);
}

gboolean
hm_write_point (HmWriter *self, HmSourceEntry *entry, GError **error)
{
  HmPoint at;

  return read_at (self, entry, &at, error)
         && hm_writer_put (self, error, "INSERT INTO picture_point (entry, x, y) VALUES (?1, ?2, ?3)", "idd", entry->row, at.x, at.y);
}

gboolean
hm_write_wire (HmWriter *self, HmSourceEntry *entry, GError **error)
{
  const char *text;
  gboolean heavy = FALSE;
  g_autoptr (GArray) path = NULL;

  if (!hm_entry_get_text (entry, "Path", TRUE, &text, error) || !hm_entry_get_yes_no (entry, "Heavy", FALSE, &heavy, error))
    return FALSE;
  if (!hm_picture_path_from_text (text, &path, error))
    return hm_entry_fail_at (entry, "Path", error);
  for (guint i = 0; i < path->len; i++)
    if (!check_inside (self, entry, "Path", g_array_index (path, HmPoint, i), error))
      return FALSE;
  return hm_writer_put (self, error, "INSERT INTO picture_wire (entry, path, heavy) VALUES (?1, ?2, ?3)",
                        "iti", entry->row, text, (gint64) heavy);
}

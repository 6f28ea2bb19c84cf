/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-sheet-sources.h"

#include <glib/gi18n.h>
#include <string.h>

/* @rows: (element-type utf8): each once */
typedef struct { char *figure, *source; GPtrArray *rows; } Entry;

struct _HmSheetSources { HmTranslate translate; GPtrArray *entries; };

static void
free_entry (gpointer data)
{
  Entry *self = data;

  g_free (self->figure);
  g_free (self->source);
  g_ptr_array_unref (self->rows);
  g_free (self);
}

HmSheetSources *
hm_sheet_sources_new (HmTranslate translate)
{
  HmSheetSources *self = g_new0 (HmSheetSources, 1);

  self->translate = translate;
  self->entries = g_ptr_array_new_with_free_func (free_entry);
  return self;
}

void
hm_sheet_sources_free (HmSheetSources *self)
{
  g_ptr_array_unref (self->entries);
  g_free (self);
}

static char *
say_provenance (HmSheetSources *self, HmProvenance provenance)
{
  const char *kind = self->translate (hm_provenance_kind_name (provenance.kind));

  if (provenance.source == NULL || provenance.source[0] == '\0')
    return g_strdup (kind);
  return g_strdup_printf ("%s: %s", kind, self->translate (provenance.source));
}

static Entry *
find_entry (HmSheetSources *self, const char *figure, const char *source)
{
  Entry *fresh;

  for (guint i = 0; i < self->entries->len; i++)
    {
      Entry *entry = g_ptr_array_index (self->entries, i);

      if (strcmp (entry->figure, figure) == 0 && strcmp (entry->source, source) == 0)
        return entry;
    }
  fresh = g_new0 (Entry, 1);
  fresh->figure = g_strdup (figure);
  fresh->source = g_strdup (source);
  fresh->rows = g_ptr_array_new_with_free_func (g_free);
  g_ptr_array_add (self->entries, fresh);
  return fresh;
}

void
hm_sheet_sources_add (HmSheetSources *self, const char *figure, const char *row, HmProvenance provenance)
{
  g_autofree char *source = NULL;
  Entry *entry;

  g_return_if_fail (self != NULL && figure != NULL && row != NULL);
  source = say_provenance (self, provenance);
  entry = find_entry (self, figure, source);
  if (!g_ptr_array_find_with_equal_func (entry->rows, row, g_str_equal, NULL))
    g_ptr_array_add (entry->rows, g_strdup (row));
}

/* The entry of most rows of a figure, and how many entries the figure has. */
static const Entry *
find_largest (HmSheetSources *self, const char *figure, guint *n_entries)
{
  const Entry *largest = NULL;

  *n_entries = 0;
  for (guint i = 0; i < self->entries->len; i++)
    {
      const Entry *entry = g_ptr_array_index (self->entries, i);

      if (strcmp (entry->figure, figure) != 0)
        continue;
      (*n_entries)++;
      if (largest == NULL || entry->rows->len > largest->rows->len)
        largest = entry;
    }
  return largest;
}

static void
write_entry (HmSheetSources *self, const Entry *entry, HmSheet *sheet)
{
  guint n_entries;
  const Entry *largest = find_largest (self, entry->figure, &n_entries);
  GString *text = g_string_new (entry->figure);

  if (n_entries > 1 && entry == largest)
    g_string_append_printf (text, " (%s)", self->translate (N_("all others")));
  else if (n_entries > 1)
    for (guint i = 0; i < entry->rows->len; i++)
      g_string_append_printf (text, "%s%s%s", i == 0 ? " (" : ", ", (const char *) g_ptr_array_index (entry->rows, i),
                              i + 1 == entry->rows->len ? ")" : "");
  g_string_append_printf (text, ": %s.", entry->source);
  hm_sheet_say (sheet, HM_SHEET_NOTE, text->str);
  g_string_free (text, TRUE);
}

void
hm_sheet_sources_write (HmSheetSources *self, HmSheet *sheet)
{
  g_return_if_fail (self != NULL && sheet != NULL);
  hm_sheet_say (sheet, HM_SHEET_HEADING, self->translate (N_("Where the figures come from")));
  for (guint i = 0; i < self->entries->len; i++)
    write_entry (self, g_ptr_array_index (self->entries, i), sheet);
}

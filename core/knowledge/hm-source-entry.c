/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-source-entry.h"
#include "hm-knowledge-words.h"
#include "hm-knowledge.h"
#include <string.h>

static void
field_free (gpointer data)
{
  HmSourceField *field = data;

  g_free (field->key);
  g_free (field->value);
  g_free (field);
}

HmSourceEntry *
hm_source_entry_new (const char *file, guint line)
{
  HmSourceEntry *self = g_new0 (HmSourceEntry, 1);

  self->file = file;
  self->line = line;
  self->fields = g_ptr_array_new_with_free_func (field_free);
  self->by_key = g_hash_table_new (g_str_hash, g_str_equal);
  self->asked = g_ptr_array_new_with_free_func (g_free);
  return self;
}

void
hm_source_entry_free (HmSourceEntry *self)
{
  g_free (self->kind);
  g_free (self->id);
  g_free (self->scope);
  g_hash_table_unref (self->by_key);
  g_ptr_array_unref (self->fields);
  g_ptr_array_unref (self->asked);
  g_free (self);
}

gboolean
hm_source_entry_add (HmSourceEntry *self, const char *key, const char *value, guint line)
{
  HmSourceField *field;

  if (g_hash_table_contains (self->by_key, key))
    return FALSE;
  field = g_new0 (HmSourceField, 1);
  field->key = g_strdup (key);
  field->value = g_strdup (value);
  field->line = line;
  g_ptr_array_add (self->fields, field);
  g_hash_table_insert (self->by_key, field->key, field);
  return TRUE;
}

static void
set_error_at (const HmSourceEntry *self, guint line, const char *reason, GError **error)
{
  const char *slash = strrchr (self->scope, '/');     /* of a finding: behind it stands the check */

  g_set_error (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_TEXT, "%s, line %u, [%s %s%s%s]: %s", self->file, line,
               self->kind, slash != NULL ? slash + 1 : "", slash != NULL ? " " : "", self->id, reason);
}

/* The line of @key, or of a variant of it ("Access-rider" for "Access"), else of the entry. */
static guint
line_of_key (const HmSourceEntry *self, const char *key)
{
  const HmSourceField *field = key != NULL ? g_hash_table_lookup (self->by_key, key) : NULL;

  return field != NULL ? field->line : self->line;
}

gboolean
hm_entry_fail (const HmSourceEntry *self, GError **error, const char *format, ...)
{
  va_list arguments;
  g_autofree char *reason = NULL;

  va_start (arguments, format);
  reason = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  set_error_at (self, self->line, reason, error);
  return FALSE;
}

gboolean
hm_entry_fail_key (const HmSourceEntry *self, const char *key, GError **error, const char *format, ...)
{
  va_list arguments;
  g_autofree char *reason = NULL;
  g_autofree char *whole = NULL;

  va_start (arguments, format);
  reason = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  whole = g_strdup_printf ("%s: %s", key, reason);
  set_error_at (self, line_of_key (self, key), whole, error);
  return FALSE;
}

gboolean
hm_entry_fail_at (const HmSourceEntry *self, const char *key, GError **error)
{
  g_autofree char *reason = NULL;

  if (error == NULL || *error == NULL)
    return FALSE;
  reason = key != NULL ? g_strdup_printf ("%s: %s", key, (*error)->message) : g_strdup ((*error)->message);
  g_clear_error (error);
  set_error_at (self, line_of_key (self, key), reason, error);
  return FALSE;
}

static void
remember_asked (HmSourceEntry *self, const char *key)
{
  for (guint i = 0; i < self->asked->len; i++)
    if (strcmp (g_ptr_array_index (self->asked, i), key) == 0)
      return;
  g_ptr_array_add (self->asked, g_strdup (key));
}

static HmSourceField *
find_field (const HmSourceEntry *self, const char *key, const char *layout)
{
  g_autofree char *with_layout = layout != NULL ? g_strconcat (key, "-", layout, NULL) : NULL;
  HmSourceField *field = with_layout != NULL ? g_hash_table_lookup (self->by_key, with_layout) : NULL;

  return field != NULL ? field : g_hash_table_lookup (self->by_key, key);
}

const char *
hm_entry_get (HmSourceEntry *self, const char *key, const char *layout)
{
  HmSourceField *field = find_field (self, key, layout);

  remember_asked (self, key);
  if (field == NULL)
    return NULL;
  field->was_read = TRUE;
  return field->value;
}

/* Whether @key is "@stem" with a number, and of this layout or of all. */
static guint
number_in_key (const char *key, const char *stem, const char *layout)
{
  gsize length = strlen (stem);
  char *end = NULL;
  guint64 number;

  if (strncmp (key, stem, length) != 0 || !g_ascii_isdigit (key[length]) || key[length] == '0')
    return 0;
  number = g_ascii_strtoull (key + length, &end, 10);
  if (*end == '\0' || (layout != NULL && *end == '-' && strcmp (end + 1, layout) == 0))
    return (guint) MIN (number, G_MAXUINT);
  return 0;
}

static guint
highest_number (const HmSourceEntry *self, const char *stem, const char *layout)
{
  guint highest = 0;

  for (guint i = 0; i < self->fields->len; i++)
    {
      const HmSourceField *field = g_ptr_array_index (self->fields, i);
      highest = MAX (highest, number_in_key (field->key, stem, layout));
    }
  return highest;
}

gboolean
hm_entry_varies_by_layout (const HmSourceEntry *self, const char *key, const char * const *layouts)
{
  for (guint i = 0; layouts[i] != NULL; i++)
    {
      g_autofree char *with_layout = g_strconcat (key, "-", layouts[i], NULL);
      if (g_hash_table_contains (self->by_key, with_layout))
        return TRUE;
      for (guint j = 0; j < self->fields->len; j++)
        {
          const HmSourceField *field = g_ptr_array_index (self->fields, j);
          if (number_in_key (field->key, key, layouts[i]) > 0 && number_in_key (field->key, key, NULL) == 0)
            return TRUE;
        }
    }
  return FALSE;
}

gboolean
hm_entry_get_text (HmSourceEntry *self, const char *key, gboolean required, const char **out, GError **error)
{
  const char *value = hm_entry_get (self, key, NULL);

  if (value != NULL && *value == '\0')
    value = NULL;
  if (value == NULL && required)
    return hm_entry_fail (self, error, "%s is missing", key);
  *out = value;
  return TRUE;
}

gboolean
hm_entry_get_lines (HmSourceEntry *self, const char *key, const char *layout, guint at_least, GPtrArray **out, GError **error)
{
  g_autoptr (GPtrArray) lines = g_ptr_array_new ();
  g_autofree char *asked = g_strconcat (key, "1 …", NULL);
  guint highest = highest_number (self, key, layout);

  remember_asked (self, asked);
  if (highest > HM_SOURCE_MAX_LINES)
    return hm_entry_fail (self, error, "%s%u: there are at most %d lines", key, highest, HM_SOURCE_MAX_LINES);
  for (guint i = 1; i <= highest; i++)
    {
      g_autofree char *numbered = g_strdup_printf ("%s%u", key, i);
      HmSourceField *field = find_field (self, numbered, layout);
      if (field == NULL)
        return hm_entry_fail (self, error, "there is %s%u, but no %s", key, highest, numbered);
      field->was_read = TRUE;
      if (*field->value != '\0')
        g_ptr_array_add (lines, field->value);
      else if (strcmp (field->key, numbered) == 0)
        return hm_entry_fail_key (self, numbered, error, "it is empty");
    }
  if (lines->len < at_least)
    return hm_entry_fail (self, error, "%s1 is missing", key);
  *out = g_steal_pointer (&lines);
  return TRUE;
}

gboolean
hm_entry_get_list (HmSourceEntry *self, const char *key, const char *layout, char ***out, GError **error)
{
  const char *value = hm_entry_get (self, key, layout);
  g_auto (GStrv) parts = g_strsplit (value != NULL ? value : "", ";", -1);
  g_autoptr (GStrvBuilder) builder = g_strv_builder_new ();
  g_autoptr (GHashTable) seen = g_hash_table_new (g_str_hash, g_str_equal);

  for (guint i = 0; parts[i] != NULL; i++)
    {
      if (*g_strstrip (parts[i]) == '\0')
        continue;
      if (!g_hash_table_add (seen, parts[i]))
        return hm_entry_fail_key (self, key, error, "“%s” is there twice", parts[i]);
      g_strv_builder_add (builder, parts[i]);
    }
  *out = g_strv_builder_end (builder);
  return TRUE;
}

gboolean
hm_entry_check_all_read (HmSourceEntry *self, GError **error)
{
  for (guint i = 0; i < self->fields->len; i++)
    {
      const HmSourceField *field = g_ptr_array_index (self->fields, i);
      if (!field->was_read)
        {
          g_autofree char *known = NULL;
          g_ptr_array_add (self->asked, NULL);
          known = g_strjoinv (", ", (char **) self->asked->pdata);
          return hm_entry_fail_key (self, field->key, error, "this key is not known here, or not for that layout; known are: %s", known);
        }
    }
  return TRUE;
}

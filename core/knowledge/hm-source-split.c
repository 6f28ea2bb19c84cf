/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-compile-read.h"
#include "hm-knowledge.h"
#include <string.h>

/*
 * One text into entries: the syntax of GLib's key file, which is not read with GKeyFile because that merges what
 * stands there twice without a word and forgets the line.
 */

static gboolean G_GNUC_PRINTF (4, 5)
fail_line (const char *file, guint line, GError **error, const char *format, ...)
{
  va_list arguments;
  g_autofree char *reason = NULL;

  va_start (arguments, format);
  reason = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  g_set_error (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_TEXT, "%s, line %u: %s", file, line, reason);
  return FALSE;
}

static gboolean
is_id (const char *text)
{
  gsize length = strlen (text);

  if (length == 0 || text[0] == '-' || text[length - 1] == '-' || strstr (text, "--") != NULL)
    return FALSE;
  return strspn (text, "abcdefghijklmnopqrstuvwxyz0123456789-") == length;
}

/* "[kind id]" or "[finding CHECK FINDING]"; the check of a finding goes into the scope for now. */
static gboolean
start_entry (const char *file, guint line, const char *text, GPtrArray *entries, GError **error)
{
  g_autofree char *inside = g_strdup (text + 1);
  g_auto (GStrv) words = NULL;
  HmSourceEntry *entry;
  guint n_words;

  if (!g_str_has_suffix (inside, "]"))
    return fail_line (file, line, error, "“%s” does not end with “]”", text);
  inside[strlen (inside) - 1] = '\0';
  words = g_strsplit (inside, " ", -1);
  n_words = g_strv_length (words);
  if (n_words != (g_strcmp0 (words[0], "finding") == 0 ? 3 : 2))
    return fail_line (file, line, error, "“%s” is not “[kind id]” nor “[finding CHECK FINDING]”", text);
  for (guint i = 1; i < n_words; i++)
    if (!is_id (words[i]))
      return fail_line (file, line, error, "%s: “%s” is not an id (lower-case letters and digits, joined by hyphens)", text, words[i]);
  entry = hm_source_entry_new (file, line);
  entry->kind = g_strdup (words[0]);
  entry->id = g_strdup (words[n_words - 1]);
  entry->scope = g_strdup (n_words == 3 ? words[1] : "");
  g_ptr_array_add (entries, entry);
  return TRUE;
}

/* The escapes of a key file; anything else behind a backslash is an error. */
static char *
unescape (const char *text)
{
  GString *plain = g_string_new (NULL);

  for (const char *at = text; *at != '\0'; at++)
    {
      const char *escape = *at == '\\' ? strchr ("s n t r \\", at[1]) : NULL;
      if (*at != '\\')
        g_string_append_c (plain, *at);
      else if (at[1] == '\0' || at[1] == ' ' || escape == NULL)
        return g_string_free (plain, TRUE), NULL;
      else
        {
          g_string_append_c (plain, *escape == '\\' ? '\\' : ' ');
          at++;
        }
    }
  return g_string_free (plain, FALSE);
}

static gboolean
add_field (HmSourceEntry *entry, guint line, const char *text, GError **error)
{
  const char *equals = strchr (text, '=');
  g_autofree char *key = equals != NULL ? g_strchomp (g_strndup (text, (gsize) (equals - text))) : NULL;
  g_autofree char *value = NULL;

  if (key == NULL || *key == '\0')
    return fail_line (entry->file, line, error, "[%s %s]: “%s” is not “Key=value”", entry->kind, entry->id, text);
  value = unescape (equals + 1);
  if (value == NULL)
    return fail_line (entry->file, line, error, "[%s %s]: %s has a “\\” that stands for nothing (write “\\\\”)", entry->kind, entry->id, key);
  if (!hm_source_entry_add (entry, key, g_strstrip (value), line))
    return fail_line (entry->file, line, error, "[%s %s]: %s is there twice", entry->kind, entry->id, key);
  return TRUE;
}

gboolean
hm_source_split (const char *file, const char *text, GPtrArray *entries, GError **error)
{
  g_auto (GStrv) lines = NULL;
  guint first = entries->len;

  if (!g_utf8_validate (text, -1, NULL))
    return fail_line (file, 1, error, "the file is not UTF-8");
  lines = g_strsplit (text, "\n", -1);
  for (guint i = 0; lines[i] != NULL; i++)
    {
      const char *line = g_strstrip (lines[i]);
      if (*line == '\0' || *line == '#')
        continue;
      if (*line == '[')
        {
          if (!start_entry (file, i + 1, line, entries, error))
            return FALSE;
        }
      else if (entries->len == first)
        return fail_line (file, i + 1, error, "“%s” stands before the first entry", line);
      else if (!add_field (g_ptr_array_index (entries, entries->len - 1), i + 1, line, error))
        return FALSE;
    }
  return TRUE;
}

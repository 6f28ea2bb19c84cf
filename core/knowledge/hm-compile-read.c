/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-compile-read.h"
#include "hm-knowledge.h"
#include <string.h>

const HmSourceKind hm_source_kinds[] = {
  { "limit", "common", TRUE, TRUE },
  { "caution", "common", TRUE, TRUE },
  { "tool", "common", TRUE, FALSE },
  { "layout", "layouts", TRUE, FALSE },
  { "fastener", "layouts", TRUE, TRUE },
  { "access", "layouts", TRUE, TRUE },
  { "complaint", "complaints", TRUE, TRUE },
  { "remedy", "complaints", TRUE, TRUE },
  { "cause", "complaints", TRUE, TRUE },
  { "check", "complaints", TRUE, TRUE },
  { "finding", "complaints", TRUE, FALSE },
  { "incident", "incidents.txt", TRUE, TRUE },
  { "picture", "pictures", TRUE, FALSE },
  { "part", "pictures", TRUE, FALSE },
  { "point", "pictures", TRUE, FALSE },
  { "wire", "pictures", FALSE, FALSE },
  { NULL, NULL, FALSE, FALSE }
};

const HmSourceKind *
hm_source_kind_find (const char *name)
{
  for (const HmSourceKind *kind = hm_source_kinds; kind->name != NULL; kind++)
    if (strcmp (kind->name, name) == 0)
      return kind;
  return NULL;
}

static char *
index_key (const char *kind, const char *scope, const char *id)
{
  return g_strjoin ("|", kind, scope, id, NULL);
}

HmSourceEntry *
hm_source_find (const HmSource *self, const char *kind, const char *scope, const char *id)
{
  g_autofree char *key = index_key (kind, scope, id);

  return g_hash_table_lookup (self->index, key);
}

GPtrArray *
hm_source_list (const HmSource *self, const char *kind, const char *scope)
{
  GPtrArray *list = g_ptr_array_new ();

  for (guint i = 0; i < self->entries->len; i++)
    {
      HmSourceEntry *entry = g_ptr_array_index (self->entries, i);
      if (strcmp (entry->kind, kind) == 0 && (scope == NULL || strcmp (entry->scope, scope) == 0))
        g_ptr_array_add (list, entry);
    }
  return list;
}

static void
table_free (gpointer data)
{
  HmSourceTable *table = data;

  g_free (table->name);
  g_free (table->text);
  g_free (table);
}

static HmSource *
source_new (void)
{
  HmSource *self = g_new0 (HmSource, 1);

  self->files = g_ptr_array_new_with_free_func (g_free);
  self->folders = g_ptr_array_new_with_free_func (g_free);
  self->entries = g_ptr_array_new_with_free_func ((GDestroyNotify) hm_source_entry_free);
  self->index = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  self->table_texts = g_ptr_array_new_with_free_func (table_free);
  self->tables = hm_tables_new ();
  return self;
}

void
hm_source_free (HmSource *self)
{
  g_hash_table_unref (self->index);
  g_ptr_array_unref (self->entries);
  g_ptr_array_unref (self->files);
  g_ptr_array_unref (self->folders);
  g_ptr_array_unref (self->table_texts);
  hm_tables_unref (self->tables);
  g_free (self->version);
  g_free (self);
}

static gboolean
fail_file (const char *file, GError **error, const char *reason)
{
  g_set_error (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_TEXT, "%s: %s", file, reason);
  return FALSE;
}

/* Adds all files below @relative that end in @suffix. */
static gboolean
find_files (HmSource *self, const char *data_folder, const char *relative, const char *suffix, GError **error)
{
  g_autofree char *folder = g_build_filename (data_folder, relative, NULL);
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  const char *name;

  if (dir == NULL)
    return fail_file (relative, error, "there is no such folder in the data folder");
  g_ptr_array_add (self->folders, g_strdup (folder));
  while ((name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *path = g_build_filename (folder, name, NULL);
      g_autofree char *below = g_strjoin ("/", relative, name, NULL);
      if (g_file_test (path, G_FILE_TEST_IS_DIR))
        {
          if (!find_files (self, data_folder, below, suffix, error))
            return FALSE;
        }
      else if (g_str_has_suffix (name, suffix) && name[0] != '.')
        g_ptr_array_add (self->files, g_steal_pointer (&below));
    }
  return TRUE;
}

static gint
compare_names (gconstpointer a, gconstpointer b)
{
  return strcmp (*(const char * const *) a, *(const char * const *) b);
}

/* "complaints/no-crank/causes.txt" belongs to "no-crank", "layouts/rider.txt" to "rider", the rest to all. */
static char *
scope_of_file (char **parts)
{
  guint n_parts = g_strv_length (parts);

  if (n_parts == 3 && strcmp (parts[0], "complaints") == 0)
    return g_strdup (parts[1]);
  if (n_parts == 2 && (strcmp (parts[0], "layouts") == 0 || strcmp (parts[0], "pictures") == 0))
    return g_strndup (parts[1], strlen (parts[1]) - strlen (".txt"));
  if ((n_parts == 2 && strcmp (parts[0], "common") == 0) || (n_parts == 1 && strcmp (parts[0], "incidents.txt") == 0))
    return g_strdup ("");
  return NULL;
}

static gboolean
check_kind (const HmSourceEntry *entry, const char *place, GError **error)
{
  const HmSourceKind *kind = hm_source_kind_find (entry->kind);
  g_autoptr (GString) known = g_string_new (NULL);

  if (kind != NULL && strcmp (kind->place, place) == 0)
    return TRUE;
  for (kind = hm_source_kinds; kind->name != NULL; kind++)
    if (strcmp (kind->place, place) == 0)
      g_string_append_printf (known, "%s%s", known->len > 0 ? ", " : "", kind->name);
  return hm_entry_fail (entry, error, "“%s” is not a kind of entry of this file; its kinds are: %s", entry->kind, known->str);
}

/* The entry that a layout's, complaint's or picture's files are about is known by its own id, outside of any scope. */
static gboolean
settle_scope (HmSourceEntry *entry, const char *scope, GError **error)
{
  static const char * const heads[] = { "layout", "complaint", "picture", NULL };
  g_autofree char *check = g_steal_pointer (&entry->scope);

  if (!g_strv_contains (heads, entry->kind))
    entry->scope = *check != '\0' ? g_strjoin ("/", scope, check, NULL) : g_strdup (scope);
  else if (strcmp (entry->id, scope) == 0)
    entry->scope = g_strdup ("");
  else
    {
      entry->scope = g_strdup (scope);
      return hm_entry_fail (entry, error, "the file's place says that this is the %s “%s”", entry->kind, scope);
    }
  return TRUE;
}

static gboolean
index_entry (HmSource *self, HmSourceEntry *entry, guint row, GError **error)
{
  const HmSourceEntry *other = hm_source_find (self, entry->kind, entry->scope, entry->id);

  if (other != NULL)
    return hm_entry_fail (entry, error, "this entry is there already, in %s, line %u", other->file, other->line);
  entry->row = row;
  g_hash_table_insert (self->index, index_key (entry->kind, entry->scope, entry->id), entry);
  return TRUE;
}

static gboolean
read_knowledge_file (HmSource *self, const char *file, const char *text, GError **error)
{
  g_auto (GStrv) parts = g_strsplit (file + strlen ("knowledge/"), "/", -1);
  g_autofree char *scope = scope_of_file (parts);
  guint first = self->entries->len;

  if (scope == NULL)
    return fail_file (file, error, "no entries are looked for in this place; see knowledge/README.md");
  if (!hm_source_split (file, text, self->entries, error))
    return FALSE;
  for (guint i = first; i < self->entries->len; i++)
    {
      HmSourceEntry *entry = g_ptr_array_index (self->entries, i);
      if (!check_kind (entry, parts[0], error) || !settle_scope (entry, scope, error)
          || !index_entry (self, entry, i + 1, error))
        return FALSE;
    }
  return TRUE;
}

static gboolean
read_table (HmSource *self, const char *file, const char *text, GError **error)
{
  HmSourceTable *table = g_new0 (HmSourceTable, 1);

  table->name = g_path_get_basename (file);
  table->name[strlen (table->name) - strlen (".csv")] = '\0';
  table->text = g_strdup (text);
  g_ptr_array_add (self->table_texts, table);
  if (hm_tables_read_csv (self->tables, table->name, text, error))
    return TRUE;
  if (error != NULL)
    {
      g_autoptr (GError) cause = g_steal_pointer (error);
      fail_file (file, error, cause->message);
    }
  return FALSE;
}

static gboolean
read_file (HmSource *self, const char *data_folder, const char *file, GChecksum *digest, GError **error)
{
  g_autofree char *path = g_build_filename (data_folder, file, NULL);
  g_autofree char *text = NULL;
  gsize size = 0;

  if (!g_file_get_contents (path, &text, &size, NULL))
    return fail_file (file, error, "the file cannot be read");
  if (strlen (text) != size)
    return fail_file (file, error, "the file holds a zero byte");
  g_checksum_update (digest, (const guchar *) file, (gssize) strlen (file) + 1);
  g_checksum_update (digest, (const guchar *) text, (gssize) size + 1);
  return g_str_has_prefix (file, "tables/") ? read_table (self, file, text, error)
                                            : read_knowledge_file (self, file, text, error);
}

/* A folder of a complaint or a file of a layout or picture needs the entry that names it. */
static gboolean
check_heads (const HmSource *self, GError **error)
{
  for (guint i = 0; i < self->entries->len; i++)
    {
      const HmSourceEntry *entry = g_ptr_array_index (self->entries, i);
      const char *place = hm_source_kind_find (entry->kind)->place;
      const char *head = strcmp (place, "layouts") == 0 ? "layout" : strcmp (place, "complaints") == 0 ? "complaint"
                         : strcmp (place, "pictures") == 0 ? "picture" : NULL;
      g_auto (GStrv) scope = g_strsplit (entry->scope, "/", 2);
      if (head != NULL && scope[0] != NULL && hm_source_find (self, head, "", scope[0]) == NULL)
        return hm_entry_fail (entry, error, "there is no entry [%s %s] beside it", head, scope[0]);
    }
  return TRUE;
}

static gboolean
check_tables (const HmSource *self, GError **error)
{
  for (guint i = 0; hm_tables_names[i] != NULL; i++)
    {
      gboolean found = FALSE;
      for (guint j = 0; j < self->table_texts->len && !found; j++)
        found = strcmp (((HmSourceTable *) g_ptr_array_index (self->table_texts, j))->name, hm_tables_names[i]) == 0;
      if (!found)
        {
          g_autofree char *file = g_strdup_printf ("tables/%s.csv", hm_tables_names[i]);
          return fail_file (file, error, "the file is missing");
        }
    }
  return TRUE;
}

HmSource *
hm_source_read (const char *data_folder, GError **error)
{
  g_autoptr (HmSource) self = source_new ();
  g_autoptr (GChecksum) digest = g_checksum_new (G_CHECKSUM_SHA256);

  if (!find_files (self, data_folder, "knowledge", ".txt", error)
      || !find_files (self, data_folder, "tables", ".csv", error))
    return NULL;
  g_ptr_array_sort (self->files, compare_names);
  for (guint i = 0; i < self->files->len; i++)
    if (!read_file (self, data_folder, g_ptr_array_index (self->files, i), digest, error))
      return NULL;
  if (!check_heads (self, error) || !check_tables (self, error))
    return NULL;
  self->version = g_strndup (g_checksum_get_string (digest), 16);
  return g_steal_pointer (&self);
}

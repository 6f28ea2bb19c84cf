/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-knowledge.h"
#include "hm-knowledge-private.h"
#include "hm-knowledge-schema.h"
#include <string.h>

struct _HmKnowledge
{
  gatomicrefcount references;
  GMutex lock;              /* of the store and the pictures: guides are loaded off the main thread */
  char *path;               /* owned */
  HmStore *store;           /* owned */
  char *version;            /* owned */
  HmTables *tables;         /* owned */
  HmArena arena;            /* of all below */
  HmComplaint *complaints;  guint n_complaints;
  HmLayout *layouts;        guint n_layouts;
  GHashTable *covered;      /* owned; "complaint layout" */
  GHashTable *pictures;     /* owned; id -> HmPicture in the arena */
};

G_DEFINE_QUARK (hm-knowledge-error-quark, hm_knowledge_error)

#define WHAT_TO_DO "Install Halfmoon again, or set HALFMOON_DATA_DIR to the folder that holds knowledge.db."

/* Puts what the store or a parser said into words for whoever starts the program. Takes @cause. Returns: NULL */
static gpointer
fail_with (const char *path, GError *cause, GError **error)
{
  g_autoptr (GError) owned = cause;
  int code = owned->domain == HM_STORE_ERROR ? owned->code : HM_STORE_ERROR_DAMAGED;

  if (code == HM_STORE_ERROR_MISSING)
    g_set_error (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_MISSING,
                 "The knowledge file “%s” is missing. " WHAT_TO_DO, path);
  else if (code == HM_STORE_ERROR_NEWER)
    g_set_error (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_NEWER,
                 "The knowledge file “%s” was made by a newer Halfmoon than this one. " WHAT_TO_DO, path);
  else if (code == HM_STORE_ERROR_OLDER)
    g_set_error (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_OLDER,
                 "The knowledge file “%s” was made by an older Halfmoon than this one. " WHAT_TO_DO, path);
  else if (code == HM_STORE_ERROR_DAMAGED || code == HM_STORE_ERROR_FOREIGN)
    g_set_error (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_DAMAGED,
                 "The knowledge file “%s” is damaged or is not a knowledge file. " WHAT_TO_DO, path);
  else
    g_set_error (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_DAMAGED,
                 "The knowledge file “%s” cannot be read: %s", path, owned->message);
  return NULL;
}

static gboolean
read_version (HmKnowledge *self, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };

  if (!hm_store_prepare (self->store, "SELECT value FROM about WHERE key = 'version'", &stmt, error))
    return FALSE;
  switch (hm_stmt_step (&stmt, error))
    {
    case HM_STEP_ROW:
      self->version = hm_stmt_dup_text (&stmt, 0);
      return TRUE;
    case HM_STEP_DONE:
      return hm_read_fail_inconsistent ("facts about the file", error);
    default:
      return FALSE;
    }
}

static gboolean
read_tables (HmKnowledge *self, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  HmStep step;

  if (!hm_store_prepare (self->store, "SELECT name, text FROM reference_table ORDER BY name", &stmt, error))
    return FALSE;
  while ((step = hm_stmt_step (&stmt, error)) == HM_STEP_ROW)
    if (!hm_tables_read_csv (self->tables, hm_stmt_get_text (&stmt, 0), hm_stmt_get_text (&stmt, 1), error))
      return FALSE;
  return step == HM_STEP_DONE;
}

static gboolean
read_covered (HmKnowledge *self, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  HmStep step;

  if (!hm_store_prepare (self->store, "SELECT complaint.id || ' ' || layout.id FROM link"
                         " JOIN entry AS complaint ON complaint.entry = link.entry AND complaint.kind = 'complaint'"
                         " JOIN entry AS layout ON layout.entry = target WHERE role = 'Layouts'", &stmt, error))
    return FALSE;
  while ((step = hm_stmt_step (&stmt, error)) == HM_STEP_ROW)
    g_hash_table_add (self->covered, hm_stmt_dup_text (&stmt, 0));
  return step == HM_STEP_DONE;
}

HmKnowledge *
hm_knowledge_open (const char *path, GError **error)
{
  g_autoptr (HmKnowledge) self = NULL;
  g_autoptr (GError) cause = NULL;

  g_return_val_if_fail (path != NULL, NULL);
  self = g_new0 (HmKnowledge, 1);
  g_atomic_ref_count_init (&self->references);
  g_mutex_init (&self->lock);
  hm_arena_init (&self->arena);
  self->path = g_strdup (path);
  self->tables = hm_tables_new ();
  self->covered = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  self->pictures = g_hash_table_new (g_str_hash, g_str_equal);
  self->store = hm_store_open_read_only (path, HM_KNOWLEDGE_APPLICATION_ID, HM_KNOWLEDGE_SCHEMA_VERSION, &cause);
  if (self->store == NULL || !read_version (self, &cause) || !read_tables (self, &cause)
      || !hm_read_complaints (self->store, &self->arena, &self->complaints, &self->n_complaints, &cause)
      || !hm_read_layouts (self->store, &self->arena, &self->layouts, &self->n_layouts, &cause)
      || !read_covered (self, &cause))
    return fail_with (path, g_steal_pointer (&cause), error);
  return g_steal_pointer (&self);
}

HmKnowledge *
hm_knowledge_ref (HmKnowledge *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  g_atomic_ref_count_inc (&self->references);
  return self;
}

void
hm_knowledge_unref (HmKnowledge *self)
{
  if (self == NULL || !g_atomic_ref_count_dec (&self->references))
    return;
  hm_store_close (self->store);
  g_hash_table_unref (self->covered);
  g_hash_table_unref (self->pictures);
  hm_arena_clear (&self->arena);
  hm_tables_unref (self->tables);
  g_mutex_clear (&self->lock);
  g_free (self->version);
  g_free (self->path);
  g_free (self);
}

const char *
hm_knowledge_get_version (const HmKnowledge *self)
{
  return self->version;
}

const HmTables *
hm_knowledge_get_tables (const HmKnowledge *self)
{
  return self->tables;
}

const HmComplaint *
hm_knowledge_get_complaints (const HmKnowledge *self, guint *n)
{
  if (n != NULL)
    *n = self->n_complaints;
  return self->complaints;
}

const HmLayout *
hm_knowledge_get_layouts (const HmKnowledge *self, guint *n)
{
  if (n != NULL)
    *n = self->n_layouts;
  return self->layouts;
}

gboolean
hm_knowledge_covers (const HmKnowledge *self, const char *complaint, const char *layout)
{
  g_autofree char *key = NULL;

  g_return_val_if_fail (self != NULL && complaint != NULL && layout != NULL, FALSE);
  key = g_strjoin (" ", complaint, layout, NULL);
  return g_hash_table_contains (self->covered, key);
}

static const HmComplaint *
find_complaint (const HmKnowledge *self, const char *id, GError **error)
{
  g_autoptr (GString) choices = g_string_new (NULL);

  for (guint i = 0; i < self->n_complaints; i++)
    {
      if (strcmp (self->complaints[i].id, id) == 0)
        return &self->complaints[i];
      g_string_append_printf (choices, "%s%s", i > 0 ? ", " : "", self->complaints[i].id);
    }
  g_set_error (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_UNKNOWN_ENTRY,
               "There is no complaint “%s”. There are: %s.", id, choices->str);
  return NULL;
}

static const HmLayout *
find_layout (const HmKnowledge *self, const char *complaint, const char *id, GError **error)
{
  g_autoptr (GString) choices = g_string_new (NULL);

  for (guint i = 0; i < self->n_layouts; i++)
    if (hm_knowledge_covers (self, complaint, self->layouts[i].id))
      {
        if (strcmp (self->layouts[i].id, id) == 0)
          return &self->layouts[i];
        g_string_append_printf (choices, "%s%s", choices->len > 0 ? ", " : "", self->layouts[i].id);
      }
  g_set_error (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_UNKNOWN_ENTRY,
               "The complaint “%s” has no layout “%s”. It has: %s.", complaint, id, choices->str);
  return NULL;
}

/* The guide has copies of its own, for it may outlive the knowledge. */
static gboolean
copy_heads (HmReader *reader, const HmComplaint *complaint, const HmLayout *layout, GError **error)
{
  HmGuide *guide = reader->guide;
  HmComplaint *all = NULL;
  guint n = 0;

  guide->layout = (HmLayout) { hm_arena_text (reader->arena, layout->id), hm_arena_text (reader->arena, layout->name),
                               hm_arena_text (reader->arena, layout->detail) };
  if (!hm_read_complaints (reader->store, reader->arena, &all, &n, error))
    return FALSE;
  for (guint i = 0; i < n; i++)
    if (strcmp (all[i].id, complaint->id) == 0)
      guide->complaint = all[i];
  return TRUE;
}

static gboolean
fill_guide (HmKnowledge *self, HmGuide *guide, const HmComplaint *complaint, const HmLayout *layout, GError **error)
{
  g_autoptr (GHashTable) cautions = g_hash_table_new (NULL, NULL);
  g_autoptr (GHashTable) limits = g_hash_table_new (NULL, NULL);
  g_autoptr (GHashTable) tools = g_hash_table_new (NULL, NULL);
  g_autoptr (GHashTable) fasteners = g_hash_table_new (NULL, NULL);
  g_autoptr (GHashTable) remedies = g_hash_table_new (NULL, NULL);
  g_autoptr (GHashTable) access = g_hash_table_new (NULL, NULL);
  g_autoptr (GHashTable) causes = g_hash_table_new (NULL, NULL);
  HmReader reader = {
    .store = self->store, .tables = self->tables, .guide = guide, .arena = &guide->arena,
    .complaint = complaint->id, .layout = layout->id, .cautions = cautions, .limits = limits, .tools = tools,
    .fasteners = fasteners, .remedies = remedies, .access = access, .causes = causes
  };

  return copy_heads (&reader, complaint, layout, error) && hm_read_guide (&reader, error);
}

HmGuide *
hm_knowledge_load_guide (HmKnowledge *self, const char *complaint, const char *layout, GError **error)
{
  g_autoptr (GMutexLocker) locker = NULL;
  g_autoptr (HmGuide) guide = NULL;
  g_autoptr (GError) cause = NULL;
  const HmComplaint *found_complaint;
  const HmLayout *found_layout;

  g_return_val_if_fail (self != NULL && complaint != NULL && layout != NULL, NULL);
  found_complaint = find_complaint (self, complaint, error);
  found_layout = found_complaint != NULL ? find_layout (self, complaint, layout, error) : NULL;
  if (found_layout == NULL)
    return NULL;
  locker = g_mutex_locker_new (&self->lock);
  guide = g_new0 (HmGuide, 1);
  g_atomic_ref_count_init (&guide->references);
  hm_arena_init (&guide->arena);
  if (!fill_guide (self, guide, found_complaint, found_layout, &cause))
    return fail_with (self->path, g_steal_pointer (&cause), error);
  return g_steal_pointer (&guide);
}

static void
set_unknown_picture (HmKnowledge *self, const char *id, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  const char *choices = NULL;

  if (hm_store_prepare (self->store, "SELECT group_concat(id, ', ') FROM (SELECT id FROM entry WHERE kind = 'picture' ORDER BY entry)",
                        &stmt, NULL) && hm_stmt_step (&stmt, NULL) == HM_STEP_ROW)
    choices = hm_stmt_get_text (&stmt, 0);
  g_set_error (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_UNKNOWN_ENTRY,
               "There is no picture “%s”. There are: %s.", id, choices != NULL ? choices : "none");
}

const HmPicture *
hm_knowledge_get_picture (HmKnowledge *self, const char *id, GError **error)
{
  g_autoptr (GMutexLocker) locker = NULL;
  g_autoptr (GError) cause = NULL;
  const HmPicture *picture;

  g_return_val_if_fail (self != NULL && id != NULL, NULL);
  locker = g_mutex_locker_new (&self->lock);
  picture = g_hash_table_lookup (self->pictures, id);
  if (picture != NULL)
    return picture;
  if (!hm_read_picture (self->store, &self->arena, id, &picture, &cause))
    return fail_with (self->path, g_steal_pointer (&cause), error);
  if (picture == NULL)
    set_unknown_picture (self, id, error);
  else
    g_hash_table_insert (self->pictures, (gpointer) picture->id, (gpointer) picture);
  return picture;
}

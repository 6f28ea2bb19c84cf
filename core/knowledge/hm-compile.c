/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-compile.h"
#include "hm-compile-private.h"
#include "hm-compile-write.h"
#include "hm-knowledge-schema.h"
#include "hm-lint.h"
#include <errno.h>
#include <glib/gstdio.h>

static gboolean
write_file (HmSource *source, const char *path, GError **error)
{
  HmStore *store = hm_store_create (path, HM_KNOWLEDGE_APPLICATION_ID, HM_KNOWLEDGE_SCHEMA_VERSION, hm_knowledge_schema, error);

  if (store == NULL)
    return FALSE;
  if (hm_compile_write (source, store, error) && hm_lint_source (source, error))
    return hm_store_close_packed (store, error);
  hm_store_close (store);
  return FALSE;
}

static gboolean
check_guides_of_complaint (HmKnowledge *knowledge, const HmComplaint *complaint, GString *report, GError **error)
{
  guint n_layouts = 0;
  const HmLayout *layouts = hm_knowledge_get_layouts (knowledge, &n_layouts);

  for (guint i = 0; i < n_layouts; i++)
    {
      g_autoptr (HmGuide) guide = NULL;
      if (!hm_knowledge_covers (knowledge, complaint->id, layouts[i].id))
        continue;
      guide = hm_knowledge_load_guide (knowledge, complaint->id, layouts[i].id, error);
      if (guide == NULL)
        return FALSE;
      hm_lint_report (guide, report);
    }
  return TRUE;
}

/* What was written must be readable: every guide is loaded once, as the program will. */
static gboolean
check_guides (const char *path, GString *report, GError **error)
{
  g_autoptr (HmKnowledge) knowledge = hm_knowledge_open (path, error);
  const HmComplaint *complaints;
  guint n = 0;

  if (knowledge == NULL)
    return FALSE;
  complaints = hm_knowledge_get_complaints (knowledge, &n);
  for (guint i = 0; i < n; i++)
    if (!check_guides_of_complaint (knowledge, &complaints[i], report, error))
      return FALSE;
  return TRUE;
}

static gboolean
move_into_place (const char *from, const char *to, GError **error)
{
  if (g_rename (from, to) == 0)
    return TRUE;
  g_set_error (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_TEXT, "%s: the file cannot be written: %s", to, g_strerror (errno));
  return FALSE;
}

static gboolean
compile_source (HmSource *source, const char *out_path, char **report, GError **error)
{
  g_autofree char *half_done = g_strconcat (out_path, ".new", NULL);
  g_autoptr (GString) text = g_string_new (NULL);
  gboolean done;

  g_remove (half_done);     /* left behind by a compiler that was killed */
  done = write_file (source, half_done, error) && check_guides (half_done, text, error)
         && move_into_place (half_done, out_path, error);
  if (!done)
    g_remove (half_done);
  else if (report != NULL)
    *report = g_string_free (g_steal_pointer (&text), FALSE);
  return done;
}

gboolean
hm_knowledge_compile_listing (const char *data_folder, const char *out_path, char **report, GPtrArray *inputs, GError **error)
{
  g_autoptr (HmSource) source = NULL;

  g_return_val_if_fail (data_folder != NULL && out_path != NULL, FALSE);
  source = hm_source_read (data_folder, error);
  if (source == NULL || !compile_source (source, out_path, report, error))
    return FALSE;
  for (guint i = 0; inputs != NULL && i < source->folders->len; i++)
    g_ptr_array_add (inputs, g_strdup (g_ptr_array_index (source->folders, i)));
  for (guint i = 0; inputs != NULL && i < source->files->len; i++)
    g_ptr_array_add (inputs, g_build_filename (data_folder, g_ptr_array_index (source->files, i), NULL));
  return TRUE;
}

gboolean
hm_knowledge_compile (const char *data_folder, const char *out_path, char **report, GError **error)
{
  return hm_knowledge_compile_listing (data_folder, out_path, report, NULL, error);
}

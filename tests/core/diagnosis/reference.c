/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "reference.h"

#include <string.h>

static Reference *
load_one (const char *folder, const char *name)
{
  g_autofree char *path = g_build_filename (folder, name, NULL);
  g_autofree char *text = NULL;
  g_autoptr (GError) error = NULL;
  Reference *out = g_new0 (Reference, 1);
  gsize length;

  if (!g_file_get_contents (path, &text, &length, &error))
    g_error ("%s", error->message);
  out->file = g_strdup (name);
  out->model = hm_model_new_from_json (text, length, &error);
  if (out->model == NULL)
    g_error ("%s: %s", name, error->message);
  out->root = json_from_string (text, NULL);
  out->cases = json_object_get_array_member (json_node_get_object (out->root), "cases");
  return out;
}

static int
compare_names (gconstpointer a, gconstpointer b)
{
  return g_strcmp0 (*(const char * const *) a, *(const char * const *) b);
}

GPtrArray *
references_load (HmModelMode mode)
{
  g_autofree char *folder = g_build_filename (g_getenv ("HALFMOON_TEST_VECTORS"), "diagnosis", NULL);
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  g_autoptr (GPtrArray) names = g_ptr_array_new_with_free_func (g_free);
  GPtrArray *out = g_ptr_array_new ();
  const char *name;

  g_assert (dir != NULL);
  while ((name = g_dir_read_name (dir)) != NULL)
    if (g_str_has_suffix (name, ".json") && g_str_has_prefix (name, "r")
        && (strstr (name, "multi") != NULL) == (mode == HM_MODEL_SEVERAL_FAULTS))
      g_ptr_array_add (names, g_strdup (name));
  g_ptr_array_sort (names, compare_names);
  for (guint i = 0; i < names->len; i++)
    g_ptr_array_add (out, load_one (folder, g_ptr_array_index (names, i)));
  g_assert (out->len > 0);
  return out;
}

GPtrArray *
reference_cases (GPtrArray *references)
{
  GPtrArray *out = g_ptr_array_new ();

  for (guint r = 0; r < references->len; r++)
    {
      Reference *reference = g_ptr_array_index (references, r);
      for (guint i = 0; i < json_array_get_length (reference->cases); i++)
        {
          JsonObject *object = json_array_get_object_element (reference->cases, i);
          g_autofree char *evidence = json_to_string (json_object_get_member (object, "evidence"), FALSE);
          ReferenceCase *c = g_new0 (ReferenceCase, 1);
          c->reference = reference;
          c->index = i;
          c->events = hm_evidence_list_from_json (reference->model, evidence, strlen (evidence), NULL);
          g_assert (c->events != NULL);
          c->expected = json_object_get_object_member (object, "posterior");
          c->best = json_object_has_member (object, "best") ? json_object_get_object_member (object, "best") : NULL;
          c->name = g_strdup_printf ("%s case %u", reference->file, i + 1);
          g_ptr_array_add (out, c);
        }
    }
  return out;
}

void
references_free (GPtrArray *references, GPtrArray *cases)
{
  for (guint i = 0; i < cases->len; i++)
    {
      ReferenceCase *c = g_ptr_array_index (cases, i);
      g_array_unref (c->events);
      g_free (c->name);
      g_free (c);
    }
  for (guint i = 0; i < references->len; i++)
    {
      Reference *r = g_ptr_array_index (references, i);
      hm_model_unref (r->model);
      json_node_unref (r->root);
      g_free (r->file);
      g_free (r);
    }
  g_ptr_array_unref (cases);
  g_ptr_array_unref (references);
}

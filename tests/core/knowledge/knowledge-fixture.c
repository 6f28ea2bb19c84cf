/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "knowledge-fixture.h"
#include <glib/gstdio.h>
#include <string.h>

void
knowledge_fixture_set_arguments (int argc, char **argv)
{
  g_assert (argc == 3);
  g_setenv ("HALFMOON_SAMPLE_DATA", argv[1], TRUE);
  g_setenv ("HALFMOON_COMPILE", argv[2], TRUE);
}

const char *
compiler_program (void)
{
  return g_getenv ("HALFMOON_COMPILE");
}

static void
copy_file (const char *from, const char *to)
{
  g_autofree char *data = NULL;
  gsize size = 0;

  if (!g_file_get_contents (from, &data, &size, NULL) || !g_file_set_contents (to, data, (gssize) size, NULL))
    fail_msg ("cannot copy %s to %s", from, to);
}

static void
copy_folder (const char *from, const char *to)
{
  g_autoptr (GDir) dir = g_dir_open (from, 0, NULL);
  const char *name;

  if (dir == NULL)
    fail_msg ("cannot open %s", from);
  assert_int_equal (g_mkdir_with_parents (to, 0700), 0);
  while ((name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *inner_from = g_build_filename (from, name, NULL);
      g_autofree char *inner_to = g_build_filename (to, name, NULL);
      if (g_file_test (inner_from, G_FILE_TEST_IS_DIR))
        copy_folder (inner_from, inner_to);
      else
        copy_file (inner_from, inner_to);
    }
}

static void
remove_folder (const char *path)
{
  g_autoptr (GDir) dir = g_dir_open (path, 0, NULL);
  const char *name;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *inner = g_build_filename (path, name, NULL);
      if (g_file_test (inner, G_FILE_TEST_IS_DIR))
        remove_folder (inner);
      else
        g_remove (inner);
    }
  g_rmdir (path);
}

KnowledgeFixture *
knowledge_fixture_new (void)
{
  KnowledgeFixture *self = g_new0 (KnowledgeFixture, 1);
  g_autofree char *sample = g_build_filename (g_getenv ("HALFMOON_SAMPLE_DATA"), "knowledge", NULL);
  g_autofree char *tables = g_build_filename (g_getenv ("HALFMOON_SOURCE_DATA"), "tables", NULL);
  g_autofree char *knowledge_to = NULL, *tables_to = NULL;

  self->folder = g_dir_make_tmp ("knowledge-XXXXXX", NULL);
  assert_non_null (self->folder);
  self->db = g_build_filename (self->folder, "knowledge.db", NULL);
  knowledge_to = g_build_filename (self->folder, "knowledge", NULL);
  tables_to = g_build_filename (self->folder, "tables", NULL);
  copy_folder (sample, knowledge_to);
  copy_folder (tables, tables_to);
  return self;
}

void
knowledge_fixture_free (KnowledgeFixture *self)
{
  remove_folder (self->folder);
  g_free (self->folder);
  g_free (self->db);
  g_free (self);
}

int
knowledge_fixture_set_up (void **state)
{
  *state = knowledge_fixture_new ();
  return 0;
}

int
knowledge_fixture_tear_down (void **state)
{
  knowledge_fixture_free (*state);
  return 0;
}

void
edit_file (KnowledgeFixture *self, const char *file, const char *old, const char *new)
{
  g_autofree char *path = g_build_filename (self->folder, file, NULL);
  g_autofree char *text = NULL;
  g_autoptr (GString) edited = NULL;
  const char *at;

  if (!g_file_get_contents (path, &text, NULL, NULL))
    text = g_strdup ("");     /* a file that only this test has */
  at = old != NULL ? strstr (text, old) : text + strlen (text);
  if (at == NULL)
    fail_msg ("%s has no “%s”", file, old);
  edited = g_string_new_len (text, at - text);
  g_string_append (edited, new);
  g_string_append (edited, at + (old != NULL ? strlen (old) : 0));
  assert_true (g_file_set_contents (path, edited->str, (gssize) edited->len, NULL));
}

void
compile_or_fail (KnowledgeFixture *self, char **report)
{
  g_autoptr (GError) error = NULL;

  if (!hm_knowledge_compile (self->folder, self->db, report, &error))
    fail_msg ("%s", error->message);
}

HmKnowledge *
open_or_fail (KnowledgeFixture *self)
{
  g_autoptr (GError) error = NULL;
  HmKnowledge *knowledge;

  compile_or_fail (self, NULL);
  knowledge = hm_knowledge_open (self->db, &error);
  if (knowledge == NULL)
    fail_msg ("%s", error->message);
  return knowledge;
}

HmGuide *
load_or_fail (HmKnowledge *knowledge, const char *complaint, const char *layout)
{
  g_autoptr (GError) error = NULL;
  HmGuide *guide = hm_knowledge_load_guide (knowledge, complaint, layout, &error);

  if (guide == NULL)
    fail_msg ("%s", error->message);
  return guide;
}

void
assert_contains (const char *text, const char *part)
{
  if (strstr (text, part) == NULL)
    fail_msg ("“%s” is not in: %s", part, text);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-compile-private.h"
#include <locale.h>

/* halfmoon-compile: packs the texts and tables of a data folder into one file; run by the build. */

static gboolean
write_dependencies (const char *path, const char *target, GPtrArray *inputs, GError **error)
{
  g_autoptr (GString) text = g_string_new (target);

  g_string_append_c (text, ':');
  for (guint i = 0; i < inputs->len; i++)
    {
      g_auto (GStrv) parts = g_strsplit (g_ptr_array_index (inputs, i), " ", -1);
      g_autofree char *escaped = g_strjoinv ("\\ ", parts);
      g_string_append_printf (text, " \\\n  %s", escaped);
    }
  g_string_append_c (text, '\n');
  return g_file_set_contents (path, text->str, (gssize) text->len, error);
}

static gboolean
run (const char *data_folder, const char *output, const char *dependencies, GError **error)
{
  g_autoptr (GPtrArray) inputs = g_ptr_array_new_with_free_func (g_free);
  g_autofree char *report = NULL;

  if (!hm_knowledge_compile_listing (data_folder, output, &report, inputs, error))
    return FALSE;
  g_printerr ("%s", report);
  return dependencies == NULL || write_dependencies (dependencies, output, inputs, error);
}

int
main (int argc, char **argv)
{
  g_autofree char *dependencies = NULL;
  g_autoptr (GOptionContext) context = g_option_context_new ("DATA_FOLDER OUTPUT");
  g_autoptr (GError) error = NULL;
  const GOptionEntry options[] = {
    { "dependencies", 'd', 0, G_OPTION_ARG_FILENAME, &dependencies, "Write what was read to FILE, as a makefile rule", "FILE" },
    G_OPTION_ENTRY_NULL
  };

  setlocale (LC_ALL, "");
  g_option_context_set_summary (context, "Checks the texts in DATA_FOLDER/knowledge and the tables in DATA_FOLDER/tables and "
                                         "packs them into\nthe file OUTPUT. Mistakes stop it; what is worth knowing is "
                                         "printed to the error output.");
  g_option_context_add_main_entries (context, options, NULL);
  if (!g_option_context_parse (context, &argc, &argv, &error))
    {
      g_printerr ("halfmoon-compile: %s\n", error->message);
      return 2;
    }
  if (argc != 3)
    {
      g_printerr ("halfmoon-compile: give a data folder and a file to write (see --help)\n");
      return 2;
    }
  if (run (argv[1], argv[2], dependencies, &error))
    return 0;
  g_printerr ("halfmoon-compile: %s\n", error->message);
  return 1;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <cmocka.h>

struct _HmTestSuite
{
  HmTables *tables;
  GPtrArray *files;   /* owned HmCsv */
  GPtrArray *rows;    /* owned HmTestRow */
  GArray *tests;      /* of struct CMUnitTest */
};

static char *
read_file (const char *variable, const char *folder, const char *name)
{
  const char *base = g_getenv (variable);
  g_autofree char *path = NULL;
  g_autoptr (GError) error = NULL;
  char *text;

  if (base == NULL)
    g_error ("%s is not set; run the tests through meson", variable);
  path = g_build_filename (base, folder, name, NULL);
  if (!g_file_get_contents (path, &text, NULL, &error))
    g_error ("%s", error->message);
  return text;
}

HmTables *
hm_test_tables (void)
{
  HmTables *tables = hm_tables_new ();

  for (guint i = 0; hm_tables_names[i] != NULL; i++)
    {
      g_autofree char *name = g_strconcat (hm_tables_names[i], ".csv", NULL);
      g_autofree char *text = read_file ("HALFMOON_SOURCE_DATA", "tables", name);
      g_autoptr (GError) error = NULL;

      if (!hm_tables_read_csv (tables, hm_tables_names[i], text, &error))
        g_error ("%s", error->message);
    }
  return tables;
}

static void
free_row (gpointer data)
{
  HmTestRow *row = data;

  g_free (row->name);
  g_free (row);
}

HmTestSuite *
hm_test_suite_new (void)
{
  HmTestSuite *self = g_new0 (HmTestSuite, 1);

  self->tables = hm_test_tables ();
  self->files = g_ptr_array_new_with_free_func ((GDestroyNotify) hm_csv_free);
  self->rows = g_ptr_array_new_with_free_func (free_row);
  self->tests = g_array_new (FALSE, TRUE, sizeof (struct CMUnitTest));
  return self;
}

const HmTables *
hm_test_suite_tables (HmTestSuite *self)
{
  return self->tables;
}

void
hm_test_suite_add (HmTestSuite *self, const char *name, HmTestFunc func, gconstpointer state)
{
  struct CMUnitTest test = { .name = name, .test_func = func, .initial_state = (void *) state };

  g_array_append_val (self->tests, test);
}

void
hm_test_suite_add_file (HmTestSuite *self, const char *file, const char *kind, HmTestFunc func)
{
  g_autofree char *text = read_file ("HALFMOON_TEST_VECTORS", "", file);
  g_autoptr (GError) error = NULL;
  HmCsv *csv = hm_csv_parse (text, &error);
  guint added = 0;

  if (csv == NULL)
    g_error ("%s: %s", file, error->message);
  g_ptr_array_add (self->files, csv);
  for (guint i = 0; i < hm_csv_get_n_rows (csv); i++)
    {
      HmTestRow *row;

      if (kind != NULL && g_strcmp0 (hm_csv_get (csv, i, "kind"), kind) != 0)
        continue;
      row = g_new0 (HmTestRow, 1);
      *row = (HmTestRow) { csv, i, self->tables, g_strdup (hm_csv_get (csv, i, "name")) };
      g_ptr_array_add (self->rows, row);
      hm_test_suite_add (self, row->name, func, row);
      added++;
    }
  if (added == 0)
    g_error ("%s has no row of the kind %s", file, kind != NULL ? kind : "(any)");
}

int
hm_test_suite_run (HmTestSuite *self, const char *group)
{
  int failed = _cmocka_run_group_tests (group, (struct CMUnitTest *) (gpointer) self->tests->data, self->tests->len,
                                        NULL, NULL);

  g_array_unref (self->tests);
  g_ptr_array_unref (self->rows);
  g_ptr_array_unref (self->files);
  hm_tables_unref (self->tables);
  g_free (self);
  return failed;
}

const char *
hm_test_text (const HmTestRow *row, const char *column)
{
  const char *text = hm_csv_get (row->csv, row->row, column);

  if (text == NULL)
    fail_msg ("the vector file has no column %s", column);
  return text;
}

double
hm_test_number (const HmTestRow *row, const char *column)
{
  const char *text = hm_test_text (row, column);
  char *end;
  double value = g_ascii_strtod (text, &end);

  if (end == text || *end != '\0')
    fail_msg ("%s: “%s” in the column %s is not a number", row->name, text, column);
  return value;
}

void
hm_test_near (const HmTestRow *row, double got, double want, double tolerance)
{
  if (!(fabs (got - want) <= tolerance))
    fail_msg ("%s: got %.6g, want %.6g ± %.3g (%s)", row->name, got, want, tolerance, hm_test_text (row, "source"));
}

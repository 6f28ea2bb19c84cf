/* SPDX-License-Identifier: GPL-3.0-or-later */
/* chart: the PDFs by what other programs read in them: every word is there, inside the margins, and none lies on another. */
#include "hmt-answer.h"
#include "hmt-command.h"
#include "hm-chart.h"
#include "hm-test-vectors.h"

#include <glib/gstdio.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <string.h>
#include <cmocka.h>

#define LEAST_MARGIN 30.0        /* pt */
#define EPOCH "1700000000"       /* 2023-11-14 22:13:20 UTC */
#define EPOCH_DATE "2023-11-14"

static const struct sheet_row { HmChart chart; const char *paper, *units; double width, height; const char *words[4]; } sheet_rows[] = {
  { HM_CHART_SOCKET, "a4", "inch", 595.28, 841.89, { "Socket chart", "11/32", "T40", "ISO 10664" } },
  { HM_CHART_SOCKET, "letter", "metric", 612, 792, { "Socket chart", "13 mm", "E10", "ASME B18.2.2" } },
  { HM_CHART_THREAD, "a4", "metric", 595.28, 841.89, { "Thread chart", "M8 × 1.25", "No.10-32", "ISO 273" } },
  { HM_CHART_THREAD, "letter", "inch", 612, 792, { "Thread chart", "1/4-20", "No.7", "ISO 898-1" } },
  { HM_CHART_TORQUE, "a4", "metric", 595.28, 841.89, { "Torque chart", "12.9", "N·m", "SAE J429" } },
  { HM_CHART_TORQUE, "letter", "inch", 612, 792, { "Torque chart", "SAE 8", "lbf·ft", "lbf·in" } },
};

/* Shop: a folder for PDFs. */
typedef struct { char *folder; HmTables *tables; } Shop;

static Shop shop;

static char *
run_tool (const char * const *argv)
{
  g_auto (HmtResult) result = hmt_command_run (argv, NULL, NULL);

  if (result.code != 0)
    fail_msg ("%s ended with %d: %s", argv[0], result.code, result.err);
  return g_strdup (result.out);
}

static char *
pdf_path (const struct sheet_row *row)
{
  return g_strdup_printf ("%s/%s-%s-%s.pdf", shop.folder, hm_chart_name (row->chart), row->paper, row->units);
}

static char *
make_pdf (const struct sheet_row *row)
{
  g_autofree char *path = pdf_path (row);
  g_autofree char *arguments = g_strdup_printf ("chart|%s|--pdf|%s|--paper|%s|--units|%s", hm_chart_name (row->chart), path,
                                                row->paper, row->units);
  g_autofree char *out = NULL, *err = NULL;
  int code;

  hmt_arguments_run (arguments, &code, &out, &err);
  if (code != 0)
    fail_msg ("%s ended with %d: %s", arguments, code, err);
  assert_string_equal (err, "");
  return g_steal_pointer (&path);
}

/* The number behind "Pages:", "Page size:" and the like. */
static const char *
info_line (const char *info, const char *key)
{
  const char *at = strstr (info, key);

  if (at == NULL)
    fail_msg ("no “%s” in %s", key, info);
  return g_strchug ((char *) at + strlen (key));
}

static void
size_and_pages (void **state)
{
  const struct sheet_row *row = *state;
  g_autofree char *path = make_pdf (row);
  g_autofree char *info = run_tool ((const char *[]) { "pdfinfo", "-isodates", path, NULL });
  g_autofree char *text = run_tool ((const char *[]) { "pdftotext", "-layout", path, "-", NULL });
  double width = 0.0, height = 0.0;
  int pages = atoi (info_line (info, "Pages:"));

  assert_true (sscanf (info_line (info, "Page size:"), "%lf x %lf", &width, &height) == 2);
  assert_true (ABS (width - row->width) < 0.1 && ABS (height - row->height) < 0.1);
  assert_true (pages >= 2 && pages <= 5);
  assert_true (g_str_has_prefix (info_line (info, "CreationDate:"), EPOCH_DATE));
  assert_true (g_str_has_prefix (info_line (info, "Title:"), row->words[0]));
  for (int page = 1; page <= pages; page++)
    {
      g_autofree char *count = g_strdup_printf ("Page %d of %d", page, pages);

      assert_non_null (strstr (text, count));
    }
  for (gsize i = 0; i < G_N_ELEMENTS (row->words); i++)
    {
      g_auto (GStrv) parts = g_strsplit (text, "\u00a0", -1);
      g_autofree char *plain = g_strjoinv (" ", parts);

      if (strstr (plain, row->words[i]) == NULL)
        fail_msg ("“%s” is not in the PDF", row->words[i]);
    }
}

static void
add_words (GHashTable *words, const char *text, int by)
{
  g_auto (GStrv) parts = g_strsplit_set (text, " \n", -1);

  for (guint i = 0; parts[i] != NULL; i++)
    {
      g_auto (GStrv) pieces = g_strsplit (parts[i], "\u00a0", -1);

      for (guint k = 0; pieces[k] != NULL; k++)
        if (pieces[k][0] != '\0')
          g_hash_table_insert (words, g_strdup (pieces[k]),
                               GINT_TO_POINTER (GPOINTER_TO_INT (g_hash_table_lookup (words, pieces[k])) + by));
    }
}

static void
add_sheet_words (GHashTable *words, const HmSheet *sheet)
{
  add_words (words, sheet->title, 1);
  add_words (words, sheet->date, 1);
  add_words (words, sheet->governs, 1);
  for (guint i = 0; i < sheet->blocks->len; i++)
    {
      const HmSheetBlock *block = hm_sheet_get_block (sheet, i);

      if (block->text != NULL)
        add_words (words, block->text, 1);
      for (guint column = 0; block->table != NULL && column < block->table->columns->len; column++)
        {
          add_words (words, hm_sheet_table_get_column (block->table, column)->title, 1);
          for (guint row = 0; row < block->table->rows->len; row++)
            add_words (words, hm_sheet_table_get_cell (block->table, row, column)->text, 1);
        }
    }
}

/* A word of the PDF as pdftotext -bbox lists it. */
typedef struct { guint page; double x0, y0, x1, y1; char *text; } Word;

static void
clear_word (gpointer data)
{
  g_free (((Word *) data)->text);
}

static double
attribute (const char *line, const char *name)
{
  const char *at = strstr (line, name);

  assert_non_null (at);
  return g_ascii_strtod (at + strlen (name), NULL);
}

static char *
unescape (const char *line)
{
  g_autofree char *inside = g_strdup (strchr (line, '>') + 1);
  GString *text;

  *strstr (inside, "</word>") = '\0';
  text = g_string_new (inside);
  g_string_replace (text, "&quot;", "\"", 0);
  g_string_replace (text, "&apos;", "'", 0);
  g_string_replace (text, "&#39;", "'", 0);
  g_string_replace (text, "&lt;", "<", 0);
  g_string_replace (text, "&gt;", ">", 0);
  g_string_replace (text, "&amp;", "&", 0);
  return g_string_free (text, FALSE);
}

static GArray *
read_words (const char *path)
{
  g_autofree char *boxes = run_tool ((const char *[]) { "pdftotext", "-bbox", path, "-", NULL });
  g_auto (GStrv) lines = g_strsplit (boxes, "\n", -1);
  GArray *words = g_array_new (FALSE, FALSE, sizeof (Word));
  guint page = 0;

  g_array_set_clear_func (words, clear_word);
  for (guint i = 0; lines[i] != NULL; i++)
    if (strstr (lines[i], "<page ") != NULL)
      page++;
    else if (strstr (lines[i], "<word ") != NULL)
      {
        Word word = { page, attribute (lines[i], "xMin=\""), attribute (lines[i], "yMin=\""), attribute (lines[i], "xMax=\""),
                      attribute (lines[i], "yMax=\""), unescape (lines[i]) };
        g_array_append_val (words, word);
      }
  return words;
}

/* Every word of the sheet is in the PDF, at least as often as on the sheet. */
static void
no_word_is_lost (void **state)
{
  const struct sheet_row *row = *state;
  g_autofree char *path = make_pdf (row);
  g_autoptr (GArray) words = read_words (path);
  g_autoptr (GHashTable) counts = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  const HmFormat format = { ".", strcmp (row->units, "inch") == 0 ? HM_UNIT_SYSTEM_INCH_FIRST : HM_UNIT_SYSTEM_METRIC_FIRST };
  const HmChartRequest request = { hm_chart_title (row->chart), EPOCH_DATE, &format, NULL };
  g_autoptr (HmSheet) sheet = hm_chart_new (row->chart, shop.tables, &request);
  GHashTableIter at;
  gpointer word, count;

  add_sheet_words (counts, sheet);
  assert_true (g_hash_table_size (counts) > 100);
  for (guint i = 0; i < words->len; i++)
    add_words (counts, g_array_index (words, Word, i).text, -1);
  g_hash_table_iter_init (&at, counts);
  while (g_hash_table_iter_next (&at, &word, &count))
    if (GPOINTER_TO_INT (count) > 0)
      fail_msg ("“%s” is missing %d times", (const char *) word, GPOINTER_TO_INT (count));
}

static void
no_word_is_cut (void **state)
{
  const struct sheet_row *row = *state;
  g_autofree char *path = make_pdf (row);
  g_autoptr (GArray) words = read_words (path);

  assert_true (words->len > 500);
  for (guint i = 0; i < words->len; i++)
    {
      const Word *a = &g_array_index (words, Word, i);

      if (a->x0 < LEAST_MARGIN || a->y0 < LEAST_MARGIN || a->x1 > row->width - LEAST_MARGIN || a->y1 > row->height - LEAST_MARGIN)
        fail_msg ("“%s” leaves the margins of page %u", a->text, a->page);
      if (a->y1 - a->y0 < 8.0)
        fail_msg ("“%s” on page %u is set smaller than 8 pt", a->text, a->page);
      for (guint k = i + 1; k < words->len; k++)
        {
          const Word *b = &g_array_index (words, Word, k);

          if (a->page == b->page && MIN (a->x1, b->x1) - MAX (a->x0, b->x0) > 0.5
              && MIN (a->y1, b->y1) - MAX (a->y0, b->y0) > 3.0)
            fail_msg ("“%s” and “%s” lie on each other on page %u", a->text, b->text, a->page);
        }
    }
}

/* The head of a table stands on each page that has rows of it. */
static void
heads_are_repeated (void **state)
{
  const struct sheet_row row = { HM_CHART_TORQUE, "a4", "metric", 0, 0, { NULL } };
  g_autofree char *path = make_pdf (&row);

  for (guint page = 1; page <= 3; page++)
    {
      g_autofree char *number = g_strdup_printf ("%u", page);
      g_autofree char *text = run_tool ((const char *[]) { "pdftotext", "-layout", "-f", number, "-l", number, path, "-", NULL });

      const char *head = strstr (text, "Dry, as found"), *first_row = strstr (text, "N·m");

      assert_non_null (head);
      assert_non_null (first_row);
      assert_true (head < first_row);
      assert_non_null (strstr (text, "The maker’s manual governs"));
    }
}

static void
the_same_time_gives_the_same_bytes (void **state)
{
  const struct sheet_row *row = &sheet_rows[0];
  g_autofree char *path = make_pdf (row), *again = NULL, *first = NULL, *second = NULL;
  gsize n_first, n_second;

  assert_true (g_file_get_contents (path, &first, &n_first, NULL));
  again = make_pdf (row);
  assert_true (g_file_get_contents (again, &second, &n_second, NULL));
  assert_int_equal (n_first, n_second);
  assert_memory_equal (first, second, n_first);
}

static void
the_title_is_the_callers (void **state)
{
  g_autofree char *path = g_build_filename (shop.folder, "titled.pdf", NULL), *out = NULL, *err = NULL, *text = NULL;
  g_autofree char *arguments = g_strdup_printf ("chart|torque|--title|Corner Shop: torques|--pdf|%s", path);
  int code;

  hmt_arguments_run (arguments, &code, &out, &err);
  assert_int_equal (code, 0);
  text = run_tool ((const char *[]) { "pdftotext", "-layout", path, "-", NULL });
  assert_non_null (strstr (text, "Corner Shop: torques"));
  assert_non_null (strstr (text, EPOCH_DATE));
}

/* @arguments: “@” stands for the folder. @code: 1 bad input, 2 wrong usage. */
static const struct refusal_row { const char *name, *arguments; int code; const char *says, *accepts; } refusal_rows[] = {
  { "no chart", "chart|--pdf|@/x.pdf", 2, "One chart", "thread" },
  { "two charts", "chart|socket|thread|--pdf|@/x.pdf", 2, "One chart", "torque" },
  { "no file", "chart|socket", 2, "--pdf", "chart.pdf" },
  { "empty file name", "chart|socket|--pdf|", 2, "--pdf", "chart.pdf" },
  { "unknown option", "chart|socket|--colour", 2, "--colour", "--help" },
  { "unknown chart", "chart|wiring|--pdf|@/x.pdf", 1, "“wiring”", "socket, thread, torque" },
  { "no text", "chart|\xff|--pdf|@/x.pdf", 1, "no chart", "socket, thread, torque" },
  { "unknown paper", "chart|socket|--pdf|@/x.pdf|--paper|a5", 1, "“a5”", "a4, letter" },
  { "unknown units", "chart|socket|--pdf|@/x.pdf|--units|cubit", 1, "“cubit”", "inch, metric" },
  { "folder that is not there", "chart|socket|--pdf|@/none/x.pdf", 1, "none/x.pdf", "cannot be written" },
  { "a folder", "chart|socket|--pdf|@", 1, "--pdf", "cannot be written" },
};

static void
refused_with_a_sentence (void **state)
{
  const struct refusal_row *row = *state;
  g_auto (GStrv) parts = g_strsplit (row->arguments, "@", -1);
  g_autofree char *arguments = g_strjoinv (shop.folder, parts), *out = NULL, *err = NULL;
  g_autofree char *path = g_build_filename (shop.folder, "x.pdf", NULL);
  int code;

  hmt_arguments_run (arguments, &code, &out, &err);
  assert_int_equal (code, row->code);
  assert_string_equal (out, "");
  hmt_check_sentence (row->arguments, err);
  if (strstr (err, row->says) == NULL || strstr (err, row->accepts) == NULL)
    fail_msg ("“%s” and “%s” are wanted, this was said: %s", row->says, row->accepts, err);
  assert_false (g_file_test (path, G_FILE_TEST_EXISTS));
}

static void
help_is_given (void **state)
{
  g_autofree char *out = NULL, *err = NULL;
  int code;

  hmt_arguments_run ("chart|--help", &code, &out, &err);
  assert_int_equal (code, 0);
  assert_non_null (strstr (out, "--paper"));
  assert_non_null (strstr (out, "socket|thread|torque"));
}

static void
remove_folder (void)
{
  g_autoptr (GDir) folder = g_dir_open (shop.folder, 0, NULL);

  for (const char *name = g_dir_read_name (folder); name != NULL; name = g_dir_read_name (folder))
    {
      g_autofree char *path = g_build_filename (shop.folder, name, NULL);
      g_remove (path);
    }
  g_rmdir (shop.folder);
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();
  static const struct { const char *name; HmTestFunc func; } each[] = {
    { "size and pages", size_and_pages }, { "no word is lost", no_word_is_lost }, { "no word is cut", no_word_is_cut },
  };
  g_autoptr (GPtrArray) names = g_ptr_array_new_with_free_func (g_free);
  int failed;

  g_setenv ("SOURCE_DATE_EPOCH", EPOCH, TRUE);
  shop = (Shop) { g_dir_make_tmp ("halfmoon-chart-XXXXXX", NULL), hm_test_tables () };
  for (gsize i = 0; i < G_N_ELEMENTS (sheet_rows); i++)
    for (gsize k = 0; k < G_N_ELEMENTS (each); k++)
      {
        g_ptr_array_add (names, g_strdup_printf ("%s %s %s: %s", hm_chart_name (sheet_rows[i].chart), sheet_rows[i].paper,
                                                 sheet_rows[i].units, each[k].name));
        hm_test_suite_add (suite, g_ptr_array_index (names, names->len - 1), each[k].func, &sheet_rows[i]);
      }
  hm_test_suite_add (suite, "heads are repeated", heads_are_repeated, NULL);
  hm_test_suite_add (suite, "the same time gives the same bytes", the_same_time_gives_the_same_bytes, NULL);
  hm_test_suite_add (suite, "the title is the caller's", the_title_is_the_callers, NULL);
  hm_test_suite_add (suite, "help is given", help_is_given, NULL);
  HM_TEST_SUITE_ADD_ROWS (suite, refusal_rows, refused_with_a_sentence);
  failed = hm_test_suite_run (suite, "cli-chart");
  hm_tables_unref (shop.tables);
  remove_folder ();
  g_free (shop.folder);
  return failed;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-csv.h"
#include "hm-test-vectors.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <cmocka.h>

/* Fields by the rules of RFC 4180, sections 2.5 to 2.7; blanks round a field and comment lines are our own rule. */
static const struct field_row {
  const char *name, *text, *column, *want;
} field_rows[] = {
  { "plain", "a,b\n1,2\n", "b", "2" },
  { "no line end at the end", "a,b\n1,2", "b", "2" },
  { "CRLF", "a,b\r\n1,2\r\n", "b", "2" },
  { "quoted comma", "a,b\n\"1,5\",2\n", "a", "1,5" },
  { "doubled quote", "a,b\n\"7/16\"\"\",2\n", "a", "7/16\"" },
  { "quoted empty", "a,b\n\"\",2\n", "a", "" },
  { "empty last field", "a,b\n1,\n", "b", "" },
  { "comment between", "a,b\n# 9,9\n1,2\n", "b", "2" },
  { "comment before the header", "# c,d\na,b\n1,2\n", "a", "1" },
  { "blanks round a field", "a,b\n 1 , 2 \n", "a", "1" },
  { "blanks inside quotes stay", "a,b\n\" 1\",2\n", "a", " 1" },
  { "empty line", "a,b\n\n1,2\n", "a", "1" },
  { "UTF-8", "a,b\nM8 × 1.25,2\n", "a", "M8 × 1.25" },
  { "no such column", "a,b\n1,2\n", "c", NULL },
};

static const struct refused_row {
  const char *name, *text;
  HmCsvError code;
  const char *says;
} refused_rows[] = {
  { "nothing", "", HM_CSV_ERROR_HEADER, "no header" },
  { "comments only", "# a\n", HM_CSV_ERROR_HEADER, "no header" },
  { "one field too few", "a,b\n1\n", HM_CSV_ERROR_FIELDS, "line 2" },
  { "one field too many", "a,b\n1,2,3\n", HM_CSV_ERROR_FIELDS, "line 2" },
  { "open quote", "a,b\n1,2\n\"1,2\n", HM_CSV_ERROR_QUOTE, "line 3" },
  { "text behind a quote", "a,b\n\"1\"x,2\n", HM_CSV_ERROR_QUOTE, "line 2" },
  { "column twice", "a,a\n1,2\n", HM_CSV_ERROR_HEADER, "“a”" },
  { "not UTF-8", "a,b\n\xff,2\n", HM_CSV_ERROR_ENCODING, "UTF-8" },
};

static void
field_is_read (void **state)
{
  const struct field_row *row = *state;
  g_autoptr (GError) error = NULL;
  g_autoptr (HmCsv) csv = hm_csv_parse (row->text, &error);

  assert_non_null (csv);
  assert_int_equal (hm_csv_get_n_rows (csv), 1);
  if (row->want == NULL)
    assert_null (hm_csv_get (csv, 0, row->column));
  else
    assert_string_equal (hm_csv_get (csv, 0, row->column), row->want);
}

static void
text_is_refused (void **state)
{
  const struct refused_row *row = *state;
  g_autoptr (GError) error = NULL;
  g_autoptr (HmCsv) csv = hm_csv_parse (row->text, &error);

  assert_null (csv);
  assert_true (g_error_matches (error, HM_CSV_ERROR, (int) row->code));
  assert_non_null (g_strstr_len (error->message, -1, row->says));
}

static void
line_numbers_count_comments (void **state)
{
  g_autoptr (HmCsv) csv = hm_csv_parse ("# c\na\n# c\n1\n\n2\n", NULL);

  assert_int_equal (hm_csv_get_line (csv, 0), 4);
  assert_int_equal (hm_csv_get_line (csv, 1), 6);
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  HM_TEST_SUITE_ADD_ROWS (suite, field_rows, field_is_read);
  HM_TEST_SUITE_ADD_ROWS (suite, refused_rows, text_is_refused);
  hm_test_suite_add (suite, "line numbers count comments and empty lines", line_numbers_count_comments, NULL);
  return hm_test_suite_run (suite, "csv");
}

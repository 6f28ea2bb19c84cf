/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The tree of blocks, and how sources are gathered. */
#include "hm-sheet.h"
#include "hm-sheet-sources.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

static const char *
shout (const char *english)
{
  return strcmp (english, "common practice") == 0 ? "COMMON PRACTICE" : english;
}

static void
blocks_keep_their_order (void **state)
{
  g_autoptr (HmSheet) sheet = hm_sheet_new ("Chart", "2026-11-25", "The manual governs.");
  HmSheetTable *table;

  hm_sheet_say (sheet, HM_SHEET_HEADING, "One");
  table = hm_sheet_add_table (sheet);
  hm_sheet_say (sheet, HM_SHEET_NOTE, "Two");
  assert_int_equal (sheet->blocks->len, 3);
  assert_string_equal (hm_sheet_get_block (sheet, 0)->text, "One");
  assert_ptr_equal (hm_sheet_get_block (sheet, 1)->table, table);
  assert_int_equal (hm_sheet_get_block (sheet, 2)->kind, HM_SHEET_NOTE);
  assert_string_equal (sheet->title, "Chart");
  assert_string_equal (sheet->date, "2026-11-25");
}

static void
cells_fill_a_row (void **state)
{
  g_autoptr (HmSheet) sheet = hm_sheet_new ("Chart", "2026-11-25", "");
  HmSheetTable *table = hm_sheet_add_table (sheet);

  hm_sheet_table_add_column (table, "Both", "A", HM_SHEET_START);
  hm_sheet_table_add_column (table, "Both", "B", HM_SHEET_END);
  hm_sheet_table_begin_row (table, TRUE);
  hm_sheet_table_put (table, g_strdup ("a"), HM_TONE_STRONG);
  hm_sheet_table_put (table, g_strdup ("b"), HM_TONE_BAD);
  assert_string_equal (hm_sheet_table_get_cell (table, 0, 0)->text, "a");
  assert_string_equal (hm_sheet_table_get_cell (table, 0, 1)->text, "b");
  assert_int_equal (hm_sheet_table_get_cell (table, 0, 1)->tone, HM_TONE_BAD);
  assert_string_equal (hm_sheet_table_get_column (table, 1)->group, "Both");
}

static void
nothing_is_written_as_a_dash (void **state)
{
  g_autoptr (HmSheet) sheet = hm_sheet_new ("Chart", "2026-11-25", "");
  HmSheetTable *table = hm_sheet_add_table (sheet);

  hm_sheet_table_add_column (table, NULL, "A", HM_SHEET_START);
  hm_sheet_table_add_column (table, NULL, "B", HM_SHEET_START);
  hm_sheet_table_begin_row (table, TRUE);
  hm_sheet_table_put (table, NULL, HM_TONE_STRONG);
  hm_sheet_table_put (table, g_strdup (""), HM_TONE_STRONG);
  for (guint column = 0; column < 2; column++)
    {
      assert_string_equal (hm_sheet_table_get_cell (table, 0, column)->text, "–");
      assert_int_equal (hm_sheet_table_get_cell (table, 0, column)->tone, HM_TONE_PLAIN);
    }
}

/* What is written when three rows come from one source and one from another. */
static void
sources_name_the_rows_that_differ (void **state)
{
  g_autoptr (HmSheet) sheet = hm_sheet_new ("Chart", "2026-11-25", "");
  g_autoptr (HmSheetSources) sources = hm_sheet_sources_new (shout);
  const HmProvenance standard = { HM_PROVENANCE_STANDARD, "ISO 10664" }, practice = { HM_PROVENANCE_COMMON_PRACTICE, NULL };

  hm_sheet_sources_add (sources, "Sizes", "T20", standard);
  hm_sheet_sources_add (sources, "Sizes", "T27", practice);
  hm_sheet_sources_add (sources, "Sizes", "T30", standard);
  hm_sheet_sources_add (sources, "Sizes", "T30", standard);
  hm_sheet_sources_add (sources, "Area", "T30", standard);
  hm_sheet_sources_write (sources, sheet);
  assert_int_equal (sheet->blocks->len, 4);
  assert_int_equal (hm_sheet_get_block (sheet, 0)->kind, HM_SHEET_HEADING);
  assert_string_equal (hm_sheet_get_block (sheet, 1)->text, "Sizes (all others): standard: ISO 10664.");
  assert_string_equal (hm_sheet_get_block (sheet, 2)->text, "Sizes (T27): COMMON PRACTICE.");
  assert_string_equal (hm_sheet_get_block (sheet, 3)->text, "Area: standard: ISO 10664.");
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (blocks_keep_their_order),
    cmocka_unit_test (cells_fill_a_row),
    cmocka_unit_test (nothing_is_written_as_a_dash),
    cmocka_unit_test (sources_name_the_rows_that_differ),
  };

  return cmocka_run_group_tests_name ("sheet", tests, NULL, NULL);
}

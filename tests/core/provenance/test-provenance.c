/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-provenance.h"
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <string.h>
#include <cmocka.h>

/* @written: what hm_provenance_format() makes of it, NULL if the text comes back as it is */
static const struct read_row { const char *text; HmProvenanceKind kind; const char *source, *written; } read_rows[] = {
  { "common practice", HM_PROVENANCE_COMMON_PRACTICE, NULL, NULL },
  { "published: TM 5-4930-227-14, table 5-1", HM_PROVENANCE_PUBLISHED, "TM 5-4930-227-14, table 5-1", NULL },
  { "published: NAVEDTRA 14264A: chapter 3 (excerpt read)", HM_PROVENANCE_PUBLISHED, "NAVEDTRA 14264A: chapter 3 (excerpt read)", NULL },
  { "standard: ISO 898-1, table 3", HM_PROVENANCE_STANDARD, "ISO 898-1, table 3", NULL },
  { "computed: from thread and class", HM_PROVENANCE_COMPUTED, "from thread and class", NULL },
  { "spec sheet: page 12", HM_PROVENANCE_SPEC_SHEET, "page 12", NULL },
  { " standard :  ISO 261", HM_PROVENANCE_STANDARD, "ISO 261", "standard: ISO 261" },
  { "common practice ", HM_PROVENANCE_COMMON_PRACTICE, NULL, "common practice" },
  { "common practice:", HM_PROVENANCE_COMMON_PRACTICE, NULL, "common practice" },
};

static const struct refusal_row { const char *name, *text; } refusal_rows[] = {
  { "nothing", "" },
  { "another kind", "hearsay: a neighbor" },
  { "a kind that goes on", "standards: ISO 261" },
  { "a kind cut short", "common" },
  { "no colon", "standard ISO 261" },
  { "standard without a source", "standard" },
  { "published with a blank source", "published:  " },
  { "computed without a source", "computed:" },
  { "spec sheet without a page", "spec sheet" },
  { "common practice with a source", "common practice: ISO 261" },
  { "capital letter", "Standard: ISO 261" },
};

static void
text_is_read (void **state)
{
  const struct read_row *row = *state;
  g_autofree char *written = NULL;
  HmProvenance got;
  assert_true (hm_provenance_parse (row->text, &got));
  assert_int_equal (got.kind, row->kind);
  if (row->source == NULL)
    assert_null (got.source);
  else
    {
      assert_string_equal (got.source, row->source);
      assert_true (got.source > row->text && got.source < row->text + strlen (row->text));   /* borrowed from the text */
    }
  written = hm_provenance_format (got);
  assert_string_equal (written, row->written != NULL ? row->written : row->text);
}

static void
text_is_refused (void **state)
{
  const struct refusal_row *row = *state;
  HmProvenance got = { HM_PROVENANCE_COMPUTED, "untouched" };
  assert_false (hm_provenance_parse (row->text, &got));
  assert_int_equal (got.kind, HM_PROVENANCE_COMPUTED);
  assert_string_equal (got.source, "untouched");
}

static void
manual_governs_all_but_the_spec_sheet (void **state)
{
  for (guint kind = HM_PROVENANCE_SPEC_SHEET; kind <= HM_PROVENANCE_COMMON_PRACTICE; kind++)
    assert_int_equal (hm_provenance_manual_governs ((HmProvenance) { kind, NULL }), kind != HM_PROVENANCE_SPEC_SHEET);
}

static void
kinds_have_names (void **state)
{
  assert_string_equal (hm_provenance_kind_name (HM_PROVENANCE_COMMON_PRACTICE), "common practice");
  assert_string_equal (hm_provenance_kind_name (HM_PROVENANCE_SPEC_SHEET), "spec sheet");
}

int
main (void)
{
  struct CMUnitTest tests[G_N_ELEMENTS (read_rows) + G_N_ELEMENTS (refusal_rows) + 2];
  gsize n = 0;
  for (gsize i = 0; i < G_N_ELEMENTS (read_rows); i++)
    tests[n++] = (struct CMUnitTest) { read_rows[i].text, text_is_read, .initial_state = (void *) &read_rows[i] };
  for (gsize i = 0; i < G_N_ELEMENTS (refusal_rows); i++)
    tests[n++] = (struct CMUnitTest) { refusal_rows[i].name, text_is_refused, .initial_state = (void *) &refusal_rows[i] };
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (manual_governs_all_but_the_spec_sheet);
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (kinds_have_names);
  return cmocka_run_group_tests_name ("provenance", tests, NULL, NULL);
}

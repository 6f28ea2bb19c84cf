/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-compile-rows.h"
#include "knowledge-fixture.h"
#include <math.h>
#include <string.h>

/*
 * The words and the rule for what is left out are those of data/knowledge/README.md; the figures here were worked out
 * by hand from that text.
 */
#define N 3
static const char * const findings[] = { "ok", "low", "bad", NULL };

struct row { const char *name, *text, *fallback; double want[N]; };
static const struct row rows[] = {
  { "all words that fit",         "ok usually; low rarely; bad 7",  NULL,                   { 0.85, 0.08, 0.07 } },
  { "almost-always",              "ok almost-always",               NULL,                   { 0.97, 0.015, 0.015 } },
  { "almost-never",               "bad almost-never",               NULL,                   { 0.49, 0.49, 0.02 } },
  { "often and sometimes",        "low often; bad sometimes",       NULL,                   { 0.10, 0.60, 0.30 } },
  { "a percentage",               "bad 55",                         NULL,                   { 0.225, 0.225, 0.55 } },
  { "a percentage with its sign", "bad 55 %",                       NULL,                   { 0.225, 0.225, 0.55 } },
  { "a decimal percentage",       "ok 12.5; low 37.5; bad 50",      NULL,                   { 0.125, 0.375, 0.5 } },
  { "nothing named: evenly",      "",                               NULL,                   { 1 / 3.0, 1 / 3.0, 1 / 3.0 } },
  { "rest by the default",        "bad often",                      "ok 60; low 30; bad 10", { 0.4 * 60 / 90, 0.4 * 30 / 90, 0.60 } },
  { "nothing named: the default", "",                               "ok 60; low 30; bad 10", { 0.60, 0.30, 0.10 } },
  { "default left out: evenly",   "ok usually",                     "ok almost-always",      { 0.85, 0.075, 0.075 } },
  { "default leaves one out",     "ok 20",                          "ok 50; low 40",         { 0.20, 0.64, 0.16 } },
  { "extra spaces",               "  ok  usually ; low rarely;;",   NULL,                   { 0.85, 0.08, 0.07 } },
};

static void
shares_are_as_worked_out (void **state)
{
  const struct row *row = *state;
  g_autoptr (GError) error = NULL;
  double fallback[N], got[N];

  if (row->fallback != NULL)
    assert_true (hm_rows_parse (row->fallback, findings, N, NULL, fallback, NULL));
  if (!hm_rows_parse (row->text, findings, N, row->fallback != NULL ? fallback : NULL, got, &error))
    fail_msg ("%s", error->message);
  for (int i = 0; i < N; i++)
    if (fabs (got[i] - row->want[i]) > 1e-12)
      fail_msg ("%s: %.15g, want %.15g", findings[i], got[i], row->want[i]);
}

struct bad_row { const char *name, *text, *reason; };
static const struct bad_row bad_rows[] = {
  { "refused: above 100",          "ok usually; low sometimes",     "115 %" },
  { "refused: all named, below",   "ok 50; low 30; bad 19",         "99 %" },
  { "refused: all named, above",   "ok 50; low 30; bad 21",         "101 %" },
  { "refused: unknown finding",    "fine usually",                  "ok, low, bad" },
  { "refused: named twice",        "ok often; ok rarely",           "named twice" },
  { "refused: unknown word",       "ok mostly",                     "“mostly”" },
  { "refused: no share",           "ok",                            "“ok” is not a finding with" },
  { "refused: nought",             "ok 0",                          "between 0 and 100" },
  { "refused: hundred",            "ok 100",                        "between 0 and 100" },
  { "refused: negative",           "ok -5",                         "between 0 and 100" },
  { "refused: decimal comma",      "ok 12,5",                       "“12,5”" },
  { "refused: no number",          "ok nan",                        "“nan”" },
};

static void
bad_row_is_refused (void **state)
{
  const struct bad_row *row = *state;
  g_autoptr (GError) error = NULL;
  double got[N] = { -7, -7, -7 };

  assert_false (hm_rows_parse (row->text, findings, N, NULL, got, &error));
  assert_true (g_error_matches (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_TEXT));
  assert_contains (error->message, row->reason);
  assert_true (got[0] == -7 && got[1] == -7 && got[2] == -7);
}

struct floor_row { const char *name; double before[N], want[N]; };
static const struct floor_row floor_rows[] = {
  { "floor: nothing below",    { 0.5, 0.3, 0.2 },       { 0.5, 0.3, 0.2 } },
  { "floor: at the floor",     { 0.495, 0.5, 0.005 },   { 0.495, 0.5, 0.005 } },
  { "floor: one below",        { 0.6, 0.399, 0.001 },   { 0.6 * 0.995 / 0.999, 0.399 * 0.995 / 0.999, 0.005 } },
  { "floor: two at nought",    { 1.0, 0.0, 0.0 },       { 0.99, 0.005, 0.005 } },
  { "floor: pushed below it",  { 0.994, 0.00501, 0.00099 }, { 0.99, 0.005, 0.005 } },
};

static void
floor_is_kept (void **state)
{
  const struct floor_row *row = *state;
  double got[N], sum = 0;

  memcpy (got, row->before, sizeof got);
  hm_rows_floor (got, N);
  for (int i = 0; i < N; i++)
    {
      if (fabs (got[i] - row->want[i]) > 1e-12)
        fail_msg ("%d: %.15g, want %.15g", i, got[i], row->want[i]);
      assert_true (got[i] >= 0.005);
      sum += got[i];
    }
  assert_true (fabs (sum - 1) <= 1e-12);
}

static void
mixture_is_weighted (void **state)
{
  static const double a[] = { 0.9, 0.1, 0.0 }, b[] = { 0.0, 0.2, 0.8 };
  double total[N] = { 0 };

  (void) state;
  hm_rows_add (total, a, 6, N);       /* high */
  hm_rows_add (total, b, 2, N);       /* medium */
  hm_rows_scale_to_one (total, N);
  assert_true (fabs (total[0] - 0.675) < 1e-12);     /* 6·0.9 / 8 */
  assert_true (fabs (total[1] - 0.125) < 1e-12);     /* (0.6 + 0.4) / 8 */
  assert_true (fabs (total[2] - 0.2) < 1e-12);       /* 1.6 / 8 */
}

int
main (void)
{
  struct CMUnitTest tests[G_N_ELEMENTS (rows) + G_N_ELEMENTS (bad_rows) + G_N_ELEMENTS (floor_rows) + 1];
  gsize n = 0;

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    tests[n++] = (struct CMUnitTest) { rows[i].name, shares_are_as_worked_out, .initial_state = (void *) &rows[i] };
  for (gsize i = 0; i < G_N_ELEMENTS (bad_rows); i++)
    tests[n++] = (struct CMUnitTest) { bad_rows[i].name, bad_row_is_refused, .initial_state = (void *) &bad_rows[i] };
  for (gsize i = 0; i < G_N_ELEMENTS (floor_rows); i++)
    tests[n++] = (struct CMUnitTest) { floor_rows[i].name, floor_is_kept, .initial_state = (void *) &floor_rows[i] };
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (mixture_is_weighted);
  return cmocka_run_group_tests_name ("compile-rows", tests, NULL, NULL);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-pitch-text.h"
#include "hm-test-vectors.h"
#include "hm-thread-profile.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

static const struct pitch_row { const char *name; double mm; gboolean inch; guint spaces; } pitch_rows[] = {
  { "1.25", 1.25, FALSE, 0 },
  { "1,25 mm", 1.25, FALSE, 0 },
  { "20 tpi", 1.27, TRUE, 0 },
  { "20", 1.27, TRUE, 0 },
  { "18 threads per inch", 25.4 / 18.0, TRUE, 0 },
  { "0.05 in", 1.27, TRUE, 0 },
  { "10 over 12.5 mm", 1.25, FALSE, 10 },
  { "10 over 12.5", 1.25, FALSE, 10 },
  { "11 crests over 12.5 mm", 1.25, FALSE, 10 },
  { "10 threads over 1/2", 1.27, TRUE, 10 },
};

static const struct refused_row { const char *name, *text; HmThreadError code; const char *says; } refused_rows[] = {
  { "nothing", "", HM_THREAD_ERROR_SYNTAX, "20 tpi" },
  { "nonsense", "coarse", HM_THREAD_ERROR_SYNTAX, "coarse" },
  { "negative", "-1.25 mm", HM_THREAD_ERROR_SYNTAX, "-1.25" },
  { "zero", "0 tpi", HM_THREAD_ERROR_RANGE, "0.2 mm" },
  { "just too fine", "0.19 mm", HM_THREAD_ERROR_RANGE, "0.2 mm" },
  { "too coarse", "8.1 mm", HM_THREAD_ERROR_RANGE, "8 mm" },
  { "counts nothing", "0 over 12 mm", HM_THREAD_ERROR_RANGE, "no space" },
  { "one crest", "1 crest over 12 mm", HM_THREAD_ERROR_RANGE, "no space" },
  { "part of a space", "10.5 over 12 mm", HM_THREAD_ERROR_SYNTAX, "whole number" },
  { "huge count", "99999999999 over 12 mm", HM_THREAD_ERROR_SYNTAX, "200" },
  { "no length", "10 over there", HM_THREAD_ERROR_SYNTAX, "no length" },
  { "not UTF-8", "\377", HM_THREAD_ERROR_SYNTAX, "UTF-8" },
};

static void
pitch_is_read (void **state)
{
  const struct pitch_row *row = *state;
  HmPitchReading got;

  assert_true (hm_pitch_parse (row->name, &got, NULL));
  assert_true (fabs (got.pitch.mm - row->mm) < 1e-9);
  assert_int_equal (got.inch, row->inch);
  assert_int_equal (got.spaces, row->spaces);
}

static void
pitch_is_refused (void **state)
{
  const struct refused_row *row = *state;
  HmPitchReading got = { .spaces = 77 };
  g_autoptr (GError) error = NULL;

  assert_false (hm_pitch_parse (row->text, &got, &error));
  assert_true (g_error_matches (error, HM_THREAD_ERROR, (int) row->code));
  assert_non_null (strstr (error->message, row->says));
  assert_int_equal (got.spaces, 77);
}

/* ISO 68-1: height 5/8 H with H = √3/2 P, crest P/8, root P/4; M8 × 1.25 of ISO 724: d 8, D1 6.647. */
static void
profile_has_the_basic_form (void **state)
{
  HmThread thread = { HM_THREAD_ISO_METRIC, { 8.0 }, { 1.25 }, FALSE };
  g_autoptr (GArray) line = hm_thread_profile (&thread, (HmLength) { 5.0 });
  const HmProfilePoint *at = (const HmProfilePoint *) line->data;

  assert_int_equal (line->len, 16);
  assert_true (fabs (at[0].radius_mm - 4.0) < 1e-9);
  assert_true (fabs (at[0].along_mm - 1.25 / 16.0) < 1e-9);
  assert_true (fabs (at[1].radius_mm - 6.647 / 2.0) < 0.0005);
  assert_true (fabs (at[2].along_mm - at[1].along_mm - 1.25 / 4.0) < 1e-9);
  assert_true (fabs (atan2 (at[1].along_mm - at[0].along_mm, at[0].radius_mm - at[1].radius_mm) * 180.0 / G_PI - 30.0) < 0.001);
  assert_true (fabs (at[3].along_mm + at[4].along_mm - 2.0 * 1.25) < 1e-9);
}

#define NBSP "\302\240"

/* 25.4 / 1.25 = 20.32; 25.4 / 18 = 1.41111. */
static void
pitch_is_written_both_ways (void **state)
{
  g_autofree char *metric = hm_pitch_format ((HmLength) { 1.25 }, FALSE, &hm_format_default);
  g_autofree char *inch = hm_pitch_format ((HmLength) { 25.4 / 18.0 }, TRUE, &hm_format_default);

  assert_string_equal (metric, "1.25" NBSP "mm (20.3" NBSP "tpi)");
  assert_string_equal (inch, "18" NBSP "tpi (1.411" NBSP "mm)");
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  HM_TEST_SUITE_ADD_ROWS (suite, pitch_rows, pitch_is_read);
  HM_TEST_SUITE_ADD_ROWS (suite, refused_rows, pitch_is_refused);
  hm_test_suite_add (suite, "written both ways", pitch_is_written_both_ways, NULL);
  hm_test_suite_add (suite, "basic profile", profile_has_the_basic_form, NULL);
  return hm_test_suite_run (suite, "pitch-text");
}

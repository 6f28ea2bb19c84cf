/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-drive.h"
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

#define NBSP "\302\240"

static const struct read_row {
  const char *name;
  HmDriveKind kind;
  double size_mm;
  int number;
  gboolean inch;
  const char *words, *tool;
} read_rows[] = {
  { "hex 1/2 in", HM_DRIVE_HEX, 12.7, 0, TRUE, "1/2" NBSP "in hex", "1/2" NBSP "in socket" },
  { "hex 10 mm", HM_DRIVE_HEX, 10.0, 0, FALSE, "10" NBSP "mm hex", "10" NBSP "mm socket" },
  { "Hex 5.5 mm", HM_DRIVE_HEX, 5.5, 0, FALSE, "5.5" NBSP "mm hex", "5.5" NBSP "mm socket" },
  { "hex 1 1/8 in", HM_DRIVE_HEX, 28.575, 0, TRUE, "1" NBSP "1/8" NBSP "in hex", "1" NBSP "1/8" NBSP "in socket" },
  { "hex socket 5 mm", HM_DRIVE_HEX_SOCKET, 5.0, 0, FALSE, "5" NBSP "mm hex key", "5" NBSP "mm hex bit" },
  { "hex key 3/16 in", HM_DRIVE_HEX_SOCKET, 4.7625, 0, TRUE, "3/16" NBSP "in hex key", "3/16" NBSP "in hex bit" },
  { "square 3/8 in", HM_DRIVE_SQUARE, 9.525, 0, TRUE, "3/8" NBSP "in square", "3/8" NBSP "in square bit" },
  { "T30", HM_DRIVE_HEXALOBULAR, 0.0, 30, FALSE, "T30", "T30 bit" },
  { "t100", HM_DRIVE_HEXALOBULAR, 0.0, 100, FALSE, "T100", "T100 bit" },
  { "E10", HM_DRIVE_HEXALOBULAR_EXTERNAL, 0.0, 10, FALSE, "E10", "E10 socket" },
  { "H2", HM_DRIVE_CROSS_H, 0.0, 2, FALSE, "H2 cross recess", "H2 bit" },
  { "H0", HM_DRIVE_CROSS_H, 0.0, 0, FALSE, "H0 cross recess", "H0 bit" },
  { "Z4", HM_DRIVE_CROSS_Z, 0.0, 4, FALSE, "Z4 cross recess", "Z4 bit" },
  { "slot", HM_DRIVE_SLOT, 0.0, 0, FALSE, "slot", "flat-blade screwdriver" },
  { " hand ", HM_DRIVE_HAND, 0.0, 0, FALSE, "hand", "no tool" },
};

static const struct refused_row {
  const char *name;
  HmDriveError code;
} refused_rows[] = {
  { "", HM_DRIVE_ERROR_SYNTAX },
  { "hex", HM_DRIVE_ERROR_SYNTAX },
  { "hex 10", HM_DRIVE_ERROR_SYNTAX },
  { "hex 10 V", HM_DRIVE_ERROR_SYNTAX },
  { "hex big", HM_DRIVE_ERROR_SYNTAX },
  { "T", HM_DRIVE_ERROR_SYNTAX },
  { "T-5", HM_DRIVE_ERROR_SYNTAX },
  { "T30x", HM_DRIVE_ERROR_SYNTAX },
  { "wing", HM_DRIVE_ERROR_SYNTAX },
  { "hex \xff", HM_DRIVE_ERROR_SYNTAX },
  { "T0", HM_DRIVE_ERROR_UNKNOWN },
  { "T101", HM_DRIVE_ERROR_UNKNOWN },
  { "E45", HM_DRIVE_ERROR_UNKNOWN },
  { "H5", HM_DRIVE_ERROR_UNKNOWN },
  { "hex 0 mm", HM_DRIVE_ERROR_UNKNOWN },
  { "hex 151 mm", HM_DRIVE_ERROR_UNKNOWN },
};

static const struct pair_row {
  const char *name, *other;
  gboolean equal;
} pair_rows[] = {
  { "hex 10 mm", "HEX 10 mm", TRUE },
  { "hex 1/2 in", "hex 0.5 in", TRUE },
  { "hex 10 mm", "hex 11 mm", FALSE },
  { "hex 10 mm", "hex socket 10 mm", FALSE },
  { "hex 1 in", "hex 25.4 mm", FALSE },
  { "T30", "E30", FALSE },
  { "T30", "T27", FALSE },
};

static void
text_is_read (void **state)
{
  const struct read_row *row = *state;
  g_autoptr (GError) error = NULL;
  HmDrive drive;

  if (!hm_drive_parse (row->name, &drive, &error))
    fail_msg ("%s", error->message);
  assert_int_equal (drive.kind, row->kind);
  assert_true (fabs (drive.size.mm - row->size_mm) < 1e-9);
  assert_int_equal (drive.number, row->number);
  assert_int_equal (drive.inch, row->inch);
}

static void
drive_is_written (void **state)
{
  const struct read_row *row = *state;
  HmDrive drive;
  g_autofree char *words = NULL;
  g_autofree char *tool = NULL;

  assert_true (hm_drive_parse (row->name, &drive, NULL));
  words = hm_drive_format (&drive, &hm_format_default);
  tool = hm_drive_tool (&drive, &hm_format_default);
  assert_string_equal (words, row->words);
  assert_string_equal (tool, row->tool);
}

static void
text_is_refused (void **state)
{
  const struct refused_row *row = *state;
  g_autoptr (GError) error = NULL;
  HmDrive drive = { HM_DRIVE_SLOT, { 3.0 }, 7, TRUE };

  assert_false (hm_drive_parse (row->name, &drive, &error));
  if (!g_error_matches (error, HM_DRIVE_ERROR, (int) row->code))
    fail_msg ("%s", error->message);
  assert_true (drive.kind == HM_DRIVE_SLOT && drive.number == 7 && drive.inch);
}

static void
pair_compares (void **state)
{
  const struct pair_row *row = *state;
  HmDrive a, b;

  assert_true (hm_drive_parse (row->name, &a, NULL));
  assert_true (hm_drive_parse (row->other, &b, NULL));
  assert_int_equal (hm_drive_equal (&a, &b), row->equal);
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  HM_TEST_SUITE_ADD_ROWS (suite, read_rows, text_is_read);
  HM_TEST_SUITE_ADD_ROWS (suite, read_rows, drive_is_written);
  HM_TEST_SUITE_ADD_ROWS (suite, refused_rows, text_is_refused);
  HM_TEST_SUITE_ADD_ROWS (suite, pair_rows, pair_compares);
  return hm_test_suite_run (suite, "drive");
}

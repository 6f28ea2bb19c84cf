/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-lookup.h"
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

/* What somebody means; sizes by 1 in = 25.4 mm. */
static const struct drive_row { const char *name; HmDriveKind kind; double mm; gboolean inch; int number; } drive_rows[] = {
  { "11/32", HM_DRIVE_HEX, 8.73125, TRUE, 0 },
  { "11/32 in", HM_DRIVE_HEX, 8.73125, TRUE, 0 },
  { "11/32\"", HM_DRIVE_HEX, 8.73125, TRUE, 0 },
  { ".344", HM_DRIVE_HEX, 8.73125, TRUE, 0 },
  { "8.73 mm", HM_DRIVE_HEX, 8.73125, TRUE, 0 },
  { "9 mm", HM_DRIVE_HEX, 9.0, FALSE, 0 },
  { "9", HM_DRIVE_HEX, 9.0, FALSE, 0 },
  { "5,5", HM_DRIVE_HEX, 5.5, FALSE, 0 },
  { "12.3 mm", HM_DRIVE_HEX, 12.3, FALSE, 0 },
  { "1/2 in socket", HM_DRIVE_HEX, 12.7, TRUE, 0 },
  { "1/2 in Hex Bolt", HM_DRIVE_HEX, 12.7, TRUE, 0 },
  { "8 mm nut driver", HM_DRIVE_HEX, 8.0, FALSE, 0 },
  { "1-1/8", HM_DRIVE_HEX, 28.575, TRUE, 0 },
  { "1 1/8 in wrench", HM_DRIVE_HEX, 28.575, TRUE, 0 },
  { "1", HM_DRIVE_HEX, 25.4, TRUE, 0 },
  { "5 mm key", HM_DRIVE_HEX_SOCKET, 5.0, FALSE, 0 },
  { "hex socket 5 mm", HM_DRIVE_HEX_SOCKET, 5.0, FALSE, 0 },
  { "5 mm hex key", HM_DRIVE_HEX_SOCKET, 5.0, FALSE, 0 },
  { "3/8 square", HM_DRIVE_SQUARE, 9.525, TRUE, 0 },
  { "T40", HM_DRIVE_HEXALOBULAR, 0.0, FALSE, 40 },
  { "t40 bit", HM_DRIVE_HEXALOBULAR, 0.0, FALSE, 40 },
  { "E10 socket", HM_DRIVE_HEXALOBULAR_EXTERNAL, 0.0, FALSE, 10 },
  { "H2", HM_DRIVE_CROSS_H, 0.0, FALSE, 2 },
  { "slot", HM_DRIVE_SLOT, 0.0, FALSE, 0 },
  { "is a 9 mm on 11/32 ?", HM_DRIVE_HEX, 9.0, FALSE, 0 },
};

static const struct thread_row { const char *name; HmThreadForm form; double major, pitch; gboolean left; } thread_rows[] = {
  { "M8 x 1.25", HM_THREAD_ISO_METRIC, 8.0, 1.25, FALSE },
  { "m14x1,25", HM_THREAD_ISO_METRIC, 14.0, 1.25, FALSE },
  { "M8", HM_THREAD_ISO_METRIC, 8.0, 1.25, FALSE },
  { "M8 bolt", HM_THREAD_ISO_METRIC, 8.0, 1.25, FALSE },
  { "5/16-18", HM_THREAD_UNIFIED, 7.9375, 25.4 / 18.0, FALSE },
  { "5/16-18 UNC nut", HM_THREAD_UNIFIED, 7.9375, 25.4 / 18.0, FALSE },
  { "#10-24", HM_THREAD_UNIFIED, 4.826, 25.4 / 24.0, FALSE },
  { "M10 x 1.25 LH", HM_THREAD_ISO_METRIC, 10.0, 1.25, TRUE },
};

/* Exact definitions: 1 lb = 0.45359237 kg, g = 9.80665 m/s², 1 in = 25.4 mm; the factors are rows U05, U07 of quantity-units.csv. */
static const struct torque_row { const char *name; double low, high; HmUnit unit; } torque_rows[] = {
  { "23 N·m", 23.0, 23.0, HM_UNIT_NEWTON_METRE },
  { "23 nm", 23.0, 23.0, HM_UNIT_NEWTON_METRE },
  { "torque 23 Nm?", 23.0, 23.0, HM_UNIT_NEWTON_METRE },
  { "45 ft-lb", 61.0118077149, 61.0118077149, HM_UNIT_POUND_FOOT },
  { "200 in-lb", 22.5969658203, 22.5969658203, HM_UNIT_POUND_INCH },
  { "4-6 lbf·ft", 5.4232717969, 8.1349076953, HM_UNIT_POUND_FOOT },
  { "1 kgf·m", 9.80665, 9.80665, HM_UNIT_KILOGRAM_METRE },
  { "100 ozf·in", 0.706155181423, 0.706155181423, HM_UNIT_OUNCE_INCH },
};

static const struct refused_row { const char *name, *text; GQuark (*domain) (void); int code; const char *says; } refused_rows[] = {
  { "nothing", "  ", hm_lookup_error_quark, HM_LOOKUP_ERROR_EMPTY, "11/32" },
  { "only words", "socket", hm_lookup_error_quark, HM_LOOKUP_ERROR_SYNTAX, "names no size" },
  { "nonsense", "banana", hm_lookup_error_quark, HM_LOOKUP_ERROR_SYNTAX, "banana" },
  { "negative", "-9 mm", hm_lookup_error_quark, HM_LOOKUP_ERROR_SIZE, "-9 mm" },
  { "huge", "99999999999999999999 mm", hm_lookup_error_quark, HM_LOOKUP_ERROR_SIZE, "9999" },
  { "too wide", "900 mm", hm_lookup_error_quark, HM_LOOKUP_ERROR_SIZE, "150 mm" },
  { "zero", "0 mm", hm_lookup_error_quark, HM_LOOKUP_ERROR_SIZE, "0.7 mm" },
  { "no such T", "T28", hm_lookup_error_quark, HM_LOOKUP_ERROR_SIZE, "T27 and T30" },
  { "no such E", "E9", hm_lookup_error_quark, HM_LOOKUP_ERROR_SIZE, "E8 and E10" },
  { "not UTF-8", "\377\376 mm", hm_lookup_error_quark, HM_LOOKUP_ERROR_ENCODING, "UTF-8" },
  { "wrong unit", "9 V", hm_lookup_error_quark, HM_LOOKUP_ERROR_SYNTAX, "9 V" },
  { "negative torque", "-5 N·m", hm_lookup_error_quark, HM_LOOKUP_ERROR_SIZE, "no torque" },
  { "no torque", "0 ft-lb", hm_lookup_error_quark, HM_LOOKUP_ERROR_SIZE, "no torque" },
  { "beyond any torque", "1000000000000 N·m", hm_lookup_error_quark, HM_LOOKUP_ERROR_SIZE, "no torque" },
  { "torque on a head", "23 N·m on 11/32", hm_lookup_error_quark, HM_LOOKUP_ERROR_SYNTAX, "hexagons" },
  { "M without a number of its own", "M8 x banana", hm_thread_error_quark, HM_THREAD_ERROR_SYNTAX, "M8 x banana" },
  { "no tap cuts it", "M8 x 7", hm_thread_error_quark, HM_THREAD_ERROR_RANGE, "M8 x 7" },
  { "threads per inch missing", "5/16-", hm_lookup_error_quark, HM_LOOKUP_ERROR_SYNTAX, "5/16-" },
  { "pair of unlike things", "9 mm on M8", hm_lookup_error_quark, HM_LOOKUP_ERROR_SYNTAX, "hexagons" },
  { "long", "11/32 11/32 11/32 11/32 11/32 11/32 11/32 11/32 11/32 11/32 11/32 11/32 11/32 11/32 11/32 11/32 11/32 11/32 11/32 11/32 11/32 11/32 11/32",
    hm_lookup_error_quark, HM_LOOKUP_ERROR_SYNTAX, "too long" },
};

static void
drive_is_meant (void **state)
{
  const struct drive_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmLookup got;

  assert_true (hm_lookup_parse (row->name, tables, &got, NULL));
  assert_int_equal (got.kind, HM_LOOKUP_DRIVE);
  assert_int_equal (got.drive.kind, row->kind);
  assert_true (fabs (got.drive.size.mm - row->mm) < 1e-9);
  assert_int_equal (got.drive.inch, row->inch);
  assert_int_equal (got.drive.number, row->number);
}

static void
thread_is_meant (void **state)
{
  const struct thread_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmLookup got;

  assert_true (hm_lookup_parse (row->name, tables, &got, NULL));
  assert_int_equal (got.kind, HM_LOOKUP_THREAD);
  assert_int_equal (got.thread.form, row->form);
  assert_true (fabs (got.thread.major.mm - row->major) < 1e-9);
  assert_true (fabs (got.thread.pitch.mm - row->pitch) < 1e-9);
  assert_int_equal (got.thread.left_hand, row->left);
}

static void
pipe_is_meant (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmLookup got;

  assert_true (hm_lookup_parse ("1/8 NPT", tables, &got, NULL));
  assert_int_equal (got.kind, HM_LOOKUP_PIPE);
  assert_string_equal (got.pipe->name, "1/8-27 NPT");
}

static void
torque_is_meant (void **state)
{
  const struct torque_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmLookup got;

  assert_true (hm_lookup_parse (row->name, tables, &got, NULL));
  assert_int_equal (got.kind, HM_LOOKUP_TORQUE);
  assert_int_equal (got.torque.low.kind, HM_QUANTITY_TORQUE);
  assert_true (fabs (got.torque.low.value / row->low - 1.0) < 1e-9);
  assert_true (fabs (got.torque.high.value / row->high - 1.0) < 1e-9);
  assert_int_equal (got.torque.high.unit, row->unit);
}

static void
pair_is_meant (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmLookup got;

  assert_true (hm_lookup_parse ("9 mm on 11/32", tables, &got, NULL));
  assert_true (got.has_head);
  assert_true (fabs (got.head.size.mm - 8.73125) < 1e-9);
  assert_true (fabs (got.drive.size.mm - 9.0) < 1e-9);
}

static void
text_is_refused (void **state)
{
  const struct refused_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  HmLookup got = { .kind = (HmLookupKind) 77 };
  g_autoptr (GError) error = NULL;

  assert_false (hm_lookup_parse (row->text, tables, &got, &error));
  if (!g_error_matches (error, row->domain (), row->code))
    fail_msg ("code %d: %s", error->code, error->message);
  if (strstr (error->message, row->says) == NULL)
    fail_msg ("“%s” does not say “%s”", error->message, row->says);
  assert_true (g_utf8_validate (error->message, -1, NULL));
  assert_int_equal (got.kind, 77);
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  HM_TEST_SUITE_ADD_ROWS (suite, drive_rows, drive_is_meant);
  HM_TEST_SUITE_ADD_ROWS (suite, thread_rows, thread_is_meant);
  HM_TEST_SUITE_ADD_ROWS (suite, torque_rows, torque_is_meant);
  HM_TEST_SUITE_ADD_ROWS (suite, refused_rows, text_is_refused);
  hm_test_suite_add (suite, "1/8 NPT", pipe_is_meant, NULL);
  hm_test_suite_add (suite, "9 mm on 11/32", pair_is_meant, NULL);
  return hm_test_suite_run (suite, "lookup");
}

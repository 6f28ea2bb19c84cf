/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-tap.h"
#include "hm-test-vectors.h"
#include "units-file.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <stdio.h>
#include <string.h>
#include <cmocka.h>

/*
 * Our units, drill sizes and screw numbers against the data file that the Debian package units installs; it says where each of
 * its figures is from. Skipped where the package is absent.
 */

#define DEFINITIONS "/usr/share/units/definitions.units"
#define MM_PER_INCH 25.4
#define RELATIVE 1e-12

static const struct unit_row { const char *name; HmUnit unit; const char *base; } unit_rows[] = {   /* the name is the expression */
  { "mm", HM_UNIT_MM, "mm" }, { "cm", HM_UNIT_CM, "mm" }, { "m", HM_UNIT_M, "mm" }, { "inch", HM_UNIT_INCH, "mm" },
  { "foot", HM_UNIT_FOOT, "mm" }, { "thou", HM_UNIT_THOU, "mm" }, { "micron", HM_UNIT_MICROMETRE, "mm" },
  { "newton m", HM_UNIT_NEWTON_METRE, "N m" }, { "lbf ft", HM_UNIT_POUND_FOOT, "N m" }, { "lbf inch", HM_UNIT_POUND_INCH, "N m" },
  { "kgf m", HM_UNIT_KILOGRAM_METRE, "N m" }, { "ounce force inch", HM_UNIT_OUNCE_INCH, "N m" },
  { "newton", HM_UNIT_NEWTON, "N" }, { "kN", HM_UNIT_KILONEWTON, "N" }, { "lbf", HM_UNIT_POUND_FORCE, "N" },
  { "MPa", HM_UNIT_MEGAPASCAL, "megapascal" }, { "ksi", HM_UNIT_KSI, "MPa" },
  { "kPa", HM_UNIT_KILOPASCAL, "kilopascal" }, { "psi", HM_UNIT_PSI, "kPa" }, { "bar", HM_UNIT_BAR, "kPa" },
  { "inH2O", HM_UNIT_INCH_WATER, "kPa" }, { "inHg", HM_UNIT_INCH_MERCURY, "kPa" },
  { "V", HM_UNIT_VOLT, "volt" }, { "mV", HM_UNIT_MILLIVOLT, "volt" }, { "A", HM_UNIT_AMPERE, "ampere" },
  { "mA", HM_UNIT_MILLIAMPERE, "ampere" }, { "ohm", HM_UNIT_OHM, "V/A" }, { "milliohm", HM_UNIT_MILLIOHM, "ohm" },
  { "kiloohm", HM_UNIT_KILOOHM, "ohm" }, { "megaohm", HM_UNIT_MEGAOHM, "ohm" }, { "rpm", HM_UNIT_RPM, "turn / minute" },
  { "s", HM_UNIT_SECOND, "min" }, { "minute", HM_UNIT_MINUTE, "min" }, { "hour", HM_UNIT_HOUR, "min" },
  { "Hz", HM_UNIT_HERTZ, "1 / s" }, { "percent", HM_UNIT_PERCENT, "1" }, { "mm^2", HM_UNIT_MM2, "mm^2" },
  { "inch^2", HM_UNIT_IN2, "mm^2" },
};

static const struct degree_row { const char *name; double fahrenheit; } degree_rows[] = {
  { "32 °F", 32.0 }, { "68 °F", 68.0 }, { "212 °F", 212.0 }, { "-40 °F", -40.0 }, { "350 °F", 350.0 },
};

static HmtUnitsFile *
read_units (void)
{
  HmtUnitsFile *units = hmt_units_file_read (DEFINITIONS);

  assert_non_null (units);
  return units;
}

static HmtUnitValue
evaluate (HmtUnitsFile *units, const char *expression)
{
  HmtUnitValue value;

  if (!hmt_units_file_evaluate (units, expression, &value))
    fail_msg ("“%s” cannot be read", expression);
  return value;
}

static void
unit_matches_file (void **state)
{
  const struct unit_row *row = *state;
  g_autoptr (HmtUnitsFile) units = read_units ();
  HmtUnitValue value = evaluate (units, row->name), base = evaluate (units, row->base);
  double want = value.factor / base.factor, got = hm_quantity (hm_unit_kind (row->unit), 1.0, row->unit).value;

  assert_memory_equal (value.powers, base.powers, sizeof value.powers);
  if (fabs (got - want) > RELATIVE * want)
    fail_msg ("%s: %.15g, the file has %.15g", hm_unit_symbol (row->unit), got, want);
}

/* The file: tempF(x) is (x − 32) degF + stdtemp. */
static void
degree_matches_file (void **state)
{
  const struct degree_row *row = *state;
  g_autoptr (HmtUnitsFile) units = read_units ();
  double zero_k = evaluate (units, "stdtemp").factor, degree_k = evaluate (units, "degF").factor;
  double kelvin = (row->fahrenheit - 32.0) * degree_k + zero_k;

  assert_true (fabs (hm_quantity (HM_QUANTITY_TEMPERATURE, row->fahrenheit, HM_UNIT_FAHRENHEIT).value - (kelvin - 273.15)) < 1e-9);
}

static void
every_unit_has_a_row (void **state)
{
  for (HmUnit unit = HM_UNIT_NONE + 1; unit < HM_UNIT_N_UNITS; unit++)
    {
      gboolean found = unit == HM_UNIT_CELSIUS || unit == HM_UNIT_FAHRENHEIT;

      for (gsize i = 0; i < G_N_ELEMENTS (unit_rows); i++)
        found = found || unit_rows[i].unit == unit;
      if (!found)
        fail_msg ("%s has no row", hm_unit_symbol (unit));
    }
}

/* Diameter of a number drill: what lies between two pairs of the file lies on the line between them. */
static double
number_drill_in (HmtUnitsFile *units, int number)
{
  const char *pairs = hmt_units_file_look_up (units, "drillgauge");
  char *at = (char *) pairs;
  double gauge = 0.0, diameter_in = 0.0;

  assert_non_null (pairs);
  while (gauge < number)
    {
      double gauge_before = gauge, before_in = diameter_in;
      const char *start = at;

      gauge = g_ascii_strtod (start, &at);
      if (at == start)
        fail_msg ("the file has no drill No.%d", number);
      diameter_in = g_ascii_strtod (at, &at);
      if (gauge > number)
        return before_in + (diameter_in - before_in) * (number - gauge_before) / (gauge - gauge_before);
    }
  return diameter_in;
}

static double
letter_drill_in (HmtUnitsFile *units, char letter)
{
  g_autofree char *name = g_strdup_printf ("drill%c", letter);

  return evaluate (units, name).factor / evaluate (units, "inch").factor;
}

static void
drills_match_file (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (HmtUnitsFile) units = read_units ();
  gsize n;
  const HmHoleRow *rows = hm_tables_get_holes (tables, &n);
  guint numbers = 0, letters = 0;

  for (gsize i = 0; i < n; i++)
    {
      const char *name = rows[i].tap_drill_name;
      gboolean number = g_str_has_prefix (name, "No."), letter = strlen (name) == 1;
      double want;

      if (!number && !letter)
        continue;
      want = number ? number_drill_in (units, atoi (name + 3)) : letter_drill_in (units, name[0]);
      if (fabs (rows[i].tap_drill.mm / MM_PER_INCH - want) > 1e-6)
        fail_msg ("%s: %s is %.4f in, the file has %.4f", rows[i].thread, name, rows[i].tap_drill.mm / MM_PER_INCH, want);
      numbers += number;
      letters += letter;
    }
  assert_true (numbers >= 20 && letters >= 5);
}

/* All number drills to No.80 and all letter drills, inches. */
static GArray *
list_drills (HmtUnitsFile *units)
{
  GArray *drills = g_array_new (FALSE, FALSE, sizeof (double));

  for (int number = 1; number <= 80; number++)
    {
      double drill_in = number_drill_in (units, number);

      g_array_append_val (drills, drill_in);
    }
  for (char letter = 'A'; letter <= 'Z'; letter++)
    {
      double drill_in = letter_drill_in (units, letter);

      g_array_append_val (drills, drill_in);
    }
  return drills;
}

static gboolean
is_drill (const GArray *drills, double diameter_in)
{
  gboolean found = fabs (diameter_in * 64.0 - round (diameter_in * 64.0)) < 64.0 * 0.000051;

  for (guint i = 0; i < drills->len; i++)
    found = found || fabs (g_array_index (drills, double, i) - diameter_in) < 1e-6;
  return found;
}

/* Each clearance hole of an inch screw is one that a drill makes: a number, a letter or a 64th. */
static void
clearance_holes_are_drills (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (HmtUnitsFile) units = read_units ();
  g_autoptr (GArray) drills = list_drills (units);
  gsize n;
  const HmHoleRow *rows = hm_tables_get_holes (tables, &n);
  guint seen = 0;

  for (gsize i = 0; i < n; i++)
    {
      const double holes[] = { rows[i].close.mm, rows[i].normal.mm, rows[i].loose.mm };

      if (rows[i].thread[0] == 'M')
        continue;
      for (guint k = 0; k < G_N_ELEMENTS (holes); k++)
        if (!is_drill (drills, holes[k] / MM_PER_INCH))
          fail_msg ("%s: no drill makes %.4f in", rows[i].thread, holes[k] / MM_PER_INCH);
      seen++;
    }
  assert_true (seen >= 50);
}

/* Major diameters of the number sizes: screwgauge(g) is (.06 + .013 g) in. */
static void
screw_numbers_match_file (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  g_autoptr (HmtUnitsFile) units = read_units ();
  const char *formula = hmt_units_file_look_up (units, "screwgauge");
  double zero_in, step_in;
  gsize n;
  const HmThreadRow *rows = hm_tables_get_threads (tables, &n);
  guint seen = 0;

  assert_non_null (formula);
  assert_non_null (strchr (formula, '('));
  assert_int_equal (sscanf (strstr (formula, " (") + 2, "%lf + %lf g) in", &zero_in, &step_in), 2);
  for (gsize i = 0; i < n; i++)
    if (g_str_has_prefix (rows[i].name, "No."))
      {
        double want = zero_in + step_in * atoi (rows[i].name + 3);

        if (fabs (rows[i].major.mm / MM_PER_INCH - want) > 1e-9)
          fail_msg ("%s: %.4f in, the file has %.4f", rows[i].name, rows[i].major.mm / MM_PER_INCH, want);
        seen++;
      }
  assert_true (seen >= 18);
}

int
main (void)
{
  HmTestSuite *suite;

  if (!g_file_test (DEFINITIONS, G_FILE_TEST_EXISTS))
    {
      printf ("1..0 # SKIP " DEFINITIONS " is not there; the Debian package units installs it\n");
      return 0;
    }
  suite = hm_test_suite_new ();
  HM_TEST_SUITE_ADD_ROWS (suite, unit_rows, unit_matches_file);
  HM_TEST_SUITE_ADD_ROWS (suite, degree_rows, degree_matches_file);
  hm_test_suite_add (suite, "every unit has a row", every_unit_has_a_row, NULL);
  hm_test_suite_add (suite, "number and letter drills match the file", drills_match_file, NULL);
  hm_test_suite_add (suite, "clearance holes are drills", clearance_holes_are_drills, NULL);
  hm_test_suite_add (suite, "screw numbers match the file", screw_numbers_match_file, NULL);
  return hm_test_suite_run (suite, "units-file");
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-quantity.h"
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <cmocka.h>

#define LENGTH HM_QUANTITY_LENGTH
#define TORQUE HM_QUANTITY_TORQUE
#define PRESSURE HM_QUANTITY_PRESSURE
#define VOLTAGE HM_QUANTITY_VOLTAGE
#define CURRENT HM_QUANTITY_CURRENT
#define RESISTANCE HM_QUANTITY_RESISTANCE
#define SPEED HM_QUANTITY_SPEED
#define TEMPERATURE HM_QUANTITY_TEMPERATURE
#define DURATION HM_QUANTITY_DURATION
#define STRESS HM_QUANTITY_STRESS

/*
 * The values are as typed, in the unit as typed, so no conversion factor is judged here (test-quantity-units.c does);
 * 1/8 in and the like are exact in binary.
 */
static const struct value_row {
  const char *text; HmQuantityKind kind; HmUnit default_unit; double value; HmUnit unit;
} value_rows[] = {
  { "11/32", LENGTH, HM_UNIT_INCH, 0.34375, HM_UNIT_INCH },
  { "11 / 32 in", LENGTH, HM_UNIT_NONE, 0.34375, HM_UNIT_INCH },
  { "1 1/8\"", LENGTH, HM_UNIT_NONE, 1.125, HM_UNIT_INCH },
  { "1-1/8 in", LENGTH, HM_UNIT_NONE, 1.125, HM_UNIT_INCH },
  { "1-1/8", LENGTH, HM_UNIT_INCH, 1.125, HM_UNIT_INCH },
  { "1-¼ in", LENGTH, HM_UNIT_NONE, 1.25, HM_UNIT_INCH },
  { "7/16in", LENGTH, HM_UNIT_NONE, 0.4375, HM_UNIT_INCH },
  { "9/8 in", LENGTH, HM_UNIT_NONE, 1.125, HM_UNIT_INCH },
  { "¼", LENGTH, HM_UNIT_INCH, 0.25, HM_UNIT_INCH },
  { "1½ in", LENGTH, HM_UNIT_MM, 1.5, HM_UNIT_INCH },
  { "1 ½″", LENGTH, HM_UNIT_MM, 1.5, HM_UNIT_INCH },
  { "⅜ in", LENGTH, HM_UNIT_NONE, 0.375, HM_UNIT_INCH },
  { "⅞”", LENGTH, HM_UNIT_NONE, 0.875, HM_UNIT_INCH },
  { "11\u204432 in", LENGTH, HM_UNIT_NONE, 0.34375, HM_UNIT_INCH },
  { "1\u00a01/8\u00a0in", LENGTH, HM_UNIT_NONE, 1.125, HM_UNIT_INCH },
  { "0,3125 in", LENGTH, HM_UNIT_NONE, 0.3125, HM_UNIT_INCH },
  { "0.010\"", LENGTH, HM_UNIT_NONE, 0.010, HM_UNIT_INCH },
  { ".010''", LENGTH, HM_UNIT_NONE, 0.010, HM_UNIT_INCH },
  { "0.25 in.", LENGTH, HM_UNIT_NONE, 0.25, HM_UNIT_INCH },
  { "10 thou", LENGTH, HM_UNIT_NONE, 10, HM_UNIT_THOU },
  { "10 mils", LENGTH, HM_UNIT_NONE, 10, HM_UNIT_THOU },
  { "6 feet", LENGTH, HM_UNIT_NONE, 6, HM_UNIT_FOOT },
  { "6'", LENGTH, HM_UNIT_NONE, 6, HM_UNIT_FOOT },
  { "8mm", LENGTH, HM_UNIT_INCH, 8, HM_UNIT_MM },
  { "8 mm", LENGTH, HM_UNIT_INCH, 8, HM_UNIT_MM },
  { "8 MM", LENGTH, HM_UNIT_INCH, 8, HM_UNIT_MM },
  { "８ｍｍ", LENGTH, HM_UNIT_NONE, 8, HM_UNIT_MM },
  { "  8  ", LENGTH, HM_UNIT_MM, 8, HM_UNIT_MM },
  { "1/2 mm", LENGTH, HM_UNIT_MM, 0.5, HM_UNIT_MM },
  { "2 m", LENGTH, HM_UNIT_NONE, 2, HM_UNIT_M },
  { "25 µm", LENGTH, HM_UNIT_NONE, 25, HM_UNIT_MICROMETRE },
  { "25 \u03bcm", LENGTH, HM_UNIT_NONE, 25, HM_UNIT_MICROMETRE },
  { "0 mm", LENGTH, HM_UNIT_NONE, 0, HM_UNIT_MM },
  { "-0 mm", LENGTH, HM_UNIT_NONE, 0, HM_UNIT_MM },
  { "45 ft-lb", TORQUE, HM_UNIT_NONE, 45, HM_UNIT_POUND_FOOT },
  { "45 lbf·ft", TORQUE, HM_UNIT_NONE, 45, HM_UNIT_POUND_FOOT },
  { "45 ft·lbf", TORQUE, HM_UNIT_NONE, 45, HM_UNIT_POUND_FOOT },
  { "45 ft. lbs.", TORQUE, HM_UNIT_NONE, 45, HM_UNIT_POUND_FOOT },
  { "45ftlb", TORQUE, HM_UNIT_NONE, 45, HM_UNIT_POUND_FOOT },
  { "45 Foot Pounds", TORQUE, HM_UNIT_NONE, 45, HM_UNIT_POUND_FOOT },
  { "45 lb\u22c5ft", TORQUE, HM_UNIT_NONE, 45, HM_UNIT_POUND_FOOT },
  { "45 lbf*ft", TORQUE, HM_UNIT_NONE, 45, HM_UNIT_POUND_FOOT },
  { "45", TORQUE, HM_UNIT_POUND_FOOT, 45, HM_UNIT_POUND_FOOT },
  { "540 in-lb", TORQUE, HM_UNIT_NONE, 540, HM_UNIT_POUND_INCH },
  { "540 lbf\u2011in", TORQUE, HM_UNIT_NONE, 540, HM_UNIT_POUND_INCH },
  { "540 IN-LBS", TORQUE, HM_UNIT_NONE, 540, HM_UNIT_POUND_INCH },
  { "61 N·m", TORQUE, HM_UNIT_NONE, 61, HM_UNIT_NEWTON_METRE },
  { "61 Nm", TORQUE, HM_UNIT_NONE, 61, HM_UNIT_NEWTON_METRE },
  { "61 nm", TORQUE, HM_UNIT_NONE, 61, HM_UNIT_NEWTON_METRE },
  { "61 N m", TORQUE, HM_UNIT_NONE, 61, HM_UNIT_NEWTON_METRE },
  { "6.2 kgf·m", TORQUE, HM_UNIT_NONE, 6.2, HM_UNIT_KILOGRAM_METRE },
  { "6,2 m-kg", TORQUE, HM_UNIT_NONE, 6.2, HM_UNIT_KILOGRAM_METRE },
  { "50 oz-in", TORQUE, HM_UNIT_NONE, 50, HM_UNIT_OUNCE_INCH },
  { "12 lb", HM_QUANTITY_FORCE, HM_UNIT_NONE, 12, HM_UNIT_POUND_FORCE },
  { "53 N", HM_QUANTITY_FORCE, HM_UNIT_NONE, 53, HM_UNIT_NEWTON },
  { "830 MPa", STRESS, HM_UNIT_NONE, 830, HM_UNIT_MEGAPASCAL },
  { "830 N/mm²", STRESS, HM_UNIT_NONE, 830, HM_UNIT_MEGAPASCAL },
  { "120000 psi", STRESS, HM_UNIT_NONE, 120000, HM_UNIT_PSI },
  { "120 ksi", STRESS, HM_UNIT_NONE, 120, HM_UNIT_KSI },
  { "65 psi", PRESSURE, HM_UNIT_NONE, 65, HM_UNIT_PSI },
  { "450 kPa", PRESSURE, HM_UNIT_NONE, 450, HM_UNIT_KILOPASCAL },
  { "450 KPA", PRESSURE, HM_UNIT_NONE, 450, HM_UNIT_KILOPASCAL },
  { "0.45 MPa", PRESSURE, HM_UNIT_NONE, 0.45, HM_UNIT_MEGAPASCAL },
  { "-18 inHg", PRESSURE, HM_UNIT_NONE, -18, HM_UNIT_INCH_MERCURY },
  { "18 \"Hg", PRESSURE, HM_UNIT_NONE, 18, HM_UNIT_INCH_MERCURY },
  { "11 in. H2O", PRESSURE, HM_UNIT_NONE, 11, HM_UNIT_INCH_WATER },
  { "11 inH₂O", PRESSURE, HM_UNIT_NONE, 11, HM_UNIT_INCH_WATER },
  { "12.4 V", VOLTAGE, HM_UNIT_NONE, 12.4, HM_UNIT_VOLT },
  { "12,4", VOLTAGE, HM_UNIT_VOLT, 12.4, HM_UNIT_VOLT },
  { "12.4v", VOLTAGE, HM_UNIT_NONE, 12.4, HM_UNIT_VOLT },
  { "12.4 VDC", VOLTAGE, HM_UNIT_NONE, 12.4, HM_UNIT_VOLT },
  { "−0.4 V", VOLTAGE, HM_UNIT_NONE, -0.4, HM_UNIT_VOLT },
  { "+0.4 V", VOLTAGE, HM_UNIT_NONE, 0.4, HM_UNIT_VOLT },
  { "300 mV", VOLTAGE, HM_UNIT_VOLT, 300, HM_UNIT_MILLIVOLT },
  { "250 mA", CURRENT, HM_UNIT_NONE, 250, HM_UNIT_MILLIAMPERE },
  { "3.2 amps", CURRENT, HM_UNIT_NONE, 3.2, HM_UNIT_AMPERE },
  { "0.3 ohm", RESISTANCE, HM_UNIT_NONE, 0.3, HM_UNIT_OHM },
  { "0.3 \u2126", RESISTANCE, HM_UNIT_NONE, 0.3, HM_UNIT_OHM },
  { "0.3 Ω", RESISTANCE, HM_UNIT_NONE, 0.3, HM_UNIT_OHM },
  { "2.5 kΩ", RESISTANCE, HM_UNIT_NONE, 2.5, HM_UNIT_KILOOHM },
  { "2.5 K ohm", RESISTANCE, HM_UNIT_NONE, 2.5, HM_UNIT_KILOOHM },
  { "1 MΩ", RESISTANCE, HM_UNIT_NONE, 1, HM_UNIT_MEGAOHM },
  { "1 Megohm", RESISTANCE, HM_UNIT_NONE, 1, HM_UNIT_MEGAOHM },
  { "1 Mohm", RESISTANCE, HM_UNIT_NONE, 1, HM_UNIT_MEGAOHM },
  { "5 mΩ", RESISTANCE, HM_UNIT_NONE, 5, HM_UNIT_MILLIOHM },
  { "5 mohm", RESISTANCE, HM_UNIT_NONE, 5, HM_UNIT_MILLIOHM },
  { "3600 rpm", SPEED, HM_UNIT_NONE, 3600, HM_UNIT_RPM },
  { "3600 r/min", SPEED, HM_UNIT_NONE, 3600, HM_UNIT_RPM },
  { "1,200", SPEED, HM_UNIT_RPM, 1.2, HM_UNIT_RPM },
  { "1.200", SPEED, HM_UNIT_RPM, 1.2, HM_UNIT_RPM },
  { "68 °F", TEMPERATURE, HM_UNIT_NONE, 68, HM_UNIT_FAHRENHEIT },
  { "68ºF", TEMPERATURE, HM_UNIT_NONE, 68, HM_UNIT_FAHRENHEIT },
  { "68 deg F", TEMPERATURE, HM_UNIT_NONE, 68, HM_UNIT_FAHRENHEIT },
  { "-5 C", TEMPERATURE, HM_UNIT_NONE, -5, HM_UNIT_CELSIUS },
  { "−5 °C", TEMPERATURE, HM_UNIT_NONE, -5, HM_UNIT_CELSIUS },
  { "–5 ℃", TEMPERATURE, HM_UNIT_NONE, -5, HM_UNIT_CELSIUS },
  { "-273.15 C", TEMPERATURE, HM_UNIT_NONE, -273.15, HM_UNIT_CELSIUS },
  { "-459.67 F", TEMPERATURE, HM_UNIT_NONE, -459.67, HM_UNIT_FAHRENHEIT },
  { "4 h", DURATION, HM_UNIT_NONE, 4, HM_UNIT_HOUR },
  { "90 s", DURATION, HM_UNIT_NONE, 90, HM_UNIT_SECOND },
  { "3 min", DURATION, HM_UNIT_NONE, 3, HM_UNIT_MINUTE },
  { "1 1/2 hours", DURATION, HM_UNIT_NONE, 1.5, HM_UNIT_HOUR },
  { "62 Hz", HM_QUANTITY_FREQUENCY, HM_UNIT_NONE, 62, HM_UNIT_HERTZ },
  { "8 %", HM_QUANTITY_RATIO, HM_UNIT_NONE, 8, HM_UNIT_PERCENT },
  { "8", HM_QUANTITY_RATIO, HM_UNIT_PERCENT, 8, HM_UNIT_PERCENT },
  { "36.6 mm²", HM_QUANTITY_AREA, HM_UNIT_NONE, 36.6, HM_UNIT_MM2 },
  { "36.6 mm2", HM_QUANTITY_AREA, HM_UNIT_NONE, 36.6, HM_UNIT_MM2 },
  { "0.0318 sq. in", HM_QUANTITY_AREA, HM_UNIT_NONE, 0.0318, HM_UNIT_IN2 },
  { "12", HM_QUANTITY_NUMBER, HM_UNIT_NONE, 12, HM_UNIT_NONE },
  { "-12,5", HM_QUANTITY_NUMBER, HM_UNIT_NONE, -12.5, HM_UNIT_NONE },
};

#define SINGLE HM_UNIT_N_UNITS      /* the high end is the low end */

/* kind HM_QUANTITY_N_KINDS: by hm_quantity_parse_any() */
static const struct range_row {
  const char *text; HmQuantityKind kind; HmUnit default_unit; HmQuantityKind want;
  double low; HmUnit low_unit; double high; HmUnit high_unit;
} range_rows[] = {
  { "4-6 lbf·ft", TORQUE, HM_UNIT_NONE, TORQUE, 4, HM_UNIT_POUND_FOOT, 6, HM_UNIT_POUND_FOOT },
  { "4-6", TORQUE, HM_UNIT_POUND_FOOT, TORQUE, 4, HM_UNIT_POUND_FOOT, 6, HM_UNIT_POUND_FOOT },
  { "4 - 6 in-lb", TORQUE, HM_UNIT_NONE, TORQUE, 4, HM_UNIT_POUND_INCH, 6, HM_UNIT_POUND_INCH },
  { "4 in-lb-6 in-lb", TORQUE, HM_UNIT_NONE, TORQUE, 4, HM_UNIT_POUND_INCH, 6, HM_UNIT_POUND_INCH },
  { "5 in-7 in", LENGTH, HM_UNIT_NONE, LENGTH, 5, HM_UNIT_INCH, 7, HM_UNIT_INCH },
  { "5 in..7 in", LENGTH, HM_UNIT_NONE, LENGTH, 5, HM_UNIT_INCH, 7, HM_UNIT_INCH },
  { "12.4–12.6 V", VOLTAGE, HM_UNIT_NONE, VOLTAGE, 12.4, HM_UNIT_VOLT, 12.6, HM_UNIT_VOLT },
  { "12.4V-12.6V", VOLTAGE, HM_UNIT_NONE, VOLTAGE, 12.4, HM_UNIT_VOLT, 12.6, HM_UNIT_VOLT },
  { "0.3 to 0.5 V", VOLTAGE, HM_UNIT_NONE, VOLTAGE, 0.3, HM_UNIT_VOLT, 0.5, HM_UNIT_VOLT },
  { "300 mV to 0.5 V", VOLTAGE, HM_UNIT_NONE, VOLTAGE, 300, HM_UNIT_MILLIVOLT, 0.5, HM_UNIT_VOLT },
  { "0.3..0.5 V", VOLTAGE, HM_UNIT_NONE, VOLTAGE, 0.3, HM_UNIT_VOLT, 0.5, HM_UNIT_VOLT },
  { "0.3…0.5 V", VOLTAGE, HM_UNIT_NONE, VOLTAGE, 0.3, HM_UNIT_VOLT, 0.5, HM_UNIT_VOLT },
  { "-10--5 °C", TEMPERATURE, HM_UNIT_NONE, TEMPERATURE, -10, HM_UNIT_CELSIUS, -5, HM_UNIT_CELSIUS },
  { "−10 – −5 °C", TEMPERATURE, HM_UNIT_NONE, TEMPERATURE, -10, HM_UNIT_CELSIUS, -5, HM_UNIT_CELSIUS },
  { "-10 to 5 °C", TEMPERATURE, HM_UNIT_NONE, TEMPERATURE, -10, HM_UNIT_CELSIUS, 5, HM_UNIT_CELSIUS },
  { "1/4-3/8 in", LENGTH, HM_UNIT_NONE, LENGTH, 0.25, HM_UNIT_INCH, 0.375, HM_UNIT_INCH },
  { "1-1/8-1-1/4 in", LENGTH, HM_UNIT_NONE, LENGTH, 1.125, HM_UNIT_INCH, 1.25, HM_UNIT_INCH },
  { "0-1/8 in", LENGTH, HM_UNIT_NONE, LENGTH, 0, HM_UNIT_INCH, 0.125, HM_UNIT_INCH },
  { "1/2 in - 13 mm", LENGTH, HM_UNIT_NONE, LENGTH, 0.5, HM_UNIT_INCH, 13, HM_UNIT_MM },
  { "1-1/8 in", LENGTH, HM_UNIT_NONE, LENGTH, 1.125, HM_UNIT_INCH, 1.125, SINGLE },
  { "12.4 V", HM_QUANTITY_N_KINDS, HM_UNIT_NONE, VOLTAGE, 12.4, HM_UNIT_VOLT, 12.4, SINGLE },
  { "5-7 N·m", HM_QUANTITY_N_KINDS, HM_UNIT_NONE, TORQUE, 5, HM_UNIT_NEWTON_METRE, 7, HM_UNIT_NEWTON_METRE },
  { "4-6", HM_QUANTITY_N_KINDS, HM_UNIT_NONE, HM_QUANTITY_NUMBER, 4, HM_UNIT_NONE, 6, HM_UNIT_NONE },
  { "3 min", HM_QUANTITY_N_KINDS, HM_UNIT_NONE, DURATION, 3, HM_UNIT_MINUTE, 3, SINGLE },
  { "5 m", HM_QUANTITY_N_KINDS, HM_UNIT_NONE, LENGTH, 5, HM_UNIT_M, 5, SINGLE },
  { "12 lb", HM_QUANTITY_N_KINDS, HM_UNIT_NONE, HM_QUANTITY_FORCE, 12, HM_UNIT_POUND_FORCE, 12, SINGLE },
  { "65 psi", HM_QUANTITY_N_KINDS, HM_UNIT_NONE, PRESSURE, 65, HM_UNIT_PSI, 65, SINGLE },
  { "6 MPa", HM_QUANTITY_N_KINDS, HM_UNIT_NONE, STRESS, 6, HM_UNIT_MEGAPASCAL, 6, SINGLE },
};

static void
check_end (const char *text, HmQuantity got, HmQuantityKind kind, double value, HmUnit unit)
{
  if (got.kind != kind || got.unit != unit)
    fail_msg ("%s: got kind %d unit “%s”, want kind %d unit “%s”", text, got.kind, hm_unit_symbol (got.unit), kind,
              hm_unit_symbol (unit));
  if (fabs (hm_quantity_in (got, unit) - value) > 1e-12 * fmax (1, fabs (value)))   /* rounding of doubles alone */
    fail_msg ("%s: got %.17g, want %.17g %s", text, hm_quantity_in (got, unit), value, hm_unit_symbol (unit));
}

static void
value_is_read (void **state)
{
  const struct value_row *row = *state;
  g_autoptr(GError) error = NULL;
  HmQuantity got;
  if (!hm_quantity_parse (row->text, row->kind, row->default_unit, &got, &error))
    fail_msg ("%s: %s", row->text, error->message);
  assert_null (error);
  check_end (row->text, got, row->kind, row->value, row->unit);
}

static void
range_is_read (void **state)
{
  const struct range_row *row = *state;
  g_autoptr(GError) error = NULL;
  HmQuantityRange got;
  gboolean is_read = row->kind == HM_QUANTITY_N_KINDS
                     ? hm_quantity_parse_any (row->text, &got, &error)
                     : hm_quantity_parse_range (row->text, row->kind, row->default_unit, &got, &error);
  if (!is_read)
    fail_msg ("%s: %s", row->text, error->message);
  assert_null (error);
  check_end (row->text, got.low, row->want, row->low, row->low_unit);
  check_end (row->text, got.high, row->want, row->high, row->high_unit == SINGLE ? row->low_unit : row->high_unit);
}

int
main (void)
{
  struct CMUnitTest tests[G_N_ELEMENTS (value_rows) + G_N_ELEMENTS (range_rows)];
  gsize n = 0;
  for (gsize i = 0; i < G_N_ELEMENTS (value_rows); i++)
    tests[n++] = (struct CMUnitTest) { value_rows[i].text, value_is_read, .initial_state = (void *) &value_rows[i] };
  for (gsize i = 0; i < G_N_ELEMENTS (range_rows); i++)
    tests[n++] = (struct CMUnitTest) { range_rows[i].text, range_is_read, .initial_state = (void *) &range_rows[i] };
  return cmocka_run_group_tests_name ("quantity", tests, NULL, NULL);
}

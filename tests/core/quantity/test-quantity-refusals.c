/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-quantity.h"
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <string.h>
#include <cmocka.h>

#define LENGTH HM_QUANTITY_LENGTH
#define TORQUE HM_QUANTITY_TORQUE
#define VOLTAGE HM_QUANTITY_VOLTAGE
#define RESISTANCE HM_QUANTITY_RESISTANCE
#define TEMPERATURE HM_QUANTITY_TEMPERATURE
#define ANY HM_QUANTITY_N_KINDS

#define EMPTY HM_QUANTITY_ERROR_EMPTY
#define SYNTAX HM_QUANTITY_ERROR_SYNTAX
#define UNIT HM_QUANTITY_ERROR_UNIT
#define RANGE HM_QUANTITY_ERROR_RANGE
#define ENCODING HM_QUANTITY_ERROR_ENCODING

#define TEN "1234567890"

typedef enum { AS_VALUE, AS_RANGE } Form;

/* @says: a part of the sentence, what was read or what is accepted */
static const struct refusal_row {
  const char *name, *text; Form form; HmQuantityKind kind; HmUnit default_unit; HmQuantityError code; const char *says;
} refusal_rows[] = {
  { "nothing", "", AS_VALUE, LENGTH, HM_UNIT_MM, EMPTY, "8 mm" },
  { "blanks", " \t\u00a0\u200b ", AS_VALUE, TORQUE, HM_UNIT_NONE, EMPTY, "45 lbf·ft" },
  { "nothing, any kind", "", AS_RANGE, ANY, HM_UNIT_NONE, EMPTY, "a value is accepted as 12.4 V" },

  { "no number", "about ten", AS_VALUE, LENGTH, HM_UNIT_MM, SYNTAX, "“about ten” does not read as a length" },
  { "a unit alone", "V", AS_VALUE, VOLTAGE, HM_UNIT_NONE, SYNTAX, "12.4 V" },
  { "a sign alone", "-", AS_VALUE, VOLTAGE, HM_UNIT_VOLT, SYNTAX, "“-”" },
  { "two signs", "+-5", AS_VALUE, VOLTAGE, HM_UNIT_VOLT, SYNTAX, "“+-5”" },
  { "open circuit shown by a meter", "OL", AS_VALUE, RESISTANCE, HM_UNIT_OHM, SYNTAX, "“OL”" },
  { "not a number", "nan", AS_VALUE, HM_QUANTITY_NUMBER, HM_UNIT_NONE, SYNTAX, "“nan”" },
  { "infinity", "inf V", AS_VALUE, VOLTAGE, HM_UNIT_NONE, SYNTAX, "“inf V”" },
  { "comma and point", "1,200.5 rpm", AS_VALUE, HM_QUANTITY_SPEED, HM_UNIT_NONE, SYNTAX, "1200.5" },
  { "point and comma", "1.200,5", AS_VALUE, HM_QUANTITY_SPEED, HM_UNIT_RPM, SYNTAX, "more than one comma or point" },
  { "two commas", "1,200,000 Ω", AS_VALUE, RESISTANCE, HM_UNIT_NONE, SYNTAX, "more than one comma or point" },
  { "space in thousands", "1 200 rpm", AS_VALUE, HM_QUANTITY_SPEED, HM_UNIT_NONE, SYNTAX, "3600 rpm" },
  { "narrow space in thousands", "1\u202f200 rpm", AS_VALUE, HM_QUANTITY_SPEED, HM_UNIT_NONE, SYNTAX, "3600 rpm" },
  { "point at the end", "12. V", AS_VALUE, VOLTAGE, HM_UNIT_NONE, SYNTAX, "“12. V”" },
  { "zero below the line", "1/0 in", AS_VALUE, LENGTH, HM_UNIT_NONE, SYNTAX, "divides by 0" },
  { "zero below the line, mixed", "1 1/0 in", AS_VALUE, LENGTH, HM_UNIT_NONE, SYNTAX, "divides by 0" },
  { "mixed with a fraction above 1", "1 9/8 in", AS_VALUE, LENGTH, HM_UNIT_NONE, SYNTAX, "1 1/8 or 1-1/8" },
  { "mixed with a fraction of 1", "1-8/8 in", AS_VALUE, LENGTH, HM_UNIT_NONE, SYNTAX, "1 1/8 or 1-1/8" },
  { "two fractions", "1/2 1/4 in", AS_VALUE, LENGTH, HM_UNIT_NONE, SYNTAX, "“1/2 1/4 in”" },
  { "fraction with a decimal", "1/2.5 in", AS_VALUE, LENGTH, HM_UNIT_NONE, SYNTAX, "“1/2.5 in”" },
  { "three stories", "1/2/4 in", AS_VALUE, LENGTH, HM_UNIT_NONE, SYNTAX, "“1/2/4 in”" },
  { "digit behind a fraction sign", "¼5 in", AS_VALUE, LENGTH, HM_UNIT_NONE, SYNTAX, "“¼5 in”" },
  { "decimal before a fraction", "1.5 1/8 in", AS_VALUE, LENGTH, HM_UNIT_NONE, SYNTAX, "“1.5 1/8 in”" },
  { "feet and inches", "6 ft 2 in", AS_VALUE, LENGTH, HM_UNIT_NONE, SYNTAX, "“6 ft 2 in”" },
  { "tolerance", "8 ±0.1 mm", AS_VALUE, LENGTH, HM_UNIT_NONE, SYNTAX, "8 mm" },
  { "a range for a value", "12.4-12.6 V", AS_VALUE, VOLTAGE, HM_UNIT_NONE, SYNTAX, "one value is accepted" },
  { "hyphen between whole numbers", "4-6", AS_VALUE, LENGTH, HM_UNIT_INCH, SYNTAX, "is a range" },
  { "range without an end", "4- V", AS_RANGE, VOLTAGE, HM_UNIT_NONE, SYNTAX, "“4- V”" },
  { "range of three", "4-5-6 V", AS_RANGE, VOLTAGE, HM_UNIT_NONE, SYNTAX, "“4-5-6 V”" },
  { "too long", TEN TEN TEN TEN TEN TEN TEN TEN TEN TEN TEN TEN "123456789", AS_VALUE, LENGTH, HM_UNIT_MM, SYNTAX,
    "“" TEN TEN TEN "12…”" },
  { "longest that is read", TEN TEN TEN TEN TEN TEN TEN TEN TEN TEN TEN TEN "12345678", AS_VALUE, LENGTH, HM_UNIT_MM, RANGE,
    "out of range" },

  { "unknown unit", "12 furlong", AS_VALUE, LENGTH, HM_UNIT_MM, UNIT, "in mm, cm, m, in, ft, thou, µm" },
  { "unknown unit, any kind", "12 furlong", AS_RANGE, ANY, HM_UNIT_NONE, UNIT, "“12 furlong” has a unit that is not known" },
  { "letters behind a unit", "12 inx", AS_VALUE, LENGTH, HM_UNIT_MM, UNIT, "“12 inx”" },
  { "exponent", "1e5 V", AS_VALUE, VOLTAGE, HM_UNIT_NONE, UNIT, "“1e5 V”" },
  { "degrees of nothing", "68°", AS_VALUE, TEMPERATURE, HM_UNIT_NONE, UNIT, "°C, °F" },
  { "mega for milli", "250 MA", AS_VALUE, HM_QUANTITY_CURRENT, HM_UNIT_NONE, UNIT, "A, mA" },
  { "megavolt", "300 MV", AS_VALUE, VOLTAGE, HM_UNIT_NONE, UNIT, "V, mV" },
  { "capital metre", "5 M", AS_VALUE, LENGTH, HM_UNIT_NONE, UNIT, "“5 M”" },
  { "another kind", "12 V", AS_VALUE, TORQUE, HM_UNIT_NONE, UNIT, "“12 V” gives a voltage; a torque is accepted in N·m, lbf·ft" },
  { "pounds for a torque", "45 lb", AS_VALUE, TORQUE, HM_UNIT_NONE, UNIT, "gives a force" },
  { "two kinds", "5 V - 6 A", AS_RANGE, ANY, HM_UNIT_NONE, UNIT, "gives a voltage; a current" },
  { "a unit on a number", "12 V", AS_VALUE, HM_QUANTITY_NUMBER, HM_UNIT_NONE, UNIT, "a number is accepted without a unit" },
  { "no unit", "45", AS_VALUE, TORQUE, HM_UNIT_NONE, UNIT, "“45” has no unit" },
  { "no unit above", "4 in-lb - 6", AS_RANGE, TORQUE, HM_UNIT_POUND_FOOT, UNIT, "after the upper value" },
  { "fraction in a millimetre field", "11/32", AS_VALUE, LENGTH, HM_UNIT_MM, UNIT, "11/32 in" },

  { "negative length", "-3 mm", AS_VALUE, LENGTH, HM_UNIT_NONE, RANGE, "“-3 mm” is out of range; a length is accepted from 0 to" },
  { "negative torque", "-1 N·m", AS_VALUE, TORQUE, HM_UNIT_NONE, RANGE, "from 0 to" },
  { "negative force", "-1 N", AS_VALUE, HM_QUANTITY_FORCE, HM_UNIT_NONE, RANGE, "from 0 to" },
  { "negative stress", "-1 MPa", AS_VALUE, HM_QUANTITY_STRESS, HM_UNIT_NONE, RANGE, "from 0 to" },
  { "negative resistance", "-0.1 Ω", AS_VALUE, RESISTANCE, HM_UNIT_NONE, RANGE, "from 0 to" },
  { "negative speed", "-1 rpm", AS_VALUE, HM_QUANTITY_SPEED, HM_UNIT_NONE, RANGE, "from 0 to" },
  { "negative time", "-1 s", AS_VALUE, HM_QUANTITY_DURATION, HM_UNIT_NONE, RANGE, "from 0 to" },
  { "negative frequency", "-1 Hz", AS_VALUE, HM_QUANTITY_FREQUENCY, HM_UNIT_NONE, RANGE, "from 0 to" },
  { "negative area", "-1 mm²", AS_VALUE, HM_QUANTITY_AREA, HM_UNIT_NONE, RANGE, "from 0 to" },
  { "colder than cold", "-273.16 °C", AS_VALUE, TEMPERATURE, HM_UNIT_NONE, RANGE, "from −273.15 to" },
  { "colder than cold, Fahrenheit", "-459.68 °F", AS_VALUE, TEMPERATURE, HM_UNIT_NONE, RANGE, "−273.15" },
  { "emptier than empty", "-16 psi", AS_VALUE, HM_QUANTITY_PRESSURE, HM_UNIT_NONE, RANGE, "−110" },
  { "absurd length", "2000000 mm", AS_VALUE, LENGTH, HM_UNIT_NONE, RANGE, "1000000 mm" },
  { "absurd torque", "100001 N·m", AS_VALUE, TORQUE, HM_UNIT_NONE, RANGE, "100000 N·m" },
  { "absurd voltage", "-100001 V", AS_VALUE, VOLTAGE, HM_UNIT_NONE, RANGE, "from −100000 to 100000 V" },
  { "absurd percentage", "10001 %", AS_VALUE, HM_QUANTITY_RATIO, HM_UNIT_NONE, RANGE, "10000 %" },
  { "absurd number", "1000000001", AS_VALUE, HM_QUANTITY_NUMBER, HM_UNIT_NONE, RANGE, "1000000000" },
  { "high end first", "6-4 V", AS_RANGE, VOLTAGE, HM_UNIT_NONE, RANGE, "from the lower to the higher" },
  { "high end first, by unit", "1 in - 8 mm", AS_RANGE, LENGTH, HM_UNIT_NONE, RANGE, "from the lower to the higher" },
  { "dash is no mixed number", "1–1/8 in", AS_RANGE, LENGTH, HM_UNIT_NONE, RANGE, "“1–1/8 in” has the higher value first" },

  { "Latin-1 degree", "68 \260F", AS_VALUE, TEMPERATURE, HM_UNIT_NONE, ENCODING, "“68 \357\277\275F”" },
  { "cut in a character", "68 \302", AS_VALUE, TEMPERATURE, HM_UNIT_CELSIUS, ENCODING, "not UTF-8" },
  { "overlong slash", "1\300\2572", AS_VALUE, LENGTH, HM_UNIT_INCH, ENCODING, "not UTF-8" },
};

static gboolean
read_row (const struct refusal_row *row, HmQuantityRange *out, GError **error)
{
  if (row->kind == ANY)
    return hm_quantity_parse_any (row->text, out, error);
  if (row->form == AS_RANGE)
    return hm_quantity_parse_range (row->text, row->kind, row->default_unit, out, error);
  return hm_quantity_parse (row->text, row->kind, row->default_unit, &out->low, error);
}

static void
text_is_refused (void **state)
{
  const struct refusal_row *row = *state;
  g_autoptr(GError) error = NULL;
  HmQuantityRange got, before;
  memset (&got, 0x5a, sizeof got);
  memset (&before, 0x5a, sizeof before);
  if (read_row (row, &got, &error))
    fail_msg ("“%s” was read as %.17g", row->text, got.low.value);
  assert_memory_equal (&got, &before, sizeof got);
  assert_non_null (error);
  assert_true (error->domain == HM_QUANTITY_ERROR);
  assert_true (g_utf8_validate (error->message, -1, NULL));
  if (error->code != (int) row->code)
    fail_msg ("“%s”: code %d, want %d (%s)", row->text, error->code, (int) row->code, error->message);
  if (strstr (error->message, row->says) == NULL)
    fail_msg ("“%s” is not in “%s”", row->says, error->message);
}

/* Control and direction marks in what was typed do not reach the sentence */
static void
message_is_one_plain_line (void **state)
{
  g_autoptr(GError) error = NULL;
  HmQuantity got;
  assert_false (hm_quantity_parse ("1\n2\t3\u202e4\x1b[31m", LENGTH, HM_UNIT_MM, &got, &error));
  for (const char *at = error->message; *at != '\0'; at = g_utf8_next_char (at))
    assert_true (g_unichar_isprint (g_utf8_get_char (at)));
}

static void
error_may_be_null (void **state)
{
  HmQuantity got;
  for (gsize i = 0; i < G_N_ELEMENTS (refusal_rows); i++)
    if (refusal_rows[i].form == AS_VALUE)
      assert_false (hm_quantity_parse (refusal_rows[i].text, refusal_rows[i].kind, refusal_rows[i].default_unit, &got, NULL));
}

int
main (void)
{
  struct CMUnitTest tests[G_N_ELEMENTS (refusal_rows) + 2];
  gsize n = 0;
  for (; n < G_N_ELEMENTS (refusal_rows); n++)
    tests[n] = (struct CMUnitTest) { refusal_rows[n].name, text_is_refused, .initial_state = (void *) &refusal_rows[n] };
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (message_is_one_plain_line);
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (error_may_be_null);
  return cmocka_run_group_tests_name ("quantity refusals", tests, NULL, NULL);
}

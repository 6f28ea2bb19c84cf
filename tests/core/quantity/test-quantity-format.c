/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-quantity.h"
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <cmocka.h>

static const HmFormat comma_metric = { ",", HM_UNIT_SYSTEM_METRIC_FIRST };

/* In @want a '_' stands for the no-break space */
static const struct format_row {
  const char *typed; HmUnit unit; int decimals; const HmFormat *format; const char *want;
} format_rows[] = {
  { "11/32 in", HM_UNIT_NONE, -1, &hm_format_default, "11/32_in" },
  { "1.125 in", HM_UNIT_NONE, -1, &hm_format_default, "1_1/8_in" },
  { "1 63/64 in", HM_UNIT_NONE, -1, &hm_format_default, "1_63/64_in" },
  { "2 in", HM_UNIT_NONE, -1, &hm_format_default, "2_in" },
  { "0 in", HM_UNIT_NONE, -1, &hm_format_default, "0_in" },
  { "0.030 in", HM_UNIT_NONE, -1, &hm_format_default, "0.030_in" },
  { "1 1/8 in", HM_UNIT_NONE, 3, &hm_format_default, "1.125_in" },
  { "8 mm", HM_UNIT_INCH, -1, &hm_format_default, "0.315_in" },
  { "12.7 mm", HM_UNIT_INCH, -1, &hm_format_default, "1/2_in" },
  { "11/32 in", HM_UNIT_MM, -1, &hm_format_default, "8.73_mm" },
  { "3/8 in", HM_UNIT_MM, -1, &hm_format_default, "9.53_mm" },
  { "11/32 in", HM_UNIT_MM, -1, &comma_metric, "8,73_mm" },
  { "10 thou", HM_UNIT_NONE, -1, &hm_format_default, "10_thou" },
  { "10 thou", HM_UNIT_INCH, -1, &hm_format_default, "0.010_in" },
  { "12.4 V", HM_UNIT_NONE, -1, &hm_format_default, "12.40_V" },
  { "12.40 V", HM_UNIT_NONE, HM_DECIMALS_SHORTEST, &hm_format_default, "12.4_V" },
  { "150 A", HM_UNIT_NONE, HM_DECIMALS_SHORTEST, &hm_format_default, "150_A" },
  { "0,25 V", HM_UNIT_NONE, HM_DECIMALS_SHORTEST, &comma_metric, "0,25_V" },
  { "12.4 V", HM_UNIT_NONE, 0, &hm_format_default, "12_V" },
  { "12.4 V", HM_UNIT_MILLIVOLT, -1, &hm_format_default, "12400_mV" },
  { "-0.4 V", HM_UNIT_NONE, -1, &comma_metric, "−0,40_V" },
  { "-0.001 V", HM_UNIT_NONE, -1, &hm_format_default, "0.00_V" },
  { "540 in-lb", HM_UNIT_NONE, -1, &hm_format_default, "540_lbf·in" },
  { "45 ft-lb", HM_UNIT_NEWTON_METRE, -1, &hm_format_default, "61.0_N·m" },
  { "4.4 ft-lb", HM_UNIT_NONE, -1, &hm_format_default, "4.4_lbf·ft" },
  { "0.45 N·m", HM_UNIT_NONE, -1, &hm_format_default, "0.45_N·m" },
  { "0.05 N·m", HM_UNIT_NONE, -1, &hm_format_default, "0.05_N·m" },
  { "1.02 kPa", HM_UNIT_NONE, -1, &hm_format_default, "1_kPa" },
  { "20 µm", HM_UNIT_THOU, -1, &hm_format_default, "0.79_thou" },
  { "3600 rpm", HM_UNIT_NONE, -1, &hm_format_default, "3600_rpm" },
  { "68 °F", HM_UNIT_CELSIUS, -1, &hm_format_default, "20_°C" },
  { "-5 C", HM_UNIT_NONE, -1, &hm_format_default, "−5_°C" },
  { "8 %", HM_UNIT_NONE, -1, &hm_format_default, "8_%" },
  { "65 psi", HM_UNIT_NONE, -1, &hm_format_default, "65_psi" },
  { "50000 psi", HM_UNIT_KSI, -1, &hm_format_default, "50.0_ksi" },
  { "0.3 ohm", HM_UNIT_NONE, -1, &hm_format_default, "0.3_Ω" },
  { "90 s", HM_UNIT_MINUTE, -1, &hm_format_default, "1.5_min" },
  { "4 h", HM_UNIT_NONE, -1, &hm_format_default, "4.0_h" },
  { "12", HM_UNIT_NONE, -1, &hm_format_default, "12" },
  { "12.50", HM_UNIT_NONE, -1, &comma_metric, "12,5" },
  { "0", HM_UNIT_NONE, -1, &hm_format_default, "0" },
  { "123456789", HM_UNIT_NONE, -1, &hm_format_default, "123456789" },
  { "0.000123", HM_UNIT_NONE, -1, &hm_format_default, "0.000123" },
  { "0.1234567", HM_UNIT_NONE, -1, &hm_format_default, "0.123457" },
  { "4-6 lbf·ft", HM_UNIT_NONE, -1, &hm_format_default, "4–6_lbf·ft" },
  { "4-6 lbf·ft", HM_UNIT_NEWTON_METRE, -1, &hm_format_default, "5.4–8.1_N·m" },
  { "12.4-12.6 V", HM_UNIT_NONE, 1, &comma_metric, "12,4–12,6_V" },
  { "12.41-12.42 V", HM_UNIT_NONE, 1, &hm_format_default, "12.4_V" },
  { "1/4-3/8 in", HM_UNIT_NONE, -1, &hm_format_default, "1/4–3/8_in" },
  { "0.25-0.3 in", HM_UNIT_NONE, -1, &hm_format_default, "0.250–0.300_in" },
  { "1/2 in - 13 mm", HM_UNIT_NONE, -1, &hm_format_default, "0.500–0.512_in" },
  { "-10 to -5 °C", HM_UNIT_NONE, -1, &hm_format_default, "−10 – −5_°C" },
  { "2.5-4 s", HM_UNIT_NONE, -1, &hm_format_default, "2.5–4.0_s" },
};

static const struct both_row { const char *typed; const HmFormat *format; const char *want; } both_rows[] = {
  { "4-6 lbf·ft", &hm_format_default, "4–6_lbf·ft (5.4–8.1_N·m)" },
  { "4-6 lbf·ft", &comma_metric, "5,4–8,1_N·m (4–6_lbf·ft)" },
  { "5-7 N·m", &hm_format_default, "44–62_lbf·in (5.0–7.0_N·m)" },
  { "5-7 N·m", &comma_metric, "5,0–7,0_N·m (44–62_lbf·in)" },
  { "61 N·m", &hm_format_default, "45_lbf·ft (61.0_N·m)" },
  { "11/32 in", &hm_format_default, "11/32_in (8.73_mm)" },
  { "8 mm", &comma_metric, "8,00_mm (0,315_in)" },
  { "68 °F", &comma_metric, "20_°C (68_°F)" },
  { "65 psi", &hm_format_default, "65_psi (448_kPa)" },
  { "12.4-12.6 V", &hm_format_default, "12.40–12.60_V" },
  { "0.3 ohm", &comma_metric, "0,3_Ω" },
  { "8 %", &hm_format_default, "8_%" },
  { "12", &hm_format_default, "12" },
};

static HmQuantityRange
read_typed (const char *typed)
{
  g_autoptr(GError) error = NULL;
  HmQuantityRange range;
  if (!hm_quantity_parse_any (typed, &range, &error))
    fail_msg ("%s: %s", typed, error->message);
  return range;
}

static void
check_text (const char *typed, const char *got, const char *want)
{
  g_auto(GStrv) parts = g_strsplit (want, "_", -1);
  g_autofree char *spaced = g_strjoinv ("\u00a0", parts);
  if (!g_str_equal (got, spaced))
    fail_msg ("%s: got “%s”, want “%s”", typed, got, spaced);
}

static void
range_is_written (void **state)
{
  const struct format_row *row = *state;
  g_autofree char *got = hm_quantity_range_format (read_typed (row->typed), row->unit, row->decimals, row->format);
  check_text (row->typed, got, row->want);
}

static void
both_systems_are_written (void **state)
{
  const struct both_row *row = *state;
  g_autofree char *got = hm_quantity_range_format_both (read_typed (row->typed), row->format);
  check_text (row->typed, got, row->want);
}

/* Computed values have no typed unit; a ratio is kept as 1 */
static void
base_unit_is_written (void **state)
{
  g_autofree char *ratio = hm_quantity_format (hm_quantity (HM_QUANTITY_RATIO, 0.08, HM_UNIT_NONE), HM_UNIT_NONE, -1,
                                               &hm_format_default);
  g_autofree char *torque = hm_quantity_format (hm_quantity (HM_QUANTITY_TORQUE, 61, HM_UNIT_NONE), HM_UNIT_NONE, -1,
                                                &hm_format_default);
  check_text ("ratio", ratio, "8_%");
  check_text ("torque", torque, "61.0_N·m");
}

/* Psi for a stress and MPa for a pressure stand beside the unit that the kind is written in */
static void
force_per_area_is_written (void **state)
{
  HmQuantity stress = hm_quantity (HM_QUANTITY_STRESS, 120000, HM_UNIT_PSI);
  HmQuantity pressure = hm_quantity (HM_QUANTITY_PRESSURE, 0.45, HM_UNIT_MEGAPASCAL);
  g_autofree char *strong = hm_quantity_range_format_both ((HmQuantityRange) { stress, stress }, &hm_format_default);
  g_autofree char *tire = hm_quantity_range_format_both ((HmQuantityRange) { pressure, pressure }, &hm_format_default);
  check_text ("stress", strong, "120000_psi (827_MPa)");
  check_text ("pressure", tire, "65_psi (0.45_MPa)");
}

int
main (void)
{
  struct CMUnitTest tests[G_N_ELEMENTS (format_rows) + G_N_ELEMENTS (both_rows) + 2];
  gsize n = 0;
  for (gsize i = 0; i < G_N_ELEMENTS (format_rows); i++)
    tests[n++] = (struct CMUnitTest) { format_rows[i].want, range_is_written, .initial_state = (void *) &format_rows[i] };
  for (gsize i = 0; i < G_N_ELEMENTS (both_rows); i++)
    tests[n++] = (struct CMUnitTest) { both_rows[i].want, both_systems_are_written, .initial_state = (void *) &both_rows[i] };
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (base_unit_is_written);
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (force_per_area_is_written);
  return cmocka_run_group_tests_name ("quantity format", tests, NULL, NULL);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-quantity.h"
#include "hm-quantity-private.h"

/*
 * What each kind may be. The low ends are physics (nothing is shorter than 0, colder than −273.15 °C, or emptier than
 * a vacuum); the high ends lie well above anything on a bench and catch a slipped digit. Voltage and current may be
 * negative: leads the wrong way round are a finding. Pressure is gauge pressure, so a vacuum is negative.
 */
static const HmKindInfo kinds[HM_QUANTITY_N_KINDS + 1] = {
  [HM_QUANTITY_NUMBER]      = { "a number",      HM_UNIT_NONE,         -1e9,    1e9,  "12 or 12.4" },
  [HM_QUANTITY_LENGTH]      = { "a length",      HM_UNIT_MM,           0,       1e6,  "8 mm, 0.3125 in or 1 1/8 in" },
  [HM_QUANTITY_TORQUE]      = { "a torque",      HM_UNIT_NEWTON_METRE, 0,       1e5,  "45 lbf·ft, 540 lbf·in or 61 N·m" },
  [HM_QUANTITY_FORCE]       = { "a force",       HM_UNIT_NEWTON,       0,       1e7,  "12 lbf or 53 N" },
  [HM_QUANTITY_STRESS]      = { "a stress",      HM_UNIT_MEGAPASCAL,   0,       1e6,  "830 MPa or 120 ksi" },
  [HM_QUANTITY_PRESSURE]    = { "a pressure",    HM_UNIT_KILOPASCAL,   -110,    5e5,  "65 psi or 450 kPa" },
  [HM_QUANTITY_VOLTAGE]     = { "a voltage",     HM_UNIT_VOLT,         -1e5,    1e5,  "12.4 V or 300 mV" },
  [HM_QUANTITY_CURRENT]     = { "a current",     HM_UNIT_AMPERE,       -1e4,    1e4,  "3.2 A or 250 mA" },
  [HM_QUANTITY_RESISTANCE]  = { "a resistance",  HM_UNIT_OHM,          0,       1e10, "0.3 Ω, 2.5 kΩ or 470 ohm" },
  [HM_QUANTITY_SPEED]       = { "a speed",       HM_UNIT_RPM,          0,       2e5,  "3600 rpm" },
  [HM_QUANTITY_TEMPERATURE] = { "a temperature", HM_UNIT_CELSIUS,      -273.15, 5e3,  "68 °F or 20 °C" },
  [HM_QUANTITY_DURATION]    = { "a time",        HM_UNIT_MINUTE,       0,       1e7,  "90 s, 3 min or 4 h" },
  [HM_QUANTITY_FREQUENCY]   = { "a frequency",   HM_UNIT_HERTZ,        0,       1e9,  "62 Hz" },
  [HM_QUANTITY_RATIO]       = { "a percentage",  HM_UNIT_NONE,         -100,    100,  "8 %" },
  [HM_QUANTITY_AREA]        = { "an area",       HM_UNIT_MM2,          0,       1e8,  "36.6 mm² or 0.0318 in²" },
  [HM_QUANTITY_N_KINDS]     = { "a value",       HM_UNIT_NONE,         -1e9,    1e9,  "12.4 V or 5-7 N·m" },
};

const HmKindInfo *
hm_quantity_kind_info (HmQuantityKind kind)
{
  g_assert ((guint) kind <= HM_QUANTITY_N_KINDS);
  return &kinds[kind];
}

HmUnit
hm_quantity_kind_base_unit (HmQuantityKind kind)
{
  g_return_val_if_fail ((guint) kind < HM_QUANTITY_N_KINDS, HM_UNIT_NONE);
  return kinds[kind].base;
}

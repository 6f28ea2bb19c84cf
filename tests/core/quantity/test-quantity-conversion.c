/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-quantity.h"
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <cmocka.h>

/* A value put into any unit of its kind and taken out again is the same to 1e-12; so is one that goes round by a third unit. */

#define VALUES 2000
#define RELATIVE 1e-12
#define ZEROS_APART 500.0   /* °C and °F have different zeros, up to 459.67 degrees off the absolute: what is relative counts from there */

static gboolean
is_same (HmQuantityKind kind, double got, double want)
{
  return fabs (got - want) <= RELATIVE * (fabs (want) + (kind == HM_QUANTITY_TEMPERATURE ? ZEROS_APART : 0.0));
}

static void
unit_comes_back (void **state)
{
  HmUnit unit = GPOINTER_TO_UINT (*state);
  HmQuantityKind kind = hm_unit_kind (unit);
  g_autoptr(GRand) rand = g_rand_new_with_seed (unit);
  guint others = 0;

  for (HmUnit other = HM_UNIT_NONE + 1; other < HM_UNIT_N_UNITS; other++)
    {
      if (hm_unit_kind (other) != kind)
        continue;
      others++;
      for (guint i = 0; i < VALUES; i++)
        {
          double value = pow (10, g_rand_double_range (rand, -6, 6));
          HmQuantity there = hm_quantity (kind, value, unit);
          HmQuantity back = hm_quantity (kind, hm_quantity_in (there, other), other);

          if (!is_same (kind, hm_quantity_in (there, unit), value) || !is_same (kind, hm_quantity_in (back, unit), value))
            fail_msg ("%.17g %s by %s came back as %.17g and %.17g", value, hm_unit_symbol (unit), hm_unit_symbol (other),
                      hm_quantity_in (there, unit), hm_quantity_in (back, unit));
        }
    }
  assert_true (others >= 1);
}

int
main (void)
{
  struct CMUnitTest tests[HM_UNIT_N_UNITS];
  gsize n = 0;

  for (HmUnit unit = HM_UNIT_NONE + 1; unit < HM_UNIT_N_UNITS; unit++)
    tests[n++] = (struct CMUnitTest) { hm_unit_symbol (unit), unit_comes_back, .initial_state = GUINT_TO_POINTER (unit) };
  return _cmocka_run_group_tests ("quantity conversion", tests, n, NULL, NULL);
}

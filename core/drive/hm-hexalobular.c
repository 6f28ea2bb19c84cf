/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-hexalobular.h"

#define ROUNDS_BELOW 0.9   /* judgement: common practice, no source */

const HmHexalobularRow *
hm_hexalobular_find (int number, gboolean external, const HmTables *tables)
{
  gsize n;
  const HmHexalobularRow *rows;

  g_return_val_if_fail (tables != NULL, NULL);
  rows = hm_tables_get_hexalobular (tables, &n);
  for (gsize i = 0; i < n; i++)
    if (rows[i].number == number && rows[i].external == external)
      return &rows[i];
  return NULL;
}

gboolean
hm_hexalobular_fit (int key, int recess, const HmTables *tables, HmHexalobularFit *out)
{
  const HmHexalobularRow *inner, *outer;
  HmHexalobularFit fit = { HM_FIT_FITS, 1.0 };

  g_return_val_if_fail (tables != NULL && out != NULL, FALSE);
  inner = hm_hexalobular_find (key, FALSE, tables);
  outer = hm_hexalobular_find (recess, FALSE, tables);
  if (inner == NULL || outer == NULL)
    return FALSE;
  if (inner->a.mm > outer->a.mm)
    fit = (HmHexalobularFit) { HM_FIT_WILL_NOT_GO_ON, 0.0 };
  else if (inner != outer)
    {
      if (outer->b.mm <= 0.0)
        return FALSE;
      fit.hold = CLAMP ((inner->a.mm - outer->b.mm) / (outer->a.mm - outer->b.mm), 0.0, 1.0);
      fit.verdict = fit.hold < ROUNDS_BELOW ? HM_FIT_ROUNDS : HM_FIT_USABLE;
    }
  *out = fit;
  return TRUE;
}

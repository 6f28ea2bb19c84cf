/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-fit.h"
#include "hm-test-vectors.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <cmocka.h>

/*
 * The fit is monotone in the clearance: as an opening of one tolerance grows past a head, it turns further, bears nearer to the
 * corner, goes on more heads, is looser; and once it goes on every head, the verdict never gets better again.
 */

#define STEPS 400
#define SLACK 1e-12

static const struct condition_row { const char *name; HmHeadCondition condition; } condition_rows[] = {
  { "clean heads", HM_HEAD_CLEAN }, { "worn heads", HM_HEAD_WORN }, { "painted heads", HM_HEAD_PAINTED },
};

static void
check_step (const HmFit *tighter, const HmFit *looser, const char *head, double opening_mm)
{
  gboolean rises = looser->clearance_min.mm > tighter->clearance_min.mm && looser->clearance_max.mm > tighter->clearance_max.mm
                   && looser->free_angle_min >= tighter->free_angle_min - SLACK
                   && looser->free_angle_max >= tighter->free_angle_max - SLACK
                   && looser->contact >= tighter->contact - SLACK && looser->goes_on >= tighter->goes_on - SLACK
                   && looser->looseness >= tighter->looseness - SLACK;

  if (!rises)
    fail_msg ("%s: an opening of %.4f mm reckons less than a tighter one", head, opening_mm);
  if (tighter->verdict != HM_FIT_WILL_NOT_GO_ON && looser->verdict == HM_FIT_WILL_NOT_GO_ON)
    fail_msg ("%s: an opening of %.4f mm no longer goes on", head, opening_mm);
  if (tighter->goes_on >= 1.0 && looser->verdict < tighter->verdict)
    fail_msg ("%s: an opening of %.4f mm sits better than a tighter one", head, opening_mm);
}

/* From 5 % below the head to 20 % above: past where a tool spins. Returns: how many verdicts were met, as bits. */
static guint
sweep (const HmHead *head, HmHeadCondition condition, const char *name, const HmTables *tables)
{
  HmFit before = { 0 };
  guint seen = 0;

  for (int i = 0; i <= STEPS; i++)
    {
      double low = head->nominal.mm * (0.95 + 0.25 * i / STEPS);
      HmOpeningRow opening = { "x", head->nominal, { low }, { low * 1.008 }, head->inch, { HM_PROVENANCE_COMPUTED, "x" } };
      HmFit fit = hm_fit (&opening, head, condition, tables);

      if (i > 0)
        check_step (&before, &fit, name, low);
      seen |= 1u << fit.verdict;
      before = fit;
    }
  return seen;
}

static void
fit_is_monotone (void **state)
{
  const struct condition_row *row = *state;
  g_autoptr (HmTables) tables = hm_test_tables ();
  gsize n;
  const HmHexRow *rows = hm_tables_get_hex (tables, &n);
  guint heads = 0, seen = 0;

  for (gsize i = 0; i < n; i++)
    {
      HmHead head;

      if (!hm_head_from_row (&rows[i], &head))
        continue;
      seen |= sweep (&head, row->condition, rows[i].thread, tables);
      heads++;
    }
  assert_true (heads > 100);
  assert_true ((seen & 1u << HM_FIT_ROUNDS) != 0 && (seen & 1u << HM_FIT_WILL_NOT_GO_ON) != 0);
  assert_true ((seen & 1u << HM_FIT_USABLE) != 0 && (row->condition != HM_HEAD_CLEAN || (seen & 1u << HM_FIT_FITS) != 0));
}

/* A head that has worn is never turned further from the corner than a sound one, nor looser. */
static void
wear_never_helps (void **state)
{
  g_autoptr (HmTables) tables = hm_test_tables ();
  gsize n, n_openings;
  const HmHexRow *rows = hm_tables_get_hex (tables, &n);
  const HmOpeningRow *openings = hm_tables_get_openings (tables, &n_openings);

  for (gsize i = 0; i < n; i++)
    for (gsize j = 0; j < n_openings; j++)
      {
        HmHead head;
        HmFit sound, worn;

        if (!hm_head_from_row (&rows[i], &head))
          continue;
        sound = hm_fit (&openings[j], &head, HM_HEAD_CLEAN, tables);
        worn = hm_fit (&openings[j], &head, HM_HEAD_WORN, tables);
        if (worn.looseness < sound.looseness - SLACK || worn.contact < sound.contact - SLACK
            || worn.goes_on < sound.goes_on - SLACK)
          fail_msg ("%s on %s", openings[j].name, rows[i].thread);
      }
}

int
main (void)
{
  HmTestSuite *suite = hm_test_suite_new ();

  HM_TEST_SUITE_ADD_ROWS (suite, condition_rows, fit_is_monotone);
  hm_test_suite_add (suite, "wear never helps", wear_never_helps, NULL);
  return hm_test_suite_run (suite, "fit-property");
}

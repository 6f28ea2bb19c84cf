/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmt-bench.h"

#define DONE "I have done this"
#define MAX_CAUTIONS 12

HmtWindow *
hmt_bench_launch (const char *extra)
{
  const char *argv[] = { g_getenv ("HALFMOON_TEST_PROGRAM"), NULL };
  g_autofree char *folder = g_dir_make_tmp ("halfmoon-shop-XXXXXX", NULL);
  g_autofree char *shop = g_strconcat ("HALFMOON_SHOP_DIR=", folder, NULL);
  const char *environment[] = { shop, extra, NULL };
  return hmt_window_launch (argv, environment);
}

guint
hmt_bench_acknowledge (HmtWindow *window)
{
  guint n = 0;
  while (n < MAX_CAUTIONS)
    {
      g_autoptr(AtspiAccessible) box = hmt_tree_find_off (window->application, DONE);
      if (box == NULL)
        break;
      hmt_window_press_node (window, box, DONE);
      hmt_sleep_ms (150);
      n++;
    }
  return n;
}

void
hmt_bench_choose (HmtWindow *window, HmtVisit *visit)
{
  hmt_window_press (window, hmt_visit_complaint (visit));
  hmt_window_press (window, hmt_visit_layout (visit));
}

void
hmt_bench_begin (HmtWindow *window, HmtVisit *visit)
{
  hmt_bench_choose (window, visit);
  hmt_window_press (window, "Start");
}

void
hmt_bench_wait_for_step (HmtWindow *window, const HmtAnswer *answer)
{
  g_object_unref (hmt_window_wait (window, ATSPI_ROLE_HEADING, answer->title));
}

void
hmt_bench_answer (HmtWindow *window, const HmtAnswer *answer)
{
  hmt_bench_wait_for_step (window, answer);
  hmt_bench_acknowledge (window);
  switch (answer->kind)
    {
    case HMT_ANSWER_FINDING:
      hmt_window_press (window, answer->check->findings[answer->finding_index].name);
      break;
    case HMT_ANSWER_READING:
      hmt_window_enter (window, "Reading", answer->reading);
      hmt_window_press (window, "Use this reading");
      break;
    case HMT_ANSWER_REPAIR:
      hmt_window_press (window, "Repair done");
      hmt_window_press (window, answer->fixes ? "Fixed" : "Still there");
      break;
    }
}

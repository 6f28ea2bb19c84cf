/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The same machine, with the mouse unplugged: every key goes through the X server, as from a keyboard. */
#include "hmt-bench.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <cmocka.h>

#define DONE "I have done this"

static void
press (HmtWindow *window, const char *name)
{
  hmt_window_tab_to (window, name);
  hmt_window_key (window, "space");
}

/* Tab goes from one open caution to the next; those that are ticked are passed over. */
static void
acknowledge (HmtWindow *window)
{
  for (guint i = 0; i < 24; i++)
    {
      g_autoptr(AtspiAccessible) open = hmt_tree_find_off (window->application, DONE);
      g_autoptr(AtspiAccessible) focus = NULL;
      if (open == NULL)
        return;
      hmt_window_tab_to (window, DONE);
      focus = hmt_tree_find_focus (window->application);
      hmt_window_key (window, focus != NULL && !hmt_tree_is_on (focus) ? "space" : "Tab");
      hmt_sleep_ms (150);
    }
}

static void
answer_step (HmtWindow *window, const HmtAnswer *answer)
{
  hmt_bench_wait_for_step (window, answer);
  acknowledge (window);
  switch (answer->kind)
    {
    case HMT_ANSWER_FINDING:
      press (window, answer->check->findings[answer->finding_index].name);
      break;
    case HMT_ANSWER_READING:
      hmt_window_tab_to (window, "Reading");
      hmt_window_key (window, "ctrl+a");
      assert_true (hmt_screen_type (window->screen, answer->reading));
      press (window, "Use this reading");
      break;
    case HMT_ANSWER_REPAIR:
      g_object_unref (hmt_window_wait_pressable (window, "Repair done"));
      press (window, "Repair done");
      g_object_unref (hmt_window_wait_pressable (window, "Still there"));
      press (window, answer->fixes ? "Fixed" : "Still there");
      break;
    }
}

static void
works_without_a_pointer (void **state)
{
  g_autoptr(HmtVisit) visit = hmt_visit_new ();
  g_autoptr(HmtWindow) window = hmt_bench_launch (NULL);
  HmtAnswer answer;

  press (window, hmt_visit_complaint (visit));
  press (window, hmt_visit_layout (visit));
  press (window, "Start");
  while (!hmt_visit_is_closed (visit))
    {
      if (!hmt_visit_next (visit, &answer))
        fail_msg ("the advice is to send the machine out");
      answer_step (window, &answer);
      hmt_visit_take (visit, &answer);
    }
  g_object_unref (hmt_window_wait (window, HMT_ANY_ROLE, "Finished"));
  press (window, "Start another");
  g_object_unref (hmt_window_wait_pressable (window, hmt_visit_complaint (visit)));
  hmt_window_quit (window);
}

int
main (void)
{
  const struct CMUnitTest tests[] = { cmocka_unit_test (works_without_a_pointer) };
  return cmocka_run_group_tests_name ("diagnose-keyboard", tests, NULL, NULL);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
/* A machine that does not crank, from launch to the close, by pressing what is shown. */
#include "hmt-bench.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <cmocka.h>

typedef struct { HmtVisit *visit; HmtWindow *window; } Bench;

static int
open_bench (void **state)
{
  Bench *bench = g_new0 (Bench, 1);
  bench->visit = hmt_visit_new ();
  bench->window = hmt_bench_launch (NULL);
  *state = bench;
  return 0;
}

static int
close_bench (void **state)
{
  Bench *bench = *state;
  hmt_window_free (bench->window);
  hmt_visit_free (bench->visit);
  g_free (bench);
  return 0;
}

/* Does what the mechanic would do, and the same in the mirror. */
static void
answer_step (Bench *bench, const HmtAnswer *answer)
{
  hmt_bench_answer (bench->window, answer);
  hmt_visit_take (bench->visit, answer);
}

static void
to_the_end (Bench *bench)
{
  HmtAnswer answer;
  while (!hmt_visit_is_closed (bench->visit))
    {
      if (!hmt_visit_next (bench->visit, &answer))
        fail_msg ("the advice is to send the machine out");
      answer_step (bench, &answer);
    }
}

static void
shows_the_first_check_after_three_presses (void **state)
{
  Bench *bench = *state;
  HmtAnswer answer;

  hmt_bench_begin (bench->window, bench->visit);
  assert_true (hmt_visit_next (bench->visit, &answer));
  hmt_bench_wait_for_step (bench->window, &answer);
  assert_true (hmt_window_has_button (bench->window, "Not sure"));
  assert_true (hmt_window_has_button (bench->window, "Cannot do this"));
}

static void
leads_to_the_fault_and_closes (void **state)
{
  Bench *bench = *state;
  HmGuide *guide = hm_diagnosis_get_guide (bench->visit->mirror);
  guint n;

  hmt_bench_begin (bench->window, bench->visit);
  to_the_end (bench);
  g_object_unref (hmt_window_wait (bench->window, HMT_ANY_ROLE, "Finished"));
  assert_non_null (hm_guide_get_causes (guide, &n));
  hmt_window_press (bench->window, "Start another");
  g_object_unref (hmt_window_wait_pressable (bench->window, hmt_visit_complaint (bench->visit)));
  hmt_window_quit (bench->window);
}

static void
undo_brings_the_step_back (void **state)
{
  Bench *bench = *state;
  HmtAnswer first, second;

  hmt_bench_begin (bench->window, bench->visit);
  assert_true (hmt_visit_next (bench->visit, &first));
  answer_step (bench, &first);
  assert_true (hmt_visit_next (bench->visit, &second));
  hmt_bench_wait_for_step (bench->window, &second);
  hmt_window_press (bench->window, "Undo");
  hmt_visit_undo (bench->visit);
  hmt_bench_wait_for_step (bench->window, &first);
}

static void
not_sure_moves_on (void **state)
{
  Bench *bench = *state;
  HmtAnswer first, second;

  hmt_bench_begin (bench->window, bench->visit);
  assert_true (hmt_visit_next (bench->visit, &first));
  hmt_bench_wait_for_step (bench->window, &first);
  hmt_bench_acknowledge (bench->window);
  hmt_window_press (bench->window, "Not sure");
  hm_diagnosis_answer_unsure (bench->visit->mirror, first.check_index);
  assert_true (hmt_visit_next (bench->visit, &second));
  hmt_bench_wait_for_step (bench->window, &second);
}

static void
cannot_do_this_moves_on (void **state)
{
  Bench *bench = *state;
  HmtAnswer first, second;

  hmt_bench_begin (bench->window, bench->visit);
  assert_true (hmt_visit_next (bench->visit, &first));
  hmt_bench_wait_for_step (bench->window, &first);
  hmt_window_press (bench->window, "Cannot do this");
  hm_diagnosis_answer_cannot (bench->visit->mirror, first.check_index);
  assert_true (hmt_visit_next (bench->visit, &second));
  hmt_bench_wait_for_step (bench->window, &second);
}

static void
goes_on_where_it_stopped (void **state)
{
  Bench *bench = *state;
  const char *argv[] = { g_getenv ("HALFMOON_TEST_PROGRAM"), NULL };
  g_autofree char *folder = g_dir_make_tmp ("halfmoon-shop-XXXXXX", NULL);
  g_autofree char *shop = g_strconcat ("HALFMOON_SHOP_DIR=", folder, NULL);
  const char *environment[] = { shop, NULL };
  g_autofree char *line = NULL;
  HmtAnswer first, second;

  hmt_window_free (bench->window);
  bench->window = hmt_window_launch (argv, environment);
  hmt_bench_begin (bench->window, bench->visit);
  assert_true (hmt_visit_next (bench->visit, &first));
  answer_step (bench, &first);
  assert_true (hmt_visit_next (bench->visit, &second));
  hmt_bench_wait_for_step (bench->window, &second);
  hmt_window_quit (bench->window);
  hmt_window_free (bench->window);
  bench->window = hmt_window_launch (argv, environment);
  line = g_strconcat (hmt_visit_complaint (bench->visit), " · ", hmt_visit_layout (bench->visit), NULL);
  hmt_window_press (bench->window, line);
  hmt_bench_wait_for_step (bench->window, &second);
}

/* One machine is put aside for another, and taken up where it stood. */
static void
one_machine_waits_for_another (void **state)
{
  Bench *bench = *state;
  g_autofree char *line = g_strconcat (hmt_visit_complaint (bench->visit), " · ", hmt_visit_layout (bench->visit), NULL);
  HmtAnswer first, second;

  hmt_bench_begin (bench->window, bench->visit);
  assert_true (hmt_visit_next (bench->visit, &first));
  answer_step (bench, &first);
  assert_true (hmt_visit_next (bench->visit, &second));
  hmt_bench_wait_for_step (bench->window, &second);
  hmt_window_key (bench->window, "ctrl+n");
  g_object_unref (hmt_window_wait_containing (bench->window, "What kind of machine?"));
  hmt_window_press (bench->window, line);
  hmt_bench_wait_for_step (bench->window, &second);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test_setup_teardown (shows_the_first_check_after_three_presses, open_bench, close_bench),
    cmocka_unit_test_setup_teardown (leads_to_the_fault_and_closes, open_bench, close_bench),
    cmocka_unit_test_setup_teardown (undo_brings_the_step_back, open_bench, close_bench),
    cmocka_unit_test_setup_teardown (not_sure_moves_on, open_bench, close_bench),
    cmocka_unit_test_setup_teardown (cannot_do_this_moves_on, open_bench, close_bench),
    cmocka_unit_test_setup_teardown (goes_on_where_it_stopped, open_bench, close_bench),
    cmocka_unit_test_setup_teardown (one_machine_waits_for_another, open_bench, close_bench),
  };
  return cmocka_run_group_tests_name ("diagnose-pointer", tests, NULL, NULL);
}

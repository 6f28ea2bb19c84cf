/* SPDX-License-Identifier: GPL-3.0-or-later */
/* A picture of every screen, light and dark, wide and narrow, for people to look at. The test itself only asks that each
 * screen comes up and that light and dark differ. HALFMOON_TEST_SCREENS names the folder. */
#include "hmt-bench.h"

#include <gdk-pixbuf/gdk-pixbuf.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <cmocka.h>

static const struct look_row {
  const char *name, *scheme;
  guint width_px, height_px;         /* 0: as the window opens */
} looks[] = {
  { "light", "HALFMOON_COLOR_SCHEME=light", 0, 0 },
  { "dark", "HALFMOON_COLOR_SCHEME=dark", 0, 0 },
  { "narrow", "HALFMOON_COLOR_SCHEME=light", 700, 560 },
  { "tall", "HALFMOON_COLOR_SCHEME=light", 1180, 880 },     /* for the README */
};

typedef struct { HmtWindow *window; const struct look_row *look; guint n; } Camera;

static void
shoot (Camera *camera, const char *screen)
{
  g_autofree char *name = g_strdup_printf ("%s-%02u-%s", camera->look->name, ++camera->n, screen);
  hmt_sleep_ms (350);                /* let it be laid out and painted */
  hmt_window_shot (camera->window, name);
}

static void
answer_step (Camera *camera, const HmtAnswer *answer)
{
  HmtWindow *window = camera->window;
  hmt_bench_wait_for_step (window, answer);
  shoot (camera, answer->kind == HMT_ANSWER_REPAIR    ? "repair"
                 : answer->kind == HMT_ANSWER_READING ? "reading"
                                                      : "finding");
  if (hmt_bench_acknowledge (window) > 0)
    shoot (camera, "caution-done");
  if (answer->kind == HMT_ANSWER_FINDING)
    hmt_window_press (window, answer->check->findings[answer->finding_index].name);
  else if (answer->kind == HMT_ANSWER_READING)
    {
      hmt_window_enter (window, "Reading", answer->reading);
      shoot (camera, "reading-typed");
      hmt_window_press (window, "Use this reading");
    }
  else
    {
      hmt_window_press (window, "Repair done");
      g_object_unref (hmt_window_wait_pressable (window, "Still there"));
      shoot (camera, "repair-question");
      hmt_window_press (window, answer->fixes ? "Fixed" : "Still there");
    }
}

static void
look_up (Camera *camera, const char *text, const char *screen)
{
  hmt_window_key (camera->window, "ctrl+k");
  hmt_window_enter (camera->window, "Size, drive, thread or torque", text);
  hmt_sleep_ms (400);                /* the answer comes after a pause in typing */
  shoot (camera, screen);
}

static void
shoot_the_reference (Camera *camera)
{
  look_up (camera, "9 mm on 11/32", "fasteners-fit");
  look_up (camera, "M8 x 1.25", "fasteners-thread");
  hmt_window_press (camera->window, "What is this bolt?");
  shoot (camera, "fasteners-identify");
  hmt_window_press (camera->window, "Tables");
  shoot (camera, "fasteners-tables");
  hmt_window_key (camera->window, "alt+3");
  g_object_unref (hmt_window_wait_containing (camera->window, "How tight?"));
  hmt_window_enter (camera->window, "Thread", "5/16-18");
  hmt_sleep_ms (400);
  shoot (camera, "torque");
}

static void
every_screen_comes_up (void **state)
{
  const struct look_row *look = *state;
  g_autoptr(HmtVisit) visit = hmt_visit_new ();
  g_autoptr(HmtWindow) window = hmt_bench_launch (look->scheme);
  Camera camera = { window, look, 0 };
  HmtAnswer answer;

  if (look->width_px > 0)
    hmt_screen_resize (window->screen, window->window, look->width_px, look->height_px);
  g_object_unref (hmt_window_wait_pressable (window, hmt_visit_complaint (visit)));
  shoot (&camera, "choose");
  hmt_bench_choose (window, visit);
  shoot (&camera, "chosen");
  hmt_window_press (window, "Start");
  while (!hmt_visit_is_closed (visit))
    {
      if (!hmt_visit_next (visit, &answer))
        fail_msg ("the advice is to send the machine out");
      answer_step (&camera, &answer);
      hmt_visit_take (visit, &answer);
    }
  g_object_unref (hmt_window_wait (window, HMT_ANY_ROLE, "Finished"));
  shoot (&camera, "close");
  shoot_the_reference (&camera);
}

static double
mean_brightness (const char *scheme)
{
  g_autoptr(HmtWindow) window = hmt_bench_launch (scheme);
  g_autofree char *path = g_build_filename (g_get_tmp_dir (), "halfmoon-test-look.png", NULL);
  g_autoptr(GdkPixbuf) picture = NULL;
  double sum = 0;
  gsize n;
  const guchar *bytes;

  g_object_unref (hmt_window_wait_pressable (window, "Start"));
  hmt_sleep_ms (500);
  assert_true (hmt_screen_save (window->screen, window->window, path, NULL));
  picture = gdk_pixbuf_new_from_file (path, NULL);
  assert_non_null (picture);
  bytes = gdk_pixbuf_read_pixels (picture);
  n = gdk_pixbuf_get_byte_length (picture);
  for (gsize i = 0; i < n; i++)
    sum += bytes[i];
  return sum / n;
}

static void
dark_is_dark (void **state)
{
  assert_true (mean_brightness ("HALFMOON_COLOR_SCHEME=light") > 128);
  assert_true (mean_brightness ("HALFMOON_COLOR_SCHEME=dark") < 128);
}

int
main (void)
{
  struct CMUnitTest tests[G_N_ELEMENTS (looks) + 1];
  guint n = 0;
  for (guint i = 0; i < G_N_ELEMENTS (looks); i++)
    tests[n++] = (struct CMUnitTest) { looks[i].name, every_screen_comes_up, .initial_state = (void *) &looks[i] };
  tests[n++] = (struct CMUnitTest) cmocka_unit_test (dark_is_dark);
  return cmocka_run_group_tests_name ("screens", tests, NULL, NULL);
}

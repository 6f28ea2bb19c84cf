/* SPDX-License-Identifier: GPL-3.0-or-later */
/*
 * start BLANK PROGRAM [RUNS]: from process start to the first painted frame, Halfmoon against an empty GTK window.
 * The two take turns, so that whatever else the machine does falls on both. Reports medians and ratios; judges nothing.
 *
 * Wall: clock from fork to exit. CPU: what the kernel charged the child (wait4). Private memory is taken in runs of its own,
 * for asking disturbs: the largest Private_Clean + Private_Dirty of smaps_rollup, asked every 2 ms up to the exit.
 */
#include <glib.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#define MAX_RUNS 101
#define MEMORY_RUNS 7
#define POLL_US 2000

typedef struct { double wall_ms, cpu_ms, private_mib; } Sample;
typedef struct { double wall_ms[MAX_RUNS], cpu_ms[MAX_RUNS], private_mib[MEMORY_RUNS]; } Series;

static double
read_private_mib (pid_t pid)
{
  g_autofree char *path = g_strdup_printf ("/proc/%d/smaps_rollup", (int) pid);
  g_autofree char *text = NULL;
  g_auto(GStrv) lines = NULL;
  double kib = 0;

  if (!g_file_get_contents (path, &text, NULL, NULL))
    return 0;
  lines = g_strsplit (text, "\n", -1);
  for (guint i = 0; lines[i] != NULL; i++)
    if (g_str_has_prefix (lines[i], "Private_Clean:") || g_str_has_prefix (lines[i], "Private_Dirty:"))
      kib += g_ascii_strtod (strchr (lines[i], ':') + 1, NULL);
  return kib / 1024;
}

static Sample
run_once (char *program, gboolean watch_memory)
{
  char *argv[] = { program, NULL };
  gint64 begin = g_get_monotonic_time ();
  struct rusage usage;
  Sample sample = { 0 };
  int status = 0;
  pid_t pid = fork ();

  if (pid == 0)
    {
      execv (program, argv);
      _exit (127);
    }
  while (wait4 (pid, &status, watch_memory ? WNOHANG : 0, &usage) == 0)
    {
      sample.private_mib = MAX (sample.private_mib, read_private_mib (pid));
      g_usleep (POLL_US);
    }
  sample.wall_ms = (g_get_monotonic_time () - begin) / 1000.0;
  sample.cpu_ms = usage.ru_utime.tv_sec * 1e3 + usage.ru_utime.tv_usec / 1e3 + usage.ru_stime.tv_sec * 1e3 +
                  usage.ru_stime.tv_usec / 1e3;
  if (!WIFEXITED (status) || WEXITSTATUS (status) != 0)
    {
      fprintf (stderr, "%s did not end well (status %d)\n", program, status);
      exit (1);
    }
  return sample;
}

static void
time_once (Series *series, guint i, char *program)
{
  Sample sample = run_once (program, FALSE);
  series->wall_ms[i] = sample.wall_ms;
  series->cpu_ms[i] = sample.cpu_ms;
}

static int
compare (const void *a, const void *b)
{
  double x = *(const double *) a, y = *(const double *) b;
  return (x > y) - (x < y);
}

static double
median (double *values, guint n)
{
  qsort (values, n, sizeof *values, compare);
  return n % 2 == 1 ? values[n / 2] : (values[n / 2 - 1] + values[n / 2]) / 2;
}

static void
report (const char *what, const char *unit, double *blank, double *ours, guint n)
{
  double a = median (blank, n), b = median (ours, n);
  printf ("%-22s %8.1f %8.1f %-4s ratio %.2f\n", what, a, b, unit, b / a);
}

int
main (int argc, char **argv)
{
  guint runs = argc > 3 ? MIN (atoi (argv[3]), MAX_RUNS) : 21;
  g_autofree Series *blank = g_new0 (Series, 1), *ours = g_new0 (Series, 1);

  if (argc < 3 || runs < 1)
    {
      fprintf (stderr, "usage: start BLANK PROGRAM [RUNS]\n");
      return 2;
    }
  g_setenv ("HALFMOON_EXIT_AFTER_FIRST_FRAME", "1", TRUE);
  run_once (argv[1], FALSE);         /* what only the first start of a machine pays is no part of this */
  run_once (argv[2], FALSE);
  for (guint i = 0; i < runs; i++)
    {
      time_once (blank, i, argv[1]);
      time_once (ours, i, argv[2]);
    }
  for (guint i = 0; i < MEMORY_RUNS; i++)
    {
      blank->private_mib[i] = run_once (argv[1], TRUE).private_mib;
      ours->private_mib[i] = run_once (argv[2], TRUE).private_mib;
    }
  printf ("to the first frame, median of %u alternating runs: empty window, Halfmoon\n", runs);
  report ("wall clock", "ms", blank->wall_ms, ours->wall_ms, runs);
  report ("CPU time", "ms", blank->cpu_ms, ours->cpu_ms, runs);
  report ("private memory, most", "MiB", blank->private_mib, ours->private_mib, MEMORY_RUNS);
  return 0;
}

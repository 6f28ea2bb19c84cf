/* SPDX-License-Identifier: GPL-3.0-or-later */
/*
 * table-tests TRUE PROGRAM…: how long the test programs of the tables, threads, drives, fasteners and torques take, each and together,
 * against a process that does nothing. Processor time of the children, the least of three runs; judges nothing.
 */
#include <glib.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <fcntl.h>
#include <unistd.h>

#define RUNS 3

static double
run_ms (char *program)
{
  char *argv[] = { program, NULL };
  struct rusage usage;
  int status = 0;
  pid_t pid = fork ();

  if (pid == 0)
    {
      int nowhere = open ("/dev/null", O_WRONLY);

      dup2 (nowhere, STDOUT_FILENO);
      dup2 (nowhere, STDERR_FILENO);
      execv (program, argv);
      _exit (127);
    }
  wait4 (pid, &status, 0, &usage);
  if (!WIFEXITED (status) || WEXITSTATUS (status) != 0)
    {
      fprintf (stderr, "%s did not end well (status %d)\n", program, status);
      exit (1);
    }
  return usage.ru_utime.tv_sec * 1e3 + usage.ru_utime.tv_usec / 1e3 + usage.ru_stime.tv_sec * 1e3 + usage.ru_stime.tv_usec / 1e3;
}

static double
least_ms (char *program)
{
  double least = G_MAXDOUBLE;

  for (guint i = 0; i < RUNS; i++)
    least = MIN (least, run_ms (program));
  return least;
}

int
main (int argc, char **argv)
{
  double nothing, sum = 0.0;

  if (argc < 3)
    {
      fprintf (stderr, "usage: table-tests TRUE PROGRAM…\n");
      return 2;
    }
  nothing = MAX (least_ms (argv[1]), 0.001);
  for (int i = 2; i < argc; i++)
    {
      double ms = least_ms (argv[i]);

      printf ("%-28s %8.1f ms ratio %.1f\n", strrchr (argv[i], '/') != NULL ? strrchr (argv[i], '/') + 1 : argv[i], ms, ms / nothing);
      sum += ms;
    }
  printf ("%-28s %8.1f ms ratio %.1f\n", "together", sum, sum / nothing);
  return 0;
}

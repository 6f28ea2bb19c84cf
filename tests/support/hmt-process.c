/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmt-process.h"

#include <glib/gstdio.h>

struct _HmtProcess
{
  GSubprocess *child;         /* owned */
  char        *output_path;   /* owned */
  gboolean     ended;
};

static void
set_environment (GSubprocessLauncher *launcher, const char * const *environment)
{
  for (guint i = 0; environment != NULL && environment[i] != NULL; i++)
    {
      const char *equals = strchr (environment[i], '=');
      if (equals != NULL)
        {
          g_autofree char *name = g_strndup (environment[i], equals - environment[i]);
          g_subprocess_launcher_setenv (launcher, name, equals + 1, TRUE);
        }
      else
        g_subprocess_launcher_unsetenv (launcher, environment[i]);
    }
}

static void
ended_cb (GObject *source, GAsyncResult *result, gpointer data)
{
  gboolean *ended = data;
  g_subprocess_wait_finish (G_SUBPROCESS (source), result, NULL);
  *ended = TRUE;
}

HmtProcess *
hmt_process_start (const char * const *argv, const char * const *environment, GError **error)
{
  g_autoptr(GSubprocessLauncher) launcher = g_subprocess_launcher_new (G_SUBPROCESS_FLAGS_STDERR_MERGE);
  g_autofree char *path = NULL;
  GSubprocess *child;
  HmtProcess *self;
  int fd = g_file_open_tmp ("halfmoon-test-XXXXXX.log", &path, error);

  if (fd < 0)
    return NULL;
  g_close (fd, NULL);
  set_environment (launcher, environment);
  g_subprocess_launcher_set_stdout_file_path (launcher, path);
  child = g_subprocess_launcher_spawnv (launcher, argv, error);
  if (child == NULL)
    return NULL;
  self = g_new0 (HmtProcess, 1);
  self->child = child;
  self->output_path = g_steal_pointer (&path);
  g_subprocess_wait_async (child, NULL, ended_cb, &self->ended);
  return self;
}

void
hmt_process_free (HmtProcess *self)
{
  if (!self->ended)
    g_subprocess_force_exit (self->child);
  hmt_process_wait (self, 5000);
  g_clear_object (&self->child);
  g_unlink (self->output_path);
  g_free (self->output_path);
  g_free (self);
}

int
hmt_process_get_pid (HmtProcess *self)
{
  const char *id = g_subprocess_get_identifier (self->child);
  return id != NULL ? (int) g_ascii_strtoll (id, NULL, 10) : -1;
}

int
hmt_process_wait (HmtProcess *self, guint limit_ms)
{
  gint64 deadline = g_get_monotonic_time () + limit_ms * G_GINT64_CONSTANT (1000);
  while (!self->ended && g_get_monotonic_time () < deadline)
    hmt_sleep_ms (10);
  if (!self->ended)
    return -1;
  return g_subprocess_get_if_exited (self->child) ? g_subprocess_get_exit_status (self->child)
                                                  : 128 + g_subprocess_get_term_sig (self->child);
}

char *
hmt_process_output (HmtProcess *self)
{
  char *text = NULL;
  if (!g_file_get_contents (self->output_path, &text, NULL, NULL))
    return g_strdup ("");
  return text;
}

void
hmt_sleep_ms (guint ms)
{
  gint64 deadline = g_get_monotonic_time () + ms * G_GINT64_CONSTANT (1000);
  do
    {
      while (g_main_context_iteration (NULL, FALSE))
        ;
      g_usleep (2000);
    }
  while (g_get_monotonic_time () < deadline);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmt-command.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

void
hmt_result_clear (HmtResult *self)
{
  g_free (self->out);
  g_free (self->err);
}

static int
status_of (GSubprocess *child)
{
  return g_subprocess_get_if_exited (child) ? g_subprocess_get_exit_status (child)
                                            : 128 + g_subprocess_get_term_sig (child);
}

/* Output is compared as bytes: it has to be UTF-8 all the same. */
static char *
text_of (GBytes *bytes)
{
  gsize n = 0;
  const char *data = g_bytes_get_data (bytes, &n);
  char *text = g_strndup (data != NULL ? data : "", n);
  if (!g_utf8_validate (text, -1, NULL))
    fail_msg ("the output is not UTF-8");
  return text;
}

HmtResult
hmt_command_run (const char * const *argv, const char *input, const char * const *unset)
{
  g_autoptr(GSubprocessLauncher) launcher =
    g_subprocess_launcher_new (G_SUBPROCESS_FLAGS_STDIN_PIPE | G_SUBPROCESS_FLAGS_STDOUT_PIPE |
                               G_SUBPROCESS_FLAGS_STDERR_PIPE);
  g_autoptr(GBytes) in = g_bytes_new (input != NULL ? input : "", input != NULL ? strlen (input) : 0);
  g_autoptr(GBytes) out = NULL, err = NULL;
  g_autoptr(GError) error = NULL;
  g_autoptr(GSubprocess) child = NULL;

  for (guint i = 0; unset != NULL && unset[i] != NULL; i++)
    g_subprocess_launcher_unsetenv (launcher, unset[i]);
  child = g_subprocess_launcher_spawnv (launcher, argv, &error);
  if (child == NULL)
    fail_msg ("%s", error->message);
  /* A program that ends without reading all of its input is no failure of the pipe. */
  if (!g_subprocess_communicate (child, in, NULL, &out, &err, &error) && out == NULL)
    fail_msg ("%s: %s", argv[0], error->message);
  g_subprocess_wait (child, NULL, NULL);
  return (HmtResult) { status_of (child), text_of (out), text_of (err) };
}

static GStrv
cli_argv (const char *arguments)
{
  g_autofree char *line = g_strconcat ("halfmoon-cli ", arguments, NULL);
  g_auto(GStrv) parts = g_strsplit (line, " ", -1);
  GPtrArray *argv = g_ptr_array_new ();

  g_ptr_array_add (argv, g_strdup (g_getenv ("HALFMOON_TEST_CLI")));
  for (guint i = 1; parts[i] != NULL; i++)
    if (parts[i][0] != '\0')
      g_ptr_array_add (argv, g_strdup (parts[i]));
  g_ptr_array_add (argv, NULL);
  return (GStrv) g_ptr_array_free (argv, FALSE);
}

HmtResult
hmt_cli_run (const char *arguments, const char *input)
{
  g_auto(GStrv) argv = cli_argv (arguments);
  return hmt_command_run ((const char * const *) argv, input, NULL);
}

void
hmt_check_sentence (const char *what, const char *err)
{
  g_auto(GStrv) lines = g_strsplit (err, "\n", -1);
  guint n = g_strv_length (lines);

  if (strlen (err) < 15 || n > 3 || strlen (err) > 700)
    fail_msg ("%s: one clear sentence is wanted, this was said: “%s”", what, err);
  if (strstr (err, "CRITICAL") != NULL || strstr (err, "WARNING") != NULL || strstr (err, "assert") != NULL)
    fail_msg ("%s: that is no sentence for a person: %s", what, err);
}

HmtTalk *
hmt_talk_start (const char *arguments)
{
  g_auto(GStrv) argv = cli_argv (arguments);
  g_autoptr(GError) error = NULL;
  HmtTalk *self = g_new0 (HmtTalk, 1);

  self->child = g_subprocess_newv ((const char * const *) argv,
                                   G_SUBPROCESS_FLAGS_STDIN_PIPE | G_SUBPROCESS_FLAGS_STDOUT_PIPE, &error);
  if (self->child == NULL)
    fail_msg ("%s", error->message);
  self->said = g_string_new (NULL);
  return self;
}

void
hmt_talk_free (HmtTalk *self)
{
  g_subprocess_force_exit (self->child);
  g_subprocess_wait (self->child, NULL, NULL);
  g_clear_object (&self->child);
  g_string_free (self->said, TRUE);
  g_free (self);
}

static int
prompt_at_end (HmtTalk *self, const char * const *prompts)
{
  for (int i = 0; prompts[i] != NULL; i++)
    if (g_str_has_suffix (self->said->str, prompts[i]))
      return i;
  return -1;
}

int
hmt_talk_listen (HmtTalk *self, const char * const *prompts)
{
  GInputStream *from = g_subprocess_get_stdout_pipe (self->child);
  char buffer[4096];
  gssize n;

  while (prompt_at_end (self, prompts) < 0)
    {
      n = g_input_stream_read (from, buffer, sizeof buffer, NULL, NULL);
      if (n <= 0)
        return -1;
      g_string_append_len (self->said, buffer, n);
    }
  return prompt_at_end (self, prompts);
}

void
hmt_talk_answer (HmtTalk *self, const char *line)
{
  GOutputStream *to = g_subprocess_get_stdin_pipe (self->child);
  g_autofree char *text = g_strconcat (line, "\n", NULL);

  g_string_truncate (self->said, 0);
  g_output_stream_write_all (to, text, strlen (text), NULL, NULL, NULL);
  g_output_stream_flush (to, NULL, NULL);
}

int
hmt_talk_end (HmtTalk *self)
{
  g_subprocess_wait (self->child, NULL, NULL);
  return status_of (self->child);
}

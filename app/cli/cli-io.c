/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli-io.h"

#include <errno.h>
#include <glib/gi18n.h>
#include <glib/gstdio.h>
#include <langinfo.h>
#include <stdarg.h>
#include <stdio.h>
#include <string.h>
#include <unistd.h>

#define COLUMNS 78u
#define LONGEST_ANSWER 4096u
#define LARGEST_FILE (16u * 1024 * 1024)

struct _CliIo { HmFormat format; gboolean echo; };

CliIo *
cli_io_new (void)
{
  CliIo *self = g_new0 (CliIo, 1);
  const char *point = nl_langinfo (RADIXCHAR);

  self->format.decimal_point = g_strcmp0 (point, ",") == 0 ? "," : ".";
  self->format.system = HM_UNIT_SYSTEM_INCH_FIRST;
  self->echo = !isatty (STDIN_FILENO);
  return self;
}

void
cli_io_free (CliIo *self)
{
  g_free (self);
}

const HmFormat *
cli_io_get_format (CliIo *self)
{
  return &self->format;
}

static void
print_wrapped (guint indent, const char *text)
{
  g_auto (GStrv) words = g_strsplit (text, " ", -1);
  guint column = 0;

  for (guint i = 0; words[i] != NULL; i++)
    {
      guint length = (guint) g_utf8_strlen (words[i], -1);
      if (column > indent && column + 1 + length > COLUMNS)
        {
          g_print ("\n%*s", (int) indent, "");
          column = indent;
        }
      else if (i > 0)
        {
          g_print (" ");
          column++;
        }
      g_print ("%s", words[i]);
      column += length;
    }
  g_print ("\n");
}

void
cli_io_print (CliIo *self, guint indent, const char *format, ...)
{
  g_autofree char *text = NULL;
  va_list args;

  va_start (args, format);
  text = g_strdup_vprintf (format, args);
  va_end (args);
  print_wrapped (indent, text);
}

void
cli_io_title (CliIo *self, const char *text)
{
  g_print ("\n── %s ", text);
  for (glong column = g_utf8_strlen (text, -1) + 4; column < (glong) COLUMNS; column++)
    g_print ("─");
  g_print ("\n");
}

void
cli_io_gap (CliIo *self)
{
  g_print ("\n");
}

void
cli_io_complain (CliIo *self, const char *format, ...)
{
  g_autofree char *text = NULL;
  va_list args;

  va_start (args, format);
  text = g_strdup_vprintf (format, args);
  va_end (args);
  fflush (stdout);
  g_printerr ("%s\n", text);
}

/* Reads to the end of the line; FALSE at the end of the input. Lines over the limit are cut, the rest is dropped. */
static gboolean
read_line (GString *line)
{
  int c;

  while ((c = getchar ()) != EOF && c != '\n')
    if (line->len < LONGEST_ANSWER && c != '\0')
      g_string_append_c (line, (char) c);
  return c != EOF || line->len > 0;
}

char *
cli_io_ask (CliIo *self, const char *prompt)
{
  g_autoptr (GString) line = g_string_new (NULL);
  char *answer;

  g_print ("%s ", prompt);
  fflush (stdout);
  if (!read_line (line))
    {
      g_print ("\n");
      return NULL;
    }
  answer = g_utf8_make_valid (line->str, (gssize) line->len);
  g_strstrip (answer);
  if (self->echo)
    g_print ("%s\n", answer);
  return answer;
}

char *
cli_io_read_file (const char *path, gsize *length, GError **error)
{
  g_autofree char *text = NULL;
  GStatBuf info;

  if (g_stat (path, &info) == 0 && info.st_size > (goffset) LARGEST_FILE)
    {
      g_set_error (error, G_FILE_ERROR, G_FILE_ERROR_FAILED, _("%s is over 16 MiB long; a model is a few hundred KiB at most."), path);
      return NULL;
    }
  if (!g_file_get_contents (path, &text, length, error))
    return NULL;
  return g_steal_pointer (&text);
}

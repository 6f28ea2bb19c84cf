/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The end: complaint, cause, correction. */
#include "cli.h"

#include <glib/gi18n.h>

#include "hmui-tr.h"
#include "hmui-words.h"

static void
print_list (CliIo *io, const char *title, GPtrArray *lines)
{
  if (lines->len > 0)
    cli_io_print (io, 0, "%s", title);
  for (guint i = 0; i < lines->len; i++)
    cli_io_print (io, 4, "  – %s", (const char *) g_ptr_array_index (lines, i));
}

void
cli_show_close (CliIo *io, HmDiagnosis *diagnosis)
{
  g_autoptr (HmWriteUp) text = hm_diagnosis_write_up (diagnosis, cli_io_get_format (io), hmui_tr);
  g_autofree char *spent = hmui_words_minutes (hm_diagnosis_get_minutes_spent (diagnosis).minutes);

  cli_io_title (io, _("Finished"));
  cli_io_print (io, 12, "%-11s %s", _("Complaint"), text->complaint);
  if (*text->cause != '\0')
    cli_io_print (io, 12, "%-11s %s", _("Cause"), text->cause);
  cli_io_print (io, 12, "%-11s %s", _("Correction"), text->correction);
  cli_io_print (io, 12, "%-11s %s", _("Time"), spent);
  print_list (io, _("Look at these too before it goes out:"), text->look_also);
  print_list (io, _("Tell the owner:"), text->tell_owner);
}

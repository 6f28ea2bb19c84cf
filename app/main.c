/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-application.h"
#include "hmui-paths.h"
#include <glib/gi18n.h>
#include <locale.h>

static void
set_up_language (void)
{
  g_autofree char *folder = hmui_paths_dup_locale ();

  setlocale (LC_ALL, "");
  bindtextdomain (GETTEXT_PACKAGE, folder);
  bind_textdomain_codeset (GETTEXT_PACKAGE, "UTF-8");
  textdomain (GETTEXT_PACKAGE);
}

int
main (int argc, char *argv[])
{
  g_autoptr(HmuiApplication) application = NULL;

  set_up_language ();
  if (!gtk_init_check ())
    {
      g_printerr ("%s\n", _("halfmoon: there is no display to open a window on. In a terminal, run halfmoon-cli."));
      return 1;
    }
  application = hmui_application_new ();
  return g_application_run (G_APPLICATION (application), argc, argv);
}

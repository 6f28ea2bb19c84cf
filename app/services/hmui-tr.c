/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-tr.h"
#include <glib/gi18n.h>

const char *
hmui_tr (const char *english)
{
  if (english == NULL || english[0] == '\0')   /* the catalogue answers "" with its own header */
    return english;
  return g_dgettext (GETTEXT_PACKAGE, english);
}

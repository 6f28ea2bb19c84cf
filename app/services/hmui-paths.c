/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-paths.h"

static char *
dup_folder (const char *variable, const char *fallback)
{
  const char *folder = g_getenv (variable);

  return g_strdup (folder != NULL && folder[0] != '\0' ? folder : fallback);
}

char *
hmui_paths_dup_knowledge (void)
{
  g_autofree char *folder = dup_folder ("HALFMOON_DATA_DIR", HALFMOON_DATADIR);

  return g_build_filename (folder, "knowledge.db", NULL);
}

char *
hmui_paths_dup_shop (void)
{
  g_autofree char *fallback = g_build_filename (g_get_user_data_dir (), "halfmoon", NULL);

  return dup_folder ("HALFMOON_SHOP_DIR", fallback);
}

char *
hmui_paths_dup_locale (void)
{
  return dup_folder ("HALFMOON_LOCALE_DIR", HALFMOON_LOCALEDIR);
}

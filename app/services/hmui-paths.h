/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>
G_BEGIN_DECLS

/*
 * Where things lie. Each may be moved by an environment variable, so that the program runs from its build folder and
 * tests keep to folders of their own.
 */
char *hmui_paths_dup_knowledge (void);   /* knowledge.db in HALFMOON_DATA_DIR; (transfer full) */
char *hmui_paths_dup_shop      (void);   /* HALFMOON_SHOP_DIR, else halfmoon in the user's data folder; (transfer full) */
char *hmui_paths_dup_locale    (void);   /* HALFMOON_LOCALE_DIR; (transfer full) */

G_END_DECLS

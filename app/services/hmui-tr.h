/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>
G_BEGIN_DECLS

/**
 * hmui_tr: a sentence of the knowledge in the person's language.
 * @english: (nullable): as it stands in data/knowledge/
 * Returns: (nullable): borrowed: the translation, else @english itself; NULL for NULL
 */
const char *hmui_tr (const char *english);

G_END_DECLS

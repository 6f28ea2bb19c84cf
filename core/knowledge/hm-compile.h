/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-knowledge.h"
G_BEGIN_DECLS

/**
 * hm_knowledge_compile: reads data/ text, checks all of it, writes one SQLite file.
 * @data_folder: the folder that holds knowledge/ and tables/
 * @out_path: written whole or not at all
 * @report: (out) (transfer full) (nullable): what is allowed but worth knowing (ambiguity groups, causes that no check
 *   moves by 6 dB), one line each; "" when there is nothing
 * Returns: %FALSE with %HM_KNOWLEDGE_ERROR_TEXT naming file, entry and reason at the first error
 */
gboolean hm_knowledge_compile (const char *data_folder, const char *out_path, char **report, GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS

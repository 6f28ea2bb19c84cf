/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-compile.h"
G_BEGIN_DECLS

/**
 * hm_knowledge_compile_listing: as hm_knowledge_compile(), and adds the path of every folder and file that it read to
 * @inputs (nullable; frees with g_free), so that a build can tell when to run again.
 */
gboolean hm_knowledge_compile_listing (const char *data_folder, const char *out_path, char **report, GPtrArray *inputs,
                                       GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS

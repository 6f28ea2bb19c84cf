/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <json-glib/json-glib.h>
G_BEGIN_DECLS

/**
 * cli_report_json_print: the finished object on standard output, always in UTF-8. A quantity without a provenance of its own gets that
 * of the part it stands in.
 * @root: holds an object; changed
 */
void cli_report_json_print (JsonNode *root);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <json-glib/json-glib.h>
G_BEGIN_DECLS

/* Members of a JSON object under way. Private to core/diagnosis. */
void  hm_json_add_text     (JsonBuilder *builder, const char *member, const char *text);
void  hm_json_add_number   (JsonBuilder *builder, const char *member, double value);
void  hm_json_add_flag     (JsonBuilder *builder, const char *member, gboolean value);
void  hm_json_begin_array  (JsonBuilder *builder, const char *member);
void  hm_json_begin_object (JsonBuilder *builder, const char *member);
char *hm_json_finish       (JsonBuilder *builder, gboolean pretty);   /* (transfer full) */

G_END_DECLS

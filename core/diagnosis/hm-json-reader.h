/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <json-glib/json-glib.h>
#include "hm-model.h"
G_BEGIN_DECLS

/* Members of a JSON object, with errors that name the member. Private to core/diagnosis. */
JsonNode   *hm_json_parse      (const char *text, gsize length, GError **error);                 /* (transfer full) */
JsonObject *hm_json_get_object (JsonObject *from, const char *member, GError **error);           /* borrowed; NULL with @error */
JsonArray  *hm_json_get_array  (JsonObject *from, const char *member, GError **error);           /* borrowed; NULL with @error */
const char *hm_json_get_text   (JsonObject *from, const char *member, GError **error);           /* borrowed; NULL with @error */
gboolean    hm_json_get_number (JsonObject *from, const char *member, double *out, GError **error);
gboolean    hm_json_get_flag   (JsonObject *from, const char *member);                           /* missing: FALSE */
JsonObject *hm_json_element_object (JsonArray *array, guint i, const char *what, GError **error);   /* borrowed */
const char *hm_json_element_text   (JsonArray *array, guint i, const char *what, GError **error);   /* borrowed */

G_END_DECLS

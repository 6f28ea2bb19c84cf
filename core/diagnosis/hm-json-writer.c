/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-json-writer.h"

void
hm_json_add_text (JsonBuilder *builder, const char *member, const char *text)
{
  json_builder_set_member_name (builder, member);
  json_builder_add_string_value (builder, text);
}

void
hm_json_add_number (JsonBuilder *builder, const char *member, double value)
{
  json_builder_set_member_name (builder, member);
  json_builder_add_double_value (builder, value);
}

void
hm_json_add_flag (JsonBuilder *builder, const char *member, gboolean value)
{
  json_builder_set_member_name (builder, member);
  json_builder_add_boolean_value (builder, value);
}

void
hm_json_begin_array (JsonBuilder *builder, const char *member)
{
  json_builder_set_member_name (builder, member);
  json_builder_begin_array (builder);
}

void
hm_json_begin_object (JsonBuilder *builder, const char *member)
{
  json_builder_set_member_name (builder, member);
  json_builder_begin_object (builder);
}

char *
hm_json_finish (JsonBuilder *builder, gboolean pretty)
{
  g_autoptr (JsonNode) root = json_builder_get_root (builder);

  return json_to_string (root, pretty);
}

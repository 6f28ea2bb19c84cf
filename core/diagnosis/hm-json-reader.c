/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-json-reader.h"

#define MOST_BYTES (16u * 1024 * 1024)

static gboolean
refuse (GError **error, HmModelError code, const char *member, const char *wanted)
{
  g_set_error (error, HM_MODEL_ERROR, code, "“%s” has to be %s", member, wanted);
  return FALSE;
}

JsonNode *
hm_json_parse (const char *text, gsize length, GError **error)
{
  g_autoptr (JsonParser) parser = json_parser_new_immutable ();
  g_autoptr (GError) inner = NULL;

  if (length > MOST_BYTES)
    g_set_error (error, HM_MODEL_ERROR, HM_MODEL_ERROR_SIZE, "the text is over 16 MiB long; a model is a few hundred KiB at most");
  else if (!g_utf8_validate_len (text, length, NULL))
    g_set_error_literal (error, HM_MODEL_ERROR, HM_MODEL_ERROR_SYNTAX, "the text is not UTF-8; JSON in UTF-8 is accepted");
  else if (!json_parser_load_from_data (parser, text, (gssize) length, &inner))
    g_set_error (error, HM_MODEL_ERROR, HM_MODEL_ERROR_SYNTAX, "the text is not JSON: %s", inner->message);
  else if (json_parser_get_root (parser) == NULL)
    g_set_error_literal (error, HM_MODEL_ERROR, HM_MODEL_ERROR_SYNTAX, "the text is empty; JSON is accepted");
  else
    return json_node_copy (json_parser_get_root (parser));
  return NULL;
}

JsonObject *
hm_json_get_object (JsonObject *from, const char *member, GError **error)
{
  JsonNode *node = json_object_get_member (from, member);

  if (node != NULL && JSON_NODE_HOLDS_OBJECT (node))
    return json_node_get_object (node);
  refuse (error, HM_MODEL_ERROR_VALUE, member, "an object");
  return NULL;
}

JsonArray *
hm_json_get_array (JsonObject *from, const char *member, GError **error)
{
  JsonNode *node = json_object_get_member (from, member);

  if (node != NULL && JSON_NODE_HOLDS_ARRAY (node))
    return json_node_get_array (node);
  refuse (error, HM_MODEL_ERROR_VALUE, member, "an array");
  return NULL;
}

static const char *
node_text (JsonNode *node)
{
  if (node != NULL && JSON_NODE_HOLDS_VALUE (node) && json_node_get_value_type (node) == G_TYPE_STRING)
    return json_node_get_string (node);
  return NULL;
}

const char *
hm_json_get_text (JsonObject *from, const char *member, GError **error)
{
  const char *text = node_text (json_object_get_member (from, member));

  if (text == NULL)
    refuse (error, HM_MODEL_ERROR_VALUE, member, "a text");
  return text;
}

gboolean
hm_json_get_number (JsonObject *from, const char *member, double *out, GError **error)
{
  JsonNode *node = json_object_get_member (from, member);
  GType type = node != NULL && JSON_NODE_HOLDS_VALUE (node) ? json_node_get_value_type (node) : G_TYPE_INVALID;

  if (type != G_TYPE_DOUBLE && type != G_TYPE_INT64)
    return refuse (error, HM_MODEL_ERROR_VALUE, member, "a number");
  *out = json_node_get_double (node);
  return TRUE;
}

gboolean
hm_json_get_flag (JsonObject *from, const char *member)
{
  JsonNode *node = json_object_get_member (from, member);

  return node != NULL && JSON_NODE_HOLDS_VALUE (node) && json_node_get_value_type (node) == G_TYPE_BOOLEAN
         && json_node_get_boolean (node);
}

JsonObject *
hm_json_element_object (JsonArray *array, guint i, const char *what, GError **error)
{
  JsonNode *node = json_array_get_element (array, i);

  if (JSON_NODE_HOLDS_OBJECT (node))
    return json_node_get_object (node);
  refuse (error, HM_MODEL_ERROR_VALUE, what, "a list of objects");
  return NULL;
}

const char *
hm_json_element_text (JsonArray *array, guint i, const char *what, GError **error)
{
  const char *text = node_text (json_array_get_element (array, i));

  if (text == NULL)
    refuse (error, HM_MODEL_ERROR_VALUE, what, "a list of texts");
  return text;
}

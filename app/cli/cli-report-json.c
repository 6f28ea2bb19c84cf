/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli-report-json.h"

#include <stdio.h>

static void pass_on (JsonNode *node, const char *provenance);

static void
pass_on_to_list (JsonArray *list, const char *provenance)
{
  for (guint i = 0; i < json_array_get_length (list); i++)
    pass_on (json_array_get_element (list, i), provenance);
}

static void
pass_on_to_object (JsonObject *object, const char *provenance)
{
  g_autoptr (GList) values = json_object_get_values (object);
  const char *own = json_object_get_string_member_with_default (object, "provenance", provenance);

  for (GList *l = values; l != NULL; l = l->next)
    pass_on (l->data, own);
  if (own != NULL && json_object_has_member (object, "unit") && !json_object_has_member (object, "provenance"))
    json_object_set_string_member (object, "provenance", own);
}

/* @provenance: (nullable): of the part that @node stands in */
static void
pass_on (JsonNode *node, const char *provenance)
{
  if (JSON_NODE_HOLDS_OBJECT (node))
    pass_on_to_object (json_node_get_object (node), provenance);
  else if (JSON_NODE_HOLDS_ARRAY (node))
    pass_on_to_list (json_node_get_array (node), provenance);
}

void
cli_report_json_print (JsonNode *root)
{
  g_autoptr (JsonGenerator) generator = json_generator_new ();
  g_autofree char *text = NULL;

  pass_on (root, NULL);
  json_generator_set_pretty (generator, TRUE);
  json_generator_set_root (generator, root);
  text = json_generator_to_data (generator, NULL);
  fputs (text, stdout);
  fputc ('\n', stdout);
}

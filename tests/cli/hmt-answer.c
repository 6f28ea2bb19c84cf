/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmt-answer.h"
#include "hmt-command.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

void
hmt_arguments_run (const char *arguments, int *code, char **out, char **err)
{
  g_auto(GStrv) parts = g_strsplit (arguments, "|", -1);
  g_autoptr(GPtrArray) argv = g_ptr_array_new ();
  HmtResult result;

  g_ptr_array_add (argv, (gpointer) g_getenv ("HALFMOON_TEST_CLI"));
  for (guint i = 0; parts[i] != NULL; i++)
    g_ptr_array_add (argv, parts[i]);
  g_ptr_array_add (argv, NULL);
  result = hmt_command_run ((const char * const *) argv->pdata, NULL, NULL);
  *code = result.code;
  *out = result.out;
  *err = result.err;
}

JsonNode *
hmt_answer (const char *arguments)
{
  g_autofree char *all = g_strconcat (arguments, "|--json", NULL);
  g_autofree char *out = NULL, *err = NULL;
  g_autoptr(GError) error = NULL;
  JsonNode *answer;
  int code;

  hmt_arguments_run (all, &code, &out, &err);
  if (code != 0)
    fail_msg ("%s: exit %d; %s", all, code, err);
  if (err[0] != '\0')
    fail_msg ("%s: said beside the answer: %s", all, err);
  answer = json_from_string (out, &error);
  if (answer == NULL)
    fail_msg ("%s: no JSON: %s", all, error != NULL ? error->message : "empty");
  return answer;
}

static JsonNode *
step (JsonNode *node, const char *name)
{
  if (JSON_NODE_HOLDS_OBJECT (node))
    return json_object_get_member (json_node_get_object (node), name);
  if (JSON_NODE_HOLDS_ARRAY (node) && g_ascii_isdigit (name[0])
      && g_ascii_strtoull (name, NULL, 10) < json_array_get_length (json_node_get_array (node)))
    return json_array_get_element (json_node_get_array (node), (guint) g_ascii_strtoull (name, NULL, 10));
  return NULL;
}

static JsonNode *
find (JsonNode *answer, const char *path)
{
  g_auto(GStrv) names = g_strsplit (path, ".", -1);
  JsonNode *node = answer;

  for (guint i = 0; names[i] != NULL && node != NULL; i++)
    node = step (node, names[i]);
  if (node == NULL)
    fail_msg ("the answer has no %s", path);
  return node;
}

double
hmt_answer_number (JsonNode *answer, const char *path)
{
  JsonNode *node = find (answer, path);

  if (!JSON_NODE_HOLDS_VALUE (node) || json_node_get_value_type (node) == G_TYPE_STRING)
    fail_msg ("%s is no number", path);
  return json_node_get_double (node);
}

const char *
hmt_answer_text (JsonNode *answer, const char *path)
{
  JsonNode *node = find (answer, path);

  if (!JSON_NODE_HOLDS_VALUE (node) || json_node_get_value_type (node) != G_TYPE_STRING)
    fail_msg ("%s is no text", path);
  return json_node_get_string (node);
}

guint
hmt_answer_length (JsonNode *answer, const char *path)
{
  JsonNode *node = find (answer, path);

  if (!JSON_NODE_HOLDS_ARRAY (node))
    fail_msg ("%s is no list", path);
  return json_array_get_length (json_node_get_array (node));
}

int
hmt_answer_find (JsonNode *answer, const char *path, const char *member, const char *text)
{
  guint n = hmt_answer_length (answer, path);

  for (guint i = 0; i < n; i++)
    {
      g_autofree char *at = g_strdup_printf ("%s.%u.%s", path, i, member);
      if (g_str_equal (hmt_answer_text (answer, at), text))
        return (int) i;
    }
  return -1;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli.h"

#include <glib/gi18n.h>

#include "hm-model-from-guide.h"
#include "hm-model-json.h"

static char *
model_as_json (const char *complaint, const char *layout, GError **error)
{
  g_autoptr (HmKnowledge) knowledge = cli_open_knowledge (error);
  g_autoptr (HmGuide) guide = knowledge != NULL ? hm_knowledge_load_guide (knowledge, complaint, layout, error) : NULL;
  g_autoptr (HmModel) model = guide != NULL ? hm_model_new_from_guide (guide, error) : NULL;

  return model != NULL ? hm_model_to_json (model) : NULL;
}

CliExit
cli_model (int argc, char **argv)
{
  g_autofree char *layout = NULL, *json = NULL;
  g_autoptr (GError) error = NULL;
  const GOptionEntry options[] = {
    { "layout", 'l', 0, G_OPTION_ARG_STRING, &layout, N_("The kind of machine: rider, walk-behind, stationary, handheld"), N_("LAYOUT") },
    { NULL }
  };
  CliExit code;

  if (!cli_parse_options (&argc, &argv, _("COMPLAINT"),
                          _("Prints causes, checks, access and incidents of a complaint as JSON, format halfmoon-diagnosis/1."),
                          options, &code))
    return code;
  if (argc != 2)
    return cli_usage ("model", _("One complaint is wanted, for example no-crank."));
  if (layout == NULL)
    return cli_usage ("model", _("A kind of machine is wanted: --layout rider, walk-behind, stationary or handheld."));
  json = model_as_json (argv[1], layout, &error);
  if (json == NULL)
    return cli_fail (error);
  g_print ("%s\n", json);
  return CLI_DONE;
}

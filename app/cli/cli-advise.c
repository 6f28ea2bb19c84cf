/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli.h"

#include <glib/gi18n.h>
#include <string.h>

#include "hm-belief-several.h"
#include "hm-model-json.h"
#include "hm-planner-several.h"

#define LOOK_AHEAD 3u     /* nobody waits at a button here */

static HmModel *
read_model (const char *path, GError **error)
{
  gsize length;
  g_autofree char *text = cli_io_read_file (path, &length, error);
  HmModel *model = text != NULL ? hm_model_new_from_json (text, length, error) : NULL;

  if (text != NULL && model == NULL)
    g_prefix_error (error, "%s: ", path);
  return model;
}

static GArray *
read_evidence (const HmModel *model, const char *path, GError **error)
{
  gsize length;
  g_autofree char *text = NULL;
  GArray *events;

  if (path == NULL)
    return g_array_new (FALSE, TRUE, sizeof (HmEvidence));
  text = cli_io_read_file (path, &length, error);
  events = text != NULL ? hm_evidence_list_from_json (model, text, length, error) : NULL;
  if (text != NULL && events == NULL)
    g_prefix_error (error, "%s: ", path);
  return events;
}

static char *
advise_single (HmModel *model, const HmEvidence *events, guint n, GError **error)
{
  g_autoptr (HmPlanner) planner = hm_planner_new (model, LOOK_AHEAD);
  HmBelief belief;
  HmPlan plan;

  hm_belief_compute (model, events, n, &belief, NULL);
  if (belief.impossible)
    {
      g_set_error_literal (error, HM_MODEL_ERROR, HM_MODEL_ERROR_VALUE, _("the evidence rules out every cause of the model"));
      return NULL;
    }
  hm_planner_best (planner, &belief, &plan);
  return hm_advice_to_json (model, belief.p, &plan);
}

static char *
advise_several (HmModel *model, const HmEvidence *events, guint n, GError **error)
{
  HmMarginals marginals;
  HmPlan plan;

  if (!hm_belief_compute_several (model, events, n, &marginals, error)
      || !hm_planner_several_best (model, events, n, &plan, NULL, error))
    return NULL;
  return hm_advice_to_json (model, marginals.p, &plan);
}

static char *
advise (const char *model_path, const char *evidence_path, GError **error)
{
  g_autoptr (HmModel) model = read_model (model_path, error);
  g_autoptr (GArray) events = model != NULL ? read_evidence (model, evidence_path, error) : NULL;
  const HmEvidence *list;

  if (events == NULL)
    return NULL;
  list = (const HmEvidence *) (gpointer) events->data;
  return model->mode == HM_MODEL_SINGLE_FAULT ? advise_single (model, list, events->len, error)
                                              : advise_several (model, list, events->len, error);
}

CliExit
cli_advise (int argc, char **argv)
{
  g_autofree char *evidence = NULL, *json = NULL;
  g_autoptr (GError) error = NULL;
  const GOptionEntry options[] = {
    { "evidence", 'e', 0, G_OPTION_ARG_FILENAME, &evidence, N_("What was found so far: a JSON list of events"), N_("FILE") },
    { NULL }
  };
  CliExit code;

  if (!cli_parse_options (&argc, &argv, _("MODEL-FILE"),
                          _("Reads a model (or a file with a member “model”) and prints the probability of every cause and the best next step."),
                          options, &code))
    return code;
  if (argc != 2)
    return cli_usage ("advise", _("One model file is wanted."));
  json = advise (argv[1], evidence, &error);
  if (json == NULL)
    return cli_fail (error);
  g_print ("%s\n", json);
  return CLI_DONE;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The words behind the options of a torque, and what follows from them; refuses what cannot be answered. */
#include "cli-torque.h"

#include <glib/gi18n.h>
#include <string.h>

#include "cli-read.h"
#include "hm-adapter.h"
#include "hm-tap.h"

#define USUAL_SCHEME "three-pass cross"

/* @sentence has one “%s” for what was read. */
static gboolean
refuse (const char *sentence, const char *text, GError **error)
{
  g_auto (GStrv) halves = g_strsplit (sentence, "%s", 2);
  g_autofree char *message = g_strjoinv (text, halves);

  g_set_error_literal (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_NOT_COMPUTABLE, message);
  return FALSE;
}

static gboolean
read_seat (const char *text, HmSeat *out, GError **error)
{
  for (HmSeat seat = HM_SEAT_PLAIN; text != NULL && seat < HM_SEAT_N_SEATS; seat++)
    if (strcmp (text, cli_words_seat (seat)) == 0)
      {
        *out = seat;
        return TRUE;
      }
  return text == NULL || refuse (_("--seat: “%s” is not known; there are: plain, flange, washer"), text, error);
}

/* 0.75 and 75 % are the same; a bare number above 1 is percent. */
static gboolean
read_share (const char *text, double *out, GError **error)
{
  HmQuantity share;

  *out = hm_tightening_share_usual;
  if (text == NULL)
    return TRUE;
  if (!(hm_quantity_parse (text, HM_QUANTITY_NUMBER, HM_UNIT_NONE, &share, NULL) && share.value <= 1.0)
      && !hm_quantity_parse (text, HM_QUANTITY_RATIO, HM_UNIT_PERCENT, &share, error))
    return cli_refuse ("--share-of-proof", error);
  if (share.value < hm_tightening_share_low || share.value > hm_tightening_share_high)
    {
      g_autofree char *range = hm_quantity_range_format ((HmQuantityRange) { cli_quantity_ratio (hm_tightening_share_low),
                                                                             cli_quantity_ratio (hm_tightening_share_high) },
                                                         HM_UNIT_PERCENT, 0, &hm_format_default);
      g_set_error (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_NOT_COMPUTABLE,
                   _("--share-of-proof: “%s” of the proof load is not accepted; %s is, as 0.75 or 75 %%"), text, range);
      return FALSE;
    }
  *out = share.value;
  return TRUE;
}

static gboolean
read_engaged (const char *text, HmLength *out, GError **error)
{
  HmQuantity length;

  if (text == NULL)
    return TRUE;
  if (!cli_read_length ("--engaged", text, &length, error))
    return FALSE;
  out->mm = length.value;
  return TRUE;
}

/* A number above zero; 0 where the option was left out. */
static gboolean
read_positive (const char *option, const char *text, const char *example, double *out, GError **error)
{
  HmQuantity read;

  if (text == NULL)
    return TRUE;
  if (hm_quantity_parse (text, HM_QUANTITY_NUMBER, HM_UNIT_NONE, &read, NULL) && read.value > 0.0)
    {
      *out = read.value;
      return TRUE;
    }
  g_set_error (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_NOT_COMPUTABLE, _("%s: “%s” is not accepted; a number such as %s is"),
               option, text, example);
  return FALSE;
}

static gboolean
read_friction (const CliTorqueOptions *options, const HmTables *tables, CliTorqueRequest *out, GError **error)
{
  HmTighteningQuestion *question = &out->question;

  if (options->state != NULL && !hm_friction_parse (options->state, &question->friction, error))
    return cli_refuse ("--state", error);
  if (!read_positive ("--nut-factor", options->nut_factor, "0.2", &question->nut_factor, error)
      || !read_positive ("--thread-friction", options->thread_friction, "0.12", &question->mu_thread, error)
      || !read_positive ("--head-friction", options->head_friction, "0.12", &question->mu_bearing, error))
    return FALSE;
  if (hm_tightening_find_friction (tables, question, &out->friction, error))
    return TRUE;
  if (options->nut_factor != NULL)
    g_prefix_error (error, "--nut-factor: “%s”: ", options->nut_factor);
  else if (options->thread_friction != NULL)
    g_prefix_error (error, "--thread-friction “%s”, --head-friction “%s”: ", options->thread_friction, options->head_friction);
  return FALSE;
}

static gboolean
read_question (const char *thread, const CliTorqueOptions *options, const HmTables *tables, CliTorqueRequest *request,
               GError **error)
{
  HmTighteningQuestion *out = &request->question;

  out->strength = options->strength != NULL ? options->strength : "";
  if (!hm_thread_parse (thread, tables, &out->thread, error))
    return FALSE;
  request->row = hm_thread_find_row (&out->thread, tables);
  if (options->into != NULL && !hm_material_parse (options->into, &out->into, error))
    return cli_refuse ("--into", error);
  if (out->into == HM_MATERIAL_PLASTIC)
    return refuse (_("--into: “%s” creeps under a bolt, so no torque follows from the thread; steel, cast-aluminium, die-cast-aluminium and copper are accepted"),
                   options->into, error);
  return read_seat (options->seat, &out->seat, error) && read_share (options->share, &out->share_of_proof, error)
         && read_engaged (options->engaged, &out->engaged, error) && read_friction (options, tables, request, error);
}

static gboolean
work_out_preload (const CliTorqueOptions *options, CliTorqueRequest *request, GError **error)
{
  const HmFrictionRow *friction = &request->friction;
  const HmThread *thread = &request->question.thread;

  if (!cli_read_force ("--preload", options->preload, &request->preload, error))
    return FALSE;
  request->low = hm_torque_from_nut_factor (thread, request->preload, friction->nut_factor_low);
  request->target = hm_torque_from_nut_factor (thread, request->preload, friction->nut_factor);
  request->high = hm_torque_from_nut_factor (thread, request->preload, friction->nut_factor_high);
  return TRUE;
}

static gboolean
work_out_given (const CliTorqueOptions *options, const HmTables *tables, CliTorqueRequest *request, GError **error)
{
  HmQuantityRange given;

  if (!hm_quantity_parse_range (options->given, HM_QUANTITY_TORQUE, HM_UNIT_NONE, &given, error))
    return cli_refuse ("--given", error);
  if (given.low.value <= 0.0)
    return refuse (_("--given: “%s” is no torque; one above zero or a range is accepted, such as 17 lbf·ft or 20-25 N·m"),
                   options->given, error);
  return hm_tightening_from_torque (tables, &request->question, (HmTorque) { given.low.value }, (HmTorque) { given.high.value },
                                    &request->tightening, error);
}

/* Torque, and what follows from it. */
static gboolean
work_out (const CliTorqueOptions *options, const HmTables *tables, CliTorqueRequest *request, GError **error)
{
  gboolean known;

  request->basis = options->preload != NULL ? CLI_TORQUE_FROM_PRELOAD : options->given != NULL ? CLI_TORQUE_GIVEN : CLI_TORQUE_FROM_CLASS;
  if (request->basis == CLI_TORQUE_FROM_PRELOAD)
    return work_out_preload (options, request, error);
  known = request->basis == CLI_TORQUE_GIVEN ? work_out_given (options, tables, request, error)
                                             : hm_tightening_work_out (tables, &request->question, &request->tightening, error);
  if (!known && options->engaged != NULL && g_error_matches (error != NULL ? *error : NULL, HM_TORQUE_ERROR,
                                                             HM_TORQUE_ERROR_NOT_COMPUTABLE))
    g_prefix_error (error, "--engaged: “%s”: ", options->engaged);
  request->low = request->tightening.low;
  request->target = request->tightening.target;
  request->high = request->tightening.high;
  request->preload = request->tightening.preload;
  return known;
}

static gboolean
read_adapter (const CliTorqueOptions *options, CliTorqueRequest *out, GError **error)
{
  HmQuantity adapter, lever;

  out->setting = out->target;
  out->has_adapter = options->adapter != NULL;
  if (!out->has_adapter)
    return TRUE;
  if (!cli_read_length ("--adapter", options->adapter, &adapter, error) || !cli_read_length ("--wrench-length", options->length,
                                                                                             &lever, error)
      || (options->angle != NULL && !cli_read_degrees ("--angle", options->angle, &out->angle_degrees, error)))
    return FALSE;
  out->adapter.mm = adapter.value;
  out->lever.mm = lever.value;
  if (hm_adapter_setting (out->target, out->lever, out->adapter, out->angle_degrees, &out->setting, error))
    return TRUE;
  g_prefix_error (error, "--adapter “%s”, --wrench-length “%s”: ", options->adapter, options->length);
  return FALSE;
}

static gboolean
read_wrenches (const CliTorqueOptions *options, CliTorqueRequest *out, GError **error)
{
  out->wrenches = g_array_new (FALSE, TRUE, sizeof (HmShopWrench));
  for (guint i = 0; options->wrenches != NULL && options->wrenches[i] != NULL; i++)
    {
      HmShopWrench wrench;

      if (!hm_shop_wrench_parse (options->wrenches[i], &wrench, error))
        return cli_refuse ("--wrench", error);
      g_array_append_val (out->wrenches, wrench);
    }
  return TRUE;
}

/* The schemes of the table, for a refusal. */
static char *
list_schemes (const HmTables *tables)
{
  gsize n;
  const HmPassRow *rows = hm_tables_get_passes (tables, &n);
  GString *list = g_string_new (NULL);

  for (gsize i = 0; i < n; i++)
    if (i == 0 || strcmp (rows[i].scheme, rows[i - 1].scheme) != 0)
      g_string_append_printf (list, "%s%s", list->len > 0 ? ", " : "", rows[i].scheme);
  return g_string_free (list, FALSE);
}

static gboolean
read_order (const CliTorqueOptions *options, const HmTables *tables, CliTorqueRequest *out, GError **error)
{
  gsize n;
  guint bolts;

  if (options->bolts == NULL)
    return TRUE;
  if (!cli_read_whole ("--bolts", options->bolts, 1, HM_SEQUENCE_MAX_BOLTS, &bolts, error))
    return FALSE;
  if (!hm_pattern_parse (options->pattern, &out->pattern, error))
    return cli_refuse ("--pattern", error);
  out->scheme = options->passes != NULL ? options->passes : USUAL_SCHEME;
  if (hm_sequence_passes (tables, out->scheme, &n) == NULL)
    {
      g_autofree char *list = list_schemes (tables);
      g_set_error (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_NOT_COMPUTABLE, _("--passes: “%s” is not known; there are: %s"),
                   out->scheme, list);
      return FALSE;
    }
  return hm_sequence_init (&out->order, hm_sequence_layout (out->pattern, bolts), bolts);
}

gboolean
cli_torque_read (const char *thread, const CliTorqueOptions *options, const HmTables *tables, CliTorqueRequest *out, GError **error)
{
  return read_question (thread, options, tables, out, error) && work_out (options, tables, out, error)
         && read_adapter (options, out, error) && read_wrenches (options, out, error)
         && read_order (options, tables, out, error);
}

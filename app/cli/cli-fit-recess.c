/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Recesses: hexalobular keys, and hexagon keys. */
#include "cli-fit.h"

#include <glib/gi18n.h>
#include <math.h>

#include "hm-hexalobular.h"
#include "hm-key-answer.h"

#define UNKNOWN "not known"

static const HmProvenance lobe_source = { HM_PROVENANCE_COMPUTED,
  N_("from the sizes over points and hollows (ISO 10664); below 0.9 of the hold counts as rounding, common practice") };
static const HmProvenance key_source = { HM_PROVENANCE_COMPUTED,
  N_("from the nominal sizes; what still counts as usable is common practice") };

static const HmProvenance external_source = { HM_PROVENANCE_COMMON_PRACTICE, NULL };

static const HmProvenance *
source_of (const HmDrive *recess)
{
  if (recess->kind == HM_DRIVE_HEXALOBULAR_EXTERNAL)
    return &external_source;
  return recess->kind == HM_DRIVE_HEX_SOCKET ? &key_source : &lobe_source;
}

/* The verdict on a key, as facts of the part or item that is open. */
static void
report_key_fit (CliReport *report, const char *label, const HmKeyFit *fit)
{
  const char *word = UNKNOWN, *shown = _("not known: a size that the answer needs is not published");

  if (fit->known)
    shown = cli_words_fit_verdict (fit->verdict, &word);
  cli_report_word (report, "verdict", label, word, shown);
  if (fit->known && fit->key.kind == HM_DRIVE_HEXALOBULAR)
    cli_report_value (report, "hold", label[0] != '\0' ? _("Share of the right key’s hold") : _("share of the right key’s hold"),
                      cli_quantity_ratio (fit->hold), CLI_BENCH, NULL);
}

/* For programs. No limits of keys and recesses are known, so the clearance is not either. */
static void
report_match (CliReport *report, const HmKeyFit *fit)
{
  g_autofree char *name = hm_drive_format (&fit->key, cli_report_get_format (report));
  g_autofree char *driver = cli_words_plain (name);
  const char *word = UNKNOWN;

  if (fit->known)
    cli_words_fit_verdict (fit->verdict, &word);
  cli_report_begin_item (report, driver);
  cli_report_word (report, "driver", NULL, driver, NULL);
  cli_report_plain_number (report, "clearance_min_mm", NAN);
  cli_report_plain_number (report, "clearance_max_mm", NAN);
  cli_report_plain_number (report, "free_angle_deg", NAN);
  cli_report_word (report, "verdict", NULL, word, NULL);
  cli_report_end (report);
}

static void
report_matches (CliReport *report, const HmDrive *recess, const HmKeyFit *fits, guint n_fits)
{
  if (!cli_report_is_json (report))
    return;
  cli_report_begin_list (report, "matches", NULL, source_of (recess));
  for (guint i = 0; i < n_fits; i++)
    report_match (report, &fits[i]);
  cli_report_end (report);
}

static void
report_keys (CliReport *report, const HmDrive *recess, const HmTables *tables)
{
  g_autoptr (GArray) found = hm_key_fits (recess, tables);

  cli_report_begin_list (report, "keys", _("Keys of this size and next to it, best first"), source_of (recess));
  for (guint i = 0; i < found->len; i++)
    {
      const HmKeyFit *fit = &g_array_index (found, HmKeyFit, i);
      g_autofree char *name = hm_drive_format (&fit->key, cli_report_get_format (report));

      cli_report_begin_item (report, name);
      cli_report_word (report, "size", NULL, name, NULL);
      report_key_fit (report, "", fit);
      cli_report_end (report);
    }
  cli_report_end (report);
  report_matches (report, recess, (const HmKeyFit *) (gconstpointer) found->data, found->len);
}

/* The key asked for, in the recess asked for. */
static void
report_pair (CliReport *report, const CliFitRequest *request, const HmTables *tables)
{
  HmKeyFit fit = { .key = request->size, .known = TRUE };
  HmHexalobularFit lobes;
  g_autofree char *on = hm_drive_format (&request->on, cli_report_get_format (report));

  if (request->size.kind == HM_DRIVE_HEX_SOCKET)
    fit.verdict = hm_key_fit (request->size.size, request->on.size);
  else if ((fit.known = hm_hexalobular_fit (request->size.number, request->on.number, tables, &lobes)))
    {
      fit.verdict = lobes.verdict;
      fit.hold = lobes.hold;
    }
  cli_report_word (report, "on", _("In a recess of"), on, NULL);
  cli_report_begin (report, "fit", _("How it sits"));
  report_key_fit (report, _("Verdict"), &fit);
  cli_report_provenance (report, *source_of (&request->size));
  cli_report_end (report);
  report_matches (report, &request->size, &fit, 1);
}

static void
report_geometry (CliReport *report, const HmDrive *size, const HmTables *tables)
{
  const HmHexalobularRow *row = NULL;

  if (size->kind == HM_DRIVE_HEX_SOCKET)
    {
      cli_report_value (report, "across_flats", _("Across flats"), cli_quantity_length (size->size), CLI_FINE, NULL);
      return;
    }
  row = hm_hexalobular_find (size->number, size->kind == HM_DRIVE_HEXALOBULAR_EXTERNAL, tables);
  if (row == NULL)
    return;                         /* refused when it was read */
  cli_report_value (report, "over_points", _("Over the points"), cli_quantity_length (row->a), CLI_FINE, &row->provenance);
  if (row->b.mm > 0.0)
    cli_report_value (report, "over_hollows", _("Over the hollows"), cli_quantity_length (row->b), CLI_FINE, &row->provenance);
}

void
cli_report_recess (CliReport *report, const CliFitRequest *request, const HmTables *tables)
{
  g_autofree char *name = hm_drive_format (&request->size, cli_report_get_format (report));

  cli_report_word (report, "size", _("Size"), name, NULL);
  cli_report_provenance_of_rest (report, *source_of (&request->size));
  report_geometry (report, &request->size, tables);
  if (request->has_on)
    report_pair (report, request, tables);
  else
    {
      cli_report_carriers (report, &request->size, tables);
      report_keys (report, &request->size, tables);
    }
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
/* At the wrench: its setting with an adapter, which wrench, and the order of several bolts. */
#include "cli-torque.h"

#include <glib/gi18n.h>

static const HmProvenance adapter_source = { HM_PROVENANCE_PUBLISHED, "TM 9-254, paragraph 4-1 (US Army)" };
static const HmProvenance wrench_source = { HM_PROVENANCE_STANDARD,
                                            N_("ISO 6789-1: vouched for from 20 to 100 % of the highest torque") };
static const HmProvenance order_source = { HM_PROVENANCE_COMMON_PRACTICE, NULL };

static void
report_wrench (CliReport *report, const CliTorqueRequest *request)
{
  static const char * const words[] = { "good", "too large", "too small" };
  const HmShopWrench *wrenches = (const HmShopWrench *) (gpointer) request->wrenches->data;
  HmWrenchFit fit = hm_shop_wrench_choose (wrenches, request->wrenches->len, request->setting);
  g_autofree char *name = NULL;
  const char *shown = _("good for it");

  if (fit.index < 0)
    return;
  if (fit.verdict == HM_WRENCH_TOO_LARGE)
    shown = _("too large: nobody vouches for it so low on its scale");
  else if (fit.verdict == HM_WRENCH_TOO_SMALL)
    shown = _("too small");
  name = hm_shop_wrench_format (&wrenches[fit.index], cli_report_get_format (report));
  cli_report_begin (report, "wrench", _("Which wrench"));
  cli_report_word (report, "range", _("Take"), name, NULL);
  cli_report_word (report, "verdict", _("It is"), words[fit.verdict], shown);
  cli_report_value (report, "share", _("Share of its highest torque"), cli_quantity_ratio (fit.share), CLI_BENCH, NULL);
  cli_report_provenance (report, wrench_source);
  cli_report_end (report);
}

void
cli_report_setting (CliReport *report, const CliTorqueRequest *request)
{
  if (request->has_adapter)
    {
      cli_report_begin (report, "adapter", _("With the adapter"));
      cli_report_value (report, "setting", _("Set the wrench to"), cli_quantity_torque (request->setting), CLI_BENCH, NULL);
      cli_report_value (report, "adapter", _("Adapter"), cli_quantity_length (request->adapter), CLI_BENCH, NULL);
      cli_report_value (report, "lever", _("Handle to square drive"), cli_quantity_length (request->lever), CLI_BENCH, NULL);
      cli_report_degrees (report, "angle", _("Angle"), request->angle_degrees, request->angle_degrees);
      cli_report_provenance (report, adapter_source);
      cli_report_end (report);
      cli_report_caution (report, _("Hold the wrench at the middle of its handle: the setting is right only there."));
    }
  report_wrench (report, request);
}

static const char *
numbering (HmBoltLayout layout)
{
  switch (layout)
    {
    case HM_LAYOUT_RECTANGULAR:
      return _("Bolts are numbered clockwise from the top left.");
    case HM_LAYOUT_TWO_ROWS:
      return _("Bolts are numbered row by row from the left.");
    case HM_LAYOUT_INLINE:
      return _("Bolts are numbered from the left.");
    case HM_LAYOUT_ROUND:
    default:
      return _("Bolts are numbered clockwise from the top.");
    }
}

static void
report_passes (CliReport *report, const CliTorqueRequest *request, const HmTables *tables)
{
  gsize n;
  const HmPassRow *passes = hm_sequence_passes (tables, request->scheme, &n);

  cli_report_begin_list (report, "passes", _("Passes"), NULL);
  for (gsize i = 0; i < n; i++)
    {
      g_autofree char *heading = g_strdup_printf (_("Pass %d"), passes[i].pass);

      cli_report_begin_item (report, heading);
      cli_report_count (report, "pass", NULL, passes[i].pass);
      cli_report_value (report, "setting", "", cli_quantity_torque (hm_sequence_pass_torque (&passes[i], request->setting)),
                        CLI_BENCH, NULL);
      cli_report_value (report, "share", "", cli_quantity_ratio (passes[i].share), CLI_BENCH, NULL);
      cli_report_word (report, "way", "", passes[i].round ? "round" : "in order",
                       passes[i].round ? _("round, one after the other") : _("in the order above"));
      cli_report_provenance (report, passes[i].provenance);
      cli_report_end (report);
    }
  cli_report_end (report);
}

void
cli_report_order (CliReport *report, const CliTorqueRequest *request, const HmTables *tables)
{
  static const char * const layouts[] = { "round", "rectangular", "two rows", "inline" };
  const HmSequence *order = &request->order;
  guint bolts[HM_SEQUENCE_MAX_BOLTS];

  if (order->n_bolts == 0)
    return;
  hm_sequence_order (order, bolts);
  cli_report_begin (report, "order", _("Order"));
  cli_report_count (report, "bolts", NULL, order->n_bolts);
  cli_report_word (report, "layout", NULL, layouts[order->layout], NULL);
  cli_report_counts (report, "sequence", _("Tighten"), bolts, order->n_bolts,
                     request->pattern == HM_PATTERN_NONE ? _("in any order") : NULL);
  if (request->pattern != HM_PATTERN_NONE)
    cli_report_say (report, numbering (order->layout));
  cli_report_say (report, _("Loosen in the reverse order, a little each round."));
  cli_report_provenance (report, order_source);
  cli_report_end (report);
  report_passes (report, request, tables);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The torque, what it does to bolt and hole, and from where each number is. */
#include "cli-torque.h"

#include <glib/gi18n.h>
#include <math.h>

#include "cli-designation.h"

static const HmProvenance equation = { HM_PROVENANCE_COMPUTED, N_("T = K F d, from the preload given, thread and friction") };

const char *
cli_words_seat (HmSeat seat)
{
  static const char * const words[] = { N_("plain"), N_("flange"), N_("washer") };

  return seat < HM_SEAT_N_SEATS ? words[seat] : NULL;
}

static void
report_friction (CliReport *report, const CliTorqueRequest *request)
{
  const HmTighteningQuestion *question = &request->question;
  const HmProvenance given = { HM_PROVENANCE_COMPUTED, N_("the friction that is given") };
  const char *name = hm_friction_name (question->friction);

  if (question->nut_factor <= 0.0 && question->mu_thread <= 0.0)
    {
      cli_report_word (report, "state", _("Surface"), name, _(name));
      return;
    }
  cli_report_word (report, "state", NULL, "given", NULL);
  if (question->mu_thread <= 0.0)
    return;                         /* the nut factor stands beside the torque */
  cli_report_value (report, "thread_friction", _("Friction in the thread"), cli_quantity_number (question->mu_thread), CLI_BENCH,
                    &given);
  cli_report_value (report, "head_friction", _("Friction under the head"), cli_quantity_number (question->mu_bearing), CLI_BENCH,
                    &given);
}

static void
report_question (CliReport *report, const CliTorqueRequest *request)
{
  const HmTighteningQuestion *question = &request->question;
  g_autofree char *thread = hm_thread_format (&question->thread, cli_report_get_format (report));

  cli_report_word (report, "thread", _("Thread"), thread, NULL);
  if (request->basis != CLI_TORQUE_FROM_PRELOAD)
    {
      cli_report_word (report, "class", _("Class"), question->strength, NULL);
      cli_report_word (report, "into", _("Into"), hm_material_name (question->into), _(hm_material_name (question->into)));
      cli_report_word (report, "seat", _("Seat"), cli_words_seat (question->seat), _(cli_words_seat (question->seat)));
    }
  report_friction (report, request);
}

/* For programs: the main figures once more, in the unit of their name. */
static void
report_plain (CliReport *report, const CliTorqueRequest *request)
{
  const HmTightening *tightening = &request->tightening;
  const HmProvenance margin = { HM_PROVENANCE_COMPUTED,
                                N_("load at which the threads strip over the preload at the target torque; strip areas by ASME B1.1, appendix B") };
  g_autofree char *designation = cli_designation_for_thread (&request->question.thread, request->row);
  gboolean has_class = request->basis != CLI_TORQUE_FROM_PRELOAD;

  cli_report_word (report, "designation", NULL, designation, NULL);
  cli_report_begin (report, "torque_nm", NULL);
  cli_report_plain_number (report, "low", request->low.newton_metres);
  cli_report_plain_number (report, "target", request->target.newton_metres);
  cli_report_plain_number (report, "high", request->high.newton_metres);
  cli_report_end (report);
  cli_report_plain_number (report, "preload_n", request->preload.newtons);
  cli_report_plain_number (report, "stress_share_of_proof", has_class ? tightening->proof_share : NAN);
  cli_report_begin (report, "strip", NULL);
  cli_report_plain_number (report, "margin", has_class && tightening->strip_margin > 0.0 ? tightening->strip_margin : NAN);
  cli_report_provenance_of_rest (report, margin);
  cli_report_end (report);
  cli_report_provenance_of_rest (report, has_class ? tightening->provenance : equation);
}

/* With a surface state the torque has a spread; friction that is given has none. */
static void
report_torque (CliReport *report, const CliTorqueRequest *request)
{
  const HmProvenance *source = request->basis == CLI_TORQUE_FROM_PRELOAD ? &equation : &request->tightening.provenance;
  const HmProvenance lore = { HM_PROVENANCE_COMMON_PRACTICE, NULL };
  const HmFrictionRow *friction = &request->friction;
  gboolean has_spread = friction->nut_factor_low < friction->nut_factor_high;

  cli_report_begin (report, "torque", request->basis == CLI_TORQUE_GIVEN ? _("The torque given") : _("Tighten to"));
  cli_report_value (report, "target", _("Torque"), cli_quantity_torque (request->target), CLI_BENCH, source);
  cli_report_range (report, "range",
                    request->basis == CLI_TORQUE_GIVEN ? _("From low to high")
                    : has_spread ? _("For the same pull, from the slickest friction to the roughest") : NULL,
                    cli_quantity_torque (request->low), cli_quantity_torque (request->high), CLI_BENCH, source);
  cli_report_value (report, "nut_factor", _("Nut factor K"), cli_quantity_number (friction->nut_factor), CLI_BENCH,
                    &friction->provenance);
  if (has_spread)
    cli_report_range (report, "nut_factor_range", _("K to expect of parts as found"),
                      cli_quantity_number (friction->nut_factor_low), cli_quantity_number (friction->nut_factor_high), CLI_BENCH,
                      &lore);
  cli_report_end (report);
}

static void
report_governs (CliReport *report, HmTorqueGoverns governs)
{
  static const char * const words[] = { "proof", "aluminium", "stripping", "torque given" };
  const char *shown = _("the strength of the bolt");

  if (governs == HM_GOVERNS_ALUMINIUM)
    shown = _("the strength of the bolt, less what is taken off for aluminium");
  else if (governs == HM_GOVERNS_STRIPPING)
    shown = _("what the thread in the hole holds");
  else if (governs == HM_GOVERNS_TORQUE_GIVEN)
    shown = _("the torque that is given");
  cli_report_word (report, "governs", _("Set by"), words[governs], shown);
}

static void
report_preload (CliReport *report, const HmTightening *tightening)
{
  const HmProvenance spread = { HM_PROVENANCE_COMPUTED, N_("from the spread of friction and of a torque wrench (ISO 6789-1)") };
  const HmProvenance stress = { HM_PROVENANCE_COMPUTED, N_("von Mises stress while the wrench turns, VDI 2230") };

  cli_report_begin (report, "preload", _("Preload"));
  report_governs (report, tightening->governs);
  cli_report_value (report, "aimed", _("Aimed at"), cli_quantity_force (tightening->preload), CLI_BENCH, &tightening->provenance);
  cli_report_range (report, "expected", _("To expect with a torque wrench"), cli_quantity_force (tightening->preload_low),
                    cli_quantity_force (tightening->preload_high), CLI_BENCH, &spread);
  if (tightening->stress.megapascals > 0.0)
    cli_report_value (report, "stress", _("Stress in the bolt"), cli_quantity_stress (tightening->stress), CLI_BENCH, &stress);
  if (tightening->yield.megapascals > 0.0)
    cli_report_value (report, "yield", _("Yield strength"), cli_quantity_stress (tightening->yield), CLI_BENCH,
                      &tightening->strength_provenance);
  cli_report_end (report);
}

static void
report_weakest (CliReport *report, HmStripWeakest weakest)
{
  static const char * const words[] = { "bolt breaks", "hole strips", "bolt strips" };
  const char *shown = weakest == HM_STRIP_HOLE_STRIPS ? _("the thread in the hole strips")
                      : weakest == HM_STRIP_BOLT_STRIPS ? _("the thread of the bolt strips") : _("the bolt breaks");

  cli_report_word (report, "weakest", _("First to give way when overtightened"), words[weakest], shown);
}

static void
report_limits (CliReport *report, const HmTightening *tightening)
{
  const HmProvenance areas = { HM_PROVENANCE_COMPUTED,
                               N_("strip areas by ASME B1.1, appendix B; shear strength of the material at its lowest") };
  const HmProvenance twist = { HM_PROVENANCE_COMPUTED, N_("yield while the wrench twists the bolt, VDI 2230") };
  const HmProvenance given = { HM_PROVENANCE_COMPUTED, N_("the length that is given") };
  const HmProvenance assumed = { HM_PROVENANCE_COMMON_PRACTICE, NULL };

  cli_report_begin (report, "limits", _("Limits"));
  cli_report_value (report, "proof_load", _("Proof load"), cli_quantity_force (tightening->proof_load), CLI_BENCH,
                    &tightening->strength_provenance);
  if (tightening->yield_load.newtons > 0.0)
    cli_report_value (report, "yield_load", _("The bolt stays longer from"), cli_quantity_force (tightening->yield_load),
                      CLI_BENCH, &twist);
  if (tightening->engaged_is_known)
    cli_report_value (report, "engaged", _("Engaged"), cli_quantity_length (tightening->engaged), CLI_BENCH, &given);
  else
    cli_report_value (report, "engaged", _("Engaged, taken as one and a half diameters"),
                      cli_quantity_length (tightening->engaged), CLI_BENCH, &assumed);
  if (tightening->strip_load.newtons > 0.0)
    {
      cli_report_value (report, "strip_load", _("The thread strips from"), cli_quantity_force (tightening->strip_load), CLI_BENCH,
                        &areas);
      cli_report_value (report, "strip_margin", _("That is so many times the preload aimed at"),
                        cli_quantity_number (tightening->strip_margin), CLI_BENCH, &areas);
      cli_report_value (report, "needed", _("Engaged from which on the bolt breaks first"),
                        cli_quantity_length (tightening->needed), CLI_BENCH, &areas);
      report_weakest (report, tightening->weakest);
    }
  else
    cli_report_say (report,
                    _("A steel nut or hole of the bolt’s own class outlasts it; say --engaged for what plain steel holds."));
  cli_report_end (report);
}

static void
report_long_form (CliReport *report, const HmTightening *tightening)
{
  const HmProvenance source = { HM_PROVENANCE_COMPUTED,
                                N_("long form with friction apart, ISO 16047 and VDI 2230, hexagon head") };

  if (!tightening->has_long_form)
    return;
  cli_report_begin (report, "long_form", _("By the long form"));
  cli_report_value (report, "torque", _("Torque for the same preload"), cli_quantity_torque (tightening->long_form), CLI_BENCH,
                    NULL);
  cli_report_value (report, "more", _("Differs from the torque above by"), cli_quantity_ratio (tightening->long_form_more),
                    CLI_BENCH, NULL);
  cli_report_value (report, "loosening", _("To start undoing, without rust or thread-locker"),
                    cli_quantity_torque (tightening->loosening), CLI_BENCH, NULL);
  cli_report_value (report, "pitch_share", _("Share that stretches the bolt"), cli_quantity_ratio (tightening->pitch_share),
                    CLI_BENCH, NULL);
  cli_report_value (report, "thread_share", _("Share lost in the thread"), cli_quantity_ratio (tightening->thread_share),
                    CLI_BENCH, NULL);
  cli_report_value (report, "bearing_share", _("Share lost under the head"), cli_quantity_ratio (tightening->bearing_share),
                    CLI_BENCH, NULL);
  cli_report_provenance (report, source);
  cli_report_end (report);
}

static void
report_cautions (CliReport *report, const HmTightening *tightening)
{
  gboolean has_spread = tightening->nut_factor_low < tightening->nut_factor_high;

  if (tightening->strip_load.newtons > 0.0 && tightening->preload_high.newtons >= tightening->strip_load.newtons)
    cli_report_caution (report, has_spread
                        ? _("With slick friction this torque reaches what the thread holds: it may strip. Engage more thread, or tighten less.")
                        : _("This torque, read on a torque wrench, reaches what the thread holds: it may strip. Engage more thread, or tighten less."));
  if (tightening->yield_load.newtons > 0.0 && tightening->preload_high.newtons >= tightening->yield_load.newtons)
    cli_report_caution (report, has_spread
                        ? _("With slick friction this torque reaches the yield of the bolt: clean, dry threads, or tighten less.")
                        : _("This torque, read on a torque wrench, reaches the yield of the bolt: tighten less."));
}

void
cli_report_tightening (CliReport *report, const CliTorqueRequest *request)
{
  const HmTightening *tightening = &request->tightening;

  report_plain (report, request);
  report_question (report, request);
  report_torque (report, request);
  if (request->basis == CLI_TORQUE_FROM_PRELOAD)
    {
      cli_report_begin (report, "preload", _("Preload"));
      cli_report_value (report, "aimed", _("Aimed at"), cli_quantity_force (request->preload), CLI_BENCH, NULL);
      cli_report_end (report);
      cli_report_caution (report, _("Nothing is said of what bolt and hole hold: the class was not given."));
      return;
    }
  report_preload (report, tightening);
  report_limits (report, tightening);
  report_long_form (report, tightening);
  report_cautions (report, tightening);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-answer-build.h"
#include "hmui-words-fit.h"
#include <glib/gi18n.h>

/* What wrenches and manuals are marked in. */
static const struct { HmUnit unit; const char *name; } units[] = {
  { HM_UNIT_NEWTON_METRE, N_("newton meters") },
  { HM_UNIT_POUND_FOOT, N_("foot-pounds") },
  { HM_UNIT_POUND_INCH, N_("inch-pounds") },
  { HM_UNIT_KILOGRAM_METRE, N_("kilogram meters") },
  { HM_UNIT_OUNCE_INCH, N_("inch-ounces") },
};

static const HmProvenance from_definitions = { HM_PROVENANCE_COMPUTED, "definitions of the pound, the inch and standard gravity" };

static void
add_units (HmuiAnswer *answer, const HmuiAsker *asker, const HmQuantityRange *torque)
{
  HmuiAnswerPart *part = hmui_answer_add_part (answer, HMUI_PART_TORQUE, _("The same in other units"),
                                               _("Read the unit on the wrench twice: foot-pounds and inch-pounds differ twelvefold."));

  for (gsize i = 0; i < G_N_ELEMENTS (units); i++)
    {
      int decimals = units[i].unit == torque->high.unit ? HM_DECIMALS_SHORTEST : -1;
      g_autofree char *value = hm_quantity_range_format (*torque, units[i].unit, decimals, &asker->format);

      hmui_answer_part_add (part, &(HmuiAnswerText) { .word = _(units[i].name), .title = value, .provenance = &from_definitions });
    }
}

static void
add_link (HmuiAnswer *answer, const char *written)
{
  HmuiAnswerPart *part = hmui_answer_add_part (answer, HMUI_PART_QUESTION, _("Use it on a fastener"), NULL);
  g_autofree char *title = g_strdup_printf (_("Open Torque with %s"), written);

  hmui_answer_part_add (part, &(HmuiAnswerText) {
    .title = title, .detail = _("As the value of the maker’s manual: what to set on the wrench, and what it does to the fastener."),
    .target = written, .action = "win.torque" });
}

HmuiAnswer *
hmui_answer_torque (const HmuiAsker *asker, const HmQuantityRange *torque)
{
  HmUnit unit = torque->high.unit;
  HmFormat own = hmui_words_own (&asker->format, unit != HM_UNIT_NEWTON_METRE && unit != HM_UNIT_KILOGRAM_METRE);
  g_autofree char *written = hm_quantity_range_format (*torque, unit, HM_DECIMALS_SHORTEST, &asker->format);
  g_autofree char *both = hm_quantity_range_format_both (*torque, &own);
  HmuiAnswer *answer = hmui_answer_new (written, both, _("A torque. The maker’s manual says which torque a fastener gets."));

  add_units (answer, asker, torque);
  add_link (answer, written);
  return answer;
}

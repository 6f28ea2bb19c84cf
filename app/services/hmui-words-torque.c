/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-words-torque.h"
#include "hmui-words.h"
#include <glib/gi18n.h>
#include <math.h>

#define SMALL_TORQUE_NM 10.0   /* below it inches are read in lbf·in, as everywhere in the window */
#define SAME_SHARE 0.005       /* less is written as 0 % */

const char *
hmui_words_friction (HmFriction friction)
{
  switch (friction)
    {
    case HM_FRICTION_OILED: return _("Oiled");
    case HM_FRICTION_ZINC: return _("Zinc plated");
    case HM_FRICTION_THREAD_LOCKER: return _("Thread-locker");
    case HM_FRICTION_ANTI_SEIZE: return _("Anti-seize");
    case HM_FRICTION_DRY:
    case HM_FRICTION_N_STATES:
    default: return _("Dry, as found");
    }
}

const char *
hmui_words_seat (HmSeat seat)
{
  switch (seat)
    {
    case HM_SEAT_FLANGE: return _("Flange head or flange nut");
    case HM_SEAT_WASHER: return _("On a plain washer");
    case HM_SEAT_PLAIN:
    case HM_SEAT_N_SEATS:
    default: return _("Plain hexagon");
    }
}

const char *
hmui_words_material (HmMaterial material)
{
  switch (material)
    {
    case HM_MATERIAL_ALUMINIUM_CAST: return _("Cast aluminium");
    case HM_MATERIAL_ALUMINIUM_DIE_CAST: return _("Die-cast aluminium");
    case HM_MATERIAL_PLASTIC: return _("Plastic");
    case HM_MATERIAL_COPPER: return _("Copper");
    case HM_MATERIAL_STEEL:
    case HM_MATERIAL_N_MATERIALS:
    default: return _("Steel: a nut or a tapped hole");
    }
}

const char *
hmui_words_special (HmSpecialJoint joint)
{
  switch (joint)
    {
    case HM_SPECIAL_GASKET: return _("Joint with a gasket");
    case HM_SPECIAL_PLASTIC: return _("Screw into plastic");
    case HM_SPECIAL_TAPER: return _("Taper fit: flywheel, clutch hub");
    case HM_SPECIAL_SPARK_PLUG:
    default: return _("Spark plug");
    }
}

const char *
hmui_words_bolt_layout (HmBoltLayout layout)
{
  switch (layout)
    {
    case HM_LAYOUT_RECTANGULAR: return _("Rectangle");
    case HM_LAYOUT_TWO_ROWS: return _("Two rows, as on a cylinder head");
    case HM_LAYOUT_INLINE: return _("In line");
    case HM_LAYOUT_ROUND:
    default: return _("Round");
    }
}

static HmQuantity
quantity_of (HmTorque torque)
{
  return hm_quantity (HM_QUANTITY_TORQUE, torque.newton_metres, HM_UNIT_NEWTON_METRE);
}

HmUnit
hmui_words_torque_unit (HmTorque torque, const HmFormat *format)
{
  if (format->system == HM_UNIT_SYSTEM_METRIC_FIRST)
    return HM_UNIT_NEWTON_METRE;
  return torque.newton_metres < SMALL_TORQUE_NM ? HM_UNIT_POUND_INCH : HM_UNIT_POUND_FOOT;
}

char *
hmui_words_torque_in (HmTorque torque, HmUnit unit, const HmFormat *format)
{
  return hm_quantity_format (quantity_of (torque), unit, -1, format);
}

char *
hmui_words_torque_both (HmTorque torque, const HmFormat *format)
{
  HmQuantityRange both = { quantity_of (torque), quantity_of (torque) };

  return hm_quantity_range_format_both (both, format);
}

char *
hmui_words_torque_others (HmTorque torque, HmUnit extra, const HmFormat *format)
{
  HmUnit first = hmui_words_torque_unit (torque, format);
  const HmUnit units[] = { HM_UNIT_NEWTON_METRE, HM_UNIT_POUND_FOOT, HM_UNIT_POUND_INCH, extra };
  g_autoptr(GString) text = g_string_new (NULL);

  for (guint i = 0; i < G_N_ELEMENTS (units); i++)
    {
      g_autofree char *one = NULL;

      if (units[i] == first || units[i] == HM_UNIT_NONE)
        continue;
      one = hmui_words_torque_in (torque, units[i], format);
      g_string_append_printf (text, "%s%s", text->len > 0 ? " · " : "", one);
    }
  return g_string_free (g_steal_pointer (&text), FALSE);
}

char *
hmui_words_torque_span (HmTorque low, HmTorque target, HmTorque high, const HmFormat *format)
{
  HmQuantityRange span = { quantity_of (low), quantity_of (high) };

  if (!(low.newton_metres < high.newton_metres))
    return NULL;
  return hm_quantity_range_format (span, hmui_words_torque_unit (target, format), -1, format);
}

char *
hmui_words_force (HmForce force, const HmFormat *format)
{
  HmQuantity one = hm_quantity (HM_QUANTITY_FORCE, force.newtons, HM_UNIT_NEWTON);
  HmQuantityRange both;

  one.unit = HM_UNIT_KILONEWTON;
  both = (HmQuantityRange) { one, one };
  return hm_quantity_range_format_both (both, format);
}

char *
hmui_words_force_short (HmForce force, const HmFormat *format)
{
  gboolean metric = format->system == HM_UNIT_SYSTEM_METRIC_FIRST;

  return hm_quantity_format (hm_quantity (HM_QUANTITY_FORCE, force.newtons, HM_UNIT_NEWTON),
                             metric ? HM_UNIT_KILONEWTON : HM_UNIT_POUND_FORCE, -1, format);
}

char *
hmui_words_engaged (HmLength length, const HmFormat *format)
{
  HmQuantity one = hm_quantity (HM_QUANTITY_LENGTH, length.mm, HM_UNIT_MM);
  g_autofree char *metric = hm_quantity_format (one, HM_UNIT_MM, 1, format);
  g_autofree char *inch = hm_quantity_format (one, HM_UNIT_INCH, 2, format);

  if (format->system == HM_UNIT_SYSTEM_METRIC_FIRST)
    return g_strdup_printf ("%s (%s)", metric, inch);
  return g_strdup_printf ("%s (%s)", inch, metric);
}

char *
hmui_words_tightening_limit (const HmTightening *self, const HmFormat *format)
{
  g_autofree char *share = hmui_words_share (self->proof_share, format);

  switch (self->governs)
    {
    case HM_GOVERNS_ALUMINIUM:
      return g_strdup_printf (_("The aluminium limits it: 30\302\240%% less than into steel, which pulls the bolt to %s of its proof "
                                "load."), share);
    case HM_GOVERNS_STRIPPING:
      return g_strdup_printf (_("The thread in the hole limits it: it would strip first. The bolt is only pulled to %s of its "
                                "proof load."), share);
    case HM_GOVERNS_TORQUE_GIVEN:
      return g_strdup_printf (_("The value from the manual governs. By thread and friction it pulls the bolt to about %s of its "
                                "proof load."), share);
    case HM_GOVERNS_PROOF:
    default:
      return g_strdup_printf (_("The bolt limits it: pulled to %s of its proof load, and the thread it is in holds more."), share);
    }
}

char *
hmui_words_tightening_preload (const HmTightening *self, const HmFormat *format)
{
  g_autofree char *preload = hmui_words_force (self->preload, format);
  HmQuantityRange spread = { hm_quantity (HM_QUANTITY_FORCE, self->preload_low.newtons, HM_UNIT_NEWTON),
                             hm_quantity (HM_QUANTITY_FORCE, self->preload_high.newtons, HM_UNIT_NEWTON) };
  g_autofree char *expect = NULL;

  spread.low.unit = spread.high.unit = HM_UNIT_KILONEWTON;
  expect = hm_quantity_range_format_both (spread, format);
  return g_strdup_printf (_("%s; expect %s, because friction and wrench vary"), preload, expect);
}

char *
hmui_words_tightening_stress (const HmTightening *self, const HmFormat *format)
{
  HmQuantity one = hm_quantity (HM_QUANTITY_STRESS, self->stress.megapascals, HM_UNIT_MEGAPASCAL);
  HmQuantityRange both = { one, one };
  g_autofree char *stress = NULL, *share = NULL;

  if (!self->has_long_form)
    return NULL;
  stress = hm_quantity_range_format_both (both, format);
  if (self->yield.megapascals <= 0.0)
    return g_strdup_printf (_("%s; the table gives no yield strength for this class"), stress);
  share = hmui_words_share (self->yield_share, format);
  return g_strdup_printf (_("%s: %s of the yield strength"), stress, share);
}

char *
hmui_words_tightening_needed (const HmTightening *self, const HmTighteningQuestion *question, const HmFormat *format)
{
  g_autofree char *needed = hmui_words_engaged (self->needed, format);
  g_autofree char *engaged = hmui_words_engaged (self->engaged, format);

  if (self->engaged_is_known)
    return g_strdup_printf (_("%s of full thread, so that the bolt breaks before the hole strips; here it is %s"), needed,
                            engaged);
  if (question->into == HM_MATERIAL_STEEL)
    return g_strdup_printf (_("%s of full thread in plain steel; a nut of the bolt’s own class is always enough"), needed);
  return g_strdup_printf (_("%s of full thread, so that the bolt breaks before the hole strips; %s is taken until you say"),
                          needed, engaged);
}

char *
hmui_words_tightening_weakest (const HmTightening *self)
{
  if (self->strip_load.newtons <= 0.0)
    return g_strdup (_("The bolt breaks; a nut of its class holds"));
  switch (self->weakest)
    {
    case HM_STRIP_HOLE_STRIPS: return g_strdup (_("The thread in the hole strips"));
    case HM_STRIP_BOLT_STRIPS: return g_strdup (_("The thread of the bolt strips"));
    case HM_STRIP_BOLT_BREAKS:
    default: return g_strdup (_("The bolt breaks, the thread holds"));
    }
}

char *
hmui_words_tightening_methods (const HmTightening *self, HmSeat seat, const HmFormat *format)
{
  g_autofree char *nut_factor = hmui_words_torque_both (self->target, format);
  g_autofree char *long_form = NULL, *more = NULL, *less = NULL;

  if (!self->has_long_form)
    return g_strdup_printf (_("Nut factor: %s. No head of this size is in the tables for the long form"), nut_factor);
  long_form = hmui_words_torque_both (self->long_form, format);
  more = hmui_words_share (self->long_form_more, format);
  less = hmui_words_share (-self->long_form_more, format);
  if (fabs (self->long_form_more) < SAME_SHARE)
    return g_strdup_printf (_("Nut factor and long form both give %s"), nut_factor);
  if (seat == HM_SEAT_FLANGE && self->long_form_more > 0.0)
    return g_strdup_printf (_("Nut factor %s, long form %s: %s more, because a flange rubs on a wider ring"), nut_factor,
                            long_form, more);
  if (self->long_form_more >= 0.0)
    return g_strdup_printf (_("Nut factor %s, long form %s: %s more"), nut_factor, long_form, more);
  return g_strdup_printf (_("Nut factor %s, long form %s: %s less"), nut_factor, long_form, less);
}

char *
hmui_words_tightening_parts (const HmTightening *self, const HmFormat *format)
{
  g_autofree char *pitch = hmui_words_share (self->pitch_share, format);
  g_autofree char *thread = hmui_words_share (self->thread_share, format);
  g_autofree char *bearing = hmui_words_share (self->bearing_share, format);

  if (!self->has_long_form)
    return NULL;
  return g_strdup_printf (_("%s stretches the bolt, %s rubs in the thread, %s under the head"), pitch, thread, bearing);
}

char *
hmui_words_tightening_loosening (const HmTightening *self, const HmFormat *format)
{
  g_autofree char *torque = NULL;

  if (!self->has_long_form)
    return NULL;
  torque = hmui_words_torque_both (self->loosening, format);
  return g_strdup_printf (_("About %s when fresh; rust, paint and thread-locker come on top. A wrench on a bolt that has been "
                            "standing reads the breakaway torque, not what it was tightened to: to check it, loosen it and "
                            "tighten it again."), torque);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-words-torque.h"
#include <glib/gi18n.h>

char *
hmui_words_share (double share, const HmFormat *format)
{
  return hm_quantity_format (hm_quantity (HM_QUANTITY_RATIO, share, HM_UNIT_NONE), HM_UNIT_PERCENT, 0, format);
}

static char *
stress_words (HmStress stress, const HmFormat *format)
{
  HmQuantity one = hm_quantity (HM_QUANTITY_STRESS, stress.megapascals, HM_UNIT_MEGAPASCAL);
  HmQuantityRange both = { one, one };

  return hm_quantity_range_format_both (both, format);
}

char *
hmui_words_tightening_strength (const HmTightening *self, const HmFormat *format)
{
  g_autofree char *proof = stress_words (self->proof, format);
  g_autofree char *yield = stress_words (self->yield, format);

  if (self->yield.megapascals <= 0.0)
    return g_strdup_printf (_("Proof %s"), proof);
  return g_strdup_printf (_("Proof %s, yield %s"), proof, yield);
}

static char *
factor_words (double factor, const HmFormat *format)
{
  return hm_quantity_format (hm_quantity (HM_QUANTITY_NUMBER, factor, HM_UNIT_NONE), HM_UNIT_NONE, 2, format);
}

char *
hmui_words_tightening_friction (const HmTightening *self, const HmFormat *format)
{
  g_autofree char *low = factor_words (self->nut_factor_low, format);
  g_autofree char *usual = factor_words (self->nut_factor, format);
  g_autofree char *high = factor_words (self->nut_factor_high, format);

  return g_strdup_printf (_("Nut factor K %s, from %s to %s"), usual, low, high);
}

char *
hmui_words_tightening_scale (const HmTightening *self, const HmFormat *format)
{
  g_autoptr(GString) text = g_string_new (NULL);
  g_autofree char *low = hmui_words_force (self->preload_low, format);
  g_autofree char *aim = hmui_words_force (self->preload, format);
  g_autofree char *high = hmui_words_force (self->preload_high, format);
  g_autofree char *yields = hmui_words_force (self->yield_load, format);
  g_autofree char *proof = hmui_words_force (self->proof_load, format);
  g_autofree char *strip = hmui_words_force (self->strip_load, format);

  g_string_append_printf (text, _("Pull in the bolt: from %s over %s to %s."), low, aim, high);
  if (self->yield_load.newtons > 0.0)
    g_string_append_printf (text, _(" It yields while it is turned at %s."), yields);
  g_string_append_printf (text, _(" Proof load %s."), proof);
  if (self->strip_load.newtons > 0.0)
    g_string_append_printf (text, _(" The thread strips at %s."), strip);
  return g_string_free (g_steal_pointer (&text), FALSE);
}

char *
hmui_words_tightening_warning (const HmTightening *self, const HmFormat *format)
{
  g_autofree char *proof = hmui_words_force (self->proof_load, format);
  g_autofree char *strip = hmui_words_force (self->strip_load, format);
  g_autofree char *yields = hmui_words_force (self->yield_load, format);

  if (self->strip_load.newtons > 0.0 && self->preload.newtons > self->strip_load.newtons)
    return g_strdup_printf (_("By thread and friction this torque pulls more than the thread holds, %s. Check thread, material "
                              "and the page of the manual before you use it."), strip);
  if (self->preload.newtons > self->proof_load.newtons)
    return g_strdup_printf (_("By thread and friction this torque pulls more than the proof load of the bolt, %s. Check thread, "
                              "class and the page of the manual before you use it."), proof);
  if (self->yield_load.newtons <= 0.0 || self->preload.newtons <= self->yield_load.newtons)
    return NULL;
  if (self->governs == HM_GOVERNS_TORQUE_GIVEN)
    return g_strdup_printf (_("By thread and friction the bolt yields at %s while it is turned, before it gets this far. Check "
                              "thread, class, surface and the page of the manual before you use it."), yields);
  return g_strdup_printf (_("The bolt yields at %s while it is turned, before it gets this far. Oil the thread, or take a smaller "
                            "share of the proof load."), yields);
}

char *
hmui_words_wrench (const HmShopWrench *wrench, const HmWrenchFit *fit, HmTorque setting, const HmFormat *format)
{
  g_autofree char *name = wrench != NULL ? hm_shop_wrench_format (wrench, format) : NULL;
  g_autofree char *share = hmui_words_share (fit->share, format);
  g_autofree char *span = NULL;
  HmTorque low, high;

  if (wrench == NULL)
    return g_strdup (_("None is in your drawer yet; add those you own below."));
  hm_shop_wrench_spread (wrench, setting, &low, &high);
  span = hmui_words_torque_span (low, setting, high, format);
  switch (fit->verdict)
    {
    case HM_WRENCH_TOO_SMALL:
      return g_strdup_printf (_("%s is the nearest, but it does not reach: this is %s of its highest torque."), name, share);
    case HM_WRENCH_TOO_LARGE:
      return g_strdup_printf (_("%s is the nearest, but this is only %s of its highest torque. Below 20 %% nobody vouches for "
                                "what it clicks at: take a smaller one."), name, share);
    case HM_WRENCH_GOOD:
    default:
      return g_strdup_printf (_("%s: at %s of its highest torque, good for %s"), name, share, span);
    }
}

char *
hmui_words_pass (const HmPassRow *pass, HmTorque full, const HmFormat *format)
{
  g_autofree char *share = hmui_words_share (pass->share, format);
  g_autofree char *torque = NULL;

  if (!(full.newton_metres > 0.0))
    return pass->round ? g_strdup_printf (_("%s once more, round in order"), share) : g_steal_pointer (&share);
  torque = hmui_words_torque_both (hm_sequence_pass_torque (pass, full), format);
  if (pass->round)
    return g_strdup_printf (_("%s once more, round in order"), torque);
  return g_strdup_printf (_("%s, %s"), share, torque);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-sequence.h"
#include "hm-tightening.h"
#include "hm-wrench-text.h"
G_BEGIN_DECLS

/*
 * Words for a tightening: torque, preload, limits, wrenches, order. As hmui-words.h: translated, (transfer full) unless
 * said otherwise, @format says how the person reads numbers.
 */

/* Names of choices; borrowed. */
const char *hmui_words_friction (HmFriction friction);         /* "Dry, as found" */
const char *hmui_words_seat     (HmSeat seat);                 /* "Plain hexagon head" */
const char *hmui_words_material (HmMaterial material);         /* "Cast aluminium" */
const char *hmui_words_special  (HmSpecialJoint joint);        /* "Spark plug" */
const char *hmui_words_bolt_layout (HmBoltLayout layout);      /* "Round" */

/** The unit that a torque is first read in: N·m, or lbf·ft, and lbf·in below 10 N·m. */
HmUnit hmui_words_torque_unit (HmTorque torque, const HmFormat *format);
/** "18.8 lbf·ft", in one unit. */
char *hmui_words_torque_in (HmTorque torque, HmUnit unit, const HmFormat *format);
/** "18.8 lbf·ft (25.5 N·m)". */
char *hmui_words_torque_both (HmTorque torque, const HmFormat *format);
/** The other units: "25.5 N·m · 226 lbf·in"; @extra (or HM_UNIT_NONE) comes last. */
char *hmui_words_torque_others (HmTorque torque, HmUnit extra, const HmFormat *format);
/** "15–28 lbf·ft", in the unit that @target is first read in; NULL when both ends are the same. */
char *hmui_words_torque_span (HmTorque low, HmTorque target, HmTorque high, const HmFormat *format);
/** "88 %"; may pass 100 %, so it is not hmui_words_percent(). */
char *hmui_words_share (double share, const HmFormat *format);
/** "15.9 kN (3575 lbf)". */
char *hmui_words_force (HmForce force, const HmFormat *format);
/** "15.9 kN", in the person's own system only: for a drawing. */
char *hmui_words_force_short (HmForce force, const HmFormat *format);
/** "13.2 mm (0.52 in)". */
char *hmui_words_engaged (HmLength length, const HmFormat *format);

/* What a tightening says; @question is the one it answers. NULL where it has nothing to say. */
char *hmui_words_tightening_limit    (const HmTightening *self, const HmFormat *format);
char *hmui_words_tightening_preload  (const HmTightening *self, const HmFormat *format);
char *hmui_words_tightening_stress   (const HmTightening *self, const HmFormat *format);
char *hmui_words_tightening_needed   (const HmTightening *self, const HmTighteningQuestion *question, const HmFormat *format);
char *hmui_words_tightening_weakest  (const HmTightening *self);
char *hmui_words_tightening_strength (const HmTightening *self, const HmFormat *format);
char *hmui_words_tightening_friction (const HmTightening *self, const HmFormat *format);
char *hmui_words_tightening_methods  (const HmTightening *self, HmSeat seat, const HmFormat *format);
char *hmui_words_tightening_parts    (const HmTightening *self, const HmFormat *format);
char *hmui_words_tightening_loosening (const HmTightening *self, const HmFormat *format);
/** What the drawing of the loads shows, for those who do not see it. */
char *hmui_words_tightening_scale    (const HmTightening *self, const HmFormat *format);
/** A warning that the torque is too much for bolt or thread; NULL when it is not. */
char *hmui_words_tightening_warning  (const HmTightening *self, const HmFormat *format);

/** "10–50 lbf·ft ±4 %: at 38 % of its highest torque. …"; @wrench is NULL when the drawer is empty. */
char *hmui_words_wrench (const HmShopWrench *wrench, const HmWrenchFit *fit, HmTorque setting, const HmFormat *format);
/** A pass: "30 %, 7.6 N·m"; the last round: "full torque once round, in order". @full: 0 if not known */
char *hmui_words_pass (const HmPassRow *pass, HmTorque full, const HmFormat *format);

G_END_DECLS

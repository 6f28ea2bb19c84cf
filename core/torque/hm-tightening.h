/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-joint.h"
#include "hm-strip.h"
#include "hm-torque.h"
G_BEGIN_DECLS

/*
 * One tightening worked out from end to end: torque, preload, what limits it, the stress while the wrench turns, and what
 * the second method says. hm-torque.h gives the value alone, for a fastener of the knowledge; both agree.
 */

/** HmSeat: what turns on what. */
typedef enum { HM_SEAT_PLAIN, HM_SEAT_FLANGE, HM_SEAT_WASHER, HM_SEAT_N_SEATS } HmSeat;

/**
 * HmTighteningQuestion: a plain value.
 * @strength: property class or SAE grade as written; borrowed, never NULL
 * @engaged: length of full threads that meet; 0 if not known: then one and a half diameters are taken, and a steel nut or
 *   hole counts as one that outlasts the bolt
 * @share_of_proof: how much of the proof load the bolt is to be pulled to, see hm_tightening_share_low
 * @nut_factor: K of T = K F d, instead of that of @friction; 0 if not given
 * @mu_thread, @mu_bearing: coefficients of friction, instead of @friction: the torque follows by the long form of hm-joint.h; 0 if
 *   not given; both or neither, and not with @nut_factor
 */
typedef struct {
  HmThread thread;
  const char *strength;
  HmFriction friction;
  HmSeat seat;
  HmMaterial into;
  HmLength engaged;
  double share_of_proof;
  double nut_factor, mu_thread, mu_bearing;
} HmTighteningQuestion;

extern const double hm_tightening_share_low, hm_tightening_share_usual, hm_tightening_share_high;

/* What is accepted as given friction; judgements, common practice, no source. */
extern const double hm_tightening_nut_factor_low, hm_tightening_nut_factor_high, hm_tightening_mu_low, hm_tightening_mu_high;

/**
 * hm_tightening_find_friction: what to reckon with: what @question gives, without a spread, else the row of its surface state.
 * @out: (out caller-allocates): its mu is that in the thread; 0 where the nut factor given leaves none, or no head is known
 * Returns: %FALSE with %HM_TORQUE_ERROR when what is given is out of range, or no head of the thread is known to which coefficients of
 *   friction apply
 */
gboolean hm_tightening_find_friction (const HmTables *tables, const HmTighteningQuestion *question, HmFrictionRow *out,
                                      GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** HmTorqueGoverns: what set the preload. */
typedef enum { HM_GOVERNS_PROOF, HM_GOVERNS_ALUMINIUM, HM_GOVERNS_STRIPPING, HM_GOVERNS_TORQUE_GIVEN } HmTorqueGoverns;

/**
 * HmTightening: a plain value; strings are static or borrowed from the tables.
 * @low, @target, @high: the torque for @preload with the slickest, the usual and the roughest friction of the surface state
 * @nut_factor_low, @nut_factor, @nut_factor_high: what these were worked out with; @proof, @yield: strengths of the class
 * @governs, @provenance: what set the preload, and from what the torque was worked out
 * @preload_low, @preload_high: what a torque wrench set to @target may give, from the spread of friction and of the wrench
 * @proof_load, @yield_load: at which the bolt stays longer; @yield_load while the wrench twists it (0 if not known)
 * @strip_load: at which the thread in the hole, or that of the bolt, gives way over @engaged; 0 where a nut of the bolt's
 *   class is taken
 * @strip_margin: @strip_load over @preload; the torques have the same ratio; 0 where @strip_load is 0
 * @weakest: what gives first when it is overtightened; holds where @strip_load is above 0
 * @needed: engaged length from which on the bolt breaks before the hole strips
 * @stress: von Mises stress while tightening to @preload; 0 if not known, as @yield
 * @proof_share, @proof_share_high: @preload and @preload_high as a share of the proof load; @yield_share: @stress of @yield
 * @has_long_form: whether the size of the head is known; if not, the fields below are 0
 * @long_form: the torque for @preload by the long form; @long_form_more: by how much it is more than @target, as a share
 * @loosening: to start undoing at the same friction
 * @pitch_share, @thread_share, @bearing_share: where the torque goes, together 1
 */
typedef struct {
  HmTorque low, target, high;
  HmTorqueGoverns governs;
  HmProvenance provenance, friction_provenance, strength_provenance;
  double nut_factor_low, nut_factor, nut_factor_high;
  HmForce preload, preload_low, preload_high;
  HmForce proof_load, yield_load, strip_load;
  double strip_margin;
  HmStripWeakest weakest;
  HmLength engaged, needed;
  gboolean engaged_is_known;
  HmStress stress, yield, proof;
  double proof_share, proof_share_high, yield_share;
  gboolean has_long_form;
  HmTorque long_form, loosening;
  double long_form_more, pitch_share, thread_share, bearing_share;
} HmTightening;

/**
 * hm_tightening_work_out: the torque for a question.
 * @out: (out caller-allocates): written on success only
 * Returns: %FALSE with %HM_TORQUE_ERROR when thread and class give no value, the share or the engaged length is out of
 *   range, or the thread is in plastic, which creeps
 */
gboolean hm_tightening_work_out (const HmTables *tables, const HmTighteningQuestion *question, HmTightening *out,
                                 GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_tightening_from_torque: the same for torques that are given (a spec sheet): what they do to this bolt. */
gboolean hm_tightening_from_torque (const HmTables *tables, const HmTighteningQuestion *question, HmTorque low, HmTorque high,
                                    HmTightening *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_tightening_suits: whether a class is made for this thread: ISO 898-1 metric, SAE J429 inch, at this diameter. */
gboolean hm_tightening_suits (const HmStrengthRow *strength, const HmThread *thread);

/** HmTighteningPart: what is said of a tightening, for hm_tightening_get_provenance(). */
typedef enum { HM_TIGHTENING_PRELOAD, HM_TIGHTENING_STRESS, HM_TIGHTENING_ENGAGEMENT, HM_TIGHTENING_METHODS,
               HM_TIGHTENING_PARTS, HM_TIGHTENING_LOOSENING, HM_TIGHTENING_SETTING, HM_TIGHTENING_WRENCH,
               HM_TIGHTENING_N_PARTS } HmTighteningPart;

/** hm_tightening_get_provenance: by which formula or rule a part is worked out; static, translatable text. */
HmProvenance hm_tightening_get_provenance (HmTighteningPart part);

/** HmTighteningScale: the loads of a tightening along one line, each from 0 to 1; −1 where there is none. */
typedef struct { double low, target, high, proof, yield, strip; } HmTighteningScale;

HmTighteningScale hm_tightening_scale (const HmTightening *self);

G_END_DECLS

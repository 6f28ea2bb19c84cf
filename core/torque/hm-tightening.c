/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-tightening.h"

#include "hm-tap.h"
#include "hm-torque-limit.h"

#include <math.h>
#include <string.h>

/* Preload of a joint that is taken apart again, as a share of proof load (Shigley: 75 % reused, 90 % permanent). Below
 * 30 % a bolt works loose; common practice, no source. */
const double hm_tightening_share_low = 0.3;
const double hm_tightening_share_usual = 0.75;
const double hm_tightening_share_high = 0.9;

const double hm_tightening_nut_factor_low = 0.05;
const double hm_tightening_nut_factor_high = 1.0;
const double hm_tightening_mu_low = 0.01;
const double hm_tightening_mu_high = 1.0;

#define LONGEST_ENGAGED_DIAMETERS 10.0   /* longer is a slip of the finger */
#define FLANGE_DIAMETERS 1.95            /* outside of a flange's bearing face; common practice, no source */
#define SCALE_MARGIN 1.12                /* room past the highest mark of the scale */
#define SLACK 1e-9
#define SIZE_SLACK_MM 1e-3               /* a fraction of an inch in millimetres is not exact */

/* What the tables say of a question. */
typedef struct {
  const HmStrengthRow *strength;
  HmFrictionRow friction;          /* or what the question gives in its place */
  const HmShearRow *shear;
} Rows;

static gboolean
check_question (const HmTighteningQuestion *question, GError **error)
{
  if (!(question->share_of_proof >= hm_tightening_share_low - SLACK
        && question->share_of_proof <= hm_tightening_share_high + SLACK))
    g_set_error (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_NOT_COMPUTABLE,
                 "the share of the proof load is between %.0f and %.0f %%", 100.0 * hm_tightening_share_low,
                 100.0 * hm_tightening_share_high);
  else if (!(question->engaged.mm >= 0.0 && question->engaged.mm <= LONGEST_ENGAGED_DIAMETERS * question->thread.major.mm))
    g_set_error (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_NOT_COMPUTABLE,
                 "the engaged length is above zero and at most %.0f times the diameter of the bolt",
                 LONGEST_ENGAGED_DIAMETERS);
  else if (question->into == HM_MATERIAL_PLASTIC)
    g_set_error_literal (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_NOT_COMPUTABLE,
                         "plastic creeps under a bolt, so no torque follows from the thread; choose “screw into plastic”");
  else
    return TRUE;
  return FALSE;
}

static gboolean
find_rows (const HmTables *tables, const HmTighteningQuestion *question, Rows *out, GError **error)
{
  out->shear = hm_strip_find_shear (tables, question->into);
  out->strength = hm_torque_find_strength (tables, question->strength, &question->thread, error);
  if (out->strength == NULL || !hm_tightening_find_friction (tables, question, &out->friction, error))
    return FALSE;
  if (out->shear != NULL && out->shear->low.megapascals > 0.0)
    return TRUE;
  g_set_error (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_NOT_COMPUTABLE, "the tables have no row for “%s”",
               hm_material_name (question->into));
  return FALSE;
}

/* "M8" of M8 × 1.25, "1/4" of 1/4-20, "No.10" of No.10-24: how the table of heads names the size. */
static char *
size_name (const HmThread *thread)
{
  g_autofree char *name = hm_thread_format (thread, &hm_format_default);
  char *end = thread->form == HM_THREAD_ISO_METRIC ? strstr (name, " ") : strrchr (name, '-');

  if (thread->form == HM_THREAD_ISO_METRIC)
    {
      char *wide = strstr (name, "\302\240");   /* a no-break space, if that comes first */
      if (wide != NULL && (end == NULL || wide < end))
        end = wide;
    }
  return end != NULL ? g_strndup (name, (gsize) (end - name)) : g_strdup (name);
}

static gboolean
find_head (const HmTables *tables, const HmThread *thread, HmHead *out)
{
  gsize n;
  const HmHexRow *rows = hm_tables_get_hex (tables, &n);
  g_autofree char *size = size_name (thread);

  for (gsize i = 0; i < n; i++)
    if ((rows[i].kind == HM_HEAD_HEX_BOLT || rows[i].kind == HM_HEAD_MACHINE_SCREW) && strcmp (rows[i].thread, size) == 0
        && hm_head_from_row (&rows[i], out))
      return TRUE;
  return FALSE;
}

static gboolean
make_joint (const HmTables *tables, const HmTighteningQuestion *question, HmJoint *out)
{
  const HmHoleRow *holes = hm_thread_find_holes (&question->thread, tables);
  HmHead head;

  if (!find_head (tables, &question->thread, &head))
    return FALSE;
  *out = hm_joint_for_hex (&question->thread, &head, hm_tightening_mu_low, tables);
  if (question->seat == HM_SEAT_FLANGE)
    out->bearing_outer.mm = FLANGE_DIAMETERS * question->thread.major.mm;
  if (question->seat == HM_SEAT_WASHER && holes != NULL && holes->close.mm > 0.0)
    out->bearing_inner = holes->close;   /* ISO 7089: the hole of a washer is the close clearance hole */
  return out->bearing_outer.mm > out->bearing_inner.mm;
}

static double
nut_factor_at (const HmJoint *joint, double mu_thread, double mu_bearing)
{
  HmJoint changed = *joint;

  changed.mu_thread = mu_thread;
  changed.mu_bearing = mu_bearing;
  return hm_joint_nut_factor (&changed);
}

/* The friction, alike in thread and under the head, with which the long form gives this nut factor; 0 or less if none does. */
static double
mu_from_nut_factor (const HmJoint *joint, double nut_factor)
{
  double none = nut_factor_at (joint, 0.0, 0.0);

  return (nut_factor - none) / (nut_factor_at (joint, 1.0, 1.0) - none);
}

static gboolean
check_friction (const HmTighteningQuestion *question, GError **error)
{
  double mu_least = MIN (question->mu_thread, question->mu_bearing), mu_most = MAX (question->mu_thread, question->mu_bearing);

  if (question->nut_factor != 0.0 && !(question->nut_factor >= hm_tightening_nut_factor_low
                                       && question->nut_factor <= hm_tightening_nut_factor_high))
    g_set_error (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_NOT_COMPUTABLE, "the nut factor is between %.2f and %.0f",
                 hm_tightening_nut_factor_low, hm_tightening_nut_factor_high);
  else if ((mu_least != 0.0 || mu_most != 0.0) && !(mu_least >= hm_tightening_mu_low && mu_most <= hm_tightening_mu_high))
    g_set_error (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_NOT_COMPUTABLE,
                 "the coefficients of friction, in the thread and under the head, are between %.2f and %.0f", hm_tightening_mu_low,
                 hm_tightening_mu_high);
  else if (question->nut_factor != 0.0 && mu_most != 0.0)
    g_set_error_literal (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_NOT_COMPUTABLE,
                         "either a nut factor or coefficients of friction are accepted, not both");
  else
    return TRUE;
  return FALSE;
}

static gboolean
find_surface (const HmTables *tables, HmFriction state, HmFrictionRow *out, GError **error)
{
  const HmFrictionRow *row = hm_torque_find_friction (tables, state);

  if (row != NULL)
    *out = *row;
  else
    g_set_error (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_NOT_COMPUTABLE, "the tables have no row for “%s”",
                 hm_friction_name (state));
  return row != NULL;
}

gboolean
hm_tightening_find_friction (const HmTables *tables, const HmTighteningQuestion *question, HmFrictionRow *out, GError **error)
{
  HmFrictionRow given = { .nut_factor = question->nut_factor, .mu = question->mu_thread };
  HmJoint joint;
  gboolean has_joint;

  g_return_val_if_fail (tables != NULL && out != NULL, FALSE);
  if (!check_friction (question, error))
    return FALSE;
  if (question->nut_factor <= 0.0 && question->mu_thread <= 0.0)
    return find_surface (tables, question->friction, out, error);
  has_joint = make_joint (tables, question, &joint);
  if (question->nut_factor > 0.0)
    {
      given.mu = has_joint ? MAX (0.0, mu_from_nut_factor (&joint, question->nut_factor)) : 0.0;
      given.provenance = (HmProvenance) { HM_PROVENANCE_COMPUTED, "the nut factor that is given" };
    }
  else if (has_joint)
    {
      given.nut_factor = nut_factor_at (&joint, question->mu_thread, question->mu_bearing);
      given.provenance = (HmProvenance) { HM_PROVENANCE_COMPUTED,
                                          "from the friction that is given, long form of ISO 16047 and VDI 2230, hexagon head" };
    }
  else
    {
      g_set_error_literal (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_NOT_COMPUTABLE,
                           "no hexagon head is listed for this thread, so coefficients of friction give no torque; give a nut factor");
      return FALSE;
    }
  given.nut_factor_low = given.nut_factor_high = given.nut_factor;
  given.mu_low = given.mu_high = given.mu;
  *out = given;
  return TRUE;
}

static void
set_long_form (HmTightening *self, const HmJoint *joint)
{
  HmTorqueParts parts = hm_joint_tightening_parts (joint, self->preload);

  self->has_long_form = TRUE;
  self->long_form = hm_joint_tightening_torque (joint, self->preload);
  self->loosening = hm_joint_loosening_torque (joint, self->preload);
  self->long_form_more = self->long_form.newton_metres / self->target.newton_metres - 1.0;
  self->pitch_share = parts.pitch.newton_metres / self->long_form.newton_metres;
  self->thread_share = parts.thread_friction.newton_metres / self->long_form.newton_metres;
  self->bearing_share = parts.bearing_friction.newton_metres / self->long_form.newton_metres;
}

static double
newtons_from (const HmThread *thread, double newton_metres, double nut_factor)
{
  HmTorque one = hm_torque_from_nut_factor (thread, (HmForce) { 1.0 }, nut_factor);

  return newton_metres / one.newton_metres;
}

static void
set_strength (const HmTables *tables, const HmTighteningQuestion *question, const Rows *rows, HmTightening *self)
{
  const HmThread *thread = &question->thread;
  HmForce breaks = hm_torque_preload (thread, rows->strength->tensile, 1.0);

  self->proof_load = hm_torque_preload (thread, rows->strength->proof, 1.0);
  self->proof_share = self->preload.newtons / self->proof_load.newtons;
  self->proof_share_high = self->preload_high.newtons / self->proof_load.newtons;
  self->yield = rows->strength->yield;
  self->proof = rows->strength->proof;
  self->strength_provenance = rows->strength->provenance;
  self->engaged = hm_torque_limit_engaged (thread, question->engaged);
  self->engaged_is_known = question->engaged.mm > 0.0;
  self->needed = hm_strip_engagement (thread, breaks, rows->shear->low, tables);
  if (self->engaged_is_known || question->into != HM_MATERIAL_STEEL)
    {
      HmStripCheck check = hm_strip_check (thread, self->engaged, rows->strength, rows->shear->low, tables);

      self->strip_load.newtons = MIN (check.hole_strips.newtons, check.bolt_strips.newtons);
      self->strip_margin = self->strip_load.newtons / self->preload.newtons;
      self->weakest = check.weakest;
    }
}

/* All that follows from @self->preload, target, low and high. */
static void
complete (const HmTables *tables, const HmTighteningQuestion *question, const Rows *rows, HmTightening *self)
{
  const HmThread *thread = &question->thread;
  double scatter = hm_tightening_scatter (HM_TIGHTEN_TORQUE_WRENCH, self->target);
  HmJoint joint;

  self->friction_provenance = rows->friction.provenance;
  self->nut_factor_low = rows->friction.nut_factor_low;
  self->nut_factor = rows->friction.nut_factor;
  self->nut_factor_high = rows->friction.nut_factor_high;
  self->preload_low.newtons = newtons_from (thread, self->target.newton_metres * (1.0 - scatter), rows->friction.nut_factor_high);
  self->preload_high.newtons = newtons_from (thread, self->target.newton_metres * (1.0 + scatter), rows->friction.nut_factor_low);
  set_strength (tables, question, rows, self);
  if (rows->friction.mu <= 0.0 || !make_joint (tables, question, &joint))
    return;
  joint.mu_thread = rows->friction.mu;
  joint.mu_bearing = question->mu_bearing > 0.0 ? question->mu_bearing : rows->friction.mu;
  set_long_form (self, &joint);
  self->stress = hm_joint_equivalent_stress (&joint, self->preload);
  if (self->yield.megapascals <= 0.0)
    return;
  self->yield_share = self->stress.megapascals / self->yield.megapascals;
  self->yield_load = hm_joint_preload_at (&joint, self->yield, 1.0);
}

gboolean
hm_tightening_work_out (const HmTables *tables, const HmTighteningQuestion *question, HmTightening *out, GError **error)
{
  HmTightening self = { 0 };
  HmTorqueLimit limit;
  Rows rows;

  g_return_val_if_fail (tables != NULL && question != NULL && question->strength != NULL && out != NULL, FALSE);
  if (!check_question (question, error) || !find_rows (tables, question, &rows, error))
    return FALSE;
  self.preload = hm_torque_preload (&question->thread, rows.strength->proof, question->share_of_proof);
  if (!hm_torque_limit_preload (tables, &question->thread, question->into, question->engaged, &self.preload, &limit, error))
    return FALSE;
  self.governs = limit.governs;
  self.provenance = limit.provenance;
  self.low = hm_torque_from_nut_factor (&question->thread, self.preload, rows.friction.nut_factor_low);
  self.target = hm_torque_from_nut_factor (&question->thread, self.preload, rows.friction.nut_factor);
  self.high = hm_torque_from_nut_factor (&question->thread, self.preload, rows.friction.nut_factor_high);
  complete (tables, question, &rows, &self);
  *out = self;
  return TRUE;
}

gboolean
hm_tightening_from_torque (const HmTables *tables, const HmTighteningQuestion *question, HmTorque low, HmTorque high,
                           HmTightening *out, GError **error)
{
  HmTightening self = { 0 };
  Rows rows;

  g_return_val_if_fail (tables != NULL && question != NULL && question->strength != NULL && out != NULL, FALSE);
  if (!check_question (question, error) || !find_rows (tables, question, &rows, error))
    return FALSE;
  if (!(low.newton_metres > 0.0 && high.newton_metres >= low.newton_metres && isfinite (high.newton_metres)))
    {
      g_set_error_literal (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_NOT_COMPUTABLE, "a torque is above zero");
      return FALSE;
    }
  self.governs = HM_GOVERNS_TORQUE_GIVEN;
  self.provenance = (HmProvenance) { HM_PROVENANCE_COMPUTED, "from the torque given, thread and friction" };
  self.low = low;
  self.high = high;
  self.target.newton_metres = (low.newton_metres + high.newton_metres) / 2.0;
  self.preload.newtons = newtons_from (&question->thread, self.target.newton_metres, rows.friction.nut_factor);
  complete (tables, question, &rows, &self);
  *out = self;
  return TRUE;
}

gboolean
hm_tightening_suits (const HmStrengthRow *strength, const HmThread *thread)
{
  g_return_val_if_fail (strength != NULL && thread != NULL, FALSE);
  if (thread->major.mm < strength->from.mm - SIZE_SLACK_MM || thread->major.mm > strength->to.mm + SIZE_SLACK_MM)
    return FALSE;
  if (g_str_has_prefix (strength->standard, "ISO 898"))
    return thread->form == HM_THREAD_ISO_METRIC;
  return thread->form == HM_THREAD_UNIFIED || !g_str_has_prefix (strength->standard, "SAE");
}

static double
along (HmForce load, double end)
{
  return load.newtons > 0.0 ? load.newtons / end : -1.0;
}

/* The strip load of a long engagement lies far off; the scale ends at the marks that matter, and one beyond is left out. */
HmTighteningScale
hm_tightening_scale (const HmTightening *self)
{
  HmTighteningScale scale = { -1.0, -1.0, -1.0, -1.0, -1.0, -1.0 };
  double most, end;

  g_return_val_if_fail (self != NULL, scale);
  most = MAX (MAX (self->proof_load.newtons, self->yield_load.newtons), self->preload_high.newtons);
  if (self->strip_load.newtons < 2.0 * most)
    most = MAX (most, self->strip_load.newtons);
  if (!(most > 0.0))
    return scale;
  end = SCALE_MARGIN * most;
  scale.low = along (self->preload_low, end);
  scale.target = along (self->preload, end);
  scale.high = along (self->preload_high, end);
  scale.proof = along (self->proof_load, end);
  scale.yield = along (self->yield_load, end);
  scale.strip = self->strip_load.newtons <= most ? along (self->strip_load, end) : -1.0;
  return scale;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-drive.h"
#include "hm-provenance.h"
#include "hm-thread.h"
G_BEGIN_DECLS

#define HM_FASTENER_MAX_DRIVES 4

/** HmFastenerError: a word that the field does not know; the message lists those it knows. */
typedef enum { HM_FASTENER_ERROR_WORD, HM_FASTENER_ERROR_TORQUE } HmFastenerError;
#define HM_FASTENER_ERROR (hm_fastener_error_quark ())
GQuark hm_fastener_error_quark (void);

/** How a fastener's torque is known. */
typedef enum {
  HM_TORQUE_BY_HAND,      /* no wrench: snug, or "hand" in the manual */
  HM_TORQUE_RANGE,        /* a class range that stands in the knowledge */
  HM_TORQUE_COMPUTED,     /* from thread, class and friction */
  HM_TORQUE_MANUAL_ONLY   /* no honest range exists: read the maker's manual */
} HmTorqueBasis;

/** Surface state at assembly, for the nut factor. */
typedef enum { HM_FRICTION_DRY, HM_FRICTION_OILED, HM_FRICTION_ZINC, HM_FRICTION_THREAD_LOCKER,
               HM_FRICTION_ANTI_SEIZE, HM_FRICTION_N_STATES } HmFriction;

/** What the thread is screwed into. */
typedef enum { HM_MATERIAL_STEEL, HM_MATERIAL_ALUMINIUM_CAST, HM_MATERIAL_ALUMINIUM_DIE_CAST,
               HM_MATERIAL_PLASTIC, HM_MATERIAL_COPPER, HM_MATERIAL_N_MATERIALS } HmMaterial;

/** How several fasteners of one joint are tightened. */
typedef enum { HM_PATTERN_NONE, HM_PATTERN_CROSS, HM_PATTERN_INLINE, HM_PATTERN_ROUND, HM_PATTERN_RECTANGULAR,
               HM_PATTERN_N_PATTERNS } HmPattern;

/**
 * HmFastener: one kind of fastener at one place of a machine. Strings are borrowed from the knowledge.
 * @drives: every drive that turns it, the usual one first (a combination head has two)
 * @has_thread: %FALSE for pins and clips
 * @strength: property class or SAE grade as written ("8.8", "SAE 5"), "" if unknown
 */
typedef struct {
  const char *id, *name, *where;
  guint count;
  gboolean has_thread;
  HmThread thread;
  const char *strength;
  HmDrive drives[HM_FASTENER_MAX_DRIVES];
  guint n_drives;
  HmTorqueBasis torque_basis;
  HmQuantityRange torque;          /* HM_TORQUE_RANGE only */
  HmProvenance torque_provenance;
  HmFriction friction;
  HmMaterial into;
  HmPattern pattern;
  HmProvenance provenance;         /* of size and count */
} HmFastener;

/* The words of the knowledge files, in the order of the enums; @out is written on success only:
 * dry, oiled, zinc, thread-locker, anti-seize; steel, cast-aluminium, die-cast-aluminium, plastic, copper;
 * none, cross, inline, round, rectangular. */
gboolean hm_friction_parse (const char *text, HmFriction *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;
gboolean hm_material_parse (const char *text, HmMaterial *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;
gboolean hm_pattern_parse  (const char *text, HmPattern *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/* The same words back, or NULL for a value outside the enum. English, static. */
const char *hm_friction_name (HmFriction self);
const char *hm_material_name (HmMaterial self);
const char *hm_pattern_name  (HmPattern self);

/**
 * hm_torque_basis_parse: how a knowledge file states a torque: "5-7 N·m", "4-6 lbf·ft", "computed", "hand" or "manual".
 * @range: (out caller-allocates): written for %HM_TORQUE_RANGE only
 * Returns: %FALSE with %HM_FASTENER_ERROR_TORQUE when it is none of these, or no torque above zero
 */
gboolean hm_torque_basis_parse (const char *text, HmTorqueBasis *basis, HmQuantityRange *range,
                                GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-provenance.h"
#include "hm-quantity.h"
G_BEGIN_DECLS

/*
 * The rows of the standards' tables. Strings live as long as the HmTables that lends the row. A length, stress or
 * number that a row does not give is 0.
 */

typedef enum { HM_SERIES_METRIC_COARSE, HM_SERIES_METRIC_FINE, HM_SERIES_UNC, HM_SERIES_UNF, HM_SERIES_UNEF,
               HM_SERIES_NPT } HmThreadSeries;

/** HmUse: how often a thread turns up on small engines and outdoor power equipment; a judgement, no source. */
typedef enum { HM_USE_USUAL, HM_USE_OCCASIONAL, HM_USE_RARE } HmUse;

/** HmThreadRow: threads.csv, one thread of a series. @name is "M8 × 1.25", "1/4-20", "No.10-24", "1/8-27 NPT". */
typedef struct {
  const char *name;
  HmThreadSeries series;
  HmLength major, pitch;
  gboolean inch;
  HmUse use;
  HmProvenance provenance;
} HmThreadRow;

typedef enum { HM_HEAD_HEX_BOLT, HM_HEAD_HEX_NUT, HM_HEAD_FLANGE_BOLT, HM_HEAD_FLANGE_NUT, HM_HEAD_MACHINE_SCREW,
               HM_HEAD_MACHINE_NUT, HM_HEAD_WASHER_SCREW, HM_HEAD_SOCKET_CAP, HM_HEAD_BUTTON,
               HM_HEAD_SET_SCREW } HmHeadKind;

/** HmHexRow: hex-heads.csv, one head, nut or key. @thread is the size that carries it: "M8", "1/4", "No.10". */
typedef struct {
  const char *standard;
  HmHeadKind kind;
  const char *thread;
  HmLength nominal, min, max;      /* across flats; min and max are 0 for keys */
  gboolean inch;
  HmProvenance provenance;
} HmHexRow;

/** HmOpeningRow: openings.csv, limits of a wrench or socket opening, across flats. @name is "1/2" or "13". */
typedef struct {
  const char *name;
  HmLength nominal, min, max;
  gboolean inch;
  HmProvenance provenance;
} HmOpeningRow;

/**
 * HmHexalobularRow: hexalobular.csv. @number is the T or E number; @a over the points, @b over the hollows between them
 * (nominal). The go-gauge limits are those of the recess gauge, ISO 10664.
 */
typedef struct {
  gboolean external;
  int number;
  HmLength a, b, gauge_a_max, gauge_a_min, gauge_b_max, gauge_b_min;
  HmProvenance provenance;
} HmHexalobularRow;

/** HmStrengthRow: strength.csv, one class over one span of sizes, both ends included. */
typedef struct {
  const char *standard, *name;     /* "ISO 898-1", "8.8"; "SAE J429", "SAE 5" */
  HmLength from, to;               /* basic major diameter */
  HmStress proof, yield, tensile;
  HmProvenance provenance;
} HmStrengthRow;

/**
 * HmFrictionRow: friction.csv, one surface state at assembly: the nut factor K of T = K F d, and the coefficient of
 * friction that goes with it in thread and bearing.
 */
typedef struct {
  const char *state;               /* as hm_friction_name() */
  double nut_factor_low, nut_factor, nut_factor_high;
  double mu_low, mu, mu_high;
  HmProvenance provenance;
} HmFrictionRow;

/** HmHoleRow: holes.csv, what to drill for a thread: the customary tap drill and the clearance holes. */
typedef struct {
  const char *thread;              /* as HmThreadRow.name */
  HmLength tap_drill;
  const char *tap_drill_name;      /* "6.8 mm", "No.7", "F", "5/16 in" */
  HmLength close, normal, loose;
  HmProvenance tap_provenance, provenance;
} HmHoleRow;

/**
 * HmShearRow: shear.csv, ultimate shear strength of what a thread is cut into.
 * @material: as hm_material_name()
 */
typedef struct {
  const char *material;
  HmStress low, typical;
  double min_engagement_diameters; /* rule of thumb, in bolt diameters; 0 if none */
  HmProvenance provenance;
} HmShearRow;

/** HmPassRow: passes.csv, one tightening pass of a scheme. @share is of the final torque; @round is a round in order. */
typedef struct {
  const char *scheme;
  int pass;
  double share;
  gboolean round;
  HmProvenance provenance;
} HmPassRow;

typedef enum { HM_SPECIAL_SPARK_PLUG, HM_SPECIAL_GASKET, HM_SPECIAL_PLASTIC, HM_SPECIAL_TAPER } HmSpecialJoint;

/**
 * HmSpecialRow: special-joints.csv, a joint whose torque does not follow from thread, class and friction.
 * @torque: as hm_torque_basis_parse() reads it: a class range, "hand" or "manual"
 */
typedef struct { HmSpecialJoint joint; const char *name, *torque; HmProvenance provenance; } HmSpecialRow;

G_END_DECLS

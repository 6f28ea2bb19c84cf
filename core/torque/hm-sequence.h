/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-fastener.h"
G_BEGIN_DECLS

/*
 * In which order to tighten the bolts of one joint, as points to draw and numbers to follow.
 *
 * Rules: bolts round an opening (round, rectangular) go crosswise: after each bolt the one opposite, each next pair where
 * the largest gap is. Bolts in two rows (a cylinder head) or in a line go from the centre out, each followed by its
 * opposite. Loosening takes the reverse order.
 */

typedef enum { HM_LAYOUT_ROUND, HM_LAYOUT_RECTANGULAR, HM_LAYOUT_TWO_ROWS, HM_LAYOUT_INLINE } HmBoltLayout;

#define HM_SEQUENCE_MAX_BOLTS 32

/**
 * HmSequenceBolt: @x to the right and @y down, from −1 to 1; bolts are numbered from 1 in the order of the array:
 * clockwise from the top (round), clockwise from the top left (rectangular), row by row from the left (two rows).
 * @order: when it is tightened, from 1
 */
typedef struct { double x, y; guint order; } HmSequenceBolt;

/** HmSequence: a plain value. */
typedef struct { HmBoltLayout layout; guint n_bolts; HmSequenceBolt bolts[HM_SEQUENCE_MAX_BOLTS]; } HmSequence;

/** hm_sequence_layout: how a knowledge file's pattern is laid out: cross is two rows from six bolts up, else round. */
HmBoltLayout hm_sequence_layout (HmPattern pattern, guint n_bolts);

/**
 * hm_sequence_init:
 * @n_bolts: 1 to %HM_SEQUENCE_MAX_BOLTS; an odd number cannot stand in two rows and is laid out round
 * Returns: %FALSE, with @self unchanged, when @n_bolts is out of range
 */
gboolean hm_sequence_init (HmSequence *self, HmBoltLayout layout, guint n_bolts) G_GNUC_WARN_UNUSED_RESULT;

/** hm_sequence_order: (out) the bolt numbers, from 1, in the order of tightening; @order has room for n_bolts. */
void hm_sequence_order (const HmSequence *self, guint *order);

/**
 * hm_sequence_passes: the passes of a scheme of passes.csv ("three-pass cross", "two-pass"), in order.
 * @n_passes: (out)
 * Returns: (array length=n_passes) (nullable): borrowed from @tables; NULL if there is no such scheme
 */
const HmPassRow *hm_sequence_passes (const HmTables *tables, const char *scheme, gsize *n_passes);

/** hm_sequence_pass_torque: what the wrench is set to in a pass; @full is the final torque. */
HmTorque hm_sequence_pass_torque (const HmPassRow *pass, HmTorque full);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-sequence.h"
#include "hmui-settings.h"
G_BEGIN_DECLS

/*
 * HmuiOrderModel: in which order the bolts of one joint are tightened, and in which passes. No widgets.
 * Signal "changed" (no arguments).
 */
#define HMUI_TYPE_ORDER_MODEL (hmui_order_model_get_type ())
G_DECLARE_FINAL_TYPE (HmuiOrderModel, hmui_order_model, HMUI, ORDER_MODEL, GObject)

HmuiOrderModel *hmui_order_model_new (HmuiSettings *settings);

void   hmui_order_model_set_tables (HmuiOrderModel *self, const HmTables *tables);   /* (nullable) */
void   hmui_order_model_set_torque (HmuiOrderModel *self, HmTorque full);            /* 0: not known */
void   hmui_order_model_set_layout (HmuiOrderModel *self, guint layout);             /* place in the list of layouts */
void   hmui_order_model_set_bolts  (HmuiOrderModel *self, guint n_bolts);
void   hmui_order_model_set_scheme (HmuiOrderModel *self, guint scheme);             /* place in the list of schemes */
guint  hmui_order_model_get_layout (HmuiOrderModel *self);
guint  hmui_order_model_get_scheme (HmuiOrderModel *self);
GStrv  hmui_order_model_dup_layouts (HmuiOrderModel *self);
GStrv  hmui_order_model_dup_schemes (HmuiOrderModel *self);

/** hmui_order_model_get_sequence: borrowed until the next change. */
const HmSequence *hmui_order_model_get_sequence (HmuiOrderModel *self);
/** hmui_order_model_get_pattern: how the joint is outlined. */
HmPattern hmui_order_model_get_pattern (HmuiOrderModel *self);
/** hmui_order_model_dup_passes: a line each, in order; their share of the torque only, or the torque too. (transfer full) */
GStrv     hmui_order_model_dup_passes (HmuiOrderModel *self, gboolean with_torque);
/** hmui_order_model_dup_note: how to work by it, and what could not be done as asked. (transfer full) */
char     *hmui_order_model_dup_note (HmuiOrderModel *self);
/** hmui_order_model_get_provenance: of the passes; the order itself is common practice. %FALSE without tables. */
gboolean  hmui_order_model_get_provenance (HmuiOrderModel *self, HmProvenance *out);

G_END_DECLS

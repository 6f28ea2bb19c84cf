/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "cli-report.h"
#include "hm-sequence.h"
#include "hm-tightening.h"
#include "hm-wrench-text.h"
G_BEGIN_DECLS

/** CliTorqueBasis: from where the torque comes. */
typedef enum { CLI_TORQUE_FROM_CLASS, CLI_TORQUE_GIVEN, CLI_TORQUE_FROM_PRELOAD } CliTorqueBasis;

/** CliTorqueOptions: the texts behind the options, each NULL if left out. Owned. */
typedef struct
{
  char *strength, *state, *nut_factor, *thread_friction, *head_friction, *into, *engaged, *seat, *share, *given, *preload;
  char *adapter, *angle, *length, *bolts, *pattern, *passes;
  char **wrenches;
  gboolean json;
} CliTorqueOptions;

/**
 * CliTorqueRequest: what was asked, and what follows. Borrows its texts from the options.
 * @row: the thread in its series; NULL if no series has it
 * @friction: what is reckoned with; a copy
 * @tightening: not for %CLI_TORQUE_FROM_PRELOAD
 * @preload: at @target
 * @wrenches: (element-type HmShopWrench): owned; may be empty
 * @order: @order.n_bolts is 0 when no bolts were named
 */
typedef struct
{
  CliTorqueBasis basis;
  HmTighteningQuestion question;
  const HmThreadRow *row;
  HmFrictionRow friction;
  HmTightening tightening;
  HmForce preload;
  HmTorque low, target, high;
  gboolean has_adapter;
  HmLength adapter, lever;
  double angle_degrees;
  HmTorque setting;
  GArray *wrenches;
  HmPattern pattern;
  HmSequence order;
  const char *scheme;
} CliTorqueRequest;

/** cli_torque_read: @out is empty before, and may be half filled after a failure; its @wrenches are the caller's to free. */
gboolean cli_torque_read (const char *thread, const CliTorqueOptions *options, const HmTables *tables, CliTorqueRequest *out,
                          GError **error) G_GNUC_WARN_UNUSED_RESULT;

/* The parts of the answer, in its order. */
void cli_report_tightening (CliReport *report, const CliTorqueRequest *request);
void cli_report_setting    (CliReport *report, const CliTorqueRequest *request);
void cli_report_order      (CliReport *report, const CliTorqueRequest *request, const HmTables *tables);

/** cli_words_seat: "flange"; the English that is typed and written. NULL past the last. */
const char *cli_words_seat (HmSeat seat);

G_END_DECLS

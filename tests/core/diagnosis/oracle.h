/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-planner.h"

/**
 * oracle_policy_minutes: what following the planner's first action and asking again costs on average, worked out over
 * the whole tree with costs and probabilities of the test's own (nothing of the planner but its choice is used).
 * @reach: branches rarer than this are charged with sending the job out (0: none)
 */
double oracle_policy_minutes (HmPlanner *planner, const HmModel *model, const HmBelief *belief, double reach);

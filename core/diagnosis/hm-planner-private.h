/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-planner.h"
G_BEGIN_DECLS

/*
 * Between the parts of the planner: a node of the search and the workspace. Costs are prepaid: a step is charged its
 * opening and its closing when it is opened, so that only the set of open steps is state and closing is free.
 */
typedef struct {
  double p[HM_MODEL_MAX_CAUSES + 1];
  HmModelSet open;
  guint64 used[2];                   /* checks that are out of the plan: asked, not possible, not sure */
} HmNode;

/** HmCandidate: one action of a node, scored. */
typedef struct { HmAction action; double score, cost, access; guint newly_open; } HmCandidate;

#define HM_PLANNER_MAX_DEPTH 3u
#define HM_PLANNER_MAX_CANDIDATES (HM_MODEL_MAX_CHECKS + 2 * HM_MODEL_MAX_CAUSES + 1)

struct _HmPlanner {
  HmModel *model;                    /* owned */
  guint depth;
  struct {
    HmNode child;
    HmCandidate candidates[HM_PLANNER_MAX_CANDIDATES];
    guint n_candidates;
  } level[HM_PLANNER_MAX_DEPTH];
};

/* Costs, hm-planner-leaf.c */
double hm_node_check_cost  (const HmModel *model, const HmNode *node, guint check, double *access, guint *newly_open);
double hm_node_repair_cost (const HmModel *model, const HmNode *node, const HmAction *repair, double *access, guint *newly_open);
double hm_node_mass        (const HmNode *node, const HmAction *repair);   /* probability that @repair fixes it */
HmModelSet hm_node_open_after_repair (const HmModel *model, const HmNode *node, const HmAction *repair);

/** The repair-only plan from @node: its minutes; @first (nullable): its first action. */
double hm_node_leaf (const HmModel *model, const HmNode *node, HmAction *first);
/** No plan from @node averages less: the cause told at once. */
double hm_node_bound (const HmModel *model, const HmNode *node);
/** Grows a batch from @seed while probability per minute rises. */
void hm_node_grow_batch (const HmModel *model, const HmNode *node, guint seed, HmAction *out);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hmui-diagnose-model.h"
G_BEGIN_DECLS

/* Between hmui-diagnose-model.c (where it stands, keeping it) and hmui-diagnose-changes.c (what is done with it). */
typedef enum {
  HMUI_CHANGE_NONE,
  HMUI_CHANGE_ANSWER,      /* .index = finding */
  HMUI_CHANGE_READING,     /* .reading */
  HMUI_CHANGE_UNSURE, HMUI_CHANGE_CANNOT, HMUI_CHANGE_BEGIN,
  HMUI_CHANGE_FINISH,      /* .index = HmRepairResult */
  HMUI_CHANGE_SEND_OUT,
  HMUI_CHANGE_CHOOSE,      /* .action */
  HMUI_CHANGE_REVISIT,     /* .index = entry */
  HMUI_CHANGE_UNDO, HMUI_CHANGE_REDO, HMUI_CHANGE_LEAVE
} HmuiChangeKind;

/* What the person asked for; a plain value. */
typedef struct { HmuiChangeKind kind; guint index; HmQuantity reading; HmAction action; } HmuiChange;

struct _HmuiDiagnoseModel
{
  GObject parent_instance;
  HmuiSettings *settings;         /* owned */
  HmuiShop *shop;                 /* owned */
  HmKnowledge *knowledge;         /* owned; NULL before it is open */
  char *problem;                  /* owned; why there is no knowledge */
  HmDiagnosis *diagnosis;         /* owned; NULL while choosing */
  gint64 id;                      /* in the shop's store; 0: not kept yet */
  HmAction chosen;                /* what the person chose over the advice */
  gboolean has_chosen;
  gboolean busy;                  /* the store has the diagnosis: hands off */
  gboolean page_stays;            /* … because of a tick or a text: what is asked for meanwhile waits */
  HmuiChange waiting_change;
  GHashTable *waiting_ticks;      /* owned; id -> gboolean; ticks made while busy */
  GHashTable *waiting_texts;      /* owned; id -> text; texts edited while busy */
  char *note;                     /* owned; what to say when the change is kept, or NULL */
};

/** Says @text in the strip at the bottom. */
void hmui_diagnose_model_say (HmuiDiagnoseModel *self, const char *text, gboolean can_undo);
void hmui_diagnose_model_emit_changed (HmuiDiagnoseModel *self);

/** After a change by the person: the advice counts again, and the change is kept; @note is said when it is. */
void hmui_diagnose_model_commit (HmuiDiagnoseModel *self, const char *note);

/** Puts ticks and texts made while the store was writing into the diagnosis, and keeps them. */
void hmui_diagnose_model_apply_waiting (HmuiDiagnoseModel *self);

/** Does it at once; there is a diagnosis and nobody else has it in hand. */
void hmui_diagnose_model_perform (HmuiDiagnoseModel *self, const HmuiChange *change);

G_END_DECLS

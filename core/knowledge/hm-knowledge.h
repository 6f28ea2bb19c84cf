/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-guide.h"
#include "hm-picture.h"
#include "hm-tables.h"
G_BEGIN_DECLS

/*
 * The compiled knowledge: one read-only SQLite file made from data/knowledge/ and data/tables/ at build time.
 */
typedef struct _HmKnowledge HmKnowledge;

/**
 * HmKnowledgeError:
 * @HM_KNOWLEDGE_ERROR_MISSING: there is no such file
 * @HM_KNOWLEDGE_ERROR_DAMAGED: it is no knowledge file, or is cut short
 * @HM_KNOWLEDGE_ERROR_NEWER: made by a newer Halfmoon
 * @HM_KNOWLEDGE_ERROR_OLDER: made by an older Halfmoon
 * @HM_KNOWLEDGE_ERROR_UNKNOWN_ENTRY: no complaint, layout or picture of that name (the message lists those there are)
 * @HM_KNOWLEDGE_ERROR_TEXT: the compiler refused a text file (the message names file, entry and reason)
 */
typedef enum {
  HM_KNOWLEDGE_ERROR_MISSING, HM_KNOWLEDGE_ERROR_DAMAGED, HM_KNOWLEDGE_ERROR_NEWER, HM_KNOWLEDGE_ERROR_OLDER,
  HM_KNOWLEDGE_ERROR_UNKNOWN_ENTRY, HM_KNOWLEDGE_ERROR_TEXT
} HmKnowledgeError;
#define HM_KNOWLEDGE_ERROR (hm_knowledge_error_quark ())
GQuark hm_knowledge_error_quark (void);

/** hm_knowledge_open: @path is the compiled file. Returns: (transfer full), or NULL with @error */
HmKnowledge *hm_knowledge_open  (const char *path, GError **error);
HmKnowledge *hm_knowledge_ref   (HmKnowledge *self);
void         hm_knowledge_unref (HmKnowledge *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmKnowledge, hm_knowledge_unref)

/** A short text that changes whenever the knowledge does (a digest of its sources). Borrowed. */
const char *hm_knowledge_get_version (const HmKnowledge *self);

/** The tables of the standards. Borrowed. */
const HmTables *hm_knowledge_get_tables (const HmKnowledge *self);

/** All complaints, in the order of the data; strings belong to @self. @n (out) (nullable): how many. */
const HmComplaint *hm_knowledge_get_complaints (const HmKnowledge *self, guint *n);
const HmLayout    *hm_knowledge_get_layouts    (const HmKnowledge *self, guint *n);

/** Whether the knowledge covers @complaint on @layout. */
gboolean hm_knowledge_covers (const HmKnowledge *self, const char *complaint, const char *layout);

/** hm_knowledge_load_guide: everything for one complaint on one layout. (transfer full), or NULL with @error */
HmGuide   *hm_knowledge_load_guide   (HmKnowledge *self, const char *complaint, const char *layout, GError **error);

/** hm_knowledge_get_picture: kept by @self once read; borrowed. NULL with @error when there is none. */
const HmPicture *hm_knowledge_get_picture (HmKnowledge *self, const char *id, GError **error);

G_END_DECLS

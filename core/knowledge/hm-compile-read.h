/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-source-entry.h"
#include "hm-tables.h"
G_BEGIN_DECLS

/** HmSourceKind: a kind of entry, and where its entries stand. */
typedef struct {
  const char *name;
  const char *place;          /* first part of the path below knowledge/: "common", "layouts" … */
  gboolean has_name, has_provenance;
} HmSourceKind;
extern const HmSourceKind hm_source_kinds[];     /* ends with a name of NULL */
const HmSourceKind *hm_source_kind_find (const char *name);

typedef struct { char *name; char *text; } HmSourceTable;

/** HmSource: all texts, read and split, nothing of their meaning checked beyond kinds, places and ids. */
typedef struct {
  GPtrArray *files;       /* owned; paths below the data folder, sorted */
  GPtrArray *folders;     /* owned; folders that were searched, full paths */
  GPtrArray *entries;     /* owned; HmSourceEntry in order of file and line */
  GHashTable *index;      /* owned; "kind|scope|id" -> entry */
  GPtrArray *table_texts; /* owned; HmSourceTable */
  HmTables *tables;       /* owned; the same, read */
  char *version;          /* owned; digest of all files */
} HmSource;

HmSource *hm_source_read (const char *data_folder, GError **error);
void      hm_source_free (HmSource *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmSource, hm_source_free)

/** hm_source_find: NULL when there is none. */
HmSourceEntry *hm_source_find (const HmSource *self, const char *kind, const char *scope, const char *id);

/** hm_source_list: the entries of @kind in @scope (NULL: in all), in order. (transfer container) */
GPtrArray *hm_source_list (const HmSource *self, const char *kind, const char *scope);

/** hm_source_split: adds the entries of one file's @text. @file: (transfer none): lives as long as the entries do */
gboolean hm_source_split (const char *file, const char *text, GPtrArray *entries, GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS

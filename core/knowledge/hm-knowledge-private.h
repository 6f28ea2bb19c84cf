/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-arena.h"
#include "hm-knowledge.h"
#include "hm-store.h"
G_BEGIN_DECLS

/* Shared by the files that read the compiled knowledge. */

struct _HmGuide
{
  gatomicrefcount references;
  HmArena arena;                /* everything that the guide points to */
  HmComplaint complaint;
  HmLayout layout;
  HmCause *causes;        guint n_causes;
  HmCheck *checks;        guint n_checks;
  HmAccessStep *access;   guint n_access;
  HmIncident *incidents;  guint n_incidents;
};

/** HmReader: a guide being filled. All but @guide is borrowed; the tables of entries map an entry's row to what was read of it. */
typedef struct {
  HmStore *store;
  const HmTables *tables;
  HmGuide *guide;
  HmArena *arena;               /* of the guide */
  const char *complaint, *layout;
  GHashTable *cautions, *limits, *tools, *fasteners, *remedies;     /* row -> HmCaution * … */
  GHashTable *access, *causes;                                      /* row -> index + 1 */
} HmReader;

gboolean hm_read_guide (HmReader *self, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/* --- lists of any entry; hm-read-lists.c --- */
gboolean hm_read_lines   (HmStore *store, HmArena *arena, gint64 entry, const char *role, const char *layout,
                          const char * const **out, GError **error) G_GNUC_WARN_UNUSED_RESULT;
gboolean hm_read_minutes (HmStore *store, gint64 entry, const char *role, const char *layout, HmDuration *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_read_pointers: what the links of @role lead to, found in @targets; NULL-terminated. */
gboolean hm_read_pointers (HmReader *self, gint64 entry, const char *role, GHashTable *targets, gconstpointer **out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_read_indices: the same where @targets holds index + 1. */
gboolean hm_read_indices  (HmReader *self, gint64 entry, const char *role, GHashTable *targets, const guint **out, guint *n, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_read_count: the number that @sql gives, with @complaint as ?1 and @layout as ?2 where they are not NULL. */
gboolean hm_read_count (HmStore *store, const char *sql, const char *complaint, const char *layout, guint *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

HmProvenance hm_read_provenance (HmArena *arena, const char *text);   /* @text: as it stands in the store */

/* --- parts of a guide --- */
gboolean hm_read_shared    (HmReader *self, GError **error) G_GNUC_WARN_UNUSED_RESULT;   /* cautions, limits, tools; hm-read-layout.c */
gboolean hm_read_layout    (HmReader *self, GError **error) G_GNUC_WARN_UNUSED_RESULT;   /* fasteners, access steps */
gboolean hm_read_causes    (HmReader *self, GError **error) G_GNUC_WARN_UNUSED_RESULT;   /* and remedies; hm-read-causes.c */
gboolean hm_read_incidents (HmReader *self, GError **error) G_GNUC_WARN_UNUSED_RESULT;
gboolean hm_read_checks    (HmReader *self, GError **error) G_GNUC_WARN_UNUSED_RESULT;   /* hm-read-checks.c */

/** hm_read_complaints: all of them, into @arena; hm-read-complaints.c. */
gboolean hm_read_complaints (HmStore *store, HmArena *arena, HmComplaint **out, guint *n, GError **error) G_GNUC_WARN_UNUSED_RESULT;
gboolean hm_read_layouts    (HmStore *store, HmArena *arena, HmLayout **out, guint *n, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_read_picture: into @arena. *@out is NULL when there is none of that id. */
gboolean hm_read_picture (HmStore *store, HmArena *arena, const char *id, const HmPicture **out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_read_fail_inconsistent: what is in the file does not fit together. Returns: %FALSE */
gboolean hm_read_fail_inconsistent (const char *what, GError **error);

#define HM_ROW_KEY(row) GSIZE_TO_POINTER ((gsize) (row))

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-compile-read.h"
#include "hm-store.h"
G_BEGIN_DECLS

/** HmWriter: checks the values of each entry and puts them into the store. @store and @source are borrowed. */
typedef struct {
  HmStore *store;
  HmSource *source;
  GHashTable *rates;     /* owned; "complaint/cause/layout" -> double, relative frequency */
} HmWriter;

/** hm_compile_write: all of @source into the empty @store. */
gboolean hm_compile_write (HmSource *source, HmStore *store, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/* --- what the writers of the kinds share; hm-compile-write.c and hm-compile-links.c --- */

/** hm_writer_put: one row. @types: a letter a parameter: i gint64, d double, t const char * (NULL writes NULL). */
gboolean hm_writer_put (HmWriter *self, GError **error, const char *sql, const char *types, ...) G_GNUC_WARN_UNUSED_RESULT;

/* @layouts: the layouts that the entry holds for, or NULL when it cannot differ by layout. */
gboolean hm_writer_lines   (HmWriter *self, HmSourceEntry *entry, const char *key, const char * const *layouts, guint at_least, GError **error) G_GNUC_WARN_UNUSED_RESULT;
gboolean hm_writer_minutes (HmWriter *self, HmSourceEntry *entry, const char *key, const char * const *layouts, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_writer_links: references to entries of @kind in @scope; NULL for @scope: each layout's own. */
gboolean hm_writer_links   (HmWriter *self, HmSourceEntry *entry, const char *key, const char *kind, const char *scope,
                            const char * const *layouts, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_writer_resolve: the entry referred to, counted as used; NULL with @error when there is none. */
HmSourceEntry *hm_writer_resolve (HmWriter *self, const HmSourceEntry *entry, const char *key, const char *kind,
                                  const char *scope, const char *id, GError **error);

/** hm_writer_layouts: the layouts of a complaint. (transfer full), NULL with @error */
char **hm_writer_layouts (HmWriter *self, const char *complaint, GError **error);

/** hm_compile_check_layouts: the layouts of a check: its own `Layouts`, else all of the complaint. (transfer full), NULL with @error */
char **hm_compile_check_layouts (HmSource *source, HmSourceEntry *check, GError **error);

/** hm_writer_rate: relative frequency of a cause on a layout; 0 when it does not exist there. */
double hm_writer_rate (const HmWriter *self, const char *complaint, const char *cause, const char *layout);

/** hm_compile_read_rates: fills the rates and checks that each layout of a complaint has a cause. */
gboolean hm_compile_read_rates (HmWriter *self, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/* --- the kinds --- */
typedef gboolean (*HmKindWriter) (HmWriter *self, HmSourceEntry *entry, GError **error);
gboolean hm_write_limit     (HmWriter *self, HmSourceEntry *entry, GError **error);
gboolean hm_write_caution   (HmWriter *self, HmSourceEntry *entry, GError **error);
gboolean hm_write_layout    (HmWriter *self, HmSourceEntry *entry, GError **error);
gboolean hm_write_fastener  (HmWriter *self, HmSourceEntry *entry, GError **error);
gboolean hm_write_access    (HmWriter *self, HmSourceEntry *entry, GError **error);
gboolean hm_write_complaint (HmWriter *self, HmSourceEntry *entry, GError **error);
gboolean hm_write_remedy    (HmWriter *self, HmSourceEntry *entry, GError **error);
gboolean hm_write_cause     (HmWriter *self, HmSourceEntry *entry, GError **error);
gboolean hm_write_check     (HmWriter *self, HmSourceEntry *entry, GError **error);
gboolean hm_write_finding   (HmWriter *self, HmSourceEntry *entry, GError **error);
gboolean hm_write_incident  (HmWriter *self, HmSourceEntry *entry, GError **error);
gboolean hm_write_picture   (HmWriter *self, HmSourceEntry *entry, GError **error);
gboolean hm_write_part      (HmWriter *self, HmSourceEntry *entry, GError **error);
gboolean hm_write_point     (HmWriter *self, HmSourceEntry *entry, GError **error);
gboolean hm_write_wire      (HmWriter *self, HmSourceEntry *entry, GError **error);

/** hm_write_check_rows: the likelihoods of a check. */
gboolean hm_write_check_rows (HmWriter *self, HmSourceEntry *check, const char * const *findings, const char * const *layouts, GError **error);

G_END_DECLS

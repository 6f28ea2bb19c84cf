/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-quantity.h"
G_BEGIN_DECLS

/*
 * One entry of the texts in data/knowledge/, with its lines; the compiler takes its values out by key. Each key that
 * was asked for is remembered, so that what nobody asked for can be reported as unknown.
 */
#define HM_SOURCE_MAX_LINES 12

typedef struct { char *key, *value; guint line; gboolean was_read; } HmSourceField;

typedef struct {
  const char *file;      /* below the data folder; borrowed from the source */
  guint line;
  char *kind, *id;
  char *scope;           /* the layout, complaint or picture it belongs to; complaint/check of a finding; "" if shared */
  gint64 row;            /* its place in the texts, from 1 */
  guint n_uses;          /* how many entries refer to it */
  GPtrArray *fields;     /* owned; HmSourceField in order */
  GHashTable *by_key;    /* owned; key -> HmSourceField */
  GPtrArray *asked;      /* owned; keys that have been asked for, as the reader of a message knows them */
} HmSourceEntry;

HmSourceEntry *hm_source_entry_new  (const char *file, guint line);
void           hm_source_entry_free (HmSourceEntry *self);

/** hm_source_entry_add: %FALSE when the key stands there already. */
gboolean hm_source_entry_add (HmSourceEntry *self, const char *key, const char *value, guint line) G_GNUC_WARN_UNUSED_RESULT;

/** Sets @error to file, line, entry and the reason. Both return %FALSE. @key: the line of this key is named. */
gboolean hm_entry_fail     (const HmSourceEntry *self, GError **error, const char *format, ...) G_GNUC_PRINTF (3, 4);
gboolean hm_entry_fail_key (const HmSourceEntry *self, const char *key, GError **error, const char *format, ...) G_GNUC_PRINTF (4, 5);

/** hm_entry_fail_at: puts file, line of @key and entry before the message that @error already has. Returns: %FALSE */
gboolean hm_entry_fail_at  (const HmSourceEntry *self, const char *key, GError **error);

/** hm_entry_get: the value of @key, or of "@key-@layout" if that is there. NULL when neither is. @layout: (nullable) */
const char *hm_entry_get (HmSourceEntry *self, const char *key, const char *layout);
gboolean    hm_entry_varies_by_layout (const HmSourceEntry *self, const char *key, const char * const *layouts);

/** hm_entry_get_text: *@out is NULL when the text is left out; with @required that is an error. */
gboolean hm_entry_get_text (HmSourceEntry *self, const char *key, gboolean required, const char **out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_entry_get_lines: the texts of @key1, @key2 … without a gap. @out: (transfer container): borrowed texts */
gboolean hm_entry_get_lines (HmSourceEntry *self, const char *key, const char *layout, guint at_least,
                             GPtrArray **out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_entry_get_list: the members between semicolons, each once; empty when the key is left out. @out: (transfer full) */
gboolean hm_entry_get_list (HmSourceEntry *self, const char *key, const char *layout, char ***out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

gboolean hm_entry_get_minutes (HmSourceEntry *self, const char *key, const char *layout, double *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;
gboolean hm_entry_get_share   (HmSourceEntry *self, const char *key, double *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;   /* 0–1, neither included */
gboolean hm_entry_get_whole   (HmSourceEntry *self, const char *key, guint low, guint high, guint *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;
gboolean hm_entry_get_yes_no  (HmSourceEntry *self, const char *key, gboolean required, gboolean *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;
gboolean hm_entry_get_provenance (HmSourceEntry *self, const char **out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_entry_check_all_read: %FALSE with the first key that nobody asked for, and the keys that are known. */
gboolean hm_entry_check_all_read (HmSourceEntry *self, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_share_from_text: "55", "55 %" -> 0.55. @words: (nullable): words that stand for @shares. 0 and 100 are refused. */
typedef struct { const char *word; double share; } HmShareWord;
gboolean hm_share_from_text (const char *text, const HmShareWord *words, gsize n_words, double *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmSourceEntry, hm_source_entry_free)

G_END_DECLS

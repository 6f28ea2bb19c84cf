/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-quantity.h"
G_BEGIN_DECLS

/* The words that the texts in data/knowledge/ use for enumerations, each list in the order of its enumeration. */
extern const char * const hm_words_friction[];       /* HmFriction */
extern const char * const hm_words_material[];       /* HmMaterial */
extern const char * const hm_words_pattern[];        /* HmPattern */
extern const char * const hm_words_symbol[];         /* HmSymbol */
extern const char * const hm_words_quantity_kind[];  /* HmQuantityKind */
extern const char * const hm_words_normal_side[];    /* below, above */
extern const char * const hm_words_yes_no[];         /* no, yes */

/** hm_words_find: Returns: the place of @text in the NULL-terminated @words, or -1 */
int hm_words_find (const char * const *words, const char *text);

/** hm_words_find_or_fail: as hm_words_find(); -1 sets @error with @key, @text and the words there are. */
int hm_words_find_or_fail (const char * const *words, const char *key, const char *text, GError **error);

/** hm_words_unit: the unit that is written @text and measures @kind. */
gboolean hm_words_unit (const char *text, HmQuantityKind kind, HmUnit *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_words_refuse: sets @error to %HM_KNOWLEDGE_ERROR_TEXT with the sentence. Returns: %FALSE, always */
gboolean hm_words_refuse (GError **error, const char *format, ...) G_GNUC_PRINTF (2, 3);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>
G_BEGIN_DECLS

/**
 * HmProvenanceKind: where a value is from, best first.
 * @HM_PROVENANCE_SPEC_SHEET: the shop read it in the maker's manual (with page)
 * @HM_PROVENANCE_STANDARD: a named standard, with clause or table
 * @HM_PROVENANCE_PUBLISHED: a named public document that is no standard (a technical manual, a handbook)
 * @HM_PROVENANCE_COMPUTED: worked out; the source names the inputs or the formula
 * @HM_PROVENANCE_COMMON_PRACTICE: trade lore, no source
 */
typedef enum {
  HM_PROVENANCE_SPEC_SHEET, HM_PROVENANCE_STANDARD, HM_PROVENANCE_PUBLISHED,
  HM_PROVENANCE_COMPUTED, HM_PROVENANCE_COMMON_PRACTICE
} HmProvenanceKind;

/** HmProvenance: a plain value; @source is borrowed from whoever holds the value (NULL for common practice). */
typedef struct { HmProvenanceKind kind; const char *source; } HmProvenance;

/**
 * hm_provenance_parse:
 * @text: "common practice", "published: TM 5-4930-227-14, table 5-1", "standard: ISO 898-1, table 3",
 *   "computed: from thread and class", "spec sheet: page 12"
 * @out: (out caller-allocates): its source points into @text
 * Returns: %FALSE, with nothing written, when the kind is none of these, or a kind that needs a source has none
 */
gboolean hm_provenance_parse (const char *text, HmProvenance *out) G_GNUC_WARN_UNUSED_RESULT;
const char *hm_provenance_kind_name (HmProvenanceKind kind);   /* English, translatable: "common practice" */
char *hm_provenance_format (HmProvenance self);                /* the text that hm_provenance_parse() reads */

/** Whether the maker's manual has to be named as governing beside the value: all but the spec sheet. */
gboolean hm_provenance_manual_governs (HmProvenance self);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "cli-io.h"
#include "hm-provenance.h"
G_BEGIN_DECLS

/*
 * One answer, told twice: as text for a person, or as one JSON object for a program. Each call adds one fact to both, so that
 * neither says what the other does not. Numbers in JSON are in the base unit that stands beside them ("1" for a share or a bare
 * number), names are English. A label of NULL leaves the fact out of the text.
 */
typedef struct _CliReport CliReport;

/** CliDetail: how finely lengths are written in the text: to 0.01 mm and 0.001 in, or to 0.001 mm and 0.0001 in. */
typedef enum { CLI_BENCH, CLI_FINE } CliDetail;

/** cli_report_new: @io is borrowed; @format names the JSON object, as "halfmoon-fit/1". */
CliReport *cli_report_new  (CliIo *io, const char *format, gboolean json);
void       cli_report_free (CliReport *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CliReport, cli_report_free)

const HmFormat *cli_report_get_format (CliReport *self);
gboolean        cli_report_is_json    (CliReport *self);

/* A part of the answer: a title in the text (none for NULL), an object in JSON. */
void cli_report_begin (CliReport *self, const char *member, const char *title);
/*
 * A list of such parts; between it and its end stand items, each one paragraph of the text that starts with @heading.
 * @provenance: (nullable): of every item; has to outlive the list
 */
void cli_report_begin_list (CliReport *self, const char *member, const char *title, const HmProvenance *provenance);
void cli_report_begin_item (CliReport *self, const char *heading);
void cli_report_end (CliReport *self);

/** cli_report_word: @word is the English that programs read, @shown (nullable: @word) what the person reads. */
void cli_report_word (CliReport *self, const char *member, const char *label, const char *word, const char *shown);
void cli_report_count (CliReport *self, const char *member, const char *label, gint64 count);
/** cli_report_counts: a list of whole numbers. @shown: (nullable): what stands for them in the text */
void cli_report_counts (CliReport *self, const char *member, const char *label, const guint *counts, guint n, const char *shown);
void cli_report_flag (CliReport *self, const char *member, gboolean value);
/** cli_report_value: @provenance is NULL where the whole part or item has one. */
void cli_report_value (CliReport *self, const char *member, const char *label, HmQuantity value, CliDetail detail,
                       const HmProvenance *provenance);
void cli_report_range (CliReport *self, const char *member, const char *label, HmQuantity low, HmQuantity high, CliDetail detail,
                       const HmProvenance *provenance);
/** cli_report_plain_number: for JSON only: a number that stands elsewhere with its unit, here in the unit that @member is named for.
 * NAN for one that is not known: null. */
void cli_report_plain_number (CliReport *self, const char *member, double value);
/** cli_report_degrees: angles, one or two ends. */
void cli_report_degrees (CliReport *self, const char *member, const char *label, double low, double high);
/** cli_report_provenance: of the part or item that is open; not of a list. */
void cli_report_provenance (CliReport *self, HmProvenance provenance);
/** cli_report_provenance_of_rest: for JSON only: of every value in the open part (outside of parts: in the answer) that has none. */
void cli_report_provenance_of_rest (CliReport *self, HmProvenance provenance);
/** cli_report_say: for the text only. */
void cli_report_say (CliReport *self, const char *sentence);
/** cli_report_caution: stands at the end. */
void cli_report_caution (CliReport *self, const char *sentence);

/** cli_report_finish: cautions, and that the maker's manual governs; prints the JSON. */
void cli_report_finish (CliReport *self);

/* Quantities of the core's one-unit types. */
HmQuantity cli_quantity_length (HmLength length);
HmQuantity cli_quantity_torque (HmTorque torque);
HmQuantity cli_quantity_force (HmForce force);
HmQuantity cli_quantity_stress (HmStress stress);
HmQuantity cli_quantity_ratio (double ratio);
HmQuantity cli_quantity_number (double number);

/** cli_words_provenance: in the person's language. (transfer full) */
char *cli_words_provenance (HmProvenance provenance);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hm-quantity.h"
G_BEGIN_DECLS

/*
 * HmuiReadingEntry: a field for one number off an instrument, with its unit, a hint, the verdict on what is typed, and
 * below it the core's own sentence when it cannot be read (after a pause or on Enter, never at each key).
 *
 * Signal "quantity-changed" (no arguments): what is typed reads as another quantity than before, or no longer reads;
 *   ask hmui_reading_entry_get_quantity(). The caller answers with hmui_reading_entry_set_verdict().
 * Signal "submitted" (no arguments): Enter was pressed and what is typed can be read.
 */
#define HMUI_TYPE_READING_ENTRY (hmui_reading_entry_get_type ())
G_DECLARE_FINAL_TYPE (HmuiReadingEntry, hmui_reading_entry, HMUI, READING_ENTRY, GtkWidget)

/** HmuiVerdict: the tone of a verdict; each has its own icon. */
typedef enum { HMUI_VERDICT_PLAIN, HMUI_VERDICT_GOOD, HMUI_VERDICT_BAD } HmuiVerdict;

GtkWidget *hmui_reading_entry_new (void);

/**
 * hmui_reading_entry_set_kind: what the field measures; empties it.
 * @unit: of a bare number, and the suffix shown
 * @label: names the field for everybody ("Reading"), translated; copied
 */
void hmui_reading_entry_set_kind (HmuiReadingEntry *self, HmQuantityKind kind, HmUnit unit, const char *label);

/** hmui_reading_entry_set_hint: (nullable) a line under the field ("over 0.3 V is too much"); copied. */
void hmui_reading_entry_set_hint (HmuiReadingEntry *self, const char *hint);

/**
 * hmui_reading_entry_set_verdict:
 * @text: (nullable): what the number typed means; takes the hint's line until it is NULL again; copied
 */
void hmui_reading_entry_set_verdict (HmuiReadingEntry *self, const char *text, HmuiVerdict tone);

/**
 * hmui_reading_entry_get_quantity:
 * @out: (out) (nullable): written only when the text can be read
 * Returns: whether it can
 */
gboolean hmui_reading_entry_get_quantity (HmuiReadingEntry *self, HmQuantity *out);

/** hmui_reading_entry_submit: as if Enter were pressed in the field (for a button beside it). */
void hmui_reading_entry_submit (HmuiReadingEntry *self);

const char *hmui_reading_entry_get_text (HmuiReadingEntry *self);                    /* borrowed */
void        hmui_reading_entry_set_text (HmuiReadingEntry *self, const char *text);

G_END_DECLS

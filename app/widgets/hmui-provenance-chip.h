/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hm-provenance.h"
G_BEGIN_DECLS

/*
 * HmuiProvenanceChip: where a value is from, in a word or two. Tooltip and accessible description name the source and,
 * where it does, that the maker's manual governs; a press opens the same text in a popover, for a finger or a key.
 */
#define HMUI_TYPE_PROVENANCE_CHIP (hmui_provenance_chip_get_type ())
G_DECLARE_FINAL_TYPE (HmuiProvenanceChip, hmui_provenance_chip, HMUI, PROVENANCE_CHIP, GtkWidget)

GtkWidget *hmui_provenance_chip_new (HmProvenance provenance);

/** hmui_provenance_chip_set_provenance: the source text is copied. */
void hmui_provenance_chip_set_provenance (HmuiProvenanceChip *self, HmProvenance provenance);

G_END_DECLS

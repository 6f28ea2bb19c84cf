/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-provenance.h"
#include "hm-sheet.h"
#include "hm-translate.h"
G_BEGIN_DECLS

/*
 * Where the figures of a sheet come from, gathered while its tables are filled. Each figure has a name for what it is ("Tap
 * drill") and the row it stands in ("1/4-20"). Where all rows of a figure are from one source, it is named once; else the rows are
 * listed with it, but for the source that most of them share. Private to core/sheets.
 */
typedef struct _HmSheetSources HmSheetSources;

HmSheetSources *hm_sheet_sources_new  (HmTranslate translate);
void            hm_sheet_sources_free (HmSheetSources *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmSheetSources, hm_sheet_sources_free)

/** hm_sheet_sources_add: @figure: in the person's language. Adding the same again changes nothing. */
void hm_sheet_sources_add (HmSheetSources *self, const char *figure, const char *row, HmProvenance provenance);

/** hm_sheet_sources_write: a note for each source, in the order in which the figures were first added. */
void hm_sheet_sources_write (HmSheetSources *self, HmSheet *sheet);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-provenance.h"
#include "hm-quantity.h"
#include "hm-table-rows.h"
G_BEGIN_DECLS

/*
 * The figures of the standards, as they stand in data/tables/ (one CSV file a table, header line first, `#` comments
 * before it, last column `provenance`). Immutable once filled; shared by reference. Formulas live with their subject
 * (threads/, drive/, torque/); only rows live here.
 */
typedef struct _HmTables HmTables;

typedef enum { HM_TABLES_ERROR_NAME, HM_TABLES_ERROR_ROW } HmTablesError;
#define HM_TABLES_ERROR (hm_tables_error_quark ())
GQuark hm_tables_error_quark (void);

/**
 * The tables there are, by file stem, NULL-terminated: "threads", "hex-heads", "openings", "hexalobular", "strength",
 * "friction", "holes", "shear", "passes", "special-joints".
 */
extern const char * const hm_tables_names[];

HmTables *hm_tables_new   (void);
HmTables *hm_tables_ref   (HmTables *self);
void      hm_tables_unref (HmTables *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmTables, hm_tables_unref)

/**
 * hm_tables_read_csv: adds the rows of one table.
 * @name: one of hm_tables_names
 * @text: the file's contents
 * Returns: %FALSE with table, line and reason when a row cannot be read; @self is then unchanged
 */
gboolean hm_tables_read_csv (HmTables *self, const char *name, const char *text, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/* The rows, in the order of the file. @n_rows is set to their number; the array is borrowed and may be NULL if empty. */
const HmThreadRow      *hm_tables_get_threads     (const HmTables *self, gsize *n_rows);
const HmHexRow         *hm_tables_get_hex         (const HmTables *self, gsize *n_rows);
const HmOpeningRow     *hm_tables_get_openings    (const HmTables *self, gsize *n_rows);
const HmHexalobularRow *hm_tables_get_hexalobular (const HmTables *self, gsize *n_rows);
const HmStrengthRow    *hm_tables_get_strength    (const HmTables *self, gsize *n_rows);
const HmFrictionRow    *hm_tables_get_friction    (const HmTables *self, gsize *n_rows);
const HmHoleRow        *hm_tables_get_holes       (const HmTables *self, gsize *n_rows);
const HmShearRow       *hm_tables_get_shear       (const HmTables *self, gsize *n_rows);
const HmPassRow        *hm_tables_get_passes      (const HmTables *self, gsize *n_rows);
const HmSpecialRow     *hm_tables_get_specials    (const HmTables *self, gsize *n_rows);

G_END_DECLS

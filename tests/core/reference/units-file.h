/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>
G_BEGIN_DECLS

/*
 * Reads the data file of GNU Units, as its manual describes the format: "name definition" a line, "prefix- definition",
 * "name[unit] pairs" for tables, "name(x) …" for functions, # comments, \ at the end for a line that goes on, !var … !endvar for
 * parts that hold in one system of units only. Taken with its defaults: US English units, SI.
 */
typedef struct _HmtUnitsFile HmtUnitsFile;

/** HmtUnitValue: so many of the base units: m, kg, s, A, K. */
typedef struct { double factor; int powers[5]; } HmtUnitValue;

/** hmt_units_file_read: %NULL when there is no such file. */
HmtUnitsFile *hmt_units_file_read (const char *path);
void          hmt_units_file_free (HmtUnitsFile *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmtUnitsFile, hmt_units_file_free)

/** hmt_units_file_evaluate: "lbf ft", "5|9 K", "gram force / cm^3": products, quotients, whole powers. %FALSE if it cannot be read. */
gboolean hmt_units_file_evaluate (HmtUnitsFile *self, const char *expression, HmtUnitValue *out) G_GNUC_WARN_UNUSED_RESULT;

/** hmt_units_file_look_up: the definition as it stands: of "drillgauge" the pairs, of "screwgauge" the formula. (nullable) */
const char *hmt_units_file_look_up (HmtUnitsFile *self, const char *name);

G_END_DECLS

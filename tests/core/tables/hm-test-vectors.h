/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-csv.h"
#include "hm-tables.h"
G_BEGIN_DECLS

/*
 * Tests from rows: one row of tests/vectors/NAME.csv, or of a C array, is one reported test. Every vector file has a
 * column `name` (unique) and a column `source`. The environment gives the folders: HALFMOON_TEST_VECTORS, HALFMOON_SOURCE_DATA.
 */
typedef struct _HmTestSuite HmTestSuite;

/** HmTestRow: what a test on a vector file gets as *state. */
typedef struct { const HmCsv *csv; guint row; const HmTables *tables; char *name; } HmTestRow;

typedef void (*HmTestFunc) (void **state);

/** hm_test_tables: all of data/tables/; ends the program if one cannot be read. (transfer full) */
HmTables *hm_test_tables (void);

HmTestSuite *hm_test_suite_new (void);
const HmTables *hm_test_suite_tables (HmTestSuite *self);

/** hm_test_suite_add_file: a test for each row of tests/vectors/@file whose column `kind` is @kind (NULL: every row). */
void hm_test_suite_add_file (HmTestSuite *self, const char *file, const char *kind, HmTestFunc func);

/** hm_test_suite_add: one test; @name is borrowed. */
void hm_test_suite_add (HmTestSuite *self, const char *name, HmTestFunc func, gconstpointer state);

/** HM_TEST_SUITE_ADD_ROWS: a test for each element of a static array whose element has a member `name`; *state is the element. */
#define HM_TEST_SUITE_ADD_ROWS(self, rows, func) \
  G_STMT_START { \
    for (gsize i_row = 0; i_row < G_N_ELEMENTS (rows); i_row++) \
      hm_test_suite_add (self, rows[i_row].name, func, &rows[i_row]); \
  } G_STMT_END

/** hm_test_suite_run: runs and frees. Returns: how many failed, for main(). */
int hm_test_suite_run (HmTestSuite *self, const char *group);

const char *hm_test_text (const HmTestRow *row, const char *column);   /* fails the test if there is no such column */
double      hm_test_number (const HmTestRow *row, const char *column); /* fails the test if it is no number */

/** hm_test_near: fails the test unless |@got − @want| <= @tolerance; the message names the row and its source. */
void hm_test_near (const HmTestRow *row, double got, double want, double tolerance);

G_END_DECLS

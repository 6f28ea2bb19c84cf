/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-store.h"
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <cmocka.h>

/* A folder of its own for each test, with a path for one store in it. */
typedef struct { char *folder, *path; } StoreFixture;

#define TEST_APPLICATION 0x484d5453u   /* "HMTS" */
extern const char * const one_migration[];      /* table part (name) */
extern const char * const two_migrations[];     /* ... and a column count */

int store_fixture_set_up    (void **state);
int store_fixture_tear_down (void **state);

/* A store at @path with one migration and the rows "belt" and "key"; closed again. */
void  make_store (const char *path, const char * const *migrations);
/* The whole file as bytes. */
GBytes *read_bytes (const char *path);
void  write_bytes (const char *path, gconstpointer data, gsize size);
/* Puts a big-endian number of 4 bytes into the file at @offset. */
void  patch_be32 (const char *path, gsize offset, guint32 value);
gint64 query_number (HmStore *store, const char *sql);
/* The error has @code of the store and its message names @path. */
void  assert_store_error (GError *error, HmStoreError code, const char *path);

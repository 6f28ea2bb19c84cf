/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
/* The reference models of tests/vectors/diagnosis/, read for tests. */
#include <json-glib/json-glib.h>
#include "hm-model-json.h"

typedef struct {
  char *file;              /* owned */
  HmModel *model;          /* owned */
  JsonNode *root;          /* owned */
  JsonArray *cases;        /* borrowed from root */
} Reference;

/** One case of a reference: a prestate of one reported test. */
typedef struct {
  Reference *reference;    /* borrowed */
  guint index;
  GArray *events;          /* HmEvidence, owned */
  JsonObject *expected;    /* borrowed: "posterior" of the case */
  JsonObject *best;        /* borrowed, may be NULL */
  char *name;              /* owned */
} ReferenceCase;

/** All references of one mode, and all their cases; both owned by the caller for the length of the program. */
GPtrArray *references_load (HmModelMode mode);
GPtrArray *reference_cases (GPtrArray *references);
void references_free (GPtrArray *references, GPtrArray *cases);

/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-compile.h"
#include "hm-knowledge.h"
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <cmocka.h>

/*
 * A data folder of its own for each test: a copy of sample/knowledge and of the real tables. Programs are started
 * with the folder of the sample and the compiler as arguments.
 */
typedef struct { char *folder, *db; } KnowledgeFixture;

void knowledge_fixture_set_arguments (int argc, char **argv);
const char *compiler_program (void);

KnowledgeFixture *knowledge_fixture_new (void);
void knowledge_fixture_free (KnowledgeFixture *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (KnowledgeFixture, knowledge_fixture_free)

int knowledge_fixture_set_up    (void **state);     /* for cmocka: *state is a KnowledgeFixture */
int knowledge_fixture_tear_down (void **state);

/* The text of @file below the data folder: its first @old becomes @new; with @old NULL @new is put at its end. */
void edit_file (KnowledgeFixture *self, const char *file, const char *old, const char *new);
void compile_or_fail (KnowledgeFixture *self, char **report);
HmKnowledge *open_or_fail (KnowledgeFixture *self);           /* compiles, then opens */
HmGuide *load_or_fail (HmKnowledge *knowledge, const char *complaint, const char *layout);
void assert_contains (const char *text, const char *part);

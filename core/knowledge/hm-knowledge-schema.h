/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>
G_BEGIN_DECLS

#define HM_KNOWLEDGE_APPLICATION_ID 0x484d4b4eu   /* "HMKN" */
#define HM_KNOWLEDGE_SCHEMA_VERSION 1             /* raise with every change of the schema or of what a column means */

/* The tables of the compiled knowledge; the compiler and the reader both go by this one text. */
extern const char hm_knowledge_schema[];

G_END_DECLS

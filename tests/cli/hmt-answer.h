/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <json-glib/json-glib.h>
G_BEGIN_DECLS

/*
 * What halfmoon-cli answers as JSON. Arguments stand in one string, parted by "|", so that they may hold spaces. A path names a
 * member: "torque.target.value", "limits.0.major.low". Whatever is missing fails the test.
 */

/** hmt_arguments_run: (out) code, text and errors of the program. */
void hmt_arguments_run (const char *arguments, int *code, char **out, char **err);

/** hmt_answer: runs with --json and reads the answer. (transfer full) */
JsonNode *hmt_answer (const char *arguments);

double      hmt_answer_number (JsonNode *answer, const char *path);
const char *hmt_answer_text   (JsonNode *answer, const char *path);
guint       hmt_answer_length (JsonNode *answer, const char *path);

/** hmt_answer_find: the index of the item of the list @path whose member @member is @text; −1 if there is none. */
int hmt_answer_find (JsonNode *answer, const char *path, const char *member, const char *text);

G_END_DECLS

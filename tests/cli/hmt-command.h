/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gio/gio.h>
G_BEGIN_DECLS

/** HmtResult: how a program ended and what it wrote. Clear with hmt_result_clear(). */
typedef struct { int code; char *out, *err; } HmtResult;
void hmt_result_clear (HmtResult *self);
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (HmtResult, hmt_result_clear)

/**
 * hmt_command_run: runs a program to its end. Fails the test if it cannot be started.
 * @argv: (array zero-terminated=1): the program first
 * @input: (nullable): what it reads; %NULL: its standard input is closed at once
 * @unset: (nullable) (array zero-terminated=1): environment variables to leave out
 */
HmtResult hmt_command_run (const char * const *argv, const char *input, const char * const *unset);

/** hmt_cli_run: the same for halfmoon-cli, with its arguments as one string, parted by spaces. */
HmtResult hmt_cli_run (const char *arguments, const char *input);

/** hmt_check_sentence: fails the test unless @err is one or two lines that a person can read. */
void hmt_check_sentence (const char *what, const char *err);

/** HmtTalk: a conversation with halfmoon-cli. */
typedef struct {
  GSubprocess *child;      /* owned */
  GString *said;           /* owned: since the last answer */
} HmtTalk;

HmtTalk *hmt_talk_start (const char *arguments);
void hmt_talk_free (HmtTalk *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmtTalk, hmt_talk_free)

/** hmt_talk_listen: reads until one of @prompts stands at the end. Returns: its index, or -1 when the program ended */
int hmt_talk_listen (HmtTalk *self, const char * const *prompts);
void hmt_talk_answer (HmtTalk *self, const char *line);
int hmt_talk_end (HmtTalk *self);      /* waits; the exit status */

G_END_DECLS

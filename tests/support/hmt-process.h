/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gio/gio.h>
G_BEGIN_DECLS

/* A program under test as a child of the test. What it writes goes into a file that can be read at any time. */
typedef struct _HmtProcess HmtProcess;

/**
 * hmt_process_start:
 * @argv: (array zero-terminated=1)
 * @environment: (nullable) (array zero-terminated=1): "NAME=value" to set, "NAME" to unset
 * Returns: (transfer full), or %NULL with @error
 */
HmtProcess *hmt_process_start (const char * const *argv, const char * const *environment, GError **error);

/** hmt_process_free: ends it the hard way if it still runs. */
void hmt_process_free (HmtProcess *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmtProcess, hmt_process_free)

int hmt_process_get_pid (HmtProcess *self);

/**
 * hmt_process_wait:
 * Returns: the exit status, 128 + the signal that ended it, or -1 if it still runs after @limit_ms
 */
int hmt_process_wait (HmtProcess *self, guint limit_ms);

/** hmt_process_output: all it has written so far, errors included. (transfer full) */
char *hmt_process_output (HmtProcess *self);

/** hmt_sleep_ms: waits, and lets what is due on the main context happen. */
void hmt_sleep_ms (guint ms);

G_END_DECLS

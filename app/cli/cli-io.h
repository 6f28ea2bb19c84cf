/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-quantity.h"
G_BEGIN_DECLS

/*
 * Lines in and out. Everything the person has to read goes to standard output, wrapped; complaints about an answer go to
 * standard error. Works the same at a terminal and with answers from a pipe.
 */
typedef struct _CliIo CliIo;

CliIo *cli_io_new  (void);
void   cli_io_free (CliIo *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CliIo, cli_io_free)

const HmFormat *cli_io_get_format (CliIo *self);

/** cli_io_print: one paragraph; lines after the first are indented by @indent columns. */
void cli_io_print (CliIo *self, guint indent, const char *format, ...) G_GNUC_PRINTF (3, 4);
void cli_io_title (CliIo *self, const char *text);
void cli_io_gap   (CliIo *self);
void cli_io_complain (CliIo *self, const char *format, ...) G_GNUC_PRINTF (2, 3);

/** cli_io_ask: prints @prompt, reads one answer. Returns: (transfer full): stripped, valid UTF-8; NULL when the answers ended */
char *cli_io_ask (CliIo *self, const char *prompt);

/** cli_io_read_file: at most 16 MiB. (transfer full), or NULL with @error */
char *cli_io_read_file (const char *path, gsize *length, GError **error);

G_END_DECLS

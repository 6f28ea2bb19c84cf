/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-diagnosis.h"
#include "cli-io.h"
G_BEGIN_DECLS

/* Exit codes: 0 done, 1 bad input, 2 wrong usage. */
typedef enum { CLI_DONE = 0, CLI_BAD_INPUT = 1, CLI_USAGE = 2 } CliExit;

/* The commands; @argv starts with the command's own name. */
CliExit cli_diagnose (int argc, char **argv);
CliExit cli_model    (int argc, char **argv);
CliExit cli_advise   (int argc, char **argv);
CliExit cli_fit      (int argc, char **argv);
CliExit cli_thread   (int argc, char **argv);
CliExit cli_identify (int argc, char **argv);
CliExit cli_torque   (int argc, char **argv);
CliExit cli_chart    (int argc, char **argv);

/**
 * cli_parse_options: reads a command's options and leaves its words in @argc/@argv.
 * Returns: %FALSE when the command is over (help was printed, or the usage was wrong), with the code in @exit_code
 */
gboolean cli_parse_options (int *argc, char ***argv, const char *words, const char *summary, const GOptionEntry *options,
                            CliExit *exit_code);

/** cli_usage: one sentence on standard error and where help is. Returns: %CLI_USAGE */
CliExit cli_usage (const char *command, const char *sentence);

/** cli_fail: @error on standard error. Returns: %CLI_BAD_INPUT */
CliExit cli_fail (const GError *error);

/** cli_open_knowledge: the compiled knowledge; NULL with @error. (transfer full) */
HmKnowledge *cli_open_knowledge (GError **error);

/* Parts of the interactive diagnosis. Each gives FALSE when the answers ended. */
gboolean cli_start (CliIo *io, HmKnowledge *knowledge, const char *complaint, const char *layout, HmDiagnosis **out, GError **error);
gboolean cli_step (CliIo *io, HmDiagnosis *diagnosis);      /* one check, or the choice of another action */
gboolean cli_repair (CliIo *io, HmKnowledge *knowledge, HmDiagnosis *diagnosis);
void     cli_show_why (CliIo *io, HmDiagnosis *diagnosis, guint check);
void     cli_show_causes (CliIo *io, HmDiagnosis *diagnosis);
void     cli_show_close (CliIo *io, HmDiagnosis *diagnosis);

/** cli_acknowledge: shows cautions; asks for "y" to each serious one that was not acknowledged before. */
gboolean cli_acknowledge (CliIo *io, HmDiagnosis *diagnosis, const HmCaution * const *cautions);
/** cli_acknowledge_opening: the same for the access steps that @action opens: they can need more care than the step itself. */
gboolean cli_acknowledge_opening (CliIo *io, HmDiagnosis *diagnosis, const HmAction *action);
/** cli_show_opening: what has to be opened, with tools, and the time. */
void cli_show_opening (CliIo *io, HmDiagnosis *diagnosis, const HmAction *action, const HmFastener * const *fasteners,
                       const HmTool * const *tools);

G_END_DECLS

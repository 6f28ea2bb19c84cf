/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-quantity.h"
G_BEGIN_DECLS

/*
 * What a tool takes hold of. Threads are next door in threads/; the whole fastener is in fasteners/.
 */
typedef enum {
  HM_DRIVE_HEX,                    /* outside hexagon, across flats */
  HM_DRIVE_HEX_SOCKET,             /* key size */
  HM_DRIVE_HEXALOBULAR,            /* T size, ISO 10664 */
  HM_DRIVE_HEXALOBULAR_EXTERNAL,   /* E size */
  HM_DRIVE_SQUARE,
  HM_DRIVE_CROSS_H,                /* cross recess type H, ISO 4757 */
  HM_DRIVE_CROSS_Z,                /* cross recess type Z, ISO 4757 */
  HM_DRIVE_SLOT,
  HM_DRIVE_HAND                    /* wing, knob, pin, clip: no tool */
} HmDriveKind;

/**
 * HmDrive: a plain value.
 * @size: across flats or key size for hex, hex socket and square; zero otherwise
 * @number: the T, E, H or Z number; 0 otherwise
 * @inch: whether the size is named in inches
 */
typedef struct { HmDriveKind kind; HmLength size; int number; gboolean inch; } HmDrive;

typedef enum { HM_DRIVE_ERROR_SYNTAX, HM_DRIVE_ERROR_UNKNOWN } HmDriveError;
#define HM_DRIVE_ERROR (hm_drive_error_quark ())
GQuark hm_drive_error_quark (void);

/** hm_drive_parse: "hex 1/2 in", "hex 10 mm", "hex socket 5 mm", "T30", "E10", "square 3/8 in", "H2", "Z2", "slot", "hand". */
gboolean hm_drive_parse (const char *text, HmDrive *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_drive_format: the drive as a mechanic asks for it: "1/2 in hex", "T40", "5 mm hex key". (transfer full) */
char *hm_drive_format (const HmDrive *self, const HmFormat *format);

/** hm_drive_format_size: its size alone: "1/2 in", "5.5 mm". For kinds that have one. (transfer full) */
char *hm_drive_format_size (const HmDrive *self, const HmFormat *format);

/** hm_drive_tool: the tool to lay out: "1/2 in socket", "T40 bit", "5 mm hex bit". English, untranslated. (transfer full) */
char *hm_drive_tool (const HmDrive *self, const HmFormat *format);

gboolean hm_drive_equal (const HmDrive *a, const HmDrive *b);

G_END_DECLS

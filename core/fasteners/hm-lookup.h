/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-drive.h"
#include "hm-thread.h"
G_BEGIN_DECLS

/*
 * What somebody means who types a size: a width across flats, a drive, a thread or a torque.
 */
typedef enum { HM_LOOKUP_ERROR_EMPTY, HM_LOOKUP_ERROR_SYNTAX, HM_LOOKUP_ERROR_SIZE, HM_LOOKUP_ERROR_ENCODING } HmLookupError;
#define HM_LOOKUP_ERROR (hm_lookup_error_quark ())
GQuark hm_lookup_error_quark (void);

typedef enum {
  HM_LOOKUP_DRIVE,     /* a head, a key or a recess; for an outside hexagon also the socket of that size */
  HM_LOOKUP_THREAD,
  HM_LOOKUP_PIPE,      /* a tapered pipe thread */
  HM_LOOKUP_TORQUE     /* a torque, to be read in other units */
} HmLookupKind;

/**
 * HmLookup: a plain value.
 * @drive: for %HM_LOOKUP_DRIVE. A width that is a named size to within 0.015 mm (".344", "8.73 mm" for 11/32 in) is that size
 * @thread: for %HM_LOOKUP_THREAD
 * @pipe: for %HM_LOOKUP_PIPE; borrowed from the tables
 * @torque: for %HM_LOOKUP_TORQUE; a single value has both ends equal
 * @has_head: "9 mm on 11/32": @drive is the tool, @head what it is put on
 */
typedef struct {
  HmLookupKind kind;
  HmDrive drive;
  HmThread thread;
  const HmThreadRow *pipe;
  HmQuantityRange torque;
  gboolean has_head;
  HmDrive head;
} HmLookup;

/**
 * hm_lookup_parse:
 * @text: bytes as typed, never NULL; need not be valid UTF-8
 * @out: (out caller-allocates): written on success only
 * Accepts "11/32", "9 mm", "1/2 in socket", "T40", "E10", "5 mm key", "M8 x 1.25", "5/16-18", "1/8 NPT", "9 mm on 11/32",
 * "23 N·m", "4-6 ft-lb" (the unit of a torque has to be typed).
 * A bare fraction, and a bare number below 3, is inches; any other bare number is millimetres.
 */
gboolean hm_lookup_parse (const char *text, const HmTables *tables, HmLookup *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/**
 * hm_lookup_parse_length: a length whose unit may be left out.
 * @inches_below_mm: a bare number below this is inches; a bare fraction always is
 */
gboolean hm_lookup_parse_length (const char *text, double inches_below_mm, HmQuantity *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-knowledge-schema.h"

/*
 * Every entry of the texts has a row in `entry`, under the number of its place in the texts; its own columns are in
 * the table of its kind. What entries have in common, lists, is in `line` (texts), `link` (other entries) and
 * `time_needed`, with the key of the text as role; `layout` is '' where the list is the same on all.
 */
const char hm_knowledge_schema[] =
  "CREATE TABLE about (key TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;"
  "CREATE TABLE reference_table (name TEXT PRIMARY KEY, text TEXT NOT NULL) STRICT, WITHOUT ROWID;"

  "CREATE TABLE entry (entry INTEGER PRIMARY KEY, kind TEXT NOT NULL,"
  "  scope TEXT NOT NULL,"       /* the layout, complaint or picture it belongs to; complaint/check of a finding */
  "  id TEXT NOT NULL, name TEXT NOT NULL, provenance TEXT, UNIQUE (kind, scope, id)) STRICT;"
  "CREATE TABLE line (entry INTEGER NOT NULL REFERENCES entry, layout TEXT NOT NULL, role TEXT NOT NULL,"
  "  position INTEGER NOT NULL, text TEXT NOT NULL, PRIMARY KEY (entry, role, layout, position)) STRICT, WITHOUT ROWID;"
  "CREATE TABLE link (entry INTEGER NOT NULL REFERENCES entry, layout TEXT NOT NULL, role TEXT NOT NULL,"
  "  position INTEGER NOT NULL, target INTEGER NOT NULL REFERENCES entry,"
  "  PRIMARY KEY (entry, role, layout, position)) STRICT, WITHOUT ROWID;"
  "CREATE TABLE time_needed (entry INTEGER NOT NULL REFERENCES entry, layout TEXT NOT NULL, role TEXT NOT NULL,"
  "  minutes REAL NOT NULL, PRIMARY KEY (entry, role, layout)) STRICT, WITHOUT ROWID;"

  "CREATE TABLE bench_limit (entry INTEGER PRIMARY KEY REFERENCES entry, applies TEXT,"
  "  low TEXT, high TEXT) STRICT;"      /* as written, with unit */
  "CREATE TABLE caution (entry INTEGER PRIMARY KEY REFERENCES entry, text TEXT NOT NULL, defer TEXT NOT NULL,"
  "  serious INTEGER NOT NULL) STRICT;"
  "CREATE TABLE layout (entry INTEGER PRIMARY KEY REFERENCES entry, detail TEXT NOT NULL, rank INTEGER NOT NULL) STRICT;"
  "CREATE TABLE access_step (entry INTEGER PRIMARY KEY REFERENCES entry, blocks_verify INTEGER NOT NULL,"
  "  photo TEXT, put_back TEXT) STRICT;"
  "CREATE TABLE fastener (entry INTEGER PRIMARY KEY REFERENCES entry, place TEXT NOT NULL, count INTEGER NOT NULL,"
  "  thread TEXT NOT NULL, strength TEXT, drives TEXT NOT NULL, torque TEXT NOT NULL, torque_provenance TEXT,"
  "  state TEXT, material TEXT, pattern TEXT) STRICT;"

  "CREATE TABLE complaint (entry INTEGER PRIMARY KEY REFERENCES entry, owner_words TEXT NOT NULL,"
  "  other_share REAL NOT NULL, escalate TEXT NOT NULL, max_batch INTEGER NOT NULL, rank INTEGER NOT NULL) STRICT;"
  "CREATE TABLE remedy (entry INTEGER PRIMARY KEY REFERENCES entry) STRICT;"
  "CREATE TABLE cause (entry INTEGER PRIMARY KEY REFERENCES entry, detail TEXT NOT NULL,"
  "  remedy INTEGER NOT NULL REFERENCES remedy, tell_owner TEXT) STRICT;"
  "CREATE TABLE cause_rate (cause INTEGER NOT NULL REFERENCES cause, layout TEXT NOT NULL, rate REAL NOT NULL,"
  "  PRIMARY KEY (cause, layout)) STRICT, WITHOUT ROWID;"
  "CREATE TABLE bench_check (entry INTEGER PRIMARY KEY REFERENCES entry, reading TEXT, unit TEXT,"
  "  normal_side TEXT, meter_sd REAL,"  /* in the base unit of the reading */
  "  picture TEXT, red_point TEXT, black_point TEXT) STRICT;"
  "CREATE TABLE finding (entry INTEGER PRIMARY KEY REFERENCES entry,"
  "  bench_check INTEGER NOT NULL REFERENCES bench_check, position INTEGER NOT NULL, means TEXT NOT NULL,"
  "  UNIQUE (bench_check, position)) STRICT;"
  "CREATE TABLE likelihood (bench_check INTEGER NOT NULL REFERENCES bench_check, cause INTEGER NOT NULL REFERENCES cause,"
  "  position INTEGER NOT NULL, share REAL NOT NULL, PRIMARY KEY (bench_check, cause, position)) STRICT, WITHOUT ROWID;"
  "CREATE TABLE likelihood_other (bench_check INTEGER NOT NULL REFERENCES bench_check, layout TEXT NOT NULL,"
  "  position INTEGER NOT NULL, share REAL NOT NULL, PRIMARY KEY (bench_check, layout, position)) STRICT, WITHOUT ROWID;"

  "CREATE TABLE incident (entry INTEGER PRIMARY KEY REFERENCES entry, detail TEXT NOT NULL, proof TEXT) STRICT;"
  "CREATE TABLE incident_raise (incident INTEGER NOT NULL REFERENCES incident, cause INTEGER NOT NULL REFERENCES cause,"
  "  chance REAL NOT NULL, PRIMARY KEY (incident, cause)) STRICT, WITHOUT ROWID;"

  "CREATE TABLE picture (entry INTEGER PRIMARY KEY REFERENCES entry, detail TEXT NOT NULL,"
  "  width REAL NOT NULL, height REAL NOT NULL) STRICT;"
  "CREATE TABLE picture_part (entry INTEGER PRIMARY KEY REFERENCES entry, symbol TEXT NOT NULL,"
  "  x REAL NOT NULL, y REAL NOT NULL, turn INTEGER NOT NULL) STRICT;"
  "CREATE TABLE picture_point (entry INTEGER PRIMARY KEY REFERENCES entry, x REAL NOT NULL, y REAL NOT NULL) STRICT;"
  "CREATE TABLE picture_wire (entry INTEGER PRIMARY KEY REFERENCES entry, path TEXT NOT NULL,"
  "  heavy INTEGER NOT NULL) STRICT;";

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "knowledge-fixture.h"
#include <glib/gstdio.h>
#include <string.h>

/* One row, one mistake put into the sample, and what the compiler has to say of it: file, entry, reason. */

#define COMMON "knowledge/common/common.txt"
#define RIDER "knowledge/layouts/rider.txt"
#define HANDHELD "knowledge/layouts/handheld.txt"
#define PICTURE "knowledge/pictures/ignition.txt"
#define INCIDENTS "knowledge/incidents.txt"
#define COMPLAINT "knowledge/complaints/no-spark/complaint.txt"
#define CHECKS "knowledge/complaints/no-spark/checks.txt"
#define NEW_REMEDY "\n[remedy r]\nName=R\nDo1=d\nTime=1 min\nProvenance=common practice\n"
#define NEW_CAUSE "\n[cause c]\nName=C\nDetail=d\nProvenance=common practice\n"

struct error_row { const char *name, *file, *old, *new, *entry, *reason; };
static const struct error_row error_rows[] = {
  /* likelihood rows */
  { "row: all findings named, below 100", CHECKS, "none often; weak sometimes", "none often; weak sometimes; strong 5", "[check spark]", "Default: all findings are named, but their shares come to 95 %" },
  { "row: above 100", CHECKS, "shorted often; low", "shorted usually; low", "[check coil-ohms]", "Row-coil-failed: the shares come to 115 %" },
  { "row: certain not", CHECKS, "good 90; low 8", "good 90; low 0", "[check coil-ohms]", "between 0 and 100" },
  { "row: certain", CHECKS, "good 90; low 8", "good 100", "[check coil-ohms]", "between 0 and 100" },
  { "row: unknown word", CHECKS, "good 90; low 8", "good mostly", "[check coil-ohms]", "“mostly”" },
  { "row: unknown finding", CHECKS, "strong almost-always", "blue almost-always", "[check spark]", "“blue” is not one of: strong, weak, none" },
  { "row: finding twice", CHECKS, "strong almost-always", "strong often; strong rarely", "[check spark]", "named twice" },
  { "row: unknown cause", CHECKS, "Row-key-sheared=sheared", "Row-key-broken=sheared", "[check key-step]", "there is no cause “key-broken”" },
  { "row: no default", CHECKS, "Default=flush almost-always\n", "", "[check key-step]", "Default is missing" },
  { "row: other above 100", CHECKS, "Row-other=good usually", "Row-other=good usually; low sometimes", "[check coil-ohms]", "Row-other: the shares" },
  /* access */
  { "access: circle", RIDER, "Do1=Swing the hood up.", "Do1=Swing the hood up.\nRequires=shroud-off", "[access shroud-off]", "shroud-off → hood-open → shroud-off" },
  { "access: requires itself", RIDER, "Do1=Pull the boot.", "Do1=Pull the boot.\nRequires=plug-lead-off", "[access plug-lead-off]", "plug-lead-off → plug-lead-off" },
  { "access: open and shut", CHECKS, "Access-rider=plug-lead-off", "Access-rider=shroud-off", "[check spark]", "“shroud-off” has to be open and shut" },
  { "access: open by requirement and shut", CHECKS, "Access-rider=plug-lead-off\nClosed-rider=shroud-off", "Access-rider=shroud-off\nClosed-rider=hood-open", "[check spark]", "“hood-open” has to be open and shut" },
  /* references */
  { "reference: cause of an incident", INCIDENTS, "kill-wire-grounded clear", "kill-wire clear", "[incident washed]", "there is no cause “kill-wire”" },
  { "reference: complaint of an incident", INCIDENTS, "Raises-no-spark=kill", "Raises-no-crank=kill", "[incident washed]", "raises no cause" },
  { "reference: one complaint too many", INCIDENTS, "Raises-no-spark=kill", "Raises-no-crank=dead clear\nRaises-no-spark=kill", "[incident washed]", "Raises-no-crank: this key is not known" },
  { "reference: remedy", COMPLAINT, NULL, NEW_CAUSE "Rate=rider low\nRemedy=nothing\n", "[cause c]", "there is no remedy “nothing”" },
  { "reference: tool", CHECKS, "Tools=spark-tester", "Tools=spark-testers", "[check spark]", "there is no tool “spark-testers”" },
  { "reference: caution", CHECKS, "Cautions=spark", "Cautions=sparks", "[check spark]", "there is no caution “sparks”" },
  { "reference: access", CHECKS, "Access-rider=plug-lead-off", "Access-rider=plug-off", "[check spark]", "there is no access “plug-off” in “rider”" },
  { "reference: access not on every layout", CHECKS, "Access-rider=shroud-off\nAccess-handheld=cover-off", "Access=shroud-off", "[check coil-ohms]", "there is no access “shroud-off” in “handheld”" },
  { "reference: access required", RIDER, "Requires=hood-open", "Requires=hood", "[access shroud-off]", "there is no access “hood” in “rider”" },
  { "reference: shut step", CHECKS, "Closed-rider=shroud-off", "Closed-rider=shroud", "[check spark]", "there is no access “shroud” in “rider”" },
  { "reference: fastener of a step", HANDHELD, "Fasteners=cover-screw", "Fasteners=screw", "[access cover-off]", "there is no fastener “screw” in “handheld”" },
  { "reference: fastener of a remedy", COMPLAINT, "Fasteners-rider=shroud-bolt", "Fasteners-rider=cover-screw", "[remedy new-coil]", "there is no fastener “cover-screw” in “rider”" },
  { "reference: limit", CHECKS, "Edges=key-gap; key-gap-bad", "Edges=key-gap; key-gap-worse", "[check key-step]", "there is no limit “key-gap-worse”" },
  { "reference: picture", CHECKS, "Picture=ignition", "Picture=starter", "[check coil-ohms]", "there is no picture “starter”" },
  { "reference: point", CHECKS, "RedPoint=kill-terminal", "RedPoint=plug", "[check coil-ohms]", "RedPoint: there is no point “plug” in “ignition”" },
  { "reference: point without picture", CHECKS, "Picture=ignition\n", "", "[check coil-ohms]", "there is no Picture" },
  { "reference: layout of a complaint", COMPLAINT, "Layouts=rider; handheld", "Layouts=rider; handheld; boat", "[complaint no-spark]", "there is no layout “boat”" },
  { "reference: layout of a check", CHECKS, "Layouts=rider", "Layouts=boat", "[check key-step]", "does not cover the layout “boat”" },
  { "reference: twice", CHECKS, "Cautions=spark", "Cautions=spark; spark", "[check spark]", "“spark” is there twice" },
  { "reference: cause raised twice", INCIDENTS, "kill-wire-grounded clear", "kill-wire-grounded clear; kill-wire-grounded mild", "[incident washed]", "is there twice" },
  /* findings */
  { "finding: listed without entry", CHECKS, "Findings=strong; weak; none", "Findings=strong; weak; none; odd", "[check spark]", "there is no entry [finding spark odd]" },
  { "finding: entry not listed", CHECKS, NULL, "\n[finding spark odd]\nName=Odd\nMeans=Odd.\n", "[finding spark odd]", "“spark” does not list this finding" },
  { "finding: of no check", CHECKS, NULL, "\n[finding sparks odd]\nName=Odd\nMeans=Odd.\n", "[finding sparks odd]", "there is no check “sparks”" },
  { "finding: only one", CHECKS, "Findings=flush; step; sheared", "Findings=flush", "[check key-step]", "2 to 16 findings, and this one 1" },
  /* fasteners */
  { "fastener: no thread", RIDER, "Thread=1/4-20\n", "", "[fastener shroud-bolt]", "Thread is missing" },
  { "fastener: no drives", RIDER, "Drives=hex 3/8 in; T30\n", "", "[fastener shroud-bolt]", "Drives is missing" },
  { "fastener: no count", RIDER, "Count=4\n", "", "[fastener shroud-bolt]", "Count is missing" },
  { "fastener: no torque", RIDER, "Torque=50-70 lbf·in\n", "", "[fastener shroud-bolt]", "Torque is missing" },
  { "fastener: count with unit", RIDER, "Count=4", "Count=4 pieces", "[fastener shroud-bolt]", "“4 pieces” is not a whole number" },
  { "fastener: count of nought", RIDER, "Count=4", "Count=0", "[fastener shroud-bolt]", "“0” is not a whole number" },
  { "fastener: no such thread", RIDER, "Thread=1/4-20", "Thread=quarter inch", "[fastener shroud-bolt]", "Thread: " },
  { "fastener: no such drive", RIDER, "T30", "triangle 7 mm", "[fastener shroud-bolt]", "Drives: " },
  { "fastener: too many drives", RIDER, "T30", "T30; T27; T25; slot", "[fastener shroud-bolt]", "at most 4" },
  { "fastener: torque without unit", RIDER, "50-70 lbf·in", "50-70", "[fastener shroud-bolt]", "Torque (a range with its unit" },
  { "fastener: torque as a length", RIDER, "50-70 lbf·in", "50-70 mm", "[fastener shroud-bolt]", "Torque (a range with its unit" },
  { "fastener: torque without provenance", RIDER, "TorqueProvenance=common practice\n", "", "[fastener shroud-bolt]", "needs TorqueProvenance" },
  { "fastener: provenance without a range", RIDER, "Torque=hand", "Torque=hand\nTorqueProvenance=common practice", "[fastener hood-pin]", "stands without a Torque range" },
  { "fastener: computed without strength", HANDHELD, "Strength=8.8\n", "", "[fastener cover-screw]", "needs a Thread and a Strength" },
  { "fastener: computed from no class", HANDHELD, "Strength=8.8", "Strength=soft", "[fastener cover-screw]", "Torque=computed: " },
  { "fastener: state", RIDER, "State=oiled", "State=greasy", "[fastener shroud-bolt]", "State “greasy” is not one of: dry, oiled" },
  { "fastener: into", RIDER, "Into=cast-aluminium", "Into=wood", "[fastener shroud-bolt]", "Into “wood”" },
  { "fastener: pattern", RIDER, "Pattern=cross", "Pattern=spiral", "[fastener shroud-bolt]", "Pattern “spiral”" },
  /* numbers and provenance */
  { "unit: time of a check", CHECKS, "Time=2 min\nTools=spark", "Time=2\nTools=spark", "[check spark]", "Time: " },
  { "unit: time in volts", CHECKS, "Time=2 min\nTools=spark", "Time=2 V\nTools=spark", "[check spark]", "Time: " },
  { "unit: time to open", HANDHELD, "Open=2 min", "Open=2", "[access cover-off]", "Open: " },
  { "unit: limit", COMMON, "High=0.1 mm", "High=0.1", "[limit key-gap]", "has no unit" },
  { "unit: none, but there is one", COMMON, "High=0.1 mm", "High=0.1 mm\nUnit=none", "[limit key-gap]", "the numbers have units" },
  { "unit: share", COMPLAINT, "OtherShare=5 %", "OtherShare=5", "[complaint no-spark]", "“5” has no unit" },
  { "unit: meter", CHECKS, "MeterSd=20 Ω", "MeterSd=20", "[check coil-ohms]", "MeterSd: " },
  { "number: negative time", HANDHELD, "Open=2 min", "Open=-2 min", "[access cover-off]", "“-2 min”" },
  { "number: meter without spread", CHECKS, "MeterSd=20 Ω", "MeterSd=0 Ω", "[check coil-ohms]", "is not above zero" },
  { "number: share of all", COMPLAINT, "OtherShare=5 %", "OtherShare=100 %", "[complaint no-spark]", "between 0 and 100" },
  { "number: place in lists", HANDHELD, "Order=1", "Order=first", "[layout handheld]", "“first” is not a whole number" },
  { "number: place in lists missing", COMPLAINT, "Order=1\n", "", "[complaint no-spark]", "Order" },
  { "number: batch", COMPLAINT, "MaxBatch=2", "MaxBatch=two", "[complaint no-spark]", "“two” is not a whole number" },
  { "provenance: of a check", CHECKS, "Row-key-sheared=sheared usually\nProvenance=common practice", "Row-key-sheared=sheared usually", "[check key-step]", "Provenance is missing" },
  { "provenance: of a limit", COMMON, "Provenance=published: Sample handbook, page 7 (excerpt read)", "", "[limit coil-short]", "Provenance is missing" },
  { "provenance: without source", COMMON, "published: Sample handbook, page 7 (excerpt read)", "published:", "[limit coil-short]", "“published:” is not one of" },
  { "provenance: hearsay", COMMON, "published: Sample handbook, page 7 (excerpt read)", "somebody said so", "[limit coil-short]", "“somebody said so” is not one of" },
  { "provenance: a shop's own sheet", COMMON, "published: Sample handbook, page 7 (excerpt read)", "spec sheet: page 7", "[limit coil-short]", "“spec sheet: page 7” is not one of" },
  /* limits and readings */
  { "limit: no end", COMMON, "High=0.1 mm\n", "", "[limit key-gap]", "neither a Low nor a High" },
  { "limit: upside down", COMMON, "Low=2.5 kΩ\nHigh=5 kΩ", "Low=5 kΩ\nHigh=2.5 kΩ", "[limit coil-low]", "in rising order" },
  { "limit: two kinds", COMMON, "Low=2.5 kΩ\nHigh=5 kΩ", "Low=2.5 V\nHigh=5 kΩ", "[limit coil-low]", "of one kind" },
  { "limit: a range for an end", COMMON, "High=0.1 mm", "High=0.1-0.2 mm", "[limit key-gap]", "is a range" },
  { "edges: do not fall", CHECKS, "Edges=coil-low; coil-short", "Edges=coil-short; coil-low", "[check coil-ohms]", "must fall" },
  { "edges: do not rise", CHECKS, "Edges=key-gap; key-gap-bad", "Edges=key-gap-bad; key-gap", "[check key-step]", "must rise" },
  { "edges: too few", CHECKS, "Edges=key-gap; key-gap-bad", "Edges=key-gap", "[check key-step]", "there are 1 limits, but between 3 findings there must be 2" },
  { "edges: end missing", CHECKS, "NormalSide=above", "NormalSide=below", "[check coil-ohms]", "“coil-short” has no High" },
  { "edges: another kind", CHECKS, "Edges=coil-low; coil-short", "Edges=acid-weight; coil-short", "[check coil-ohms]", "“acid-weight” is a number and not a resistance" },
  { "reading: unknown", CHECKS, "Reading=resistance", "Reading=pull", "[check coil-ohms]", "Reading “pull” is not one of: number, length" },
  { "reading: unit of another kind", CHECKS, "Unit=kΩ", "Unit=V", "[check coil-ohms]", "Unit: " },
  { "reading: no unit", CHECKS, "Unit=kΩ\n", "", "[check coil-ohms]", "Unit is missing" },
  { "reading: side", CHECKS, "NormalSide=above", "NormalSide=left", "[check coil-ohms]", "NormalSide “left” is not one of: below, above" },
  /* lists of lines */
  { "lines: gap", CHECKS, "Do2=Pull it over.", "Do3=Pull it over.", "[check spark]", "there is Do3, but no Do2" },
  { "lines: none", CHECKS, "Do1=Feel for a step.\n", "", "[check key-step]", "Do1 is missing" },
  { "lines: too many", CHECKS, "Do2=Pull it over.", "Do13=Pull it over.", "[check spark]", "at most 12" },
  { "lines: empty", CHECKS, "Do2=Pull it over.", "Do2=", "[check spark]", "Do2: it is empty" },
  /* causes, remedies, complaints */
  { "remedy: unused", COMPLAINT, NULL, NEW_REMEDY, "[remedy r]", "no cause names this remedy" },
  { "cause: on no layout", COMPLAINT, "Rate=rider low\n", "", "[cause key-sheared]", "Rate is missing" },
  { "cause: rate on a strange layout", COMPLAINT, "Rate=rider low", "Rate=boat low", "[cause key-sheared]", "does not cover the layout “boat”" },
  { "cause: rate unknown", COMPLAINT, "Rate=rider low", "Rate=rider seldom", "[cause key-sheared]", "“seldom” is not one of: high, medium, low" },
  { "cause: rate twice", COMPLAINT, "Rate=rider low", "Rate=rider low; rider high", "[cause key-sheared]", "“rider” is there twice" },
  { "cause: called other", COMPLAINT, "[cause key-sheared]", "[cause other]", "[cause other]", "is taken" },
  { "complaint: no layouts", COMPLAINT, "Layouts=rider; handheld\n", "", "[complaint no-spark]", "Layouts is missing" },
  { "incident: class unknown", INCIDENTS, "kill-wire-grounded clear", "kill-wire-grounded likely", "[incident washed]", "“likely”" },
  /* texts, words, keys, kinds, places */
  { "text: no name", RIDER, "Name=Hood open\n", "", "[access hood-open]", "Name is missing" },
  { "text: no means", CHECKS, "Means=The key is whole.\n", "", "[finding key-step flush]", "Means is missing" },
  { "text: no owner's words", COMPLAINT, "Owner=It pulls over and never fires\n", "", "[complaint no-spark]", "Owner is missing" },
  { "text: no hazard text", COMMON, "Text=Wear gloves.\n", "", "[caution edges]", "Text is missing" },
  { "word: serious", COMMON, "Serious=no", "Serious=perhaps", "[caution edges]", "“perhaps” is neither yes nor no" },
  { "key: unknown", RIDER, "Photo=How", "Foto=How", "[access shroud-off]", "Foto: this key is not known here, or not for that layout; known are: Name, Provenance, BlocksVerify" },
  { "key: layout unknown", COMPLAINT, "Time-handheld=8 min", "Time-boat=8 min", "[remedy free-kill-wire]", "Time-boat: this key is not known" },
  { "key: twice", RIDER, "Photo=How", "Open=2 min\nPhoto=How", "[access shroud-off]", "Open is there twice" },
  { "key: none", RIDER, "Photo=How the wires run", "How the wires run", "[access shroud-off]", "is not “Key=value”" },
  { "entry: twice", RIDER, NULL, "\n[access hood-open]\nName=Again\n", "[access hood-open]", "is there already, in knowledge/layouts/rider.txt, line " },
  { "entry: twice in two files", "knowledge/complaints/no-spark/more.txt", NULL, "[cause coil-failed]\nName=Again\n", "[cause coil-failed]", "is there already, in knowledge/complaints/no-spark/complaint.txt" },
  { "entry: kind unknown", RIDER, NULL, "\n[screw x]\nName=X\n", "[screw x]", "“screw” is not a kind of entry of this file; its kinds are: layout, fastener, access" },
  { "entry: in the wrong place", RIDER, NULL, "\n[tool x]\nName=X\n", "[tool x]", "its kinds are: layout, fastener, access" },
  { "entry: id with capitals", RIDER, NULL, "\n[access Hood]\nName=X\n", NULL, "“Hood” is not an id" },
  { "entry: no id", RIDER, NULL, "\n[access]\nName=X\n", NULL, "“[access]” is not “[kind id]”" },
  { "entry: not closed", RIDER, NULL, "\n[access hood\nName=X\n", NULL, "does not end with “]”" },
  { "entry: text before the first", HANDHELD, "[layout handheld]", "Name=X\n[layout handheld]", NULL, "stands before the first entry" },
  { "entry: layout of another name", HANDHELD, "[layout handheld]", "[layout trimmer]", "[layout trimmer]", "this is the layout “handheld”" },
  { "entry: layout missing", HANDHELD, "[layout handheld]\nName=Handheld machine\nOrder=1\nDetail=Sample layout with one step.\n", "", "[fastener cover-screw]", "no entry [layout handheld]" },
  { "file: in no known place", "knowledge/extra.txt", NULL, "[tool x]\nName=X\n", NULL, "no entries are looked for in this place" },
  { "file: not UTF-8", RIDER, "Name=Hood open", "Name=Hood \xff", NULL, "not UTF-8" },
  { "file: stray backslash", RIDER, "Photo=How", "Photo=\\How", "[access shroud-off]", "Photo has a “\\”" },
  /* pictures */
  { "picture: part outside", PICTURE, "At=10,7", "At=13,7", "[part ground]", "lies outside of the picture (12 x 8)" },
  { "picture: wire outside", PICTURE, "Path=2,4 2,7", "Path=2,4 2,-7", "[wire cable]", "lies outside" },
  { "picture: wire of one place", PICTURE, "Path=2,4 2,7", "Path=2,4", "[wire cable]", "two places or more" },
  { "picture: place unreadable", PICTURE, "At=10,7", "At=10;7", "[part ground]", "“10;7” is not a place" },
  { "picture: size unreadable", PICTURE, "Size=12 x 8", "Size=12", "[picture ignition]", "“12” is not a size" },
  { "picture: symbol", PICTURE, "Symbol=frame-ground", "Symbol=earth", "[part ground]", "Symbol “earth” is not one of: battery" },
  { "picture: turn", PICTURE, "Turn=90", "Turn=45", "[part coil]", "Turn “45” is not one of: 0, 90, 180, 270" },
  /* tables */
  { "table: row unreadable", "tables/threads.csv", NULL, "this,is,no,row\n", NULL, "threads" },
  { "table: unknown", "tables/bolts.csv", NULL, "a,b\n1,2\n", NULL, "bolts" },
};

static void
mistake_is_named (void **state)
{
  const struct error_row *row = *state;
  g_autoptr (KnowledgeFixture) fixture = knowledge_fixture_new ();
  g_autoptr (GError) error = NULL;
  char *report = (char *) "untouched";

  edit_file (fixture, row->file, row->old, row->new);
  if (hm_knowledge_compile (fixture->folder, fixture->db, &report, &error))
    fail_msg ("it compiled");
  if (!g_error_matches (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_TEXT))
    fail_msg ("another error: %s", error->message);
  assert_contains (error->message, row->file);
  if (row->entry != NULL)
    assert_contains (error->message, row->entry);
  assert_contains (error->message, row->reason);
  assert_string_equal (report, "untouched");
  assert_false (g_file_test (fixture->db, G_FILE_TEST_EXISTS));
}

/* This one takes two edits. */
static void
a_layout_without_causes_is_named (void **state)
{
  g_autoptr (KnowledgeFixture) fixture = knowledge_fixture_new ();
  g_autoptr (GError) error = NULL;

  (void) state;
  edit_file (fixture, COMPLAINT, "Rate=rider high; handheld medium", "Rate=rider high");
  edit_file (fixture, COMPLAINT, "Rate=rider medium; handheld medium", "Rate=rider medium");
  assert_false (hm_knowledge_compile (fixture->folder, fixture->db, NULL, &error));
  assert_true (g_error_matches (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_TEXT));
  assert_contains (error->message, COMPLAINT);
  assert_contains (error->message, "[complaint no-spark]: Layouts: no cause has a Rate for the layout “handheld”");
}

static void
a_missing_table_is_named (void **state)
{
  g_autoptr (KnowledgeFixture) fixture = knowledge_fixture_new ();
  g_autofree char *path = g_build_filename (fixture->folder, "tables", "strength.csv", NULL);
  g_autoptr (GError) error = NULL;

  (void) state;
  assert_int_equal (g_remove (path), 0);
  assert_false (hm_knowledge_compile (fixture->folder, fixture->db, NULL, &error));
  assert_contains (error->message, "tables/strength.csv: the file is missing");
}

int
main (int argc, char **argv)
{
  struct CMUnitTest tests[G_N_ELEMENTS (error_rows) + 2];

  knowledge_fixture_set_arguments (argc, argv);
  for (gsize i = 0; i < G_N_ELEMENTS (error_rows); i++)
    tests[i] = (struct CMUnitTest) { error_rows[i].name, mistake_is_named, .initial_state = (void *) &error_rows[i] };
  tests[G_N_ELEMENTS (error_rows)] = (struct CMUnitTest) cmocka_unit_test (a_layout_without_causes_is_named);
  tests[G_N_ELEMENTS (error_rows) + 1] = (struct CMUnitTest) cmocka_unit_test (a_missing_table_is_named);
  return cmocka_run_group_tests_name ("compile-errors", tests, NULL, NULL);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "knowledge-fixture.h"
#include <glib/gstdio.h>
#include <string.h>

/* Offsets in the header: SQLite, "Database File Format", section 1.3. */
#define OFFSET_VERSION 60
#define OFFSET_APPLICATION 68
#define WHAT_TO_DO "Install Halfmoon again, or set HALFMOON_DATA_DIR to the folder that holds knowledge.db."

static void
assert_refused (const char *path, HmKnowledgeError code)
{
  g_autoptr (GError) error = NULL;

  if (hm_knowledge_open (path, &error) != NULL)
    fail_msg ("%s opened", path);
  if (!g_error_matches (error, HM_KNOWLEDGE_ERROR, (int) code))
    fail_msg ("code %d, want %d: %s", error->code, (int) code, error->message);
  assert_contains (error->message, path);
  assert_contains (error->message, WHAT_TO_DO);
}

static void
a_missing_file_is_named_and_not_made (void **state)
{
  KnowledgeFixture *self = *state;

  assert_refused (self->db, HM_KNOWLEDGE_ERROR_MISSING);
  assert_false (g_file_test (self->db, G_FILE_TEST_EXISTS));
}

static void
a_text_is_no_knowledge (void **state)
{
  KnowledgeFixture *self = *state;
  static const char text[] = "[cause battery-failed]\nName=Battery has failed\n";

  assert_true (g_file_set_contents (self->db, text, -1, NULL));
  assert_refused (self->db, HM_KNOWLEDGE_ERROR_DAMAGED);
}

struct header_row { const char *name; gsize offset; guint32 value; HmKnowledgeError code; };
static const struct header_row header_rows[] = {
  { "newer",                   OFFSET_VERSION,     0x7fffffff, HM_KNOWLEDGE_ERROR_NEWER },
  { "older",                   OFFSET_VERSION,     0,          HM_KNOWLEDGE_ERROR_OLDER },
  { "database of other purpose", OFFSET_APPLICATION, 0x12345678, HM_KNOWLEDGE_ERROR_DAMAGED },
};

static void
header_is_checked (void **state)
{
  const struct header_row *row = *state;
  g_autoptr (KnowledgeFixture) self = knowledge_fixture_new ();
  g_autofree char *data = NULL;
  guint32 value = GUINT32_TO_BE (row->value);
  gsize size = 0;

  compile_or_fail (self, NULL);
  assert_true (g_file_get_contents (self->db, &data, &size, NULL));
  memcpy (data + row->offset, &value, sizeof value);
  assert_true (g_file_set_contents (self->db, data, (gssize) size, NULL));
  assert_refused (self->db, row->code);
}

/* What is kept of the file, in 1/1000. */
struct cut_row { const char *name; guint kept; };
static const struct cut_row cut_rows[] = {
  { "cut to nothing", 0 }, { "cut within the header", 1 }, { "cut to 1/10", 100 }, { "cut to 1/4", 250 },
  { "cut to 1/2", 500 }, { "cut to 3/4", 750 }, { "cut to 9/10", 900 }, { "cut by a little", 999 },
};

static void
cut_is_noticed (void **state)
{
  const struct cut_row *row = *state;
  g_autoptr (KnowledgeFixture) self = knowledge_fixture_new ();
  g_autofree char *data = NULL;
  gsize size = 0;

  compile_or_fail (self, NULL);
  assert_true (g_file_get_contents (self->db, &data, &size, NULL));
  assert_true (g_file_set_contents (self->db, data, (gssize) (row->kept > 1 ? size * row->kept / 1000 : row->kept * 60), NULL));
  assert_refused (self->db, HM_KNOWLEDGE_ERROR_DAMAGED);
}

static void
an_unknown_complaint_lists_those_there_are (void **state)
{
  g_autoptr (HmKnowledge) knowledge = open_or_fail (*state);
  g_autoptr (GError) error = NULL;

  assert_null (hm_knowledge_load_guide (knowledge, "no-fuel", "rider", &error));
  assert_true (g_error_matches (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_UNKNOWN_ENTRY));
  assert_string_equal (error->message, "There is no complaint “no-fuel”. There are: no-spark.");
}

static void
an_unknown_layout_lists_those_there_are (void **state)
{
  g_autoptr (HmKnowledge) knowledge = open_or_fail (*state);
  g_autoptr (GError) error = NULL;

  assert_null (hm_knowledge_load_guide (knowledge, "no-spark", "boat", &error));
  assert_true (g_error_matches (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_UNKNOWN_ENTRY));
  assert_string_equal (error->message, "The complaint “no-spark” has no layout “boat”. It has: handheld, rider.");
}

static void
an_unknown_picture_lists_those_there_are (void **state)
{
  g_autoptr (HmKnowledge) knowledge = open_or_fail (*state);
  g_autoptr (GError) error = NULL;

  assert_null (hm_knowledge_get_picture (knowledge, "starter", &error));
  assert_true (g_error_matches (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_UNKNOWN_ENTRY));
  assert_string_equal (error->message, "There is no picture “starter”. There are: ignition.");
}

static void
it_tells_what_it_covers (void **state)
{
  g_autoptr (HmKnowledge) knowledge = open_or_fail (*state);
  const HmComplaint *complaints;
  const HmLayout *layouts;
  guint n = 0;

  complaints = hm_knowledge_get_complaints (knowledge, &n);
  assert_int_equal (n, 1);
  assert_string_equal (complaints[0].id, "no-spark");
  assert_string_equal (complaints[0].owner_words, "It pulls over and never fires");
  assert_string_equal (complaints[0].verify_steps[1], "Start it.");
  layouts = hm_knowledge_get_layouts (knowledge, &n);
  assert_int_equal (n, 2);
  assert_string_equal (layouts[0].id, "handheld");
  assert_string_equal (layouts[1].name, "Riding mower");
  assert_true (hm_knowledge_covers (knowledge, "no-spark", "rider"));
  assert_false (hm_knowledge_covers (knowledge, "no-spark", "boat"));
  assert_false (hm_knowledge_covers (knowledge, "no-crank", "rider"));
}

static void
it_brings_the_tables (void **state)
{
  g_autoptr (HmKnowledge) knowledge = open_or_fail (*state);
  gsize n_threads = 0;

  assert_non_null (hm_tables_get_threads (hm_knowledge_get_tables (knowledge), &n_threads));
  assert_true (n_threads > 0);
}

static void
a_picture_is_as_the_text_says (void **state)
{
  g_autoptr (HmKnowledge) knowledge = open_or_fail (*state);
  const HmPicture *picture = hm_knowledge_get_picture (knowledge, "ignition", NULL);

  assert_non_null (picture);
  assert_string_equal (picture->detail, "A coil, a plug and a kill wire.");
  assert_true (picture->width == 12 && picture->height == 8);
  assert_int_equal (picture->n_parts, 2);
  assert_string_equal (picture->parts[0].name, "Coil");
  assert_int_equal (picture->parts[0].symbol, HM_SYMBOL_RELAY_COIL);
  assert_int_equal (picture->parts[0].turn, 90);
  assert_true (picture->parts[0].at.x == 2 && picture->parts[0].at.y == 3.5);
  assert_int_equal (picture->parts[1].turn, 0);
  assert_int_equal (picture->n_wires, 2);
  assert_int_equal (picture->wires[0].n_points, 4);
  assert_true (picture->wires[0].points[2].x == 6 && picture->wires[0].points[2].y == 7);
  assert_true (!picture->wires[0].heavy && picture->wires[1].heavy);
  assert_string_equal (hm_picture_find_point (picture, "frame")->name, "Bare metal");
  assert_null (hm_picture_find_point (picture, "plug"));
  assert_ptr_equal (hm_knowledge_get_picture (knowledge, "ignition", NULL), picture);
}

static void
it_reads_in_a_read_only_folder (void **state)
{
  KnowledgeFixture *self = *state;
  g_autoptr (HmKnowledge) knowledge = NULL;
  g_autoptr (HmGuide) guide = NULL;

  compile_or_fail (self, NULL);
  assert_int_equal (g_chmod (self->db, 0444), 0);
  assert_int_equal (g_chmod (self->folder, 0555), 0);
  knowledge = hm_knowledge_open (self->db, NULL);
  assert_non_null (knowledge);
  guide = load_or_fail (knowledge, "no-spark", "rider");
  assert_int_equal (g_chmod (self->folder, 0755), 0);
}

#define CASE(function) cmocka_unit_test_setup_teardown (function, knowledge_fixture_set_up, knowledge_fixture_tear_down)

static const struct CMUnitTest cases[] = {
  CASE (a_missing_file_is_named_and_not_made),
  CASE (a_text_is_no_knowledge),
  CASE (an_unknown_complaint_lists_those_there_are),
  CASE (an_unknown_layout_lists_those_there_are),
  CASE (an_unknown_picture_lists_those_there_are),
  CASE (it_tells_what_it_covers),
  CASE (it_brings_the_tables),
  CASE (a_picture_is_as_the_text_says),
  CASE (it_reads_in_a_read_only_folder),
};

int
main (int argc, char **argv)
{
  struct CMUnitTest tests[G_N_ELEMENTS (cases) + G_N_ELEMENTS (header_rows) + G_N_ELEMENTS (cut_rows)];
  gsize n = G_N_ELEMENTS (cases);

  knowledge_fixture_set_arguments (argc, argv);
  memcpy (tests, cases, sizeof cases);
  for (gsize i = 0; i < G_N_ELEMENTS (header_rows); i++)
    tests[n++] = (struct CMUnitTest) { header_rows[i].name, header_is_checked, .initial_state = (void *) &header_rows[i] };
  for (gsize i = 0; i < G_N_ELEMENTS (cut_rows); i++)
    tests[n++] = (struct CMUnitTest) { cut_rows[i].name, cut_is_noticed, .initial_state = (void *) &cut_rows[i] };
  return cmocka_run_group_tests_name ("knowledge", tests, NULL, NULL);
}

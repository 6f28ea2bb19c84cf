/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-identify-model.h"
#include "hmui-lookup-model.h"
#include "hmui-size-table.h"
#include "hmui-true-scale.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

#define NBSP "\302\240"

typedef struct { HmKnowledge *knowledge; HmuiSettings *settings; HmuiLookupModel *lookup; } Bench;

static int
open_bench (void **state)
{
  Bench *bench = g_new0 (Bench, 1);
  g_autoptr(GError) error = NULL;

  bench->knowledge = hm_knowledge_open (g_getenv ("HALFMOON_TEST_KNOWLEDGE"), &error);
  if (bench->knowledge == NULL)
    fail_msg ("%s", error->message);
  bench->settings = hmui_settings_new ();
  bench->lookup = hmui_lookup_model_new (bench->knowledge, bench->settings);
  *state = bench;
  return 0;
}

static int
close_bench (void **state)
{
  Bench *bench = *state;

  g_assert_finalize_object (bench->lookup);
  g_object_unref (bench->settings);
  hm_knowledge_unref (bench->knowledge);
  g_free (bench);
  return 0;
}

static HmuiAnswer *
ask (Bench *bench, const char *text)
{
  hmui_lookup_model_set_text (bench->lookup, text);
  if (hmui_lookup_model_get_answer (bench->lookup) == NULL)
    fail_msg ("no answer to “%s”: %s", text, hmui_lookup_model_get_problem (bench->lookup));
  return hmui_lookup_model_get_answer (bench->lookup);
}

/* The row of a part that has @title. */
static const HmuiAnswerText *
find_row (HmuiAnswer *answer, HmuiPartRole role, const char *title)
{
  HmuiAnswerPart *part = hmui_answer_find_part (answer, role);

  assert_non_null (part);
  for (guint i = 0; i < hmui_answer_part_get_n (part); i++)
    {
      const HmuiAnswerText *text = hmui_answer_row_get_text (hmui_answer_part_get_row (part, i));

      if (strcmp (text->title, title) == 0)
        return text;
    }
  fail_msg ("there is no row “%s”", title);
  return NULL;
}

static void
assert_says (const char *text, const char *part)
{
  if (text == NULL || strstr (text, part) == NULL)
    fail_msg ("“%s” does not say “%s”", text, part);
}

static void
metric_equivalent_of_11_32_and_is_9_safe (void **state)
{
  HmuiAnswer *answer = ask (*state, "11/32");
  const HmuiAnswerText *row = find_row (answer, HMUI_PART_FITS, "9" NBSP "mm socket");

  assert_string_equal (hmui_answer_get_title (answer), "11/32" NBSP "in hex");
  assert_string_equal (hmui_answer_get_sizes (answer), "11/32" NBSP "in (8.73" NBSP "mm)");   /* 1 in = 25.4 mm */
  assert_says (hmui_answer_get_lead (answer), "Nearest metric size: 9" NBSP "mm socket, usable.");
  assert_string_equal (row->word, "usable");
  assert_int_equal (row->tone, HMUI_TONE_CAUTION);
  assert_says (row->detail, "Clearance");
  assert_says (row->detail, "turns free");
  assert_says (row->detail, "to the corner");
  assert_int_equal (row->provenance->kind, HM_PROVENANCE_COMMON_PRACTICE);   /* openings in millimetres: no source was read */
  assert_string_equal (find_row (answer, HMUI_PART_FITS, "11/32" NBSP "in socket")->word, "fits");
}

static void
pair_is_answered_first (void **state)
{
  HmuiAnswer *answer = ask (*state, "9 mm on 11/32");

  assert_int_equal (hmui_answer_part_get_role (hmui_answer_get_part (answer, 0)), HMUI_PART_QUESTION);
  assert_string_equal (find_row (answer, HMUI_PART_QUESTION, "9" NBSP "mm socket")->word, "usable");
}

/* No standard has a 9 mm head: what somebody means is the socket. */
static void
size_without_a_head_is_a_socket (void **state)
{
  HmuiAnswer *answer = ask (*state, "9 mm");

  assert_int_equal (hmui_answer_part_get_role (hmui_answer_get_part (answer, 0)), HMUI_PART_TURNS);
  assert_says (hmui_answer_get_lead (answer), "11/32" NBSP "in hex: usable");
}

static void
no_t40_what_else (void **state)
{
  HmuiAnswer *answer = ask (*state, "T40");
  const HmuiAnswerText *row = find_row (answer, HMUI_PART_OTHER_DRIVES, "1/2" NBSP "in hex");

  assert_says (hmui_answer_get_lead (answer), "combination head");
  assert_string_equal (row->target, "1/2" NBSP "in hex");
  assert_string_equal (find_row (answer, HMUI_PART_KEYS, "T40 bit")->word, "fits");
  assert_string_equal (find_row (ask (*state, row->target), HMUI_PART_OTHER_DRIVES, "T40")->target, "T40");
}

static void
worn_head_is_asked_for (void **state)
{
  Bench *bench = *state;

  ask (bench, "11/32");
  hmui_lookup_model_set_condition (bench->lookup, HM_HEAD_WORN);
  assert_string_equal (find_row (hmui_lookup_model_get_answer (bench->lookup), HMUI_PART_FITS, "9" NBSP "mm socket")->word,
                       "rounds the corners");
}

/* ISO 261, ISO 898-1 (36.6 mm²), ISO 2306 rule, ISO 273 medium. */
static void
thread_is_answered (void **state)
{
  HmuiAnswer *answer = ask (*state, "M8 x 1.25");
  HmuiAnswerPart *holes = hmui_answer_find_part (answer, HMUI_PART_HOLES), *misses = hmui_answer_find_part (answer, HMUI_PART_MISSES);

  assert_string_equal (hmui_answer_get_title (answer), "M8 × 1.25");
  assert_says (hmui_answer_row_get_text (hmui_answer_part_get_row (holes, 0))->title, "6.8 mm: ");
  assert_says (hmui_answer_row_get_text (hmui_answer_part_get_row (holes, 0))->detail, "74" NBSP "%");   /* (8 − 6.8) / (1.299 × 1.25) */
  find_row (answer, HMUI_PART_HOLES, "9.00" NBSP "mm (0.354" NBSP "in)");
  find_row (answer, HMUI_PART_BASICS, "36.6" NBSP "mm² (0.0567" NBSP "in²)");
  find_row (answer, HMUI_PART_HEADS, "13" NBSP "mm hex bolt");   /* ISO 272 */
  assert_non_null (misses);
  assert_non_null (hmui_answer_row_get_text (hmui_answer_part_get_row (misses, 0))->bolt);
  assert_false (hmui_lookup_model_has_classes ((*(Bench **) state)->lookup));
}

static void
class_is_chosen (void **state)
{
  Bench *bench = *state;
  HmuiAnswer *answer = ask (bench, "5/16-18");

  find_row (answer, HMUI_PART_LIMITS, "Bolt, class 2A");
  find_row (answer, HMUI_PART_LIMITS, "0.3026–0.3113" NBSP "in (7.686–7.907" NBSP "mm)");   /* ASME B1.1, major diameter, 5/16-18 2A */
  assert_true (hmui_lookup_model_has_classes (bench->lookup));
  hmui_lookup_model_set_class (bench->lookup, 2);
  find_row (hmui_lookup_model_get_answer (bench->lookup), HMUI_PART_LIMITS, "Bolt, class 3A");
}

static void
left_hand_is_said (void **state)
{
  assert_says (hmui_answer_get_lead (ask (*state, "M10 x 1.25 LH")), "Left-hand");
  assert_says (hmui_answer_get_lead (ask (*state, "1/8 NPT")), "tapered");
}

/* A size is named in its own system, whatever the person reads first: no wrench is marked "0.354 in". */
static void
size_is_written_in_its_own_system (void **state)
{
  static const struct { const char *text, *sizes; } rows[] = {
    { "11/32", "11/32" NBSP "in (8.73" NBSP "mm)" },
    { "9 mm", "9" NBSP "mm (0.354" NBSP "in)" },
    { "5 mm key", "5" NBSP "mm (0.197" NBSP "in)" },
    { "M8", "8.00" NBSP "mm (0.315" NBSP "in), pitch 1.25" NBSP "mm (20.3" NBSP "tpi)" },
    { "5/16-18", "5/16" NBSP "in (7.94" NBSP "mm), pitch 18" NBSP "tpi (1.411" NBSP "mm)" },
  };
  Bench *bench = *state;

  for (guint metric = 0; metric < 2; metric++)
    {
      g_object_set (bench->settings, "units", metric ? HMUI_UNITS_METRIC_FIRST : HMUI_UNITS_INCH_FIRST, NULL);
      for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
        assert_string_equal (hmui_answer_get_sizes (ask (bench, rows[i].text)), rows[i].sizes);
    }
}

/* Limits and clearances are lengths, not names: those follow the person. */
static void
limits_follow_the_person (void **state)
{
  Bench *bench = *state;

  assert_says (hmui_answer_part_get_note (hmui_answer_find_part (ask (bench, "13 mm"), HMUI_PART_FITS)), "–13.00" NBSP "mm) across flats");   /* ISO 4014 */
  g_object_set (bench->settings, "units", HMUI_UNITS_METRIC_FIRST, NULL);
  find_row (ask (bench, "5/16-18"), HMUI_PART_LIMITS, "7.686–7.907" NBSP "mm (0.3026–0.3113" NBSP "in)");   /* ASME B1.1, 2A */
}

/* 1 lbf·in = 0.112984829 N·m, 1 kgf·m = 9.80665 N·m (NIST SP 811, B.8); 12 lbf·in in a lbf·ft, 16 ozf in a lbf. */
static void
torque_is_answered_in_every_unit (void **state)
{
  HmuiAnswer *answer = ask (*state, "45 ft-lb");
  const HmuiAnswerText *link = find_row (answer, HMUI_PART_QUESTION, "Open Torque with 45" NBSP "lbf·ft");

  assert_string_equal (hmui_answer_get_title (answer), "45" NBSP "lbf·ft");
  find_row (answer, HMUI_PART_TORQUE, "61.0" NBSP "N·m");
  find_row (answer, HMUI_PART_TORQUE, "45" NBSP "lbf·ft");
  find_row (answer, HMUI_PART_TORQUE, "540" NBSP "lbf·in");
  find_row (answer, HMUI_PART_TORQUE, "6.22" NBSP "kgf·m");
  find_row (answer, HMUI_PART_TORQUE, "8640" NBSP "ozf·in");
  assert_string_equal (link->action, "win.torque");
  assert_string_equal (link->target, "45" NBSP "lbf·ft");
  find_row (ask (*state, link->target), HMUI_PART_TORQUE, "540" NBSP "lbf·in");
  find_row (ask (*state, "23 N·m"), HMUI_PART_TORQUE, "17" NBSP "lbf·ft");
  find_row (ask (*state, "200 in-lb"), HMUI_PART_TORQUE, "22.6" NBSP "N·m");
}

/* What Enter opens is another answer than the one in sight. */
static void
first_link_leads_on (void **state)
{
  Bench *bench = *state;

  assert_null (hmui_lookup_model_get_first_link (bench->lookup));
  ask (bench, "11/32");
  assert_string_equal (hmui_lookup_model_get_first_link (bench->lookup)->target, "9" NBSP "mm");
  ask (bench, "23 N·m");
  assert_string_equal (hmui_lookup_model_get_first_link (bench->lookup)->action, "win.torque");
}

/* A monitor of 508 × 285.75 mm with 1920 × 1080 pixels: 3.78 a millimeter, as 96 an inch are. */
static void
scale_of_a_monitor (void **state)
{
  assert_float_equal (hmui_true_scale (1920, 1080, 508, 286), 1920 / 508.0, 1e-9);
  assert_float_equal (hmui_true_scale (1920, 1080, 0, 0), 0.0, 0.0);
  assert_float_equal (hmui_true_scale (1920, 1080, 160, 160), 0.0, 0.0);       /* 16:9 is not square */
  assert_float_equal (hmui_true_scale (1920, 1080, 1600, 900), 1.2, 1e-9);
  assert_float_equal (hmui_true_scale (1920, 1080, 16, 9), 0.0, 0.0);          /* a shape in place of a size */
  assert_float_equal (hmui_true_scale (-1, 1080, 508, 286), 0.0, 0.0);
}

/* Whatever is typed: an answer or one sentence, never both, never neither. */
static const char * const nonsense[] = {
  "banana", "-9 mm", "99999999999999999999999 mm", "\377\376\375", "T28", "M8 x", "M", "5/16-", "0", "1/0", "NaN", "inf mm", "9 mm on",
  "on 9 mm", "9 mm on on 9 mm", "M8 on M10", "%s%n", "1e308 mm", "№10", "💥", "x x x x", "////", "1/2/3", "T", "E99", "NPT", "H9", "#",
};

static void
nonsense_gets_a_sentence (void **state)
{
  Bench *bench = *state;

  for (gsize i = 0; i < G_N_ELEMENTS (nonsense); i++)
    {
      hmui_lookup_model_set_text (bench->lookup, nonsense[i]);
      if (hmui_lookup_model_get_problem (bench->lookup) == NULL)
        fail_msg ("“%s” is no size, but is answered", nonsense[i]);
      assert_null (hmui_lookup_model_get_answer (bench->lookup));
      assert_true (g_utf8_validate (hmui_lookup_model_get_problem (bench->lookup), -1, NULL));
    }
  hmui_lookup_model_set_text (bench->lookup, "");
  assert_null (hmui_lookup_model_get_problem (bench->lookup));
  assert_null (hmui_lookup_model_get_answer (bench->lookup));
}

/* Every size in the tables can be looked up. */
static void
every_target_leads_somewhere (void **state)
{
  Bench *bench = *state;
  HmFormat format = hmui_settings_get_format (bench->settings);

  for (guint kind = 0; kind < HMUI_SIZE_TABLE_N; kind++)
    {
      g_autoptr(GListModel) rows = hmui_size_table_rows ((HmuiSizeTableKind) kind, hm_knowledge_get_tables (bench->knowledge), &format);

      assert_true (g_list_model_get_n_items (rows) > 10);
      for (guint i = 0; i < g_list_model_get_n_items (rows); i++)
        {
          g_autoptr(HmuiSizeRow) row = g_list_model_get_item (rows, i);

          ask (bench, hmui_size_row_get_target (row));
        }
    }
}

static void
table_sorts_by_size (void **state)
{
  Bench *bench = *state;
  HmFormat format = hmui_settings_get_format (bench->settings);
  g_autoptr(GListModel) rows = hmui_size_table_rows (HMUI_SIZE_TABLE_SOCKETS, hm_knowledge_get_tables (bench->knowledge), &format);
  g_autoptr(HmuiSizeRow) small = g_list_model_get_item (rows, 0);
  g_autoptr(HmuiSizeRow) large = g_list_model_get_item (rows, g_list_model_get_n_items (rows) - 1);

  assert_true (hmui_size_row_compare (small, large, 0) < 0);
  assert_true (hmui_size_row_compare (large, small, 0) > 0);
  assert_int_equal (hmui_size_row_compare (small, small, 2), 0);
}

/* The rows of a table that have @words, counted. */
static guint
count_matches (GListModel *rows, const char *words)
{
  guint n = 0;

  for (guint i = 0; i < g_list_model_get_n_items (rows); i++)
    {
      g_autoptr(HmuiSizeRow) row = g_list_model_get_item (rows, i);

      n += hmui_size_row_matches (row, words) ? 1 : 0;
    }
  return n;
}

/* ISO 261: M8 comes with the coarse pitch 1.25 and fine ones. */
static void
table_is_filtered (void **state)
{
  Bench *bench = *state;
  HmFormat format = hmui_settings_get_format (bench->settings);
  const HmTables *tables = hm_knowledge_get_tables (bench->knowledge);
  g_autoptr(GListModel) threads = hmui_size_table_rows (HMUI_SIZE_TABLE_THREADS, tables, &format);
  g_autoptr(GListModel) sockets = hmui_size_table_rows (HMUI_SIZE_TABLE_SOCKETS, tables, &format);

  assert_int_equal (count_matches (threads, ""), g_list_model_get_n_items (threads));
  assert_int_equal (count_matches (threads, "  "), g_list_model_get_n_items (threads));
  assert_int_equal (count_matches (threads, "m8 COARSE"), 1);
  assert_int_equal (count_matches (threads, "M8 x 1"), count_matches (threads, "m8 × 1"));
  assert_true (count_matches (threads, "M8") > 1);
  assert_int_equal (count_matches (threads, "banana"), 0);
  assert_true (count_matches (sockets, "9 mm") < count_matches (sockets, "mm"));
  assert_true (count_matches (sockets, "19 mm") > 0);
  assert_int_equal (count_matches (sockets, "%s"), 0);
}

static void
table_is_written_as_text (void **state)
{
  Bench *bench = *state;
  HmFormat format = hmui_settings_get_format (bench->settings);
  g_autoptr(GListModel) rows = hmui_size_table_rows (HMUI_SIZE_TABLE_SOCKETS, hm_knowledge_get_tables (bench->knowledge), &format);
  g_autofree char *text = hmui_size_table_to_text (HMUI_SIZE_TABLE_SOCKETS, rows);
  g_auto(GStrv) lines = g_strsplit (text, "\n", -1);
  g_auto(GStrv) cells = g_strsplit (lines[1], "\t", -1);

  assert_int_equal (g_strv_length (lines), g_list_model_get_n_items (rows) + 2);   /* the heading, and nothing after the last line */
  assert_string_equal (lines[0], "Socket (mm, in)\tNearest of the other system\tOn a head of this size\tOpening (mm, in)\tFrom");
  assert_int_equal (g_strv_length (cells), 5);
  assert_says (cells[0], " mm");
  assert_null (strstr (text, NBSP));
}

/* ISO 965-1, 6g: the crests of M8 measure 7.760 to 7.972 mm. */
static void
bolt_is_identified (void **state)
{
  Bench *bench = *state;
  g_autoptr(HmuiIdentifyModel) model = hmui_identify_model_new (bench->knowledge, bench->settings);
  gboolean is_problem;

  assert_says (hmui_identify_model_get_lead (model), "Measure");
  hmui_identify_model_set_diameter (model, "7.9 mm");
  assert_true (hmui_identify_model_get_n (model) > 1);
  assert_non_null (hmui_identify_model_get_next (model));
  hmui_identify_model_set_pitch (model, "10 over 12.5 mm");
  assert_string_equal (hmui_identify_model_get_name (model, 0), "M8 × 1.25");
  assert_says (hmui_identify_model_get_lead (model), "M8 × 1.25");
  assert_non_null (hmui_identify_model_get_miss (model));
  hmui_identify_model_set_pitch (model, "18 tpi");
  assert_string_equal (hmui_identify_model_get_name (model, 0), "5/16-18");
  hmui_identify_model_set_pitch (model, "some");
  assert_says (hmui_identify_model_get_pitch_words (model, &is_problem), "some");
  assert_true (is_problem);
  hmui_identify_model_set_diameter (model, "\377\376");
  hmui_identify_model_get_diameter_words (model, &is_problem);
  assert_true (is_problem);
  assert_null (hmui_identify_model_get_lead (model));
}

static void
nothing_comes_near (void **state)
{
  Bench *bench = *state;
  g_autoptr(HmuiIdentifyModel) model = hmui_identify_model_new (bench->knowledge, bench->settings);

  hmui_identify_model_set_diameter (model, "900 mm");
  assert_int_equal (hmui_identify_model_get_n (model), 0);
  assert_says (hmui_identify_model_get_lead (model), "No thread");
  assert_null (hmui_identify_model_get_next (model));
  assert_null (hmui_identify_model_get_miss (model));
}

#define BENCH_TEST(function) cmocka_unit_test_setup_teardown (function, open_bench, close_bench)

int
main (void)
{
  const struct CMUnitTest tests[] = {
    BENCH_TEST (metric_equivalent_of_11_32_and_is_9_safe),
    BENCH_TEST (pair_is_answered_first),
    BENCH_TEST (size_without_a_head_is_a_socket),
    BENCH_TEST (no_t40_what_else),
    BENCH_TEST (worn_head_is_asked_for),
    BENCH_TEST (thread_is_answered),
    BENCH_TEST (class_is_chosen),
    BENCH_TEST (left_hand_is_said),
    BENCH_TEST (size_is_written_in_its_own_system),
    BENCH_TEST (limits_follow_the_person),
    BENCH_TEST (torque_is_answered_in_every_unit),
    BENCH_TEST (first_link_leads_on),
    cmocka_unit_test (scale_of_a_monitor),
    BENCH_TEST (nonsense_gets_a_sentence),
    BENCH_TEST (every_target_leads_somewhere),
    BENCH_TEST (table_sorts_by_size),
    BENCH_TEST (table_is_filtered),
    BENCH_TEST (table_is_written_as_text),
    BENCH_TEST (bolt_is_identified),
    BENCH_TEST (nothing_comes_near),
  };

  return cmocka_run_group_tests_name ("fasteners-models", tests, NULL, NULL);
}

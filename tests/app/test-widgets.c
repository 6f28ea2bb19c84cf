/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "gallery-picture.h"
#include "hmui-circuit-layout.h"
#include "hmui-circuit-meter.h"
#include "hmui-pattern-words.h"
#include "hmui-widgets.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

#define NBSP "\302\240"

static void
assert_label (GtkWidget *widget, const char *words)
{
  g_autofree char *wrong = gtk_test_accessible_check_property (GTK_ACCESSIBLE (widget),
                                                               GTK_ACCESSIBLE_PROPERTY_LABEL, words);

  if (wrong != NULL)
    fail_msg ("label is “%s”, want “%s”", wrong, words);
}

/* Ends a test: the widget must leave nothing behind. */
static void
finish (GtkWidget *widget)
{
  g_assert_finalize_object (widget);
}

static void
count_cb (int *count)
{
  (*count)++;
}

static void
circuit_says_what_it_shows (void **state)
{
  GtkWidget *view = g_object_ref_sink (hmui_circuit_view_new ());

  hmui_circuit_view_set_picture (HMUI_CIRCUIT_VIEW (view), &gallery_picture);
  hmui_circuit_view_set_probes (HMUI_CIRCUIT_VIEW (view), "solenoid-in", "solenoid-out");
  hmui_circuit_view_set_reading (HMUI_CIRCUIT_VIEW (view), "0.42" NBSP "V");
  assert_true (gtk_test_accessible_has_role (GTK_ACCESSIBLE (view), GTK_ACCESSIBLE_ROLE_IMG));
  assert_label (view, "Cranking circuit. The battery feeds the starter through the solenoid; the key and two safety "
                      "switches feed its coil. Red probe on: battery-side stud of the solenoid. Black probe on: "
                      "starter-side stud of the solenoid. The meter reads 0.42" NBSP "V");
  hmui_circuit_view_set_probes (HMUI_CIRCUIT_VIEW (view), "no-such-point", NULL);
  assert_label (view, "Cranking circuit. The battery feeds the starter through the solenoid; the key and two safety "
                      "switches feed its coil");
  finish (view);
}

static double
overlap (const graphene_rect_t *a, const graphene_rect_t *b)
{
  graphene_rect_t common;

  return graphene_rect_intersection (a, b, &common) ? common.size.width * common.size.height : 0;
}

/* At every size: no label on a symbol, on a wire, on the meter, on another label or over the edge. */
static void
labels_keep_off (void **state)
{
  static const struct { int width, height; } sizes[] = {
    { 320, 190 }, { 420, 240 }, { 560, 330 }, { 780, 440 }, { 1200, 700 },
  };
  GtkWidget *view = g_object_ref_sink (hmui_circuit_view_new ());

  for (guint size = 0; size < G_N_ELEMENTS (sizes); size++)
    {
      int width = sizes[size].width, height = sizes[size].height;
      g_autoptr(HmuiCircuitLayout) layout = hmui_circuit_layout_new (&gallery_picture, width, height);
      g_autoptr(HmuiObstacles) wires = hmui_obstacles_new (&GRAPHENE_RECT_INIT (0, 0, width, height));
      graphene_point_t red = hmui_circuit_layout_map (layout, gallery_picture.points[2].at);
      graphene_point_t black = hmui_circuit_layout_map (layout, gallery_picture.points[3].at);
      HmuiCircuitMeter meter = hmui_circuit_meter_place (view, layout, &red, &black, "0.42 V");

      for (guint i = 0; i < gallery_picture.n_wires; i++)
        for (guint j = 1; j < gallery_picture.wires[i].n_points; j++)
          {
            graphene_point_t from = hmui_circuit_layout_map (layout, gallery_picture.wires[i].points[j - 1]);
            graphene_point_t to = hmui_circuit_layout_map (layout, gallery_picture.wires[i].points[j]);

            hmui_obstacles_add_line (wires, &from, &to, 1.0);
          }
      hmui_circuit_layout_add_labels (layout, view, &gallery_picture);
      assert_true (layout->labels->len > 0);
      for (guint i = 0; i < layout->labels->len; i++)
        {
          const graphene_rect_t *label = &g_array_index (layout->labels, HmuiCircuitLabel, i).rect;

          assert_true (hmui_obstacles_price_rect (wires, label) <= 0);
          assert_true (overlap (label, &meter.box) <= 0);
          for (guint j = 0; j < layout->symbols->len; j++)
            assert_true (overlap (label, &g_array_index (layout->symbols, HmuiCircuitSymbol, j).body) <= 0);
          for (guint j = 0; j < i; j++)
            assert_true (overlap (label, &g_array_index (layout->labels, HmuiCircuitLabel, j).rect) <= 0);
        }
    }
  finish (view);
}

static void
probability_is_said (void **state)
{
  GtkWidget *row = g_object_ref_sink (hmui_probability_row_new ());

  hmui_probability_row_set (HMUI_PROBABILITY_ROW (row), "solenoid contacts", 0.41, TRUE);
  assert_label (row, "solenoid contacts, 41 percent");
  hmui_probability_row_set (HMUI_PROBABILITY_ROW (row), "key switch", 0.004, FALSE);
  assert_label (row, "key switch, less than 1 percent");
  finish (row);
}

static void
serious_caution_waits_for_its_box (void **state)
{
  HmCaution caution = { .name = "blades can turn", .text = "Pull the lead.", .defer = "the manual", .serious = TRUE };
  GtkWidget *card = g_object_ref_sink (hmui_caution_card_new ());
  int signalled = 0, notified = 0;

  g_signal_connect_swapped (card, "acknowledged", G_CALLBACK (count_cb), &signalled);
  g_signal_connect_swapped (card, "notify::acknowledged", G_CALLBACK (count_cb), &notified);
  hmui_caution_card_set_caution (HMUI_CAUTION_CARD (card), &caution);
  notified = 0;
  assert_label (card, "Danger · blades can turn");
  assert_false (hmui_caution_card_get_acknowledged (HMUI_CAUTION_CARD (card)));
  hmui_caution_card_set_acknowledged (HMUI_CAUTION_CARD (card), TRUE);
  assert_true (hmui_caution_card_get_acknowledged (HMUI_CAUTION_CARD (card)));
  assert_int_equal (signalled, 0);
  assert_int_equal (notified, 1);
  hmui_caution_card_set_acknowledged (HMUI_CAUTION_CARD (card), FALSE);
  gtk_check_button_set_active (GTK_CHECK_BUTTON (gtk_widget_get_last_child (card)), TRUE);
  assert_int_equal (signalled, 1);
  finish (card);
}

static void
mild_caution_needs_no_box (void **state)
{
  HmCaution caution = { .name = "battery gas", .text = "Keep sparks away." };
  GtkWidget *card = g_object_ref_sink (hmui_caution_card_new ());

  hmui_caution_card_set_caution (HMUI_CAUTION_CARD (card), &caution);
  assert_label (card, "Caution · battery gas");
  assert_true (hmui_caution_card_get_acknowledged (HMUI_CAUTION_CARD (card)));
  assert_false (gtk_widget_get_visible (gtk_widget_get_last_child (card)));
  finish (card);
}

static void
chip_names_its_source (void **state)
{
  HmProvenance standard = { HM_PROVENANCE_STANDARD, "ISO 898-1" }, sheet = { HM_PROVENANCE_SPEC_SHEET, "page 12" };
  GtkWidget *chip = g_object_ref_sink (hmui_provenance_chip_new (standard));
  GtkWidget *button = gtk_widget_get_first_child (chip);

  assert_label (button, "Where from: standard");
  assert_string_equal (gtk_widget_get_tooltip_text (button), "ISO 898-1.\nThe maker’s manual governs.");
  hmui_provenance_chip_set_provenance (HMUI_PROVENANCE_CHIP (chip), sheet);
  assert_string_equal (gtk_widget_get_tooltip_text (button), "page 12");
  finish (chip);
}

static void
reading_is_parsed_live (void **state)
{
  GtkWidget *widget = g_object_ref_sink (hmui_reading_entry_new ());
  HmuiReadingEntry *entry = HMUI_READING_ENTRY (widget);
  HmQuantity quantity = { 0 };
  int changed = 0, submitted = 0;

  hmui_reading_entry_set_kind (entry, HM_QUANTITY_VOLTAGE, HM_UNIT_VOLT, "Reading");
  g_signal_connect_swapped (entry, "quantity-changed", G_CALLBACK (count_cb), &changed);
  g_signal_connect_swapped (entry, "submitted", G_CALLBACK (count_cb), &submitted);
  hmui_reading_entry_set_text (entry, "420 mV");
  assert_true (hmui_reading_entry_get_quantity (entry, &quantity));
  assert_true (ABS (quantity.value - 0.42) < 1e-9);
  hmui_reading_entry_submit (entry);
  assert_int_equal (submitted, 1);
  hmui_reading_entry_set_text (entry, "about a half");
  assert_false (hmui_reading_entry_get_quantity (entry, &quantity));
  assert_false (gtk_widget_has_css_class (widget, "invalid"));      /* not at each key */
  hmui_reading_entry_submit (entry);
  assert_true (gtk_widget_has_css_class (widget, "invalid"));
  assert_int_equal (submitted, 1);
  assert_true (changed >= 2);
  finish (widget);
}

static void
end_cb (gboolean *over)
{
  *over = TRUE;
}

static void
reading_complains_after_a_pause (void **state)
{
  GtkWidget *widget = g_object_ref_sink (hmui_reading_entry_new ());
  gboolean over = FALSE;

  hmui_reading_entry_set_kind (HMUI_READING_ENTRY (widget), HM_QUANTITY_VOLTAGE, HM_UNIT_VOLT, "Reading");
  hmui_reading_entry_set_text (HMUI_READING_ENTRY (widget), "x");
  g_timeout_add_once (3000, (GSourceOnceFunc) end_cb, &over);
  while (!over && !gtk_widget_has_css_class (widget, "invalid"))
    g_main_context_iteration (NULL, TRUE);
  assert_true (gtk_widget_has_css_class (widget, "invalid"));
  while (!over)
    g_main_context_iteration (NULL, TRUE);
  finish (widget);
}

static void
steps_are_numbered (void **state)
{
  static const char * const steps[] = { "Set the meter to volts.", "Hold the key.", NULL };
  GtkWidget *list = g_object_ref_sink (hmui_step_list_new ());

  hmui_step_list_set_steps (HMUI_STEP_LIST (list), steps);
  assert_label (gtk_widget_get_first_child (list), "1: Set the meter to volts.");
  assert_label (gtk_widget_get_last_child (list), "2: Hold the key.");
  hmui_step_list_set_steps (HMUI_STEP_LIST (list), NULL);
  assert_null (gtk_widget_get_first_child (list));
  finish (list);
}

static void
fact_without_value_hides (void **state)
{
  GtkWidget *row = g_object_ref_sink (hmui_fact_row_new ("Lay out", NULL));

  assert_false (gtk_widget_get_visible (row));
  hmui_fact_row_set_value (HMUI_FACT_ROW (row), "multimeter");
  assert_true (gtk_widget_get_visible (row));
  assert_label (row, "Lay out: multimeter");
  hmui_fact_row_set_end (HMUI_FACT_ROW (row), gtk_label_new ("end"));
  hmui_fact_row_set_end (HMUI_FACT_ROW (row), NULL);
  finish (row);
}

static void
drive_says_its_scale (void **state)
{
  static const HmDrive drives[] = { { HM_DRIVE_HEX, { 12.7 }, 0, TRUE }, { HM_DRIVE_HEXALOBULAR, { 0 }, 40, FALSE } };
  GtkWidget *view = g_object_ref_sink (hmui_drive_view_new ());

  hmui_drive_view_set_drives (HMUI_DRIVE_VIEW (view), drives, 2, NULL);
  assert_label (view, "1/2" NBSP "in hex, T40. Not to scale.");
  hmui_drive_view_set_hexalobular (HMUI_DRIVE_VIEW (view), (HmLength) { 6.75 }, (HmLength) { 4.85 });
  assert_label (view, "1/2" NBSP "in hex, T40. Drawn to scale.");
  hmui_drive_view_set_drives (HMUI_DRIVE_VIEW (view), NULL, 0, NULL);
  assert_label (view, "");
  finish (view);
}

static const struct order_row {
  const char *name;
  HmPattern pattern;
  HmuiPatternPoint points[4];
  const char *words;
} order_rows[] = {
  { "rectangular", HM_PATTERN_RECTANGULAR, { { 0, 0, 1 }, { 2, 0, 3 }, { 0, 1, 4 }, { 2, 1, 2 } },
    "Tightening order of 4 fasteners: 1 top left, 2 bottom right, 3 top right, 4 bottom left. "
    "Passes: snug, full torque." },
  { "round", HM_PATTERN_ROUND, { { 1, 0, 1 }, { 2, 1, 3 }, { 1, 2, 2 }, { 0, 1, 4 } },
    "Tightening order of 4 fasteners: 1 12 o’clock, 2 6 o’clock, 3 3 o’clock, 4 9 o’clock. "
    "Passes: snug, full torque." },
  { "inline", HM_PATTERN_INLINE, { { 0, 0, 3 }, { 1, 0, 1 }, { 2, 0, 2 }, { 3, 0, 4 } },
    "Tightening order of 4 fasteners: 1 number 2 from the left, 2 number 3 from the left, 3 number 1 from the left, "
    "4 number 4 from the left. Passes: snug, full torque." },
};

static void
order_is_told (void **state)
{
  static const char * const passes[] = { "snug", "full torque", NULL };
  const struct order_row *row = *state;
  GtkWidget *view = g_object_ref_sink (hmui_pattern_view_new ());

  hmui_pattern_view_set_points (HMUI_PATTERN_VIEW (view), row->pattern, row->points, 4, passes, 2);
  assert_label (view, row->words);
  finish (view);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (circuit_says_what_it_shows),
    cmocka_unit_test (labels_keep_off),
    cmocka_unit_test (probability_is_said),
    cmocka_unit_test (serious_caution_waits_for_its_box),
    cmocka_unit_test (mild_caution_needs_no_box),
    cmocka_unit_test (chip_names_its_source),
    cmocka_unit_test (reading_is_parsed_live),
    cmocka_unit_test (reading_complains_after_a_pause),
    cmocka_unit_test (steps_are_numbered),
    cmocka_unit_test (fact_without_value_hides),
    cmocka_unit_test (drive_says_its_scale),
    { "order_is_told: rectangular", order_is_told, NULL, NULL, (void *) &order_rows[0] },
    { "order_is_told: round", order_is_told, NULL, NULL, (void *) &order_rows[1] },
    { "order_is_told: inline", order_is_told, NULL, NULL, (void *) &order_rows[2] },
  };

  gtk_init ();
  hmui_widgets_ensure_types ();
  return cmocka_run_group_tests_name ("widgets", tests, NULL, NULL);
}

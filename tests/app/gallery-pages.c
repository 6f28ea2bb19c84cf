/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "gallery-pages.h"
#include "hmui-widgets.h"
#include <math.h>

static GtkWidget *
make_box (GtkOrientation orientation, int spacing)
{
  return gtk_box_new (orientation, spacing);
}

static GtkWidget *
make_label (const char *text, const char *css_class)
{
  GtkWidget *label = gtk_label_new (text);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  if (css_class != NULL)
    gtk_widget_add_css_class (label, css_class);
  return label;
}

static GtkWidget *
make_page (const char *title)
{
  GtkWidget *page = make_box (GTK_ORIENTATION_VERTICAL, 18);

  gtk_widget_add_css_class (page, "page");
  gtk_box_append (GTK_BOX (page), make_label (title, "page-title"));
  return page;
}

static void
add (GtkWidget *box, GtkWidget *child)
{
  gtk_box_append (GTK_BOX (box), child);
}

static GtkWidget *
make_card (GtkWidget *child)
{
  GtkWidget *card = make_box (GTK_ORIENTATION_VERTICAL, 12);

  gtk_widget_add_css_class (card, "card");
  add (card, child);
  return card;
}

static GtkWidget *
make_circuit (const HmPicture *picture, const char *red, const char *black, const char *reading, int width, int height)
{
  GtkWidget *view = hmui_circuit_view_new ();

  hmui_circuit_view_set_picture (HMUI_CIRCUIT_VIEW (view), picture);
  hmui_circuit_view_set_probes (HMUI_CIRCUIT_VIEW (view), red, black);
  hmui_circuit_view_set_reading (HMUI_CIRCUIT_VIEW (view), reading);
  gtk_widget_set_size_request (view, width, height);
  gtk_widget_set_halign (view, GTK_ALIGN_START);
  return view;
}

GtkWidget *
gallery_page_circuits (const HmPicture *picture, const char *red, const char *black)
{
  GtkWidget *page = make_page ("Circuits"), *row = make_box (GTK_ORIENTATION_HORIZONTAL, 18);

  add (page, make_card (make_circuit (picture, red, black, "0.42 V", 780, 440)));
  add (row, make_card (make_circuit (picture, red, black, NULL, 320, 190)));
  add (row, make_card (make_circuit (picture, NULL, NULL, NULL, 420, 240)));
  add (page, row);
  return page;
}

static GtkWidget *
make_drive (const HmDrive *drives, guint n, int pixels, double a, double b)
{
  GtkWidget *view = hmui_drive_view_new ();

  hmui_drive_view_set_drives (HMUI_DRIVE_VIEW (view), drives, n, NULL);
  hmui_drive_view_set_hexalobular (HMUI_DRIVE_VIEW (view), (HmLength) { a }, (HmLength) { b });
  hmui_drive_view_set_pixel_size (HMUI_DRIVE_VIEW (view), pixels);
  return view;
}

static void
add_drives (GtkWidget *page)
{
  static const HmDrive combined[] = { { HM_DRIVE_HEX, { 12.7 }, 0, TRUE }, { HM_DRIVE_HEXALOBULAR, { 0 }, 40, FALSE } };
  static const HmDrive slotted[] = { { HM_DRIVE_HEX, { 8 }, 0, FALSE }, { HM_DRIVE_SLOT, { 0 }, 0, FALSE } };
  static const HmDrive single[] = {
    { HM_DRIVE_HEX, { 10 }, 0, FALSE }, { HM_DRIVE_HEX_SOCKET, { 5 }, 0, FALSE },
    { HM_DRIVE_HEXALOBULAR, { 0 }, 30, FALSE }, { HM_DRIVE_HEXALOBULAR_EXTERNAL, { 0 }, 10, FALSE }, { HM_DRIVE_SQUARE, { 9.525 }, 0, TRUE },
    { HM_DRIVE_CROSS_H, { 0 }, 2, FALSE }, { HM_DRIVE_CROSS_Z, { 0 }, 2, FALSE }, { HM_DRIVE_SLOT, { 0 }, 0, FALSE },
    { HM_DRIVE_HAND, { 0 }, 0, FALSE },
  };
  GtkWidget *large = make_box (GTK_ORIENTATION_HORIZONTAL, 18), *small = make_box (GTK_ORIENTATION_HORIZONTAL, 18);
  GtkWidget *middle = make_box (GTK_ORIENTATION_HORIZONTAL, 18);

  add (large, make_card (make_drive (combined, 2, 240, 6.75, 4.85)));
  add (large, make_card (make_drive (slotted, 2, 240, 0, 0)));
  add (large, make_card (make_drive (&single[2], 1, 240, 5.6, 3.95)));
  add (page, large);
  add (small, make_drive (combined, 2, 48, 6.75, 4.85));
  add (small, make_drive (slotted, 2, 48, 0, 0));
  for (guint i = 0; i < G_N_ELEMENTS (single); i++)
    {
      add (small, make_drive (&single[i], 1, 48, i == 2 ? 5.6 : 0, i == 2 ? 3.95 : 0));
      if (i != 2 && i < 6)
        add (middle, make_drive (&single[i], 1, 144, 0, 0));
    }
  add (page, small);
  add (page, middle);
}

static GtkWidget *
make_pattern (HmPattern pattern, const HmuiPatternPoint *points, guint n, guint n_passes)
{
  static const char * const passes[] = { "snug", "60 %", "full torque" };
  GtkWidget *view = hmui_pattern_view_new ();

  hmui_pattern_view_set_points (HMUI_PATTERN_VIEW (view), pattern, points, n, passes, n_passes);
  gtk_widget_set_hexpand (view, TRUE);
  return make_card (view);
}

GtkWidget *
gallery_page_drawings (void)
{
  static const HmuiPatternPoint plate[] = {
    { 0, 0, 5 }, { 2, 0, 1 }, { 4, 0, 7 }, { 6, 0, 3 }, { 0, 3, 4 }, { 2, 3, 8 }, { 4, 3, 2 }, { 6, 3, 6 },
  };
  static const HmuiPatternPoint row[] = { { 0, 0, 3 }, { 1, 0, 1 }, { 2, 0, 2 }, { 3, 0, 4 } };
  HmuiPatternPoint ring[8];
  static const guint order[8] = { 1, 5, 3, 7, 2, 6, 4, 8 };
  GtkWidget *page = make_page ("Drives and orders"), *patterns = make_box (GTK_ORIENTATION_HORIZONTAL, 18);

  for (guint i = 0; i < 8; i++)
    ring[i] = (HmuiPatternPoint) { sin (i * G_PI / 4), -cos (i * G_PI / 4), order[i] };
  add_drives (page);
  add (patterns, make_pattern (HM_PATTERN_RECTANGULAR, plate, G_N_ELEMENTS (plate), 3));
  add (patterns, make_pattern (HM_PATTERN_ROUND, ring, 8, 3));
  add (patterns, make_pattern (HM_PATTERN_INLINE, row, G_N_ELEMENTS (row), 1));
  add (page, patterns);
  return page;
}

static GtkWidget *
make_reading (const char *text, const char *verdict, HmuiVerdict tone, gboolean submit)
{
  GtkWidget *entry = hmui_reading_entry_new ();

  hmui_reading_entry_set_kind (HMUI_READING_ENTRY (entry), HM_QUANTITY_VOLTAGE, HM_UNIT_VOLT, "Reading");
  hmui_reading_entry_set_hint (HMUI_READING_ENTRY (entry), "Over 0.3 V is too much");
  hmui_reading_entry_set_text (HMUI_READING_ENTRY (entry), text);
  hmui_reading_entry_set_verdict (HMUI_READING_ENTRY (entry), verdict, tone);
  if (submit)
    hmui_reading_entry_submit (HMUI_READING_ENTRY (entry));
  gtk_widget_set_hexpand (entry, TRUE);
  return entry;
}

static GtkWidget *
make_caution (gboolean serious)
{
  HmCaution caution = {
    .name = serious ? "blades can turn" : "battery gas",
    .text = serious ? "Pull the lead off the spark plug and ground it before a hand goes near the deck. "
                      "A starter that works again turns the blades at once."
                    : "A charging battery gives off gas that burns. Keep sparks away and wear goggles.",
    .defer = "the machine’s manual", .serious = serious,
  };
  GtkWidget *card = hmui_caution_card_new ();

  hmui_caution_card_set_caution (HMUI_CAUTION_CARD (card), &caution);
  return card;
}

static GtkWidget *
make_left (void)
{
  static const char * const steps[] = {
    "Set the meter to DC volts. Put the red probe on the battery-side stud of the solenoid.",
    "Put the black probe on the starter-side stud.",
    "Have someone hold the key at start for 3 seconds, and read the meter while the starter is asked to turn; let go at "
    "once if nothing moves.", NULL };
  HmProvenance lore = { HM_PROVENANCE_COMMON_PRACTICE, NULL }, sheet = { HM_PROVENANCE_SPEC_SHEET, "page 12" };
  GtkWidget *left = make_box (GTK_ORIENTATION_VERTICAL, 18), *list = hmui_step_list_new (), *facts, *row;

  add (left, make_caution (TRUE));
  add (left, make_caution (FALSE));
  hmui_step_list_set_steps (HMUI_STEP_LIST (list), steps);
  add (left, list);
  facts = make_box (GTK_ORIENTATION_VERTICAL, 6);
  add (facts, hmui_fact_row_new ("Lay out", "multimeter · 1/2 in socket or T40 bit"));
  row = hmui_fact_row_new ("Open", "battery cover, 1 min (paid once)");
  hmui_fact_row_set_end (HMUI_FACT_ROW (row), hmui_provenance_chip_new (lore));
  add (facts, row);
  row = hmui_fact_row_new ("Torque", "4–6 lbf·ft (5.4–8.1 N·m)");
  hmui_fact_row_set_end (HMUI_FACT_ROW (row), hmui_provenance_chip_new (sheet));
  add (facts, row);
  add (left, facts);
  row = make_box (GTK_ORIENTATION_HORIZONTAL, 18);
  add (row, make_reading ("", NULL, HMUI_VERDICT_PLAIN, FALSE));
  add (row, make_reading ("0.42", "Over 0.3 V: the contacts are burned", HMUI_VERDICT_BAD, FALSE));
  add (left, row);
  row = make_box (GTK_ORIENTATION_HORIZONTAL, 18);
  add (row, make_reading ("0.12", "In order: under 0.3 V", HMUI_VERDICT_GOOD, FALSE));
  add (row, make_reading ("about a half", NULL, HMUI_VERDICT_PLAIN, TRUE));
  add (left, row);
  return left;
}

static GtkWidget *
make_right (void)
{
  static const struct { const char *name; double p; } causes[] = {
    { "solenoid contacts burned", 0.41 }, { "cable to the starter corroded at one end", 0.13 },
    { "battery discharged", 0.118 }, { "key switch", 0.06 }, { "starter brushes worn", 0.004 },
  };
  GtkWidget *right = make_box (GTK_ORIENTATION_VERTICAL, 6);

  add (right, make_label ("What it may be", "section-title"));
  for (guint i = 0; i < G_N_ELEMENTS (causes); i++)
    {
      GtkWidget *row = hmui_probability_row_new ();

      hmui_probability_row_set (HMUI_PROBABILITY_ROW (row), causes[i].name, causes[i].p, i == 0);
      add (right, row);
    }
  add (right, make_label ("12 more, 19 %", "quiet"));
  gtk_widget_set_size_request (right, 270, -1);
  return right;
}

GtkWidget *
gallery_page_controls (void)
{
  GtkWidget *page = make_page ("Controls"), *columns = make_box (GTK_ORIENTATION_HORIZONTAL, 24), *left = make_left ();

  gtk_widget_set_hexpand (left, TRUE);
  add (columns, left);
  add (columns, make_right ());
  add (page, columns);
  return page;
}

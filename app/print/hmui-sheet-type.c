/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-sheet-type.h"

#define FAMILY "Sans"

PangoContext *
hmui_sheet_type_new_context (void)
{
  g_autoptr (PangoFontMap) map = pango_cairo_font_map_new ();
  PangoContext *context;
  cairo_font_options_t *options = cairo_font_options_create ();

  pango_cairo_font_map_set_resolution (PANGO_CAIRO_FONT_MAP (map), 72.0);
  context = pango_font_map_create_context (map);
  cairo_font_options_set_hint_style (options, CAIRO_HINT_STYLE_NONE);
  cairo_font_options_set_hint_metrics (options, CAIRO_HINT_METRICS_OFF);
  pango_cairo_context_set_font_options (context, options);
  pango_context_set_round_glyph_positions (context, FALSE);
  cairo_font_options_destroy (options);
  return context;
}

PangoLayout *
hmui_sheet_type_set (PangoContext *context, const char *text, double size_pt, gboolean bold, double width)
{
  PangoLayout *layout = pango_layout_new (context);
  PangoFontDescription *font = pango_font_description_from_string (FAMILY);
  PangoAttrList *attributes = pango_attr_list_new ();

  pango_font_description_set_size (font, (int) (size_pt * PANGO_SCALE));
  pango_font_description_set_weight (font, bold ? PANGO_WEIGHT_BOLD : PANGO_WEIGHT_NORMAL);
  pango_layout_set_font_description (layout, font);
  pango_attr_list_insert (attributes, pango_attr_font_features_new ("tnum=1"));   /* figures of equal width */
  pango_layout_set_attributes (layout, attributes);
  pango_layout_set_text (layout, text, -1);
  if (width > 0.0)
    {
      pango_layout_set_width (layout, pango_units_from_double (width));
      pango_layout_set_wrap (layout, PANGO_WRAP_WORD_CHAR);
    }
  pango_attr_list_unref (attributes);
  pango_font_description_free (font);
  return layout;
}

double
hmui_sheet_type_width (PangoLayout *layout)
{
  PangoRectangle logical;

  pango_layout_get_extents (layout, NULL, &logical);
  return pango_units_to_double (logical.width);
}

double
hmui_sheet_type_height (PangoLayout *layout)
{
  PangoRectangle logical;

  pango_layout_get_extents (layout, NULL, &logical);
  return pango_units_to_double (logical.height);
}

double
hmui_sheet_type_word_width (PangoContext *context, const char *text, double size_pt, gboolean bold)
{
  g_auto (GStrv) words = g_strsplit (text, " ", -1);
  double widest = 0.0;

  for (guint i = 0; words[i] != NULL; i++)
    {
      g_autoptr (PangoLayout) layout = hmui_sheet_type_set (context, words[i], size_pt, bold, 0.0);

      widest = MAX (widest, hmui_sheet_type_width (layout));
    }
  return widest;
}

void
hmui_sheet_type_dip (cairo_t *cr, HmuiInk ink)
{
  static const double inks[][3] = {
    [HMUI_INK_TEXT] = { 0.08, 0.08, 0.08 }, [HMUI_INK_QUIET] = { 0.42, 0.42, 0.42 }, [HMUI_INK_GOOD] = { 0.07, 0.40, 0.18 },
    [HMUI_INK_FAIR] = { 0.52, 0.32, 0.00 }, [HMUI_INK_BAD] = { 0.65, 0.09, 0.09 }, [HMUI_INK_RULE] = { 0.55, 0.55, 0.55 },
    [HMUI_INK_BAND] = { 0.945, 0.945, 0.945 }, [HMUI_INK_HEAD] = { 0.86, 0.86, 0.86 },
  };

  cairo_set_source_rgb (cr, inks[ink][0], inks[ink][1], inks[ink][2]);
}

HmuiInk
hmui_sheet_type_ink (HmSheetTone tone)
{
  switch (tone)
    {
    case HM_TONE_REPEATED: return HMUI_INK_QUIET;
    case HM_TONE_GOOD: return HMUI_INK_GOOD;
    case HM_TONE_FAIR: return HMUI_INK_FAIR;
    case HM_TONE_BAD: return HMUI_INK_BAD;
    case HM_TONE_PLAIN:
    case HM_TONE_STRONG:
    default: return HMUI_INK_TEXT;
    }
}

gboolean
hmui_sheet_type_is_bold (HmSheetTone tone)
{
  return tone == HM_TONE_STRONG || tone == HM_TONE_GOOD;
}

void
hmui_sheet_type_show (cairo_t *cr, PangoLayout *layout, double x, double y, HmuiInk ink)
{
  hmui_sheet_type_dip (cr, ink);
  cairo_move_to (cr, x, y);
  pango_cairo_show_layout (cr, layout);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-words-fit.h"
#include "hmui-tr.h"
#include "hmui-words.h"
#include <glib/gi18n.h>

const char *
hmui_words_fit_verdict (HmFitVerdict verdict)
{
  switch (verdict)
    {
    case HM_FIT_FITS: return _("fits");
    case HM_FIT_USABLE: return _("usable");
    case HM_FIT_ROUNDS: return _("rounds the corners");
    case HM_FIT_WILL_NOT_GO_ON:
    default: return _("will not go on");
    }
}

const char *
hmui_words_key_verdict (HmFitVerdict verdict)
{
  switch (verdict)
    {
    case HM_FIT_FITS: return _("fits");
    case HM_FIT_USABLE: return _("usable");
    case HM_FIT_ROUNDS: return _("rounds the recess");
    case HM_FIT_WILL_NOT_GO_ON:
    default: return _("will not go in");
    }
}

const char *
hmui_words_fit_reason (HmFitReason reason)
{
  switch (reason)
    {
    case HM_FIT_PROPER: return _("It is the size that belongs on this head.");
    case HM_FIT_AS_SNUG: return _("Another size, but it sits as snugly as the proper one.");
    case HM_FIT_LOOSE: return _("Looser than the proper size; the corners still hold on a sound head.");
    case HM_FIT_TOO_LOOSE: return _("Too loose: the contact moves out to the corners and wipes them off.");
    case HM_FIT_SPINS: return _("So loose that it turns round the head.");
    case HM_FIT_MAY_NOT_GO_ON: return _("Some heads of this size are larger than some of these sockets.");
    case HM_FIT_TOO_SMALL:
    default: return _("It is smaller than the head.");
    }
}

static HmQuantity
quantity (HmLength length)
{
  return hm_quantity (HM_QUANTITY_LENGTH, length.mm, HM_UNIT_MM);
}

char *
hmui_words_span (HmLength low, HmLength high, const HmFormat *format)
{
  HmQuantityRange span = { quantity (low), quantity (high) };

  return hm_quantity_range_format_both (span, format);
}

char *
hmui_words_fine_span (HmLength low, HmLength high, const HmFormat *format)
{
  HmQuantityRange span = { quantity (low), quantity (high) };
  g_autofree char *inch = hm_quantity_range_format (span, HM_UNIT_INCH, 4, format);
  g_autofree char *metric = hm_quantity_range_format (span, HM_UNIT_MM, 3, format);
  gboolean inch_first = format->system == HM_UNIT_SYSTEM_INCH_FIRST;

  return g_strdup_printf ("%s (%s)", inch_first ? inch : metric, inch_first ? metric : inch);
}

char *
hmui_words_length (HmLength length, const HmFormat *format)
{
  return hmui_words_span (length, length, format);
}

HmFormat
hmui_words_own (const HmFormat *format, gboolean inch)
{
  return (HmFormat) { format->decimal_point, inch ? HM_UNIT_SYSTEM_INCH_FIRST : HM_UNIT_SYSTEM_METRIC_FIRST };
}

char *
hmui_words_size_name (HmLength nominal, gboolean inch, const HmFormat *format)
{
  HmDrive hex = { HM_DRIVE_HEX, nominal, 0, inch };

  return hm_drive_format_size (&hex, format);
}

char *
hmui_words_size (HmLength nominal, gboolean inch, const HmFormat *format)
{
  g_autofree char *name = hmui_words_size_name (nominal, inch, format);
  g_autofree char *other = hm_quantity_format (quantity (nominal), inch ? HM_UNIT_MM : HM_UNIT_INCH, -1, format);

  return g_strdup_printf ("%s (%s)", name, other);
}

char *
hmui_words_socket (const HmOpeningRow *opening, const HmFormat *format)
{
  g_autofree char *name = hmui_words_size_name (opening->nominal, opening->inch, format);

  return g_strdup_printf (_("%s socket"), name);
}

char *
hmui_words_clearance (const HmFit *fit, const HmFormat *format)
{
  return hmui_words_span (fit->clearance_min, fit->clearance_max, format);
}

/* "1.2–5.6°" */
static char *
degrees (double low, double high, const HmFormat *format)
{
  HmQuantityRange span = { hm_quantity (HM_QUANTITY_NUMBER, low, HM_UNIT_NONE), hm_quantity (HM_QUANTITY_NUMBER, high, HM_UNIT_NONE) };
  g_autofree char *text = hm_quantity_range_format (span, HM_UNIT_NONE, 1, format);

  return g_strdup_printf ("%s°", text);
}

char *
hmui_words_free_angle (const HmFit *fit, const HmFormat *format)
{
  g_autofree char *span = NULL;

  if (fit->reason == HM_FIT_SPINS)
    return g_strdup (_("spins"));
  span = degrees (fit->free_angle_min, fit->free_angle_max, format);
  return g_strdup_printf (_("turns free %s to either side"), span);
}

char *
hmui_words_contact (const HmFit *fit)
{
  g_autofree char *share = hmui_words_percent (fit->contact);

  return g_strdup_printf (_("contact %s out to the corner"), share);
}

const char *
hmui_words_contact_note (void)
{
  return _("Contact, in the loosest case (smallest head, largest socket): 50\302\240% is the best there is, 100\302\240% is the corner.");
}

char *
hmui_words_goes_on (const HmFit *fit)
{
  g_autofree char *share = NULL;

  if (fit->goes_on >= 1.0 || fit->goes_on <= 0.0)
    return NULL;
  share = hmui_words_percent (fit->goes_on);
  return g_strdup_printf (_("goes on in %s of cases"), share);
}

char *
hmui_words_fit_detail (const HmFit *fit, const HmFormat *format)
{
  g_autofree char *clearance = hmui_words_clearance (fit, format);
  g_autofree char *angle = NULL, *contact = NULL, *share = NULL;
  const char *reason = hmui_words_fit_reason (fit->reason);
  g_autoptr(GString) numbers = g_string_new (NULL);

  g_string_append_printf (numbers, _("Clearance %s"), clearance);
  if (fit->verdict != HM_FIT_WILL_NOT_GO_ON)
    {
      share = hmui_words_goes_on (fit);
      angle = hmui_words_free_angle (fit, format);
      contact = hmui_words_contact (fit);
      if (share != NULL)
        g_string_append_printf (numbers, " · %s", share);
      g_string_append_printf (numbers, " · %s", angle);
      if (fit->reason != HM_FIT_SPINS)
        g_string_append_printf (numbers, " · %s", contact);
    }
  return g_strdup_printf ("%s\n%s", reason, numbers->str);
}

char *
hmui_words_key_detail (const HmKeyFit *fit)
{
  g_autofree char *share = NULL;

  if (!fit->known)
    return g_strdup (_("The sizes that this needs are not published."));
  if (fit->hold <= 0.0 || fit->hold >= 1.0)
    return NULL;
  share = hmui_words_percent (fit->hold);
  return g_strdup_printf (_("It reaches over %s of the depth of the lobes."), share);
}

const char *
hmui_words_head_kind (HmHeadKind kind)
{
  switch (kind)
    {
    case HM_HEAD_HEX_BOLT: return _("hex bolt");
    case HM_HEAD_HEX_NUT: return _("hex nut");
    case HM_HEAD_FLANGE_BOLT: return _("flange bolt");
    case HM_HEAD_FLANGE_NUT: return _("flange nut");
    case HM_HEAD_MACHINE_SCREW: return _("hex machine screw");
    case HM_HEAD_MACHINE_NUT: return _("machine screw nut");
    case HM_HEAD_WASHER_SCREW: return _("hex washer-head screw");
    case HM_HEAD_SOCKET_CAP: return _("socket head cap screw");
    case HM_HEAD_BUTTON: return _("button head screw");
    case HM_HEAD_SET_SCREW:
    default: return _("set screw");
    }
}

char *
hmui_words_head (const HmHexRow *row)
{
  return g_strdup_printf ("%s %s", row->thread, hmui_words_head_kind (row->kind));
}

char *
hmui_words_head_by_size (const HmHexRow *row, const HmFormat *format)
{
  g_autofree char *size = hmui_words_size_name (row->nominal, row->inch, format);

  return g_strdup_printf ("%s %s", size, hmui_words_head_kind (row->kind));
}

const char *
hmui_words_condition (HmHeadCondition condition)
{
  switch (condition)
    {
    case HM_HEAD_WORN: return _("worn or rusted");
    case HM_HEAD_PAINTED: return _("painted or galvanized");
    case HM_HEAD_CLEAN:
    default: return _("clean");
    }
}

char *
hmui_words_rounded (const HmWidthAnswer *answer, const HmFormat *format)
{
  g_autofree char *left = hmui_words_length (answer->rounded_width, format);
  g_autofree char *driven = NULL, *by_hand = NULL, *interference = NULL;

  if (answer->rounded.next_up != NULL)
    by_hand = hmui_words_socket (answer->rounded.next_up, format);
  if (answer->rounded.drive_on == NULL)
    return by_hand == NULL ? g_strdup (_("No socket is near what is left. Grip it with locking pliers, or split or drill it."))
                           : g_strdup_printf (_("With %s left across the flats no size is close enough below to tap on; the first that goes "
                                                "on by hand is the %s. Grip the head instead, or split or drill it."), left, by_hand);
  driven = hmui_words_socket (answer->rounded.drive_on, format);
  interference = hmui_words_length (answer->rounded.interference, format);
  return g_strdup_printf (_("With %s left across the flats, tap on a six-point %s: the head is %s larger than the socket."),
                          left, driven, interference);
}

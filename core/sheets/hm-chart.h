/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-sheet.h"
#include "hm-tables.h"
#include "hm-translate.h"
G_BEGIN_DECLS

/*
 * Charts for the wall: what the fastener reference holds, on paper. Every figure is read from the tables or worked out by the
 * function that answers the same question in the program; nothing is listed by hand.
 */

typedef enum { HM_CHART_SOCKET, HM_CHART_THREAD, HM_CHART_TORQUE, HM_CHART_N_CHARTS } HmChart;

/**
 * HmChartRequest: a plain value; all borrowed.
 * @title: what stands on top: hm_chart_title() translated, or the shop's own words; never NULL
 * @date: as it is to be written; never NULL
 * @translate: (nullable): NULL keeps English
 */
typedef struct { const char *title, *date; const HmFormat *format; HmTranslate translate; } HmChartRequest;

/** hm_chart_name: "socket", "thread", "torque": as it is typed; static. NULL for a value outside the enum. */
const char *hm_chart_name (HmChart self);

/** hm_chart_parse: the chart of that name. Returns: %FALSE, with nothing written, if there is none */
gboolean hm_chart_parse (const char *name, HmChart *out) G_GNUC_WARN_UNUSED_RESULT;

/** hm_chart_title: "Socket chart"; English, translatable, static. */
const char *hm_chart_title (HmChart self);

/** hm_chart_new: (transfer full) */
HmSheet *hm_chart_new (HmChart self, const HmTables *tables, const HmChartRequest *request);

/**
 * hm_sheet_socket_chart: inch and metric sizes side by side, with the verdict of hm_fit() on each other's clean heads, and
 * hexalobular sizes. Pairs are those of hm_size_equivalents(). (transfer full)
 */
HmSheet *hm_sheet_socket_chart (const HmTables *tables, const HmChartRequest *request);

/** hm_sheet_thread_chart: metric coarse and fine, UNC and UNF: pitch, tap drill, clearance holes, stress area. (transfer full) */
HmSheet *hm_sheet_thread_chart (const HmTables *tables, const HmChartRequest *request);

/**
 * hm_sheet_torque_chart: by thread and class, dry and oiled, by hm_tightening_work_out() into a steel nut at the usual share of the
 * proof load. Threads from 4 mm on that are usual or occasional on this equipment. (transfer full)
 */
HmSheet *hm_sheet_torque_chart (const HmTables *tables, const HmChartRequest *request);

G_END_DECLS

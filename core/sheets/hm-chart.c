/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-chart.h"

#include <glib/gi18n.h>
#include <string.h>

typedef HmSheet *(*MakeChart) (const HmTables *tables, const HmChartRequest *request);

static const struct { const char *name, *title; MakeChart make; } charts[HM_CHART_N_CHARTS] = {
  [HM_CHART_SOCKET] = { "socket", N_("Socket chart"), hm_sheet_socket_chart },
  [HM_CHART_THREAD] = { "thread", N_("Thread chart"), hm_sheet_thread_chart },
  [HM_CHART_TORQUE] = { "torque", N_("Torque chart"), hm_sheet_torque_chart },
};

const char *
hm_chart_name (HmChart self)
{
  return (guint) self < HM_CHART_N_CHARTS ? charts[self].name : NULL;
}

gboolean
hm_chart_parse (const char *name, HmChart *out)
{
  g_return_val_if_fail (name != NULL && out != NULL, FALSE);
  for (guint i = 0; i < HM_CHART_N_CHARTS; i++)
    if (strcmp (charts[i].name, name) == 0)
      {
        *out = (HmChart) i;
        return TRUE;
      }
  return FALSE;
}

const char *
hm_chart_title (HmChart self)
{
  g_return_val_if_fail ((guint) self < HM_CHART_N_CHARTS, "");
  return charts[self].title;
}

HmSheet *
hm_chart_new (HmChart self, const HmTables *tables, const HmChartRequest *request)
{
  g_return_val_if_fail ((guint) self < HM_CHART_N_CHARTS && tables != NULL && request != NULL, NULL);
  return charts[self].make (tables, request);
}

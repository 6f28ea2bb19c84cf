/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-provenance.h"
#include <glib/gi18n.h>
#include <string.h>

static const char * const kind_names[] = {
  [HM_PROVENANCE_SPEC_SHEET]      = N_("spec sheet"),
  [HM_PROVENANCE_STANDARD]        = N_("standard"),
  [HM_PROVENANCE_PUBLISHED]       = N_("published"),
  [HM_PROVENANCE_COMPUTED]        = N_("computed"),
  [HM_PROVENANCE_COMMON_PRACTICE] = N_("common practice"),
};

static const char *
skip_spaces (const char *at)
{
  while (g_ascii_isspace (*at))
    at++;
  return at;
}

/* Returns: the source that stands behind "kind:", "" if nothing does, NULL if @text is not of this kind */
static const char *
match_kind (const char *text, const char *name)
{
  const char *at = text + strlen (name);
  if (!g_str_has_prefix (text, name))
    return NULL;
  at = skip_spaces (at);
  if (*at == '\0')
    return at;
  return *at == ':' ? skip_spaces (at + 1) : NULL;
}

gboolean
hm_provenance_parse (const char *text, HmProvenance *out)
{
  g_return_val_if_fail (text != NULL && out != NULL, FALSE);
  text = skip_spaces (text);
  for (gsize i = 0; i < G_N_ELEMENTS (kind_names); i++)
    {
      const char *source = match_kind (text, kind_names[i]);
      gboolean has_source = source != NULL && *source != '\0';
      if (source == NULL)
        continue;
      if (has_source == (i == HM_PROVENANCE_COMMON_PRACTICE))
        return FALSE;       /* trade lore with a source is not lore; anything else needs one */
      *out = (HmProvenance) { (HmProvenanceKind) i, has_source ? source : NULL };
      return TRUE;
    }
  return FALSE;
}

const char *
hm_provenance_kind_name (HmProvenanceKind kind)
{
  g_return_val_if_fail ((guint) kind < G_N_ELEMENTS (kind_names), "");
  return kind_names[kind];
}

char *
hm_provenance_format (HmProvenance self)
{
  const char *name = hm_provenance_kind_name (self.kind);
  if (self.kind == HM_PROVENANCE_COMMON_PRACTICE)
    return g_strdup (name);
  g_return_val_if_fail (self.source != NULL, g_strdup (name));
  return g_strconcat (name, ": ", self.source, NULL);
}

gboolean
hm_provenance_manual_governs (HmProvenance self)
{
  return self.kind != HM_PROVENANCE_SPEC_SHEET;
}

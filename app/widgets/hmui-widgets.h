/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hmui-caution-card.h"
#include "hmui-circuit-view.h"
#include "hmui-drive-view.h"
#include "hmui-fact-row.h"
#include "hmui-pattern-view.h"
#include "hmui-probability-row.h"
#include "hmui-provenance-chip.h"
#include "hmui-reading-entry.h"
#include "hmui-step-list.h"
#include "hmui-style.h"
G_BEGIN_DECLS

/** hmui_widgets_ensure_types: registers every widget, so that a .ui file may name it. Call it before the first template. */
void hmui_widgets_ensure_types (void);

G_END_DECLS

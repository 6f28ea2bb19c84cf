/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-guide.h"
#include "hm-torque.h"
G_BEGIN_DECLS

/*
 * Opening a machine up only as far as needed, and putting it back in reverse order. Works on the access steps of a
 * guide; sets are bit masks of their indices.
 */

/** hm_access_need: the steps named and everything they require. */
HmAccessSet hm_access_need (const HmGuide *guide, const guint *steps, guint n_steps);

/** hm_access_dependents: the steps of @set and every step that requires one of them: closing @set closes these. */
HmAccessSet hm_access_dependents (const HmGuide *guide, HmAccessSet set);

/** hm_access_blocking: the steps that must be shut before the engine can be run, with their dependents. */
HmAccessSet hm_access_blocking (const HmGuide *guide);

/**
 * hm_access_order: the steps of @set so that what is required comes first. Put back in the reverse of it.
 * @out: (array): room for hm_guide's number of access steps
 * Returns: how many were written
 */
guint hm_access_order (const HmGuide *guide, HmAccessSet set, guint *out);

HmDuration hm_access_open_time  (const HmGuide *guide, HmAccessSet set);
HmDuration hm_access_close_time (const HmGuide *guide, HmAccessSet set);

/**
 * hm_access_tools: the tools to lay out for a set of access steps, a remedy's or check's own fasteners and tools:
 * each once, with alternatives for combination drives ("1/2 in socket or T40 bit").
 * @fasteners: (nullable) (array zero-terminated=1): in addition to those of @set
 * @tools: (nullable) (array zero-terminated=1): named tools, listed first
 * Returns: (transfer full) (element-type utf8): free with g_ptr_array_unref(); English
 */
GPtrArray *hm_access_tools (const HmGuide *guide, HmAccessSet set, const HmFastener * const *fasteners,
                            const HmTool * const *tools, const HmFormat *format);

G_END_DECLS

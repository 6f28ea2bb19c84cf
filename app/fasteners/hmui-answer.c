/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-answer.h"

#define MAX_DRIVES 4

struct _HmuiAnswerRow
{
  GObject parent_instance;
  HmuiAnswerText text;            /* its strings are owned */
  HmProvenance provenance;        /* its source is owned */
  HmThread bolt, hole;
};

struct _HmuiAnswerPart
{
  GObject parent_instance;
  HmuiPartRole role;
  char *title, *note;             /* owned */
  GPtrArray *rows;                /* owned, of owned HmuiAnswerRow */
};

struct _HmuiAnswer
{
  GObject parent_instance;
  char *title, *sizes, *lead;     /* owned */
  HmDrive drives[MAX_DRIVES];
  guint n_drives;
  HmLength point_to_point, across_lobes;
  GPtrArray *parts;               /* owned, of owned HmuiAnswerPart */
};

G_DEFINE_FINAL_TYPE (HmuiAnswerRow, hmui_answer_row, G_TYPE_OBJECT)
G_DEFINE_FINAL_TYPE (HmuiAnswerPart, hmui_answer_part, G_TYPE_OBJECT)
G_DEFINE_FINAL_TYPE (HmuiAnswer, hmui_answer, G_TYPE_OBJECT)

static void
hmui_answer_row_finalize (GObject *object)
{
  HmuiAnswerRow *self = HMUI_ANSWER_ROW (object);

  g_free ((char *) self->text.word);
  g_free ((char *) self->text.title);
  g_free ((char *) self->text.detail);
  g_free ((char *) self->text.target);
  g_free ((char *) self->provenance.source);
  G_OBJECT_CLASS (hmui_answer_row_parent_class)->finalize (object);
}

static void
hmui_answer_row_class_init (HmuiAnswerRowClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hmui_answer_row_finalize;
}

static void
hmui_answer_row_init (HmuiAnswerRow *self)
{
}

static HmuiAnswerRow *
make_row (const HmuiAnswerText *text)
{
  HmuiAnswerRow *self = g_object_new (HMUI_TYPE_ANSWER_ROW, NULL);

  self->text = *text;
  self->text.word = g_strdup (text->word);
  self->text.title = g_strdup (text->title);
  self->text.detail = g_strdup (text->detail);
  self->text.target = g_strdup (text->target);
  self->text.provenance = NULL;
  self->text.bolt = self->text.hole = NULL;
  if (text->bolt != NULL && text->hole != NULL)
    {
      self->bolt = *text->bolt;
      self->hole = *text->hole;
      self->text.bolt = &self->bolt;
      self->text.hole = &self->hole;
    }
  if (text->provenance != NULL)
    {
      self->provenance = (HmProvenance) { text->provenance->kind, g_strdup (text->provenance->source) };
      self->text.provenance = &self->provenance;
    }
  return self;
}

const HmuiAnswerText *
hmui_answer_row_get_text (HmuiAnswerRow *self)
{
  return &self->text;
}

static void
hmui_answer_part_finalize (GObject *object)
{
  HmuiAnswerPart *self = HMUI_ANSWER_PART (object);

  g_free (self->title);
  g_free (self->note);
  g_ptr_array_unref (self->rows);
  G_OBJECT_CLASS (hmui_answer_part_parent_class)->finalize (object);
}

static void
hmui_answer_part_class_init (HmuiAnswerPartClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hmui_answer_part_finalize;
}

static void
hmui_answer_part_init (HmuiAnswerPart *self)
{
  self->rows = g_ptr_array_new_with_free_func (g_object_unref);
}

HmuiPartRole
hmui_answer_part_get_role (HmuiAnswerPart *self)
{
  return self->role;
}

const char *
hmui_answer_part_get_title (HmuiAnswerPart *self)
{
  return self->title;
}

const char *
hmui_answer_part_get_note (HmuiAnswerPart *self)
{
  return self->note;
}

guint
hmui_answer_part_get_n (HmuiAnswerPart *self)
{
  return self->rows->len;
}

HmuiAnswerRow *
hmui_answer_part_get_row (HmuiAnswerPart *self, guint i)
{
  g_return_val_if_fail (i < self->rows->len, NULL);
  return g_ptr_array_index (self->rows, i);
}

void
hmui_answer_part_add (HmuiAnswerPart *self, const HmuiAnswerText *text)
{
  g_return_if_fail (HMUI_IS_ANSWER_PART (self) && text->title != NULL);
  g_ptr_array_add (self->rows, make_row (text));
}

static void
hmui_answer_finalize (GObject *object)
{
  HmuiAnswer *self = HMUI_ANSWER (object);

  g_free (self->title);
  g_free (self->sizes);
  g_free (self->lead);
  g_ptr_array_unref (self->parts);
  G_OBJECT_CLASS (hmui_answer_parent_class)->finalize (object);
}

static void
hmui_answer_class_init (HmuiAnswerClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hmui_answer_finalize;
}

static void
hmui_answer_init (HmuiAnswer *self)
{
  self->parts = g_ptr_array_new_with_free_func (g_object_unref);
}

HmuiAnswer *
hmui_answer_new (const char *title, const char *sizes, const char *lead)
{
  HmuiAnswer *self = g_object_new (HMUI_TYPE_ANSWER, NULL);

  self->title = g_strdup (title);
  self->sizes = g_strdup (sizes);
  self->lead = g_strdup (lead);
  return self;
}

const char *
hmui_answer_get_title (HmuiAnswer *self)
{
  return self->title;
}

const char *
hmui_answer_get_sizes (HmuiAnswer *self)
{
  return self->sizes;
}

const char *
hmui_answer_get_lead (HmuiAnswer *self)
{
  return self->lead;
}

void
hmui_answer_set_drives (HmuiAnswer *self, const HmDrive *drives, guint n)
{
  self->n_drives = MIN (n, MAX_DRIVES);
  for (guint i = 0; i < self->n_drives; i++)
    self->drives[i] = drives[i];
}

void
hmui_answer_set_lobes (HmuiAnswer *self, HmLength point_to_point, HmLength across_lobes)
{
  self->point_to_point = point_to_point;
  self->across_lobes = across_lobes;
}

const HmDrive *
hmui_answer_get_drives (HmuiAnswer *self, guint *n)
{
  *n = self->n_drives;
  return self->drives;
}

void
hmui_answer_get_lobes (HmuiAnswer *self, HmLength *point_to_point, HmLength *across_lobes)
{
  *point_to_point = self->point_to_point;
  *across_lobes = self->across_lobes;
}

HmuiAnswerPart *
hmui_answer_add_part (HmuiAnswer *self, HmuiPartRole role, const char *title, const char *note)
{
  HmuiAnswerPart *part = g_object_new (HMUI_TYPE_ANSWER_PART, NULL);

  part->role = role;
  part->title = g_strdup (title);
  part->note = g_strdup (note);
  g_ptr_array_add (self->parts, part);
  return part;
}

guint
hmui_answer_get_n_parts (HmuiAnswer *self)
{
  return self->parts->len;
}

HmuiAnswerPart *
hmui_answer_get_part (HmuiAnswer *self, guint i)
{
  g_return_val_if_fail (i < self->parts->len, NULL);
  return g_ptr_array_index (self->parts, i);
}

HmuiAnswerPart *
hmui_answer_find_part (HmuiAnswer *self, HmuiPartRole role)
{
  for (guint i = 0; i < self->parts->len; i++)
    if (hmui_answer_part_get_role (g_ptr_array_index (self->parts, i)) == role)
      return g_ptr_array_index (self->parts, i);
  return NULL;
}

/* field_try.h - every key of a file written wrongly in each way that a hand does (field_slips.h):
 * one error, at the very place, with a remedy, and nothing that only follows from it; and left
 * empty or taken out, which is the same. */
#ifndef MAYDECK_FIELD_TRY_H
#define MAYDECK_FIELD_TRY_H

#include "arena.h"
#include "problem.h"
#include "source.h"
#include "yaml_fields.h"

/* A kind of file: how it is read, and what its keys are. */
struct file_way {
    const char *name;
    const struct field_table *(*fields)(void);
    bool (*is_sound)(const struct source *source, struct arena *arena,
                     struct problems *problems);
};

enum fields_tried {
    FIELDS_TRIED_ALL,
    FIELDS_TRIED_GEAR     /* those in braces with an item */
};

/* For the group of tests. */
int field_try_begin(void **state);
int field_try_end(void **state);

/* The test fails where the text is not sound as it is, or some change of it breaks the law. */
void file_try(const struct file_way *way, const char *text, enum fields_tried which);

/* The test fails where a row of the tables was in no text that was tried. */
void rows_were_tried(const struct file_way *way);

#endif

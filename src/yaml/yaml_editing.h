/* yaml_editing.h - what the files of the writer share (private to the room yaml): a change
 * in the making. Each edit becomes cuts: bytes of the source and what takes their place. */
#ifndef MAYDECK_YAML_EDITING_H
#define MAYDECK_YAML_EDITING_H

#include <stdbool.h>
#include <stddef.h>

#include "yaml_edit.h"

/* Where cuts begin at one offset: what is first of the new bytes. */
enum cut_turn { CUT_VALUE, CUT_MEMBER };

struct cut {
    size_t start, end;        /* bytes of the source; equal: only an insertion */
    const char *text;         /* in their place */
    enum cut_turn turn;
    int depth;                /* of what is inserted in lines: the deeper goes first */
    size_t order;             /* in which the cuts were made */
    const struct yaml_edit *edit;
};

struct yaml_editing {
    const struct yaml_change *change;
    const char *bytes;        /* of the source */
    size_t length;
    const char *line_end;     /* as the file's lines end */
    struct arena *arena;
    struct problems *problems;
    struct cut *cuts;
    size_t cut_count, cut_capacity;
    bool wrong;               /* an error was told */
};

/* ---- yaml_edit.c ---- */

void edit_error(struct yaml_editing *editing, const struct yaml_edit *edit, const char *remedy,
                const char *format, ...) __attribute__((format(printf, 4, 5)));

/* A cut that only has start, end and text so far. */
void cut_add(struct yaml_editing *editing, const struct yaml_edit *edit, struct cut cut);

/* ---- yaml_members.c: the pairs of a mapping or the entries of a list ---- */

/* Which member a SET or REMOVE is about: `count` of the collection where there is none. */
size_t edit_index(const struct yaml_edit *edit);
const struct yaml_node *member_value(const struct yaml_node *in, size_t index);
struct place member_place(const struct yaml_node *in, size_t index);

/* The edit of one kind about a member, or NULL. */
const struct yaml_edit *member_edit(const struct yaml_change *change,
                                    const struct yaml_node *in, size_t index,
                                    enum yaml_edit_kind kind);
bool member_stays(const struct yaml_change *change, const struct yaml_node *in, size_t index);

/* How many members of a collection stay, from `from` to before `to`. */
size_t members_staying(const struct yaml_change *change, const struct yaml_node *in,
                       size_t from, size_t to);

/* Is this the first edit that adds to its collection? */
bool is_first_addition(const struct yaml_change *change, const struct yaml_edit *edit);

/* A member's bytes: key, colon and value; of an entry in lines also the dash. False where
 * they cannot be told: a key marked with `?`. */
bool member_range(const struct yaml_editing *editing, const struct yaml_node *in, size_t index,
                  struct byte_range *range);

/* ---- yaml_span.c: looking along the bytes ---- */

size_t line_start_of(const struct yaml_editing *editing, size_t at);
size_t line_stop_of(const struct yaml_editing *editing, size_t at);   /* before its end */
size_t line_after(const struct yaml_editing *editing, size_t at);     /* the next one's start */
size_t blanks_skip(const struct yaml_editing *editing, size_t at);    /* spaces and tabs */
size_t white_skip(const struct yaml_editing *editing, size_t at);     /* and line ends */
bool bytes_blank(const struct yaml_editing *editing, size_t from, size_t to);
bool bytes_break(const struct yaml_editing *editing, size_t from, size_t to);  /* a line end? */

/* The comma that follows `at`, behind white space and comments; SIZE_MAX: something else. */
size_t comma_find(const struct yaml_editing *editing, size_t at);

/* ---- yaml_edit_flow.c and yaml_edit_lines.c: collections with and without brackets ---- */

void flow_add(struct yaml_editing *editing, const struct yaml_edit *edit);
void flow_remove(struct yaml_editing *editing, const struct yaml_edit *edit, size_t index);
void lines_add(struct yaml_editing *editing, const struct yaml_edit *edit);
void lines_remove(struct yaml_editing *editing, const struct yaml_edit *edit, size_t index);

/* ---- yaml_write.c ---- */

/* How a collection is written: an entry a line, or in brackets. */
enum yaml_style { STYLE_LINES, STYLE_FLOW };

/* A value in one line. `sign`: the quote that stood there, ' or ", else 0. */
const char *value_written(struct arena *arena, const struct yaml_node *value, enum yaml_style style,
                          char sign);

const char *key_written(struct arena *arena, const char *key, enum yaml_style style);

/* `key: value`, or the value alone for an entry (key NULL). */
const char *member_written(struct arena *arena, const char *key, const struct yaml_node *value,
                           enum yaml_style style);

/* Why a key or a value cannot be written at all, or NULL. */
const char *text_unwritable(const char *text);
const char *value_unwritable(const struct yaml_node *value);

/* ---- yaml_same.c ---- */

/* Is the new tree the old one with the edits made, in texts, keys, order and quotes? */
bool tree_as_changed(const struct yaml_editing *editing, const struct yaml_node *tree);

/* Does the node hold what the value is to be? Quotes may stand where none were asked for. */
bool value_equal(const struct yaml_node *value, const struct yaml_node *node,
                 struct arena *arena);

#endif

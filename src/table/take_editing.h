/* take_editing.h - what the files that turn a table into edits share. Private to src/table. */
#ifndef MAYDECK_TAKE_EDITING_H
#define MAYDECK_TAKE_EDITING_H

#include "table_room.h"

/* The lists of a boat's file to which entries are added, or from which they are taken. */
#define EDITED_LIST(X) \
    X(EDITED_NOT_FITTED, "not_fitted") X(EDITED_NOT_SURVEYED, "not_surveyed") \
    X(EDITED_EQUIPMENT, "equipment") X(EDITED_RETIRED, "retired_tags") \
    X(EDITED_NOT_HERE, "not_here")
enum edited_list { EDITED_NONE, EDITED_LIST(CHOICE_NAME) EDITED_COUNT };
_Static_assert((int)EDITED_NOT_FITTED == (int)TABLE_NOT_FITTED &&
                   (int)EDITED_NOT_SURVEYED == (int)TABLE_NOT_SURVEYED,
               "lists of what she has not are among those that are edited");

struct list_change {
    const struct yaml_node **adds;
    size_t *removes;
    size_t add_count, add_room, remove_count, remove_room;
};

struct boat_editing {
    const struct taking *taking;
    struct boat_rows *rows;
    struct arena *arena;
    struct yaml_edit *edits;
    size_t count, room;
    struct list_change lists[EDITED_COUNT];
    struct change_list *changes;
};

/* ---- take_edits.c ---- */

void change_tell(struct boat_editing *editing, const char *what, const char *from,
                 const char *to);
void edit_add(struct boat_editing *editing, struct yaml_edit edit);

/* Another value for a key that is there, or the first; NULL: none. */
void key_put(struct boat_editing *editing, const struct yaml_node *in, const char *key,
             const struct yaml_node *value);

const struct yaml_node *word_node(struct boat_editing *editing, const char *word);

/* A mapping that is made, pair by pair. */
struct mapping_making {
    struct yaml_pair *pairs;
    size_t count, room;
};
void pair_put(struct boat_editing *editing, struct mapping_making *making, const char *key,
              const struct yaml_node *value);
const struct yaml_node *mapping_made(struct boat_editing *editing,
                                     const struct mapping_making *making);

/* ---- take_lists.c ---- */

/* Notes what is to be added to a list of her file, and which entry is to go. */
void list_gets(struct boat_editing *editing, enum edited_list which,
               const struct yaml_node *node);
void list_loses(struct boat_editing *editing, enum edited_list which, size_t index);

void absence_edit(struct boat_editing *editing, const struct absence_row *row);

/* Makes edits of all that was noted of lists. */
void lists_put(struct boat_editing *editing);

#endif

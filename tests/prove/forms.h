/* forms.h - what a record can say of one kind of gear, as far as it makes a difference. */
#ifndef MAYDECK_PROVE_FORMS_H
#define MAYDECK_PROVE_FORMS_H

#include "reads.h"

/* Where a piece is; each is a way to write it. */
enum where {
    NOT_RECORDED, NOT_FITTED, ON_OPEN_DECK, IN_DECK_LOCKER, AT_COMPANIONWAY, BELOW_DECK,
    INSIDE_SPACE, IN_GAS_LOCKER, ON_DECK_AND_BELOW, ON_DECK_AND_INSIDE, WHERE_COUNT
};

/* One way to record an item. `known`: nothing about it is left open. */
struct form {
    enum item_key item;
    enum where where;
    const char *facts;                 /* further facts of its entry: ", stop: mechanical" */
    const char *told;                  /* for a report: "engine_stop below, stop: mechanical" */
    const char *entry;                 /* its lines in the file of such a boat: entry_written */
    bool known;
    bool fine;                         /* no condition tells it from another form */
};
struct forms {
    struct form *at;
    size_t count, room;
    unsigned long group;               /* as in struct item_read; 0 where more than places count */
};

struct forms forms_of(const struct item_read *read, struct arena *arena);

/* The boat as a whole. */
struct hull_kind {
    const char *told;
    const char *head;                  /* her sections boat, engines and gas */
    const char *spaces[2];             /* her engine spaces; NULL: none */
    const char *lacks;                 /* lines of not_fitted: what makes her such a boat; NULL */
};
extern const struct hull_kind hull_kinds[];
extern const size_t hull_kind_count;

/* Its entries, with # for the numbers of their tags. */
const char *entry_written(const struct hull_kind *hull, const struct form *form,
                          struct arena *arena);

/* Her file: each item as its form has it. */
const char *boat_written(const struct hull_kind *hull, const struct form *forms, size_t count,
                         struct arena *arena);

#endif

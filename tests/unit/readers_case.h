/* readers_case.h - one record and base as texts, whose values a test sets one by one, and what
 * each reader (reader.h) then says. */
#ifndef MAYDECK_READERS_CASE_H
#define MAYDECK_READERS_CASE_H

#include "card_case.h"
#include "reader.h"

/* The readers that a run of the program has; tests/cli/readers.sh asks them. */
#define READ_BY_RUN (READ_CALL | READ_FILE | READ_RUN | READ_DIFFERS)

enum { PARTS_MOST = 32 };

/* Stands in the base for the fingerprint of the approved text. */
#define TEXT_NOW "TEXT-NOW"

/* A section, or an entry of a list, as a mapping in one line: "radio: {", "dsc: yes", "}\n". */
struct world_part {
    const char *path;             /* of its keys: radio, base, equipment */
    const char *head, *pairs, *foot;
};

struct world {
    struct arena *arena;
    struct world_part boat[PARTS_MOST], base[PARTS_MOST];
};

/* A whole boat of a whole base. */
struct world world_new(struct arena *arena);

/* The part's pairs with the value in the place of the key's, or without it where it is NULL.
 * False: the world has no such part. */
bool world_set(struct world *world, const char *path, const char *key, const char *value);

/* The same boat with one piece of that item, of those facts besides those that its kind must
 * have, and no other. */
void world_gear_set(struct world *world, enum item_key item, const char *key, const char *value);

/* The parts as a file of that name. */
struct source;
const struct source *world_source(const struct world *world, const struct world_part *parts,
                                  const char *name);

/* What every reader says of a world; all NULL where its files have errors: `fault` then tells
 * the first. */
struct readings { const char *said[READER_COUNT], *fault; };
struct readings readings_of(const struct card_case *card_case, const struct world *world);

#endif

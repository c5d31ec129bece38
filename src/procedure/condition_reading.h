/* condition_reading.h - what the two files that read conditions share. Private to
 * src/procedure. */
#ifndef MAYDECK_CONDITION_READING_H
#define MAYDECK_CONDITION_READING_H

#include "procedure_room.h"

struct condition_reading {
    struct arena *arena;
    struct problems *problems;
};

/* The conditions that one mapping or list comes to, all of which must hold. */
struct gathering {
    const struct condition **items;
    size_t count, capacity;
    bool failed;
};

/* Tells an error; the whole condition is then not understood. */
void condition_fail(const struct condition_reading *reading, struct gathering *into,
                    struct place place, const char *remedy, const char *what);

/* A new condition of this kind, the last of `into`. */
struct condition *condition_gather(const struct condition_reading *reading,
                                   struct gathering *into, enum condition_kind kind,
                                   struct place place);

/* What stands under one key of a condition. */
void fitted_read(const struct condition_reading *reading, const struct yaml_node *node,
                 struct gathering *into);
void not_fitted_read(const struct condition_reading *reading, const struct yaml_node *node,
                     struct gathering *into);
void inside_read(const struct condition_reading *reading, const struct yaml_node *node,
                 struct gathering *into);
void is_read(const struct condition_reading *reading, const struct yaml_node *node,
             struct gathering *into);
void cuts_read(const struct condition_reading *reading, const struct yaml_node *node,
               struct gathering *into);
void reach_read(const struct condition_reading *reading, const struct yaml_node *node,
                struct gathering *into);
void beyond_read(const struct condition_reading *reading, const struct yaml_node *node,
                 struct gathering *into);
void boat_type_read(const struct condition_reading *reading, const struct yaml_node *node,
                    struct gathering *into);
void breaths_read(const struct condition_reading *reading, const struct yaml_node *node,
                  struct gathering *into);
void sting_read(const struct condition_reading *reading, const struct yaml_node *node,
                struct gathering *into);
void tide_read(const struct condition_reading *reading, const struct yaml_node *node,
               struct gathering *into);

/* The keys of a condition, and of each how it is written and what it asks; NULL past the
 * last. */
const char *condition_key_at(size_t index);
const char *condition_about_at(size_t index);

#endif

/* rules_room.h - what the files of this room share (private to it). */
#ifndef MAYDECK_RULES_ROOM_H
#define MAYDECK_RULES_ROOM_H

#include "rules.h"

#include "check_list.h"

enum check_name {
#define CHECK_ENUM(name, severity, sentence, source) CHECK_##name,
    FAMILY_LIST(CHECK_ENUM)
    CHECK_LIST(CHECK_ENUM)
    DANGER_LIST(CHECK_ENUM)
#undef CHECK_ENUM
    CHECK_COUNT
};

/* What a check works with. */
struct rule_run {
    const struct rules_input *in;
    struct arena *arena;
    struct problems *problems;
    bool *used;                /* one for each silence: it silenced something */
    size_t *held;              /* errors that hold the boat back */
};

/* Tells that a check found something, or that it would have if it were not silenced
 * for this boat. The severity is the row's. */
void rule_tell(const struct rule_run *run, enum check_name name, struct place place,
               const char *remedy, const char *format, ...)
    __attribute__((format(printf, 5, 6)));

/* "lifejacket E1", or with its name: "seacock C10 (inlet)". */
const char *rule_gear_name(const struct rule_run *run, const struct equipment *gear);

/* One family of checks: one function, called once a boat. */
typedef void rule_family(const struct rule_run *run);
rule_family base_rules;   /* with no boat: see rules_check_base */
rule_family date_rules;
rule_family capacity_rules;
rule_family silence_rules;

#endif

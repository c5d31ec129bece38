/* rules_room.h - what the files of this room share (private to it). */
#ifndef MAYDECK_RULES_ROOM_H
#define MAYDECK_RULES_ROOM_H

#include "rules.h"

#include "check_list.h"

enum check_name {
#define CHECK_ENUM(name, severity, sentence, source) CHECK_##name,
    FAMILY_LIST(CHECK_ENUM)
    CHECK_LIST(CHECK_ENUM)
#undef CHECK_ENUM
    CHECK_COUNT
};

/* What a check works with. */
struct rule_run {
    const struct rules_input *in;
    struct arena *arena;
    struct problems *problems;
    bool *used;                /* one for each silence: it silenced something */
};

/* Tells that a check found something, or that it would have if it were not silenced
 * for this boat. The severity is the row's. */
void rule_tell(const struct rule_run *run, enum check_name name, struct place place,
               const char *remedy, const char *format, ...)
    __attribute__((format(printf, 5, 6)));

/* One family of checks: one function, called once a boat. */
typedef void rule_family(const struct rule_run *run);
rule_family identity_rules;
rule_family name_rules;
rule_family quotes_rules;
rule_family silence_rules;

/* The same, called once a base: there is no boat in the run. */
rule_family contact_rules;

/* For values that other YAML readers would not take for the text that it is: a note.
 * `key`: what stands before the value. */
void quotes_check(const struct rule_run *run, const char *key, const struct text_value *value);

/* MMSI: the ship's and those of handhelds; call sign. Private to identity_rules. */
void mmsi_rules(const struct rule_run *run);
void call_sign_rules(const struct rule_run *run);

#endif

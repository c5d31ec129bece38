/* reader.h - where what is recorded is read: on which part of a sheet, or in which report
 * (room: record). Each row of the tables of a boat's, a base's and a model's file names its
 * readers; what nobody reads is no field. */
#ifndef MAYDECK_READER_H
#define MAYDECK_READER_H

/* READER(name in C, word in lists, what it is). */
#define READER_LIST(READER) \
    READER(PLACE, "place", "the place on rows, plans and the safety plan, and how far it is") \
    READER(ROW, "rows", "the rows of gear under steps, or the table of seacocks") \
    READER(CASE, "steps", "which cards and steps she has, and what gear they offer") \
    READER(SAFETY, "safety_plan", "the lines of gear on the safety plan") \
    READER(PLAN, "plans", "the boat as she is drawn, and where tags stand in her") \
    READER(FIGURE, "figures", "figures on cards, or in `check --figures`") \
    READER(PANEL, "call_panel", "how to call, on the left of the call panel") \
    READER(SCRIPT, "scripts", "the words to say") \
    READER(DISTRESS, "distress_card", "the other blocks of the distress card") \
    READER(BERTH, "berth", "the line on what to do in a berth and at anchor") \
    READER(CONTACT, "contact", "the line of numbers to ring") \
    READER(LINES, "lines", "the base's own lines on a card") \
    READER(HEAD, "head", "title, boat and marks") \
    READER(FOOT, "footer", "dates and approvals at the foot") \
    READER(SPELL, "call_spell", "`call --spell`") \
    READER(CALL, "call", "`call`") \
    READER(CHECK, "check", "findings of `check`") \
    READER(DATES, "check_dates", "the dates that `check` lists") \
    READER(REST, "check_rest", "what `check` lists as recorded and on no card") \
    READER(DIFFERS, "check_differs", "`check --differs`, and what counts of a model") \
    READER(FILE, "file", "the properties of the printed file") \
    READER(RUN, "run", "which files and languages a run takes")

enum reader_bit {
#define READER_BIT(name, ...) READER_BIT_##name,
    READER_LIST(READER_BIT)
#undef READER_BIT
    READER_COUNT
};

/* Bits of the member `readers` of a row: READ_ROW | READ_SAFETY. */
enum reader {
#define READER_OF(name, ...) READ_##name = 1u << READER_BIT_##name,
    READER_LIST(READER_OF)
#undef READER_OF
    READ_NOWHERE = 0
};

/* The word of a reader in lists, and what it is. */
const char *reader_word(enum reader_bit reader);
const char *reader_about(enum reader_bit reader);

#endif

/* card_case.h - what the tests of composed cards and laid-out pages share: the
 * program's own words, sources and procedures, and records read from texts. */
#ifndef MAYDECK_CARD_CASE_H
#define MAYDECK_CARD_CASE_H

#include "arena.h"
#include "compose.h"
#include "face.h"
#include "layout.h"
#include "phrase.h"
#include "problem.h"
#include "procedure.h"

struct card_case {
    struct arena *arena;
    struct problems *problems;
    const struct authorities *authorities;
    const struct words *words;
    struct procedure_set procedures;   /* begins as the program's own, in order */
    const struct base_record *base;    /* begins as the specimen base */
    const struct boat *boat;
    struct date today;                 /* begins as 2026-11-25 */
};

/* A test of its own arena; fails where the program's own files are not sound. */
void case_begin(struct card_case *card_case);
void case_end(struct card_case *card_case);

/* Records from texts, or from files when the text is the name of one (it ends in
 * .yaml). The test fails where anything is wrong with them; problems told before a
 * boat was read are forgotten. */
const struct boat *case_boat(struct card_case *card_case, const char *text);
const struct base_record *case_base(struct card_case *card_case, const char *text);

/* The case's procedures become these, in this order: texts of case_procedure_text;
 * NULL-ended. */
void case_procedures(struct card_case *card_case, const char *const *texts);

/* What that set is composed from. */
/* The fingerprint of the case's procedure of that key. */
const char *case_fingerprint(const struct card_case *card_case, const char *key);

struct compose_input case_input(const struct card_case *card_case, bool draft);

/* The set of the case's boat; problems of an earlier set are forgotten. */
const struct sheet_set *case_compose(struct card_case *card_case, bool draft);

/* All pages of a set, sheet after sheet; NULL where one was not made. */
struct case_pages { const struct page *const *at; size_t count; };
struct case_pages case_pages(const struct card_case *card_case, const struct laid_set *laid);

/* The card of that key; the test fails where the set has none. */
const struct sheet *case_card(const struct sheet_set *set, const char *key);
const struct card_step *case_step(const struct sheet *card, const char *id);

/* What a row says, without marks: "Cockpit, PORT, by the wheel | [C1] Engine stop = hold STOP". */
const char *case_row(struct card_case *card_case, const struct card_row *row);

/* English without the lists that the proofreader judges by. */
const struct words *case_words_without_proof(struct card_case *card_case);

/* The phrase in the words of the case, which lack nothing; NULL for NULL. */
const char *case_said(struct card_case *card_case, const struct phrase *phrase);

/* The facts of that block, which the test may change: a copy, put in the place of those that
 * the sheet had (empty ones where it had none). What was given before is no more the sheet's. */
void *case_facts(struct arena *arena, struct sheet *sheet, enum block_key key);
#define FACTS(arena, sheet, type, key) ((struct type##_facts *)case_facts(arena, sheet, key))

/* How many blocks with such facts the sheet has. */
size_t case_blocks(const struct sheet *sheet, enum facts_kind facts);

/* The problem that says this; NULL: none does. */
const struct problem *case_problem(const struct card_case *card_case, const char *what);

/* All problems as printed, for messages of failed tests. */
const char *case_problems_text(const struct card_case *card_case);

/* A procedure of one caution, as case_procedures takes it: its steps and what else it has,
 * and their texts, as YAML of the files' own level. In messages the files are logic.yaml,
 * where `logic` begins in line 5, and words.yaml, where `texts` begins in line 5. */
const char *case_procedure_text(struct card_case *card_case, const char *key, int number,
                                const char *logic, const char *texts);

/* A boat's text: a monohull of 12 m with a full DSC set unless `radio` says
 * otherwise; gear and not_fitted as YAML lists. */
const char *case_boat_text(struct card_case *card_case, const char *radio, const char *gear,
                           const char *not_fitted);

/* Lines of a base's file: without the cards that a base may leave out. */
#define CORE_ALONE \
    "cards: {leave_out: [skipper_down, not_breathing, injury, illness, no_engine, aground, " \
    "swimmers, anchor_drags, steering_gone, mast_down, carbon_monoxide, collision, capsize, " \
    "lightning, heavy_weather]}\n"

/* The section of the radio that boats have unless the test says otherwise. */
#define CASE_RADIO \
    "radio:\n" \
    "  tag: E9\n" \
    "  call_sign: QTAB2\n" \
    "  mmsi: \"200014730\"\n" \
    "  mmsi_programmed: yes\n" \
    "  dsc: yes\n" \
    "  zone: navigation_station\n" \
    "  side: port\n" \
    "  spot: over the table\n" \
    "  power_switch: breaker VHF\n" \
    "  distress_key: Lift the red lid\n" \
    "  hold_s: 5\n" \
    "  nature_steps: [press MENU, turn to the nature]\n"

/* The program's faces; the test fails without them. */
struct faces *case_faces(struct card_case *card_case);

#endif

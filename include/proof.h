/* proof.h - every card proves that it can be read before it is drawn (room:
 * proof). The rules are one table, proof_rule; what is measured is the page as
 * it was laid out, against the card it was laid out from and the faces' own
 * numbers. Proofreading changes nothing and knows no PDF. */
#ifndef MAYDECK_PROOF_H
#define MAYDECK_PROOF_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"
#include "compose.h"
#include "face.h"
#include "page.h"
#include "text.h"

/* What a breach of a rule does. */
enum proof_severity {
    PROOF_ERROR,       /* the card is held: it is not printed */
    PROOF_NOTE,        /* more than three on a card hold it */
    PROOF_AIM          /* below what is aimed at, above the floor: told, no more */
};

/* Who decides a rule. */
enum proof_judge {
    PROOF_PAGE,        /* proof_page, of one page */
    PROOF_SET,         /* proof_set, of the pages of a boat together */
    PROOF_ELSEWHERE,   /* another part of the program or a test: `exempt` tells which */
    PROOF_PERSON       /* no program can: `exempt` tells why */
};

/* The rules, in the order of the table. */
enum proof_rule_key {
    RULE_SAFE_AREA, RULE_HOLE, RULE_CORNERS, RULE_TEXT_OVER_TEXT, RULE_TEXT_OVER_SIGN,
    RULE_SIGN_OVER_SIGN, RULE_MARKERS_APART, RULE_EDGE_CROSSED, RULE_BLOCKS_APART,
    RULE_WORDS_LOST, RULE_SIZE_FLOOR, RULE_SIZE_AIM, RULE_FACE_PROPORTIONS, RULE_TIERS,
    RULE_FACES, RULE_LEADING, RULE_MEASURE, RULE_TEXT_CONTRAST, RULE_LINE_CONTRAST,
    RULE_COLOURED_TEXT, RULE_RED_SHARE, RULE_SIGN_SHAPE, RULE_SIGN_WORD, RULE_STRIPE,
    RULE_COLOUR_BLIND, RULE_CAPITALS, RULE_ITALIC, RULE_TABS, RULE_HYPHEN, RULE_ONE_ACTION,
    RULE_VERB_FIRST, RULE_PASSIVE, RULE_NEGATIVE, RULE_SENTENCE_LONGEST, RULE_SENTENCE,
    RULE_HEADLINE, RULE_STEPS, RULE_NEVERS, RULE_EXITS, RULE_EXIT_CARD, RULE_TAG_RECORDED,
    RULE_ONE_TERM, RULE_GLOSSARY, RULE_GLYPHS, RULE_WARNING_SOURCE, RULE_LETHAL,
    RULE_MARKERS_INSIDE, RULE_MARKERS_ROWS, RULE_MARKER_SIDE, RULE_MARKER_LEVEL,
    RULE_MARK_NAMED, RULE_LEADERS, RULE_LIST_SIDE,
    RULE_LEADER_LEVEL, RULE_BANDS_ORDER, RULE_TURNED, RULE_INDEX, RULE_PLAN_LINES,
    RULE_PLAN_HEADER, RULE_SIGN_SIZE, RULE_BLOCKS_SET, RULE_PLAN_SAME, RULE_CHANNEL,
    RULE_DIGITS, RULE_POUCH, RULE_DATES,
    RULE_PLACEHOLDERS, RULE_BYTES, RULE_ORDER, RULE_PDF, RULE_RASTER, RULE_LINE_WIDTH,
    RULE_BLANKS, RULE_PLACE_FIRST, RULE_TAG_BESIDE, RULE_END_STATE, RULE_COLOUR_HANDLING,
    RULE_CONTRARY_SIGN, RULE_NOTES, RULE_FILM, RULE_TRIAL, RULE_COUNT
};

struct proof_rule {
    const char *id;            /* G1 ... G35, A41, A59, P4; T: a trial */
    const char *sentence;      /* what a card must be */
    const char *limit;         /* in words */
    const char *remedy;        /* how to put it right */
    enum proof_severity severity;
    enum proof_judge judge;
    const char *exempt;        /* what is exempt and why; who else judges; "" */
    const char *source;        /* where the rule and its number come from */
};
const struct proof_rule *proof_rule(enum proof_rule_key key);

/* Can the rule be judged in the language of these words? One that hangs on words of a
 * language is not, where its file lists none. */
bool proof_rule_judges(enum proof_rule_key key, const struct words *words);

struct proof_finding {
    enum proof_rule_key rule;
    const char *page;          /* its id, such as engine_fire */
    const char *measured;
    struct area where;         /* place on the page; all 0: the card as a whole */
    struct place origin;       /* the line the words came from; line 0: none */
};

struct proof_report {
    const struct proof_finding *findings;
    size_t count;
    size_t errors, notes, aims;
    size_t measured;           /* things that were measured against a rule */
    const struct words *words; /* of the language of the page; NULL: not laid out */
};

/* Judges one page by all rules of PROOF_PAGE, against its sheet. */
void proof_page(const struct page *page, const struct faces *faces, struct arena *arena,
                struct proof_report *out);

/* Judges each page; then whether the pages of a sheet say all that the whole says, but for
 * what yielded; and the pages together by the rules of PROOF_SET. Gives one report a page,
 * sheet after sheet (of a page that was not laid out an empty one). */
const struct proof_report *proof_set(const struct laid_set *laid, const struct faces *faces,
                                     struct arena *arena);

/* The audit of one card as text: a line with the result and how many things were
 * measured, then what was found by rule, with what the rule asks and how to mend it; and
 * which rules are not judged in the language of the card. */
void proof_print(const struct proof_report *report, const char *boat, const char *sheet,
                 struct text_builder *out);

/* One line: what no program can judge, and people must. */
void proof_people_print(struct text_builder *out);

#endif

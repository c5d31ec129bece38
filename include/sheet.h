/* sheet.h - what is said on one sheet, before it has a size or a paper: blocks of facts in
 * order, each part with the line of the record or procedure it came from (made by compose,
 * read by layout, proof and explain; room: compose). Texts may hold **bold** parts. */
#ifndef MAYDECK_SHEET_H
#define MAYDECK_SHEET_H

#include <stdbool.h>
#include <stddef.h>

#include "block.h"
#include "boat.h"
#include "call_part.h"
#include "form.h"
#include "procedure.h"
#include "radio.h"
#include "sheet_index.h"
#include "symbol.h"
#include "words.h"

/* A text and the line of the record or procedure it came from. */
struct card_text { const char *text; struct place origin; };

/* A piece of gear of a row, or several that are alike. */
struct row_item {
    const struct item_kind *kind;
    const char *const *tags;
    size_t tag_count;
    const char *name;             /* Grab bag; with a spot behind it "Grab bag," */
    const char *lesser;           /* what stands in its place where it yields; NULL: it stands */
    int yields;
    const char *spot;             /* its own, where gear of the row is at several; "" */
    const char *end;              /* = **across pipe: SHUT**: how it is left, by this step; "" */
    struct place origin;
};

/* Gear of a step at one place: of one zone, side and level. */
struct card_row {
    const char *place;            /* Cockpit, PORT; with a spot behind it "Cockpit, PORT," */
    const char *spot;             /* by the wheel: of all its gear; "" */
    const struct row_item *items; /* one at least */
    size_t item_count;
    struct place origin;          /* of its first item */
};

/* The openings of one side, from the bow aft, a row a place; an opening has an end only where it
 * differs from what the head says of all. */
struct opening_group {
    enum side side;               /* SIDE_NONE: it is not recorded */
    const char *head;             /* **PORT:** across = **SHUT** */
    const struct card_row *rows;
    size_t row_count;
};

/* What goes first where a page has no room for all: 0 must stand, the highest goes first. */
enum {
    YIELDS_NEVER,
    YIELDS_CONTACT,               /* the contact line, which the distress card has too */
    YIELDS_URGENCY,               /* the milder call's words, which the distress card has too */
    YIELDS_BERTH_SAY,             /* what to say in a berth: on all cards of a set, or on none */
    YIELDS_POSITION,              /* in the call panel, where the position is read */
    YIELDS_SECONDS,               /* how long an extinguisher lasts: its weight takes their place */
    YIELDS_FIGURE                 /* of the first figure of a card; one more for each after it */
};

/* The same of the hints on the distress card; that of its fuller page goes first. */
enum {
    YIELDS_POSITION_UNSENT = YIELDS_NEVER + 1, YIELDS_SECOND_STATION,
    YIELDS_POSITION_KEYS, YIELDS_SPARE_AERIAL, YIELDS_URGENCY_KEYS
};

/* A figure in words, under the step it serves. */
struct card_figure {
    const char *id;               /* key of figure_find */
    const char *step;             /* id of the step */
    const char *text;
    int yields;
    struct place origin;
};

struct card_step {
    const char *id;
    int number;
    struct card_text headline;
    /* What kills there, a line each. */
    const struct card_text *lethal;
    size_t lethal_count;
    /* What must be so for gear of its rows to be worked, a line a piece: before the rows. */
    const struct card_text *conditions;
    size_t condition_count;
    const struct card_row *rows;
    size_t row_count;
    const struct opening_group *table;     /* port and starboard before the others */
    size_t table_count;
    const struct item_kind *table_kind;
    const struct card_figure *figures;     /* those of the sheet's that serve it */
    size_t figure_count;
    const struct procedure_step *step;
    const struct step_case *taken; /* NULL: the step's own words */
};

struct card_warning {
    const char *text;
    enum symbol_key symbol;       /* of a never; SYMBOL_NONE: it has none */
    const char *tag;              /* source tag, such as MAIB */
    const struct authority *source;    /* whose tag it is; NULL: of the base */
    struct place origin;
};

/* Where a tag stands on the boat: millimetres aft of the bow and to starboard
 * of the centreline, of the real boat. */
struct marker {
    const char *tag;
    const char *name;             /* of its zone: Cockpit locker */
    const struct zone *zone;
    enum side side;
    enum side drawn;              /* the side on which a plan draws it: its own; where none is
                                     recorded that of its spot's words (each side), or of all its
                                     neighbours */
    enum level level;
    int32_t x_mm, y_mm;
    int32_t from_mm, to_mm;       /* aft of the bow: within these it lies for certain */
    bool exact;                   /* from `at:`, not from the zone */
    const char *told;             /* tag and place, for one who does not see the plan; NULL of
                                     a whole place */
    struct place origin;
};

/* The words round the plan. */
enum plan_word {
    PLAN_BOW, PLAN_STERN, PLAN_PORT, PLAN_PORT_HINT, PLAN_STARBOARD, PLAN_STARBOARD_HINT,
    PLAN_FACING, PLAN_FACING_STERN, PLAN_DECK, PLAN_BELOW,
    PLAN_HEAD_BELOW, PLAN_HEAD_DECK, PLAN_HEAD_HULLS, PLAN_HEAD_DECK_SALOON, PLAN_HEAD_WHOLE,
    PLAN_WORD_COUNT
};

/* A zone that the plan names as a landmark. */
struct plan_zone {
    const struct zone *zone;
    const char *name;
    enum side side;               /* of a room in a hull: which; SIDE_NONE: in the middle */
    bool yields;                  /* where the plan has no room for its tags and for this name */
};

/* ---- the safety plan ---- */

/* A line of a list: a piece of gear, or where the cards hang. */
struct plan_row {
    const struct item_kind *kind; /* NULL: the cards hang there, and it has no tag */
    struct marker marker;         /* its tag, and where it is */
    const char *name;
    const char *detail;           /* the spot; what a seacock is for; "" for none */
};

/* A place of the boat, one side of a zone on one level, and what is there. */
struct plan_place {
    const char *title;            /* Cockpit locker, PORT */
    const char *zone_name;        /* Cockpit locker */
    struct marker marker;         /* its zone, side and level; how far aft its zone counts on
                                     this boat; no tag */
    const struct plan_row *rows;  /* from the bow aft */
    size_t row_count;
    size_t part;                  /* of a zone with more rows than a page holds: which part of it */
};

/* Which part of a boat a safety plan shows. */
enum plan_part { PLAN_PART_WHOLE, PLAN_PART_DECK, PLAN_PART_BELOW };
#define PLAN_PART_COUNT 3
#define PLAN_PAGE_SEEN PLAN_PART_COUNT    /* its page that shows the index of cards instead */

#define SHEET_PARTS 12    /* that any kind of sheet may have, with the whole */

/* Does that part show what lies at this level? */
bool plan_part_shows(enum plan_part part, enum level level);

/* ---- facts of the blocks; block.h tells which block has which ---- */

/* The band at the head. */
struct title_facts {
    const char *title, *boat;     /* upper case */
    const char *number;           /* Card 3P */
    enum symbol_key symbol;       /* beside the title */
    enum sign_class stripe;       /* fire, rescue, control, warning */
};

/* How one knows what has happened. */
struct signs_facts {
    const char *word;             /* WHEN, before them; "" where it does not belong */
    const char *signs;
};

/* Who calls when, a text each case: **ALONE:** call after step 4. */
#define CASES_MOST 3
struct cases_facts { struct card_text items[CASES_MOST]; size_t count; };

struct steps_facts {
    const struct card_step *items;
    size_t count;
    const struct card_figure *figures;     /* all of them, the first to have room first */
    size_t figure_count;
};

struct decision_facts {
    const char *ask, *yes, *no;   /* whole sentences, "After step 5: ..." included */
    const char *no_lesser;        /* instead of `no`, where YIELDS_URGENCY does; or NULL */
    const char *yes_word, *no_word;
    const char *yes_card, *no_card;   /* procedures that the exits lead to, or NULL */
    struct place origin;
};

/* Nevers, cautions, lines of the base: the signal word stands before each. */
struct warnings_facts {
    const char *word;
    const struct card_warning *items;
    size_t count;
};

struct contact_facts {
    const char *left, *right;
    struct place origin;
};

struct call_facts {
    bool silent;                  /* nobody can call from it: there is no script to say */
    const char *title, *station;  /* the panel's head, left and right */
    const struct card_text *operate;
    size_t operate_count, yielding;   /* the line that yields as YIELDS_POSITION, from 1; 0: none */
    const struct card_text *acts; /* those of them that are numbered, without their number: the
                                     first is that of index `act_first` */
    size_t act_count, act_first;
    const struct script *script;
    const struct script *lesser;  /* where YIELDS_URGENCY does: of the graver call; NULL: never */
    struct place origin;
};

/* What the record tells about calling besides: a line before the words of a section, where the
 * page has room for it. */
struct card_hint {
    const char *id;               /* of what: "radio second_station" */
    const char *text;
    int yields;
    struct place origin;
};

/* A titled block of the distress card. */
struct section_facts {
    const char *title;            /* "": it has none */
    const struct card_text *lines;
    const char *const *lead;      /* of each line the word that the set shows, which stands
                                     before it; NULL: lines have none */
    size_t line_count;
    const struct script *script;
    const char *note;             /* a line before the words, or NULL */
    const struct card_hint *hints;     /* behind the note */
    size_t hint_count;
    const char *end_note;         /* a line after them, or NULL */
};

/* The boat as she is drawn. */
struct plan_facts {
    const struct marker *markers;
    size_t marker_count;
    const char *words[PLAN_WORD_COUNT];    /* see enum plan_word */
    const char *told;             /* what the picture is, for one who does not see it */
    const struct plan_zone *landmarks;
    size_t landmark_count;
    const enum zone_key *hatched; /* where it burns or leaks, or gas lies: nobody enters */
    size_t hatched_count;
};

/* The lists of a safety plan. */
struct places_facts {
    enum plan_part part;          /* that these pages of it show */
    int32_t from, to;             /* the same of her length, in thousandths from the bow */
    const struct plan_place *places;   /* from the bow aft, port before starboard */
    size_t count;
    enum facing facing;           /* which way its reader looks; FACING_NONE: not recorded */
};

/* What the pages of a sheet are called where it takes several: A, B ... of its number. */
#define SHEET_PAGES_MOST 26
struct pages_facts {
    const char *numbers[SHEET_PAGES_MOST];     /* Card 1A */
    /* Of pages that show that part (enum plan_part, enum call_part); NULL: the sheet's own. */
    const char *titles[SHEET_PARTS];
    const struct cases_facts *call_lines[SHEET_PARTS];
    /* Of the first page of a distress call: by the index of the page with the urgency call, and
     * of that with all else. NULL: it has none of its own. */
    const struct cases_facts *first_lines[CALL_REST_MOST][CALL_REST_MOST + 1];
    /* In the place of the sheet's signs, "" or NULL for those: of two pages, one a part, and of
     * so many as the index, less one. */
    const char *signs_of_two[SHEET_PARTS];
    const char *signs_of_many[SHEET_PARTS][SHEET_PAGES_MOST];
};

struct legend_facts { const char *words[3]; };    /* of the classes F, E, C */

/* Gear as a plain list, for sheets that are no more than that. */
struct rows_facts {
    const struct card_row *rows;
    size_t count;
};

struct footer_facts {
    const char *left[2];
    const char *dates;            /* of the gear, as they are told today */
    const char *first_date;       /* the first of them, "" if none has one */
    size_t undated;               /* pieces that need a date and have none */
    const char *code_word, *code; /* check code; both "" where the kind of sheet has none */
    const char *printed;          /* "printed 2026-11-25" */
    const char *measure;          /* "100 mm", beside a line of that length */
};

union block_facts {
    const struct card_text *text;
    const struct cases_facts *cases;
    const struct title_facts *title;
    const struct signs_facts *signs;
    const struct steps_facts *steps;
    const struct decision_facts *decision;
    const struct warnings_facts *warnings;
    const struct contact_facts *contact;
    const struct call_facts *call;
    const struct section_facts *section;
    const struct plan_facts *plan;
    const struct places_facts *places;
    const struct index_facts *index;
    const struct seen_facts *seen;
    const struct legend_facts *legend;
    const struct rows_facts *rows;
    const struct form_facts *form;
    const struct views_facts *views;
    const struct stickers_facts *stickers;
    const struct pages_facts *pages;
    const struct footer_facts *footer;
};

struct block {
    enum block_key key;
    union block_facts facts;      /* the member is that of facts_kind_of(key) */
    int yields;                   /* the block as a whole: 0 must stand, see YIELDS_NEVER */
};

/* ---- the sheet ---- */

struct sheet {
    enum sheet_kind kind;
    const char *id;               /* engine_fire, engine_fire_port */
    const char *procedure_key;
    enum zone_key space;          /* zone of `per`, or none */
    const char *number;           /* 3, or 3P and 3S of two engine spaces */
    const char *page;             /* A, B ... of the part of a sheet that stands on one of its
                                     pages; "" of one, and of the whole */
    const char *name;             /* for messages: 3P ENGINE FIRE, PORT ENGINE */
    const char *language;
    const struct words *words;    /* that it is said in */
    const struct block *blocks;   /* no key twice */
    size_t block_count;
    const struct boat *boat;
    const struct procedure *procedure;
    bool held;                    /* something it needs is not recorded */
    bool unsafe;                  /* it leads into its own hazard, or is not the text
                                     that the base wants: in no draft either */
    struct place origin;
};

/* NULL: the sheet has no such block. */
const struct block *sheet_block(const struct sheet *sheet, enum block_key key);

/* The facts of a block. Where the sheet has no such block they are empty: nothing is
 * counted, words are "". */
const struct card_text *sheet_text(const struct sheet *sheet, enum block_key key);
const struct title_facts *sheet_title(const struct sheet *sheet);
const struct signs_facts *sheet_signs(const struct sheet *sheet);
const struct cases_facts *sheet_cases(const struct sheet *sheet);
const struct steps_facts *sheet_steps(const struct sheet *sheet);
const struct decision_facts *sheet_decision(const struct sheet *sheet);
const struct warnings_facts *sheet_warnings(const struct sheet *sheet, enum block_key key);
const struct contact_facts *sheet_contact(const struct sheet *sheet);
const struct call_facts *sheet_call(const struct sheet *sheet);
const struct plan_facts *sheet_plan(const struct sheet *sheet);
const struct places_facts *sheet_places(const struct sheet *sheet);
const struct index_facts *sheet_index(const struct sheet *sheet);
const struct seen_facts *sheet_seen(const struct sheet *sheet);
const struct legend_facts *sheet_legend(const struct sheet *sheet);
const struct rows_facts *sheet_rows(const struct sheet *sheet);
const struct form_facts *sheet_form(const struct sheet *sheet);
const struct views_facts *sheet_views(const struct sheet *sheet);
const struct stickers_facts *sheet_stickers(const struct sheet *sheet);
const struct footer_facts *sheet_footer(const struct sheet *sheet);
/* NULL: it has one page at most; it has no such section. */
const struct pages_facts *sheet_pages(const struct sheet *sheet);
const struct section_facts *sheet_section(const struct sheet *sheet, enum block_key key);

#endif

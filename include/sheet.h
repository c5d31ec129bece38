/* sheet.h - what is said on one sheet, before it has a size or a paper: blocks of facts in
 * order, each part with the line of the record or procedure it came from (made by compose,
 * read by layout, proof and explain; room: compose). Texts may hold **bold** parts. */
#ifndef MAYDECK_SHEET_H
#define MAYDECK_SHEET_H

#include <stdbool.h>
#include <stddef.h>

#include "block.h"
#include "boat.h"
#include "procedure.h"
#include "radio.h"
#include "symbol.h"
#include "words.h"

/* A text and the line of the record or procedure it came from. */
struct card_text {
    const char *text;
    struct place origin;
};

/* One line under a step: symbol, tags, name, place and handling. */
struct card_row {
    const struct item_kind *kind;
    const char *const *tags;
    size_t tag_count;
    const char *name;
    const char *lesser;           /* what stands in its place where it yields; NULL: it stands */
    int yields;
    const char *where;
    struct place origin;
};

/* A line of the table of openings: port on the left, starboard on the right. A
 * cell with no tag and no name is empty. With `head` not NULL the line is the head of
 * those that follow, which lie on neither side, and its cells are empty. */
struct table_cell {
    const char *tag;
    const char *name;             /* Galley, sink drain: turn left = shut */
    size_t handling_at;           /* where in it the handling begins; 0: it has none */
    struct place origin;
};
#define TABLE_CELLS 2
struct table_row {
    const char *head;
    struct table_cell cells[TABLE_CELLS];
};

/* What goes first where a page has no room for all: 0 must stand, the highest goes first. */
enum {
    YIELDS_NEVER,
    YIELDS_SECONDS,               /* how long an extinguisher lasts: its weight takes their place */
    YIELDS_FIGURE                 /* of the first figure of a card; one more for each after it */
};

/* The same of the hints on the distress card; that of its narrow column, where there is more
 * room, goes last. */
enum {
    YIELDS_CENTRE_CALL = YIELDS_NEVER + 1, YIELDS_POSITION_UNSENT, YIELDS_SECOND_STATION,
    YIELDS_POSITION_KEYS, YIELDS_URGENCY_KEYS, YIELDS_SPARE_AERIAL
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
    const struct card_row *rows;
    size_t row_count;
    const struct table_row *table;
    size_t table_count;
    const struct item_kind *table_kind;
    const char *table_note;       /* handling that is the same for all: "all: across = shut" */
    const char *table_heads[TABLE_CELLS];
    const struct card_figure *figures;     /* those of the sheet's that serve it */
    size_t figure_count;
    const struct procedure_step *step;
    const struct step_case *taken; /* NULL: the step's own words */
};

/* Rows of a step as the budget counts them: gear, figures, and two lines of its table,
 * which are set closer and are shut one like the other, as one. */
size_t card_step_rows(const struct card_step *step);

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
    const struct zone *zone;
    enum side side;
    enum level level;
    int32_t x_mm, y_mm;
    bool exact;                   /* from `at:`, not from the zone */
    struct place origin;
};

/* The words round the plan. */
enum plan_word {
    PLAN_BOW, PLAN_PORT, PLAN_PORT_HINT, PLAN_STARBOARD, PLAN_STARBOARD_HINT, PLAN_FACING,
    PLAN_DECK, PLAN_BELOW, PLAN_WORD_COUNT
};

/* A zone that the plan names as a landmark. */
struct plan_zone { const struct zone *zone; const char *name; };

/* ---- the safety plan ---- */

/* A line of a label: gear of one kind at one place. Chips carry its tags, runs of
 * them as one: "C11–C14". */
struct plan_row {
    const struct item_kind *kind;
    const char *const *chips;
    size_t chip_count;
    const char *name;
    const char *detail;           /* the spot; what seacocks are for; "" for none */
    struct place origin;          /* of its first piece */
};

/* A place of the boat and all gear there: tags together on the plan, one label. */
struct plan_place {
    const char *title;            /* Cockpit locker, port */
    struct marker marker;         /* where; its tag is empty */
    const struct plan_row *rows;
    size_t row_count;
};

/* Which part of a boat a safety plan shows. */
enum plan_part { PLAN_PART_WHOLE, PLAN_PART_DECK, PLAN_PART_BELOW };
#define PLAN_PART_COUNT 3

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

struct steps_facts {
    const struct card_step *items;
    size_t count;
    const struct card_figure *figures;     /* all of them, the first to have room first */
    size_t figure_count;
};

struct decision_facts {
    const char *ask, *yes, *no;   /* whole sentences, "After step 5: ..." included */
    const char *yes_word, *no_word;
    const char *yes_card, *no_card;   /* procedures that the exits lead to, or NULL */
    struct place origin;
};

/* Nevers, cautions, local rules: the signal word stands before each. */
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
    size_t operate_count;
    const struct script *script;
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
    const char *title;
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
    const struct plan_zone *landmarks;
    size_t landmark_count;
};

/* The labels of a safety plan. */
struct places_facts {
    enum plan_part part;          /* that these pages of it show */
    const struct plan_place *places;   /* from the bow aft, port before starboard */
    size_t count;
    bool here_given;              /* the record says where the cards hang */
    struct marker here;
    enum facing facing;
    const char *here_word, *here_words;
};

/* What the pages of a sheet are called where it takes several: A, B ... of its number. */
#define SHEET_PAGES_MOST 26
struct pages_facts {
    const char *numbers[SHEET_PAGES_MOST];     /* Card 1A */
    const char *titles[PLAN_PART_COUNT];       /* of pages that show that part; NULL: the
                                                  sheet's own */
    /* In the place of the sheet's signs, "" for those: of two pages, one a part, and of so
     * many as the index, less one. */
    const char *signs_of_two[PLAN_PART_COUNT];
    const char *signs_of_many[PLAN_PART_COUNT][SHEET_PAGES_MOST];
    const struct plan_zone *landmarks[PLAN_PART_COUNT];
    size_t landmark_counts[PLAN_PART_COUNT];
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
};

union block_facts {
    const struct card_text *text;
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
    const struct legend_facts *legend;
    const struct rows_facts *rows;
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
    struct place origin;
};

/* NULL: the sheet has no such block. */
const struct block *sheet_block(const struct sheet *sheet, enum block_key key);

/* The facts of a block. Where the sheet has no such block they are empty: nothing is
 * counted, words are "". */
const struct card_text *sheet_text(const struct sheet *sheet, enum block_key key);
const struct title_facts *sheet_title(const struct sheet *sheet);
const struct signs_facts *sheet_signs(const struct sheet *sheet);
const struct steps_facts *sheet_steps(const struct sheet *sheet);
const struct decision_facts *sheet_decision(const struct sheet *sheet);
const struct warnings_facts *sheet_warnings(const struct sheet *sheet, enum block_key key);
const struct contact_facts *sheet_contact(const struct sheet *sheet);
const struct call_facts *sheet_call(const struct sheet *sheet);
const struct plan_facts *sheet_plan(const struct sheet *sheet);
const struct places_facts *sheet_places(const struct sheet *sheet);
const struct legend_facts *sheet_legend(const struct sheet *sheet);
const struct rows_facts *sheet_rows(const struct sheet *sheet);
const struct footer_facts *sheet_footer(const struct sheet *sheet);

/* NULL: it has one page at most. */
const struct pages_facts *sheet_pages(const struct sheet *sheet);

/* NULL: the sheet has no such section. */
const struct section_facts *sheet_section(const struct sheet *sheet, enum block_key key);

/* ---- every fact of a block, in order ---- */

enum fact_kind {
    FACT_PRINTED,     /* words that stand on the page, and are in the check code */
    FACT_SHOWN,       /* the same, but they hang on the page's room or on the day: in no code */
    FACT_KNOWN        /* in the code, and not on the page in these words */
};

struct fact {
    enum fact_kind kind;
    const char *name;             /* what it is: headline, tag, place */
    const char *text;             /* never NULL */
    bool joined;                  /* it stands directly behind the fact before it */
    struct place origin;          /* line 0: that of its block */
};

/* Gives each fact to `visit`, in the order in which they are read; `of` is for the visitor.
 * Whoever needs all that a sheet says asks here: what is new in a block then is in the check
 * code, in dumps and before the proofreader at once. A fact lives until `visit` returns, its
 * text as long as `arena` or the sheet. */
void block_visit(const struct block *block, struct arena *arena,
                 void (*visit)(void *of, const struct fact *fact), void *of);

#endif

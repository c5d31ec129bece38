/* card.h - a composed card: what is said, in order, each part with the line it
 * came from; no sizes and no coordinates on paper (made by compose, read by
 * layout). Texts may hold **bold** parts. */
#ifndef MAYDECK_CARD_H
#define MAYDECK_CARD_H

#include <stdbool.h>
#include <stddef.h>

#include "block.h"
#include "boat.h"
#include "date.h"
#include "problem.h"
#include "procedure.h"
#include "radio.h"
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
    const char *timed, *weighed;  /* the name with how long it lasts, and with its weight */
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

/* A figure in words, under the step or in the section it serves. */
struct card_figure {
    const char *id;               /* key of figure_find */
    const char *step;             /* id of the step; NULL: in a section of its own */
    const char *text;
    struct place origin;
};

/* Rows of a card as card_step_rows counts them, and figures among them. */
#define CARD_ROWS_MOST 14
#define CARD_FIGURES_MOST 2

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
    const struct card_figure *figures;
    size_t figure_count;
    const struct procedure_step *step;
    const struct step_case *taken; /* NULL: the step's own words */
};

/* Rows of a step as the budget counts them: gear, figures, and two lines of its table,
 * which are set closer and are shut one like the other, as one. */
size_t card_step_rows(const struct card_step *step);

struct card_decision {
    bool given;
    const char *ask, *yes, *no;   /* whole sentences, "After step 5: ..." included */
    const char *yes_card, *no_card;   /* procedures that the exits lead to, or NULL */
    struct place origin;
};

struct card_warning {
    const char *text;
    enum symbol_key symbol;       /* of a never; SYMBOL_NONE: it has none */
    const char *tag;              /* source tag, such as MAIB */
    struct place origin;
};

struct card_call {
    bool given;
    bool silent;                  /* nobody can call from it: there is no script to say */
    const char *title, *station;  /* the panel's head, left and right */
    const struct card_text *operate;
    size_t operate_count;
    const struct script *script;
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

/* A boat with more lines than PLAN_ROWS_MOST has two safety plans, deck and below. */
#define PLAN_ROWS_MOST 25

/* Plans that one part may have. */
#define PLAN_PAGES_MOST 4

struct safety_plan {
    enum plan_part part;
    int number, of;               /* of the plans of this part, from the bow aft */
    const struct plan_place *places;   /* from the bow aft, port before starboard */
    size_t place_count;
    bool here_given;              /* the record says where the cards hang */
    struct marker here;
    enum facing facing;
    const char *here_word, *here_words;
    const char *legend[3];        /* of the classes F, E, C */
    const char *sources;          /* "**Sources** ..."; "" on all but the last plan */
};

/* A titled block of the distress card. */
struct card_section {
    enum block_key key;
    const char *title;
    const struct card_text *lines;
    size_t line_count;
    const struct script *script;
    const char *note;             /* a line before the words, or NULL */
    const char *end_note;         /* a line after them, or NULL */
};

struct card {
    const char *key;              /* engine_fire, engine_fire_port */
    const char *procedure_key;
    enum zone_key space;          /* zone of `per`, or none */
    const char *title;            /* upper case */
    const char *name;             /* for messages: 3P ENGINE FIRE, PORT ENGINE */
    const char *subject;          /* how other cards name it */
    enum symbol_key symbol;       /* beside the title */
    enum sign_class stripe;       /* fire, rescue, control, warning */
    bool distress;
    const char *number;           /* 3, or 3P and 3S of two engine spaces */
    const char *page;             /* A, B ... of several pages of one number; "" of one */
    const char *number_text;      /* Card 3P */
    const char *boat;             /* upper case */
    const char *language;
    const struct words *words;    /* that it is said in */
    const char *when_word;
    const char *signs;
    const char *call_line;
    const struct card_step *steps;
    size_t step_count;
    /* All figures that belong here; those that stand on the card, and those that find no
     * room. */
    const struct card_figure *figures_known;
    size_t figures_known_count;
    const struct card_figure *figures;
    size_t figure_count;
    const struct card_figure *left_out;
    size_t left_out_count;
    struct card_decision decision;
    const char *yes_word, *no_word, *never_word, *caution_word, *local_word;
    const struct card_warning *nevers;
    size_t never_count;
    const struct card_warning *cautions;
    size_t caution_count;
    const struct card_warning *local_rules;
    size_t local_rule_count;
    const char *contact_left, *contact_right;
    struct place contact_origin;
    struct card_call call;
    const struct card_section *sections;
    size_t section_count;
    const struct safety_plan *safety;  /* the safety plan's own blocks; NULL on other cards */
    const struct marker *markers;
    size_t marker_count;
    /* What the plan says: see enum plan_word. */
    const char *plan_words[PLAN_WORD_COUNT];
    const struct plan_zone *plan_zones;
    size_t plan_zone_count;
    const char *mark;             /* SPECIMEN ... in the strips; "" if none */
    const char *footer_left[2];
    const char *footer_right;     /* without code and date */
    const char *gear_date;        /* the first date of its gear, "" if none has one */
    size_t gear_undated;          /* pieces that need a date and have none */
    const char *code_word, *code; /* check code */
    const char *printed;          /* "printed 2026-11-25" */
    const struct boat *boat_record;
    const struct procedure *procedure;
    bool held;                    /* something it needs is not recorded */
    struct place origin;
};

/* A procedure that this boat does not need, and why. */
struct card_not_hers { const char *name, *reason; };

struct card_set {
    const struct card *const *cards;
    size_t count;
    size_t held;
    /* Items told as not recorded at all, since they hold cards back. */
    const enum item_key *unrecorded;
    size_t unrecorded_count;
    const struct card_not_hers *not_hers;
    size_t not_hers_count;
};

/* What a set is composed from. */
struct compose_input {
    const struct boat *boat;
    const struct base_record *base;
    const struct procedure_set *procedures;
    const struct authorities *authorities;
    const struct words *words;
    struct date today;            /* printed, and for approvals */
    bool draft;                   /* cards that lack facts are composed too, marked */
};

/* All cards of the boat's set, in order. A card that needs a fact which the
 * record lacks has `held` set; each such fact is told once with the cards it
 * holds and the YAML to paste. NULL only when nothing could be composed. */
const struct card_set *compose_set(const struct compose_input *input, struct arena *arena,
                                   struct problems *problems);

/* How many figures a card may carry at most, where it does not fit its page with
 * more. With 0 the rows of extinguishers carry none either. */
struct figure_limit { const char *card; size_t most; };

/* What a try of the pages taught: cards with room for fewer figures, and how many
 * pages the gear of each part of the safety plan takes (0: not tried). */
struct set_limits {
    const struct figure_limit *figures;
    size_t figure_count;
    int plan_pages[PLAN_PART_COUNT];
};

/* The same, with fewer figures on these cards; a card that is not among them keeps
 * to CARD_FIGURES_MOST. A boat that one page does not hold is told deck and below. A part
 * of more pages is cut across, from the bow aft, so that what stands abreast stays
 * together; where it cannot be cut so often it has fewer. */
const struct card_set *compose_set_limited(const struct compose_input *input,
                                           const struct set_limits *limits,
                                           struct arena *arena, struct problems *problems);

/* Notes: each field that a figure of these cards lacks, with its place, and each
 * figure that found no room. */
void figure_notes(const struct compose_input *input, const struct card_set *set,
                  struct arena *arena, struct problems *problems);

/* A card of the boat's set by its names. */
struct card_name { const char *key, *procedure_key, *name; };

/* All of them in order; none is composed. */
const struct card_name *card_names(const struct compose_input *input, struct arena *arena,
                                   size_t *count);

/* What a card says on the radio. */
struct card_saying {
    struct card_call call;
    const struct card_section *sections;   /* of the distress card; some have a script */
    size_t section_count;
};

/* Composes that alone of the card with this key, which must be one of card_names. A script
 * that cannot be said is NULL, with problems. */
struct card_saying card_saying(const struct compose_input *input, const char *key,
                               struct arena *arena, struct problems *problems);

/* A script of the distress card in full; with a nature, the MAYDAY with that
 * phrase. Also what boats without a fixed set say. NULL (with problems) when it
 * cannot be said. */
const struct script *call_script(const struct compose_input *input, enum script_form form,
                                 const struct nature *nature, struct arena *arena,
                                 struct problems *problems);

/* May a digital distress alert leave this boat? True also where the record does not say
 * of her fixed set. */
bool boat_can_alert(const struct boat *boat);

/* Name and call sign spelled, MMSI in threes: a line each, what is not recorded or
 * not given left out. NULL (with problems) when the name cannot be said. */
const char *call_spelling(const struct boat *boat, struct arena *arena,
                          struct problems *problems);

/* Cards that base.yaml names in approvals and local rules must be cards of the
 * procedures: an error each with the nearest one. False when one is not. */
bool base_cards_check(const struct base_record *base, const struct procedure_set *procedures,
                      struct arena *arena, struct problems *problems);

/* Notes what the safety plan of this boat cannot show for want of a record. */
void safety_plan_notes(const struct boat *boat, struct problems *problems);

/* The check code of a composed card: CRC-32 of its own facts and language as seven
 * Crockford base-32 signs and a check sign, such as 0TJ8-GE2D. Nothing of other cards but
 * their fixed numbers is in it, nothing that hangs on today's date but approvals, and not
 * what finds room on the page. Of a safety plan in several pages `card` is the whole. */
const char *check_code(const struct card *card, struct arena *arena);

/* The code of any canonical bytes; tests use the published answers. */
const char *check_code_of(const unsigned char *bytes, size_t length, struct arena *arena);

/* The composed card as stable text. */
void card_dump(const struct card *card, struct text_builder *out);

#endif

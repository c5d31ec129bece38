/* compose_room.h - what the files of this room share: the state of composing one
 * boat's set. Private to src/compose. */
#ifndef MAYDECK_COMPOSE_ROOM_H
#define MAYDECK_COMPOSE_ROOM_H

#include "asked.h"
#include "compose.h"
#include "gear_date.h"
#include "phrase.h"
#include "judging.h"

/* A fact that a card asks for and the record lacks. */
struct missing {
    enum item_key item;       /* the item it is about */
    enum gear_field fact;   /* none: whether it is fitted; else what to record */
    enum zone_key space;    /* none: at all; else for that engine space */
    struct place place;     /* the item's entry, or the boat file */
    bool helps;             /* gear that only helps: the cards are printed without it */
    const char **cards;     /* names of the cards it holds, or that go without it */
    size_t card_count, card_room;
};

/* One card as it is being made, or planned. */
struct slot {
    const struct procedure *procedure;
    enum zone_key space;    /* the zone of `per`, or none */
    const char *key, *title, *name;
    const char *number;     /* 3, 3P */
    bool undecided;         /* it is not known whether the boat needs the card: held */
};

struct composing {
    const struct compose_input *in;
    struct arena *arena;
    struct problems *problems;
    struct slot *slots;
    size_t slot_count, slot_room;
    struct sheet_not_hers *not_hers;
    size_t not_hers_count, not_hers_room;
    const struct slot *slot;          /* the card being made */
    bool told_by_handheld;            /* it is about vapour: one calls by handheld from deck */
    struct missing *missing;
    size_t missing_count, missing_room;
    size_t proposed[3];               /* tags proposed so far, by class */
    struct asked_list asked;          /* what the set asks of the record */
    bool held;                        /* the card being made lacks a fact */
    bool phone_told, breaths_told;    /* that the base has no number for a berth, no breaths */
    bool drafted;                     /* it says that something is not recorded */
    bool engine_stopped;              /* a step of it before the one being made stops one */
    struct block *blocks;             /* of the sheet being made */
    size_t block_count, block_room;
    struct marker *markers;
    size_t marker_count, marker_room;
    struct gear_dates dates;          /* of the card's gear */
    struct footer_facts *footer;      /* of the sheet being made */
};

/* condition_fitted.c */

/* Is what keeps an answer from being known noted as missing? First a condition is judged
 * without; only where its answer is not known it is judged again, with. */
enum noting { NOTE_NOTHING, NOTE_MISSING };

/* Is the item fitted, for the engines that the card asks of? */
enum truth fitted_judge(struct composing *composing, enum item_key item, enum noting noting);

/* Does this card concern this piece of gear? On a card of one engine space the
 * other engine's gear does not. UNKNOWN: the record does not say. */
enum truth gear_concerns(const struct composing *composing, const struct equipment *gear);

/* missing.c */

/* Notes that the card being made needs `fact` of `item` (none: whether it is
 * fitted). */
void missing_note(struct composing *composing, enum item_key item, enum gear_field fact,
                  struct place place);

/* The same: whether the engine of that space has the item. */
void missing_note_for(struct composing *composing, enum item_key item, enum zone_key space,
                      struct place place);

/* Notes that the card being made goes without the item, of which nothing is recorded. */
void missing_help_note(struct composing *composing, enum item_key item);

/* missing_survey.c */

/* What becomes of cards that lack what the test finds: ": the cards X; Y wait, and the card Z
 * goes without"; a note where none waits. */
struct lack_effect {
    enum severity severity;
    const char *words;
};
typedef bool lack_test(const struct composing *composing, const struct missing *missing);
struct lack_effect effect_of_lack(struct composing *composing, lack_test *is_lack);

/* Does it lack because nobody has looked yet, by the boat's own file? */
bool is_unsurveyed(const struct composing *composing, const struct missing *missing);

/* Tells all that is not surveyed in one problem, with the cards that wait for it. */
void unsurveyed_tell(struct composing *composing);

/* missing_walk.c */

/* Does it lack because nobody has walked round her since her model was changed? */
bool is_unwalked(const struct composing *composing, const struct missing *missing);

/* Tells all that does not count for that in one problem, with the cards that wait for it. */
void unwalked_tell(struct composing *composing);

/* Tells every missing fact once, with the cards it holds and the YAML to paste. */
void missing_tell(struct composing *composing);

/* The items among them for which an entry is proposed, each as often as one is. */
const enum item_key *missing_items(const struct composing *composing, size_t *count);

/* rows.c */

/* The gear that a step's words ask for. */
struct step_gear {
    const struct item_uses *uses, *also;
    const struct condition *when;        /* of the case that was taken, or NULL */
    const struct condition *undecided;   /* what kept a case from being taken, or NULL */
    enum reach within;
};

/* The rows of that gear, a row a place, and what must be so for it to be worked; first what
 * keeps `undecided` from being decided, as NOT RECORDED. True when one of them is not reached
 * from deck. */
bool rows_make(struct composing *composing, const struct step_gear *wants,
               struct card_step *step);

/* handling.c */

/* "across: SHUT": how the gear is brought into that state, and the state; the state alone
 * where that is not recorded, which is told. Of a state that the headline says, such as take
 * or wear, and of STATE_ANY how it is used; NULL where nothing of that is recorded. */
const struct phrase *gear_handling(struct composing *composing, const struct equipment *gear,
                                   enum end_state state);

/* The handling alone, without the state; NULL: that is not recorded, which is told. */
const struct phrase *gear_handling_known(struct composing *composing,
                                         const struct equipment *gear, enum end_state state);

/* "SHUT"; NULL of a state that the headline says. */
const struct phrase *state_said(const struct composing *composing, enum end_state state);

/* "Chart table, port, over the table" of a place; the zone may be NULL, the spot too. */
const struct phrase *place_phrase(const struct composing *composing, const struct zone *zone,
                                  enum side side, const struct text_value *spot);

/* row_words.c: "Chart table, PORT" where one stands to work the gear; the spot there, what it
 * is behind; "= **across: SHUT**", how a step leaves it that wants this of
 * it; "only with engine running", what must be so for that. NULL: nothing of that is recorded. */
const struct phrase *row_place_phrase(struct composing *composing, const struct equipment *gear);
const struct phrase *row_spot_phrase(const struct composing *composing,
                                     const struct equipment *gear);
const struct phrase *row_end_phrase(struct composing *composing, const struct equipment *gear,
                             enum end_state state);
const struct phrase *row_condition_phrase(const struct composing *composing,
                                   const struct equipment *gear, enum end_state state);

/* Does it lie in the space that this card is about? */
bool gear_is_inside_here(const struct composing *composing, const struct equipment *gear);

/* Where its handle is kept, and what must be so for a hand to work it; NULL: none is recorded. */
const struct phrase *handle_phrase(const struct composing *composing,
                                   const struct equipment *gear);
const struct phrase *only_phrase(const struct composing *composing,
                                 const struct equipment *gear);

/* What is told of how long an extinguisher lasts: the seconds on its label, or its weight,
 * which stands for them where the label's are not recorded. */
enum capacity_told { CAPACITY_SECONDS, CAPACITY_WEIGHT };

/* "8 lifejackets", "Raft, 8 persons", or the name given in the record. */
const struct phrase *gear_name(struct composing *composing, const struct equipment *gear,
                               size_t pieces, enum capacity_told told);

/* The same without its capacity, of that many pieces where it has no name of its own. */
const struct phrase *gear_called(const struct composing *composing,
                                 const struct equipment *gear, size_t pieces);

/* gear_told.c: what else is recorded of the gear that a crew can use: all of it, for the safety
 * plan; and what stops or misleads a hand, for the rows of steps. NULL: nothing is. */
const struct phrase *gear_told(const struct composing *composing, const struct equipment *gear);
const struct phrase *gear_warned(const struct composing *composing, const struct equipment *gear);

/* drafted.c: NULL on a final card; a draft that says one of these is marked */

/* "NOT RECORDED" */
const struct phrase *unrecorded(struct composing *composing);

/* The phrase; where it is NULL, what a draft says. */
const struct phrase *recorded_or_not(struct composing *composing, const struct phrase *recorded);

/* "EPIRB NOT RECORDED", where the record does not tell whether there is one. */
const struct phrase *item_unrecorded(struct composing *composing, enum item_key item);

/* The words in a script for a call sign or MMSI that is not recorded. */
const char *script_unrecorded(struct composing *composing);

/* "?" where a place has two sides and nothing tells which, no spot either. */
const struct phrase *side_unrecorded(struct composing *composing, const struct equipment *gear,
                                     const struct text_value *spot);

/* The place where one works the gear; in a draft with the side that it lacks. */
const struct phrase *gear_place_phrase(struct composing *composing, const struct equipment *gear,
                                       const struct text_value *spot);

/* For gear whose handling that leads to the state must be recorded; and for a raft, how many it
 * takes. */
const struct phrase *handling_unrecorded(struct composing *composing,
                                         const struct equipment *gear, enum end_state state);
const struct phrase *persons_unrecorded(struct composing *composing,
                                        const struct equipment *gear);

/* seacock_table.c */
void table_make(struct composing *composing, enum item_key item, enum end_state state,
                struct card_step *step);

/* steps.c */
void steps_make(struct composing *composing, struct sheet *sheet);
const struct card_step *step_by_id(const struct steps_facts *steps, const char *id);

/* figure_rows.c: figures under the steps they serve. Needs all steps. */
void figures_make(struct composing *composing, struct card_step *items,
                  struct steps_facts *steps);

/* phrase_said.c: in the words of the card; "" for NULL */
const char *phrase_said(const struct composing *composing, const struct phrase *phrase);

/* Where the text that is said of these stands. */
struct place said_place(const struct composing *composing, const struct text_value *text);

/* A word that stands alone. */
const struct phrase *word_alone(const struct composing *composing, enum word word);
/* said.c */

/* The text with each {id} replaced: by the number of this card's step of that id, or of the
 * set's card of that key. A name that is neither holds the card. */
const struct phrase *numbers_fill(struct composing *composing, const struct sheet *sheet,
                                  const struct text_value *text);

/* The card's number for those who look it up; with one for each engine space that of the
 * same space, else all of theirs: "3P / 3S"; NULL when the boat has none. */
const struct phrase *card_numbers(struct composing *composing, const char *procedure_key);

/* boxes.c: signs, call line, decision, nevers, cautions, local rules */
void boxes_make(struct composing *composing, struct sheet *sheet);

/* The signs of the procedure, joined; with the word before them, or NULL. */
void signs_make(struct composing *composing, struct sheet *sheet, const struct phrase *word,
                const struct phrase *signs);
const struct phrase *signs_joined(struct composing *composing, const struct sheet *sheet);

void warnings_make(struct composing *composing, struct sheet *sheet);    /* those alone */

/* The source whose tag is printed beside a warning: its first that still stands;
 * NULL when it has none. */
const struct authority *basis_authority(const struct composing *composing,
                                        const struct basis *basis);

/* call_panel.c: the distress card's panel, which leaves the nature to be filled in */
void general_call_make(struct composing *composing, struct sheet *sheet);

/* call_ladder.c: "Cockpit, port, at the wheel": the second handset; NULL: none is recorded */
const struct phrase *second_station_place(struct composing *composing);

/* call_script.c */

/* Neither a fixed set nor a handheld, as the record declares. */
bool no_radio_aboard(const struct boat *boat);

/* What the distress card's scripts are made from. */
struct script_request call_request(const struct boat *boat, enum script_form form,
                                   const struct nature *nature);

/* safety_places.c */

/* Where a piece of gear stands on the boat: a marker with its tag. The second: where one
 * stands to work it. */
struct marker worked_marker_of(const struct boat *boat, const struct equipment *gear);
struct marker marker_of(const struct boat *boat, const struct equipment *gear);

/* The boat's gear by places, from the bow aft, and where the cards hang (NULL: nobody told). */
const struct plan_place *plan_places(struct composing *composing, const struct marker *here,
                                     size_t *count);

/* "Cockpit locker, PORT". */
const char *plan_place_title(struct composing *composing, const struct marker *marker);

/* safety_index.c: where on the boat those items are that save lives, as far as she has them. */
void index_make(struct composing *composing, struct sheet *sheet);

/* "3 ENGINE FIRE": how messages name a card. */
const char *named_card(struct arena *arena, const char *number, const char *title);

/* compose_set.c */

/* Which cards the boat has, as slots in their order. */
void slots_make(struct composing *composing);

struct slot *slot_add(struct composing *composing, const struct procedure *procedure,
                      enum zone_key space);

/* sheet_make.c: one sheet */

struct sheet_list { const struct sheet *const *at; size_t count; };

/* The composers, see sheet_kinds.h: each adds the blocks that its kind has beside those of
 * every sheet. `others` are the set's sheets. */
#define KIND_COMPOSERS(name, key, source, composer, ...) \
    void composer(struct composing *composing, struct sheet *sheet, \
                  const struct sheet_list *others);
SHEET_KIND_LIST(KIND_COMPOSERS)
#undef KIND_COMPOSERS

/* Of the blocks only what is said on the radio; none of kinds that call nobody. */
void card_call_compose(struct composing *composing, struct sheet *sheet);
bool card_has_milder_call(struct composing *composing);    /* beside the graver one */
void distress_call_compose(struct composing *composing, struct sheet *sheet);
void no_call_compose(struct composing *composing, struct sheet *sheet);

/* How sheets of a kind are composed: columns of its row in sheet_kinds.h. */
struct kind_composing {
    void (*compose)(struct composing *composing, struct sheet *sheet,
                    const struct sheet_list *others);
    void (*calls)(struct composing *composing, struct sheet *sheet);
    enum sheet_turn turn;
    enum sheet_code code;
    enum sheet_marks marks;
};

/* Composes the sheet of that slot as of that kind; and as of its own, that of its procedure. */
void sheet_make_as(struct composing *composing, const struct kind_composing *kind,
                   const struct slot *slot, const struct sheet_list *others,
                   struct sheet *sheet);
void sheet_make(struct composing *composing, const struct slot *slot,
                const struct sheet_list *others, struct sheet *sheet);

/* Composes of the sheet of that slot only what is said on the radio. */
void sheet_calls_make(struct composing *composing, const struct slot *slot, struct sheet *sheet);

enum sheet_turn sheet_turn_of(enum sheet_kind kind);

/* The card being made is that of the slot; its sheet begins too: its names, no blocks, and
 * nothing noted yet of what it needs. */
void slot_take(struct composing *composing, const struct slot *slot);
void sheet_begin(struct composing *composing, const struct slot *slot, struct sheet *sheet);

/* Adds the blocks of its kind to a sheet that was begun. */
void kind_compose(struct composing *composing, struct sheet *sheet,
                  const struct sheet_list *others);

/* Adds a block. Its facts, to be set at once, are the member that facts_kind_of tells. */
union block_facts *block_add(struct composing *composing, struct sheet *sheet,
                             enum block_key key);

/* The same with a text; none is added for "". */
void text_add_block(struct composing *composing, struct sheet *sheet, enum block_key key,
                    struct card_text text);

/* The line that says who calls when, its cases parted by " | " in what is said; none is added
 * for "". */
const struct cases_facts *cases_of(struct arena *arena, struct card_text said);
void cases_add_block(struct composing *composing, struct sheet *sheet, struct card_text said);

/* surround.c: what every sheet carries: title band and footer; and what most do */
void surround_make(struct composing *composing, struct sheet *sheet);

/* The boat with the tags of all gear that was added to the sheet so far; bow up. Gives its
 * facts. */
struct plan_facts *plan_make(struct composing *composing, struct sheet *sheet);

/* "3B": what the page of that index is called where a sheet takes several; and the facts of
 * them all, numbered, in a block, for the composer to add what else the pages say. */
const char *page_number(struct composing *composing, size_t index);
struct pages_facts *pages_add(struct composing *composing, struct sheet *sheet);

/* Of a sheet whose blocks all stand, in their order. */
void code_make(struct composing *composing, const struct sheet *sheet);
void mark_make(struct composing *composing, struct sheet *sheet);
void contact_make(struct composing *composing, struct sheet *sheet);

/* spot_words.c: where in its zone a thing lies, by the words of its spot; hundredths of the boat's
 * length from the bow. The spot may be NULL. */
struct stretch { int from, to; };
struct stretch spot_stretch(const struct composing *composing, const struct zone *zone,
                            const struct text_value *spot);

/* Do they tell that it is on both sides: "coaming, each side"? */
bool spot_on_both_sides(const struct composing *composing, const struct text_value *spot);

/* markers.c: this gear is on the sheet: its tag belongs on the plan, if the sheet has one, and
 * its dates in the footer. */
void marker_add(struct composing *composing, const struct equipment *gear);

const struct slot *slot_of(const struct composing *composing, const char *procedure_key);

#endif

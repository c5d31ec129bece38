/* register_room.h - what the files of the room register share: how rows are written, and the
 * lines of what a card said. Private to src/register. */
#ifndef MAYDECK_REGISTER_ROOM_H
#define MAYDECK_REGISTER_ROOM_H

#include "register.h"

#define REGISTER_DELIMITER ','

extern const char *const register_event_words[];    /* NULL-ended, each at its value less one */
extern const char *const register_column_words[];

/* ---- what a card said: its lines ---- */

/* Each line of a content is the word of its kind and texts, with tabs between:
 *     block  WORD                        what follows stands in that block
 *     says   NAME TEXT                   a fact of the block, in the check code
 *     step   NUMBER ID CASE              of the sheet's steps: which case of it was taken
 *     gear   TAG FIELD VALUE             a fact of gear that the sheet names by its tag
 *     fact   SUBJECT FIELD VALUE         a fact of the boat, the radio, the base or the sheet
 *     heard  SUBJECT FIELD VALUE         that fact in the words of the radio
 * Texts hold no tab and no line end. */
#define CONTENT_LINE_LIST(X) \
    X(CONTENT_BLOCK, "block") X(CONTENT_SAYS, "says") X(CONTENT_STEP, "step") \
    X(CONTENT_GEAR, "gear") X(CONTENT_FACT, "fact") X(CONTENT_HEARD, "heard")
enum content_line { CONTENT_NONE, CONTENT_LINE_LIST(CHOICE_NAME) CONTENT_COUNT };
extern const char *const content_line_words[];

/* Subjects and fields of facts that have no key of their own in a file. */
#define CONTENT_SUBJECT_BOAT "boat"
#define CONTENT_SUBJECT_RADIO "radio"
#define CONTENT_SUBJECT_BASE "base"
#define CONTENT_SUBJECT_SHEET "sheet"
#define KEPT_FACT_LIST(X) \
    X(KEPT_ITEM, "item") X(KEPT_PLACE, "place") X(KEPT_GOOD_UNTIL, "good until") \
    X(KEPT_TAGS, "tags") X(KEPT_TEXTS, "texts") X(KEPT_APPROVAL, "approval")
enum kept_fact { KEPT_NONE, KEPT_FACT_LIST(CHOICE_NAME) KEPT_COUNT };
extern const char *const kept_fact_words[];

/* Names of facts of blocks (include/fact.h) that belong to gear or to a step. */
#define SAID_LIST(X) \
    X(SAID_STEP, "step") X(SAID_PLACE, "place") X(SAID_SPOT, "spot") \
    X(SAID_OWN_SPOT, "own spot") X(SAID_FULL_NAME, "full name") \
    X(SAID_LESSER_NAME, "lesser name") X(SAID_TAG, "tag") X(SAID_END, "end") \
    X(SAID_MARKER, "marker") X(SAID_ZONE, "zone") X(SAID_ZONE_NAME, "zone's name") \
    X(SAID_LEVEL, "level") X(SAID_AFT, "mm aft") X(SAID_ABEAM, "mm to starboard") \
    X(SAID_DETAIL, "detail") X(SAID_ENTRY, "entry") X(SAID_FIGURE_OF, "figure of") \
    X(SAID_FIGURE, "figure known") X(SAID_FIRST_DATE, "first date") X(SAID_UNDATED, "undated") \
    X(SAID_WORD, "word") X(SAID_SOURCE, "source")
enum said_as { SAID_OTHER, SAID_LIST(CHOICE_NAME) SAID_COUNT };
extern const char *const said_words[];

/* One fact of a block, of one piece of gear where it is of several. */
struct said_line {
    const char *block;         /* its word */
    const char *step;          /* id of the step that it is of; "": of none */
    enum said_as said;
    const char *name, *text;   /* without marks, and without a comma at its end */
    const char *tag;           /* of the gear that it tells of; "": of none */
    bool explained;            /* some reason tells why it is another */
};

struct content_step { const char *number, *id, *taken; };
struct content_fact {
    const char *subject, *field, *value;
    bool heard;
};

struct content {
    struct said_line *lines;
    size_t line_count;
    struct content_step *steps;
    size_t step_count;
    struct content_fact *gear, *facts;
    size_t gear_count, fact_count;
};

/* What register_content gave, taken apart; lines of kinds that are not known are left out. */
struct content content_read(const char *text, struct arena *arena);

/* NULL: there is no such fact. */
const char *content_value(const struct content_fact *facts, size_t count, const char *subject,
                          const char *field);
const char *gear_value(const struct content *content, const char *tag, enum kept_fact field);
const char *sheet_value(const struct content *content, enum kept_fact field);

/* Does the word stand in the text, with no letter or digit beside it? */
bool word_stands_in(const char *text, const char *word);

/* The same at one place of the text; and is it one at which a word may begin? */
bool word_stands_at(const char *text, const char *at, const char *word);
bool word_may_begin(const char *text, const char *at);

/* ---- what is another ---- */

/* Two contents of one card, and what was found so far. */
struct comparing {
    struct content old, now;
    struct said_line **gone, **come;   /* lines of one that the other has not */
    size_t gone_count, come_count;
    const char **reasons;
    size_t count, room;
    const char **losses;       /* those among the reasons that tell of what is recorded no longer */
    size_t loss_count, loss_room;
    struct arena *arena;
};

void reason_add(struct comparing *comparing, const char *format, ...)
    __attribute__((format(printf, 2, 3)));

/* The same of a fact that is recorded no longer. */
void reason_add_lost(struct comparing *comparing, const char *format, ...)
    __attribute__((format(printf, 2, 3)));

/* Which lines a function looks for; `of` is its own. */
typedef bool line_takes(const struct said_line *line, const void *of);

/* Is one of those that are another such a line? And is one that nothing explains yet? */
bool lines_have(const struct comparing *comparing, line_takes *takes, const void *of);
bool lines_unexplained(const struct comparing *comparing, line_takes *takes, const void *of);

/* All such lines are explained. */
void lines_explain(struct comparing *comparing, line_takes *takes, const void *of);

/* Of the lines that nothing explains: how each side reads, where each has one at most, as
 * `: "old" -> "new"`; "" where they are more. */
const char *lines_shown(const struct comparing *comparing, line_takes *takes, const void *of);

/* Signs that stand for no letter or digit left out, in capitals. */
const char *folded_letters(const char *text, struct arena *arena);

/* Are the texts of the procedure others? */
bool texts_differ(const struct comparing *comparing);

/* Blocks that words_compare and the others tell apart. */
bool line_in_block(const struct said_line *line, const void *block);

/* changes_gear.c: gear by its tag, and the dates that the foot tells. */
void gear_compare(struct comparing *comparing);
void dates_compare(struct comparing *comparing);

/* changes_facts.c: the boat, her radio, the base; the approval; and facts that stand on no line
 * as they are recorded, where something is not explained yet. */
void facts_compare(struct comparing *comparing);
void approval_compare(struct comparing *comparing);
void choices_compare(struct comparing *comparing);

/* changes_words.c: steps and figures; and all other words, after which nothing is left
 * unexplained. */
void steps_compare(struct comparing *comparing);
void words_compare(struct comparing *comparing);

#endif

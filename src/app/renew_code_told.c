/* renew_code_told.c - what was found of check codes, as text or as JSON (room: app). */
#include "renew.h"

#include "choice.h"
#include "told.h"

/* Another document than of what hangs: see renew_told.c. */
#define CODES_FORMAT "maydeck-codes-1"

static const char *const code_state_words[] = {CODE_STATE_LIST(CHOICE_WORD) NULL};

/* ---- as text ---- */

static void event_text_add(const struct register_row *row, struct text_builder *out)
{
    const char *day = date_text(out->arena, row->date);
    text_add_format(out, "%s: %s, %s, %s: ", row->code, row->boat, row->name, row->language);
    if (row->event == EVENT_PRINTED)
        text_add_format(out, "printed %s on %s\n", day, row->paper);
    else
        text_add_format(out, "%s %s, %s, by %s\n",
                        row->event == EVENT_HUNG ? "hung" : "taken down", day, row->place,
                        row->by);
}

static void code_card_text_add(const char *code, const struct code_card *card,
                               struct text_builder *out)
{
    const char *const *reasons = card->reasons.at;
    text_add_format(out, "%s: %s, %s: ", code, card->boat, card->name);
    if (card->state == CODE_CURRENT)
        text_add_format(out, "current, it says what the record says today%s\n",
                        card->printed ? "" : "; the register has no such print");
    else if (card->state == CODE_OLD_HELD)
        text_add(out, "OLD, and the card is held back today\n");
    else
        text_add_format(out, "OLD, replace it%s%s\n",
                        card->now == NULL ? "" : "; the card has now ",
                        card->now == NULL ? "" : card->now);
    for (size_t i = 0; i < card->reasons.count; i++)
        text_add_format(out, "    %s\n", reasons[i]);
}

static void code_text_add(const struct code_told *told, struct text_builder *out)
{
    for (size_t i = 0; i < told->row_count; i++)
        event_text_add(told->rows[i], out);
    for (size_t i = 0; i < told->count; i++)
        code_card_text_add(told->code, &told->cards[i], out);
    if (told->count == 0 && told->row_count > 0)
        text_add_format(out, "%s: OLD, take it down: no boat of the base has that card today\n",
                        told->code);
}

void codes_text_print(const struct code_told *codes, size_t count, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    for (size_t i = 0; i < count; i++)
        code_text_add(&codes[i], &out);
    told_print(&out);
}

/* ---- as JSON ---- */

struct code_card_object { const char *state; struct code_card of; };

#define AT(member) offsetof(struct code_card_object, member)
static const struct json_member code_card_members[] = {
    {"boat", JSON_TEXT, AT(of.boat), NULL, NULL, NULL},
    {"card", JSON_TEXT, AT(of.card), NULL, NULL, "its id"},
    {"name", JSON_TEXT, AT(of.name), NULL, NULL, NULL},
    {"state", JSON_TEXT, AT(state), NULL, NULL, "current, old, or old_held_back"},
    {"now", JSON_TEXT_OR_NULL, AT(of.now), NULL, NULL, "the code of today, where it is another"},
    {"printed", JSON_FLAG, AT(of.printed), NULL, NULL, "the register has the print"},
    {"reasons", JSON_TEXTS, AT(of.reasons), NULL, NULL, "what is another now"},
};
#undef AT
static const struct json_shape code_card_shape = {"card", sizeof(struct code_card_object),
                                                  MEMBERS_OF(code_card_members)};

struct event_object { const char *event, *date, *boat, *card, *language, *paper, *place, *by; };

#define AT(member) offsetof(struct event_object, member)
static const struct json_member event_members[] = {
    {"event", JSON_TEXT, AT(event), NULL, NULL, "printed, hung, or taken_down"},
    {"date", JSON_TEXT, AT(date), NULL, NULL, NULL},
    {"boat", JSON_TEXT, AT(boat), NULL, NULL, NULL},
    {"card", JSON_TEXT, AT(card), NULL, NULL, "its id"},
    {"language", JSON_TEXT, AT(language), NULL, NULL, NULL},
    {"paper", JSON_TEXT_OR_NULL, AT(paper), NULL, NULL, NULL},
    {"place", JSON_TEXT_OR_NULL, AT(place), NULL, NULL, NULL},
    {"by", JSON_TEXT_OR_NULL, AT(by), NULL, NULL, NULL},
};
#undef AT
static const struct json_shape event_shape = {"event", sizeof(struct event_object),
                                              MEMBERS_OF(event_members)};

struct code_object {
    const char *code;
    bool known, current;
    struct json_list cards, events;
};

#define AT(member) offsetof(struct code_object, member)
static const struct json_member code_object_members[] = {
    {"code", JSON_TEXT, AT(code), NULL, NULL, NULL},
    {"known", JSON_FLAG, AT(known), NULL, NULL, "the register or a card of today has it"},
    {"current", JSON_FLAG, AT(current), NULL, NULL, "a card of today has it as it was printed"},
    {"cards", JSON_LIST, AT(cards), &code_card_shape, NULL, "of today, that have or had it"},
    {"events", JSON_LIST, AT(events), &event_shape, NULL, "of the register"},
};
#undef AT
static const struct json_shape code_object_shape = {"code", sizeof(struct code_object),
                                                    MEMBERS_OF(code_object_members)};

struct codes_object {
    const char *format, *base, *date;
    struct json_list codes;
};

#define AT(member) offsetof(struct codes_object, member)
static const struct json_member codes_members[] = {
    {"format", JSON_TEXT, AT(format), NULL, NULL, NULL},
    {"base", JSON_TEXT, AT(base), NULL, NULL, "the folder as it was named"},
    {"date", JSON_TEXT, AT(date), NULL, NULL, "today"},
    {"codes", JSON_LIST, AT(codes), &code_object_shape, NULL, NULL},
};
#undef AT
static const struct json_shape codes_shape = {"codes", sizeof(struct codes_object),
                                              MEMBERS_OF(codes_members)};

static const char *told_or_null(const char *text)
{
    return text_empty(text) ? NULL : text;
}

static struct event_object event_object_of(const struct register_row *row, struct arena *arena)
{
    const char *event = row->event == EVENT_PRINTED ? "printed"
                        : row->event == EVENT_HUNG  ? "hung"
                                                    : "taken_down";
    return (struct event_object){event, date_text(arena, row->date), row->boat, row->card,
                                 row->language, told_or_null(row->paper),
                                 told_or_null(row->place), told_or_null(row->by)};
}

static struct code_object code_object_of(const struct code_told *told, struct arena *arena)
{
    struct code_card_object *cards = arena_array(arena, told->count + 1, sizeof *cards);
    struct event_object *events = arena_array(arena, told->row_count + 1, sizeof *events);
    for (size_t i = 0; i < told->count; i++)
        cards[i] = (struct code_card_object){
            choice_word(code_state_words, told->cards[i].state), told->cards[i]};
    for (size_t i = 0; i < told->row_count; i++)
        events[i] = event_object_of(told->rows[i], arena);
    return (struct code_object){told->code, told->count + told->row_count > 0, told->current,
                                {cards, told->count}, {events, told->row_count}};
}

void codes_json_print(const struct renewing *renewing, const struct code_told *codes,
                      size_t count)
{
    struct arena *arena = renewing->fleet->arena;
    struct code_object *rows = arena_array(arena, count + 1, sizeof *rows);
    for (size_t i = 0; i < count; i++)
        rows[i] = code_object_of(&codes[i], arena);
    const struct codes_object whole = {CODES_FORMAT, renewing->options->base,
                                       date_text(arena, renewing->options->today),
                                       {rows, count}};
    json_print(&codes_shape, &whole, arena);
}

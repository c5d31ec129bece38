/* list_cards.c - the cards that boats may have, and the natures of distress, with what cards
 * call them (room: app). Looks at no boat. */
#include "lists.h"

#include "fingerprint.h"
#include "radio.h"
#include "reasons.h"

/* ---- cards ---- */

struct card_listed {
    int number;
    const char *card, *title, *hung, *boats, *each, *fingerprint;
};

#define AT(member) offsetof(struct card_listed, member)
static const struct json_member listed_card_members[] = {
    {"number", JSON_NUMBER_OR_NULL, AT(number), NULL, NULL, "its own for good"},
    {"card", JSON_TEXT, AT(card), NULL, NULL, "as --card takes it"},
    {"title", JSON_TEXT, AT(title), NULL, NULL, NULL},
    {"hung", JSON_TEXT, AT(hung), NULL, NULL,
     "always, unless leave_out names it, or only if add does"},
    {"fingerprint", JSON_TEXT, AT(fingerprint), NULL, NULL,
     "of its text in this language, as approvals name it"},
    {"each", JSON_TEXT, AT(each), NULL, NULL, "of what there is one each"},
    {"boats", JSON_TEXT, AT(boats), NULL, NULL, "which boats have it"},
};
#undef AT
static const struct json_shape listed_card_shape = {
    "card", sizeof(struct card_listed), listed_card_members,
    sizeof listed_card_members / sizeof *listed_card_members};

/* What the section cards of a base's or a boat's file can say of it. */
static const char *hung_words(const struct procedure *procedure)
{
    if (procedure->core.answer == ANSWER_YES)
        return "always";
    return procedure->optional.answer == ANSWER_YES ? "if added" : "unless left out";
}

struct list_made list_cards(const struct listing *listing)
{
    const char *language = words_language(listing->words);
    const struct procedure_set *set = listing->procedures;
    struct card_listed *rows = arena_array(listing->arena, set->count, sizeof *rows);
    for (size_t i = 0; i < set->count; i++) {
        const struct procedure *procedure = set->rows[i];
        rows[i] = (struct card_listed){
            .number = (int)(procedure->number.milli / 1000), .card = procedure->key.text,
            .title = text_for(&procedure->title, language),
            .hung = hung_words(procedure),
            .fingerprint = procedure_fingerprint(procedure, listing->authorities,
                                                 listing->words, listing->arena),
            .each = procedure->per.value == PER_ENGINE_SPACE ? "engine space" : "boat",
            .boats = procedure->when == NULL
                         ? "all" : condition_words(procedure->when, listing->arena)};
    }
    return (struct list_made){&listed_card_shape, {rows, set->count}};
}

/* ---- natures ---- */

struct nature_listed {
    const char *nature, *printed, *said;
};

#define AT(member) offsetof(struct nature_listed, member)
static const struct json_member nature_members[] = {
    {"nature", JSON_TEXT, AT(nature), NULL, NULL, "as --nature takes it"},
    {"printed", JSON_TEXT, AT(printed), NULL, NULL, "what cards call it"},
    {"said", JSON_TEXT, AT(said), NULL, NULL, "on the radio"},
};
#undef AT
static const struct json_shape nature_shape = {
    "nature", sizeof(struct nature_listed), nature_members,
    sizeof nature_members / sizeof *nature_members};

struct list_made list_natures(const struct listing *listing)
{
    struct nature_listed *rows = arena_array(listing->arena, NATURE_COUNT, sizeof *rows);
    size_t count = 0;
    for (enum nature_key key = NATURE_NONE + 1; key < NATURE_COUNT; key++) {
        const struct nature *nature = nature_of(key);
        rows[count++] = (struct nature_listed){
            .nature = choice_word(nature_words, key),
            .printed = words_get(listing->words, nature->brief), .said = nature->phrase};
    }
    return (struct list_made){&nature_shape, {rows, count}};
}

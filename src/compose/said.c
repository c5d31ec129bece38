/* said.c - words with cases, and the numbers of steps and cards in words (room: compose). */
#include "berth.h"
#include "card_set.h"

#include "boat_facts.h"
#include "promise.h"
#include "text.h"

const struct said *said_take(struct composing *composing, const struct said_list *list)
{
    for (size_t i = 0; i < list->count; i++) {
        enum truth truth = condition_judge(composing, list->items[i].when);
        if (truth != TRUTH_NO)
            return truth == TRUTH_YES ? &list->items[i] : NULL;
    }
    return NULL;
}

/* Both cards of one engine space, or one of them of none. */
static bool same_space(const struct composing *composing, const struct slot *slot)
{
    return slot->space == ZONE_NONE || composing->slot->space == ZONE_NONE ||
           slot->space == composing->slot->space;
}

const struct phrase *card_numbers(struct composing *composing, const char *procedure_key)
{
    const struct phrase **numbers = arena_array(composing->arena, composing->slot_count,
                                                sizeof *numbers);
    size_t count = 0;
    for (size_t i = 0; i < composing->slot_count; i++)
        if (text_equal(composing->slots[i].procedure->key.text, procedure_key) &&
            same_space(composing, &composing->slots[i]))
            numbers[count++] = phrase_verbatim(composing->arena, composing->slots[i].number);
    return phrase_list(composing->arena, WORD_JOIN_SLASH, numbers, count);
}

/* NULL: neither a step of this card nor a card of the set. */
static const struct phrase *number_named(struct composing *composing, const struct sheet *sheet,
                                         const char *name)
{
    const struct card_step *step = step_by_id(sheet_steps(sheet), name);
    return step != NULL ? phrase_number(composing->arena, step->number)
                        : card_numbers(composing, name);
}

/* A fact that is not recorded holds the card: words must ask for it first. */
static const struct phrase *boat_name_unrecorded(struct composing *composing,
                                                 const struct sheet *sheet, enum boat_fact fact)
{
    const struct field *field = boat_fact_row(fact);
    enum severity severity = composing->in->draft ? SEVERITY_DEFICIENCY : SEVERITY_HELD;
    composing->held = true;
    problem_add(composing->problems, severity, composing->in->boat->place,
                text_format(composing->arena, "look at the boat, then record %s (%s)", field->key,
                            field->about),
                "%s of boat is not recorded: the card %s says it", field->key, sheet->name);
    return word_alone(composing, WORD_NOT_RECORDED);
}

static const struct phrase *boat_name_phrase(struct composing *composing,
                                             const struct sheet *sheet, enum boat_name name)
{
    const struct boat_facts *facts = &composing->in->boat->facts;
    switch (name) {
    case BOAT_NAME_DRAUGHT:
        return facts->draught_m.given
                   ? phrase_verbatim(composing->arena, facts->draught_m.text)
                   : boat_name_unrecorded(composing, sheet, BOAT_draught_m);
    case BOAT_NAME_LAY_DOWN:
        return facts->lay_down_place.text != NULL
                   ? phrase_text(composing->arena, &facts->lay_down_place)
                   : boat_name_unrecorded(composing, sheet, BOAT_lay_down_place);
    case BOAT_NAME_NONE:
    case BOAT_NAME_COUNT:
        break;
    }
    promise_unreached();
}

/* A fact of the base or of the boat; NULL: the name is of neither. */
static const struct phrase *fact_named(struct composing *composing, const struct sheet *sheet,
                                       const char *name)
{
    const enum base_name of_base = choice_find(base_name_words, name);
    const enum boat_name of_boat = choice_find(boat_name_words, name);
    if (of_base != BASE_NAME_NONE)
        return base_name_phrase(composing, of_base);
    return of_boat == BOAT_NAME_NONE ? NULL : boat_name_phrase(composing, sheet, of_boat);
}

/* What stands for a name that a text has in braces; one that is neither holds the card. */
static struct phrase_part number_part(struct composing *composing, const struct sheet *sheet,
                                      const char *name, struct place place)
{
    const struct phrase *number = fact_named(composing, sheet, name);
    if (number == NULL)
        number = number_named(composing, sheet, name);
    if (number != NULL)
        return (struct phrase_part){name, number};
    composing->held = true;
    if (!left_out_tell(composing, name))
        problem_add(composing->problems, SEVERITY_HELD, place,
                    "name a step that stands on the card of every such boat, or a card of her set",
                    "%s: %s is neither a step of this boat's card nor a card of hers",
                    sheet->name, name);
    return (struct phrase_part){name, phrase_verbatim(composing->arena, "?")};
}

/* Every language has the same names in its text. */
const struct phrase *numbers_fill(struct composing *composing, const struct sheet *sheet,
                                  const struct text_value *text)
{
    struct phrase_part *parts = NULL;
    size_t count = 0, room = 0;
    for (const char *at = TEXT_OR_EMPTY(*text); *at != '\0'; at++) {
        size_t length = words_blank_length(at);
        if (length == 0)
            continue;
        const char *name = arena_copy(composing->arena, at + 1, length - 2);
        parts = arena_grow(composing->arena, parts, count, &room, sizeof *parts);
        parts[count++] = number_part(composing, sheet, name, text->place);
    }
    return phrase_text_filled(composing->arena, text, parts, count);
}

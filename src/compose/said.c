/* said.c - words with cases, and the numbers of steps and cards in words (room: compose). */
#include "compose_room.h"

#include <string.h>

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

const char *card_numbers(struct composing *composing, const char *procedure_key)
{
    struct text_builder builder = text_builder_in(composing->arena);
    for (size_t i = 0; i < composing->slot_count; i++)
        if (text_equal(composing->slots[i].procedure->key.text, procedure_key) &&
            same_space(composing, &composing->slots[i]))
            text_add_format(&builder, "%s%s", builder.length == 0 ? "" : " / ",
                            composing->slots[i].number);
    return builder.at;
}

/* NULL: neither a step of this card nor a card of the set. */
static const char *number_named(struct composing *composing, const struct sheet *sheet,
                             const char *name)
{
    const struct card_step *step = step_by_id(sheet_steps(sheet), name);
    if (step != NULL)
        return text_format(composing->arena, "%d", step->number);
    const char *numbers = card_numbers(composing, name);
    return text_empty(numbers) ? NULL : numbers;
}

const char *numbers_fill(struct composing *composing, const struct sheet *sheet,
                         const struct text_value *text)
{
    struct text_builder builder = text_builder_in(composing->arena);
    const char *at = TEXT_OR_EMPTY(*text), *open;
    while ((open = strchr(at, '{')) != NULL && strchr(open, '}') != NULL) {
        size_t length = (size_t)(strchr(open, '}') - open) - 1;
        const char *name = arena_copy(composing->arena, open + 1, length);
        const char *number = number_named(composing, sheet, name);
        text_add_bytes(&builder, at, (size_t)(open - at));
        text_add(&builder, number == NULL ? "?" : number);
        at = open + length + 2;
        if (number != NULL)
            continue;
        composing->held = true;
        problem_add(composing->problems, SEVERITY_HELD, text->place,
                    "name a step that stands on the card of every such boat, or a card of her set",
                    "%s: %s is neither a step of this boat's card nor a card of hers",
                    sheet->name, name);
    }
    text_add(&builder, at);
    return builder.at;
}

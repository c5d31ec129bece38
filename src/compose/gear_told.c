/* gear_told.c - what the record says of a piece of gear besides its place and handling, as far
 * as a crew can use it: a row a fact (room: compose). What stops a hand, or whom a jacket does not
 * hold up, stands in the rows of steps, all of it on the safety plan. Never tells what is the
 * base's alone. */
#include "compose_room.h"

/* Who is told. */
enum told_in { TOLD_ON_PLAN, TOLD_IN_ROWS };

/* A fact and its words: those of one value of a choice or an answer; or, for a text or a
 * number, words that the {fact} is filled into. */
struct told_fact {
    enum gear_field field;
    unsigned value;
    enum word word;
    enum told_in in;
    enum item_key only, never;   /* of that gear alone; of all but that; none: of all */
};

#define TOLD(field, value, word, ...) {GEAR_##field, value, WORD_##word, TOLD_##__VA_ARGS__}
#define EVER ITEM_NONE, ITEM_NONE

static const struct told_fact told_facts[] = {
    TOLD(electrical_ok, ANSWER_NO, NO_LIVE_ELECTRICS, ON_PLAN, EVER),
    TOLD(wearer, WEARER_ADULT, FOR_ADULTS, ON_PLAN, EVER),
    TOLD(wearer, WEARER_CHILD, FOR_CHILDREN, IN_ROWS, EVER),
    TOLD(kg_low, 0, FROM_KILOGRAMS, ON_PLAN, EVER),
    TOLD(kg_high, 0, TO_KILOGRAMS, ON_PLAN, EVER),
    TOLD(litres, 0, LITRES, ON_PLAN, EVER),
    TOLD(length_m, 0, LINE_METRES, ON_PLAN, ITEM_liferaft, ITEM_NONE),
    TOLD(length_m, 0, METRES_LONG, ON_PLAN, ITEM_NONE, ITEM_liferaft),
    TOLD(vents_to, 0, VENTS_TO, ON_PLAN, EVER),
    TOLD(dsc, ANSWER_YES, WITH_DSC, ON_PLAN, ITEM_vhf_handheld, ITEM_NONE),
    TOLD(charged, ANSWER_NO, NOT_CHARGED, ON_PLAN, EVER),
    TOLD(breaker, 0, BREAKER_AT, IN_ROWS, EVER),
    TOLD(needs_engine, ANSWER_YES, NEEDS_ENGINE, IN_ROWS, EVER),
    TOLD(sound, 0, SOUNDS, ON_PLAN, EVER),
    TOLD(works, WORKS_STIFF, STIFF, ON_PLAN, EVER),
    TOLD(works, WORKS_SEIZED, SEIZED, IN_ROWS, EVER),
    TOLD(locked, ANSWER_YES, LOCKED, IN_ROWS, EVER),
};
enum { TOLD_FACTS = sizeof told_facts / sizeof told_facts[0] };

static const struct phrase *fact_phrase(struct arena *arena, const struct field *field,
                                        const struct equipment *gear)
{
    const void *value = (const char *)gear + field->offset;
    return field->kind == FIELD_WORDING ? phrase_text(arena, value)
                                        : phrase_verbatim(arena, field_text(field, gear, arena));
}

/* NULL: the record does not say that of the piece. */
static const struct phrase *told(const struct composing *composing, const struct told_fact *fact,
                                 const struct equipment *gear)
{
    const struct field *field = gear_field_row(fact->field);
    enum item_key item = gear->kind->item;
    if (item == fact->never || (fact->only != ITEM_NONE && item != fact->only))
        return NULL;
    if (fact->value != 0)
        return field_choice(field, gear) == fact->value ? word_alone(composing, fact->word) : NULL;
    const struct phrase *value = fact_phrase(composing->arena, field, gear);
    return value == NULL ? NULL
                         : phrase_word(composing->arena, fact->word, "fact", value, NULL);
}

/* Of the facts that are told there or nearer to the hand. */
static const struct phrase *told_from(const struct composing *composing,
                                      const struct equipment *gear, enum told_in least)
{
    const struct phrase *phrases[TOLD_FACTS] = {NULL};
    for (size_t i = 0; i < TOLD_FACTS; i++)
        if (told_facts[i].in >= least)
            phrases[i] = told(composing, &told_facts[i], gear);
    return phrase_list(composing->arena, WORD_JOIN_COMMA, phrases, TOLD_FACTS);
}

const struct phrase *gear_warned(const struct composing *composing, const struct equipment *gear)
{
    return told_from(composing, gear, TOLD_IN_ROWS);
}

const struct phrase *gear_told(const struct composing *composing, const struct equipment *gear)
{
    return told_from(composing, gear, TOLD_ON_PLAN);
}

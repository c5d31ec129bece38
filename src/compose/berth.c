/* berth.c - the line under the signs: what people do who can step ashore, what they say there and
 * whom they ring, and what they do at anchor (room: compose). Never invents a number. */
#include "berth.h"

#include "promise.h"

/* ---- numbers of the base ---- */

static const char *const number_remedy =
    "ask what brings the fire brigade to the berths from any telephone, then add to base.yaml:\n"
    "  ashore:\n"
    "    fire_phone: (as it is dialled there)";

/* Once for all cards that wait for it. */
static void number_hold(struct composing *composing)
{
    enum severity severity = composing->in->draft ? SEVERITY_DEFICIENCY : SEVERITY_HELD;
    composing->held = true;
    if (composing->phone_told)
        return;
    composing->phone_told = true;
    problem_add(composing->problems, severity, source_whole(composing->in->base->source),
                number_remedy, "fire_phone is not recorded: %s each card that tells what to do in "
                "a berth", composing->in->draft ? "it is missing on" : "it holds back");
}

static const struct phrase *number_or_hold(struct composing *composing,
                                           const struct text_value *number)
{
    if (number->text != NULL)
        return phrase_verbatim(composing->arena, number->text);
    number_hold(composing);
    return word_alone(composing, WORD_NOT_RECORDED);
}

/* The rescue centre is rung by the number that the contact line has; where that has none, by the
 * one of the fire brigade, which is the number of the land. */
const struct phrase *base_name_phrase(struct composing *composing, enum base_name name)
{
    const struct base_record *base = composing->in->base;
    switch (name) {
    case BASE_FIRE_PHONE:
        return number_or_hold(composing, &base->fire_phone);
    case BASE_RESCUE_PHONE:
        return number_or_hold(composing, base->centre_phone.text != NULL ? &base->centre_phone
                                                                         : &base->fire_phone);
    case BASE_NAME_NONE:
    case BASE_NAME_COUNT:
        break;
    }
    promise_unreached();
}

/* ---- the words ---- */

/* What is printed of one place, or nothing. */
static bool line_add(struct composing *composing, struct sheet *sheet, enum block_key block,
                     const struct said_list *list)
{
    const struct said *said = said_take(composing, list);
    if (said == NULL)
        return false;
    text_add_block(composing, sheet, block,
                   (struct card_text){phrase_said(composing,
                                                  numbers_fill(composing, sheet, &said->say)),
                                      said_place(composing, &said->say)});
    return true;
}

/* NULL: the base recorded neither. */
static const struct phrase *home_phrase(struct composing *composing)
{
    const struct base_record *base = composing->in->base;
    const struct text_value *names[] = {&base->marina, &base->berth};
    const struct phrase *parts[] = {NULL, NULL};
    for (size_t i = 0; i < sizeof names / sizeof *names; i++)
        if (names[i]->text != NULL)
            parts[i] = phrase_verbatim(composing->arena, names[i]->text);
    return phrase_joined(composing->arena, WORD_JOIN_COMMA, parts[0], parts[1], NULL);
}

/* The berth of the base is told as such: the boat may lie in another. */
static void say_add(struct composing *composing, struct sheet *sheet)
{
    const struct phrase *home = home_phrase(composing);
    const struct phrase *say = home == NULL ? word_alone(composing, WORD_BERTH_SAY)
                                            : phrase_word(composing->arena, WORD_BERTH_SAY_HOME,
                                                          "home", home, NULL);
    struct place named = composing->in->base->marina.place;
    text_add_block(composing, sheet, BLOCK_BERTH_SAY,
                   (struct card_text){phrase_said(composing, say),
                                      named.line > 0 ? named : sheet->origin});
    composing->blocks[composing->block_count - 1].yields = YIELDS_BERTH_SAY;
}

void berth_make(struct composing *composing, struct sheet *sheet)
{
    const struct procedure *procedure = composing->slot->procedure;
    if (line_add(composing, sheet, BLOCK_BERTH, &procedure->berth))
        say_add(composing, sheet);
    line_add(composing, sheet, BLOCK_ANCHOR, &procedure->anchor);
}

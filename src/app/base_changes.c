/* base_changes.c - what a base may settle in a procedure of its own and what it may not (room:
 * app): the numbers and kinds of cards, and which boats have a card of the core set. */
#include "base_procedures.h"

#include "reasons.h"

struct change {
    const struct base_card *card;
    const struct procedure *procedure;
    struct arena *arena;
    struct problems *problems;
};

static bool change_tell(const struct change *change, struct place place, const char *remedy,
                        const char *what)
{
    const struct text_value *key = &change->procedure->key;
    problem_add(change->problems, SEVERITY_ERROR, place.source == NULL ? key->place : place,
                remedy, "%s", what);
    return false;
}

/* A file is found by the name of its card. */
static bool key_check_of(const struct change *change)
{
    const struct text_value *key = &change->procedure->key;
    if (text_equal(key->text, change->card->key))
        return true;
    return change_tell(change, key->place,
                       text_format(change->arena, "call the files %s.yaml, or write procedure: %s",
                                   key->text, change->card->key),
                       text_format(change->arena, "the file %s.yaml holds the procedure %s",
                                   change->card->key, key->text));
}

static bool number_check_of(const struct change *change)
{
    const struct number_value *number = &change->procedure->number;
    const struct procedure *ours = change->card->ours;
    long long whole = (long long)(number->milli / 1000);
    if (ours != NULL && number->milli != ours->number.milli)
        return change_tell(change, number->place,
                           text_format(change->arena, "write number: %s, which it has for good",
                                       ours->number.text),
                           text_format(change->arena, "the card %s has the number %s",
                                       change->card->key, ours->number.text));
    if (ours == NULL && (whole < BASE_CARD_FIRST || whole > BASE_CARD_LAST))
        return change_tell(change, number->place,
                           text_format(change->arena, "give it a number from %d to %d, which the "
                                       "base never uses for another card",
                                       BASE_CARD_FIRST, BASE_CARD_LAST),
                           text_format(change->arena, "number %lld: a base's own cards have %d "
                                       "to %d", whole, BASE_CARD_FIRST, BASE_CARD_LAST));
    return true;
}

static const char *when_words(const struct change *change, const struct procedure *procedure)
{
    return procedure->when == NULL ? "" : condition_words(procedure->when, change->arena);
}

/* What a card of the program is made of, and for whom, stays as it is. */
static bool kind_check_of(const struct change *change)
{
    const struct procedure *ours = change->card->ours, *own = change->procedure;
    if (ours == NULL)
        return own->kind.value == SHEET_CARD ||
               change_tell(change, own->kind.place, "take kind out",
                           "a base's own card is of the kind card");
    bool same = true;
    if (own->kind.value != ours->kind.value)
        same = change_tell(change, own->kind.place, "write kind as the program's procedure has it",
                           "the kind of the program's card cannot be changed");
    if (own->per.value != ours->per.value)
        same = change_tell(change, own->per.place, "write per as the program's procedure has it",
                           "the program's card is made per boat or engine space as it always was");
    if (!text_equal(own->form_of.text, ours->form_of.text) ||
        !text_equal(own->form_letter.text, ours->form_letter.text))
        same = change_tell(change, own->form_of.place,
                           "write form_of and form_letter as the program's procedure has them",
                           "which card it is another form of cannot be changed");
    return same;
}

/* Whoever may change when a core card is made, or for whom, could leave it out. */
static bool core_check_of(const struct change *change)
{
    const struct procedure *ours = change->card->ours, *own = change->procedure;
    bool kept = true;
    if (ours == NULL || ours->core.answer != ANSWER_YES)
        return true;
    if (own->core.answer != ANSWER_YES)
        kept = change_tell(change, own->core.place, "write core: yes",
                           "a card of the core set stays in it");
    if (!text_equal(when_words(change, own), when_words(change, ours)))
        kept = change_tell(change, own->when == NULL ? own->key.place : own->when->place,
                           "write when as the program's procedure has it, or leave it out where "
                           "that has none",
                           "which boats have a card of the core set cannot be changed");
    return kept;
}

bool base_card_check(const struct base_folder *base, const struct base_card *card,
                     const struct procedure *procedure, struct problems *problems)
{
    const struct change change = {card, procedure, base->fleet->arena, problems};
    bool right = key_check_of(&change);
    right = number_check_of(&change) && right;
    right = kind_check_of(&change) && right;
    return core_check_of(&change) && right;
}

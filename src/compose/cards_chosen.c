/* cards_chosen.c - which cards a base hangs in a boat, by its own file and hers (room: compose):
 * cards that are left out, and cards that are made only where they are asked for. A card that
 * stays and names one that is left out is told, since it would send people to no card. */
#include "card_set.h"

/* ---- what is chosen ---- */

static const struct text_value *key_found(const struct list_value *list, const char *key)
{
    for (size_t i = 0; i < list->count; i++)
        if (list->items[i].text != NULL && text_equal(list->items[i].text, key))
            return &list->items[i];
    return NULL;
}

/* A list of hers takes the place of the base's. */
static const struct list_value *hers_or_the_bases(const struct list_value *hers,
                                                  const struct list_value *bases)
{
    return hers->given ? hers : bases;
}

const struct text_value *card_left_out(const struct compose_input *in,
                                       const struct procedure *procedure)
{
    return key_found(hers_or_the_bases(&in->boat->cards.leave_out, &in->base->cards.leave_out),
                     procedure->key.text);
}

bool card_not_asked_for(const struct compose_input *in, const struct procedure *procedure)
{
    return procedure->optional.answer == ANSWER_YES &&
           key_found(hers_or_the_bases(&in->boat->cards.add, &in->base->cards.add),
                     procedure->key.text) == NULL;
}

bool base_hangs(const struct base_record *base, const struct procedure *procedure)
{
    const char *key = procedure->key.text;
    return procedure->optional.answer == ANSWER_YES
               ? key_found(&base->cards.add, key) != NULL
               : key_found(&base->cards.leave_out, key) == NULL;
}

const char *left_out_reason(const struct text_value *where, struct arena *arena)
{
    return text_format(arena, "left out by %s, line %d", where->place.source->name,
                       where->place.line);
}

/* ---- what names a card that is left out ---- */

static const struct procedure *procedure_of_key(const struct composing *composing,
                                                const char *key)
{
    const struct procedure_set *procedures = composing->in->procedures;
    for (size_t i = 0; i < procedures->count; i++)
        if (text_equal(procedures->rows[i]->key.text, key))
            return procedures->rows[i];
    return NULL;
}

bool left_out_tell(struct composing *composing, const char *key)
{
    const struct procedure *named = procedure_of_key(composing, key);
    const struct text_value *where = named == NULL ? NULL : card_left_out(composing->in, named);
    if (where == NULL)
        return false;
    composing->held = true;
    problem_add(composing->problems, SEVERITY_ERROR, where->place,
                text_format(composing->arena, "keep it: take %s out of leave_out", key),
                "the card %s is left out, but the card %s leads to it and has no other words",
                procedure_name(composing, named), composing->slot->name);
    return true;
}

/* ---- what a base may choose ---- */

struct choosing {
    const struct procedure_set *procedures;
    struct arena *arena;
    struct problems *problems;
};

static const struct procedure *chosen_procedure(const struct choosing *choosing,
                                                const struct text_value *key)
{
    for (size_t i = 0; i < choosing->procedures->count; i++)
        if (text_equal(choosing->procedures->rows[i]->key.text, key->text))
            return choosing->procedures->rows[i];
    problem_add(choosing->problems, SEVERITY_ERROR, key->place,
                card_key_remedy(choosing->procedures, key->text, choosing->arena),
                "there is no card \"%s\"", key->text);
    return NULL;
}

/* What is wrong with leaving that card out, or asking for it; NULL: nothing. */
static const char *leaving_fault(const struct procedure *procedure)
{
    if (procedure->core.answer == ANSWER_YES)
        return "is of the core set, which no base leaves out";
    if (procedure->optional.answer == ANSWER_YES)
        return "is made only where add asks for it";
    return NULL;
}

static const char *adding_fault(const struct procedure *procedure)
{
    return procedure->optional.answer == ANSWER_YES
               ? NULL : "is made without being asked for, unless leave_out names it";
}

/* That a key stands twice is told by who reads the list. */
static void keys_check(const struct choosing *choosing, const struct list_value *list,
                       const char *name, const char *(*fault)(const struct procedure *procedure))
{
    for (size_t i = 0; i < list->count; i++) {
        const struct text_value *key = &list->items[i];
        if (key->text == NULL)
            continue;
        const struct procedure *procedure = chosen_procedure(choosing, key);
        const char *wrong = procedure == NULL ? NULL : fault(procedure);
        if (wrong != NULL)
            problem_add(choosing->problems, SEVERITY_ERROR, key->place,
                        text_format(choosing->arena, "take %s out of %s", key->text, name),
                        "%s: the card %s %s", name, key->text, wrong);
    }
}

bool cards_chosen_check(const struct card_choice *choice, const struct procedure_set *procedures,
                        struct arena *arena, struct problems *all)
{
    struct problems *problems = problems_part(all);
    struct choosing choosing = {procedures, arena, problems};
    keys_check(&choosing, &choice->leave_out, "leave_out", leaving_fault);
    keys_check(&choosing, &choice->add, "add", adding_fault);
    return problems_settle(all, problems);
}

/* base_procedures.c - a base's own procedures beside the program's (room: app): each is read and
 * checked as those are, and takes the place of the one of its key. What cannot be used holds its
 * own card alone: the program's text is never printed where the base has put another. */
#include "base_procedures.h"

#include "promise.h"

/* ---- one card ---- */

static bool is_whole(const struct base_card *card)
{
    return card->logic != NULL && card->text_count > 0;
}

static void card_read(const struct base_folder *base, struct base_card *card)
{
    struct fleet *fleet = base->fleet;
    const struct procedure_files files = {
        .logic = card->logic, .texts = card->texts, .text_count = card->text_count,
        .origin = card->ours == NULL ? PROCEDURE_OF_BASE : PROCEDURE_CHANGED};
    if (!is_whole(card) || base->authorities == NULL)
        return;
    card->procedure = procedure_read(&files, base->authorities, fleet->arena,
                                     fleet->base_problems);
    if (card->procedure != NULL &&
        !base_card_check(base, card, card->procedure, fleet->base_problems))
        card->procedure = NULL;
}

/* ---- the cards beside each other ---- */

/* The first card has the number; forms of one card share it. */
static void number_alone_check(const struct base_folder *base, struct base_card *card)
{
    for (const struct base_card *other = base->cards; other < card; other++) {
        if (other->procedure == NULL || card->procedure == NULL ||
            other->procedure->number.milli != card->procedure->number.milli ||
            other->ours != NULL || procedures_are_forms(other->procedure, card->procedure))
            continue;
        problem_add(base->fleet->base_problems, SEVERITY_ERROR, card->procedure->number.place,
                    "give it a number that no card ever had: printed cards name each other by it",
                    "number %s is that of %s too (line %d)", card->procedure->number.text,
                    other->logic->name, other->procedure->number.place.line);
        card->procedure = NULL;
    }
}

static bool has_file(const struct base_card *card, const struct source *source)
{
    for (size_t i = 0; i < card->text_count; i++)
        if (card->texts[i].source == source)
            return true;
    return card->logic == source;
}

/* The program's first, so that of two that cannot stand together the base's is told. */
static struct procedure_set set_for_check(const struct base_folder *base)
{
    const struct procedure **rows = arena_array(base->fleet->arena,
                                                base->ours.count + base->card_count, sizeof *rows);
    size_t count = 0;
    for (size_t i = 0; i < base->ours.count; i++) {
        bool changed = false;
        for (size_t k = 0; k < base->card_count; k++)
            changed = changed || (base->cards[k].procedure != NULL &&
                                  base->cards[k].ours == base->ours.rows[i]);
        if (!changed)
            rows[count++] = base->ours.rows[i];
    }
    for (size_t k = 0; k < base->card_count; k++)
        if (base->cards[k].procedure != NULL)
            rows[count++] = base->cards[k].procedure;
    return (struct procedure_set){rows, count};
}

/* Takes the cards out that the errors speak of; all of them where one speaks of none. */
static void faulty_take_out(const struct base_folder *base, const struct problems *problems)
{
    size_t count, out = 0;
    const struct problem *list = problems_sorted(problems, &count);
    for (size_t i = 0; i < count; i++)
        for (size_t k = 0; k < base->card_count; k++)
            if (base->cards[k].procedure != NULL &&
                has_file(&base->cards[k], list[i].place.source)) {
                base->cards[k].procedure = NULL;
                out++;
            }
    for (size_t k = 0; out == 0 && k < base->card_count; k++)
        base->cards[k].procedure = NULL;
}

/* One that is taken out may leave another leading nowhere: until nothing is told. */
static struct procedure_set set_settle(const struct base_folder *base)
{
    struct fleet *fleet = base->fleet;
    for (size_t rounds = 0; rounds <= base->card_count; rounds++) {
        struct problems *problems = problems_part(fleet->base_problems);
        struct procedure_set set = set_for_check(base);
        if (procedure_set_check(&set, fleet->arena, problems))
            return set;
        faulty_take_out(base, problems);
        problems_join(fleet->base_problems, problems);
    }
    promise(false);     /* the program's own set alone is sound */
    return base->ours;
}

/* ---- what follows ---- */

static void refused_tell(struct fleet *fleet, const struct base_folder *base,
                         const struct base_card *card)
{
    struct place place = card->logic == NULL ? NO_PLACE : source_whole(card->logic);
    if (card->ours == NULL)
        problem_add(fleet->base_problems, SEVERITY_HELD, place,
                    "put right what is told of its files",
                    "the base's own card %s is on no boat: %s/%s.yaml cannot be used", card->key,
                    base->folder, card->key);
    else
        problem_add(fleet->base_problems, SEVERITY_HELD, place,
                    "put right what is told of its files; without them the card is printed as the "
                    "program\nhas it",
                    "the card %s is held back on every boat: %s/%s.yaml, which changes it, cannot "
                    "be used", card->key, base->folder, card->key);
}

/* The program's, of which the base has another that cannot be used. */
static bool is_replaced(const struct base_folder *base, const struct procedure *procedure)
{
    for (size_t k = 0; k < base->card_count; k++)
        if (base->cards[k].ours == procedure && base->cards[k].procedure == NULL)
            return true;
    return false;
}

/* It keeps its place, so that others find its number; nothing of it is printed. */
static const struct procedure *replaced(const struct procedure *procedure, struct arena *arena)
{
    struct procedure *held = arena_alloc(arena, sizeof *held);
    *held = *procedure;
    held->replaced = true;
    return held;
}

static void by_number(const struct procedure **rows, size_t count)
{
    for (size_t i = 1; i < count; i++)
        for (size_t k = i; k > 0 && rows[k - 1]->number.milli > rows[k]->number.milli; k--) {
            const struct procedure *row = rows[k];
            rows[k] = rows[k - 1];
            rows[k - 1] = row;
        }
}

static void set_take(struct fleet *fleet, const struct base_folder *base,
                     const struct procedure_set *set)
{
    const struct procedure **rows = arena_array(fleet->arena, set->count, sizeof *rows);
    for (size_t i = 0; i < set->count; i++)
        rows[i] = is_replaced(base, set->rows[i]) ? replaced(set->rows[i], fleet->arena)
                                                  : set->rows[i];
    by_number(rows, set->count);
    fleet->procedures = (struct procedure_set){rows, set->count};
    if (base->authorities != NULL)
        fleet->authorities = base->authorities;
    for (size_t k = 0; k < base->card_count; k++)
        if (base->cards[k].procedure == NULL)
            refused_tell(fleet, base, &base->cards[k]);
}

bool base_procedures_read(const struct options *options, struct fleet *fleet)
{
    struct base_folder base = {.fleet = fleet, .options = options, .ours = fleet->procedures,
                               .folder = text_format(fleet->arena, "%s/" BASE_PROCEDURES,
                                                     options->base)};
    if (!is_there(base.folder))
        return true;
    if (!base_folder_open(&base))
        return false;
    base.authorities = base_authorities(&base);
    for (size_t i = 0; i < base.card_count; i++)
        card_read(&base, &base.cards[i]);
    for (size_t i = 0; i < base.card_count; i++)
        number_alone_check(&base, &base.cards[i]);
    const struct procedure_set set = set_settle(&base);
    set_take(fleet, &base, &set);
    return true;
}

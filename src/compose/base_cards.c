/* base_cards.c - the cards that a base's own record, or a boat's, names (room: compose). A
 * line for a card that is not would vanish without a word. */
#include "card_set.h"

#include <string.h>

/* engine_fire, and engine_fire_port where a card stands for one of two engines. */
static bool names_card(const struct procedure *procedure, const char *card)
{
    size_t length = strlen(procedure->key.text);
    if (text_equal(procedure->key.text, card))
        return true;
    if (procedure->per.value != PER_ENGINE_SPACE || !text_begins(card, procedure->key.text) ||
        card[length] != '_')
        return false;
    enum side side = choice_find(side_words, card + length + 1);
    return side == SIDE_PORT || side == SIDE_STARBOARD;
}

const char *card_key_remedy(const struct procedure_set *procedures, const char *card,
                            struct arena *arena)
{
    const char **keys = arena_array(arena, procedures->count, sizeof *keys);
    struct text_builder list = text_builder_in(arena);
    for (size_t i = 0; i < procedures->count; i++) {
        keys[i] = procedures->rows[i]->key.text;
        text_add_format(&list, "%s%s", i == 0 ? "the cards are: " : ", ", keys[i]);
    }
    return text_nearest_remedy(arena, card, keys, procedures->count, list.at);
}

static bool card_known(const struct procedure_set *procedures, const struct text_value *card,
                       struct arena *arena, struct problems *problems)
{
    if (card->text == NULL)
        return true;
    for (size_t i = 0; i < procedures->count; i++)
        if (names_card(procedures->rows[i], card->text))
            return true;
    problem_add(problems, SEVERITY_ERROR, card->place,
                card_key_remedy(procedures, card->text, arena), "there is no card \"%s\"",
                card->text);
    return false;
}

static bool lines_known(const struct own_lines *lines, const struct procedure_set *procedures,
                        struct arena *arena, struct problems *problems)
{
    bool sound = true;
    for (size_t i = 0; i < lines->count; i++)
        sound = card_known(procedures, &lines->rows[i].card, arena, problems) && sound;
    return sound;
}

bool base_cards_check(const struct base_record *base, const struct procedure_set *procedures,
                      struct arena *arena, struct problems *problems)
{
    bool sound = true;
    for (size_t i = 0; i < base->approval_count; i++)
        sound = card_known(procedures, &base->approvals[i].card, arena, problems) && sound;
    sound = lines_known(&base->own_lines, procedures, arena, problems) && sound;
    return cards_chosen_check(&base->cards, procedures, arena, problems) && sound;
}

bool boat_cards_check(const struct boat *boat, const struct base_record *base,
                      const struct procedure_set *procedures, struct arena *arena,
                      struct problems *all)
{
    struct problems *problems = problems_part(all);
    (void)lines_known(&boat->own_lines, procedures, arena, problems);
    if (base != NULL)
        own_lines_beside_check(&base->own_lines, &boat->own_lines, problems);
    (void)cards_chosen_check(&boat->cards, procedures, arena, problems);
    return problems_settle(all, problems);
}

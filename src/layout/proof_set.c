/* proof_set.c - the cards of a boat together: blocks at one place, one name an item,
 * exits that lead to a card (room: layout). Rules G14, G16, G22. */
#include "proof_room.h"

#define PLACE_SLACK MM(0.5)

/* ---- G22 ---- */

/* Blocks of every card, and those of cards with steps only. */
static const struct fixed_block {
    const char *name;
    bool with_steps;
} fixed[] = {{"mark", false},    {"title", false}, {"signs", false}, {"call line", false},
             {"contact", false}, {"call", false},  {"footer", false}, {"steps", true},
             {"plan", true}};

/* Where a block stands: its first thing; of steps and plan, whose first things
 * differ in size, all of it. */
static bool block_corner(const struct proofing *p, const struct fixed_block *row,
                         struct area *corner, const struct page_item **first)
{
    for (size_t i = 0; i < p->block_count; i++)
        if (text_equal(p->blocks[i].name, row->name)) {
            *first = &p->page->items[p->blocks[i].first];
            *corner = row->with_steps ? p->blocks[i].area : (*first)->area;
            return true;
        }
    return false;
}

static mpt apart(struct area a, struct area b)
{
    mpt x = a.x > b.x ? a.x - b.x : b.x - a.x, y = a.y > b.y ? a.y - b.y : b.y - a.y;
    return x > y ? x : y;
}

static void block_judge(struct proofing *const *all, size_t count, const struct fixed_block *row)
{
    const char *model_card = NULL;
    struct area model = {0, 0, 0, 0}, own;
    for (size_t i = 0; i < count; i++) {
        const struct page_item *first;
        if ((row->with_steps && all[i]->card->step_count == 0) ||
            !block_corner(all[i], row, &own, &first))
            continue;
        proof_measured(all[i], 1);
        if (model_card == NULL) {
            model = own;
            model_card = all[i]->card->key;
        } else if (apart(own, model) > PLACE_SLACK) {
            proof_found(all[i], RULE_BLOCKS_SET, first, "\"%s\" stands %s mm from where %s has it",
                        row->name, mm_words(all[i]->arena, apart(own, model)), model_card);
        }
    }
}

/* ---- G16 ---- */

struct term { const struct card_row *row; const char *card; };
struct term_list { struct term *at; size_t count, room; };

static void term_judge(struct proofing *p, struct term_list *terms, const struct card_row *row)
{
    if (row->tag_count != 1)
        return;
    proof_measured(p, 1);
    for (size_t i = 0; i < terms->count; i++) {
        const struct card_row *known = terms->at[i].row;
        if (!text_equal(known->tags[0], row->tags[0]))
            continue;
        struct page_item words = {.origin = row->origin, .block = "steps", .kind = PAGE_BOX};
        if (!text_equal(known->name, row->name) || known->kind != row->kind)
            proof_found(p, RULE_ONE_TERM, &words, "%s is \"%s\" here and \"%s\" on %s",
                        row->tags[0], row->name, known->name, terms->at[i].card);
        return;
    }
    terms->at = arena_grow(p->arena, terms->at, terms->count, &terms->room, sizeof *terms->at);
    terms->at[terms->count++] = (struct term){row, p->card->key};
}

static void terms_judge(struct proofing *const *all, size_t count)
{
    struct term_list terms = {0};
    for (size_t i = 0; i < count; i++)
        for (size_t s = 0; s < all[i]->card->step_count; s++)
            for (size_t r = 0; r < all[i]->card->steps[s].row_count; r++)
                term_judge(all[i], &terms, &all[i]->card->steps[s].rows[r]);
}

/* ---- G14 ---- */

static void exit_judge(const struct card_set *set, struct proofing *p, const char *card)
{
    if (text_empty(card) || !p->card->decision.given)
        return;
    proof_measured(p, 1);
    for (size_t i = 0; i < set->count; i++)
        if (text_equal(set->cards[i]->procedure_key, card) ||
            text_equal(set->cards[i]->key, card))
            return;
    proof_found(p, RULE_EXIT_CARD, NULL, "no card %s in the set", card);
}

void proof_together(const struct card_set *set, struct proofing *const *all, size_t count)
{
    for (size_t i = 0; i < sizeof fixed / sizeof *fixed; i++)
        block_judge(all, count, &fixed[i]);
    terms_judge(all, count);
    for (size_t i = 0; i < count; i++) {
        const struct procedure *procedure = all[i]->card->procedure;
        exit_judge(set, all[i], procedure == NULL ? NULL : procedure->decision.yes.card.text);
        exit_judge(set, all[i], procedure == NULL ? NULL : procedure->decision.no.card.text);
    }
}

/* proof_said.c - does every word of the sheet stand on its page (room: proof). Rule
 * G3: nothing is cut or dropped in silence. */
#include "proof_room.h"

/* Facts of one block while they are gathered: those that stand directly behind each other
 * are looked for as one, since other rows may have one of them too. */
struct saying {
    struct proofing *p;
    enum block_key block;
    struct text_builder words;
    struct place origin;
};

static void words_judge(struct saying *saying)
{
    struct proofing *p = saying->p;
    struct page_item words = {.kind = PAGE_BOX, .origin = saying->origin};
    if (saying->words.length == 0)
        return;
    proof_measured(p, 1);
    if (!block_says(p, saying->block, saying->words.at))
        proof_found(p, RULE_WORDS_LOST, &words, "\"%s\" is not on the page", saying->words.at);
    saying->words = text_builder_in(p->arena);
}

static void fact_said(void *of, const struct fact *fact)
{
    struct saying *saying = of;
    if (fact->kind == FACT_KNOWN)
        return;
    if (!fact->joined) {
        words_judge(saying);
        saying->origin = fact->origin;
    }
    text_add(&saying->words, fact->text);
}

void proof_said(struct proofing *p)
{
    for (size_t i = 0; i < p->sheet->block_count; i++) {
        const struct block *block = &p->sheet->blocks[i];
        struct saying saying = {p, block->key, text_builder_in(p->arena), {0}};
        block_visit(block, p->arena, fact_said, &saying);
        words_judge(&saying);
    }
}

/* proof_said.c - does every word of the sheet stand on its page (room: proof). Rule
 * G3: nothing is cut or dropped in silence. */
#include "proof_room.h"
#include "fact.h"

#include "fact.h"

#include <string.h>

/* Facts of one block while they are gathered: those that stand directly behind each other
 * are looked for as one, since other rows may have one of them too. They are looked for on one
 * page, or on all of a sheet. */
struct saying {
    struct proofing *const *pages;
    size_t page_count;
    const struct laid_sheet *laid;     /* NULL: nothing yielded */
    enum block_key block;
    struct text_builder words;
    struct place origin;
};

static bool pages_say(const struct saying *saying)
{
    for (size_t i = 0; i < saying->page_count; i++)
        if (block_says(saying->pages[i], saying->block, saying->words.at))
            return true;
    return false;
}

static bool has_yielded(const struct saying *saying)
{
    for (size_t i = 0; saying->laid != NULL && i < saying->laid->yielded_count; i++) {
        const struct yielded *one = &saying->laid->yielded[i];
        if (one->block == saying->block &&
            (one->text == NULL || strstr(saying->words.at, one->text) != NULL))
            return true;
    }
    return false;
}

static void words_judge(struct saying *saying)
{
    struct proofing *p = saying->pages[0];
    struct page_item words = {.kind = PAGE_BOX, .origin = saying->origin};
    if (saying->words.length == 0)
        return;
    proof_measured(p, 1);
    if (!pages_say(saying) && !has_yielded(saying))
        proof_found(p, RULE_WORDS_LOST, &words, "\"%s\" is not on the page", saying->words.at);
    saying->words = text_builder_in(p->arena);
}

static void fact_said(void *of, const struct fact *fact)
{
    struct saying *saying = of;
    if (fact->kind == FACT_KNOWN || fact->kind == FACT_CITED)
        return;                            /* sources: G19 */
    if (!fact->joined) {
        words_judge(saying);
        saying->origin = fact->origin;
    }
    text_add(&saying->words, fact->text);
}

static void block_said(const struct block *block, struct saying saying)
{
    struct arena *arena = saying.pages[0]->arena;
    saying.block = block->key;
    saying.words = text_builder_in(arena);
    block_visit(block, arena, fact_said, &saying);
    words_judge(&saying);
}

void proof_said(struct proofing *p)
{
    for (size_t i = 0; i < p->sheet->block_count; i++)
        block_said(&p->sheet->blocks[i], (struct saying){.pages = &p, .page_count = 1});
}

/* A page of several is headed by words of its own. */
static bool is_of_pages(enum block_key key)
{
    return key == BLOCK_TITLE || key == BLOCK_SIGNS || key == BLOCK_CALL_LINE ||
           key == BLOCK_PAGES;
}

void proof_whole(const struct laid_sheet *laid, struct proofing *const *pages, size_t count)
{
    struct saying saying = {.pages = pages, .page_count = count, .laid = laid};
    for (size_t i = 0; i < laid->sheet->block_count; i++)
        if (!is_of_pages(laid->sheet->blocks[i].key))
            block_said(&laid->sheet->blocks[i], saying);
}

/* proof_text.c - words and numbers for the proofreader (room: proof). It judges
 * nothing. */
#include "proof_room.h"

#include <string.h>

const struct page_item *plan_tag_frame(const struct proofing *p, size_t text)
{
    if (p->frames != NULL && is_plan_tag(&p->page->items[text]))
        return p->frames[text];
    for (size_t i = text; i-- > 0;)
        if (p->page->items[i].kind == PAGE_BOX && item_covers(&p->page->items[i], p->ink[text]))
            return &p->page->items[i];
    return NULL;
}

const char *sign_named(const struct page_item *sign, const char *frame)
{
    return sign->glyph == SYMBOL_NONE ? frame : symbol_of(sign->glyph)->key;
}

/* ---- numbers ---- */

static const char *hundredths(struct arena *arena, int64_t value)
{
    int64_t size = value < 0 ? -value : value;
    return text_format(arena, "%s%lld.%02lld", value < 0 ? "-" : "", (long long)(size / 100),
                       (long long)(size % 100));
}

const char *mm_words(struct arena *arena, mpt length)
{
    int64_t scaled = (int64_t)length * 10000000 / 28346457;   /* thousandths of mm */
    return hundredths(arena, (scaled + (scaled < 0 ? -5 : 5)) / 10);
}

const char *pt_words(struct arena *arena, mpt size)
{
    return hundredths(arena, size / (MPT_PER_POINT / 100));
}

const char *ratio_words(struct arena *arena, double value)
{
    return hundredths(arena, (int64_t)(value * 100.0));
}

/* ---- a card's texts ---- */

const char *text_command(struct arena *arena, const char *text)
{
    const char *end = text_begins(text, "**") ? strstr(text + 2, "**") : NULL;
    return end == NULL ? "" : arena_copy(arena, text + 2, (size_t)(end - text - 2));
}

static void squeeze_into(struct text_builder *out, const char *text)
{
    while (*text != '\0') {
        size_t length = strcspn(text, " \t");
        text_add_bytes(out, text, length);
        text += length;
        text += strspn(text, " \t");
    }
}

static const char *words_from(const struct proofing *p, size_t first, size_t end)
{
    struct text_builder out = text_builder_in(p->arena);
    for (size_t i = first; i < end; i++)
        if (is_text(&p->page->items[i]))
            squeeze_into(&out, p->page->items[i].run->text);
    return out.at == NULL ? "" : out.at;
}

static const char *page_words(struct proofing *p)
{
    if (p->words == NULL)
        p->words = words_from(p, 0, p->page->count);
    return p->words;
}

static const char *stretch_words(struct proofing *p, struct proof_block *block)
{
    if (block->words == NULL)
        block->words = words_from(p, block->first, block->end);
    return block->words;
}

bool block_says(struct proofing *p, enum block_key block, const char *text)
{
    struct text_builder wanted = text_builder_in(p->arena);
    squeeze_into(&wanted, text_plain(p->arena, text));
    if (wanted.length == 0)
        return true;
    if (block == BLOCK_NONE)
        return strstr(page_words(p), wanted.at) != NULL;
    for (size_t i = 0; i < p->block_count; i++)
        if (p->blocks[i].key == block &&
            strstr(stretch_words(p, &p->blocks[i]), wanted.at) != NULL)
            return true;
    return false;
}

/* ---- sentences ---- */

static bool ends_sentence(const char *at)
{
    bool point = *at == '.' || *at == '?' || *at == '!';
    return (point && (at[1] == ' ' || at[1] == '\0')) || text_begins(at, " · ");
}

static void sentences_of(struct sentence_list *list, struct arena *arena, const char *text,
                         struct place origin)
{
    const char *plain = text_plain(arena, text), *start = plain;
    for (const char *at = plain;; at++) {
        if (*at != '\0' && !ends_sentence(at))
            continue;
        while (*start == ' ' || text_begins(start, "·"))
            start += *start == ' ' ? 1 : strlen("·");
        if (at > start) {
            list->at = arena_grow(arena, list->at, list->count, &list->room, sizeof *list->at);
            list->at[list->count++] = (struct sentence){
                arena_copy(arena, start, (size_t)(at - start)), origin};
        }
        if (*at == '\0')
            return;
        start = at + 1;
    }
}

static void warnings_sentences(struct sentence_list *list, struct arena *arena,
                               const struct card_warning *warnings, size_t count)
{
    for (size_t i = 0; i < count; i++)
        sentences_of(list, arena, warnings[i].text, warnings[i].origin);
}

struct sentence_list card_sentences(const struct sheet *sheet, struct arena *arena)
{
    const struct warnings_facts *rules = sheet_warnings(sheet, BLOCK_OWN_LINES);
    const struct warnings_facts *cautions = sheet_warnings(sheet, BLOCK_CAUTIONS);
    const struct warnings_facts *nevers = sheet_warnings(sheet, BLOCK_NEVER);
    const struct decision_facts *decision = sheet_decision(sheet);
    const struct steps_facts *steps = sheet_steps(sheet);
    struct sentence_list list = {0};
    for (size_t i = 0; i < steps->count; i++) {
        sentences_of(&list, arena, steps->items[i].headline.text, steps->items[i].headline.origin);
        for (size_t k = 0; k < steps->items[i].lethal_count; k++)
            sentences_of(&list, arena, steps->items[i].lethal[k].text,
                         steps->items[i].lethal[k].origin);
    }
    sentences_of(&list, arena, decision->ask, decision->origin);
    sentences_of(&list, arena, decision->yes, decision->origin);
    sentences_of(&list, arena, decision->no, decision->origin);
    warnings_sentences(&list, arena, nevers->items, nevers->count);
    warnings_sentences(&list, arena, cautions->items, cautions->count);
    warnings_sentences(&list, arena, rules->items, rules->count);
    sentences_of(&list, arena, sheet_signs(sheet)->signs, sheet->origin);
    return list;
}

/* ---- words ---- */

static bool word_letter(char letter)
{
    return letter != '\0' && strchr(" \t.,:;?!()", letter) == NULL;
}

bool word_next(const char **at, const char **word, size_t *length)
{
    while (**at != '\0' && !word_letter(**at))
        (*at)++;
    for (*word = *at; word_letter(**at);)
        (*at)++;
    *length = (size_t)(*at - *word);
    return *length > 0;
}

size_t words_in(const char *text)
{
    const char *word;
    size_t count = 0, length;
    while (word_next(&text, &word, &length))
        count += strspn(word, "·–-/") == length ? 0 : 1;
    return count;
}

bool has_word(const char *text, const struct words *words, enum word_set set)
{
    const char *word;
    size_t length;
    while (word_next(&text, &word, &length))
        if (words_in_set(words, set, word, length))
            return true;
    return false;
}

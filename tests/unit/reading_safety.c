/* reading_safety.c - what is read of a safety plan: its lists and its indexes. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "reading_case.h"
#include "text.h"

/* With a comma behind the name where both stand on one line. */
static bool is_row_read(const struct read *read, const struct plan_row *row)
{
    const char *name = joined(row->marker.tag[0] == '\0' ? NULL : row->marker.tag, row->name);
    const char *rest = read->text + strlen(name);
    if (!text_equal(read->type, "LBody") || !text_begins(read->text, name))
        return false;
    return text_equal(rest, row->detail) ||
           (text_begins(rest, ", ") && text_equal(rest + 2, row->detail)) ||
           (text_begins(rest, " ") && text_equal(rest + 1, row->detail));
}

/* The row is read under the name of its place, once in each list that it stands in: in both where
 * it is on both sides; gives where it is read last. */
static size_t row_read_at(const struct reading_back *back, const struct plan_place *place,
                          const struct plan_row *row)
{
    const char *heading = "";
    size_t lists = row->marker.side == SIDE_BOTH ? 2 : 1;
    for (size_t i = back->next; i < back->count; i++) {
        if (text_equal(back->texts[i].type, "H2"))
            heading = back->texts[i].text;
        if (text_equal(heading, place->title) && is_row_read(&back->texts[i], row) && --lists == 0)
            return i;
    }
    fail_msg("%s: %s is not read under %s", back->page->id, row->name, place->title);
    return 0;
}

/* Lists stand on two sides, and what is amidships in either: a place may be read before or
 * after another. */
void places_expect(struct reading_back *back, const struct places_facts *places)
{
    size_t last = back->next;
    for (size_t i = 0; i < places->count; i++)
        for (size_t r = 0; r < places->places[i].row_count; r++) {
            size_t at = row_read_at(back, &places->places[i], &places->places[i].rows[r]);
            last = at + 1 > last ? at + 1 : last;
        }
    back->next = last;
}

static void gear_expect(struct reading_back *back, const struct index_facts *index)
{
    for (size_t i = 0; i < index->count; i++) {
        const char *words = index->entries[i].name;
        for (size_t s = 0; s < index->entries[i].spot_count; s++) {
            const struct index_spot *spot = &index->entries[i].spots[s];
            for (size_t t = 0; t < spot->tag_count; t++)
                words = joined(words, spot->tags[t]);
            words = joined(words, spot->place);
        }
        expect_next(back, "LBody", words);
    }
}

/* The heads of the columns are read once, as one, those of groups where they stand first. */
static void seen_expect(struct reading_back *back, const struct seen_facts *seen)
{
    expect_next(back, "H2", joined(seen->ask, seen->take));
    for (size_t i = 0; i < seen->count; i++) {
        expect_next(back, "H2", seen->groups[i].name);
        for (size_t k = 0; k < seen->groups[i].count; k++)
            expect_next(back, "LBody", joined(seen->groups[i].lines[k].text,
                                              seen->groups[i].lines[k].number));
    }
}

void index_expect(struct reading_back *back, const struct block *block)
{
    if (block->key == BLOCK_SEEN)
        seen_expect(back, block->facts.seen);
    else
        gear_expect(back, block->facts.index);
}

bool is_read_elsewhere(const struct page *page, const struct page_item *item)
{
    for (size_t i = 0; i < page->count; i++) {
        const struct page_item *other = &page->items[i];
        if (item->block == BLOCK_SEEN && other->kind == PAGE_TEXT && other->reading != 0 &&
            other->block == BLOCK_SEEN && text_equal(other->run->text, item->run->text))
            return true;
    }
    return false;
}

/* page_sheet.c - a sheet as one of its pages: the same facts under the page's own number, title,
 * signs and call line (room: layout). */
#include "pages.h"

#include "promise.h"

void page_facts_set(struct sheet *sheet, enum block_key key, union block_facts facts)
{
    struct block *blocks = (struct block *)(uintptr_t)sheet->blocks;    /* of the copy */
    for (size_t i = 0; i < sheet->block_count; i++)
        if (blocks[i].key == key)
            blocks[i].facts = facts;
}

void page_block_remove(struct sheet *sheet, enum block_key key)
{
    struct block *blocks = (struct block *)(uintptr_t)sheet->blocks;    /* of the copy */
    size_t kept = 0;
    for (size_t i = 0; i < sheet->block_count; i++)
        if (blocks[i].key != key)
            blocks[kept++] = blocks[i];
    sheet->block_count = kept;
}

static void page_title_set(struct sheet *sheet, const struct page_place *place,
                           struct arena *arena)
{
    const struct pages_facts *pages = sheet_pages(sheet);
    struct title_facts *title = arena_alloc(arena, sizeof *title);
    *title = *sheet_title(sheet);
    title->number = pages->numbers[place->index];
    if (pages->titles[place->part] != NULL)
        title->title = pages->titles[place->part];
    page_facts_set(sheet, BLOCK_TITLE, (union block_facts){.title = title});
    sheet->page = text_format(arena, "%c", (int)('A' + place->index));
    sheet->name = text_empty(sheet->number)      /* a form: SURVEY Sheet 2 */
                      ? text_format(arena, "%s %s", sheet->name, title->number)
                      : text_format(arena, "%s%s %s", sheet->number, sheet->page, title->title);
}

static void page_signs_set(struct sheet *sheet, const struct page_place *place,
                           struct arena *arena)
{
    const struct pages_facts *pages = sheet_pages(sheet);
    struct signs_facts *signs = arena_alloc(arena, sizeof *signs);
    size_t alike = place->alike > 0 ? place->alike : place->count;
    const char *words = pages->signs_of_many[place->part][alike - 1];
    if (alike == 2 && !text_empty(pages->signs_of_two[place->part]))
        words = pages->signs_of_two[place->part];
    *signs = *sheet_signs(sheet);
    if (!text_empty(words))
        signs->signs = words;
    page_facts_set(sheet, BLOCK_SIGNS, (union block_facts){.signs = signs});
}

static void page_call_line_set(struct sheet *sheet, const struct page_place *place)
{
    const struct cases_facts *line = sheet_pages(sheet)->call_lines[place->part];
    if (line != NULL)
        page_facts_set(sheet, BLOCK_CALL_LINE, (union block_facts){.cases = line});
}

struct sheet *page_sheet(const struct sheet *whole, const struct page_place *place,
                         struct arena *arena)
{
    struct sheet *sheet = arena_alloc(arena, sizeof *sheet);
    struct block *blocks = arena_array(arena, whole->block_count, sizeof *blocks);
    promise(place->count <= SHEET_PAGES_MOST && place->index < place->count);
    for (size_t i = 0; i < whole->block_count; i++)
        blocks[i] = whole->blocks[i];
    *sheet = *whole;
    sheet->blocks = blocks;
    if (place->count == 1)
        return sheet;
    page_title_set(sheet, place, arena);
    page_signs_set(sheet, place, arena);
    page_call_line_set(sheet, place);
    return sheet;
}

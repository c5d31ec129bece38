/* fuzz_pdf.c - any bytes as pages of placed things: what is drawn is a whole PDF, the same each
 * time; what would be blank or mislead is refused and told. */
#include "fuzz.h"

#include <string.h>

#include "draw.h"
#include "page.h"
#include "paper.h"
#include "text.h"

enum { ITEMS_MOST = 24, PAGES_AT_MOST = 3, TEXT_MOST = 40 };

static void pdf_open_own(void)
{
    own_open(OWN_FACES);
}

/* ---- bytes as numbers ---- */

struct taking {
    struct fuzz *fuzz;
    size_t at;
};

static unsigned byte_take(struct taking *taking)
{
    return taking->at < taking->fuzz->length ? (unsigned char)taking->fuzz->bytes[taking->at++]
                                             : 0;
}

/* Mostly on the page and a little around it; by a byte in 256 any number that a page may have. */
static mpt length_take(struct taking *taking)
{
    unsigned first = byte_take(taking);
    int32_t value = (int32_t)(first << 8 | byte_take(taking));
    if (first == 255)
        return (mpt)((uint32_t)value << 16);
    return (value - 2000) * 10;
}

static struct area area_take(struct taking *taking)
{
    mpt x = length_take(taking), y = length_take(taking), width = length_take(taking);
    return (struct area){x, y, width, length_take(taking)};
}

/* ---- things ---- */

static void text_take(struct taking *taking, struct page_item *item)
{
    struct run *run = arena_alloc(taking->fuzz->arena, sizeof *run);
    size_t length = byte_take(taking) % TEXT_MOST;
    size_t left = taking->fuzz->length - taking->at;
    uint32_t missing = 0;
    if (length > left)
        length = left;
    const char *text = arena_copy(taking->fuzz->arena, taking->fuzz->bytes + taking->at, length);
    taking->at += length;
    if (text_code_points(text) <= 0 || !text_is_shown(text) || strchr(text, '\n') != NULL)
        text = "Shut C4";
    mpt size = length_take(taking);
    size = size < 1 ? 9000 : size % 100000;
    if (!run_shape(own.faces, (enum face_role)(byte_take(taking) % FACE_COUNT), size, text,
                   strlen(text), taking->fuzz->arena, run, &missing)) {
        CHECK(missing != 0);
        item->kind = PAGE_BOX;
        return;
    }
    CHECK(run->width == run_width(own.faces, run->role, size, text, strlen(text), NULL));
    item->run = run;
    item->baseline = length_take(taking);
}

static void path_take(struct taking *taking, struct page_item *item)
{
    size_t count = byte_take(taking) % 6;
    struct path_step *steps = arena_array(taking->fuzz->arena, count, sizeof *steps);
    for (size_t i = 0; i < count; i++) {
        steps[i].verb = i == 0 ? PATH_MOVE : (enum path_verb)(byte_take(taking) % 4);
        for (size_t c = 0; c < 2; c++)
            steps[i].control[c] = (struct point){length_take(taking), length_take(taking)};
        steps[i].to = (struct point){length_take(taking), length_take(taking)};
    }
    item->steps = steps;
    item->step_count = count;
}

static struct page_item item_take(struct taking *taking, size_t parts)
{
    struct page_item item = {.kind = (enum page_kind)(byte_take(taking) % PAGE_VIEW),
                             .area = area_take(taking), .block = BLOCK_NONE};
    item.fill = (enum ink)(byte_take(taking) % INK_COUNT);
    item.stroke = (enum ink)(byte_take(taking) % INK_COUNT);
    item.line_width = length_take(taking);
    item.radius = item.kind == PAGE_BOX ? length_take(taking) : 0;
    item.part = (enum page_part)(byte_take(taking) % PART_COUNT);
    item.reading = byte_take(taking) % 4 == 0 ? 0 : parts - 1;
    item.joined = byte_take(taking) % 8 == 1;
    if (item.kind == PAGE_TEXT)
        text_take(taking, &item);
    else if (item.kind == PAGE_PATH)
        path_take(taking, &item);
    else if (item.kind == PAGE_SIGN) {
        item.sign = (enum sign_class)(1 + byte_take(taking) % (SIGN_CLASS_COUNT - 1));
        item.glyph = (enum symbol_key)(byte_take(taking) % SYMBOL_COUNT);
    } else if (item.kind == PAGE_LINE) {
        item.from = (struct point){length_take(taking), length_take(taking)};
        item.to = (struct point){length_take(taking), length_take(taking)};
    }
    return item;
}

static const struct page *page_take(struct taking *taking)
{
    static const struct reading_part parts[] = {
        {.kind = READING_GROUP}, {.kind = READING_TITLE},
        {.kind = READING_GROUP}, {.kind = READING_TEXT, .parent = 2}};
    struct page *page = arena_alloc(taking->fuzz->arena, sizeof *page);
    size_t count = byte_take(taking) % ITEMS_MOST;
    struct page_item *items = arena_array(taking->fuzz->arena, count, sizeof *items);
    *page = (struct page){.id = "any", .title = "Any: page (\\)", .label = "Card 1",
                          .language = "en", .width = 595276, .height = 841890, .items = items,
                          .count = count, .parts = parts,
                          .part_count = sizeof parts / sizeof *parts,
                          .palette = (enum palette)(byte_take(taking) % PALETTE_COUNT)};
    for (size_t i = 0; i < count; i++)
        items[i] = item_take(taking, page->part_count);
    return page;
}

/* ---- one document ---- */

static void dump_check(const struct fuzz *fuzz, const struct page *page)
{
    struct text_builder out = text_builder_in(fuzz->arena);
    page_dump(page, &out);
    CHECK(text_is_shown(out.at));
}

static void pdf_one(struct fuzz *fuzz)
{
    struct taking taking = {fuzz, 0};
    const struct page *pages[PAGES_AT_MOST];
    struct bytes first = {NULL, 0}, second = {NULL, 0};
    struct document document = {.title = "Any - Ё (", .subject = "any", .language = "en",
                                .pages = pages, .count = 1 + byte_take(&taking) % PAGES_AT_MOST};
    for (size_t i = 0; i < document.count; i++) {
        pages[i] = page_take(&taking);
        dump_check(fuzz, pages[i]);
    }
    bool made = pdf_make(&document, own.faces, fuzz->arena, &first, fuzz->problems);
    problems_check(fuzz);
    CHECK(made != problems_reach(fuzz->problems, SEVERITY_FAILURE));
    if (!made)
        return;
    CHECK(pdf_fault(first.at, first.length) == NULL);
    CHECK(pdf_make(&document, own.faces, fuzz->arena, &second, fuzz->problems));
    CHECK(first.length == second.length && memcmp(first.at, second.at, first.length) == 0);
}

const struct harness harness = {pdf_open_own, pdf_one, false};

/* proof_spoil.c - finding things on a page and spoiling them: see proof_case.h. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "block.h"
#include "proof_case.h"
#include "text.h"

/* ---- finding ---- */

struct page_item *try_text(struct proof_try *try, enum block_key block, enum page_role role,
                           size_t n)
{
    for (size_t i = 0; i < try->page.count; i++) {
        struct page_item *item = &try->items[i];
        if (item->kind == PAGE_TEXT && item->role == role && item->block == block &&
            n-- == 0)
            return item;
    }
    fail_msg("%s: no text of role %d in %s", try->page.id, (int)role, block_word(block));
    return NULL;
}

struct page_item *try_saying(struct proof_try *try, const char *words)
{
    for (size_t i = 0; i < try->page.count; i++)
        if (try->items[i].kind == PAGE_TEXT && text_begins(try->items[i].run->text, words))
            return &try->items[i];
    fail_msg("%s: no text begins with %s", try->page.id, words);
    return NULL;
}

struct page_item *try_thing(struct proof_try *try, enum block_key block, enum page_kind kind,
                            size_t n)
{
    for (size_t i = 0; i < try->page.count; i++)
        if (try->items[i].kind == kind && try->items[i].block == block && n-- == 0)
            return &try->items[i];
    fail_msg("%s: no thing of kind %d in %s", try->page.id, (int)kind, block_word(block));
    return NULL;
}

struct card_row *try_row(struct proof_try *try, size_t n)
{
    for (size_t i = 0; i < sheet_steps(&try->card)->count; i++) {
        if (n < try->steps[i].row_count)
            return (struct card_row *)(uintptr_t)&try->steps[i].rows[n];
        n -= try->steps[i].row_count;
    }
    fail_msg("%s has not so many rows", try->card.id);
    return NULL;
}

struct row_item *try_item(struct proof_try *try, size_t n)
{
    return (struct row_item *)(uintptr_t)try_row(try, n)->items;
}

/* ---- words ---- */

static void item_set(struct proof_try *try, struct page_item *item, const char *words, mpt size,
                     enum face_role face)
{
    struct run *run = arena_alloc(try->arena, sizeof *run);
    uint32_t missing = 0;
    if (!run_shape(try->faces, face, size, words, strlen(words), try->arena, run, &missing))
        fail_msg("\"%s\" cannot be set", words);
    item->run = run;
    item->area.width = run->width;
}

void item_say(struct proof_try *try, struct page_item *item, const char *words)
{
    item_set(try, item, words, item->run->size, item->run->role);
}

void item_resize(struct proof_try *try, struct page_item *item, mpt size)
{
    item_set(try, item, item->run->text, size, item->run->role);
}

void item_face(struct proof_try *try, struct page_item *item, enum face_role face)
{
    item_set(try, item, item->run->text, item->run->size, face);
}

/* ---- places ---- */

static void point_move(struct point *point, mpt right, mpt down)
{
    point->x += right;
    point->y += down;
}

void item_move(struct page_item *item, mpt right, mpt down)
{
    item->area.x += right;
    item->area.y += down;
    item->baseline += down;
    point_move(&item->from, right, down);
    point_move(&item->to, right, down);
}

void item_move_to(struct page_item *item, mpt x, mpt y)
{
    item_move(item, x - item->area.x, y - item->area.y);
}

/* ---- more and less ---- */

struct page_item *item_add(struct proof_try *try, enum page_kind kind)
{
    struct page_item *item = &try->items[try->page.count++];
    *item = (struct page_item){.kind = kind, .block = BLOCK_SOURCES};
    return item;
}

void item_remove(struct proof_try *try, struct page_item *item)
{
    size_t index = (size_t)(item - try->items);
    memmove(item, item + 1, (--try->page.count - index) * sizeof *item);
}

void margin_clear(struct proof_try *try)
{
    for (size_t i = try->page.count; i-- > 0;)
        if (try->items[i].block == BLOCK_MARK || try->items[i].block == BLOCK_UNAPPROVED)
            item_remove(try, &try->items[i]);
}

struct page_item *words_add(struct proof_try *try, const struct page_item *like, mpt x,
                           mpt baseline)
{
    struct page_item copy = *like, *item = item_add(try, PAGE_TEXT);
    *item = copy;
    item->block = BLOCK_SOURCES;
    item->paragraph = 0;
    item_move(item, x - item->area.x, baseline - item->baseline);
    return item;
}

struct page_item *line_add(struct proof_try *try, struct point from, struct point to,
                           enum ink ink, mpt width)
{
    struct page_item *line = item_add(try, PAGE_LINE);
    mpt x = from.x < to.x ? from.x : to.x, y = from.y < to.y ? from.y : to.y;
    line->from = from;
    line->to = to;
    line->area = (struct area){x, y, from.x + to.x - 2 * x, from.y + to.y - 2 * y};
    line->stroke = ink;
    line->line_width = width;
    return line;
}

struct page_item *box_add(struct proof_try *try, struct area area, enum ink fill)
{
    struct page_item *box = item_add(try, PAGE_BOX);
    box->area = area;
    box->fill = fill;
    return box;
}

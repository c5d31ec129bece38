/* stickers_page.c - stickers on sheets of labels: sign, tag and name, below them the states, at the
 * foot whose they are; and marks at the edge of the sheet along which they are cut (room: layout).
 * What has no room on its label is told by its tag: nothing is cut short. */
#include "pages.h"

#include "measures.h"
#include "text.h"

#include <string.h>

/* One sticker at a size of type. */
struct laid_sticker {
    const struct sticker *sticker;
    struct area inner;            /* of its label, without the pad and what no printer reaches */
    mpt size, tag_width;
    struct paragraph name;
    struct paragraph *states;
    mpt head, height;             /* of sign, tag and name; of all */
    bool wide;
};

static struct style sticker_style(enum face_role face, mpt size)
{
    return (struct style){ROLE_ROW, face, size, INK_BLACK};
}

static struct style foot_style(const struct pen *pen)
{
    return (struct style){ROLE_SOURCE_TAG, FACE_TEXT,
                          size_rule(pen->paper, ROLE_SOURCE_TAG).floor, INK_BLACK};
}

static mpt foot_line(const struct pen *pen)
{
    return line_pitch(ROLE_SOURCE_TAG, foot_style(pen).size);
}

/* Of the tag, whose capitals fill two thirds of its box. */
static mpt sticker_tag_size(void)
{
    return (mpt)((int64_t)LABEL_TAG_HIGH * 2 / 3 * 1000 / EM_CAPITALS);
}

static mpt state_heights(const struct laid_sticker *laid)
{
    mpt height = laid->sticker->state_count > 0 ? LABEL_STATE_GAP : 0;
    for (size_t i = 0; i < laid->sticker->state_count; i++)
        height += paragraph_height(&laid->states[i]);
    return height;
}

static struct laid_sticker sticker_lay(const struct pen *pen, const struct sticker *sticker,
                                       struct area inner, mpt size)
{
    struct style bold = sticker_style(FACE_BOLD, size);
    struct style tag = sticker_style(FACE_BOLD, sticker_tag_size());
    struct laid_sticker laid = {.sticker = sticker, .inner = inner, .size = size};
    laid.tag_width = pen_width(pen, &tag, sticker->tag) + 2 * LABEL_TAG_PAD;
    mpt width = inner.width - LABEL_SIGN - laid.tag_width - 2 * LABEL_GAP;
    laid.name = paragraph_make(pen, &bold, sticker->name, width, sticker->origin);
    laid.wide = laid.name.widest_piece > width;
    laid.states = arena_array(pen->arena, sticker->state_count, sizeof *laid.states);
    for (size_t i = 0; i < sticker->state_count; i++) {
        laid.states[i] = paragraph_make(pen, &bold, sticker->states[i], inner.width,
                                        sticker->origin);
        laid.wide = laid.wide || laid.states[i].widest_piece > inner.width;
    }
    mpt words = paragraph_height(&laid.name);
    laid.head = words > LABEL_SIGN ? words : LABEL_SIGN;
    laid.height = laid.head + state_heights(&laid) + foot_line(pen);
    return laid;
}

/* As large as has room; at its floor where nothing has. */
static struct laid_sticker sticker_fit(const struct pen *pen, const struct sticker *sticker,
                                       struct area inner)
{
    struct size_rule rule = size_rule(pen->paper, ROLE_ROW);
    struct laid_sticker laid = sticker_lay(pen, sticker, inner, rule.aim);
    for (mpt size = rule.aim - SIZE_STEP; (laid.wide || laid.height > inner.height) &&
                                          size >= rule.floor; size -= SIZE_STEP)
        laid = sticker_lay(pen, sticker, inner, size);
    if (laid.wide || laid.height > inner.height)
        laid = sticker_lay(pen, sticker, inner, rule.floor);
    return laid;
}

static void sticker_tag_place(struct pen *pen, const struct laid_sticker *laid, mpt middle)
{
    struct style style = sticker_style(FACE_BOLD, sticker_tag_size());
    const char *tag = laid->sticker->tag;
    struct area box = {laid->inner.x + LABEL_SIGN + LABEL_GAP, middle - LABEL_TAG_HIGH / 2,
                       laid->tag_width, LABEL_TAG_HIGH};
    style.ink = INK_WHITE;
    pen_box(pen, box, INK_BLACK, INK_NONE, 0, TAG_CORNER);
    pen_text(pen, &style, box.x + LABEL_TAG_PAD, baseline_in(box.y, box.height, style.size), tag,
             strlen(tag), laid->sticker->origin);
}

static void sticker_foot_place(struct pen *pen, const struct laid_sticker *laid)
{
    struct style style = foot_style(pen);
    const char *foot = sheet_stickers(pen->sheet)->foot;
    mpt top = laid->inner.y + laid->inner.height - foot_line(pen);
    mpt width = pen_text(pen, &style, laid->inner.x,
                         baseline_in(top, foot_line(pen), style.size), foot, strlen(foot),
                         pen->sheet->boat->facts.name.place);
    if (width > laid->inner.width)
        pen_too_long(pen, pen->sheet->boat->facts.name.place, width - laid->inner.width,
                     "take wider labels: --label", "the boat's name on a sticker");
}

static void sticker_place(struct pen *pen, const struct laid_sticker *laid)
{
    const struct area *inner = &laid->inner;
    mpt middle = inner->y + laid->head / 2, y = inner->y + laid->head + LABEL_STATE_GAP;
    size_t outer = reading_begin(pen, READING_LINE);
    pen_symbol(pen, (struct area){inner->x, middle - LABEL_SIGN / 2, LABEL_SIGN, LABEL_SIGN},
               laid->sticker->kind->symbol, laid->sticker->origin);
    sticker_tag_place(pen, laid, middle);
    paragraph_place(pen, &laid->name,
                    inner->x + LABEL_SIGN + laid->tag_width + 2 * LABEL_GAP,
                    middle - paragraph_height(&laid->name) / 2);
    for (size_t i = 0; i < laid->sticker->state_count; i++) {
        paragraph_place(pen, &laid->states[i], inner->x, y);
        y += paragraph_height(&laid->states[i]);
    }
    sticker_foot_place(pen, laid);
    reading_end(pen, outer);
}

static void no_room_tell(struct pen *pen, const struct laid_sticker *laid)
{
    mpt over = laid->height - laid->inner.height;
    pen->failed = true;
    problem_add(pen->problems, SEVERITY_ERROR, laid->sticker->origin,
                "take larger labels, such as --label 80x50, or write its name or how in fewer "
                "words",
                laid->wide ? "%s (%s): the sticker of %s has a word that is wider than its label"
                           : "%s (%s): the sticker of %s is %s mm too tall for its label",
                pen->sheet->name, pen->sheet->language, laid->sticker->tag,
                mm_text(pen->arena, over));
}

/* ---- the sheet ---- */

static struct area label_at(const struct paper *paper, size_t index)
{
    const struct labels *labels = &paper->labels;
    mpt column = (mpt)(index % labels->across), row = (mpt)(index / labels->across);
    return (struct area){labels->left + column * (labels->width + labels->gap_across),
                         labels->top + row * (labels->height + labels->gap_down), labels->width,
                         labels->height};
}

static mpt label_side(mpt place, mpt least)
{
    return place < least ? least : place;
}

static struct area label_inner(const struct paper *paper, size_t index)
{
    struct area label = label_at(paper, index);
    mpt x = label_side(label.x + LABEL_PAD, paper->side);
    mpt y = label_side(label.y + LABEL_PAD, paper->head);
    mpt right = label_side(paper->width - label.x - label.width + LABEL_PAD, paper->side);
    mpt foot = label_side(paper->height - label.y - label.height + LABEL_PAD, paper->foot);
    return (struct area){x, y, paper->width - right - x, paper->height - foot - y};
}

/* A mark from one edge of the sheet inwards. */
static void edge_mark(struct pen *pen, struct point from, struct point to)
{
    pen_line(pen, from, to, INK_BLACK, HAIR);
    pen_part(pen, PART_CUT);
}

static void mark_across(struct pen *pen, mpt x)
{
    mpt height = pen->paper->height;
    edge_mark(pen, (struct point){x, 0}, (struct point){x, LABEL_CUT});
    edge_mark(pen, (struct point){x, height - LABEL_CUT}, (struct point){x, height});
}

static void mark_down(struct pen *pen, mpt y)
{
    mpt width = pen->paper->width;
    edge_mark(pen, (struct point){0, y}, (struct point){LABEL_CUT, y});
    edge_mark(pen, (struct point){width - LABEL_CUT, y}, (struct point){width, y});
}

/* Both sides of each column and row. */
static void label_marks_place(struct pen *pen)
{
    const struct labels *labels = &pen->paper->labels;
    pen->block = BLOCK_NONE;
    size_t outer = reading_skip(pen);
    for (size_t i = 0; i <= labels->across; i++)
        mark_across(pen, labels->left + (mpt)i * (labels->width + labels->gap_across) -
                             (i == labels->across ? labels->gap_across : 0));
    for (size_t i = 0; i <= labels->down; i++)
        mark_down(pen, labels->top + (mpt)i * (labels->height + labels->gap_down) -
                           (i == labels->down ? labels->gap_down : 0));
    reading_end(pen, outer);
}

bool stickers_place(struct pen *pen, struct pen *trial, const struct shared *shared)
{
    const struct stickers_facts *stickers = sheet_stickers(pen->sheet);
    (void)trial, (void)shared;
    pen->block = BLOCK_STICKERS;
    for (size_t i = 0; i < stickers->count; i++) {
        struct laid_sticker laid = sticker_fit(pen, &stickers->items[i],
                                               label_inner(pen->paper, i));
        if (laid.wide || laid.height > laid.inner.height)
            no_room_tell(pen, &laid);
        sticker_place(pen, &laid);
    }
    label_marks_place(pen);
    return true;
}

size_t stickers_split(struct laying *laying, struct pen *pen)
{
    const struct stickers_facts *all = sheet_stickers(laying->whole);
    size_t each = pen->paper->labels.across * pen->paper->labels.down;
    size_t pages = each == 0 ? 0 : (all->count + each - 1) / each;
    if (pages > SHEET_PAGES_MOST)
        pages = 0;
    for (size_t i = 0; i < pages; i++) {
        struct page_place place = {.index = i, .count = pages};
        struct stickers_facts *part = arena_alloc(pen->arena, sizeof *part);
        struct sheet *sheet = page_sheet(laying->whole, &place, pen->arena);
        *part = *all;
        part->items += i * each;
        part->count = i + 1 < pages ? each : all->count - i * each;
        page_facts_set(sheet, BLOCK_STICKERS, (union block_facts){.stickers = part});
        laying->sheets[i] = sheet;
    }
    return pages;
}

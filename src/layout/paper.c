/* paper.c - the papers as rows of one table, and what becomes of their margins by punching and
 * cutting (room: layout). */
#include "paper.h"

#include "measures.h"
#include "promise.h"

#define PAPER_ROW(name, ...) [name] = {__VA_ARGS__, .palette = PALETTE_COLOUR},
static const struct paper papers[PAPER_COUNT] = {PAPER_LIST(PAPER_ROW)};

const struct paper *paper_of(enum paper_key key)
{
    promise(key > PAPER_NONE && key < PAPER_COUNT);
    return &papers[key];
}

/* Without a hole the head has room for the marks of a page alone, which have no gap for it. */
static void hole_leave_out(struct paper *paper)
{
    paper->punch_down = 0;
    paper->punch_clear = UNPUNCHED_GAP;
    paper->head = UNPUNCHED_HEAD;
}

/* The margin at the left is that which the head had for the hole. */
static void hole_put_left(struct paper *paper)
{
    mpt down = paper->punch_down, gutter = paper->head - paper->side;
    hole_leave_out(paper);
    paper->punch_in = down;
    paper->gutter = gutter;
}

static mpt margin_least(mpt length, mpt least)
{
    return length > least ? length : least;
}

/* A hole is punched so far from the edge that is cut, and words keep their margin from it. */
static void edges_cut(struct paper *paper)
{
    bool punched = paper->punch_down > 0;
    paper->trim = WET_TRIM;
    paper->head += WET_TRIM;
    paper->punch_down += punched ? WET_TRIM : 0;
    paper->punch_in += paper->punch_in > 0 ? WET_TRIM : 0;
    paper->gutter += paper->gutter > 0 ? WET_TRIM : 0;
    paper->side = margin_least(paper->side, WET_TRIM + TRIMMED_MARGIN);
    paper->foot = margin_least(paper->foot, WET_TRIM + TRIMMED_MARGIN);
}

struct paper paper_finished(enum paper_key key, const struct finish *finish)
{
    struct paper paper = *paper_of(key);
    paper.palette = finish->palette;
    if (finish->punch == PUNCH_NONE)
        hole_leave_out(&paper);
    if (finish->punch == PUNCH_LEFT)
        hole_put_left(&paper);
    if (finish->pouch == POUCH_WET)
        edges_cut(&paper);
    return paper;
}

/* How many have room on that length from `begin` on, the same kept at its end. */
static size_t labels_count(mpt length, mpt begin, mpt label, mpt gap)
{
    mpt room = length - (begin < 0 ? 0 : begin) + gap;
    return label <= 0 || room < label + gap ? 0 : (size_t)(room / (label + gap));
}

/* Where the first begins. */
static mpt labels_begin(mpt length, mpt begin, mpt all)
{
    return begin < 0 ? (length - all) / 2 : begin;
}

struct paper paper_of_labels(enum paper_key key, const struct labels *labels,
                             enum palette palette)
{
    struct paper paper = *paper_of(key);
    struct labels *own = &paper.labels;
    hole_leave_out(&paper);
    paper.palette = palette;
    paper.side = paper.head = paper.foot = LABEL_UNPRINTED;
    paper.reading_mm = LABEL_READ_MM;
    *own = *labels;
    own->across = labels_count(paper.width, labels->left, labels->width, labels->gap_across);
    own->down = labels_count(paper.height, labels->top, labels->height, labels->gap_down);
    own->left = labels_begin(paper.width, labels->left,
                             (mpt)own->across * (own->width + own->gap_across) - own->gap_across);
    own->top = labels_begin(paper.height, labels->top,
                            (mpt)own->down * (own->height + own->gap_down) - own->gap_down);
    return paper;
}

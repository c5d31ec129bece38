/* distress_page.c - the pages of a distress call: the call right across the page and all that
 * helps to send it below; or what answers that of others and ends it, one below the other
 * (room: layout). Each block is laid out once at a size and placed as it was. */
#include "boxes.h"
#include "pages.h"
#include "sections.h"

#include "measures.h"

/* Where a block stands, in order from the top: below the call right across, or in a column; or
 * on the other page. Boxes stand where cautions do. */
enum block_place { BELOW_CALL, LEFT_COLUMN, RIGHT_COLUMN, OTHER_PAGE };

static const struct block_row {
    enum block_key key;
    enum block_place place;
    size_t columns;               /* of its lines */
} blocks[] = {
    {BLOCK_NATURE, BELOW_CALL, 2},    {BLOCK_POSITION, LEFT_COLUMN, 1},
    {BLOCK_NO_ANSWER, RIGHT_COLUMN, 1}, {BLOCK_CAUTIONS, RIGHT_COLUMN, 1},
    {BLOCK_POSITION, OTHER_PAGE, 1},
    {BLOCK_PAN_PAN, OTHER_PAGE, 1},   {BLOCK_PHRASES, OTHER_PAGE, 2},
    {BLOCK_NEEDS, OTHER_PAGE, 2},     {BLOCK_HINTS, OTHER_PAGE, 1},
    {BLOCK_ASKED, OTHER_PAGE, 1},     {BLOCK_SPELL, OTHER_PAGE, 1},
    {BLOCK_HEARD, OTHER_PAGE, 1},     {BLOCK_RELAY, OTHER_PAGE, 1},
    {BLOCK_DOWNGRADE, OTHER_PAGE, 1}, {BLOCK_CANCEL, OTHER_PAGE, 1},
    {BLOCK_BEACON, OTHER_PAGE, 1},
    {BLOCK_SPELL, BELOW_CALL, 1},     {BLOCK_BEACON, BELOW_CALL, 1},
    {BLOCK_HINTS, BELOW_CALL, 1}};
#define BLOCKS_OF_PAGE (sizeof blocks / sizeof *blocks)

/* ---- blocks one below the other ---- */

/* A section, or the boxes. */
struct laid_part {
    bool boxed;
    struct laid_section section;
    struct laid_boxes boxes;
    mpt height;
};

struct laid_column {
    struct laid_part *parts;
    size_t count;
    mpt height;                   /* with the least gaps */
};

static bool has_boxes(const struct sheet *sheet)
{
    return sheet_block(sheet, BLOCK_NEVER) != NULL || sheet_block(sheet, BLOCK_CAUTIONS) != NULL ||
           sheet_block(sheet, BLOCK_OWN_LINES) != NULL;
}

static bool has_part(const struct sheet *sheet, enum block_key key)
{
    return key == BLOCK_CAUTIONS ? has_boxes(sheet) : sheet_block(sheet, key) != NULL;
}

static struct laid_part part_lay(const struct pen *pen, const struct block_row *row, mpt size,
                                 mpt width)
{
    struct laid_part part = {.boxed = row->key == BLOCK_CAUTIONS};
    struct section_look look = {{size, SPOKEN_BLANK_HEIGHT}, row->columns};
    if (part.boxed) {
        part.boxes = boxes_lay(pen, (struct box_measure){size, width, BOXES_WHOLE});
        part.height = part.boxes.height - BOX_GAP;
    } else {
        part.section = section_lay(pen, row->key, &look, width);
        part.height = part.section.height;
    }
    return part;
}

/* Those that stand at that place. A block that the sheet lacks takes no gap either. */
static struct laid_column column_lay(const struct pen *pen, enum block_place place, mpt size,
                                     mpt width)
{
    struct laid_column laid = {.height = -SECTION_GAP};
    laid.parts = arena_array(pen->arena, BLOCKS_OF_PAGE, sizeof *laid.parts);
    for (size_t i = 0; i < BLOCKS_OF_PAGE; i++) {
        if (blocks[i].place != place || !has_part(pen->sheet, blocks[i].key))
            continue;
        laid.parts[laid.count] = part_lay(pen, &blocks[i], size, width);
        laid.height += laid.parts[laid.count++].height + SECTION_GAP;
    }
    return laid;
}

static mpt section_gap(const struct laid_column *laid, mpt height)
{
    mpt extra = height - laid->height;
    mpt gap = SECTION_GAP + (extra > 0 && laid->count > 1 ? extra / (mpt)(laid->count - 1) : 0);
    return gap > SECTION_GAP_MOST ? SECTION_GAP_MOST : gap;
}

static void column_place(struct pen *pen, const struct laid_column *laid, struct area column)
{
    mpt gap = section_gap(laid, column.height);
    for (size_t i = 0; i < laid->count; i++) {
        const struct laid_part *own = &laid->parts[i];
        column.height = own->height;
        if (own->boxed)
            boxes_place(pen, &own->boxes, column.x, column.y);
        else
            section_place(pen, &own->section, column);
        column.y += own->height + gap;
    }
}

/* ---- the page to send a call ---- */

struct laid_sending {
    const struct pen *pen;
    struct page_needs needs;
    struct frame frame;
    struct laid_spoken spoken;
    struct laid_column across, left, right;
    mpt size;                     /* of what is below the call */
    mpt over;                     /* what is too long; <= 0: it fits */
};

static mpt lower_height(const struct laid_sending *laid)
{
    return laid->left.height > laid->right.height ? laid->left.height : laid->right.height;
}

/* A part of that height, with the gap above it. */
static mpt gapped(mpt height)
{
    return height > 0 ? SECTION_GAP + height : 0;
}

static mpt sending_height(const struct laid_sending *laid)
{
    return laid->spoken.height + gapped(laid->across.height) + gapped(lower_height(laid));
}

static void over_find(struct laid_sending *laid)
{
    laid->over = sending_height(laid) - laid->frame.at[AREA_BODY].height;
}

/* Where nothing stands in the right column, the left has the width of both. */
static enum page_area left_area(const struct laid_sending *laid)
{
    return laid->right.count == 0 ? AREA_BODY : AREA_LEFT;
}

/* In one way of the template. */
static void lower_lay(struct laid_sending *laid, int way)
{
    const struct area *at = laid->frame.at;
    laid->needs.way = way;
    laid->frame = frame_make(laid->pen->paper, TEMPLATE_DISTRESS, &laid->needs);
    laid->right = column_lay(laid->pen, RIGHT_COLUMN, laid->size, at[AREA_RIGHT].width);
    laid->left = column_lay(laid->pen, LEFT_COLUMN, laid->size, at[left_area(laid)].width);
}

static bool has_call(const struct pen *pen)
{
    return sheet_block(pen->sheet, BLOCK_CALL) != NULL;
}

/* In the way in which the columns are lowest. */
static bool below_fits_at(void *of, mpt size)
{
    struct laid_sending *laid = of;
    struct laid_sending best = *laid;
    laid->size = size;
    for (int way = 0; way < template_ways(TEMPLATE_DISTRESS); way++) {
        lower_lay(laid, way);
        if (way == 0 || lower_height(laid) < lower_height(&best))
            best = *laid;
    }
    *laid = best;
    laid->across = column_lay(laid->pen, BELOW_CALL, size, laid->frame.at[AREA_BODY].width);
    over_find(laid);
    return laid->over <= 0;
}

static bool call_fits_at(void *of, mpt size)
{
    struct laid_sending *laid = of;
    if (has_call(laid->pen))
        laid->spoken = spoken_lay(laid->pen, size, laid->frame.at[AREA_BODY].width);
    over_find(laid);
    return laid->over <= 0;
}

/* What is said takes the largest size that leaves room for all else at its least; then that
 * grows, and is never larger than what is said. */
static struct laid_sending sending_lay(const struct pen *pen, const struct page_needs *needs)
{
    struct laid_sending laid = {.pen = pen, .needs = *needs};
    struct size_rule below = size_rule(pen->paper, ROLE_SCRIPT);
    below_fits_at(&laid, below.floor);
    mpt said = size_that_fits(spoken_size_rule(pen->paper), SIZE_STEP, call_fits_at, &laid);
    call_fits_at(&laid, said);
    below.aim = said < below.aim ? said : below.aim;
    below_fits_at(&laid, size_that_fits(below, SIZE_STEP, below_fits_at, &laid));
    return laid;
}

/* Room that is left goes between the lines to say, then between the blocks. */
static void sending_place(struct pen *pen, const struct laid_sending *laid)
{
    const struct area *at = laid->frame.at;
    struct area next = at[AREA_BODY], left = at[left_area(laid)], right = at[AREA_RIGHT];
    mpt spare = -laid->over, said = spare < laid->spoken.spare ? spare : laid->spoken.spare;
    mpt gap = SECTION_GAP + (spare - said) / 2;
    gap = gap > SECTION_GAP_MOST ? SECTION_GAP_MOST : gap;
    next.height = laid->spoken.height + said;
    if (has_call(pen)) {
        spoken_place(pen, &laid->spoken, next);
        next.y += next.height + gap;
    }
    next.height = laid->across.height;
    column_place(pen, &laid->across, next);
    left.y = right.y = next.y + next.height + gap;
    left.height = right.height = at[AREA_BODY].y + at[AREA_BODY].height - left.y;
    column_place(pen, &laid->left, left);
    column_place(pen, &laid->right, right);
}

/* ---- what is told where it does not fit ---- */

/* Only what is not done already: a short name to say may be recorded. */
static void distress_tell(struct pen *pen, mpt over)
{
    const struct boat *boat = pen->sheet->boat;
    const char *spoken = text_empty(boat->facts.name_spoken.text) ? "give a short name_spoken, "
                                                                  : "";
    pen_too_long(pen, boat->facts.name.place, over,
                 text_format(pen->arena, "%sgive a short looks, or shorter nature_steps", spoken),
                 "the distress card");
}

/* ---- the page to answer that of others, and to end it ---- */

struct laid_answering { const struct pen *pen; struct area body; struct laid_column column; };

static bool answering_fits_at(void *of, mpt size)
{
    struct laid_answering *laid = of;
    laid->column = column_lay(laid->pen, OTHER_PAGE, size, laid->body.width);
    return laid->column.height <= laid->body.height;
}

static bool answering_place(struct pen *pen, const struct pen *trial, const struct frame *frame)
{
    struct laid_answering laid = {.pen = trial, .body = frame->at[AREA_BODY]};
    answering_fits_at(&laid, size_that_fits(spoken_size_rule(pen->paper), SIZE_STEP,
                                            answering_fits_at, &laid));
    mpt over = laid.column.height - laid.body.height;
    if (over > 0) {
        distress_tell(pen, over);
        return false;
    }
    column_place(pen, &laid.column, laid.body);
    contact_place(pen, frame->at[AREA_CONTACT]);
    return true;
}

bool distress_sheet_place(struct pen *pen, struct pen *trial, const struct shared *shared)
{
    struct frame frame = frame_make(pen->paper, TEMPLATE_DISTRESS, &shared->needs);
    if (!has_call(pen) && sheet_block(pen->sheet, BLOCK_NATURE) == NULL)
        return answering_place(pen, trial, &frame);
    struct laid_sending laid = sending_lay(trial, &shared->needs);
    if (laid.over > 0) {
        distress_tell(pen, laid.over);
        return false;
    }
    sending_place(pen, &laid);
    contact_place(pen, frame.at[AREA_CONTACT]);
    return true;
}

/* rows_block.c - rows of gear by place: which form a row takes, how high it is, and its parts
 * (room: layout). */
#include "row_flow.h"

#include "measures.h"
#include "text.h"

#include <string.h>

struct style row_style(enum face_role face, mpt size)
{
    return (struct style){ROLE_ROW, face, size, INK_BLACK};
}

/* ---- tags ---- */

static struct style row_tag_style(mpt size)
{
    return (struct style){ROLE_ROW, FACE_BOLD, size, INK_WHITE};
}

mpt row_tag_width(const struct pen *pen, const char *tag, mpt size)
{
    struct style style = row_tag_style(size);
    return pen_width(pen, &style, tag) + ROW_TAG_PAD;
}

void row_tag_place(struct pen *pen, const char *tag, mpt size, struct area area,
                   struct place origin)
{
    struct style style = row_tag_style(size);
    mpt height = em_share(size, EM_TAG_BOX), most = area.height - ROW_TAG_SLACK;
    mpt x = area.x + (area.width - pen_width(pen, &style, tag)) / 2;
    mpt baseline = baseline_in(area.y, area.height, size);
    struct area box = area;
    box.height = height > most ? most : height;
    box.y += (area.height - box.height) / 2;
    pen_box(pen, box, INK_BLACK, INK_NONE, 0, TAG_CORNER);
    pen_text(pen, &style, x, baseline, tag, strlen(tag), origin);
}

/* ---- signs ---- */

struct area row_sign_area(const struct pen *pen, mpt x, mpt top)
{
    mpt side = grown(pen->paper, GEAR_SIGN);
    return (struct area){x + grown(pen->paper, ROW_SIGN_AT), top, side, side};
}

static mpt sign_pitch(const struct pen *pen)
{
    return grown(pen->paper, ROW_SIGN_PITCH);
}

static size_t sign_lines(const struct row_setting *setting, const struct card_row *row)
{
    return (row->item_count + setting->signs - 1) / setting->signs;
}

static mpt signs_height(const struct pen *pen, const struct row_setting *setting,
                        const struct card_row *row)
{
    return (mpt)(sign_lines(setting, row) - 1) * sign_pitch(pen) + grown(pen->paper, GEAR_SIGN);
}

/* One that stands alone on its line stands next to the words. */
static size_t sign_column(const struct row_setting *setting, const struct card_row *row,
                          size_t index)
{
    bool alone = index % setting->signs == 0 && index + 1 == row->item_count;
    return alone ? setting->signs - 1 : index % setting->signs;
}

static void row_signs_place(struct pen *pen, const struct row_setting *setting,
                        const struct card_row *row, struct area area)
{
    mpt pitch = sign_pitch(pen);
    mpt top = area.y + (area.height - signs_height(pen, setting, row)) / 2;
    for (size_t i = 0; i < row->item_count; i++) {
        const struct row_item *item = &row->items[i];
        struct area sign = row_sign_area(pen, area.x, top + (mpt)(i / setting->signs) * pitch);
        sign.x += (mpt)sign_column(setting, row, i) * pitch;
        pen_symbol(pen, sign, item->kind->symbol, item->origin);
    }
}

/* ---- how they are set ---- */

/* Places are larger than names where these are not at their floor. */
static mpt place_size_of(const struct pen *pen, mpt size)
{
    mpt enough = size_rule(pen->paper, ROLE_ROW).floor + PLACE_LARGER_FROM;
    return size >= enough ? size + PLACE_LARGER : size;
}

struct row_setting row_setting_make(const struct pen *pen, mpt size, mpt width)
{
    return (struct row_setting){.size = size, .place_size = place_size_of(pen, size),
                                .width = width, .signs = 1,
                                .located = pen_plan(pen)->marker_count > 0};
}

void row_setting_widen(const struct pen *pen, struct row_setting *setting,
                       const struct card_row *rows, size_t count)
{
    for (size_t r = 0; r < count; r++) {
        setting->signs = rows[r].item_count > 1 ? 2 : setting->signs;
        for (size_t i = 0; i < rows[r].item_count; i++)
            for (size_t t = 0; t < rows[r].items[i].tag_count; t++) {
                mpt width = row_tag_width(pen, rows[r].items[i].tags[t], setting->size);
                setting->tag = width > setting->tag ? width : setting->tag;
            }
    }
}

static mpt words_from_left(const struct pen *pen, const struct row_setting *setting)
{
    return grown(pen->paper, ROW_WORDS_AT) + (mpt)(setting->signs - 1) * sign_pitch(pen);
}

/* From the left edge of the column to where the words of such a row end. */
static mpt words_to_right(const struct pen *pen, const struct row_setting *setting,
                          enum row_form form)
{
    bool located = setting->located && form != ROW_BARE;
    return setting->width - (located ? grown(pen->paper, LOCATOR_WIDTH) + LOCATOR_GAP : 0);
}

/* ---- a row ---- */

static struct row_flow flow_of(const struct pen *pen, struct pen *on,
                               const struct row_setting *setting, enum row_form form)
{
    return (struct row_flow){.pen = pen, .on = on, .setting = setting, .form = form,
                             .left = words_from_left(pen, setting),
                             .right = words_to_right(pen, setting, form)};
}

static mpt words_height(const struct row_setting *setting, const struct laid_row *laid)
{
    mpt place = (mpt)laid->place_lines * line_pitch(ROLE_ROW, setting->place_size);
    mpt gear = (mpt)laid->item_lines * line_pitch(ROLE_ROW, setting->size);
    return laid->form == ROW_OF_LINES ? place + gear : place;
}

static void row_height_set(const struct pen *pen, const struct row_setting *setting,
                           struct laid_row *laid)
{
    mpt words = words_height(setting, laid) + ROW_CLEAR;
    mpt signs = signs_height(pen, setting, laid->row) + ROW_SIGN_CLEAR;
    laid->height = words > signs ? words : signs;
    laid->signs_down = (laid->height - signs + ROW_SIGN_CLEAR) / 2;
}

struct laid_row row_lay(const struct pen *pen, const struct row_setting *setting,
                        const struct card_row *row, enum row_form form)
{
    struct row_flow flow = flow_of(pen, NULL, setting, form);
    struct laid_row laid = {.row = row, .form = form};
    row_flow_run(&flow, row, (struct point){0, 0}, 0);
    laid.place_lines = flow.place_lines;
    laid.item_lines = flow.item_lines;
    laid.over = flow.over;
    laid.over_at = flow.over_at;
    row_height_set(pen, setting, &laid);
    return laid;
}

static bool is_on_plan(const struct pen *pen, const char *tag)
{
    const struct plan_facts *plan = pen_plan(pen);
    for (size_t m = 0; m < plan->marker_count; m++)
        if (text_equal(tag, plan->markers[m].tag))
            return true;
    return false;
}

/* The tag that tells where the row's place is: the first that the plan shows; NULL: it shows
 * none. */
static const char *row_tag_shown(const struct pen *pen, const struct card_row *row)
{
    for (size_t i = 0; i < row->item_count; i++)
        for (size_t t = 0; t < row->items[i].tag_count; t++)
            if (is_on_plan(pen, row->items[i].tags[t]))
                return row->items[i].tags[t];
    return NULL;
}

static void row_locator_place(struct pen *pen, const struct card_row *row, struct area area)
{
    mpt width = grown(pen->paper, LOCATOR_WIDTH), most = grown(pen->paper, LOCATOR_HEIGHT);
    mpt height = area.height - LOCATOR_CLEAR < most ? area.height - LOCATOR_CLEAR : most;
    const char *tag = row_tag_shown(pen, row);
    if (tag != NULL)
        locator_place(pen, (struct area){area.x + area.width - width,
                                         area.y + (area.height - height) / 2, width, height}, tag);
}

void row_place(struct pen *pen, const struct row_setting *setting, const struct laid_row *laid,
               struct area area)
{
    struct row_flow flow = flow_of(pen, pen, setting, laid->form);
    mpt words = words_height(setting, laid);
    size_t outer = reading_begin(pen, READING_LINE);
    row_signs_place(pen, setting, laid->row, area);
    row_flow_run(&flow, laid->row, (struct point){area.x, area.y + (area.height - words) / 2},
                 words);
    if (setting->located && laid->form != ROW_BARE)
        row_locator_place(pen, laid->row, area);
    reading_end(pen, outer);
}

/* ---- what is too long ---- */

int letters_of(mpt width, mpt size)
{
    mpt letter = em_share(size, EM_LETTER);
    return (int)((width + letter - 1) / letter);
}

mpt row_place_over(const struct pen *pen, const struct row_setting *setting,
                   const struct card_row *row)
{
    struct row_flow flow = flow_of(pen, NULL, setting, ROW_ON_ONE_LINE);
    struct card_row place = *row;
    place.item_count = 0;
    row_flow_run(&flow, &place, (struct point){0, 0}, 0);
    return flow.over;
}

bool too_long_tell(struct pen *pen, struct place origin, mpt over, mpt size, const char *what)
{
    int letters = letters_of(over, size);
    if (over <= 0)
        return false;
    pen_too_long(pen, origin, over,
                 text_format(pen->arena, "shorten spot, how or name of this entry by about %d "
                             "letter%s", letters, letters == 1 ? "" : "s"),
                 what);
    return true;
}

/* ---- the block of rows ---- */

struct laid_rows rows_lay(const struct pen *pen, mpt size, mpt width)
{
    const struct rows_facts *rows = sheet_rows(pen->sheet);
    struct laid_row *laid_rows = arena_array(pen->arena, rows->count, sizeof *laid_rows);
    struct laid_rows laid = {.setting = row_setting_make(pen, size, width), .rows = laid_rows,
                             .count = rows->count, .excess = -width};
    row_setting_widen(pen, &laid.setting, rows->rows, rows->count);
    for (size_t r = 0; r < rows->count; r++) {
        laid_rows[r] = row_lay(pen, &laid.setting, &rows->rows[r], ROW_OF_LINES);
        laid.excess = laid_rows[r].over > laid.excess ? laid_rows[r].over : laid.excess;
        laid.height += laid_rows[r].height;
    }
    return laid;
}

bool rows_excess_tell(struct pen *pen, const struct laid_rows *laid)
{
    bool told = false;
    for (size_t r = 0; r < laid->count; r++)
        told |= too_long_tell(pen, laid->rows[r].over_at, laid->rows[r].over,
                              laid->setting.size, "a line of the list");
    return told;
}

void rows_place(struct pen *pen, const struct laid_rows *laid, struct area column)
{
    mpt count = (mpt)laid->count, extra = column.height - laid->height;
    mpt share = count > 0 && extra > 0 ? extra / count : 0;
    share = share > ROW_EXTRA_MOST ? ROW_EXTRA_MOST : share;
    pen->block = BLOCK_ROWS;
    for (size_t r = 0; r < laid->count; r++, column.y += column.height) {
        column.height = laid->rows[r].height + share;
        row_place(pen, &laid->setting, &laid->rows[r], column);
    }
}

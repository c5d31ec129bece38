/* label_block.c - the label of a place on the safety plan (room: layout): its name over a
 * rule, then sign, tags and name of each kind of gear there. It is laid out once at a size
 * and placed as it was. */
#include "measures.h"
#include "safety.h"

#include <string.h>

static struct style label_style(enum face_role face, mpt size, enum ink ink)
{
    return (struct style){ROLE_BOX, face, size, ink};
}

/* A line of gear is as high as its sign, or as its words where they are large. */
static mpt row_least(const struct pen *pen, mpt size)
{
    mpt line = line_pitch(ROLE_BOX, size), sign = grown(pen->paper, LABEL_ROW_LEAST);
    return line > sign ? line : sign;
}

static mpt sign_side(const struct pen *pen)
{
    return grown(pen->paper, GEAR_SIGN);
}

/* Below what reaches under the line, as p and y do. */
mpt label_drop(mpt size)
{
    return line_pitch(ROLE_BOX, size) + LABEL_RULE_DROP;
}

/* ---- chips: the tags of a line of gear ---- */

static mpt chip_width(const struct pen *pen, const char *chip, mpt size)
{
    struct style style = label_style(FACE_BOLD, size, INK_WHITE);
    return pen_width(pen, &style, chip) + CHIP_PAD;
}

static mpt chip_height(mpt size)
{
    return em_share(size, EM_TAG_BOX);
}

static mpt chips_width(const struct pen *pen, const struct plan_row *row, mpt size)
{
    mpt width = 0;
    for (size_t i = 0; i < row->chip_count; i++)
        width += chip_width(pen, row->chips[i], size) + CHIP_GAP;
    return width;
}

/* Lines of chips when they wrap within the width. */
static mpt chip_lines(const struct pen *pen, const struct plan_row *row, mpt size, mpt width)
{
    mpt x = 0, lines = 1;
    for (size_t i = 0; i < row->chip_count; i++) {
        mpt own = chip_width(pen, row->chips[i], size);
        if (x > 0 && x + own > width) {
            x = 0;
            lines++;
        }
        x += own + CHIP_GAP;
    }
    return lines;
}

/* From the area's corner, wrapped within its width. */
static void chips_place(struct pen *pen, const struct plan_row *row, enum level level, mpt size,
                        struct area area)
{
    struct style style = label_style(FACE_BOLD, size, INK_WHITE);
    struct area chip = {area.x, area.y, 0, chip_height(size)};
    for (size_t i = 0; i < row->chip_count; i++) {
        chip.width = chip_width(pen, row->chips[i], size);
        if (chip.x > area.x && chip.x + chip.width > area.x + area.width) {
            chip.x = area.x;
            chip.y += chip.height + CHIP_GAP;
        }
        tag_chip_draw(pen, chip, level, row->chips[i], &style, row->origin);
        chip.x += chip.width + CHIP_GAP;
    }
}

/* ---- a line of gear, laid out ---- */

static const char *row_words(const struct pen *pen, const struct plan_row *row)
{
    if (text_empty(row->detail))
        return text_format(pen->arena, "**%s**", row->name);
    return text_format(pen->arena, "**%s** %s", row->name, row->detail);
}

/* On more lines than one the name is not torn, nor the words behind it, if each has
 * room on a line and that takes no more lines. */
static void row_break(const struct pen *pen, struct paragraph *words)
{
    size_t name = 0, count = words->piece_count;
    bool *keep = arena_array(pen->arena, count + 1, sizeof *keep);
    while (name < count && words->pieces[name].bold)
        name++;
    bool keep_name = paragraph_length(words, 0, name) <= words->width;
    bool keep_rest = paragraph_length(words, name, count) <= words->width;
    for (size_t i = 0; i < count; i++)
        keep[i] = i < name ? keep_name : i > name && keep_rest;
    paragraph_keep(words, keep, pen->arena);
}

/* With its words where `laid` has them begin. */
static struct laid_row row_words_lay(const struct pen *pen, struct laid_row laid, mpt size,
                                     mpt width)
{
    struct style style = label_style(FACE_TEXT, size, INK_BLACK);
    laid.words = paragraph_make(pen, &style, row_words(pen, laid.row), width - laid.text_x,
                                laid.row->origin);
    if (laid.words.line_count > 1)
        row_break(pen, &laid.words);
    laid.height = laid.text_down + paragraph_height(&laid.words);
    if (laid.height < row_least(pen, size))
        laid.height = row_least(pen, size);
    return laid;
}

static struct laid_row row_behind_tags(const struct pen *pen, const struct plan_row *row,
                                       mpt size, mpt width)
{
    struct laid_row laid = {.row = row, .text_x = sign_side(pen) + LABEL_SIGN_GAP};
    if (row->chip_count > 0)
        laid.text_x += chips_width(pen, row, size) + LABEL_TEXT_GAP - CHIP_GAP;
    return row_words_lay(pen, laid, size, width);
}

static struct laid_row row_below_tags(const struct pen *pen, const struct plan_row *row, mpt size,
                                      mpt width)
{
    struct laid_row laid = {.row = row, .text_x = sign_side(pen) + LABEL_SIGN_GAP};
    laid.text_down = chip_lines(pen, row, size, width - laid.text_x) *
                     (chip_height(size) + CHIP_GAP);
    return row_words_lay(pen, laid, size, width);
}

/* Words stand below tags that leave them little room, where that takes less height. */
static struct laid_row row_lay(const struct pen *pen, const struct plan_row *row, mpt size,
                               mpt width)
{
    struct laid_row behind = row_behind_tags(pen, row, size, width);
    if (row->chip_count == 0 || behind.words.line_count < 2)
        return behind;
    struct laid_row below = row_below_tags(pen, row, size, width);
    bool narrow = row->chip_count > 1 && behind.words.width < LABEL_TEXT_LEAST;
    return narrow || below.height < behind.height ? below : behind;
}

mpt label_row_cut(const struct laid_row *laid)
{
    mpt over = paragraph_length(&laid->words, 0, laid->words.piece_count) - laid->words.width;
    return over > 0 ? over : 0;
}

mpt label_line_saved(const struct pen *pen, mpt size)
{
    return 2 * line_pitch(ROLE_BOX, size) - row_least(pen, size);
}

static void row_of_label_place(struct pen *pen, const struct laid_row *laid, enum level level,
                               struct area area)
{
    mpt line = laid->words.line_height, size = laid->words.style.size;
    bool single = laid->text_down == 0 && laid->words.line_count == 1;
    mpt down = single ? (row_least(pen, size) - line) / 2 : 0;
    mpt side = sign_side(pen), sign_top = area.y + (row_least(pen, size) - side) / 2;
    struct area sign = {area.x, sign_top, side, side};
    struct area chips = area;
    chips.x += sign_side(pen) + LABEL_SIGN_GAP;
    chips.width -= sign_side(pen) + LABEL_SIGN_GAP;
    chips.y += laid->text_down > 0 ? 0 : down + (line - chip_height(size)) / 2;
    size_t outer = reading_begin(pen, READING_LINE);
    pen_symbol(pen, sign, laid->row->kind->symbol, laid->row->origin);
    chips_place(pen, laid->row, level, size, chips);
    paragraph_place(pen, &laid->words, area.x + laid->text_x, area.y + down + laid->text_down);
    reading_end(pen, outer);
}

/* ---- the label ---- */

static struct paragraph words_of_label(const struct pen *pen, const char *text, mpt size,
                                       mpt width, struct place origin)
{
    struct style style = label_style(FACE_TEXT, size, INK_BLACK);
    return paragraph_make(pen, &style, text, width, origin);
}

static mpt title_height(const struct laid_label *laid)
{
    return paragraph_height(&laid->title) + LABEL_TITLE_GAP;
}

struct laid_label label_lay(const struct pen *pen, const struct plan_place *place, mpt size,
                            mpt width)
{
    struct laid_label laid = {.place = place, .width = width, .row_count = place->row_count};
    laid.rows = arena_array(pen->arena, laid.row_count, sizeof *laid.rows);
    laid.title = words_of_label(pen, place->title, size, width, place->marker.origin);
    laid.height = title_height(&laid);
    for (size_t i = 0; i < laid.row_count; i++) {
        laid.rows[i] = row_lay(pen, &place->rows[i], size, width);
        laid.height += laid.rows[i].height;
    }
    return laid;
}

struct laid_label here_lay(const struct pen *pen, mpt size, mpt width)
{
    const struct places_facts *safety = sheet_places(pen->sheet);
    const char *title = text_format(pen->arena, "**%s**", safety->here_word);
    struct laid_label laid = {.width = width};
    laid.title = words_of_label(pen, title, size, width, safety->here.origin);
    laid.here = words_of_label(pen, safety->here_words, size, width, safety->here.origin);
    laid.height = title_height(&laid) + paragraph_height(&laid.here);
    return laid;
}

/* The rule closes the first line, so that leaders always meet it at one height. */
static void title_of_label_place(struct pen *pen, const struct laid_label *laid, mpt x, mpt top)
{
    mpt y = top + label_drop(laid->title.style.size);
    size_t outer = reading_begin(pen, READING_HEADING);
    paragraph_place(pen, &laid->title, x, top);
    reading_end(pen, outer);
    pen_line(pen, (struct point){x, y}, (struct point){x + laid->width, y}, INK_BLACK, HAIR);
}

void label_place(struct pen *pen, const struct laid_label *laid, mpt x, mpt top)
{
    pen->block = BLOCK_LABELS;
    size_t outer = reading_begin(pen, READING_GROUP);
    title_of_label_place(pen, laid, x, top);
    top += title_height(laid);
    paragraph_place(pen, &laid->here, x, top);
    for (size_t i = 0; i < laid->row_count; i++) {
        row_of_label_place(pen, &laid->rows[i], laid->place->marker.level,
                           (struct area){x, top, laid->width, 0});
        top += laid->rows[i].height;
    }
    reading_end(pen, outer);
}

void label_leader_place(struct pen *pen, const struct label *label, enum ink ink, mpt width)
{
    pen_line(pen, label->from, label->to, ink, width);
    pen_part(pen, PART_LEADER);
}

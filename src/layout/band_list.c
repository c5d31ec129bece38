/* band_list.c - a list beside the safety plan's boat: names of places, and under each a row a
 * piece of gear with sign, tag, name and spot (room: layout). A row is laid out once at the
 * largest size that keeps it on one line, else its spot has lines of its own. */
#include "measures.h"
#include "safety.h"

#include <string.h>

/* ---- sizes ---- */

static mpt row_floor(const struct pen *pen)
{
    return size_rule(pen->paper, ROLE_ROW).floor;
}

/* What has room on one line is set so much larger. */
static mpt row_large(const struct pen *pen)
{
    return em_share(row_floor(pen), EM_LABEL_LARGE);
}

static mpt title_size(const struct pen *pen)
{
    return em_share(row_floor(pen), EM_LABEL_TITLE);
}

static mpt sign_side(const struct pen *pen)
{
    return grown(pen->paper, GEAR_SIGN);
}

/* Of one line of it: its capitals, what reaches below them, and room above and below. */
mpt list_title_height(const struct pen *pen)
{
    return LABEL_TITLE_GAP + em_share(title_size(pen), EM_CAPITALS) +
           em_share(title_size(pen), EM_DESCENT) + LABEL_TITLE_FOOT;
}

static struct style chip_style(const struct pen *pen)
{
    return (struct style){ROLE_ROW, FACE_BOLD, row_floor(pen), INK_WHITE};
}

struct list_style list_style_of(const struct pen *pen, mpt width)
{
    const struct places_facts *plan = sheet_places(pen->sheet);
    struct style chip = chip_style(pen);
    struct list_style style = {.width = width, .pitch_least = grown(pen->paper, LABEL_PITCH_LEAST),
                               .pitch_most = grown(pen->paper, LABEL_PITCH_MOST)};
    for (size_t i = 0; i < plan->count; i++)
        for (size_t r = 0; r < plan->places[i].row_count; r++) {
            mpt own = pen_width(pen, &chip, plan->places[i].rows[r].marker.tag) + CHIP_PAD;
            style.tag = own > style.tag ? own : style.tag;
        }
    return style;
}

/* ---- laying out ---- */

/* Where the cards hang, there is no sign and no tag. */
static mpt list_words_at(const struct pen *pen, const struct band_row *row,
                    const struct list_style *style)
{
    if (row->row->kind == NULL)
        return 0;
    return sign_side(pen) + LABEL_SIGN_GAP + style->tag + LABEL_TEXT_GAP;
}

static struct paragraph row_words_lay(const struct pen *pen, const struct band_row *row,
                                  const char *text, mpt size, mpt width)
{
    struct style style = {ROLE_ROW, FACE_TEXT, size, INK_BLACK};
    return paragraph_make(pen, &style, text, width, row->row->marker.origin);
}

static const char *name_words(const struct pen *pen, const struct band_row *row)
{
    return text_format(pen->arena, "**%s**", row->row->name);
}

static const char *all_words(const struct pen *pen, const struct band_row *row)
{
    return text_empty(row->row->detail)
               ? name_words(pen, row)
               : text_format(pen->arena, "**%s,** %s", row->row->name, row->row->detail);
}

/* On one line, at the larger size or the least; false: it has no room there. */
static bool one_line_lay(const struct pen *pen, struct laid_row *laid, mpt width)
{
    const mpt sizes[] = {row_large(pen), row_floor(pen)};
    laid->word_count = 1;
    for (size_t i = 0; i < 2; i++) {
        laid->words[0] = row_words_lay(pen, laid->of, all_words(pen, laid->of), sizes[i], width);
        if (laid->words[0].line_count == 1 && laid->words[0].lines[0].width <= width)
            return true;
    }
    return false;
}

static void row_lay(const struct pen *pen, struct laid_row *laid, mpt width)
{
    mpt size = row_floor(pen);
    if (laid->of->row->kind == NULL || !one_line_lay(pen, laid, width)) {
        laid->words[0] = row_words_lay(pen, laid->of, name_words(pen, laid->of), size, width);
        laid->words[1] = row_words_lay(pen, laid->of, laid->of->row->detail, size, width);
        laid->word_count = text_empty(laid->of->row->detail) ? 1 : 2;
    }
    for (int i = 0; i < laid->word_count; i++)
        laid->words_height += paragraph_height(&laid->words[i]);
}

/* How far letters of the first line reach over capitals, as accents do. */
static mpt accents_height(const struct pen *pen, const char *title)
{
    struct style style = {ROLE_ROW, FACE_BOLD, title_size(pen), INK_BLACK};
    mpt over = -pen_ink(pen, &style, title, strlen(title)).top -
               em_share(style.size, EM_CAPITALS);
    return over > 0 ? over : 0;
}

/* A place that is not the first of its list is parted from the row over it. */
static void title_lay(const struct pen *pen, struct laid_row *laid, mpt width, mpt over)
{
    struct style style = {ROLE_ROW, FACE_TEXT, title_size(pen), INK_BLACK};
    const struct plan_place *place = laid->of->place;
    const char *text = text_format(pen->arena, "**%s**", place->title);
    if (!laid->of->headed)
        return;
    laid->title = paragraph_make(pen, &style, text, width, place->marker.origin);
    laid->title_over = over;
    laid->title_base = LABEL_TITLE_GAP + accents_height(pen, place->title) +
                       em_share(style.size, EM_CAPITALS);
    laid->title_height = over + laid->title_base + em_share(style.size, EM_DESCENT) +
                         paragraph_height(&laid->title) - laid->title.line_height +
                         LABEL_TITLE_FOOT;
}

struct laid_list list_lay(const struct pen *pen, const struct band_list *list,
                          const struct list_style *style)
{
    struct laid_list laid = {arena_array(pen->arena, list->count + 1, sizeof *laid.rows),
                             list->count};
    for (size_t i = 0; i < list->count; i++) {
        laid.rows[i].of = &list->rows[i];
        title_lay(pen, &laid.rows[i], style->width, i > 0 ? LABEL_PLACE_GAP : 0);
        row_lay(pen, &laid.rows[i], style->width - list_words_at(pen, &list->rows[i], style));
    }
    return laid;
}

/* ---- heights ---- */

static mpt list_row_height(const struct laid_row *row, mpt pitch)
{
    mpt words = row->words_height;
    return words > pitch ? words : pitch;
}

mpt list_height(const struct laid_list *list, mpt pitch)
{
    mpt height = 0;
    for (size_t i = 0; i < list->count; i++)
        height += list->rows[i].title_height + list_row_height(&list->rows[i], pitch);
    return height;
}

mpt list_row_middle(const struct laid_list *list, size_t row, mpt pitch)
{
    struct laid_list before = {list->rows, row};
    const struct laid_row *laid = &list->rows[row];
    return list_height(&before, pitch) + laid->title_height + list_row_height(laid, pitch) / 2;
}

static mpt list_words_width(const struct laid_row *row)
{
    mpt widest = 0;
    for (int w = 0; w < row->word_count; w++)
        for (size_t i = 0; i < row->words[w].line_count; i++)
            if (row->words[w].lines[i].width > widest)
                widest = row->words[w].lines[i].width;
    return widest;
}

mpt list_row_end(const struct laid_row *row, const struct list_style *style)
{
    return style->width - row->words[0].width + list_words_width(row);
}

mpt list_row_cut(const struct pen *pen, const struct laid_row *row,
                 const struct list_style *style)
{
    mpt width = style->width - list_words_at(pen, row->of, style);
    struct paragraph line = row_words_lay(pen, row->of, all_words(pen, row->of), row_floor(pen),
                                      ANY_WIDTH);
    mpt over = line.lines[0].width - width;
    return over > 0 ? over : 0;
}

mpt list_line_saved(const struct laid_row *row, const struct list_style *style)
{
    return list_row_height(row, style->pitch_least) - style->pitch_least;
}

/* ---- placing ---- */

void tag_chip_draw(struct pen *pen, struct area box, enum level level, const char *tag,
                   const struct style *style, struct place origin)
{
    mpt width = pen_width(pen, style, tag);
    pen_box(pen, box, INK_BLACK, INK_WHITE, TAG_RIM,
            level == LEVEL_BELOW ? box.height / 2 : 0);
    pen_text(pen, style, box.x + (box.width - width) / 2,
             baseline_in(box.y, box.height, style->size), tag, strlen(tag), origin);
}

/* A line over it, since a band begins there or another place. */
static void list_title_place(struct pen *pen, const struct laid_row *row, struct point corner,
                        mpt width)
{
    mpt base = baseline_in(0, row->title.line_height, row->title.style.size);
    size_t outer = reading_begin(pen, READING_HEADING);
    pen_line(pen, corner, (struct point){corner.x + width, corner.y}, INK_BLACK, HAIR);
    paragraph_place(pen, &row->title, corner.x, corner.y + row->title_base - base);
    reading_end(pen, outer);
}

static void sign_and_tag_place(struct pen *pen, const struct laid_row *row,
                               const struct list_style *style, struct point middle_left)
{
    struct style chip = chip_style(pen);
    mpt side = sign_side(pen), high = em_share(chip.size, EM_TAG_BOX);
    const struct marker *marker = &row->of->row->marker;
    struct area sign = {middle_left.x, middle_left.y - side / 2, side, side};
    struct area box = {middle_left.x + side + LABEL_SIGN_GAP, middle_left.y - high / 2,
                       style->tag, high};
    pen_symbol(pen, sign, row->of->row->kind->symbol, marker->origin);
    tag_chip_draw(pen, box, marker->level, marker->tag, &chip, marker->origin);
}

static void row_words_place(struct pen *pen, const struct laid_row *row, struct point middle_left)
{
    mpt top = middle_left.y - row->words_height / 2;
    for (int i = 0; i < row->word_count; i++) {
        paragraph_place(pen, &row->words[i], middle_left.x, top);
        top += paragraph_height(&row->words[i]);
    }
}

static void row_place_at(struct pen *pen, const struct laid_row *row,
                         const struct list_style *style, struct point middle_left)
{
    size_t outer = reading_begin(pen, READING_LINE);
    if (row->of->row->kind != NULL)
        sign_and_tag_place(pen, row, style, middle_left);
    middle_left.x += list_words_at(pen, row->of, style);
    row_words_place(pen, row, middle_left);
    reading_end(pen, outer);
}

/* A place and its rows are read together. */
void list_place(struct pen *pen, const struct laid_list *list, const struct list_style *style,
                struct point corner, mpt pitch)
{
    mpt top = corner.y;
    size_t outer = 0;
    pen->block = BLOCK_LABELS;
    for (size_t i = 0; i < list->count; i++) {
        const struct laid_row *row = &list->rows[i];
        if (row->of->headed) {
            if (i > 0)
                reading_end(pen, outer);
            outer = reading_begin(pen, READING_GROUP);
            list_title_place(pen, row, (struct point){corner.x, top + row->title_over},
                             style->width);
        }
        row_place_at(pen, row, style,
                     (struct point){corner.x, corner.y + list_row_middle(list, i, pitch)});
        top += row->title_height + list_row_height(row, pitch);
    }
    if (list->count > 0)
        reading_end(pen, outer);
}

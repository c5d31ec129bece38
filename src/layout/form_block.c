/* form_block.c - a section of a form: a dark bar with its title, the heads of its columns, and
 * lines ruled off from each other, with signs, words, boxes to tick and lines to write upon (room:
 * layout). No word is cut short: what is too wide is told. */
#include "form_block.h"

#include "measures.h"
#include "rows.h"

#include <string.h>

static struct style form_style(const struct pen *pen, enum face_role face, enum ink ink)
{
    return (struct style){ROLE_ROW, face, size_rule(pen->paper, ROLE_ROW).floor, ink};
}

static struct style cell_style(const struct pen *pen, enum form_voice voice)
{
    if (voice == FORM_SPOKEN)
        return (struct style){ROLE_SCRIPT, FACE_TEXT, size_rule(pen->paper, ROLE_SCRIPT).floor,
                              INK_BLACK};
    return form_style(pen, voice == FORM_STRONG ? FACE_BOLD : FACE_TEXT, INK_BLACK);
}

static mpt larger_of(mpt a, mpt b)
{
    return a > b ? a : b;
}

/* ---- widths of columns ---- */

static mpt tag_width(const struct pen *pen, const char *tag)
{
    struct style style = form_style(pen, FACE_BOLD, INK_BLACK);
    return text_empty(tag) ? 0 : pen_width(pen, &style, tag) + ROW_TAG_PAD + FORM_SIGN_GAP;
}

/* What a cell is wide by itself; of words that may break, nothing. */
static mpt cell_width(const struct pen *pen, enum form_cell_kind kind,
                      const struct form_cell *cell)
{
    struct style style = form_style(pen, FACE_BOLD, INK_BLACK);
    switch (kind) {
    case FORM_NUMBER:
        return pen_width(pen, &style, cell->text);
    case FORM_SIGN:
        return grown(pen->paper, GEAR_SIGN) + tag_width(pen, cell->text);
    case FORM_TICK:
        return FORM_TICK_BOX;
    case FORM_TEXT: case FORM_BLANK:
        break;
    }
    return 0;
}

/* The widest word of a head stands on one line. */
static mpt head_width(const struct pen *pen, const char *head)
{
    struct style style = form_style(pen, FACE_BOLD, INK_BLACK);
    return paragraph_new(pen, &style, head, ANY_WIDTH).widest_piece;
}

static bool takes_share(const struct form_column *column)
{
    return column->kind == FORM_TEXT || column->kind == FORM_BLANK;
}

static mpt column_width(const struct pen *pen, const struct form_section *section, size_t index,
                        mpt width)
{
    const struct form_column *column = &section->columns[index];
    mpt widest = head_width(pen, column->head);
    if (takes_share(column))
        return (mpt)((int64_t)width * column->share / 1000);
    for (size_t i = 0; i < section->line_count; i++)
        widest = larger_of(widest,
                           cell_width(pen, column->kind, &section->lines[i].cells[index]));
    return widest + 2 * (column->kind == FORM_TICK ? FORM_TICK_PAD : FORM_PAD_X);
}

static void column_widths_find(const struct pen *pen, struct laid_form_section *laid, mpt width)
{
    const struct form_section *section = laid->section;
    mpt left = width;
    size_t sharing = 0;
    for (size_t i = 0; i < section->column_count; i++) {
        laid->width[i] = column_width(pen, section, i, width);
        left -= laid->width[i];
        sharing += laid->width[i] == 0 ? 1 : 0;
    }
    for (size_t i = 0; i < section->column_count; i++)
        if (laid->width[i] == 0)
            laid->width[i] = left / (mpt)sharing;
}

/* ---- lines ---- */

/* The words of a blank take half of its width at most; what is left is to be written upon. */
static mpt cell_words_width(const struct laid_form_section *laid, size_t index)
{
    mpt inner = laid->width[index] - 2 * FORM_PAD_X;
    return laid->section->columns[index].kind == FORM_BLANK ? inner * 3 / 5 : inner;
}

static mpt cell_height(const struct pen *pen, const struct laid_form_section *laid, size_t index,
                       const struct laid_form_line *line, const struct form_cell *cell)
{
    mpt words = paragraph_height(&line->words[index]) + 2 * FORM_PAD_Y;
    switch (laid->section->columns[index].kind) {
    case FORM_NUMBER: case FORM_TEXT:
        return text_empty(cell->text) ? 0 : words;
    case FORM_SIGN:
        return cell->kind == NULL && text_empty(cell->text)
                   ? 0 : grown(pen->paper, GEAR_SIGN) + ROW_SIGN_CLEAR + FORM_PAD_Y;
    case FORM_TICK:
        return cell->text == NULL ? 0 : FORM_TICK_BOX + FORM_TICK_CLEAR;
    case FORM_BLANK:
        return cell->text == NULL ? 0
                                  : larger_of(words, FORM_BLANK_ABOVE + FORM_BLANK_DOWN);
    }
    return 0;
}

static bool has_words(enum form_cell_kind kind, const struct form_cell *cell)
{
    return kind != FORM_TICK && kind != FORM_SIGN && !text_empty(cell->text);
}

/* The first column of words; the count where there is none. */
static size_t words_column(const struct form_section *section)
{
    size_t i = 0;
    while (i < section->column_count && section->columns[i].kind != FORM_TEXT)
        i++;
    return i;
}

/* Where that column has them. */
static mpt indent_of(const struct laid_form_section *laid)
{
    size_t column = words_column(laid->section);
    mpt x = 0;
    for (size_t i = 0; i < column && column < laid->section->column_count; i++)
        x += laid->width[i];
    return x + FORM_PAD_X;
}

/* Of that column and of those behind it, as far as the line has nothing in them. */
static mpt words_room(const struct laid_form_section *laid, const struct form_line *line)
{
    size_t column = words_column(laid->section);
    mpt room = laid->width[column] - 2 * FORM_PAD_X;
    for (size_t i = column + 1; i < laid->section->column_count; i++) {
        if (laid->section->columns[i].kind != FORM_TICK || line->cells[i].text != NULL)
            break;
        room += laid->width[i];
    }
    return room;
}

/* What words of one line leave of it. */
static mpt room_beside(const struct laid_form_section *laid, const struct form_line *line,
                       const struct laid_form_line *out)
{
    size_t column = words_column(laid->section);
    if (column == laid->section->column_count || out->words[column].line_count != 1)
        return 0;
    mpt room = words_room(laid, line) - out->words[column].lines[0].width - FORM_ASKED_APART;
    return room > 0 ? room : 0;
}

static void line_lay(const struct pen *pen, struct laid_form_section *laid, mpt width,
                     const struct form_line *line, struct laid_form_line *out)
{
    struct style style = cell_style(pen, line->voice), asked = cell_style(pen, FORM_PLAIN);
    out->cells = 0;
    for (size_t i = 0; i < laid->section->column_count; i++) {
        const struct form_cell *cell = &line->cells[i];
        mpt inner = cell_words_width(laid, i);
        out->words[i] = (struct paragraph){.line_count = 0};
        if (has_words(laid->section->columns[i].kind, cell))
            out->words[i] = paragraph_make(pen, &style, cell->text, inner, line->origin);
        if (out->words[i].line_count > 0 && out->words[i].widest_piece > inner && !laid->wide) {
            laid->wide = true;
            laid->wide_at = line->origin;
        }
        out->cells = larger_of(out->cells, cell_height(pen, laid, i, out, cell));
    }
    struct blank_space space = {width - laid->indent - FORM_PAD_X, room_beside(laid, line, out)};
    out->beside = space.beside == 0 ? 0 : laid->indent + words_room(laid, line) - space.beside;
    out->blanks = blanks_lay(pen, &asked, line, space);
    if (out->blanks.beside > 0)
        out->cells = larger_of(out->cells, FORM_BLANK_ROW);
    if (out->blanks.over > 0 && !laid->wide) {
        laid->wide = true;
        laid->wide_at = line->origin;
    }
    out->height = out->cells + out->blanks.height;
}

static mpt head_room(const struct laid_form_section *laid, size_t column)
{
    bool tick = laid->section->columns[column].kind == FORM_TICK;
    return laid->width[column] - 2 * (tick ? FORM_TICK_PAD : FORM_PAD_X);
}

/* Is the title no wider than the columns before the first that has a head, and each head one
 * line? Then the heads stand beside it. */
static bool bar_holds_heads(const struct pen *pen, const struct laid_form_section *laid)
{
    const struct form_section *section = laid->section;
    struct style style = form_style(pen, FACE_BOLD, INK_WHITE);
    mpt room = -2 * FORM_PAD_X, title = pen_width(pen, &style, section->title);
    size_t i = 0;
    for (; i < section->column_count && text_empty(section->columns[i].head); i++)
        room += laid->width[i];
    if (i == section->column_count || title > room)
        return false;
    for (; i < section->column_count; i++)
        if (pen_width(pen, &style, section->columns[i].head) > head_room(laid, i))
            return false;
    return true;
}

static void heads_lay(const struct pen *pen, struct laid_form_section *laid)
{
    laid->heads_in_bar = bar_holds_heads(pen, laid);
    struct style style = form_style(pen, FACE_BOLD, laid->heads_in_bar ? INK_WHITE : INK_BLACK);
    mpt highest = 0;
    for (size_t i = 0; i < laid->section->column_count; i++) {
        const char *head = laid->section->columns[i].head;
        laid->head.words[i] = paragraph_make(pen, &style, head,
                                             head_room(laid, i), pen->sheet->origin);
        if (!text_empty(head))
            highest = larger_of(highest, paragraph_height(&laid->head.words[i]));
    }
    laid->head.cells = highest == 0 ? 0 : highest + 2 * FORM_PAD_Y;
    laid->head.height = laid->heads_in_bar ? 0 : laid->head.cells;
}

static void form_note_lay(const struct pen *pen, struct laid_form_section *laid, mpt width)
{
    struct style style = cell_style(pen, FORM_PLAIN);
    if (text_empty(laid->section->note))
        return;
    laid->note = paragraph_make(pen, &style, laid->section->note, width - 2 * FORM_PAD_X,
                                pen->sheet->origin);
    laid->note_height = paragraph_height(&laid->note) + 2 * FORM_PAD_Y;
}

struct laid_form_section form_section_lay(const struct pen *pen,
                                          const struct form_section *section, mpt width)
{
    struct style title = form_style(pen, FACE_BOLD, INK_WHITE);
    struct laid_form_section laid = {.section = section};
    column_widths_find(pen, &laid, width);
    laid.title = paragraph_make(pen, &title, section->title, width - 2 * FORM_PAD_X,
                                pen->sheet->origin);
    laid.bar = paragraph_height(&laid.title) + 2 * FORM_BAR_PAD;
    form_note_lay(pen, &laid, width);
    heads_lay(pen, &laid);
    laid.indent = indent_of(&laid);
    laid.lines = arena_array(pen->arena, section->line_count, sizeof *laid.lines);
    laid.height = laid.bar + laid.note_height + laid.head.height;
    for (size_t i = 0; i < section->line_count; i++) {
        line_lay(pen, &laid, width, &section->lines[i], &laid.lines[i]);
        laid.height += laid.lines[i].height;
    }
    return laid;
}

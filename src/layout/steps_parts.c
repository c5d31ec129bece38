/* steps_parts.c - headlines of a card at a size; notes, rows, tables and figures at a size (room:
 * layout). It knows no height that they must have room in. */
#include "steps_parts.h"

#include "laid_known.h"
#include "measures.h"
#include "paragraph_known.h"
#include "text.h"

/* ---- what is known ---- */

/* A pen for what stands as long as what is known. */
static struct pen keeping_pen(const struct pen *pen)
{
    struct pen own = *pen;
    if (pen->known != NULL)
        own.arena = paragraphs_arena(pen->known);
    return own;
}

static void **steps_known(const struct pen *pen, enum laid_part part, mpt size, mpt width)
{
    struct laid_key key = {part, sheet_steps(pen->sheet), pen_plan(pen)->marker_count > 0, size,
                           width, pen->sheet->words};
    return part_known(paragraphs_parts(pen->known), &key);
}

/* ---- headlines ---- */

/* Its bold words at the headline's size; the others as much smaller as it needs to have room,
 * down to the floor. */
static struct marked_styles headline_lay(const struct pen *pen, const struct card_step *step,
                                         mpt size, mpt width)
{
    mpt floor = size_rule(pen->paper, ROLE_HEADLINE).floor;
    struct marked_styles styles = {{ROLE_HEADLINE, FACE_TEXT, size - HEADLINE_REST_LESS, INK_BLACK},
                                   {ROLE_HEADLINE, FACE_BOLD, size, INK_BLACK}};
    while (styles.plain.size > floor && marked_width(pen, &styles, step->headline.text) > width)
        styles.plain.size -= SIZE_STEP;
    if (styles.plain.size < floor)
        styles.plain.size = floor;
    return styles;
}

/* On two lines, where one is too long at the floor: a longer language has the same words. Of no
 * lines where one holds it, or two do not. */
static struct paragraph headline_break(const struct pen *pen, const struct card_step *step,
                                       const struct marked_styles *styles, mpt width)
{
    mpt floor = size_rule(pen->paper, ROLE_HEADLINE).floor;
    struct style style = {ROLE_HEADLINE, FACE_TEXT, floor, INK_BLACK};
    struct paragraph none = {.line_count = 0};
    if (styles->bold.size > floor || marked_width(pen, styles, step->headline.text) <= width)
        return none;
    struct paragraph lines = paragraph_make(pen, &style, step->headline.text, width,
                                            step->headline.origin);
    return lines.line_count == 2 ? lines : none;
}

static struct laid_headline *headlines_lay(const struct pen *pen, mpt size, mpt width)
{
    const struct steps_facts *steps = sheet_steps(pen->sheet);
    struct laid_headline *headlines = arena_array(pen->arena, steps->count, sizeof *headlines);
    for (size_t s = 0; s < steps->count; s++) {
        const struct card_step *step = &steps->items[s];
        struct laid_headline *laid = &headlines[s];
        laid->styles = headline_lay(pen, step, size, width);
        laid->lines = headline_break(pen, step, &laid->styles, width);
        laid->excess = marked_width(pen, &laid->styles, step->headline.text) - width;
    }
    return headlines;
}

const struct laid_headline *headlines_of(const struct pen *pen, mpt size, mpt width)
{
    void **known = pen->known != NULL ? steps_known(pen, LAID_HEADLINES, size, width) : NULL;
    if (known != NULL && *known != NULL)
        return *known;
    struct pen keeping = keeping_pen(pen);
    struct laid_headline *headlines = headlines_lay(&keeping, size, width);
    if (known != NULL)
        *known = headlines;
    return headlines;
}

/* ---- what stands below them ---- */

/* What kills there, then what must be so. The sentences of a step run on: few of them fill a
 * line of the column. */
static struct paragraph notes_lay(const struct pen *pen, const struct card_step *step, mpt size,
                                  mpt width)
{
    struct style plain = row_style(FACE_TEXT, size);
    struct text_builder words = text_builder_in(pen->arena);
    for (size_t i = 0; i < step->lethal_count; i++)
        text_add_format(&words, "%s**%s**", i == 0 ? "" : " ",
                        text_plain(pen->arena, step->lethal[i].text));
    for (size_t i = 0; i < step->condition_count; i++)
        text_add_format(&words, "%s%s", words.length == 0 ? "" : " ", step->conditions[i].text);
    if (words.length == 0)
        return (struct paragraph){.line_count = 0};
    return paragraph_make(pen, &plain, words.at, width,
                          step->lethal_count > 0 ? step->lethal[0].origin
                                                 : step->conditions[0].origin);
}

static struct step_body body_lay(const struct pen *pen, const struct card_step *step, mpt size,
                                 mpt width)
{
    struct step_body body = {.notes = notes_lay(pen, step, size, width),
                             .table = table_lay(pen, step, size, width),
                             .figures = figures_lay(pen, step, size, width)};
    for (size_t form = 0; form < ROW_FORM_COUNT; form++)
        body.rows[form] = arena_array(pen->arena, step->row_count, sizeof *body.rows[form]);
    return body;
}

static struct steps_bodies *bodies_lay(const struct pen *pen, mpt size, mpt width)
{
    const struct steps_facts *steps = sheet_steps(pen->sheet);
    struct steps_bodies *bodies = arena_alloc(pen->arena, sizeof *bodies);
    bodies->setting = row_setting_make(pen, size, width);
    bodies->steps = arena_array(pen->arena, steps->count, sizeof *bodies->steps);
    for (size_t s = 0; s < steps->count; s++)
        row_setting_widen(pen, &bodies->setting, steps->items[s].rows, steps->items[s].row_count);
    for (size_t s = 0; s < steps->count; s++)
        bodies->steps[s] = body_lay(pen, &steps->items[s], size, width - step_indent(pen));
    return bodies;
}

const struct steps_bodies *bodies_of(const struct pen *pen, mpt size, mpt width)
{
    void **known = pen->known != NULL ? steps_known(pen, LAID_STEPS, size, width) : NULL;
    if (known != NULL && *known != NULL)
        return *known;
    struct pen keeping = keeping_pen(pen);
    struct steps_bodies *bodies = bodies_lay(&keeping, size, width);
    if (known != NULL)
        *known = bodies;
    return bodies;
}

const struct laid_row *row_in_form(const struct pen *pen, const struct steps_bodies *bodies,
                                   const struct card_step *step, size_t index,
                                   enum row_form form)
{
    size_t at = (size_t)(step - sheet_steps(pen->sheet)->items);
    struct laid_row *row = &bodies->steps[at].rows[form][index];
    if (row->row == NULL)
        *row = row_lay(pen, &bodies->setting, &step->rows[index], form);
    return row;
}

/* form_alone.c - what of a form stands alone on its first page (room: layout). Where that is more
 * than a page, a section that may goes on behind it, and its last line on the page tells so: no
 * line is lost, and what stands first stays. */
#include "form_block.h"

#include "measures.h"

/* Of a section that lets lines go: what it begins with is its gravest. */
enum { LINES_THAT_STAY = 2 };

/* How much higher than the body all of that is; 0 or less: it has room. */
static mpt excess_of(const struct pen *pen, const struct form_facts *form,
                     const struct area *body)
{
    mpt height = 0;
    for (size_t i = 0; i < form->alone; i++) {
        struct laid_form_section laid = form_section_lay(pen, &form->sections[i], body->width);
        height += laid.height + (i == 0 ? 0 : FORM_SECTION_GAP);
    }
    return height - body->height;
}

/* The section that may let lines go; the count where there is none. */
static size_t yielding_section(const struct form_facts *form)
{
    size_t i = 0;
    while (i < form->alone && form->sections[i].rest == NULL)
        i++;
    return i < form->alone ? i : form->count;
}

/* The section without its last `gone` lines, behind which stands the line that tells so. */
static struct form_section section_shortened(const struct form_section *section, size_t gone,
                                             struct arena *arena)
{
    struct form_section shortened = *section;
    size_t stay = section->line_count - gone;
    struct form_line *lines = arena_array(arena, stay + 1, sizeof *lines);
    for (size_t i = 0; i < stay; i++)
        lines[i] = section->lines[i];
    lines[stay] = section->rest[gone - 1];
    shortened.lines = lines;
    shortened.line_count = stay + 1;
    return shortened;
}

/* Those lines, on the page behind. */
static struct form_section section_behind(const struct form_section *section, size_t gone)
{
    struct form_section behind = *section;
    behind.lines = section->lines + section->line_count - gone;
    behind.line_count = gone;
    behind.note = "";
    behind.start = FORM_NEW_PAGE;
    behind.rest = NULL;
    return behind;
}

/* The form with so many lines of that section behind what stands alone. What would have begun the
 * page behind goes on below them. */
static const struct form_facts *form_with_rest(const struct form_facts *form, size_t index,
                                               size_t gone, struct arena *arena)
{
    struct form_facts *out = arena_alloc(arena, sizeof *out);
    struct form_section *sections = arena_array(arena, form->count + 1, sizeof *sections);
    for (size_t i = 0; i < form->count; i++)
        sections[i < form->alone ? i : i + 1] = form->sections[i];
    sections[index] = section_shortened(&form->sections[index], gone, arena);
    sections[form->alone] = section_behind(&form->sections[index], gone);
    if (form->alone < form->count)
        sections[form->alone + 1].start = FORM_GOES_ON;
    *out = (struct form_facts){sections, form->count + 1, form->alone};
    return out;
}

const struct form_facts *form_alone_fit(const struct pen *pen, const struct form_facts *form,
                                        const struct area *body)
{
    size_t index = yielding_section(form);
    const struct form_facts *trial = form;
    if (index == form->count)
        return form;
    for (size_t gone = 1; excess_of(pen, trial, body) > 0 &&
                          gone + LINES_THAT_STAY <= form->sections[index].line_count; gone++)
        trial = form_with_rest(form, index, gone, pen->arena);
    return trial;
}

/* call_told.c - what a call tells, gathered and shown as text (room: app). Says no word of its
 * own. */
#include "call_told.h"

#include "told.h"

static struct call_script *last_script(const struct call_told *told)
{
    return &told->at[told->scripts.count - 1];
}

static struct call_section *last_section(const struct call_told *told)
{
    const struct call_script *script = last_script(told);
    return &script->at[script->sections.count - 1];
}

void told_script_add(struct call_told *told, const char *kind, const char *card,
                     const char *name)
{
    told->at = arena_grow(told->arena, told->at, told->scripts.count, &told->room,
                          sizeof *told->at);
    told->at[told->scripts.count++] = (struct call_script){.kind = kind, .card = card,
                                                           .name = name};
    told->scripts.at = told->at;
    told_section_add(told, NULL);
}

void told_section_add(struct call_told *told, const char *title)
{
    struct call_script *script = last_script(told);
    script->at = arena_grow(told->arena, script->at, script->sections.count, &script->room,
                            sizeof *script->at);
    script->at[script->sections.count++] = (struct call_section){.title = title};
    script->sections.at = script->at;
}

void told_line_add(struct call_told *told, const char *label, const char *between,
                   const char *text)
{
    struct call_section *section = last_section(told);
    section->at = arena_grow(told->arena, section->at, section->lines.count, &section->room,
                             sizeof *section->at);
    section->at[section->lines.count++] = (struct call_line){label, between, text};
    section->lines.at = section->at;
}

void told_lines_add(struct call_told *told, const struct script *script)
{
    for (size_t i = 0; i < script->count; i++)
        told_line_add(told, script->lines[i].label, ": ",
                      script_line_text(&script->lines[i], told->arena));
}

/* ---- as text ---- */

static void section_text_add(const struct call_section *section, struct text_builder *out)
{
    if (!text_empty(section->title))
        text_add_format(out, "%s\n", section->title);
    for (size_t i = 0; i < section->lines.count; i++) {
        const struct call_line *line = &section->at[i];
        text_add_format(out, "%s%s%s\n", line->label == NULL ? "" : line->label,
                        line->label == NULL ? "" : line->between, line->text);
    }
}

/* Where there are several, each below its title. */
void call_text_print(const struct call_told *told, const struct call_place *place,
                     const struct fleet *fleet)
{
    struct text_builder out = text_builder_in(told->arena);
    for (size_t i = 0; i < told->scripts.count; i++) {
        const struct call_script *script = &told->at[i];
        text_add(&out, i > 0 ? "\n" : "");
        if (told->scripts.count > 1)
            text_add_format(&out, "%s:\n", script->name);
        for (size_t k = 0; k < script->sections.count; k++) {
            text_add(&out, k > 0 ? "\n" : "");
            section_text_add(&script->at[k], &out);
        }
    }
    if (place != NULL)
        call_place_add(place, fleet, &out);
    told_print(&out);
}

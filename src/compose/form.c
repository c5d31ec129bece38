/* form.c - what all forms are made of (room: compose): the band with title and boat, the footer,
 * and sections as they are written. A form has no number among the cards and no check code, and
 * it belongs to no procedure. */
#include "form_room.h"

#include "promise.h"

#include <string.h>

/* That of no card: no hazard, no step. */
static const struct procedure no_procedure;

struct form_writer form_begin(const struct compose_input *input, struct arena *arena,
                              struct problems *problems)
{
    struct slot *slot = arena_alloc(arena, sizeof *slot);
    struct form_writer writer = {
        .composing = {.in = input, .arena = arena, .problems = problems}};
    *slot = (struct slot){.procedure = &no_procedure, .key = "", .title = "", .name = "",
                          .number = ""};
    slot_take(&writer.composing, slot);
    return writer;
}

void form_section_add(struct form_writer *writer, const struct form_section *section)
{
    promise(section->column_count <= FORM_COLUMNS_MOST);
    writer->sections = arena_grow(writer->composing.arena, writer->sections, writer->count,
                                  &writer->room, sizeof *writer->sections);
    struct form_section *own = &writer->sections[writer->count++];
    *own = *section;
    own->lines = NULL;
    own->line_count = 0;
    writer->lines = NULL;
    writer->line_room = 0;
}

void form_line_add(struct form_writer *writer, const struct form_cell *cells,
                   enum form_voice voice, struct place origin)
{
    promise(writer->count > 0);
    struct arena *arena = writer->composing.arena;
    struct form_section *section = &writer->sections[writer->count - 1];
    struct form_cell *own = arena_array(arena, section->column_count, sizeof *own);
    for (size_t i = 0; i < section->column_count; i++)
        own[i] = cells[i];
    writer->lines = arena_grow(arena, writer->lines, section->line_count, &writer->line_room,
                               sizeof *writer->lines);
    writer->lines[section->line_count++] =
        (struct form_line){.cells = own, .voice = voice, .origin = origin};
    section->lines = writer->lines;
    writer->blanks = NULL;
    writer->blank_room = 0;
}

static struct form_line *line_last(struct form_writer *writer)
{
    promise(writer->count > 0 && writer->sections[writer->count - 1].line_count > 0);
    return &writer->lines[writer->sections[writer->count - 1].line_count - 1];
}

void form_blank_add(struct form_writer *writer, const struct form_blank *blank)
{
    struct arena *arena = writer->composing.arena;
    struct form_line *line = line_last(writer);
    const char **choices = arena_array(arena, blank->choice_count, sizeof *choices);
    for (size_t i = 0; i < blank->choice_count; i++)
        choices[i] = blank->choices[i];
    writer->blanks = arena_grow(arena, writer->blanks, line->blank_count, &writer->blank_room,
                                sizeof *writer->blanks);
    writer->blanks[line->blank_count] = *blank;
    writer->blanks[line->blank_count++].choices = choices;
    line->blanks = writer->blanks;
}

void form_blanks_align(struct form_writer *writer, size_t across)
{
    line_last(writer)->across = across;
}

const char *form_word(const struct form_writer *writer, enum word word)
{
    return phrase_said(&writer->composing, word_alone(&writer->composing, word));
}

/* ---- head and foot ---- */

static const char *sheet_count_said(const struct form_writer *writer, size_t number)
{
    struct arena *arena = writer->composing.arena;
    return phrase_said(&writer->composing,
                       phrase_word(arena, WORD_FORM_SHEET, "number",
                                   phrase_number(arena, (int64_t)number), NULL));
}

/* "5 sheets. Walk in this order ..." */
static const char *form_signs(const struct form_writer *writer, const struct form_head *head,
                              size_t pages)
{
    struct arena *arena = writer->composing.arena;
    const struct phrase *sheets = phrase_counted(arena, WORD_FORM_SHEETS, pages, "count",
                                                 phrase_number(arena, (int64_t)pages), NULL);
    return phrase_said(&writer->composing,
                       phrase_joined(arena, WORD_JOIN_SPACE, head->signs, sheets, NULL));
}

static void form_pages_add(struct form_writer *writer, const struct form_head *head,
                           struct sheet *sheet)
{
    struct pages_facts *pages = arena_alloc(writer->composing.arena, sizeof *pages);
    *pages = (struct pages_facts){.titles = {NULL}};
    for (size_t i = 0; i < SHEET_PAGES_MOST; i++) {
        pages->numbers[i] = sheet_count_said(writer, i + 1);
        pages->signs_of_many[0][i] = form_signs(writer, head, i + 1);
    }
    block_add(&writer->composing, sheet, BLOCK_PAGES)->pages = pages;
}

static void form_title_add(struct form_writer *writer, const struct form_head *head,
                           struct sheet *sheet)
{
    struct arena *arena = writer->composing.arena;
    struct title_facts *title = arena_alloc(arena, sizeof *title);
    struct signs_facts *signs = arena_alloc(arena, sizeof *signs);
    const char *boat = TEXT_OR_EMPTY(writer->composing.in->boat->facts.name);
    *title = (struct title_facts){
        .title = phrase_said(&writer->composing, phrase_upper(arena, head->title)),
        .boat = text_upper(arena, head->over == NULL ? boat : head->over),
        .number = sheet_count_said(writer, 1), .symbol = SYMBOL_NONE, .stripe = SIGN_NONE};
    *signs = (struct signs_facts){.word = "", .signs = form_signs(writer, head, 1)};
    block_add(&writer->composing, sheet, BLOCK_TITLE)->title = title;
    block_add(&writer->composing, sheet, BLOCK_SIGNS)->signs = signs;
}

static void form_foot_add(struct form_writer *writer, struct sheet *sheet)
{
    struct composing *composing = &writer->composing;
    struct arena *arena = composing->arena;
    struct footer_facts *footer = arena_alloc(arena, sizeof *footer);
    const struct phrase *date = phrase_date(arena, composing->in->today);
    *footer = (struct footer_facts){
        .left = {form_word(writer, WORD_FORM_DEFER), form_word(writer, WORD_FORM_RECORD)},
        .dates = "", .first_date = "", .code_word = "", .code = "",
        .printed = phrase_said(composing, phrase_word(arena, WORD_PRINTED, "date", date, NULL)),
        .measure = form_word(writer, WORD_MEASURE)};
    block_add(composing, sheet, BLOCK_FOOTER)->footer = footer;
}

/* No procedure is of these kinds: commands compose them. */
void no_form_compose(struct composing *composing, struct sheet *sheet,
                     const struct sheet_list *others)
{
    (void)composing, (void)sheet, (void)others;
    promise_unreached();
}

void no_stickers_compose(struct composing *composing, struct sheet *sheet,
                         const struct sheet_list *others)
{
    (void)composing, (void)sheet, (void)others;
    promise_unreached();
}

/* A sheet of that kind about the boat, without blocks. */
static struct sheet *form_sheet_new(struct form_writer *writer, enum sheet_kind kind,
                                    const struct form_head *head)
{
    struct composing *composing = &writer->composing;
    struct sheet *sheet = arena_alloc(composing->arena, sizeof *sheet);
    const struct boat *boat = composing->in->boat;
    *sheet = (struct sheet){
        .kind = kind, .id = head->id, .procedure_key = head->id, .number = "", .page = "",
        .name = phrase_said(composing, phrase_upper(composing->arena, head->title)),
        .language = words_language(composing->in->words), .words = composing->in->words,
        .boat = boat, .procedure = &no_procedure, .origin = boat->place};
    return sheet;
}

static const struct sheet_set *set_of(const struct sheet *sheet, struct arena *arena)
{
    const struct sheet **list = arena_array(arena, 1, sizeof *list);
    struct sheet_set *set = arena_alloc(arena, sizeof *set);
    list[0] = sheet;
    *set = (struct sheet_set){.sheets = list, .count = 1};
    return set;
}

const struct sheet_set *form_end(struct form_writer *writer, const struct form_head *head)
{
    struct composing *composing = &writer->composing;
    struct sheet *sheet = form_sheet_new(writer, SHEET_FORM, head);
    struct form_facts *form = arena_alloc(composing->arena, sizeof *form);
    *form = (struct form_facts){writer->sections, writer->count, head->alone};
    if (composing->in->boat->facts.specimen.answer == ANSWER_YES)
        text_add_block(composing, sheet, BLOCK_MARK,
                       (struct card_text){form_word(writer, WORD_MARK_SPECIMEN), sheet->origin});
    form_title_add(writer, head, sheet);
    block_add(composing, sheet, BLOCK_FORM)->form = form;
    if (writer->views != NULL)
        block_add(composing, sheet, BLOCK_VIEWS)->views = writer->views;
    form_pages_add(writer, head, sheet);
    form_foot_add(writer, sheet);
    return set_of(sheet, composing->arena);
}

const struct sheet_set *stickers_end(struct form_writer *writer, const struct form_head *head,
                                     const struct stickers_facts *stickers)
{
    struct composing *composing = &writer->composing;
    struct sheet *sheet = form_sheet_new(writer, SHEET_STICKERS, head);
    block_add(composing, sheet, BLOCK_STICKERS)->stickers = stickers;
    form_pages_add(writer, head, sheet);
    return set_of(sheet, composing->arena);
}

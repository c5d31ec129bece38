/* brief.c - the skipper's sheet, part after part, and what its parts are written with (room:
 * compose). Page one alone is what a tired skipper reads; the rest is for the evening before and
 * the hour before casting off. Says nothing of the boat that the record does not say. */
#include "brief_room.h"

#include "item_states.h"

/* Sections that stand on page one: showstoppers, call, roles. */
enum { SECTIONS_OF_PAGE_ONE = 4 };

const struct form_column brief_text_column[1] = {{FORM_TEXT, "", 0}};
const struct form_column brief_blank_column[1] = {{FORM_BLANK, "", 0}};

/* ---- writing ---- */

void brief_section_add(struct briefing *briefing, const struct brief_section *section)
{
    const struct composing *composing = &briefing->writer.composing;
    struct form_column *columns = arena_array(composing->arena, section->column_count,
                                              sizeof *columns);
    for (size_t i = 0; i < section->column_count; i++)
        columns[i] = section->columns[i];
    form_section_add(&briefing->writer,
                     &(struct form_section){.title = form_word(&briefing->writer, section->title),
                                            .note = phrase_said(composing, section->note),
                                            .columns = columns,
                                            .column_count = section->column_count,
                                            .start = section->start, .manner = section->manner});
}

struct form_cell brief_cell(struct briefing *briefing, const struct phrase *phrase)
{
    return (struct form_cell){phrase_said(&briefing->writer.composing, phrase), NULL};
}

struct form_cell brief_blank(struct briefing *briefing, const struct phrase *phrase)
{
    return brief_cell(briefing, phrase);
}

struct form_cell brief_sign(const struct equipment *gear)
{
    return gear == NULL ? (struct form_cell){"", NULL}
                        : (struct form_cell){TEXT_OR_EMPTY(gear->tag), gear->kind};
}

void brief_text_add(struct briefing *briefing, const struct phrase *phrase, struct place origin)
{
    const struct form_cell cell = brief_cell(briefing, phrase);
    form_line_add(&briefing->writer, &cell, FORM_PLAIN, origin);
}

void brief_blank_add(struct briefing *briefing, const struct phrase *phrase)
{
    const struct form_cell cell = brief_blank(briefing, phrase);
    form_line_add(&briefing->writer, &cell, FORM_PLAIN,
                  briefing->writer.composing.in->boat->place);
}

/* ---- phrases ---- */

const struct phrase *brief_word(const struct briefing *briefing, enum word word)
{
    return word_alone(&briefing->writer.composing, word);
}

const struct phrase *brief_day(const struct briefing *briefing, struct date date)
{
    return phrase_date(briefing->writer.composing.arena, date);
}

const struct phrase *brief_number(const struct briefing *briefing, size_t number)
{
    return phrase_number(briefing->writer.composing.arena, (int64_t)number);
}

const struct phrase *brief_gear(struct briefing *briefing, const struct equipment *gear)
{
    struct composing *composing = &briefing->writer.composing;
    const struct phrase *name = gear_name(composing, gear, 1, CAPACITY_WEIGHT);
    return gear->kind->item != ITEM_seacock || gear->name.text == NULL
               ? name
               : phrase_joined(composing->arena, WORD_JOIN_COMMA,
                               phrase_item(composing->arena, ITEM_seacock), name, NULL);
}

/* "on: up, off: down", of every state whose handling is recorded; NULL: of none is. */
static const struct phrase *handlings(struct briefing *briefing, const struct equipment *gear)
{
    struct arena *arena = briefing->writer.composing.arena;
    const struct phrase *all = phrase_text(arena, gear->how.by_choice == NULL ? &gear->how.one
                                                                              : NULL);
    for (enum end_state state = STATE_ANY + 1; gear->how.by_choice != NULL && state < STATE_COUNT;
         state++) {
        const struct phrase *how = phrase_text(arena, gear_handling_of(gear, state));
        if (how != NULL && item_state_field(gear->kind->item, state) == GEAR_how)
            all = phrase_joined(arena, WORD_JOIN_COMMA, all,
                                phrase_word(arena, WORD_HANDLED_STATE, "how", how, "state",
                                            phrase_state(arena, state), NULL), NULL);
    }
    return all;
}

const struct phrase *brief_where(struct briefing *briefing, const struct equipment *gear)
{
    struct composing *composing = &briefing->writer.composing;
    return phrase_joined(composing->arena, WORD_JOIN_COMMA, row_place_phrase(composing, gear),
                         row_spot_phrase(composing, gear), NULL);
}

const struct phrase *brief_place(struct briefing *briefing, const struct equipment *gear)
{
    struct composing *composing = &briefing->writer.composing;
    struct arena *arena = composing->arena;
    const struct phrase *place = brief_where(briefing, gear);
    const struct phrase *how = handlings(briefing, gear);
    if (how != NULL)
        place = phrase_joined(arena, WORD_JOIN_SPACE, place,
                              phrase_word(arena, WORD_ROW_END, "end", how, NULL), NULL);
    return phrase_joined(arena, WORD_JOIN_SEMICOLON, place, handle_phrase(composing, gear),
                         gear_warned(composing, gear));
}

const struct phrase *brief_people(const struct briefing *briefing)
{
    struct arena *arena = briefing->writer.composing.arena;
    const struct hire *hire = briefing->hire;
    const struct phrase *people =
        phrase_counted(arena, WORD_BRIEF_PEOPLE, hire->people, "count",
                       brief_number(briefing, hire->people), NULL);
    return hire->children == 0
               ? people
               : phrase_counted(arena, WORD_BRIEF_CHILDREN, hire->children, "count",
                                brief_number(briefing, hire->children), "people", people, NULL);
}

/* ---- the whole ---- */

static const struct sheet_set *briefing_end(struct briefing *briefing)
{
    struct arena *arena = briefing->writer.composing.arena;
    const struct charter *days = &briefing->hire->days;
    return form_end(&briefing->writer,
                    &(struct form_head){
                        .id = "brief", .title = brief_word(briefing, WORD_BRIEF_TITLE),
                        .signs = phrase_word(arena, WORD_BRIEF_SIGNS, "from",
                                             brief_day(briefing, days->start), "to",
                                             brief_day(briefing, days->end), "people",
                                             brief_people(briefing), NULL),
                        .alone = SECTIONS_OF_PAGE_ONE});
}

const struct sheet_set *brief_compose(const struct compose_input *input,
                                      const struct sheet_set *cards, struct arena *arena,
                                      struct problems *problems)
{
    struct briefing briefing = {form_begin(input, arena, problems), input->hire, cards};
    struct composing *composing = &briefing.writer.composing;
    struct composing planned = *composing;
    planned.problems = problems_new(arena);
    slots_make(&planned);                /* which cards she has, for their numbers */
    composing->slots = planned.slots;
    composing->slot_count = planned.slot_count;
    brief_stoppers_add(&briefing);
    bool said = brief_call_add(&briefing);
    brief_roles_add(&briefing);
    brief_differs_add(&briefing);
    for (enum brief_pass pass = PASS_EVENING; pass < PASS_COUNT; pass++) {
        brief_topics_add(&briefing, pass);
        brief_walk_add(&briefing, pass);
    }
    brief_aboard_add(&briefing);
    said = brief_rehearsal_add(&briefing) && said;
    brief_since_add(&briefing);
    brief_rules_add(&briefing);
    brief_contacts_add(&briefing);
    brief_ashore_add(&briefing);
    brief_proof_add(&briefing);
    brief_guests_add(&briefing);
    return said ? briefing_end(&briefing) : arena_alloc(arena, sizeof(struct sheet_set));
}

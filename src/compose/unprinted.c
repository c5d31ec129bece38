/* unprinted.c - what is recorded of a boat and stands on no sheet of her set (room: compose).
 * Found by taking it out of the record: where all sheets stay the same, with their check codes,
 * none of them hangs on it. Never asks the tables: what they claim is held to this. */
#include "compose_room.h"
#include "fact.h"

#include <string.h>

#include "boat_facts.h"
#include "reader.h"
#include "text.h"

#define SEARCH_LIMIT ((size_t)256 * 1024 * 1024)

/* The sheets of a boat as they are, and a copy of her to take facts out of. */
struct searching {
    const struct compose_input *in;
    const struct sheet_set *set;
    struct arena *arena;
    const char *words;                /* all that stands on the sheets */
    struct unprinted_fact *rows;
    size_t count, room;
};

/* ---- what the sheets say ---- */

static void words_gather(void *of, const struct fact *fact)
{
    text_add_format(of, "%s\n", fact->text);
}

static const char *words_of(const struct sheet_set *set, struct arena *arena)
{
    struct text_builder words = text_builder_in(arena);
    for (size_t i = 0; i < set->count; i++)
        for (size_t b = 0; b < set->sheets[i]->block_count; b++)
            if (set->sheets[i]->blocks[b].key != BLOCK_PAGES)
                block_visit(&set->sheets[i]->blocks[b], arena, words_gather, &words);
    return words.at;
}

/* The code is of all that a sheet says; most bear it at their foot. */
static const char *code_of(const struct sheet *sheet, struct arena *scratch)
{
    const char *code = sheet_footer(sheet)->code;
    return text_empty(code) ? check_code(sheet, scratch) : code;
}

static bool sheet_stays(const struct sheet *old, const struct sheet *new, struct arena *scratch)
{
    return old->held == new->held && text_equal(code_of(old, scratch), code_of(new, scratch));
}

/* Composed one by one, as those of compose_set, up to the first that is another. */
static bool sheets_made_stay(struct composing *composing, const struct sheet_set *set)
{
    size_t count = composing->slot_count;
    struct sheet *sheets = arena_array(composing->arena, count, sizeof *sheets);
    const struct sheet **list = arena_array(composing->arena, count, sizeof *list);
    const struct sheet_list all = {list, count};
    for (enum sheet_turn turn = ALONE; turn <= AFTER_OTHERS; turn++)
        for (size_t i = 0; i < count; i++) {
            const struct slot *slot = &composing->slots[i];
            list[i] = &sheets[i];
            if (sheet_turn_of(slot->procedure->kind.value) != turn)
                continue;
            sheet_make(composing, slot, &all, &sheets[i]);
            if (!text_equal(slot->key, set->sheets[i]->id) ||
                !sheet_stays(set->sheets[i], &sheets[i], composing->arena))
                return false;
        }
    return true;
}

/* Do the sheets of the boat stay the same where this is her record? */
static bool sheets_stay(const struct searching *searching, const struct boat *boat)
{
    struct arena *scratch = arena_new(SEARCH_LIMIT);
    struct compose_input input = *searching->in;
    struct composing composing = {.in = &input, .arena = scratch,
                                  .problems = problems_new(scratch)};
    input.boat = boat;
    slots_make(&composing);
    bool same = composing.slot_count == searching->set->count &&
                sheets_made_stay(&composing, searching->set);
    arena_free(scratch);
    return same;
}

/* ---- what is asked for ---- */

/* What is worked into the place of gear when a record is read cannot be taken out of it
 * again, and stands on every safety plan. */
static bool is_sought(const struct field *field)
{
    return !field->required && (field->readers & READ_PLACE) == 0;
}

/* One word of a letter or two stands on a sheet by chance. */
static bool says(const struct searching *searching, const struct text_value *text)
{
    enum { LETTERS_LEAST = 4 };
    return text->text != NULL && strlen(text->text) >= LETTERS_LEAST &&
           strstr(searching->words, text->text) != NULL;
}

static bool stands_in_words(const struct searching *searching, const struct field *field,
                            const void *record)
{
    const void *value = (const char *)record + field->offset;
    bool text = field->kind == FIELD_TEXT || field->kind == FIELD_WORDING;
    return text && says(searching, value);
}

/* How many values beside none are tried in the place of what is recorded: of a choice or an
 * answer all. A sheet may say of one what it leaves unsaid of another. */
static unsigned values_of(const struct field *field)
{
    if (field->kind == FIELD_ANSWER)
        return ANSWER_YES;
    return field->kind == FIELD_CHOICE ? (unsigned)text_list_length(field->choices) : 0;
}

static void value_put(const struct field *field, void *record, unsigned value)
{
    char *at = (char *)record + field->offset;
    unsigned first = field->first == 0 ? 1 : field->first;
    field_clear(field, record);
    if (field->kind == FIELD_ANSWER)
        ((struct answer_value *)(void *)at)->answer = (enum answer)value;
    else if (field->kind == FIELD_CHOICE)
        ((struct choice_value *)(void *)at)->value = value == 0 ? 0 : first + value - 1;
}

static void fact_add(struct searching *searching, const char *owner, const struct field *field,
                     const void *record)
{
    searching->rows = arena_grow(searching->arena, searching->rows, searching->count,
                                 &searching->room, sizeof *searching->rows);
    searching->rows[searching->count++] = (struct unprinted_fact){
        .owner = owner, .field = field->key,
        .value = field_text(field, record, searching->arena),
        .place = field_place(field, record)};
}

/* ---- gear ---- */

/* Pieces of one kind that have a field are alike: it is taken from all of them at once. */
struct alike { enum item_key item; enum gear_field field; };

static bool has_it(const struct searching *searching, const struct equipment *gear,
                   const struct alike *alike)
{
    const struct field *field = gear_field_row(alike->field);
    return gear->kind->item == alike->item && field_place(field, gear).line > 0 &&
           field_text(field, gear, searching->arena) != NULL &&
           !stands_in_words(searching, field, gear);
}

/* Do the sheets stay the same where the field of all these pieces has that value? `copy` is as
 * the boat's gear, and is so again afterwards. */
static bool gear_stays(const struct searching *searching, const struct alike *alike,
                       struct equipment *copy, unsigned value)
{
    const struct boat *boat = searching->in->boat;
    const struct field *field = gear_field_row(alike->field);
    struct boat other = *boat;
    other.equipment = copy;
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (has_it(searching, &boat->equipment[i], alike))
            value_put(field, &copy[i], value);
    bool stays = sheets_stay(searching, &other);
    memcpy(copy, boat->equipment, boat->equipment_count * sizeof *copy);
    return stays;
}

static bool gear_is_unprinted(const struct searching *searching, const struct alike *alike,
                              struct equipment *copy)
{
    const struct field *field = gear_field_row(alike->field);
    for (unsigned value = 0; value <= values_of(field); value++)
        if (!gear_stays(searching, alike, copy, value))
            return false;
    return true;
}

static bool some_has_it(const struct searching *searching, const struct alike *alike)
{
    const struct boat *boat = searching->in->boat;
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (has_it(searching, &boat->equipment[i], alike))
            return true;
    return false;
}

static void gear_search(struct searching *searching, const struct alike *alike,
                        struct equipment *copy)
{
    const struct boat *boat = searching->in->boat;
    if (!is_sought(gear_field_row(alike->field)) || !some_has_it(searching, alike) ||
        !gear_is_unprinted(searching, alike, copy))
        return;
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        if (has_it(searching, gear, alike))
            fact_add(searching, gear->tag.text == NULL ? gear->kind->key : gear->tag.text,
                     gear_field_row(alike->field), gear);
    }
}

/* The fixed radio is the record's own entry, of what `radio:` says. */
static void gear_search_all(struct searching *searching)
{
    const struct boat *boat = searching->in->boat;
    struct equipment *copy = arena_array(searching->arena, boat->equipment_count, sizeof *copy);
    if (boat->equipment_count > 0)
        memcpy(copy, boat->equipment, boat->equipment_count * sizeof *copy);
    for (enum gear_field field = GEAR_FIELD_NONE + 1; field < GEAR_FIELD_COUNT; field++)
        for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
            if (item != ITEM_vhf_dsc)
                gear_search(searching, &(struct alike){item, field}, copy);
}

/* ---- her sections ---- */

/* A section of the copy, which shares all else with her. */
struct section_search {
    const char *owner;
    const struct field_table *table;
    struct boat *copy;
    void *record;                     /* in the copy */
    const void *own;                  /* in the boat */
    size_t size;
};

static bool section_stays(const struct searching *searching, const struct section_search *section,
                          const struct field *field)
{
    bool stays = true;
    for (unsigned value = 0; stays && value <= values_of(field); value++) {
        value_put(field, section->record, value);
        stays = sheets_stay(searching, section->copy);
        memcpy(section->record, section->own, section->size);
    }
    return stays;
}

static void section_search(struct searching *searching, const struct section_search *section)
{
    for (size_t i = 0; i < section->table->count; i++) {
        const struct field *field = &section->table->fields[i];
        if (!is_sought(field) || field_text(field, section->own, searching->arena) == NULL ||
            stands_in_words(searching, field, section->own))
            continue;
        if (section_stays(searching, section, field))
            fact_add(searching, section->owner, field, section->own);
    }
}

static void sections_search(struct searching *searching)
{
    const struct boat *boat = searching->in->boat;
    struct boat without = *boat;
    const struct section_search sections[] = {
        {"boat", boat_fields(), &without, &without.facts, &boat->facts, sizeof without.facts},
        {"gas", gas_fields(), &without, &without.gas, &boat->gas, sizeof without.gas},
        {"radio", radio_fields(), &without, &without.radio, &boat->radio, sizeof without.radio}};
    for (size_t i = 0; i < sizeof sections / sizeof *sections; i++)
        section_search(searching, &sections[i]);
}

struct unprinted_facts unprinted_facts(const struct compose_input *input,
                                       const struct sheet_set *set, struct arena *arena)
{
    struct searching searching = {.in = input, .set = set, .arena = arena,
                                  .words = words_of(set, arena)};
    sections_search(&searching);
    gear_search_all(&searching);
    return (struct unprinted_facts){searching.rows, searching.count};
}

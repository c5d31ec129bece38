/* starter_sister.c - a new file for a boat that is like a model, to be filled in: that somebody
 * walked round her, and what no model can hold, piece by piece (room: record). What sister
 * ships share is not in it. */
#include "starter_lines.h"

#include "record.h"

/* What is to be recorded of the item; NULL: nothing is asked. */
static const struct asked_item *asked_for_item(const struct asked_list *asked, enum item_key item)
{
    for (size_t i = 0; i < asked->count; i++)
        if (asked->rows[i].kind->item == item)
            return &asked->rows[i];
    return NULL;
}

static bool is_own(enum gear_field field)
{
    return gear_field_row(field)->own;
}

static size_t own_count(const struct asked_item *asked)
{
    size_t count = 0;
    for (size_t i = 0; asked != NULL && i < asked->fact_count; i++)
        count += is_own(asked->facts[i]) ? 1 : 0;
    return count;
}

/* # epirb ("EPIRB"), and below it #- {tag: E4, hex_id: , expires: } */
static void sister_piece_add(struct text_builder *out, const struct equipment *gear,
                      const struct asked_item *asked, const struct known_names *known)
{
    text_add(out, "  # ");
    starter_name_add(out, known, asked->kind->key);
    text_add_format(out, "\n  #- {tag: %s", gear->tag.text);
    for (size_t i = 0; i < asked->fact_count; i++)
        if (is_own(asked->facts[i]))
            text_add_format(out, ", %s: ", gear_field_word(asked->facts[i]));
    text_add(out, "}\n");
}

static void sister_pieces_add(struct text_builder *out, const struct entries_value *shared,
                       const struct asked_list *asked, const struct known_names *known)
{
    const struct equipment *gear = shared->items;
    for (size_t i = 0; i < shared->count; i++) {
        const struct asked_item *row = asked_for_item(asked, gear[i].item.value);
        if (own_count(row) > 0 && gear[i].tag.text != NULL)
            sister_piece_add(out, &gear[i], row, known);
    }
}

/* Has a piece of the model the field? */
static bool is_asked_for(const struct entries_value *shared, const struct asked_list *asked,
                         enum gear_field field)
{
    const struct equipment *gear = shared->items;
    for (size_t i = 0; i < shared->count; i++) {
        const struct asked_item *row = asked_for_item(asked, gear[i].item.value);
        for (size_t k = 0; row != NULL && k < row->fact_count; k++)
            if (row->facts[k] == field)
                return true;
    }
    return false;
}

static void keys_add(struct text_builder *out, const struct entries_value *shared,
                     const struct asked_list *asked)
{
    for (enum gear_field field = GEAR_FIELD_NONE + 1; field < GEAR_FIELD_COUNT; field++)
        if (is_own(field) && is_asked_for(shared, asked, field))
            starter_key_explain(out, gear_field_row(field));
}

static void own_fields_add(struct text_builder *out, const struct field_table *table)
{
    for (size_t i = 0; i < table->count; i++)
        if (table->fields[i].own)
            starter_field_add(out, &table->fields[i], "");
}

const char *starter_sister(const struct asked_list *asked, const struct model *model,
                           const struct known_names *known, struct arena *arena)
{
    const struct entries_value *shared = &model->file.equipment;
    struct text_builder out = text_builder_in(arena);
    text_add_format(&out,
                    MODE_LINE("../schema/boat.json")
                    "# One boat's record: a sister ship. All that is not here she has from\n"
                    "# models/%s.yaml. What is otherwise on her goes below too, whole, with the\n"
                    "# model's tag; tags of gear that she has not go into not_here.\n" HOW_TO_FILL
                    "like: %s\n\n", model->key, model->key);
    text_add(&out,
             "# Walk round her with the model's file in hand: then write the day, and who did it,\n"
             "# as {date: , by: }. Before that nothing of the model counts.\n"
             "walked:\n\nboat:\n");
    own_fields_add(&out, boat_fields());
    text_add(&out, "\nradio:\n");
    own_fields_add(&out, radio_fields());
    text_add(&out,
             "\n# What is one boat's own, by the tags of the model's gear. Take the # of a line\n"
             "# away and fill it in.\n"
             "equipment:\n"
             "  # Keys of these lines:\n");
    keys_add(&out, shared, asked);
    sister_pieces_add(&out, shared, asked, known);
    return out.at;
}

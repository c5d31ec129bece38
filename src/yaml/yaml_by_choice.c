/* yaml_by_choice.c - values that are told by the words of a choice (room: yaml): a text for
 * each, `how: {shut: across, open: along}`, and choices that each may be given with another,
 * `uses: [torch, {seacock: shut}]`. Never knows what the words mean. */
#include "yaml_value.h"

#include <string.h>

#include "choice.h"
#include "text.h"

/* ---- a text for each choice ---- */

static bool tells_by_choice(const struct field *field, const struct yaml_node *node)
{
    for (size_t i = 0; node->kind == YAML_MAPPING && i < node->count; i++)
        if (choice_find(field->choices, node->pairs[i].key) > 0 ||
            !language_code_sound(node->pairs[i].key))
            return true;
    return false;
}

static void choice_text_read(struct field_reading *reading, const struct field *field,
                             const struct yaml_pair *pair, struct text_value *by_choice)
{
    unsigned choice = choice_find(field->choices, pair->key);
    const char *name = text_format(reading->arena, "%s in \"%s\"", pair->key, field->key);

    if (choice == 0)
        field_error(reading, pair->key_place,
                    text_nearest_remedy(reading->arena, pair->key, field->choices,
                                        text_list_length(field->choices),
                                        words_joined(reading->arena, "write one of:",
                                                     field->choices,
                                                     text_list_length(field->choices))),
                    "\"%s\" has no %s", field->key, text_shown(reading->arena, pair->key));
    else if (pair->value->kind != YAML_SCALAR || !text_empty(pair->value->text))
        wording_read(reading, name, pair->value, &by_choice[choice]);
}

/* Keys that are yet to be filled in are as good as none. */
static bool all_empty(const struct yaml_node *node)
{
    for (size_t i = 0; i < node->count; i++)
        if (node->pairs[i].value->kind != YAML_SCALAR ||
            !text_empty(node->pairs[i].value->text))
            return false;
    return true;
}

void wordings_by_choice_read(struct field_reading *reading, const struct field *field,
                             const struct yaml_node *node, void *value)
{
    struct wordings_value *wordings = value;

    if (!tells_by_choice(field, node)) {
        wording_read(reading, text_format(reading->arena, "\"%s\"", field->key), node,
                     &wordings->one);
        return;
    }
    size_t count = text_list_length(field->choices) + 1;
    wordings->by_choice = arena_array(reading->arena, count, sizeof *wordings->by_choice);
    for (size_t i = 0; i < node->count; i++)
        choice_text_read(reading, field, &node->pairs[i], wordings->by_choice);
    if (all_empty(node))
        *wordings = (struct wordings_value){.by_choice = NULL};
}

size_t wordings_count(const struct field *field, const struct wordings_value *value)
{
    return value->by_choice == NULL ? 1 : text_list_length(field->choices) + 1;
}

struct text_value *wordings_at(struct wordings_value *value, size_t index)
{
    return value->by_choice == NULL ? &value->one : &value->by_choice[index];
}

const char *wordings_text(const struct field *field, const struct wordings_value *value,
                          struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);

    if (value->by_choice == NULL)
        return value->one.text;
    for (size_t i = 1; i < wordings_count(field, value); i++)
        if (value->by_choice[i].text != NULL)
            text_add_format(&out, "%s%s: %s", out.length == 0 ? "" : ", ",
                            field->choices[i - 1], value->by_choice[i].text);
    return out.length == 0 ? NULL : out.at;
}

/* ---- choices with another ---- */

/* The list while it is read. */
struct pairing {
    struct field_reading *reading;
    const struct field *field;
    struct paired_value *items;
    size_t count, room;
};

static unsigned word_read(const struct pairing *pairing, const char *const *words,
                          const char *text, struct place place)
{
    struct field_reading *reading = pairing->reading;
    unsigned choice = choice_find(words, text);
    size_t count = text_list_length(words);

    if (choice == 0)
        field_error(reading, place,
                    text_nearest_remedy(reading->arena, text, words, count,
                                        words_joined(reading->arena, "write one of:", words,
                                                     count)),
                    "\"%s\" cannot be %s", pairing->field->key,
                    text_shown(reading->arena, text));
    return choice;
}

static void paired_add(struct pairing *pairing, struct paired_value item)
{
    struct field_reading *reading = pairing->reading;

    for (size_t i = 0; i < pairing->count; i++)
        if (pairing->items[i].value == item.value) {
            field_error(reading, item.place, "delete one of the two",
                        "\"%s\" stands twice in \"%s\"",
                        pairing->field->choices[item.value - 1], pairing->field->key);
            return;
        }
    pairing->items = arena_grow(reading->arena, pairing->items, pairing->count, &pairing->room,
                                sizeof *pairing->items);
    pairing->items[pairing->count++] = item;
}

static void alone_read(struct pairing *pairing, const struct yaml_node *node)
{
    if (!entry_sound(pairing->reading, pairing->field, node))
        return;
    unsigned value = choice_find(pairing->field->choices, node->text);
    paired_add(pairing, (struct paired_value){.value = value, .place = node->place});
}

static void paired_read(struct pairing *pairing, const struct yaml_pair *pair)
{
    const struct field *field = pairing->field;
    const struct yaml_node *node = pair->value;
    struct paired_value item = {.place = pair->key_place};

    if (node->kind != YAML_SCALAR || text_empty(node->text)) {
        field_error(pairing->reading, node->place,
                    words_joined(pairing->reading->arena, "write one of:", field->with,
                                 text_list_length(field->with)),
                    "%s in \"%s\" must be a word, not %s", pair->key, field->key,
                    node->kind == YAML_SCALAR ? "empty" : yaml_kind_word(node));
        return;
    }
    item.value = word_read(pairing, field->choices, pair->key, pair->key_place);
    item.with = word_read(pairing, field->with, node->text, node->place);
    if (item.value > 0 && item.with > 0)
        paired_add(pairing, item);
}

static void paired_node_read(struct pairing *pairing, const struct yaml_node *node)
{
    if (node->kind != YAML_MAPPING)
        alone_read(pairing, node);
    for (size_t i = 0; node->kind == YAML_MAPPING && i < node->count; i++)
        paired_read(pairing, &node->pairs[i]);
}

static const void *part_of(const void *value, size_t offset)
{
    return (const char *)value + offset;
}

/* Writes the list member by member, as a list of the caller's own type. */
static void pairing_give(const struct pairing *pairing, void *value)
{
    const size_t size = sizeof(struct paired_value);
    char *items = arena_array(pairing->reading->arena, pairing->count, size);

    for (size_t i = 0; i < pairing->count; i++) {
        void *item = items + i * size;
        *(unsigned *)item = pairing->items[i].value;
        *(unsigned *)(void *)((char *)item + offsetof(struct paired_value, with)) =
            pairing->items[i].with;
        *(struct place *)(void *)((char *)item + offsetof(struct paired_value, place)) =
            pairing->items[i].place;
    }
    *(const void **)value = items;
    *(size_t *)(void *)((char *)value + offsetof(struct paired_list, count)) = pairing->count;
    *(bool *)(void *)((char *)value + offsetof(struct paired_list, given)) = true;
}

void paired_choices_read(struct field_reading *reading, const struct field *field,
                         const struct yaml_node *node, void *value)
{
    struct pairing pairing = {.reading = reading, .field = field};

    if (node->kind == YAML_SEQUENCE)
        for (size_t i = 0; i < node->count; i++)
            paired_node_read(&pairing, node->items[i]);
    else
        paired_node_read(&pairing, node);
    if (node->kind != YAML_SCALAR || pairing.count > 0)
        pairing_give(&pairing, value);
}

const char *paired_text(const struct field *field, const void *list, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    const char *items = *(const void *const *)list;
    size_t count = *(const size_t *)part_of(list, offsetof(struct paired_list, count));

    if (!*(const bool *)part_of(list, offsetof(struct paired_list, given)))
        return NULL;
    text_add(&out, "");
    for (size_t i = 0; i < count; i++) {
        const void *item = items + i * sizeof(struct paired_value);
        unsigned with = *(const unsigned *)part_of(item, offsetof(struct paired_value, with));
        text_add_format(&out, "%s%s", i > 0 ? " " : "",
                        field->choices[*(const unsigned *)item - 1]);
        if (with > 0)
            text_add_format(&out, ": %s", field->with[with - 1]);
    }
    return out.at;
}

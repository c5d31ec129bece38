/* yaml_field_text.c - a field of a record as text again (room: yaml). Gives
 * what the file says, never a converted form. */
#include "promise.h"
#include "text.h"
#include "yaml_value.h"

/* NULL where it is not recorded, as for every other kind of field. */
static const char *answer_text(const struct answer_value *value)
{
    switch (value->answer) {
    case ANSWER_YES:
        return "yes";
    case ANSWER_NO:
        return "no";
    case ANSWER_NOT_RECORDED:
        break;
    }
    return NULL;
}

/* The members with a space between them. */
static const char *list_text(const struct list_value *value, struct arena *arena)
{
    struct text_builder words = text_builder_in(arena);

    if (!value->given)
        return NULL;
    for (size_t i = 0; i < value->count; i++)
        text_add_format(&words, "%s%s", i > 0 ? " " : "", value->items[i].text);
    return words.at;
}

static const char *pair_text(const struct pair_value *value, struct arena *arena)
{
    return value->given
               ? text_format(arena, "%s %s", value->first.text, value->second.text)
               : NULL;
}

/* The word for the value of a choice; 0 is "not recorded". */
static const char *field_choice_text(const struct field *field, unsigned choice)
{
    return choice == 0 ? NULL : field->choices[choice - choice_first(field)];
}

/* A member of a record whose type is known only to its table of fields. */
static const void *at_offset(const void *record, size_t offset)
{
    return (const char *)record + offset;
}

/* Read as it is written (yaml_value.c): member by member. */
static const char *choices_text(const struct field *field, const void *list, struct arena *arena)
{
    struct text_builder words = text_builder_in(arena);
    const void *items = *(const void *const *)list;
    size_t count = *(const size_t *)at_offset(list, offsetof(struct choice_list, count));

    if (!*(const bool *)at_offset(list, offsetof(struct choice_list, given)))
        return NULL;
    for (size_t i = 0; i < count; i++) {
        const void *choice = at_offset(items, i * sizeof(struct choice_value));
        text_add_format(&words, "%s%s", i > 0 ? " " : "",
                        field_choice_text(field, *(const unsigned *)choice));
    }
    return words.at;
}

/* "zone cockpit, side port": what stands under its keys. */
static const char *section_text(const struct field *field, const void *value,
                                struct arena *arena)
{
    const struct section_value *section = value;
    const void *record = (const char *)value - field->offset + field->part->offset;
    struct text_builder out = text_builder_in(arena);

    if (!section->given)
        return NULL;
    text_add(&out, "");
    for (size_t i = 0; i < field->part->table->count; i++) {
        const struct field *one = &field->part->table->fields[i];
        const char *text = field_text(one, record, arena);
        if (text != NULL)
            text_add_format(&out, "%s%s %s", out.length == 0 ? "" : ", ", one->key, text);
    }
    return out.at;
}

const char *field_text(const struct field *field, const void *record, struct arena *arena)
{
    const void *value = (const char *)record + field->offset;

    switch (field->kind) {
    case FIELD_TEXT:
    case FIELD_WORDING:
        return ((const struct text_value *)value)->text;
    case FIELD_NUMBER:
        return ((const struct number_value *)value)->text;
    case FIELD_DATE:
        return ((const struct date_value *)value)->text;
    case FIELD_ANSWER:
        return answer_text(value);
    case FIELD_LIST:
    case FIELD_WORDINGS:
    case FIELD_WORDS:
        return list_text(value, arena);
    case FIELD_CHOICE:
        return field_choice_text(field, *(const unsigned *)value);
    case FIELD_CHOICES:
        return choices_text(field, value, arena);
    case FIELD_PAIRED:
        return paired_text(field, value, arena);
    case FIELD_BY_CHOICE:
        return wordings_text(field, value, arena);
    case FIELD_PAIR:
        return pair_text(value, arena);
    case FIELD_SECTION:
        return section_text(field, value, arena);
    case FIELD_ENTRIES:
    case FIELD_NODE:
        break;
    }
    return NULL;
}

unsigned field_choice(const struct field *field, const void *record)
{
    const void *value = (const char *)record + field->offset;

    promise(field->kind == FIELD_CHOICE || field->kind == FIELD_ANSWER);
    return *(const unsigned *)value;
}

bool field_chooses(const struct field *field, const void *record, const char *word)
{
    const void *list = (const char *)record + field->offset;
    size_t count = *(const size_t *)at_offset(list, offsetof(struct choice_list, count));
    const void *items = *(const void *const *)list;

    promise(field->kind == FIELD_CHOICES);
    for (size_t i = 0; i < count; i++) {
        const void *choice = at_offset(items, i * sizeof(struct choice_value));
        if (text_equal(field_choice_text(field, *(const unsigned *)choice), word))
            return true;
    }
    return false;
}

/* yaml_value.c - reads the value of one field by its kind (room: yaml). Texts
 * are taken as written: nothing is trimmed, folded or converted. */
#include "yaml_value.h"

#include <string.h>

#include "choice.h"
#include "number.h"
#include "promise.h"
#include "text.h"

bool text_stands_for_nothing(const char *text)
{
    return text_equal(text, "~") || text_equal(text, "null") || text_equal(text, "Null") ||
           text_equal(text, "NULL");
}

static bool text_blank(const char *text)
{
    return text[strspn(text, " ")] == '\0';
}

bool scalar_sound(struct field_reading *reading, const char *name, const struct yaml_node *node)
{
    if (!node->quoted && text_stands_for_nothing(node->text))   /* a card would print it */
        field_error(reading, node->place,
                    "leave the value empty; put it in quotes if it is the text",
                    "%s is \"%s\", which would be read as a text", name, node->text);
    else if (strchr(node->text, '\n') != NULL)
        field_error(reading, node->place, "write the text as one line, or begin it with >",
                    "%s holds a line break", name);
    else if (text_blank(node->text))
        field_error(reading, node->place, "write the text, or leave the value empty",
                    "%s holds nothing but spaces", name);
    else
        return true;
    return false;
}

static const char *field_name(struct field_reading *reading, const struct field *field)
{
    return text_format(reading->arena, "\"%s\"", field->key);
}

/* A list where a text is due, or { } around it, comes from brackets. */
static bool scalar_due(struct field_reading *reading, const struct field *field,
                       const struct yaml_node *node, const char *wanted)
{
    if (node->kind == YAML_SCALAR)
        return scalar_sound(reading, field_name(reading, field), node);
    field_error(reading, node->place,
                node->kind == YAML_SEQUENCE
                    ? "write one value; a text that begins with [ or - goes in quotes"
                    : "write one value; a text with a colon or braces in it goes in quotes",
                "\"%s\" must be %s, not %s", field->key, wanted, yaml_kind_word(node));
    return false;
}

/* What to write instead: of a known slip, of a choice that has the name or is near, else of all. */
static const char *choice_remedy(const struct field_reading *reading, const struct field *field,
                                 const char *text)
{
    struct arena *arena = reading->arena;
    const char *upper = text_upper(arena, text);

    for (const struct choice_slip *slip = field->slips; slip != NULL && slip->written != NULL;
         slip++)
        if (text_equal(slip->written, upper))
            return slip->remedy;
    return known_remedy(arena, problems_known(reading->problems), text, field->choices,
                        words_joined(arena, "write one of:", field->choices,
                                     text_list_length(field->choices)));
}

unsigned choice_first(const struct field *field)
{
    return field->first == 0 ? 1 : field->first;
}

/* The value that the field has for that word; 0: it is none of its choices. */
static unsigned value_of_word(const struct field *field, const char *text)
{
    unsigned at = choice_find(field->choices, text);
    return at == 0 ? 0 : choice_first(field) + at - 1;
}

/* True where the field has no choices or the text is one of them. */
static bool choice_check(struct field_reading *reading, const struct field *field,
                         const struct yaml_node *node)
{
    if (field->choices == NULL || value_of_word(field, node->text) > 0)
        return true;
    field_error(reading, node->place, choice_remedy(reading, field, node->text),
                "\"%s\" cannot be %s", field->key, text_shown(reading->arena, node->text));
    return false;
}

static void text_read(struct field_reading *reading, const struct field *field,
                      const struct yaml_node *node, void *value)
{
    if (!scalar_due(reading, field, node, "a text"))
        return;
    *(struct text_value *)value = (struct text_value){.text = node->text, .place = node->place};
}

static void enum_read(struct field_reading *reading, const struct field *field,
                      const struct yaml_node *node, void *value)
{
    if (scalar_due(reading, field, node, "a text") && choice_check(reading, field, node))
        *(unsigned *)value = value_of_word(field, node->text);
}

static void wording_field_read(struct field_reading *reading, const struct field *field,
                               const struct yaml_node *node, void *value)
{
    wording_read(reading, field_name(reading, field), node, value);
}

static bool range_any(const struct field *field)
{
    return field->low == 0 && field->high == 0;
}

static bool range_holds(const struct field *field, int64_t milli)
{
    return range_any(field) || (milli >= field->low && milli <= field->high);
}

static void number_tell(struct field_reading *reading, const struct field *field,
                        const struct yaml_node *node)
{
    const int64_t usual = 12600;
    int64_t example = range_holds(field, usual) ? usual : field->high;

    field_error(reading, node->place, number_remedy(reading->arena, field, node->text),
                "\"%s\" must be a number such as %s, not %s", field->key,
                number_text_milli(reading->arena, example),
                text_shown(reading->arena, node->text));
}

static const char *range_remedy(struct arena *arena, const struct field *field)
{
    if (text_empty(field->about))
        return NULL;
    return text_format(arena, "look at it again; \"%s\" means: %s", field->key, field->about);
}

static void value_number_read(struct field_reading *reading, const struct field *field,
                              const struct yaml_node *node, void *value)
{
    int64_t milli;

    if (!scalar_due(reading, field, node, "a number"))
        return;
    if (!number_parse_milli(node->text, &milli)) {
        number_tell(reading, field, node);
        return;
    }
    if (!range_holds(field, milli)) {
        field_error(reading, node->place, range_remedy(reading->arena, field),
                    "\"%s\" must be from %s to %s, not %s", field->key,
                    number_text_milli(reading->arena, field->low),
                    number_text_milli(reading->arena, field->high), node->text);
        return;
    }
    if (field->whole && milli % 1000 != 0) {
        field_error(reading, node->place, range_remedy(reading->arena, field),
                    "\"%s\" must be a whole number, not %s", field->key, node->text);
        return;
    }
    *(struct number_value *)value = (struct number_value){
        .milli = milli, .text = node->text, .given = true, .place = node->place};
}

static void answer_read(struct field_reading *reading, const struct field *field,
                        const struct yaml_node *node, void *value)
{
    if (!scalar_due(reading, field, node, "yes or no"))
        return;
    bool yes = text_equal(node->text, "yes");
    if (!yes && !text_equal(node->text, "no")) {
        field_error(reading, node->place, answer_remedy(reading->arena, node->text),
                    "\"%s\" must be yes or no, not %s", field->key,
                    text_shown(reading->arena, node->text));
        return;
    }
    *(struct answer_value *)value = (struct answer_value){
        .answer = yes ? ANSWER_YES : ANSWER_NO, .place = node->place};
}

static void date_read(struct field_reading *reading, const struct field *field,
                      const struct yaml_node *node, void *value)
{
    struct date date;

    if (!scalar_due(reading, field, node, "a date"))
        return;
    if (!date_parse(node->text, &date)) {
        field_error(reading, node->place, date_remedy(reading->arena, node->text),
                    "\"%s\" must be a date such as 2027-04-30, 2027-04 or 2027, not %s",
                    field->key, text_shown(reading->arena, node->text));
        return;
    }
    *(struct date_value *)value = (struct date_value){
        .date = date, .text = node->text, .given = true, .place = node->place};
}

static bool list_holds(const struct text_value *words, size_t count, const char *text)
{
    for (size_t i = 0; i < count; i++)
        if (text_equal(words[i].text, text))
            return true;
    return false;
}

bool entry_sound(struct field_reading *reading, const struct field *field,
                 const struct yaml_node *node)
{
    const char *name = text_format(reading->arena, "an entry of \"%s\"", field->key);

    if (node->kind != YAML_SCALAR) {
        field_error(reading, node->place,
                    "write one text; a text with a colon, brackets or braces in it goes in quotes",
                    "%s must be a text, not %s", name, yaml_kind_word(node));
        return false;
    }
    if (text_empty(node->text)) {
        field_error(reading, node->place, "write the text, or delete the entry", "%s is empty",
                    name);
        return false;
    }
    return scalar_sound(reading, name, node) && choice_check(reading, field, node);
}

/* Reads `count` nodes as words; wrong ones are told and left out. */
static void words_read(struct field_reading *reading, const struct field *field,
                       const struct yaml_node *const *nodes, size_t count,
                       struct list_value *list)
{
    struct text_value *words = arena_array(reading->arena, count, sizeof *words);

    for (size_t i = 0; i < count; i++) {
        const struct yaml_node *node = nodes[i];
        if (!entry_sound(reading, field, node))
            continue;
        if (list_holds(words, list->count, node->text)) {
            field_error(reading, node->place, "delete one of the two",
                        "%s stands twice in \"%s\"", text_shown(reading->arena, node->text),
                        field->key);
            continue;
        }
        words[list->count++] = (struct text_value){.text = node->text, .place = node->place};
    }
    list->items = words;
}

static void list_read(struct field_reading *reading, const struct field *field,
                      const struct yaml_node *node, void *value)
{
    struct list_value list = {.given = true, .place = node->place};

    if (node->kind == YAML_MAPPING) {
        field_error(reading, node->place, "write the texts as a list: [one, two]",
                    "\"%s\" must be a list, not a mapping", field->key);
        return;
    }
    if (node->kind == YAML_SEQUENCE && field->kind == FIELD_WORDINGS) {
        wordings_read(reading, field, node, &list);
    } else if (node->kind == YAML_SEQUENCE) {
        words_read(reading, field, node->items, node->count, &list);
    } else if (field->kind == FIELD_WORDS || field->kind == FIELD_CHOICES) {
        words_read(reading, field, &node, 1, &list);
    } else {
        field_error(reading, node->place,
                    text_format(reading->arena, "write it as a list: [%s]", node->text),
                    "\"%s\" must be a list, not the text %s", field->key,
                    text_shown(reading->arena, node->text));
        return;
    }
    *(struct list_value *)value = list;
}

static void *member_of(void *record, size_t offset)
{
    return (char *)record + offset;
}

/* The words of the list, each as the choice that it is. The list and its entries are of a
 * type that only the caller knows: they are written member by member. */
static void enums_read(struct field_reading *reading, const struct field *field,
                       const struct yaml_node *node, void *value)
{
    const size_t size = sizeof(struct choice_value);
    struct list_value words = {0};

    list_read(reading, field, node, &words);
    if (!words.given || (node->kind == YAML_SCALAR && words.count == 0))
        return;
    void *items = arena_array(reading->arena, words.count, size);
    for (size_t i = 0; i < words.count; i++) {
        void *item = member_of(items, i * size);
        *(unsigned *)item = value_of_word(field, words.items[i].text);
        *(struct place *)member_of(item, offsetof(struct choice_value, place)) =
            words.items[i].place;
    }
    *(const void **)value = items;
    *(size_t *)member_of(value, offsetof(struct choice_list, count)) = words.count;
    *(bool *)member_of(value, offsetof(struct choice_list, given)) = true;
}

static void value_node_read(struct field_reading *reading, const struct field *field,
                            const struct yaml_node *node, void *value)
{
    (void)reading;
    (void)field;
    *(struct node_value *)value = (struct node_value){.node = node, .place = node->place};
}

size_t value_place_offset(enum field_kind kind)
{
    static const size_t offsets[] = {
        [FIELD_TEXT] = offsetof(struct text_value, place),
        [FIELD_WORDING] = offsetof(struct text_value, place),
        [FIELD_CHOICE] = offsetof(struct choice_value, place),
        [FIELD_CHOICES] = offsetof(struct choice_list, place),
        [FIELD_PAIRED] = offsetof(struct paired_list, place),
        [FIELD_BY_CHOICE] = offsetof(struct wordings_value, place),
        [FIELD_NUMBER] = offsetof(struct number_value, place),
        [FIELD_ANSWER] = offsetof(struct answer_value, place),
        [FIELD_DATE] = offsetof(struct date_value, place),
        [FIELD_LIST] = offsetof(struct list_value, place),
        [FIELD_WORDINGS] = offsetof(struct list_value, place),
        [FIELD_WORDS] = offsetof(struct list_value, place),
        [FIELD_PAIR] = offsetof(struct pair_value, place),
        [FIELD_SECTION] = offsetof(struct section_value, place),
        [FIELD_ENTRIES] = offsetof(struct entries_value, place),
        [FIELD_NODE] = offsetof(struct node_value, place),
    };

    promise(kind < sizeof offsets / sizeof offsets[0]);
    return offsets[kind];
}

void value_read(struct field_reading *reading, const struct field *field,
                const struct yaml_node *node, void *value)
{
    static void (*const readers[])(struct field_reading *, const struct field *,
                                   const struct yaml_node *, void *) = {
        [FIELD_TEXT] = text_read,
        [FIELD_WORDING] = wording_field_read,
        [FIELD_CHOICE] = enum_read,
        [FIELD_CHOICES] = enums_read,
        [FIELD_PAIRED] = paired_choices_read,
        [FIELD_BY_CHOICE] = wordings_by_choice_read,
        [FIELD_NUMBER] = value_number_read,
        [FIELD_ANSWER] = answer_read,
        [FIELD_DATE] = date_read,
        [FIELD_LIST] = list_read,
        [FIELD_WORDINGS] = list_read,
        [FIELD_WORDS] = list_read,
        [FIELD_PAIR] = pair_value_read,
        [FIELD_SECTION] = section_value_read,
        [FIELD_ENTRIES] = entries_value_read,
        [FIELD_NODE] = value_node_read,
    };

    /* a value that is refused leaves this alone */
    void *place = (char *)value + value_place_offset(field->kind);
    promise(field->kind < sizeof readers / sizeof readers[0]);
    *(struct place *)place = node->place;
    readers[field->kind](reading, field, node, value);
}

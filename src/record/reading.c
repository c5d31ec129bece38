/* reading.c - what every reader of files does alike (room: record): sections
 * read by their table, lists counted, texts kept free of stray spaces. Never
 * judges what a section means. */
#include "record.h"

#include "text.h"

#include <string.h>

/* A stray space looks right on the screen and makes two names of one. */
static const char *text_fault(const char *text)
{
    size_t length = 0;
    for (; text[length] != '\0'; length++) {
        if (text[length] == '\n' || text[length] == '\r')
            return "holds a line break";
        if (text[length] == '\t')
            return "holds a tab";
        if (text[length] == ' ' && text[length + 1] == ' ')
            return "holds two spaces in a row";
    }
    if (text[0] == ' ')
        return "begins with a space";
    return length > 0 && text[length - 1] == ' ' ? "ends with a space" : NULL;
}

bool text_next(const struct text_value *value, size_t *index, struct text_value *one)
{
    size_t at = (*index)++;
    if (value->text == NULL || (value->languages == NULL && at > 0))
        return false;
    *one = *value;
    if (value->languages != NULL)
        *one = (struct text_value){.text = value->languages[at].text,
                                   .place = value->languages[at].place};
    return one->text != NULL;
}

static void text_check(const char *key, const struct text_value *value, struct problems *problems)
{
    struct text_value one;
    for (size_t i = 0; text_next(value, &i, &one);) {
        const char *fault = text_fault(one.text);
        if (fault != NULL)
            problem_add(problems, SEVERITY_ERROR, one.place,
                        "write the words with single spaces between them, on one line",
                        "%s %s", key, fault);
    }
}

static bool is_text_field(const struct field *field)
{
    return field->kind == FIELD_TEXT || field->kind == FIELD_WORDING;
}

static bool is_by_choice(const struct field *field)
{
    return field->kind == FIELD_BY_CHOICE;
}

static bool is_texts(const struct field *field)
{
    return field->kind == FIELD_LIST || field->kind == FIELD_WORDS ||
           field->kind == FIELD_WORDINGS;
}

static void stray_spaces_check(const struct field *field, void *value, void *context)
{
    struct problems *problems = context;
    if (is_text_field(field))
        text_check(field->key, value, problems);
    for (size_t i = 0; is_by_choice(field) && i < wordings_count(field, value); i++)
        text_check(field->key, wordings_at(value, i), problems);
    if (!is_texts(field))
        return;
    const struct list_value *list = value;
    for (size_t i = 0; i < list->count; i++)
        text_check(field->key, &list->items[i], problems);
}

void section_read(const struct yaml_node *node, const struct field_table *table, void *record,
                  struct arena *arena, struct problems *problems)
{
    if (node == NULL)
        return;
    fields_read(node, table, record, arena, problems);
    field_values_visit(table, record, stray_spaces_check, problems);
}

/* What a base writes is printed as it is written: signs that would be taken for
 * bold type or for a word to fill in are refused. */
static void markup_check(const struct field *field, const struct text_value *value,
                         struct problems *problems)
{
    struct text_value one;
    for (size_t i = 0; text_next(value, &i, &one);)
        if (strstr(one.text, "**") != NULL || strpbrk(one.text, "{}") != NULL)
            problem_add(problems, SEVERITY_ERROR, one.place,
                        "write it without ** and without { }", "%s holds ** or a brace",
                        field->key);
}

static const char *unknown_remedy(const struct field *field, struct arena *arena)
{
    if (field->required)
        return text_format(arena, "record %s", field->about);
    return text_format(arena, "record %s,\nor leave the %s out: check tells what is not recorded",
                       field->about, is_texts(field) ? "entry" : "field");
}

/* A placeholder is refused, in whatever language: the field keeps its place alone. */
static void filled_in_check(const struct field *field, struct text_value *value,
                            struct arena *arena, struct problems *problems)
{
    struct text_value one;
    bool refused = false;
    for (size_t i = 0; text_next(value, &i, &one);) {
        const char *found = placeholder_in(one.text, field->any_word ? TEXT_NAME : TEXT_WORDS,
                                           arena);
        if (found == NULL)
            continue;
        problem_add(problems, SEVERITY_ERROR, one.place, unknown_remedy(field, arena),
                    "%s %s %s, which stands where a fact is yet to be recorded", field->key,
                    text_equal(found, one.text) && !is_texts(field) ? "is" : "holds",
                    text_shown(arena, found));
        refused = true;
    }
    if (refused)
        *value = (struct text_value){.place = value->place};
}

/* Entries that are refused are left out. */
static void list_check(const struct field *field, struct list_value *list, struct arena *arena,
                       struct problems *problems)
{
    struct text_value *kept = arena_array(arena, list->count, sizeof *kept);
    size_t count = 0;
    for (size_t i = 0; i < list->count; i++) {
        kept[count] = list->items[i];
        markup_check(field, &kept[count], problems);
        if (field->choices == NULL)
            filled_in_check(field, &kept[count], arena, problems);
        if (kept[count].text != NULL)
            count++;
    }
    list->items = kept;
    list->count = count;
}

struct plain_checking {
    struct arena *arena;
    struct problems *problems;
};

static void by_choice_check(const struct field *field, struct wordings_value *value,
                            const struct plain_checking *checking)
{
    for (size_t i = 0; i < wordings_count(field, value); i++) {
        markup_check(field, wordings_at(value, i), checking->problems);
        filled_in_check(field, wordings_at(value, i), checking->arena, checking->problems);
    }
}

static void plain_check(const struct field *field, void *value, void *context)
{
    const struct plain_checking *checking = context;
    if (is_text_field(field)) {
        markup_check(field, value, checking->problems);
        filled_in_check(field, value, checking->arena, checking->problems);
    } else if (is_by_choice(field)) {
        by_choice_check(field, value, checking);
    } else if (is_texts(field)) {
        list_check(field, value, checking->arena, checking->problems);
    }
}

void plain_section_read(const struct yaml_node *node, const struct field_table *table,
                        void *record, struct arena *arena, struct problems *problems)
{
    struct plain_checking checking = {arena, problems};
    section_read(node, table, record, arena, problems);
    if (node != NULL)
        field_values_visit(table, record, plain_check, &checking);
}

struct place place_or(struct place first, struct place otherwise)
{
    return first.line > 0 ? first : otherwise;
}

/* Stars come in pairs, and pairs of pairs with words between them. */
const char *bold_fault(const char *text)
{
    bool open = false;
    size_t opened = 0;
    for (size_t i = 0; text[i] != '\0'; i++) {
        if (text[i] != '*')
            continue;
        if (text[i + 1] != '*')
            return "holds a single star";
        if (open && i == opened)
            return "holds bold stars with nothing between them";
        open = !open;
        opened = i + 2;
        i++;
    }
    return open ? "holds bold stars that are never closed" : NULL;
}

bool list_holds(const struct list_value *list, const char *word)
{
    for (size_t i = 0; i < list->count; i++)
        if (text_equal(list->items[i].text, word))
            return true;
    return false;
}


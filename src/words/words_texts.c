/* words_texts.c - the texts of the words of one language, by the shapes that WORD_LIST gives
 * them (room: words): one text, one for each form of a number, or the joints of a list. Each
 * must have just the names that are filled in. */
#include "words_room.h"

#include <string.h>

#include "text.h"

/* The section as its table reads it: words of one text, and those that have several. */
struct word_values {
    struct text_value only[WORD_COUNT];
    struct node_value several[WORD_COUNT];
};

static const struct word_row {
    const char *key;
    enum word_shape shape;
    const char *blanks;      /* names that are filled in, with spaces between them */
} word_rows[WORD_COUNT] = {
#define WORD_ROW(name, word_key, word_shape, word_blanks) \
    {.key = #word_key, .shape = SHAPE_##word_shape, .blanks = (word_blanks)},
    WORD_LIST(WORD_ROW)
#undef WORD_ROW
};

_Static_assert(sizeof word_rows / sizeof *word_rows == WORD_COUNT, "a row for each word");

/* ---- {names} and **bold** parts ---- */

size_t words_blank_length(const char *text)
{
    size_t length = 1;
    if (text[0] != '{')
        return 0;
    while ((text[length] >= 'a' && text[length] <= 'z') || text[length] == '_')
        length++;
    return length > 1 && text[length] == '}' ? length + 1 : 0;
}

/* Does a list of names, with spaces between them, hold this one? */
static bool blanks_hold(const char *blanks, const char *name, size_t length)
{
    for (const char *at = blanks; *at != '\0';) {
        size_t word = strcspn(at, " ");
        if (word == length && memcmp(at, name, length) == 0)
            return true;
        at += word + strspn(at + word, " ");
    }
    return false;
}

static bool text_has_blank(const char *text, const char *name, size_t length)
{
    for (; *text != '\0'; text++)
        if (words_blank_length(text) == length + 2 && memcmp(text + 1, name, length) == 0)
            return true;
    return false;
}

static const char *brace_fault(const char *text)
{
    while (*text != '\0') {
        size_t length = words_blank_length(text);
        if (length == 0 && (*text == '{' || *text == '}'))
            return "holds a brace that is not part of a {name}";
        text += length > 0 ? length : 1;
    }
    return NULL;
}

/* One text of a word and what is to be known to judge it. */
struct text_check {
    const struct word_row *row;
    const struct text_value *value;
    bool number_told;        /* the text is for one number alone, and may leave it out */
    struct arena *arena;
    struct problems *problems;
};

static void strange_blanks_tell(const struct text_check *check)
{
    for (const char *at = check->value->text; *at != '\0'; at++) {
        size_t length = words_blank_length(at);
        if (length == 0 || blanks_hold(check->row->blanks, at + 1, length - 2))
            continue;
        const char *remedy = check->row->blanks[0] == '\0'
                                 ? "nothing is filled in here: write it without braces"
                                 : text_format(check->arena, "names that are filled in here: %s",
                                               check->row->blanks);
        problem_add(check->problems, SEVERITY_ERROR, check->value->place, remedy,
                    "%s has no {name} such as %.*s", check->row->key, (int)length, at);
    }
}

static void missing_blanks_tell(const struct text_check *check)
{
    const char *blanks = check->row->blanks;
    for (const char *at = blanks; *at != '\0';) {
        size_t length = strcspn(at, " ");
        bool spared = at == blanks && check->number_told;
        if (!spared && !text_has_blank(check->value->text, at, length))
            problem_add(check->problems, SEVERITY_ERROR, check->value->place,
                        text_format(check->arena, "write {%.*s} where it belongs", (int)length,
                                    at),
                        "%s does not say {%.*s}", check->row->key, (int)length, at);
        at += length + strspn(at + length, " ");
    }
}

static void word_text_judge(const struct text_check *check)
{
    const char *text = check->value->text;
    if (text == NULL)
        return;
    const char *faults[] = {brace_fault(text), bold_fault(text)};
    for (size_t i = 0; i < sizeof faults / sizeof faults[0]; i++)
        if (faults[i] != NULL)
            problem_add(check->problems, SEVERITY_ERROR, check->value->place,
                        "write {name} for what is filled in, and **words** for bold ones",
                        "%s %s", check->row->key, faults[i]);
    if (faults[0] != NULL)
        return;
    strange_blanks_tell(check);
    missing_blanks_tell(check);
}

static void word_texts_judge(const struct words *words, struct arena *arena,
                             struct problems *problems)
{
    for (size_t i = 0; i < WORD_COUNT; i++) {
        struct text_check check = {&word_rows[i], &words->texts[i].only, false, arena, problems};
        word_text_judge(&check);
        for (size_t form = 0; form < PLURAL_COUNT; form++) {
            check.value = &words->texts[i].forms[form];
            check.number_told = check.row->shape == SHAPE_COUNTED &&
                                plural_is_single(&words->plurals[form]);
            word_text_judge(&check);
        }
    }
}

/* ---- reading ---- */

/* Is the word given in several texts, as its shape allows? */
static bool is_in_several(const struct yaml_node *section, const struct word_row *row)
{
    const struct yaml_node *value =
        section->kind == YAML_MAPPING ? yaml_get(section, row->key) : NULL;
    return row->shape != SHAPE_PLAIN && value != NULL && value->kind == YAML_MAPPING;
}

/* The rows of the section, each by what the file has there: a text, or several. */
static const struct field *word_rows_of(const struct yaml_node *section, struct arena *arena)
{
    struct field *rows = arena_array(arena, WORD_COUNT, sizeof *rows);
    for (size_t i = 0; i < WORD_COUNT; i++) {
        bool several = is_in_several(section, &word_rows[i]);
        rows[i] = word_table.fields[i];
        rows[i].kind = several ? FIELD_NODE : FIELD_TEXT;
        rows[i].offset = several ? offsetof(struct word_values, several) +
                                       i * sizeof(struct node_value)
                                 : offsetof(struct word_values, only) +
                                       i * sizeof(struct text_value);
    }
    return rows;
}

static void several_read(struct words *words, size_t word, const struct yaml_node *node,
                         struct arena *arena, struct problems *problems)
{
    struct field rows[PLURAL_COUNT];
    const struct field_table forms = {.what = form_table.what, .fields = rows,
                                      .count = rows_of_language(words, &form_table, rows)};
    section_read(node, word_rows[word].shape == SHAPE_JOIN ? &joint_table : &forms,
                 words->texts[word].forms, arena, problems);
}

void word_texts_read(struct words *words, const struct yaml_node *node, struct arena *arena,
                     struct problems *problems)
{
    if (node == NULL)
        return;
    struct word_values *values = arena_alloc(arena, sizeof *values);
    const struct field_table table = {.what = word_table.what,
                                      .fields = word_rows_of(node, arena), .count = WORD_COUNT};
    section_read(node, &table, values, arena, problems);
    for (size_t i = 0; i < WORD_COUNT; i++) {
        words->texts[i].only = values->only[i];
        if (values->several[i].node != NULL)
            several_read(words, i, values->several[i].node, arena, problems);
    }
    word_texts_judge(words, arena, problems);
}

/* procedure_texts.c - the texts of a procedure by language: what the logic asks for under
 * an id, read from each language's file and put beside the logic (room: procedure). A text
 * that is missing in one language, or that no id asks for, is told; nothing is made up. */
#include "procedure_texts.h"

#include "text.h"

/* A value of a row before it goes where it is wanted. */
union found {
    struct text_value text;
    struct list_value list;
    struct node_value node;
};

/* The rows of one mapping in one language. */
struct text_mapping {
    struct procedure_reading *reading;
    const struct yaml_node *node;
    size_t language;                   /* by number in the files of the reading */
    bool comparable;                   /* the first language has the mapping too */
};

static const struct procedure_text_file *language_file(const struct text_mapping *mapping,
                                                 size_t language)
{
    return &mapping->reading->files->texts[language];
}

/* ---- one text ---- */

static void language_add(const struct text_mapping *mapping, const struct text_value *found,
                         struct text_value *into)
{
    size_t count = mapping->language;
    struct text_in_language *all =
        arena_array(mapping->reading->arena, count + 2, sizeof *all);
    for (size_t i = 0; i < count && into->languages != NULL; i++)
        all[i] = into->languages[i];
    all[count] = (struct text_in_language){language_file(mapping, count)->language, found->text,
                                           found->place};
    into->languages = all;
}

static void difference_tell(const struct text_mapping *mapping, struct place place,
                            const char *key, const char *remedy)
{
    problem_add(mapping->reading->problems, SEVERITY_ERROR,
                place_or(place, mapping->node->place), remedy,
                "%s is given in only one of the languages %s and %s", key,
                language_file(mapping, 0)->language,
                language_file(mapping, mapping->language)->language);
}

/* Languages say the same: none leaves out what the first says, or says more. */
static bool given_alike(const struct text_mapping *mapping, const struct field *field,
                        const struct text_value *first, const struct text_value *found)
{
    bool told = field->required && (first->text == NULL || found->text == NULL);
    if ((first->text == NULL) == (found->text == NULL) || told)
        return first->text != NULL && found->text != NULL;
    difference_tell(mapping, found->place, field->key,
                    found->text == NULL ? "translate it from the first language"
                                        : "take it out, or write it in the first language too");
    return false;
}

static void one_value_check(const struct text_mapping *mapping, const struct wanted_text *row,
                            const struct text_value *found)
{
    if (found->text != NULL && !text_equal(found->text, row->same))
        problem_add(mapping->reading->problems, SEVERITY_ERROR, found->place,
                    text_format(mapping->reading->arena, "write %s: %s, or put the texts into "
                                "the file of that name", row->field.key, row->same),
                    "these are the texts of %s, not of %s", found->text, row->same);
}

/* What the first language gives is the text; the others stand beside it. */
static void text_join(const struct text_mapping *mapping, const struct wanted_text *row,
                      const struct text_value *found, struct text_value *into)
{
    if (mapping->language == 0) {
        *into = *found;
        names_note(mapping->reading, row, found);
    } else if (mapping->comparable && given_alike(mapping, &row->field, into, found)) {
        names_compare(mapping->reading, row, into, found);
    }
    if (found->text != NULL)
        language_add(mapping, found, into);
}

static void list_join(const struct text_mapping *mapping, const struct wanted_text *row,
                      const struct list_value *found, struct list_value *into)
{
    struct arena *arena = mapping->reading->arena;
    struct text_value *items = arena_array(arena, found->count, sizeof *items);
    if (mapping->language > 0 && found->count != into->count) {
        if (!found->given || !into->given)
            return;
        problem_add(mapping->reading->problems, SEVERITY_ERROR, found->place,
                    "write as many, in the same order", "%s has %zu entries, and %zu in the "
                    "language %s", row->field.key, found->count, into->count,
                    language_file(mapping, 0)->language);
        return;
    }
    for (size_t i = 0; i < found->count; i++) {
        items[i] = mapping->language == 0 ? found->items[i] : into->items[i];
        text_join(mapping, row, &found->items[i], &items[i]);
    }
    if (mapping->language == 0)
        *into = *found;
    into->items = items;
}

/* ---- a mapping ---- */

static void found_put(const struct text_mapping *mapping, const struct wanted_text *row,
                      const union found *found)
{
    if (row->same != NULL)
        one_value_check(mapping, row, &found->text);
    else if (row->text != NULL)
        text_join(mapping, row, &found->text, row->text);
    else if (row->list != NULL)
        list_join(mapping, row, &found->list, row->list);
    else
        row->inside->nodes[mapping->language] = found->node.node;
}

/* The first row of this row's key: an id that stands twice has one text. */
static size_t first_of_key(const struct wanted_text *rows, size_t index)
{
    size_t first = 0;
    while (!text_equal(rows[first].field.key, rows[index].field.key))
        first++;
    return first;
}

static void text_mapping_read(const struct text_mapping *mapping, const char *what,
                         const struct wanted_text *rows, size_t count)
{
    struct procedure_reading *reading = mapping->reading;
    union found *values = arena_array(reading->arena, count, sizeof *values);
    struct field *fields = arena_array(reading->arena, count, sizeof *fields);
    struct field_table table = {.what = what, .fields = fields, .strays = logic_keys};
    for (size_t i = 0; i < count; i++) {
        if (first_of_key(rows, i) < i)
            continue;
        fields[table.count] = rows[i].field;
        fields[table.count++].offset = i * sizeof *values;
    }
    section_read(mapping->node, &table, values, reading->arena, reading->problems);
    for (size_t i = 0; i < count; i++)
        found_put(mapping, &rows[i], &values[first_of_key(rows, i)]);
}

void texts_read(struct procedure_reading *reading, const struct texts_at *at, const char *what,
                const struct wanted_text *rows, size_t count)
{
    size_t languages = reading->files->text_count;
    for (size_t i = 0; i < count; i++)
        if (rows[i].inside != NULL)
            rows[i].inside->nodes =
                arena_array(reading->arena, languages, sizeof *rows[i].inside->nodes);
    for (size_t i = 0; i < languages && at->nodes != NULL; i++) {
        const struct text_mapping mapping = {reading, at->nodes[i], i, at->nodes[0] != NULL};
        if (mapping.node != NULL)
            text_mapping_read(&mapping, what, rows, count);
    }
}

/* ---- texts by id ---- */

static const char *logic_words(const struct procedure_reading *reading, struct place place)
{
    return text_format(reading->arena, "the words of the id on line %d of %s", place.line,
                       reading->procedure->source->name);
}

struct wanted_text text_by_id(const struct procedure_reading *reading,
                              const struct text_value *id, struct text_value *into)
{
    return (struct wanted_text){
        .field = {.key = id->text, .kind = FIELD_TEXT, .required = true,
                  .about = logic_words(reading, id->place)},
        .text = into};
}

struct wanted_text texts_under_id(const struct procedure_reading *reading,
                                  const struct text_value *id, struct texts_at *inside)
{
    return (struct wanted_text){
        .field = {.key = id->text, .kind = FIELD_NODE, .required = true,
                  .about = logic_words(reading, id->place)},
        .inside = inside};
}

struct wanted_text text_under(const struct field *row, struct text_value *into)
{
    return (struct wanted_text){.field = *row, .text = into};
}

struct wanted_text filled_text_under(const struct field *row, struct text_value *into)
{
    return (struct wanted_text){.field = *row, .text = into, .naming = NAMES_STEPS_AND_CARDS};
}

struct wanted_text texts_under(const struct field *row, struct texts_at *inside)
{
    struct wanted_text wanted = {.field = *row, .inside = inside};
    wanted.field.required = true;
    return wanted;
}

void want(const struct procedure_reading *reading, struct wanted_list *list,
          struct wanted_text wanted)
{
    list->rows = arena_grow(reading->arena, list->rows, list->count, &list->room,
                            sizeof *list->rows);
    list->rows[list->count++] = wanted;
}

/* ---- the files ---- */

/* Where channel 70 may well be named: warnings and reasons. */
static bool warns_or_reasons(const char *key)
{
    return text_equal(key, head_texts.fields[HEAD_NEVER].key) ||
           text_equal(key, head_texts.fields[HEAD_CAUTIONS].key) ||
           text_equal(key, step_texts.fields[STEP_BECAUSE].key);
}

struct texts_at text_files_open(struct procedure_reading *reading)
{
    const struct procedure_files *files = reading->files;
    struct texts_at roots = {
        arena_array(reading->arena, files->text_count, sizeof *roots.nodes)};
    for (size_t i = 0; i < files->text_count; i++) {
        roots.nodes[i] =
            yaml_tree_read(files->texts[i].source, reading->arena, reading->problems);
        voice_words_check(roots.nodes[i], warns_or_reasons, reading->arena, reading->problems);
    }
    text_sums_take(reading, &roots);
    return roots;
}

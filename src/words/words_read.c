/* words_read.c - the words of one language besides the procedures' own (room: words):
 * sentences of the card, names of gear and of zones. Complete or not at all: a card half in
 * another language helps nobody. */
#include "words_room.h"

#include <string.h>

#include "item.h"
#include "text.h"

/* The file's sections, and the nodes of the items before they are read. */
struct words_file {
    struct text_value language, name;
    struct node_value plurals, words, items, zones, reading, proof;
};
struct item_nodes {
    struct node_value at[ITEM_COUNT];
};

static const struct field words_file_rows[] = {
    ROW(struct words_file, language, FIELD_TEXT, .required = true, .about = "its code, as en"),
    ROW(struct words_file, name, FIELD_TEXT, .required = true, .about = "its name"),
    ROW(struct words_file, plurals, FIELD_NODE, .required = true,
        .about = "which form a number takes, as {one: {is: 1}}"),
    ROW(struct words_file, words, FIELD_NODE, .required = true, .about = "sentences of a card"),
    ROW(struct words_file, items, FIELD_NODE, .required = true, .about = "names of gear"),
    ROW(struct words_file, zones, FIELD_NODE, .required = true, .about = "names of zones"),
    ROW(struct words_file, reading, FIELD_NODE, .required = true,
        .about = "words by which the record is understood"),
    ROW(struct words_file, proof, FIELD_NODE, .about = "words by which commands are judged"),
};


#define ITEM_ROW(name, ...) \
    {.key = #name, .kind = FIELD_NODE, .required = true, \
     .offset = offsetof(struct item_nodes, at) + ITEM_##name * sizeof(struct node_value), \
     .about = "what it is called: {one: ..., other: ...}"},
static const struct field item_rows[] = {ITEM_LIST(ITEM_ROW)};
#undef ITEM_ROW

/* A zone with a family needs no name of its own. */
#define ZONE_ROW(name, kin, ...) \
    {.key = #name, .kind = FIELD_TEXT, .required = ZONE_##name == ZONE_##kin, \
     .offset = offsetof(struct words, zones) + ZONE_##name * sizeof(struct text_value), \
     .about = "name of the zone"},
static const struct field zone_rows[] = {ZONE_LIST(ZONE_ROW)};
#undef ZONE_ROW

static const struct field name_row =
    ROW(struct item_words, name, FIELD_TEXT, .about = "one of them, where it stands alone");

#define FORM_ROW(form, form_key) \
    {.key = #form_key, .kind = FIELD_TEXT, .required = true, .about = "a form for numbers"},
static const struct field form_rows[PLURAL_COUNT] = {PLURAL_LIST(FORM_ROW)};
#undef FORM_ROW

static const struct field_table words_file_table = TABLE("a file of words", words_file_rows);
static const struct field_table item_table = TABLE("the section items", item_rows);
static const struct field_table zone_table = TABLE("the section zones", zone_rows);

size_t form_rows_make(const struct words *words, size_t offset, struct field *rows)
{
    size_t count = 0;
    for (size_t form = 0; form < PLURAL_COUNT; form++) {
        if (!words->plurals[form].given)
            continue;
        rows[count] = form_rows[form];
        rows[count++].offset = offset + form * sizeof(struct text_value);
    }
    return count;
}

static void item_name_complete(struct item_words *names)
{
    for (size_t form = 0; names->name.text == NULL && form < PLURAL_COUNT; form++)
        names->name = names->forms[form];
}

static void item_words_read(struct words *words, const struct yaml_node *node, struct arena *arena,
                            struct problems *problems)
{
    struct field rows[1 + PLURAL_COUNT] = {name_row};
    size_t forms = form_rows_make(words, offsetof(struct item_words, forms), rows + 1);
    const struct field_table name_table = {
        .what = "an entry of items", .fields = rows, .count = 1 + forms};
    struct item_nodes nodes = {0};
    section_read(node, &item_table, &nodes, arena, problems);
    for (enum item_key i = ITEM_NONE + 1; i < ITEM_COUNT; i++) {
        section_read(nodes.at[i].node, &name_table, &words->items[i], arena, problems);
        item_name_complete(&words->items[i]);
    }
}

/* A row without a name of its own has its family's. */
static void zones_complete(struct words *words)
{
    for (enum zone_key zone = ZONE_NONE + 1; zone < ZONE_COUNT; zone++)
        if (words->zones[zone].text == NULL)
            words->zones[zone] = words->zones[zone_of(zone)->family];
}

/* A file in the folder of another language would print that language under this name. */
static void language_check(const struct text_value *given, const char *language,
                           struct arena *arena, struct problems *problems)
{
    if (given->text != NULL && !text_equal(given->text, language))
        problem_add(problems, SEVERITY_ERROR, given->place,
                    text_format(arena, "write the code of its folder: %s", language),
                    "language is %s, but the file lies in the folder %s",
                    text_shown(arena, given->text), language);
}

const struct words *words_read(const struct source *source, const char *language,
                               struct arena *arena, struct problems *all)
{
    struct problems *problems = problems_part(all);
    struct words_file file = {0};
    struct words *words = arena_alloc(arena, sizeof *words);
    const struct yaml_node *root = yaml_tree_read(source, arena, problems);
    section_read(root, &words_file_table, &file, arena, problems);
    voice_words_check(root, arena, problems);
    words->language = file.language;
    words->name = file.name;
    language_check(&words->language, language, arena, problems);
    plural_rules_read(file.plurals.node, words->plurals, arena, problems);
    word_texts_read(words, file.words.node, arena, problems);
    item_words_read(words, file.items.node, arena, problems);
    section_read(file.zones.node, &zone_table, words, arena, problems);
    zones_complete(words);
    word_sets_read(words, file.reading.node, file.proof.node, arena, problems);
    return problems_settle(all, problems) ? words : NULL;
}

/* words_read.c - the words of one language besides the procedures' own (room:
 * record): sentences of the card, names of gear and of zones. Complete or not at
 * all: a card half in another language helps nobody. */
#include "procedure.h"

#include "record.h"
#include "text.h"
#include "zone_list.h"

#include <string.h>

#define COUNT_ONE(...) +1
enum { ZONE_TOTAL = 0 ZONE_LIST(COUNT_ONE) };
#undef COUNT_ONE

struct item_words {
    struct text_value one, many;
};

struct words {
    struct text_value language, name;
    struct text_value texts[WORD_COUNT];
    struct item_words items[ITEM_COUNT];
    struct text_value zones[ZONE_TOTAL];
};

/* The file's sections, and the nodes of the items before they are read. */
struct words_file {
    struct text_value language, name;
    struct node_value words, items, zones;
};
struct item_nodes {
    struct node_value at[ITEM_COUNT];
};

static const struct field file_rows[] = {
    ROW(struct words_file, language, FIELD_TEXT, .required = true, .about = "its code, as en"),
    ROW(struct words_file, name, FIELD_TEXT, .required = true, .about = "its name"),
    ROW(struct words_file, words, FIELD_NODE, .required = true, .about = "sentences of a card"),
    ROW(struct words_file, items, FIELD_NODE, .required = true, .about = "names of gear"),
    ROW(struct words_file, zones, FIELD_NODE, .required = true, .about = "names of zones"),
};

#define WORD_ROW(word, name) \
    {.key = (name), .kind = FIELD_TEXT, .required = true, \
     .offset = offsetof(struct words, texts) + WORD_##word * sizeof(struct text_value), \
     .about = "a text of the card"},
static const struct field word_rows[] = {WORD_LIST(WORD_ROW)};
#undef WORD_ROW

#define ITEM_ROW(name, ...) \
    {.key = #name, .kind = FIELD_NODE, .required = true, \
     .offset = offsetof(struct item_nodes, at) + ITEM_##name * sizeof(struct node_value), \
     .about = "{one: ..., many: ...}"},
static const struct field item_rows[] = {ITEM_LIST(ITEM_ROW)};
#undef ITEM_ROW

#define ZONE_INDEX(name, ...) ZONE_INDEX_##name,
enum { ZONE_LIST(ZONE_INDEX) ZONE_INDEX_END };
#undef ZONE_INDEX

/* A zone with a family needs no name of its own. */
#define ZONE_ROW(name, kin, ...) \
    {.key = #name, .kind = FIELD_TEXT, .required = ZONE_INDEX_##name == ZONE_INDEX_##kin, \
     .offset = offsetof(struct words, zones) + ZONE_INDEX_##name * sizeof(struct text_value), \
     .about = "name of the zone"},
static const struct field zone_rows[] = {ZONE_LIST(ZONE_ROW)};
#undef ZONE_ROW

static const struct field name_rows[] = {
    ROW(struct item_words, one, FIELD_TEXT, .required = true, .about = "one of them"),
    ROW(struct item_words, many, FIELD_TEXT, .required = true, .about = "several"),
};
static const struct field_table file_table = TABLE("file of words", file_rows);
static const struct field_table word_table = TABLE("words", word_rows);
static const struct field_table item_table = TABLE("items", item_rows);
static const struct field_table zone_table = TABLE("zones", zone_rows);
static const struct field_table name_table = TABLE("name of an item", name_rows);

/* Length of a {name} at the start of `text`, braces included; 0 if there is
 * none. */
static size_t blank_length(const char *text)
{
    size_t length = 1;
    if (text[0] != '{')
        return 0;
    while ((text[length] >= 'a' && text[length] <= 'z') || text[length] == '_')
        length++;
    return length > 1 && text[length] == '}' ? length + 1 : 0;
}

static const char *brace_fault(const char *text)
{
    while (*text != '\0') {
        size_t length = blank_length(text);
        if (length == 0 && (*text == '{' || *text == '}'))
            return "holds a brace that is not part of a {name}";
        text += length > 0 ? length : 1;
    }
    return NULL;
}

static void text_fault_tell(const struct text_value *value, const char *key, const char *fault,
                            struct problems *problems)
{
    if (fault != NULL)
        problem_add(problems, SEVERITY_ERROR, value->place,
                    "write {name} for what is filled in, and **words** for bold ones",
                    "%s %s", key, fault);
}

static void texts_check(const struct words *words, struct problems *problems)
{
    for (size_t i = 0; i < WORD_COUNT; i++) {
        const struct text_value *value = &words->texts[i];
        if (value->text == NULL)
            continue;
        text_fault_tell(value, word_rows[i].key, brace_fault(value->text), problems);
        text_fault_tell(value, word_rows[i].key, bold_fault(value->text), problems);
    }
}

static void items_read(struct words *words, const struct yaml_node *node, struct arena *arena,
                       struct problems *problems)
{
    struct item_nodes nodes = {0};
    section_read(node, &item_table, &nodes, arena, problems);
    for (enum item_key i = ITEM_NONE + 1; i < ITEM_COUNT; i++)
        section_read(nodes.at[i].node, &name_table, &words->items[i], arena, problems);
}

/* A row without a name of its own has its family's. */
static void zones_complete(struct words *words)
{
    for (size_t i = 0; i < ZONE_TOTAL; i++)
        for (size_t k = 0; words->zones[i].text == NULL && k < ZONE_TOTAL; k++)
            if (text_equal(zone_at(k)->key, zone_at(i)->family))
                words->zones[i] = words->zones[k];
}

const struct words *words_read(const struct source *source, struct arena *arena,
                               struct problems *problems)
{
    size_t before = errors_so_far(problems);
    struct words_file file = {0};
    struct words *words = arena_alloc(arena, sizeof *words);
    const struct yaml_node *root = yaml_tree_read(source, arena, problems);
    section_read(root, &file_table, &file, arena, problems);
    voice_words_check(root, arena, problems);
    words->language = file.language;
    words->name = file.name;
    section_read(file.words.node, &word_table, words, arena, problems);
    items_read(words, file.items.node, arena, problems);
    section_read(file.zones.node, &zone_table, words, arena, problems);
    texts_check(words, problems);
    zones_complete(words);
    return errors_so_far(problems) == before ? words : NULL;
}

const char *words_language(const struct words *words)
{
    return words->language.text;
}

const char *words_get(const struct words *words, enum word word)
{
    return words->texts[word].text;
}

/* The value given for the name between the braces, or NULL. */
static const char *value_of(const char *blank, size_t length, va_list pairs)
{
    for (const char *name; (name = va_arg(pairs, const char *)) != NULL;) {
        const char *value = va_arg(pairs, const char *);
        if (strlen(name) == length - 2 && memcmp(name, blank + 1, length - 2) == 0)
            return value;
    }
    return NULL;
}

/* The pairs are looked through anew for every blank. */
static void blank_fill(struct text_builder *out, const char *blank, size_t length,
                       va_list pairs)
{
    va_list again;
    va_copy(again, pairs);
    const char *value = value_of(blank, length, again);
    va_end(again);
    if (value != NULL)
        text_add(out, value);
    else
        text_add_bytes(out, blank, length);
}

const char *words_fill(const struct words *words, struct arena *arena, enum word word, ...)
{
    struct text_builder out = text_builder_in(arena);
    va_list pairs;
    va_start(pairs, word);
    for (const char *at = words_get(words, word); *at != '\0';) {
        size_t length = blank_length(at);
        if (length > 0)
            blank_fill(&out, at, length, pairs);
        else
            text_add_bytes(&out, at, 1);
        at += length > 0 ? length : 1;
    }
    va_end(pairs);
    return out.at;
}

const char *words_item(const struct words *words, enum item_key item)
{
    return words->items[item].one.text;
}

const char *words_items(const struct words *words, enum item_key item)
{
    return words->items[item].many.text;
}

/* NULL for what is no zone: that is the caller's fault, not the file's. */
const char *words_zone(const struct words *words, const char *zone)
{
    for (size_t i = 0; i < ZONE_TOTAL; i++)
        if (text_equal(zone_at(i)->key, zone))
            return words->zones[i].text;
    return NULL;
}

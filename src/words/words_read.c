/* words_read.c - the words of one language besides the procedures' own (room: words):
 * sentences of the card, names of gear and of zones. Complete or not at all: a card half in
 * another language helps nobody. */
#include "words_room.h"

#include <string.h>

#include "item.h"
#include "sha256.h"
#include "text.h"

size_t rows_of_language(const struct words *words, const struct field_table *table,
                        struct field *rows)
{
    size_t first = table->count - PLURAL_COUNT, count = 0;
    for (size_t i = 0; i < table->count; i++) {
        if (i >= first && !words->plurals[i - first].given)
            continue;
        rows[count] = table->fields[i];
        rows[count++].required = i >= first;
    }
    return count;
}

static void item_name_complete(struct item_words *names)
{
    for (size_t form = 0; names->name.text == NULL && form < PLURAL_COUNT; form++)
        names->name = names->forms[form];
}

static void item_words_read(struct words_file *file, struct arena *arena,
                            struct problems *problems)
{
    struct field rows[1 + PLURAL_COUNT];
    const struct field_table names = {
        .what = item_name_table.what, .fields = rows,
        .count = rows_of_language(&file->words, &item_name_table, rows)};
    for (enum item_key i = ITEM_NONE + 1; i < ITEM_COUNT; i++) {
        section_read(file->items[i].node, &names, &file->words.items[i], arena, problems);
        item_name_complete(&file->words.items[i]);
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

/* Sections of the file that cards print. */
static const char *words_sum_make(const struct yaml_node *root, struct arena *arena)
{
    static const char *const printed[] = {"words", "items", "zones", "states"};
    struct text_builder content = text_builder_in(arena);
    char *sum = arena_alloc(arena, SHA256_TEXT);
    bool mapping = root != NULL && root->kind == YAML_MAPPING;
    for (size_t i = 0; mapping && i < sizeof printed / sizeof *printed; i++)
        if (yaml_get(root, printed[i]) != NULL)
            yaml_content_add(yaml_get(root, printed[i]), &content);
    sha256_text((const unsigned char *)content.at, content.length, sum);
    return sum;
}

const struct words *words_read(const struct source *source, const char *language,
                               struct arena *arena, struct problems *all)
{
    struct problems *problems = problems_part(all);
    struct words_file *file = arena_alloc(arena, sizeof *file);
    struct words *words = &file->words;
    const struct yaml_node *root = yaml_tree_read(source, arena, problems);
    section_read(root, words_file_fields(), file, arena, problems);
    voice_words_check(root, NULL, arena, problems);
    language_check(&words->language, language, arena, problems);
    plural_rules_settle(file->rules, words->plurals, arena, problems);
    word_texts_read(words, file->word_texts.node, arena, problems);
    item_words_read(file, arena, problems);
    zones_complete(words);
    words->sum = words_sum_make(root, arena);
    return problems_settle(all, problems) ? words : NULL;
}

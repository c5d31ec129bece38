/* words_sets.c - sets of words by which texts that people wrote are understood (room: words):
 * those of the record, and commands that the proofreader judges. Never judges one. */
#include "words_room.h"

#include "text.h"

enum set_section { SECTION_reading, SECTION_proof };

#define SET_ROW(name, section_name, set_key) \
    {{.key = #set_key, .kind = FIELD_LIST, .required = SECTION_##section_name == SECTION_reading, \
      .offset = offsetof(struct words, sets) + SET_##name * sizeof(struct list_value), \
      .about = "words of one meaning"}, \
     SECTION_##section_name},
static const struct {
    struct field field;
    enum set_section section;
} set_rows[WORD_SET_COUNT] = {WORD_SET_LIST(SET_ROW)};
#undef SET_ROW

static void set_section_read(struct words *words, const struct yaml_node *node,
                             enum set_section section, struct arena *arena,
                             struct problems *problems)
{
    struct field rows[WORD_SET_COUNT];
    struct field_table table = {.what = "the section of sets of words", .fields = rows};
    for (size_t i = 0; i < WORD_SET_COUNT; i++)
        if (set_rows[i].section == section)
            rows[table.count++] = set_rows[i].field;
    section_read(node, &table, words, arena, problems);
}

void word_sets_read(struct words *words, const struct yaml_node *reading,
                    const struct yaml_node *proof, struct arena *arena,
                    struct problems *problems)
{
    set_section_read(words, reading, SECTION_reading, arena, problems);
    set_section_read(words, proof, SECTION_proof, arena, problems);
}

const struct list_value *words_set(const struct words *words, enum word_set set)
{
    return &words->sets[set];
}

bool words_in_set(const struct words *words, enum word_set set, const char *word, size_t length)
{
    const struct list_value *list = &words->sets[set];
    for (size_t i = 0; i < list->count; i++)
        if (text_equal_any_case(word, length, list->items[i].text))
            return true;
    return false;
}

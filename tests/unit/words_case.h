/* words_case.h - files of words for tests: complete but for what a test says. */
#ifndef MAYDECK_WORDS_CASE_H
#define MAYDECK_WORDS_CASE_H

#include "record_test.h"

#include "item.h"
#include "words.h"

static const struct { const char *key, *blanks; } word_rows[] = {
#define WORD_ROW(name, key, shape, blanks) {#key, blanks},
    WORD_LIST(WORD_ROW)
#undef WORD_ROW
};

/* A complete file, but for one word, item or zone, and with the text of up to three words
 * given as YAML; the language it is of, its rules of plurals and the name of each item where
 * they are not those of English. Line 5 is the first word. */
struct recipe {
    const char *left_out, *extra;
    struct { const char *key, *yaml; } given[3];
    const char *language, *plurals, *item_name;
    const char *sets;      /* the sections of sets, where they are not those of English */
};

static inline const char *given_text(const struct recipe *recipe, const char *key)
{
    for (size_t i = 0; i < sizeof recipe->given / sizeof recipe->given[0]; i++)
        if (text_equal(recipe->given[i].key, key))
            return recipe->given[i].yaml;
    return NULL;
}

/* "word {tag} {place}": all that is filled in. */
static inline void word_write(struct text_builder *out, size_t index)
{
    const char *at = word_rows[index].blanks;
    text_add(out, "\"word");
    while (*at != '\0') {
        size_t length = strcspn(at, " ");
        text_add_format(out, " {%.*s}", (int)length, at);
        at += length + strspn(at + length, " ");
    }
    text_add(out, "\"\n");
}

static inline void words_write(struct text_builder *out, const struct recipe *recipe)
{
    for (size_t i = 0; i < WORD_COUNT; i++) {
        const char *given = given_text(recipe, word_rows[i].key);
        if (text_equal(word_rows[i].key, recipe->left_out))
            continue;
        text_add_format(out, "  \"%s\": ", word_rows[i].key);
        if (given != NULL)
            text_add_format(out, "%s\n", given);
        else
            word_write(out, i);
    }
}

static inline void names_write(struct text_builder *out, const struct recipe *recipe)
{
    text_add(out, "items:\n");
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
        if (!text_equal(item_word(item), recipe->left_out))
            text_add_format(out, "  %s: %s\n", item_word(item),
                            recipe->item_name != NULL ? recipe->item_name
                                                      : "{one: One thing, other: many things}");
    text_add(out, "zones:\n");
    for (enum zone_key key = ZONE_NONE + 1; key < ZONE_COUNT; key++)
        if (!text_equal(zone_word(key), recipe->left_out) && zone_of(key)->family == key)
            text_add_format(out, "  %s: Zone %s\n", zone_word(key), zone_word(key));
}

static inline void states_write(struct text_builder *out)
{
    text_add(out, "states:\n");
    for (enum end_state state = STATE_ANY + 1; state < STATE_COUNT; state++)
        text_add_format(out, "  %s: state %s\n", end_state_words[state - 1],
                        end_state_words[state - 1]);
}

/* Sets that every language has, without a word; of NO_READING_ELSE the test gives units and
 * numbered words behind it. */
#define NO_READING_ELSE "reading:\n  ahead: []\n  abaft: []\n  fore: []\n  aft: []\n" \
                        "  both_sides: []\n"
#define NO_READING NO_READING_ELSE "  units: []\n  numbered: []\n"

static inline void sets_write(struct text_builder *out, const struct recipe *recipe)
{
    text_add(out, recipe->sets != NULL ? recipe->sets : NO_READING);
}

static inline const char *words_file(const struct recipe *recipe)
{
    struct text_builder out = text_builder_in(test.arena);
    text_add_format(&out, "language: %s\nname: English\nplurals: %s\nwords:\n",
                    recipe->language != NULL ? recipe->language : "en",
                    recipe->plurals != NULL ? recipe->plurals : "{one: {is: 1}}");
    words_write(&out, recipe);
    sets_write(&out, recipe);
    states_write(&out);
    names_write(&out, recipe);
    if (recipe->extra != NULL)
        text_add(&out, recipe->extra);
    return out.at;
}

static inline const struct words *words_of(const struct recipe *recipe)
{
    return words_read(file_of("words/en/words.yaml", words_file(recipe)), "en", test.arena,
                      test.problems);
}

#endif

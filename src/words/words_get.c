/* words_get.c - asking for a word, filled in or as it stands, and for the names of gear and
 * of zones (room: words). Never joins two words: that is for who speaks. */
#include "words_room.h"

#include <string.h>

#include "item.h"
#include "promise.h"
#include "text.h"

const struct words *language_words(const struct languages *languages, const char *language)
{
    for (size_t i = 0; i < languages->count; i++)
        if (text_equal(words_language(languages->rows[i]), language))
            return languages->rows[i];
    return NULL;
}

const char *words_language(const struct words *words)
{
    return words->language.text;
}

const char *words_sum(const struct words *words)
{
    return words->sum;
}

const char *words_language_name(const struct words *words)
{
    return words->name.text;
}

int words_longer(const struct words *words)
{
    return (int)(words->longer.milli / 1000);
}

/* The word where no number is told: its only form, or the one for "other". */
const char *words_get(const struct words *words, enum word word)
{
    promise(word < WORD_COUNT);
    const struct word_texts *texts = &words->texts[word];
    return texts->only.text != NULL ? texts->only.text : texts->forms[PLURAL_OTHER].text;
}

/* The form of the word that this language's plural rule picks for the count. */
const char *words_counted(const struct words *words, enum word word, uint64_t count)
{
    promise(word < WORD_COUNT);
    const struct word_texts *texts = &words->texts[word];
    return texts->only.text != NULL ? texts->only.text
                                    : texts->forms[words_plural(words, count)].text;
}

/* What stands before the member `at` of a list: "and" between two, a comma between many,
 * "and" before the last. */
const char *words_joint(const struct words *words, enum word word, size_t at, size_t members)
{
    promise(word < WORD_COUNT && at > 0 && at < members);
    const struct word_texts *texts = &words->texts[word];
    enum joint joint = JOINT_MANY;
    if (members == 2)
        joint = JOINT_TWO;
    else if (at + 1 == members)
        joint = JOINT_LAST;
    return texts->only.text != NULL ? texts->only.text : texts->forms[joint].text;
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

/* The pairs are names and values, ended by NULL. A blank that no pair names stays as it
 * is, so that it is seen. */
const char *words_fill(const struct words *words, struct arena *arena, enum word word, ...)
{
    struct text_builder out = text_builder_in(arena);
    va_list pairs;
    va_start(pairs, word);
    for (const char *at = words_get(words, word); *at != '\0';) {
        size_t length = words_blank_length(at);
        if (length > 0)
            blank_fill(&out, at, length, pairs);
        else
            text_add_bytes(&out, at, 1);
        at += length > 0 ? length : 1;
    }
    va_end(pairs);
    return out.at;
}

enum plural words_plural(const struct words *words, uint64_t count)
{
    return plural_of(words->plurals, count);
}

const char *words_item(const struct words *words, enum item_key item)
{
    promise(item < ITEM_COUNT);
    return words->items[item].name.text;
}

const char *words_items(const struct words *words, enum item_key item, uint64_t count)
{
    promise(item < ITEM_COUNT);
    return words->items[item].forms[words_plural(words, count)].text;
}

const char *words_state(const struct words *words, enum end_state state)
{
    promise(state < STATE_COUNT);
    return words->states[state].text;
}

const char *words_zone(const struct words *words, enum zone_key zone)
{
    promise(zone < ZONE_COUNT);
    return words->zones[zone].text;
}

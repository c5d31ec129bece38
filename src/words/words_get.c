/* words_get.c - asking for a word, filled in or as it stands, and for the names of gear and
 * of zones (room: words). Never joins two words: that is for who speaks. */
#include "words_room.h"

#include <string.h>

#include "item.h"
#include "text.h"

const char *words_language(const struct words *words)
{
    return words->language.text;
}

const char *words_language_name(const struct words *words)
{
    return words->name.text;
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

/* NULL for what is no item or zone: that is the caller's fault, not the file's. */
static const struct item_words *item_names(const struct words *words, const char *item)
{
    for (size_t i = 0; i < ITEM_TOTAL; i++)
        if (text_equal(item_at(i)->key, item))
            return &words->items[i];
    return NULL;
}

enum plural words_plural(const struct words *words, uint64_t count)
{
    return plural_of(words->plurals, count);
}

const char *words_item(const struct words *words, const char *item)
{
    const struct item_words *names = item_names(words, item);
    return names == NULL ? NULL : names->name.text;
}

const char *words_items(const struct words *words, const char *item, uint64_t count)
{
    const struct item_words *names = item_names(words, item);
    return names == NULL ? NULL : names->forms[words_plural(words, count)].text;
}

const char *words_zone(const struct words *words, const char *zone)
{
    for (size_t i = 0; i < ZONE_TOTAL; i++)
        if (text_equal(zone_at(i)->key, zone))
            return words->zones[i].text;
    return NULL;
}

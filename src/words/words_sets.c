/* words_sets.c - sets of words by which texts that people wrote are understood (room: words):
 * those of the record, and commands that the proofreader judges. Never judges one. */
#include "words_room.h"

#include "promise.h"
#include "text.h"

const struct list_value *words_set(const struct words *words, enum word_set set)
{
    promise(set < WORD_SET_COUNT);
    return &words->sets[set];
}

bool words_in_set(const struct words *words, enum word_set set, const char *word, size_t length)
{
    const struct list_value *list = words_set(words, set);
    for (size_t i = 0; i < list->count; i++)
        if (text_equal_any_case(word, length, list->items[i].text))
            return true;
    return false;
}

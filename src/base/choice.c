/* choice.c - the words of an enum and its values, from one to the other (room: base). Never
 * tells of a word that is none of them. */
#include "choice.h"

#include "promise.h"
#include "text.h"

unsigned choice_find(const char *const *words, const char *word)
{
    for (unsigned i = 0; words[i] != NULL; i++)
        if (text_equal(words[i], word))
            return i + 1;
    return 0;
}

const char *choice_word(const char *const *words, unsigned value)
{
    for (unsigned i = 0; i < value; i++)
        promise(words[i] != NULL);
    return value == 0 ? NULL : words[value - 1];
}

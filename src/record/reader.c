/* reader.c - the words of readers (room: record). Which field has which stands in the rows of
 * the fields. */
#include "reader.h"

const char *reader_word(enum reader_bit reader)
{
    static const char *const words[] = {
#define READER_WORD(name, word, about) [READER_BIT_##name] = word,
        READER_LIST(READER_WORD)
#undef READER_WORD
    };
    return words[reader];
}

const char *reader_about(enum reader_bit reader)
{
    static const char *const abouts[] = {
#define READER_ABOUT(name, word, about) [READER_BIT_##name] = about,
        READER_LIST(READER_ABOUT)
#undef READER_ABOUT
    };
    return abouts[reader];
}

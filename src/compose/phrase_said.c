/* phrase_said.c - phrases as the sentences of a card (room: compose). */
#include "compose_room.h"

#include "speak.h"

const char *phrase_said(const struct composing *composing, const struct phrase *phrase)
{
    struct speaker *speaker = speaker_new(composing->in->words, composing->arena,
                                          composing->problems);
    return say(speaker, phrase);
}

struct place said_place(const struct composing *composing, const struct text_value *text)
{
    return text_place_for(text, words_language(composing->in->words));
}

const struct phrase *word_alone(const struct composing *composing, enum word word)
{
    return phrase_word(composing->arena, word, NULL);
}

/* phrase_said.c - phrases as the sentences of a card (room: compose). */
#include "compose_room.h"

#include "speak.h"

const char *phrase_said(const struct composing *composing, const struct phrase *phrase)
{
    struct speaker *speaker = speaker_new(composing->in->words, composing->arena,
                                          composing->problems);
    return say(speaker, phrase);
}

const struct phrase *word_alone(const struct composing *composing, enum word word)
{
    return phrase_word(composing->arena, word, NULL);
}

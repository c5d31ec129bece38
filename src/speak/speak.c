/* speak.c - saying phrases in a language (room: speak). All that joins two words stands in the
 * words of the language; here they are only put in their places. Never chooses what is said. */
#include "speak.h"

#include <string.h>

#include "promise.h"
#include "text.h"

/* What was said: the string of a phrase. */
struct saying {
    const struct phrase *phrase;
    const char *text;
};

struct speaker {
    const struct words *words;
    struct arena *arena;
    struct problems *problems;
    struct saying *sayings;      /* by the address of the phrase; `room` is a power of two */
    size_t count, room;
};

#define ROOM_FIRST 64

struct speaker *speaker_new(const struct words *words, struct arena *arena,
                            struct problems *problems)
{
    promise(words != NULL);
    struct speaker *speaker = arena_alloc(arena, sizeof *speaker);
    *speaker = (struct speaker){.words = words, .arena = arena, .problems = problems};
    return speaker;
}

const struct words *speaker_words(const struct speaker *speaker)
{
    return speaker->words;
}

/* ---- what is filled in ---- */

/* What is given for the name of that length; NULL: nothing of that name is. */
static const struct phrase_part *part_named(const struct phrase *phrase, const char *name,
                                            size_t length)
{
    for (size_t i = 0; i < phrase->part_count; i++)
        if (strlen(phrase->parts[i].name) == length &&
            memcmp(phrase->parts[i].name, name, length) == 0)
            return &phrase->parts[i];
    return NULL;
}

static void blank_tell(struct speaker *speaker, const struct phrase *phrase, const char *blank,
                       const char *text)
{
    problem_add(speaker->problems, SEVERITY_ERROR, phrase->origin,
                "give the name that stands there, or write the text without it",
                "nothing is filled in for %.*s in: %s", (int)words_blank_length(blank), blank,
                text);
}

/* A text with each {name} replaced; names that are not given stay as they are. */
static const char *filled(struct speaker *speaker, const struct phrase *phrase, const char *text)
{
    struct text_builder out = text_builder_in(speaker->arena);
    text_add(&out, "");
    for (const char *at = text;;) {
        size_t plain = strcspn(at, "{");
        text_add_bytes(&out, at, plain);
        at += plain;
        if (*at == '\0')
            return out.at;
        size_t length = words_blank_length(at);
        const struct phrase_part *part =
            length == 0 ? NULL : part_named(phrase, at + 1, length - 2);
        if (part != NULL)
            text_add(&out, say(speaker, part->phrase));
        else
            text_add_bytes(&out, at, length > 0 ? length : 1);
        if (length > 0 && part == NULL)
            blank_tell(speaker, phrase, at, text);
        at += length > 0 ? length : 1;
    }
}

/* ---- the kinds of phrases ---- */

static const char *word_said(struct speaker *speaker, const struct phrase *phrase)
{
    const char *text = phrase->counted
                           ? words_counted(speaker->words, phrase->word, phrase->count)
                           : words_get(speaker->words, phrase->word);
    return filled(speaker, phrase, text);
}

static const char *spoken_item(struct speaker *speaker, const struct phrase *phrase)
{
    return phrase->counted ? words_items(speaker->words, phrase->item, phrase->count)
                           : words_item(speaker->words, phrase->item);
}

/* What was said so far and the next member, as the joint between them has it. */
static const char *said_joined(struct speaker *speaker, const char *joint, const char *before,
                               const char *next)
{
    const struct phrase_part parts[] = {
        {"before", phrase_verbatim(speaker->arena, before)},
        {"next", phrase_verbatim(speaker->arena, next)}};
    return filled(speaker, &(struct phrase){.parts = parts, .part_count = 2}, joint);
}

static const char *list_said(struct speaker *speaker, const struct phrase *phrase)
{
    const char *text = say(speaker, phrase->parts[0].phrase);
    for (size_t i = 1; i < phrase->part_count; i++)
        text = said_joined(speaker,
                           words_joint(speaker->words, phrase->word, i, phrase->part_count), text,
                           say(speaker, phrase->parts[i].phrase));
    return text;
}

static const char *spoken(struct speaker *speaker, const struct phrase *phrase)
{
    switch (phrase->kind) {
    case PHRASE_NOTHING:
        return "";
    case PHRASE_WORD:
        return word_said(speaker, phrase);
    case PHRASE_ITEM:
        return spoken_item(speaker, phrase);
    case PHRASE_STATE:
        return words_state(speaker->words, phrase->state);
    case PHRASE_ZONE:
        return words_zone(speaker->words, phrase->zone->id);
    case PHRASE_TEXT:
        return filled(speaker, phrase,
                      text_for(&phrase->text, words_language(speaker->words)));
    case PHRASE_VERBATIM:
        return phrase->text.text;
    case PHRASE_DATE:
        return date_text(speaker->arena, phrase->date);
    case PHRASE_LIST:
        return list_said(speaker, phrase);
    }
    promise_unreached();
}

/* ---- what was said so far ---- */

/* Where the phrase stands among the sayings, or where it is to stand. */
static struct saying *saying_of(struct saying *sayings, size_t room, const struct phrase *phrase)
{
    uint64_t hash = bytes_hash(BYTES_HASH_START, &phrase, sizeof phrase);
    size_t at = (size_t)hash & (room - 1);
    while (sayings[at].phrase != NULL && sayings[at].phrase != phrase)
        at = (at + 1) & (room - 1);
    return &sayings[at];
}

/* At most half of the room is used, so that each search ends soon. */
static void sayings_grow(struct speaker *speaker)
{
    size_t room = speaker->room == 0 ? ROOM_FIRST : speaker->room * 2;
    struct saying *sayings = arena_array(speaker->arena, room, sizeof *sayings);
    for (size_t i = 0; i < speaker->room; i++)
        if (speaker->sayings[i].phrase != NULL)
            *saying_of(sayings, room, speaker->sayings[i].phrase) = speaker->sayings[i];
    speaker->sayings = sayings;
    speaker->room = room;
}

static void saying_keep(struct speaker *speaker, const struct phrase *phrase, const char *text)
{
    if (speaker->count * 2 >= speaker->room)
        sayings_grow(speaker);
    *saying_of(speaker->sayings, speaker->room, phrase) = (struct saying){phrase, text};
    speaker->count++;
}

/* NULL for a phrase that was not said yet. */
static const char *said_before(const struct speaker *speaker, const struct phrase *phrase)
{
    return speaker->room == 0 ? NULL
                              : saying_of(speaker->sayings, speaker->room, phrase)->text;
}

const char *say(struct speaker *speaker, const struct phrase *phrase)
{
    if (phrase_is_empty(phrase))
        return "";
    const char *text = said_before(speaker, phrase);
    if (text != NULL)
        return text;
    text = spoken(speaker, phrase);
    if (phrase->upper)
        text = text_upper(speaker->arena, text);
    saying_keep(speaker, phrase, text);
    return text;
}

/* words_handling.c - what of a handling in the record leads to the state that is wanted (room:
 * words). A row must never tell the hand the contrary of its step: of handling that names the
 * state it leads to, only what leads to the one that is wanted is printed. */
#include "words_room.h"

#include <string.h>

#include "promise.h"
#include "text.h"
#include "utf8.h"

enum { PARTS_MOST = 8 };

enum leads_to { LEADS_NOWHERE = 0, LEADS_ON = 1, LEADS_OFF = 2 };   /* may be both */

/* How many bytes of letters stand there, of any alphabet. */
static size_t letters_length(const char *at, const char *end)
{
    size_t room = (size_t)(end - at), length = 0;
    uint32_t code_point = 0;
    for (size_t next = 0; utf8_next(at, room, &next, &code_point); length = next)
        if (!utf8_is_letter(code_point))
            break;
    return length;
}

/* Does a word that ends there lead to a thing: "on the left", "off its hook"? */
static bool leads_to_thing(const struct words *words, const char *at, const char *end)
{
    at += strspn(at, " ");
    return at < end && words_in_set(words, SET_ARTICLES, at, letters_length(at, end));
}

/* The state that a word names wherever it stands, or where it leads to no thing: "on" and
 * "off" are also parts of speech. */
static unsigned word_leads_to(const struct words *words, const char *word, size_t length,
                              const char *end)
{
    bool to_thing = leads_to_thing(words, word + length, end);
    if (words_in_set(words, SET_STATE_ON, word, length) ||
        (!to_thing && words_in_set(words, SET_STATE_ON_ALONE, word, length)))
        return LEADS_ON;
    if (words_in_set(words, SET_STATE_OFF, word, length) ||
        (!to_thing && words_in_set(words, SET_STATE_OFF_ALONE, word, length)))
        return LEADS_OFF;
    return LEADS_NOWHERE;
}

/* All states that this part of a handling names. */
static unsigned part_leads_to(const struct words *words, const char *part, const char *end)
{
    unsigned to = LEADS_NOWHERE;
    for (const char *at = part; at < end;) {
        size_t length = letters_length(at, end);
        if (length > 0)
            to |= word_leads_to(words, at, length, end);
        at += length > 0 ? length : 1;
    }
    return to;
}

struct part {
    const char *at, *end;
    unsigned to;
};

static size_t parts_of(const struct words *words, const char *how, struct part *parts)
{
    size_t count = 0;
    while (*how != '\0' && count < PARTS_MOST) {
        size_t length = count + 1 == PARTS_MOST ? strlen(how) : strcspn(how, ",;");
        const char *at = how + strspn(how, " ");
        parts[count++] = (struct part){at, how + length,
                                       part_leads_to(words, at, how + length)};
        how += length + (how[length] == '\0' ? 0 : 1);
    }
    return count;
}

static const char *parts_join(struct arena *arena, const struct part *parts, size_t count,
                              unsigned unwanted)
{
    struct text_builder kept = text_builder_in(arena);
    for (size_t i = 0; i < count; i++)
        if (parts[i].to != unwanted)
            text_add_format(&kept, "%s%.*s", kept.length == 0 ? "" : ", ",
                            (int)(parts[i].end - parts[i].at), parts[i].at);
    return kept.at;
}

const char *words_handling(const struct words *words, const char *how, enum handled wanted_state,
                           struct arena *arena)
{
    struct part parts[PARTS_MOST];
    size_t count = parts_of(words, how, parts);
    promise(count <= PARTS_MOST);
    unsigned wanted = wanted_state == HANDLED_ON ? LEADS_ON : LEADS_OFF;
    unsigned unwanted = wanted == LEADS_ON ? LEADS_OFF : LEADS_ON, all = LEADS_NOWHERE;
    for (size_t i = 0; i < count; i++)
        all |= parts[i].to;
    if ((all & unwanted) == 0)
        return how;
    return (all & wanted) == 0 ? NULL : parts_join(arena, parts, count, unwanted);
}

/* The words by which a text of that language is read. */
static const struct words *reading_words(const struct handling_wanted *wanted,
                                         const char *language)
{
    const struct words *words = language_words(wanted->languages, language);
    return words != NULL ? words : wanted->own;
}

struct text_value words_handling_by_language(const struct handling_wanted *wanted,
                                             const struct text_value *how, struct arena *arena)
{
    struct text_value out = *how;
    if (how->languages == NULL) {
        out.text = words_handling(wanted->own, how->text, wanted->wanted, arena);
        return out;
    }
    size_t count = 0, kept = 0;
    while (how->languages[count].text != NULL)
        count++;
    struct text_in_language *all = arena_array(arena, count + 1, sizeof *all);
    for (size_t i = 0; i < count; i++) {
        all[kept] = how->languages[i];
        all[kept].text = words_handling(reading_words(wanted, all[kept].language),
                                        all[kept].text, wanted->wanted, arena);
        if (all[kept].text != NULL)
            kept++;
    }
    all[kept] = (struct text_in_language){.text = NULL};
    out.languages = all;
    out.text = words_handling(reading_words(wanted, how->languages[0].language), how->text,
                              wanted->wanted, arena);
    return out;
}

/* handling.c - how a piece of gear is worked, as far as it serves the step (room: compose).
 * A row must never tell the hand the contrary of its step: of handling that names the state
 * it leads to, only what leads to the one that is wanted is printed. */
#include "compose_room.h"

#include <string.h>

enum { WORD_LONGEST = 16, PARTS_MOST = 8 };

enum leads_to { LEADS_NOWHERE = 0, LEADS_ON = 1, LEADS_OFF = 2 };   /* may be both */

/* Words for the two states. `plain` ones mean nothing else wherever they stand; "on" and
 * "off" are also parts of speech: not where they lead to a thing, as in "on the left". */
static const struct state_word {
    const char *word;
    enum leads_to to;
    bool plain;
} state_words[] = {
    {"on", LEADS_ON, false},         {"open", LEADS_ON, true},
    {"opens", LEADS_ON, true},       {"opened", LEADS_ON, true},
    {"start", LEADS_ON, true},       {"starts", LEADS_ON, true},
    {"run", LEADS_ON, true},         {"runs", LEADS_ON, true},
    {"live", LEADS_ON, true},        {"flow", LEADS_ON, true},
    {"flows", LEADS_ON, true},       {"connect", LEADS_ON, true},
    {"connected", LEADS_ON, true},   {"off", LEADS_OFF, false},
    {"shut", LEADS_OFF, true},       {"shuts", LEADS_OFF, true},
    {"close", LEADS_OFF, true},      {"closes", LEADS_OFF, true},
    {"closed", LEADS_OFF, true},     {"stop", LEADS_OFF, true},
    {"stops", LEADS_OFF, true},      {"disconnect", LEADS_OFF, true},
    {"disconnected", LEADS_OFF, true}, {"unplug", LEADS_OFF, true},
    {"isolate", LEADS_OFF, true},    {"isolated", LEADS_OFF, true},
    {"isolates", LEADS_OFF, true},   {"silence", LEADS_OFF, true},
};

static const struct state_word *state_word_find(const char *word, size_t length)
{
    char small[WORD_LONGEST] = "";
    for (size_t i = 0; i < length && i + 1 < sizeof small; i++)
        small[i] = word[i] >= 'A' && word[i] <= 'Z' ? (char)(word[i] - 'A' + 'a') : word[i];
    for (size_t i = 0; length < sizeof small && i < sizeof state_words / sizeof *state_words; i++)
        if (text_equal(state_words[i].word, small))
            return &state_words[i];
    return NULL;
}

static bool is_letter(char c)
{
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (unsigned char)c >= 0x80;
}

/* Does a word that ends there lead to a thing: "on the left", "off its hook"? */
static bool leads_to_thing(const char *at, const char *end)
{
    static const char *const articles[] = {"the", "a", "an", "its", "this", "that", "each", "both"};
    at += strspn(at, " ");
    size_t length = 0;
    while (at + length < end && is_letter(at[length]))
        length++;
    for (size_t i = 0; i < sizeof articles / sizeof *articles; i++)
        if (strlen(articles[i]) == length && strncmp(articles[i], at, length) == 0)
            return true;
    return false;
}

/* All states that this part of a handling names. */
static unsigned part_leads_to(const char *part, const char *end)
{
    unsigned to = LEADS_NOWHERE;
    for (const char *at = part; at < end;) {
        const char *word = at;
        while (at < end && is_letter(*at))
            at++;
        const struct state_word *found = state_word_find(word, (size_t)(at - word));
        if (found != NULL && (found->plain || !leads_to_thing(at, end)))
            to |= found->to;
        at += at == word ? 1 : 0;
    }
    return to;
}

struct part {
    const char *at, *end;
    unsigned to;
};

static size_t parts_of(const char *how, struct part *parts)
{
    size_t count = 0;
    while (*how != '\0' && count < PARTS_MOST) {
        size_t length = count + 1 == PARTS_MOST ? strlen(how) : strcspn(how, ",;");
        const char *at = how + strspn(how, " ");
        parts[count++] = (struct part){at, how + length, part_leads_to(at, how + length)};
        how += length + (how[length] == '\0' ? 0 : 1);
    }
    return count;
}

static const char *parts_join(struct arena *arena, const struct part *parts, size_t count,
                              unsigned unwanted)
{
    struct text_builder words = text_builder_in(arena);
    for (size_t i = 0; i < count; i++)
        if (parts[i].to != unwanted)
            text_add_format(&words, "%s%.*s", words.length == 0 ? "" : ", ",
                            (int)(parts[i].end - parts[i].at), parts[i].at);
    return words.at;
}

const char *handling_towards(const char *how, bool on, struct arena *arena)
{
    struct part parts[PARTS_MOST];
    size_t count = parts_of(how, parts);
    unsigned wanted = on ? LEADS_ON : LEADS_OFF, unwanted = on ? LEADS_OFF : LEADS_ON, all = 0;
    for (size_t i = 0; i < count; i++)
        all |= parts[i].to;
    if ((all & unwanted) == 0)
        return how;
    return (all & wanted) == 0 ? NULL : parts_join(arena, parts, count, unwanted);
}

static void contrary_tell(struct composing *composing, const struct equipment *gear,
                          enum gear_state state)
{
    problem_add(composing->problems, SEVERITY_DEFICIENCY, gear->how.place,
                "write both ways of it, such as: up = on, down = off",
                "how of %s does not tell how it is %s: %s prints no handling for it",
                gear->tag.text == NULL ? gear->kind->key : gear->tag.text,
                state == STATE_ON ? "turned on or opened" : "turned off or shut",
                composing->slot->name);
}

/* The field that a step asks for by name. */
static const struct text_value *shown_field(const struct equipment *gear, enum shown shows)
{
    switch (shows) {
    case SHOWN_PAINTER:
        return &gear->painter;
    case SHOWN_RELEASE:
        return &gear->release;
    case SHOWN_HANDLE:
        return &gear->handle;
    case SHOWN_BY_STATE:
    case SHOWN_HOW:
    case SHOWN_COUNT:
        break;
    }
    return &gear->how;
}

const char *handling_words(struct composing *composing, const struct equipment *gear,
                           enum shown shows, enum gear_state state)
{
    const char *how = TEXT_OR_EMPTY(*shown_field(gear, shows));
    if (text_empty(how) || shows != SHOWN_BY_STATE || state == STATE_ANY)
        return how;
    const char *towards = handling_towards(how, state == STATE_ON, composing->arena);
    if (towards == NULL)
        contrary_tell(composing, gear, state);
    return towards == NULL ? "" : towards;
}

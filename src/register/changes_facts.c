/* changes_facts.c - what is another of the boat, her radio and her base, and of the approval (room:
 * register). A fact explains the lines that hold its old or its new value, in letters or as it is
 * said on the radio. */
#include "register_room.h"

#include <string.h>

/* ---- which lines hold a value ---- */

enum { FOLDED_SHORTEST = 2 };

/* A value in letters and digits alone, and the lines' texts are made so too. */
struct held_value {
    const char *folded;
    struct arena *arena;
};

static bool line_holds(const struct said_line *line, const void *of)
{
    const struct held_value *value = of;
    return strlen(value->folded) >= FOLDED_SHORTEST &&
           strstr(folded_letters(line->text, value->arena), value->folded) != NULL;
}

/* Marks the lines of that list which hold it; true when one does. */
static bool lines_hold(struct said_line **lines, size_t count, const struct held_value *value)
{
    bool found = false;
    for (size_t i = 0; i < count; i++)
        if (line_holds(lines[i], value)) {
            lines[i]->explained = true;
            found = true;
        }
    return found;
}

/* All ways in which one content gives the fact: as it is recorded, and as it is heard. */
static bool fact_held(const struct comparing *comparing, const struct content *content,
                      const struct content_fact *fact)
{
    bool old = content == &comparing->old, found = false;
    struct said_line **lines = old ? comparing->gone : comparing->come;
    size_t count = old ? comparing->gone_count : comparing->come_count;
    for (size_t i = 0; i < content->fact_count; i++) {
        const struct content_fact *one = &content->facts[i];
        if (!text_equal(one->subject, fact->subject) || !text_equal(one->field, fact->field))
            continue;
        struct held_value value = {folded_letters(one->value, comparing->arena),
                                   comparing->arena};
        found = lines_hold(lines, count, &value) || found;
    }
    return found;
}

/* ---- one fact ---- */

/* call_sign as "call sign", and loa_m as "loa in m" */
static const char *field_words(const char *field, struct arena *arena)
{
    bool metres = text_ends(field, "_m");
    char *words = metres ? text_format(arena, "%.*s in m", (int)strlen(field) - 2, field)
                         : arena_copy(arena, field, strlen(field));
    for (char *at = words; *at != '\0'; at++)
        if (*at == '_')
            *at = ' ';
    return words;
}

static void fact_tell(struct comparing *comparing, const struct content_fact *fact,
                      const char *old, const char *now)
{
    struct arena *arena = comparing->arena;
    const char *field = field_words(fact->field, arena);
    if (old == NULL)
        reason_add(comparing, "%s: %s is recorded now: %s", fact->subject, field,
                   text_shown(arena, now));
    else if (now == NULL)
        reason_add_lost(comparing, "%s: %s is no longer recorded (it was %s)", fact->subject, field,
                   text_shown(arena, old));
    else
        reason_add(comparing, "%s: %s changed from %s to %s", fact->subject, field,
                   text_shown(arena, old), text_shown(arena, now));
}

static const char *value_in(const struct content *content, const struct content_fact *fact)
{
    return content_value(content->facts, content->fact_count, fact->subject, fact->field);
}

/* What it does with a fact that is another. */
typedef void fact_use(struct comparing *comparing, const struct content_fact *fact,
                      const char *old, const char *now);

/* All facts that are others, but those of the sheet, which are told apart. */
static void facts_differing(struct comparing *comparing, fact_use *use)
{
    const struct content *both[] = {&comparing->old, &comparing->now};
    for (size_t k = 0; k < 2; k++)
        for (size_t i = 0; i < both[k]->fact_count; i++) {
            const struct content_fact *fact = &both[k]->facts[i];
            const char *old = value_in(both[0], fact), *now = value_in(both[1], fact);
            bool own = text_equal(fact->subject, CONTENT_SUBJECT_SHEET);
            if (own || fact->heard || text_equal(old, now) || (k == 1 && old != NULL))
                continue;
            use(comparing, fact, old, now);
        }
}

static void held_fact_use(struct comparing *comparing, const struct content_fact *fact,
                          const char *old, const char *now)
{
    bool gone = fact_held(comparing, &comparing->old, fact);
    bool come = fact_held(comparing, &comparing->now, fact);
    if (gone || come)
        fact_tell(comparing, fact, old, now);
}

void facts_compare(struct comparing *comparing)
{
    facts_differing(comparing, held_fact_use);
}

static bool line_is_any(const struct said_line *line, const void *nothing)
{
    return nothing == NULL && line != NULL;
}

void choices_compare(struct comparing *comparing)
{
    if (lines_unexplained(comparing, line_is_any, NULL))
        facts_differing(comparing, fact_tell);
}

/* ---- approval ---- */

static bool line_is_of_approval(const struct said_line *line, const void *nothing)
{
    return nothing == NULL &&
           (text_equal(line->block, block_word(BLOCK_UNAPPROVED)) ||
            (text_equal(line->block, block_word(BLOCK_FOOTER)) && line->said == SAID_OTHER));
}

void approval_compare(struct comparing *comparing)
{
    const char *old = sheet_value(&comparing->old, KEPT_APPROVAL);
    const char *now = sheet_value(&comparing->now, KEPT_APPROVAL);
    if (text_equal(old, now) || !lines_have(comparing, line_is_of_approval, NULL))
        return;
    if (now == NULL)
        reason_add(comparing, "its approval no longer stands (%s)", old);
    else if (old == NULL)
        reason_add(comparing, "it is approved now (%s)", now);
    else
        reason_add(comparing, "its approval changed from %s to %s", old, now);
    lines_explain(comparing, line_is_of_approval, NULL);
}

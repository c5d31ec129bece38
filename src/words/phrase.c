/* phrase.c - making, comparing and walking phrases (room: words). Never says one. */
#include "phrase.h"

#include <stdarg.h>
#include <string.h>

#include "promise.h"
#include "text.h"

/* A phrase of the kind that says nothing yet: its maker fills in the members of that
 * kind. */
static struct phrase *phrase_new(struct arena *arena, enum phrase_kind kind)
{
    struct phrase *phrase = arena_alloc(arena, sizeof *phrase);
    phrase->kind = kind;
    return phrase;
}

/* The pairs of a name and a phrase, as parts. */
static void parts_take(struct arena *arena, struct phrase *phrase, va_list pairs)
{
    struct phrase_part *parts = NULL;
    size_t room = 0;
    for (const char *name; (name = va_arg(pairs, const char *)) != NULL;) {
        parts = arena_grow(arena, parts, phrase->part_count, &room, sizeof *parts);
        parts[phrase->part_count++] = (struct phrase_part){
            name, va_arg(pairs, const struct phrase *)};
    }
    phrase->parts = parts;
}

const struct phrase *phrase_word(struct arena *arena, enum word word, ...)
{
    struct phrase *phrase = phrase_new(arena, PHRASE_WORD);
    va_list pairs;
    phrase->word = word;
    va_start(pairs, word);
    parts_take(arena, phrase, pairs);
    va_end(pairs);
    return phrase;
}

/* The count picks the word's plural form when the phrase is said; it is not itself said. */
const struct phrase *phrase_counted(struct arena *arena, enum word word, uint64_t count, ...)
{
    struct phrase *phrase = phrase_new(arena, PHRASE_WORD);
    va_list pairs;
    phrase->word = word;
    phrase->counted = true;
    phrase->count = count;
    va_start(pairs, count);
    parts_take(arena, phrase, pairs);
    va_end(pairs);
    return phrase;
}

const struct phrase *phrase_item(struct arena *arena, enum item_key item)
{
    promise(item != ITEM_NONE);
    struct phrase *phrase = phrase_new(arena, PHRASE_ITEM);
    phrase->item = item;
    return phrase;
}

/* "3 liferafts": a word joins the number and the item's plural, so that a language may
 * turn their order. */
const struct phrase *phrase_items(struct arena *arena, enum item_key item, uint64_t count)
{
    promise(item != ITEM_NONE);
    struct phrase *name = phrase_new(arena, PHRASE_ITEM);
    name->item = item;
    name->counted = true;
    name->count = count;
    return phrase_word(arena, WORD_COUNTED_ITEMS, "count", phrase_number(arena, (int64_t)count),
                       "items", (const struct phrase *)name, NULL);
}

const struct phrase *phrase_state(struct arena *arena, enum end_state state)
{
    promise(state != STATE_ANY);
    struct phrase *phrase = phrase_new(arena, PHRASE_STATE);
    phrase->state = state;
    return phrase;
}

const struct phrase *phrase_zone(struct arena *arena, const struct zone *zone)
{
    if (zone == NULL)
        return NULL;
    struct phrase *phrase = phrase_new(arena, PHRASE_ZONE);
    phrase->zone = zone;
    return phrase;
}

const struct phrase *phrase_text(struct arena *arena, const struct text_value *text)
{
    return phrase_text_filled(arena, text, NULL, 0);
}

/* The text's place goes along as the origin: a fault in what a sheet says is told there. */
const struct phrase *phrase_text_filled(struct arena *arena, const struct text_value *text,
                                        const struct phrase_part *parts, size_t part_count)
{
    if (text == NULL || text->text == NULL)
        return NULL;
    struct phrase *phrase = phrase_new(arena, PHRASE_TEXT);
    phrase->text = *text;
    phrase->origin = text->place;
    phrase->parts = parts;
    phrase->part_count = part_count;
    return phrase;
}

const struct phrase *phrase_verbatim(struct arena *arena, const char *text)
{
    if (text == NULL)
        return NULL;
    struct phrase *phrase = phrase_new(arena, PHRASE_VERBATIM);
    phrase->text.text = text;
    return phrase;
}

const struct phrase *phrase_number(struct arena *arena, int64_t number)
{
    return phrase_verbatim(arena, text_format(arena, "%lld", (long long)number));
}

const struct phrase *phrase_date(struct arena *arena, struct date date)
{
    struct phrase *phrase = phrase_new(arena, PHRASE_DATE);
    phrase->date = date;
    return phrase;
}

/* Empty members are left out, so that no join word stands beside nothing; a list of one
 * is that one. */
const struct phrase *phrase_list(struct arena *arena, enum word join,
                                 const struct phrase *const *members, size_t count)
{
    struct phrase_part *parts = arena_array(arena, count, sizeof *parts);
    size_t kept = 0;
    for (size_t i = 0; i < count; i++)
        if (!phrase_is_empty(members[i]))
            parts[kept++] = (struct phrase_part){NULL, members[i]};
    if (kept < 2)
        return kept == 0 ? NULL : parts[0].phrase;
    struct phrase *phrase = phrase_new(arena, PHRASE_LIST);
    phrase->word = join;
    phrase->parts = parts;
    phrase->part_count = kept;
    return phrase;
}

const struct phrase *phrase_joined(struct arena *arena, enum word join,
                                   const struct phrase *first, const struct phrase *second,
                                   const struct phrase *third)
{
    const struct phrase *const members[] = {first, second, third};
    return phrase_list(arena, join, members, sizeof members / sizeof members[0]);
}

/* A change of a phrase is made on a copy: phrases are shared by the sheets of all
 * languages. */
static struct phrase *phrase_copy(struct arena *arena, const struct phrase *phrase)
{
    struct phrase *copy = phrase_new(arena, phrase->kind);
    *copy = *phrase;
    return copy;
}

const struct phrase *phrase_upper(struct arena *arena, const struct phrase *phrase)
{
    if (phrase == NULL)
        return NULL;
    struct phrase *copy = phrase_copy(arena, phrase);
    copy->upper = true;
    return copy;
}

const struct phrase *phrase_from(struct arena *arena, const struct phrase *phrase,
                                 struct place origin)
{
    if (phrase == NULL)
        return NULL;
    struct phrase *copy = phrase_copy(arena, phrase);
    copy->origin = origin;
    return copy;
}

bool phrase_is_empty(const struct phrase *phrase)
{
    if (phrase == NULL || phrase->kind == PHRASE_NOTHING)
        return true;
    return (phrase->kind == PHRASE_TEXT || phrase->kind == PHRASE_VERBATIM) &&
           text_empty(phrase->text.text);
}

/* ---- comparing ---- */

/* Given in the same languages, with the same texts. */
static bool texts_equal(const struct text_value *a, const struct text_value *b)
{
    const struct text_in_language *one = a->languages, *other = b->languages;
    if ((one == NULL) != (other == NULL) || !text_equal(a->text, b->text))
        return false;
    for (; one != NULL && one->text != NULL; one++, other++)
        if (!text_equal(one->language, other->language) || !text_equal(one->text, other->text))
            return false;
    return one == NULL || other->text == NULL;
}

/* Parts are equal one by one, in order and by name. */
static bool parts_equal(const struct phrase *a, const struct phrase *b)
{
    if (a->part_count != b->part_count)
        return false;
    for (size_t i = 0; i < a->part_count; i++)
        if (!text_equal(a->parts[i].name, b->parts[i].name) ||
            !phrase_equal(a->parts[i].phrase, b->parts[i].phrase))
            return false;
    return true;
}

static bool dates_equal(struct date a, struct date b)
{
    return a.year == b.year && a.month == b.month && a.day == b.day;
}

/* Nothing equals nothing, whichever kind says it; the origin does not count, since it is
 * not said. */
bool phrase_equal(const struct phrase *a, const struct phrase *b)
{
    if (phrase_is_empty(a) || phrase_is_empty(b))
        return phrase_is_empty(a) && phrase_is_empty(b);
    return a->kind == b->kind && a->upper == b->upper && a->counted == b->counted &&
           a->word == b->word && a->count == b->count && a->item == b->item &&
           a->state == b->state && a->zone == b->zone && texts_equal(&a->text, &b->text) &&
           dates_equal(a->date, b->date) && parts_equal(a, b);
}

/* The phrase first, then its parts, as deep as they go. */
void phrase_visit(const struct phrase *phrase,
                  void (*visit)(void *context, const struct phrase *phrase), void *context)
{
    if (phrase_is_empty(phrase))
        return;
    visit(context, phrase);
    for (size_t i = 0; i < phrase->part_count; i++)
        phrase_visit(phrase->parts[i].phrase, visit, context);
}

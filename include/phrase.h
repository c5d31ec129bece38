/* phrase.h - what is to be said, before it is said in a language (room: words).
 *
 * A phrase is a tree of facts: words of the words file with what is filled into them, gear,
 * zones, texts that people wrote, names and numbers. Whoever decides what is said makes phrases
 * and never joins two strings; the room speak makes sentences of them in one language. Phrases
 * are made in an arena and are never changed; one may stand in many places.
 * A phrase of NULL says nothing, as one of PHRASE_NOTHING does. */
#ifndef MAYDECK_PHRASE_H
#define MAYDECK_PHRASE_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include "arena.h"
#include "date.h"
#include "end_state.h"
#include "item.h"
#include "source.h"
#include "words.h"
#include "yaml_fields.h"

enum phrase_kind {
    PHRASE_NOTHING,
    PHRASE_WORD,      /* word, parts by name; counted: the form for `count` is taken */
    PHRASE_ITEM,      /* item; counted: its name behind the number `count`, which it lacks */
    PHRASE_STATE,     /* state */
    PHRASE_ZONE,      /* zone */
    PHRASE_TEXT,      /* text: of the record or a procedure; parts fill its {names} */
    PHRASE_VERBATIM,  /* text: a name, number, tag or code, the same in every language */
    PHRASE_DATE,      /* date */
    PHRASE_LIST       /* parts without names, joined as `word` says */
};

struct phrase;

/* What stands in the place of a {name}, or is a member of a list (name NULL). */
struct phrase_part {
    const char *name;
    const struct phrase *phrase;
};

struct phrase {
    enum phrase_kind kind;
    bool upper;                  /* said in capitals */
    bool counted;
    enum word word;
    uint64_t count;
    enum item_key item;
    enum end_state state;
    const struct zone *zone;
    struct text_value text;
    struct date date;
    const struct phrase_part *parts;
    size_t part_count;
    struct place origin;         /* of what it says; line 0: of no file */
};

/* A word with what is filled into it, as pairs of a name and a phrase, ended by NULL. A
 * phrase that is NULL fills in nothing. */
const struct phrase *phrase_word(struct arena *arena, enum word word, ...)
    __attribute__((sentinel));

/* The same for a counted word: in the form that this number takes. */
const struct phrase *phrase_counted(struct arena *arena, enum word word, uint64_t count, ...)
    __attribute__((sentinel));

/* What a piece of gear is called ("Fuel valve"); so many of them ("8 lifejackets"). */
const struct phrase *phrase_item(struct arena *arena, enum item_key item);
const struct phrase *phrase_items(struct arena *arena, enum item_key item, uint64_t count);

/* How gear is left: "shut". */
const struct phrase *phrase_state(struct arena *arena, enum end_state state);

/* NULL for a zone of NULL. */
const struct phrase *phrase_zone(struct arena *arena, const struct zone *zone);

/* A text that people wrote, in the languages that they gave it in; NULL where the record has
 * none. Its place is the origin. The second fills in its {names}, pairs as for phrase_word. */
const struct phrase *phrase_text(struct arena *arena, const struct text_value *text);
const struct phrase *phrase_text_filled(struct arena *arena, const struct text_value *text,
                                        const struct phrase_part *parts, size_t part_count);

/* The same in every language. The string must outlive the phrase; NULL for NULL. */
const struct phrase *phrase_verbatim(struct arena *arena, const char *text);
const struct phrase *phrase_number(struct arena *arena, int64_t number);
const struct phrase *phrase_date(struct arena *arena, struct date date);

/* The members that say something, joined as the word of SHAPE_JOIN says: NULL where there is
 * none, and the member itself where there is one. */
const struct phrase *phrase_list(struct arena *arena, enum word join,
                                 const struct phrase *const *members, size_t count);

/* The same of two or three; NULL says nothing. */
const struct phrase *phrase_joined(struct arena *arena, enum word join,
                                   const struct phrase *first, const struct phrase *second,
                                   const struct phrase *third);

/* A copy said in capitals; one that comes from there. NULL stays NULL. */
const struct phrase *phrase_upper(struct arena *arena, const struct phrase *phrase);
const struct phrase *phrase_from(struct arena *arena, const struct phrase *phrase,
                                 struct place origin);

/* Does it say nothing? */
bool phrase_is_empty(const struct phrase *phrase);

/* Do both say the same, in every language? Where they come from does not matter. */
bool phrase_equal(const struct phrase *a, const struct phrase *b);

/* Calls `visit` with each phrase of the tree, a phrase before its parts, the parts in their
 * order. */
void phrase_visit(const struct phrase *phrase,
                  void (*visit)(void *context, const struct phrase *phrase), void *context);

#endif

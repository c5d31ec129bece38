/* due.h - every date of a base and its boats: until which day each is good, and which dates should
 * be recorded and are not (room: due). */
#ifndef MAYDECK_DUE_H
#define MAYDECK_DUE_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"
#include "base.h"
#include "boat.h"
#include "date.h"
#include "text.h"
#include "words.h"

/* One date, or one that is not recorded. All texts live in the arena of the list, and are ""
 * where there is none. */
struct due_date {
    const char *boat;          /* key of the boat; "base": of all of them */
    const char *tag, *item;    /* of gear; else the item is what it is of */
    const char *field;         /* what kind of date, always the same for the same: expires */
    const char *what;          /* the same with how it is recorded or reckoned */
    const char *where;         /* file:line */
    bool known;
    struct date last;          /* the last good day, a full date */
};

struct due_list {
    struct due_date *rows;
    size_t count, room;
    struct arena *arena;
    const char *base;          /* name of the base; NULL: of none */
};

/* Adds what the boat's record has: dates of gear and services, silenced checks; and what it should
 * have: dates of gear that is not known to be good without one, of gear that is to be tried, and of
 * the walk round a sister ship. */
void due_of_boat(struct due_list *list, const struct boat *boat, const struct base_record *base,
                 const struct words *words);

/* The same of the base: approvals, the rescue centre's numbers, clocks. */
void due_of_base(struct due_list *list, const struct base_record *base);

/* The first to come first, those that are not recorded last. */
void due_sort(struct due_list *list);

/* Is the date over on that day? What is not recorded counts as over. */
bool due_past(const struct due_date *date, struct date today);

/* A calendar as RFC 5545 has it, a day for each date that is known: the same dates give the same
 * bytes. `today` is the day on which it was made. How many days are in it; none: the standard has
 * no empty calendar, and nothing is added. */
size_t due_calendar(const struct due_list *list, struct date today, struct text_builder *out);

#endif

/* capacity.c - liferafts against persons, and lifejackets against bodies (room:
 * figure). Never guesses what is not recorded: a raft without its number of places
 * has none, a jacket without a lightest wearer fits nobody. */
#include "capacity.h"

#include <stdlib.h>
#include <string.h>

#include "promise.h"
#include "text.h"

int64_t gear_count(const struct equipment *gear)
{
    return gear->count.given ? gear->count.milli / 1000 : 1;
}

static bool gear_is_of(const struct equipment *gear, enum item_key item)
{
    return gear->kind->item == item;
}

/* ---- liferafts ---- */

static void raft_add(struct raft_capacity *capacity, const struct equipment *raft)
{
    int64_t count = gear_count(raft);
    int64_t places = raft->persons.milli / 1000;
    capacity->rafts += count;
    if (!raft->persons.given) {
        capacity->unrecorded += count;
        return;
    }
    capacity->places += count * places;
    if (places > capacity->largest)
        capacity->largest = places;
}

struct raft_capacity raft_capacity(const struct equipment *gear, size_t count, int64_t persons)
{
    struct raft_capacity capacity = {0};
    for (size_t i = 0; i < count; i++)
        if (gear_is_of(&gear[i], ITEM_liferaft))
            raft_add(&capacity, &gear[i]);
    capacity.spare = capacity.places - persons;
    capacity.enough = capacity.spare >= 0;
    capacity.short_without_one =
        capacity.rafts > 1 && capacity.unrecorded == 0 &&
        capacity.places - capacity.largest < persons;
    return capacity;
}

/* ---- lifejackets ---- */

struct jacket_count jackets_counted(const struct equipment *gear, size_t count)
{
    struct jacket_count jackets = {0};
    for (size_t i = 0; i < count; i++) {
        if (!gear_is_of(&gear[i], ITEM_lifejacket))
            continue;
        if (gear[i].wearer.value == WEARER_ADULT)
            jackets.adult += gear_count(&gear[i]);
        else if (gear[i].wearer.value == WEARER_CHILD)
            jackets.child += gear_count(&gear[i]);
        else
            jackets.unsaid += gear_count(&gear[i]);
        if (!gear[i].kg_low.given)
            jackets.unsized += gear_count(&gear[i]);
    }
    return jackets;
}

const struct jacket_size *jacket_sizes(const struct equipment *gear, size_t count,
                                       struct arena *arena, size_t *size_count)
{
    struct jacket_size *sizes = arena_array(arena, count, sizeof *sizes);
    *size_count = 0;
    for (size_t i = 0; i < count; i++)
        if (gear_is_of(&gear[i], ITEM_lifejacket) && gear[i].kg_low.given)
            sizes[(*size_count)++] = (struct jacket_size){
                .low_g = gear[i].kg_low.milli,
                .high_g = gear[i].kg_high.given ? gear[i].kg_high.milli : JACKET_NO_UPPER,
                .count = gear_count(&gear[i])};
    return sizes;
}

static int mass_order(const void *one, const void *other)
{
    int64_t a = *(const int64_t *)one;
    int64_t b = *(const int64_t *)other;
    return (a > b) - (a < b);
}

/* Of the jackets left that fit, one of the smallest upper end: it is the one that
 * the heavier people still to come can least use. */
static size_t jacket_choose(int64_t mass_g, const struct jacket_size *sizes, size_t size_count)
{
    size_t chosen = size_count;
    for (size_t i = 0; i < size_count; i++)
        if (sizes[i].count > 0 && sizes[i].low_g <= mass_g && mass_g < sizes[i].high_g &&
            (chosen == size_count || sizes[i].high_g < sizes[chosen].high_g))
            chosen = i;
    return chosen;
}

/* From the lightest up this gives as many as can be their jacket, since the bodies
 * that one jacket fits are neighbours in that order (a convex bipartite graph). */
size_t jackets_match(const int64_t *masses_g, size_t person_count,
                     const struct jacket_size *sizes, size_t size_count, struct arena *arena,
                     int64_t *without)
{
    size_t left_over = 0;
    int64_t *masses = arena_array(arena, person_count, sizeof *masses);
    struct jacket_size *left = arena_array(arena, size_count, sizeof *left);
    if (person_count == 0)
        return 0;
    memcpy(masses, masses_g, person_count * sizeof *masses);
    if (size_count > 0)
        memcpy(left, sizes, size_count * sizeof *left);
    qsort(masses, person_count, sizeof *masses, mass_order);
    promise(masses[0] <= masses[person_count - 1]);
    for (size_t i = 0; i < person_count; i++) {
        size_t chosen = jacket_choose(masses[i], left, size_count);
        if (chosen < size_count)
            left[chosen].count--;
        else if (without != NULL)
            without[left_over++] = masses[i];
        else
            left_over++;
    }
    return left_over;
}

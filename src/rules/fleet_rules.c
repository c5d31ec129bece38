/* fleet_rules.c - what only shows when the boats of a base are held against each other:
 * an identity that was copied from one file into another (room: rules). */
#include "rules_room.h"

#include <string.h>

#include "text.h"

/* An identity as it was written for one boat. Rows of one boat follow each other. */
struct identity {
    enum identity_kind kind;
    const char *plain;       /* without spaces, upper case */
    const char *boat, *file; /* of her file: its name for messages */
    struct place place;      /* without the source, which may be gone */
    size_t same;             /* the row before this one with the same identity, plus 1; 0: none */
};

/* Rows by a name of theirs: of each the last that was added, plus 1; 0: free. */
struct identity_slots {
    size_t *at, count;
};

struct identities {
    struct identity *rows;
    size_t count, room;
    struct identity_slots by_plain, by_boat;    /* by_boat: the first row of each boat */
    struct arena *arena;
};

static const struct {
    enum check_name check;
    const char *what;
} identity_kinds[] = {
    [IDENTITY_MMSI] = {CHECK_mmsi_twice, "MMSI"},
    [IDENTITY_CALL_SIGN] = {CHECK_call_sign_twice, "call sign"},
    [IDENTITY_BEACON] = {CHECK_beacon_twice, "beacon identity"},
};

/* A no-break space is one too: the decoder of MMSI passes over both. A builder would take more room
 * than the few letters, and there may be ten thousand boats. */
static const char *plain_text(const char *text, struct arena *own, struct arena *arena)
{
    struct text_builder plain = text_builder_in(own);
    text_add(&plain, "");
    text_add(&plain, "");
    for (; *text != '\0'; text++) {
        if (text_begins(text, "\xC2\xA0")) {
            text++;
            continue;
        }
        char sign = *text >= 'a' && *text <= 'z' ? (char)(*text - 'a' + 'A') : *text;
        if (sign != ' ')
            text_add_bytes(&plain, &sign, 1);
    }
    return arena_copy(arena, plain.at, plain.length);
}

struct identities *identities_new(struct arena *arena)
{
    struct identities *all = arena_alloc(arena, sizeof *all);
    all->arena = arena;
    return all;
}

/* ---- finding rows ---- */

static uint64_t words_hash(const char *words, unsigned kind)
{
    return bytes_hash_fast(BYTES_HASH_START + kind, words, strlen(words));
}

/* The slot of that identity, or the free one where it belongs. */
static size_t *plain_slot(const struct identities *all, enum identity_kind kind,
                          const char *plain)
{
    size_t mask = all->by_plain.count - 1;
    for (size_t i = (size_t)words_hash(plain, kind) & mask;; i = (i + 1) & mask) {
        size_t *slot = &all->by_plain.at[i];
        const struct identity *row = &all->rows[*slot == 0 ? 0 : *slot - 1];
        if (*slot == 0 || (row->kind == kind && text_equal(row->plain, plain)))
            return slot;
    }
}

static size_t *boat_slot(const struct identities *all, const char *boat)
{
    size_t mask = all->by_boat.count - 1;
    for (size_t i = (size_t)words_hash(boat, 0) & mask;; i = (i + 1) & mask) {
        size_t *slot = &all->by_boat.at[i];
        if (*slot == 0 || text_equal(all->rows[*slot - 1].boat, boat))
            return slot;
    }
}

static void row_link(struct identities *all, size_t index)
{
    struct identity *row = &all->rows[index];
    size_t *plain = plain_slot(all, row->kind, row->plain), *boat = boat_slot(all, row->boat);
    row->same = *plain;
    *plain = index + 1;
    if (*boat == 0)
        *boat = index + 1;
}

/* Twice as many slots as rows, so that one is always free; all are put in anew when they grow. */
static void slots_room(struct identities *all)
{
    size_t count = all->by_plain.count == 0 ? 64 : 2 * all->by_plain.count;
    if (all->by_plain.count > 2 * all->count)
        return;
    all->by_plain = (struct identity_slots){arena_array(all->arena, count, sizeof(size_t)), count};
    all->by_boat = (struct identity_slots){arena_array(all->arena, count, sizeof(size_t)), count};
    for (size_t i = 0; i < all->count; i++)
        row_link(all, i);
}

static void identity_row_add(struct identities *all, const struct identity *row)
{
    slots_room(all);
    all->rows = arena_grow(all->arena, all->rows, all->count, &all->room, sizeof *all->rows);
    all->rows[all->count] = *row;
    row_link(all, all->count++);
}

/* ---- */

#define WRITTEN_LIMIT ((size_t)64 * 1024 * 1024)

bool identities_add(struct identities *all, const struct source *source, const char *key)
{
    struct arena *own = arena_new(WRITTEN_LIMIT);
    struct written_identities written = identities_written(source, own);
    const char *file = arena_copy(all->arena, source->name, strlen(source->name));
    for (size_t i = 0; i < written.count; i++) {
        const struct text_value *value = &written.rows[i].value;
        if (text_empty(value->text) || text_equal(value->text, "none"))
            continue;
        struct identity row = {.kind = written.rows[i].kind,
                               .plain = plain_text(value->text, own, all->arena),
                               .boat = key, .file = file, .place = value->place};
        row.place.source = NULL;
        identity_row_add(all, &row);
    }
    arena_free(own);
    return written.whole;
}

/* The same identity in another boat's file, the first that was read; NULL: none has it. */
static const struct identity *identity_find(const struct identities *all,
                                            const struct identity *wanted)
{
    const struct identity *found = NULL;
    for (size_t i = *plain_slot(all, wanted->kind, wanted->plain); i > 0;
         i = all->rows[i - 1].same)
        if (!text_equal(all->rows[i - 1].boat, wanted->boat))
            found = &all->rows[i - 1];
    return found;
}

bool identities_own(const struct identities *all, const char *key, const struct source *source,
                    struct problems *problems)
{
    bool own = true;
    size_t first = all->count == 0 ? 0 : *boat_slot(all, key);
    for (size_t i = first; i > 0 && i <= all->count && text_equal(all->rows[i - 1].boat, key);
         i++) {
        const struct identity *hers = &all->rows[i - 1];
        const struct identity *other = identity_find(all, hers);
        struct place place = hers->place;
        if (other == NULL)
            continue;
        place.source = source;
        const struct check *check = check_at(identity_kinds[hers->kind].check);
        problem_add_check(problems, check->id, check->severity, place,
                          "each boat has her own: read both off the licences and labels",
                          "%s %s is that of %s too (%s:%d)",
                          identity_kinds[hers->kind].what, hers->plain,
                          other->boat, other->file, other->place.line);
        own = false;
    }
    return own;
}

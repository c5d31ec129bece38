/* fleet_rules.c - what only shows when the boats of a base are held against each other:
 * an identity that was copied from one file into another (room: rules). */
#include "rules_room.h"

#include <stdint.h>
#include <string.h>

#include "text.h"

/* Of ten thousand boats all are kept while the run lasts: so they are small, and stand in blocks
 * that are never copied to grow. */
#define ROWS_A_BLOCK 256

/* An identity as it was written for one boat. Rows of one boat follow each other. */
struct identity {
    enum identity_kind kind;
    uint32_t boat;              /* index of her */
    uint32_t same;              /* the row before with the same identity, plus 1; 0: none */
    int line, column, span;     /* of her file, which may be gone */
    const char *plain;          /* without spaces, upper case */
};

struct identity_boat {
    const char *key, *file;     /* the file's name for messages */
    uint32_t first, count;      /* of her rows */
};

/* Rows or boats by a name of theirs, each as its index plus 1; 0: free. */
struct identity_slots {
    uint32_t *at;
    size_t count;
};

struct identities {
    struct identity **blocks;
    size_t block_count, block_room;
    struct identity_boat *boats;
    size_t count, boat_count, boat_room;
    struct identity_slots by_plain, by_boat;    /* of each identity the last row */
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

static struct identity *identity_at(const struct identities *all, size_t index)
{
    return &all->blocks[index / ROWS_A_BLOCK][index % ROWS_A_BLOCK];
}

/* The slot of that identity, or the free one where it belongs. */
static uint32_t *plain_slot(const struct identities *all, enum identity_kind kind,
                            const char *plain)
{
    size_t mask = all->by_plain.count - 1;
    for (size_t i = (size_t)words_hash(plain, kind) & mask;; i = (i + 1) & mask) {
        uint32_t *slot = &all->by_plain.at[i];
        const struct identity *row = identity_at(all, *slot == 0 ? 0 : *slot - 1);
        if (*slot == 0 || (row->kind == kind && text_equal(row->plain, plain)))
            return slot;
    }
}

static uint32_t *boat_slot(const struct identities *all, const char *boat)
{
    size_t mask = all->by_boat.count - 1;
    for (size_t i = (size_t)words_hash(boat, 0) & mask;; i = (i + 1) & mask) {
        uint32_t *slot = &all->by_boat.at[i];
        if (*slot == 0 || text_equal(all->boats[*slot - 1].key, boat))
            return slot;
    }
}

/* Twice as many slots as there will be names, so that one is always free. True: they are new, and
 * all have to be put in anew. */
static bool identity_slots_room(struct identity_slots *slots, size_t names, struct arena *arena)
{
    if (slots->count > 2 * names)
        return false;
    slots->count = slots->count == 0 ? 64 : 4 * slots->count;
    slots->at = arena_array(arena, slots->count, sizeof *slots->at);
    return true;
}

static void row_link(struct identities *all, size_t index)
{
    struct identity *row = identity_at(all, index);
    uint32_t *slot = plain_slot(all, row->kind, row->plain);
    row->same = *slot;
    *slot = (uint32_t)index + 1;
}

static void identity_row_add(struct identities *all, const struct identity *row)
{
    if (all->count == all->block_count * ROWS_A_BLOCK) {
        all->blocks = arena_grow(all->arena, all->blocks, all->block_count, &all->block_room,
                                 sizeof *all->blocks);
        all->blocks[all->block_count++] = arena_array(all->arena, ROWS_A_BLOCK,
                                                      sizeof(struct identity));
    }
    bool anew = identity_slots_room(&all->by_plain, all->count, all->arena);
    *identity_at(all, all->count++) = *row;
    for (size_t i = anew ? 0 : all->count - 1; i < all->count; i++)
        row_link(all, i);
}

static struct identity_boat *identity_boat_add(struct identities *all, const char *key,
                                               const char *file)
{
    bool anew = identity_slots_room(&all->by_boat, all->boat_count, all->arena);
    all->boats = arena_grow(all->arena, all->boats, all->boat_count, &all->boat_room,
                            sizeof *all->boats);
    all->boats[all->boat_count++] = (struct identity_boat){
        key, arena_copy(all->arena, file, strlen(file)), (uint32_t)all->count, 0};
    for (size_t i = anew ? 0 : all->boat_count - 1; i < all->boat_count; i++)
        if (*boat_slot(all, all->boats[i].key) == 0)
            *boat_slot(all, all->boats[i].key) = (uint32_t)i + 1;
    return &all->boats[all->boat_count - 1];
}

/* ---- */

#define WRITTEN_LIMIT ((size_t)64 * 1024 * 1024)

bool identities_add(struct identities *all, const struct source *source, const char *key)
{
    struct arena *own = arena_new(WRITTEN_LIMIT);
    struct written_identities written = identities_written(source, own);
    struct identity_boat *boat = identity_boat_add(all, key, source->name);
    for (size_t i = 0; i < written.count; i++) {
        const struct text_value *value = &written.rows[i].value;
        if (text_empty(value->text) || text_equal(value->text, "none"))
            continue;
        struct identity row = {.kind = written.rows[i].kind,
                               .boat = (uint32_t)all->boat_count - 1,
                               .plain = plain_text(value->text, own, all->arena),
                               .line = value->place.line, .column = value->place.column,
                               .span = value->place.span};
        identity_row_add(all, &row);
        boat->count++;
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
         i = identity_at(all, i - 1)->same)
        if (identity_at(all, i - 1)->boat != wanted->boat)
            found = identity_at(all, i - 1);
    return found;
}

static void identity_tell(const struct identities *all, const struct identity *hers,
                          const struct identity *other, const struct source *source,
                          struct problems *problems)
{
    struct place place = {source, hers->line, hers->column, hers->span};
    const struct identity_boat *boat = &all->boats[other->boat];
    const struct check *check = check_at(identity_kinds[hers->kind].check);
    problem_add_check(problems, check->id, check->severity, place,
                      "each boat has her own: read both off the licences and labels",
                      "%s %s is that of %s too (%s:%d)", identity_kinds[hers->kind].what,
                      hers->plain, boat->key, boat->file, other->line);
}

bool identities_own(const struct identities *all, const char *key, const struct source *source,
                    struct problems *problems)
{
    bool own = true;
    size_t slot = all->boat_count == 0 ? 0 : *boat_slot(all, key);
    if (slot == 0)
        return true;
    const struct identity_boat *boat = &all->boats[slot - 1];
    for (size_t i = boat->first; i < boat->first + boat->count; i++) {
        const struct identity *hers = identity_at(all, i);
        const struct identity *other = identity_find(all, hers);
        if (other != NULL)
            identity_tell(all, hers, other, source, problems);
        own = own && other == NULL;
    }
    return own;
}

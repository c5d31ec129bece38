/* fleet_rules.c - what only shows when the boats of a base are held against each other:
 * an identity that was copied from one file into another (room: rules). */
#include "rules_room.h"

#include "text.h"

/* An identity as it was written for one boat. */
struct identity {
    enum identity_kind kind;
    const char *plain;       /* without spaces, upper case */
    const char *boat;
    struct place place;
};

struct identities {
    struct identity *rows;
    size_t count, room;
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

/* A no-break space is one too: the decoder of MMSI passes over both. */
static const char *plain_text(const char *text, struct arena *arena)
{
    struct text_builder plain = text_builder_in(arena);
    for (; *text != '\0'; text++) {
        if (text_begins(text, "\xC2\xA0")) {
            text++;
            continue;
        }
        char sign = *text >= 'a' && *text <= 'z' ? (char)(*text - 'a' + 'A') : *text;
        if (sign != ' ')
            text_add_bytes(&plain, &sign, 1);
    }
    return plain.at;
}

struct identities *identities_new(struct arena *arena)
{
    struct identities *all = arena_alloc(arena, sizeof *all);
    all->arena = arena;
    return all;
}

bool identities_add(struct identities *all, const struct source *source, const char *key)
{
    struct written_identities written = identities_written(source, all->arena);
    for (size_t i = 0; i < written.count; i++) {
        const struct text_value *value = &written.rows[i].value;
        if (text_empty(value->text) || text_equal(value->text, "none"))
            continue;
        all->rows = arena_grow(all->arena, all->rows, all->count, &all->room,
                               sizeof *all->rows);
        all->rows[all->count++] = (struct identity){
            written.rows[i].kind, plain_text(value->text, all->arena), key, value->place};
    }
    return written.whole;
}

/* The same identity in another boat's file, or NULL. */
static const struct identity *identity_find(const struct identities *all,
                                            const struct identity *wanted)
{
    for (size_t i = 0; i < all->count; i++)
        if (all->rows[i].kind == wanted->kind && text_equal(all->rows[i].plain, wanted->plain) &&
            !text_equal(all->rows[i].boat, wanted->boat))
            return &all->rows[i];
    return NULL;
}

bool identities_own(const struct identities *all, const char *key, struct problems *problems)
{
    bool own = true;
    for (size_t i = 0; i < all->count; i++) {
        const struct identity *hers = &all->rows[i];
        const struct identity *other = text_equal(hers->boat, key) ? identity_find(all, hers)
                                                                   : NULL;
        if (other == NULL)
            continue;
        const struct check *check = check_at(identity_kinds[hers->kind].check);
        problem_add_check(problems, check->id, check->severity, hers->place,
                          "each boat has her own: read both off the licences and labels",
                          "%s %s is that of %s too (%s:%d)",
                          identity_kinds[hers->kind].what, hers->plain,
                          other->boat, other->place.source->name, other->place.line);
        own = false;
    }
    return own;
}

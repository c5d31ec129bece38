/* fleet_rules.c - what only shows when the boats of a base are held against each other:
 * an identity that was copied from one file into another (room: rules). */
#include "rules_room.h"

#include "text.h"

/* An identity as it was written for one boat. */
struct identity {
    enum check_name check;
    const char *what;        /* "MMSI" */
    const char *plain;       /* without spaces, upper case */
    const char *boat;
    struct place place;
};

struct identities {
    struct identity *rows;
    size_t count, room;
    struct arena *arena;
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

static const struct identity *identity_find(const struct identities *all,
                                            const struct identity *wanted)
{
    for (size_t i = 0; i < all->count; i++)
        if (all->rows[i].check == wanted->check && all->rows[i].boat != wanted->boat &&
            text_equal(all->rows[i].plain, wanted->plain))
            return &all->rows[i];
    return NULL;
}

/* False when it is another boat's. */
static bool identity_keep(struct identities *all, struct identity identity,
                          const struct text_value *value, struct problems *problems)
{
    if (text_empty(value->text) || text_equal(value->text, "none"))
        return true;
    const struct check *check = check_at(identity.check);
    identity.plain = plain_text(value->text, all->arena);
    identity.place = value->place;
    const struct identity *other = identity_find(all, &identity);
    all->rows = arena_grow(all->arena, all->rows, all->count, &all->room, sizeof *all->rows);
    all->rows[all->count++] = identity;
    if (other == NULL)
        return true;
    problem_add_check(problems, check->id, check->severity, value->place,
                      "each boat has her own: read both off the licences and labels",
                      "%s %s is that of %s too (%s:%d)", identity.what, identity.plain,
                      other->boat, other->place.source->name, other->place.line);
    return false;
}

bool identities_add(struct identities *all, const struct boat *boat, const char *key,
                    struct problems *problems)
{
    struct identity mmsi = {.check = CHECK_mmsi_twice, .what = "MMSI", .boat = key};
    struct identity sign = {.check = CHECK_call_sign_twice, .what = "call sign", .boat = key};
    struct identity beacon = {.check = CHECK_beacon_twice, .what = "beacon identity",
                              .boat = key};
    bool own = identity_keep(all, mmsi, &boat->radio.mmsi, problems);
    own = identity_keep(all, sign, &boat->radio.call_sign, problems) && own;
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        own = identity_keep(all, beacon, &gear->hex_id, problems) && own;
        if (text_equal(gear->kind->key, "vhf_handheld"))
            own = identity_keep(all, mmsi, &gear->mmsi, problems) && own;
    }
    return own;
}

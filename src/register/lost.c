/* lost.c - the gear that a boat had when her cards were last printed, and of which her record says
 * nothing any more (room: register). It judges nothing: a piece may be gone from the boat. */
#include "register_room.h"

#include <string.h>

/* A piece that the record has not under its tag. */
struct lost_piece {
    struct register_loss loss;
    bool denied;               /* she has none of its kind, says the record */
};

struct losing {
    const struct boat *boat;
    const struct languages *languages;
    const struct register_row *print;     /* the one that is looked at */
    struct content said;
    struct lost_piece *pieces;
    size_t count, room;
    struct arena *arena;
};

static struct lost_piece *lost_piece_find(const struct losing *losing, const char *tag)
{
    for (size_t i = 0; i < losing->count; i++)
        if (text_equal(losing->pieces[i].loss.tag, tag))
            return &losing->pieces[i];
    return NULL;
}

/* It stands on many cards, of which some tell more of it. */
static void lost_piece_add(struct losing *losing, struct lost_piece piece)
{
    struct lost_piece *known = lost_piece_find(losing, piece.loss.tag);
    if (known == NULL) {
        losing->pieces = arena_grow(losing->arena, losing->pieces, losing->count, &losing->room,
                                    sizeof *losing->pieces);
        known = &losing->pieces[losing->count++];
        *known = piece;
    } else if (known->loss.was == NULL) {
        piece.loss.printed = known->loss.printed;
        *known = piece;
    }
}

static bool tag_stands_in(const struct list_value *list, const char *tag)
{
    for (size_t i = 0; i < list->count; i++)
        if (text_equal(list->items[i].text, tag))
            return true;
    return false;
}

/* It is there, or was retired, or her model has it and she has not. */
static bool tag_is_known(const struct boat *boat, const char *tag)
{
    return gear_of_tag(boat, tag) != NULL || tag_stands_in(&boat->retired_tags, tag) ||
           tag_stands_in(&boat->likeness.tags, tag);
}

/* Does the record say that nothing of that name is fitted? */
static bool kind_is_denied(const struct losing *losing, const char *name)
{
    const struct absence_list *list = &losing->boat->not_fitted;
    const struct words *words = language_words(losing->languages, losing->print->language);
    for (size_t i = 0; words != NULL && name != NULL && i < list->count; i++)
        if (list->rows[i].whole && list->rows[i].item.value != ITEM_NONE &&
            text_equal(words_item(words, list->rows[i].item.value), name))
            return true;
    return false;
}

/* The gear that the boat had when it was printed; what it was is known of what stood there. */
static void tags_compare(struct losing *losing)
{
    const char *tags = sheet_value(&losing->said, KEPT_TAGS);
    for (const char *at = tags == NULL ? "" : tags; *at != '\0'; at += strspn(at, " ")) {
        size_t length = strcspn(at, " ");
        const char *tag = arena_copy(losing->arena, at, length);
        const char *name = gear_value(&losing->said, tag, KEPT_ITEM);
        at += length;
        if (!tag_is_known(losing->boat, tag))
            lost_piece_add(losing, (struct lost_piece){
                                  .loss = {.tag = tag, .printed = losing->print->date, .was = name,
                                           .where = gear_value(&losing->said, tag, KEPT_PLACE)},
                                  .denied = kind_is_denied(losing, name)});
    }
}

static bool is_last_print(const struct register_rows *own, size_t index)
{
    for (size_t i = index + 1; i < own->count; i++)
        if (own->rows[i].event == EVENT_PRINTED && same_card(&own->rows[i], &own->rows[index]))
            return false;
    return own->rows[index].event == EVENT_PRINTED;
}

static void print_compare(struct losing *losing, const struct register_rows *own)
{
    const char *packed = content_of(own, losing->print);
    const char *said = packed == NULL ? NULL : content_unpack(packed, losing->arena);
    if (said == NULL)
        return;
    losing->said = content_read(said, losing->arena);
    tags_compare(losing);
}

struct register_losses register_losses(const struct register_rows *own, const struct boat *boat,
                                       const struct languages *languages, struct arena *arena)
{
    struct losing losing = {.boat = boat, .languages = languages, .arena = arena};
    bool unclear = boat->gear_unclear || boat->tags_unclear;
    for (size_t i = unclear ? 0 : own->count; i-- > 0;) {
        losing.print = &own->rows[i];
        if (is_last_print(own, i))
            print_compare(&losing, own);
    }
    struct register_loss *rows = arena_array(arena, losing.count, sizeof *rows);
    struct register_losses losses = {.at = rows};
    for (size_t i = 0; i < losing.count; i++)
        if (!losing.pieces[i].denied)
            rows[losses.count++] = losing.pieces[i].loss;
    return losses;
}

/* lost.c - the gear that a boat had when her cards were last printed, and of which her record says
 * nothing any more (room: register). It judges nothing: a piece may be gone from the boat. */
#include "register_room.h"

#include <string.h>

struct losing {
    const struct boat *boat;
    const struct languages *languages;
    const struct register_row *print;     /* the one that is looked at */
    struct content said;
    struct register_loss *rows;
    size_t count, room;
    struct arena *arena;
};

static struct register_loss *loss_find(const struct losing *losing, const char *tag)
{
    for (size_t i = 0; i < losing->count; i++)
        if (text_equal(losing->rows[i].tag, tag))
            return &losing->rows[i];
    return NULL;
}

/* It stands on many cards, of which some tell more of it. */
static void loss_add(struct losing *losing, struct register_loss loss)
{
    struct register_loss *told = loss_find(losing, loss.tag);
    if (told != NULL && told->was == NULL)
        *told = loss;
    if (told != NULL)
        return;
    losing->rows = arena_grow(losing->arena, losing->rows, losing->count, &losing->room,
                              sizeof *losing->rows);
    losing->rows[losing->count++] = loss;
}

static bool list_has(const struct list_value *list, const char *tag)
{
    for (size_t i = 0; i < list->count; i++)
        if (text_equal(list->items[i].text, tag))
            return true;
    return false;
}

/* What the record says of it in the place of the piece: it was retired, or her model has it and
 * she has not, or she has none of its kind. */
static bool is_accounted_for(const struct losing *losing, const char *tag)
{
    const struct boat *boat = losing->boat;
    const struct words *words = language_words(losing->languages, losing->print->language);
    const char *name = gear_value(&losing->said, tag, KEPT_ITEM);
    if (gear_of_tag(boat, tag) != NULL || list_has(&boat->retired_tags, tag) ||
        list_has(&boat->likeness.tags, tag))
        return true;
    for (size_t i = 0; words != NULL && i < boat->not_fitted.count; i++) {
        const struct absence *absence = &boat->not_fitted.rows[i];
        if (absence->whole && absence->item.value != ITEM_NONE &&
            text_equal(words_item(words, absence->item.value), name))
            return true;
    }
    return false;
}

/* The gear that the boat had when it was printed; what it was is known of what stood there. */
static void tags_compare(struct losing *losing)
{
    const char *tags = sheet_value(&losing->said, KEPT_TAGS);
    for (const char *at = tags == NULL ? "" : tags; *at != '\0'; at += strspn(at, " ")) {
        size_t length = strcspn(at, " ");
        const char *tag = arena_copy(losing->arena, at, length);
        at += length;
        if (!is_accounted_for(losing, tag))
            loss_add(losing, (struct register_loss){
                                 .tag = tag, .printed = losing->print->date,
                                 .was = gear_value(&losing->said, tag, KEPT_ITEM),
                                 .where = gear_value(&losing->said, tag, KEPT_PLACE)});
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
    return (struct register_losses){losing.rows, losing.count};
}

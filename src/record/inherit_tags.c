/* inherit_tags.c - the lists of tags that a boat has with her model (room: record): of the last
 * one given of a letter the higher counts, of what is retired all. */
#include "record.h"

/* A copy of hers with room for the model's behind them. */
static struct text_value *tags_copied(const struct list_value *hers,
                                      const struct list_value *models, struct arena *arena)
{
    struct text_value *items = arena_array(arena, hers->count + models->count, sizeof *items);
    for (size_t i = 0; i < hers->count; i++)
        items[i] = hers->items[i];
    return items;
}

static struct list_value tag_lists_joined(const struct list_value *hers,
                                     const struct list_value *models,
                                     const struct text_value *items, size_t count)
{
    return (struct list_value){.items = items, .count = count,
                               .given = hers->given || models->given,
                               .place = place_or(hers->place, models->place)};
}

/* The one of the same letter among the items; NULL: there is none. */
static struct text_value *of_same_letter(struct text_value *items, size_t count, const char *tag)
{
    for (size_t i = 0; i < count; i++)
        if (items[i].text[0] == tag[0])
            return &items[i];
    return NULL;
}

static struct list_value given_joined(const struct list_value *hers,
                                      const struct list_value *models, struct arena *arena)
{
    struct text_value *items = tags_copied(hers, models, arena);
    size_t count = hers->count;
    for (size_t i = 0; i < models->count; i++) {
        struct tag tag, last;
        struct text_value *same = of_same_letter(items, count, models->items[i].text);
        if (same == NULL)
            items[count++] = models->items[i];
        else if (tag_parse(models->items[i].text, &tag) && tag_parse(same->text, &last) &&
                 tag.number > last.number)
            *same = models->items[i];
    }
    return tag_lists_joined(hers, models, items, count);
}

static struct list_value retired_joined(const struct list_value *hers,
                                        const struct list_value *models, struct arena *arena)
{
    struct text_value *items = tags_copied(hers, models, arena);
    size_t count = hers->count;
    for (size_t i = 0; i < models->count; i++)
        if (!list_holds(hers, models->items[i].text))
            items[count++] = models->items[i];
    return tag_lists_joined(hers, models, items, count);
}

void tags_inherit(struct boat *boat, const struct boat *model, struct arena *arena)
{
    boat->tags_given = given_joined(&boat->tags_given, &model->tags_given, arena);
    boat->retired_tags = retired_joined(&boat->retired_tags, &model->retired_tags, arena);
}

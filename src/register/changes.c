/* changes.c - why a card is another than the one that hangs (room: register). What both do not
 * share is found first; then each finder tells what it knows a reason for, from the record to the
 * bare words, and marks what it has explained. */
#include "register_room.h"

#include <stdarg.h>
#include <stdlib.h>
#include <string.h>

/* ---- what both do not share ---- */

static int line_order(const struct said_line *a, const struct said_line *b)
{
    int order = strcmp(a->block, b->block);
    order = order != 0 ? order : strcmp(a->step, b->step);
    order = order != 0 ? order : strcmp(a->name, b->name);
    order = order != 0 ? order : strcmp(a->tag, b->tag);
    return order != 0 ? order : strcmp(a->text, b->text);
}

static int pointers_compare(const void *a, const void *b)
{
    return line_order(*(struct said_line *const *)a, *(struct said_line *const *)b);
}

/* In the order in which they are read. */
static int places_compare(const void *a, const void *b)
{
    const struct said_line *first = *(struct said_line *const *)a;
    const struct said_line *second = *(struct said_line *const *)b;
    return first < second ? -1 : first > second;
}

static struct said_line **lines_sorted(struct content *content, struct arena *arena)
{
    struct said_line **list = arena_array(arena, content->line_count + 1, sizeof *list);
    for (size_t i = 0; i < content->line_count; i++)
        list[i] = &content->lines[i];
    if (content->line_count > 1)
        qsort(list, content->line_count, sizeof *list, pointers_compare);
    return list;
}

static void apart_find(struct comparing *comparing)
{
    struct content *old = &comparing->old, *now = &comparing->now;
    struct said_line **olds = lines_sorted(old, comparing->arena);
    struct said_line **news = lines_sorted(now, comparing->arena);
    size_t a = 0, b = 0;
    comparing->gone = arena_array(comparing->arena, old->line_count + 1, sizeof *olds);
    comparing->come = arena_array(comparing->arena, now->line_count + 1, sizeof *news);
    while (a < old->line_count || b < now->line_count) {
        int order = a == old->line_count   ? 1
                    : b == now->line_count ? -1
                                           : line_order(olds[a], news[b]);
        if (order < 0)
            comparing->gone[comparing->gone_count++] = olds[a];
        if (order > 0)
            comparing->come[comparing->come_count++] = news[b];
        a += order <= 0 ? 1 : 0;
        b += order >= 0 ? 1 : 0;
    }
    if (comparing->gone_count > 1)
        qsort(comparing->gone, comparing->gone_count, sizeof *comparing->gone, places_compare);
    if (comparing->come_count > 1)
        qsort(comparing->come, comparing->come_count, sizeof *comparing->come, places_compare);
}

/* ---- lines ---- */

static bool list_has(struct said_line *const *lines, size_t count, line_takes *takes,
                     const void *of)
{
    for (size_t i = 0; i < count; i++)
        if (takes(lines[i], of))
            return true;
    return false;
}

bool lines_have(const struct comparing *comparing, line_takes *takes, const void *of)
{
    return list_has(comparing->gone, comparing->gone_count, takes, of) ||
           list_has(comparing->come, comparing->come_count, takes, of);
}

static bool list_unexplained(struct said_line *const *lines, size_t count, line_takes *takes,
                             const void *of)
{
    for (size_t i = 0; i < count; i++)
        if (!lines[i]->explained && takes(lines[i], of))
            return true;
    return false;
}

bool lines_unexplained(const struct comparing *comparing, line_takes *takes, const void *of)
{
    return list_unexplained(comparing->gone, comparing->gone_count, takes, of) ||
           list_unexplained(comparing->come, comparing->come_count, takes, of);
}

static void list_explain(struct said_line **lines, size_t count, line_takes *takes,
                         const void *of)
{
    for (size_t i = 0; i < count; i++)
        if (takes(lines[i], of))
            lines[i]->explained = true;
}

void lines_explain(struct comparing *comparing, line_takes *takes, const void *of)
{
    list_explain(comparing->gone, comparing->gone_count, takes, of);
    list_explain(comparing->come, comparing->come_count, takes, of);
}

/* The only such line, but for signal words and sources, which belong to another; NULL: there is
 * none, or `*found` are more. */
static const char *only_text(struct said_line *const *lines, size_t count, line_takes *takes,
                             const void *of, size_t *found)
{
    const char *text = NULL;
    *found = 0;
    for (size_t i = 0; i < count; i++)
        if (!lines[i]->explained && lines[i]->said != SAID_WORD &&
            lines[i]->said != SAID_SOURCE && takes(lines[i], of)) {
            text = lines[i]->text;
            (*found)++;
        }
    return *found == 1 ? text : NULL;
}

const char *lines_shown(const struct comparing *comparing, line_takes *takes, const void *of)
{
    struct arena *arena = comparing->arena;
    size_t gone, come;
    const char *old = only_text(comparing->gone, comparing->gone_count, takes, of, &gone);
    const char *now = only_text(comparing->come, comparing->come_count, takes, of, &come);
    if (gone > 1 || come > 1)
        return "";
    if (old != NULL && now != NULL)
        return text_format(arena, ": %s -> %s", text_shown(arena, old), text_shown(arena, now));
    if (old != NULL)
        return text_format(arena, ": %s is gone", text_shown(arena, old));
    return now == NULL ? "" : text_format(arena, ": %s is new", text_shown(arena, now));
}

bool line_in_block(const struct said_line *line, const void *block)
{
    return text_equal(line->block, block);
}

const char *folded_letters(const char *text, struct arena *arena)
{
    const char *upper = text_upper(arena, text);
    struct text_builder out = text_builder_in(arena);
    text_add(&out, "");
    for (; *upper != '\0'; upper++) {
        bool high = (unsigned char)*upper >= 0x80;
        if (high || is_digit(*upper) || (*upper >= 'A' && *upper <= 'Z'))
            text_add_bytes(&out, upper, 1);
    }
    return out.at;
}

bool texts_differ(const struct comparing *comparing)
{
    return !text_equal(sheet_value(&comparing->old, KEPT_TEXTS),
                       sheet_value(&comparing->now, KEPT_TEXTS));
}

/* ---- reasons ---- */

static bool reason_keep(struct comparing *comparing, const char *reason)
{
    for (size_t i = 0; i < comparing->count; i++)
        if (text_equal(comparing->reasons[i], reason))
            return false;
    comparing->reasons = arena_grow(comparing->arena, comparing->reasons, comparing->count,
                                    &comparing->room, sizeof *comparing->reasons);
    comparing->reasons[comparing->count++] = reason;
    return true;
}

void reason_add(struct comparing *comparing, const char *format, ...)
{
    va_list list;
    va_start(list, format);
    reason_keep(comparing, text_format_list(comparing->arena, format, list));
    va_end(list);
}

void reason_add_lost(struct comparing *comparing, const char *format, ...)
{
    va_list list;
    va_start(list, format);
    const char *reason = text_format_list(comparing->arena, format, list);
    va_end(list);
    if (!reason_keep(comparing, reason))
        return;
    comparing->losses = arena_grow(comparing->arena, comparing->losses, comparing->loss_count,
                                   &comparing->loss_room, sizeof *comparing->losses);
    comparing->losses[comparing->loss_count++] = reason;
}

struct register_changes register_changes(const char *old, const char *now, struct arena *arena)
{
    struct comparing comparing = {.arena = arena, .old = content_read(old, arena),
                                  .now = content_read(now, arena)};
    apart_find(&comparing);
    gear_compare(&comparing);
    dates_compare(&comparing);
    facts_compare(&comparing);
    approval_compare(&comparing);
    steps_compare(&comparing);
    choices_compare(&comparing);
    words_compare(&comparing);
    if (comparing.count == 0 && !text_equal(old, now))
        reason_add(&comparing, "its lines stand in another order");
    return (struct register_changes){comparing.reasons, comparing.count, comparing.losses,
                                     comparing.loss_count};
}

/* changes_gear.c - what is another of the gear of a card, by its tag, and of the dates at its foot
 * (room: register). A piece of which the card tells nothing new is left out, whatever else of it
 * is recorded. */
#include "item_fields.h"
#include "reader.h"
#include "register_room.h"

#include <string.h>

/* ---- which lines tell of a piece ---- */

static bool line_of_tag(const struct said_line *line, const void *tag)
{
    return text_equal(line->tag, tag);
}

static bool line_names_tag(const struct said_line *line, const void *tag)
{
    return text_equal(line->tag, tag) ||
           (line->tag[0] == '\0' && word_stands_in(line->text, tag));
}

/* Names of gear of which several are told together. */
static bool line_is_name(const struct said_line *line, const void *nothing)
{
    return nothing == NULL && line->tag[0] != '\0' &&
           (line->said == SAID_FULL_NAME || line->said == SAID_LESSER_NAME);
}

static bool line_is_detail(const struct said_line *line, const void *tag)
{
    return text_equal(line->tag, tag) && line->said == SAID_DETAIL;
}

/* ---- one piece ---- */

/* "Flares E5" */
static const char *piece_named(const struct content *content, const char *tag,
                               struct arena *arena)
{
    const char *item = gear_value(content, tag, KEPT_ITEM);
    return item == NULL ? tag : text_format(arena, "%s %s", item, tag);
}

static const char *place_told(const struct content *content, const char *tag)
{
    const char *place = gear_value(content, tag, KEPT_PLACE);
    return place == NULL ? "a place that is not recorded" : place;
}

static bool boat_had(const struct content *content, const char *tag)
{
    const char *tags = sheet_value(content, KEPT_TAGS);
    return tags != NULL && word_stands_in(tags, tag);
}

static void come_tell(struct comparing *comparing, const char *tag)
{
    const char *piece = piece_named(&comparing->now, tag, comparing->arena);
    const char *place = place_told(&comparing->now, tag);
    if (boat_had(&comparing->old, tag))
        reason_add(comparing, "%s is on this card now: %s", piece, place);
    else
        reason_add(comparing, "%s added: %s", piece, place);
}

static void gone_tell(struct comparing *comparing, const char *tag)
{
    const char *piece = piece_named(&comparing->old, tag, comparing->arena);
    if (boat_had(&comparing->now, tag))
        reason_add(comparing, "%s is on this card no longer", piece);
    else
        reason_add(comparing, "%s taken off the boat", piece);
}

/* May a field of the record show on this card? Those of the safety plan alone show where its
 * lines of the piece are others. */
static bool field_shows(const struct comparing *comparing, const char *tag, const char *field)
{
    const struct field *row = gear_field_row(gear_field_find(field));
    bool told_apart = choice_find(kept_fact_words, field) != KEPT_NONE;
    if (row == NULL || row->kind == FIELD_DATE || told_apart)
        return false;
    if ((row->readers & (READ_PLACE | READ_ROW | READ_CASE | READ_PLAN | READ_PANEL)) != 0)
        return true;
    return (row->readers & READ_SAFETY) != 0 && lines_have(comparing, line_is_detail, tag);
}

static void field_change_tell(struct comparing *comparing, const char *tag, const char *field,
                       const char *old, const char *now)
{
    struct arena *arena = comparing->arena;
    const char *piece = piece_named(&comparing->now, tag, arena);
    if (old == NULL)
        reason_add(comparing, "%s: %s is recorded now: %s", piece, field, text_shown(arena, now));
    else if (now == NULL)
        reason_add_lost(comparing, "%s: %s is no longer recorded (it was %s)", piece, field,
                   text_shown(arena, old));
    else
        reason_add(comparing, "%s: %s changed from %s to %s", piece, field,
                   text_shown(arena, old), text_shown(arena, now));
}

/* The fields of a piece of one content that the other has otherwise; those of `now` that are in
 * both are told with the old. */
static void fields_tell(struct comparing *comparing, const char *tag)
{
    const struct content *old = &comparing->old, *now = &comparing->now;
    for (size_t i = 0; i < old->gear_count; i++) {
        const struct content_fact *fact = &old->gear[i];
        const char *value = content_value(now->gear, now->gear_count, tag, fact->field);
        if (text_equal(fact->subject, tag) && !text_equal(fact->value, value) &&
            field_shows(comparing, tag, fact->field))
            field_change_tell(comparing, tag, fact->field, fact->value, value);
    }
    for (size_t i = 0; i < now->gear_count; i++) {
        const struct content_fact *fact = &now->gear[i];
        if (text_equal(fact->subject, tag) && field_shows(comparing, tag, fact->field) &&
            content_value(old->gear, old->gear_count, tag, fact->field) == NULL)
            field_change_tell(comparing, tag, fact->field, NULL, fact->value);
    }
}

/* Its side or its spot is not recorded any more. */
static bool place_is_cut(const char *old, const char *now)
{
    size_t length = now == NULL ? 0 : strlen(now);
    return old != NULL && length > 0 && text_begins(old, now) && old[length] == ',';
}

static void both_tell(struct comparing *comparing, const char *tag)
{
    const struct content *old = &comparing->old, *now = &comparing->now;
    const char *was = gear_value(old, tag, KEPT_ITEM), *is = gear_value(now, tag, KEPT_ITEM);
    if (!text_equal(was, is) && was != NULL && is != NULL)
        reason_add(comparing, "%s is another piece of gear now: %s, it was %s", tag, is, was);
    if (place_is_cut(gear_value(old, tag, KEPT_PLACE), gear_value(now, tag, KEPT_PLACE)))
        reason_add_lost(comparing, "%s: its place is told less closely: %s, it was %s",
                        piece_named(now, tag, comparing->arena), place_told(now, tag),
                        place_told(old, tag));
    else if (!text_equal(gear_value(old, tag, KEPT_PLACE), gear_value(now, tag, KEPT_PLACE)))
        reason_add(comparing, "%s moved from %s to %s",
                   piece_named(now, tag, comparing->arena), place_told(old, tag),
                   place_told(now, tag));
    fields_tell(comparing, tag);
}

static void gear_of_tag_compare(struct comparing *comparing, const char *tag)
{
    bool before = gear_value(&comparing->old, tag, KEPT_ITEM) != NULL;
    bool after = gear_value(&comparing->now, tag, KEPT_ITEM) != NULL;
    size_t told = comparing->count;
    if (!lines_have(comparing, line_names_tag, tag))
        return;
    if (before && after)
        both_tell(comparing, tag);
    else if (after)
        come_tell(comparing, tag);
    else
        gone_tell(comparing, tag);
    if (comparing->count == told)
        return;
    lines_explain(comparing, before && after ? line_names_tag : line_of_tag, tag);
    lines_explain(comparing, line_is_name, NULL);
}

/* Each tag of a list of facts once: at the first of its facts. */
static bool is_first_of_tag(const struct content_fact *gear, size_t index)
{
    return index == 0 || !text_equal(gear[index - 1].subject, gear[index].subject);
}

void gear_compare(struct comparing *comparing)
{
    const struct content *old = &comparing->old, *now = &comparing->now;
    for (size_t i = 0; i < old->gear_count; i++)
        if (is_first_of_tag(old->gear, i))
            gear_of_tag_compare(comparing, old->gear[i].subject);
    for (size_t i = 0; i < now->gear_count; i++)
        if (is_first_of_tag(now->gear, i) &&
            gear_value(old, now->gear[i].subject, KEPT_ITEM) == NULL)
            gear_of_tag_compare(comparing, now->gear[i].subject);
}

/* ---- dates ---- */

static bool line_is_dated(const struct said_line *line, const void *nothing)
{
    return nothing == NULL && (line->said == SAID_FIRST_DATE || line->said == SAID_UNDATED);
}

static const char *first_date(struct said_line *const *lines, size_t count)
{
    for (size_t i = 0; i < count; i++)
        if (lines[i]->said == SAID_FIRST_DATE)
            return lines[i]->text;
    return NULL;
}

/* Of the piece that the foot's date is of, or that has a date now, or has none any more. */
static bool date_compare_piece(struct comparing *comparing, const char *tag)
{
    const char *old = gear_value(&comparing->old, tag, KEPT_GOOD_UNTIL);
    const char *now = gear_value(&comparing->now, tag, KEPT_GOOD_UNTIL);
    const char *first = first_date(comparing->gone, comparing->gone_count);
    const char *first_now = first_date(comparing->come, comparing->come_count);
    const char *piece = piece_named(&comparing->now, tag, comparing->arena);
    if (text_equal(old, now) || gear_value(&comparing->old, tag, KEPT_ITEM) == NULL ||
        gear_value(&comparing->now, tag, KEPT_ITEM) == NULL)
        return false;
    if (old != NULL && now != NULL && !text_equal(old, first) && !text_equal(now, first_now))
        return false;
    if (old == NULL)
        reason_add(comparing, "%s: a date is recorded now: good until %s", piece, now);
    else if (now == NULL)
        reason_add_lost(comparing, "%s: its date is no longer recorded (it was good until %s)",
                        piece, old);
    else
        reason_add(comparing, "%s: good until %s, it was %s", piece, now, old);
    return true;
}

void dates_compare(struct comparing *comparing)
{
    const struct content *old = &comparing->old, *now = &comparing->now;
    bool told = false;
    if (!lines_have(comparing, line_is_dated, NULL))
        return;
    for (size_t i = 0; i < now->gear_count; i++)
        if (is_first_of_tag(now->gear, i))
            told = date_compare_piece(comparing, now->gear[i].subject) || told;
    for (size_t i = 0; i < old->gear_count; i++)    /* a piece that came or went was told so */
        told = told || (is_first_of_tag(old->gear, i) &&
                        gear_value(now, old->gear[i].subject, KEPT_ITEM) == NULL);
    for (size_t i = 0; i < now->gear_count; i++)
        told = told || (is_first_of_tag(now->gear, i) &&
                        gear_value(old, now->gear[i].subject, KEPT_ITEM) == NULL);
    if (told)
        lines_explain(comparing, line_is_dated, NULL);
}

/* field_try.c - tries every key of a file in each wrong way, and holds what is told to one law. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <stdio.h>
#include <string.h>

#include "app/fleet.h"
#include "field_slips.h"
#include "field_try.h"
#include "text.h"
#include "words.h"

#define ARENA_LIMIT ((size_t)256 * 1024 * 1024)

/* What is being tried. */
static struct {
    const struct file_way *way;
    struct known_names known;
    enum fields_tried which;
    size_t failed, count;
    struct arena *arena;              /* of one key */
    struct problems *problems;        /* of one change */
    const char *found_in_whole;       /* checks that find something in the file as it was made */
    struct arena *kept;
    const struct field **rows;        /* of the tables, that were tried */
    size_t row_count, row_room;
} trying;

/* ---- what is told ---- */

static bool read_changed(const struct source *source)
{
    trying.problems = problems_new(trying.arena);
    problems_about(trying.problems, "tern", "record");
    problems_know(trying.problems, &trying.known);
    trying.count++;
    return trying.way->is_sound(source, trying.arena, trying.problems);
}

/* The change may call the piece otherwise, but the finding is no new one. */
static bool told_before(const struct problem *problem)
{
    const char *check = text_format(trying.arena, " %s ", problem->check);
    return problem->severity < SEVERITY_ERROR && strstr(trying.found_in_whole, check) != NULL;
}

/* The problems that the change brought, one after another; NULL past the last. */
static const struct problem *told_next(size_t *index)
{
    size_t count = 0;
    const struct problem *all = problems_sorted(trying.problems, &count);
    while (*index < count && told_before(&all[*index]))
        ++*index;
    return *index < count ? &all[(*index)++] : NULL;
}

/* All of them, a line each; "" for none. */
static const char *told(void)
{
    struct text_builder out = text_builder_in(trying.arena);
    const struct problem *one;
    text_add(&out, "");
    for (size_t i = 0; (one = told_next(&i)) != NULL;)
        text_add_format(&out, "\n%s: %s | %s", severity_word(one->severity), one->what,
                        one->remedy == NULL ? "" : one->remedy);
    return out.at;
}

static const char *found(void)
{
    struct text_builder out = text_builder_in(trying.arena);
    size_t count = 0;
    const struct problem *all = problems_sorted(trying.problems, &count);
    text_add(&out, " ");
    for (size_t i = 0; i < count; i++)
        text_add_format(&out, "%s ", all[i].check);
    return out.at;
}

static void failed(const struct spot *spot, const char *how, const char *why)
{
    trying.failed++;
    printf("%s, %s %s: %s:%s\n", trying.way->name, spot_pair(spot)->key, how, why, told());
}

static bool is_at(struct place a, struct place b)
{
    return a.line == b.line && a.column == b.column;
}

/* One error, at the place, with a remedy that names what was meant. */
static const char *fault_of(const struct source *source, const struct attempt *attempt)
{
    size_t index = 0;
    const struct problem *one = told_next(&index);
    struct place place = source_place(source, attempt->at);
    if (one == NULL || told_next(&index) != NULL)
        return one == NULL ? "nothing is told" : "more than one thing is told";
    if (one->severity != SEVERITY_ERROR || text_empty(one->what) || text_empty(one->remedy) ||
        status_of(trying.problems, SEVERITY_HELD) != EXIT_FOUND)
        return "no error with a remedy that ends in status 1";
    if (!is_at(one->place, place) || one->place.source != source)
        return text_format(trying.arena, "told at %d:%d, not at %d:%d", one->place.line,
                           one->place.column, place.line, place.column);
    if (attempt->named != NULL && strstr(one->remedy, attempt->named) == NULL)
        return "the remedy does not name what was meant";
    return NULL;
}

static void slips_try(const struct spot *spot)
{
    for (size_t i = 0; i < field_slip_count; i++) {
        struct attempt attempt;
        if (!field_slips[i].make(spot, &attempt))
            continue;
        const struct source *source = spot_changed(spot, &attempt);
        bool is_sound = read_changed(source);
        const char *fault = is_sound ? "it is taken" : fault_of(source, &attempt);
        if (fault != NULL)
            failed(spot, field_slips[i].name, fault);
    }
}

/* ---- what is left out ---- */

/* Does an error speak of the key? */
static bool key_is_named(const char *key)
{
    const struct problem *one;
    for (size_t i = 0; (one = told_next(&i)) != NULL;)
        if (one->severity == SEVERITY_ERROR && (strstr(one->what, key) != NULL ||
                                                strstr(one->remedy, key) != NULL))
            return true;
    return false;
}

/* What is missing in a file that others fill may stand there. */
static bool is_required(const struct spot *spot)
{
    return spot->field->required && !spot->table->partial;
}

/* A key left empty is as good as none, but what must be is told in its place. */
static void leaving_out_try(const struct spot *spot)
{
    const char *key = spot_pair(spot)->key;
    struct attempt out = spot_taken_out(spot), emptied = spot_emptied(spot);
    bool is_sound = read_changed(spot_changed(spot, &out));
    const char *without = told();
    if (is_sound ? is_required(spot) : !key_is_named(key))
        failed(spot, "taken out", is_sound ? "it is not missed" : "told");
    const struct source *source = spot_changed(spot, &emptied);
    if (read_changed(source) != is_sound)
        failed(spot, "left empty", "it is not as taken out");
    else if (!is_required(spot) && strcmp(told(), without) != 0)
        failed(spot, "left empty", text_format(trying.arena, "not told as taken out, %s", without));
    else if (is_required(spot) && fault_of(source, &emptied) != NULL)
        failed(spot, "left empty", fault_of(source, &emptied));
}

/* ---- every key of a file ---- */

/* The tables of boats and of their sisters have rows for the same. */
static bool was_tried(const struct field *field)
{
    for (size_t i = 0; i < trying.row_count; i++)
        if (trying.rows[i]->about == field->about &&
            text_equal(trying.rows[i]->key, field->key))
            return true;
    return false;
}

static void tried_note(const struct field *field)
{
    if (was_tried(field))
        return;
    trying.rows = arena_grow(trying.kept, trying.rows, trying.row_count, &trying.row_room,
                              sizeof *trying.rows);
    trying.rows[trying.row_count++] = field;
}

static void mapping_try(struct spot *spot, const struct field_table *table);

static void part_try(const struct spot *spot)
{
    const struct yaml_node *value = spot_pair(spot)->value;
    struct spot inner = *spot;
    if (spot->field->part == NULL)
        return;
    inner.mapping = value;
    if (value->kind == YAML_MAPPING)
        mapping_try(&inner, spot->field->part->table);
    for (size_t i = 0; value->kind == YAML_SEQUENCE && i < value->count; i++) {
        inner.mapping = value->items[i];
        if (inner.mapping->kind == YAML_MAPPING)
            mapping_try(&inner, spot->field->part->table);
    }
}

static bool of_gear(const struct spot *spot)
{
    return spot->mapping->place.line > 1 && spot->mapping->flow &&
           yaml_get(spot->mapping, "item") != NULL;
}

/* In an arena of its own: there are many thousands. */
static void spot_try(const struct spot *spot)
{
    struct spot own = *spot;
    struct arena *whole = trying.arena;
    own.arena = trying.arena = arena_new(ARENA_LIMIT);
    slips_try(&own);
    leaving_out_try(&own);
    arena_free(trying.arena);
    trying.arena = whole;
}

static void mapping_try(struct spot *spot, const struct field_table *table)
{
    spot->table = table;
    for (spot->index = 0; spot->index < spot->mapping->count; spot->index++) {
        spot->field = field_find(table, spot_pair(spot)->key);
        if (spot->field == NULL)
            fail_msg("%s is in no table", spot_pair(spot)->key);
        tried_note(spot->field);
        if (trying.which == FIELDS_TRIED_ALL || of_gear(spot))
            spot_try(spot);
        part_try(spot);
    }
}

void file_try(const struct file_way *way, const char *text, enum fields_tried which)
{
    trying.way = way;
    trying.which = which;
    trying.found_in_whole = " ";
    trying.arena = arena_new(ARENA_LIMIT);
    const struct source *source = source_from(trying.arena, way->name, text, strlen(text));
    struct spot spot = {.source = source};
    if (!read_changed(source)) {
        printf("%s%s\n", text, told());
        fail_msg("%s is not sound as it was made", way->name);
    }
    trying.found_in_whole = found();
    spot.mapping = yaml_tree_read(source, trying.arena, trying.problems);
    mapping_try(&spot, way->fields());
    arena_free(trying.arena);
    if (trying.failed > 0)
        fail_msg("%zu of %zu changes of %s", trying.failed, trying.count, way->name);
}

static void row_was_tried(const struct field_path *path, void *context)
{
    const struct file_way *of = context;
    if (!was_tried(path->field))
        fail_msg("%s: no record of this test has %s", of->name,
                 field_path_text(path, trying.kept));
}

void rows_were_tried(const struct file_way *way)
{
    fields_walk(way->fields(), row_was_tried, (void *)(uintptr_t)way);
}

/* ---- the group ---- */

/* What people call the keys, as the program knows it. */
static struct known_names known_of_words(void)
{
    struct source *source = NULL;
    assert_int_equal(source_read(trying.kept, "procedures/words/en/words.yaml", YAML_FILE_LIMIT,
                                 &source), SOURCE_READ);
    trying.problems = problems_new(trying.kept);
    const struct words *words = words_read(source, "en", trying.kept, trying.problems);
    const struct words **rows = arena_array(trying.kept, 1, sizeof *rows);
    rows[0] = words;
    assert_non_null(words);
    return words_known(&(struct languages){rows, 1}, trying.kept);
}

int field_try_begin(void **state)
{
    (void)state;
    trying.kept = arena_new(ARENA_LIMIT);
    trying.known = known_of_words();
    return 0;
}

int field_try_end(void **state)
{
    (void)state;
    arena_free(trying.kept);
    return 0;
}

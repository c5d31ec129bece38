/* yaml_edit.c - a YAML file with single values changed (room: yaml): edits become cuts, the
 * cuts are put in order and made, and the new file is read and held against the old tree.
 * Never gives bytes that mean something else. */
#include "yaml_editing.h"

#include <stdarg.h>
#include <stdlib.h>
#include <string.h>

#include "text.h"

static struct place edit_place(const struct yaml_edit *edit)
{
    size_t index = edit->in->kind == YAML_SCALAR ? 0 : edit_index(edit);

    if (edit->in->kind == YAML_SCALAR || edit->kind == YAML_EDIT_ADD || index == edit->in->count)
        return edit->in->place;
    return member_place(edit->in, index);
}

void edit_error(struct yaml_editing *editing, const struct yaml_edit *edit, const char *remedy,
                const char *format, ...)
{
    va_list list;

    va_start(list, format);
    char *what = text_format_list(editing->arena, format, list);
    va_end(list);
    problem_add(editing->problems, SEVERITY_ERROR, edit_place(edit), remedy, "%s", what);
    editing->wrong = true;
}

void cut_add(struct yaml_editing *editing, const struct yaml_edit *edit, struct cut cut)
{
    editing->cuts = arena_grow(editing->arena, editing->cuts, editing->cut_count,
                               &editing->cut_capacity, sizeof *editing->cuts);
    cut.order = editing->cut_count;
    cut.edit = edit;
    editing->cuts[editing->cut_count++] = cut;
}

/* ---- setting ---- */

/* The quote that a text stands in; 0 without. */
static char sign_around(const struct yaml_editing *editing, const struct yaml_node *node)
{
    return node->kind == YAML_SCALAR && node->quoted ? editing->bytes[node->range.start] : '\0';
}

static enum yaml_style style_of(const struct yaml_node *collection)
{
    return collection->flow ? STYLE_FLOW : STYLE_LINES;
}

/* A value that was left out, behind its colon or dash; `range` is its member's. */
static struct cut value_inserted(const struct yaml_editing *editing,
                                 const struct yaml_edit *edit, struct byte_range range)
{
    const char *written = value_written(editing->arena, edit->value, style_of(edit->in), '\0');
    bool spaced = edit->in->flow && editing->bytes[range.end] == ' ';
    size_t at = range.end + (spaced ? 1 : 0);

    return (struct cut){.start = at, .end = at,
                        .text = spaced ? written
                                       : text_format(editing->arena, " %s", written)};
}

/* In lines the space before a value goes with it. */
static struct cut value_replaced(const struct yaml_editing *editing,
                                 const struct yaml_edit *edit, const struct yaml_node *old)
{
    struct cut cut = {.start = old->range.start, .end = old->range.end};

    cut.text = value_written(editing->arena, edit->value, style_of(edit->in),
                             sign_around(editing, old));
    while (cut.text[0] == '\0' && !edit->in->flow && cut.start > 0 &&
           bytes_blank(editing, cut.start - 1, cut.start))
        cut.start--;
    return cut;
}

static bool value_settable(struct yaml_editing *editing, const struct yaml_edit *edit,
                           const struct yaml_node *old)
{
    const char *bytes = editing->bytes + old->range.start;
    bool block = old->kind == YAML_SCALAR && old->quoted && bytes[0] != '"' && bytes[0] != '\'';

    if (old->kind != YAML_SCALAR && !old->flow)
        edit_error(editing, edit, "remove it and add it anew",
                   "a value in lines of its own cannot be replaced");
    else if (block || bytes_break(editing, old->range.start, old->range.end))
        edit_error(editing, edit, "write the old value in one line first",
                   "a value of several lines cannot be replaced");
    else
        return true;
    return false;
}

static void value_set(struct yaml_editing *editing, const struct yaml_edit *edit, size_t index)
{
    const struct yaml_node *old = member_value(edit->in, index);
    struct byte_range range;

    if (value_equal(edit->value, old, editing->arena) ||
        !value_settable(editing, edit, old))
        return;
    if (old->range.start < old->range.end)
        cut_add(editing, edit, value_replaced(editing, edit, old));
    else if (member_range(editing, edit->in, index, &range))
        cut_add(editing, edit, value_inserted(editing, edit, range));
    else
        edit_error(editing, edit, "write the key with its colon in one line first",
                   "it cannot be told where the value begins");
}

/* ---- what is asked for ---- */

static bool value_sound(struct yaml_editing *editing, const struct yaml_edit *edit)
{
    const char *fault = NULL;

    if (edit->kind != YAML_EDIT_REMOVE)
        fault = value_unwritable(edit->value);
    if (fault == NULL && edit->in->kind == YAML_MAPPING)
        fault = text_unwritable(edit->key);
    if (fault != NULL)
        edit_error(editing, edit, "write the words on one line, without such signs",
                   "the new value %s", fault);
    return fault == NULL;
}

/* May the edit be made of the list or mapping as it is? */
static bool target_found(struct yaml_editing *editing, const struct yaml_edit *edit)
{
    const struct yaml_node *in = edit->in;
    size_t index = edit_index(edit);
    bool there = index < in->count;

    if (edit->kind != YAML_EDIT_ADD && !there && in->kind == YAML_MAPPING)
        edit_error(editing, edit, "add it", "there is no key \"%s\"", edit->key);
    else if (edit->kind != YAML_EDIT_ADD && !there)
        edit_error(editing, edit, "count the entries from 0", "the list has no entry %zu",
                   edit->index);
    else if (edit->kind == YAML_EDIT_ADD && in->kind == YAML_MAPPING && there &&
             member_stays(editing->change, in, index))
        edit_error(editing, edit, "set it", "the key \"%s\" is there already", edit->key);
    else
        return true;
    return false;
}

/* Do two edits want the same member? One may go and another be added under its key. */
static bool edits_clash(const struct yaml_edit *first, const struct yaml_edit *again)
{
    bool first_adds = first->kind == YAML_EDIT_ADD;

    if (first->in != again->in || first_adds != (again->kind == YAML_EDIT_ADD))
        return false;
    if (first->in->kind == YAML_MAPPING)
        return text_equal(first->key, again->key);
    return !first_adds && first->index == again->index;
}

static bool first_of_its_member(struct yaml_editing *editing, const struct yaml_edit *edit)
{
    for (const struct yaml_edit *first = editing->change->edits; first < edit; first++)
        if (edits_clash(first, edit)) {
            edit_error(editing, edit, "make one edit of the two",
                       "two edits are about the same value");
            return false;
        }
    return true;
}

static bool brackets_found(struct yaml_editing *editing, const struct yaml_edit *edit)
{
    const struct yaml_node *in = edit->in;
    char sign = editing->bytes[in->range.start];

    if (!in->flow || edit->kind == YAML_EDIT_SET || sign == '{' || sign == '[')
        return true;
    edit_error(editing, edit, "put it in braces: {key: value}",
               "a pair in a list that has no braces cannot be changed");
    return false;
}

static void edit_plan(struct yaml_editing *editing, const struct yaml_edit *edit)
{
    if (edit->in->kind == YAML_SCALAR) {
        edit_error(editing, edit, "set the value of the key that holds it",
                   "a text has no keys and no entries");
        return;
    }
    if (!value_sound(editing, edit) || !target_found(editing, edit) ||
        !first_of_its_member(editing, edit) || !brackets_found(editing, edit))
        return;
    if (edit->kind == YAML_EDIT_SET)
        value_set(editing, edit, edit_index(edit));
    else if (edit->kind == YAML_EDIT_ADD)
        (edit->in->flow ? flow_add : lines_add)(editing, edit);
    else
        (edit->in->flow ? flow_remove : lines_remove)(editing, edit, edit_index(edit));
}

/* ---- making the cuts ---- */

static int sizes_compare(size_t a, size_t b)
{
    return (a > b) - (a < b);
}

/* By their place; of those at one place insertions first, values before members, and the
 * lines of the deeper collection before those of the one around it. */
static int cut_compare(const void *first, const void *second)
{
    const struct cut *a = first, *b = second;
    int by_start = sizes_compare(a->start, b->start);
    int by_end = sizes_compare(a->end, b->end);

    if (by_start != 0)
        return by_start;
    if (by_end != 0)
        return by_end;
    if (a->turn != b->turn)
        return a->turn < b->turn ? -1 : 1;
    if (a->depth != b->depth)
        return a->depth > b->depth ? -1 : 1;
    return sizes_compare(a->order, b->order);
}

/* Does a cut come into one before it, or add to what that takes away? */
static bool cuts_overlap(const struct cut *before, const struct cut *cut)
{
    const struct yaml_node *in = cut->edit->in;

    return cut->start < before->end ||
           (in != before->edit->in && in->range.start >= before->start &&
            in->range.start < before->end);
}

static void cuts_order(struct yaml_editing *editing)
{
    const struct cut *farthest = editing->cuts;   /* the one that ends last */

    if (editing->cut_count > 0)
        qsort(editing->cuts, editing->cut_count, sizeof *editing->cuts, cut_compare);
    for (size_t i = 1; i < editing->cut_count; i++) {
        const struct cut *cut = &editing->cuts[i];
        if (cuts_overlap(farthest, cut))
            edit_error(editing, cut->edit, "make one of the two alone",
                       "an edit changes what another edit changes too");
        if (cut->end > farthest->end)
            farthest = cut;
    }
}

static struct text_builder cuts_make(const struct yaml_editing *editing)
{
    struct text_builder out = text_builder_in(editing->arena);
    size_t at = 0;

    if (editing->change->source->marked)
        text_add(&out, "\xEF\xBB\xBF");
    for (size_t i = 0; i < editing->cut_count; i++) {
        const struct cut *cut = &editing->cuts[i];
        text_add_bytes(&out, editing->bytes + at, cut->start - at);
        text_add(&out, cut->text);
        at = cut->end;
    }
    text_add_bytes(&out, editing->bytes + at, editing->length - at);
    return out;
}

/* ---- the promise ---- */

/* What the strict reader has against the new file, or NULL. */
static const char *refusal(const struct yaml_editing *editing, const struct source *source)
{
    struct problems *told = problems_new(editing->arena);
    const struct yaml_node *tree = yaml_tree_read(source, editing->arena, told);
    size_t count;
    const struct problem *rows = problems_sorted(told, &count);

    if (tree != NULL)
        return tree_as_changed(editing, tree) ? NULL : "it would say something else";
    while (rows->severity != SEVERITY_ERROR)   /* without a tree there is one */
        rows++;
    return rows->what;
}

static bool promise_kept(struct yaml_editing *editing, const struct text_builder *out)
{
    const struct source *old = editing->change->source;
    const struct source *source = source_from(editing->arena, old->name, out->at, out->length);
    const char *against = refusal(editing, source);

    if (against == NULL)
        return true;
    problem_add(editing->problems, SEVERITY_ERROR,
                editing->change->edit_count > 0 ? edit_place(&editing->change->edits[0])
                                                : source_whole(old),
                "make the change by hand", "the file cannot be changed in this way: %s",
                against);
    return false;
}

/* As the first line ends; a file of one line without an end gets LF. */
static const char *line_end_used(const struct source *source)
{
    size_t stop = strcspn(source->bytes, "\r\n");

    if (source->bytes[stop] != '\r')
        return "\n";
    return source->bytes[stop + 1] == '\n' ? "\r\n" : "\r";
}

const struct yaml_edited *yaml_edit(const struct yaml_change *change, struct arena *arena,
                                    struct problems *problems)
{
    struct yaml_editing editing = {
        .change = change,
        .bytes = change->source->bytes,
        .length = change->source->length,
        .line_end = line_end_used(change->source),
        .arena = arena,
        .problems = problems,
    };

    for (size_t i = 0; i < change->edit_count; i++)
        edit_plan(&editing, &change->edits[i]);
    cuts_order(&editing);
    if (editing.wrong)
        return NULL;
    struct text_builder out = cuts_make(&editing);
    if (!promise_kept(&editing, &out))
        return NULL;
    struct yaml_edited *edited = arena_alloc(arena, sizeof *edited);
    *edited = (struct yaml_edited){.bytes = out.at, .length = out.length};
    return edited;
}

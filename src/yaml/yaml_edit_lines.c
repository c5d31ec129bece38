/* yaml_edit_lines.c - members put into collections without brackets and taken out (room:
 * yaml). Each has lines of its own; only the first may begin behind a dash. Comments
 * between the members stay, those in the lines of one that is removed go with it. */
#include "yaml_editing.h"

#include <string.h>

#include "text.h"

/* ---- adding ---- */

/* The new lines of one edit, as they grow. */
struct lines {
    struct text_builder out;
    const char *line_end;
};

static void edited_line_add(struct lines *lines, int column, const char *start, const char *text)
{
    text_add_format(&lines->out, "%*s%s%s%s", column - 1, "", start, text, lines->line_end);
}

/* A list of mappings gets a line for each of them. */
static void pair_lines_add(struct yaml_editing *editing, struct lines *lines,
                           const struct yaml_edit *edit)
{
    const struct yaml_node *value = edit->value;
    int column = edit->in->place.column;
    bool entries = value->kind == YAML_SEQUENCE && value->count > 0 &&
                   value->items[0]->kind == YAML_MAPPING;

    if (!entries) {
        edited_line_add(lines, column, "", member_written(editing->arena, edit->key, value,
                                                          STYLE_LINES));
        return;
    }
    edited_line_add(lines, column, key_written(editing->arena, edit->key, STYLE_LINES), ":");
    for (size_t i = 0; i < value->count; i++)
        edited_line_add(lines, column + 2, "- ",
                        value_written(editing->arena, value->items[i], STYLE_LINES, '\0'));
}

/* As the last entry: its keys below each other where that one's are. */
static void entry_lines_add(struct yaml_editing *editing, struct lines *lines,
                            const struct yaml_edit *edit)
{
    const struct yaml_node *value = edit->value;
    const struct yaml_node *last = edit->in->items[edit->in->count - 1];
    int dash = edit->in->place.column;
    const char *start = "- ";

    if (last->kind != YAML_MAPPING || last->flow || value->kind != YAML_MAPPING ||
        value->count == 0 || last->place.column <= dash + 1) {
        edited_line_add(lines, dash, start, value_written(editing->arena, value, STYLE_LINES,
                                                          '\0'));
        return;
    }
    for (size_t i = 0; i < value->count; i++) {
        const struct yaml_pair *pair = &value->pairs[i];
        const char *written = member_written(editing->arena, pair->key, pair->value, STYLE_LINES);
        if (i > 0)
            edited_line_add(lines, last->place.column, "", written);
        else
            edited_line_add(lines, dash, text_format(editing->arena, "-%*s",
                                                     last->place.column - dash - 1, ""), written);
    }
}

/* Of the last line, which has no end: the one before the new lines is theirs, and the
 * last of them has none, unless that line goes. */
static const char *without_end(const struct yaml_editing *editing, const struct yaml_edit *edit,
                               const struct lines *lines)
{
    const struct yaml_node *in = edit->in;
    size_t end = strlen(lines->line_end);
    bool replaces = !member_stays(editing->change, in, in->count - 1) &&
                    is_first_addition(editing->change, edit);

    return text_format(editing->arena, "%s%.*s", replaces ? "" : lines->line_end,
                       (int)(lines->out.length - end), lines->out.at);
}

/* The dashes of a list may stand right below the key that holds it. */
static int line_depth(const struct yaml_node *in)
{
    return in->place.column * 2 + (in->kind == YAML_SEQUENCE ? 1 : 0);
}

void lines_add(struct yaml_editing *editing, const struct yaml_edit *edit)
{
    struct lines lines = {text_builder_in(editing->arena), editing->line_end};
    size_t end = edit->in->range.end;
    bool ended = line_stop_of(editing, end) < editing->length;
    size_t at = line_after(editing, end);

    if (edit->in->kind == YAML_MAPPING)
        pair_lines_add(editing, &lines, edit);
    else
        entry_lines_add(editing, &lines, edit);
    cut_add(editing, edit, (struct cut){
        .start = at, .end = at, .turn = CUT_MEMBER, .depth = line_depth(edit->in),
        .text = ended ? lines.out.at : without_end(editing, edit, &lines)});
}

/* ---- removing ---- */

/* The first stands behind the dash of an outer list: the next takes its place. */
static bool begins_behind_dash(const struct yaml_editing *editing, const struct yaml_node *in)
{
    size_t start = in->range.start;

    return !bytes_blank(editing, line_start_of(editing, start), start);
}

/* What stands where the first stood, up to the next; there must be no comment between. */
static void first_cut(struct yaml_editing *editing, const struct yaml_edit *edit, size_t index,
                      struct byte_range range)
{
    struct byte_range next = range;
    struct cut cut = {.start = range.start, .end = range.end, .text = ""};

    if (index + 1 < edit->in->count) {
        bool found = member_range(editing, edit->in, index + 1, &next);
        if (!found || white_skip(editing, range.end) != next.start) {
            edit_error(editing, edit, "move the comment to a line above the entry",
                       "the first key behind a dash cannot be removed: a comment follows it");
            return;
        }
        cut.end = next.start;
    }
    cut_add(editing, edit, cut);
}

static bool all_go(const struct yaml_change *change, const struct yaml_node *in)
{
    if (members_staying(change, in, 0, in->count) > 0)
        return false;
    for (size_t i = 0; i < change->edit_count; i++)
        if (change->edits[i].in == in && change->edits[i].kind == YAML_EDIT_ADD)
            return false;
    return true;
}

void lines_remove(struct yaml_editing *editing, const struct yaml_edit *edit, size_t index)
{
    const struct yaml_node *in = edit->in;
    struct byte_range range;

    if (all_go(editing->change, in)) {
        edit_error(editing, edit, "remove the key that holds it, or leave one in it",
                   "nothing would be left of %s", yaml_kind_word(in));
        return;
    }
    if (!member_range(editing, in, index, &range)) {
        edit_error(editing, edit, "write it in lines of its own first, without `?`",
                   "it cannot be told where the value begins");
        return;
    }
    if (begins_behind_dash(editing, in) && members_staying(editing->change, in, 0, index) == 0)
        first_cut(editing, edit, index, range);
    else
        cut_add(editing, edit, (struct cut){
            .start = line_start_of(editing, range.start),
            .end = line_after(editing, range.end), .text = ""});
}

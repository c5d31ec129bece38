/* yaml_edit_flow.c - members put into brackets and taken out (room: yaml). Each keeps the
 * comma behind it; where the last ones go, the comma before them goes too. Lines and
 * comments between the members stay. */
#include "yaml_editing.h"

#include <stdint.h>

#include "text.h"

/* The last member that stays; `count` of the collection: none does. */
static size_t last_staying(const struct yaml_change *change, const struct yaml_node *in)
{
    for (size_t i = in->count; i > 0; i--)
        if (member_stays(change, in, i - 1))
            return i - 1;
    return in->count;
}

void flow_add(struct yaml_editing *editing, const struct yaml_edit *edit)
{
    const struct yaml_node *in = edit->in;
    const char *written = member_written(editing->arena, edit->key, edit->value, STYLE_FLOW);
    size_t last = last_staying(editing->change, in);
    bool first = last == in->count && is_first_addition(editing->change, edit);
    size_t at = last == in->count ? in->range.start + 1 : member_value(in, last)->range.end;

    cut_add(editing, edit, (struct cut){
        .start = at, .end = at, .turn = CUT_MEMBER,
        .text = first ? written : text_format(editing->arena, ", %s", written)});
}

/* A line of which the cut leaves only white space goes as a whole. */
static struct cut line_taken(const struct yaml_editing *editing, struct cut cut)
{
    size_t start = line_start_of(editing, cut.start);
    size_t stop = line_stop_of(editing, cut.end);

    if (bytes_break(editing, cut.start, cut.end) || start == 0 || stop == editing->length ||
        !bytes_blank(editing, start, cut.start) || !bytes_blank(editing, cut.end, stop))
        return cut;
    cut.start = start;
    cut.end = line_after(editing, cut.end);
    return cut;
}

/* Behind a member's comma and the blanks that follow; its end where it has no comma. */
static size_t comma_passed(const struct yaml_editing *editing, const struct yaml_node *in,
                           size_t index)
{
    size_t end = member_value(in, index)->range.end;
    size_t comma = comma_find(editing, end);

    return comma == SIZE_MAX ? end : blanks_skip(editing, comma + 1);
}

/* The comma between the last member that stays and the first of those behind it. */
static void comma_cut(struct yaml_editing *editing, const struct yaml_edit *edit, size_t comma)
{
    cut_add(editing, edit, (struct cut){.start = comma, .end = comma + 1, .text = ""});
}

void flow_remove(struct yaml_editing *editing, const struct yaml_edit *edit, size_t index)
{
    const struct yaml_node *in = edit->in;
    size_t last = last_staying(editing->change, in);
    struct byte_range range;
    struct cut cut = {.text = ""};

    if (!member_range(editing, in, index, &range)) {
        edit_error(editing, edit, "write the mapping as {key: value} first",
                   "the key cannot be removed: its colon does not follow it in the same line");
        return;
    }
    cut.start = range.start;
    cut.end = comma_passed(editing, in, index);
    if (last < in->count && index == last + 1) {
        size_t end = member_value(in, last)->range.end;
        if (bytes_break(editing, end, range.start))
            comma_cut(editing, edit, comma_find(editing, end));
        else
            cut.start = end;
    }
    cut_add(editing, edit, line_taken(editing, cut));
}

/* steps_cuts.c - which words of rows are to be shortened, and by how much, for the steps of a card
 * to have room: the fewest letters for the height that is wanting (room: layout). */
#include "steps.h"

#include "measures.h"
#include "text.h"

#include <string.h>

/* Words of a row shortened by that width make it lower by that height. */
struct row_cut {
    const struct laid_row *row;
    mpt width, gain;
    bool taken;
};

struct cut_list {
    const struct pen *pen;
    const struct laid_steps *steps;
    struct row_cut *at;
    size_t count;
};

/* A spot can go as a whole; of names and ends more than a third cannot be spared. */
static int letters_spared(const struct card_row *row)
{
    size_t spots = strlen(row->spot), others = 0;
    for (size_t i = 0; i < row->item_count; i++) {
        spots += strlen(row->items[i].spot);
        others += strlen(row->items[i].name) + strlen(row->items[i].end);
    }
    return (int)(spots + others / 3);
}

static void cut_add(struct cut_list *list, struct row_cut cut)
{
    int letters = letters_of(cut.width, list->steps->sizes.row);
    if (cut.width > 0 && cut.gain > 0 && letters <= letters_spared(cut.row->row))
        list->at[list->count++] = cut;
}

/* Onto one line, or its spot onto the line of its place. */
static void row_cuts_add(struct cut_list *list, const struct laid_row *row)
{
    const struct row_setting *setting = list->steps->setting;
    struct laid_row bare = row_lay(list->pen, setting, row->row, ROW_BARE);
    if (row->form != ROW_OF_LINES)
        return;
    if (row->place_lines > 1)
        cut_add(list, (struct row_cut){row, row_place_over(list->pen, setting, row->row),
                                       line_pitch(ROLE_ROW, setting->place_size), false});
    else if (row->row->item_count <= ON_ONE_LINE_MOST)
        cut_add(list, (struct row_cut){row, bare.over, row->height - bare.height, false});
}

static struct cut_list row_cuts_of(const struct pen *pen, const struct laid_steps *steps)
{
    struct cut_list list = {.pen = pen, .steps = steps};
    size_t most = 0;
    for (size_t s = 0; s < steps->count; s++)
        most += steps->steps[s].step->row_count;
    list.at = arena_array(pen->arena, most, sizeof *list.at);
    for (size_t s = 0; s < steps->count; s++)
        for (size_t r = 0; r < steps->steps[s].step->row_count; r++)
            row_cuts_add(&list, steps->steps[s].rows[r]);
    return list;
}

static bool is_cheaper(const struct row_cut *a, const struct row_cut *b)
{
    return (int64_t)a->width * b->gain < (int64_t)b->width * a->gain;
}

/* NULL: all are taken. */
static struct row_cut *cheapest_cut(struct cut_list *list)
{
    struct row_cut *cheapest = NULL;
    for (size_t i = 0; i < list->count; i++)
        if (!list->at[i].taken && (cheapest == NULL || is_cheaper(&list->at[i], cheapest)))
            cheapest = &list->at[i];
    return cheapest;
}

static const char *row_called(const struct card_row *row)
{
    const struct row_item *first = &row->items[0];
    return first->tag_count > 0 && !text_empty(first->tags[0]) ? first->tags[0] : first->name;
}

struct steps_cuts steps_cuts_find(const struct pen *pen, const struct laid_steps *steps, mpt over)
{
    struct cut_list list = row_cuts_of(pen, steps);
    struct text_builder words = text_builder_in(pen->arena);
    struct steps_cuts cuts = {NULL, {0}};
    for (struct row_cut *cut; over > 0 && (cut = cheapest_cut(&list)) != NULL;) {
        int letters = letters_of(cut->width, steps->sizes.row);
        text_add_format(&words, "%s%s by about %d letter%s (%s mm)",
                        words.length == 0 ? "shorten spot, how or name of " : ", of ",
                        row_called(cut->row->row), letters, letters == 1 ? "" : "s",
                        mm_text(pen->arena, cut->gain));
        if (cuts.origin.line == 0)
            cuts.origin = cut->row->row->origin;
        cut->taken = true;
        over -= cut->gain;
    }
    if (over <= 0)
        cuts.words = words.at;
    return cuts;
}

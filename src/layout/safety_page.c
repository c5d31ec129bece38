/* safety_page.c - the safety plan's page: the boat large, bow up, the tags of
 * each place on it, and labels led to them in two columns (room: layout). */
#include "safety.h"
#include "zone_names.h"

#include <string.h>

#define SIDE_COLUMN MM(60)
#define GUTTER MM(4.5)
#define HEAD_HEIGHT MM(6.2)
#define LEGEND_HEIGHT MM(7.4)
#define LABEL_GAP MM(2)
#define LABEL_GAP_LEAST MM(0.5)
#define CLEARANCE MM(0.5)
#define LEADER MM(0.5)
#define HALO MM(1.5)
#define SIZE_STEP 500
#define SCRATCH_LIMIT ((size_t)512 * 1024 * 1024)

/* Where the blocks of this page stand, and what was found for it. */
struct safety_page {
    struct area whole, head, left, middle, right, legend, sources;
    mpt size;                    /* of the labels' type */
    struct hull_view view;
    struct tag_group *groups;
    size_t groups_placed;
    bool own_side;               /* see label_columns */
    struct label *labels;        /* one a place; the last: where the card hangs */
    size_t label_count;
    enum labels_found found;
    mpt over;
};

/* ---- frame of the page ---- */

static struct paragraph sources_words(const struct sheet *sheet, mpt width)
{
    struct style style = {ROLE_SOURCE_TAG, FACE_TEXT, size_rule(ROLE_SOURCE_TAG)->floor,
                          INK_BLACK};
    return paragraph_make(sheet, &style, sheet->card->safety->sources, width,
                          sheet->card->origin);
}

static mpt sources_height(const struct sheet *sheet, mpt width)
{
    if (text_empty(sheet->card->safety->sources))
        return 0;
    struct paragraph words = sources_words(sheet, width);
    return paragraph_height(&words) + MM(1);
}

/* Between the line that all cards have on top and the footer: no call panel. */
static struct safety_page page_make(const struct sheet *sheet, const struct frame *frame)
{
    struct area whole = {frame->body.x, frame->body.y, frame->body.width,
                         frame->footer.y - MM(1) - frame->body.y};
    mpt sources = sources_height(sheet, whole.width), foot = whole.y + whole.height;
    mpt tall = whole.height - HEAD_HEIGHT - LEGEND_HEIGHT - sources - MM(1);
    mpt top = whole.y + HEAD_HEIGHT;
    return (struct safety_page){
        .whole = whole, .head = {whole.x, whole.y, whole.width, HEAD_HEIGHT},
        .left = {whole.x, top, SIDE_COLUMN, tall},
        .right = {whole.x + whole.width - SIDE_COLUMN, top, SIDE_COLUMN, tall},
        .middle = {whole.x + SIDE_COLUMN + GUTTER, top, whole.width - 2 * SIDE_COLUMN - 2 * GUTTER,
                   tall - MM(2)},
        .legend = {whole.x, foot - sources - LEGEND_HEIGHT, whole.width, LEGEND_HEIGHT},
        .sources = {whole.x, foot - sources + MM(1), whole.width, sources}};
}

/* ---- fitting ---- */

/* As long as there is room; across not to scale where that would be too narrow or
 * too wide: see hull_view_in. */
static struct hull_view view_make(const struct sheet *sheet, struct area area)
{
    const struct boat *boat = sheet->card->boat_record;
    int64_t loa = boat->facts.loa_m.milli, beam = boat->facts.beam_m.milli;
    mpt longest = (mpt)((int64_t)area.width * loa / beam);
    if (boat->catamaran && area.height > longest * 3 / 2) {
        area.y += (area.height - longest * 3 / 2) / 2;
        area.height = longest * 3 / 2;
    }
    struct hull_view view = hull_view_in(boat, area, boat->catamaran ? 150 : 120);
    view.part = sheet->card->safety->part;
    view.large = true;
    return view;
}

static void labels_measure(const struct sheet *sheet, struct safety_page *page)
{
    const struct safety_plan *safety = sheet->card->safety;
    page->label_count = 0;
    for (size_t i = 0; i < safety->place_count; i++)
        page->labels[page->label_count++] = (struct label){
            .box = page->groups[i].box, .drop = label_drop(page->size),
            .height = label_height(sheet, &safety->places[i], page->size, page->left.width)};
    if (safety->here_given && page->groups[safety->place_count].found)
        page->labels[page->label_count++] = (struct label){
            .box = page->groups[safety->place_count].box, .drop = label_drop(page->size),
            .height = here_height(sheet, page->size, page->left.width)};
}

static void labels_try(const struct sheet *sheet, struct safety_page *page, mpt size, mpt gap)
{
    page->size = size;
    labels_measure(sheet, page);
    struct label_columns columns = {page->left, page->right, gap, CLEARANCE, page->own_side};
    page->found = labels_arrange(page->labels, page->label_count, &columns, sheet->arena,
                                 &page->over);
}

/* The largest type that fits; space between labels yields before it. Where the
 * type fits but leaders cannot be led, smaller type may leave them room. */
static void labels_fit(const struct sheet *sheet, struct safety_page *page)
{
    const struct size_rule *rule = size_rule(ROLE_ROW);
    mpt keyed = 0;
    for (mpt size = rule->aim; size >= rule->floor; size -= SIZE_STEP) {
        labels_try(sheet, page, size, LABEL_GAP);
        if (page->found != LABELS_LED)
            labels_try(sheet, page, size, LABEL_GAP_LEAST);
        if (page->found == LABELS_LED)
            return;
        if (page->found == LABELS_KEYED && keyed == 0)
            keyed = size;
    }
    if (keyed > 0)
        labels_try(sheet, page, keyed, LABEL_GAP_LEAST);
}

/* Ways to draw the page, the best first. All tags on the plan if leaders can be led
 * past them; else one mark stands for the tags of a place with many, its label
 * lists them; else a label may stand on the other side of the boat. Where even that
 * fails the tags on the plan are the key to labels without leaders. */
static const struct way { size_t most; bool own_side; } ways[] = {
    {CHIPS_ALL, true}, {3, true},  {1, true},  {0, true},
    {CHIPS_ALL, false}, {0, false}, {CHIPS_ALL, false}};

static struct safety_page page_fit(struct sheet *sheet, const struct frame *frame)
{
    struct safety_page page = page_make(sheet, frame);
    size_t room = sheet->card->safety->place_count + 1;
    page.view = view_make(sheet, page.middle);
    page.labels = arena_array(sheet->arena, room, sizeof *page.labels);
    for (size_t i = 0; i < sizeof ways / sizeof *ways; i++) {
        page.own_side = ways[i].own_side;
        page.groups = tag_groups_find(sheet, &page.view, ways[i].most, &page.groups_placed);
        labels_fit(sheet, &page);
        if (page.found == LABELS_LED && page.groups_placed == sheet->card->safety->place_count)
            break;
    }
    return page;
}

/* ---- what does not fit ---- */

static const struct plan_place *longest_place(const struct safety_plan *safety)
{
    const struct plan_place *longest = &safety->places[0];
    for (size_t i = 1; i < safety->place_count; i++)
        if (safety->places[i].row_count > longest->row_count)
            longest = &safety->places[i];
    return longest;
}

static void groups_told(struct sheet *sheet, const struct safety_page *page)
{
    const struct safety_plan *safety = sheet->card->safety;
    for (size_t i = 0; i < safety->place_count; i++) {
        if (page->groups[i].found)
            continue;
        sheet->failed = true;
        problem_add(sheet->problems, SEVERITY_ERROR, safety->places[i].marker.origin,
                    "record `at: [metres aft of the bow, metres to starboard]` for gear of that "
                    "zone, or give it a nearer zone",
                    "%s: no room on the plan for the tags of %s", sheet->card->title,
                    safety->places[i].title);
    }
}

static bool page_told(struct sheet *sheet, const struct safety_page *page)
{
    if (page->found != LABELS_NO_ROOM) {
        groups_told(sheet, page);
    } else {
        const struct plan_place *longest = longest_place(sheet->card->safety);
        sheet_too_long(sheet, longest->marker.origin, page->over,
                       text_format(sheet->arena,
                                   "shorten name and spot of gear; gear of one kind at one place "
                                   "with equal spot shares a line\nthe label of %s is the longest "
                                   "(%zu lines)", longest->title, longest->row_count),
                       "the labels of the safety plan");
    }
    return !sheet->failed;
}

/* ---- words round the boat ---- */

static mpt word_place(struct sheet *sheet, struct style style, mpt x, mpt baseline,
                      const char *text)
{
    return x + sheet_text(sheet, &style, x, baseline, text, strlen(text), sheet->card->origin);
}

static void arrow_place(struct sheet *sheet, struct point foot)
{
    struct path_step *steps = arena_array(sheet->arena, 4, sizeof *steps);
    steps[0] = (struct path_step){.verb = PATH_MOVE, .to = {foot.x, foot.y - MM(3.2)}};
    steps[1] = (struct path_step){.verb = PATH_LINE, .to = {foot.x - MM(1.7), foot.y}};
    steps[2] = (struct path_step){.verb = PATH_LINE, .to = {foot.x + MM(1.7), foot.y}};
    steps[3] = (struct path_step){.verb = PATH_CLOSE};
    sheet_path(sheet, steps, 4, INK_BLACK, INK_NONE, 0);
}

/* PORT left, an arrow and BOW, right STARB'D. */
static void head_words_place(struct sheet *sheet, struct area head)
{
    const char *const *words = sheet->card->plan_words;
    mpt size = size_rule(ROLE_ROW)->floor, baseline = baseline_in(head.y, head.height, size);
    struct style bold = {ROLE_ROW, FACE_BOLD, size, INK_BLACK};
    struct style plain = {ROLE_ROW, FACE_TEXT, size, INK_BLACK};
    mpt right = head.x + head.width, centre = head.x + head.width / 2, gap = MM(1.4);
    mpt x = word_place(sheet, bold, head.x, baseline, words[PLAN_PORT]);
    word_place(sheet, plain, x + gap, baseline, words[PLAN_PORT_HINT]);
    mpt bow = sheet_width(sheet, &bold, words[PLAN_BOW]);
    x = centre - bow / 2;
    word_place(sheet, bold, x, baseline, words[PLAN_BOW]);
    arrow_place(sheet, (struct point){x - MM(3), baseline});
    x = right - sheet_width(sheet, &bold, words[PLAN_STARBOARD]);
    word_place(sheet, bold, x, baseline, words[PLAN_STARBOARD]);
    word_place(sheet, plain, x - gap - sheet_width(sheet, &plain, words[PLAN_STARBOARD_HINT]),
               baseline, words[PLAN_STARBOARD_HINT]);
}

static mpt shape_place(struct sheet *sheet, struct style style, mpt x, struct area area,
                       bool below)
{
    mpt mark = MM(4.2), wide = below ? MM(6.4) : mark;
    mpt top = area.y + (area.height - mark) / 2;
    sheet_box(sheet, (struct area){x, top, wide, mark}, INK_BLACK, INK_NONE, 0,
              below ? mark / 2 : 0);
    return word_place(sheet, style, x + wide + MM(1.4),
                      baseline_in(area.y, area.height, style.size),
                      sheet->card->plan_words[below ? PLAN_BELOW : PLAN_DECK]) + MM(5);
}

static mpt class_place(struct sheet *sheet, struct style style, mpt x, struct area area,
                       enum sign_class sign, const char *words)
{
    mpt side = MM(7);
    sheet_sign(sheet, (struct area){x, area.y + (area.height - side) / 2, side, side}, sign, NULL,
               sheet->card->origin);
    return word_place(sheet, style, x + side + MM(1.4),
                      baseline_in(area.y, area.height, style.size), words) + MM(5);
}

static void legend_place(struct sheet *sheet, struct area area)
{
    const struct safety_plan *safety = sheet->card->safety;
    struct style style = {ROLE_ROW, FACE_TEXT, size_rule(ROLE_ROW)->floor, INK_BLACK};
    mpt x = area.x;
    sheet->block = "legend";
    if (safety->part != PLAN_PART_BELOW)
        x = shape_place(sheet, style, x, area, false);
    if (safety->part != PLAN_PART_DECK)
        x = shape_place(sheet, style, x, area, true);
    x = class_place(sheet, style, x, area, SIGN_FIRE, safety->legend[0]);
    x = class_place(sheet, style, x, area, SIGN_RESCUE, safety->legend[1]);
    class_place(sheet, style, x, area, SIGN_CONTROL, safety->legend[2]);
    const char *facing = sheet->card->plan_words[PLAN_FACING];
    word_place(sheet, style, area.x + area.width - sheet_width(sheet, &style, facing),
               baseline_in(area.y, area.height, style.size), facing);
}

static void sources_place(struct sheet *sheet, struct area area)
{
    if (text_empty(sheet->card->safety->sources))
        return;
    struct paragraph words = sources_words(sheet, area.width);
    sheet->block = "sources";
    paragraph_place(sheet, &words, area.x, area.y);
}

/* ---- the page ---- */

static void leader_line(struct sheet *sheet, const struct label *label, enum ink ink, mpt width)
{
    sheet_line(sheet, label->from, label->to, ink, width);
    sheet_part(sheet, PART_LEADER);
}

static void leaders_place(struct sheet *sheet, const struct safety_page *page)
{
    if (page->found != LABELS_LED)
        return;
    for (size_t i = 0; i < page->label_count; i++)
        leader_line(sheet, &page->labels[i], INK_WHITE, HALO);
    for (size_t i = 0; i < page->label_count; i++)
        leader_line(sheet, &page->labels[i], INK_BLACK, LEADER);
}

static void names_place(struct sheet *sheet, const struct safety_page *page, size_t drawn_from)
{
    size_t count = sheet->card->safety->place_count;
    struct taken tags = {arena_array(sheet->arena, 2 * count + 1, sizeof(struct area)), 0, 0};
    for (size_t i = 0; i <= count; i++)
        if (page->groups[i].found)
            tags.areas[tags.count++] = page->groups[i].box;
    for (size_t i = 0; i < count; i++)
        tags.areas[tags.count++] = true_place_area(
            &page->view, &sheet->card->safety->places[i].marker, page->groups[i].box);
    zone_names_place(sheet, &page->view, &tags, page->labels,
                     page->found == LABELS_LED ? page->label_count : 0, drawn_from);
}

static void boat_place(struct sheet *sheet, const struct safety_page *page)
{
    const struct safety_plan *safety = sheet->card->safety;
    size_t drawn_from = sheet->count;
    hull_draw(sheet, &page->view);
    names_place(sheet, page, drawn_from);
    sheet->block = "leaders";
    leaders_place(sheet, page);
    sheet->block = "plan";
    true_places_draw(sheet, &page->view, page->groups);
    for (size_t i = 0; i < safety->place_count; i++)
        tag_group_draw(sheet, &safety->places[i], &page->groups[i]);
    if (page->label_count > safety->place_count)
        here_mark_draw(sheet, page->groups[safety->place_count].box, safety->facing);
}

static void column_labels_place(struct sheet *sheet, const struct safety_page *page, bool right)
{
    const struct safety_plan *safety = sheet->card->safety;
    struct area area = right ? page->right : page->left;
    mpt done = -1;
    for (size_t n = 0; n < page->label_count; n++) {
        size_t next = page->label_count;
        for (size_t i = 0; i < page->label_count; i++)
            if (page->labels[i].right == right && page->labels[i].top > done &&
                (next == page->label_count || page->labels[i].top < page->labels[next].top))
                next = i;
        if (next == page->label_count)
            return;
        done = area.y = page->labels[next].top;
        if (next < safety->place_count)
            label_place(sheet, &safety->places[next], page->size, area);
        else
            here_label_place(sheet, page->size, area);
    }
}

static void page_place(struct sheet *sheet, const struct safety_page *page)
{
    sheet->block = "plan";
    head_words_place(sheet, page->head);
    boat_place(sheet, page);
    column_labels_place(sheet, page, false);
    column_labels_place(sheet, page, true);
    legend_place(sheet, page->legend);
    sources_place(sheet, page->sources);
}

/* Trials take much memory: it is given back when the page stands. */
bool safety_place(struct sheet *sheet, const struct frame *frame)
{
    struct sheet trial = *sheet;
    trial.arena = arena_new(SCRATCH_LIMIT);
    struct safety_page page = page_fit(&trial, frame);
    if (page_told(sheet, &page))
        page_place(sheet, &page);
    arena_free(trial.arena);
    return !sheet->failed;
}

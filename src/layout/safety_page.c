/* safety_page.c - the safety plan's page: the boat large, bow up, the tags of
 * each place on it, and labels led to them in two columns (room: layout). */
#include "safety.h"

#include "measures.h"
#include "zone_names.h"

#define LABEL_SIZE_STEP 500
#define TRIAL_LIMIT ((size_t)512 * 1024 * 1024)

/* Where the blocks of this page stand, and what was found for it. */
struct safety_page {
    struct frame frame;
    mpt size;                    /* of the labels' type */
    struct hull_view view;
    struct tag_group *groups;
    size_t groups_placed, groups_lost;
    bool own_side;               /* see label_columns */
    struct label *labels;        /* one a place; the last: where the card hangs */
    struct laid_label *laid;     /* one a label, at that size */
    size_t label_count;
    enum labels_found found;
    mpt over;
};

/* ---- frame of the page ---- */

static struct paragraph sources_words(const struct pen *pen, mpt width)
{
    struct style style = {ROLE_SOURCE_TAG, FACE_TEXT,
                          size_rule(pen->paper, ROLE_SOURCE_TAG).floor, INK_BLACK};
    return paragraph_make(pen, &style, sheet_text(pen->sheet, BLOCK_SOURCES)->text, width,
                          pen->sheet->origin);
}

static mpt sources_height(const struct pen *pen, mpt width)
{
    if (text_empty(sheet_text(pen->sheet, BLOCK_SOURCES)->text))
        return 0;
    struct paragraph words = sources_words(pen, width);
    return paragraph_height(&words);
}

static struct frame frame_in_way(const struct pen *pen, const struct page_needs *shared,
                                 int way)
{
    struct page_needs needs = *shared;
    needs.way = way;
    needs.height[AREA_SOURCES] = sources_height(pen, safe_width(pen->paper));
    return frame_make(pen->paper, TEMPLATE_SAFETY_PLAN, &needs);
}

/* ---- fitting ---- */

/* As long as there is room; across not to scale where that would be too narrow or
 * too wide: see hull_view_in. */
static struct hull_view view_make(const struct pen *pen, struct area area)
{
    const struct boat *boat = pen->sheet->boat;
    int64_t loa = boat->facts.loa_m.milli, beam = boat->facts.beam_m.milli;
    mpt longest = (mpt)((int64_t)area.width * loa / beam);
    if (boat->catamaran && area.height > longest * 3 / 2) {
        area.y += (area.height - longest * 3 / 2) / 2;
        area.height = longest * 3 / 2;
    }
    struct hull_view view = hull_view_in(boat, area, boat->catamaran ? 150 : 120);
    view.part = sheet_places(pen->sheet)->part;
    view.large = true;
    return view;
}

static void label_add(struct safety_page *page, size_t group, struct laid_label laid)
{
    page->laid[page->label_count] = laid;
    page->labels[page->label_count++] =
        (struct label){.box = page->groups[group].box, .height = laid.height,
                       .drop = label_drop(page->size), .foot = laid.height - HAIR};
}

/* Up to the bars of their labels. */
static struct label_columns columns_make(const struct safety_page *page, mpt gap)
{
    struct label_columns columns = {page->frame.at[AREA_LEFT], page->frame.at[AREA_RIGHT], gap,
                                    LEADER_CLEAR_OF_BOXES, page->own_side};
    columns.left.width += LABEL_BAR;
    columns.right.x -= LABEL_BAR;
    columns.right.width += LABEL_BAR;
    return columns;
}

/* All labels at that size of type. */
static void labels_lay(const struct pen *pen, struct safety_page *page, mpt size)
{
    const struct places_facts *safety = sheet_places(pen->sheet);
    mpt width = page->frame.at[AREA_LEFT].width;
    page->size = size;
    page->label_count = 0;
    for (size_t i = 0; i < safety->count; i++)
        label_add(page, i, label_lay(pen, &safety->places[i], size, width));
    if (safety->here_given && page->groups[safety->count].found)
        label_add(page, safety->count, here_lay(pen, size, width));
}

static void labels_try(const struct pen *pen, struct safety_page *page, mpt size, mpt gap)
{
    struct label_columns columns = columns_make(page, gap);
    labels_lay(pen, page, size);
    page->found = labels_arrange(page->labels, page->label_count, &columns, pen->arena,
                                 &page->over);
}

struct labels_fitting {
    const struct pen *pen;
    struct safety_page *page;
    mpt keyed;                   /* the largest size at which labels fit without leaders; 0:
                                    none */
};

/* Space between labels yields before their type. */
static bool labels_led_at(void *of, mpt size)
{
    struct labels_fitting *fitting = of;
    labels_try(fitting->pen, fitting->page, size, LABEL_GAP);
    if (fitting->page->found != LABELS_LED)
        labels_try(fitting->pen, fitting->page, size, LABEL_GAP_LEAST);
    if (fitting->page->found == LABELS_KEYED && fitting->keyed == 0)
        fitting->keyed = size;
    return fitting->page->found == LABELS_LED;
}

/* The largest type that fits. Where the type fits but leaders cannot be led, smaller type
 * may leave them room. */
static void labels_fit(const struct pen *pen, struct safety_page *page)
{
    struct labels_fitting fitting = {pen, page, 0};
    mpt size = size_that_fits(size_rule(pen->paper, ROLE_BOX), LABEL_SIZE_STEP, labels_led_at,
                              &fitting);
    if (page->found != LABELS_LED && !labels_led_at(&fitting, size) && fitting.keyed > 0)
        labels_try(pen, page, fitting.keyed, LABEL_GAP_LEAST);
}

/* The columns of labels: see the template. */
enum { USUAL, WIDE };

/* Ways to draw the page, the best first. All tags on the plan if leaders can be led
 * past them; else one mark stands for the tags of a place with many, its label
 * lists them; else a label may stand on the other side of the boat; else labels have more
 * room and the boat less. Where even that fails the tags on the plan are the key to labels
 * without leaders. */
static const struct way { size_t most; bool own_side; int columns; } ways[] = {
    {CHIPS_ALL, true, USUAL}, {3, true, USUAL}, {1, true, USUAL}, {0, true, USUAL},
    {CHIPS_ALL, false, USUAL}, {0, false, USUAL}, {CHIPS_ALL, true, WIDE}, {0, true, WIDE},
    {0, false, WIDE}};
#define WAYS (sizeof ways / sizeof *ways)
#define WAYS_OWN_SIDE 4u          /* the others only where none of these has leaders */

/* Labels take time: not for tags no better placed than those that have leaders already. */
static struct safety_page way_try(struct pen *pen, const struct page_needs *needs,
                                  const struct way *way, const struct safety_page *best)
{
    const struct places_facts *safety = sheet_places(pen->sheet);
    struct safety_page page = {.frame = frame_in_way(pen, needs, way->columns)};
    page.view = view_make(pen, page.frame.at[AREA_MIDDLE]);
    page.labels = arena_array(pen->arena, safety->count + 1, sizeof *page.labels);
    page.laid = arena_array(pen->arena, safety->count + 1, sizeof *page.laid);
    page.own_side = way->own_side;
    page.groups = tag_groups_find(pen, &page.view, way->most, &page.groups_placed);
    page.groups_lost = tag_groups_lost(safety, &page.view, page.groups);
    page.found = LABELS_NO_ROOM;
    if (best == NULL || best->found != LABELS_LED || page.groups_placed > best->groups_placed ||
        page.groups_lost < best->groups_lost)
        labels_fit(pen, &page);
    if (page.found == LABELS_KEYED)
        page.groups_placed -= marks_give_up(safety, page.groups);
    return page;
}

/* All on the boat; with leaders, at least with labels; as few tags as can be away from
 * their places. */
static bool page_better(const struct safety_page *a, const struct safety_page *b)
{
    if (a->groups_placed != b->groups_placed)
        return a->groups_placed > b->groups_placed;
    if (a->found != b->found)
        return a->found < b->found;
    return a->found == LABELS_NO_ROOM ? a->over < b->over : a->groups_lost < b->groups_lost;
}

static bool page_is_good(const struct pen *pen, const struct safety_page *page)
{
    return page->found == LABELS_LED && page->groups_lost == 0 &&
           page->groups_placed == sheet_places(pen->sheet)->count;
}

static struct safety_page page_fit(struct pen *pen, const struct page_needs *needs)
{
    struct safety_page best = way_try(pen, needs, &ways[0], NULL);
    for (size_t i = 1; i < WAYS && !page_is_good(pen, &best); i++) {
        if (i >= WAYS_OWN_SIDE && best.found == LABELS_LED)
            break;
        struct safety_page page = way_try(pen, needs, &ways[i], &best);
        if (page_better(&page, &best))
            best = page;
    }
    return best;
}

/* ---- what does not fit ---- */

static const struct plan_place *longest_place(const struct places_facts *safety)
{
    const struct plan_place *longest = &safety->places[0];
    for (size_t i = 1; i < safety->count; i++)
        if (safety->places[i].row_count > longest->row_count)
            longest = &safety->places[i];
    return longest;
}

/* The entries that need more than one line of type: how many, and the one that needs
 * the least cut. */
struct cuts { size_t count; const struct plan_row *cheapest; mpt least; };

static struct cuts cuts_of(const struct pen *pen, const struct safety_page *page)
{
    const struct places_facts *safety = sheet_places(pen->sheet);
    struct cuts cuts = {0};
    for (size_t i = 0; i < safety->count; i++)
        for (size_t r = 0; r < safety->places[i].row_count; r++) {
            const struct plan_row *row = &safety->places[i].rows[r];
            mpt cut = label_row_cut(&page->laid[i].rows[r]);
            if (cut <= 0)
                continue;
            cuts.count++;
            if (cuts.cheapest != NULL && cut >= cuts.least)
                continue;
            cuts.least = cut;
            cuts.cheapest = row;
        }
    return cuts;
}

static const char *cut_words(const struct pen *pen, const struct safety_page *page)
{
    struct cuts cuts = cuts_of(pen, page);
    mpt saved = label_line_saved(pen, page->size);
    size_t needed = (size_t)((page->over + saved - 1) / saved);
    if (needed > cuts.count || cuts.cheapest == NULL)
        return text_format(pen->arena, "it needs %zu lines less, but only %zu entr%s two",
                           needed, cuts.count, cuts.count == 1 ? "y needs" : "ies need");
    return text_format(pen->arena, "shorten name or spot of about %zu of the %zu entries that "
                       "need two lines\nthe cheapest: %s mm of \"%s %s\"", needed, cuts.count,
                       mm_text(pen->arena, cuts.least), cuts.cheapest->name,
                       cuts.cheapest->detail);
}

static void labels_told(struct pen *pen, const struct safety_page *page)
{
    const struct plan_place *longest = longest_place(sheet_places(pen->sheet));
    pen_too_long(pen, longest->marker.origin, page->over,
                 text_format(pen->arena, "%s\nenter gear of one kind at one place as one, with "
                             "`count`; gear of one zone and side without an `at` shares a label "
                             "(%zu now)\nthe label of %s is the longest (%zu lines)",
                             cut_words(pen, page), sheet_places(pen->sheet)->count,
                             longest->title, longest->row_count),
                 "the text of the labels");
}

/* False: one has no room. */
static bool groups_told(struct pen *pen, const struct safety_page *page)
{
    const struct places_facts *safety = sheet_places(pen->sheet);
    bool all = true;
    for (size_t i = 0; i < safety->count; i++) {
        if (page->groups[i].found)
            continue;
        pen->failed = true;
        all = false;
        problem_add(pen->problems, SEVERITY_ERROR, safety->places[i].marker.origin,
                    "record `at: [metres aft of the bow, metres to starboard]` for gear of that "
                    "zone, or give it a nearer zone",
                    "%s: no room on the plan for the tags of %s", pen->sheet->name,
                    safety->places[i].title);
    }
    return all;
}

static void sources_place(struct pen *pen, struct area area)
{
    if (text_empty(sheet_text(pen->sheet, BLOCK_SOURCES)->text))
        return;
    struct paragraph words = sources_words(pen, area.width);
    pen->block = BLOCK_SOURCES;
    paragraph_place(pen, &words, area.x, area.y);
}

/* ---- the page ---- */

static void leaders_place(struct pen *pen, const struct safety_page *page)
{
    if (page->found != LABELS_LED)
        return;
    for (size_t i = 0; i < page->label_count; i++)
        label_leader_place(pen, &page->labels[i], INK_WHITE, LEADER_HALO);
    for (size_t i = 0; i < page->label_count; i++)
        label_leader_place(pen, &page->labels[i], INK_BLACK, LEADER_LINE);
}

static void names_place(struct pen *pen, const struct safety_page *page, size_t drawn_from)
{
    size_t count = sheet_places(pen->sheet)->count;
    struct taken tags = {arena_array(pen->arena, 2 * count + 1, sizeof(struct area)), 0, 0};
    for (size_t i = 0; i <= count; i++)
        if (page->groups[i].found)
            tags.areas[tags.count++] = page->groups[i].box;
    for (size_t i = 0; i < count; i++)
        tags.areas[tags.count++] = true_place_area(
            &page->view, &sheet_places(pen->sheet)->places[i].marker, page->groups[i].box);
    zone_names_place(pen, &page->view, &tags, page->labels,
                     page->found == LABELS_LED ? page->label_count : 0, drawn_from);
}

static void boat_place(struct pen *pen, const struct safety_page *page)
{
    const struct places_facts *safety = sheet_places(pen->sheet);
    size_t drawn_from = pen->count;
    hull_draw(pen, &page->view);
    names_place(pen, page, drawn_from);
    pen->block = BLOCK_LEADERS;
    leaders_place(pen, page);
    pen->block = BLOCK_PLAN;
    for (size_t i = 0; i < safety->count; i++)
        true_place_draw(pen, &page->view, page->groups, i);
    for (size_t i = 0; i < safety->count; i++)
        tag_group_draw(pen, &safety->places[i], &page->groups[i]);
    if (page->label_count > safety->count)
        here_mark_draw(pen, page->groups[safety->count].box, safety->facing);
}

/* From the rule down. */
static void bars_place(struct pen *pen, const struct safety_page *page)
{
    for (size_t i = 0; i < page->label_count && page->found == LABELS_LED; i++) {
        const struct label *label = &page->labels[i];
        mpt x = label->to.x, top = label->top + label->drop;
        mpt inner = label->side == LABEL_RIGHT ? x + LABEL_BAR : x - LABEL_BAR;
        pen_line(pen, (struct point){inner, top}, (struct point){x, top}, INK_BLACK, HAIR);
        pen_line(pen, (struct point){x, top}, (struct point){x, label->top + label->foot},
                 INK_BLACK, HAIR);
    }
}

static void column_labels_place(struct pen *pen, const struct safety_page *page,
                                enum label_side side)
{
    struct area area = page->frame.at[side == LABEL_RIGHT ? AREA_RIGHT : AREA_LEFT];
    mpt done = -1;
    for (size_t n = 0; n < page->label_count; n++) {
        size_t next = page->label_count;
        for (size_t i = 0; i < page->label_count; i++)
            if (page->labels[i].side == side && page->labels[i].top > done &&
                (next == page->label_count || page->labels[i].top < page->labels[next].top))
                next = i;
        if (next == page->label_count)
            return;
        done = area.y = page->labels[next].top;
        label_place(pen, &page->laid[next], area.x, area.y);
    }
}

static void page_place(struct pen *pen, const struct safety_page *page)
{
    pen->block = BLOCK_PLAN;
    safety_head_place(pen, page->frame.at[AREA_PLAN_HEAD]);
    boat_place(pen, page);
    column_labels_place(pen, page, LABEL_LEFT);
    column_labels_place(pen, page, LABEL_RIGHT);
    bars_place(pen, page);
    safety_legend_place(pen, page->frame.at[AREA_LEGEND]);
    sources_place(pen, page->frame.at[AREA_SOURCES]);
}

/* Trials take much memory: it is given back when the page stands. */
bool safety_place(struct pen *pen, const struct page_needs *needs)
{
    struct pen trial = *pen;
    trial.arena = arena_new(TRIAL_LIMIT);
    struct safety_page page = page_fit(&trial, needs);
    bool fits = page.found != LABELS_NO_ROOM && groups_told(pen, &page);
    if (page.found == LABELS_NO_ROOM)
        labels_told(pen, &page);
    else if (fits)
        page_place(pen, &page);
    arena_free(trial.arena);
    return fits;
}
